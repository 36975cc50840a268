//! The worked examples of core/docs/retrofit_airflow.md say what the library computes: every number of theirs is computed
//! here again and looked up in the page.

use satline::eos::model;
use satline::quantity::{
    Atmosphere, GaugePressure, KELVIN_PER_FAHRENHEIT, M3_S_PER_CFM, PASCALS_PER_PSI, Pressure, Temperature,
    TemperatureDifference, WATTS_PER_TON, kelvin_from_fahrenheit,
};
use satline::uncertain::Uncertain;
use satline::visit::airflow::{airflow_by_plenum_pressure, resistance, return_leakage, watts_per_airflow};
use satline::visit::charge_fault::charge_fault_effect;
use satline::visit::performance::{CapacityShape, delivered, expected_capacity, gain};
use satline::visit::retrofit::{CondensingAt, Conditions, Cycle, compare_refrigerants};
use satline::visit::target_grid::{GridAxis, GridTarget, TargetGrid, approach};

const PAGE: &str = include_str!("../../core/docs/retrofit_airflow.md");

fn known(value: f64, standard_uncertainty: f64) -> Uncertain {
    Uncertain::new(value, standard_uncertainty).unwrap()
}

fn fahrenheit(value: f64, standard_uncertainty: f64) -> Uncertain {
    known(kelvin_from_fahrenheit(value), standard_uncertainty * KELVIN_PER_FAHRENHEIT)
}

/// Fails with every sentence that the page lacks.
fn stand_in_the_page(sentences: &[String]) {
    let words = |text: &str| text.split_whitespace().collect::<Vec<_>>().join(" ");
    let page = words(PAGE);
    let missing: Vec<&String> = sentences.iter().filter(|sentence| !page.contains(&words(sentence))).collect();
    assert!(missing.is_empty(), "not in core/docs/retrofit_airflow.md:\n{missing:#?}");
}

#[test]
fn retrofit() {
    let ten = TemperatureDifference::from_kelvin(10.0).unwrap();
    let at = |value| Temperature::from_fahrenheit(value).unwrap();
    let plain = Conditions::new(at(45.0), at(110.0), ten, ten).unwrap();
    let plate = GaugePressure::from_psi(375.0).unwrap();
    let plate = Pressure::from_gauge(plate, Atmosphere::STANDARD).unwrap();
    let rated = Conditions { high_side_design_pressure: Some(plate), ..plain };
    let found = compare_refrigerants(&model::R22, &model::R407C, &plain).unwrap();
    let useful = Conditions { useful_superheat: 1.0, ..plain };
    let useful = compare_refrigerants(&model::R22, &model::R407C, &useful).unwrap();
    let mean = Conditions { condensing_at: CondensingAt::Mean, ..plain };
    let mean = compare_refrigerants(&model::R22, &model::R407C, &mean).unwrap();
    let psia = |pascals: f64| pascals / PASCALS_PER_PSI;
    let row = |name: &str, cycle: &Cycle| {
        format!(
            "| {name} | {:.1} | {:.1} | {:.2} | {:.1} | {:.1} |",
            psia(cycle.evaporating_pressure_pa),
            psia(cycle.condensing_pressure_pa),
            cycle.pressure_ratio,
            cycle.discharge_temperature_k * 1.8 - 459.67,
            cycle.condensing_glide_k * 1.8
        )
    };
    let charge = found.starting_charge(known(7.0, 0.1), 0.9).unwrap();
    let standstill = psia(found.new.standstill_pressure_pa.unwrap());
    let said = compare_refrigerants(&model::R22, &model::R407C, &rated).unwrap();
    stand_in_the_page(&[
        row("R-22", &found.old),
        row("R-407C", &found.new),
        format!("| volumetric capacity | {:.3} |", found.volumetric_capacity_ratio),
        format!("| coefficient of performance | {:.3} |", found.coefficient_of_performance_ratio),
        format!("| mass flow, same compressor | {:.3} |", found.at_equal_displacement.mass_flow),
        format!("| mass flow, same capacity | {:.3} |", found.at_equal_capacity.mass_flow),
        format!("| orifice area, same capacity | {:.3} |", found.at_equal_capacity.orifice_area),
        format!("| orifice area, same compressor | {:.3} |", found.at_equal_displacement.orifice_area),
        format!("| discharge line velocity, same compressor | {:.3} |", found.at_equal_displacement.discharge_velocity),
        format!("| liquid line velocity, same compressor | {:.3} |", found.at_equal_displacement.liquid_velocity),
        format!("| charge | {:.3} |", found.charge_ratio),
        format!("start with {:.2} ± {:.2} lb", charge.value, charge.standard_uncertainty),
        format!("the ratio becomes {:.3}", useful.volumetric_capacity_ratio),
        format!(
            "capacity is {:.3} and coefficient of performance {:.3} of R-22's",
            mean.volumetric_capacity_ratio, mean.coefficient_of_performance_ratio
        ),
        format!("{standstill:.0} psia at rest at 125 °F"),
        format!("With it the answer is *{}*", said.outcome.name()),
        format!("Without the plate the answer is *{}*", found.outcome.name()),
    ]);
}

#[test]
fn airflow() {
    let cfm = |airflow: f64| airflow * M3_S_PER_CFM;
    let found = airflow_by_plenum_pressure(known(cfm(1080.0), cfm(32.0)), known(36.0, 0.5), known(30.0, 0.5)).unwrap();
    let power = watts_per_airflow(known(520.0, 8.0), found, None).unwrap();
    let filter = resistance(known(75.0, 1.5), known(30.0, 1.0), None, None).unwrap();
    let air = |value| fahrenheit(value, 0.5);
    let leak = return_leakage(air(75.0), air(81.0), air(118.0), None).unwrap();
    stand_in_the_page(&[
        format!("{:.0} ± {:.0} cfm", found.value / M3_S_PER_CFM, found.standard_uncertainty / M3_S_PER_CFM),
        format!(
            "{:.3} ± {:.3} W/cfm, *{}*",
            power.watts_per_cfm.value,
            power.watts_per_cfm.standard_uncertainty,
            power.outcome.name()
        ),
        format!(
            "{:.2} ± {:.2} times, *{}*",
            filter.resistance_ratio.value,
            filter.resistance_ratio.standard_uncertainty,
            filter.outcome.name()
        ),
        format!(
            "{:.1} ± {:.1} %, *{}*",
            100.0 * leak.fraction.value,
            100.0 * leak.fraction.standard_uncertainty,
            leak.outcome.name()
        ),
    ]);
}

#[test]
fn chart_and_performance() {
    let rows = [75.0, 85.0, 95.0, 105.0].map(kelvin_from_fahrenheit);
    let cells =
        [Some(9.0), Some(10.0), Some(12.0), None].map(|cell| cell.map(|cell: f64| cell * KELVIN_PER_FAHRENHEIT));
    let chart = TargetGrid::new(GridTarget::Approach, (GridAxis::OutdoorDryBulb, &rows), None, &cells).unwrap();
    let measured = approach(fahrenheit(107.0, 0.7), fahrenheit(91.0, 0.5)).unwrap();
    let tolerance = 3.0 * KELVIN_PER_FAHRENHEIT;
    let found = chart.compare(measured, fahrenheit(91.0, 0.5), None, tolerance).unwrap();
    let hot = chart.compare(measured, fahrenheit(98.0, 0.5), None, tolerance).unwrap();
    let deviation = found.deviation.unwrap();
    let in_f = |kelvin: f64| kelvin / KELVIN_PER_FAHRENHEIT;
    let shape = CapacityShape::COMMON;
    let (wet, outdoor) = (fahrenheit(63.0, 0.7), fahrenheit(100.0, 0.7));
    let expected = expected_capacity(3.0 * WATTS_PER_TON, wet, outdoor, &shape).unwrap();
    let kilowatts = |value: f64| value * 1e3;
    let before = (known(kilowatts(7.0), kilowatts(0.28)), expected);
    let after = (known(kilowatts(8.7), kilowatts(0.35)), expected);
    let share = delivered(before.0, before.1).unwrap();
    let gained = gain(before, after, 1.0).unwrap();
    let effect = charge_fault_effect(known(-0.2, 0.03), fahrenheit(80.0, 0.0), fahrenheit(95.0, 0.0)).unwrap();
    stand_in_the_page(&[
        format!("target {:.1} °F", in_f(found.target.value().unwrap().value)),
        format!(
            "{:+.1} ± {:.1} °F, *{}*",
            in_f(deviation.value),
            in_f(deviation.standard_uncertainty),
            found.outcome.name()
        ),
        format!("At 98 °F outdoors the answer is *{}*", hot.outcome.name()),
        format!("{:.2} ± {:.2} kW", expected.value / 1e3, expected.standard_uncertainty / 1e3),
        format!("{:.2} ± {:.2} of what it should", share.value, share.standard_uncertainty),
        format!(
            "{:.2} ± {:.2} times before, *{}*",
            gained.ratio.value,
            gained.ratio.standard_uncertainty,
            gained.outcome.name()
        ),
        format!("capacity {:.3} ± {:.3}", effect.capacity.value, effect.capacity.standard_uncertainty),
        format!("power {:.3} ± {:.3}", effect.power.value, effect.power.standard_uncertainty),
    ]);
}
