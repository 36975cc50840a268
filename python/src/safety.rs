//! Room limits, cylinders, recovery levels and cautions.

use pyo3::prelude::*;
use pyo3::types::PyDict;
use satline::Error;
use satline::quantity::{Atmosphere, Mass, Temperature};
use satline::refrigerant::Refrigerant as Record;
use satline::safety::{
    self, Cylinder, Given, Installation, Room, RoomLimit, Situation, cautions_for, cylinder_fill, recovery_level,
};

use crate::elementwise::two;
use crate::raise::{Place, raise};
use crate::refrigerant::Refrigerant;

/// Largest charge for each area and height.
#[pyfunction]
pub fn largest_charge_kg<'py>(
    refrigerant: &Refrigerant,
    area_m2: &Bound<'py, PyAny>,
    height_m: &Bound<'py, PyAny>,
) -> PyResult<Bound<'py, PyAny>> {
    let identity = refrigerant.0.identity();
    two((area_m2, "area_m2"), (height_m, "height_m"), |area, height| safety::largest_charge_kg(identity, area, height))
}

/// Smallest area for each charge and height.
#[pyfunction]
pub fn smallest_area_m2<'py>(
    refrigerant: &Refrigerant,
    charge_kg: &Bound<'py, PyAny>,
    height_m: &Bound<'py, PyAny>,
) -> PyResult<Bound<'py, PyAny>> {
    let identity = refrigerant.0.identity();
    two((charge_kg, "charge_kg"), (height_m, "height_m"), |charge, height| {
        safety::smallest_area_m2(identity, Mass::from_kilograms(charge)?, height)
    })
}

/// The height that the standard takes for an installation.
#[pyfunction]
pub fn installation_height_m(py: Python<'_>, installation: &str) -> PyResult<f64> {
    let known = Installation::ALL.iter().find(|choice| choice.name() == installation);
    let error = Error::UnknownChoice { field: "installation", choices: "floor, window, wall, ceiling" };
    known
        .map(|choice| choice.height_m())
        .ok_or_else(|| raise(py, &error, &Place { given: Some(installation), ..Place::default() }))
}

/// The answer about a room as the keyword arguments of its class.
#[pyfunction]
pub fn room_limit_parts<'py>(
    py: Python<'py>,
    refrigerant: &Refrigerant,
    height_m: f64,
    given: (Option<f64>, Option<f64>),
    ceiling_height_m: Option<f64>,
    ventilated: bool,
) -> PyResult<Bound<'py, PyDict>> {
    let judge = || -> Result<RoomLimit, Error> {
        let charge = given.1.map(Mass::from_kilograms).transpose()?;
        let given = match (given.0, charge) {
            (Some(area), Some(charge)) => Given::Both(area, charge),
            (None, Some(charge)) => Given::Charge(charge),
            // Python asks for one of the two; without both this is refused as no area.
            (area, None) => Given::Area(area.unwrap_or(0.0)),
        };
        let room = Room { ceiling_height_m, ventilated, ..Room::new(refrigerant.0.identity(), height_m, given) };
        safety::room_limit(&room)
    };
    let found = judge().map_err(|error| raise(py, &error, &Place::default()))?;
    let parts = PyDict::new(py);
    parts.set_item("outcome", found.outcome.name())?;
    parts.set_item("reason", found.reason.sentence())?;
    parts.set_item("clause", found.clause.sentence())?;
    parts.set_item("lower_flammability_limit_kg_m3", found.lower_flammability_limit_kg_m3)?;
    parts.set_item("height_m", found.height_m)?;
    let bands = found.bands;
    parts.set_item("m1_kg", bands.map(|bands| bands.m1_kg))?;
    parts.set_item("m2_kg", bands.map(|bands| bands.m2_kg))?;
    parts.set_item("m3_kg", bands.map(|bands| bands.m3_kg))?;
    parts.set_item("largest_charge_kg", found.largest_charge_kg)?;
    parts.set_item("smallest_area_m2", found.smallest_area_m2)?;
    parts.set_item("within_limit", found.within_limit)?;
    let spread = found.concentration;
    parts.set_item("concentration_kg_m3", spread.map(|spread| spread.kg_m3))?;
    parts.set_item("share_of_flammability_limit", spread.map(|spread| spread.share_of_limit))?;
    parts.set_item("exceeds_quarter", spread.map(|spread| spread.exceeds_quarter))?;
    parts.set_item("concentration_height_m", spread.map(|spread| spread.ceiling_height_m))?;
    parts.set_item("assumptions", found.assumptions().map(|given| given.sentence()).collect::<Vec<_>>())?;
    Ok(parts)
}

/// The answer about a cylinder as the keyword arguments of its class. Masses: tare and contents; temperatures: now and
/// highest.
#[pyfunction]
pub fn cylinder_fill_parts<'py>(
    py: Python<'py>,
    refrigerants: Vec<PyRef<'py, Refrigerant>>,
    water_capacity_kg: f64,
    masses: (Option<f64>, Option<f64>),
    temperatures: (Option<f64>, Option<f64>),
) -> PyResult<Bound<'py, PyDict>> {
    let candidates: Vec<&'static Record> = refrigerants.iter().map(|refrigerant| refrigerant.0).collect();
    let fill = || {
        let kelvin = |value: Option<f64>| value.map(Temperature::from_kelvin).transpose();
        cylinder_fill(&Cylinder {
            tare_kg: masses.0,
            contents_kg: masses.1,
            temperature: kelvin(temperatures.0)?,
            highest_temperature: kelvin(temperatures.1)?,
            ..Cylinder::new(&candidates, water_capacity_kg)
        })
    };
    let found = fill().map_err(|error: Error| raise(py, &error, &Place::default()))?;
    let parts = PyDict::new(py);
    parts.set_item("volume_m3", found.volume_m3)?;
    parts.set_item("eighty_percent_kg", found.eighty_percent_kg)?;
    parts.set_item("liquid_full_kg", found.liquid_full_kg)?;
    parts.set_item("limit_kg", found.limit_kg)?;
    parts.set_item("rule", found.rule.sentence())?;
    parts.set_item("scale_limit_kg", found.scale_limit_kg)?;
    parts.set_item("highest_temperature_k", found.highest_temperature_k)?;
    parts.set_item("full_at_limit_k", found.full_at_limit.kelvin)?;
    parts.set_item("full_at_limit_is_at_least", found.full_at_limit.at_least)?;
    parts.set_item("margin_at_limit_k", found.margin_at_limit_k)?;
    let contents = found.contents;
    parts.set_item("verdict", contents.map(|contents| contents.verdict.name()))?;
    parts.set_item("advice", contents.map(|contents| contents.verdict.sentence()))?;
    parts.set_item("room_left_kg", contents.map(|contents| contents.room_left_kg))?;
    parts.set_item("full_k", contents.map(|contents| contents.full.kelvin))?;
    parts.set_item("full_is_at_least", contents.map(|contents| contents.full.at_least))?;
    parts.set_item("margin_k", contents.map(|contents| contents.margin_k))?;
    parts.set_item("margin_now_k", contents.and_then(|contents| contents.margin_now_k))?;
    Ok(parts)
}

/// What a scale shows less the tare.
#[pyfunction]
pub fn cylinder_contents_kg(py: Python<'_>, scale_kg: f64, tare_kg: f64) -> PyResult<f64> {
    safety::cylinder_contents_kg(scale_kg, tare_kg).map_err(|error| raise(py, &error, &Place::default()))
}

/// The recovery level as the keyword arguments of its class.
#[pyfunction]
pub fn recovery_level_parts<'py>(
    py: Python<'py>,
    refrigerant: &Refrigerant,
    charge_kg: f64,
    ambient_pressure_pa: f64,
) -> PyResult<Bound<'py, PyDict>> {
    let find = || recovery_level(refrigerant.0.curves, charge_kg, Atmosphere::from_pascals(ambient_pressure_pa)?);
    let found = find().map_err(|error: Error| raise(py, &error, &Place::default()))?;
    let parts = PyDict::new(py);
    parts.set_item("appliance_class", found.class.name())?;
    parts.set_item("pressure_at_104_f_pa", found.pressure_at_104_f_pa)?;
    parts.set_item("is_large", found.is_large)?;
    parts.set_item("vacuum_in_hg", found.vacuum_in_hg)?;
    parts.set_item("pressure_pa", found.pressure_pa)?;
    parts.set_item("gauge_pa", found.gauge_pa)?;
    parts.set_item("notes", found.notes().map(|note| note.sentence()).collect::<Vec<_>>())?;
    Ok(parts)
}

/// What can hurt, most urgent first.
#[pyfunction]
pub fn caution_sentences(
    py: Python<'_>,
    refrigerant: Option<&Refrigerant>,
    situation: &str,
) -> PyResult<Vec<&'static str>> {
    let known = Situation::ALL.iter().copied().find(|choice| choice.name() == situation);
    let choices = "charging, recovering, pressure-test, opening-circuit, leak-search, cylinder, measuring";
    let error = Error::UnknownChoice { field: "situation", choices };
    let situation = known.ok_or_else(|| raise(py, &error, &Place { given: Some(situation), ..Place::default() }))?;
    let cautions = cautions_for(refrigerant.map(|refrigerant| refrigerant.0.identity()), situation);
    Ok(cautions.iter().map(|caution| caution.sentence()).collect())
}
