//! R-1224yd(Z).
//!
//! Source: Akasaka, R., Lemmon, E. W., A Helmholtz Energy Equation of State for
//! cis-1-Chloro-2,3,3,3-tetrafluoro-1-propene [R-1224yd(Z)], Int. J. Thermophys. 44 (2023) 166, doi
//! 10.1007/s10765-023-03266-3.
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::term::{Bell, Residual, Term};

/// R-1224yd(Z).
pub static R1224YDZ: PureFluid = PureFluid {
    designation: "R-1224yd(Z)",
    molar_mass: 0.14848670000000003,
    gas_constant: 8.314462618,
    reducing_temperature: 428.69,
    reducing_density: 3632.0,
    critical_temperature: 428.69,
    critical_pressure: 3334000.0,
    acentric_factor: 0.325,
    lowest_temperature: 157.8,
    highest_temperature: 473.15,
    highest_pressure: 35200000.0,
    residual: Residual {
        terms: &[
            Term { n: 0.05515868, t: 1.0, d: 4, l: 0, g: 1.0, m: 0.0 },
            Term { n: 1.9416962, t: 0.226, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -2.2385064629867, t: 0.661, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.8414463720438, t: 1.128, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.22459576, t: 0.51, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: -1.6513724, t: 1.98, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.022916841, t: 8.5, d: 1, l: 3, g: 1.0, m: 0.0 },
            Term { n: -1.588437, t: 2.27, d: 3, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.56220803, t: 0.89, d: 2, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.67885338, t: 2.78, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.027421084, t: 1.0, d: 7, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.021429988, t: 6.36, d: 2, l: 3, g: 1.0, m: 0.0 },
        ],
        bells: &[
            Bell { n: 0.26924542, t: 4.5, d: 2, eta: 23.96, epsilon: 0.9578, beta: 1028.0, gamma: 1.06 },
            Bell { n: -0.33022951, t: 2.84, d: 2, eta: 23.81, epsilon: 0.9577, beta: 1014.0, gamma: 1.062 },
            Bell { n: 2.2799188, t: 1.15, d: 1, eta: 1.327, epsilon: 0.8713, beta: 1.23, gamma: 1.296 },
            Bell { n: -0.42644754, t: 1.25, d: 1, eta: 1.941, epsilon: 1.183, beta: 1.146, gamma: 1.245 },
            Bell { n: -0.38611218, t: 2.32, d: 1, eta: 1.516, epsilon: 1.25, beta: 0.803, gamma: 1.0 },
            Bell { n: 0.13232403, t: 3.5, d: 1, eta: 1.7, epsilon: 1.19, beta: 0.83, gamma: 1.45 },
            Bell { n: -0.33124629, t: 1.06, d: 1, eta: 2.23, epsilon: 0.842, beta: 1.21, gamma: 1.215 },
        ],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: -17.85929081092342,
        linear: 11.05290064941713,
        logarithm: 3.0,
        powers: &[],
        vibrations: &[(9.057, 1.1920035456856937), (11.91, 3.324080337773216)],
    },
};
