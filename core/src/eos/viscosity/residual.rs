//! What density adds to the viscosity, from the residual entropy.

use super::parameters::Parameters;
use crate::math;

/// Avogadro's constant, 1/mol (2019 SI; exact).
const AVOGADRO: f64 = 6.022_140_76e23;
/// Boltzmann's constant, J/K (2019 SI; exact).
const BOLTZMANN: f64 = 1.380_649e-23;

/// Residual entropy below which a gas is thinner than the published curve.
///
/// The published curve follows liquids; to the dense vapour near saturation it adds too much, up to 20 % of the
/// viscosity (R-134a, R-236fa and R-11 at 0.95 of the critical temperature). The share of it that is taken here,
/// 1 − exp(−s/FADE), leaves liquids as they were (0.95 at s = 2, 0.99 at 3). FADE was fitted to the published
/// correlations of R-134a (Huber, Laesecke and Perkins 2003, doi 10.1021/ie0300880) and R-125 (Huber and Laesecke 2006,
/// doi 10.1021/ie051367l); all other fluids test it.
const FADE: f64 = 0.68;

/// The exponent of the published curve at a residual entropy over the gas constant, above 0.
pub(super) fn exponent(parameters: &Parameters, entropy: f64) -> f64 {
    let scaled = math::ln(entropy / parameters.scale);
    [1.8, 2.4, 2.8].iter().zip(&parameters.residual).map(|(power, n)| n * math::exp(power * scaled)).sum()
}

/// The part of the viscosity due to density, Pa·s: from the residual entropy over the gas constant, above 0, the
/// mixture's exponent, the density in mol/m³, the molar mass in kg/mol and the temperature in K.
pub(super) fn viscosity(entropy: f64, exponent: f64, density: f64, molar_mass: f64, temperature: f64) -> f64 {
    let share = 1.0 - math::exp(-entropy / FADE);
    // The square of the molecules' number along a length, and the momentum of each.
    let number = math::cbrt(density * AVOGADRO / entropy);
    let momentum = math::sqrt(molar_mass / AVOGADRO * BOLTZMANN * temperature);
    share * (math::exp(exponent) - 1.0) * number * number * momentum
}
