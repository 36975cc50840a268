//! R-1243zf.
//!
//! Source: Akasaka, R., Lemmon, E. W., A Helmholtz Energy Equation of State for 3,3,3-Trifluoroprop-1-ene (R-1243zf),
//! Int. J. Thermophys. 46 (2025), doi 10.1007/s10765-024-03481-6.
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::term::{Bell, Residual, Term};

/// R-1243zf.
pub static R1243ZF: PureFluid = PureFluid {
    designation: "R-1243zf",
    molar_mass: 0.09605113,
    gas_constant: 8.314462618,
    reducing_temperature: 376.93,
    reducing_density: 4300.0,
    critical_temperature: 376.93,
    critical_pressure: 3513700.0,
    acentric_factor: 0.2595,
    lowest_temperature: 122.35,
    highest_temperature: 430.0,
    highest_pressure: 35000000.0,
    residual: Residual {
        terms: &[
            Term { n: 0.02626021, t: 1.0, d: 4, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.701348, t: 0.12425, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.6180002748076, t: 1.0096, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.1916400159007, t: 0.271875, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.0762, t: 0.405, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.795, t: 1.07288, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.8537, t: 1.45525, d: 1, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.3531, t: 2.105, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.07971, t: 6.07, d: 1, l: 3, g: 1.0, m: 0.0 },
            Term { n: -0.05411, t: 5.794375, d: 2, l: 3, g: 0.66, m: 0.0 },
            Term { n: -0.0424, t: 4.094, d: 3, l: 3, g: 0.33, m: 0.0 },
        ],
        bells: &[
            Bell { n: -0.06774, t: 1.029, d: 1, eta: 0.78, epsilon: 1.09375, beta: 0.0, gamma: 1.0 },
            Bell { n: -0.01032, t: 1.65, d: 2, eta: 2.796, epsilon: 1.0392, beta: 0.0, gamma: 1.0 },
            Bell { n: -0.1184, t: 1.62, d: 1, eta: 1.643, epsilon: -0.3076, beta: 1.86, gamma: 0.80625 },
            Bell { n: -0.1135, t: 1.653125, d: 1, eta: 3.03, epsilon: -0.426, beta: 2.03, gamma: 1.16 },
        ],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: -12.2722866918,
        linear: 8.2858157407,
        logarithm: 3.0,
        powers: &[],
        vibrations: &[(13.285, 2.328283766216539), (7.67, 9.451357015891544)],
    },
};
