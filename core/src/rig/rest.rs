//! A unit that stands: its pressures become equal, its liquid goes to the coldest place.

use super::coil::{Condensed, Evaporated};
use super::map::{Point, RefrigerantMap};
use super::moist::Air;
use super::steady::{Steady, Unit};
use super::stores::Inertia;
use super::unit::Conditions;
use crate::error::Error;

/// The pressure to which both sides come, Pa: the bubble pressure at the colder of both airs, as the coldest liquid sets
/// the pressure; less where the charge does not reach for liquid (taken as saturated vapour, which is all gas).
pub(super) fn equal_pressure(unit: &Unit, conditions: &Conditions, charge: f64) -> Result<f64, Error> {
    let map = unit.map;
    let coldest = conditions.return_dry_bulb.min(conditions.outdoor_dry_bulb);
    let boiling = map.bubble_pressure(coldest)?;
    let density = charge / unit.whole_volume();
    if map.saturation(boiling)?.vapor_density <= density {
        return Ok(boiling);
    }
    let (mut low, mut high) = (map.pressure_range().0, boiling);
    for _ in 0..50 {
        let middle = 0.5 * (low + high);
        if map.saturation(middle)?.vapor_density > density {
            high = middle;
        } else {
            low = middle;
        }
    }
    Ok(low)
}

/// Liquid that comes to the low side in the long run, kg: where the indoor coil is the colder place.
pub(super) fn gathers(inertia: &Inertia, conditions: &Conditions, charge: f64) -> f64 {
    let [share, _] = inertia.migration;
    if conditions.return_dry_bulb < conditions.outdoor_dry_bulb { share * charge } else { 0.0 }
}

/// A state at a pressure and temperature; between bubble and dew, by how far the temperature is on its way.
fn point(map: &RefrigerantMap, pressure: f64, temperature: f64) -> Result<Point, Error> {
    let saturation = map.saturation(pressure)?;
    let (bubble, dew) = (saturation.bubble_temperature, saturation.dew_temperature);
    if temperature >= dew {
        return map.vapor_at_temperature(pressure, temperature);
    }
    if temperature <= bubble {
        return map.liquid_at_temperature(pressure, temperature);
    }
    let share = (temperature - bubble) / (dew - bubble);
    let (liquid, vapor) = (saturation.liquid_enthalpy, saturation.vapor_enthalpy);
    map.at_enthalpy(pressure, liquid + share * (vapor - liquid))
}

/// What instruments show of a unit that stands, with temperatures that go from what they were to what is around.
pub(super) fn standing(
    unit: &Unit,
    conditions: &Conditions,
    before: &Steady,
    [low, high]: [f64; 2],
    charge: f64,
    cooled: impl Fn(f64, f64) -> f64,
) -> Result<Steady, Error> {
    let map = unit.map;
    let (indoors, outdoors) = (conditions.return_dry_bulb, conditions.outdoor_dry_bulb);
    let at = |pressure: f64, was: &Point, around: f64| point(map, pressure, cooled(was.temperature, around));
    // Gas that condenses in a line colder than itself warms it.
    let dew = map.saturation(low)?.dew_temperature;
    let gas = |was: &Point| map.vapor_at_temperature(low, cooled(was.temperature, outdoors).max(dew));
    let foreign = before.non_condensable_pressure;
    let above = |point: Point| Point { pressure: point.pressure + foreign, ..point };
    let outlet = cooled(before.evaporator.temperature, indoors).max(dew);
    let air = Air::from_wet_bulb(conditions.return_dry_bulb, conditions.return_wet_bulb, conditions.ambient_pressure);
    Ok(Steady {
        mass_flow: 0.0,
        compressor_power: 0.0,
        fan_power: 0.0,
        capacity: 0.0,
        sensible_capacity: 0.0,
        charge,
        compressor_inlet: gas(&before.compressor_inlet)?,
        discharge: above(at(high, &before.discharge, outdoors)?),
        vapor_port: gas(&before.vapor_port)?,
        liquid_port: above(at(high, &before.liquid_port, outdoors)?),
        metering_inlet: at(high, &before.metering_inlet, indoors)?,
        evaporator: Evaporated {
            heat: 0.0,
            sensible_heat: 0.0,
            enthalpy: map.vapor_at_temperature(low, outlet)?.enthalpy,
            temperature: outlet,
            superheat: outlet - dew,
            inlet_pressure: low,
            air,
            surface_temperature: cooled(before.evaporator.surface_temperature, indoors),
            ..before.evaporator
        },
        condenser: Condensed {
            heat: 0.0,
            pressure: high,
            air_temperature: outdoors,
            surface_temperature: cooled(before.condenser.surface_temperature, outdoors),
            ..before.condenser
        },
        coil_outlet_pressure: low,
        indoor_airflow: 0.0,
        supply_dry_bulb: indoors,
        valve_lift: before.valve_lift.map(|_| 0.0),
        miss: 0.0,
        ..*before
    })
}
