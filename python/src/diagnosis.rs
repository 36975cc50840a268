//! From the text of a reading to a finding. Whatever a reading is given as, the core's text reader understands it.

use pyo3::prelude::*;
use satline::diagnosis::{Cause, Options, Priors, diagnose_with};
use satline::text::{LabelledReading, Units, finding_to_json, finding_to_words, readings_from_json};
use satline::{Error, Field, charge};

use crate::raise::{Place, plain, raise, text};

/// Everything the Finding class is made of: what the text says of the reading, then the finding as JSON and in words.
type Answer = (Besides, String, String, String);
/// Label, note, whether it is marked demo, and whether the standard atmosphere was assumed.
type Besides = (String, String, bool, bool);
/// Edition and role of the protocol, each where one is asked for, and the weights that replace those of the priors.
pub type Told = (Option<String>, Option<String>, Vec<(String, f64)>);

/// The finding for a text with one reading. Baseline: texts with readings of the same unit, each with whether its lines
/// are the caller's own.
#[pyfunction]
pub fn diagnose_text(
    py: Python<'_>,
    reading: &str,
    has_lines: bool,
    baseline: Vec<(String, bool)>,
    told: Told,
) -> PyResult<Answer> {
    let labelled = read(py, reading, has_lines)?;
    let mut healthy = Vec::new();
    for (written, has_lines) in &baseline {
        let readings = readings_from_json(written).map_err(|error| text(py, &error, *has_lines, "baseline: "))?;
        healthy.extend(readings.iter().map(|labelled| labelled.reading));
    }
    let (protocol, priors) = options(py, &told)?;
    let finding = diagnose_with(&labelled.reading, &Options { protocol, baseline: &healthy, priors });
    let words = |units| finding_to_words(&labelled.label, &labelled.reading, &finding, units);
    let (ip, si) = (words(Units::Ip), words(Units::Si));
    let json = finding_to_json(&finding);
    Ok(((labelled.label, labelled.note, labelled.demo, labelled.atmosphere_assumed), json, ip, si))
}

/// The protocol and the priors asked for.
pub fn options(py: Python<'_>, (edition, role, weights): &Told) -> PyResult<(charge::Protocol, Priors)> {
    let refuse = |error: &Error, given: &str| raise(py, error, &Place { given: Some(given), ..Place::default() });
    let mut protocol = charge::Protocol::default();
    if let Some(word) = edition {
        let found = charge::Edition::ALL.iter().find(|edition| edition.name() == word);
        let choices = "title-24-ra3.2-2008, title-24-ra3.2-2013";
        protocol.edition = *found.ok_or_else(|| refuse(&Error::UnknownChoice { field: "edition", choices }, word))?;
    }
    if let Some(word) = role {
        let found = charge::Role::ALL.iter().find(|role| role.name() == word);
        let choices = "installer, verifier";
        protocol.role = *found.ok_or_else(|| refuse(&Error::UnknownChoice { field: "role", choices }, word))?;
    }
    let mut priors = Priors::default();
    for (name, weight) in weights {
        let changed = match (name.as_str(), Cause::ALL.iter().find(|cause| cause.name() == name)) {
            (_, Some(cause)) => priors.with_cause(*cause, *weight),
            ("healthy", None) => priors.with_healthy(*weight),
            ("pairs", None) => priors.with_pairs(*weight),
            (_, None) => Err(Error::UnknownChoice { field: "priors", choices: PRIORS }),
        };
        priors = changed.map_err(|error| refuse(&error, name))?;
    }
    Ok((protocol, priors))
}

const PRIORS: &str = "healthy, pairs, or a cause: undercharge, overcharge, low-indoor-airflow, restricted-condenser-air, \
     liquid-line-restriction, compressor-leakage, non-condensables, metering-overfeeding, metering-underfeeding, unmodelled";

/// The causes that a finding weighs.
#[pyfunction]
pub fn causes() -> Vec<&'static str> {
    Cause::ALL.iter().map(|cause| cause.name()).collect()
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

fn read(py: Python<'_>, reading: &str, has_lines: bool) -> PyResult<LabelledReading> {
    let mut readings = readings_from_json(reading).map_err(|error| text(py, &error, has_lines, ""))?;
    match (readings.pop(), readings.len()) {
        (Some(only), 0) => Ok(only),
        (_, others) => {
            Err(plain(py, "MalformedTextError", &format!("the text holds {} readings: give one at a time", others + 1)))
        }
    }
}
