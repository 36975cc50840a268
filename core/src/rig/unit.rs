//! A unit: its parts, and what is wrong with it.

use super::coil::Coil;
use super::compressor::{Compression, Compressor, CompressorMap, EfficiencyCompressor};
use super::line::Line;
use super::map::{Point, RefrigerantMap};
use super::metering::{Around, FlashingOrifice, Metering, ShortTube, ThermostaticValve};
use super::structure::Structure;
use super::void::VoidFraction;
use crate::bounds::{self, Bound};
use crate::error::Error;

/// One of the compressors.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum AnyCompressor {
    /// By ten coefficients.
    Map(CompressorMap),
    /// By volume flow and efficiency.
    Efficiency(EfficiencyCompressor),
}

impl Compressor for AnyCompressor {
    fn run(&self, map: &RefrigerantMap, suction: &Point, discharge_pressure: f64) -> Result<Compression, Error> {
        match self {
            Self::Map(one) => one.run(map, suction, discharge_pressure),
            Self::Efficiency(one) => one.run(map, suction, discharge_pressure),
        }
    }
}

/// One of the metering devices.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum AnyMetering {
    /// Fixed orifice, by Payne and O'Neal.
    ShortTube(ShortTube),
    /// Fixed orifice, by a square-root law.
    FlashingOrifice(FlashingOrifice),
    /// Thermostatic valve.
    Valve(ThermostaticValve),
}

impl Metering for AnyMetering {
    fn flow(&self, map: &RefrigerantMap, around: &Around) -> Result<f64, Error> {
        match self {
            Self::ShortTube(one) => one.flow(map, around),
            Self::FlashingOrifice(one) => one.flow(map, around),
            Self::Valve(one) => one.flow(map, around),
        }
    }
}

/// A correction of the computed charge by two measured points: a constant, and a part that follows how much of the
/// condenser holds liquid only.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct ChargeTuning {
    /// kg.
    pub constant: f64,
    /// kg by share of the condenser.
    pub slope: f64,
    /// Share of the condenser with liquid only at which the constant holds.
    pub at_share: f64,
}

/// A split unit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Parts {
    /// The compressor.
    pub compressor: AnyCompressor,
    /// The metering device.
    pub metering: AnyMetering,
    /// The coil that condenses.
    pub condenser: Coil,
    /// The coil that evaporates.
    pub evaporator: Coil,
    /// From the outdoor unit's liquid port to the metering device.
    pub liquid_line: Line,
    /// From the indoor coil to the outdoor unit's vapour port.
    pub suction_line: Line,
    /// Inside the outdoor unit, from the condenser to the liquid port.
    pub condenser_outlet: Line,
    /// Inside the outdoor unit, from the vapour port to the compressor.
    pub suction_inlet: Line,
    /// From the compressor to the condenser.
    pub discharge_line: Line,
    /// Volume of gas in the compressor's shell, m³, at suction pressure.
    pub shell_volume: f64,
    /// How liquid and vapour share the coils.
    pub void: VoidFraction,
    /// Correction of the charge.
    pub tuning: ChargeTuning,
    /// Indoor airflow at full fan, m³/s, as the volume of the air that leaves the coil.
    pub indoor_airflow: f64,
    /// Outdoor airflow, m³/s, as the volume of the air that enters the coil.
    pub outdoor_airflow: f64,
    /// Power of the indoor fan at full airflow, W: it warms the supply air.
    pub indoor_fan_power: f64,
    /// Power of the outdoor fan, W.
    pub outdoor_fan_power: f64,
    /// Pressure drop over the metering device at the design point, Pa: what a restriction is measured against.
    pub design_drop: f64,
    /// Mass flow at the design point, kg/s.
    pub design_flow: f64,
    /// Which models of its parts.
    pub structure: Structure,
    /// The metering device at the outdoor coil, of a unit that also heats.
    pub heating_metering: Option<AnyMetering>,
}

impl Parts {
    /// Refuses what no unit is made of.
    pub(super) fn check(&self) -> Result<(), Error> {
        self.structure.check()?;
        bounds::AIRFLOW.check(self.indoor_airflow)?;
        let advice = "give the outdoor airflow in cubic metres a second: without air no heat leaves";
        bounds::within("outdoor airflow", "m3/s", self.outdoor_airflow, 0.05, 50.0, advice).map(|_| ())
    }
}

/// What is wrong, each from 0 (nothing) on; they combine.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Faults {
    /// Share of the nameplate charge that is missing.
    pub undercharge: f64,
    /// Share of the nameplate charge that is too much.
    pub overcharge: f64,
    /// Share of the indoor airflow that is missing.
    pub low_indoor_airflow: f64,
    /// Share of the outdoor airflow that is missing.
    pub restricted_condenser_air: f64,
    /// Pressure drop in the liquid line at the design flow, as a share of the whole drop to the evaporator.
    pub liquid_line_restriction: f64,
    /// Share of the compressor's flow that leaks back to its inlet.
    pub compressor_leakage: f64,
    /// Nitrogen inside, as a share of what fills the whole unit at 101 325 Pa and 294 K.
    pub non_condensables: f64,
    /// Of an orifice, how much wider it is than right, as a share of its flow; of a valve, superheat that its bulb feels
    /// beyond what there is, in units of 15 K.
    pub metering_overfeeding: f64,
    /// Share of the metering device's flow that is missing when fully open.
    pub metering_underfeeding: f64,
    /// How many times more heat than it should the suction line takes up, less one.
    pub suction_line_heat_gain: f64,
}

/// Superheat that a bulb off its line feels too much at a severity of 1, K.
pub(super) const LOOSE_BULB_K: f64 = 15.0;

const ADVICE: &str = "give a severity from 0 (healthy) up to the limit";

impl Faults {
    /// The severities with their names and highest values.
    fn all(&self) -> [(&'static str, f64, f64); 10] {
        [
            ("undercharge", self.undercharge, 0.9),
            ("overcharge", self.overcharge, 1.0),
            ("low indoor airflow", self.low_indoor_airflow, 0.95),
            ("restricted condenser air", self.restricted_condenser_air, 0.95),
            ("liquid line restriction", self.liquid_line_restriction, 1.0),
            ("compressor leakage", self.compressor_leakage, 0.7),
            ("non-condensables", self.non_condensables, 3.0),
            ("metering overfeeding", self.metering_overfeeding, 2.0),
            ("metering underfeeding", self.metering_underfeeding, 0.95),
            ("suction line heat gain", self.suction_line_heat_gain, 50.0),
        ]
    }

    /// Refuses severities outside their ranges.
    pub(super) fn check(&self) -> Result<(), Error> {
        self.all().into_iter().try_for_each(|(quantity, value, upper)| {
            Bound { quantity, unit: "severity", lower: 0.0, upper, advice: ADVICE }.check(value).map(|_| ())
        })
    }

    /// The same faults at a share of their severity.
    pub(super) fn scaled(&self, share: f64) -> Self {
        Self {
            undercharge: share * self.undercharge,
            overcharge: share * self.overcharge,
            low_indoor_airflow: share * self.low_indoor_airflow,
            restricted_condenser_air: share * self.restricted_condenser_air,
            liquid_line_restriction: share * self.liquid_line_restriction,
            compressor_leakage: share * self.compressor_leakage,
            non_condensables: share * self.non_condensables,
            metering_overfeeding: share * self.metering_overfeeding,
            metering_underfeeding: share * self.metering_underfeeding,
            suction_line_heat_gain: share * self.suction_line_heat_gain,
        }
    }
}

/// The air around a unit that cools.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Conditions {
    /// Air entering the outdoor coil, K.
    pub outdoor_dry_bulb: f64,
    /// Return air at the indoor coil, K.
    pub return_dry_bulb: f64,
    /// Its wet bulb, K.
    pub return_wet_bulb: f64,
    /// Station pressure, Pa.
    pub ambient_pressure: f64,
}

impl Conditions {
    /// These conditions moved towards others by a share of the way; the air inside stays as far from saturation as the
    /// share of the way says.
    pub(super) fn towards(&self, other: &Self, share: f64) -> Self {
        let mix = |from: f64, to: f64| from + share * (to - from);
        Self {
            outdoor_dry_bulb: mix(self.outdoor_dry_bulb, other.outdoor_dry_bulb),
            return_dry_bulb: mix(self.return_dry_bulb, other.return_dry_bulb),
            return_wet_bulb: mix(self.return_wet_bulb, other.return_wet_bulb),
            ambient_pressure: mix(self.ambient_pressure, other.ambient_pressure),
        }
    }

    pub(super) fn check(&self) -> Result<(), Error> {
        bounds::AIR_TEMPERATURE.check(self.outdoor_dry_bulb)?;
        bounds::AIR_TEMPERATURE.check(self.return_dry_bulb)?;
        bounds::AMBIENT_PRESSURE.check(self.ambient_pressure)?;
        let advice = "air is never drier than dry nor wetter than saturated: check both bulbs";
        let lower = self.return_dry_bulb - 45.0;
        bounds::within("return wet bulb", "K", self.return_wet_bulb, lower, self.return_dry_bulb, advice).map(|_| ())
    }
}
