//! From the text of a reading to a finding. Whatever a reading is given as, the core's text reader understands it.

use pyo3::prelude::*;
use satline::Field;
use satline::diagnosis::diagnose as judge;
use satline::text::{LabelledReading, Units, finding_to_json, finding_to_words, readings_from_json};

use crate::raise::{plain, text};

/// Everything the Finding class is made of: what the text says of the reading, then the finding as JSON and in words.
type Answer = (Besides, String, String, String);
/// Label, note, whether it is marked demo, and whether the standard atmosphere was assumed.
type Besides = (String, String, bool, bool);

/// The finding for a text with one reading.
#[pyfunction]
pub fn diagnose_text(py: Python<'_>, reading: &str, has_lines: bool) -> PyResult<Answer> {
    let labelled = read(py, reading, has_lines)?;
    let finding = judge(&labelled.reading);
    let words = |units| finding_to_words(&labelled.label, &labelled.reading, &finding, units);
    let (ip, si) = (words(Units::Ip), words(Units::Si));
    let json = finding_to_json(&finding);
    Ok(((labelled.label, labelled.note, labelled.demo, labelled.atmosphere_assumed), json, ip, si))
}

/// The refrigerant's designation in a text with one reading, if it names one. Raises what is wrong with the reading.
#[pyfunction]
pub fn check_reading(py: Python<'_>, reading: &str) -> PyResult<Option<&'static str>> {
    let labelled = read(py, reading, false)?;
    Ok(labelled.reading.refrigerant.map(|refrigerant| refrigerant.designation()))
}

/// The numeric fields of a reading: (name, lowest, highest).
#[pyfunction]
pub fn reading_fields() -> Vec<(&'static str, f64, f64)> {
    Field::ALL.iter().map(|field| (field.name(), field.bound().lower, field.bound().upper)).collect()
}

pub(crate) fn read(py: Python<'_>, reading: &str, has_lines: bool) -> PyResult<LabelledReading> {
    let mut readings = readings_from_json(reading).map_err(|error| text(py, &error, has_lines))?;
    match (readings.pop(), readings.len()) {
        (Some(only), 0) => Ok(only),
        (_, others) => {
            Err(plain(py, "MalformedTextError", &format!("the text holds {} readings: give one at a time", others + 1)))
        }
    }
}
