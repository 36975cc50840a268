//! Reading what is right, refusing what is wrong with its place, and writing what reads back.

use super::*;
use crate::diagnosis::diagnose;
use crate::error::code;
use crate::quantity::{Atmosphere, kelvin_from_fahrenheit};
use crate::reading::{Field, Metering, Operation, RefrigerantCondition};
use alloc::format;
use alloc::string::String;
use approx::assert_relative_eq;
use proptest::prelude::*;
use std::string::ToString;

fn refused(text: &str) -> TextError {
    readings_from_json(text).unwrap_err()
}

#[test]
fn both_spellings_give_the_same_reading() {
    let written = r#"{"refrigerant": "r410a", "metering": "fixed-orifice", "suction_pressure": "118 psig",
        "suction_line_temperature": "62 degF", "target_superheat": "8 degF", "nominal_capacity": "3 ton",
        "minutes_since_change": "20 min", "expected_charge": "6 lb 4 oz"}"#;
    let si = r#"{"refrigerant": "R-410A", "metering": "fixed-orifice", "suction_pressure_pa": 914906.3606,
        "suction_line_temperature_k": 289.8167, "target_superheat_k": 4.444444, "nominal_capacity_w": 10550.5585,
        "minutes_since_change": 20, "expected_charge_kg": 2.83495}"#;
    let (left, right) = (readings_from_json(written).unwrap(), readings_from_json(si).unwrap());
    let (left, right) = (left[0].reading, right[0].reading);
    assert_eq!(left.refrigerant.unwrap().designation(), "R-410A");
    assert_eq!((left.metering, left.refrigerant), (Some(Metering::FixedOrifice), right.refrigerant));
    for field in Field::ALL {
        match (left.get(*field), right.get(*field)) {
            (Some(left), Some(right)) => assert_relative_eq!(left, right, max_relative = 1e-5),
            (left, right) => assert_eq!(left, right),
        }
    }
}

#[test]
fn gauge_pressures_need_the_air_and_an_assumed_one_is_said() {
    let pressure = |air: &str| {
        let readings = readings_from_json(&format!(r#"{{"suction_pressure": "118 psig"{air}}}"#)).unwrap();
        (readings[0].reading.suction_pressure.unwrap().pascals(), readings[0].atmosphere_assumed)
    };
    let (sea, assumed) = pressure("");
    assert!(assumed);
    let (high, assumed) = pressure(r#", "altitude": "5280 ft""#);
    assert!(!assumed);
    let mile = Atmosphere::at_altitude_m(1609.344).unwrap().pascals();
    assert_relative_eq!(sea - high, 101_325.0 - mile, max_relative = 1e-9);
    assert_relative_eq!(pressure(r#", "altitude_m": 1609.344"#).0, high);
    assert_relative_eq!(pressure(&format!(r#", "ambient_pressure_pa": {mile}"#)).0, high);
    assert!(!readings_from_json(r#"{"suction_pressure": "132 psia"}"#).unwrap()[0].atmosphere_assumed);
}

#[test]
fn a_difference_is_not_a_temperature() {
    let reading =
        readings_from_json(r#"{"target_subcooling": "9 degF", "outdoor_dry_bulb": "9 degF"}"#).unwrap()[0].reading;
    assert_relative_eq!(reading.target_subcooling.unwrap().kelvin(), 5.0, max_relative = 1e-12);
    assert_relative_eq!(reading.outdoor_dry_bulb.unwrap().kelvin(), kelvin_from_fahrenheit(9.0), max_relative = 1e-12);
}

#[test]
fn labels_marks_and_unset_fields() {
    let readings =
        readings_from_json(r#"[{"label": "Roof 1", "note": "windy", "demo": true, "liquid_pressure": null}, {}]"#);
    let readings = readings.unwrap();
    assert_eq!((readings[0].label.as_str(), readings[0].note.as_str(), readings[0].demo), ("Roof 1", "windy", true));
    assert!(readings[0].reading.liquid_pressure.is_none());
    assert_eq!(readings[1], LabelledReading::default());
}

#[test]
fn accuracies_are_taken_with_their_units() {
    let text = r#"{"suction_pressure": "118 psig", "uncertainty": {
        "suction_pressure": {"of_reading": 0.005, "absolute": "1 psi", "resolution": "0.5 psi"},
        "suction_line_temperature_k": {"absolute": 0.5}, "return_wet_bulb": {"absolute": "1.8 degF"}}}"#;
    let reading = readings_from_json(text).unwrap()[0].reading;
    let pressure = reading.accuracy[Field::SuctionPressure as usize].unwrap();
    assert_relative_eq!(pressure.absolute, 6894.757, max_relative = 1e-6);
    assert_relative_eq!(pressure.resolution, 3447.379, max_relative = 1e-6);
    assert_relative_eq!(pressure.of_reading, 0.005);
    assert_relative_eq!(reading.accuracy[Field::SuctionLineTemperature as usize].unwrap().absolute, 0.5);
    assert_relative_eq!(reading.accuracy[Field::ReturnWetBulb as usize].unwrap().absolute, 1.0, max_relative = 1e-12);
    for wrong in ["-1", "\"x\"", "1e999", "true", "\"-2 psi\""] {
        let text = format!(r#"{{"uncertainty": {{"suction_pressure": {{"absolute": {wrong}}}}}}}"#);
        assert!(readings_from_json(&text).is_err(), "{wrong}");
    }
}

#[test]
fn channels_of_one_group_share_an_error() {
    let text = r#"{"suction_pressure": "118 psig", "uncertainty": {
        "return_dry_bulb": {"absolute": 0.2, "group": "pocket thermometer"},
        "suction_pressure": {"of_full_scale": 0.005, "full_scale": "500 psi", "group": "manifold"},
        "supply_dry_bulb": {"absolute": 0.2, "group": "pocket thermometer"},
        "return_wet_bulb": {"of_full_scale": 0.01, "full_scale": "90 degF"},
        "liquid_pressure_pa": {"of_full_scale": 0.005, "full_scale": 5.5e6, "group": "manifold"}}}"#;
    let reading = readings_from_json(text).unwrap()[0].reading;
    let of = |field: Field| reading.accuracy[field as usize].unwrap();
    let groups = [
        Field::ReturnDryBulb,
        Field::SuctionPressure,
        Field::SupplyDryBulb,
        Field::ReturnWetBulb,
        Field::LiquidPressure,
    ]
    .map(|field| of(field).group);
    // By the order in which the words appear; without one, an error of its own.
    assert_eq!(groups, [1, 2, 1, 0, 2]);
    assert_relative_eq!(of(Field::SuctionPressure).of_full_scale, 0.005);
    assert_relative_eq!(of(Field::SuctionPressure).full_scale, 500.0 * 6_894.757, max_relative = 1e-6);
    // A span of temperatures, not a temperature.
    assert_relative_eq!(of(Field::ReturnWetBulb).full_scale, 50.0, max_relative = 1e-12);
    assert_relative_eq!(of(Field::LiquidPressure).full_scale, 5.5e6);
    // Each reading numbers its own.
    let two = readings_from_json(
        r#"[{"uncertainty": {"suction_pressure": {"group": "a"}}}, {"uncertainty": {"suction_pressure": {"group": "b"}}}]"#,
    );
    for labelled in two.unwrap() {
        assert_eq!(labelled.reading.accuracy[Field::SuctionPressure as usize].unwrap().group, 1);
    }
}

#[test]
fn what_is_wrong_in_an_accuracy_is_named() {
    for (limits, name, code, words) in [
        ("\"of_full_scale\": 0.01", "of_full_scale", code::OUT_OF_RANGE, "without full_scale: give both"),
        ("\"full_scale\": 5e6", "full_scale", code::OUT_OF_RANGE, "without of_full_scale: give both"),
        ("\"full_scale\": 5e6, \"of_full_scale\": 0", "full_scale", code::OUT_OF_RANGE, "without of_full_scale"),
        ("\"of_full_scale\": 2, \"full_scale\": 5e6", "of_full_scale", code::OUT_OF_RANGE, "outside 0 to 1"),
        ("\"of_full_scale\": \"1 psi\"", "of_full_scale", code::MALFORMED_TEXT, "a fraction"),
        ("\"full_scale\": -1", "full_scale", code::OUT_OF_RANGE, "outside 0 to"),
        ("\"full_scale\": 1e999", "full_scale", code::NOT_FINITE, "finite"),
        ("\"full_scale\": \"5 degF\"", "full_scale", code::UNKNOWN_UNIT, "psi"),
        ("\"group\": 1", "group", code::MALFORMED_TEXT, "expected a word"),
        ("\"group\": \" \"", "group", code::MALFORMED_TEXT, "empty"),
        ("\"group\": \"a\", \"group\": \"a\"", "group", code::MALFORMED_TEXT, "given twice"),
        ("\"of_fullscale\": 0.1", "of_fullscale", code::UNKNOWN_FIELD, "nearest is of_full_scale"),
    ] {
        let error = refused(&format!("{{\n\"uncertainty\": {{\n\"suction_pressure\": {{\n{limits}}}}}}}"));
        let path = format!("uncertainty.suction_pressure.{name}");
        assert_eq!((error.line, error.field.as_deref(), error.code), (4, Some(path.as_str()), code), "{error}");
        assert!(error.message.contains(words), "{error}");
    }
    // What is too small to be meant.
    let error = refused(r#"{"uncertainty": {"suction_pressure": {"of_full_scale": 1e-12, "full_scale": 5e6}}}"#);
    assert_eq!((error.field.as_deref(), error.code), (Some("uncertainty.suction_pressure"), code::OUT_OF_RANGE));
    // Nothing of full scale may be written as zeros.
    let zeros = r#"{"uncertainty": {"suction_pressure": {"of_full_scale": 0, "full_scale": 0, "absolute": 5}}}"#;
    assert!(readings_from_json(zeros).is_ok());
}

#[test]
fn what_the_unit_did_and_holds_is_a_word() {
    let text = r#"{"operation": "fan-cycling", "refrigerant_condition": "leak-shifted"}"#;
    let reading = readings_from_json(text).unwrap()[0].reading;
    assert_eq!(reading.operation, Some(Operation::FanCycling));
    assert_eq!(reading.refrigerant_condition, Some(RefrigerantCondition::LeakShifted));
    for (name, word, nearest) in
        [("operation", "pulldown", "pull-down"), ("refrigerant_condition", "as-labeled", "as-labelled")]
    {
        let error = refused(&format!(r#"{{"{name}": "{word}"}}"#));
        assert_eq!((error.code, error.field.as_deref()), (code::UNKNOWN_CHOICE, Some(name)));
        assert!(error.message.contains(&format!("the nearest is {nearest}")), "{error}");
    }
}

#[test]
fn what_is_given_twice_is_refused() {
    for text in [
        "{\"outdoor_dry_bulb_k\": 300,\n\"outdoor_dry_bulb_k\": 301}",
        "{\"outdoor_dry_bulb_k\": 300,\n\"outdoor_dry_bulb\": \"80 degF\"}",
        "{\"altitude\": \"100 ft\",\n\"ambient_pressure_pa\": 100000}",
        "{\"label\": \"a\",\n\"label\": \"b\"}",
    ] {
        let error = refused(text);
        assert_eq!((error.line, error.code), (2, code::MALFORMED_TEXT), "{error}");
        assert!(error.message.contains("given twice") && error.message.contains("line 1"), "{error}");
    }
}

#[test]
fn a_number_without_a_unit_is_refused_where_a_unit_is_needed() {
    let error = refused(r#"{"suction_pressure": 118}"#);
    assert_eq!(error.code, code::UNKNOWN_UNIT);
    assert!(error.message.contains("suction_pressure_pa"));
    let error = refused(r#"{"suction_pressure_pa": "118 psig"}"#);
    assert!(error.message.contains("write suction_pressure "));
}

#[test]
fn findings_as_json_read_back() {
    let readings = readings_from_json(include_str!("../../examples/demo_school.json")).unwrap();
    let findings: alloc::vec::Vec<_> = readings.iter().map(|labelled| diagnose(&labelled.reading)).collect();
    let json = findings_to_json(readings.iter().zip(&findings));
    assert!(!json.contains("null"));
    let parsed: serde_json::Value = serde_json::from_str(&json).unwrap();
    for (index, (labelled, finding)) in readings.iter().zip(&findings).enumerate() {
        let one = &parsed[index];
        assert_eq!(one["label"], labelled.label.as_str());
        assert_eq!(one["charge"], finding.charge.name());
        assert_eq!(one["protocol"]["action"], finding.protocol.action.name());
        let superheat = finding.values.superheat.unwrap();
        // Bit for bit: the shortest decimal that reads back.
        assert_eq!(one["values"]["superheat_k"]["value"].as_f64(), Some(superheat.value));
        assert_eq!(one["values"]["superheat_k"]["standard_uncertainty"].as_f64(), Some(superheat.standard_uncertainty));
        assert_eq!(one["values"]["superheat_k"]["deviation"].as_f64(), superheat.deviation);
        assert!(one["cautions"].as_array().unwrap().iter().any(|caution| caution == "licensed-practice"));
    }
    let alone: serde_json::Value = serde_json::from_str(&finding_to_json(&findings[0])).unwrap();
    assert!(alone.get("label").is_none() && alone["charge"] == findings[0].charge.name());
}

#[test]
fn the_weighing_is_written_out() {
    let mut finding = sample::undercharged(&crate::reading::Reading::default());
    finding.preconditions.not_met(crate::diagnosis::PreconditionName::Steady, crate::diagnosis::Reason::NotSettled);
    let json = finding_to_json(&finding);
    assert!(json.starts_with("{\n  \"format\": \"satline-finding/1\""), "{json}");
    let json: serde_json::Value = serde_json::from_str(&json).unwrap();
    assert_eq!(
        json["preconditions"][0],
        serde_json::json!({"name": "steady", "status": "not-met", "reason": "not-settled"})
    );
    assert_eq!(json["preconditions"][6], serde_json::json!({"name": "airflow", "status": "unknown"}));
    assert_eq!(json["preconditions"].as_array().unwrap().len(), crate::diagnosis::PRECONDITION_COUNT);
    assert_eq!(
        json["features"]["subcooling_k"],
        serde_json::json!({"value": 1.2, "standard_uncertainty": 0.6, "expected": 5.4, "expected_uncertainty": 0.8,
            "deviation": 1.2 - 5.4, "source": "baseline"})
    );
    assert!(json["features"].get("airflow_share").is_none());
    assert_eq!(
        json["hypotheses"][1],
        serde_json::json!({"causes": ["undercharge", "low-indoor-airflow"], "probability": 0.04})
    );
    assert_eq!(json["hypotheses"][3]["causes"], serde_json::json!([]));
    assert_eq!((&json["conclusion"], &json["conclusion_reason"]), (&["undercharge"].into(), &"stands".into()));
    assert_eq!(json["fits"], true);
    let amount = &mut finding.amount;
    assert_eq!(
        json["amount"],
        serde_json::json!({"share": 0.12, "standard_uncertainty": 0.03, "lowest": 0.07, "highest": 0.17,
            "mass_kg": 0.31, "bound": "exact"})
    );
    amount.as_mut().unwrap().mass_kg = None;
    finding.conclusion = crate::diagnosis::Conclusion::cannot_tell(crate::diagnosis::ConclusionReason::TooClose);
    let json: serde_json::Value = serde_json::from_str(&finding_to_json(&finding)).unwrap();
    assert!(json["amount"].get("mass_kg").is_none());
    assert_eq!((&json["conclusion"], &json["conclusion_reason"]), (&"cannot-tell".into(), &"too-close".into()));
    finding.amount = None;
    let json: serde_json::Value = serde_json::from_str(&finding_to_json(&finding)).unwrap();
    assert!(json.get("amount").is_none());
}

#[test]
fn every_field_has_a_spelling_with_a_unit() {
    let unit = |field: Field| match field.bound().unit {
        "Pa" => "psia",
        "K" => "K",
        "m3/s" => "m3/s",
        "W" => "W",
        "kg" => "kg",
        other => other,
    };
    for field in Field::ALL {
        let base = ["_m3_s", "_pa", "_kg", "_k", "_w"].iter().find_map(|unit| field.name().strip_suffix(unit));
        let bound = field.bound();
        let middle = match bound.unit {
            "Pa" => 100_000.0 / 6_894.757_293_168_361,
            _ => 0.5 * (bound.lower + bound.upper),
        };
        let text = format!(r#"{{"{}": "{middle} {}"}}"#, base.unwrap_or(field.name()), unit(*field));
        let reading = readings_from_json(&text).unwrap()[0].reading;
        assert!(reading.get(*field).is_some(), "{text}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 2000, ..ProptestConfig::default() })]

    #[test]
    fn no_text_panics(text in "\\PC*") {
        if let Err(error) = readings_from_json(&text) {
            prop_assert!(error.line >= 1 && !error.to_string().is_empty());
        }
    }

    #[test]
    fn no_field_or_value_panics(
        name in prop_oneof!["[a-z_]{1,30}", Just(String::from("suction_pressure")), Just(String::from("altitude")),
            Just(String::from("uncertainty")), Just(String::from("refrigerant"))],
        value in prop_oneof!["\\PC{0,20}", "\"[0-9a-zA-Z .+-]{0,20}\"", "[-0-9.eE]{1,12}", "\\{[\"a-z:0-9,{} ]{0,20}\\}"],
    ) {
        let text = format!("[\n{{\"{name}\":\n{value}}}]");
        match readings_from_json(&text) {
            Ok(readings) => {
                for field in Field::ALL {
                    if let Some(value) = readings[0].reading.get(*field) {
                        prop_assert!(field.bound().check(value).is_ok());
                    }
                }
                let finding = diagnose(&readings[0].reading);
                prop_assert!(!finding_to_words(&name, &readings[0].reading, &finding, Units::Ip).is_empty());
            }
            Err(error) => prop_assert!((1..=3).contains(&error.line), "{}", error),
        }
    }
}
