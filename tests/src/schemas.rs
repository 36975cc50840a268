//! The files under `core/docs/schema/`, and the demo record of a visit: made by the library, checked in.

use satline::diagnosis::diagnose;
use satline::reading::Field;
use satline::text::{
    Direction, Evaluated, Given, Probe, Schema, Step, VisitRecord, VisitStep, WeighedAmount, readings_from_json,
};

/// The unit on arrival: invented, short of refrigerant.
const BEFORE: &str = r#"{
    "label": "Unit 2, gymnasium", "demo": true, "refrigerant": "R-410A", "metering": "fixed-orifice",
    "altitude": "600 ft", "outdoor_dry_bulb": "91 degF", "return_dry_bulb": "78 degF", "return_wet_bulb": "66 degF",
    "supply_dry_bulb": "61.5 degF", "suction_pressure": "119 psig", "suction_line_temperature": "67.0 degF",
    "liquid_pressure": "304 psig", "liquid_line_temperature": "95.0 degF", "airflow": "1950 cfm",
    "nominal_capacity": "5 ton", "minutes_since_change": "30 min"}"#;
/// The same unit at the end: invented.
const AFTER: &str = r#"{
    "label": "Unit 2, gymnasium", "demo": true, "refrigerant": "R-410A", "metering": "fixed-orifice",
    "altitude": "600 ft", "outdoor_dry_bulb": "92 degF", "return_dry_bulb": "77 degF", "return_wet_bulb": "66 degF",
    "supply_dry_bulb": "59.5 degF", "suction_pressure": "126 psig", "suction_line_temperature": "55.5 degF",
    "liquid_pressure": "336 psig", "liquid_line_temperature": "95.5 degF", "airflow": "1950 cfm",
    "nominal_capacity": "5 ton", "minutes_since_change": "20 min"}"#;

/// The demo record of a visit: every value in it is invented.
///
/// # Panics
/// When the demo is not a record; the tests would say so.
#[must_use]
pub fn demo_visit() -> VisitRecord {
    let evaluated = |time: &str, text: &str| {
        let readings = readings_from_json(text).expect("the demo reading is one");
        Evaluated::new(time, text, &diagnose(&readings[0].reading)).expect("the demo reading is JSON")
    };
    let accuracy = r#"{"of_full_scale": 0.005, "full_scale": "800 psi", "resolution": "1 psi", "group": "manifold"}"#;
    let mut record = VisitRecord::new("Unit 2, gymnasium", "2026-07-14T15:02:00Z", Some(&satline::saturation::R410A));
    record.demo = true;
    record.ended = Some("2026-07-14T17:10:00Z".into());
    record.before = Some(evaluated("2026-07-14T15:40:00Z", BEFORE));
    record.after = Some(evaluated("2026-07-14T17:00:00Z", AFTER));
    record.probes = vec![
        Probe {
            fields: vec![Field::SuctionPressure, Field::LiquidPressure],
            name: "manifold, serial 0007".into(),
            zeroed: Some("2026-07-14T15:05:00Z".into()),
            calibrated: Some("2026-03-01".into()),
            accuracy: Some(Given::from_json(accuracy).expect("the demo accuracy is JSON")),
        },
        Probe { fields: vec![Field::SuctionLineTemperature], name: "clamp A".into(), ..Probe::default() },
    ];
    for (time, step, note) in [
        ("2026-07-14T15:05:00Z", VisitStep::GaugesZeroed, ""),
        ("2026-07-14T15:06:00Z", VisitStep::HosesConnected, ""),
        ("2026-07-14T15:10:00Z", VisitStep::Started, ""),
        ("2026-07-14T15:40:00Z", VisitStep::Settled, ""),
        ("2026-07-14T15:55:00Z", VisitStep::LeakSearched, "valve core of the vapour port"),
        ("2026-07-14T16:05:00Z", VisitStep::LeakRepaired, "core replaced"),
        ("2026-07-14T16:20:00Z", VisitStep::Added, "weighed, as liquid"),
        ("2026-07-14T17:05:00Z", VisitStep::HosesRemoved, "caps tight"),
    ] {
        record.steps.push(Step { note: note.into(), ..Step::new(time, step) });
    }
    record.amounts = vec![WeighedAmount {
        time: "2026-07-14T16:20:00Z".into(),
        direction: Direction::Added,
        mass_kg: 0.31,
        standard_uncertainty_kg: Some(0.003),
    }];
    record
}

/// Every generated file: its path in the repository, and what stands in it.
///
/// # Panics
/// When the demo is not a record; the tests would say so.
#[must_use]
pub fn files() -> Vec<(String, String)> {
    let mut files: Vec<_> = Schema::ALL
        .iter()
        .map(|schema| (format!("core/docs/schema/{}.schema.json", schema.name()), schema.to_json()))
        .collect();
    let bytes = demo_visit().to_canonical_bytes().expect("the demo is a record");
    let text = String::from_utf8(bytes).expect("a record is UTF-8");
    files.push(("core/examples/demo_visit.json".into(), text));
    files
}
