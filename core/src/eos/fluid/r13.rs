//!
//!
//! Source: Platzer, B., Polt, A., Maurer, G., Thermophysical Properties of Refrigerants, Springer, Berlin (1990), doi
//! 10.1007/978-3-662-02608-3.
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper. A heat capacity given there as a function of temperature is integrated here.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::term::{Residual, Term};

///
pub static R13: PureFluid = PureFluid {
    designation: "R-13",
    molar_mass: 0.104459,
    gas_constant: 8.31451,
    reducing_temperature: 301.88,
    reducing_density: 5570.98,
    critical_temperature: 301.88,
    critical_pressure: 3879000.0,
    acentric_factor: 0.174586327798,
    lowest_temperature: 98.15,
    highest_temperature: 450.0,
    highest_pressure: 50000000.0,
    residual: Residual {
        terms: &[
            Term { n: 0.761143010172, t: 0.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -1.94465098795, t: 1.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.940938700406, t: 2.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -1.08107050239, t: 3.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.117501564976, t: 4.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.228305167217, t: 0.0, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.403338888789, t: 1.0, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.37558571342, t: 2.0, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.0617543677315, t: 0.0, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.170326226881, t: 1.0, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.0536612457231, t: 0.0, d: 4, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.151603010301, t: 1.0, d: 4, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.0252033265074, t: 1.0, d: 5, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.62834655992, t: 3.0, d: 0, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.792797111341, t: 4.0, d: 0, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.134038992692, t: 5.0, d: 0, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.0399863840975, t: 3.0, d: 2, l: 2, g: 0.98230055, m: 0.0 },
            Term { n: 0.436410910529, t: 4.0, d: 2, l: 2, g: 0.98230055, m: 0.0 },
            Term { n: -0.448724904991, t: 5.0, d: 2, l: 2, g: 0.98230055, m: 0.0 },
            Term { n: 0.62834655992, t: 3.0, d: 0, l: 2, g: 0.98230055, m: 0.0 },
            Term { n: -0.792797111341, t: 4.0, d: 0, l: 2, g: 0.98230055, m: 0.0 },
            Term { n: 0.134038992692, t: 5.0, d: 0, l: 2, g: 0.98230055, m: 0.0 },
        ],
        bells: &[],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: -9.08805314653826,
        linear: 8.432220681695146,
        logarithm: 1.4766458,
        powers: &[
            (-2.72813016286, -1.0),
            (-0.33332171296315066, -2.0),
            (0.1967265632453634, -3.0),
            (-0.026243318495781393, -4.0),
        ],
        vibrations: &[],
    },
};
