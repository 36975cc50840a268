//!
//!
//! Source: Wu, J., Zhou, Y., An Equation of State for Fluoroethane (R161), Int. J. Thermophys. 33 (2012) 220-234, doi
//! 10.1007/s10765-011-1151-3.
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::term::{Bell, Residual, Term};

///
pub static R161: PureFluid = PureFluid {
    designation: "R-161",
    molar_mass: 0.0480595,
    gas_constant: 8.314472,
    reducing_temperature: 375.25,
    reducing_density: 6280.0,
    critical_temperature: 375.25,
    critical_pressure: 5010000.0,
    acentric_factor: 0.2162428410661867,
    lowest_temperature: 130.0,
    highest_temperature: 450.0,
    highest_pressure: 5000000.0,
    residual: Residual {
        terms: &[
            Term { n: 1.511, t: 0.37, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -2.3, t: 0.97, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.457, t: 1.14, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.1683, t: 0.744, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.04133, t: 1.0, d: 4, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.62187, t: 1.26, d: 2, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.0265, t: 1.0, d: 7, l: 1, g: 1.0, m: 0.0 },
            Term { n: -1.03, t: 1.8, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.285, t: 3.0, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.476, t: 2.25, d: 3, l: 2, g: 1.0, m: 0.0 },
        ],
        bells: &[
            Bell { n: 0.82, t: 1.0, d: 1, eta: 0.96, epsilon: 0.683, beta: 2.7, gamma: 0.9 },
            Bell { n: -0.3532, t: 1.2, d: 1, eta: 1.35, epsilon: 0.892, beta: 5.2, gamma: 0.69 },
            Bell { n: -0.116, t: 5.3, d: 3, eta: 1.26, epsilon: 0.785, beta: 3.9, gamma: 0.67 },
            Bell { n: -0.0220583, t: 1.0, d: 3, eta: 1.23, epsilon: 1.33, beta: 4.7, gamma: 0.67 },
            Bell { n: -1.63148, t: 4.0, d: 3, eta: 16.8, epsilon: 0.86, beta: 413.0, gamma: 1.15 },
        ],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: -6.918657819434249,
        linear: 5.478795457582861,
        logarithm: 3.0,
        powers: &[],
        vibrations: &[(2.059, 1.11925383077948), (9.253, 4.125249833444371), (6.088, 10.34510326449034)],
    },
};
