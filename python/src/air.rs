//! Moist air and the air side of the coil.

use pyo3::prelude::*;
use pyo3::types::PyDict;
use satline::Error;
use satline::air::{
    AirflowPlace, CoilAir, CoilAirflow, Humidity, KnownHeat, MeasuredAir, MoistAir, actual_airflow_m3_s, density_ratio,
    saturation_pressure_pa, standard_airflow_m3_s,
};
use satline::charge::target_split;
use satline::quantity::{AirTemperature, Airflow, Atmosphere, Temperature};
use satline::uncertain::Uncertain;

use crate::columns::{Row, both, columns, pairs, uncertain};
use crate::elementwise::one;

/// Adds them to the module.
pub fn add(module: &Bound<'_, PyModule>) -> PyResult<()> {
    module.add_function(wrap_pyfunction!(moist_air_parts, module)?)?;
    module.add_function(wrap_pyfunction!(coil_parts, module)?)?;
    module.add_function(wrap_pyfunction!(standard_airflow, module)?)?;
    module.add_function(wrap_pyfunction!(air_pressure, module)?)
}

const COLUMNS: [(&str, bool); 12] = [
    ("dry_bulb_k", false),
    ("pressure_pa", false),
    ("wet_bulb_k", false),
    ("dew_point_k", true),
    ("relative_humidity", false),
    ("humidity_ratio", false),
    ("degree_of_saturation", false),
    ("vapor_pressure_pa", false),
    ("enthalpy_j_kg", false),
    ("density_kg_m3", false),
    ("specific_volume_m3_kg", false),
    ("density_ratio", false),
];

fn air(dry: f64, humidity: f64, pressure: f64, measure: &str) -> Result<MoistAir, Error> {
    let (dry, pressure) = (AirTemperature::from_kelvin(dry)?, Atmosphere::from_pascals(pressure)?);
    match measure {
        "wet_bulb_k" => MoistAir::from_wet_bulb(dry, AirTemperature::from_kelvin(humidity)?, pressure),
        "dew_point_k" => MoistAir::from_dew_point(dry, Temperature::from_kelvin(humidity)?, pressure),
        "relative_humidity" => MoistAir::from_relative_humidity(dry, humidity, pressure),
        _ => MoistAir::from_humidity_ratio(dry, humidity, pressure),
    }
}

/// Moist air as the keyword arguments of its class; `measure` is the name of the humidity's argument.
#[pyfunction]
pub fn moist_air_parts<'py>(
    py: Python<'py>,
    dry_bulb_k: &Bound<'py, PyAny>,
    humidity: &Bound<'py, PyAny>,
    pressure_pa: &Bound<'py, PyAny>,
    measure: &str,
) -> PyResult<Bound<'py, PyDict>> {
    let arguments = [(dry_bulb_k, "dry_bulb_k"), (humidity, measure), (pressure_pa, "pressure_pa")];
    columns(py, &arguments, &COLUMNS, |values| {
        let [dry, humidity, pressure] = values else { return Ok(Row::new()) };
        let air = air(*dry, *humidity, *pressure, measure)?;
        Ok(vec![
            Some(air.dry_bulb().kelvin()),
            Some(air.pressure().pascals()),
            Some(air.wet_bulb_k()),
            air.dew_point_k().ok(),
            Some(air.relative_humidity()),
            Some(air.humidity_ratio()),
            Some(air.degree_of_saturation()),
            Some(air.vapor_pressure_pa()),
            Some(air.enthalpy_j_kg()),
            Some(air.density_kg_m3()),
            Some(air.specific_volume_m3_kg()),
            Some(density_ratio(&air)),
        ])
    })
}

fn measure(name: &str, input: Uncertain) -> Humidity {
    match name {
        "wet_bulb_k" => Humidity::WetBulb(input),
        "dew_point_k" => Humidity::DewPoint(input),
        "relative_humidity" => Humidity::Relative(input),
        _ => Humidity::Ratio(input),
    }
}

/// The arguments of a question to the coil's air, each with its uncertainty: dry bulb, humidity, leaving dry bulb,
/// leaving humidity, pressure, shared bias, and two that depend on the question.
const ARGUMENTS: [&str; 8] = [
    "return_dry_bulb_k",
    "return humidity",
    "supply_dry_bulb_k",
    "supply humidity",
    "pressure_pa",
    "shared_bias_k",
    "airflow_m3_s or heat",
    "blower_w",
];

/// Answers a question to the coil's air: "split", "capacity" (detail: the airflow's place), "airflow" (detail: which heat)
/// or "surface".
#[pyfunction]
pub fn coil_parts<'py>(
    py: Python<'py>,
    question: &str,
    measures: (String, Option<String>),
    detail: &str,
    arguments: Vec<Bound<'py, PyAny>>,
) -> PyResult<Bound<'py, PyDict>> {
    let (entering, leaving) = &measures;
    let named: Vec<_> =
        arguments.iter().zip(ARGUMENTS.iter().flat_map(|name| [*name, "standard uncertainty"])).collect();
    let coil = |values: &[f64]| CoilAir {
        entering: MeasuredAir { dry_bulb_k: uncertain(values, 0), humidity: measure(entering, uncertain(values, 1)) },
        leaving_dry_bulb_k: uncertain(values, 2),
        leaving_humidity: leaving.as_ref().map(|name| measure(name, uncertain(values, 3))),
        pressure_pa: uncertain(values, 4),
        shared_bias_k: uncertain(values, 5).standard_uncertainty,
    };
    match question {
        "split" => pairs(py, &named, &["split_k", "target_k", "deviation_k"], |values| {
            let found = coil(values).split(|dry, wet| target_split(dry, wet).difference())?;
            Ok(both([Ok(found.split_k), found.target_k, found.deviation_k]))
        }),
        "capacity" => pairs(py, &named, &CAPACITY, |values| {
            let place = AirflowPlace::ALL.into_iter().find(|place| place.name() == detail).ok_or(PLACE)?;
            let found = coil(values).capacity(uncertain(values, 6), place)?;
            Ok(both([
                Ok(found.dry_air_kg_s),
                Ok(found.sensible_w),
                Ok(found.latent_w),
                Ok(found.total_w),
                Ok(found.condensate_w),
                Ok(found.coil_w),
                Ok(found.condensate_kg_s),
                found.sensible_heat_ratio,
            ]))
        }),
        "airflow" => pairs(py, &named, &AIRFLOW, |values| {
            let (heat, blower_w) = (uncertain(values, 6), uncertain(values, 7));
            let known = match detail {
                "heating_w" => KnownHeat::Heating { heat_w: heat, blower_w },
                "sensible_w" => KnownHeat::Sensible(heat),
                "total_w" => KnownHeat::Total(heat),
                _ => KnownHeat::Refrigerant { evaporator_w: heat, blower_w },
            };
            let CoilAirflow { dry_air_kg_s, entering_m3_s, leaving_m3_s, standard_m3_s } =
                coil(values).airflow(known)?;
            Ok(both([dry_air_kg_s, entering_m3_s, leaving_m3_s, standard_m3_s].map(Ok)))
        }),
        _ => pairs(py, &named, &["temperature_k", "bypass_factor"], |values| {
            let found = coil(values).apparatus_dew_point()?;
            Ok(both([found.temperature_k, found.bypass_factor].map(Ok)))
        }),
    }
}

const CAPACITY: [&str; 8] = [
    "dry_air_kg_s",
    "sensible_w",
    "latent_w",
    "total_w",
    "condensate_w",
    "coil_w",
    "condensate_kg_s",
    "sensible_heat_ratio",
];
const AIRFLOW: [&str; 4] = ["dry_air_kg_s", "entering_m3_s", "leaving_m3_s", "standard_m3_s"];
const PLACE: Error = Error::UnknownChoice { field: "place", choices: "entering, leaving, standard" };

/// The flow at standard air of a volume flow in air of that state, or the other way round.
#[pyfunction]
pub fn standard_airflow<'py>(
    py: Python<'py>,
    airflow_m3_s: &Bound<'py, PyAny>,
    dry_bulb_k: &Bound<'py, PyAny>,
    humidity_ratio: &Bound<'py, PyAny>,
    pressure_pa: &Bound<'py, PyAny>,
    actual: bool,
) -> PyResult<Bound<'py, PyDict>> {
    let arguments = [
        (airflow_m3_s, "airflow_m3_s"),
        (dry_bulb_k, "dry_bulb_k"),
        (humidity_ratio, "humidity_ratio"),
        (pressure_pa, "pressure_pa"),
    ];
    columns(py, &arguments, &[("airflow_m3_s", false)], |values| {
        let [flow, dry, ratio, pressure] = values else { return Ok(Row::new()) };
        let (flow, air) = (Airflow::from_m3_s(*flow)?, air(*dry, *ratio, *pressure, "humidity_ratio")?);
        let converted = if actual { actual_airflow_m3_s(flow, &air) } else { standard_airflow_m3_s(flow, &air) };
        Ok(vec![Some(converted)])
    })
}

/// Pressure of the standard atmosphere at an altitude, or saturation pressure of water at a temperature, Pa.
#[pyfunction]
pub fn air_pressure<'py>(value: &Bound<'py, PyAny>, of_altitude: bool) -> PyResult<Bound<'py, PyAny>> {
    if of_altitude {
        one(value, "altitude_m", |altitude| Ok(Atmosphere::at_altitude_m(altitude)?.pascals()))
    } else {
        one(value, "temperature_k", |kelvin| saturation_pressure_pa(Temperature::from_kelvin(kelvin)?))
    }
}
