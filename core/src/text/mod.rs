//! The one reader and writer of JSON, unit strings and readable findings.
//!
//! A file holds one reading or an array of them. A field is a number in SI under its full name, or a string with its
//! unit under the name without the unit:
//!
//! ```
//! use satline::diagnosis::diagnose;
//! use satline::text::{Units, finding_to_words, readings_from_json};
//!
//! let readings = readings_from_json(
//!     r#"{
//!         "label": "Roof unit 1",
//!         "refrigerant": "R-410A",
//!         "metering": "fixed-orifice",
//!         "suction_pressure": "118 psig",
//!         "suction_line_temperature_k": 289.82,
//!         "altitude": "5280 ft"
//!     }"#,
//! )?;
//! for labelled in &readings {
//!     let finding = diagnose(&labelled.reading);
//!     let words = finding_to_words(&labelled.label, &labelled.reading, &finding, Units::Ip);
//!     assert!(words.contains("23.3 ± 1.2 °F"));
//! }
//! # Ok::<(), satline::text::TextError>(())
//! ```

mod accuracy;
mod canonical;
mod error;
mod json;
mod read;
mod record;
mod schema;
mod target_grid;
mod unit;
mod words;
mod write;

pub use error::TextError;
pub use read::{LabelledReading, readings_from_json};
pub use record::{
    Direction, Evaluated, Given, Probe, Step, Tables, VISIT_FORMAT, VisitRecord, VisitStep, WeighedAmount,
    tables_fingerprint,
};
pub use schema::Schema;
pub use target_grid::{LoadedTargetGrid, target_grid_from_json};
pub use words::{MOST_WORDS, Units, finding_to_words};
pub use write::{FINDING_FORMAT, finding_to_json, findings_to_json};
#[cfg(test)]
mod sample;
#[cfg(test)]
mod tests;
