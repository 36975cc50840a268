//! The refrigerant at one place of a line: one phase, followed from place to place.

use crate::eos::Properties;
use crate::error::Error;
use crate::math;

/// The refrigerant at one place of a line.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Place {
    /// K.
    pub temperature: f64,
    /// Pa.
    pub pressure: f64,
    /// kg/m³.
    pub density: f64,
    /// J/kg.
    pub enthalpy: f64,
    /// Pa·s.
    pub viscosity: f64,
    /// At constant pressure, J/(kg·K).
    pub heat_capacity: f64,
}

/// Over how many kelvin the heat capacity is taken as a difference: enough for the rounding of enthalpies to be lost, too
/// little for its own change to count.
const DIFFERENCE_K: f64 = 0.02;

impl Place {
    /// The phase whose density is near `density` (kg/m³). Follows one phase even a little beyond where it is stable, which
    /// the caller looks to.
    pub(super) fn near(properties: &Properties, temperature: f64, pressure: f64, density: f64) -> Result<Self, Error> {
        let mixture = properties.mixture();
        let molar = density_near(properties, temperature, pressure, density / mixture.molar_mass)?;
        let warmer = density_near(properties, temperature + DIFFERENCE_K, pressure, molar)?;
        let enthalpy = properties.enthalpy_at(temperature, molar)?;
        let of_warmer = properties.enthalpy_at(temperature + DIFFERENCE_K, warmer)?;
        Ok(Self {
            temperature,
            pressure,
            density: molar * mixture.molar_mass,
            enthalpy,
            viscosity: mixture.viscosity(temperature, molar)?,
            heat_capacity: (of_warmer - enthalpy) / DIFFERENCE_K,
        })
    }

    /// Density in kg/m³ and enthalpy in J/kg alone.
    pub(super) fn density_and_enthalpy(
        properties: &Properties,
        temperature: f64,
        pressure: f64,
        density: f64,
    ) -> Result<(f64, f64), Error> {
        let mass = properties.mixture().molar_mass;
        let molar = density_near(properties, temperature, pressure, density / mass)?;
        Ok((molar * mass, properties.enthalpy_at(temperature, molar)?))
    }
}

/// Molar density of the phase near a molar density, by Newton's method in its logarithm.
fn density_near(properties: &Properties, temperature: f64, pressure: f64, near: f64) -> Result<f64, Error> {
    let failed = Error::NotConverged { calculation: "density along the line", value: pressure, unit: "Pa" };
    let mut density = near;
    for _ in 0..50 {
        let phase = properties.mixture().bulk_phase(temperature, density);
        let slope: f64 = phase.pressure_slopes.iter().sum();
        let step = (pressure - phase.pressure) / slope;
        if !(slope > 0.0) || !step.is_finite() {
            return Err(failed);
        }
        density *= math::exp(step.clamp(-0.3, 0.3));
        // Quadratic: the next step would be lost in rounding.
        if step.abs() < 1e-8 {
            return Ok(density);
        }
    }
    Err(failed)
}
