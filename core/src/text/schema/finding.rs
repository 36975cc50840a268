//! The schema of a finding.

use super::super::write::{CANNOT_TELL, FINDING_FORMAT};
use super::{Schema, head, named, not_negative, number, object, one_or_many, put, text, word, words};
use crate::charge::{Action, Edition, NoValidTest, Role, SplitCheck};
use crate::diagnosis::{
    Advice, Cause, Caution, Charge, ChargeStatus, ConclusionReason, FeatureName, HYPOTHESES_MAX, MISSING_MAX,
    NeededFor, NextCheck, PRECONDITION_COUNT, PreconditionName, PreconditionStatus, Reason, Source, ValueBound,
    ValueName,
};
use crate::reading::Field;
use alloc::string::String;
use serde_json::{Value, json};

pub(super) fn schema() -> Value {
    let mut schema = head(
        Schema::Finding,
        "Finding",
        "The answer to a reading, or an array of them. Quantities are in SI with the unit in the name; what is not known is \
         left out. Within version 1 no name changes its meaning.",
    );
    put(&mut schema, "oneOf", one_or_many("finding"));
    let definitions = json!({
        "finding": finding(),
        "reason": word(Reason::ALL, Reason::name),
        "causes": { "type": "array", "items": word(Cause::ALL, Cause::name), "uniqueItems": true,
            "description": "Empty for a healthy unit." },
        "value": value(),
        "feature": feature(),
        "bound": word(ValueBound::ALL, ValueBound::name)
    });
    put(&mut schema, "$defs", definitions);
    schema
}

fn refer(name: &str) -> Value {
    json!({ "$ref": alloc::format!("#/$defs/{name}") })
}

fn finding() -> Value {
    let mut properties = named([
        ("format", json!({ "const": FINDING_FORMAT })),
        ("label", text()),
        ("note", text()),
        ("demo", json!({ "const": true })),
        ("atmosphere_assumed", json!({ "const": true })),
        ("charge", word(Charge::ALL, Charge::name)),
        ("charge_status", word(ChargeStatus::ALL, ChargeStatus::name)),
        ("reason", refer("reason")),
        ("protocol", protocol()),
        ("values", by_name(ValueName::ALL.iter().map(|name| name.name()), "value")),
        ("missing", missing()),
        ("next_check", word(NextCheck::ALL, NextCheck::name)),
        ("advice", word(Advice::ALL, Advice::name)),
        ("cautions", json!({ "type": "array", "items": word(Caution::ALL, Caution::name), "uniqueItems": true })),
        ("preconditions", preconditions()),
        ("features", by_name(FeatureName::ALL.iter().map(|name| name.name()), "feature")),
        ("hypotheses", hypotheses()),
        ("conclusion", json!({ "oneOf": [refer("causes"), { "const": CANNOT_TELL }] })),
        ("conclusion_reason", word(ConclusionReason::ALL, ConclusionReason::name)),
        ("fits", json!({ "type": "boolean" })),
    ]);
    properties.push((String::from("amount"), amount()));
    let required = [
        "format",
        "charge",
        "charge_status",
        "reason",
        "protocol",
        "values",
        "missing",
        "next_check",
        "advice",
        "cautions",
        "preconditions",
        "features",
        "hypotheses",
        "conclusion",
        "conclusion_reason",
        "fits",
    ];
    object(properties, &required)
}

fn by_name(names: impl Iterator<Item = &'static str>, definition: &str) -> Value {
    object(names.map(|name| (String::from(name), refer(definition))), &[])
}

fn value() -> Value {
    let properties = named([
        ("value", number()),
        ("standard_uncertainty", not_negative()),
        ("target", number()),
        ("deviation", number()),
        ("deviation_uncertainty", not_negative()),
        ("bound", refer("bound")),
    ]);
    object(properties, &["value", "standard_uncertainty", "bound"])
}

fn feature() -> Value {
    let properties = named([
        ("value", number()),
        ("standard_uncertainty", not_negative()),
        ("expected", number()),
        ("expected_uncertainty", not_negative()),
        ("deviation", number()),
        ("source", word(Source::ALL, Source::name)),
    ]);
    object(properties, &["value", "standard_uncertainty", "expected", "expected_uncertainty", "deviation", "source"])
}

fn protocol() -> Value {
    let properties = named([
        ("action", word(Action::ALL, Action::name)),
        ("reason", word(NoValidTest::ALL, NoValidTest::name)),
        ("edition", word(Edition::ALL, Edition::name)),
        ("role", word(Role::ALL, Role::name)),
        ("split", word(SplitCheck::ALL, SplitCheck::name)),
    ]);
    object(properties, &["action", "edition", "role", "split"])
}

fn missing() -> Value {
    let fields = ["refrigerant", "metering"].into_iter().chain(Field::ALL.iter().map(|field| field.name()));
    let properties = named([("field", words(fields)), ("needed_for", word(NeededFor::ALL, NeededFor::name))]);
    json!({ "type": "array", "items": object(properties, &["field", "needed_for"]), "maxItems": MISSING_MAX })
}

fn preconditions() -> Value {
    let properties = named([
        ("name", word(PreconditionName::ALL, PreconditionName::name)),
        ("status", word(PreconditionStatus::ALL, PreconditionStatus::name)),
        ("reason", refer("reason")),
    ]);
    let items = object(properties, &["name", "status"]);
    json!({ "type": "array", "items": items, "minItems": PRECONDITION_COUNT, "maxItems": PRECONDITION_COUNT })
}

fn hypotheses() -> Value {
    let probability = json!({ "type": "number", "minimum": 0, "maximum": 1 });
    let properties = named([("causes", refer("causes")), ("probability", probability)]);
    let items = object(properties, &["causes", "probability"]);
    json!({ "type": "array", "items": items, "maxItems": HYPOTHESES_MAX, "description": "Most likely first." })
}

fn amount() -> Value {
    let properties = named([
        ("share", number()),
        ("standard_uncertainty", not_negative()),
        ("lowest", number()),
        ("highest", number()),
        ("mass_kg", number()),
        ("bound", refer("bound")),
    ]);
    object(properties, &["share", "standard_uncertainty", "lowest", "highest", "bound"])
}
