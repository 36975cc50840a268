//! Densities and enthalpies along the saturation line, from the compact curves: what the charge of a line and a capacity
//! need where there are no equations of state.

use super::Refrigerant;
use crate::error::Error;
use crate::quantity::Temperature;

/// Saturated densities and enthalpies from the compact curves.
///
/// Each answers over [`Refrigerant::saturated_range_k`]: from 213.15 K, or the equation of state's own lower limit where
/// that is higher, to 0.99 of the critical temperature. Saturated liquid is the refrigerant at its bubble point and
/// saturated vapour at its dew point, both of the overall composition: of a blend the two stand at different pressures at
/// one temperature, and neither is what remains in a unit that has leaked.
///
/// Densities are within 1 ppm of the equation of state and enthalpies within 2 J/kg. How well the equation of state itself
/// knows the refrigerant, some 0.1 % of a density, is another matter; `docs/accuracy.md` says.
impl Refrigerant {
    /// Density in kg/m³ of saturated liquid at its bubble point.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] outside the curve; its limits are in the error.
    ///
    /// ```
    /// use satline::{quantity::Temperature, refrigerant::R410A};
    /// let liquid = R410A.saturated_liquid_density_kg_m3(Temperature::from_celsius(40.0)?)?;
    /// // A liquid line of 8 mm inside diameter and 10 m length, full.
    /// let charge = liquid * 10.0 * core::f64::consts::PI / 4.0 * 0.008 * 0.008;
    /// assert!((charge - 0.49).abs() < 0.005);
    /// # Ok::<(), satline::Error>(())
    /// ```
    pub fn saturated_liquid_density_kg_m3(&self, temperature: Temperature) -> Result<f64, Error> {
        self.properties.liquid_density.at(temperature.kelvin())
    }

    /// Density in kg/m³ of saturated vapour at its dew point.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] outside the curve; its limits are in the error.
    ///
    /// ```
    /// use satline::{quantity::Temperature, refrigerant::R134A};
    /// let cold = Temperature::from_celsius(0.0)?;
    /// // ASHRAE Handbook Fundamentals, table of R-134a, from memory: 0.0693 m³/kg.
    /// assert!((1.0 / R134A.saturated_vapor_density_kg_m3(cold)? - 0.0693).abs() < 0.00005);
    /// # Ok::<(), satline::Error>(())
    /// ```
    pub fn saturated_vapor_density_kg_m3(&self, temperature: Temperature) -> Result<f64, Error> {
        self.properties.vapor_density.at(temperature.kelvin())
    }

    /// Enthalpy in J/kg of saturated liquid at its bubble point.
    ///
    /// It counts from 200 kJ/kg for saturated liquid at 0 °C (IIR); for R-14 and other refrigerants that have no liquid
    /// there, from zero for saturated liquid at 101 325 Pa.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] outside the curve; its limits are in the error.
    ///
    /// ```
    /// use satline::{quantity::Temperature, refrigerant::R410A};
    /// let freezing = Temperature::from_celsius(0.0)?;
    /// assert!((R410A.saturated_liquid_enthalpy_j_kg(freezing)? - 200e3).abs() < 2.0);
    /// # Ok::<(), satline::Error>(())
    /// ```
    pub fn saturated_liquid_enthalpy_j_kg(&self, temperature: Temperature) -> Result<f64, Error> {
        self.properties.liquid_enthalpy.at(temperature.kelvin())
    }

    /// Enthalpy in J/kg of saturated vapour at its dew point, counted as
    /// [`Refrigerant::saturated_liquid_enthalpy_j_kg`].
    ///
    /// # Errors
    /// [`Error::OutOfRange`] outside the curve; its limits are in the error.
    ///
    /// ```
    /// use satline::{quantity::Temperature, refrigerant::R134A};
    /// let cold = Temperature::from_celsius(0.0)?;
    /// let latent = R134A.saturated_vapor_enthalpy_j_kg(cold)? - R134A.saturated_liquid_enthalpy_j_kg(cold)?;
    /// // ASHRAE Handbook Fundamentals, table of R-134a, from memory: 198.60 kJ/kg.
    /// assert!((latent - 198.60e3).abs() < 10.0);
    /// # Ok::<(), satline::Error>(())
    /// ```
    pub fn saturated_vapor_enthalpy_j_kg(&self, temperature: Temperature) -> Result<f64, Error> {
        self.properties.vapor_enthalpy.at(temperature.kelvin())
    }

    /// Lowest and highest temperature, in kelvin, at which the saturated densities and enthalpies answer.
    #[must_use]
    pub fn saturated_range_k(&self) -> (f64, f64) {
        let curves = self.properties.all();
        let lower = curves.iter().map(|curve| curve.lower).fold(0.0, f64::max);
        (lower, curves.iter().map(|curve| curve.upper).fold(f64::INFINITY, f64::min))
    }
}
