//!
//!
//! Source: Lemmon, E. W., Span, R., Short Fundamental Equations of State for 20 Industrial Fluids, J. Chem. Eng. Data
//! 51 (2006) 785-850, doi 10.1021/je050186n.
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::term::{Residual, Term};

///
pub static R218: PureFluid = PureFluid {
    designation: "R-218",
    molar_mass: 0.18801933,
    gas_constant: 8.314472,
    reducing_temperature: 345.02,
    reducing_density: 3340.0,
    critical_temperature: 345.02,
    critical_pressure: 2640000.0,
    acentric_factor: 0.3172,
    lowest_temperature: 125.45,
    highest_temperature: 440.0,
    highest_pressure: 20000000.0,
    residual: Residual {
        terms: &[
            Term { n: 1.327, t: 0.25, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -3.8433, t: 1.25, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.922, t: 1.5, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.1136, t: 0.25, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.00036195, t: 0.875, d: 7, l: 0, g: 1.0, m: 0.0 },
            Term { n: 1.1001, t: 2.375, d: 1, l: 1, g: 1.0, m: 0.0 },
            Term { n: 1.1896, t: 2.0, d: 2, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.025147, t: 2.125, d: 5, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.65923, t: 3.5, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.027969, t: 6.5, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.1833, t: 4.75, d: 4, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.02163, t: 12.5, d: 2, l: 3, g: 1.0, m: 0.0 },
        ],
        bells: &[],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: -15.6587335175,
        linear: 11.4531412796,
        logarithm: 3.0,
        powers: &[],
        vibrations: &[(7.2198, 0.9448727609993625), (7.2692, 1.724537707958959), (11.599, 4.315691843951075)],
    },
};
