//!
//!
//! Source: Buecker, D., Wagner, W., Reference Equations of State for the Thermodynamic Properties of Fluid Phase
//! n-Butane and Isobutane, J. Phys. Chem. Ref. Data 35 (2006) 929-1019, doi 10.1063/1.1901687.
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::term::{Bell, Residual, Term};

///
pub static R600: PureFluid = PureFluid {
    designation: "R-600",
    molar_mass: 0.0581222,
    gas_constant: 8.314472,
    reducing_temperature: 425.125,
    reducing_density: 3922.7696129878,
    critical_temperature: 425.125,
    critical_pressure: 3796000.0,
    acentric_factor: 0.200810094644,
    lowest_temperature: 134.895,
    highest_temperature: 575.0,
    highest_pressure: 12000000.0,
    residual: Residual {
        terms: &[
            Term { n: 2.5536998241635, t: 0.5, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -4.4585951806696, t: 1.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.82425886369063, t: 1.5, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.11215007011442, t: 0.0, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.035910933680333, t: 0.5, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.016790508518103, t: 0.5, d: 4, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.032734072508724, t: 0.75, d: 4, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.95571232982005, t: 2.0, d: 1, l: 1, g: 1.0, m: 0.0 },
            Term { n: -1.0003385753419, t: 2.5, d: 1, l: 1, g: 1.0, m: 0.0 },
            Term { n: 0.085581548803855, t: 2.5, d: 2, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.025147918369616, t: 1.5, d: 7, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.0015202958578918, t: 1.0, d: 8, l: 1, g: 1.0, m: 0.0 },
            Term { n: 0.004706068232642, t: 1.5, d: 8, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.097845414174006, t: 4.0, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.04831790415876, t: 7.0, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.17841271865468, t: 3.0, d: 3, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.018173836739334, t: 7.0, d: 3, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.11399068074953, t: 3.0, d: 4, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.019329896666669, t: 1.0, d: 5, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.001157587740101, t: 6.0, d: 5, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.00015253808698116, t: 0.0, d: 10, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.043688558458471, t: 6.0, d: 2, l: 3, g: 1.0, m: 0.0 },
            Term { n: -0.0082403190629989, t: 13.0, d: 6, l: 3, g: 1.0, m: 0.0 },
        ],
        bells: &[
            Bell { n: -0.028390056949441, t: 2.0, d: 1, eta: 10.0, epsilon: 0.85, beta: 150.0, gamma: 1.16 },
            Bell { n: 0.0014904666224681, t: 0.0, d: 2, eta: 10.0, epsilon: 1.0, beta: 200.0, gamma: 1.13 },
        ],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: -5.4249595938978,
        linear: 4.9194951283242,
        logarithm: 3.24680487,
        powers: &[],
        vibrations: &[
            (5.54913289, 0.774840445),
            (11.4648996, 3.340602552),
            (7.59987584, 4.970513096),
            (9.66033239, 9.975553778),
        ],
    },
};
