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
pub static R116: PureFluid = PureFluid {
    designation: "R-116",
    molar_mass: 0.13801182,
    gas_constant: 8.314472,
    reducing_temperature: 293.03,
    reducing_density: 4444.0,
    critical_temperature: 293.03000000000003,
    critical_pressure: 3048000.0,
    acentric_factor: 0.2566,
    lowest_temperature: 173.10000000000002,
    highest_temperature: 425.0,
    highest_pressure: 50000000.0,
    residual: Residual {
        terms: &[
            Term { n: 1.1632, t: 0.25, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -2.8123, t: 1.125, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.77202, t: 1.5, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.14331, t: 1.375, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.10227, t: 0.25, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.00024629, t: 0.875, d: 7, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.30893, t: 0.625, d: 2, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.028499, t: 1.75, d: 5, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.30343, t: 3.625, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.068793, t: 3.625, d: 4, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.027218, t: 14.5, d: 3, l: 3, g: 1.0, m: 0.0 },
            Term { n: 0.010665, t: 12.0, d: 4, l: 3, g: 1.0, m: 0.0 },
        ],
        bells: &[],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: -10.7088650331,
        linear: 8.9148979056,
        logarithm: 3.0,
        powers: &[],
        vibrations: &[(2.4818, 0.6483977749718459), (7.0622, 2.122649558065727), (7.9951, 5.016551206361124)],
    },
};
