//! Standard air, and what altitude and temperature do to an airflow.
//!
//! A fan moves volume; the heat that air carries goes by its mass. An airflow "at standard air" (SCFM) is the volume that
//! the flow's dry air would have at 0.075 lb/ft³, as ASHRAE 37 and AHRI 210/240 count it (from memory): at 5280 ft the
//! same fan moves the same volume (ACFM) but only some four fifths of the mass.

use super::moist::MoistAir;
use crate::bounds;
use crate::error::Error;
use crate::quantity::{Airflow, M3_S_PER_CFM, WATTS_PER_TON};

/// Density of standard air, kg/m³: 0.075 lb/ft³. Some SI standards round it to 1.2 and others to 1.204 (dry air at
/// 20 °C): 0.1 % less, 0.2 % more.
pub const STANDARD_AIR_KG_M3: f64 = 1.201_384_6;

/// The flow at standard air, m³/s, of an airflow measured in air of this state.
///
/// ```
/// use satline::air::{MoistAir, standard_airflow_m3_s};
/// use satline::quantity::{AirTemperature, Airflow, Atmosphere};
/// let air = |altitude_m| {
///     let dry = AirTemperature::from_fahrenheit(75.0)?;
///     MoistAir::from_relative_humidity(dry, 0.5, Atmosphere::at_altitude_m(altitude_m)?)
/// };
/// let flow = Airflow::from_m3_s(0.5663)?; // 1200 cfm
/// let (sea, high) = (standard_airflow_m3_s(flow, &air(0.0)?), standard_airflow_m3_s(flow, &air(1609.344)?));
/// assert!((high / sea - 0.82).abs() < 0.005);
/// # Ok::<(), satline::Error>(())
/// ```
#[must_use]
pub fn standard_airflow_m3_s(actual: Airflow, air: &MoistAir) -> f64 {
    actual.m3_s() / (air.specific_volume_m3_kg() * STANDARD_AIR_KG_M3)
}

/// The volume flow, m³/s, in air of this state of a flow given at standard air.
#[must_use]
pub fn actual_airflow_m3_s(standard: Airflow, air: &MoistAir) -> f64 {
    standard.m3_s() * (air.specific_volume_m3_kg() * STANDARD_AIR_KG_M3)
}

/// Density of this air over that of standard air: what a fan chart or a coil table at standard air is corrected by.
#[must_use]
pub fn density_ratio(air: &MoistAir) -> f64 {
    air.density_kg_m3() / STANDARD_AIR_KG_M3
}

/// Cubic feet a minute to a ton of capacity, from m³/s to a watt.
///
/// # Errors
/// [`Error::OutOfRange`] outside [`bounds::AIRFLOW_PER_CAPACITY`].
pub fn cfm_per_ton_from_m3_s_w(value: f64) -> Result<f64, Error> {
    Ok(bounds::AIRFLOW_PER_CAPACITY.check(value)? / M3_S_PER_CFM * WATTS_PER_TON)
}

/// Cubic metres a second to a watt of capacity, from cfm to a ton: the usual 400 is 5.4e-5.
///
/// # Errors
/// [`Error::OutOfRange`] where the result is outside [`bounds::AIRFLOW_PER_CAPACITY`].
pub fn m3_s_w_from_cfm_per_ton(value: f64) -> Result<f64, Error> {
    bounds::AIRFLOW_PER_CAPACITY.check(value * M3_S_PER_CFM / WATTS_PER_TON)
}
