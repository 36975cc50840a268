//!
//!
//! Source: Lemmon, E. W., Jacobsen, R. T, A New Functional Form and New Fitting Techniques for Equations of State
//! with Application to Pentafluoroethane (HFC-125), J. Phys. Chem. Ref. Data 34 (2005) 69-108, doi 10.1063/1.1797813.
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::term::{Residual, Term};

///
pub static R125: PureFluid = PureFluid {
    designation: "R-125",
    molar_mass: 0.1200214,
    gas_constant: 8.314472,
    reducing_temperature: 339.173,
    reducing_density: 4779.0,
    critical_temperature: 339.173,
    critical_pressure: 3617700.0,
    acentric_factor: 0.3052,
    lowest_temperature: 172.52,
    highest_temperature: 500.0,
    highest_pressure: 60000000.0,
    residual: Residual {
        terms: &[
            Term { n: 5.28076, t: 0.669, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -8.67658, t: 1.05, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.7501127, t: 2.75, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.7590023, t: 0.956, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.01451899, t: 1.0, d: 4, l: 0, g: 1.0, m: 0.0 },
            Term { n: 4.777189, t: 2.0, d: 1, l: 1, g: 1.0, m: 0.0 },
            Term { n: -3.330988, t: 2.75, d: 1, l: 1, g: 1.0, m: 0.0 },
            Term { n: 3.775673, t: 2.38, d: 2, l: 1, g: 1.0, m: 0.0 },
            Term { n: -2.290919, t: 3.37, d: 2, l: 1, g: 1.0, m: 0.0 },
            Term { n: 0.8888268, t: 3.47, d: 3, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.6234864, t: 2.63, d: 4, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.04127263, t: 3.45, d: 5, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.08455389, t: 0.72, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.1308752, t: 4.23, d: 5, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.008344962, t: 0.2, d: 1, l: 3, g: 1.0, m: 0.0 },
            Term { n: -1.532005, t: 4.5, d: 2, l: 2, g: 1.0, m: 1.7 },
            Term { n: -0.05883649, t: 29.0, d: 3, l: 3, g: 1.0, m: 7.0 },
            Term { n: 0.02296658, t: 24.0, d: 5, l: 3, g: 1.0, m: 6.0 },
        ],
        bells: &[],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: 37.2674,
        linear: 8.88404,
        logarithm: -1.0,
        powers: &[(-49.8651, -0.1)],
        vibrations: &[(2.303, 0.92578), (5.086, 2.22895), (7.3, 5.03283)],
    },
};
