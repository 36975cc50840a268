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
pub static R12: PureFluid = PureFluid {
    designation: "R-12",
    molar_mass: 0.120913,
    gas_constant: 8.314471,
    reducing_temperature: 385.12,
    reducing_density: 4672.7812559444,
    critical_temperature: 385.12,
    critical_pressure: 4136100.000000001,
    acentric_factor: 0.1794783173435512,
    lowest_temperature: 116.099,
    highest_temperature: 525.0,
    highest_pressure: 200000000.0,
    residual: Residual {
        terms: &[
            Term { n: 2.075343402, t: 0.5, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -2.962525996, t: 1.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.01001589616, t: 2.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.01781347612, t: 2.5, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.02556929157, t: -0.5, d: 4, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.002352142637, t: 0.0, d: 6, l: 0, g: 1.0, m: 0.0 },
            Term { n: -8.495553314e-05, t: 0.0, d: 8, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.01535945599, t: -0.5, d: 1, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.2108816776, t: 1.5, d: 1, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.01654228806, t: 2.5, d: 5, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.0118131613, t: -0.5, d: 7, l: 1, g: 1.0, m: 0.0 },
            Term { n: -4.16029583e-05, t: 0.0, d: 12, l: 1, g: 1.0, m: 0.0 },
            Term { n: 2.784861664e-05, t: 0.5, d: 12, l: 1, g: 1.0, m: 0.0 },
            Term { n: 1.618686433e-06, t: -0.5, d: 14, l: 1, g: 1.0, m: 0.0 },
            Term { n: -0.1064614686, t: 4.0, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.0009369665207, t: 4.0, d: 9, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.02590095447, t: 2.0, d: 1, l: 3, g: 1.0, m: 0.0 },
            Term { n: -0.04347025025, t: 4.0, d: 1, l: 3, g: 1.0, m: 0.0 },
            Term { n: 0.1012308449, t: 12.0, d: 3, l: 3, g: 1.0, m: 0.0 },
            Term { n: -0.1100003438, t: 14.0, d: 3, l: 3, g: 1.0, m: 0.0 },
            Term { n: -0.003361012009, t: 0.0, d: 5, l: 3, g: 1.0, m: 0.0 },
            Term { n: 0.0003789190008, t: 14.0, d: 9, l: 4, g: 1.0, m: 0.0 },
        ],
        bells: &[],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: -14.717899848358801,
        linear: 9.4030216741366,
        logarithm: 3.00361975,
        powers: &[],
        vibrations: &[
            (3.16062357, 3.72204562),
            (0.371258136, 6.30985083),
            (3.56226039, 1.78037889),
            (2.12152336, 1.07087607),
        ],
    },
};
