//! JSON Schemas (draft 2020-12) of what this module reads and writes, made from the lists that it reads and writes by.

mod finding;
mod reading;
#[cfg(test)]
mod tests;
mod unit;
mod visit;

use alloc::string::String;
use alloc::vec::Vec;
use serde_json::{Value, json};

/// What a schema describes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[non_exhaustive]
pub enum Schema {
    /// A reading, or an array of them: what [`super::readings_from_json`] accepts.
    Reading,
    /// A finding, or an array of them: what [`super::finding_to_json`] writes.
    Finding,
    /// A record of a visit: what [`super::VisitRecord::from_json`] accepts.
    Visit,
}

impl Schema {
    /// Every schema.
    pub const ALL: &[Self] = &[Self::Reading, Self::Finding, Self::Visit];

    /// The name, as in `core/docs/schema/<name>.schema.json`.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Reading => "reading",
            Self::Finding => "finding",
            Self::Visit => "visit",
        }
    }

    /// The schema as JSON, ending in a line break.
    ///
    /// A schema cannot convert units: the range of a string such as `"118 psig"` is checked by the reader alone.
    ///
    /// ```
    /// use satline::text::Schema;
    /// assert!(Schema::Reading.to_json().contains("\"suction_pressure_pa\""));
    /// ```
    #[must_use]
    pub fn to_json(self) -> String {
        let value = self.value();
        // Writing to memory with string keys has no way to fail.
        serde_json::to_string_pretty(&value).unwrap_or_default() + "\n"
    }

    fn value(self) -> Value {
        match self {
            Self::Reading => reading::schema(),
            Self::Finding => finding::schema(),
            Self::Visit => visit::schema(),
        }
    }

    const fn id(self) -> &'static str {
        match self {
            Self::Reading => "urn:satline:schema:reading",
            Self::Finding => "urn:satline:schema:finding",
            Self::Visit => "urn:satline:schema:visit",
        }
    }
}

/// The head of a schema.
fn head(of: Schema, title: &str, description: &str) -> Value {
    json!({
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "$id": of.id(),
        "title": title,
        "description": description
    })
}

/// One of the definition of that name, or an array of them.
fn one_or_many(name: &str) -> Value {
    let reference = json!({ "$ref": alloc::format!("#/$defs/{name}") });
    json!([reference, { "type": "array", "items": reference, "minItems": 1 }])
}

/// An object with these names and no others.
fn object(properties: impl IntoIterator<Item = (String, Value)>, required: &[&str]) -> Value {
    let properties: serde_json::Map<String, Value> = properties.into_iter().collect();
    json!({ "type": "object", "properties": properties, "required": required, "additionalProperties": false })
}

/// Names with what they hold.
fn named<const N: usize>(pairs: [(&str, Value); N]) -> Vec<(String, Value)> {
    pairs.into_iter().map(|(name, value)| (String::from(name), value)).collect()
}

fn number() -> Value {
    json!({ "type": "number" })
}

fn not_negative() -> Value {
    json!({ "type": "number", "minimum": 0 })
}

fn text() -> Value {
    json!({ "type": "string" })
}

/// One of the words of a list.
fn word<T: Copy>(all: &[T], name: fn(T) -> &'static str) -> Value {
    words(all.iter().map(|one| name(*one)))
}

fn words(all: impl Iterator<Item = &'static str>) -> Value {
    json!({ "enum": all.collect::<Vec<_>>() })
}

/// Puts `value` under `name` in an object.
fn put(object: &mut Value, name: &str, value: Value) {
    if let Some(map) = object.as_object_mut() {
        map.insert(String::from(name), value);
    }
}
