//! R-1233zd(E).
//!
//! Source: Akasaka, R., Lemmon, E. W., An International Standard Formulation for
//! trans-1-Chloro-3,3,3-trifluoroprop-1-ene [R1233zd(E)] Covering Temperatures from the Triple-point Temperature to
//! 450 K and Pressures up to 100 MPa, J. Phys. Chem. Ref. Data 51 (2022) 023101, doi 10.1063/5.0083026.
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::term::{Bell, Residual, Term};

/// R-1233zd(E).
pub static R1233ZDE: PureFluid = PureFluid {
    designation: "R-1233zd(E)",
    molar_mass: 0.1304962,
    gas_constant: 8.314462618,
    reducing_temperature: 438.86,
    reducing_density: 3704.0,
    critical_temperature: 438.86,
    critical_pressure: 3582800.0,
    acentric_factor: 0.304,
    lowest_temperature: 165.75,
    highest_temperature: 450.0,
    highest_pressure: 100000000.0,
    residual: Residual {
        terms: &[
            Term { n: 0.04394257, t: 1.0, d: 4, l: 0, g: 1.0, m: 0.0 },
            Term { n: 1.062919, t: 0.182, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -1.2879140374971, t: 0.865, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.8088618920845, t: 1.0924, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.2372427, t: 0.49, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: -1.9403, t: 1.958, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -2.831967, t: 2.05, d: 3, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.373421, t: 0.658, d: 2, l: 1, g: 1.0, m: 0.0 },
            Term { n: -1.515798, t: 2.051, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.02755627, t: 0.862, d: 7, l: 1, g: 1.0, m: 0.0 },
        ],
        bells: &[
            Bell { n: 4.24023, t: 1.852, d: 1, eta: 1.532, epsilon: 0.8834, beta: 0.2912, gamma: 1.7171 },
            Bell { n: -0.03152671, t: 1.92, d: 2, eta: 0.635, epsilon: 1.386, beta: 0.6245, gamma: 0.63 },
            Bell { n: -1.366494, t: 1.936, d: 3, eta: 1.4056, epsilon: 0.5196, beta: 0.669, gamma: 0.7852 },
            Bell { n: 2.647143, t: 1.515, d: 1, eta: 1.451, epsilon: 1.133, beta: 0.5798, gamma: 2.251 },
            Bell { n: -2.325463, t: 2.668, d: 1, eta: 1.395, epsilon: 0.9788, beta: 0.4643, gamma: 1.821 },
            Bell { n: -0.2541521, t: 1.755, d: 1, eta: 2.259, epsilon: 1.166, beta: 2.449, gamma: 2.074 },
            Bell { n: 0.1330834, t: 0.526, d: 1, eta: 24.3, epsilon: 0.9244, beta: 1061.4, gamma: 1.0797 },
            Bell { n: -0.1569217, t: 2.98, d: 1, eta: 23.6, epsilon: 0.9372, beta: 917.8, gamma: 1.084 },
        ],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: -17.291229931888,
        linear: 10.404947446884,
        logarithm: 3.0,
        powers: &[],
        vibrations: &[(13.7, 1.7340381898555348), (7.0974, 6.539670965683817)],
    },
};
