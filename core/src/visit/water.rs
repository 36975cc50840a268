//! Saturation of water: over ice up to the triple point, over liquid above it.
//!
//! Hyland and Wexler (1983), as in the ASHRAE Handbook Fundamentals 2017, chapter 1, equations 5 and 6.

use crate::bounds;
use crate::math;

/// Triple point of water, K.
pub(super) const TRIPLE_POINT_K: f64 = 273.16;

/// Saturation pressure in Pa and its slope in Pa/K at a temperature in K, which the caller has checked.
pub(super) fn saturation(kelvin: f64) -> (f64, f64) {
    let t = kelvin;
    let (logarithm, slope) = if t <= TRIPLE_POINT_K {
        let powers = (((-9.484_024e-13 * t + 2.074_782_5e-9) * t + 6.221_570_1e-7) * t - 9.677_843e-3) * t;
        let slopes = ((-4.0 * 9.484_024e-13 * t + 3.0 * 2.074_782_5e-9) * t + 2.0 * 6.221_570_1e-7) * t - 9.677_843e-3;
        (
            -5_674.535_9 / t + 6.392_524_7 + powers + 4.163_501_9 * math::ln(t),
            5_674.535_9 / (t * t) + slopes + 4.163_501_9 / t,
        )
    } else {
        let powers = ((-1.445_209_3e-8 * t + 4.176_476_8e-5) * t - 4.864_023_9e-2) * t;
        let slopes = (-3.0 * 1.445_209_3e-8 * t + 2.0 * 4.176_476_8e-5) * t - 4.864_023_9e-2;
        (
            -5_800.220_6 / t + 1.391_499_3 + powers + 6.545_967_3 * math::ln(t),
            5_800.220_6 / (t * t) + slopes + 6.545_967_3 / t,
        )
    };
    let pressure = math::exp(logarithm);
    (pressure, pressure * slope)
}

/// Temperature in K at which water has that saturation pressure; none outside the equations.
pub(super) fn temperature(pressure: f64) -> Option<f64> {
    let (mut low, mut high) = (bounds::WATER_TEMPERATURE.lower, bounds::WATER_TEMPERATURE.upper);
    if !(pressure >= saturation(low).0 && pressure <= saturation(high).0) {
        return None;
    }
    // Halving 300 K fifty times leaves less than a rounding.
    for _ in 0..50 {
        let middle = 0.5 * (low + high);
        if saturation(middle).0 < pressure { low = middle } else { high = middle }
    }
    Some(0.5 * (low + high))
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;

    #[test]
    fn slopes_and_inverse() {
        for kelvin in [175.0, 230.0, 250.0, 272.0, 274.0, 300.0, 350.0, 470.0] {
            let step = 1e-3;
            let finite = (saturation(kelvin + step).0 - saturation(kelvin - step).0) / (2.0 * step);
            assert_relative_eq!(saturation(kelvin).1, finite, max_relative = 1e-6);
            assert_relative_eq!(temperature(saturation(kelvin).0).unwrap(), kelvin, max_relative = 1e-12);
        }
        assert!(temperature(1e-6).is_none() && temperature(1e7).is_none() && temperature(f64::NAN).is_none());
        // The two equations meet at the triple point.
        assert_relative_eq!(saturation(273.16).0, saturation(273.16 + 1e-9).0, max_relative = 1e-8);
    }
}
