//! How liquid and vapour share a line behind a metering device.

use crate::math;

/// One standard uncertainty of the mean density in a two-phase line, as a share of it, for the slip model: the models of
/// Smith (1969) and Chisholm (1972) give from 17 % less to 7 % more than Zivi's at the qualities behind a metering device.
/// An allowance of our own.
pub const SLIP_ALLOWANCE: f64 = 0.15;

/// Void fraction, the vapour's share of the line's volume, by Zivi (1964): the vapour runs faster than the liquid by the
/// cube root of the density ratio.
#[must_use]
pub fn void_fraction(quality: f64, liquid_density: f64, vapor_density: f64) -> f64 {
    // Multiplied out by the quality, so that all liquid needs no division by nothing.
    let slip = math::cbrt(liquid_density / vapor_density);
    let liquid = (1.0 - quality) * slip * vapor_density / liquid_density;
    if quality > 0.0 { quality / (quality + liquid) } else { 0.0 }
}

/// Mean density of liquid and vapour in a line, kg/m³, by [`void_fraction`].
pub(crate) fn mean_density(quality: f64, liquid_density: f64, vapor_density: f64) -> f64 {
    let void = void_fraction(quality, liquid_density, vapor_density);
    liquid_density + void * (vapor_density - liquid_density)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The mean over all qualities, R-410A: 303 to 304 kg/m³ at 30 °C, 354.6 to 355.0 at 45 °C (computed apart from this
    /// library by two equations of state).
    #[test]
    fn the_mean_over_quality_is_as_computed_apart() {
        let properties = &crate::saturation::table::r410a::PROPERTIES;
        for (celsius, lower, upper) in [(30.0, 303.0, 304.0), (45.0, 354.6, 355.0)] {
            let (liquid, vapor) = (
                properties.liquid_density.at(273.15 + celsius).unwrap(),
                properties.vapor_density.at(273.15 + celsius).unwrap(),
            );
            let steps = 20_000;
            let sum: f64 =
                (0..steps).map(|step| mean_density((f64::from(step) + 0.5) / f64::from(steps), liquid, vapor)).sum();
            let mean = sum / f64::from(steps);
            assert!((lower - 0.5..upper + 0.5).contains(&mean), "{celsius} °C: {mean}");
        }
    }

    #[test]
    fn it_has_its_limits_and_its_direction() {
        assert_eq!(void_fraction(0.0, 1000.0, 40.0), 0.0);
        assert_eq!(void_fraction(1.0, 1000.0, 40.0), 1.0);
        assert_eq!(mean_density(0.0, 1000.0, 40.0), 1000.0);
        assert!((mean_density(1.0, 1000.0, 40.0) - 40.0).abs() < 1e-9);
        // More slip holds more liquid than both at one speed; near the critical point they are the same.
        let together = 1.0 / (0.2 / 40.0 + 0.8 / 1000.0);
        assert!(mean_density(0.2, 1000.0, 40.0) > together);
        assert!((mean_density(0.2, 500.0, 499.9) - 500.0).abs() < 0.1);
    }

    /// Smith's equation with a homogeneous core of 0.4 (1969) and Chisholm's slip (1972), both from memory.
    #[test]
    fn other_models_lie_about_an_allowance_off() {
        let mut worst: f64 = 0.0;
        for (quality, liquid, vapor) in
            [(0.15, 1150.0, 35.0), (0.2, 1130.0, 41.0), (0.3, 1260.0, 22.0), (0.25, 520.0, 12.0)]
        {
            let ratio: f64 = liquid / vapor;
            let share = 0.4 * (1.0 - quality) / quality;
            let smith = 0.4 + 0.6 * ((ratio + share) / (1.0 + share)).sqrt();
            let chisholm = (1.0 - quality * (1.0 - ratio)).sqrt();
            for slip in [smith, chisholm] {
                let void = 1.0 / (1.0 + slip * (1.0 - quality) / (quality * ratio));
                let other = liquid + void * (vapor - liquid);
                let ours = mean_density(quality, liquid, vapor);
                let off = (other - ours) / ours;
                assert!(off.abs() < 1.25 * SLIP_ALLOWANCE, "{quality} {ratio}: {off}");
                worst = worst.max(off.abs());
            }
        }
        assert!(worst > SLIP_ALLOWANCE, "{worst}");
    }
}
