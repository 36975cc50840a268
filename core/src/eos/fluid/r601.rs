//!
//!
//! Source: Thol, M., Uhde, T., Lemmon, E. W., Span, R., Fundamental Equations of State for Hydrocarbons. Part I.
//! n-Pentane, Fluid Phase Equilib. 493 (2019) 173-187 (citation from memory).
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::term::{Bell, Residual, Term};

///
pub static R601: PureFluid = PureFluid {
    designation: "R-601",
    molar_mass: 0.07214878,
    gas_constant: 8.3144598,
    reducing_temperature: 469.7,
    reducing_density: 3210.0,
    critical_temperature: 469.70000000000005,
    critical_pressure: 3367518.9947363394,
    acentric_factor: 0.251031912680427,
    lowest_temperature: 143.47,
    highest_temperature: 650.0,
    highest_pressure: 780000000.0,
    residual: Residual {
        terms: &[
            Term { n: 0.042952795, t: 1.0, d: 4, l: 0, g: 1.0, m: 0.0 },
            Term { n: 2.4923999, t: 0.367, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -2.603872, t: 0.704, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.83829913, t: 1.04, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.19223378, t: 0.494, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: -3.0778196, t: 1.34, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.000324816, t: 0.688, d: 1, l: 3, g: 1.0, m: 0.0 },
            Term { n: -1.6781976, t: 1.688, d: 3, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.6416425, t: 0.88, d: 2, l: 1, g: 1.0, m: 0.0 },
            Term { n: -1.7300934, t: 1.357, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.017585046, t: 1.021, d: 7, l: 1, g: 1.0, m: 0.0 },
        ],
        bells: &[
            Bell { n: 4.5708883, t: 0.979, d: 1, eta: 1.01, epsilon: 0.927, beta: 0.583, gamma: 1.06 },
            Bell { n: -0.0758188, t: 2.966, d: 1, eta: 4.77, epsilon: 0.968, beta: 31.6, gamma: 1.37 },
            Bell { n: -0.62122633, t: 1.35, d: 3, eta: 1.13, epsilon: 0.735, beta: 0.52, gamma: 1.09 },
            Bell { n: -0.42413043, t: 0.664, d: 2, eta: 1.08, epsilon: 1.196, beta: 0.654, gamma: 1.19 },
            Bell { n: -2.0418443, t: 0.937, d: 2, eta: 1.12, epsilon: 0.617, beta: 0.75, gamma: 0.83 },
        ],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: 8.509252832282648,
        linear: 0.06430584062033375,
        logarithm: 3.0,
        powers: &[],
        vibrations: &[(6.618, 0.3278688524590164), (15.97, 2.8188205237385566), (15.29, 5.607834788162657)],
    },
};
