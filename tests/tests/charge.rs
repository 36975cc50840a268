//! Targets and the protocol's verdict, from outside the library.

use satline::charge::{
    Action, Edition, NoValidTest, Protocol, ProtocolVerdict, Role, SplitCheck, Target, target_split, target_superheat,
};
use satline::quantity::{AirTemperature, KELVIN_PER_FAHRENHEIT};
use satline::reading::{Field, Metering, Mode, Reading, Stage};
use satline::saturation::R410A;
use satline::text::readings_from_json;

fn air(fahrenheit: f64) -> AirTemperature {
    AirTemperature::from_fahrenheit(fahrenheit).unwrap()
}

fn reading(text: &str) -> Reading {
    readings_from_json(text).unwrap()[0].reading
}

/// An orifice unit whose superheat stands off its target by so many °F.
fn orifice(deviation_f: f64) -> Reading {
    let mut reading = reading(
        r#"{"refrigerant": "R-410A", "metering": "fixed-orifice", "outdoor_dry_bulb": "85 degF",
            "return_dry_bulb": "77 degF", "return_wet_bulb": "66 degF", "suction_pressure": "125 psig"}"#,
    );
    let target = target_superheat(air(66.0), air(85.0)).difference().unwrap().kelvin();
    let dew = R410A.dew_temperature(reading.suction_pressure.unwrap()).unwrap().kelvin();
    reading.set(Field::SuctionLineTemperature, dew + target + deviation_f * KELVIN_PER_FAHRENHEIT).unwrap();
    reading
}

/// A valve unit with a superheat, and a subcooling that stands off the maker's 9 °F by so many °F.
fn valve(superheat_f: f64, deviation_f: f64) -> Reading {
    let mut reading = reading(
        r#"{"refrigerant": "R-410A", "metering": "thermostatic-valve", "outdoor_dry_bulb": "85 degF",
            "return_dry_bulb": "77 degF", "suction_pressure": "125 psig", "liquid_pressure": "310 psig",
            "target_subcooling": "9 degF"}"#,
    );
    let dew = R410A.dew_temperature(reading.suction_pressure.unwrap()).unwrap().kelvin();
    let bubble = R410A.bubble_temperature(reading.liquid_pressure.unwrap()).unwrap().kelvin();
    reading.set(Field::SuctionLineTemperature, dew + superheat_f * KELVIN_PER_FAHRENHEIT).unwrap();
    reading.set(Field::LiquidLineTemperature, bubble - (9.0 + deviation_f) * KELVIN_PER_FAHRENHEIT).unwrap();
    reading
}

fn verdict(reading: &Reading, role: Role) -> ProtocolVerdict {
    Protocol { edition: Edition::Ra3Of2013, role }.verdict(reading)
}

#[test]
fn tolerances_decide_and_their_edges_pass() {
    for (role, superheat, subcooling) in [(Role::Installer, 5.0, 3.0), (Role::Verifier, 6.0, 4.0)] {
        let by_superheat = |deviation| verdict(&orifice(deviation), role).action;
        assert_eq!(by_superheat(superheat), Action::Pass);
        assert_eq!(by_superheat(-superheat), Action::Pass);
        assert_eq!(by_superheat(superheat + 0.01), Action::Add);
        assert_eq!(by_superheat(-superheat - 0.01), Action::Remove);
        let by_subcooling = |deviation| verdict(&valve(12.0, deviation), role).action;
        assert_eq!(by_subcooling(subcooling), Action::Pass);
        assert_eq!(by_subcooling(-subcooling), Action::Pass);
        assert_eq!(by_subcooling(subcooling + 0.01), Action::Remove);
        assert_eq!(by_subcooling(-subcooling - 0.01), Action::Add);
    }
}

#[test]
fn a_valve_must_hold_its_superheat() {
    for (role, lowest, highest) in [(Role::Installer, 4.0, 25.0), (Role::Verifier, 3.0, 26.0)] {
        for inside in [lowest, 12.0, highest] {
            assert_eq!(verdict(&valve(inside, 0.0), role).action, Action::Pass);
        }
        for outside in [lowest - 0.01, highest + 0.01] {
            assert_eq!(verdict(&valve(outside, 0.0), role).reason, Some(NoValidTest::ValveOutOfControl));
        }
    }
    // The maker's figure, where there is one, moves the range.
    let mut maker = valve(27.0, 0.0);
    assert_eq!(verdict(&maker, Role::Installer).action, Action::NoValidTest);
    maker.set(Field::TargetSuperheat, 24.0 * KELVIN_PER_FAHRENHEIT).unwrap();
    assert_eq!(verdict(&maker, Role::Installer).action, Action::Pass);
}

#[test]
fn without_its_conditions_there_is_no_valid_test() {
    let with = |field: Field, value: f64| {
        let mut reading = orifice(0.0);
        reading.set(field, value).unwrap();
        verdict(&reading, Role::Installer)
    };
    let kelvin = |fahrenheit: f64| air(fahrenheit).kelvin();
    assert_eq!(with(Field::OutdoorDryBulb, kelvin(54.9)).reason, Some(NoValidTest::OutdoorTooCold));
    assert_eq!(with(Field::OutdoorDryBulb, kelvin(116.0)).reason, Some(NoValidTest::OutdoorTooHot));
    assert_eq!(with(Field::ReturnDryBulb, kelvin(69.9)).reason, Some(NoValidTest::ReturnTooCold));
    assert_eq!(with(Field::ReturnWetBulb, kelvin(60.0)).reason, Some(NoValidTest::TargetBelowFive));
    assert_eq!(with(Field::ReturnWetBulb, kelvin(76.5)).reason, Some(NoValidTest::WetBulbTooHigh));
    assert_eq!(with(Field::MinutesSinceChange, 10.0).reason, Some(NoValidTest::NotSettled));
    assert_eq!(with(Field::MinutesSinceChange, 15.0).action, Action::Pass);
    assert_eq!(with(Field::LiquidPressure, 200e3).reason, Some(NoValidTest::ReadingContradicts));
    let mut reading = orifice(0.0);
    reading.mode = Some(Mode::Heating);
    assert_eq!(verdict(&reading, Role::Installer).reason, Some(NoValidTest::HeatingMode));
    reading.mode = None;
    reading.stage = Some(Stage::Low);
    assert_eq!(verdict(&reading, Role::Installer).reason, Some(NoValidTest::NotAtFullCapacity));
    let mut reading = valve(12.0, 0.0);
    reading.target_subcooling = None;
    assert_eq!(verdict(&reading, Role::Installer).reason, Some(NoValidTest::MakerTargetMissing));
    for missing in 0..3 {
        let mut reading = orifice(0.0);
        match missing {
            0 => reading.return_dry_bulb = None,
            1 => reading.return_wet_bulb = None,
            _ => reading.suction_line_temperature = None,
        }
        assert_eq!(verdict(&reading, Role::Installer).reason, Some(NoValidTest::MeasurementMissing));
    }
}

#[test]
fn the_split_is_checked_within_its_tolerance() {
    let target = target_split(air(77.0), air(66.0)).difference().unwrap().fahrenheit();
    let check = |deviation: f64, role: Role| {
        let mut reading = orifice(0.0);
        reading.set(Field::SupplyDryBulb, air(77.0 - target - deviation).kelvin()).unwrap();
        verdict(&reading, role).split
    };
    assert_eq!(check(0.0, Role::Installer), SplitCheck::Within);
    assert_eq!(check(3.01, Role::Installer), SplitCheck::Above);
    assert_eq!(check(3.01, Role::Verifier), SplitCheck::Within);
    assert_eq!(check(-3.01, Role::Installer), SplitCheck::Below);
    assert_eq!(check(4.01, Role::Verifier), SplitCheck::Above);
    assert_eq!(verdict(&orifice(0.0), Role::Installer).split, SplitCheck::NotTested);
}

#[test]
fn a_common_summer_point() {
    // The tables' own cells at 95 °F outdoors, return 78/65 °F (from memory): 8.1 and 18.8 °F.
    assert!((target_superheat(air(65.0), air(95.0)).difference().unwrap().fahrenheit() - 8.1).abs() < 1e-9);
    assert!((target_split(air(78.0), air(65.0)).difference().unwrap().fahrenheit() - 18.8).abs() < 1e-9);
}

#[test]
fn no_answer_lies_where_the_table_is_blank() {
    // Along every half degree: an answer is never below 5 °F, and where one grid line is blank there is none.
    let mut answers = 0;
    for outdoor in (110..=232).map(|half| f64::from(half) / 2.0) {
        for wet_bulb in (98..=154).map(|half| f64::from(half) / 2.0) {
            let at = |wet: f64, out: f64| target_superheat(air(wet), air(out));
            let corners = [
                at(wet_bulb.floor(), outdoor.floor()),
                at(wet_bulb.ceil(), outdoor.floor()),
                at(wet_bulb.floor(), outdoor.ceil()),
                at(wet_bulb.ceil(), outdoor.ceil()),
            ];
            match at(wet_bulb, outdoor) {
                Target::At(target) => {
                    assert!(target.fahrenheit() >= 5.0 - 1e-9);
                    let sum: f64 = corners.iter().map(|corner| corner.difference().unwrap().fahrenheit()).sum();
                    assert!((target.fahrenheit() - sum / 4.0).abs() < 1e-9);
                    answers += 1;
                }
                Target::NoValidTest(_) => {
                    assert!(corners.iter().any(|corner| corner.difference().is_none()), "{outdoor} {wet_bulb}");
                }
            }
        }
    }
    assert!(answers > 3000, "{answers}");
}

#[test]
fn an_electronic_valve_is_tested_like_a_thermostatic_one() {
    let mut electronic = valve(12.0, -5.0);
    electronic.metering = Some(Metering::ElectronicValve);
    assert_eq!(verdict(&electronic, Role::Installer).action, Action::Add);
}
