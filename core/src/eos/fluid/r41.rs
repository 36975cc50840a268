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
pub static R41: PureFluid = PureFluid {
    designation: "R-41",
    molar_mass: 0.03403291999999999,
    gas_constant: 8.314472,
    reducing_temperature: 317.28,
    reducing_density: 9300.0,
    critical_temperature: 317.28000000000003,
    critical_pressure: 5897000.0,
    acentric_factor: 0.2004,
    lowest_temperature: 129.82,
    highest_temperature: 425.0,
    highest_pressure: 70000000.0,
    residual: Residual {
        terms: &[
            Term { n: 0.85316, t: 0.25, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -2.6366, t: 1.25, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.69129, t: 1.5, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.054681, t: 0.25, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.00012796, t: 0.875, d: 7, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.37093, t: 2.375, d: 1, l: 1, g: 1.0, m: 0.0 },
            Term { n: 0.3392, t: 2.0, d: 2, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.0017413, t: 2.125, d: 5, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.095417, t: 3.5, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.078852, t: 6.5, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.030729, t: 4.75, d: 4, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.011497, t: 12.5, d: 2, l: 3, g: 1.0, m: 0.0 },
        ],
        bells: &[],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: -4.866121518741791,
        linear: 4.249245536695425,
        logarithm: 3.0,
        powers: &[(-0.0268688568, -1.0)],
        vibrations: &[(5.6936, 5.802445789208271), (2.9351, 13.33837619768028)],
    },
};
