//! Compact saturation curves: pressure from temperature and temperature from pressure, for bubble and dew.
//!
//! A curve is a short polynomial in each piece of its range. The piece is found from the bits of the argument, so no
//! transcendental function is needed, and neighbouring pieces share their joint. The coefficients are generated from
//! the equations of state by `satline-fit`; each file in `table/` states its range and worst error.

mod curve;
// Generated, to the byte.
#[rustfmt::skip]
pub mod table;

pub use curve::{DEGREE, Piece, PressureCurve, PropertyCurve, TemperatureCurve};
pub use table::*;

use crate::error::Error;
use crate::quantity::{Pressure, SiQuantity, Temperature, TemperatureDifference};
use crate::refrigerant::identity::Identity;

/// One end of the saturation line of a refrigerant, both ways.
#[derive(Debug)]
pub struct SaturationLine {
    /// Pressure from temperature.
    pub pressure: PressureCurve,
    /// Temperature from pressure.
    pub temperature: TemperatureCurve,
}

/// The saturation curves of one refrigerant: all that superheat, subcooling and a charge verdict need.
///
/// ```
/// use satline::quantity::{Atmosphere, Pressure, Temperature};
/// use satline::saturation::R410A;
/// let suction = Pressure::from_psi_gauge(118.0, Atmosphere::STANDARD)?;
/// let line = Temperature::from_fahrenheit(62.0)?;
/// assert!((R410A.superheat(line, suction)?.fahrenheit() - 22.2).abs() < 0.05);
/// # Ok::<(), satline::Error>(())
/// ```
pub struct SaturationCurves {
    /// What the refrigerant is.
    pub identity: &'static Identity,
    /// Bubble: where the first vapour forms.
    pub bubble: &'static SaturationLine,
    /// Dew: where the last liquid goes.
    pub dew: &'static SaturationLine,
}

/// Properties along the saturation line, as functions of temperature: of liquid on the bubble line and of vapour on the
/// dew line, each of the refrigerant's overall composition.
#[derive(Debug)]
pub struct SaturatedProperties {
    /// Density of saturated liquid, kg/m³.
    pub liquid_density: PropertyCurve,
    /// Density of saturated vapour, kg/m³.
    pub vapor_density: PropertyCurve,
    /// Enthalpy of saturated liquid, J/kg, by the reference state of the full record.
    pub liquid_enthalpy: PropertyCurve,
    /// Enthalpy of saturated vapour, J/kg, by the reference state of the full record.
    pub vapor_enthalpy: PropertyCurve,
}

impl SaturatedProperties {
    /// The four curves, in the order of the fields.
    #[must_use]
    pub const fn all(&self) -> [&PropertyCurve; 4] {
        [&self.liquid_density, &self.vapor_density, &self.liquid_enthalpy, &self.vapor_enthalpy]
    }
}

/// Fixed points of a refrigerant, computed from its equation of state.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Points {
    /// Bubble temperature at 101 325 Pa, K; none for a refrigerant that is solid there.
    pub normal_bubble_temperature_k: Option<f64>,
    /// Dew temperature at 101 325 Pa, K.
    pub normal_dew_temperature_k: Option<f64>,
    /// Critical temperature, K.
    pub critical_temperature_k: f64,
    /// Critical pressure, Pa.
    pub critical_pressure_pa: f64,
    /// Critical density, kg/m³.
    pub critical_density_kg_m3: f64,
    /// Molar mass, kg/mol.
    pub molar_mass_kg_mol: f64,
}

/// Its designation: the tables behind it would fill pages.
impl core::fmt::Debug for SaturationCurves {
    fn fmt(&self, formatter: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        formatter.debug_tuple("SaturationCurves").field(&self.designation()).finish()
    }
}

impl PartialEq for SaturationCurves {
    fn eq(&self, other: &Self) -> bool {
        self.identity == other.identity
    }
}

impl SaturationCurves {
    /// The ASHRAE 34 designation, such as `R-410A`.
    #[must_use]
    pub const fn designation(&self) -> &'static str {
        self.identity.designation
    }

    /// Bubble pressure at a temperature.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] outside the curve; its limits are in the error.
    pub fn bubble_pressure(&self, temperature: Temperature) -> Result<Pressure, Error> {
        Pressure::from_si(self.bubble.pressure.at(temperature.kelvin())?)
    }

    /// Dew pressure at a temperature.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] outside the curve; its limits are in the error.
    pub fn dew_pressure(&self, temperature: Temperature) -> Result<Pressure, Error> {
        Pressure::from_si(self.dew.pressure.at(temperature.kelvin())?)
    }

    /// Bubble temperature at a pressure.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] outside the curve; its limits are in the error.
    pub fn bubble_temperature(&self, pressure: Pressure) -> Result<Temperature, Error> {
        Temperature::from_si(self.bubble.temperature.at(pressure.pascals())?)
    }

    /// Dew temperature at a pressure.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] outside the curve; its limits are in the error.
    pub fn dew_temperature(&self, pressure: Pressure) -> Result<Temperature, Error> {
        Temperature::from_si(self.dew.temperature.at(pressure.pascals())?)
    }

    /// Superheat: line temperature minus dew temperature. Negative means that liquid is present.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] when the pressure is outside the dew curve.
    pub fn superheat(&self, line: Temperature, pressure: Pressure) -> Result<TemperatureDifference, Error> {
        let dew = self.dew_temperature(pressure)?;
        TemperatureDifference::from_si(line.kelvin() - dew.kelvin())
    }

    /// Subcooling: bubble temperature minus line temperature. Negative means that vapour is present.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] when the pressure is outside the bubble curve.
    pub fn subcooling(&self, line: Temperature, pressure: Pressure) -> Result<TemperatureDifference, Error> {
        let bubble = self.bubble_temperature(pressure)?;
        TemperatureDifference::from_si(bubble.kelvin() - line.kelvin())
    }

    /// Slope of the dew temperature with pressure, in kelvin per pascal: what a pressure error does to a superheat.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] when the pressure is outside the dew curve.
    pub fn dew_temperature_slope(&self, pressure: Pressure) -> Result<f64, Error> {
        self.dew.temperature.slope_at(pressure.pascals())
    }

    /// Slope of the bubble temperature with pressure, in kelvin per pascal: what a pressure error does to a subcooling.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] when the pressure is outside the bubble curve.
    pub fn bubble_temperature_slope(&self, pressure: Pressure) -> Result<f64, Error> {
        self.bubble.temperature.slope_at(pressure.pascals())
    }

    /// Lowest and highest temperature, in kelvin, at which both curves answer.
    #[must_use]
    pub fn temperature_range_k(&self) -> (f64, f64) {
        let (bubble, dew) = (&self.bubble.pressure, &self.dew.pressure);
        (bubble.lower.max(dew.lower), bubble.upper.min(dew.upper))
    }
}
