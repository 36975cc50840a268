//!
//!
//! Source: Marx, V., Pruss, A., Wagner, W., Neue Zustandsgleichungen für R 12, R 22, R 11 und R 113,
//! Fortschritt-Berichte VDI, series 19, no. 57, VDI Verlag, Düsseldorf (1992).
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::term::{Residual, Term};

///
pub static R113: PureFluid = PureFluid {
    designation: "R-113",
    molar_mass: 0.187375,
    gas_constant: 8.314471,
    reducing_temperature: 487.21,
    reducing_density: 2988.6591060707,
    critical_temperature: 487.21000000000004,
    critical_pressure: 3392200.0,
    acentric_factor: 0.252535,
    lowest_temperature: 236.93,
    highest_temperature: 525.0,
    highest_pressure: 200000000.0,
    residual: Residual {
        terms: &[
            Term { n: 0.8432092286, t: 0.5, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -2.019185967, t: 1.5, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.2920612996, t: 1.5, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.05323107661, t: -0.5, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.003214971931, t: 2.0, d: 4, l: 0, g: 1.0, m: 0.0 },
            Term { n: 4.667858574e-05, t: 0.0, d: 8, l: 0, g: 1.0, m: 0.0 },
            Term { n: -1.227522799e-06, t: 3.0, d: 8, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.8167288718, t: -0.5, d: 3, l: 1, g: 1.0, m: 0.0 },
            Term { n: -1.340790803, t: 0.0, d: 3, l: 1, g: 1.0, m: 0.0 },
            Term { n: 0.4065752705, t: 2.0, d: 3, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.1534754634, t: 1.5, d: 5, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.02414435149, t: 6.0, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.02113056197, t: 2.0, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.03565436205, t: 10.0, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.001364654968, t: 6.0, d: 9, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.01251838755, t: 18.0, d: 3, l: 3, g: 1.0, m: 0.0 },
            Term { n: -0.001385761351, t: 15.0, d: 7, l: 3, g: 1.0, m: 0.0 },
            Term { n: 0.0007206335486, t: 33.0, d: 8, l: 4, g: 1.0, m: 0.0 },
        ],
        bells: &[],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: -21.8557715726949,
        linear: 11.942444125603298,
        logarithm: 2.9999966,
        powers: &[],
        vibrations: &[
            (12.4464495, 1.04971737),
            (2.72181845, 3.29788641),
            (0.692712415, 8.62650812),
            (3.32248298, 3.29670446),
        ],
    },
};
