//! R-142b.
//!
//! Source: Lemmon, E. W., Span, R., Short Fundamental Equations of State for 20 Industrial Fluids, J. Chem. Eng. Data
//! 51 (2006) 785-850, doi 10.1021/je050186n.
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::term::{Residual, Term};

/// R-142b.
pub static R142B: PureFluid = PureFluid {
    designation: "R-142b",
    molar_mass: 0.10049503,
    gas_constant: 8.314472,
    reducing_temperature: 410.26,
    reducing_density: 4438.0,
    critical_temperature: 410.26,
    critical_pressure: 4055000.0,
    acentric_factor: 0.2321,
    lowest_temperature: 142.72,
    highest_temperature: 470.0,
    highest_pressure: 60000000.0,
    residual: Residual {
        terms: &[
            Term { n: 1.0038, t: 0.25, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -2.7662, t: 1.25, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.42921, t: 1.5, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.081363, t: 0.25, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.00024174, t: 0.875, d: 7, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.48246, t: 2.375, d: 1, l: 1, g: 1.0, m: 0.0 },
            Term { n: 0.75542, t: 2.0, d: 2, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.00743, t: 2.125, d: 5, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.4146, t: 3.5, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.016558, t: 6.5, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.10644, t: 4.75, d: 4, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.021704, t: 12.5, d: 2, l: 3, g: 1.0, m: 0.0 },
        ],
        bells: &[],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: -12.6016527149,
        linear: 8.3160183265,
        logarithm: 3.0,
        powers: &[],
        vibrations: &[
            (5.0385, 1.152927411885146),
            (6.8356, 3.061473212109394),
            (4.0591, 6.086384244137864),
            (2.8136, 16.67235411690148),
        ],
    },
};
