//! R-C318.
//!
//! Source: Platzer, B., Polt, A., Maurer, G., Thermophysical Properties of Refrigerants, Springer, Berlin (1990), doi
//! 10.1007/978-3-662-02608-3.
//!
//! The published coefficients were taken from the open fluid files of CoolProp (MIT licence), which name this
//! paper. A heat capacity given there as a function of temperature is integrated here.

use super::PureFluid;
use crate::eos::ideal::Ideal;
use crate::eos::term::{Residual, Term};

/// R-C318.
pub static RC318: PureFluid = PureFluid {
    designation: "R-C318",
    molar_mass: 0.2000312,
    gas_constant: 8.31451,
    reducing_temperature: 388.38,
    reducing_density: 3099.38,
    critical_temperature: 388.38,
    critical_pressure: 2777500.0,
    acentric_factor: 0.355345,
    lowest_temperature: 233.35,
    highest_temperature: 623.0,
    highest_pressure: 60000000.0,
    residual: Residual {
        terms: &[
            Term { n: 1.09415573664603, t: 0.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -2.68265247887176, t: 1.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 1.73403070801418, t: 2.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: -1.63611253452478, t: 3.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.304834511239559, t: 4.0, d: 1, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.102771559991302, t: 0.0, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.023236791408773, t: 1.0, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.166151971110653, t: 2.0, d: 2, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.0250103944487447, t: 0.0, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.0935681090149423, t: 1.0, d: 3, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.043192919662493, t: 0.0, d: 4, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.133439867188959, t: 1.0, d: 4, l: 0, g: 1.0, m: 0.0 },
            Term { n: 0.025541668325497, t: 1.0, d: 5, l: 0, g: 1.0, m: 0.0 },
            Term { n: -1.04729119771286, t: 3.0, d: 0, l: 0, g: 1.0, m: 0.0 },
            Term { n: 1.38034128674154, t: 4.0, d: 0, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.333625770182218, t: 5.0, d: 0, l: 0, g: 1.0, m: 0.0 },
            Term { n: -0.510485822124397, t: 3.0, d: 2, l: 2, g: 0.99944, m: 0.0 },
            Term { n: 1.81840742529488, t: 4.0, d: 2, l: 2, g: 0.99944, m: 0.0 },
            Term { n: -1.38530904967474, t: 5.0, d: 2, l: 2, g: 0.99944, m: 0.0 },
            Term { n: 1.04729119771286, t: 3.0, d: 0, l: 2, g: 0.99944, m: 0.0 },
            Term { n: -1.38034128674154, t: 4.0, d: 0, l: 2, g: 0.99944, m: 0.0 },
            Term { n: 0.333625770182218, t: 5.0, d: 0, l: 2, g: 0.99944, m: 0.0 },
        ],
        bells: &[],
        steep: &[],
        critical: &[],
    },
    ideal: Ideal {
        constant: -12.097012259754727,
        linear: 11.846860654745964,
        logarithm: 1.9110284550743222,
        powers: &[(-13.562350936782085, -1.0), (1.5318184466169276, -2.0), (-0.09066028368875127, -3.0)],
        vibrations: &[],
    },
};
