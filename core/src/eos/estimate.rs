//! First estimates for the saturation solver, from critical constants and acentric factors alone.
//!
//! Vapour pressure by Wilson's (1968) correlation, liquid volume by Rackett's (1970) equation, mixtures by Raoult's law:
//! good to some 10 % far below the critical point, which is all that the solver needs.

use super::equilibrium::{End, Equilibrium};
use super::fluid::PureFluid;
use super::mixture::{Mixture, PerComponent};
use super::model::MAX_COMPONENTS;
use crate::math;

/// Wilson's vapour pressure, Pa; also above the critical temperature, as mixtures need.
fn vapor_pressure(fluid: &PureFluid, temperature: f64) -> f64 {
    let slope = 5.373 * (1.0 + fluid.acentric_factor);
    fluid.critical_pressure * math::exp(slope * (1.0 - fluid.critical_temperature / temperature))
}

/// Rackett's saturated liquid volume, m³/mol.
fn liquid_volume(fluid: &PureFluid, temperature: f64) -> f64 {
    let reduced = (temperature / fluid.critical_temperature).min(0.99);
    let volume = 1.0 / fluid.reducing_density;
    let compressibility = fluid.critical_pressure * volume / (fluid.gas_constant * fluid.critical_temperature);
    volume * math::pow(compressibility, math::pow(1.0 - reduced, 2.0 / 7.0))
}

/// Mole-weighted critical temperature, K: within a few per cent of the real one for refrigerant blends.
pub(crate) fn critical_temperature(mixture: &Mixture) -> f64 {
    let fluids = mixture.model().fluids.iter();
    fluids.zip(mixture.mole_fractions).map(|(fluid, fraction)| fraction * fluid.critical_temperature).sum()
}

/// Bubble or dew pressure by Raoult's law, with the incipient mole fractions.
fn raoult(mixture: &Mixture, end: End, temperature: f64) -> (f64, PerComponent) {
    let mut incipient = [0.0; MAX_COMPONENTS];
    let mut sum = 0.0;
    for ((place, fluid), fraction) in incipient.iter_mut().zip(mixture.model().fluids).zip(mixture.mole_fractions) {
        let pressure = vapor_pressure(fluid, temperature);
        *place = match end {
            End::Bubble => fraction * pressure,
            End::Dew => fraction / pressure,
        };
        sum += *place;
    }
    let pressure = match end {
        End::Bubble => sum,
        End::Dew => 1.0 / sum,
    };
    (pressure, incipient.map(|share| share / sum))
}

/// Where the solver starts at a temperature.
pub(crate) fn start(mixture: &Mixture, end: End, temperature: f64) -> Option<Equilibrium> {
    let (pressure, incipient) = raoult(mixture, end, temperature);
    let (liquid, vapor) = match end {
        End::Bubble => (mixture.mole_fractions, incipient),
        End::Dew => (incipient, mixture.mole_fractions),
    };
    let volume: f64 = mixture
        .model()
        .fluids
        .iter()
        .zip(liquid)
        .map(|(fluid, fraction)| fraction * liquid_volume(fluid, temperature))
        .sum();
    let liquid_density = 1.0 / volume;
    // A vapour is denser than an ideal gas by some tens of per cent near its critical point.
    let ideal = pressure / (mixture.gas_constant * temperature);
    let vapor_density = (ideal / (1.0 - 0.6 * (pressure / 5e6).min(1.0))).min(0.3 * liquid_density);
    let sane = vapor_density > 0.0 && liquid_density.is_finite() && vapor.iter().all(|fraction| fraction.is_finite());
    sane.then(|| match end {
        End::Bubble => Equilibrium {
            temperature,
            pressure,
            bulk_density: liquid_density,
            incipient_densities: vapor.map(|fraction| fraction * vapor_density),
        },
        End::Dew => Equilibrium {
            temperature,
            pressure,
            bulk_density: vapor_density,
            incipient_densities: liquid.map(|fraction| fraction * liquid_density),
        },
    })
}

/// Temperature at which Raoult's law gives a pressure, by bisection; `None` if there is none in any sensible range.
pub(crate) fn temperature(mixture: &Mixture, end: End, pressure: f64) -> Option<f64> {
    let (mut low, mut high) = (30.0, 1500.0);
    let above = |temperature: f64| raoult(mixture, end, temperature).0 > pressure;
    if !(pressure > 0.0) || above(low) || !above(high) {
        return None;
    }
    while high - low > 1e-3 {
        let middle = 0.5 * (low + high);
        if above(middle) { high = middle } else { low = middle }
    }
    Some(low)
}
