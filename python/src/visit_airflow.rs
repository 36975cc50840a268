//! Airflow by static pressure, a maker's chart, and delivered performance.

use pyo3::prelude::*;
use satline::Error;
use satline::text::target_grid_from_json;
use satline::uncertain::Uncertain;
use satline::visit::airflow::{self, AirflowCaution, BlowerTable, FanPoint};
use satline::visit::charge_fault;
use satline::visit::grid::Lookup;
use satline::visit::performance::{self, CapacityShape, PerformanceCaution};
use satline::visit::target_grid::{self, ChartCaution, GridAxis, GridTarget, TargetGrid};

use crate::raise::{Place, raise, text};

/// A value and one standard uncertainty of it.
type Pair = (f64, f64);
/// What a table says, or the name and the sentence of why it says nothing.
type Told = (Option<Pair>, Option<(&'static str, &'static str)>);

fn taken((value, standard_uncertainty): Pair) -> Result<Uncertain, Error> {
    Uncertain::new(value, standard_uncertainty)
}

fn pair(found: Uncertain) -> Pair {
    (found.value, found.standard_uncertainty)
}

fn told(found: Lookup) -> Told {
    match found {
        Lookup::At(value) => (Some(pair(value)), None),
        Lookup::NoValidTest(gap) => (None, Some((gap.name(), gap.sentence()))),
    }
}

fn answered<T>(py: Python<'_>, found: Result<T, Error>) -> PyResult<T> {
    found.map_err(|error| raise(py, &error, &Place::default()))
}

/// What can hurt, or mislead, where airflow is measured.
#[pyfunction]
pub fn airflow_cautions() -> Vec<&'static str> {
    AirflowCaution::ALL.iter().map(|caution| caution.sentence()).collect()
}

/// What can hurt, or mislead, where a unit is charged by its maker's chart.
#[pyfunction]
pub fn chart_cautions() -> Vec<&'static str> {
    ChartCaution::ALL.iter().map(|caution| caution.sentence()).collect()
}

/// What can hurt, or mislead, where performance is judged.
#[pyfunction]
pub fn performance_cautions() -> Vec<&'static str> {
    PerformanceCaution::ALL.iter().map(|caution| caution.sentence()).collect()
}

#[pyfunction]
pub fn airflow_by_plenum_pressure(py: Python<'_>, measured: Pair, operating: Pair, during: Pair) -> PyResult<Pair> {
    let found = || airflow::airflow_by_plenum_pressure(taken(measured)?, taken(operating)?, taken(during)?);
    answered(py, found().map(pair))
}

/// A table's value at a static pressure and tap; of power instead of airflow where `power` is set.
#[pyfunction]
pub fn blower_table(
    py: Python<'_>,
    statics: Vec<f64>,
    taps: Vec<f64>,
    cells: Vec<f64>,
    power: bool,
    at: Option<(Pair, f64)>,
) -> PyResult<Told> {
    let found = || {
        let make = if power { BlowerTable::of_power } else { BlowerTable::of_airflow };
        let table = make(&statics, &taps, &cells)?;
        at.map_or(Ok((None, None)), |(pressure, tap)| table.at(taken(pressure)?, tap).map(told))
    };
    answered(py, found())
}

#[pyfunction]
pub fn fan_at_speed(
    py: Python<'_>,
    airflow: Pair,
    pressure: Pair,
    power: Pair,
    speed: Pair,
    density: Pair,
) -> PyResult<(Pair, Pair, Pair)> {
    let found = || {
        let now = FanPoint { airflow_m3_s: taken(airflow)?, pressure_pa: taken(pressure)?, power_w: taken(power)? };
        airflow::fan_at_speed(&now, taken(speed)?, taken(density)?)
    };
    answered(py, found().map(|then| (pair(then.airflow_m3_s), pair(then.pressure_pa), pair(then.power_w))))
}

/// Watts for each m³/s and each cfm, the limit, and how they compare.
#[pyfunction]
pub fn watts_per_airflow(
    py: Python<'_>,
    power: Pair,
    air: Pair,
    limit: Option<f64>,
) -> PyResult<(Pair, Pair, f64, &'static str)> {
    let found = || airflow::watts_per_airflow(taken(power)?, taken(air)?, limit);
    answered(
        py,
        found().map(|found| {
            (pair(found.watts_per_m3_s), pair(found.watts_per_cfm), found.limit_watts_per_cfm, found.outcome.name())
        }),
    )
}

/// Resistance and airflow over those when clean, how the first compares, and whether the airflow was assumed.
#[pyfunction]
pub fn air_resistance(
    py: Python<'_>,
    drop: Pair,
    clean: Pair,
    airflows: Option<(Pair, Pair)>,
    limit: Option<f64>,
) -> PyResult<(Pair, Pair, &'static str, bool)> {
    let found = || {
        let airflows = airflows.map(|(now, clean)| Ok::<_, Error>((taken(now)?, taken(clean)?))).transpose()?;
        airflow::resistance(taken(drop)?, taken(clean)?, airflows, limit)
    };
    answered(
        py,
        found().map(|found| {
            (pair(found.resistance_ratio), pair(found.airflow_ratio), found.outcome.name(), found.airflow_assumed)
        }),
    )
}

#[pyfunction]
pub fn return_leakage(
    py: Python<'_>,
    inside: Pair,
    mixed: Pair,
    outside: Pair,
    limit: Option<f64>,
) -> PyResult<(Pair, &'static str)> {
    let found = || airflow::return_leakage(taken(inside)?, taken(mixed)?, taken(outside)?, limit);
    answered(py, found().map(|found| (pair(found.fraction), found.outcome.name())))
}

/// A chart: what it gives, its axes with their values, its cells row by row with NaN for blanks.
type Chart = (String, (String, Vec<f64>), Option<(String, Vec<f64>)>, Vec<f64>);

fn choice<T: Copy>(
    given: &str,
    all: &[T],
    name: fn(T) -> &'static str,
    field: &'static str,
    choices: &'static str,
) -> Result<T, Error> {
    all.iter().copied().find(|choice| name(*choice) == given).ok_or(Error::UnknownChoice { field, choices })
}

const TARGETS: &str = "superheat, subcooling, approach, liquid-pressure, discharge-pressure, suction-pressure, \
    discharge-temperature, temperature-split, capacity, power";
const AXES: &str = "outdoor-dry-bulb, return-dry-bulb, return-wet-bulb, suction-pressure, liquid-pressure, airflow";

fn chart((target, row, column, cells): &Chart) -> Result<TargetGrid<'_, f64>, Error> {
    let axis = |given: &str| choice(given, GridAxis::ALL, GridAxis::name, "axis", AXES);
    let column = column.as_ref().map(|(name, values)| Ok::<_, Error>((axis(name)?, values.as_slice()))).transpose()?;
    let target = choice(target, GridTarget::ALL, GridTarget::name, "target", TARGETS)?;
    TargetGrid::new(target, (axis(&row.0)?, &row.1), column, cells)
}

/// Checks a chart.
#[pyfunction]
pub fn target_grid_check(py: Python<'_>, grid: Chart) -> PyResult<()> {
    answered(py, chart(&grid).map(|_| ()))
}

#[pyfunction]
pub fn target_grid_at(py: Python<'_>, grid: Chart, row: Pair, column: Option<Pair>) -> PyResult<Told> {
    let found = || chart(&grid)?.at(taken(row)?, column.map(taken).transpose()?).map(told);
    answered(py, found())
}

/// How a reading compares, the deviation, and what the chart says.
#[pyfunction]
pub fn target_grid_compare(
    py: Python<'_>,
    grid: Chart,
    measured: Pair,
    row: Pair,
    column: Option<Pair>,
    tolerance: f64,
) -> PyResult<(&'static str, &'static str, Option<Pair>, Told)> {
    let found = || {
        let column = column.map(taken).transpose()?;
        chart(&grid)?.compare(taken(measured)?, taken(row)?, column, tolerance)
    };
    answered(
        py,
        found().map(|found| {
            (found.outcome.name(), found.outcome.sentence(), found.deviation.map(pair), told(found.target))
        }),
    )
}

/// A chart from JSON with its label, note, whether it is a demo, and whether the atmosphere was assumed.
#[pyfunction]
pub fn target_grid_from_text(py: Python<'_>, json: &str) -> PyResult<(Chart, (String, String, bool, bool))> {
    let loaded = target_grid_from_json(json).map_err(|error| text(py, &error, true, ""))?;
    let column = loaded.column.map(|(axis, values)| (axis.name().to_string(), values));
    let cells = loaded.cells.iter().map(|cell| cell.unwrap_or(f64::NAN)).collect();
    let chart = (loaded.target.name().to_string(), (loaded.row.name().to_string(), loaded.rows), column, cells);
    Ok((chart, (loaded.label, loaded.note, loaded.demo, loaded.atmosphere_assumed)))
}

#[pyfunction]
pub fn approach(py: Python<'_>, line: Pair, outdoor: Pair) -> PyResult<Pair> {
    let found = || target_grid::approach(taken(line)?, taken(outdoor)?);
    answered(py, found().map(pair))
}

/// The shape: by wet bulb, by outdoor temperature, of nominal; the common one if none.
#[pyfunction]
pub fn expected_capacity(
    py: Python<'_>,
    nominal: f64,
    wet_bulb: Pair,
    outdoor: Pair,
    shape: Option<(Pair, Pair, f64)>,
) -> PyResult<Pair> {
    let found = || {
        let shape = match shape {
            None => CapacityShape::COMMON,
            Some((wet, outdoor, of_nominal)) => {
                CapacityShape { by_wet_bulb: taken(wet)?, by_outdoor: taken(outdoor)?, of_nominal }
            }
        };
        performance::expected_capacity(nominal, taken(wet_bulb)?, taken(outdoor)?, &shape)
    };
    answered(py, found().map(pair))
}

#[pyfunction]
pub fn delivered(py: Python<'_>, capacity: Pair, expected: Pair) -> PyResult<Pair> {
    let found = || performance::delivered(taken(capacity)?, taken(expected)?);
    answered(py, found().map(pair))
}

/// Delivered over expected before and after, their ratio, and what it says.
#[pyfunction]
pub fn gain(
    py: Python<'_>,
    before: (Pair, Pair),
    after: (Pair, Pair),
    shared: f64,
) -> PyResult<(Pair, Pair, Pair, &'static str, &'static str)> {
    let both = |(capacity, expected): (Pair, Pair)| Ok::<_, Error>((taken(capacity)?, taken(expected)?));
    let found = || performance::gain(both(before)?, both(after)?, shared);
    answered(
        py,
        found().map(|found| {
            let outcome = found.outcome;
            (pair(found.before), pair(found.after), pair(found.ratio), outcome.name(), outcome.sentence())
        }),
    )
}

/// Capacity, power and coefficient of performance over those with the right charge.
#[pyfunction]
pub fn charge_fault_effect(
    py: Python<'_>,
    deviation: Pair,
    indoor: Pair,
    outdoor: Pair,
) -> PyResult<(Pair, Pair, Pair)> {
    let found = || charge_fault::charge_fault_effect(taken(deviation)?, taken(indoor)?, taken(outdoor)?);
    answered(py, found().map(|found| (pair(found.capacity), pair(found.power), pair(found.coefficient_of_performance))))
}
