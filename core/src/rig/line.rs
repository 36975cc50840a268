//! The lines between the coils: friction, lift, heat from around.

use super::map::RefrigerantMap;
use crate::error::Error;
use crate::math;

const GRAVITY: f64 = 9.806_65;

/// A smooth copper line.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Line {
    /// Bore, m.
    pub diameter: f64,
    /// Length, m, with what the fittings are worth.
    pub length: f64,
    /// How much higher it ends than it begins, m.
    pub rise: f64,
    /// Heat conductance to the air around, W/K.
    pub conductance: f64,
}

impl Line {
    /// Cross-section, m².
    #[must_use]
    pub fn area(&self) -> f64 {
        core::f64::consts::FRAC_PI_4 * self.diameter * self.diameter
    }

    /// Inside volume, m³.
    #[must_use]
    pub fn volume(&self) -> f64 {
        self.area() * self.length
    }

    /// Pressure lost by friction, Pa, of a fluid of a density and viscosity.
    fn friction(&self, mass_flow: f64, density: f64, viscosity: f64) -> f64 {
        let flux = mass_flow / self.area();
        let reynolds = (flux * self.diameter / viscosity).max(1.0);
        // Laminar and Blasius, joined smoothly.
        let eighth = |value: f64| {
            let square = value * value;
            let fourth = square * square;
            fourth * fourth
        };
        let root = math::sqrt(math::sqrt(reynolds));
        let factor = math::pow(eighth(64.0 / reynolds) + eighth(0.316 / root), 0.125);
        factor * self.length / self.diameter * 0.5 * flux * flux / density
    }

    /// Pressure at the end of a line of liquid, and what it holds in kg. Its enthalpy changes by the heat from around.
    pub(super) fn liquid(
        &self,
        map: &RefrigerantMap,
        (pressure, enthalpy): (f64, f64),
        mass_flow: f64,
        ambient: f64,
        further_drop: f64,
    ) -> Result<(f64, f64, f64), Error> {
        let start = map.at_enthalpy(pressure, enthalpy)?;
        let viscosity = map.saturation(pressure)?.liquid_viscosity;
        let drop =
            self.friction(mass_flow, start.density, viscosity) + start.density * GRAVITY * self.rise + further_drop;
        let heat = self.conductance * (ambient - start.temperature);
        Ok((pressure - drop, enthalpy + heat / mass_flow, self.volume() * start.density))
    }

    /// Pressure and enthalpy at the end of a line of vapour, and what it holds in kg.
    pub(super) fn vapor_forwards(
        &self,
        map: &RefrigerantMap,
        (pressure, enthalpy): (f64, f64),
        mass_flow: f64,
        ambient: f64,
    ) -> Result<(f64, f64, f64), Error> {
        let start = map.at_enthalpy(pressure, enthalpy)?;
        let drop = self.friction(mass_flow, start.density, map.saturation(pressure)?.vapor_viscosity);
        let heat = self.conductance * (ambient - start.temperature);
        Ok((pressure - drop, enthalpy + heat / mass_flow, self.volume() * start.density))
    }

    /// Pressure and enthalpy at the start of a line of vapour whose end is known, and what it holds in kg.
    pub(super) fn vapor_backwards(
        &self,
        map: &RefrigerantMap,
        (pressure, enthalpy): (f64, f64),
        mass_flow: f64,
        ambient: f64,
    ) -> Result<(f64, f64, f64), Error> {
        let end = map.at_enthalpy(pressure, enthalpy)?;
        let saturation = map.saturation(pressure)?;
        let drop = self.friction(mass_flow, end.density, saturation.vapor_viscosity);
        let heat = self.conductance * (ambient - end.temperature);
        Ok((pressure + drop, enthalpy - heat / mass_flow, self.volume() * end.density))
    }
}
