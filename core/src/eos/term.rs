//! Terms of the residual Helmholtz energy and their derivatives.
//!
//! A term is n·δ^d·τ^t·exp(−δ^l − τ^m), where l = 0 and m = 0 mean that the exponent has no such part. Derivatives are
//! by hand: every derivative is taken with respect to ln δ and ln τ, in which a term's derivative is the term times a
//! short polynomial. The formulas are checked against finite differences and by the thermodynamic identities that
//! couple them (see the tests here and in `tests/`).

use crate::math;

/// One term n·δ^d·τ^t·exp(−δ^l − τ^m).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Term {
    /// Coefficient n.
    pub n: f64,
    /// Exponent t of τ.
    pub t: f64,
    /// Exponent d of δ.
    pub d: u8,
    /// Exponent l of δ in the exponential; 0 when there is none.
    pub l: u8,
    /// Exponent m of τ in the exponential; 0 when there is none.
    pub m: f64,
}

/// Largest power of δ (d or l) that a term may have.
pub(crate) const HIGHEST_POWER: usize = 15;
/// Largest l.
pub(crate) const HIGHEST_EXPONENT: usize = 6;

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
    delta: [f64; HIGHEST_POWER + 1],
    exponential: [f64; HIGHEST_EXPONENT + 1],
    ln_tau: f64,
}

impl Powers {
    pub(crate) fn at(tau: f64, delta: f64) -> Self {
        let mut powers = [1.0; HIGHEST_POWER + 1];
        let mut power = 1.0;
        for place in powers.iter_mut().skip(1) {
            power *= delta;
            *place = power;
        }
        let mut exponential = [1.0; HIGHEST_EXPONENT + 1];
        for (place, power) in exponential.iter_mut().zip(powers).skip(1) {
            *place = math::exp(-power);
        }
        Self { delta: powers, exponential, ln_tau: math::ln(tau) }
    }

    /// Sum of terms with all derivatives.
    pub(crate) fn sum(&self, terms: &[Term]) -> Derivatives {
        let mut sum = Derivatives::default();
        for term in terms {
            let (d, l) = (usize::from(term.d), usize::from(term.l));
            let power = |exponent: usize| self.delta.get(exponent).copied().unwrap_or(f64::NAN);
            let mut value = term.n * power(d) * math::exp(term.t * self.ln_tau);
            // First derivatives over the term itself, then what the product rule adds to the second.
            let mut by_delta = f64::from(term.d);
            let mut bend_delta = 0.0;
            if l > 0 {
                let in_exponent = power(l);
                value *= self.exponential.get(l).copied().unwrap_or(f64::NAN);
                by_delta -= f64::from(term.l) * in_exponent;
                bend_delta = f64::from(term.l) * f64::from(term.l) * in_exponent;
            }
            let mut by_tau = term.t;
            let mut bend_tau = 0.0;
            if term.m > 0.0 {
                let in_exponent = math::exp(term.m * self.ln_tau);
                value *= math::exp(-in_exponent);
                by_tau -= term.m * in_exponent;
                bend_tau = term.m * term.m * in_exponent;
            }
            sum.a += value;
            sum.d += value * by_delta;
            sum.dd += value * (by_delta * (by_delta - 1.0) - bend_delta);
            sum.t += value * by_tau;
            sum.tt += value * (by_tau * (by_tau - 1.0) - bend_tau);
            sum.dt += value * by_delta * by_tau;
        }
        sum
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;

    /// Central differences of the sums themselves, of second order in the step.
    #[test]
    fn derivatives_match_finite_differences() {
        let terms = [
            Term { n: 0.7, t: -0.25, d: 5, l: 0, m: 0.0 },
            Term { n: -1.3, t: 1.75, d: 2, l: 3, m: 0.0 },
            Term { n: 0.4, t: 24.0, d: 5, l: 3, m: 6.0 },
            Term { n: -0.9, t: 4.5, d: 2, l: 2, m: 1.7 },
        ];
        let at = |tau: f64, delta: f64| Powers::at(tau, delta).sum(&terms);
        let (tau, delta, step) = (1.07, 1.3, 1e-5);
        let here = at(tau, delta);
        let (up, down) = (at(tau, delta + step), at(tau, delta - step));
        let (hot, cold) = (at(tau - step, delta), at(tau + step, delta));
        assert_relative_eq!(here.d, delta * (up.a - down.a) / (2.0 * step), max_relative = 1e-8);
        assert_relative_eq!(here.t, tau * (cold.a - hot.a) / (2.0 * step), max_relative = 1e-8);
        // d and t carry a factor δ or τ, which the product rule takes off again.
        let dd = delta * (up.d - down.d) / (2.0 * step) - here.d;
        let tt = tau * (cold.t - hot.t) / (2.0 * step) - here.t;
        let dt = tau * (cold.d - hot.d) / (2.0 * step);
        assert_relative_eq!(here.dd, dd, max_relative = 1e-7);
        assert_relative_eq!(here.tt, tt, max_relative = 1e-7);
        assert_relative_eq!(here.dt, dt, max_relative = 1e-7);
    }
}
