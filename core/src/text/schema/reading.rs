//! The schema of a reading.

use super::super::accuracy::LIMITS;
use super::super::read::{BESIDES, WORDS, base_name, field_quantity};
use super::super::unit::Quantity;
use super::unit::{designation, string_with_unit};
use super::{Schema, head, object, one_or_many, put, text, word};
use crate::bounds::{self, Bound};
use crate::reading::{Compressor, Field, Metering, MeteringPlace, Mode, Operation, RefrigerantCondition, Stage};
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use serde_json::{Value, json};

pub(super) fn schema() -> Value {
    let mut schema = head(
        Schema::Reading,
        "Reading",
        "One set of measurements taken at a unit, or an array of them. A field stands as a number in SI under its full name, \
         or as a string with its unit under the name without the unit; null counts as not given. The range of a string is \
         checked by the reader alone, as is a gauge pressure below vacuum.",
    );
    put(&mut schema, "oneOf", one_or_many("reading"));
    let mut definitions = json!({ "reading": reading() });
    for quantity in Quantity::ALL {
        put(&mut definitions, quantity.name(), string_with_unit(*quantity));
    }
    // Of any field: what a probe of a visit's record holds.
    put(&mut definitions, "accuracy", any_accuracy());
    for (name, accuracy) in accuracies() {
        put(&mut definitions, &name, accuracy);
    }
    put(&mut schema, "$defs", definitions);
    schema
}

fn reading() -> Value {
    let mut properties: Vec<(String, Value)> = Vec::new();
    let mut exclusive: Vec<Value> = Vec::new();
    for field in Field::ALL {
        let (full, base) = (field.name(), base_name(*field));
        let (si, spelled) = (si_number(field.bound()), with_unit(field_quantity(*field)));
        if full == base {
            properties.push((String::from(full), json!({ "anyOf": [si, spelled, { "type": "null" }] })));
        } else {
            properties.push((String::from(full), json!({ "anyOf": [si, { "type": "null" }] })));
            properties.push((String::from(base), json!({ "anyOf": [spelled, { "type": "null" }] })));
            exclusive.push(not_both(full, base));
        }
    }
    for name in WORDS {
        properties.push((String::from(*name), json!({ "anyOf": [choices(name), { "type": "null" }] })));
    }
    for name in BESIDES {
        properties.push((String::from(*name), json!({ "anyOf": [besides(name), { "type": "null" }] })));
    }
    // An altitude stands in for an ambient pressure.
    let air = ["altitude", "altitude_m", base_name(Field::AmbientPressure), Field::AmbientPressure.name()];
    for (index, one) in air.iter().enumerate() {
        exclusive.extend(air.iter().skip(index + 1).map(|other| not_both(one, other)));
    }
    let mut reading = object(properties, &[]);
    put(&mut reading, "allOf", Value::Array(exclusive));
    reading
}

/// A number within its bound.
fn si_number(bound: &Bound) -> Value {
    let description = format!("{} in {}", bound.quantity, bound.unit);
    json!({ "type": "number", "minimum": bound.lower, "maximum": bound.upper, "description": description })
}

fn with_unit(quantity: Quantity) -> Value {
    json!({ "$ref": format!("#/$defs/{}", quantity.name()) })
}

/// Two spellings of the same: at most one that is not null.
fn not_both(one: &str, other: &str) -> Value {
    let given = json!({ "not": { "type": "null" } });
    json!({ "not": { "required": [one, other], "properties": { one: given, other: given } } })
}

/// The choices of a field whose value is a word.
pub(super) fn choices(name: &str) -> Value {
    match name {
        "refrigerant" => {
            let all = crate::refrigerant::ALL.iter().map(|one| one.designation());
            let names: Vec<&str> = all.clone().collect();
            let loose: Vec<String> = all.map(designation).collect();
            let pattern = format!("^[-_ ]*(?:{})[-_ ]*$", loose.join("|"));
            json!({ "anyOf": [{ "enum": names }, { "type": "string", "pattern": pattern }],
                "description": "An ASHRAE 34 designation; case, hyphens and blanks do not matter." })
        }
        "metering" => word(Metering::ALL, Metering::name),
        "metering_place" => word(MeteringPlace::ALL, MeteringPlace::name),
        "mode" => word(Mode::ALL, Mode::name),
        "compressor" => word(Compressor::ALL, Compressor::name),
        "stage" => word(Stage::ALL, Stage::name),
        "operation" => word(Operation::ALL, Operation::name),
        "refrigerant_condition" => word(RefrigerantCondition::ALL, RefrigerantCondition::name),
        // Nothing is allowed that is not known here; a test asks for every name.
        _ => json!(false),
    }
}

/// Names that belong to the entry in a file.
pub(super) fn besides(name: &str) -> Value {
    match name {
        "label" | "note" => text(),
        "demo" => json!({ "type": "boolean" }),
        "altitude" => with_unit(Quantity::Altitude),
        "altitude_m" => si_number(&bounds::ALTITUDE),
        "uncertainty" => {
            let definitions = accuracies();
            let spelled = |field: &Field| {
                let accuracy = accuracy(*field);
                let (full, base) = (field.name(), base_name(*field));
                let definition = definitions.iter().find(|(_, known)| *known == accuracy);
                let refer = definition.map_or(json!(false), |(name, _)| json!({ "$ref": format!("#/$defs/{name}") }));
                let mut both = Vec::from([(String::from(full), refer.clone())]);
                if full != base {
                    both.push((String::from(base), refer));
                }
                both
            };
            let pairs = Field::ALL.iter().map(|field| (field.name(), base_name(*field)));
            let exclusive: Vec<Value> = pairs
                .filter(|(full, base)| full != base)
                .map(|(full, base)| json!({ "not": { "required": [full, base] } }))
                .collect();
            let mut limits = object(Field::ALL.iter().flat_map(spelled), &[]);
            put(&mut limits, "allOf", Value::Array(exclusive));
            limits
        }
        _ => json!(false),
    }
}

/// The accuracies of the fields, each once, named by the first field that has it.
fn accuracies() -> Vec<(String, Value)> {
    let mut unique: Vec<(String, Value)> = Vec::new();
    for field in Field::ALL {
        let accuracy = accuracy(*field);
        if !unique.iter().any(|(_, known)| *known == accuracy) {
            unique.push((format!("accuracy_as_of_{}", base_name(*field)), accuracy));
        }
    }
    unique
}

/// The accuracy of one field.
fn accuracy(field: Field) -> Value {
    let bound = field.bound();
    let spelled = with_unit(difference_of(field_quantity(field)));
    limits(bound.upper - bound.lower, &spelled)
}

/// The accuracy of any field: within the widest range, in the unit of any difference.
fn any_accuracy() -> Value {
    let widest = Field::ALL.iter().map(|field| field.bound().upper - field.bound().lower).fold(0.0, f64::max);
    let mut quantities: Vec<Quantity> = Vec::new();
    for field in Field::ALL {
        let quantity = difference_of(field_quantity(*field));
        if !quantities.contains(&quantity) {
            quantities.push(quantity);
        }
    }
    let spelled: Vec<Value> = quantities.into_iter().map(with_unit).collect();
    limits(widest, &json!({ "anyOf": spelled }))
}

fn limits(most: f64, spelled: &Value) -> Value {
    let mut object = object(LIMITS.iter().map(|name| (String::from(*name), limit(name, most, spelled))), &[]);
    // A zero is the same as not written.
    let with = |given: &str, needed: &str| {
        json!({
            "if": { "required": [given], "properties": { given: { "not": { "const": 0 } } } },
            "then": { "required": [needed] }
        })
    };
    put(&mut object, "allOf", json!([with("of_full_scale", "full_scale"), with("full_scale", "of_full_scale")]));
    object
}

pub(super) fn limit(name: &str, most: f64, spelled: &Value) -> Value {
    let share = json!({ "type": "number", "minimum": 0, "maximum": 1 });
    let up_to = |most: f64| json!({ "anyOf": [{ "type": "number", "minimum": 0, "maximum": most }, spelled] });
    match name {
        "of_reading" | "of_full_scale" => share,
        "full_scale" => up_to(bounds::FULL_SCALE.upper),
        "absolute" | "resolution" => up_to(most),
        "group" => json!({ "type": "string", "pattern": r"\S" }),
        _ => json!(false),
    }
}

fn difference_of(quantity: Quantity) -> Quantity {
    match quantity {
        Quantity::Pressure | Quantity::Ambient => Quantity::PressureDifference,
        Quantity::Temperature => Quantity::TemperatureDifference,
        other => other,
    }
}
