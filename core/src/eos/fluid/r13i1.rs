//! R-13I1.
//!
//! Source: Lemmon, E. W., Span, R., Thermodynamic Properties of R-227ea, R-365mfc, R-115, and R-13I1, J. Chem. Eng.
//! Data 60 (2015) 3745-3758, doi 10.1021/acs.jced.5b00684.
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::term::{Residual, Term};

/// R-13I1.
pub static R13I1: PureFluid = PureFluid {
    designation: "R-13I1",
    molar_mass: 0.1959104,
    gas_constant: 8.3144621,
    reducing_temperature: 396.44,
    reducing_density: 4430.6,
    critical_temperature: 396.44,
    critical_pressure: 3952566.071718672,
    acentric_factor: 0.17618111777018552,
    lowest_temperature: 120.0,
    highest_temperature: 420.0,
    highest_pressure: 50000000.0,
    residual: Residual {
        terms: &[
            Term { n: 1.12191, t: 0.25, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -3.08087, t: 1.125, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 1.11307, t: 1.5, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.184885, t: 1.375, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.110971, t: 0.25, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.000325, t: 0.875, d: 7, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.333357, t: 0.625, d: 2, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.0288288, t: 1.75, d: 5, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.371554, t: 3.625, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.0997985, t: 3.625, d: 4, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.0333205, t: 14.5, d: 3, l: 3, g: 1.0, m: 0.0 },
            Term { n: 0.0207882, t: 12.0, d: 4, l: 3, g: 1.0, m: 0.0 },
        ],
        bells: &[],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: -24.691504134838297,
        linear: 14.217528781905427,
        logarithm: 3.0,
        powers: &[],
        vibrations: &[(6.2641, 1.7505801634547473)],
    },
};
