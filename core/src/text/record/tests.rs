//! A record reads back to the same bytes, and what is wrong is refused with its place.

use super::*;
use crate::diagnosis::diagnose;
use crate::error::code;
use crate::text::readings_from_json;
use alloc::format;
use core::str::from_utf8;
use proptest::option::of;
use proptest::prelude::*;
use proptest::sample::select;

const READING: &str = r#"{"label": "Demo", "refrigerant": "r410a", "suction_pressure": "118 psig",
    "altitude": "600 ft", "liquid_pressure": null, "uncertainty": {"suction_pressure": {"absolute": "1 psi"}}}"#;

fn demo() -> VisitRecord {
    let reading = readings_from_json(READING).unwrap()[0].reading;
    let mut record = VisitRecord::new("Demo, roof unit 1", "2026-07-14T15:02:00Z", reading.refrigerant);
    record.demo = true;
    record.ended = Some(String::from("2026-07-14T16:40:00Z"));
    record.before = Some(Evaluated::new("2026-07-14T15:20:00Z", READING, &diagnose(&reading)).unwrap());
    record.probes.push(Probe {
        fields: Vec::from([Field::SuctionPressure, Field::LiquidPressure]),
        name: String::from("Manifold 7"),
        zeroed: Some(String::from("2026-07-14T15:00:00Z")),
        calibrated: Some(String::from("2026-03-01")),
        accuracy: Some(Given::from_json(r#"{"absolute": "1 psi", "group": "manifold"}"#).unwrap()),
    });
    record.steps.push(Step {
        note: String::from("cap \"was\" loose\n"),
        ..Step::new("2026-07-14T15:04:00Z", VisitStep::HosesConnected)
    });
    record.amounts.push(WeighedAmount {
        time: String::from("2026-07-14T15:50:00Z"),
        direction: Direction::Added,
        mass_kg: 0.1,
        standard_uncertainty_kg: Some(0.003),
    });
    record
}

fn text(record: &VisitRecord) -> String {
    String::from(from_utf8(&record.to_canonical_bytes().unwrap()).unwrap())
}

#[test]
fn a_record_is_one_line_with_sorted_names_and_reads_back() {
    let record = demo();
    let text = text(&record);
    assert!(text.starts_with("{\"amounts\":[{\"direction\":\"added\",\"mass_kg\":0.1,"), "{text}");
    assert!(text.contains(r#""format":"satline-visit/1""#) && !text.contains('\n') && !text.contains(": "));
    // The reading stands as it was given, units and all.
    assert!(text.contains(r#""suction_pressure":"118 psig""#) && text.contains(r#""liquid_pressure":null"#), "{text}");
    assert!(text.contains(r#""note":"cap \"was\" loose\n""#), "{text}");
    let back = VisitRecord::from_json(&text).unwrap();
    assert_eq!(back, record);
    assert!(back.tables_are_these() && back.library_version == env!("CARGO_PKG_VERSION"));
    let mut other = back;
    other.tables.as_mut().unwrap().fingerprint.pop();
    assert!(!other.tables_are_these() && !VisitRecord::default().tables_are_these());
}

#[test]
fn another_order_and_white_space_give_the_same_bytes() {
    let value: serde_json::Value = serde_json::from_str(&text(&demo())).unwrap();
    let pretty = serde_json::to_string_pretty(&value).unwrap();
    assert_ne!(pretty, text(&demo()));
    assert_eq!(text(&VisitRecord::from_json(&pretty).unwrap()), text(&demo()));
}

#[test]
fn what_is_wrong_is_named_with_its_place() {
    let good = text(&demo());
    for (from, to, field, code, says) in [
        ("satline-visit/1", "satline-visit/2", "", code::MALFORMED_TEXT, "that is satline-visit/1"),
        ("satline-finding/1", "satline-finding/9", "before.finding", code::MALFORMED_TEXT, "satline-finding/1"),
        ("\"label\":\"Demo, roof", "\"lable\":\"Demo, roof", "lable", code::UNKNOWN_FIELD, "nearest is label"),
        ("2026-07-14T16:40:00Z", "2026-07-14T14:40:00Z", "ended", code::MALFORMED_TEXT, "before the time"),
        ("2026-07-14T16:40:00Z", "2026-07-14T16:40:00", "ended", code::MALFORMED_TEXT, "ISO 8601"),
        ("2026-03-01", "2026-02-30", "probes[0].calibrated", code::MALFORMED_TEXT, "not a date"),
        ("118 psig", "118 psi", "before.reading.suction_pressure", code::UNKNOWN_UNIT, "psig"),
        ("\"hoses-connected\"", "\"hoses-conected\"", "steps[0].step", code::UNKNOWN_CHOICE, "hoses-connected"),
        ("\"mass_kg\":0.1", "\"mass_kg\":-0.1", "amounts[0].mass_kg", code::OUT_OF_RANGE, "direction"),
        ("\"mass_kg\":0.1", "\"mass_kg\":null", "amounts[0].mass_kg", code::MALFORMED_TEXT, "a number"),
        ("\"mass_kg\":0.1", "\"mass_kg\":1e999", "amounts[0].mass_kg", code::NOT_FINITE, "finite"),
        ("\"mass_kg\":0.1,", "", "amounts[0]", code::MALFORMED_TEXT, "mass_kg is missing"),
        ("\"mass_kg\":0.1,", "\"mass_kg\":0.1,\"mass_kg\":0.1,", "amounts[0].mass_kg", code::MALFORMED_TEXT, "twice"),
        ("\"suction_pressure_pa\",", "\"suction_pressure\",", "probes[0].fields[0]", code::UNKNOWN_FIELD, "nearest"),
        ("\"suction_pressure_pa\",", "\"liquid_pressure_pa\",", "probes[0].fields[1]", code::MALFORMED_TEXT, "twice"),
        ("\"group\":\"manifold\"", "\"group\":\"\"", "probes[0].accuracy", code::MALFORMED_TEXT, "empty"),
        ("\"demo\":true", "\"demo\":1", "demo", code::MALFORMED_TEXT, "true or false"),
    ] {
        assert!(good.contains(from), "{from} in {good}");
        let error = VisitRecord::from_json(&good.replacen(from, to, 1)).unwrap_err();
        assert_eq!((error.field.as_deref().unwrap_or(""), error.code), (field, code), "{error}");
        assert!(error.message.contains(says), "{error}");
    }
    let error = VisitRecord::from_json(
        "{\"format\": \"satline-visit/1\",\n\"started\": \"2026-07-14T15:02:00Z\",\n\"library_version\": 1}",
    );
    assert_eq!(error.unwrap_err().line, 3);
    for not_one in ["", "[]", "1", "{}", "{\"format\": 1}", "{\"format\": \"satline-finding/1\"}"] {
        assert!(VisitRecord::from_json(not_one).is_err(), "{not_one}");
    }
}

#[test]
fn what_cannot_be_read_is_not_written() {
    let mut record = demo();
    record.amounts[0].mass_kg = f64::NAN;
    assert_eq!(record.to_canonical_bytes().unwrap_err().code, code::NOT_FINITE);
    record = demo();
    record.started = String::from("yesterday");
    assert_eq!(record.to_canonical_bytes().unwrap_err().field.as_deref(), Some("started"));
    record = demo();
    record.probes[0].fields.clear();
    assert!(record.to_canonical_bytes().is_err());
    assert!(VisitRecord::default().to_canonical_bytes().is_err());
}

/// Any record.
fn any_record() -> impl Strategy<Value = VisitRecord> {
    let time = || {
        (2000_u32..2100, 1_u32..13, 1_u32..29, 0_u32..24, 0_u32..60, 0_u32..60).prop_map(
            |(year, month, day, hour, minute, second)| {
                format!("{year}-{month:02}-{day:02}T{hour:02}:{minute:02}:{second:02}Z")
            },
        )
    };
    let field = || select(Field::ALL).prop_map(|field| Vec::from([field]));
    let evaluated = (time(), 5e5..1e6_f64, any::<String>()).prop_map(|(time, pressure, note)| {
        let note = serde_json::to_string(&note).unwrap();
        let text = format!(r#"{{"suction_pressure_pa": {pressure}, "note": {note}, "refrigerant": "R-32"}}"#);
        let reading = readings_from_json(&text).unwrap()[0].reading;
        Evaluated::new(&time, &text, &diagnose(&reading)).unwrap()
    });
    let probe = (field(), any::<String>(), of(time())).prop_map(|(fields, name, zeroed)| Probe {
        fields,
        name,
        zeroed,
        ..Probe::default()
    });
    let step = (time(), select(VisitStep::ALL), any::<String>());
    let step = step.prop_map(|(time, step, note)| Step { time, step, note });
    let amount = (time(), select(Direction::ALL), 1e-3..50.0_f64, of(0.0..0.1_f64));
    let amount = amount.prop_map(|(time, direction, mass_kg, standard_uncertainty_kg)| WeighedAmount {
        time,
        direction,
        mass_kg,
        standard_uncertainty_kg,
    });
    let many = 0..3_usize;
    let lists = (
        proptest::collection::vec(probe, many.clone()),
        proptest::collection::vec(step, many.clone()),
        proptest::collection::vec(amount, many),
    );
    (any::<String>(), any::<bool>(), time(), of(evaluated.clone()), of(evaluated), lists).prop_map(
        |(label, demo, started, before, after, (probes, steps, amounts))| VisitRecord {
            demo,
            before,
            after,
            probes,
            steps,
            amounts,
            ..VisitRecord::new(&label, &started, Some(&crate::saturation::R32))
        },
    )
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 300, ..ProptestConfig::default() })]

    #[test]
    fn nothing_is_lost_and_the_bytes_are_the_same(record in any_record()) {
        let bytes = record.to_canonical_bytes().unwrap();
        let back = VisitRecord::from_json(from_utf8(&bytes).unwrap()).unwrap();
        prop_assert_eq!(&back, &record);
        prop_assert_eq!(back.to_canonical_bytes().unwrap(), bytes);
    }

    #[test]
    fn no_text_panics(text in "\\PC*", place in 0..2000_usize, byte in 0..128_u8) {
        drop(VisitRecord::from_json(&text));
        let mut bytes = demo().to_canonical_bytes().unwrap();
        let place = place % bytes.len();
        bytes[place] = byte;
        if let Ok(text) = from_utf8(&bytes) {
            drop(VisitRecord::from_json(text));
        }
    }
}
