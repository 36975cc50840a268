//! Two kinds of term that only one fluid each needs.

use super::term::{Derivatives, Powers};
use crate::math;

/// One term n·δ^d·τ^t·exp(−η(δ − ε)² + 1/(β(τ − γ)² + b)), of the equation for ammonia by Gao and others (2020).
#[derive(Debug, Clone, Copy, PartialEq)]
#[allow(missing_docs)] // the letters of the literature
pub struct Steep {
    pub n: f64,
    pub t: f64,
    pub d: u8,
    pub eta: f64,
    pub epsilon: f64,
    pub beta: f64,
    pub gamma: f64,
    pub b: f64,
}

impl Steep {
    pub(super) fn add_to(&self, sum: &mut Derivatives, powers: &Powers) {
        let (delta, tau) = (powers.delta, powers.tau);
        let (from_delta, from_tau) = (delta - self.epsilon, tau - self.gamma);
        let below = self.beta * from_tau * from_tau + self.b;
        let exponent = -self.eta * from_delta * from_delta + 1.0 / below;
        let slope = -2.0 * self.beta * tau * from_tau / (below * below);
        let bend = -2.0 * self.beta * tau * (tau + from_tau) / (below * below)
            + 8.0 * self.beta * self.beta * tau * tau * from_tau * from_tau / (below * below * below);
        sum.add_term(
            self.n * powers.delta_to(self.d) * powers.tau_to(self.t) * math::exp(exponent),
            f64::from(self.d) - 2.0 * self.eta * delta * from_delta,
            -2.0 * self.eta * delta * (delta + from_delta),
            self.t + slope,
            bend,
        );
    }
}

/// One non-analytic term n·Δ^b·δ·ψ, of the equation for carbon dioxide by Span and Wagner (1996):
/// Δ = θ² + B·((δ − 1)²)^a, θ = 1 − τ + A·((δ − 1)²)^(1/2β), ψ = exp(−C(δ − 1)² − D(τ − 1)²).
#[derive(Debug, Clone, Copy, PartialEq)]
#[allow(missing_docs)] // the letters of the literature; capitals are `upper_`
pub struct Critical {
    pub n: f64,
    pub a: f64,
    pub b: f64,
    pub beta: f64,
    pub upper_a: f64,
    pub upper_b: f64,
    pub upper_c: f64,
    pub upper_d: f64,
}

/// The term's derivatives are singular at the critical density itself; this near to it they are taken beside it.
pub(super) const BESIDE: f64 = 1e-10;

impl Critical {
    pub(super) fn add_to(&self, sum: &mut Derivatives, powers: &Powers) {
        let (delta, tau) = (powers.delta, powers.tau);
        let mut x = delta - 1.0;
        if x.abs() < BESIDE {
            x = BESIDE;
        }
        let (square, u) = (x * x, tau - 1.0);
        let Self { n, a, b, beta, upper_a, upper_b, upper_c, upper_d } = *self;
        let power = |exponent: f64| math::pow(square, exponent);

        // θ and Δ with their derivatives in δ; in τ, θ falls by one for one.
        let half = 0.5 / beta;
        let theta = -u + upper_a * power(half);
        let distance = theta * theta + upper_b * power(a);
        let by_delta = x * (upper_a * theta * 2.0 / beta * power(half - 1.0) + 2.0 * upper_b * a * power(a - 1.0));
        let by_delta_twice = by_delta / x
            + square
                * (4.0 * upper_b * a * (a - 1.0) * power(a - 2.0)
                    + 2.0 * upper_a * upper_a / (beta * beta) * power(half - 1.0) * power(half - 1.0)
                    + upper_a * theta * 4.0 / beta * (half - 1.0) * power(half - 2.0));

        // Δ^b with its derivatives.
        let to = |exponent: f64| math::pow(distance, exponent);
        let (p, p1, p2) = (to(b), b * to(b - 1.0), b * (b - 1.0) * to(b - 2.0));
        let p_d = p1 * by_delta;
        let p_dd = p1 * by_delta_twice + p2 * by_delta * by_delta;
        let p_t = -2.0 * theta * p1;
        let p_tt = 2.0 * p1 + 4.0 * theta * theta * p2;
        let p_dt = -upper_a * 2.0 / beta * p1 * x * power(half - 1.0) - 2.0 * theta * p2 * by_delta;

        // ψ with its derivatives.
        let psi = math::exp(-upper_c * square - upper_d * u * u);
        let psi_d = -2.0 * upper_c * x * psi;
        let psi_dd = (2.0 * upper_c * square - 1.0) * 2.0 * upper_c * psi;
        let psi_t = -2.0 * upper_d * u * psi;
        let psi_tt = (2.0 * upper_d * u * u - 1.0) * 2.0 * upper_d * psi;
        let psi_dt = 4.0 * upper_c * upper_d * x * u * psi;

        let first = psi + delta * psi_d;
        sum.a += n * p * delta * psi;
        sum.d += delta * n * (p * first + p_d * delta * psi);
        sum.dd += delta * delta * n * (p * (2.0 * psi_d + delta * psi_dd) + 2.0 * p_d * first + p_dd * delta * psi);
        sum.t += tau * n * delta * (p_t * psi + p * psi_t);
        sum.tt += tau * tau * n * delta * (p_tt * psi + 2.0 * p_t * psi_t + p * psi_tt);
        sum.dt +=
            delta * tau * n * (p * (psi_t + delta * psi_dt) + delta * p_d * psi_t + p_t * first + p_dt * delta * psi);
    }
}
