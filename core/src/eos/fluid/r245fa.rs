//! R-245fa.
//!
//! Source: Akasaka, R., Zhou, Y., Lemmon, E. W., A Fundamental Equation of State for 1,1,1,3,3-Pentafluoropropane
//! (R-245fa), J. Phys. Chem. Ref. Data 44 (2015) 013104, doi 10.1063/1.4913493.
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper. The ideal-gas part divides by 427.01 K as the paper does; those files have 427.16 K.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::term::{Bell, Residual, Term};

/// R-245fa.
pub static R245FA: PureFluid = PureFluid {
    designation: "R-245fa",
    molar_mass: 0.13404794,
    gas_constant: 8.3144621,
    reducing_temperature: 427.01,
    reducing_density: 3875.0,
    critical_temperature: 427.01,
    critical_pressure: 3651000.0,
    acentric_factor: 0.3776,
    lowest_temperature: 171.05,
    highest_temperature: 440.0,
    highest_pressure: 200000000.0,
    residual: Residual {
        terms: &[
            Term { n: 0.057506623, t: 1.0, d: 4, l: 0, g: 1.0, m: 0.0 },
            Term { n: 1.5615975, t: 0.27, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -2.3614485, t: 0.9, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.51773521, t: 1.09, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.18509788, t: 0.4, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.87405626, t: 2.9, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.27530955, t: 1.7, d: 3, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.57971151, t: 0.8, d: 2, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.39934306, t: 3.6, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.033230277, t: 1.05, d: 7, l: 1, g: 1.0, m: 0.0 },
        ],
        bells: &[
            Bell { n: 0.83210508, t: 1.8, d: 1, eta: 1.011, epsilon: 0.709, beta: 1.879, gamma: 1.081 },
            Bell { n: -0.335443, t: 4.0, d: 1, eta: 1.447, epsilon: 0.939, beta: 2.454, gamma: 0.651 },
            Bell { n: -0.10117801, t: 4.5, d: 3, eta: 1.079, epsilon: 0.703, beta: 1.256, gamma: 0.468 },
            Bell { n: -0.0091495867, t: 2.0, d: 3, eta: 7.86, epsilon: 0.777, beta: 21.1, gamma: 1.293 },
        ],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: -13.4283638514,
        linear: 9.87236538,
        logarithm: 3.0,
        powers: &[],
        vibrations: &[(5.5728, 0.5198941476780403), (10.385, 2.3652841853820754), (12.554, 5.737570548699094)],
    },
};
