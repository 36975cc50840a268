//! Terms of the residual Helmholtz energy and their derivatives.
//!
//! Derivatives are by hand: every derivative is taken with respect to ln δ and ln τ, in which a term's derivative is the
//! term times a short polynomial. The formulas are checked against finite differences and by the thermodynamic
//! identities that couple them (see the tests here and in `tests/`).

use super::special::{Critical, Steep};
use crate::math;

/// One term n·δ^d·τ^t·exp(−g·δ^l − τ^m), where l = 0 and m = 0 mean that the exponent has no such part.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Term {
    /// Coefficient n.
    pub n: f64,
    /// Exponent t of τ.
    pub t: f64,
    /// Exponent d of δ; 0 in some equations of before 1996.
    pub d: u8,
    /// Exponent l of δ in the exponential; 0 when there is none.
    pub l: u8,
    /// Factor g of δ^l; 1 in most equations.
    pub g: f64,
    /// Exponent m of τ in the exponential; 0 when there is none.
    pub m: f64,
}

/// One bell-shaped term n·δ^d·τ^t·exp(−η(δ − ε)² − β(τ − γ)²).
#[derive(Debug, Clone, Copy, PartialEq)]
#[allow(missing_docs)] // the letters of the literature
pub struct Bell {
    pub n: f64,
    pub t: f64,
    pub d: u8,
    pub eta: f64,
    pub epsilon: f64,
    pub beta: f64,
    pub gamma: f64,
}

/// The residual part of a pure fluid's equation, by kind of term.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Residual {
    /// Powers, with or without an exponential.
    pub terms: &'static [Term],
    /// Bells.
    pub bells: &'static [Bell],
    /// Terms of the ammonia equation of 2020.
    pub steep: &'static [Steep],
    /// Non-analytic terms of the carbon dioxide equation of 1996.
    pub critical: &'static [Critical],
}

/// Largest power of δ (d or l) that a term may have.
pub(crate) const HIGHEST_POWER: usize = 15;

/// Residual Helmholtz energy αʳ and its derivatives with respect to ln δ (suffix d) and ln τ (suffix t).
///
/// `dd` is δ²·∂²αʳ/∂δ², `dt` is δτ·∂²αʳ/∂δ∂τ and `tt` is τ²·∂²αʳ/∂τ²: ordinary second derivatives, scaled.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub struct Derivatives {
    /// αʳ.
    pub a: f64,
    /// δ·∂αʳ/∂δ.
    pub d: f64,
    /// δ²·∂²αʳ/∂δ².
    pub dd: f64,
    /// τ·∂αʳ/∂τ.
    pub t: f64,
    /// τ²·∂²αʳ/∂τ².
    pub tt: f64,
    /// δτ·∂²αʳ/∂δ∂τ.
    pub dt: f64,
}

impl Derivatives {
    /// Adds a term by its value, its first logarithmic derivatives and the slopes of those in ln δ and ln τ.
    pub(super) fn add_term(&mut self, value: f64, by_delta: f64, bend_delta: f64, by_tau: f64, bend_tau: f64) {
        self.a += value;
        self.d += value * by_delta;
        self.dd += value * (by_delta * (by_delta - 1.0) + bend_delta);
        self.t += value * by_tau;
        self.tt += value * (by_tau * (by_tau - 1.0) + bend_tau);
        self.dt += value * by_delta * by_tau;
    }

    /// Adds `factor` times another set.
    pub(crate) fn add(&mut self, factor: f64, other: &Self) {
        self.a += factor * other.a;
        self.d += factor * other.d;
        self.dd += factor * other.dd;
        self.t += factor * other.t;
        self.tt += factor * other.tt;
        self.dt += factor * other.dt;
    }
}

/// Powers of δ and τ that all terms at one state share.
pub(crate) struct Powers {
    pub(super) tau: f64,
    pub(super) delta: f64,
    deltas: [f64; HIGHEST_POWER + 1],
    ln_tau: f64,
}

impl Powers {
    pub(crate) fn at(tau: f64, delta: f64) -> Self {
        Self { ln_tau: math::ln(tau), ..Self::with_delta(tau, delta) }
    }

    /// For terms whose powers of τ are already known.
    pub(super) fn with_delta(tau: f64, delta: f64) -> Self {
        let mut deltas = [1.0; HIGHEST_POWER + 1];
        let mut power = 1.0;
        for place in deltas.iter_mut().skip(1) {
            power *= delta;
            *place = power;
        }
        Self { tau, delta, deltas, ln_tau: f64::NAN }
    }

    /// δ to a small whole power; NaN, which no solver takes for a solution, if a table held a larger one.
    pub(super) fn delta_to(&self, power: u8) -> f64 {
        self.deltas.get(usize::from(power)).copied().unwrap_or(f64::NAN)
    }

    /// τ to any power.
    pub(super) fn tau_to(&self, power: f64) -> f64 {
        math::exp(power * self.ln_tau)
    }

    /// The whole residual part of a pure fluid with all derivatives.
    pub(crate) fn residual(&self, residual: &Residual) -> Derivatives {
        let mut sum = self.sum(residual.terms);
        for bell in residual.bells {
            let (from_delta, from_tau) = (self.delta - bell.epsilon, self.tau - bell.gamma);
            let exponent = -bell.eta * from_delta * from_delta - bell.beta * from_tau * from_tau;
            sum.add_term(
                bell.n * self.delta_to(bell.d) * math::exp(bell.t * self.ln_tau + exponent),
                f64::from(bell.d) - 2.0 * bell.eta * self.delta * from_delta,
                -2.0 * bell.eta * self.delta * (self.delta + from_delta),
                bell.t - 2.0 * bell.beta * self.tau * from_tau,
                -2.0 * bell.beta * self.tau * (self.tau + from_tau),
            );
        }
        for steep in residual.steep {
            steep.add_to(&mut sum, self);
        }
        for critical in residual.critical {
            critical.add_to(&mut sum, self);
        }
        sum
    }

    /// Sum of power terms with all derivatives.
    pub(crate) fn sum(&self, terms: &[Term]) -> Derivatives {
        let mut sum = Derivatives::default();
        // Terms come in runs of the same exponential of δ.
        let (mut last, mut in_last, mut of_last) = ((0, 1.0), 0.0, 1.0);
        for term in terms {
            let l = f64::from(term.l);
            if (term.l, term.g) != last {
                last = (term.l, term.g);
                (in_last, of_last) = (0.0, 1.0);
                if term.l > 0 {
                    in_last = term.g * self.delta_to(term.l);
                    of_last = math::exp(-in_last);
                }
            }
            let mut value = term.n * self.delta_to(term.d) * of_last * self.tau_to(term.t);
            let (mut by_tau, mut bend_tau) = (term.t, 0.0);
            if term.m > 0.0 {
                let in_exponent = self.tau_to(term.m);
                value *= math::exp(-in_exponent);
                by_tau -= term.m * in_exponent;
                bend_tau = -term.m * term.m * in_exponent;
            }
            sum.add_term(value, f64::from(term.d) - l * in_last, -l * l * in_last, by_tau, bend_tau);
        }
        sum
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;

    const RESIDUAL: Residual = Residual {
        terms: &[
            Term { n: 0.7, t: -0.25, d: 5, l: 0, g: 1.0, m: 0.0 },
            Term { n: -1.3, t: 1.75, d: 2, l: 3, g: 1.0, m: 0.0 },
            Term { n: 0.3, t: 3.0, d: 0, l: 2, g: 0.66, m: 0.0 },
            Term { n: 0.4, t: 24.0, d: 5, l: 3, g: 1.0, m: 6.0 },
            Term { n: -0.9, t: 4.5, d: 2, l: 2, g: 1.0, m: 1.7 },
        ],
        bells: &[Bell { n: -0.6, t: 1.2, d: 2, eta: 1.3, epsilon: 0.8, beta: 2.1, gamma: 1.3 }],
        steep: &[Steep { n: 0.2, t: 4.1, d: 1, eta: 1.9, epsilon: 0.7, beta: 0.3, gamma: 0.7, b: 2.9 }],
        critical: &[Critical {
            n: -0.7,
            a: 3.5,
            b: 0.875,
            beta: 0.3,
            upper_a: 0.7,
            upper_b: 0.3,
            upper_c: 10.0,
            upper_d: 275.0,
        }],
    };

    /// One kind of term at a time, so that none hides behind a larger one.
    fn each_kind() -> [Residual; 4] {
        let none = Residual { terms: &[], bells: &[], steep: &[], critical: &[] };
        [
            Residual { terms: RESIDUAL.terms, ..none },
            Residual { bells: RESIDUAL.bells, ..none },
            Residual { steep: RESIDUAL.steep, ..none },
            Residual { critical: RESIDUAL.critical, ..none },
        ]
    }

    /// Central differences of the sums themselves, of second order in the step.
    #[test]
    fn derivatives_match_finite_differences() {
        for residual in each_kind() {
            for (tau, delta) in [(1.07, 1.3), (0.96, 0.8)] {
                let at = |tau: f64, delta: f64| Powers::at(tau, delta).residual(&residual);
                let step = 1e-5;
                let here = at(tau, delta);
                let (up, down) = (at(tau, delta + step), at(tau, delta - step));
                let (hot, cold) = (at(tau - step, delta), at(tau + step, delta));
                let close = |found: f64, wanted: f64| assert_relative_eq!(found, wanted, max_relative = 1e-6);
                close(here.d, delta * (up.a - down.a) / (2.0 * step));
                close(here.t, tau * (cold.a - hot.a) / (2.0 * step));
                // d and t carry a factor δ or τ, which the product rule takes off again.
                close(here.dd, delta * (up.d - down.d) / (2.0 * step) - here.d);
                close(here.tt, tau * (cold.t - hot.t) / (2.0 * step) - here.t);
                close(here.dt, tau * (cold.d - hot.d) / (2.0 * step));
            }
        }
    }
}
