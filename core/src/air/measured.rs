//! Air as probes measure it: with uncertainty, and in whatever measure of humidity the probe gives.

use super::moist::MoistAir;
use crate::error::Error;
use crate::quantity::{AirTemperature, Atmosphere, Temperature};
use crate::uncertain::Uncertain;

/// One measure of humidity, with its standard uncertainty.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Humidity {
    /// Wet bulb temperature, K.
    WetBulb(Uncertain),
    /// Relative humidity, 0 to 1.
    Relative(Uncertain),
    /// Dew point temperature, K.
    DewPoint(Uncertain),
    /// Humidity ratio, kg of water to a kg of dry air.
    Ratio(Uncertain),
}

impl Humidity {
    /// The value with its uncertainty.
    pub(super) const fn input(&self) -> Uncertain {
        match self {
            Self::WetBulb(input) | Self::Relative(input) | Self::DewPoint(input) | Self::Ratio(input) => *input,
        }
    }

    /// The air of that dry bulb and humidity, each moved from what was measured. A thermometer's bias, K, moves the wet
    /// bulb and the dew point too.
    pub(super) fn air(&self, dry_k: f64, humidity: f64, bias: f64, pressure: f64) -> Result<MoistAir, Error> {
        let (dry, pressure) = (AirTemperature::from_kelvin(dry_k + bias)?, Atmosphere::from_pascals(pressure)?);
        match self {
            Self::WetBulb(_) => MoistAir::from_wet_bulb(dry, AirTemperature::from_kelvin(humidity + bias)?, pressure),
            Self::Relative(_) => MoistAir::from_relative_humidity(dry, humidity, pressure),
            Self::DewPoint(_) => MoistAir::from_dew_point(dry, Temperature::from_kelvin(humidity + bias)?, pressure),
            Self::Ratio(_) => MoistAir::from_humidity_ratio(dry, humidity, pressure),
        }
    }
}

/// Air as measured at one place.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MeasuredAir {
    /// Dry bulb temperature, K.
    pub dry_bulb_k: Uncertain,
    /// One measure of its humidity.
    pub humidity: Humidity,
}
