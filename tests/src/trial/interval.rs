//! Rates with intervals. Rows of one unit resemble each other, so it is units that are drawn again, not rows.

use satline::rig::Draws;
use std::collections::BTreeMap;
use std::fmt;

/// How often the units are drawn again.
const DRAWN: usize = 400;

/// Sums by unit: of what is counted, and of what it is a share of.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Tally {
    units: BTreeMap<u64, (f64, f64)>,
}

/// A share or a mean with its 95 % interval.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rate {
    /// Not a number where there was nothing to count.
    pub value: f64,
    /// Lower end.
    pub low: f64,
    /// Upper end.
    pub high: f64,
}

impl Tally {
    /// Counts one thing of a unit with a weight.
    pub fn add(&mut self, unit: u64, value: f64, weight: f64) {
        let sums = self.units.entry(unit).or_default();
        sums.0 += value * weight;
        sums.1 += weight;
    }

    /// A tally of things that are so or not.
    #[must_use]
    pub fn of(things: impl Iterator<Item = (u64, bool)>) -> Self {
        let mut tally = Self::default();
        things.for_each(|(unit, is_so)| tally.add(unit, f64::from(is_so), 1.0));
        tally
    }

    /// How many units there are.
    #[must_use]
    pub fn units(&self) -> usize {
        self.units.len()
    }

    /// The sum of weights.
    #[must_use]
    pub fn weight(&self) -> f64 {
        self.units.values().map(|sums| sums.1).sum()
    }

    /// The mean, with its interval by drawing the units again.
    #[must_use]
    pub fn mean(&self) -> Rate {
        let units: Vec<(f64, f64)> = self.units.values().copied().collect();
        let ratio = |sums: (f64, f64)| sums.0 / sums.1;
        let together = |all: &mut dyn Iterator<Item = (f64, f64)>| {
            ratio(all.fold((0.0, 0.0), |sums, one| (sums.0 + one.0, sums.1 + one.1)))
        };
        let value = together(&mut units.iter().copied());
        if !value.is_finite() {
            return Rate { value: f64::NAN, low: f64::NAN, high: f64::NAN };
        }
        let mut draws = Draws::of(0xb007, units.len() as u64);
        let mut drawn: Vec<f64> = (0..DRAWN)
            .map(|_| together(&mut (0..units.len()).map(|_| units[(draws.bits() % units.len() as u64) as usize])))
            .filter(|one| one.is_finite())
            .collect();
        drawn.sort_by(f64::total_cmp);
        let at = |share: f64| drawn[((drawn.len() - 1) as f64 * share).round() as usize];
        Rate { value, low: at(0.025), high: at(0.975) }
    }

    /// A share with its interval. What no unit shows, or every one, is bounded by three over the number of units.
    #[must_use]
    pub fn share(&self) -> Rate {
        let mut rate = self.mean();
        let three = 3.0 / self.units.len().max(1) as f64;
        if rate.value == 0.0 {
            rate.high = f64::min(three, 1.0);
        } else if rate.value == 1.0 {
            rate.low = f64::max(1.0 - three, 0.0);
        }
        rate
    }
}

/// As a percentage with its interval.
impl fmt::Display for Rate {
    fn fmt(&self, to: &mut fmt::Formatter) -> fmt::Result {
        let text = if self.value.is_nan() {
            "-".to_string()
        } else {
            format!("{:.1} ({:.1}-{:.1})", 100.0 * self.value, 100.0 * self.low, 100.0 * self.high)
        };
        to.pad(&text)
    }
}

impl Rate {
    /// As a number with three digits and its interval.
    #[must_use]
    pub fn plain(&self) -> String {
        if self.value.is_nan() {
            "-".to_string()
        } else {
            format!("{:.3} ({:.3}-{:.3})", self.value, self.low, self.high)
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Of independent units the interval is that of a binomial share: 0.3 ± 1.96·√(0.21/400).
    #[test]
    fn units_of_one_row_give_the_binomial_interval() {
        let rate = Tally::of((0..400).map(|unit| (unit, unit % 10 < 3))).share();
        assert!((rate.value - 0.3).abs() < 1e-12);
        assert!((rate.low - 0.255).abs() < 0.012 && (rate.high - 0.345).abs() < 0.012, "{rate:?}");
    }

    /// Rows that repeat each other tell no more than one of them.
    #[test]
    fn repeated_rows_do_not_narrow_it() {
        let once = Tally::of((0..100).map(|unit| (unit, unit % 2 == 0))).share();
        let often = Tally::of((0..100).flat_map(|unit| std::iter::repeat_n((unit, unit % 2 == 0), 50))).share();
        assert!((once.low - often.low).abs() < 1e-12 && (once.high - often.high).abs() < 1e-12);
    }

    #[test]
    fn never_and_nothing() {
        let never = Tally::of((0..60).map(|unit| (unit, false))).share();
        assert_eq!((never.value, never.low, never.high), (0.0, 0.0, 0.05));
        let always = Tally::of((0..60).map(|unit| (unit, true))).share();
        assert_eq!((always.value, always.low, always.high), (1.0, 0.95, 1.0));
        assert!(Tally::default().share().value.is_nan());
    }
}
