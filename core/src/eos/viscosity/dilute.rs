//! Viscosity of a gas at zero density.

use super::parameters::Parameters;
use crate::eos::mixture::PerComponent;
use crate::eos::model::MAX_COMPONENTS;
use crate::math;

/// Viscosity of a pure gas at zero density, Pa·s.
fn pure(parameters: &Parameters, temperature: f64) -> f64 {
    1e-6 * parameters.dilute.iter().rev().fold(0.0, |sum, coefficient| sum * temperature + coefficient)
}

/// Viscosity of a mixture's gas at zero density, Pa·s, by the rule of Wilke, C. R., Journal of Chemical Physics 18
/// (1950) 517-519, doi 10.1063/1.1747673.
///
/// `components` gives each component's parameters, mole fraction and molar mass.
pub(super) fn mixture<'a>(
    components: impl Iterator<Item = (&'a Parameters, f64, f64)> + Clone,
    temperature: f64,
) -> f64 {
    let mut viscosities: PerComponent = [0.0; MAX_COMPONENTS];
    for (place, (parameters, _, _)) in viscosities.iter_mut().zip(components.clone()) {
        *place = pure(parameters, temperature);
    }
    let all = components.zip(viscosities);
    let mut sum = 0.0;
    for ((_, fraction, mass), viscosity) in all.clone() {
        let mut weights = 0.0;
        for ((_, other_fraction, other_mass), other_viscosity) in all.clone() {
            let root = 1.0 + math::sqrt(viscosity / other_viscosity * math::sqrt(other_mass / mass));
            weights += other_fraction * root * root / math::sqrt(8.0 * (1.0 + mass / other_mass));
        }
        sum += fraction * viscosity / weights;
    }
    sum
}
