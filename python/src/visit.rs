//! The standing-pressure check, and the refrigerants that a pressure would fit.

use pyo3::prelude::*;
use pyo3::types::PyDict;
use satline::Error;
use satline::quantity::{Pressure, Temperature};
use satline::refrigerant::matches;
use satline::visit::standing::{Liquid, Standing, StandingFinding, standing_check};

use crate::raise::{Place, raise};
use crate::refrigerant::Refrigerant;

/// The finding as the keyword arguments of its class. Limits: one standard uncertainty of pressure and of temperature,
/// and the largest spread.
#[pyfunction]
pub fn standing_check_parts<'py>(
    py: Python<'py>,
    refrigerant: &Refrigerant,
    pressure_pa: f64,
    temperatures_k: Vec<f64>,
    liquid: &str,
    limits: (Option<f64>, Option<f64>, Option<f64>),
) -> PyResult<Bound<'py, PyDict>> {
    let (pressure_uncertainty_pa, temperature_uncertainty_k, largest_spread_k) = limits;
    let known = Liquid::ALL.iter().copied().find(|choice| choice.name() == liquid);
    let check = || -> Result<StandingFinding, Error> {
        let temperatures =
            temperatures_k.iter().map(|kelvin| Temperature::from_kelvin(*kelvin)).collect::<Result<Vec<_>, _>>()?;
        standing_check(&Standing {
            liquid: known.ok_or(Error::UnknownChoice { field: "liquid", choices: "unknown, present, most" })?,
            pressure_uncertainty_pa,
            temperature_uncertainty_k,
            largest_spread_k,
            ..Standing::new(refrigerant.0.curves, Pressure::from_pascals(pressure_pa)?, &temperatures)
        })
    };
    let found = check().map_err(|error| {
        let given = matches!(error, Error::UnknownChoice { .. }).then_some(liquid);
        raise(py, &error, &Place { given, ..Place::default() })
    })?;
    parts(py, &found)
}

fn parts<'py>(py: Python<'py>, found: &StandingFinding) -> PyResult<Bound<'py, PyDict>> {
    let parts = PyDict::new(py);
    parts.set_item("outcome", found.outcome.name())?;
    parts.set_item("reason", found.reason.sentence())?;
    parts.set_item("causes", found.causes().map(|cause| cause.name()).collect::<Vec<_>>())?;
    parts.set_item("advice", found.advice.sentence())?;
    parts.set_item("cautions", found.cautions().map(|caution| caution.sentence()).collect::<Vec<_>>())?;
    parts.set_item("temperature_k", found.temperature_k)?;
    parts.set_item("temperature_uncertainty_k", found.temperature_uncertainty_k)?;
    parts.set_item("spread_k", found.spread_k)?;
    parts.set_item("bubble_pressure_pa", found.bubble.value_pa)?;
    parts.set_item("dew_pressure_pa", found.dew.value_pa)?;
    parts.set_item("comparison_uncertainty_pa", found.bubble.standard_uncertainty_pa)?;
    parts.set_item("above_bubble_k", found.above_bubble_k)?;
    let partial = found.non_condensables;
    parts.set_item("non_condensables_pa", partial.map(|partial| partial.estimate.value_pa))?;
    parts
        .set_item("non_condensables_uncertainty_pa", partial.map(|partial| partial.estimate.standard_uncertainty_pa))?;
    parts.set_item("non_condensables_at_most_pa", partial.map(|partial| partial.at_most_pa))?;
    parts.set_item("unseen_at_most_pa", found.unseen_at_most_pa)?;
    Ok(parts)
}

/// How many refrigerants fit, and of each of the nearest: designation, distance, bubble and dew temperature, uncertainty
/// and whether it fits.
type Found = (usize, Vec<(&'static str, f64, f64, f64, f64, bool)>);

/// The refrigerants nearest to a pressure and temperature.
#[pyfunction]
pub fn matches_parts(
    py: Python<'_>,
    pressure_pa: f64,
    temperature_k: f64,
    pressure_uncertainty_pa: Option<f64>,
    temperature_uncertainty_k: Option<f64>,
) -> PyResult<Found> {
    let find = || {
        let (pressure, temperature) = (Pressure::from_pascals(pressure_pa)?, Temperature::from_kelvin(temperature_k)?);
        matches(pressure, temperature, pressure_uncertainty_pa, temperature_uncertainty_k)
    };
    let found = find().map_err(|error: Error| raise(py, &error, &Place::default()))?;
    let rows = found.iter().map(|found| {
        (
            found.refrigerant.designation(),
            found.distance_k,
            found.bubble_temperature_k,
            found.dew_temperature_k,
            found.standard_uncertainty_k,
            found.fits(),
        )
    });
    Ok((found.fitting(), rows.collect()))
}
