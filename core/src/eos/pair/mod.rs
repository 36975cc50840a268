//! What the mixture model adds for a pair of components: one file a publication.

mod bell_ijt_2020;
mod bell_jced_2016;
mod bell_jced_2025;
mod bell_jpcrd_2022;
mod bell_jpcrd_2023;
mod departure;
mod estimated;
mod kunz_jced_2012;
mod lemmon_jpcrd_2004;

pub use bell_ijt_2020::*;
pub use bell_jced_2016::*;
pub use bell_jced_2025::*;
pub use bell_jpcrd_2022::*;
pub use bell_jpcrd_2023::*;
pub use estimated::*;
pub use kunz_jced_2012::*;
pub use lemmon_jpcrd_2004::*;

use super::fluid::PureFluid;
use super::term::Term;
use crate::math;

/// Parameters of a pair.
#[derive(Debug)]
pub struct Pair {
    /// The two components, in the order in which the parameters are published.
    pub components: [&'static PureFluid; 2],
    /// How their reducing temperatures combine.
    pub temperature: Rule,
    /// How their reducing molar volumes combine.
    pub volume: Rule,
    /// F: factor of the departure function.
    pub departure_factor: f64,
    /// Terms of the departure function; none where F is zero.
    pub departure: &'static [Term],
}

/// A combining rule.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Rule {
    /// ξ in K or ζ in m³/mol: what a mole of each adds to the sum (Lemmon and Jacobsen 2004).
    Excess(f64),
    /// β and γ of the form of Kunz and Wagner (2012), for the components in their published order.
    BetaGamma(f64, f64),
}

/// Sum and combined mean of the reducing values of two fluids: what the two kinds of rule start from.
pub(super) struct Means {
    pub temperature: (f64, f64),
    pub volume: (f64, f64),
}

impl Rule {
    /// sᵢⱼ and β² of the form in [`super::reducing`].
    pub(super) fn strength_and_skew(self, (sum, combined): (f64, f64), reversed: bool) -> (f64, f64) {
        match self {
            Self::Excess(excess) => (sum + excess, 1.0),
            Self::BetaGamma(beta, gamma) => {
                let beta = if reversed { 1.0 / beta } else { beta };
                (2.0 * beta * gamma * combined, beta * beta)
            }
        }
    }
}

impl Pair {
    /// Whether this is the pair of two components, in either order.
    pub(crate) fn joins(&self, first: &PureFluid, second: &PureFluid) -> bool {
        let [left, right] = self.components;
        let is = |one: &PureFluid, other: &PureFluid| core::ptr::eq(one, other);
        (is(left, first) && is(right, second)) || (is(left, second) && is(right, first))
    }

    /// The geometric mean of temperatures and the mean of cube roots of volumes, beside the plain sums.
    pub(super) fn means(first: &PureFluid, second: &PureFluid) -> Means {
        let (t1, t2) = (first.reducing_temperature, second.reducing_temperature);
        let (v1, v2) = (1.0 / first.reducing_density, 1.0 / second.reducing_density);
        let side = math::cbrt(v1) + math::cbrt(v2);
        Means { temperature: (t1 + t2, math::sqrt(t1 * t2)), volume: (v1 + v2, side * side * side / 8.0) }
    }
}
