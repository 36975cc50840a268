//! R-227ea.
//!
//! Source: Lemmon, E. W., Span, R., Thermodynamic Properties of R-227ea, R-365mfc, R-115, and R-13I1, J. Chem. Eng.
//! Data 60 (2015) 3745-3758, doi 10.1021/acs.jced.5b00684.
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::term::{Bell, Residual, Term};

/// R-227ea.
pub static R227EA: PureFluid = PureFluid {
    designation: "R-227ea",
    molar_mass: 0.17002886,
    gas_constant: 8.3144621,
    reducing_temperature: 374.9,
    reducing_density: 3495.0,
    critical_temperature: 374.90000000000003,
    critical_pressure: 2925242.2339447653,
    acentric_factor: 0.3576412419532815,
    lowest_temperature: 146.35,
    highest_temperature: 475.0,
    highest_pressure: 60000000.0,
    residual: Residual {
        terms: &[
            Term { n: 2.024341, t: 0.34, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -2.60593, t: 0.77, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.4957216, t: 0.36, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.824082, t: 0.9, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.06543703, t: 1.0, d: 4, l: 0, g: 1.0, m: 0.0 },
            Term { n: -1.02461, t: 2.82, d: 1, l: 1, g: 1.0, m: 0.0 },
            Term { n: 0.6247065, t: 2.1, d: 3, l: 1, g: 1.0, m: 0.0 },
            Term { n: 0.2997521, t: 0.9, d: 6, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.353917, t: 1.13, d: 6, l: 1, g: 1.0, m: 0.0 },
            Term { n: -1.232043, t: 3.8, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.8824483, t: 2.75, d: 3, l: 2, g: 1.0, m: 0.0 },
        ],
        bells: &[
            Bell { n: 0.1349661, t: 1.5, d: 1, eta: 0.83, epsilon: 1.13, beta: 1.72, gamma: 0.414 },
            Bell { n: -0.2662928, t: 2.5, d: 2, eta: 2.19, epsilon: 0.71, beta: 5.2, gamma: 1.051 },
            Bell { n: 0.1764733, t: 2.5, d: 1, eta: 2.44, epsilon: 1.2, beta: 2.31, gamma: 1.226 },
            Bell { n: 0.01536163, t: 5.4, d: 1, eta: 3.65, epsilon: 1.7, beta: 1.02, gamma: 1.7 },
            Bell { n: -0.004667185, t: 4.0, d: 4, eta: 8.88, epsilon: 0.546, beta: 5.63, gamma: 0.904 },
            Bell { n: -11.70854, t: 1.0, d: 2, eta: 8.23, epsilon: 0.896, beta: 50.9, gamma: 1.42 },
            Bell { n: 0.9114512, t: 3.5, d: 1, eta: 2.01, epsilon: 0.747, beta: 1.56, gamma: 0.926 },
        ],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: -15.8291124137,
        linear: 11.0879509962,
        logarithm: 3.0,
        powers: &[],
        vibrations: &[(11.43, 1.07495332088557), (12.83, 3.809015737530008)],
    },
};
