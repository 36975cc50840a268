//! R-600a.
//!
//! Source: Buecker, D., Wagner, W., Reference Equations of State for the Thermodynamic Properties of Fluid Phase
//! n-Butane and Isobutane, J. Phys. Chem. Ref. Data 35 (2006) 929-1019, doi 10.1063/1.1901687.
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::term::{Bell, Residual, Term};

/// R-600a.
pub static R600A: PureFluid = PureFluid {
    designation: "R-600a",
    molar_mass: 0.0581222,
    gas_constant: 8.314472,
    reducing_temperature: 407.81,
    reducing_density: 3879.756788284,
    critical_temperature: 407.817,
    critical_pressure: 3629000.0,
    acentric_factor: 0.183531783208,
    lowest_temperature: 113.73,
    highest_temperature: 575.0,
    highest_pressure: 35000000.0,
    residual: Residual {
        terms: &[
            Term { n: 2.0686820727966, t: 0.5, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -3.6400098615204, t: 1.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.51968754427244, t: 1.5, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.17745845870123, t: 0.0, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.12361807851599, t: 0.5, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.045145314010528, t: 0.5, d: 4, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.03047647996598, t: 0.75, d: 4, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.75508387706302, t: 2.0, d: 1, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.85885381015629, t: 2.5, d: 1, l: 1, g: 1.0, m: 0.0 },
            Term { n: 0.036324009830684, t: 2.5, d: 2, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.01954879945055, t: 1.5, d: 7, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.004445239290496, t: 1.0, d: 8, l: 1, g: 1.0, m: 0.0 },
            Term { n: 0.004641076366646, t: 1.5, d: 8, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.071444097992825, t: 4.0, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.080765060030713, t: 7.0, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.15560460945053, t: 3.0, d: 3, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.0020318752160332, t: 7.0, d: 3, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.10624883571689, t: 3.0, d: 4, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.039807690546305, t: 1.0, d: 5, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.016371431292386, t: 6.0, d: 5, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.00053212200682628, t: 0.0, d: 10, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.0078681561156387, t: 6.0, d: 2, l: 3, g: 1.0, m: 0.0 },
            Term { n: -0.0030981191888963, t: 13.0, d: 6, l: 3, g: 1.0, m: 0.0 },
        ],
        bells: &[
            Bell { n: -0.042276036810382, t: 2.0, d: 1, eta: 10.0, epsilon: 0.85, beta: 150.0, gamma: 1.16 },
            Bell { n: -0.0053001044558079, t: 0.0, d: 2, eta: 10.0, epsilon: 1.0, beta: 200.0, gamma: 1.13 },
        ],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: -5.9995093886993995,
        linear: 5.018945810443899,
        logarithm: 3.05956619,
        powers: &[],
        vibrations: &[
            (4.94641014, 0.951277902),
            (4.09475197, 2.387895885),
            (15.6632824, 4.346904269),
            (9.73918122, 10.36885864),
        ],
    },
};
