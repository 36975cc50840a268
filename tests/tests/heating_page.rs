//! The worked example of core/docs/heating.md: each row of its tables is computed here and must stand there.

use satline::diagnosis::{Frost, HeatingCapacity, HeatingChart, HeatingChartOutcome, HeatingExtras, ReversingValve};
use satline::diagnosis::{Value, judge_heating};
use satline::quantity::{KELVIN_PER_FAHRENHEIT, PASCALS_PER_PSI, Temperature, WATTS_PER_BTU_H, fahrenheit_from_kelvin};
use satline::reading::{Accuracy, Reading};
use satline::text::{readings_from_json, target_grid_from_json};

const PAGE: &str = include_str!("../../core/docs/heating.md");

const CHART: &str = r#"{
    "label": "demo chart", "demo": true, "target": "liquid-pressure", "unit": "psig",
    "rows": {"axis": "outdoor-dry-bulb", "unit": "degF", "values": [17, 35, 47, 60]},
    "columns": {"axis": "return-dry-bulb", "unit": "degF", "values": [60, 70, 80]},
    "cells": [[255, 290, 330], [280, 320, 360], [300, 345, 390], [330, 380, null]]
}"#;

/// The reading that stands in the page.
fn reading() -> Reading {
    let begin = PAGE.find("r#\"").unwrap() + 3;
    let end = PAGE[begin..].find("\"#").unwrap();
    readings_from_json(&PAGE[begin..begin + end]).unwrap()[0].reading
}

fn fahrenheit(value: f64) -> Option<Temperature> {
    Some(Temperature::from_fahrenheit(value).unwrap())
}

fn extras() -> HeatingExtras {
    HeatingExtras {
        outdoor_dew_point: fahrenheit(33.0),
        valve_suction_inlet_temperature: fahrenheit(27.0),
        valve_suction_outlet_temperature: fahrenheit(29.0),
        ..HeatingExtras::default()
    }
}

fn row(name: &str, si: &str, ip: &str) -> String {
    format!("| {name} | {si} | {ip} |")
}

fn scaled(value: Value, factor: f64, places: usize, unit: &str) -> String {
    let (shown, give) = (value.value * factor, value.standard_uncertainty * factor);
    format!("{shown:.places$} ± {give:.places$} {unit}")
}

fn temperature(name: &str, value: Value) -> String {
    let give = value.standard_uncertainty;
    row(
        name,
        &format!("{:.1} ± {give:.1} °C", value.value - 273.15),
        &format!("{:.1} ± {:.1} °F", fahrenheit_from_kelvin(value.value), give / KELVIN_PER_FAHRENHEIT),
    )
}

fn difference(name: &str, value: Value) -> String {
    row(name, &scaled(value, 1.0, 1, "K"), &scaled(value, 1.0 / KELVIN_PER_FAHRENHEIT, 1, "°F"))
}

fn rows() -> Vec<String> {
    let found = judge_heating(&reading(), &extras(), None);
    let values = found.values;
    let heat = values.delivered_capacity.unwrap();
    let ratio = scaled(values.capacity_ratio.unwrap(), 100.0, 0, "%");
    let mut rows = vec![
        difference("supply rise", values.supply_rise.unwrap()),
        row("heat delivered", &scaled(heat, 1e-3, 2, "kW"), &scaled(heat, 1.0 / WATTS_PER_BTU_H, 0, "Btu/h")),
        row("of nominal, at 35 °F outdoors", &ratio, &ratio),
        row("capacity", found.capacity.name(), found.capacity.name()),
        temperature("evaporating (dew) temperature", values.evaporating_temperature.unwrap()),
        temperature("outdoor coil surface", values.coil_surface_temperature.unwrap()),
        difference("surface over dew point", values.coil_over_dew_point.unwrap()),
        row("frost", found.frost.name(), found.frost.name()),
    ];
    assert_eq!((found.capacity, found.frost), (HeatingCapacity::NotVeryLow, Frost::Forms));
    for (what, dew_point) in
        [("frost in drier air, dew point 15 °F", fahrenheit(15.0)), ("frost, dew point unknown", None)]
    {
        let frost = judge_heating(&reading(), &HeatingExtras { outdoor_dew_point: dew_point, ..extras() }, None).frost;
        rows.push(row(what, frost.name(), frost.name()));
    }
    rows.push(difference("27 to 29 °F, thermometers as they come", values.valve_suction_rise.unwrap()));
    rows.push(row("reversing valve", found.reversing_valve.name(), found.reversing_valve.name()));
    for (what, outlet, absolute) in [
        ("27 to 32 °F, thermometers as they come", 32.0, None),
        ("27 to 32 °F, within 0.5 °F of each other", 32.0, Some(0.5 * KELVIN_PER_FAHRENHEIT)),
    ] {
        let extras = HeatingExtras {
            valve_suction_outlet_temperature: fahrenheit(outlet),
            valve_probe_accuracy: absolute.map(|absolute| Accuracy { absolute, ..Accuracy::default() }),
            ..extras()
        };
        let found = judge_heating(&reading(), &extras, None);
        rows.push(difference(what, found.values.valve_suction_rise.unwrap()));
        rows.push(row("reversing valve", found.reversing_valve.name(), found.reversing_valve.name()));
    }
    assert_eq!(found.reversing_valve, ReversingValve::Tight);

    let loaded = target_grid_from_json(CHART).unwrap();
    let chart = HeatingChart::new(loaded.grid().unwrap(), 20.0 * PASCALS_PER_PSI).unwrap();
    let compared = judge_heating(&reading(), &extras(), Some(&chart)).chart.unwrap();
    assert_eq!(compared.outcome, HeatingChartOutcome::CannotTell);
    let measured = compared.measured.unwrap();
    let deviation = Value {
        value: measured.deviation.unwrap(),
        standard_uncertainty: measured.deviation_uncertainty.unwrap(),
        ..measured
    };
    let both = |value| (scaled(value, 1e-3, 0, "kPa"), scaled(value, 1.0 / PASCALS_PER_PSI, 1, "psi"));
    let ((si, ip), (si_off, ip_off)) = (both(measured), both(deviation));
    rows.push(row("liquid pressure, absolute", &si, &ip));
    rows.push(row("over the chart", &si_off, &ip_off));
    rows.push(row("chart", compared.outcome.name(), compared.outcome.name()));
    rows
}

#[test]
fn every_row_of_the_page_is_computed() {
    let rows = rows();
    let missing: Vec<_> = rows.iter().filter(|row| !PAGE.lines().any(|line| line == row.as_str())).collect();
    assert!(missing.is_empty(), "not in core/docs/heating.md:\n{missing:#?}");
    // And nothing else stands in its tables but the chart.
    let in_table = |line: &&str| line.starts_with("| ") && !line.starts_with("| quantity");
    let of_chart = |line: &str| line.contains(" psig |") || line.starts_with("| outdoors");
    let shown = PAGE.lines().filter(in_table).filter(|line| !of_chart(line)).count();
    assert_eq!(shown, rows.len());
}

/// The chart in the page is the chart that is read here.
#[test]
fn the_chart_of_the_page_is_the_one_compared() {
    let loaded = target_grid_from_json(CHART).unwrap();
    let cells: Vec<Option<f64>> = PAGE
        .lines()
        .filter(|line| line.contains(" psig |"))
        .flat_map(|line| line.split('|').skip(2).filter(|cell| !cell.trim().is_empty()))
        .map(|cell| cell.trim().strip_suffix(" psig").map(|number| number.parse().unwrap()))
        .collect();
    assert_eq!(cells.len(), loaded.cells.len());
    for (shown, loaded) in cells.iter().zip(&loaded.cells) {
        let psig = loaded.map(|pascals| (pascals - 101_325.0) / PASCALS_PER_PSI);
        assert_eq!(shown.is_some(), psig.is_some());
        assert!((shown.unwrap_or(0.0) - psig.unwrap_or(0.0)).abs() < 1e-6);
    }
}
