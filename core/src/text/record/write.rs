//! A record as JSON values.

use super::super::canonical::Json;
use super::{Evaluated, Probe, Step, VISIT_FORMAT, VisitRecord, WeighedAmount};
use alloc::string::String;
use alloc::vec::Vec;

/// An object that leaves out what is empty.
#[derive(Default)]
struct Object(Vec<(String, Json)>);

impl Object {
    fn with(mut self, name: &str, value: Json) -> Self {
        self.0.push((String::from(name), value));
        self
    }

    fn text(self, name: &str, text: &str) -> Self {
        if text.is_empty() { self } else { self.with(name, Json::text(text)) }
    }

    fn optional(self, name: &str, value: Option<Json>) -> Self {
        match value {
            Some(value) => self.with(name, value),
            None => self,
        }
    }

    fn list<T>(self, name: &str, items: &[T], one: fn(&T) -> Json) -> Self {
        if items.is_empty() { self } else { self.with(name, Json::Array(items.iter().map(one).collect())) }
    }

    fn done(self) -> Json {
        Json::Object(self.0)
    }
}

pub(super) fn record(record: &VisitRecord) -> Json {
    let tables = record.tables.as_ref().map(|tables| {
        Object::default()
            .with("refrigerant", Json::text(tables.refrigerant.as_str()))
            .with("fingerprint", Json::text(tables.fingerprint.as_str()))
            .done()
    });
    Object::default()
        .with("format", Json::text(VISIT_FORMAT))
        .text("label", &record.label)
        .optional("demo", record.demo.then_some(Json::Boolean(true)))
        .with("started", Json::text(record.started.as_str()))
        .optional("ended", record.ended.as_deref().map(Json::text))
        .with("library_version", Json::text(record.library_version.as_str()))
        .optional("tables", tables)
        .optional("before", record.before.as_ref().map(evaluated))
        .optional("after", record.after.as_ref().map(evaluated))
        .list("probes", &record.probes, probe)
        .list("steps", &record.steps, step)
        .list("amounts", &record.amounts, amount)
        .done()
}

fn evaluated(one: &Evaluated) -> Json {
    Object::default()
        .with("time", Json::text(one.time.as_str()))
        .with("reading", one.reading.0.clone())
        .with("finding", one.finding.0.clone())
        .done()
}

fn probe(one: &Probe) -> Json {
    Object::default()
        .with("fields", Json::Array(one.fields.iter().map(|field| Json::text(field.name())).collect()))
        .text("name", &one.name)
        .optional("zeroed", one.zeroed.as_deref().map(Json::text))
        .optional("calibrated", one.calibrated.as_deref().map(Json::text))
        .optional("accuracy", one.accuracy.as_ref().map(|given| given.0.clone()))
        .done()
}

fn step(one: &Step) -> Json {
    Object::default()
        .with("time", Json::text(one.time.as_str()))
        .with("step", Json::text(one.step.name()))
        .text("note", &one.note)
        .done()
}

fn amount(one: &WeighedAmount) -> Json {
    Object::default()
        .with("time", Json::text(one.time.as_str()))
        .with("direction", Json::text(one.direction.name()))
        .with("mass_kg", Json::Number(one.mass_kg))
        .optional("standard_uncertainty_kg", one.standard_uncertainty_kg.map(Json::Number))
        .done()
}
