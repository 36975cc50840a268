//! States at the ports, and what it means where one is not the phase that it must be.

use super::circuit::Probe;
use crate::bounds;
use crate::eos::{PhaseKind, Properties, State, StateInput};
use crate::error::Error;

/// How many standard uncertainties of its temperature a line must lie beyond saturation to be plainly the wrong line.
const PLAINLY: f64 = 2.0;

fn saturation_k(properties: &Properties, pressure: f64, quality: f64) -> Result<f64, Error> {
    Ok(properties.state(StateInput::PressureQuality { pressure, quality })?.temperature)
}

fn at(properties: &Properties, temperature: f64, pressure: f64) -> Result<State, Error> {
    bounds::TEMPERATURE.check(temperature)?;
    bounds::ABSOLUTE_PRESSURE.check(pressure)?;
    properties.state(StateInput::TemperaturePressure { temperature, pressure })
}

/// Gas at the suction port or the coil's outlet.
pub(super) fn suction(properties: &Properties, temperature: f64, pressure: f64) -> Result<State, Error> {
    let found = at(properties, temperature, pressure);
    if let Ok(State { phase: PhaseKind::Vapor | PhaseKind::Supercritical, .. }) = found {
        return found;
    }
    // The ends of the line are sought only where something is wrong.
    match saturation_k(properties, pressure, 1.0) {
        Ok(dew) if temperature <= dew => Err(Error::NotAvailable {
            quantity: "enthalpy of the suction gas",
            reason: "the line is not warmer than its dew temperature: liquid comes back with the gas, how much is not \
                known, and the capacity is at most that of dry vapour; find out why before the compressor suffers",
        }),
        _ => found,
    }
}

/// Gas at the compressor's outlet.
pub(super) fn discharge(properties: &Properties, temperature: f64, pressure: f64) -> Result<State, Error> {
    let found = at(properties, temperature, pressure);
    if let Ok(State { phase: PhaseKind::Vapor | PhaseKind::Supercritical, .. }) = found {
        return found;
    }
    match saturation_k(properties, pressure, 1.0) {
        Ok(dew) if temperature <= dew => Err(Error::OutOfRange {
            quantity: "discharge line temperature",
            unit: "K",
            value: temperature,
            lower: dew,
            upper: bounds::TEMPERATURE.upper,
            advice: "discharge gas is hotter than its dew temperature: check the probe's place and contact, and that \
                the pressure is absolute",
        }),
        _ => found,
    }
}

/// Liquid at the liquid port. `probe` is what was measured, from which temperature and pressure may be moved.
pub(super) fn liquid(properties: &Properties, probe: &Probe, temperature: f64, pressure: f64) -> Result<State, Error> {
    let found = at(properties, temperature, pressure);
    if let Ok(State { phase: PhaseKind::Liquid | PhaseKind::Supercritical, .. }) = found {
        return found;
    }
    let (Ok(bubble), Ok(dew)) = (saturation_k(properties, pressure, 0.0), saturation_k(properties, pressure, 1.0))
    else {
        return found;
    };
    if temperature > dew + PLAINLY * probe.temperature_k.standard_uncertainty {
        return Err(Error::OutOfRange {
            quantity: "liquid line temperature",
            unit: "K",
            value: temperature,
            lower: bounds::TEMPERATURE.lower,
            upper: bubble,
            advice: "at this pressure the line holds vapour, not liquid: check that probe and gauge are at the liquid \
                port, and that the pressure is absolute",
        });
    }
    if temperature >= bubble {
        return Err(Error::NotAvailable {
            quantity: "enthalpy of the liquid",
            reason: "the liquid line is not colder than its bubble temperature: there is vapour in it, how much is not \
                known, and the capacity is at most that of saturated liquid; it takes subcooling at this port",
        });
    }
    found
}
