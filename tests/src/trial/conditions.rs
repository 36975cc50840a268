//! The air around a unit on its visits.

use satline::rig::{Air, Conditions, Draws};

/// Visits to one unit besides the one of its baseline.
pub const VISITS: usize = 6;
/// Outdoor air, K: 18 to 43 °C.
const OUTDOOR: (f64, f64) = (291.15, 316.15);
/// Return air, K: 21.5 to 27 °C.
const RETURN: (f64, f64) = (294.65, 300.15);
/// Its relative humidity.
const HUMIDITY: (f64, f64) = (0.35, 0.65);
/// Pressure of the air, Pa: from 1500 m above the sea to the sea.
const PRESSURE: (f64, f64) = (84e3, 102e3);
/// How far the weather moves the pressure of one place, Pa.
const WEATHER: f64 = 800.0;

/// The wet bulb of air, K.
fn wet_bulb(dry_bulb: f64, humidity: f64, pressure: f64) -> f64 {
    let saturated = Air::from_dew_point(dry_bulb, dry_bulb, pressure).humidity_ratio;
    // Partial pressure of vapour from the humidity ratio, and back.
    let vapor = humidity * saturated * pressure / (0.621_945 + saturated);
    let humidity_ratio = 0.621_945 * vapor / (pressure - vapor);
    Air { temperature: dry_bulb, humidity_ratio, pressure }.wet_bulb()
}

fn drawn(draws: &mut Draws, outdoor: (f64, f64), site: f64) -> Conditions {
    let outdoor_dry_bulb = draws.uniform(outdoor.0, outdoor.1);
    let return_dry_bulb = draws.uniform(RETURN.0, RETURN.1);
    let humidity = draws.uniform(HUMIDITY.0, HUMIDITY.1);
    let ambient_pressure = (site + draws.uniform(-WEATHER, WEATHER)).clamp(PRESSURE.0, PRESSURE.1);
    let return_wet_bulb = wet_bulb(return_dry_bulb, humidity, ambient_pressure);
    Conditions { outdoor_dry_bulb, return_dry_bulb, return_wet_bulb, ambient_pressure }
}

/// The air at the baseline's visit, and at the others: each in its own sixth of the outdoor range, from cold to hot.
pub fn visits(draws: &mut Draws) -> (Conditions, [Conditions; VISITS]) {
    let site = draws.uniform(PRESSURE.0, PRESSURE.1);
    let baseline = drawn(draws, OUTDOOR, site);
    let step = (OUTDOOR.1 - OUTDOOR.0) / VISITS as f64;
    let visits = std::array::from_fn(|visit| {
        let lowest = OUTDOOR.0 + step * visit as f64;
        drawn(draws, (lowest, lowest + step), site)
    });
    (baseline, visits)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// ASHRAE's chart: 25 °C at 50 % and 101 325 Pa has a wet bulb of 17.9 °C (from memory).
    #[test]
    fn a_known_wet_bulb() {
        assert!((wet_bulb(298.15, 0.5, 101_325.0) - 273.15 - 17.9).abs() < 0.1);
    }

    #[test]
    fn visits_cover_the_range() {
        let (_, visits) = visits(&mut Draws::of(1, 1));
        for pair in visits.windows(2) {
            assert!(pair[0].outdoor_dry_bulb < pair[1].outdoor_dry_bulb);
        }
        assert!(visits[0].outdoor_dry_bulb < 296.0 && visits[VISITS - 1].outdoor_dry_bulb > 311.0);
        assert!(visits.iter().all(|air| air.return_wet_bulb < air.return_dry_bulb - 3.0));
    }
}
