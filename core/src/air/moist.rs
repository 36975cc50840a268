//! Moist air: one measure of its humidity in, all the others out.

use super::water::{LOWEST_K, MASS_RATIO, saturated, saturation, saturation_temperature};
use super::wet_bulb;
use crate::bounds::{self, Bound};
use crate::error::Error;
use crate::quantity::{AirTemperature, Atmosphere, Temperature};

/// Gas constant of dry air, J/(kg·K).
const DRY_AIR: f64 = 287.042;

/// Air at a dry bulb temperature and a pressure, with the water it holds.
///
/// Accepted are dry bulbs from −60 to 70 °C ([`bounds::AIR_TEMPERATURE`]) and pressures from 50 to 110 kPa
/// ([`bounds::AMBIENT_PRESSURE`]). Saturation, dew point and wet bulb are over ice below 0 °C.
///
/// ```
/// use satline::air::MoistAir;
/// use satline::quantity::{AirTemperature, Atmosphere};
/// // A roof in Denver (demo): 100 °F dry bulb, 65 °F wet bulb, 5280 ft.
/// let air = MoistAir::from_wet_bulb(
///     AirTemperature::from_fahrenheit(100.0)?,
///     AirTemperature::from_fahrenheit(65.0)?,
///     Atmosphere::at_altitude_m(1609.344)?,
/// )?;
/// assert!((air.relative_humidity() - 0.163).abs() < 0.001);
/// assert!((air.density_kg_m3() - 0.930).abs() < 0.001);
/// # Ok::<(), satline::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MoistAir {
    dry_bulb: AirTemperature,
    pressure: Atmosphere,
    humidity_ratio: f64,
    given_wet_bulb_k: Option<f64>,
    given_dew_point_k: Option<f64>,
}

const WET_BULB_ADVICE: &str = "a wet bulb lies between that of dry air and the dry bulb: wet the wick, give it a draught, \
    check that the probes are not exchanged";

impl MoistAir {
    /// From dry bulb and wet bulb. Below 0 °C the wick holds ice.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] for a wet bulb above the dry bulb, or below that of air without water.
    pub fn from_wet_bulb(dry: AirTemperature, wet: AirTemperature, pressure: Atmosphere) -> Result<Self, Error> {
        let (dry_k, wet_k, pressure_pa) = (dry.kelvin(), wet.kelvin(), pressure.pascals());
        let found = wet_bulb::humidity_ratio(dry_k, wet_k.min(dry_k), pressure_pa);
        if wet_k > dry_k || found < 0.0 {
            let lowest = wet_bulb::lowest(dry_k, wet_k, pressure_pa);
            bounds::within("wet bulb temperature", "K", wet_k, lowest, dry_k, WET_BULB_ADVICE)?;
        }
        // Rounding at either end, where the wet bulb is that of dry or of saturated air.
        let humidity_ratio = found.max(0.0).min(saturated(dry_k, pressure_pa).0);
        Ok(Self { given_wet_bulb_k: Some(wet_k), ..Self::of(dry, pressure, humidity_ratio) })
    }

    /// From dry bulb and relative humidity, 0 to 1: over ice below 0 °C.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] outside 0 to 1.
    pub fn from_relative_humidity(dry: AirTemperature, humidity: f64, pressure: Atmosphere) -> Result<Self, Error> {
        let water = bounds::RELATIVE_HUMIDITY.check(humidity)? * saturation(dry.kelvin()).0;
        Ok(Self::of(dry, pressure, MASS_RATIO * water / (pressure.pascals() - water)))
    }

    /// From dry bulb and dew point (frost point below 0 °C).
    ///
    /// # Errors
    /// [`Error::OutOfRange`] for a dew point above the dry bulb or below −100 °C.
    pub fn from_dew_point(dry: AirTemperature, dew: Temperature, pressure: Atmosphere) -> Result<Self, Error> {
        let advice = "a dew point is not above the dry bulb: there water would have condensed already";
        let bound = Bound { upper: dry.kelvin(), advice, ..bounds::DEW_POINT };
        let dew_k = bound.check(dew.kelvin())?;
        let humidity_ratio = saturated(dew_k, pressure.pascals()).0;
        Ok(Self { given_dew_point_k: Some(dew_k), ..Self::of(dry, pressure, humidity_ratio) })
    }

    /// From dry bulb and humidity ratio, kg of water to a kg of dry air.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] for a negative one, or one above that of saturated air.
    pub fn from_humidity_ratio(dry: AirTemperature, ratio: f64, pressure: Atmosphere) -> Result<Self, Error> {
        let upper = saturated(dry.kelvin(), pressure.pascals()).0;
        let advice = "air at this dry bulb and pressure holds no more than that; give kilograms of water to a kilogram \
            of dry air (7000 grains to a pound)";
        Ok(Self::of(dry, pressure, Bound { upper, advice, ..bounds::HUMIDITY_RATIO }.check(ratio)?))
    }

    const fn of(dry_bulb: AirTemperature, pressure: Atmosphere, humidity_ratio: f64) -> Self {
        Self { dry_bulb, pressure, humidity_ratio, given_wet_bulb_k: None, given_dew_point_k: None }
    }

    /// Dry bulb temperature.
    #[must_use]
    pub const fn dry_bulb(&self) -> AirTemperature {
        self.dry_bulb
    }

    /// Ambient (station) pressure.
    #[must_use]
    pub const fn pressure(&self) -> Atmosphere {
        self.pressure
    }

    /// Humidity ratio, kg of water to a kg of dry air.
    #[must_use]
    pub const fn humidity_ratio(&self) -> f64 {
        self.humidity_ratio
    }

    /// Partial pressure of the water vapour, Pa.
    #[must_use]
    pub fn vapor_pressure_pa(&self) -> f64 {
        self.pressure.pascals() * self.humidity_ratio / (MASS_RATIO + self.humidity_ratio)
    }

    /// Relative humidity, 0 to 1: vapour pressure over saturation pressure.
    #[must_use]
    pub fn relative_humidity(&self) -> f64 {
        // Saturated air has 1, not what rounding makes of it.
        (self.vapor_pressure_pa() / saturation(self.dry_bulb.kelvin()).0).min(1.0)
    }

    /// Degree of saturation, 0 to 1: humidity ratio over that of saturated air.
    #[must_use]
    pub fn degree_of_saturation(&self) -> f64 {
        self.humidity_ratio / saturated(self.dry_bulb.kelvin(), self.pressure.pascals()).0
    }

    /// Thermodynamic wet bulb temperature, K, to 1e-10 K: the one given, else over liquid where that is possible (from
    /// 0 °C), else over ice.
    #[must_use]
    pub fn wet_bulb_k(&self) -> f64 {
        self.given_wet_bulb_k
            .unwrap_or_else(|| wet_bulb::wet_bulb(self.dry_bulb.kelvin(), self.pressure.pascals(), self.humidity_ratio))
    }

    /// Dew point temperature, K, to 1e-10 K: over ice up to 0.01 °C (the frost point).
    ///
    /// # Errors
    /// [`Error::NotAvailable`] where it is below −100 °C: air without water has none.
    pub fn dew_point_k(&self) -> Result<f64, Error> {
        if let Some(given) = self.given_dew_point_k {
            return Ok(given);
        }
        let water = self.vapor_pressure_pa();
        if water < saturation(LOWEST_K).0 {
            return Err(Error::NotAvailable {
                quantity: "dew point temperature",
                reason: "it is below -100 degrees Celsius, where the equation of saturation ends; air without water has none",
            });
        }
        Ok(saturation_temperature(water, LOWEST_K, self.dry_bulb.kelvin()))
    }

    /// Enthalpy, J to a kg of dry air, from dry air and liquid water at 0 °C.
    #[must_use]
    pub fn enthalpy_j_kg(&self) -> f64 {
        let celsius = self.dry_bulb.celsius();
        1e3 * (1.006 * celsius + self.humidity_ratio * (2501.0 + 1.86 * celsius))
    }

    /// Heat capacity at constant pressure, J/K to a kg of dry air.
    #[must_use]
    pub fn specific_heat_j_kg_k(&self) -> f64 {
        1e3 * (1.006 + 1.86 * self.humidity_ratio)
    }

    /// Specific volume, m³ to a kg of dry air.
    #[must_use]
    pub fn specific_volume_m3_kg(&self) -> f64 {
        DRY_AIR * self.dry_bulb.kelvin() * (1.0 + 1.607_858 * self.humidity_ratio) / self.pressure.pascals()
    }

    /// Density, kg of air and water to a m³.
    #[must_use]
    pub fn density_kg_m3(&self) -> f64 {
        (1.0 + self.humidity_ratio) / self.specific_volume_m3_kg()
    }
}
