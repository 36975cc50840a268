//! The heat given to the indoor air, and how it compares with nominal.

use super::answers::HeatingCapacity;
use super::inputs::At;
use super::limits::{CAPACITY_STANDARDS, VERY_LOW_AT_17_F, VERY_LOW_AT_47_F};
use crate::air::MoistAir;
use crate::diagnosis::Value;
use crate::error::Error;
use crate::quantity::{AirTemperature, Atmosphere};
use crate::reading::{Compressor, Reading, Stage};

/// The return air: by its wet bulb where there is one.
pub(super) fn return_air(at: &At) -> Result<MoistAir, Error> {
    let (dry, pressure) = (AirTemperature::from_kelvin(at.return_dry)?, Atmosphere::from_pascals(at.ambient)?);
    if at.return_wet.is_nan() {
        MoistAir::from_relative_humidity(dry, at.humidity, pressure)
    } else {
        MoistAir::from_wet_bulb(dry, AirTemperature::from_kelvin(at.return_wet)?, pressure)
    }
}

/// Heat given to the air, W: mass flow of dry air times the heat capacity of the moist air times the rise. Heating adds
/// no water, so the humidity ratio stays.
pub(super) fn delivered(at: &At) -> Result<f64, Error> {
    let air = return_air(at)?;
    Ok(at.airflow / air.specific_volume_m3_kg() * air.specific_heat_j_kg_k() * (at.supply - at.return_dry))
}

/// Whether the compressor gave all that it can, as far as is known.
fn is_at_full_stage(reading: &Reading) -> bool {
    match reading.compressor {
        Some(Compressor::Variable) => false,
        Some(Compressor::TwoStage) => reading.stage == Some(Stage::High),
        Some(Compressor::SingleSpeed) | None => reading.stage != Some(Stage::Low),
    }
}

/// The ratio below which a capacity is very low at an outdoor temperature in °F; none below 17 °F.
pub(super) fn very_low(outdoor_f: f64) -> Option<f64> {
    let share = ((outdoor_f - 17.0) / 30.0).min(1.0);
    // Rounding in a conversion must not put 17 °F below itself.
    (share >= -1e-9).then_some(VERY_LOW_AT_17_F + share * (VERY_LOW_AT_47_F - VERY_LOW_AT_17_F))
}

/// What the ratio says.
pub(super) fn judge(reading: &Reading, ratio: Option<Value>, settled: bool) -> HeatingCapacity {
    let limit = reading.outdoor_dry_bulb.and_then(|outdoor| very_low(outdoor.fahrenheit()));
    let (Some(ratio), Some(limit), true, true) = (ratio, limit, settled, is_at_full_stage(reading)) else {
        return HeatingCapacity::NotCompared;
    };
    let (over, reach) = (ratio.value - limit, CAPACITY_STANDARDS * ratio.standard_uncertainty);
    if over + reach < 0.0 {
        HeatingCapacity::VeryLow
    } else if over - reach > 0.0 {
        HeatingCapacity::NotVeryLow
    } else {
        HeatingCapacity::CannotTell
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn very_low_is_straight_between_its_two_temperatures() {
        assert_eq!(very_low(16.9), None);
        for (outdoor, limit) in [(17.0, 0.3), (32.0, 0.4), (47.0, 0.5), (60.0, 0.5)] {
            assert!((very_low(outdoor).unwrap() - limit).abs() < 1e-12, "{outdoor}");
        }
    }
}
