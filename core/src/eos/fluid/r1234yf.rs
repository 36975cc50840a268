//! R-1234yf.
//!
//! Source: Lemmon, E. W., Akasaka, R., Equation of State for the Thermodynamic Properties of
//! 2,3,3,3-Tetrafluoroprop-1-ene (R1234yf), Int. J. Thermophys. 43 (2022) 119, doi 10.1007/s10765-022-03015-y.
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::term::{Bell, Residual, Term};

/// R-1234yf.
pub static R1234YF: PureFluid = PureFluid {
    designation: "R-1234yf",
    molar_mass: 0.1140416,
    gas_constant: 8.314462618,
    reducing_temperature: 367.85,
    reducing_density: 4180.0,
    critical_temperature: 367.85,
    critical_pressure: 3384400.0,
    acentric_factor: 0.276,
    lowest_temperature: 121.6,
    highest_temperature: 410.0,
    highest_pressure: 100000000.0,
    residual: Residual {
        terms: &[
            Term { n: 0.0340387, t: 1.0, d: 4, l: 0, g: 1.0, m: 0.0 },
            Term { n: 1.912859, t: 0.222, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -2.1984719881617, t: 0.61, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.8147645305033, t: 1.122, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.2288282, t: 0.5, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: -1.65436, t: 2.14, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -1.446628, t: 2.284, d: 3, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.5961722, t: 1.05, d: 2, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.6148209, t: 2.33, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.0180069, t: 0.778, d: 7, l: 1, g: 1.0, m: 0.0 },
        ],
        bells: &[
            Bell { n: 0.2845275, t: 1.0, d: 1, eta: 28.1, epsilon: 0.96, beta: 1016.0, gamma: 1.061 },
            Bell { n: -0.3050809, t: 2.0, d: 1, eta: 28.0, epsilon: 0.96, beta: 1000.0, gamma: 1.062 },
            Bell { n: 2.198935, t: 1.236, d: 1, eta: 1.307, epsilon: 0.853, beta: 1.16, gamma: 1.3 },
            Bell { n: -0.4270329, t: 1.6, d: 1, eta: 1.96, epsilon: 1.15, beta: 1.2, gamma: 1.04 },
            Bell { n: -0.4015581, t: 1.85, d: 1, eta: 1.25, epsilon: 1.3, beta: 1.26, gamma: 1.0 },
            Bell { n: 0.1179587, t: 0.7, d: 1, eta: 1.0, epsilon: 1.5, beta: 1.6, gamma: 1.14 },
            Bell { n: -0.3141002, t: 1.75, d: 1, eta: 2.2, epsilon: 0.762, beta: 0.87, gamma: 1.1 },
        ],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: -12.081525543189,
        linear: 8.52896238365,
        logarithm: 3.0,
        powers: &[],
        vibrations: &[(8.65, 1.3918716868288703), (9.75, 4.268044039690091), (2.11, 12.233247247519369)],
    },
};
