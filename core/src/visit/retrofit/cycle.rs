//! One refrigerant in the plain vapour-compression cycle at stated conditions.

use super::answers::CondensingAt;
use super::{Conditions, Side};
use crate::bounds;
use crate::eos::{End, Model, Properties, Reference, State, StateInput};
use crate::error::Error;
use crate::math;

/// A refrigerant at stated conditions. Pressures are absolute.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Cycle {
    /// Dew pressure at the evaporating temperature, Pa.
    pub evaporating_pressure_pa: f64,
    /// Condensing pressure by the convention in use, Pa.
    pub condensing_pressure_pa: f64,
    /// Condensing over evaporating pressure.
    pub pressure_ratio: f64,
    /// Dew minus bubble temperature at the evaporating pressure, K: more than the coil sees, where refrigerant enters
    /// partly evaporated.
    pub evaporating_glide_k: f64,
    /// Dew minus bubble temperature at the condensing pressure, K.
    pub condensing_glide_k: f64,
    /// Temperature at the compressor's inlet, K.
    pub suction_temperature_k: f64,
    /// Density there, kg/m³.
    pub suction_density_kg_m3: f64,
    /// Temperature after compression with the stated isentropic efficiency, K.
    pub discharge_temperature_k: f64,
    /// Density there, kg/m³.
    pub discharge_density_kg_m3: f64,
    /// Temperature of the liquid before the metering device, K.
    pub liquid_temperature_k: f64,
    /// Density there, kg/m³.
    pub liquid_density_kg_m3: f64,
    /// Density of saturated liquid at the condensing pressure, kg/m³: what fills most of the charged volume.
    pub bubble_density_kg_m3: f64,
    /// Refrigerating effect, J/kg.
    pub refrigerating_effect_j_kg: f64,
    /// Suction density times refrigerating effect, J/m³: the cooling of each cubic metre that the compressor takes in.
    pub volumetric_capacity_j_m3: f64,
    /// Refrigerating effect over the work of compression.
    pub coefficient_of_performance: f64,
    /// Bubble pressure at the standstill temperature, Pa; none above the critical temperature.
    pub standstill_pressure_pa: Option<f64>,
    /// Bubble pressure at the low side's standstill temperature, Pa; none above the critical temperature.
    pub low_side_standstill_pressure_pa: Option<f64>,
}

/// Says of which refrigerant a value is out of range.
fn told(side: Side, what: What) -> impl Fn(Error) -> Error {
    move |error| match error {
        Error::OutOfRange { unit, value, lower, upper, .. } => {
            let (quantity, advice) = match (side, what) {
                (Side::Old, What::Evaporating) => ("evaporating state of the old refrigerant", EVAPORATING),
                (Side::New, What::Evaporating) => ("evaporating state of the new refrigerant", EVAPORATING),
                (Side::Old, What::Condensing) => ("condensing state of the old refrigerant", CONDENSING),
                (Side::New, What::Condensing) => ("condensing state of the new refrigerant", CONDENSING),
                (Side::Old, What::Compression) => ("compression of the old refrigerant", COMPRESSION),
                (Side::New, What::Compression) => ("compression of the new refrigerant", COMPRESSION),
            };
            Error::OutOfRange { quantity, unit, value, lower, upper, advice }
        }
        other => other,
    }
}

#[derive(Clone, Copy)]
enum What {
    Evaporating,
    Condensing,
    Compression,
}

const EVAPORATING: &str =
    "choose an evaporating temperature between the refrigerant's lowest and its critical temperature";
const CONDENSING: &str =
    "choose a condensing temperature above the evaporating and below the critical temperature, and less subcooling";
const COMPRESSION: &str = "choose conditions whose discharge stays within the equations' range";

impl Cycle {
    pub(super) fn of(model: &'static Model, conditions: &Conditions, side: Side) -> Result<Self, Error> {
        let evaporating = conditions.evaporating.kelvin();
        let condensing = conditions.condensing.kelvin();
        let (at_low, at_high) = (told(side, What::Evaporating), told(side, What::Condensing));
        // Only differences of enthalpy matter, so any reference state will do that the refrigerant has.
        let properties = Properties::of(model, Reference::NormalBoiling)
            .or_else(|_| Properties::of(model, Reference::Ashrae))
            .map_err(&at_low)?;
        let mixture = properties.mixture();
        let low = mixture.at_temperature(End::Dew, evaporating).map_err(&at_low)?.pressure;
        let high = condensing_pressure(&properties, condensing, conditions.condensing_at).map_err(&at_high)?;
        if !(high > low) {
            return Err(at_high(bounds::refuse("", "Pa", high, low, bounds::ABSOLUTE_PRESSURE.upper, "")));
        }
        let saturated = |pressure, quality| properties.state(StateInput::PressureQuality { pressure, quality });
        let (dew, bubble) = (saturated(low, 1.0).map_err(&at_low)?, saturated(high, 0.0).map_err(&at_high)?);
        let beside = |state: State, change: f64| {
            let temperature = state.temperature + change;
            if change == 0.0 {
                return Ok(state);
            }
            properties.state(StateInput::TemperaturePressure { temperature, pressure: state.pressure })
        };
        let superheat = bounds::CYCLE_DIFFERENCE.check(conditions.superheat.kelvin())?;
        let subcooling = bounds::CYCLE_DIFFERENCE.check(conditions.subcooling.kelvin())?;
        let suction = beside(dew, superheat).map_err(&at_low)?;
        let coil_outlet = beside(dew, superheat * conditions.useful_superheat).map_err(&at_low)?;
        let liquid = beside(bubble, -subcooling).map_err(&at_high)?;
        let compressed = |input| properties.state(input).map_err(told(side, What::Compression));
        let ideal = compressed(StateInput::PressureEntropy { pressure: high, entropy: suction.entropy })?;
        let work = (ideal.enthalpy - suction.enthalpy) / conditions.isentropic_efficiency;
        let discharge = compressed(StateInput::PressureEnthalpy { pressure: high, enthalpy: suction.enthalpy + work })?;
        let effect = coil_outlet.enthalpy - liquid.enthalpy;
        let at_rest = |temperature: f64| match mixture.at_temperature(End::Bubble, temperature) {
            Ok(point) => Ok(Some(point.pressure)),
            // Above its critical temperature there is no liquid.
            Err(Error::OutOfRange { upper, .. }) if temperature > upper => Ok(None),
            Err(error) => Err(at_low(error)),
        };
        Ok(Self {
            evaporating_pressure_pa: low,
            condensing_pressure_pa: high,
            pressure_ratio: high / low,
            evaporating_glide_k: dew.temperature - saturated(low, 0.0).map_err(&at_low)?.temperature,
            condensing_glide_k: saturated(high, 1.0).map_err(&at_high)?.temperature - bubble.temperature,
            suction_temperature_k: suction.temperature,
            suction_density_kg_m3: suction.density,
            discharge_temperature_k: discharge.temperature,
            discharge_density_kg_m3: discharge.density,
            liquid_temperature_k: liquid.temperature,
            liquid_density_kg_m3: liquid.density,
            bubble_density_kg_m3: bubble.density,
            refrigerating_effect_j_kg: effect,
            volumetric_capacity_j_m3: suction.density * effect,
            coefficient_of_performance: effect / work,
            standstill_pressure_pa: at_rest(conditions.standstill.kelvin())?,
            low_side_standstill_pressure_pa: at_rest(conditions.low_side_standstill.kelvin())?,
        })
    }

    /// What an orifice passes for each unit of its area and its flow coefficient, kg/(s·m²): √(2ρΔp), the liquid being
    /// taken as one that does not flash.
    pub(super) fn orifice_flux(&self) -> f64 {
        let drop = self.condensing_pressure_pa - self.evaporating_pressure_pa;
        math::sqrt(2.0 * self.liquid_density_kg_m3 * drop)
    }
}

/// The pressure of a condensing temperature by a convention.
fn condensing_pressure(properties: &Properties, temperature: f64, at: CondensingAt) -> Result<f64, Error> {
    let mixture = properties.mixture();
    let pressure = |end| mixture.at_temperature(end, temperature).map(|point| point.pressure);
    match at {
        CondensingAt::Bubble => pressure(End::Bubble),
        CondensingAt::Dew => pressure(End::Dew),
        CondensingAt::Mean => {
            let (mut lower, mut upper) = (pressure(End::Dew)?, pressure(End::Bubble)?);
            let excess = |pressure: f64| -> Result<f64, Error> {
                let bubble = mixture.at_pressure(End::Bubble, pressure)?.temperature;
                let dew = mixture.at_pressure(End::Dew, pressure)?.temperature;
                Ok(0.5 * (bubble + dew) - temperature)
            };
            if !(upper - lower > 1e-9 * upper) {
                return Ok(upper);
            }
            // Dew pressure has a mean below the temperature, bubble pressure above it; between them it is nearly
            // straight, so the secant through the last two points settles in a few steps.
            let (mut below, mut above) = (excess(lower)?, excess(upper)?);
            for _ in 0..20 {
                let next = lower - below * (upper - lower) / (above - below);
                let found = excess(next)?;
                (lower, below, upper, above) = (upper, above, next, found);
                if found.abs() < 1e-10 || above == below {
                    break;
                }
            }
            Ok(upper)
        }
    }
}
