//! Saturation of a pure fluid: two densities on one isotherm, found directly.

use super::equilibrium::{End, Equilibrium};
use super::estimate;
use super::isotherm::{Along, Isotherm, OF_PURE};
use super::mixture::Mixture;
use super::model::MAX_COMPONENTS;
use crate::math;

/// Most steps of a search from an estimate; the general solver takes over where they are not enough.
const MOST_STEPS: usize = 24;
/// Longest step in a logarithm of density.
const LONGEST_STEP: f64 = 0.4;
/// A step below this is the last: convergence is quadratic, so the next would be lost in rounding.
const LAST_STEP: f64 = 1e-8;

/// A saturated liquid and its vapour.
#[derive(Debug, Clone, Copy)]
pub(super) struct Saturated {
    /// Pressure, Pa.
    pub pressure: f64,
    /// mol/m³.
    pub liquid: f64,
    /// mol/m³.
    pub vapor: f64,
}

impl Saturated {
    /// As the bubble or dew point that it is.
    pub fn at(&self, end: End, temperature: f64) -> Equilibrium {
        let (bulk_density, incipient) = match end {
            End::Bubble => (self.liquid, self.vapor),
            End::Dew => (self.vapor, self.liquid),
        };
        let mut incipient_densities = [0.0; MAX_COMPONENTS];
        incipient_densities[0] = incipient;
        Equilibrium { temperature, pressure: self.pressure, bulk_density, incipient_densities }
    }
}

impl Mixture {
    /// Saturation of a pure fluid at a temperature in K; `None` where the direct search does not succeed.
    pub(super) fn pure_saturation(&self, temperature: f64) -> Option<Saturated> {
        let rough = estimate::pure_saturation(self, temperature)?;
        let isotherm = Isotherm::<OF_PURE>::of(self, temperature)?;
        let [mut liquid, mut vapor] = isotherm.at_each([rough.liquid, rough.vapor]);
        for _ in 0..MOST_STEPS {
            let (to_liquid, to_vapor) = step(&liquid, &vapor)?;
            let largest = to_liquid.abs().max(to_vapor.abs());
            let factor = if largest > LONGEST_STEP { LONGEST_STEP / largest } else { 1.0 };
            [liquid, vapor] = isotherm.at_each([
                liquid.density * math::exp(factor * to_liquid),
                vapor.density * math::exp(factor * to_vapor),
            ]);
            // So near to each other that both may be one and the same phase: left to the careful solver.
            if !(liquid.density > 1.35 * vapor.density) {
                return None;
            }
            if largest < LAST_STEP {
                return accept(&isotherm, &liquid, &vapor);
            }
        }
        None
    }
}

/// Newton's step in the logarithms of both densities towards equal pressures and fugacities.
fn step(liquid: &Along, vapor: &Along) -> Option<(f64, f64)> {
    if !(liquid.slope() > 0.0 && vapor.slope() > 0.0) {
        return None;
    }
    let pressure = liquid.pressure() - vapor.pressure();
    let fugacity = liquid.ln_fugacity() - vapor.ln_fugacity();
    // At constant temperature d ln f is the slope times d ln ρ, and dp that times ρRT.
    let of_liquid = (vapor.density * fugacity - pressure) / (liquid.density - vapor.density);
    let of_vapor = of_liquid + fugacity;
    Some((of_liquid / liquid.slope(), of_vapor / vapor.slope()))
}

fn accept(isotherm: &Isotherm<'_, OF_PURE>, liquid: &Along, vapor: &Along) -> Option<Saturated> {
    let equal = (liquid.ln_fugacity() - vapor.ln_fugacity()).abs() < 1e-9;
    let stable = liquid.slope() > 0.0 && vapor.slope() > 0.0;
    // The pressure of the vapour: that of the liquid is a small difference of large numbers.
    let pressure = vapor.pressure() * isotherm.rt;
    (equal && stable && pressure > 0.0).then_some(Saturated { pressure, liquid: liquid.density, vapor: vapor.density })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::eos::equilibrium::Given;
    use crate::eos::model;

    /// The direct search and the general solver are two programs for the same equations. Far below the boiling point
    /// the liquid's pressure is lost in rounding, which both then share out differently.
    #[test]
    fn agrees_with_the_general_solver() {
        for model in model::ALL.iter().filter(|model| model.fluids.len() == 1) {
            let mixture = Mixture::of(model).unwrap();
            let (low, high) = (mixture.lowest_temperature(), 0.99 * model.fluids[0].critical_temperature);
            let mut compared = 0;
            for index in 0..=200 {
                let temperature = low + (high - low) * f64::from(index) / 200.0;
                let found = mixture.pure_saturation(temperature).unwrap();
                let given = Given::Temperature(temperature);
                let start = estimate::start(&mixture, End::Bubble, temperature).unwrap();
                let Some(general) = mixture.newton(End::Bubble, given, &start) else { continue };
                compared += 1;
                for (one, other) in [
                    (found.pressure, general.pressure),
                    (found.liquid, general.bulk_density),
                    (found.vapor, general.incipient_density()),
                ] {
                    assert!((one / other - 1.0).abs() < 2e-11, "{} {temperature}", model.identity.designation);
                }
            }
            assert!(compared > 150, "{} {compared}", model.identity.designation);
        }
    }
}
