//! The schema of a record of a visit. Those of readings and findings are held in it, so that it stands alone.

use super::super::record::{
    AMOUNT, Direction, EVALUATED, PROBE, RECORD, SMALLEST_KG, STEP, TABLES, VISIT_FORMAT, VisitStep,
};
use super::{Schema, head, object, put, text, word, words};
use crate::reading::Field;
use alloc::format;
use alloc::string::String;
use serde_json::{Value, json};

pub(super) fn schema() -> Value {
    let mut schema = head(
        Schema::Visit,
        "Record of a visit",
        "What was read, found and done at one visit to one unit. Its canonical form is that of RFC 8785. Whether a day is in \
         the calendar, a visit ends after it starts, and a string with a unit is in range, is checked by the reader alone.",
    );
    let record = of(RECORD, &["format", "started", "library_version"], |name| match name {
        "format" => json!({ "const": VISIT_FORMAT }),
        "label" => text(),
        "demo" => json!({ "type": "boolean" }),
        "started" | "ended" => refer("time"),
        "library_version" => not_empty(),
        "tables" => of(TABLES, TABLES, |_| not_empty()),
        "before" | "after" => refer("evaluated"),
        "probes" => array(of(PROBE, &["fields"], probe)),
        "steps" => array(of(STEP, &["time", "step"], step)),
        "amounts" => array(of(AMOUNT, &["time", "direction", "mass_kg"], amount)),
        _ => json!(false),
    });
    if let Value::Object(entries) = record {
        for (name, value) in entries {
            put(&mut schema, &name, value);
        }
    }
    let definitions = json!({
        "time": { "type": "string", "pattern": format!("^{DATE}T{CLOCK}Z$"), "description": "ISO 8601 in UTC." },
        "date_or_time": { "type": "string", "pattern": format!("^{DATE}(?:T{CLOCK}Z)?$"), "description": "ISO 8601." },
        "evaluated": of(EVALUATED, EVALUATED, |name| match name {
            "time" => refer("time"),
            "reading" => json!({ "$ref": format!("{}#/$defs/reading", Schema::Reading.id()) }),
            "finding" => json!({ "$ref": format!("{}#/$defs/finding", Schema::Finding.id()) }),
            _ => json!(false),
        }),
        "reading": Schema::Reading.value(),
        "finding": Schema::Finding.value()
    });
    put(&mut schema, "$defs", definitions);
    schema
}

const DATE: &str = "[0-9]{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12][0-9]|3[01])";
const CLOCK: &str = r"(?:[01][0-9]|2[0-3]):[0-5][0-9]:(?:[0-5][0-9]|60)(?:\.[0-9]{1,9})?";

/// An object of these names.
fn of(names: &[&str], required: &[&str], one: impl Fn(&str) -> Value) -> Value {
    object(names.iter().map(|name| (String::from(*name), one(name))), required)
}

fn refer(name: &str) -> Value {
    json!({ "$ref": format!("#/$defs/{name}") })
}

fn not_empty() -> Value {
    json!({ "type": "string", "minLength": 1 })
}

fn array(items: Value) -> Value {
    json!({ "type": "array", "items": items })
}

fn probe(name: &str) -> Value {
    match name {
        "fields" => {
            let fields = words(Field::ALL.iter().map(|field| field.name()));
            json!({ "type": "array", "items": fields, "minItems": 1, "uniqueItems": true })
        }
        "name" => text(),
        "zeroed" | "calibrated" => refer("date_or_time"),
        "accuracy" => json!({ "$ref": format!("{}#/$defs/accuracy", Schema::Reading.id()) }),
        _ => json!(false),
    }
}

fn step(name: &str) -> Value {
    match name {
        "time" => refer("time"),
        "step" => word(VisitStep::ALL, VisitStep::name),
        "note" => text(),
        _ => json!(false),
    }
}

fn amount(name: &str) -> Value {
    let most = Field::WeighedCharge.bound().upper;
    match name {
        "time" => refer("time"),
        "direction" => word(Direction::ALL, Direction::name),
        "mass_kg" => json!({ "type": "number", "minimum": SMALLEST_KG, "maximum": most }),
        "standard_uncertainty_kg" => json!({ "type": "number", "minimum": 0, "maximum": most }),
        _ => json!(false),
    }
}
