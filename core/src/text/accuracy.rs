//! What a reading says of its instruments, from JSON.

use super::error::{Fault, TextError};
use super::json::{Entries, Entry, Kind, kind};
use super::read::{fail, field_quantity, number, numeric, string, unknown_field};
use super::unit::{Quantity, to_si};
use crate::bounds;
use crate::error::code;
use crate::nearest::nearest;
use crate::quantity::Atmosphere;
use crate::reading::{Accuracy, Field, Reading};
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

/// What may stand in an accuracy.
pub(super) const LIMITS: &[&str] = &["of_reading", "of_full_scale", "full_scale", "absolute", "resolution", "group"];

/// The object from field name to accuracy. Errors name the inner field and its own line.
pub(super) fn accuracies(
    text: &str,
    reading: &mut Reading,
    entry: &Entry<'_>,
    index: Option<usize>,
) -> Result<(), TextError> {
    let outer = |fault: Fault| fail(text, entry.value.get(), index, Some(&entry.name), fault);
    if kind(entry.value.get()) != Kind::Object {
        return Err(outer(Fault::form("expected an object from field name to accuracy")));
    }
    let Entries(entries) =
        serde_json::from_str(entry.value.get()).map_err(|error| outer(Fault::form(format!("{error}"))))?;
    let mut groups = Groups::default();
    for inner in &entries {
        let path = format!("uncertainty.{}", inner.name);
        let at = |fault: Fault| fail(text, inner.value.get(), index, Some(&path), fault);
        let (field, _) = numeric(&inner.name).ok_or_else(|| at(unknown_field(&inner.name, false)))?;
        let Some(place) = reading.accuracy.get_mut(field as usize) else { continue };
        if place.is_some() {
            return Err(at(Fault::form("given twice; keep one")));
        }
        if kind(inner.value.get()) != Kind::Object {
            return Err(at(Fault::form(format!("expected an object with any of {}", LIMITS.join(", ")))));
        }
        let Entries(limits) =
            serde_json::from_str(inner.value.get()).map_err(|error| at(Fault::form(format!("{error}"))))?;
        let accuracy = one(&limits, field, &mut groups).map_err(|(limit, fault)| {
            fail(text, limit.value.get(), index, Some(&format!("{path}.{}", limit.name)), fault)
        })?;
        *place = Some(accuracy.checked().map_err(|error| at(error.into()))?);
    }
    Ok(())
}

/// The accuracy of one field, or the entry that is wrong.
fn one<'a>(limits: &'a [Entry<'a>], field: Field, groups: &mut Groups) -> Result<Accuracy, (&'a Entry<'a>, Fault)> {
    let mut accuracy = Accuracy::default();
    let mut seen: Vec<&Entry<'_>> = Vec::new();
    for limit in limits {
        let at = |fault: Fault| (limit, fault);
        if seen.iter().any(|before| before.name == limit.name) {
            return Err(at(Fault::form("given twice; keep one")));
        }
        seen.push(limit);
        match limit.name.as_str() {
            "of_reading" => accuracy.of_reading = share(limit).map_err(at)?,
            "of_full_scale" => accuracy.of_full_scale = share(limit).map_err(at)?,
            "full_scale" => accuracy.full_scale = span(limit, field, bounds::FULL_SCALE.upper).map_err(at)?,
            "absolute" => accuracy.absolute = absolute(limit, field).map_err(at)?,
            "resolution" => accuracy.resolution = absolute(limit, field).map_err(at)?,
            "group" => accuracy.group = groups.number(limit).map_err(at)?,
            other => {
                let nearest = nearest(other, LIMITS.iter().copied());
                return Err(at(Fault::new(code::UNKNOWN_FIELD, format!("unknown: the nearest is {nearest}"))));
            }
        }
    }
    // One without the other says nothing, or not what was meant. A zero is the same as not written.
    for (given, value, missing, other) in [
        ("of_full_scale", accuracy.of_full_scale, "full_scale", accuracy.full_scale),
        ("full_scale", accuracy.full_scale, "of_full_scale", accuracy.of_full_scale),
    ] {
        if value > 0.0 && !(other > 0.0) {
            if let Some(limit) = seen.iter().copied().find(|limit| limit.name == given) {
                let message = format!(
                    "{given} without {missing}: give both (a fraction, and the span of the instrument's range), or neither"
                );
                return Err((limit, Fault::new(code::OUT_OF_RANGE, message)));
            }
        }
    }
    Ok(accuracy)
}

/// The words for groups of one reading, numbered from 1 in the order in which they appear.
#[derive(Default)]
struct Groups(Vec<String>);

impl Groups {
    /// Numbers up to here are given out; a reading has far fewer fields.
    const MOST: u8 = 250;

    fn number(&mut self, limit: &Entry<'_>) -> Result<u8, Fault> {
        let word = match kind(limit.value.get()) {
            Kind::String => string(limit.value)?,
            _ => {
                return Err(Fault::form(
                    "expected a word, such as \"manifold\": one word for channels that share an error",
                ));
            }
        };
        if word.trim().is_empty() {
            return Err(Fault::form("the word is empty: give one, or leave the group out for an error of its own"));
        }
        let before = self.0.iter().position(|known| *known == word);
        let index = before.unwrap_or_else(|| {
            self.0.push(word);
            self.0.len() - 1
        });
        let number = u8::try_from(index + 1).ok().filter(|number| *number <= Self::MOST);
        number.ok_or_else(|| Fault::new(code::OUT_OF_RANGE, format!("more than {} groups in one reading", Self::MOST)))
    }
}

/// A fraction.
fn share(limit: &Entry<'_>) -> Result<f64, Fault> {
    match kind(limit.value.get()) {
        Kind::Number => within(number(limit.value)?, 1.0),
        Kind::String => Err(Fault::form("expected a fraction, such as 0.005 for 0.5 %")),
        _ => Err(Fault::form("expected a number")),
    }
}

/// A limit of error: a number in SI or a difference with its unit.
fn absolute(limit: &Entry<'_>, field: Field) -> Result<f64, Fault> {
    span(limit, field, field.bound().upper - field.bound().lower)
}

/// A difference, up to a limit.
fn span(limit: &Entry<'_>, field: Field, most: f64) -> Result<f64, Fault> {
    let value = match kind(limit.value.get()) {
        Kind::Number => number(limit.value)?,
        Kind::String => {
            let quantity = match field_quantity(field) {
                Quantity::Pressure | Quantity::Ambient => Quantity::PressureDifference,
                Quantity::Temperature => Quantity::TemperatureDifference,
                other => other,
            };
            to_si(&string(limit.value)?, quantity, Atmosphere::STANDARD)?.value
        }
        _ => return Err(Fault::form("expected a number")),
    };
    within(value, most)
}

fn within(value: f64, most: f64) -> Result<f64, Fault> {
    if value >= 0.0 && value <= most {
        Ok(value)
    } else if value.is_finite() {
        Err(Fault::new(code::OUT_OF_RANGE, format!("a limit of error of {value} is outside 0 to {most}")))
    } else {
        Err(Fault::new(code::NOT_FINITE, "a limit of error must be a finite number"))
    }
}
