//! Results of several numbers each, as named columns: floats for numbers, arrays for arrays.

use numpy::PyArray1;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyTuple};
use satline::Error;
use satline::uncertain::Uncertain;

use crate::elementwise::{MASKED, Outcome, all_to, masked};
use crate::raise::{Place, raise};

/// One element's numbers, by column; None where there is no answer.
pub type Row = Vec<Option<f64>>;

/// Applies `function` to all arguments and gives a column for each name. Where the function says that nothing is
/// available, numbers raise and say why, and in arrays the cells are masked. `missing` says of a column whether its
/// cells may be; without any that may, all columns are plain.
pub fn columns<'py>(
    py: Python<'py>,
    arguments: &[(&Bound<'py, PyAny>, &str)],
    names: &[(&str, bool)],
    function: impl Fn(&[f64]) -> Result<Row, Error> + Sync,
) -> PyResult<Bound<'py, PyDict>> {
    let found = all_to(arguments, |values| match function(values) {
        Err(error @ Error::NotAvailable { .. }) => Ok(Err(error)),
        Err(error) => Err(error),
        Ok(row) => Ok(Ok(row)),
    })?;
    let parts = PyDict::new(py);
    match found {
        Outcome::One(row) => {
            let row = row.map_err(|error| raise(py, &error, &Place::default()))?;
            for ((name, _), value) in names.iter().zip(row) {
                parts.set_item(name, value)?;
            }
        }
        Outcome::Many { shape, items } => {
            for (column, (name, missing)) in names.iter().enumerate() {
                let of =
                    |row: &Result<Row, Error>| row.as_ref().ok().and_then(|row| row.get(column).copied().flatten());
                let cells: Vec<f64> = items.iter().map(|row| of(row).unwrap_or(MASKED)).collect();
                let array = PyArray1::from_vec(py, cells).call_method1("reshape", (PyTuple::new(py, &shape)?,))?;
                parts.set_item(name, if *missing { masked(&array)? } else { array })?;
            }
        }
    }
    Ok(parts)
}

/// Two columns for each value with its uncertainty.
pub fn both(values: impl IntoIterator<Item = Result<Uncertain, Error>>) -> Row {
    values
        .into_iter()
        .flat_map(|value| match value {
            Ok(value) => [Some(value.value), Some(value.standard_uncertainty)],
            Err(_) => [None, None],
        })
        .collect()
}

/// Runs [`columns`] for values with uncertainty: each name stands for a pair (value, standard uncertainty).
pub fn pairs<'py>(
    py: Python<'py>,
    arguments: &[(&Bound<'py, PyAny>, &str)],
    names: &[&str],
    function: impl Fn(&[f64]) -> Result<Row, Error> + Sync,
) -> PyResult<Bound<'py, PyDict>> {
    let doubled: Vec<String> = names.iter().flat_map(|name| [(*name).to_string(), format!("{name} ±")]).collect();
    let doubled: Vec<(&str, bool)> = doubled.iter().map(|name| (name.as_str(), true)).collect();
    let single = columns(py, arguments, &doubled, function)?;
    let parts = PyDict::new(py);
    for name in names {
        parts.set_item(name, (single.get_item(name)?, single.get_item(format!("{name} ±"))?))?;
    }
    Ok(parts)
}

/// The pairs (value, uncertainty) of a row of arguments.
pub fn uncertain(values: &[f64], place: usize) -> Uncertain {
    let at = |place: usize| values.get(place).copied().unwrap_or(f64::NAN);
    Uncertain { value: at(2 * place), standard_uncertainty: at(2 * place + 1) }
}
