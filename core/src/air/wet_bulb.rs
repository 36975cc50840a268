//! The thermodynamic wet bulb: water evaporating into the air until it is saturated, with no heat from outside
//! (equations 33 and 35 of the chapter).
//!
//! At and above 0 °C the wick holds liquid, below it ice, whose evaporation takes more heat. So just below and above 0 °C
//! some air has two wet bulbs, one over ice and one over liquid. A wick that was wetted and has cooled shows the one over
//! liquid: it is the answer wherever there is one. Both are accepted as input.

use super::solve::rising_root;
use super::water::{LOWEST_K, saturated};

const FREEZING_K: f64 = 273.15;

/// What is on the wick: how much heat its evaporation takes, kJ/kg at 0 °C, and how that changes, kJ/(kg·K).
struct Wick {
    latent: f64,
    latent_slope: f64,
    own: f64,
}

const LIQUID: Wick = Wick { latent: 2501.0, latent_slope: 2.326, own: 4.186 };
const ICE: Wick = Wick { latent: 2830.0, latent_slope: 0.24, own: 2.1 };

impl Wick {
    const fn at(wet_k: f64) -> &'static Self {
        if wet_k >= FREEZING_K { &LIQUID } else { &ICE }
    }

    /// What the humidity ratio times the second number must be, and that number, both in kJ/kg.
    fn sides(&self, dry_k: f64, wet_k: f64, pressure: f64) -> (f64, f64) {
        let (dry, wet) = (dry_k - FREEZING_K, wet_k - FREEZING_K);
        let there = saturated(wet_k, pressure).0;
        (
            (self.latent - self.latent_slope * wet) * there - 1.006 * (dry - wet),
            self.latent + 1.86 * dry - self.own * wet,
        )
    }

    /// By how much a wet bulb is too high for the humidity ratio, kJ/kg, and the slope of that.
    fn excess(&self, dry_k: f64, wet_k: f64, pressure: f64, humidity_ratio: f64) -> (f64, f64) {
        let wet = wet_k - FREEZING_K;
        let (there, slope) = saturated(wet_k, pressure);
        let (left, right) = self.sides(dry_k, wet_k, pressure);
        (
            left - humidity_ratio * right,
            (self.latent - self.latent_slope * wet) * slope - self.latent_slope * there
                + 1.006
                + self.own * humidity_ratio,
        )
    }
}

/// Humidity ratio of air of that dry and wet bulb; negative where the wet bulb is below that of dry air.
pub(super) fn humidity_ratio(dry_k: f64, wet_k: f64, pressure: f64) -> f64 {
    let (left, right) = Wick::at(wet_k).sides(dry_k, wet_k, pressure);
    left / right
}

/// The wet bulb in K of air of that humidity ratio, over liquid where that is possible, else over ice.
pub(super) fn wet_bulb(dry_k: f64, pressure: f64, humidity_ratio: f64) -> f64 {
    let over = |wick: &Wick, low: f64, high: f64| {
        rising_root(low, high, |wet_k| wick.excess(dry_k, wet_k, pressure, humidity_ratio))
    };
    if dry_k < FREEZING_K {
        over(&ICE, LOWEST_K, dry_k)
    } else if LIQUID.excess(dry_k, FREEZING_K, pressure, humidity_ratio).0 <= 0.0 {
        over(&LIQUID, FREEZING_K, dry_k)
    } else {
        over(&ICE, LOWEST_K, FREEZING_K)
    }
}

/// The lowest wet bulb in K, that of air without water, with what is on a wick of `wet_k`.
pub(super) fn lowest(dry_k: f64, wet_k: f64, pressure: f64) -> f64 {
    if wet_k < FREEZING_K && dry_k >= FREEZING_K && ICE.excess(dry_k, FREEZING_K, pressure, 0.0).0 >= 0.0 {
        return rising_root(LOWEST_K, FREEZING_K, |wet_k| ICE.excess(dry_k, wet_k, pressure, 0.0));
    }
    wet_bulb(dry_k, pressure, 0.0)
}
