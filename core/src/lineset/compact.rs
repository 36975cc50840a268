//! Densities in a line without equations of state, from the compact saturated densities: what firmware carries.

use super::answers::LinePhase;
use super::density::{
    Behind, Flashed, LineDensities, check_behind, plausible, published_uncertainty, refuse_liquid, refuse_vapor,
};
use crate::error::Error;
use crate::math;
use crate::quantity::{Pressure, SiQuantity, Temperature};
use crate::refrigerant::Refrigerant;
use crate::refrigerant::identity::Identity;

/// Gas constant, J/(mol·K).
const GAS_CONSTANT: f64 = 8.314_462_618_153_24;

/// Compressibility of saturated liquid times the critical pressure, (a − b·θ)/θ^1.5 where θ is one less the temperature over
/// the critical one, and how it falls with pressure. Fitted here to the equations of state of all refrigerants.
const COMPRESSIBILITY: (f64, f64) = (0.002_55, 0.002_1);
const STIFFENING: f64 = 6.0;

/// Worst relative error of a subcooled liquid's density against the equations of state: up to 20 K of subcooling and a
/// bubble temperature of 0.95 of the critical one, every refrigerant. Saturated liquid is the compact curve's own.
pub const LIQUID_ERROR: f64 = 0.01;
/// Worst relative error of a superheated vapour's density against the equations of state: up to 40 K of superheat and a
/// dew temperature of 0.9 of the critical one, every refrigerant. Saturated vapour is the compact curve's own.
pub const VAPOR_ERROR: f64 = 0.02;
/// Worst relative error of the mean density behind a metering device, against the equations of state with the same slip
/// model, for a blend of that glide in K (dew less bubble temperature at the pressure in the line): from liquid at up to
/// 50 °C and 0.93 of the critical temperature to −5 to 15 °C. Vapour and liquid of a blend differ in composition, which the
/// compact curves do not tell.
#[must_use]
pub const fn flashed_error(glide_k: f64) -> f64 {
    0.05 + 0.008 * glide_k
}

/// Halvings of the search for a pressure: from the widest glide down to a pascal.
const HALVINGS: usize = 24;
/// √3: a limit of error read as a rectangular distribution has its standard uncertainty there.
const SQRT_3: f64 = 1.732_050_807_568_877_2;

/// A refrigerant by its compact curves alone.
///
/// Subcooled liquid is the saturated liquid of its temperature, a little denser by a compressibility that all refrigerants
/// nearly share. Superheated vapour is scaled from dew at its pressure: by its second virial coefficient, which dew tells
/// and which falls with temperature to the power of 2.5, near enough for every refrigerant. Errors are stated
/// ([`LIQUID_ERROR`], [`VAPOR_ERROR`], [`flashed_error`]); with feature `eos` the equations of state answer without them.
///
/// ```
/// use satline::lineset::{Compact, LineDensities, LinePhase, Tube};
/// use satline::refrigerant::R454B;
/// // R-454B vapour in 3/4 in tube, 10 °F above its dew temperature of 45 °F.
/// let charge = Compact(&R454B).charge_per_length(&Tube::named("3/4")?, LinePhase::Vapor, 285.93, Some(917_222.0))?;
/// assert!((charge / 0.0283495 * 0.3048 - 0.072).abs() < 0.001);
/// # Ok::<(), satline::Error>(())
/// ```
#[derive(Debug, Clone, Copy)]
pub struct Compact(pub &'static Refrigerant);

impl Compact {
    fn bubble_temperature(&self, pressure: f64) -> Result<f64, Error> {
        Ok(self.0.curves.bubble_temperature(Pressure::from_si(pressure)?)?.kelvin())
    }

    fn dew_temperature(&self, pressure: f64) -> Result<f64, Error> {
        Ok(self.0.curves.dew_temperature(Pressure::from_si(pressure)?)?.kelvin())
    }

    fn bubble_pressure(&self, temperature: f64) -> Result<f64, Error> {
        Ok(self.0.curves.bubble_pressure(Temperature::from_si(temperature)?)?.pascals())
    }

    fn lowest(&self) -> f64 {
        self.0.curves.temperature_range_k().0
    }

    /// Quality and temperature of both phases at a pressure and an enthalpy: along the isobar from bubble to dew both
    /// enthalpy and temperature are taken as straight in the quality.
    fn on_isobar(&self, pressure: f64, enthalpy: f64) -> Result<Isobar, Error> {
        let (bubble, dew) = (self.bubble_temperature(pressure)?, self.dew_temperature(pressure)?);
        let liquid = self.0.properties.liquid_enthalpy.at(bubble)?;
        let vapor = self.0.properties.vapor_enthalpy.at(dew)?;
        let quality = ((enthalpy - liquid) / (vapor - liquid)).clamp(0.0, 1.0);
        Ok(Isobar { quality, bubble, dew, temperature: bubble + quality * (dew - bubble) })
    }

    fn shared(&self, isobar: &Isobar) -> Result<Flashed, Error> {
        let properties = self.0.properties;
        let (liquid, vapor) = (properties.liquid_density.at(isobar.bubble)?, properties.vapor_density.at(isobar.dew)?);
        let published = published_uncertainty(self.identity(), LinePhase::Liquid);
        let error = flashed_error(isobar.dew - isobar.bubble) / SQRT_3;
        Ok(Flashed::shared(isobar.quality, liquid, vapor, math::sqrt(published * published + error * error)))
    }

    /// The isobar on which an enthalpy has that temperature, between dew and bubble pressure: it rises with pressure.
    fn at_temperature(&self, temperature: f64, enthalpy: f64) -> Result<Isobar, Error> {
        let mut low = self.0.curves.dew_pressure(Temperature::from_si(temperature)?)?.pascals();
        let mut high = self.bubble_pressure(temperature)?;
        let mut found = self.on_isobar(high, enthalpy)?;
        for _ in 0..HALVINGS {
            let pressure = 0.5 * (low + high);
            found = self.on_isobar(pressure, enthalpy)?;
            if found.temperature > temperature {
                high = pressure;
            } else {
                low = pressure;
            }
        }
        Ok(found)
    }
}

/// Liquid and vapour on an isobar.
struct Isobar {
    quality: f64,
    bubble: f64,
    dew: f64,
    temperature: f64,
}

impl LineDensities for Compact {
    fn identity(&self) -> &'static Identity {
        self.0.identity()
    }

    fn liquid_density(&self, temperature: f64, pressure: Option<f64>) -> Result<f64, Error> {
        plausible(temperature, pressure)?;
        let Some(pressure) = pressure else { return self.0.properties.liquid_density.at(temperature) };
        let bubble = self.bubble_temperature(pressure)?;
        if temperature > bubble {
            return Err(refuse_vapor(temperature, self.lowest(), bubble));
        }
        let saturated = self.0.properties.liquid_density.at(temperature)?;
        let points = self.0.points;
        let theta = (1.0 - temperature / points.critical_temperature_k).max(0.01);
        let (a, b) = COMPRESSIBILITY;
        let compressibility = (a - b * theta) / (theta * math::sqrt(theta) * points.critical_pressure_pa);
        let squeezed = compressibility * (pressure - self.bubble_pressure(temperature)?).max(0.0);
        Ok(saturated / (1.0 - squeezed / (1.0 + STIFFENING * squeezed)))
    }

    fn vapor_density(&self, temperature: f64, pressure: Option<f64>) -> Result<f64, Error> {
        plausible(temperature, pressure)?;
        let Some(pressure) = pressure else { return self.0.properties.vapor_density.at(temperature) };
        let dew = self.dew_temperature(pressure)?;
        if temperature < dew {
            return Err(refuse_liquid(temperature, dew, crate::bounds::TEMPERATURE.upper));
        }
        let saturated = self.0.properties.vapor_density.at(dew)?;
        let ideal = |temperature: f64| pressure * self.0.points.molar_mass_kg_mol / (GAS_CONSTANT * temperature);
        // p = ρRT(1 + Bρ) at dew tells B; then the same equation for the density at the line's temperature.
        let cooler = dew / temperature;
        let virial = (ideal(dew) / saturated - 1.0) / saturated * cooler * cooler * math::sqrt(cooler);
        let root = math::sqrt((1.0 + 4.0 * virial * ideal(temperature)).max(0.0));
        Ok(2.0 * ideal(temperature) / (1.0 + root))
    }

    fn behind_device(&self, temperature: f64, pressure: Option<f64>, behind: Behind) -> Result<Flashed, Error> {
        // The liquid's own checks; its enthalpy is that of saturated liquid, which subcooling at a pressure hardly changes.
        self.liquid_density(temperature, pressure)?;
        let before = pressure.map_or_else(|| self.bubble_pressure(temperature), Ok)?;
        check_behind(temperature, before, self.lowest(), behind)?;
        let enthalpy = self.0.properties.liquid_enthalpy.at(temperature)?;
        match behind {
            Behind::Temperature(temperature) => self.shared(&self.at_temperature(temperature, enthalpy)?),
            Behind::Pressure(pressure) if self.bubble_temperature(pressure)? >= temperature => {
                // Nothing has flashed.
                let density = self.liquid_density(temperature, Some(pressure))?;
                Ok(Flashed::liquid(density, self.relative_uncertainty(LinePhase::Liquid)))
            }
            Behind::Pressure(pressure) => self.shared(&self.on_isobar(pressure, enthalpy)?),
        }
    }

    fn relative_uncertainty(&self, phase: LinePhase) -> f64 {
        let error = match phase {
            LinePhase::Liquid => LIQUID_ERROR,
            LinePhase::Vapor => VAPOR_ERROR,
        } / SQRT_3;
        let published = published_uncertainty(self.identity(), phase);
        math::sqrt(published * published + error * error)
    }
}
