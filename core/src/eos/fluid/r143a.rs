//! R-143a.
//!
//! Source: Lemmon, E. W., Jacobsen, R. T, An International Standard Formulation for the Thermodynamic Properties of
//! 1,1,1-Trifluoroethane (HFC-143a) for Temperatures From 161 to 450 K and Pressures to 50 MPa, J. Phys. Chem. Ref.
//! Data 29 (2000) 521-552, doi 10.1063/1.1318909.
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper. A heat capacity given there as a function of temperature is integrated here.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::term::{Residual, Term};

/// R-143a.
pub static R143A: PureFluid = PureFluid {
    designation: "R-143a",
    molar_mass: 0.08404099999999999,
    gas_constant: 8.314472,
    reducing_temperature: 345.857,
    reducing_density: 5128.45,
    critical_temperature: 345.857,
    critical_pressure: 3761000.0,
    acentric_factor: 0.261489646224,
    lowest_temperature: 161.34,
    highest_temperature: 650.0,
    highest_pressure: 150000000.0,
    residual: Residual {
        terms: &[
            Term { n: 7.7736443, t: 0.67, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -8.70185, t: 0.833, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.27779799, t: 1.7, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.1460922, t: 1.82, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.0089581616, t: 0.35, d: 5, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.20552116, t: 3.9, d: 1, l: 1, g: 1.0, m: 0.0 },
            Term { n: 0.10653258, t: 0.95, d: 3, l: 1, g: 1.0, m: 0.0 },
            Term { n: 0.023270816, t: 0.0, d: 5, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.013247542, t: 1.19, d: 7, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.04279387, t: 7.2, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.36221685, t: 5.9, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.25671899, t: 7.65, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.092326113, t: 7.5, d: 3, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.083774837, t: 7.45, d: 4, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.017128445, t: 15.5, d: 2, l: 3, g: 1.0, m: 0.0 },
            Term { n: -0.01725611, t: 22.0, d: 3, l: 3, g: 1.0, m: 0.0 },
            Term { n: 0.0049080492, t: 19.0, d: 5, l: 3, g: 1.0, m: 0.0 },
        ],
        bells: &[],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: 5.903048119431677,
        linear: 7.307250621491637,
        logarithm: -1.0,
        powers: &[(-16.591049152078973, -0.33)],
        vibrations: &[(4.4402, 5.178440800677737), (3.7515, 2.379596191489546)],
    },
};
