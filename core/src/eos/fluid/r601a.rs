//! R-601a.
//!
//! Source: Lemmon, E. W., Span, R., Short Fundamental Equations of State for 20 Industrial Fluids, J. Chem. Eng. Data
//! 51 (2006) 785-850, doi 10.1021/je050186n.
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::term::{Residual, Term};

/// R-601a.
pub static R601A: PureFluid = PureFluid {
    designation: "R-601a",
    molar_mass: 0.07214878,
    gas_constant: 8.314472,
    reducing_temperature: 460.35,
    reducing_density: 3271.0,
    critical_temperature: 460.35,
    critical_pressure: 3378000.0,
    acentric_factor: 0.2274,
    lowest_temperature: 112.65,
    highest_temperature: 500.0,
    highest_pressure: 1000000000.0,
    residual: Residual {
        terms: &[
            Term { n: 1.0963, t: 0.25, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -3.0402, t: 1.125, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 1.0317, t: 1.5, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.1541, t: 1.375, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.11535, t: 0.25, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.00029809, t: 0.875, d: 7, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.39571, t: 0.625, d: 2, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.045881, t: 1.75, d: 5, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.35804, t: 3.625, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.10107, t: 3.625, d: 4, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.035484, t: 14.5, d: 3, l: 3, g: 1.0, m: 0.0 },
            Term { n: 0.018156, t: 12.0, d: 4, l: 3, g: 1.0, m: 0.0 },
        ],
        bells: &[],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: 2.5822330405,
        linear: 1.1609103419,
        logarithm: 3.0,
        powers: &[],
        vibrations: &[
            (7.4056, 0.9601390246551537),
            (9.5772, 2.409036602584989),
            (15.765, 4.494406429890301),
            (12.119, 9.108287172803301),
        ],
    },
};
