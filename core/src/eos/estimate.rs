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
pub(super) fn liquid_volume(fluid: &PureFluid, temperature: f64) -> f64 {
    let reduced = (temperature / fluid.critical_temperature).min(0.99);
    let volume = 1.0 / fluid.reducing_density;
    let compressibility = fluid.critical_pressure * volume / (fluid.gas_constant * fluid.critical_temperature);
    volume * math::pow(compressibility, math::pow(1.0 - reduced, 2.0 / 7.0))
}

/// Vapour pressure by Ambrose and Walton below the critical temperature, by Wilson above it, Pa.
fn better_vapor_pressure(fluid: &PureFluid, temperature: f64) -> f64 {
    let reduced = temperature / fluid.critical_temperature;
    if reduced < 1.0 && reduced > 0.2 {
        fluid.critical_pressure * ambrose_walton(fluid.acentric_factor, reduced)
    } else {
        vapor_pressure(fluid, temperature)
    }
}

/// Bubble and dew pressure by Raoult's law, Pa.
pub(super) fn pressures(mixture: &Mixture, temperature: f64) -> (f64, f64) {
    let (mut bubble, mut dew) = (0.0, 0.0);
    for (fluid, fraction) in mixture.model().fluids.iter().zip(mixture.mole_fractions) {
        let pressure = better_vapor_pressure(fluid, temperature);
        bubble += fraction * pressure;
        dew += fraction / pressure;
    }
    (bubble, 1.0 / dew)
}

/// Saturated liquid density of the overall composition, volumes added by mole, mol/m³. Near a component's critical
/// temperature and above it counts as a liquid some way below: rather too dense than too thin.
pub(super) fn liquid_density(mixture: &Mixture, temperature: f64) -> f64 {
    let mut volume = 0.0;
    for (fluid, fraction) in mixture.model().fluids.iter().zip(mixture.mole_fractions) {
        let below = (1.0 - temperature / fluid.critical_temperature).max(0.1);
        volume += fraction / gunn_yamada(fluid, below);
    }
    1.0 / volume
}

fn gunn_yamada(fluid: &PureFluid, below: f64) -> f64 {
    fluid.reducing_density * (1.0 + 0.85 * below + (1.6916 + 0.984 * fluid.acentric_factor) * math::cbrt(below))
}

/// Saturation of a pure fluid from constants alone.
pub(super) struct Rough {
    /// mol/m³, mostly within some per cent.
    pub liquid: f64,
    /// mol/m³, mostly within some per cent.
    pub vapor: f64,
    /// Pa; a test in `density.rs` states how far off.
    pub pressure: f64,
}

/// Saturated densities of liquid and vapour of a pure fluid and its vapour pressure.
///
/// Liquid by the equation of Gunn and Yamada's form 1 + 0.85(1 − Tr) + (1.69 + 0.984ω)(1 − Tr)^⅓, vapour pressure by
/// Ambrose and Walton (1989), vapour density by Haggenmacher's (1946) difference of compressibilities; all from memory.
pub(super) fn pure_saturation(mixture: &Mixture, temperature: f64) -> Option<Rough> {
    let [fluid] = mixture.model().fluids else { return None };
    let reduced = temperature / fluid.critical_temperature;
    let below = 1.0 - reduced;
    if !(below > 0.0 && reduced > 0.15) {
        return None;
    }
    let acentric = fluid.acentric_factor;
    let liquid = gunn_yamada(fluid, below);
    let reduced_pressure = ambrose_walton(acentric, reduced);
    let pressure = reduced_pressure * fluid.critical_pressure;
    let ideal = pressure / (fluid.gas_constant * temperature);
    let difference = math::sqrt((1.0 - reduced_pressure / (reduced * reduced * reduced)).max(0.0));
    Some(Rough { liquid, vapor: ideal / (difference + ideal / liquid), pressure })
}

/// Reduced vapour pressure from the acentric factor.
pub(super) fn ambrose_walton(acentric: f64, reduced: f64) -> f64 {
    let x = 1.0 - reduced;
    let root = x * math::sqrt(x);
    let (far, farther) = (root * x, x * x * x * x * x);
    let simple = -5.97616 * x + 1.29874 * root - 0.60394 * far - 1.06841 * farther;
    let first = -5.03365 * x + 1.11505 * root - 5.41217 * far - 7.46628 * farther;
    let second = -0.64771 * x + 2.41539 * root - 4.26979 * far + 3.25259 * farther;
    math::exp((simple + acentric * (first + acentric * second)) / reduced)
}

/// Mole-weighted critical temperature, K: within a few per cent of the real one for refrigerant blends.
pub(crate) fn critical_temperature(mixture: &Mixture) -> f64 {
    let fluids = mixture.model().fluids.iter();
    fluids.zip(mixture.mole_fractions).map(|(fluid, fraction)| fraction * fluid.critical_temperature).sum()
}

/// Mole-weighted critical pressure, Pa.
pub(super) fn critical_pressure(mixture: &Mixture) -> f64 {
    let fluids = mixture.model().fluids.iter();
    fluids.zip(mixture.mole_fractions).map(|(fluid, fraction)| fraction * fluid.critical_pressure).sum()
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
