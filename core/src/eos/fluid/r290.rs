//!
//!
//! Source: Lemmon, E. W., McLinden, M. O., Wagner, W., Thermodynamic Properties of Propane. III. A Reference Equation
//! of State for Temperatures from the Melting Line to 650 K and Pressures up to 1000 MPa, J. Chem. Eng. Data 54
//! (2009) 3141-3180, doi 10.1021/je900217v.
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::term::{Bell, Residual, Term};

///
pub static R290: PureFluid = PureFluid {
    designation: "R-290",
    molar_mass: 0.04409562,
    gas_constant: 8.314472,
    reducing_temperature: 369.89,
    reducing_density: 5000.0,
    critical_temperature: 369.89,
    critical_pressure: 4251200.0,
    acentric_factor: 0.1521,
    lowest_temperature: 85.525,
    highest_temperature: 650.0,
    highest_pressure: 1000000000.0,
    residual: Residual {
        terms: &[
            Term { n: 0.042910051, t: 1.0, d: 4, l: 0, g: 1.0, m: 0.0 },
            Term { n: 1.7313671, t: 0.33, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -2.4516524, t: 0.8, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.34157466, t: 0.43, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.46047898, t: 0.9, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.66847295, t: 2.46, d: 1, l: 1, g: 1.0, m: 0.0 },
            Term { n: 0.20889705, t: 2.09, d: 3, l: 1, g: 1.0, m: 0.0 },
            Term { n: 0.19421381, t: 0.88, d: 6, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.22917851, t: 1.09, d: 6, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.60405866, t: 3.25, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.066680654, t: 4.62, d: 3, l: 2, g: 1.0, m: 0.0 },
        ],
        bells: &[
            Bell { n: 0.017534618, t: 0.76, d: 1, eta: 0.963, epsilon: 1.283, beta: 2.33, gamma: 0.684 },
            Bell { n: 0.33874242, t: 2.5, d: 1, eta: 1.977, epsilon: 0.6936, beta: 3.47, gamma: 0.829 },
            Bell { n: 0.22228777, t: 2.75, d: 1, eta: 1.917, epsilon: 0.788, beta: 3.15, gamma: 1.419 },
            Bell { n: -0.23219062, t: 3.05, d: 2, eta: 2.307, epsilon: 0.473, beta: 3.19, gamma: 0.817 },
            Bell { n: -0.09220694, t: 2.55, d: 2, eta: 2.546, epsilon: 0.8577, beta: 0.92, gamma: 1.5 },
            Bell { n: -0.47575718, t: 8.4, d: 4, eta: 3.28, epsilon: 0.271, beta: 18.8, gamma: 1.426 },
            Bell { n: -0.017486824, t: 6.75, d: 1, eta: 14.6, epsilon: 0.948, beta: 547.8, gamma: 1.093 },
        ],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: -4.970583,
        linear: 4.29352,
        logarithm: 3.0,
        powers: &[],
        vibrations: &[(3.043, 1.062478), (5.874, 3.344237), (9.337, 5.363757), (7.922, 11.762957)],
    },
};
