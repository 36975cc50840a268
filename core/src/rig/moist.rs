//! Moist air as the rig's coils need it, from equations other than those of the library's air module, so that a mistake
//! there does not hide itself: vapour pressure by IAPWS (Wagner and Pruss 2002; over ice IAPWS 2011).

use crate::math;

/// Gas constant of dry air, J/(kg·K).
const GAS_CONSTANT: f64 = 287.055;
/// Ratio of the molar masses of water and dry air.
const MOLAR_RATIO: f64 = 0.621_945;
/// Heat capacities of dry air and of water vapour, J/(kg·K), and the heat of evaporation at 0 °C, J/kg.
pub(super) const DRY: f64 = 1006.0;
pub(super) const VAPOR: f64 = 1860.0;
pub(super) const LATENT: f64 = 2.501e6;

/// Air of a temperature and humidity at a pressure.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Air {
    /// Dry bulb, K.
    pub temperature: f64,
    /// Mass of water by mass of dry air.
    pub humidity_ratio: f64,
    /// Pa.
    pub pressure: f64,
}

/// Pressure of saturated water vapour, Pa, over liquid or, below 0.01 °C, over ice.
fn vapor_pressure(temperature: f64) -> f64 {
    if temperature < 273.16 {
        let theta = temperature / 273.16;
        let sum = -21.214_400_6 * math::pow(theta, 0.003_333_333_33) + 27.320_381_9 * math::pow(theta, 1.206_666_67)
            - 6.105_981_30 * math::pow(theta, 1.703_333_33);
        return 611.657 * math::exp(sum / theta);
    }
    let tau = 1.0 - temperature / 647.096;
    let root = math::sqrt(tau);
    let (cube, fourth) = (tau * tau * tau, tau * tau * tau * tau);
    let sum = -7.859_517_83 * tau + 1.844_082_59 * tau * root - 11.786_649_7 * cube + 22.680_741_1 * cube * root
        - 15.961_871_9 * fourth
        + 1.801_225_02 * fourth * cube * root;
    22.064e6 * math::exp(sum * 647.096 / temperature)
}

/// Humidity ratio of saturated air.
fn saturated_humidity(temperature: f64, pressure: f64) -> f64 {
    let vapor = vapor_pressure(temperature).min(0.9 * pressure);
    MOLAR_RATIO * vapor / (pressure - vapor)
}

/// Enthalpy of saturated air, J by kg of dry air.
pub(super) fn saturated_enthalpy(temperature: f64, pressure: f64) -> f64 {
    enthalpy(temperature, saturated_humidity(temperature, pressure))
}

/// Temperature of saturated air of an enthalpy, K.
pub(super) fn saturated_temperature(of: f64, pressure: f64, near: f64) -> f64 {
    let mut temperature = near;
    for _ in 0..30 {
        let miss = of - saturated_enthalpy(temperature, pressure);
        let slope = (saturated_enthalpy(temperature + 0.01, pressure) - of + miss) / 0.01;
        let step = (miss / slope).clamp(-15.0, 15.0);
        temperature += step;
        if step.abs() < 1e-9 {
            break;
        }
    }
    temperature
}

fn enthalpy(temperature: f64, humidity_ratio: f64) -> f64 {
    let celsius = temperature - 273.15;
    DRY * celsius + humidity_ratio * (LATENT + VAPOR * celsius)
}

impl Air {
    /// From dry and wet bulb.
    #[must_use]
    pub fn from_wet_bulb(temperature: f64, wet_bulb: f64, pressure: f64) -> Self {
        // Adiabatic saturation: what the water brings has the enthalpy of liquid at the wet bulb.
        let saturated = saturated_humidity(wet_bulb, pressure);
        let (dry, wet) = (temperature - 273.15, wet_bulb - 273.15);
        let liquid = 4186.0;
        let above = (LATENT + (VAPOR - liquid) * wet) * saturated - DRY * (dry - wet);
        let humidity_ratio = (above / (LATENT + VAPOR * dry - liquid * wet)).max(0.0);
        Self { temperature, humidity_ratio, pressure }
    }

    /// From dry bulb and dew point.
    #[must_use]
    pub fn from_dew_point(temperature: f64, dew_point: f64, pressure: f64) -> Self {
        Self { temperature, humidity_ratio: saturated_humidity(dew_point, pressure), pressure }
    }

    /// From enthalpy, J by kg of dry air, and humidity ratio.
    #[must_use]
    pub fn from_enthalpy(enthalpy: f64, humidity_ratio: f64, pressure: f64) -> Self {
        let celsius = (enthalpy - LATENT * humidity_ratio) / (DRY + VAPOR * humidity_ratio);
        Self { temperature: celsius + 273.15, humidity_ratio, pressure }
    }

    /// Enthalpy, J by kg of dry air.
    #[must_use]
    pub fn enthalpy(&self) -> f64 {
        enthalpy(self.temperature, self.humidity_ratio)
    }

    /// Heat capacity, J/(kg of dry air·K).
    #[must_use]
    pub fn heat_capacity(&self) -> f64 {
        DRY + VAPOR * self.humidity_ratio
    }

    /// Dry air in a volume, kg/m³.
    #[must_use]
    pub fn dry_density(&self) -> f64 {
        self.pressure / (GAS_CONSTANT * self.temperature * (1.0 + self.humidity_ratio / MOLAR_RATIO))
    }

    /// Dew point, K.
    #[must_use]
    pub fn dew_point(&self) -> f64 {
        let vapor = self.pressure * self.humidity_ratio / (MOLAR_RATIO + self.humidity_ratio);
        let mut temperature = 285.0;
        for _ in 0..40 {
            let here = vapor_pressure(temperature);
            // Newton in the logarithm, by Clapeyron's slope.
            let step = (math::ln(vapor.max(1.0) / here) * temperature * temperature / 5400.0).clamp(-30.0, 30.0);
            temperature += step;
            if step.abs() < 1e-9 {
                break;
            }
        }
        temperature
    }

    /// Wet bulb, K: where the air, saturated adiabatically, has the same humidity.
    #[must_use]
    pub fn wet_bulb(&self) -> f64 {
        let (mut low, mut high) = (self.temperature - 60.0, self.temperature);
        for _ in 0..60 {
            let middle = 0.5 * (low + high);
            if Self::from_wet_bulb(self.temperature, middle, self.pressure).humidity_ratio > self.humidity_ratio {
                high = middle;
            } else {
                low = middle;
            }
        }
        0.5 * (low + high)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// ASHRAE Handbook Fundamentals 2017, chapter 1, as printed: vapour pressures, and the example of 40/20 °C.
    #[test]
    fn handbook_values() {
        for (celsius, pascals) in [(-20.0, 103.24), (5.0, 872.6), (25.0, 3169.7), (50.0, 12_351.3)] {
            assert!((vapor_pressure(celsius + 273.15) / pascals - 1.0).abs() < 3e-4, "{celsius}");
        }
        let air = Air::from_wet_bulb(313.15, 293.15, 101_325.0);
        assert!((air.humidity_ratio - 0.0065).abs() < 1e-4 && (air.enthalpy() - 56.7e3).abs() < 3e2);
        assert!((air.dew_point() - 280.15).abs() < 0.6 && (air.wet_bulb() - 293.15).abs() < 1e-6);
        let saturated = saturated_temperature(air.enthalpy(), 101_325.0, 280.0);
        assert!((saturated_enthalpy(saturated, 101_325.0) - air.enthalpy()).abs() < 1e-3);
    }
}
