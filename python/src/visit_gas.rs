//! Pressure test, decay test, tube rating and temperature drop of a line.

use pyo3::prelude::*;
use pyo3::types::PyDict;
use satline::Error;
use satline::quantity::{GaugePressure, Pressure, Temperature};
use satline::uncertain::Uncertain;
use satline::visit::evacuation::{self, Decay, Sample, check_samples, decay_test};
use satline::visit::line_drop::{Flash, LineDrop, line_temperature_drop};
use satline::visit::pressure_test::{self, PressureTest, TestReading};
use satline::visit::tube_rating::{CopperTube, Joint, Temper, copper_tube_rating};
use satline::visit::{expected_nitrogen_pressure, frost_point, nitrogen_density_kg_m3, water_saturation_pressure};

use crate::elementwise;
use crate::raise::{Place, raise};
use crate::refrigerant::Refrigerant;

/// Adds these functions to the module.
pub fn add(module: &Bound<'_, PyModule>) -> PyResult<()> {
    module.add_function(wrap_pyfunction!(copper_tube_parts, module)?)?;
    module.add_function(wrap_pyfunction!(decay_parts, module)?)?;
    module.add_function(wrap_pyfunction!(expected_nitrogen_pressure_pa, module)?)?;
    module.add_function(wrap_pyfunction!(frost_point_k, module)?)?;
    module.add_function(wrap_pyfunction!(line_drop_parts, module)?)?;
    module.add_function(wrap_pyfunction!(nitrogen_density, module)?)?;
    module.add_function(wrap_pyfunction!(pressure_test_parts, module)?)?;
    module.add_function(wrap_pyfunction!(water_saturation_pressure_pa, module)?)
}

/// One word of a list of choices.
fn choice<T: Copy>(
    all: &[T],
    name: fn(T) -> &'static str,
    word: &str,
    field: &'static str,
    choices: &'static str,
) -> Result<T, Error> {
    all.iter().copied().find(|choice| name(*choice) == word).ok_or(Error::UnknownChoice { field, choices })
}

/// A value and its uncertainty as two entries: `{name}{unit}` and `{name}_uncertainty{unit}`.
fn put(parts: &Bound<'_, PyDict>, name: &str, unit: &str, value: Option<Uncertain>) -> PyResult<()> {
    parts.set_item(format!("{name}{unit}"), value.map(|value| value.value))?;
    parts.set_item(format!("{name}_uncertainty{unit}"), value.map(|value| value.standard_uncertainty))
}

#[pyfunction(name = "nitrogen_density_kg_m3")]
fn nitrogen_density<'py>(
    pressure_pa: &Bound<'py, PyAny>,
    temperature_k: &Bound<'py, PyAny>,
) -> PyResult<Bound<'py, PyAny>> {
    elementwise::two((pressure_pa, "pressure_pa"), (temperature_k, "temperature_k"), |pressure, temperature| {
        nitrogen_density_kg_m3(Pressure::from_pascals(pressure)?, Temperature::from_kelvin(temperature)?)
    })
}

#[pyfunction]
fn expected_nitrogen_pressure_pa<'py>(
    pressure_pa: &Bound<'py, PyAny>,
    temperature_k: &Bound<'py, PyAny>,
    later_temperature_k: &Bound<'py, PyAny>,
) -> PyResult<Bound<'py, PyAny>> {
    elementwise::many(
        [(pressure_pa, "pressure_pa"), (temperature_k, "temperature_k"), (later_temperature_k, "later_temperature_k")],
        |[pressure, temperature, later]| {
            let temperature = Temperature::from_kelvin(temperature)?;
            let later = Temperature::from_kelvin(later)?;
            Ok(expected_nitrogen_pressure(Pressure::from_pascals(pressure)?, temperature, later)?.pascals())
        },
    )
}

#[pyfunction]
fn water_saturation_pressure_pa<'py>(temperature_k: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
    elementwise::one(temperature_k, "temperature_k", |kelvin| {
        water_saturation_pressure(Temperature::from_kelvin(kelvin)?)
    })
}

#[pyfunction]
fn frost_point_k<'py>(pressure_pa: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
    elementwise::one(pressure_pa, "pressure_pa", |pascals| Ok(frost_point(pascals)?.kelvin()))
}

type TestLimits = (Option<f64>, Option<f64>, Option<f64>, Option<f64>, Option<f64>);

/// Limits: uncertainty of pressure and of temperature, volume, drop allowed, least time.
#[pyfunction]
fn pressure_test_parts<'py>(
    py: Python<'py>,
    first: (f64, Vec<f64>),
    last: (f64, Vec<f64>),
    duration_s: f64,
    low_side_design_pressure_pa: f64,
    limits: TestLimits,
) -> PyResult<Bound<'py, PyDict>> {
    let (pressure_uncertainty_pa, temperature_uncertainty_k, volume_m3, allowed_drop_pa, least_time_s) = limits;
    let kelvins = |values: &[f64]| -> Result<Vec<_>, Error> {
        values.iter().map(|kelvin| Temperature::from_kelvin(*kelvin)).collect()
    };
    let judge = || -> Result<_, Error> {
        let (first_at, last_at) = (kelvins(&first.1)?, kelvins(&last.1)?);
        let reading = |pascals, at| -> Result<_, Error> {
            Ok(TestReading {
                pressure_uncertainty_pa,
                temperature_uncertainty_k,
                ..TestReading::new(Pressure::from_pascals(pascals)?, at)
            })
        };
        pressure_test::pressure_test(&PressureTest {
            first: reading(first.0, first_at.as_slice())?,
            last: reading(last.0, last_at.as_slice())?,
            duration_s,
            low_side_design: Pressure::from_pascals(low_side_design_pressure_pa)?,
            volume_m3,
            allowed_drop_pa,
            least_time_s,
        })
    };
    let found = judge().map_err(|error| raise(py, &error, &Place::default()))?;
    let parts = PyDict::new(py);
    parts.set_item("outcome", found.outcome.name())?;
    parts.set_item("reason", found.reason.sentence())?;
    parts.set_item("advice", found.advice.sentence())?;
    parts.set_item("cautions", found.cautions().map(|caution| caution.sentence()).collect::<Vec<_>>())?;
    put(&parts, "first_temperature", "_k", Some(found.first_temperature_k))?;
    put(&parts, "last_temperature", "_k", Some(found.last_temperature_k))?;
    put(&parts, "expected_pressure", "_pa", Some(found.expected_pa))?;
    put(&parts, "residual", "_pa", Some(found.residual_pa))?;
    parts.set_item("metal_expansion_pa", found.metal_expansion_pa)?;
    parts.set_item("allowed_drop_pa", found.allowed_drop_pa)?;
    parts.set_item("smallest_drop_pa", found.smallest_drop_pa)?;
    put(&parts, "drop_rate", "_pa_h", Some(found.drop_rate_pa_h))?;
    parts.set_item("smallest_rate_pa_h", found.smallest_rate_pa_h)?;
    parts.set_item("density_kg_m3", found.density_kg_m3)?;
    put(&parts, "leak", "_pa_m3_s", found.leak.map(|leak| leak.throughput_pa_m3_s))?;
    put(&parts, "leak", "_g_yr", found.leak.map(|leak| leak.mass_rate_g_yr))?;
    parts.set_item("smallest_leak_g_yr", found.leak.map(|leak| leak.smallest_g_yr))?;
    Ok(parts)
}

type DecayLimits = (Option<f64>, Option<f64>, Option<f64>, Option<f64>, Option<f64>, Option<f64>, Option<f64>);

/// Limits: uncertainty of the temperature, resolution, noise, share, target, limit, least time. Times and pressures are
/// of one length, which Python has checked.
#[pyfunction]
fn decay_parts<'py>(
    py: Python<'py>,
    times_s: Vec<f64>,
    pressures_pa: Vec<f64>,
    coldest_temperature_k: f64,
    limits: DecayLimits,
) -> PyResult<Bound<'py, PyDict>> {
    let (temperature_uncertainty_k, resolution_pa, noise_pa, share, target_pa, limit_pa, least_time_s) = limits;
    let pairs = times_s.iter().zip(&pressures_pa);
    let samples: Vec<_> = pairs.map(|(time, pressure)| Sample { time_s: *time, pressure_pa: *pressure }).collect();
    check_samples(&samples).map_err(|(place, error)| {
        // The number of readings has no place.
        let one = satline::bounds::DECAY_COUNT.check(samples.len() as f64).is_ok();
        raise(py, &error, &Place { index: one.then(|| vec![place]), ..Place::default() })
    })?;
    let judge = || {
        decay_test(&Decay {
            temperature_uncertainty_k,
            resolution_pa,
            noise_pa,
            share,
            target_pa,
            limit_pa,
            least_time_s,
            ..Decay::new(&samples, Temperature::from_kelvin(coldest_temperature_k)?)
        })
    };
    let found = judge().map_err(|error: Error| raise(py, &error, &Place::default()))?;
    let parts = PyDict::new(py);
    parts.set_item("outcome", found.outcome.name())?;
    parts.set_item("reason", found.reason.sentence())?;
    parts.set_item("behaviour", found.behaviour.name())?;
    parts.set_item("causes", found.causes().map(evacuation::Cause::name).collect::<Vec<_>>())?;
    parts.set_item("advice", found.advice.sentence())?;
    parts.set_item("cautions", found.cautions().map(|caution| caution.sentence()).collect::<Vec<_>>())?;
    parts.set_item("watched_s", found.watched_s)?;
    parts.set_item("least_time_s", found.least_time_s)?;
    put(&parts, "first", "_pa", Some(found.first_pa))?;
    put(&parts, "last", "_pa", Some(found.last_pa))?;
    put(&parts, "rate", "_pa_s", Some(found.rate_pa_s))?;
    parts.set_item("smallest_rate_pa_s", found.smallest_rate_pa_s)?;
    put(&parts, "plateau", "_pa", found.plateau_pa)?;
    parts.set_item("time_constant_s", found.time_constant_s)?;
    parts.set_item("reaches_limit_s", found.reaches_limit_s)?;
    put(&parts, "water_pressure", "_pa", Some(found.water_pressure_pa))?;
    parts.set_item("frost_point_k", found.frost_point_k)?;
    parts.set_item("noise_pa", found.noise_pa)?;
    parts.set_item("evidence_for_curve", found.evidence_for_curve)?;
    Ok(parts)
}

/// Sizes: outside diameter and wall. Tolerances: of the wall and of the diameter.
#[pyfunction]
fn copper_tube_parts<'py>(
    py: Python<'py>,
    sizes: (f64, f64),
    temperature_k: f64,
    temper: &str,
    joint: &str,
    design_gauge_pressure_pa: Option<f64>,
    tolerances: (Option<f64>, Option<f64>),
) -> PyResult<Bound<'py, PyDict>> {
    let rate = || {
        let tube = CopperTube {
            outside_diameter_m: sizes.0,
            wall_m: sizes.1,
            temper: choice(Temper::ALL, Temper::name, temper, "temper", "annealed, drawn")?,
            joint: choice(Joint::ALL, Joint::name, joint, "joint", "brazed, unheated")?,
            temperature: Temperature::from_kelvin(temperature_k)?,
            wall_tolerance_m: tolerances.0,
            diameter_tolerance_m: tolerances.1,
        };
        copper_tube_rating(&tube, design_gauge_pressure_pa.map(GaugePressure::from_pascals).transpose()?)
    };
    let found = rate().map_err(|error: Error| {
        let given = match error {
            Error::UnknownChoice { field: "temper", .. } => Some(temper),
            Error::UnknownChoice { .. } => Some(joint),
            _ => None,
        };
        raise(py, &error, &Place { given, ..Place::default() })
    })?;
    let parts = PyDict::new(py);
    parts.set_item("rating_gauge_pressure_pa", found.rating.pascals())?;
    put(&parts, "nominal_gauge_pressure", "_pa", Some(found.nominal_pa))?;
    parts.set_item("allowable_stress_pa", found.allowable_stress_pa)?;
    parts.set_item("counted_as", found.counted_as.name())?;
    parts.set_item("outcome", found.outcome.map(|outcome| outcome.name()))?;
    parts.set_item("says", found.outcome.map(|outcome| outcome.sentence()))?;
    parts.set_item("margin_pa", found.margin_pa)?;
    parts.set_item("cautions", found.cautions().map(|caution| caution.sentence()).collect::<Vec<_>>())?;
    Ok(parts)
}

#[pyfunction]
fn line_drop_parts<'py>(
    py: Python<'py>,
    refrigerant: &Refrigerant,
    upstream_k: f64,
    downstream_k: f64,
    flash: &str,
    difference_uncertainty_k: Option<f64>,
) -> PyResult<Bound<'py, PyDict>> {
    let judge = || {
        line_temperature_drop(&LineDrop {
            refrigerant: refrigerant.0.curves,
            upstream: Temperature::from_kelvin(upstream_k)?,
            downstream: Temperature::from_kelvin(downstream_k)?,
            flash: choice(Flash::ALL, Flash::name, flash, "flash", "unknown, flashing, subcooled")?,
            difference_uncertainty_k,
        })
    };
    let found = judge().map_err(|error: Error| {
        let given = matches!(error, Error::UnknownChoice { .. }).then_some(flash);
        raise(py, &error, &Place { given, ..Place::default() })
    })?;
    let parts = PyDict::new(py);
    parts.set_item("outcome", found.outcome.name())?;
    parts.set_item("says", found.outcome.sentence())?;
    put(&parts, "temperature_drop", "_k", Some(found.temperature_drop_k))?;
    put(&parts, "least_pressure_drop", "_pa", Some(found.least_pressure_drop_pa))?;
    parts.set_item("smallest_drop_k", found.smallest_drop_k)?;
    parts.set_item("upstream_bubble_pressure_pa", found.upstream_bubble.pascals())?;
    parts.set_item("cautions", found.cautions().map(|caution| caution.sentence()).collect::<Vec<_>>())?;
    Ok(parts)
}
