//! Viscosity, thermal conductivity and surface tension of a refrigerant.

use pyo3::prelude::*;
use satline::Error;
use satline::eos::Mixture;
use satline::refrigerant::Refrigerant as Record;

use crate::elementwise::{one, two};
use crate::raise::{Place, raise};

/// A property of one phase at a temperature and a density.
pub fn by_density<'py>(
    record: &'static Record,
    temperature: &Bound<'py, PyAny>,
    density: &Bound<'py, PyAny>,
    of: fn(&Mixture, f64, f64) -> Result<f64, Error>,
) -> PyResult<Bound<'py, PyAny>> {
    let mixture = mixture(temperature.py(), record)?;
    two((temperature, "temperature_k"), (density, "density_kg_m3"), |temperature, density| {
        of(&mixture, temperature, density)
    })
}

pub fn surface_tension<'py>(record: &'static Record, temperature: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
    let mixture = mixture(temperature.py(), record)?;
    one(temperature, "temperature_k", |temperature| mixture.surface_tension(temperature))
}

/// A stated error.
pub fn stated(py: Python<'_>, record: &'static Record, of: fn(&Mixture) -> Result<f64, Error>) -> PyResult<f64> {
    of(&mixture(py, record)?).map_err(|error| raise(py, &error, &Place::default()))
}

fn mixture(py: Python<'_>, record: &'static Record) -> PyResult<Mixture> {
    Mixture::of(record.model).map_err(|error| raise(py, &error, &Place::default()))
}
