//! R-134a.
//!
//! Source: Tillner-Roth, R., Baehr, H. D., An International Standard Formulation for the Thermodynamic Properties of
//! 1,1,1,2-Tetrafluoroethane (HFC-134a) for Temperatures from 170 K to 455 K and Pressures up to 70 MPa, J. Phys.
//! Chem. Ref. Data 23 (1994) 657-729, doi 10.1063/1.555958.
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::term::{Residual, Term};

/// R-134a.
pub static R134A: PureFluid = PureFluid {
    designation: "R-134a",
    molar_mass: 0.102032,
    gas_constant: 8.314471,
    reducing_temperature: 374.18,
    reducing_density: 4978.830171,
    critical_temperature: 374.21,
    critical_pressure: 4059280.0,
    acentric_factor: 0.32684,
    lowest_temperature: 169.85,
    highest_temperature: 455.0,
    highest_pressure: 70000000.0,
    residual: Residual {
        terms: &[
            Term { n: 0.05586817, t: -0.5, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.498223, t: 0.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.02458698, t: 0.0, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.0008570145, t: 0.0, d: 6, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.0004788584, t: 1.5, d: 6, l: 0, g: 1.0, m: 0.0 },
            Term { n: -1.800808, t: 1.5, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.2671641, t: 2.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.04781652, t: 2.0, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.01423987, t: 1.0, d: 5, l: 1, g: 1.0, m: 0.0 },
            Term { n: 0.3324062, t: 3.0, d: 2, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.007485907, t: 5.0, d: 2, l: 1, g: 1.0, m: 0.0 },
            Term { n: 0.0001017263, t: 1.0, d: 4, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.5184567, t: 5.0, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.08692288, t: 5.0, d: 4, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.2057144, t: 6.0, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.005000457, t: 10.0, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.0004603262, t: 10.0, d: 4, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.003497836, t: 10.0, d: 1, l: 3, g: 1.0, m: 0.0 },
            Term { n: 0.006995038, t: 18.0, d: 5, l: 3, g: 1.0, m: 0.0 },
            Term { n: -0.01452184, t: 22.0, d: 3, l: 3, g: 1.0, m: 0.0 },
            Term { n: -0.0001285458, t: 50.0, d: 10, l: 4, g: 1.0, m: 0.0 },
        ],
        bells: &[],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: -1.019535,
        linear: 9.047135,
        logarithm: -1.629789,
        powers: &[(-9.723916, -0.5), (-3.92717, -0.75)],
        vibrations: &[],
    },
};
