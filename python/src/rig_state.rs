//! A state of the rig's unit as Python sees it: numbers by name, the cycle's corners, and what instruments show.

use pyo3::prelude::*;
use pyo3::types::PyDict;
use satline::reading::{Field, Reading};
use satline::rig::{Air, Conditions, RefrigerantMap, Sensors, Steady};
use satline::{Error, rig};

use crate::raise::{Place, raise};

/// A state with what it takes to show it.
#[pyclass(frozen, module = "satline._native")]
#[derive(Clone, Copy)]
pub struct RigState {
    pub state: Steady,
    pub conditions: Conditions,
    /// Dew temperature at the vapour port and bubble temperature at the liquid port, by the refrigerant's own pressure.
    dew: f64,
    bubble: f64,
}

/// A number of a state and its name; those of a reading's fields are the field's.
pub type Column = (&'static str, fn(&RigState) -> Option<f64>);
pub const COLUMNS: [Column; 29] = [
    ("outdoor_dry_bulb_k", |one| Some(one.conditions.outdoor_dry_bulb)),
    ("condenser_leaving_dry_bulb_k", |one| Some(one.state.condenser.air_temperature)),
    ("return_dry_bulb_k", |one| Some(one.conditions.return_dry_bulb)),
    ("return_wet_bulb_k", |one| Some(one.conditions.return_wet_bulb)),
    ("supply_dry_bulb_k", |one| Some(one.state.supply_dry_bulb)),
    ("supply_wet_bulb_k", |one| {
        Some(Air { temperature: one.state.supply_dry_bulb, ..one.state.evaporator.air }.wet_bulb())
    }),
    ("ambient_pressure_pa", |one| Some(one.conditions.ambient_pressure)),
    ("suction_pressure_pa", |one| Some(one.state.vapor_port.pressure)),
    ("suction_line_temperature_k", |one| Some(one.state.vapor_port.temperature)),
    ("liquid_pressure_pa", |one| Some(one.state.liquid_port.pressure)),
    ("liquid_line_temperature_k", |one| Some(one.state.liquid_port.temperature)),
    ("discharge_pressure_pa", |one| Some(one.state.discharge.pressure)),
    ("discharge_line_temperature_k", |one| Some(one.state.discharge.temperature)),
    ("coil_outlet_temperature_k", |one| Some(one.state.evaporator.temperature)),
    ("condensing_surface_temperature_k", |one| Some(one.state.condenser.surface_temperature)),
    ("airflow_m3_s", |one| Some(one.state.indoor_airflow)),
    ("compressor_power_w", |one| Some(one.state.compressor_power)),
    ("fan_power_w", |one| Some(one.state.fan_power)),
    ("capacity_w", |one| Some(one.state.capacity)),
    ("sensible_capacity_w", |one| Some(one.state.sensible_capacity)),
    ("mass_flow_kg_s", |one| Some(one.state.mass_flow)),
    ("charge_kg", |one| Some(one.state.charge)),
    ("low_side_charge_kg", |one| Some(one.state.low_side_charge)),
    ("superheat_k", |one| Some(one.state.vapor_port.temperature - one.dew)),
    ("subcooling_k", |one| Some(one.subcooling())),
    ("coil_superheat_k", |one| Some(one.state.evaporator.superheat)),
    ("non_condensable_pressure_pa", |one| Some(one.state.non_condensable_pressure)),
    ("valve_lift", |one| one.state.valve_lift),
    ("balance_miss", |one| Some(one.state.miss)),
];

/// Sensors by word.
pub fn sensors(py: Python<'_>, word: &str) -> PyResult<Sensors> {
    match word {
        "usual" => Ok(Sensors::usual()),
        "exact" => Ok(Sensors::exact()),
        _ => {
            let error = Error::UnknownChoice { field: "sensors", choices: "usual, exact" };
            Err(raise(py, &error, &Place { given: Some(word), ..Place::default() }))
        }
    }
}

/// The fields that a reading has, and the limits of error of each.
pub fn reading<'py>(py: Python<'py>, reading: &Reading) -> PyResult<(Bound<'py, PyDict>, Bound<'py, PyDict>)> {
    let (fields, uncertainty) = (PyDict::new(py), PyDict::new(py));
    for (field, accuracy) in Field::ALL.iter().zip(reading.accuracy) {
        if let Some(value) = reading.get(*field) {
            fields.set_item(field.name(), value)?;
        }
        if let Some(accuracy) = accuracy {
            let limits = PyDict::new(py);
            limits.set_item("of_reading", accuracy.of_reading)?;
            limits.set_item("absolute", accuracy.absolute)?;
            limits.set_item("resolution", accuracy.resolution)?;
            // Both or neither.
            if accuracy.of_full_scale > 0.0 {
                limits.set_item("of_full_scale", accuracy.of_full_scale)?;
                limits.set_item("full_scale", accuracy.full_scale)?;
            }
            if accuracy.group != 0 {
                limits.set_item("group", format!("group {}", accuracy.group))?;
            }
            uncertainty.set_item(field.name(), limits)?;
        }
    }
    Ok((fields, uncertainty))
}

impl RigState {
    pub fn new(map: &RefrigerantMap, state: Steady, conditions: Conditions) -> Result<Self, Error> {
        let liquid = state.liquid_port.pressure - state.non_condensable_pressure;
        let dew = map.saturation(state.vapor_port.pressure)?.dew_temperature;
        Ok(Self { state, conditions, dew, bubble: map.saturation(liquid)?.bubble_temperature })
    }

    /// Temperature below bubble at the liquid port, K.
    pub fn subcooling(&self) -> f64 {
        self.bubble - self.state.liquid_port.temperature
    }

    /// One of [`COLUMNS`].
    pub fn column(&self, place: usize) -> Option<f64> {
        COLUMNS.get(place).and_then(|(_, of)| of(self))
    }

    /// The corners of the cycle in the refrigerant's own pressure, in the order of the flow.
    fn corners(&self) -> [(&'static str, f64, f64); 9] {
        let rig::Steady { evaporator, condenser, .. } = &self.state;
        let foreign = self.state.non_condensable_pressure;
        let at = |name, point: &rig::Point| (name, point.pressure, point.enthalpy);
        let metered = self.state.metering_inlet.enthalpy;
        [
            at("compressor-inlet", &self.state.compressor_inlet),
            ("discharge", self.state.discharge.pressure - foreign, self.state.discharge.enthalpy),
            ("condenser-outlet", condenser.pressure, condenser.enthalpy),
            ("liquid-port", self.state.liquid_port.pressure - foreign, self.state.liquid_port.enthalpy),
            at("metering-inlet", &self.state.metering_inlet),
            ("evaporator-inlet", evaporator.inlet_pressure, metered),
            ("evaporator-outlet", self.state.coil_outlet_pressure, evaporator.enthalpy),
            at("vapor-port", &self.state.vapor_port),
            at("compressor-inlet", &self.state.compressor_inlet),
        ]
    }
}

#[pymethods]
impl RigState {
    /// The numbers by name.
    fn parts<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        let parts = PyDict::new(py);
        COLUMNS.iter().try_for_each(|(name, of)| parts.set_item(name, of(self)))?;
        parts.set_item("cycle", self.corners())?;
        Ok(parts)
    }

    /// What instruments on a visit show: fields, and their limits of error.
    fn reading<'py>(
        &self,
        py: Python<'py>,
        sensors: &str,
        seed: u64,
    ) -> PyResult<(Bound<'py, PyDict>, Bound<'py, PyDict>)> {
        let sensors = self::sensors(py, sensors)?;
        reading(py, &sensors.placed(seed).settled(&self.state, &self.conditions))
    }
}
