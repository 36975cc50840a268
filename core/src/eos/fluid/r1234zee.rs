//! R-1234ze(E).
//!
//! Source: Thol, M., Lemmon, E. W., Equation of State for the Thermodynamic Properties of
//! trans-1,3,3,3-Tetrafluoropropene [R-1234ze(E)], Int. J. Thermophys. 37 (2016) 28, doi 10.1007/s10765-016-2040-6.
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper. The gas constant is the paper's, with which its check values are met; those files have another.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::term::{Bell, Residual, Term};

/// R-1234ze(E).
pub static R1234ZEE: PureFluid = PureFluid {
    designation: "R-1234ze(E)",
    molar_mass: 0.1140415928,
    gas_constant: 8.3144621,
    reducing_temperature: 382.513,
    reducing_density: 4290.0,
    critical_temperature: 382.52,
    critical_pressure: 3635376.3491348797,
    acentric_factor: 0.3131224184598984,
    lowest_temperature: 168.62,
    highest_temperature: 420.0,
    highest_pressure: 15000000.0,
    residual: Residual {
        terms: &[
            Term { n: 0.03982797, t: 1.0, d: 4, l: 0, g: 1.0, m: 0.0 },
            Term { n: 1.812227, t: 0.223, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -2.537512, t: 0.755, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.5333254, t: 1.24, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.1677031, t: 0.44, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: -1.323801, t: 2.0, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.6694654, t: 2.2, d: 3, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.8072718, t: 1.2, d: 2, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.7740229, t: 1.5, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.01843846, t: 0.9, d: 7, l: 1, g: 1.0, m: 0.0 },
        ],
        bells: &[
            Bell { n: 1.407916, t: 1.33, d: 1, eta: 1.0, epsilon: 0.728, beta: 1.21, gamma: 0.943 },
            Bell { n: -0.4237082, t: 1.75, d: 1, eta: 1.61, epsilon: 0.87, beta: 1.37, gamma: 0.642 },
            Bell { n: -0.2270068, t: 2.11, d: 3, eta: 1.24, epsilon: 0.855, beta: 0.98, gamma: 0.59 },
            Bell { n: -0.805213, t: 1.0, d: 3, eta: 9.34, epsilon: 0.79, beta: 171.0, gamma: 1.2 },
            Bell { n: 0.00994318, t: 1.5, d: 2, eta: 5.78, epsilon: 1.3, beta: 47.4, gamma: 1.33 },
            Bell { n: -0.008798793, t: 1.0, d: 1, eta: 3.08, epsilon: 0.71, beta: 15.4, gamma: 0.64 },
        ],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: -12.5586602313194,
        linear: 8.79132625741231,
        logarithm: 3.0,
        powers: &[],
        vibrations: &[(9.3575, 1.34113088966911), (10.717, 5.15538034001459)],
    },
};
