//! Water at saturation, over ice and over liquid.

use super::solve::rising_root;
use crate::bounds;
use crate::error::Error;
use crate::math;
use crate::quantity::{Atmosphere, Temperature};

/// Molar mass of water over that of dry air.
pub(super) const MASS_RATIO: f64 = 0.621_945;
/// The triple point: below it saturation is over ice, above it over liquid. The two equations meet there (within 6e-9).
pub(crate) const TRIPLE_POINT_K: f64 = 273.16;
/// Where the equation over ice ends, K.
pub(super) const LOWEST_K: f64 = 173.15;

/// Saturation pressure in Pa and its slope in Pa/K at a temperature in K (equations 5 and 6 of the chapter).
pub(crate) fn saturation(kelvin: f64) -> (f64, f64) {
    let t = kelvin;
    let (logarithm, slope) = if t <= TRIPLE_POINT_K {
        (
            -5.674_535_9e3 / t + 6.392_524_7 - 9.677_843e-3 * t + 6.221_570_1e-7 * t * t + 2.074_782_5e-9 * t * t * t
                - 9.484_024e-13 * t * t * t * t
                + 4.163_501_9 * math::ln(t),
            5.674_535_9e3 / (t * t) - 9.677_843e-3 + 2.0 * 6.221_570_1e-7 * t + 3.0 * 2.074_782_5e-9 * t * t
                - 4.0 * 9.484_024e-13 * t * t * t
                + 4.163_501_9 / t,
        )
    } else {
        (
            -5.800_220_6e3 / t + 1.391_499_3 - 4.864_023_9e-2 * t + 4.176_476_8e-5 * t * t - 1.445_209_3e-8 * t * t * t
                + 6.545_967_3 * math::ln(t),
            5.800_220_6e3 / (t * t) - 4.864_023_9e-2 + 2.0 * 4.176_476_8e-5 * t - 3.0 * 1.445_209_3e-8 * t * t
                + 6.545_967_3 / t,
        )
    };
    let pressure = math::exp(logarithm);
    (pressure, pressure * slope)
}

/// Temperature in K, between two that enclose it, at which water has a saturation pressure in Pa; to 1e-10 K.
pub(crate) fn saturation_temperature(pressure: f64, low: f64, high: f64) -> f64 {
    // In the logarithm the curve is nearly straight, so Newton's method needs few steps.
    let wanted = math::ln(pressure);
    rising_root(low, high, |kelvin| {
        let (value, slope) = saturation(kelvin);
        (math::ln(value) - wanted, slope / value)
    })
}

/// Humidity ratio of saturated air at a temperature in K and a pressure in Pa, and its slope per K.
pub(super) fn saturated(kelvin: f64, pressure: f64) -> (f64, f64) {
    let (water, slope) = saturation(kelvin);
    let air = pressure - water;
    (MASS_RATIO * water / air, MASS_RATIO * pressure * slope / (air * air))
}

/// Saturation pressure of water in Pa: over ice up to 0.01 °C, over liquid above (Hyland and Wexler 1983, as in ASHRAE
/// Fundamentals 2017, chapter 1, equations 5 and 6).
///
/// # Errors
/// [`Error::OutOfRange`] outside [`bounds::DEW_POINT`].
///
/// ```
/// use satline::air::saturation_pressure_pa;
/// use satline::quantity::Temperature;
/// // The handbook's table, of later equations of water, has 3169.7.
/// assert!((saturation_pressure_pa(Temperature::from_celsius(25.0)?)? - 3169.2).abs() < 0.1);
/// # Ok::<(), satline::Error>(())
/// ```
pub fn saturation_pressure_pa(temperature: Temperature) -> Result<f64, Error> {
    Ok(saturation(bounds::DEW_POINT.check(temperature.kelvin())?).0)
}

/// Humidity ratio of saturated air, kg of water to a kg of dry air.
///
/// # Errors
/// As [`saturation_pressure_pa`].
pub fn saturated_humidity_ratio(temperature: Temperature, pressure: Atmosphere) -> Result<f64, Error> {
    Ok(saturated(bounds::DEW_POINT.check(temperature.kelvin())?, pressure.pascals()).0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;

    #[test]
    fn saturation_matches_the_handbook() {
        // ASHRAE Fundamentals 2017 ch. 1, table 3 (published): Pa at degrees Celsius.
        for (celsius, pressure) in [(-20.0, 103.24), (5.0, 872.6), (25.0, 3169.7), (50.0, 12_351.3)] {
            // The table is of 2009's equations of water; they and these differ by some 1e-4.
            assert_relative_eq!(saturation(celsius + 273.15).0, pressure, max_relative = 2e-4);
        }
        assert_relative_eq!(saturation(373.15).0, 101_418.0, max_relative = 2e-4);
    }

    #[test]
    fn the_two_equations_meet_and_slopes_are_right() {
        let (below, above) = (saturation(273.16).0, saturation(273.16 + 1e-9).0);
        assert_relative_eq!(below, above, max_relative = 1e-8);
        for kelvin in [175.0, 180.0, 230.0, 270.0, 275.0, 300.0, 340.0, 470.0] {
            let step = 1e-3;
            let finite = (saturation(kelvin + step).0 - saturation(kelvin - step).0) / (2.0 * step);
            assert_relative_eq!(saturation(kelvin).1, finite, max_relative = 1e-6);
            let back = saturation_temperature(saturation(kelvin).0, LOWEST_K, 473.15);
            assert!((back - kelvin).abs() < 1e-9, "{kelvin}: {back}");
            if kelvin > 372.0 {
                continue; // above boiling there is no air left at this pressure
            }
            let finite = (saturated(kelvin + step, 9e4).0 - saturated(kelvin - step, 9e4).0) / (2.0 * step);
            assert_relative_eq!(saturated(kelvin, 9e4).1, finite, max_relative = 1e-6);
        }
    }
}
