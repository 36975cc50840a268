//! R-1336mzz(Z).
//!
//! Source: McLinden, M. O., Akasaka, R., Thermodynamic Properties of cis-1,1,1,4,4,4-Hexafluorobutene [R-1336mzz(Z)]:
//! Vapor Pressure, (p, rho, T) Behavior, and Speed of Sound Measurements and Equation of State, J. Chem. Eng. Data 65
//! (2020) 4201-4214, doi 10.1021/acs.jced.9b01198.
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper. A heat capacity given there as a function of temperature is integrated here.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::term::{Bell, Residual, Term};

/// R-1336mzz(Z).
pub static R1336MZZZ: PureFluid = PureFluid {
    designation: "R-1336mzz(Z)",
    molar_mass: 0.164056,
    gas_constant: 8.314462618,
    reducing_temperature: 444.5,
    reducing_density: 3044.0,
    critical_temperature: 444.5,
    critical_pressure: 2903000.0,
    acentric_factor: 0.386,
    lowest_temperature: 182.65,
    highest_temperature: 500.0,
    highest_pressure: 46000000.0,
    residual: Residual {
        terms: &[
            Term { n: 0.036673095, t: 1.0, d: 4, l: 0, g: 1.0, m: 0.0 },
            Term { n: 1.1956619, t: 0.26, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -1.8462376, t: 1.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.60599297, t: 1.0, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.24973833, t: 0.515, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: -1.2548278, t: 2.6, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -1.4389612, t: 3.0, d: 3, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.35168887, t: 0.74, d: 2, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.82104051, t: 2.68, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.031747538, t: 0.96, d: 7, l: 1, g: 1.0, m: 0.0 },
        ],
        bells: &[
            Bell { n: 1.0281388, t: 1.06, d: 1, eta: 0.746, epsilon: 1.225, beta: 1.118, gamma: 0.962 },
            Bell { n: 0.21094074, t: 3.4, d: 1, eta: 2.406, epsilon: 0.161, beta: 3.065, gamma: 1.111 },
            Bell { n: 0.701701, t: 1.617, d: 3, eta: 0.7804, epsilon: 1.231, beta: 0.7274, gamma: 1.135 },
            Bell { n: 0.24638528, t: 1.865, d: 2, eta: 1.25, epsilon: 1.395, beta: 0.8435, gamma: 1.163 },
            Bell { n: -1.5295034, t: 1.737, d: 3, eta: 0.6826, epsilon: 0.9072, beta: 0.6754, gamma: 0.969 },
            Bell { n: 0.33424978, t: 3.29, d: 2, eta: 1.677, epsilon: 0.958, beta: 0.436, gamma: 1.286 },
            Bell { n: 1.011324, t: 1.242, d: 2, eta: 1.762, epsilon: 0.412, beta: 3.808, gamma: 1.274 },
            Bell { n: -0.023457179, t: 2.0, d: 1, eta: 21.0, epsilon: 0.944, beta: 1888.0, gamma: 1.056 },
        ],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: -20.211249946902385,
        linear: 12.002901123163277,
        logarithm: 3.0,
        powers: &[],
        vibrations: &[(20.2, 1.6557930258717661), (5.275, 5.172103487064117)],
    },
};
