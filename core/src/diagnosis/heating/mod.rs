//! A heat pump that heats: what can be judged, and what cannot.
//!
//! Superheat and subcooling have no target in heating, so [`crate::diagnose`] judges no charge there, and nor does
//! [`judge_heating`]: the charge is judged by weight. What can be asked is asked here: the heat delivered, whether frost
//! grows on the outdoor coil, whether the reversing valve leaks, and how a measurement compares with the maker's chart.
//!
//! In heating the two lines change their parts. A [`Reading`](crate::Reading) then means:
//!
//! | field | in heating |
//! |---|---|
//! | `suction_pressure` | at the compressor's suction, from the port between reversing valve and compressor; not at the vapour port |
//! | `discharge_pressure` | at the discharge, or at the vapour port, which carries hot gas |
//! | `liquid_pressure`, `liquid_line_temperature` | at the liquid port, where liquid comes back from the indoor coil |
//! | `suction_line_temperature` | the vapour line at the outdoor unit: hot gas on its way indoors |
//! | `coil_outlet_temperature` | the line leaving the indoor coil: liquid |
//! | `condensing_surface_temperature` | a return bend of the outdoor coil, which evaporates now |
//! | `return_…`, `supply_…`, `airflow` | as in cooling; the airflow is the volume of the air entering the indoor coil |
//! | `nominal_capacity` | what the nameplate says, taken as the heating capacity at 47 °F outdoors |
//!
//! A suction pressure whose dew temperature lies above the outdoor air was taken on the hot side; that is said, and
//! nothing is concluded from it.
//!
//! ```
//! use satline::diagnosis::{Frost, HeatingExtras, judge_heating};
//! use satline::quantity::{AirTemperature, Airflow, Atmosphere, Pressure, Temperature};
//! use satline::reading::{Mode, Reading};
//! use satline::saturation::R410A;
//! // Demo: 35 °F and damp outdoors, 70 °F air warmed to 95 °F.
//! let reading = Reading {
//!     refrigerant: Some(&R410A),
//!     mode: Some(Mode::Heating),
//!     outdoor_dry_bulb: Some(AirTemperature::from_fahrenheit(35.0)?),
//!     return_dry_bulb: Some(AirTemperature::from_fahrenheit(70.0)?),
//!     supply_dry_bulb: Some(AirTemperature::from_fahrenheit(95.0)?),
//!     ambient_pressure: Some(Atmosphere::STANDARD),
//!     airflow: Some(Airflow::from_m3_s(0.5)?),
//!     suction_pressure: Some(Pressure::from_psi_gauge(85.0, Atmosphere::STANDARD)?),
//!     ..Reading::default()
//! };
//! let extras = HeatingExtras { outdoor_dew_point: Some(Temperature::from_fahrenheit(33.0)?), ..HeatingExtras::default() };
//! let finding = judge_heating(&reading, &extras, None);
//! assert!((finding.values.delivered_capacity.unwrap().value - 8310.0).abs() < 100.0);
//! assert_eq!(finding.frost, Frost::Forms);
//! # Ok::<(), satline::Error>(())
//! ```

mod answers;
mod capacity;
mod chart;
mod finding;
mod frost;
mod inputs;
mod judge;
mod limits;
mod missing;
mod problems;
mod valve;

pub use answers::*;
pub use chart::{HeatingChart, HeatingChartFinding};
pub use finding::{HeatingFinding, HeatingSet, HeatingValues};
pub use judge::{HeatingExtras, judge_heating};
pub use missing::{HeatingField, HeatingMissing, HeatingMissingField};
