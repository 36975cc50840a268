//! What is wrong in the input is said clearly: quantity, value, limits and what to do; in a file also line and field.

use satline::diagnosis::{Charge, FieldName, NeededFor, Reason, diagnose};
use satline::error::code;
use satline::quantity::{Atmosphere, Pressure, Temperature};
use satline::reading::{Field, Metering, Reading};
use satline::saturation::R410A;
use satline::text::{TextError, readings_from_json};
use satline::{Error, refrigerant};

fn refused(text: &str) -> TextError {
    readings_from_json(text).unwrap_err()
}

#[test]
fn a_pressure_outside_the_curve_is_refused_with_its_limits() {
    for pascals in [1000.0, 4.9e6] {
        let pressure = Pressure::from_pascals(pascals).unwrap();
        for answer in [R410A.dew_temperature(pressure), R410A.bubble_temperature(pressure)] {
            let error = answer.unwrap_err();
            assert_eq!(error.code(), code::OUT_OF_RANGE);
            let Error::OutOfRange { quantity, value, lower, upper, advice, .. } = error else { panic!("{error}") };
            assert_eq!((quantity, value), ("absolute pressure", pascals));
            assert!(lower > 1000.0 && upper < 4.9e6 && lower < upper && !advice.is_empty());
            let said = error.to_string();
            assert!(said.contains(&pascals.to_string()) && said.contains("Pa"), "{said}");
        }
    }
}

#[test]
fn a_temperature_above_the_critical_point_is_refused() {
    // The critical temperature of R-410A is about 344.5 K (Lemmon and Jacobsen 2004).
    for kelvin in [344.6, 400.0] {
        let error = R410A.dew_pressure(Temperature::from_kelvin(kelvin).unwrap()).unwrap_err();
        assert!(matches!(error, Error::OutOfRange { value, upper, .. } if value == kelvin && upper < 344.6), "{error}");
        assert!(error.to_string().contains("critical"));
    }
}

#[test]
fn nan_and_infinities_are_refused_everywhere() {
    for bad in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
        assert!(matches!(Pressure::from_pascals(bad), Err(Error::NotFinite { .. })));
        assert!(matches!(Temperature::from_fahrenheit(bad), Err(Error::NotFinite { .. })));
        assert!(R410A.dew.temperature.at(bad).is_err() && R410A.bubble.pressure.at(bad).is_err());
        for field in Field::ALL {
            let mut reading = Reading::default();
            assert_eq!(reading.set(*field, bad).unwrap_err().code(), code::NOT_FINITE);
            assert_eq!(reading, Reading::default());
        }
    }
    for (text, line) in [
        ("{\"outdoor_dry_bulb_k\": 300,\n\"suction_pressure_pa\": NaN}", 2),
        ("{\"suction_pressure_pa\": -Infinity}", 1),
        ("{\n\n\"suction_pressure_pa\": 1e999}", 3),
        ("{\"suction_pressure\":\n\"1e999 psig\"}", 2),
    ] {
        let error = refused(text);
        assert_eq!((error.line, error.code), (line, code::NOT_FINITE), "{text}: {error}");
        if text.lines().nth(line - 1).unwrap().contains("suction") {
            assert_eq!(
                error.field.as_deref(),
                Some(if text.contains("psig") { "suction_pressure" } else { "suction_pressure_pa" }),
                "{error}"
            );
        }
    }
}

#[test]
fn a_gauge_pressure_below_vacuum_is_refused() {
    let error = Pressure::from_psi_gauge(-15.0, Atmosphere::STANDARD).unwrap_err();
    assert!(error.to_string().contains("gauge pressure") && error.to_string().contains("below vacuum"), "{error}");
    let error = refused("[\n{},\n{\n\"suction_pressure\":\n\"-15 psig\"}]");
    assert_eq!((error.line, error.reading, error.field.as_deref()), (5, Some(2), Some("suction_pressure")));
    assert_eq!(error.code, code::OUT_OF_RANGE);
    assert!(error.message.contains("-15 psig") && error.message.contains("vacuum"), "{error}");
    // At altitude a vacuum is fewer psi below ambient.
    assert!(readings_from_json(r#"{"suction_pressure": "-12 psig"}"#).is_ok());
    assert!(readings_from_json(r#"{"altitude": "10000 ft", "suction_pressure": "-12 psig"}"#).is_err());
}

#[test]
fn an_unknown_refrigerant_is_answered_with_the_nearest() {
    assert_eq!(refrigerant::find("R-410X").unwrap_err(), Error::UnknownRefrigerant { nearest: "R-410A" });
    let error = refused("{\n\"refrigerant\": \"R-407\"}");
    assert_eq!((error.line, error.field.as_deref(), error.code), (2, Some("refrigerant"), code::UNKNOWN_REFRIGERANT));
    assert!(error.message.contains("R-407A") && error.message.contains("R-407\""), "{error}");
}

#[test]
fn an_unknown_field_or_unit_names_line_and_field() {
    let error = refused("{\n\"refrigerant\": \"R-410A\",\n\"sucton_presure\": \"118 psig\"}");
    assert_eq!((error.line, error.field.as_deref(), error.code), (3, Some("sucton_presure"), code::UNKNOWN_FIELD));
    assert!(error.message.contains("suction_pressure"), "{error}");
    let error = refused("[{\n\"suction_pressure\": \"118 psgi\"}]");
    assert_eq!((error.line, error.reading, error.code), (2, Some(1), code::UNKNOWN_UNIT));
    assert_eq!(error.field.as_deref(), Some("suction_pressure"));
    assert!(error.message.contains("psig") && error.to_string().contains("line 2"), "{error}");
    // A unit of another quantity, a pressure that does not say gauge or absolute, no unit at all.
    for text in ["\"80 degF\"", "\"118 psi\"", "\"8 bar\"", "\"118\"", "118"] {
        let error = refused(&format!("{{\"suction_pressure\": {text}}}"));
        assert_eq!(error.code, code::UNKNOWN_UNIT, "{text}: {error}");
    }
    let error = refused("{\"metering\": \"fixed orifice\"}");
    assert_eq!(error.code, code::UNKNOWN_CHOICE);
    assert!(error.message.contains("fixed-orifice"), "{error}");
}

#[test]
fn a_value_out_of_range_is_told_as_written_and_in_si() {
    let error = refused("{\"outdoor_dry_bulb\": \"620 degF\"}");
    assert_eq!(error.code, code::OUT_OF_RANGE);
    for part in ["620 degF", "air temperature", "213.15", "343.15", "outdoor_dry_bulb"] {
        assert!(error.to_string().contains(part), "{part}: {error}");
    }
}

#[test]
fn broken_json_names_its_line() {
    for (text, line) in [
        ("", 1),
        ("{", 1),
        ("{\"label\": \"a\"\n\"note\": \"b\"}", 2),
        ("[{},\n{},\n]", 3),
        ("{}\n{}", 2),
        ("\n7", 2),
        ("[]", 1),
        ("[{},\n7]", 2),
    ] {
        let error = refused(text);
        assert_eq!((error.line, error.code), (line, code::MALFORMED_TEXT), "{text:?}: {error}");
    }
}

#[test]
fn a_missing_field_is_not_an_error_but_a_finding_that_says_which() {
    let text = r#"{"refrigerant": "R-410A", "metering": "fixed-orifice", "outdoor_dry_bulb": "85 degF",
        "suction_pressure": "125 psig", "suction_line_temperature": "58 degF"}"#;
    let finding = diagnose(&readings_from_json(text).unwrap()[0].reading);
    assert_eq!((finding.charge, finding.reason), (Charge::NotJudged, Reason::MissingMeasurement));
    assert!(finding.missing.contains(FieldName::Numeric(Field::ReturnWetBulb), NeededFor::Verdict));
    assert!(!finding.missing.contains(FieldName::Numeric(Field::OutdoorDryBulb), NeededFor::Verdict));
    // What could be computed is there all the same.
    assert!(finding.values.superheat.is_some());
    // An out-of-range pressure for this refrigerant is a reading that cannot be judged, not an error.
    let mut reading =
        Reading { refrigerant: Some(&R410A), metering: Some(Metering::FixedOrifice), ..Reading::default() };
    reading.set(Field::SuctionPressure, 6e6).unwrap();
    assert_eq!(diagnose(&reading).reason, Reason::PressureOutsideCurve);
}
