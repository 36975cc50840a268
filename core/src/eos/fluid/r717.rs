//!
//!
//! Source: Gao, K., Wu, J., Bell, I. H., Lemmon, E. W., Thermodynamic Properties of Ammonia for Temperatures from the
//! Melting Line to 725 K and Pressures to 1000 MPa, J. Phys. Chem. Ref. Data (2020, preliminary form under this
//! title); published as Gao, K., Wu, J., Bell, I. H., Harvey, A. H., Lemmon, E. W., A Reference Equation of State
//! with an Associating Term for the Thermodynamic Properties of Ammonia, J. Phys. Chem. Ref. Data 52 (2023) 013102,
//! doi 10.1063/5.0128269.
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper. The gas constant is the one with which the check values of the published paper (J. Phys. Chem. Ref. Data 52
//! (2023) 013102) are met; those files have another.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::special::Steep;
use crate::eos::term::{Bell, Residual, Term};

///
pub static R717: PureFluid = PureFluid {
    designation: "R-717",
    molar_mass: 0.01703052,
    gas_constant: 8.314462618,
    reducing_temperature: 405.56,
    reducing_density: 13696.0,
    critical_temperature: 405.56,
    critical_pressure: 11363391.162815327,
    acentric_factor: 0.2556905229865023,
    lowest_temperature: 195.495,
    highest_temperature: 725.0,
    highest_pressure: 1000000000.0,
    residual: Residual {
        terms: &[
            Term { n: 0.006132232, t: 1.0, d: 4, l: 0, g: 1.0, m: 0.0 },
            Term { n: 1.7395866, t: 0.382, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -2.2261792, t: 1.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.30127553, t: 1.0, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.08967023, t: 0.677, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.076387037, t: 2.915, d: 3, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.84063963, t: 3.51, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.27026327, t: 1.063, d: 3, l: 1, g: 1.0, m: 0.0 },
        ],
        bells: &[
            Bell { n: 6.212578, t: 0.655, d: 1, eta: 0.42776, epsilon: -0.0726, beta: 1.708, gamma: 1.036 },
            Bell { n: -5.7844357, t: 1.3, d: 1, eta: 0.6424, epsilon: -0.1274, beta: 1.4865, gamma: 1.2777 },
            Bell { n: 2.4817542, t: 3.1, d: 1, eta: 0.8175, epsilon: 0.7527, beta: 2.0915, gamma: 1.083 },
            Bell { n: -2.3739168, t: 1.4395, d: 2, eta: 0.7995, epsilon: 0.57, beta: 2.43, gamma: 1.2906 },
            Bell { n: 0.01493697, t: 1.623, d: 2, eta: 0.91, epsilon: 2.2, beta: 0.488, gamma: 0.928 },
            Bell { n: -3.7749264, t: 0.643, d: 1, eta: 0.3574, epsilon: -0.243, beta: 1.1, gamma: 0.934 },
            Bell { n: 0.0006254348, t: 1.13, d: 3, eta: 1.21, epsilon: 2.96, beta: 0.85, gamma: 0.919 },
            Bell { n: -1.7359e-05, t: 4.5, d: 3, eta: 4.14, epsilon: 3.02, beta: 1.14, gamma: 1.852 },
            Bell { n: -0.13462033, t: 1.0, d: 1, eta: 22.56, epsilon: 0.9574, beta: 945.64, gamma: 1.05897 },
            Bell { n: 0.07749072839, t: 4.0, d: 1, eta: 22.68, epsilon: 0.9576, beta: 993.85, gamma: 1.05277 },
        ],
        steep: &[
            Steep {
                n: -1.6909858,
                t: 4.3315,
                d: 1,
                eta: 2.8452,
                epsilon: 0.4478,
                beta: 0.3696,
                gamma: 1.108,
                b: 1.244,
            },
            Steep {
                n: 0.93739074,
                t: 4.015,
                d: 1,
                eta: 2.8342,
                epsilon: 0.44689,
                beta: 0.2962,
                gamma: 1.313,
                b: 0.6826,
            },
        ],
        critical: &[],
    },
    ideal: Ideal {
        constant: -6.59406093943886,
        linear: 5.60101151987913,
        logarithm: 3.0,
        powers: &[],
        vibrations: &[(2.224, 4.0585856593352405), (3.148, 9.776605187888352), (0.9579, 17.829667620080876)],
    },
};
