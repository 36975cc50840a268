//! The record of a visit: what was read, found and done, as bytes that a host can hash, sign and keep.
//!
//! ```
//! use satline::diagnosis::diagnose;
//! use satline::text::{Evaluated, VisitRecord, VisitStep, Step, readings_from_json};
//!
//! let written = r#"{"refrigerant": "R-410A", "metering": "fixed-orifice", "suction_pressure": "118 psig"}"#; // demo
//! let reading = readings_from_json(written)?[0].reading;
//! let mut record = VisitRecord::new("Roof unit 1", "2026-07-14T15:02:00Z", reading.refrigerant);
//! record.demo = true;
//! record.before = Some(Evaluated::new("2026-07-14T15:20:00Z", written, &diagnose(&reading))?);
//! record.steps.push(Step::new("2026-07-14T15:04:00Z", VisitStep::HosesConnected));
//!
//! let bytes = record.to_canonical_bytes()?;
//! let back = VisitRecord::from_json(core::str::from_utf8(&bytes)?)?;
//! assert_eq!((&back, back.to_canonical_bytes()?), (&record, bytes));
//! assert!(back.tables_are_these());
//! # Ok::<(), Box<dyn std::error::Error>>(())
//! ```

mod node;
mod read;
mod tables;
#[cfg(test)]
mod tests;
mod time;
mod write;

use super::canonical::Json;
use super::error::{Fault, TextError};
use super::write::finding_to_json;
use crate::charge::answers::answers;
use crate::diagnosis::Finding;
use crate::reading::Field;
use crate::saturation::SaturationCurves;
use alloc::string::String;
use alloc::vec::Vec;
pub(super) use read::{AMOUNT, EVALUATED, PROBE, RECORD, SMALLEST_KG, STEP, TABLES};
pub use tables::tables_fingerprint;

/// The first version of a record. A reader refuses any other.
pub const VISIT_FORMAT: &str = "satline-visit/1";

answers! {
    /// What was done at a visit.
    VisitStep {
        /// Arrived at the unit.
        Arrived = 1 "arrived" "Arrived at the unit.";
        /// Gauges connected and purged.
        HosesConnected = 2 "hoses-connected" "Connected gauges and purged the hoses.";
        /// Gauges zeroed.
        GaugesZeroed = 3 "gauges-zeroed" "Zeroed the gauges.";
        /// Unit started, or switched to its test mode.
        Started = 4 "started" "Started the unit, or switched it to its test mode.";
        /// Settled.
        Settled = 5 "settled" "Let the unit settle.";
        /// Airflow corrected: filter, blower, coil, registers.
        AirflowCorrected = 6 "airflow-corrected" "Corrected the indoor airflow.";
        /// Outdoor coil cleaned or its air freed.
        CondenserCleaned = 7 "condenser-cleaned" "Cleaned the outdoor coil or freed its air.";
        /// Leak looked for.
        LeakSearched = 8 "leak-searched" "Looked for a leak.";
        /// Leak repaired.
        LeakRepaired = 9 "leak-repaired" "Repaired a leak.";
        /// Refrigerant recovered.
        Recovered = 10 "recovered" "Recovered refrigerant into a cylinder.";
        /// Tested by pressure.
        PressureTested = 11 "pressure-tested" "Tested the circuit with nitrogen.";
        /// Evacuated.
        Evacuated = 12 "evacuated" "Evacuated the circuit.";
        /// Refrigerant added.
        Added = 13 "added" "Added refrigerant.";
        /// Part repaired or replaced.
        PartReplaced = 14 "part-replaced" "Repaired or replaced a part.";
        /// Gauges taken off.
        HosesRemoved = 15 "hoses-removed" "Took the gauges off and closed the ports.";
        /// Left the unit.
        Left = 16 "left" "Left the unit.";
        /// Anything else; the note says what.
        Other = 17 "other" "Something else: see the note.";
    }
}

answers! {
    /// Which way refrigerant went.
    Direction {
        /// Into the unit.
        Added = 1 "added" "Into the unit.";
        /// Out of the unit, into a recovery cylinder.
        Recovered = 2 "recovered" "Out of the unit, into a recovery cylinder.";
    }
}

/// A piece of JSON that is kept as it was given, its units too. Only its order of names and its white space are not kept.
#[derive(Debug, Clone, PartialEq)]
pub struct Given(Json);

impl Given {
    /// From a JSON text.
    ///
    /// # Errors
    /// A text that is not JSON, that gives a name twice in one object, or that holds a number too large for a double.
    pub fn from_json(text: &str) -> Result<Self, TextError> {
        Json::parse(text).map(Self).map_err(|fault| at_start(&fault))
    }

    /// As canonical JSON.
    #[must_use]
    pub fn to_json(&self) -> String {
        // Numbers were finite when they were read.
        self.0.canonical().unwrap_or_default()
    }
}

fn at_start(fault: &Fault) -> TextError {
    TextError { line: 1, reading: None, field: None, message: fault.message.clone(), code: fault.code }
}

/// A reading with its finding.
#[derive(Debug, Clone, PartialEq)]
pub struct Evaluated {
    /// When it was taken: ISO 8601 in UTC, such as `2026-07-14T15:20:00Z`.
    pub time: String,
    /// The reading as it was given: an object that [`super::readings_from_json`] accepts.
    pub reading: Given,
    /// The finding as JSON, in the format [`super::FINDING_FORMAT`].
    pub finding: Given,
}

impl Evaluated {
    /// A reading as it was given, and what was found of it.
    ///
    /// # Errors
    /// As [`Given::from_json`].
    pub fn new(time: &str, reading: &str, finding: &Finding) -> Result<Self, TextError> {
        let (reading, finding) = (Given::from_json(reading)?, Given::from_json(&finding_to_json(finding))?);
        Ok(Self { time: String::from(time), reading, finding })
    }
}

/// An instrument as the user knows it.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Probe {
    /// The fields of a reading that it measured; at least one, none twice.
    pub fields: Vec<Field>,
    /// Its name or serial number, as the user gives it.
    pub name: String,
    /// When it was last set to zero: a date or a time.
    pub zeroed: Option<String>,
    /// When it was last calibrated: a date or a time.
    pub calibrated: Option<String>,
    /// Its accuracy, in the form of a reading's `uncertainty` of one field.
    pub accuracy: Option<Given>,
}

/// A step of the visit.
#[derive(Debug, Clone, PartialEq)]
pub struct Step {
    /// When: ISO 8601 in UTC.
    pub time: String,
    /// What.
    pub step: VisitStep,
    /// A remark; may be empty.
    pub note: String,
}

impl Step {
    /// A step without a remark.
    #[must_use]
    pub fn new(time: &str, step: VisitStep) -> Self {
        Self { time: String::from(time), step, note: String::new() }
    }
}

/// Refrigerant weighed into or out of the unit.
#[derive(Debug, Clone, PartialEq)]
pub struct WeighedAmount {
    /// When: ISO 8601 in UTC.
    pub time: String,
    /// Which way.
    pub direction: Direction,
    /// Mass in kg, above zero.
    pub mass_kg: f64,
    /// One standard uncertainty of it in kg, where it is known.
    pub standard_uncertainty_kg: Option<f64>,
}

/// The tables that a visit's findings rest on.
#[derive(Debug, Clone, PartialEq)]
pub struct Tables {
    /// The refrigerant.
    pub refrigerant: String,
    /// Their [`tables_fingerprint`].
    pub fingerprint: String,
}

/// The record of one visit to one unit. Fields are filled freely; [`VisitRecord::to_canonical_bytes`] refuses what is not a
/// record.
#[derive(Debug, Clone, PartialEq, Default)]
#[non_exhaustive]
pub struct VisitRecord {
    /// The name of the unit or the visit; may be empty.
    pub label: String,
    /// Whether the record is invented.
    pub demo: bool,
    /// When the visit began: ISO 8601 in UTC.
    pub started: String,
    /// When it ended; not before it began.
    pub ended: Option<String>,
    /// The version of the library that computed the findings.
    pub library_version: String,
    /// The saturation tables that it computed them from.
    pub tables: Option<Tables>,
    /// What was found on arrival.
    pub before: Option<Evaluated>,
    /// What was found at the end.
    pub after: Option<Evaluated>,
    /// The instruments.
    pub probes: Vec<Probe>,
    /// What was done, in the order given.
    pub steps: Vec<Step>,
    /// Refrigerant that was moved, in the order given.
    pub amounts: Vec<WeighedAmount>,
}

impl VisitRecord {
    /// A new record with this library's version and the tables of the refrigerant.
    #[must_use]
    pub fn new(label: &str, started: &str, refrigerant: Option<&'static SaturationCurves>) -> Self {
        Self {
            label: String::from(label),
            started: String::from(started),
            library_version: String::from(env!("CARGO_PKG_VERSION")),
            tables: refrigerant.map(|curves| Tables {
                refrigerant: String::from(curves.designation()),
                fingerprint: tables_fingerprint(curves),
            }),
            ..Self::default()
        }
    }

    /// Reads a record, canonical or not. Nothing that is accepted is lost.
    ///
    /// # Errors
    /// The first thing that is wrong, with its line and place: malformed JSON, a version other than [`VISIT_FORMAT`], an
    /// unknown name (a new name makes a new version), a name given twice, a time that is not ISO 8601 in UTC, a reading
    /// that is not one, a finding of another version, a mass out of range.
    pub fn from_json(text: &str) -> Result<Self, TextError> {
        read::record(text)
    }

    /// The record as canonical JSON by the rules of RFC 8785, in UTF-8: the same record gives the same bytes, and the bytes
    /// read back and written again are the same.
    ///
    /// No white space; names sorted by UTF-16 code units; numbers by ECMAScript's rules, the shortest digits that read back
    /// to the same double; strings with `"`, `\` and control characters escaped and nothing else. What is empty or not
    /// known is left out.
    ///
    /// # Errors
    /// What [`VisitRecord::from_json`] would refuse, with its place; the line is then 1.
    pub fn to_canonical_bytes(&self) -> Result<Vec<u8>, TextError> {
        let text = write::record(self).canonical().map_err(|fault| at_start(&fault))?;
        // One place decides what a record is: what cannot be read is not written.
        read::record(&text)?;
        Ok(text.into_bytes())
    }

    /// Whether this library holds the same saturation tables as the one that wrote the record, so that its findings can be
    /// repeated to the bit. False where the record names no tables.
    #[must_use]
    pub fn tables_are_these(&self) -> bool {
        self.tables.as_ref().is_some_and(|tables| {
            crate::refrigerant::find(&tables.refrigerant)
                .is_ok_and(|found| tables_fingerprint(found.curves) == tables.fingerprint)
        })
    }
}
