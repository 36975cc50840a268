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
pub static R114: PureFluid = PureFluid {
    designation: "R-114",
    molar_mass: 0.170921,
    gas_constant: 8.31451,
    reducing_temperature: 418.83,
    reducing_density: 3393.2,
    critical_temperature: 418.83,
    critical_pressure: 3257000.0,
    acentric_factor: 0.2523,
    lowest_temperature: 273.15,
    highest_temperature: 507.0,
    highest_pressure: 21000000.0,
    residual: Residual {
        terms: &[
            Term { n: 1.07938940032879, t: 0.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -1.99243731009857, t: 1.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.155135220175231, t: 2.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.121465858429101, t: 3.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.0165038674558161, t: 4.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.186916017480622, t: 0.0, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.308074956770949, t: 1.0, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.115861545567346, t: 2.0, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.027635877981389, t: 0.0, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.108043424159349, t: 1.0, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.0460684822539207, t: 0.0, d: 4, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.174822007470687, t: 1.0, d: 4, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.0317531741331376, t: 1.0, d: 5, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.340776521025164, t: 3.0, d: 0, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.323001398918284, t: 4.0, d: 0, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.0424950543505197, t: 5.0, d: 0, l: 0, g: 1.0, m: 0.0 },
            Term { n: -1.66940287525002, t: 3.0, d: 2, l: 2, g: 1.21104, m: 0.0 },
            Term { n: 4.08693538568874, t: 4.0, d: 2, l: 2, g: 1.21104, m: 0.0 },
            Term { n: -2.4173923391137, t: 5.0, d: 2, l: 2, g: 1.21104, m: 0.0 },
            Term { n: 0.340776521025164, t: 3.0, d: 0, l: 2, g: 1.21104, m: 0.0 },
            Term { n: -0.323001398918284, t: 4.0, d: 0, l: 2, g: 1.21104, m: 0.0 },
            Term { n: 0.0424950543505197, t: 5.0, d: 0, l: 2, g: 1.21104, m: 0.0 },
        ],
        bells: &[],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: -11.387487140353663,
        linear: 10.932383097224873,
        logarithm: 1.0074149313645662,
        powers: &[
            (-13.951694432055056, -1.0),
            (3.543183977793783, -2.0),
            (-0.8480418696132922, -3.0),
            (0.11216650976820333, -4.0),
        ],
        vibrations: &[],
    },
};
