//! R-236fa.
//!
//! Source: Pan, J., Rui, X., Zhao, X., Qiu, L., An equation of state for the thermodynamic properties of
//! 1,1,1,3,3,3-hexafluoropropane (HFC-236fa), Fluid Phase Equilib. 321 (2012) 10-16, doi 10.1016/j.fluid.2012.02.012.
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::term::{Bell, Residual, Term};

/// R-236fa.
pub static R236FA: PureFluid = PureFluid {
    designation: "R-236fa",
    molar_mass: 0.1520384,
    gas_constant: 8.314472,
    reducing_temperature: 398.07,
    reducing_density: 3626.0,
    critical_temperature: 398.07,
    critical_pressure: 3200000.0,
    acentric_factor: 0.3769117976336991,
    lowest_temperature: 179.60000000000002,
    highest_temperature: 400.0,
    highest_pressure: 70000000.0,
    residual: Residual {
        terms: &[
            Term { n: 0.04453255, t: 1.07, d: 4, l: 0, g: 1.0, m: 0.0 },
            Term { n: 1.777017, t: 0.222, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -2.230519, t: 0.66, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.6708606, t: 1.33, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.1587907, t: 0.227, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: -1.425119, t: 2.33, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.6461628, t: 1.94, d: 3, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.8469985, t: 1.53, d: 2, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.5635356, t: 2.65, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.01535611, t: 0.722, d: 7, l: 1, g: 1.0, m: 0.0 },
        ],
        bells: &[
            Bell { n: 1.156362, t: 1.11, d: 1, eta: 1.02, epsilon: 0.712, beta: 1.42, gamma: 1.13 },
            Bell { n: -0.407031, t: 2.31, d: 1, eta: 1.336, epsilon: 0.91, beta: 2.31, gamma: 0.67 },
            Bell { n: -0.2172753, t: 3.68, d: 3, eta: 1.055, epsilon: 0.677, beta: 0.89, gamma: 0.46 },
            Bell { n: -1.007176, t: 4.23, d: 3, eta: 5.84, epsilon: 0.718, beta: 80.0, gamma: 1.28 },
            Bell { n: -6.902909e-05, t: 0.614, d: 2, eta: 16.2, epsilon: 1.64, beta: 108.0, gamma: 1.2 },
        ],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: -17.5983849,
        linear: 8.87150449,
        logarithm: 9.175,
        powers: &[],
        vibrations: &[(9.8782, 2.416660386364208), (18.236, 6.014017635089306), (49.934, 13.03288366367724)],
    },
};
