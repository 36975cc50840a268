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
pub static R14: PureFluid = PureFluid {
    designation: "R-14",
    molar_mass: 0.0880046,
    gas_constant: 8.31451,
    reducing_temperature: 227.51,
    reducing_density: 7109.4194,
    critical_temperature: 227.51,
    critical_pressure: 3750000.0,
    acentric_factor: 0.1785,
    lowest_temperature: 120.0,
    highest_temperature: 623.0,
    highest_pressure: 51000000.0,
    residual: Residual {
        terms: &[
            Term { n: 1.03999039734947, t: 0.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -2.4579202542559, t: 1.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.799614558381524, t: 2.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.749498955282594, t: 3.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.152177772596398, t: 4.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.293408332036298, t: 0.0, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.717794503774445, t: 1.0, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.0426467444751902, t: 2.0, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.226562749725952, t: 0.0, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.39109169477402, t: 1.0, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.0257394805543082, t: 0.0, d: 4, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.0554844886106659, t: 1.0, d: 4, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.00610988262947185, t: 1.0, d: 5, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.33469874882651, t: 3.0, d: 0, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.586690904512625, t: 4.0, d: 0, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.147068929694523, t: 5.0, d: 0, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.190315426348019, t: 3.0, d: 2, l: 2, g: 0.99832625, m: 0.0 },
            Term { n: 0.716157134745809, t: 4.0, d: 2, l: 2, g: 0.99832625, m: 0.0 },
            Term { n: -0.703161905301754, t: 5.0, d: 2, l: 2, g: 0.99832625, m: 0.0 },
            Term { n: 0.33469874882651, t: 3.0, d: 0, l: 2, g: 0.99832625, m: 0.0 },
            Term { n: -0.586690904512625, t: 4.0, d: 0, l: 2, g: 0.99832625, m: 0.0 },
            Term { n: 0.147068929694523, t: 5.0, d: 0, l: 2, g: 0.99832625, m: 0.0 },
        ],
        bells: &[],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: -8.538828529971882,
        linear: 13.487261795312342,
        logarithm: 2.946282613411975,
        powers: &[
            (1.007656513455641, -1.0),
            (-1.2024698876852022, -2.0),
            (0.29493597740529637, -3.0),
            (-0.027465276576077606, -4.0),
        ],
        vibrations: &[],
    },
};
