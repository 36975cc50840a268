//! Heating: from the text of a reading, and what is measured besides it, to a heating finding.

use pyo3::prelude::*;
use satline::Error;
use satline::diagnosis::{
    HeatingCaution, HeatingChart, HeatingChartOutcome, HeatingExtras, HeatingFinding, HeatingLimit, HeatingProblem,
    judge_heating,
};
use satline::quantity::Temperature;
use satline::reading::Accuracy;
use satline::text::{Units, heating_to_json, heating_to_words};
use satline::visit::target_grid::TargetGrid;

use crate::diagnosis::read;
use crate::raise::{Place, raise};
use crate::visit_airflow::{Chart, axis, target};

/// A finding as JSON, in words in both units, and the sentences of its answers by name.
type Answer = (String, String, String, Vec<(&'static str, &'static str)>);

/// The heating finding for a text with one reading. Extras: outdoor dew point, suction gas before and behind the reversing
/// valve, all in K, and the limit of error of the last two. A chart comes with its tolerance.
#[pyfunction]
pub fn judge_heating_text(
    py: Python<'_>,
    reading: &str,
    has_lines: bool,
    extras: (Option<f64>, Option<f64>, Option<f64>, Option<f64>),
    chart: Option<(Chart, f64)>,
) -> PyResult<Answer> {
    let labelled = read(py, reading, has_lines)?;
    let judged = || -> Result<HeatingFinding, Error> {
        let (dew_point, inlet, outlet, limit) = extras;
        let temperature = |value: Option<f64>| value.map(Temperature::from_kelvin).transpose();
        let limit = limit.map(checked).transpose()?;
        let extras = HeatingExtras {
            outdoor_dew_point: temperature(dew_point)?,
            valve_suction_inlet_temperature: temperature(inlet)?,
            valve_suction_outlet_temperature: temperature(outlet)?,
            valve_probe_accuracy: limit.map(|absolute| Accuracy { absolute, ..Accuracy::default() }),
        };
        let Some(((name, row, column, cells), tolerance)) = &chart else {
            return Ok(judge_heating(&labelled.reading, &extras, None));
        };
        let cells: Vec<Option<f64>> = cells.iter().map(|cell| (!cell.is_nan()).then_some(*cell)).collect();
        let column =
            column.as_ref().map(|(name, values)| Ok::<_, Error>((axis(name)?, values.as_slice()))).transpose()?;
        let grid = TargetGrid::new(target(name)?, (axis(&row.0)?, &row.1), column, &cells)?;
        Ok(judge_heating(&labelled.reading, &extras, Some(&HeatingChart::new(grid, *tolerance)?)))
    };
    let finding = judged().map_err(|error| raise(py, &error, &Place::default()))?;
    let words = |units| heating_to_words(&finding, units);
    Ok((heating_to_json(&finding), words(Units::Ip), words(Units::Si), sentences(&finding)))
}

/// The limit of error of the probes at the valve.
fn checked(limit_k: f64) -> Result<f64, Error> {
    let advice = "give the limit of error of the two probes against each other, as a difference";
    satline::bounds::within("limit of error of the valve probes", "K", limit_k, 0.0, 10.0, advice)
}

/// What the names in a finding mean.
fn sentences(finding: &HeatingFinding) -> Vec<(&'static str, &'static str)> {
    let mut found = vec![
        ("capacity", finding.capacity.sentence()),
        ("frost", finding.frost.sentence()),
        ("reversing_valve", finding.reversing_valve.sentence()),
    ];
    found.extend(finding.chart.map(|chart| ("chart", HeatingChartOutcome::sentence(chart.outcome))));
    found.extend(finding.problems.iter().map(|found| (HeatingProblem::name(found), found.sentence())));
    found.extend(finding.limits.iter().map(|found| (HeatingLimit::name(found), found.sentence())));
    found.extend(finding.cautions.iter().map(|found| (HeatingCaution::name(found), found.sentence())));
    found
}
