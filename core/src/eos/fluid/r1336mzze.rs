//! R-1336mzz(E).
//!
//! Source: Akasaka, R., Huber, M. L., Simoni, L., Lemmon, E. W., A Helmholtz Energy Equation of State for
//! trans-1,1,1,4,4,4-Hexafluoro-2-butene [R-1336mzz(E)], Int. J. Thermophys. 44 (2023) 50, doi
//! 10.1007/s10765-022-03143-5.
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::term::{Bell, Residual, Term};

/// R-1336mzz(E).
pub static R1336MZZE: PureFluid = PureFluid {
    designation: "R-1336mzz(E)",
    molar_mass: 0.1640491,
    gas_constant: 8.314462618,
    reducing_temperature: 403.53,
    reducing_density: 3129.0,
    critical_temperature: 403.53,
    critical_pressure: 2779002.2154927077,
    acentric_factor: 0.4127686952181142,
    lowest_temperature: 200.15,
    highest_temperature: 410.0,
    highest_pressure: 5700000.0,
    residual: Residual {
        terms: &[
            Term { n: 0.08297005, t: 1.0, d: 4, l: 0, g: 1.0, m: 0.0 },
            Term { n: 1.1213658, t: 0.117, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -2.0279038680756, t: 1.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.3486706213113, t: 1.0, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.13227952, t: 0.413, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: -1.3751844, t: 2.44, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -1.3939029, t: 2.51, d: 3, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.11190839, t: 0.535, d: 2, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.90635088, t: 1.927, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.050014594, t: 1.186, d: 7, l: 1, g: 1.0, m: 0.0 },
        ],
        bells: &[
            Bell { n: 1.7953748, t: 0.876, d: 1, eta: 1.234, epsilon: 1.23, beta: 1.237, gamma: 1.21 },
            Bell { n: 2.0579712, t: 1.23, d: 1, eta: 1.34, epsilon: 0.751, beta: 0.384, gamma: 2.0 },
            Bell { n: -1.0433081, t: 0.875, d: 3, eta: 1.13, epsilon: 0.522, beta: 1.24, gamma: 1.216 },
            Bell { n: -1.2459808, t: 0.5181, d: 2, eta: 1.15, epsilon: 0.32, beta: 0.46, gamma: 2.27 },
            Bell { n: -0.49712249, t: 0.86, d: 2, eta: 1.3, epsilon: 1.22, beta: 1.326, gamma: 1.26 },
        ],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: 0.0,
        linear: 0.0,
        logarithm: 3.0,
        powers: &[(-17.583859885194016, 0.0), (11.524417012948918, 1.0)],
        vibrations: &[(15.891, 1.3629717740936238), (14.143, 8.609025351275)],
    },
};
