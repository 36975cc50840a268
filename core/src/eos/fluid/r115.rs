//!
//!
//! Source: Lemmon, E. W., Span, R., Thermodynamic Properties of R-227ea, R-365mfc, R-115, and R-13I1, J. Chem. Eng.
//! Data 60 (2015) 3745-3758, doi 10.1021/acs.jced.5b00684.
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::term::{Residual, Term};

///
pub static R115: PureFluid = PureFluid {
    designation: "R-115",
    molar_mass: 0.154466416,
    gas_constant: 8.3144621,
    reducing_temperature: 353.1,
    reducing_density: 3980.0,
    critical_temperature: 353.1,
    critical_pressure: 3129036.968278708,
    acentric_factor: 0.24843499306634587,
    lowest_temperature: 173.57,
    highest_temperature: 550.0,
    highest_pressure: 60000000.0,
    residual: Residual {
        terms: &[
            Term { n: 1.20873, t: 0.25, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -3.5446, t: 1.25, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.745302, t: 1.5, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.114128, t: 0.25, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.000436572, t: 0.875, d: 7, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.988385, t: 2.375, d: 1, l: 1, g: 1.0, m: 0.0 },
            Term { n: 1.13878, t: 2.0, d: 2, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.0215633, t: 2.125, d: 5, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.63023, t: 3.5, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.0167901, t: 6.5, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.149412, t: 4.75, d: 4, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.0271153, t: 12.5, d: 2, l: 3, g: 1.0, m: 0.0 },
        ],
        bells: &[],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: -13.405002276849826,
        linear: 10.001553773783856,
        logarithm: 3.0,
        powers: &[],
        vibrations: &[(7.142, 0.8184650240725007), (10.61, 3.6845086377796656)],
    },
};
