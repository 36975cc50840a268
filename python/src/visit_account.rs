//! The charge by the scale, leaks by what had to be added, and recovery.

use pyo3::prelude::*;
use pyo3::types::PyDict;
use satline::Error;
use satline::uncertain::Uncertain;
use satline::visit::{
    Addition, CHARGE_TOLERANCE, ExpectedCharge, Recovery, SCALE_SHARE, Start, Weighing, charge_account, leak_rate,
    recovery,
};

use crate::raise::{Place, raise};

/// A value and one standard uncertainty of it.
type Pair = (f64, f64);

fn taken((value, standard_uncertainty): Pair) -> Result<Uncertain, Error> {
    Uncertain::new(value, standard_uncertainty)
}

fn pair(found: Uncertain) -> Pair {
    (found.value, found.standard_uncertainty)
}

fn answered<T>(py: Python<'_>, found: Result<T, Error>) -> PyResult<T> {
    found.map_err(|error| raise(py, &error, &Place::default()))
}

fn expected((nameplate, line_set, accessories): (Pair, Pair, Pair)) -> Result<ExpectedCharge, Error> {
    Ok(ExpectedCharge {
        nameplate_kg: taken(nameplate)?,
        line_set_kg: taken(line_set)?,
        accessories_kg: taken(accessories)?,
    })
}

/// Nameplate, line set and accessories together.
#[pyfunction]
pub fn expected_charge(py: Python<'_>, parts: (Pair, Pair, Pair)) -> PyResult<Pair> {
    answered(py, expected(parts).and_then(|parts| parts.total_kg()).map(pair))
}

/// What the scale says as keyword arguments of its class. Limits: the scale's share and the tolerance.
#[pyfunction]
pub fn charge_account_parts<'py>(
    py: Python<'py>,
    parts: (Pair, Pair, Pair),
    start: Option<Pair>,
    weighings: Vec<Pair>,
    limits: (Option<f64>, Option<f64>),
) -> PyResult<Bound<'py, PyDict>> {
    let weighings: Vec<_> = weighings
        .into_iter()
        .map(|(change_kg, standard_uncertainty_kg)| Weighing { change_kg, standard_uncertainty_kg })
        .collect();
    let compare = || {
        let start = start.map(taken).transpose()?.map_or(Start::Unknown, Start::Holds);
        let (scale_share, tolerance) = (limits.0.unwrap_or(SCALE_SHARE), limits.1.unwrap_or(CHARGE_TOLERANCE));
        charge_account(&expected(parts)?, start, &weighings, scale_share, tolerance)
    };
    let found = answered(py, compare())?;
    let parts = PyDict::new(py);
    parts.set_item("expected_kg", pair(found.expected_kg))?;
    parts.set_item("inside_kg", found.inside_kg.map(pair))?;
    parts.set_item("deviation_kg", found.deviation_kg.map(pair))?;
    parts.set_item("deviation", found.deviation.map(pair))?;
    parts.set_item("balance", found.balance.name())?;
    parts.set_item("advice", found.balance.sentence())?;
    Ok(parts)
}

/// How fast a unit leaks as keyword arguments of its class.
#[pyfunction]
pub fn leak_rate_parts<'py>(
    py: Python<'py>,
    full_charge: Pair,
    additions: Vec<(f64, Pair)>,
) -> PyResult<Bound<'py, PyDict>> {
    let compute = || {
        let full = taken(full_charge)?;
        let log = additions.iter().map(|(day, mass)| Ok(Addition { day: *day, mass_kg: taken(*mass)? }));
        leak_rate(full, &log.collect::<Result<Vec<_>, Error>>()?)
    };
    let found = answered(py, compute())?;
    let parts = PyDict::new(py);
    parts.set_item("days", found.days)?;
    parts.set_item("lost_kg", pair(found.lost_kg))?;
    parts.set_item("kg_a_year", pair(found.kg_a_year))?;
    parts.set_item("share_a_year", pair(found.share_a_year))?;
    parts.set_item("last_share_a_year", found.last_share_a_year)?;
    Ok(parts)
}

/// The recovery as keyword arguments of its class. Contents of the cylinder: before, and after.
#[pyfunction]
pub fn recovery_parts<'py>(
    py: Python<'py>,
    expected: Pair,
    cylinder_limit_kg: f64,
    contents: (Pair, Option<Pair>),
    tolerance: Option<f64>,
) -> PyResult<Bound<'py, PyDict>> {
    let judge = || {
        recovery(&Recovery {
            expected_kg: taken(expected)?,
            cylinder_limit_kg,
            before_kg: taken(contents.0)?,
            after_kg: contents.1.map(taken).transpose()?,
            tolerance: tolerance.unwrap_or(CHARGE_TOLERANCE),
        })
    };
    let found = answered(py, judge())?;
    let parts = PyDict::new(py);
    parts.set_item("room_kg", pair(found.room_kg))?;
    parts.set_item("room", found.room.name())?;
    parts.set_item("room_advice", found.room.sentence())?;
    parts.set_item("excess_kg", found.excess_kg)?;
    parts.set_item("recovered_kg", found.recovered_kg.map(pair))?;
    parts.set_item("deviation_kg", found.deviation_kg.map(pair))?;
    parts.set_item("room_after_kg", found.room_after_kg)?;
    parts.set_item("balance", found.balance.name())?;
    parts.set_item("advice", found.balance.sentence())?;
    Ok(parts)
}

pub fn add(module: &Bound<'_, PyModule>) -> PyResult<()> {
    module.add_function(wrap_pyfunction!(expected_charge, module)?)?;
    module.add_function(wrap_pyfunction!(charge_account_parts, module)?)?;
    module.add_function(wrap_pyfunction!(leak_rate_parts, module)?)?;
    module.add_function(wrap_pyfunction!(recovery_parts, module)?)
}
