//! Two refrigerants in the same unit.

use pyo3::prelude::*;
use pyo3::types::PyDict;
use satline::Error;
use satline::quantity::{Pressure, Temperature, TemperatureDifference};
use satline::uncertain::Uncertain;
use satline::visit::retrofit::{self, CondensingAt, Conditions, Cycle, FlowRatios};

use crate::raise::{Place, raise};
use crate::refrigerant::Refrigerant;

/// What may be left out: useful superheat, isentropic efficiency, standstill and low-side standstill temperature, design
/// pressure of the high and of the low side, highest discharge temperature.
type Options = (Option<f64>, Option<f64>, Option<f64>, Option<f64>, Option<f64>, Option<f64>, Option<f64>);

/// The comparison as the keyword arguments of its class. Temperatures: evaporating, condensing; differences: superheat,
/// subcooling.
#[pyfunction]
pub fn compare_refrigerants_parts<'py>(
    py: Python<'py>,
    old: &Refrigerant,
    new: &Refrigerant,
    stated: (f64, f64, f64, f64),
    condensing_at: &str,
    options: Options,
) -> PyResult<Bound<'py, PyDict>> {
    let at = CondensingAt::ALL.iter().copied().find(|choice| choice.name() == condensing_at);
    let (evaporating, condensing, superheat, subcooling) = stated;
    let (useful, efficiency, standstill, low_standstill, high_design, low_design, discharge) = options;
    let compare = || -> Result<_, Error> {
        let temperature = |value: Option<f64>, default: f64| Temperature::from_kelvin(value.unwrap_or(default));
        let pressure = |value: Option<f64>| value.map(Pressure::from_pascals).transpose();
        let conditions = Conditions {
            condensing_at: at.ok_or(Error::UnknownChoice { field: "condensing_at", choices: "bubble, mean, dew" })?,
            useful_superheat: useful.unwrap_or(0.0),
            isentropic_efficiency: efficiency.unwrap_or(retrofit::DEFAULT_ISENTROPIC_EFFICIENCY),
            standstill: temperature(standstill, retrofit::DEFAULT_STANDSTILL_K)?,
            low_side_standstill: temperature(low_standstill, retrofit::DEFAULT_LOW_SIDE_STANDSTILL_K)?,
            high_side_design_pressure: pressure(high_design)?,
            low_side_design_pressure: pressure(low_design)?,
            highest_discharge: temperature(discharge, retrofit::DEFAULT_HIGHEST_DISCHARGE_K)?,
            ..Conditions::new(
                Temperature::from_kelvin(evaporating)?,
                Temperature::from_kelvin(condensing)?,
                TemperatureDifference::from_kelvin(superheat)?,
                TemperatureDifference::from_kelvin(subcooling)?,
            )?
        };
        retrofit::compare_refrigerants(old.0.model, new.0.model, &conditions)
    };
    let found = compare().map_err(|error| {
        let given = matches!(error, Error::UnknownChoice { .. }).then_some(condensing_at);
        raise(py, &error, &Place { given, ..Place::default() })
    })?;
    let parts = PyDict::new(py);
    parts.set_item("outcome", found.outcome.name())?;
    parts.set_item("reasons", found.reasons().map(|reason| (reason.name(), reason.sentence())).collect::<Vec<_>>())?;
    parts.set_item("cautions", found.cautions().map(|caution| caution.sentence()).collect::<Vec<_>>())?;
    parts.set_item("old_cycle", cycle(py, &found.old)?)?;
    parts.set_item("new_cycle", cycle(py, &found.new)?)?;
    parts.set_item("volumetric_capacity_ratio", found.volumetric_capacity_ratio)?;
    parts.set_item("coefficient_of_performance_ratio", found.coefficient_of_performance_ratio)?;
    parts.set_item("discharge_temperature_rise_k", found.discharge_temperature_rise_k)?;
    parts.set_item("charge_ratio", found.charge_ratio)?;
    parts.set_item("at_equal_displacement", flows(py, &found.at_equal_displacement)?)?;
    parts.set_item("at_equal_capacity", flows(py, &found.at_equal_capacity)?)?;
    parts.set_item("old_oil", found.old_oil.name())?;
    parts.set_item("new_oil", found.new_oil.name())?;
    parts.set_item("new_oil_advice", found.new_oil.sentence())?;
    Ok(parts)
}

fn cycle<'py>(py: Python<'py>, cycle: &Cycle) -> PyResult<Bound<'py, PyDict>> {
    let parts = PyDict::new(py);
    for (name, value) in [
        ("evaporating_pressure_pa", cycle.evaporating_pressure_pa),
        ("condensing_pressure_pa", cycle.condensing_pressure_pa),
        ("pressure_ratio", cycle.pressure_ratio),
        ("evaporating_glide_k", cycle.evaporating_glide_k),
        ("condensing_glide_k", cycle.condensing_glide_k),
        ("suction_temperature_k", cycle.suction_temperature_k),
        ("suction_density_kg_m3", cycle.suction_density_kg_m3),
        ("discharge_temperature_k", cycle.discharge_temperature_k),
        ("discharge_density_kg_m3", cycle.discharge_density_kg_m3),
        ("liquid_temperature_k", cycle.liquid_temperature_k),
        ("liquid_density_kg_m3", cycle.liquid_density_kg_m3),
        ("bubble_density_kg_m3", cycle.bubble_density_kg_m3),
        ("refrigerating_effect_j_kg", cycle.refrigerating_effect_j_kg),
        ("volumetric_capacity_j_m3", cycle.volumetric_capacity_j_m3),
        ("coefficient_of_performance", cycle.coefficient_of_performance),
    ] {
        parts.set_item(name, value)?;
    }
    parts.set_item("standstill_pressure_pa", cycle.standstill_pressure_pa)?;
    parts.set_item("low_side_standstill_pressure_pa", cycle.low_side_standstill_pressure_pa)?;
    Ok(parts)
}

fn flows<'py>(py: Python<'py>, ratios: &FlowRatios) -> PyResult<Bound<'py, PyDict>> {
    let parts = PyDict::new(py);
    parts.set_item("mass_flow_ratio", ratios.mass_flow)?;
    parts.set_item("orifice_area_ratio", ratios.orifice_area)?;
    parts.set_item("suction_velocity_ratio", ratios.suction_velocity)?;
    parts.set_item("discharge_velocity_ratio", ratios.discharge_velocity)?;
    parts.set_item("liquid_velocity_ratio", ratios.liquid_velocity)?;
    Ok(parts)
}

/// The mass with which to start, and one standard uncertainty of it.
#[pyfunction]
pub fn starting_charge_kg(
    py: Python<'_>,
    old_charge_kg: f64,
    old_charge_uncertainty_kg: f64,
    charge_ratio: f64,
    share: Option<f64>,
) -> PyResult<(f64, f64)> {
    let share = share.unwrap_or(retrofit::DEFAULT_STARTING_SHARE);
    Uncertain::new(old_charge_kg, old_charge_uncertainty_kg)
        .and_then(|charge| retrofit::starting_charge(charge, charge_ratio, share))
        .map(|found| (found.value, found.standard_uncertainty))
        .map_err(|error| raise(py, &error, &Place::default()))
}
