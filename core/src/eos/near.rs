//! The non-analytic terms along an isotherm: derivatives in density only, which is all that a search for one needs.
//!
//! The same terms as [`Critical::add_to`](super::special::Critical), in another form: a term is c·δ·Δ^b·exp(−C(δ − 1)²),
//! where c holds what depends on temperature alone, so that its logarithm's derivatives are short. The terms of one
//! equation differ in few of their constants, and what they share is computed once. One logarithm of |δ − 1| and one of Δ
//! replace a dozen powers.

use super::special::{BESIDE, Critical};
use crate::math;

/// Δ with its logarithmic derivatives in δ, for terms of the same constants.
#[derive(Clone, Copy)]
struct Distance {
    /// β, a, A and B, to know such terms by.
    key: [f64; 4],
    ln: f64,
    /// δ·∂ln Δ/∂δ.
    slope: f64,
    /// δ·∂/∂δ of the slope.
    bend: f64,
}

/// One density of one isotherm.
pub(super) struct Near {
    delta: f64,
    /// δ − 1, never zero.
    x: f64,
    ln_x: f64,
    /// τ − 1.
    u: f64,
    last: Option<Distance>,
}

/// A term by its value, its logarithmic slope in δ and the slope of that.
pub(super) struct Value {
    pub value: f64,
    pub slope: f64,
    pub bend: f64,
}

impl Critical {
    /// What depends on temperature alone: n·exp(−D(τ − 1)²).
    pub(super) fn coefficient(&self, tau: f64) -> f64 {
        let u = tau - 1.0;
        self.n * math::exp(-self.upper_d * u * u)
    }
}

impl Near {
    pub(super) fn at(tau: f64, delta: f64) -> Self {
        let mut x = delta - 1.0;
        if x.abs() < BESIDE {
            x = BESIDE;
        }
        Self { delta, x, ln_x: math::ln(x.abs()), u: tau - 1.0, last: None }
    }

    /// A term with its coefficient.
    pub(super) fn term(&mut self, term: &Critical, coefficient: f64) -> Value {
        let key = [term.beta, term.a, term.upper_a, term.upper_b];
        let distance = match self.last {
            Some(last) if last.key == key => last,
            _ => self.distance(key),
        };
        self.last = Some(distance);
        let from = term.upper_c * self.x;
        Value {
            value: coefficient * self.delta * math::exp(term.b * distance.ln - from * self.x),
            slope: 1.0 + term.b * distance.slope - 2.0 * from * self.delta,
            bend: term.b * distance.bend - 2.0 * term.upper_c * self.delta * (self.delta + self.x),
        }
    }

    fn distance(&self, key: [f64; 4]) -> Distance {
        let [beta, a, upper_a, upper_b] = key;
        let (one, two) = (1.0 / beta, 2.0 * a);
        // A·|x|^(1/β) and B·|x|^2a; every derivative in x lowers a power by one and brings it down as a factor.
        let bent = upper_a * math::exp(one * self.ln_x);
        let steep = upper_b * math::exp(two * self.ln_x);
        let theta = bent - self.u;
        let distance = theta * theta + steep;
        let first = (2.0 * theta * one * bent + two * steep) / (self.x * distance);
        let second = (2.0 * one * bent * (one * bent + (one - 1.0) * theta) + two * (two - 1.0) * steep)
            / (self.x * self.x * distance);
        let slope = self.delta * first;
        Distance { key, ln: math::ln(distance), slope, bend: slope + self.delta * self.delta * second - slope * slope }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::eos::PureFluid;
    use crate::eos::fluid::R744;
    use crate::eos::term::{Derivatives, Powers};

    /// Two programs for the same terms, from far away to the critical point itself.
    #[test]
    fn agrees_with_all_derivatives() {
        let fluid: &PureFluid = &R744;
        for tau in [0.31, 0.8, 0.97, 0.9999, 1.0, 1.0001, 1.01, 1.2, 1.404] {
            for delta in [1e-9, 0.01, 0.3, 0.9, 0.999, 1.0, 1.0 + 1e-11, 1.001, 1.3, 2.0, 2.7, 4.0] {
                let mut near = Near::at(tau, delta);
                for term in fluid.residual.critical {
                    let mut all = Derivatives::default();
                    term.add_to(&mut all, &Powers::at(tau, delta));
                    let Value { value, slope, bend } = near.term(term, term.coefficient(tau));
                    let dd = value * (slope * (slope - 1.0) + bend);
                    // The parts of a derivative, each of which is rounded, may cancel.
                    let scale = value.abs() * (slope * slope + bend.abs() + 1.0);
                    for (found, wanted, size) in
                        [(value, all.a, value.abs()), (value * slope, all.d, scale), (dd, all.dd, scale)]
                    {
                        assert!((found - wanted).abs() <= 4e-13 * size, "{tau} {delta}: {found} {wanted}");
                    }
                }
            }
        }
    }
}
