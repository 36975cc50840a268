//! What the mixture model adds for a pair of components.
//!
//! Source: Lemmon, E. W. and Jacobsen, R. T, Equations of state for mixtures of, R-134a, R-143a, and R-152a,
//! Journal of Physical and Chemical Reference Data 33 (2004) 593-620, doi 10.1063/1.1649997.

use super::fluid::{PureFluid, R32, R125, R134A};
use super::term::Term;

/// Parameters of a pair. They are symmetric in the two components.
#[derive(Debug)]
pub struct Pair {
    /// The two components.
    pub components: [&'static PureFluid; 2],
    /// ξ: what a mole of each adds to the reducing temperature, K.
    pub temperature_excess: f64,
    /// ζ: what a mole of each adds to the reducing molar volume, m³/mol.
    pub volume_excess: f64,
    /// F: factor of the departure function.
    pub departure_factor: f64,
    /// Terms of the departure function.
    pub departure: &'static [Term],
}

impl Pair {
    /// Whether this is the pair of two components, in either order.
    pub(crate) fn joins(&self, first: &PureFluid, second: &PureFluid) -> bool {
        let [left, right] = self.components;
        let is = |one: &PureFluid, other: &PureFluid| core::ptr::eq(one, other);
        (is(left, first) && is(right, second)) || (is(left, second) && is(right, first))
    }
}

/// R-32 with R-125.
static R32_R125_DEPARTURE: [Term; 8] = [
    Term { n: -0.0072955, t: 4.5, d: 2, l: 1, m: 0.0 },
    Term { n: 0.078035, t: 0.57, d: 5, l: 1, m: 0.0 },
    Term { n: 0.61007, t: 1.9, d: 1, l: 2, m: 0.0 },
    Term { n: 0.64246, t: 1.2, d: 3, l: 2, m: 0.0 },
    Term { n: 0.014965, t: 0.5, d: 9, l: 2, m: 0.0 },
    Term { n: -0.34049, t: 2.6, d: 2, l: 3, m: 0.0 },
    Term { n: 0.085658, t: 11.4, d: 3, l: 3, m: 0.0 },
    Term { n: -0.064429, t: 4.5, d: 6, l: 3, m: 0.0 },
];

/// R-32 with R-134a.
static R32_R134A_DEPARTURE: [Term; 4] = [
    Term { n: 0.22909, t: 1.9, d: 1, l: 1, m: 0.0 },
    Term { n: 0.094074, t: 0.25, d: 3, l: 1, m: 0.0 },
    Term { n: 0.00039876, t: 0.07, d: 8, l: 1, m: 0.0 },
    Term { n: 0.021113, t: 2.0, d: 1, l: 2, m: 0.0 },
];

/// The departure function that pairs of hydrofluorocarbons share.
static HYDROFLUOROCARBONS_DEPARTURE: [Term; 4] = [
    Term { n: -0.013073, t: 7.4, d: 1, l: 1, m: 0.0 },
    Term { n: 0.018259, t: 0.35, d: 3, l: 1, m: 0.0 },
    Term { n: 8.1299e-06, t: 10.0, d: 11, l: 2, m: 0.0 },
    Term { n: 0.0078496, t: 5.3, d: 2, l: 3, m: 0.0 },
];

/// R-32 with R-125.
pub static R32_WITH_R125: Pair = Pair {
    components: [&R32, &R125],
    temperature_excess: 28.95,
    volume_excess: -6.008e-6,
    departure_factor: 1.0,
    departure: &R32_R125_DEPARTURE,
};

/// R-32 with R-134a.
pub static R32_WITH_R134A: Pair = Pair {
    components: [&R32, &R134A],
    temperature_excess: 7.909,
    volume_excess: -2.039e-6,
    departure_factor: 1.0,
    departure: &R32_R134A_DEPARTURE,
};

/// R-125 with R-134a.
pub static R125_WITH_R134A: Pair = Pair {
    components: [&R125, &R134A],
    temperature_excess: -0.4326,
    volume_excess: -3.453e-7,
    departure_factor: 1.0,
    departure: &HYDROFLUOROCARBONS_DEPARTURE,
};
