//! Each rule with a reading that it decides, and a neighbour that it does not.

use super::*;
use crate::charge::{Action, Edition, NoValidTest, Protocol, Role, SplitCheck};
use crate::quantity::{
    Atmosphere, KELVIN_PER_FAHRENHEIT, M3_S_PER_CFM, PASCALS_PER_PSI, Pressure, WATTS_PER_TON, kelvin_from_fahrenheit,
};
use crate::reading::{Accuracy, Compressor, Field, Metering, MeteringPlace, Mode, Reading, Stage};
use crate::saturation::{R22, R407C, R410A, SaturationCurves};
use proptest::prelude::*;

/// A reading in the units of the trade: pressures in psig at sea level, temperatures in °F.
struct Build(Reading);

impl Build {
    fn set(mut self, field: Field, value: f64) -> Self {
        self.0.set(field, value).unwrap();
        self
    }
    fn psig(self, field: Field, value: f64) -> Self {
        let pressure = Pressure::from_psi_gauge(value, Atmosphere::STANDARD).unwrap();
        self.set(field, pressure.pascals())
    }
    fn f(self, field: Field, value: f64) -> Self {
        self.set(field, kelvin_from_fahrenheit(value))
    }
    fn df(self, field: Field, value: f64) -> Self {
        self.set(field, value * KELVIN_PER_FAHRENHEIT)
    }
    fn without(mut self, field: Field) -> Self {
        let full = self.0;
        let accuracy = full.accuracy;
        self.0 = Reading {
            refrigerant: full.refrigerant,
            metering: full.metering,
            metering_place: full.metering_place,
            mode: full.mode,
            compressor: full.compressor,
            stage: full.stage,
            operation: full.operation,
            refrigerant_condition: full.refrigerant_condition,
            accuracy,
            ..Reading::default()
        };
        for other in Field::ALL.iter().copied().filter(|other| *other != field) {
            if let Some(value) = full.get(other) {
                self.0.set(other, value).unwrap();
            }
        }
        self
    }
    fn superheat(self, refrigerant: &'static SaturationCurves, fahrenheit: f64) -> Self {
        let dew = refrigerant.dew_temperature(self.0.suction_pressure.unwrap()).unwrap().fahrenheit();
        self.f(Field::SuctionLineTemperature, dew + fahrenheit)
    }
    fn subcooling(self, refrigerant: &'static SaturationCurves, fahrenheit: f64) -> Self {
        let bubble = refrigerant.bubble_temperature(self.0.liquid_pressure.unwrap()).unwrap().fahrenheit();
        self.f(Field::LiquidLineTemperature, bubble - fahrenheit)
    }
    fn finding(&self) -> Finding {
        diagnose(&self.0)
    }
}

/// An orifice unit with everything measured; target superheat 15.8 °F, target split 17.3 °F.
fn orifice() -> Build {
    Build(Reading { refrigerant: Some(&R410A), metering: Some(Metering::FixedOrifice), ..Reading::default() })
        .f(Field::OutdoorDryBulb, 85.0)
        .f(Field::ReturnDryBulb, 77.0)
        .f(Field::ReturnWetBulb, 66.0)
        .f(Field::SupplyDryBulb, 77.0 - 17.5)
        .psig(Field::SuctionPressure, 125.0)
        .superheat(&R410A, 15.5)
        .psig(Field::LiquidPressure, 310.0)
        .subcooling(&R410A, 9.0)
        .set(Field::MinutesSinceChange, 20.0)
}

/// A valve unit with everything measured; the maker's subcooling is 9 °F.
fn valve() -> Build {
    Build(Reading { refrigerant: Some(&R410A), metering: Some(Metering::ThermostaticValve), ..Reading::default() })
        .f(Field::OutdoorDryBulb, 85.0)
        .f(Field::ReturnDryBulb, 77.0)
        .f(Field::ReturnWetBulb, 66.0)
        .f(Field::SupplyDryBulb, 77.0 - 17.5)
        .psig(Field::SuctionPressure, 125.0)
        .superheat(&R410A, 12.0)
        .psig(Field::LiquidPressure, 310.0)
        .subcooling(&R410A, 9.0)
        .df(Field::TargetSubcooling, 9.0)
        .set(Field::MinutesSinceChange, 20.0)
}

fn judged(build: &Build) -> (Charge, ChargeStatus, Reason) {
    let finding = build.finding();
    (finding.charge, finding.charge_status, finding.reason)
}

fn not_judged(build: &Build, reason: Reason) {
    let finding = build.finding();
    assert_eq!((finding.charge, finding.reason), (Charge::NotJudged, reason));
    assert_eq!(finding.charge_status, ChargeStatus::Provisional);
    assert!(!matches!(finding.advice, Advice::AddInSteps | Advice::Recover | Advice::LeaveCharge));
}

use ChargeStatus::{Confirmed, Provisional};
use Reason::{JudgedByDischargePressure, JudgedBySubcooling, JudgedBySuperheat};

#[test]
fn worked_examples() {
    // R-410A, 118 psig and a line at 62.0 °F: 22.2 °F at sea level and 23.3 at 5280 ft, computed with an independent
    // open library on the published equation of state.
    let sea = orifice().psig(Field::SuctionPressure, 118.0).f(Field::SuctionLineTemperature, 62.0).finding();
    assert!((sea.values.superheat.unwrap().value / KELVIN_PER_FAHRENHEIT - 22.2).abs() < 0.05);
    let mile_high = Pressure::from_psi_gauge(118.0, Atmosphere::at_altitude_m(1609.344).unwrap()).unwrap();
    let high =
        orifice().set(Field::SuctionPressure, mile_high.pascals()).f(Field::SuctionLineTemperature, 62.0).finding();
    assert!((high.values.superheat.unwrap().value / KELVIN_PER_FAHRENHEIT - 23.3).abs() < 0.05);
}

#[test]
fn superheat_on_target_with_a_split_far_above_its_own_is_airflow_first() {
    let build =
        Build(Reading { refrigerant: Some(&R410A), metering: Some(Metering::FixedOrifice), ..Reading::default() })
            .f(Field::OutdoorDryBulb, 95.0)
            .f(Field::ReturnDryBulb, 78.0)
            .f(Field::ReturnWetBulb, 65.0)
            .f(Field::SupplyDryBulb, 52.0)
            .psig(Field::SuctionPressure, 105.0)
            .f(Field::SuctionLineTemperature, 42.0);
    not_judged(&build, Reason::AirflowFirst);
    let finding = build.finding();
    let superheat = finding.values.superheat.unwrap();
    assert!((superheat.value / KELVIN_PER_FAHRENHEIT - 8.1).abs() < 0.05);
    assert!((superheat.target.unwrap() / KELVIN_PER_FAHRENHEIT - 8.1).abs() < 1e-9);
    let split = finding.values.temperature_split.unwrap();
    assert!((split.value / KELVIN_PER_FAHRENHEIT - 26.0).abs() < 1e-9);
    assert!((split.target.unwrap() / KELVIN_PER_FAHRENHEIT - 18.8).abs() < 1e-9);
    assert!(finding.cautions.contains(Caution::Freezing));
    assert_eq!(finding.next_check, NextCheck::IndoorAirflow);
    // The protocol passes it all the same; its word is kept apart.
    assert_eq!(finding.protocol.action, Action::Pass);
    assert_eq!(finding.protocol.split, SplitCheck::Above);
}

#[test]
fn an_orifice_is_judged_by_superheat() {
    assert_eq!(judged(&orifice()), (Charge::Correct, Confirmed, JudgedBySuperheat));
    // Provisional: a device that passes too little or a restriction is not ruled out.
    let low = orifice().superheat(&R410A, 26.0).subcooling(&R410A, 3.0);
    assert_eq!(judged(&low), (Charge::Low, Provisional, JudgedBySuperheat));
    let finding = low.finding();
    // Likeliest, but not so likely yet that it is acted on: the scale tells.
    assert_eq!((finding.advice, finding.next_check), (Advice::DoNotCharge, NextCheck::WeighCharge));
    assert!(finding.amount.is_some_and(|amount| amount.share > 0.05 && amount.highest > 0.1), "{:?}", finding.amount);
    assert_eq!(finding.hypotheses.first().unwrap().causes, CauseSet::one(Cause::Undercharge));
    assert!(finding.cautions.contains(Caution::SmallSteps) && finding.cautions.contains(Caution::LiquidFromCylinder));
    // A low superheat alone fits too much else to be called too much refrigerant.
    not_judged(&orifice().superheat(&R410A, 5.0), Reason::OtherCauseLikelier);
}

/// The same undercharge with a healthy reading of the same unit: now it stands, and is acted on.
#[test]
fn a_baseline_confirms_what_the_class_leaves_open() {
    let healthy = [orifice().0];
    let low = orifice().superheat(&R410A, 24.0).subcooling(&R410A, 3.5).psig(Field::SuctionPressure, 119.0);
    let low = low.psig(Field::LiquidPressure, 300.0).subcooling(&R410A, 3.5).superheat(&R410A, 26.0);
    let alone = low.finding();
    let finding = diagnose_with(&low.0, &Options { baseline: &healthy, ..Options::default() });
    let cause = Cause::Undercharge;
    assert!(finding.hypotheses.marginal(cause) > alone.hypotheses.marginal(cause));
    assert_eq!(finding.conclusion.causes, Some(CauseSet::one(cause)));
    assert_eq!((finding.charge, finding.charge_status), (Charge::Low, Confirmed));
    assert_eq!(finding.features.get(FeatureName::Subcooling).unwrap().source, Source::Baseline);
    let amount = finding.amount.unwrap();
    assert!(amount.share > 0.0 && amount.lowest <= amount.share && amount.share <= amount.highest);
}

#[test]
fn near_the_edge_of_the_band_a_verdict_is_provisional() {
    let target = orifice().finding().values.target_superheat.unwrap().value / KELVIN_PER_FAHRENHEIT;
    assert_eq!(judged(&orifice().superheat(&R410A, target + 3.0)), (Charge::Correct, Provisional, JudgedBySuperheat));
    assert_eq!(judged(&valve().subcooling(&R410A, 9.0 + 2.5)), (Charge::Correct, Provisional, JudgedBySubcooling));
    // Just beyond the band the protocol adds; the evidence cannot tell yet.
    let beyond = orifice().superheat(&R410A, target + 5.5);
    not_judged(&beyond, Reason::EvidenceTooClose);
    assert_eq!(beyond.finding().protocol.action, Action::Add);
}

#[test]
fn unknown_airflow_never_confirms() {
    for build in [orifice(), valve()] {
        let blind = build.without(Field::SupplyDryBulb);
        let finding = blind.finding();
        assert_eq!((finding.charge, finding.charge_status), (Charge::Correct, Provisional));
        assert_eq!(finding.next_check, NextCheck::MeasureAirflow);
        assert!(finding.missing.contains(FieldName::Numeric(Field::SupplyDryBulb), NeededFor::Confirmation));
        // A measured airflow does as well as a split.
        let with = |cfm_per_ton: f64| {
            let tons = 3.0;
            let build = Build(blind.0)
                .set(Field::NominalCapacity, tons * WATTS_PER_TON)
                .set(Field::AirflowOverCoil, tons * cfm_per_ton * M3_S_PER_CFM);
            let finding = build.finding();
            (finding.charge, finding.charge_status)
        };
        assert_eq!(with(400.0), (Charge::Correct, Confirmed));
        assert_eq!(with(330.0), (Charge::Correct, Provisional));
        assert_eq!(with(250.0), (Charge::NotJudged, Provisional));
    }
    // Low superheat looks the same with too little air: without the airflow it is not judged at all.
    not_judged(&orifice().superheat(&R410A, 5.0).without(Field::SupplyDryBulb), Reason::AirflowUnknown);
}

#[test]
fn a_split_below_its_band_allows_a_provisional_verdict_at_best() {
    assert_eq!(judged(&orifice().f(Field::SupplyDryBulb, 64.0)), (Charge::Correct, Provisional, JudgedBySuperheat));
}

#[test]
fn an_unsettled_unit_is_not_judged_and_an_unknown_time_never_confirms() {
    not_judged(&orifice().set(Field::MinutesSinceChange, 14.9), Reason::NotSettled);
    assert_eq!(judged(&orifice().set(Field::MinutesSinceChange, 15.0)).1, Confirmed);
    let unknown = orifice().without(Field::MinutesSinceChange);
    assert_eq!(judged(&unknown), (Charge::Correct, Provisional, JudgedBySuperheat));
    assert_eq!(unknown.finding().next_check, NextCheck::Settle);
}

#[test]
fn modes_in_which_charge_cannot_be_read() {
    let mut heating = orifice();
    heating.0.mode = Some(Mode::Heating);
    not_judged(&heating, Reason::HeatingMode);
    assert_eq!(heating.finding().values, Values::default());
    assert_eq!(heating.finding().advice, Advice::WeighIn);
    for compressor in [Compressor::TwoStage, Compressor::Variable] {
        let mut staged = valve();
        staged.0.compressor = Some(compressor);
        not_judged(&staged, Reason::NotInChargingMode);
        staged.0.stage = Some(Stage::Low);
        not_judged(&staged, Reason::NotInChargingMode);
        staged.0.stage = Some(Stage::MakerChargingMode);
        assert_eq!(staged.finding().charge, Charge::Correct);
    }
    not_judged(
        &valve().f(Field::OutdoorDryBulb, 54.0).psig(Field::LiquidPressure, 220.0).subcooling(&R410A, 9.0),
        Reason::OutdoorTooCold,
    );
}

#[test]
fn with_the_metering_device_outdoors_there_is_no_subcooling() {
    let mut build = valve();
    build.0.metering_place = Some(MeteringPlace::Outdoor);
    not_judged(&build, Reason::MeteringOutdoors);
    assert!(build.finding().values.subcooling.is_none());
    assert_eq!(build.finding().protocol.reason, Some(NoValidTest::MeteringOutdoors));
}

#[test]
fn contradictions_are_not_judged() {
    let swapped = orifice().psig(Field::SuctionPressure, 310.0).psig(Field::LiquidPressure, 125.0);
    not_judged(&swapped, Reason::PressuresContradict);
    let equal = orifice().psig(Field::SuctionPressure, 200.0).psig(Field::LiquidPressure, 200.0);
    not_judged(&equal, Reason::EqualPressures);
    not_judged(&orifice().psig(Field::DischargePressure, 290.0), Reason::PressuresContradict);
    not_judged(&orifice().f(Field::ReturnWetBulb, 78.0), Reason::AirTemperaturesContradict);
    not_judged(&orifice().f(Field::SupplyDryBulb, 77.0), Reason::AirTemperaturesContradict);
    for contradiction in [swapped, equal] {
        assert_eq!(contradiction.finding().protocol.reason, Some(NoValidTest::ReadingContradicts));
    }
    // A vapour line far below the dew temperature, a liquid line below the outdoor air.
    not_judged(&orifice().superheat(&R410A, -9.0), Reason::LineTemperatureContradicts);
    not_judged(&valve().f(Field::LiquidLineTemperature, 79.0), Reason::LineTemperatureContradicts);
    not_judged(&orifice().f(Field::SuctionLineTemperature, 105.0), Reason::LineTemperatureContradicts);
    not_judged(&valve().psig(Field::LiquidPressure, 220.0), Reason::CondensingBelowAmbient);
}

#[test]
fn a_pressure_outside_the_curve_points_to_the_refrigerant() {
    not_judged(&valve().set(Field::LiquidPressure, 5.5e6), Reason::PressureOutsideCurve);
    assert_eq!(valve().set(Field::LiquidPressure, 5.5e6).finding().next_check, NextCheck::IdentifyRefrigerant);
}

#[test]
fn a_blocked_condenser_is_never_a_low_charge() {
    // Measured on a unit with full charge: blocked coil, subcooling 0.6 °F where 9.7 is healthy, 400 psia.
    let trap = |outdoor: f64| {
        let full = valve()
            .f(Field::OutdoorDryBulb, outdoor)
            .set(Field::LiquidPressure, 400.0 * PASCALS_PER_PSI)
            .subcooling(&R410A, 0.6)
            .df(Field::TargetSubcooling, 9.7);
        full.finding()
    };
    for outdoor in [70.0, 75.0, 78.0, 82.0, 86.0] {
        let finding = trap(outdoor);
        assert_eq!((finding.charge, finding.reason), (Charge::NotJudged, Reason::CondenserAirFirst), "{outdoor}");
        assert_eq!(finding.advice, Advice::DoNotCharge);
        assert!(finding.cautions.contains(Caution::HighHead));
        assert!(finding.cautions.contains(Caution::AmountUnknown));
        assert_eq!(finding.values.subcooling.unwrap().bound, ValueBound::AtLeast);
        // The protocol says add; that is the trap.
        assert_eq!(finding.protocol.action, Action::Add);
    }
    // Without the outdoor temperature the condenser cannot be ruled out.
    let blind = valve().subcooling(&R410A, 2.0).without(Field::OutdoorDryBulb);
    not_judged(&blind, Reason::MissingMeasurement);
    assert!(blind.finding().missing.contains(FieldName::Numeric(Field::OutdoorDryBulb), NeededFor::Verdict));
    // Very high condensing temperature forbids any verdict, on an orifice too.
    not_judged(&orifice().f(Field::OutdoorDryBulb, 60.0).psig(Field::LiquidPressure, 330.0), Reason::CondenserAirFirst);
}

#[test]
fn a_valve_is_judged_by_subcooling_while_it_holds_its_superheat() {
    assert_eq!(judged(&valve()), (Charge::Correct, Confirmed, JudgedBySubcooling));
    assert_eq!(judged(&valve().subcooling(&R410A, 3.0)), (Charge::Low, Provisional, JudgedBySubcooling));
    assert_eq!(judged(&valve().subcooling(&R410A, 16.0)), (Charge::High, Provisional, JudgedBySubcooling));
    // Starved: with little liquid in front it is the charge, with much of it a restriction.
    assert_eq!(judged(&valve().superheat(&R410A, 30.0).subcooling(&R410A, 2.0)).0, Charge::Low);
    not_judged(&valve().superheat(&R410A, 30.0).subcooling(&R410A, 16.0), Reason::RestrictionSuspected);
    not_judged(&valve().superheat(&R410A, 30.0), Reason::RestrictionSuspected);
    for subcooling in [3.0, 9.0, 16.0] {
        not_judged(&valve().superheat(&R410A, 1.0).subcooling(&R410A, subcooling), Reason::MeteringOverfeeds);
    }
}

#[test]
fn without_the_suction_side_a_valve_is_correct_at_best_and_provisionally() {
    let blind = |subcooling: f64| valve().subcooling(&R410A, subcooling).without(Field::SuctionPressure);
    assert_eq!(judged(&blind(9.0)), (Charge::Correct, Provisional, JudgedBySubcooling));
    for subcooling in [3.0, 16.0] {
        not_judged(&blind(subcooling), Reason::MissingMeasurement);
        let missing = blind(subcooling).finding().missing;
        assert!(missing.contains(FieldName::Numeric(Field::SuctionPressure), NeededFor::Verdict));
    }
}

#[test]
fn an_orifice_with_conflicting_sides_is_not_judged() {
    let stacked = orifice().psig(Field::LiquidPressure, 340.0).subcooling(&R410A, 17.0);
    not_judged(&stacked.superheat(&R410A, 26.0), Reason::RestrictionSuspected);
    not_judged(&orifice().superheat(&R410A, 5.0).subcooling(&R410A, 2.0), Reason::SignsConflict);
    // On target, yet with boiling or piled-up liquid: not confirmed.
    for subcooling in [0.5, 17.0] {
        let doubtful = orifice().psig(Field::LiquidPressure, 340.0).subcooling(&R410A, subcooling);
        let finding = doubtful.finding();
        assert_eq!(finding.charge_status, Provisional);
        assert!(matches!(finding.charge, Charge::Correct | Charge::NotJudged), "{:?}", finding.charge);
    }
    // Without the liquid side a restriction is not ruled out, so "low" stays provisional.
    let blind = orifice().superheat(&R410A, 26.0).without(Field::LiquidPressure);
    assert_eq!(judged(&blind), (Charge::Low, Provisional, JudgedBySuperheat));
    assert_eq!(blind.finding().next_check, NextCheck::MeasureLiquidSide);
}

#[test]
fn a_freezing_coil_is_never_told_to_be_charged() {
    // 98 psig is about 30 °F with R-410A, 105 psig about 34 °F.
    let starved =
        |psig: f64| orifice().psig(Field::SuctionPressure, psig).superheat(&R410A, 30.0).subcooling(&R410A, 3.0);
    for psig in [98.0, 105.0] {
        not_judged(&starved(psig), Reason::CoilFreezing);
        let finding = starved(psig).finding();
        assert_eq!((finding.next_check, finding.advice), (NextCheck::ThawCoil, Advice::DoNotCharge));
        assert!(finding.cautions.contains(Caution::Freezing) && !finding.cautions.contains(Caution::SmallSteps));
    }
    assert_eq!(starved(115.0).finding().charge, Charge::Low);
    // In the margin, but above freezing, a charge that is right may be called right.
    assert_eq!(orifice().psig(Field::SuctionPressure, 105.0).superheat(&R410A, 15.5).finding().charge, Charge::Correct);
}

#[test]
fn values_at_saturation_are_one_sided() {
    let flooded = orifice().superheat(&R410A, 0.3);
    let finding = flooded.finding();
    assert!(!matches!(finding.charge, Charge::Correct | Charge::Low) && finding.advice != Advice::AddInSteps);
    assert!(finding.cautions.contains(Caution::FloodedCompressor) && finding.cautions.contains(Caution::SweatingShell));
    assert_eq!(finding.values.superheat.unwrap().bound, ValueBound::AtLeast);
    assert!(finding.cautions.contains(Caution::Floodback) && finding.cautions.contains(Caution::AmountUnknown));
    assert_eq!(orifice().finding().values.superheat.unwrap().bound, ValueBound::Exact);
    // On target by the numbers, but not to be told from liquid: target 5.6 °F at 95/64 °F.
    let small = orifice().f(Field::OutdoorDryBulb, 95.0).f(Field::ReturnWetBulb, 64.0).f(Field::SupplyDryBulb, 58.0);
    not_judged(
        &small.psig(Field::LiquidPressure, 340.0).subcooling(&R410A, 9.0).superheat(&R410A, 1.5),
        Reason::AtSaturation,
    );
}

#[test]
fn a_discharge_pressure_is_never_taken_for_a_liquid_pressure() {
    let from_discharge = |subcooling: f64| {
        let build = valve().psig(Field::LiquidPressure, 340.0).subcooling(&R410A, subcooling);
        let pressure = build.0.liquid_pressure.unwrap().pascals();
        build.without(Field::LiquidPressure).set(Field::DischargePressure, pressure)
    };
    // The true subcooling lies up to 2.5 °F below the one shown.
    let correct = from_discharge(10.0);
    assert_eq!(judged(&correct), (Charge::Correct, Provisional, JudgedByDischargePressure));
    let finding = correct.finding();
    assert!(finding.cautions.contains(Caution::DischargePressureUsed));
    let widened = finding.values.subcooling.unwrap().standard_uncertainty;
    assert!(widened > valve().finding().values.subcooling.unwrap().standard_uncertainty + 0.3);
    assert_eq!(judged(&from_discharge(3.0)).0, Charge::Low);
    assert!(!matches!(judged(&from_discharge(18.0)).0, Charge::Low | Charge::Correct));
    for in_doubt in [7.0, 13.0] {
        not_judged(&from_discharge(in_doubt), Reason::LiquidPressureNeeded);
        let missing = from_discharge(in_doubt).finding().missing;
        assert!(missing.contains(FieldName::Numeric(Field::LiquidPressure), NeededFor::Verdict));
    }
    // The protocol does not accept it at all.
    assert_eq!(finding.protocol.reason, Some(NoValidTest::MeasurementMissing));
    // A liquid pressure beside it is the one that counts.
    let both = valve().psig(Field::DischargePressure, 318.0).finding();
    assert_eq!(both.reason, JudgedBySubcooling);
    assert!(!both.cautions.contains(Caution::DischargePressureUsed));
}

#[test]
fn a_missing_field_is_named_with_its_purpose() {
    for (field, build) in [
        (Field::SuctionPressure, orifice()),
        (Field::SuctionLineTemperature, orifice()),
        (Field::OutdoorDryBulb, orifice()),
        (Field::LiquidPressure, valve()),
        (Field::LiquidLineTemperature, valve()),
    ] {
        let build = build.without(field);
        not_judged(&build, Reason::MissingMeasurement);
        assert!(build.finding().missing.contains(FieldName::Numeric(field), NeededFor::Verdict), "{field:?}");
    }
    // Where both signs of charge are measured and only what to compare them with is missing, all of it together may tell.
    for (field, build) in [(Field::ReturnWetBulb, orifice()), (Field::TargetSubcooling, valve())] {
        let finding = build.without(field).finding();
        assert!(finding.missing.contains(FieldName::Numeric(field), NeededFor::Verdict), "{field:?}");
        assert_eq!(finding.charge_status, Provisional);
        assert!(matches!(finding.reason, Reason::JudgedByEvidence | Reason::MissingMeasurement));
    }
    let mut build = orifice();
    build.0.metering = None;
    not_judged(&build, Reason::MissingMeasurement);
    assert!(build.finding().missing.contains(FieldName::Metering, NeededFor::Verdict));
    build.0.refrigerant = None;
    assert!(build.finding().missing.contains(FieldName::Refrigerant, NeededFor::Verdict));
    assert!(build.finding().cautions.contains(Caution::UnknownRefrigerant));
    // The maker's superheat stands in for the table, and then the wet bulb is not needed.
    let maker = orifice().df(Field::TargetSuperheat, 15.0).without(Field::ReturnWetBulb);
    assert_eq!(maker.finding().charge, Charge::Correct);
}

#[test]
fn a_blank_target_is_not_judged() {
    // The table has no target at 97 °F outdoors and 60 °F wet bulb.
    let build =
        orifice().f(Field::OutdoorDryBulb, 97.0).f(Field::ReturnWetBulb, 60.0).psig(Field::LiquidPressure, 350.0);
    let build = build.f(Field::SupplyDryBulb, 56.0).subcooling(&R410A, 9.0);
    not_judged(&build, Reason::NoTarget);
    let finding = build.finding();
    assert_eq!(
        (finding.protocol.action, finding.protocol.reason),
        (Action::NoValidTest, Some(NoValidTest::TargetBelowFive))
    );
    assert!(finding.values.superheat.unwrap().target.is_none());
}

#[test]
fn uncertainties_add_up_as_published() {
    // Those limits, root-sum-squared, are about 2.1 °F of superheat with R-410A and 2.8 with R-22; over √3 they are the
    // standard uncertainties.
    let superheat = |refrigerant: &'static SaturationCurves, psig: f64| {
        let mut build = orifice();
        build.0.refrigerant = Some(refrigerant);
        let finding = build.psig(Field::SuctionPressure, psig).superheat(refrigerant, 10.0).finding();
        finding.values.superheat.unwrap().standard_uncertainty / KELVIN_PER_FAHRENHEIT * 3.0_f64.sqrt()
    };
    assert!((superheat(&R410A, 118.0) - 2.1).abs() < 0.1, "{}", superheat(&R410A, 118.0));
    assert!((superheat(&R22, 69.0) - 2.8).abs() < 0.1, "{}", superheat(&R22, 69.0));
    // Better probes, smaller uncertainty.
    let mut fine = orifice();
    for field in [Field::SuctionPressure, Field::SuctionLineTemperature] {
        fine.0.accuracy[field as usize] = Some(Accuracy { absolute: 0.1, ..Accuracy::EXACT });
    }
    let expected = 0.1 / 3.0_f64.sqrt();
    assert!((fine.finding().values.superheat.unwrap().standard_uncertainty - expected).abs() < 1e-4);
}

#[test]
fn a_target_from_the_table_carries_the_error_of_the_air_temperatures() {
    let finding = orifice().finding();
    let (superheat, target) = (finding.values.superheat.unwrap(), finding.values.target_superheat.unwrap());
    // Wet bulb ±(0.066 + 1.3) °F limit, slope about 1.7; outdoor ±1.385, slope about −0.7.
    assert!(target.standard_uncertainty / KELVIN_PER_FAHRENHEIT > 1.2);
    let combined = superheat.standard_uncertainty.hypot(target.standard_uncertainty);
    assert!((superheat.deviation_uncertainty.unwrap() - combined).abs() < 1e-12);
}

#[test]
fn the_protocol_is_quoted_with_its_edition_and_role() {
    let at_edge = orifice().superheat(&R410A, 15.8 + 5.5);
    let target = at_edge.finding().values.target_superheat.unwrap().value / KELVIN_PER_FAHRENHEIT;
    let edge = orifice().superheat(&R410A, target + 5.5);
    let verdict = |role| {
        let verdict = diagnose_by(&edge.0, Protocol { edition: Edition::Ra3Of2008, role }).protocol;
        (verdict.action, verdict.edition, verdict.role)
    };
    assert_eq!(verdict(Role::Installer), (Action::Add, Edition::Ra3Of2008, Role::Installer));
    assert_eq!(verdict(Role::Verifier), (Action::Pass, Edition::Ra3Of2008, Role::Verifier));
    let default = edge.finding().protocol;
    assert_eq!((default.edition, default.role), (Edition::Ra3Of2013, Role::Installer));
}

#[test]
fn flammable_refrigerants_are_named_so() {
    let mut build = orifice();
    build.0.refrigerant = Some(&crate::saturation::R32);
    assert!(build.finding().cautions.contains(Caution::FlammableRefrigerant));
    assert!(!orifice().finding().cautions.contains(Caution::FlammableRefrigerant));
}

#[test]
fn numbers_and_names_are_unique() {
    fn check(words: impl Iterator<Item = (i32, &'static str)>) {
        let words: std::vec::Vec<_> = words.collect();
        for (index, (number, name)) in words.iter().enumerate() {
            assert!(
                name.bytes().all(|byte| byte.is_ascii_lowercase() || byte.is_ascii_digit() || b"-._".contains(&byte))
            );
            for (other_number, other_name) in &words[index + 1..] {
                assert_ne!(number, other_number);
                assert_ne!(name, other_name);
            }
        }
    }
    check(Charge::ALL.iter().map(|word| (word.number(), word.name())));
    check(Reason::ALL.iter().map(|word| (word.number(), word.name())));
    check(NextCheck::ALL.iter().map(|word| (word.number(), word.name())));
    check(Advice::ALL.iter().map(|word| (word.number(), word.name())));
    check(Caution::ALL.iter().map(|word| (word.number(), word.name())));
    check(NoValidTest::ALL.iter().map(|word| (word.number(), word.name())));
    // The cautions must fit their bit set.
    assert!(Caution::ALL.iter().all(|caution| caution.number() < 32));
    for (index, name) in ValueName::ALL.iter().enumerate() {
        assert_eq!(name.number() as usize, index);
    }
}

/// Any subset of fields with any accepted values.
fn any_reading() -> impl Strategy<Value = Reading> {
    let words = (0..4_usize, 0..4_usize, 0..3_usize, 0..3_usize, 0..4_usize, 0..4_usize);
    let fields = prop::collection::vec(prop::option::of(0.0..=1.0_f64), Field::ALL.len());
    (words, fields).prop_map(|((refrigerant, metering, place, mode, compressor, stage), fields)| {
        let mut reading = Reading {
            refrigerant: [&R410A, &R22, &R407C].get(refrigerant).copied(),
            metering: Metering::ALL.get(metering).copied(),
            metering_place: MeteringPlace::ALL.get(place).copied(),
            mode: Mode::ALL.get(mode).copied(),
            compressor: Compressor::ALL.get(compressor).copied(),
            stage: Stage::ALL.get(stage).copied(),
            ..Reading::default()
        };
        for (field, share) in Field::ALL.iter().zip(fields) {
            if let Some(share) = share {
                // Half of the time over the whole bound, half in a plausible part of it.
                let (lower, upper) = match field.bound().unit {
                    "Pa" if share > 0.3 && *field != Field::AmbientPressure => (2e5, 4e6),
                    "K" if share > 0.3 && field.bound().upper > 100.0 => (275.0, 320.0),
                    _ => (field.bound().lower, field.bound().upper),
                };
                reading.set(*field, lower + share * (upper - lower)).unwrap();
            }
        }
        reading
    })
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 4000, ..ProptestConfig::default() })]

    #[test]
    fn any_reading_gives_a_consistent_finding(reading in any_reading()) {
        let finding = diagnose(&reading);
        for name in ValueName::ALL {
            if let Some(value) = finding.values.get(*name) {
                prop_assert!(value.value.is_finite() && value.standard_uncertainty.is_finite());
                prop_assert!(value.standard_uncertainty >= 0.0);
                prop_assert_eq!(value.target.is_some(), value.deviation.is_some());
            }
        }
        for caution in [Caution::LicensedPractice, Caution::Pressure, Caution::Electricity] {
            prop_assert!(finding.cautions.contains(caution));
        }
        match finding.charge {
            Charge::NotJudged => {
                prop_assert!(matches!(finding.advice, Advice::DoNotCharge | Advice::WeighIn));
                prop_assert_eq!(finding.charge_status, Provisional);
                if finding.reason == Reason::MissingMeasurement {
                    prop_assert!(finding.missing.iter().any(|missing| missing.needed_for == NeededFor::Verdict));
                }
            }
            Charge::Low => {
                prop_assert_eq!(finding.advice, Advice::AddInSteps);
                prop_assert!(!finding.cautions.contains(Caution::Freezing) && !finding.cautions.contains(Caution::HighHead));
            }
            _ => prop_assert!(!finding.cautions.contains(Caution::SmallSteps)),
        }
        prop_assert_eq!(finding.protocol.action == Action::NoValidTest, finding.protocol.reason.is_some());
    }
}

/// Nothing of a finding that stood there before shows through: each demo reading over each other one's finding.
#[test]
fn a_finding_written_over_another_is_as_a_fresh_one() {
    let readings = [
        Reading::default(),
        orifice().0,
        valve().0,
        Reading { mode: Some(Mode::Heating), ..valve().0 },
        valve().without(Field::LiquidPressure).0,
    ];
    for first in &readings {
        for second in &readings {
            let mut finding = diagnose(first);
            let (options, mut diagnosis) = (Options::default(), Diagnosis::begin(first, &Options::default()));
            diagnosis.begin_anew(second, &options);
            diagnosis.finish_onto(&mut finding, second, &options);
            assert_eq!(finding, diagnose(second));
        }
    }
}
