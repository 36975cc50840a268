//! A measured trap: a valve unit with all its charge whose outdoor coil is blocked showed 0.6 °F of subcooling where 9.7 °F
//! is healthy, at 400 psia in the discharge (NIST, a valve unit with R-410A). It looks like a lack of refrigerant, and adding any would hurt.
//! The other measurements are demo.

use proptest::prelude::*;
use satline::diagnosis::{Advice, NextCheck};
use satline::quantity::{PASCALS_PER_PSI, Temperature};
use satline::reading::{Field, Metering, Reading};
use satline::saturation::R410A;
use satline_tests::guard::by_hand::{ByHand, keeping};
use satline_tests::guard::pool::any_fields;
use satline_tests::guard::{cases, rules::violated};

/// What was measured, and what says of which unit; these stay.
const KEPT: [Field; 4] =
    [Field::SuctionPressure, Field::SuctionLineTemperature, Field::LiquidPressure, Field::LiquidLineTemperature];

/// The air over the coil that leaves `rise` °F warmer, suction psig and superheat °F, the air outdoors °F.
fn trap(outdoor: f64, rise: f64, suction: f64, superheat: f64) -> ByHand {
    ByHand::of(&R410A, Metering::ThermostaticValve)
        .air(outdoor, 78.0, 66.0, 60.0)
        .cfm(1200.0)
        .f(Field::CondenserLeavingDryBulb, outdoor + rise)
        .psig(Field::SuctionPressure, suction)
        .superheat(superheat)
        .set(Field::LiquidPressure, 400.0 * PASCALS_PER_PSI)
        .subcooling(0.6)
        .df(Field::TargetSubcooling, 9.7)
}

/// The same unit with a clean coil, which condenses so many °F over the air.
fn clean(outdoor: f64, over: f64) -> Reading {
    let condensing = Temperature::from_fahrenheit(outdoor + over).unwrap();
    trap(outdoor, 18.0, 130.0, 10.0)
        .set(Field::LiquidPressure, R410A.bubble_pressure(condensing).unwrap().pascals())
        .subcooling(9.7)
        .0
}

fn never_adds(reading: &ByHand, baseline: &[Reading]) -> Result<(), TestCaseError> {
    let finding = reading.finding_beside(baseline);
    prop_assert!(finding.advice != Advice::AddInSteps, "{:?} {:?}", finding.charge, finding.hypotheses.first());
    let violated = violated(&reading.0, &finding);
    prop_assert!(violated.is_empty(), "{violated:?}");
    Ok(())
}

#[test]
fn at_eighty_five_the_outdoor_coil_comes_first() {
    let finding = trap(85.0, 27.0, 132.0, 10.0).finding();
    assert_eq!((finding.next_check, finding.advice), (NextCheck::CondenserAir, Advice::DoNotCharge));
}

/// On a hot day such a head is not high any more, and a blocked coil is told from a lack of refrigerant by the air that
/// leaves it, or by the unit's own past: without either, nothing is added.
#[test]
fn at_ninety_five_the_outdoor_coil_is_looked_at_first() {
    let reading = trap(95.0, 27.0, 132.0, 10.0).without(Field::CondenserLeavingDryBulb);
    let finding = reading.finding();
    assert_eq!((finding.next_check, finding.advice), (NextCheck::MeasureCondenserAir, Advice::DoNotCharge));
}

proptest! {
    #![proptest_config(cases(1500))]

    #[test]
    fn never_add_to_the_trap(
        outdoor in 75.0..105.0_f64,
        rise in 24.0..34.0_f64,
        suction in 124.0..140.0_f64,
        superheat in 5.0..18.0_f64,
        cleaner in 4.0..16.0_f64,
        kept in any_fields(),
    ) {
        let whole = trap(outdoor, rise, suction, superheat);
        let reading = ByHand(keeping(&whole.0, |field| KEPT.contains(&field) || kept[field as usize]));
        never_adds(&reading, &[])?;
        // A clean coil condenses lower than the blocked one.
        let blocked = R410A.bubble_temperature(whole.0.liquid_pressure.unwrap()).unwrap().fahrenheit() - outdoor;
        let over = (blocked - cleaner).max(2.0);
        for day in [outdoor, 82.0, 95.0] {
            never_adds(&reading, &[clean(day, over)])?;
        }
    }
}
