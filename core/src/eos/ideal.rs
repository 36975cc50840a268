//! The ideal-gas part of a pure fluid's Helmholtz energy.
//!
//! α⁰ = ln δ + a₁ + a₂τ + c·ln τ + Σ n·τ^t + Σ n·ln(1 − exp(−θτ)). The first two constants only set where enthalpy and
//! entropy are zero; see the reference states.

use crate::math;

/// Coefficients of an ideal-gas part. Papers that give an ideal-gas heat capacity instead are integrated to this form.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ideal {
    /// a₁.
    pub constant: f64,
    /// a₂.
    pub linear: f64,
    /// c.
    pub logarithm: f64,
    /// n and t of the powers.
    pub powers: &'static [(f64, f64)],
    /// n and θ of the vibrations.
    pub vibrations: &'static [(f64, f64)],
}

/// α⁰ without ln δ, with its derivatives in τ: value, τ·∂/∂τ, τ²·∂²/∂τ².
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub struct IdealDerivatives {
    /// α⁰ − ln δ.
    pub a: f64,
    /// τ·∂α⁰/∂τ.
    pub t: f64,
    /// τ²·∂²α⁰/∂τ².
    pub tt: f64,
}

impl Ideal {
    /// At a reduced reciprocal temperature τ.
    #[must_use]
    pub fn at(&self, tau: f64) -> IdealDerivatives {
        let ln_tau = math::ln(tau);
        let mut sum = IdealDerivatives {
            a: self.constant + self.linear * tau + self.logarithm * ln_tau,
            t: self.linear * tau + self.logarithm,
            tt: -self.logarithm,
        };
        for (n, t) in self.powers {
            let value = n * math::exp(t * ln_tau);
            sum.a += value;
            sum.t += value * t;
            sum.tt += value * t * (t - 1.0);
        }
        for (n, theta) in self.vibrations {
            let x = theta * tau;
            let below = math::exp(-x);
            let share = x * below / (1.0 - below);
            sum.a += n * math::ln(1.0 - below);
            sum.t += n * share;
            sum.tt -= n * share * x / (1.0 - below);
        }
        sum
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;

    #[test]
    fn derivatives_match_finite_differences() {
        let ideal = Ideal {
            constant: -1.0,
            linear: 2.5,
            logarithm: 3.1,
            powers: &[(-9.7, -0.5), (0.3, 1.5)],
            vibrations: &[(2.3, 0.9), (5.1, 2.2)],
        };
        let (tau, step) = (1.1, 1e-5);
        let (here, up, down) = (ideal.at(tau), ideal.at(tau + step), ideal.at(tau - step));
        assert_relative_eq!(here.t, tau * (up.a - down.a) / (2.0 * step), max_relative = 1e-8);
        assert_relative_eq!(here.tt, tau * (up.t - down.t) / (2.0 * step) - here.t, max_relative = 1e-7);
    }
}
