//! Moist air, and the air side of the indoor coil.
//!
//! [`MoistAir`] is air at a dry bulb temperature, a pressure and one measure of its humidity; it gives all the others.
//! [`CoilAir`] is what was measured before and after the coil; it gives temperature split, capacity, airflow and the
//! coil's surface, each with its standard uncertainty.
//!
//! Equations are those of the ASHRAE Handbook Fundamentals 2017, chapter 1: air and water vapour as ideal gases,
//! saturation by Hyland and Wexler, no enhancement factor. Nothing here needs the equations of state of refrigerants.

mod coil;
mod coil_airflow;
mod coil_surface;
mod measured;
mod moist;
mod solve;
mod standard;
pub(crate) mod water;
mod wet_bulb;

pub use coil::{AirflowPlace, CoilAir, CoilCapacity, Split};
pub use coil_airflow::{CoilAirflow, KnownHeat};
pub use coil_surface::ApparatusDewPoint;
pub use measured::{Humidity, MeasuredAir};
pub use moist::MoistAir;
pub use standard::{
    STANDARD_AIR_KG_M3, actual_airflow_m3_s, cfm_per_ton_from_m3_s_w, density_ratio, m3_s_w_from_cfm_per_ton,
    standard_airflow_m3_s,
};
pub use water::{saturated_humidity_ratio, saturation_pressure_pa};
