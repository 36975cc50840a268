//! Airflow by static pressure and return leakage: by hand, by the fan laws (dimensional analysis; the same in any handbook
//! on fans), and by what must hold.

use approx::assert_relative_eq;
use satline::Error;
use satline::quantity::M3_S_PER_CFM;
use satline::uncertain::Uncertain;
use satline::visit::airflow::{
    AirflowCaution, BlowerTable, FanPoint, LimitOutcome, airflow_by_plenum_pressure, fan_at_speed, resistance,
    return_leakage, watts_per_airflow,
};
use satline::visit::grid::{GridGap, Lookup};

fn known(value: f64, standard_uncertainty: f64) -> Uncertain {
    Uncertain::new(value, standard_uncertainty).unwrap()
}

fn exact(value: f64) -> Uncertain {
    Uncertain::exact(value)
}

fn quantity<T: std::fmt::Debug>(answer: Result<T, Error>) -> &'static str {
    match answer {
        Err(
            Error::OutOfRange { quantity, .. }
            | Error::NotFinite { quantity, .. }
            | Error::NotAvailable { quantity, .. },
        ) => quantity,
        other => panic!("{other:?}"),
    }
}

#[test]
fn plenum_matching_by_hand() {
    // Four times the pressure, twice the air.
    let found = airflow_by_plenum_pressure(exact(0.3), exact(80.0), exact(20.0)).unwrap();
    assert_relative_eq!(found.value, 0.6, max_relative = 1e-15);
    // Shares by hand: of the flow as it is, of each pressure half its relative uncertainty.
    let found = airflow_by_plenum_pressure(known(0.5, 0.01), known(40.0, 0.8), known(32.0, 0.8)).unwrap();
    let relative = (0.02_f64.powi(2) + (0.5 * 0.02_f64).powi(2) + (0.5 * 0.025_f64).powi(2)).sqrt();
    assert_relative_eq!(found.standard_uncertainty / found.value, relative, max_relative = 1e-3);
    assert_eq!(
        quantity(airflow_by_plenum_pressure(exact(0.3), exact(0.0), exact(20.0))),
        "static pressure difference of air"
    );
    assert_eq!(
        quantity(airflow_by_plenum_pressure(exact(0.3), exact(20.0), exact(-5.0))),
        "static pressure difference of air"
    );
    assert_eq!(quantity(airflow_by_plenum_pressure(exact(600.0), exact(20.0), exact(20.0))), "airflow");
}

#[test]
fn fan_laws_by_hand() {
    let now = FanPoint { airflow_m3_s: exact(0.6), pressure_pa: exact(150.0), power_w: exact(450.0) };
    let then = fan_at_speed(&now, exact(1.1), exact(0.9)).unwrap();
    assert_relative_eq!(then.airflow_m3_s.value, 0.66, max_relative = 1e-12);
    assert_relative_eq!(then.pressure_pa.value, 150.0 * 1.21 * 0.9, max_relative = 1e-12);
    assert_relative_eq!(then.power_w.value, 450.0 * 1.331 * 0.9, max_relative = 1e-12);
    // There and back again; and flow times pressure goes with power.
    let back = fan_at_speed(&then, exact(1.0 / 1.1), exact(1.0 / 0.9)).unwrap();
    assert_relative_eq!(back.power_w.value, 450.0, max_relative = 1e-12);
    let power = |point: &FanPoint| point.airflow_m3_s.value * point.pressure_pa.value / point.power_w.value;
    assert_relative_eq!(power(&then), power(&now), max_relative = 1e-12);
    // One per cent of speed is three of power.
    let loose = fan_at_speed(&now, known(1.0, 0.01), exact(1.0)).unwrap();
    assert_relative_eq!(loose.power_w.standard_uncertainty, 0.03 * 450.0, max_relative = 1e-3);
    assert_relative_eq!(loose.pressure_pa.standard_uncertainty, 0.02 * 150.0, max_relative = 1e-3);
    assert_eq!(quantity(fan_at_speed(&now, exact(0.0), exact(1.0))), "fan speed ratio");
    assert_eq!(quantity(fan_at_speed(&now, exact(1.0), exact(f64::NAN))), "air density ratio");
}

/// A maker's table (demo): external static 0.1 to 0.5 inch of water, three taps, blank where its maker prints none.
#[test]
fn a_blower_table_keeps_its_blanks() {
    let statics = [25.0, 50.0, 75.0, 100.0, 125.0];
    let taps = [1.0, 2.0, 3.0];
    let blank = f64::NAN;
    #[rustfmt::skip]
    let cells = [
        0.45, 0.55, blank,
        0.43, 0.53, 0.64,
        0.40, 0.50, 0.61,
        0.36, 0.46, 0.58,
        blank, 0.41, 0.54,
    ];
    let table = BlowerTable::of_airflow(&statics, &taps, &cells).unwrap();
    let at = |pressure, tap| table.at(exact(pressure), tap).unwrap();
    assert_eq!(at(75.0, 2.0), Lookup::At(exact(0.50)));
    assert_relative_eq!(at(110.0, 2.0).value().unwrap().value, 0.46 - 0.4 * 0.05, max_relative = 1e-12);
    assert_eq!(at(40.0, 3.0), Lookup::NoValidTest(GridGap::Blank));
    assert_eq!(at(50.0, 3.0), Lookup::At(exact(0.64)));
    assert_eq!(at(101.0, 1.0), Lookup::NoValidTest(GridGap::Blank));
    assert_eq!(at(130.0, 2.0), Lookup::NoValidTest(GridGap::AboveLastRow));
    assert_eq!(at(20.0, 2.0), Lookup::NoValidTest(GridGap::BelowFirstRow));
    assert_eq!(at(75.0, 1.5), Lookup::NoValidTest(GridGap::BetweenSteps));
    assert_eq!(at(75.0, 4.0), Lookup::NoValidTest(GridGap::AboveLastColumn));
    // The slope of 0.03 m³/s in 25 Pa carries 5 Pa.
    let found = table.at(known(62.0, 5.0), 1.0).unwrap().value().unwrap();
    assert_relative_eq!(found.standard_uncertainty, 5.0 * 0.03 / 25.0, max_relative = 1e-9);
    // At the table's end one side counts.
    let end = table.at(known(125.0, 5.0), 2.0).unwrap().value().unwrap();
    assert_relative_eq!(end.standard_uncertainty, 5.0 * 0.05 / 25.0, max_relative = 1e-9);
    // Power by the same shape of table, with options for blanks.
    let watts = [Some(300.0), Some(420.0), None, Some(310.0), Some(430.0), Some(600.0)];
    let power = BlowerTable::of_power(&statics[..2], &taps, &watts).unwrap();
    assert_eq!(power.at(exact(25.0), 2.0).unwrap(), Lookup::At(exact(420.0)));

    assert_eq!(quantity(BlowerTable::of_airflow(&statics, &taps, &cells[1..])), "number of a table's cells");
    assert_eq!(quantity(BlowerTable::of_airflow(&[50.0, 25.0], &taps[..1], &[0.5, 0.5])), "value of a table's axis");
    assert_eq!(quantity(BlowerTable::of_airflow(&[50.0, 50.0], &taps[..1], &[0.5, 0.5])), "value of a table's axis");
    assert_eq!(quantity(BlowerTable::of_airflow(&statics[..1], &taps[..1], &[1200.0])), "airflow");
    assert_eq!(quantity(BlowerTable::of_airflow(&statics[..1], &taps[..1], &[blank])), "number of known cells");
    assert_eq!(quantity(BlowerTable::of_airflow(&[-25.0], &taps[..1], &[0.5])), "external static pressure");
    assert!(matches!(table.at(exact(f64::NAN), 1.0), Err(Error::NotFinite { .. })));
    assert!(matches!(table.at(exact(50.0), f64::INFINITY), Err(Error::NotFinite { .. })));
}

#[test]
fn watts_for_each_airflow() {
    // 696 W for 1200 cfm is 0.58 W/cfm by hand.
    let airflow = 1200.0 * M3_S_PER_CFM;
    let found = watts_per_airflow(exact(696.0), exact(airflow), None).unwrap();
    assert_relative_eq!(found.watts_per_cfm.value, 0.58, max_relative = 1e-12);
    assert_relative_eq!(found.watts_per_m3_s.value, 0.58 / M3_S_PER_CFM, max_relative = 1e-12);
    let outcome = |power, uncertainty, limit| {
        watts_per_airflow(known(power, uncertainty), known(airflow, 0.0), limit).unwrap().outcome
    };
    assert_eq!(outcome(600.0, 10.0, None), LimitOutcome::Within);
    assert_eq!(outcome(800.0, 10.0, None), LimitOutcome::Above);
    assert_eq!(outcome(700.0, 10.0, None), LimitOutcome::CannotTell);
    assert_eq!(outcome(600.0, 10.0, Some(0.45)), LimitOutcome::Above);
    assert_eq!(quantity(watts_per_airflow(exact(0.6), exact(airflow), None)), "power");
    assert_eq!(quantity(watts_per_airflow(exact(600.0), exact(airflow), Some(-1.0))), "limit of fan power");
}

#[test]
fn a_dirty_filter_by_hand() {
    let found = resistance(exact(80.0), exact(20.0), None, None).unwrap();
    assert_relative_eq!(found.resistance_ratio.value, 4.0);
    assert_relative_eq!(found.airflow_ratio.value, 0.5);
    assert!(found.airflow_assumed && found.outcome == LimitOutcome::Above);
    // The same drop at four fifths of the airflow: (1/0.8)² more resistance.
    let fair = resistance(exact(30.0), exact(20.0), Some((exact(0.4), exact(0.5))), None).unwrap();
    assert_relative_eq!(fair.resistance_ratio.value, 1.5 / 0.64, max_relative = 1e-12);
    assert!(!fair.airflow_assumed && fair.outcome == LimitOutcome::Above);
    assert_eq!(resistance(exact(30.0), exact(20.0), None, None).unwrap().outcome, LimitOutcome::Within);
    assert_eq!(resistance(known(38.0, 2.0), exact(20.0), None, None).unwrap().outcome, LimitOutcome::CannotTell);
    assert_eq!(resistance(exact(38.0), exact(20.0), None, Some(1.5)).unwrap().outcome, LimitOutcome::Above);
    assert_eq!(quantity(resistance(exact(38.0), exact(20.0), None, Some(0.5))), "resistance over that when clean");
    assert_eq!(quantity(resistance(exact(38.0), exact(0.1), None, None)), "static pressure difference of air");
}

#[test]
fn return_leakage_by_a_mixture_made_by_hand() {
    // Mixed from known shares: some share of attic air.
    for share in [0.0, 0.05, 0.11, 0.5, 1.0] {
        let (inside, attic) = (297.0, 325.0);
        let mixed = (1.0 - share) * inside + share * attic;
        let air = |value| known(value, 0.2);
        let found = return_leakage(air(inside), air(mixed), air(attic), None).unwrap();
        assert_relative_eq!(found.fraction.value, share, epsilon = 1e-12);
        let expected = if share < 0.06 { LimitOutcome::Within } else { LimitOutcome::Above };
        let expected = if share == 0.11 { LimitOutcome::CannotTell } else { expected };
        assert_eq!(found.outcome, expected, "{share} {found:?}");
        // By hand: ∂f/∂mixed = 1/28, ∂f/∂return = (f−1)/28, ∂f/∂leak = −f/28.
        let by_hand = 0.2 / 28.0 * (1.0 + (share - 1.0).powi(2) + share * share).sqrt();
        assert_relative_eq!(found.fraction.standard_uncertainty, by_hand, max_relative = 1e-3);
    }
    // Humidity ratios: 9 g/kg inside, 18 outside, 9.9 mixed.
    let water = |value| known(value, 0.0002);
    let humid = return_leakage(water(0.009), water(0.0099), water(0.018), Some(0.05)).unwrap();
    assert_relative_eq!(humid.fraction.value, 0.1, max_relative = 1e-12);
    assert_eq!(humid.outcome, LimitOutcome::CannotTell);
}

#[test]
fn leakage_that_cannot_be_told_is_not() {
    let air = |value| known(value, 0.3);
    // Within two standard uncertainties of the difference: 2·0.3·√2 = 0.85 K.
    assert_eq!(quantity(return_leakage(air(297.0), air(297.2), air(297.8), None)), "return leakage");
    assert_eq!(quantity(return_leakage(exact(297.0), exact(297.0), exact(297.0), None)), "return leakage");
    assert!(return_leakage(air(297.0), air(297.2), air(298.0), None).unwrap().fraction.standard_uncertainty > 0.3);
    // Colder than both cannot be mixed from them.
    let outcome = |mixed| return_leakage(air(297.0), air(mixed), air(320.0), None).unwrap().outcome;
    assert_eq!((outcome(294.0), outcome(324.0)), (LimitOutcome::Contradicts, LimitOutcome::Contradicts));
    assert_eq!(outcome(296.9), LimitOutcome::Within);
    // Kelvin and kilograms do not mix.
    assert_eq!(
        quantity(return_leakage(exact(0.009), exact(0.0095), exact(320.0), None)),
        "humidity ratio of leaking return air"
    );
    assert_eq!(quantity(return_leakage(exact(297.0), exact(0.0095), exact(320.0), None)), "air temperature");
    assert_eq!(quantity(return_leakage(air(297.0), air(298.0), air(320.0), Some(10.0))), "limit of return leakage");
}

#[test]
fn cautions_are_said() {
    assert!(AirflowCaution::ALL.iter().any(|caution| caution.sentence().contains("lock the power out")));
    assert_eq!(LimitOutcome::from_number(3), Some(LimitOutcome::CannotTell));
}
