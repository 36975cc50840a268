//!
//!
//! Source: de Vries, B., Tillner-Roth, R., Baehr, H. D., Thermodynamic Properties of HCFC 124, Proc. 19th
//! International Congress of Refrigeration, The Hague (1995) 582-589.
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::term::{Residual, Term};

///
pub static R124: PureFluid = PureFluid {
    designation: "R-124",
    molar_mass: 0.1364762,
    gas_constant: 8.314471,
    reducing_temperature: 395.425,
    reducing_density: 4103.2795461773,
    critical_temperature: 395.425,
    critical_pressure: 3624295.0,
    acentric_factor: 0.2880950842214292,
    lowest_temperature: 120.0,
    highest_temperature: 470.0,
    highest_pressure: 40000000.0,
    residual: Residual {
        terms: &[
            Term { n: -0.01262962, t: 2.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 2.168373, t: 0.5, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -3.330033, t: 1.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.1610361, t: 0.5, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: -9.666145e-05, t: 2.5, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.0119131, t: -1.0, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.002880217, t: 1.0, d: 5, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.001681346, t: 0.0, d: 6, l: 0, g: 1.0, m: 0.0 },
            Term { n: 1.594968e-05, t: -0.5, d: 8, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.1289674, t: 1.5, d: 2, l: 1, g: 1.0, m: 0.0 },
            Term { n: 1.182213e-05, t: 1.0, d: 12, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.4713997, t: 2.5, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.2412873, t: -0.25, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.6868066, t: 1.0, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.08621095, t: 5.0, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: 4.728645e-06, t: 2.0, d: 15, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.01487933, t: 15.0, d: 3, l: 3, g: 1.0, m: 0.0 },
            Term { n: -0.03001338, t: 20.0, d: 3, l: 3, g: 1.0, m: 0.0 },
            Term { n: 0.001849606, t: 15.0, d: 4, l: 4, g: 1.0, m: 0.0 },
            Term { n: 0.0004126073, t: 45.0, d: 9, l: 4, g: 1.0, m: 0.0 },
        ],
        bells: &[],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: -11.669550036507408,
        linear: 9.876117308843154,
        logarithm: 2.175638,
        powers: &[(-7.389735, -1.0), (0.8736831, -2.0), (-0.1115133, -3.0)],
        vibrations: &[],
    },
};
