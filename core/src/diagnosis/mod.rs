//! From a reading to a finding.
//!
//! [`diagnose`] takes any subset of a reading's fields and always gives a finding: what cannot be judged is said, with
//! the measurement that would allow it. In heating no charge is judged; what can be asked there,
//! [`judge_heating`] answers.
//!
//! ```
//! use satline::diagnosis::{Charge, Reason, diagnose};
//! use satline::quantity::{AirTemperature, Atmosphere, Pressure, Temperature};
//! use satline::reading::{Metering, Reading};
//! use satline::saturation::R410A;
//!
//! let reading = Reading {
//!     refrigerant: Some(&R410A),
//!     metering: Some(Metering::FixedOrifice),
//!     outdoor_dry_bulb: Some(AirTemperature::from_fahrenheit(95.0)?),
//!     return_dry_bulb: Some(AirTemperature::from_fahrenheit(78.0)?),
//!     return_wet_bulb: Some(AirTemperature::from_fahrenheit(65.0)?),
//!     supply_dry_bulb: Some(AirTemperature::from_fahrenheit(52.0)?),
//!     suction_pressure: Some(Pressure::from_psi_gauge(105.0, Atmosphere::STANDARD)?),
//!     suction_line_temperature: Some(Temperature::from_fahrenheit(42.0)?),
//!     ..Reading::default()
//! };
//! let finding = diagnose(&reading);
//! // Superheat is on target, yet the air cools too much on its way through the coil: airflow comes first.
//! assert_eq!(finding.charge, Charge::NotJudged);
//! assert_eq!(finding.reason, Reason::AirflowFirst);
//! # Ok::<(), satline::Error>(())
//! ```

mod airflow;
mod amount;
mod cause;
mod cautions;
mod feature;
mod finding;
mod heating;
mod judge;
mod limits;
mod missing;
mod nothing;
mod options;
mod plausible;
mod precondition;
mod preconditions;
mod priors;
mod reconcile;
mod signature;
mod uncertainty;
mod values;
mod weigh;

pub use amount::{ChargeAmount, LARGEST_STEP_SHARE};
pub use cause::*;
pub use feature::*;
pub use finding::*;
pub use heating::*;
pub use judge::{Diagnosis, diagnose, diagnose_by, diagnose_with};
pub use options::Options;
pub use precondition::*;
pub use priors::Priors;
#[cfg(test)]
mod tests;
