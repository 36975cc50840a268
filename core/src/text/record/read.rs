//! A record from JSON: what a record is stands here, for reading and writing alike.

use super::super::error::{Fault, TextError};
use super::super::json::{Kind, kind};
use super::super::read::malformed;
use super::super::write::FINDING_FORMAT;
use super::node::{Node, Object};
use super::time::{date, time};
use super::{Direction, Evaluated, Given, Probe, Step, Tables, VISIT_FORMAT, VisitRecord, VisitStep, WeighedAmount};
use crate::error::code;
use crate::nearest::nearest;
use crate::reading::Field;
use crate::text::readings_from_json;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use serde_json::value::RawValue;

pub(in crate::text) const RECORD: &[&str] = &[
    "format",
    "label",
    "demo",
    "started",
    "ended",
    "library_version",
    "tables",
    "before",
    "after",
    "probes",
    "steps",
    "amounts",
];
pub(in crate::text) const TABLES: &[&str] = &["refrigerant", "fingerprint"];
pub(in crate::text) const EVALUATED: &[&str] = &["time", "reading", "finding"];
pub(in crate::text) const PROBE: &[&str] = &["fields", "name", "zeroed", "calibrated", "accuracy"];
pub(in crate::text) const STEP: &[&str] = &["time", "step", "note"];
pub(in crate::text) const AMOUNT: &[&str] = &["time", "direction", "mass_kg", "standard_uncertainty_kg"];

pub(super) fn record(text: &str) -> Result<VisitRecord, TextError> {
    let raw: &RawValue = serde_json::from_str(text).map_err(|error| malformed(text, &error))?;
    let whole = Node::whole(text, raw);
    version(&whole)?;
    let parts = whole.object(RECORD)?;
    let started = timed(parts.need("started")?)?;
    let ended = parts.get("ended").map(timed).transpose()?;
    if let (Ok(from), Some(to)) = (time(&started), ended.as_deref().map(time)) {
        if to.is_ok_and(|to| to < from) {
            return Err(parts.need("ended")?.error(Fault::form("before the time at which the visit started")));
        }
    }
    Ok(VisitRecord {
        label: parts.string_or_empty("label")?,
        demo: parts.get("demo").map_or(Ok(false), Node::boolean)?,
        started,
        ended,
        library_version: not_empty(parts.need("library_version")?)?,
        tables: parts.get("tables").map(tables).transpose()?,
        before: parts.get("before").map(evaluated).transpose()?,
        after: parts.get("after").map(evaluated).transpose()?,
        probes: list(&parts, "probes", probe)?,
        steps: list(&parts, "steps", step)?,
        amounts: list(&parts, "amounts", amount)?,
    })
}

/// The version before anything else: a name that is unknown here may be right in another version.
fn version(whole: &Node<'_>) -> Result<(), TextError> {
    let format = format_of(whole)?;
    if format == VISIT_FORMAT {
        return Ok(());
    }
    let message = format!("\"{format}\" is not a version that is read here: that is {VISIT_FORMAT}");
    Err(whole.error(Fault::form(message)))
}

/// What an object says of its own format.
fn format_of(node: &Node<'_>) -> Result<String, TextError> {
    use super::super::json::Entries;
    let missing = || node.error(Fault::form("expected an object whose format is named"));
    if kind(node.text()) != Kind::Object {
        return Err(missing());
    }
    let Entries(entries) = serde_json::from_str(node.text()).map_err(|_| missing())?;
    let format = entries.iter().find(|entry| entry.name == "format").ok_or_else(missing)?;
    super::super::read::string(format.value).map_err(|fault| node.error(fault))
}

fn list<'a, T>(
    parts: &Object<'a>,
    name: &str,
    one: fn(&Node<'a>) -> Result<T, TextError>,
) -> Result<Vec<T>, TextError> {
    parts.get(name).map_or(Ok(Vec::new()), |node| node.array()?.iter().map(one).collect())
}

fn timed(node: &Node<'_>) -> Result<String, TextError> {
    let text = node.string()?;
    time(&text).map_err(|fault| node.error(fault))?;
    Ok(text)
}

/// A date or a time.
fn dated(node: &Node<'_>) -> Result<String, TextError> {
    let text = node.string()?;
    if text.contains('T') { time(&text).map(|_| ()) } else { date(&text) }.map_err(|fault| node.error(fault))?;
    Ok(text)
}

fn not_empty(node: &Node<'_>) -> Result<String, TextError> {
    let text = node.string()?;
    if text.is_empty() { Err(node.error(Fault::form("is empty: give it, or leave the name out"))) } else { Ok(text) }
}

fn tables(node: &Node<'_>) -> Result<Tables, TextError> {
    let parts = node.object(TABLES)?;
    let fingerprint = parts.need("fingerprint")?;
    Ok(Tables { refrigerant: not_empty(parts.need("refrigerant")?)?, fingerprint: not_empty(fingerprint)? })
}

fn evaluated(node: &Node<'_>) -> Result<Evaluated, TextError> {
    let parts = node.object(EVALUATED)?;
    let (reading, finding) = (parts.need("reading")?, parts.need("finding")?);
    if kind(reading.text()) != Kind::Object {
        return Err(reading.error(Fault::form("expected a reading: an object with fields")));
    }
    readings_from_json(reading.text()).map_err(|error| reading.nested(error))?;
    let format = format_of(finding)?;
    if format != FINDING_FORMAT {
        let message = format!("\"{format}\" is not a version of a finding that is read here: that is {FINDING_FORMAT}");
        return Err(finding.error(Fault::form(message)));
    }
    Ok(Evaluated {
        time: timed(parts.need("time")?)?,
        reading: Given(reading.json()?),
        finding: Given(finding.json()?),
    })
}

fn probe(node: &Node<'_>) -> Result<Probe, TextError> {
    let parts = node.object(PROBE)?;
    let mut fields: Vec<Field> = Vec::new();
    for one in parts.need("fields")?.array()? {
        let field = Field::from_name(&one.string()?).map_err(|error| one.error(error.into()))?;
        if fields.contains(&field) {
            return Err(one.error(Fault::form("given twice; keep one")));
        }
        fields.push(field);
    }
    if fields.is_empty() {
        return Err(parts.need("fields")?.error(Fault::form("names no field of a reading")));
    }
    if let Some(accuracy) = parts.get("accuracy") {
        // Limits are checked against the range of each field, by the reader of readings.
        for field in &fields {
            let text = format!("{{\"uncertainty\": {{\"{}\": {}}}}}", field.name(), accuracy.text());
            readings_from_json(&text).map_err(|error| accuracy.error(Fault::new(error.code, error.message)))?;
        }
    }
    Ok(Probe {
        fields,
        name: parts.string_or_empty("name")?,
        zeroed: parts.get("zeroed").map(dated).transpose()?,
        calibrated: parts.get("calibrated").map(dated).transpose()?,
        accuracy: parts.get("accuracy").map(|node| node.json().map(Given)).transpose()?,
    })
}

fn step(node: &Node<'_>) -> Result<Step, TextError> {
    let parts = node.object(STEP)?;
    Ok(Step {
        time: timed(parts.need("time")?)?,
        step: word(parts.need("step")?, VisitStep::ALL, VisitStep::name)?,
        note: parts.string_or_empty("note")?,
    })
}

fn amount(node: &Node<'_>) -> Result<WeighedAmount, TextError> {
    let parts = node.object(AMOUNT)?;
    let (mass, uncertainty) = (parts.need("mass_kg")?, parts.get("standard_uncertainty_kg"));
    let checked = |node: &Node<'_>, lowest: f64| {
        let bound = Field::WeighedCharge.bound();
        let value = crate::bounds::within(
            "mass of refrigerant moved",
            "kg",
            node.number()?,
            lowest,
            bound.upper,
            "give kilograms above zero; which way it went is said by its direction",
        );
        value.map_err(|error| node.error(error.into()))
    };
    Ok(WeighedAmount {
        time: timed(parts.need("time")?)?,
        direction: word(parts.need("direction")?, Direction::ALL, Direction::name)?,
        mass_kg: checked(mass, SMALLEST_KG)?,
        standard_uncertainty_kg: uncertainty.map(|node| checked(node, 0.0)).transpose()?,
    })
}

/// A milligram: less than any scale shows, but not nothing.
pub(in crate::text) const SMALLEST_KG: f64 = 1e-6;

fn word<T: Copy>(node: &Node<'_>, all: &[T], name: fn(T) -> &'static str) -> Result<T, TextError> {
    let given = node.string()?;
    all.iter().copied().find(|one| name(*one) == given).ok_or_else(|| {
        let nearest = nearest(&given, all.iter().map(|one| name(*one)));
        node.error(Fault::new(code::UNKNOWN_CHOICE, format!("\"{given}\" is not known: the nearest is {nearest}")))
    })
}
