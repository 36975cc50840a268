//! R-1234ze(Z).
//!
//! Source: Akasaka, R., Lemmon, E. W., Fundamental Equations of State for cis-1,3,3,3-Tetrafluoropropene
//! [R-1234ze(Z)] and 3,3,3-Trifluoropropene (R-1243zf), J. Chem. Eng. Data 64 (2019) 4679-4691, doi
//! 10.1021/acs.jced.9b00007.
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::term::{Bell, Residual, Term};

/// R-1234ze(Z).
pub static R1234ZEZ: PureFluid = PureFluid {
    designation: "R-1234ze(Z)",
    molar_mass: 0.1140416,
    gas_constant: 8.3144598,
    reducing_temperature: 423.27,
    reducing_density: 4000.0,
    critical_temperature: 423.27,
    critical_pressure: 3530619.6704496597,
    acentric_factor: 0.32683872006421466,
    lowest_temperature: 273.0,
    highest_temperature: 440.0,
    highest_pressure: 34000000.0,
    residual: Residual {
        terms: &[
            Term { n: 0.03194509, t: 1.0, d: 4, l: 0, g: 1.0, m: 0.0 },
            Term { n: 1.394592, t: 0.333, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -2.300799, t: 1.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.2556693, t: 1.0, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.1282934, t: 0.38, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: -1.335381, t: 2.85, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -1.366494, t: 3.16, d: 3, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.2004912, t: 0.607, d: 2, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.6489709, t: 2.2, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.02220033, t: 1.0, d: 7, l: 1, g: 1.0, m: 0.0 },
        ],
        bells: &[
            Bell { n: 1.66538, t: 1.83, d: 1, eta: 1.108, epsilon: 0.933, beta: 0.563, gamma: 1.246 },
            Bell { n: 0.3427048, t: 3.3, d: 1, eta: 1.579, epsilon: 0.786, beta: 1.724, gamma: 1.05 },
            Bell { n: -0.6510217, t: 1.9, d: 3, eta: 1.098, epsilon: 0.496, beta: 0.806, gamma: 1.0 },
            Bell { n: -0.5067066, t: 2.6, d: 2, eta: 0.672, epsilon: 0.327, beta: 0.505, gamma: 0.677 },
            Bell { n: -0.1231787, t: 2.9, d: 3, eta: 3.38, epsilon: 0.523, beta: 26.4, gamma: 1.302 },
            Bell { n: 0.08828106, t: 3.0, d: 2, eta: 1.6, epsilon: 0.308, beta: 8.82, gamma: 1.274 },
        ],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: -2.422442259,
        linear: 8.190539844,
        logarithm: 3.0,
        powers: &[],
        vibrations: &[(4.2365, 0.047251163559902665), (13.063, 3.154015167623503)],
    },
};
