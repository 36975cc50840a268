//! When refrigerant is not added, and how it is when it is: a reading for each rule, in °F and psig, all of them demo. That
//! the rules hold of any reading is held in `guardrails.rs`.

use satline::diagnosis::{
    Advice, Cause, Caution, Charge, ChargeStatus, ConclusionReason, Finding, NextCheck, PreconditionName,
    PreconditionStatus, Reason, ValueBound,
};
use satline::quantity::KELVIN_PER_FAHRENHEIT;
use satline::reading::{Compressor, Field, Metering, Operation, Reading, RefrigerantCondition, Stage};
use satline::saturation::{R22, R32, R410A};
use satline::text::{Units, finding_to_words};
use satline_tests::guard::by_hand::ByHand;
use satline_tests::guard::pool::pool;
use satline_tests::guard::rules::violated;
use satline_tests::trial::engine::Engine;

/// A valve unit with too little in it; the maker's subcooling is 9 °F, and air leaves the outdoor coil 13 °F warmer than it
/// came.
fn short_valve() -> ByHand {
    ByHand::of(&R410A, Metering::ThermostaticValve)
        .air(85.0, 77.0, 66.0, 61.0)
        .cfm(1200.0)
        .f(Field::CondenserLeavingDryBulb, 98.0)
        .psig(Field::SuctionPressure, 118.0)
        .superheat(16.0)
        .psig(Field::LiquidPressure, 290.0)
        .subcooling(2.0)
        .df(Field::TargetSubcooling, 9.0)
}

/// An orifice unit with too little in it; the table's target superheat is 15.5 °F.
fn short_orifice() -> ByHand {
    ByHand::of(&R410A, Metering::FixedOrifice)
        .air(85.0, 77.0, 66.0, 61.0)
        .cfm(1200.0)
        .f(Field::CondenserLeavingDryBulb, 98.0)
        .psig(Field::SuctionPressure, 116.0)
        .superheat(28.0)
        .psig(Field::LiquidPressure, 290.0)
        .subcooling(3.0)
}

fn adds(finding: &Finding) -> bool {
    finding.advice == Advice::AddInSteps
}

fn refuses(reading: &ByHand, reason: Reason) -> Finding {
    let finding = reading.finding();
    assert_eq!((finding.charge, finding.reason), (Charge::NotJudged, reason), "{:?}", finding.advice);
    assert!(matches!(finding.advice, Advice::DoNotCharge | Advice::WeighIn));
    assert!(violated(&reading.0, &finding).is_empty(), "{:?}", violated(&reading.0, &finding));
    finding
}

/// What is refused below is refused for its own reason: as they stand, both are told to add.
#[test]
fn what_is_short_is_told_to_add_in_small_steps() {
    for reading in [short_valve(), short_orifice()] {
        let finding = reading.finding();
        assert!(
            adds(&finding) && finding.charge == Charge::Low,
            "{:?} {:?}",
            finding.reason,
            finding.hypotheses.first()
        );
        let amount = finding.amount.unwrap();
        assert!(0.0 < amount.lowest && amount.lowest < amount.share && amount.share < amount.highest);
        // Subcooling cannot be told from zero, so what is missing is at least this.
        assert_eq!(finding.values.subcooling.unwrap().bound, amount.bound);
        for caution in [Caution::SmallSteps, Caution::LiquidFromCylinder] {
            assert!(finding.cautions.contains(caution), "{caution:?}");
        }
        let words = finding_to_words("", &reading.0, &finding, Units::Ip);
        let work = words.lines().find(|line| line.contains("Charge work")).unwrap();
        for needed in [
            "Once the leak is found",
            "at most 5 % at a time",
            "fifteen minutes after each",
            "a blend as liquid, metered",
        ] {
            assert!(work.contains(needed), "{work}");
        }
        assert_eq!(work.contains("add at least"), amount.bound == ValueBound::AtLeast, "{work}");
        assert!(violated(&reading.0, &finding).is_empty());
    }
    assert!((satline::diagnosis::LARGEST_STEP_SHARE - 0.05).abs() < 1e-12);
}

/// A pure refrigerant leaves the cylinder as it likes.
#[test]
fn only_a_blend_must_leave_its_cylinder_as_liquid() {
    let reading = ByHand::of(&R22, Metering::FixedOrifice)
        .air(85.0, 77.0, 66.0, 61.0)
        .cfm(1200.0)
        .f(Field::CondenserLeavingDryBulb, 98.0)
        .psig(Field::SuctionPressure, 66.0)
        .superheat(30.0)
        .psig(Field::LiquidPressure, 177.0)
        .subcooling(3.0);
    let finding = reading.finding();
    assert!(adds(&finding), "{:?} {:?}", finding.reason, finding.hypotheses.first());
    assert!(!finding.cautions.contains(Caution::LiquidFromCylinder));
}

/// Nothing in the pool of simulated readings is told so seldom that the properties would hold of nothing.
#[test]
fn the_pool_is_told_to_add_and_to_remove() {
    let told = |advice: Advice| pool().iter().filter(|row| Engine::finding(row, false).advice == advice).count();
    let (adds, recovers) = (told(Advice::AddInSteps), told(Advice::Recover));
    assert!(adds > 20 && recovers > 20, "{adds} {recovers} of {}", pool().len());
}

#[test]
fn not_while_superheat_is_near_zero() {
    for reading in [short_valve(), short_orifice()] {
        for superheat in [-0.5, 0.0, 1.0, 1.9] {
            let finding = reading.superheat(superheat).finding();
            assert!(!adds(&finding) && finding.charge != Charge::Low, "{superheat}: {:?}", finding.reason);
        }
    }
    // A valve that passes too much is not in control.
    refuses(&short_valve().superheat(1.0), Reason::MeteringOverfeeds);
}

#[test]
fn not_while_the_head_is_high() {
    for reading in [short_valve(), short_orifice()] {
        for over in [26.0, 30.0, 45.0] {
            let condensing = satline::quantity::Temperature::from_fahrenheit(85.0 + over).unwrap();
            let pascals = R410A.bubble_pressure(condensing).unwrap().pascals();
            let finding =
                refuses(&reading.set(Field::LiquidPressure, pascals).subcooling(1.0), Reason::CondenserAirFirst);
            assert_eq!((finding.next_check, finding.advice), (NextCheck::CondenserAir, Advice::DoNotCharge));
            assert!(finding.cautions.contains(Caution::HighHead));
        }
        // Nor while nobody knows what it stands over.
        assert!(!adds(&reading.without(Field::OutdoorDryBulb).finding()));
    }
}

/// Superheat far above its target and nothing else: the table's rule would add, and a restriction, little air and a starving
/// device would show the same.
#[test]
fn not_on_superheat_alone() {
    let alone = ByHand::of(&R410A, Metering::FixedOrifice)
        .f(Field::OutdoorDryBulb, 85.0)
        .f(Field::ReturnDryBulb, 77.0)
        .f(Field::ReturnWetBulb, 66.0)
        .psig(Field::SuctionPressure, 116.0)
        .superheat(32.0);
    let finding = alone.finding();
    assert!(finding.hypotheses.is_empty() && finding.protocol.action == satline::charge::Action::Add);
    assert_eq!((finding.advice, finding.charge_status), (Advice::DoNotCharge, ChargeStatus::Provisional));
    assert!(finding.next_check != NextCheck::FindLeak && finding.next_check != NextCheck::None);
}

#[test]
fn not_past_what_it_should_hold() {
    for reading in [short_valve(), short_orifice()] {
        let weighed = |share: f64| reading.set(Field::ExpectedCharge, 3.0).set(Field::WeighedCharge, 3.0 * share);
        for share in [1.031, 1.1, 1.5] {
            assert!(!adds(&weighed(share).finding()), "{share}");
        }
        assert!(adds(&weighed(0.85).finding()));
    }
    refuses(
        &short_valve().set(Field::ExpectedCharge, 3.0).set(Field::WeighedCharge, 3.12),
        Reason::ChargeAlreadyWeighed,
    );
}

#[test]
fn not_below_the_pressure_of_the_air() {
    // 4 psi below the air, of a refrigerant that boils far above it: a hose, or an empty circuit.
    refuses(&short_orifice().suction(-4.0, 60.0), Reason::HoseNotSeated);
    // A vacuum that no hose explains.
    let finding = refuses(&short_orifice().suction(-8.0, 60.0), Reason::SuctionBelowAtmosphere);
    assert!(finding.cautions.contains(Caution::SuctionBelowAtmosphere));
}

#[test]
fn not_without_a_refrigerant_that_is_what_its_label_says() {
    for reading in [short_valve(), short_orifice()] {
        for condition in [RefrigerantCondition::Unknown, RefrigerantCondition::Mixed, RefrigerantCondition::LeakShifted]
        {
            let doubtful = ByHand(Reading { refrigerant_condition: Some(condition), ..reading.0 });
            let finding = refuses(&doubtful, Reason::RefrigerantInDoubt);
            assert_eq!(finding.preconditions.status(PreconditionName::Refrigerant), PreconditionStatus::NotMet);
        }
        let unnamed = ByHand(Reading { refrigerant: None, ..reading.0 });
        let finding = refuses(&unnamed, Reason::MissingMeasurement);
        assert!(finding.cautions.contains(Caution::UnknownRefrigerant));
        assert!(finding.missing.iter().any(|missing| missing.field.name() == "refrigerant"));
    }
}

/// Ice on the coil: too little air does that, and too little refrigerant does it too. Whichever it is, the coil is thawed
/// and the air looked at first.
#[test]
fn not_on_a_coil_that_freezes() {
    // 98 psig of R-410A is 30 °F.
    for reading in [short_valve(), short_orifice()] {
        let finding = refuses(&reading.psig(Field::SuctionPressure, 98.0).superheat(24.0), Reason::CoilFreezing);
        assert_eq!(finding.next_check, NextCheck::ThawCoil);
        let check = finding.next_check.sentence();
        assert!(check.contains("blower alone until the coil is clear") && check.contains("airflow"), "{check}");
        let why = finding.reason.sentence();
        assert!(why.contains("too little air") && why.contains("too little refrigerant"), "{why}");
        assert!(finding.cautions.contains(Caution::Freezing));
        // Nor within what a gauge is sure of.
        refuses(&reading.psig(Field::SuctionPressure, 103.0).superheat(24.0), Reason::CoilFreezing);
    }
}

#[test]
fn not_while_it_does_something_else() {
    for reading in [short_valve(), short_orifice()] {
        for operation in
            [Operation::PullDown, Operation::Defrost, Operation::FanCycling, Operation::HeadPressureControl]
        {
            let finding =
                refuses(&ByHand(Reading { operation: Some(operation), ..reading.0 }), Reason::OperationUnsteady);
            assert_eq!(finding.conclusion.reason, ConclusionReason::PreconditionNotMet);
            assert_eq!(finding.preconditions.status(PreconditionName::Operation), PreconditionStatus::NotMet);
        }
        // A warm house is still being pulled down, whatever is said of it.
        let finding = reading.f(Field::ReturnDryBulb, 84.0).f(Field::ReturnWetBulb, 69.0).finding();
        assert!(!adds(&finding) && finding.charge == Charge::NotJudged, "{:?}", finding.reason);
        assert_eq!(finding.preconditions.status(PreconditionName::IndoorAir), PreconditionStatus::NotMet);
        refuses(&reading.set(Field::MinutesSinceChange, 5.0), Reason::NotSettled);
    }
}

/// Outside the maker's charging mode nothing is judged by superheat or subcooling: the charge is weighed in.
#[test]
fn a_staged_unit_outside_its_charging_mode_is_weighed_in() {
    for reading in [short_valve(), short_orifice()] {
        for compressor in [Compressor::TwoStage, Compressor::Variable] {
            for stage in [None, Some(Stage::Low), Some(Stage::High)] {
                let staged = ByHand(Reading { compressor: Some(compressor), stage, ..reading.0 });
                let finding = refuses(&staged, Reason::NotInChargingMode);
                assert_eq!((finding.advice, finding.next_check), (Advice::WeighIn, NextCheck::ChargingMode));
                assert!(finding.hypotheses.is_empty());
                assert_eq!(finding.protocol.action, satline::charge::Action::NoValidTest);
            }
            let held = Reading { compressor: Some(compressor), stage: Some(Stage::MakerChargingMode), ..reading.0 };
            assert!(adds(&ByHand(held).finding()));
        }
    }
}

/// Each other fault as a technician would meet it, where a lack of refrigerant is what it looks like at first.
#[test]
fn not_while_something_else_is_likelier() {
    // Starved behind a restriction: much superheat, and liquid piled up in front of it, 9 °F colder behind the drier.
    let restricted = short_orifice()
        .psig(Field::SuctionPressure, 112.0)
        .superheat(30.0)
        .psig(Field::LiquidPressure, 300.0)
        .subcooling(13.0);
    let line = restricted.0.liquid_line_temperature.unwrap().fahrenheit();
    let restricted = restricted.f(Field::MeteringInletTemperature, line - 9.0);
    // Little air over the indoor coil: little superheat, a large split.
    let airless = short_orifice().superheat(5.0).f(Field::SupplyDryBulb, 52.0).cfm(800.0);
    // A valve that starves: superheat of 30 °F, subcooling piled up.
    let starved = short_valve().superheat(30.0).psig(Field::LiquidPressure, 300.0).subcooling(12.0);
    // A blocked outdoor coil.
    let blocked =
        short_valve().psig(Field::LiquidPressure, 380.0).subcooling(1.0).f(Field::CondenserLeavingDryBulb, 112.0);
    for (reading, cause) in [
        (restricted, Cause::LiquidLineRestriction),
        (airless, Cause::LowIndoorAirflow),
        (starved, Cause::MeteringUnderfeeding),
        (blocked, Cause::RestrictedCondenserAir),
    ] {
        let finding = reading.finding();
        assert!(!adds(&finding) && finding.charge == Charge::NotJudged, "{cause:?} {:?}", finding.charge);
        let likely = |cause| finding.hypotheses.marginal(cause);
        assert!(likely(cause) > likely(Cause::Undercharge), "{cause:?} {:?}", finding.hypotheses.first());
    }
}

/// An orifice whose superheat is on target, with nothing said of its airflow: little air and a lack of refrigerant may hide
/// each other there.
#[test]
fn superheat_alone_never_confirms_an_orifice() {
    let on_target = short_orifice().psig(Field::SuctionPressure, 125.0).superheat(15.5);
    let blind = on_target
        .without(Field::SupplyDryBulb)
        .without(Field::AirflowOverCoil)
        .without(Field::LiquidPressure)
        .without(Field::LiquidLineTemperature);
    let finding = blind.finding();
    assert!(finding.values.superheat.unwrap().deviation.unwrap().abs() < KELVIN_PER_FAHRENHEIT);
    assert!(
        finding.charge == Charge::NotJudged || finding.charge_status == ChargeStatus::Provisional,
        "{:?} {:?}",
        finding.charge,
        finding.charge_status
    );
    assert!(matches!(finding.next_check, NextCheck::MeasureAirflow), "{:?}", finding.next_check);
    // Not even with its liquid side.
    let seen = on_target.without(Field::SupplyDryBulb).without(Field::AirflowOverCoil);
    assert_eq!(seen.finding().charge_status, ChargeStatus::Provisional);
}

/// A lack of something that burns: air first, before any other advice, in both systems of units.
#[test]
fn a_leak_that_may_burn_comes_first() {
    let short = ByHand::of(&R32, Metering::ThermostaticValve)
        .air(85.0, 77.0, 66.0, 61.0)
        .cfm(1200.0)
        .f(Field::CondenserLeavingDryBulb, 98.0)
        .psig(Field::SuctionPressure, 121.0)
        .superheat(16.0)
        .psig(Field::LiquidPressure, 298.0)
        .subcooling(2.0)
        .df(Field::TargetSubcooling, 9.0);
    let all = satline::refrigerant::ALL.iter().filter(|record| record.identity().safety_class.is_flammable());
    let mut tried = Vec::new();
    for record in all {
        // The same saturation temperatures in another refrigerant.
        let curves = record.curves;
        let moved = |pressure: Option<satline::quantity::Pressure>, dew: bool| {
            let pressure = pressure.unwrap();
            let kelvin = if dew { R32.dew_temperature(pressure) } else { R32.bubble_temperature(pressure) }.unwrap();
            if dew { curves.dew_pressure(kelvin) } else { curves.bubble_pressure(kelvin) }
        };
        let (Ok(low), Ok(high)) = (moved(short.0.suction_pressure, true), moved(short.0.liquid_pressure, false)) else {
            continue;
        };
        let other = ByHand(Reading { refrigerant: Some(curves), ..short.0 })
            .set(Field::SuctionPressure, low.pascals())
            .set(Field::LiquidPressure, high.pascals());
        let finding = other.finding();
        let likely = finding.hypotheses.marginal(Cause::Undercharge) > 0.5;
        if !likely {
            continue;
        }
        tried.push(record.identity().designation);
        assert!(finding.cautions.contains(Caution::FlammableLeak), "{}", record.identity().designation);
        for units in [Units::Ip, Units::Si] {
            let words = finding_to_words("Demo", &other.0, &finding, units);
            let first = words.lines().nth(1).unwrap();
            assert!(first.contains("ventilate") && first.contains("source of ignition"), "{words}");
        }
    }
    assert!(tried.len() >= 10, "{tried:?}");
    assert!(["R-32", "R-454B", "R-290"].iter().all(|name| tried.contains(name)), "{tried:?}");
    // So does a circuit that has lost all of it: 0 psig on the gauge.
    let empty = short.suction(0.0, 80.0).liquid(0.0, 85.0);
    assert!(refuses(&empty, Reason::HoseNotSeated).cautions.contains(Caution::FlammableLeak));
    // And nothing that does not burn.
    assert!(!short_valve().finding().cautions.contains(Caution::FlammableLeak));
}
