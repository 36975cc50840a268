//! Real nitrogen (R-728), the gas of a pressure test: its density, and its pressure at another temperature.
//!
//! By the equation of Span and others (2000), whose densities are stated to 0.01 % from 270 to 350 K. At 35 bar an ideal
//! gas would be out by 1.8 psi over a night's cooling from 95 to 70 °F, as much as a leak worth finding.

use crate::bounds;
use crate::eos::{Mixture, model};
use crate::error::Error;
use crate::quantity::{Pressure, Temperature};

/// Density of nitrogen in kg/m³.
///
/// # Errors
/// [`Error::OutOfRange`] outside [`bounds::NITROGEN_PRESSURE`] and [`bounds::NITROGEN_TEMPERATURE`].
///
/// ```
/// use satline::quantity::{Pressure, Temperature};
/// use satline::visit::nitrogen_density_kg_m3;
/// // Span and others (2000), table of single-phase states: 0.43104 mol/dm³ at 280 K and 1 MPa.
/// let density = nitrogen_density_kg_m3(Pressure::from_pascals(1e6)?, Temperature::from_kelvin(280.0)?)?;
/// assert!((density / 28.01348 - 0.43104).abs() < 5e-6);
/// # Ok::<(), satline::Error>(())
/// ```
pub fn nitrogen_density_kg_m3(pressure: Pressure, temperature: Temperature) -> Result<f64, Error> {
    Nitrogen::new()?.density_kg_m3(pressure.pascals(), temperature.kelvin())
}

/// Absolute pressure that nitrogen shut in at one pressure and temperature has at a later temperature: constant density.
///
/// The metal's own expansion is left out. Copper that cools by 14 K shrinks by 0.07 % of its volume, which at 35 bar
/// raises the pressure by 2.4 kPa (0.3 psi); [`super::pressure_test`] states it and counts it as an uncertainty.
///
/// # Errors
/// [`Error::OutOfRange`] outside [`bounds::NITROGEN_PRESSURE`] and [`bounds::NITROGEN_TEMPERATURE`].
///
/// ```
/// use satline::quantity::{Atmosphere, PASCALS_PER_PSI, Pressure, Temperature};
/// use satline::visit::expected_nitrogen_pressure;
/// // 500 psi on the gauge at 95 °F; next morning at 70 °F the gauge should show 475.0, not the ideal gas's 476.8.
/// let evening = Pressure::from_psi_gauge(500.0, Atmosphere::STANDARD)?;
/// let (hot, cool) = (Temperature::from_fahrenheit(95.0)?, Temperature::from_fahrenheit(70.0)?);
/// let morning = expected_nitrogen_pressure(evening, hot, cool)?;
/// let gauge = (morning.pascals() - Atmosphere::STANDARD.pascals()) / PASCALS_PER_PSI;
/// assert!((gauge - 475.0).abs() < 0.05);
/// # Ok::<(), satline::Error>(())
/// ```
pub fn expected_nitrogen_pressure(
    pressure: Pressure,
    temperature: Temperature,
    later_temperature: Temperature,
) -> Result<Pressure, Error> {
    let nitrogen = Nitrogen::new()?;
    let later = nitrogen.later_pressure(pressure.pascals(), temperature.kelvin(), later_temperature.kelvin())?;
    Pressure::from_pascals(later)
}

/// The equation of state, made once for many evaluations.
pub(super) struct Nitrogen(Mixture);

impl Nitrogen {
    pub fn new() -> Result<Self, Error> {
        Mixture::of(&model::R728).map(Self)
    }

    pub fn density_kg_m3(&self, pressure_pa: f64, temperature_k: f64) -> Result<f64, Error> {
        let pressure = bounds::NITROGEN_PRESSURE.check(pressure_pa)?;
        let temperature = bounds::NITROGEN_TEMPERATURE.check(temperature_k)?;
        Ok(self.0.density(temperature, pressure)? * self.0.molar_mass)
    }

    pub fn later_pressure(&self, pressure_pa: f64, temperature_k: f64, later_k: f64) -> Result<f64, Error> {
        let later = bounds::NITROGEN_TEMPERATURE.check(later_k)?;
        let density = self.density_kg_m3(pressure_pa, temperature_k)? / self.0.molar_mass;
        Ok(self.0.bulk_phase(later, density).pressure)
    }
}
