//! R-E170.
//!
//! Source: Wu, J., Zhou, Y., Lemmon, E. W., An Equation of State for the Thermodynamic Properties of Dimethyl Ether,
//! J. Phys. Chem. Ref. Data 40 (2011) 023104, doi 10.1063/1.3582533.
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::term::{Bell, Residual, Term};

/// R-E170.
pub static RE170: PureFluid = PureFluid {
    designation: "R-E170",
    molar_mass: 0.04606844,
    gas_constant: 8.314472,
    reducing_temperature: 400.378,
    reducing_density: 5940.0,
    critical_temperature: 400.378,
    critical_pressure: 5336800.0,
    acentric_factor: 0.196,
    lowest_temperature: 131.66,
    highest_temperature: 525.0,
    highest_pressure: 50000000.0,
    residual: Residual {
        terms: &[
            Term { n: 0.029814139, t: 1.0, d: 4, l: 0, g: 1.0, m: 0.0 },
            Term { n: 1.43517, t: 0.4366, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -2.64964, t: 1.011, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.29515532, t: 1.137, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.17035607, t: 0.45, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.94642918, t: 2.83, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.099250514, t: 1.5, d: 3, l: 2, g: 1.0, m: 0.0 },
            Term { n: 1.1264071, t: 1.235, d: 2, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.76936548, t: 2.675, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.020717696, t: 0.7272, d: 7, l: 1, g: 1.0, m: 0.0 },
            Term { n: 0.24527037, t: 1.816, d: 1, l: 1, g: 1.0, m: 0.0 },
        ],
        bells: &[
            Bell { n: 1.1863438, t: 1.783, d: 1, eta: 0.965336, epsilon: 0.672698, beta: 1.28719, gamma: 1.27772 },
            Bell { n: -0.49398368, t: 3.779, d: 1, eta: 1.50858, epsilon: 0.924246, beta: 0.806235, gamma: 0.43075 },
            Bell { n: -0.16388716, t: 3.282, d: 3, eta: 0.963855, epsilon: 0.750815, beta: 0.777942, gamma: 0.429607 },
            Bell { n: -0.027583584, t: 1.059, d: 3, eta: 9.72643, epsilon: 0.800022, beta: 197.681, gamma: 1.13849 },
        ],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: -1.980976,
        linear: 3.171218,
        logarithm: 3.039,
        powers: &[],
        vibrations: &[
            (2.641, 0.901647942694154),
            (2.123, 2.432701097462898),
            (8.992, 4.785477723551244),
            (6.191, 10.36520488138709),
        ],
    },
};
