//! What the rivals expect of a healthy unit: the mean of its kind in the tuning fleet, by air and refrigerant, or its own
//! baseline carried over to today's air.

use super::features::{COUNT, Features, around, features, fixed};
use super::linear::least_squares;
use super::recipe::REFRIGERANTS;
use super::row::Row;
use satline::reading::Reading;

/// A feature's deviations, in standard deviations of healthy units; none where it was not measured.
pub type Scaled = [Option<f64>; COUNT];

/// Means of one kind of metering, for each feature: its weights by [`inputs`].
#[derive(Debug, Clone, PartialEq, Default)]
struct Means {
    weights: Vec<Vec<f64>>,
    /// Spread of healthy units around their kind, and around their own baseline.
    spread: [[f64; COUNT]; 2],
}

/// Expectations learnt from healthy rows.
#[derive(Debug, Clone, PartialEq)]
pub struct Expected {
    orifice: Means,
    valve: Means,
}

/// One, the air, its squares and products, and which refrigerant it is.
fn inputs(reading: &Reading) -> Vec<f64> {
    let [outdoor, dry, wet] = around(reading);
    let (outdoor, dry, wet) = ((outdoor - 303.65) / 7.0, (dry - 297.4) / 2.0, (wet - 290.2) / 3.0);
    let mut inputs =
        vec![1.0, outdoor, dry, wet, outdoor * outdoor, wet * wet, outdoor * wet, outdoor * dry, dry * wet];
    let name = reading.refrigerant.map(|curves| curves.identity.designation);
    inputs.extend(REFRIGERANTS[1..].iter().map(|other| f64::from(name == Some(*other))));
    inputs
}

fn dot(weights: &[f64], inputs: &[f64]) -> f64 {
    weights.iter().zip(inputs).map(|(weight, input)| weight * input).sum()
}

impl Means {
    fn learn<'a>(healthy: impl Iterator<Item = &'a Row>) -> Self {
        let rows: Vec<&Row> = healthy.collect();
        let of = |place: usize| {
            let point = |row: &&Row| Some((inputs(&row.reading), features(&row.reading)[place]?));
            least_squares(&rows.iter().filter_map(point).collect::<Vec<_>>(), 1e-6)
        };
        let mut means = Self { weights: (0..COUNT).map(of).collect(), spread: [[1.0; COUNT]; 2] };
        for with_baseline in [false, true] {
            let deviations: Vec<Features> =
                rows.iter().map(|row| means.deviations(&row.reading, with_baseline.then_some(&row.baseline))).collect();
            means.spread[usize::from(with_baseline)] = std::array::from_fn(|place| {
                let known: Vec<f64> = deviations.iter().filter_map(|one| one[place]).collect();
                let square = known.iter().map(|one| one * one).sum::<f64>() / (known.len().max(1) as f64);
                square.sqrt().max(1e-9)
            });
        }
        means
    }

    fn deviations(&self, reading: &Reading, baseline: Option<&Reading>) -> Features {
        let shown = features(reading);
        let today = inputs(reading);
        let then = baseline.map(|reading| (features(reading), inputs(reading)));
        std::array::from_fn(|place| {
            let weights = self.weights.get(place)?;
            let of_its_kind = shown[place]? - dot(weights, &today);
            let own = then.as_ref().and_then(|(shown, air)| Some(shown[place]? - dot(weights, air)));
            Some(of_its_kind - own.unwrap_or(0.0))
        })
    }
}

impl Expected {
    /// From the healthy rows of a fleet.
    #[must_use]
    pub fn learn(rows: &[Row]) -> Self {
        let healthy =
            |fixed: bool| Means::learn(rows.iter().filter(move |row| row.truth.is_empty() && row.fixed == fixed));
        Self { orifice: healthy(true), valve: healthy(false) }
    }

    fn of(&self, reading: &Reading) -> &Means {
        if fixed(reading) { &self.orifice } else { &self.valve }
    }

    /// Measured minus expected, in the features' own units.
    #[must_use]
    pub fn deviations(&self, reading: &Reading, baseline: Option<&Reading>) -> Features {
        self.of(reading).deviations(reading, baseline)
    }

    /// The same in standard deviations of healthy units.
    #[must_use]
    pub fn scaled(&self, reading: &Reading, baseline: Option<&Reading>) -> Scaled {
        let spread = self.of(reading).spread[usize::from(baseline.is_some())];
        let deviations = self.deviations(reading, baseline);
        std::array::from_fn(|place| Some(deviations[place]? / spread[place]))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use satline::refrigerant;

    /// Each refrigerant has a mean of its own.
    #[test]
    fn refrigerants_are_told_apart() {
        let of = |name: &&str| {
            let curves = Some(refrigerant::find(name).unwrap().curves);
            inputs(&Reading { refrigerant: curves, ..Reading::default() })
        };
        let all: Vec<Vec<f64>> = REFRIGERANTS.iter().map(of).collect();
        for (place, one) in all.iter().enumerate() {
            assert!(all.iter().skip(place + 1).all(|other| other != one));
        }
    }
}
