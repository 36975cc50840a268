//!
//!
//! Source: Jacobsen, R. T, Penoncello, S. G., Lemmon, E. W., A Fundamental Equation for Trichlorofluoromethane
//! Fluid Phase Equilib. 80 (1992) 45-56, doi 10.1016/0378-3812(92)87054-Q.
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper. A heat capacity given there as a function of temperature is integrated here.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::term::{Residual, Term};

///
pub static R11: PureFluid = PureFluid {
    designation: "R-11",
    molar_mass: 0.137368,
    gas_constant: 8.31451,
    reducing_temperature: 471.11,
    reducing_density: 4032.962,
    critical_temperature: 471.06,
    critical_pressure: 4394000.0,
    acentric_factor: 0.1887506482528083,
    lowest_temperature: 162.68,
    highest_temperature: 625.0,
    highest_pressure: 100000000.0,
    residual: Residual {
        terms: &[
            Term { n: 1.25993633881, t: 0.5, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -2.60818574641, t: 1.5, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.00982122542463, t: 5.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -1.06085385839, t: 1.0, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 1.2282036351, t: 1.5, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.118000776439, t: 0.0, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.000698956926463, t: 5.0, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.0355428373358, t: 2.0, d: 4, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.00197169579643, t: 3.0, d: 4, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.00848363012252, t: 1.0, d: 5, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.00417997567653, t: 2.0, d: 5, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.000242772533848, t: 4.0, d: 5, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.00313371368974, t: 1.0, d: 6, l: 0, g: 1.0, m: 0.0 },
            Term { n: 3.96182646586e-06, t: 4.0, d: 8, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.339736319502, t: 5.0, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.203010634531, t: 6.0, d: 1, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.1060178599, t: 3.5, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.45156488259, t: 5.5, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: -0.339265767612, t: 7.5, d: 2, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.114338523359, t: 3.0, d: 3, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.0319537833995, t: 2.5, d: 4, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.036790825978, t: 5.0, d: 6, l: 2, g: 1.0, m: 0.0 },
            Term { n: -9.61768948364e-06, t: 1.5, d: 10, l: 2, g: 1.0, m: 0.0 },
            Term { n: 0.00246717966418, t: 11.0, d: 3, l: 4, g: 1.0, m: 0.0 },
            Term { n: -0.00167030256045, t: 9.0, d: 5, l: 6, g: 1.0, m: 0.0 },
            Term { n: 0.00240710110806, t: 13.0, d: 8, l: 6, g: 1.0, m: 0.0 },
            Term { n: 0.00156214678738, t: 5.0, d: 9, l: 6, g: 1.0, m: 0.0 },
            Term { n: -0.00323352596704, t: 9.0, d: 9, l: 6, g: 1.0, m: 0.0 },
        ],
        bells: &[],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: -17.793711592318367,
        linear: 10.083928866014723,
        logarithm: 3.0056492324863404,
        powers: &[(-0.05250225521407755, -1.0)],
        vibrations: &[
            (1.0, 3.313613168898983),
            (2.0, 2.586756086688884),
            (1.0, 1.634512228566577),
            (2.0, 1.215500498821931),
            (1.0, 1.06738046316147),
            (2.0, 0.7360191462715714),
        ],
    },
};
