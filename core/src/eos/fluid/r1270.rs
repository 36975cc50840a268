//! R-1270.
//!
//! Source: Lemmon, E. W., Overhoff, U., McLinden, M. O., Wagner, W., equation of state for propylene, personal
//! communication (2010); coefficients distributed with the open library CoolProp, no journal publication known.
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::term::{Bell, Residual, Term};

/// R-1270.
pub static R1270: PureFluid = PureFluid {
    designation: "R-1270",
    molar_mass: 0.04207974,
    gas_constant: 8.314472,
    reducing_temperature: 364.211,
    reducing_density: 5457.0,
    critical_temperature: 364.211,
    critical_pressure: 4555000.0,
    acentric_factor: 0.146,
    lowest_temperature: 87.953,
    highest_temperature: 575.0,
    highest_pressure: 1000000000.0,
    residual: Residual {
        terms: &[
            Term { n: 0.04341002, t: 1.0, d: 4, l: 0, g: 1.0, m: 0.0 },
            Term { n: 1.136592, t: 0.205, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.8528611, t: 0.56, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.5216669, t: 0.676, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: -1.382953, t: 1.0, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.1214347, t: 0.5, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.5984662, t: 1.0, d: 1, l: 1, g: 1.0, m: 0.0 },
            Term { n: -1.391883, t: 1.94, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -1.008434, t: 2.0, d: 3, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.1961249, t: 1.0, d: 2, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.360693, t: 2.66, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.002407175, t: 0.83, d: 8, l: 1, g: 1.0, m: 0.0 },
        ],
        bells: &[
            Bell { n: 0.7432121, t: 1.6, d: 1, eta: 1.07, epsilon: 0.78, beta: 0.77, gamma: 1.21 },
            Bell { n: 0.1475162, t: 2.5, d: 1, eta: 0.66, epsilon: 0.82, beta: 0.83, gamma: 1.08 },
            Bell { n: -0.02503391, t: 3.0, d: 2, eta: 1.2, epsilon: 1.94, beta: 0.607, gamma: 0.83 },
            Bell { n: -0.2734409, t: 2.5, d: 3, eta: 1.12, epsilon: 0.69, beta: 0.4, gamma: 0.56 },
            Bell { n: 0.006378889, t: 2.72, d: 3, eta: 1.47, epsilon: 1.96, beta: 0.66, gamma: 1.22 },
            Bell { n: 0.0150294, t: 4.0, d: 2, eta: 1.93, epsilon: 1.3, beta: 0.07, gamma: 1.81 },
            Bell { n: -0.03162971, t: 4.0, d: 1, eta: 3.3, epsilon: 0.38, beta: 3.1, gamma: 1.54 },
            Bell { n: -0.04107194, t: 1.0, d: 2, eta: 15.4, epsilon: 0.91, beta: 387.0, gamma: 1.12 },
            Bell { n: -1.190241, t: 4.0, d: 3, eta: 6.0, epsilon: 0.7, beta: 41.0, gamma: 1.4 },
        ],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: -5.182327965145101,
        linear: 4.36399027654279,
        logarithm: 3.0,
        powers: &[],
        vibrations: &[
            (1.544, 0.8895942187358427),
            (4.013, 2.671528317376466),
            (8.923, 5.304617378387802),
            (6.02, 11.85301926630442),
        ],
    },
};
