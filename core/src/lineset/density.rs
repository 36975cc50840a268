//! What a line holds per volume: the questions that both ways of computing answer.

use super::answers::LinePhase;
use super::slip::SLIP_ALLOWANCE;
use super::tube::Tube;
use crate::bounds;
use crate::error::Error;
use crate::math;
use crate::refrigerant::identity::Identity;

/// One standard uncertainty of a density from published equations, as a share: an allowance of our own, mostly for what
/// a blend's composition may be off within its tolerance.
const PUBLISHED: f64 = 0.005;
/// By how much, as a share, saturated densities change with 1 K of bubble or dew temperature: liquid, vapour. Rounded up
/// from R-32 at 40 °C; for blends with an estimated mixture parameter.
const PER_KELVIN: (f64, f64) = (0.006, 0.035);

/// What is known behind a metering device that stands outdoors.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Behind {
    /// The temperature of the line, K.
    Temperature(f64),
    /// The pressure in it, Pa, absolute.
    Pressure(f64),
}

/// What is in the small line behind a metering device.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Flashed {
    /// Mean density, kg/m³.
    pub density: f64,
    /// Density of the liquid in it, kg/m³.
    pub liquid_density: f64,
    /// The vapour's share of the mass flow; 0 where nothing has flashed.
    pub quality: f64,
    /// One standard uncertainty of the mean density beyond that of temperatures and pressures, as a share of it: of the slip
    /// model where vapour is there, and of the properties.
    pub relative_uncertainty: f64,
}

/// Densities of a refrigerant in a line: exact from the equations of state ([`crate::eos::Properties`], feature `eos`), or
/// from the compact curves ([`super::Compact`]).
///
/// Temperatures are in K, pressures in Pa, absolute. Without a pressure the refrigerant is saturated.
pub trait LineDensities {
    /// What the refrigerant is.
    fn identity(&self) -> &'static Identity;

    /// Density of the liquid in a line, kg/m³.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] for a temperature above the bubble temperature at that pressure, which is then the limit
    /// named: the line would carry vapour; and outside the range of the refrigerant. [`Error::NotFinite`].
    fn liquid_density(&self, temperature: f64, pressure: Option<f64>) -> Result<f64, Error>;

    /// Density of the vapour in a line, kg/m³.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] for a temperature below the dew temperature at that pressure, which is then the limit named:
    /// the line would carry liquid; and outside the range of the refrigerant. [`Error::NotFinite`].
    fn vapor_density(&self, temperature: f64, pressure: Option<f64>) -> Result<f64, Error>;

    /// What is in the small line behind a metering device, for liquid of that temperature and pressure before it: expanded
    /// at constant enthalpy, then shared by [`super::void_fraction`].
    ///
    /// # Errors
    /// As [`LineDensities::liquid_density`] for the liquid; [`Error::OutOfRange`] for a temperature or pressure behind the
    /// device above that before it.
    fn behind_device(&self, temperature: f64, pressure: Option<f64>, behind: Behind) -> Result<Flashed, Error>;

    /// One standard uncertainty of these densities beyond that of temperature and pressure, as a share of the density.
    fn relative_uncertainty(&self, phase: LinePhase) -> f64;

    /// Density of what a line carries.
    ///
    /// # Errors
    /// As [`LineDensities::liquid_density`] and [`LineDensities::vapor_density`].
    fn line_density(&self, phase: LinePhase, temperature: f64, pressure: Option<f64>) -> Result<f64, Error> {
        match phase {
            LinePhase::Liquid => self.liquid_density(temperature, pressure),
            LinePhase::Vapor => self.vapor_density(temperature, pressure),
        }
    }

    /// Mass of refrigerant per metre of a line, kg/m: the bore's area times the density.
    ///
    /// # Errors
    /// As [`LineDensities::line_density`].
    fn charge_per_length(
        &self,
        tube: &Tube,
        phase: LinePhase,
        temperature: f64,
        pressure: Option<f64>,
    ) -> Result<f64, Error> {
        Ok(tube.bore_area_m2() * self.line_density(phase, temperature, pressure)?)
    }
}

impl Flashed {
    /// Liquid and vapour together; `share` is the standard uncertainty of their properties.
    pub(super) fn shared(quality: f64, liquid_density: f64, vapor_density: f64, share: f64) -> Self {
        let density = super::slip::mean_density(quality, liquid_density, vapor_density);
        let relative_uncertainty = math::sqrt(share * share + SLIP_ALLOWANCE * SLIP_ALLOWANCE);
        Self { density, liquid_density, quality, relative_uncertainty }
    }

    /// Nothing has flashed.
    pub(super) const fn liquid(density: f64, share: f64) -> Self {
        Self { density, liquid_density: density, quality: 0.0, relative_uncertainty: share }
    }
}

/// Checks temperature and pressure against what any refrigerant has.
pub(super) fn plausible(temperature: f64, pressure: Option<f64>) -> Result<(), Error> {
    bounds::TEMPERATURE.check(temperature)?;
    pressure.map_or(Ok(()), |pressure| bounds::ABSOLUTE_PRESSURE.check(pressure).map(|_| ()))
}

/// Refuses a liquid line above its bubble temperature.
pub(super) fn refuse_vapor(temperature: f64, lowest: f64, bubble: f64) -> Error {
    let advice = "above the bubble temperature at this pressure there is vapour in the line: it is no liquid line; check \
                  pressure and temperature, and where the metering device is";
    bounds::refuse("temperature of the liquid line", "K", temperature, lowest.min(bubble), bubble, advice)
}

/// Refuses a vapour line below its dew temperature.
pub(super) fn refuse_liquid(temperature: f64, dew: f64, highest: f64) -> Error {
    let advice = "below the dew temperature at this pressure there is liquid in the line: it is no vapour line; check \
                  pressure and temperature";
    bounds::refuse("temperature of the vapour line", "K", temperature, dew, highest.max(dew), advice)
}

/// Checks what is known behind the device against what is before it.
pub(super) fn check_behind(temperature: f64, pressure: f64, lowest: f64, behind: Behind) -> Result<(), Error> {
    let advice =
        "behind the metering device the refrigerant is at or below what it was before it: check which is which";
    match behind {
        Behind::Temperature(value) => {
            bounds::within("temperature behind the metering device", "K", value, lowest, temperature, advice)
        }
        Behind::Pressure(value) => {
            let lower = bounds::ABSOLUTE_PRESSURE.lower;
            bounds::within("pressure behind the metering device", "Pa", value, lower, pressure, advice)
        }
    }
    .map(|_| ())
}

/// One standard uncertainty of a density from the equations of state, as a share of it.
pub(super) fn published_uncertainty(identity: &Identity, phase: LinePhase) -> f64 {
    let per_kelvin = match phase {
        LinePhase::Liquid => PER_KELVIN.0,
        LinePhase::Vapor => PER_KELVIN.1,
    };
    let estimated = per_kelvin * identity.saturation_uncertainty_k.unwrap_or(0.0);
    math::sqrt(PUBLISHED * PUBLISHED + estimated * estimated)
}
