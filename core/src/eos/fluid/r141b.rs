//! R-141b.
//!
//! Source: Lemmon, E. W., Span, R., Short Fundamental Equations of State for 20 Industrial Fluids, J. Chem. Eng. Data
//! 51 (2006) 785-850, doi 10.1021/je050186n.
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::term::{Residual, Term};

/// R-141b.
pub static R141B: PureFluid = PureFluid {
    designation: "R-141b",
    molar_mass: 0.11694962,
    gas_constant: 8.314472,
    reducing_temperature: 477.5,
    reducing_density: 3921.0,
    critical_temperature: 477.5,
    critical_pressure: 4212000.0,
    acentric_factor: 0.2195,
    lowest_temperature: 169.68,
    highest_temperature: 500.0,
    highest_pressure: 400000000.0,
    residual: Residual {
        terms: &[
            Term { n: 1.1469, t: 0.25, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -3.6799, t: 1.25, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 1.3469, t: 1.5, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.083329, t: 0.25, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.00025137, t: 0.875, d: 7, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.3272, t: 2.375, d: 1, l: 1, g: 1.0, m: 0.0 },
            Term { n: 0.46946, t: 2.0, d: 2, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.029829, t: 2.125, d: 5, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.31621, t: 3.5, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.026219, t: 6.5, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.078043, t: 4.75, d: 4, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.020498, t: 12.5, d: 2, l: 3, g: 1.0, m: 0.0 },
        ],
        bells: &[],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: -15.5074814985,
        linear: 9.1871858933,
        logarithm: 3.0,
        powers: &[],
        vibrations: &[(6.8978, 1.05130890052356), (7.8157, 3.290052356020942), (3.2039, 9.63979057591623)],
    },
};
