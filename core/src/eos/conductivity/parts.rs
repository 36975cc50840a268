//! The parts of a published thermal conductivity that need no equation of state: dilute gas and residual.

use crate::eos::PureFluid;
use crate::math;

/// Thermal conductivity of the gas at zero density, W/(m·K).
#[derive(Debug)]
pub(super) enum Dilute {
    /// Σ aᵢ·tⁱ with t = T/`temperature`.
    Powers { temperature: f64, coefficients: &'static [f64] },
    /// Σ aᵢ·tⁱ / Σ bᵢ·tⁱ with t = T/`temperature`.
    Ratio { temperature: f64, numerator: &'static [f64], denominator: &'static [f64] },
    /// 10⁻³·√t / Σ aᵢ·s⁻ⁱ with t = T/`temperature` and s = t, or √t where `halves`.
    Root { temperature: f64, coefficients: &'static [f64], halves: bool },
    /// From a viscosity and the ideal-gas heat capacity, as R-170's paper has it.
    Ethane,
}

impl Dilute {
    pub(super) fn at(&self, fluid: &PureFluid, temperature: f64) -> f64 {
        let in_powers_of = |t: f64, coefficients: &[f64]| {
            coefficients.iter().rev().fold(0.0, |sum, coefficient| sum * t + coefficient)
        };
        match *self {
            Self::Powers { temperature: unit, coefficients } => in_powers_of(temperature / unit, coefficients),
            Self::Ratio { temperature: unit, numerator, denominator } => {
                in_powers_of(temperature / unit, numerator) / in_powers_of(temperature / unit, denominator)
            }
            Self::Root { temperature: unit, coefficients, halves } => {
                let t = temperature / unit;
                let root = math::sqrt(t);
                1e-3 * root / in_powers_of(if halves { 1.0 / root } else { 1.0 / t }, coefficients)
            }
            Self::Ethane => ethane(fluid, temperature),
        }
    }
}

/// Friend, Ingham and Ely's dilute gas of ethane: a viscosity by a collision integral, times Eucken's factor of the
/// ideal-gas heat capacity with a correction.
fn ethane(fluid: &PureFluid, temperature: f64) -> f64 {
    const COLLISIONS: [f64; 9] = [
        -3.0328138281,
        16.918880086,
        -37.189364917,
        41.288861858,
        -24.615921140,
        8.9488430959,
        -1.8739245042,
        0.20966101390,
        -9.6570437074e-3,
    ];
    let reduced = temperature / 245.0;
    let third = math::cbrt(reduced);
    // 1/Ω in powers of the cube root, from the power -1.
    let inverse = COLLISIONS.iter().rev().fold(0.0, |sum, coefficient| sum * third + coefficient) / reduced;
    let viscosity = 12.0085 * math::sqrt(reduced) * inverse;
    let correction = 1.7104147 - 0.6936482 / reduced;
    let heat_capacity = fluid.ideal.at(fluid.reducing_temperature / temperature).tt;
    0.276505e-3 * viscosity * (3.75 - correction * (heat_capacity + 1.5))
}

/// What density adds, W/(m·K), with δ = ρ/`density` in kg/m³.
#[derive(Debug)]
pub(super) enum Residual {
    /// Σ (aᵢ + bᵢ·T/`temperature`)·δⁱ, from i = 1.
    Linear { temperature: f64, density: f64, coefficients: &'static [(f64, f64)] },
    /// Σ n·τ^t·δ^d with τ = `temperature`/T.
    Powers { temperature: f64, density: f64, terms: &'static [(f64, f64, i32)] },
}

impl Residual {
    /// At a temperature in K and a density in kg/m³.
    pub(super) fn at(&self, temperature: f64, density: f64) -> f64 {
        match *self {
            Self::Linear { temperature: unit, density: scale, coefficients } => {
                let (t, delta) = (temperature / unit, density / scale);
                coefficients.iter().rev().fold(0.0, |sum, (a, b)| (sum + a + b * t) * delta)
            }
            Self::Powers { temperature: unit, density: scale, terms } => {
                let (ln_tau, delta) = (math::ln(unit / temperature), density / scale);
                let power = |exponent: i32| (0..exponent).fold(1.0, |product, _| product * delta);
                terms.iter().map(|(n, t, d)| n * math::exp(t * ln_tau) * power(*d)).sum()
            }
        }
    }
}
