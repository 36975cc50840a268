//!
//!
//! Source: Penoncello, S. G., Lemmon, E. W., Jacobsen, R. T, Shan, Z., A Fundamental Equation for Trifluoromethane
//! J. Phys. Chem. Ref. Data 32 (2003) 1473-1499, doi 10.1063/1.1559671.
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::term::{Residual, Term};

///
pub static R23: PureFluid = PureFluid {
    designation: "R-23",
    molar_mass: 0.07001385,
    gas_constant: 8.314472,
    reducing_temperature: 299.293,
    reducing_density: 7520.0,
    critical_temperature: 299.293,
    critical_pressure: 4832000.0,
    acentric_factor: 0.262964892496154,
    lowest_temperature: 118.02,
    highest_temperature: 475.0,
    highest_pressure: 120000000.0,
    residual: Residual {
        terms: &[
            Term { n: 7.041529, t: 0.744, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -8.259512, t: 0.94, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.00805304, t: 4.3, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.08617615, t: 1.46, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.00633341, t: 0.68, d: 5, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.1863285, t: 4.8, d: 1, l: 1, g: 1.0, m: 0.0 },
            Term { n: 0.328051, t: 1.5, d: 2, l: 1, g: 1.0, m: 0.0 },
            Term { n: 0.5191023, t: 2.07, d: 3, l: 1, g: 1.0, m: 0.0 },
            Term { n: 0.06916144, t: 0.09, d: 5, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.005045875, t: 9.6, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.01744221, t: 0.19, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.05003972, t: 11.2, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.04729813, t: 0.27, d: 4, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.06164031, t: 1.6, d: 4, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.01583585, t: 10.3, d: 4, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.00179579, t: 14.0, d: 2, l: 3, g: 1.0, m: 0.0 },
            Term { n: -0.001099007, t: 15.0, d: 2, l: 4, g: 1.0, m: 0.0 },
        ],
        bells: &[],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: -8.31386064,
        linear: 6.55087253,
        logarithm: 2.999,
        powers: &[],
        vibrations: &[
            (2.371, 2.485858339486724),
            (3.237, 4.874821663052594),
            (2.61, 7.133477896242144),
            (0.8274, 16.4086697650797),
        ],
    },
};
