//! A rival: multinomial logistic regression on the tuning fleet's deviations, with a penalty on the squares of its weights.

use super::expected::Expected;
use super::features::{COUNT, around, fixed};
use super::judge::{Call, Judge};
use super::plan::CAUSES;
use super::row::Row;
use satline::diagnosis::{CauseSet, Priors};

/// Healthy and the single causes.
const CLASSES: usize = 1 + CAUSES.len();
/// One; deviations; their squares; the air.
const INPUTS: usize = 1 + 2 * COUNT + 3;
/// Penalty on squares, for each row.
const PENALTY: f64 = 1e-4;
/// Steps of the descent.
const STEPS: usize = 400;
/// Probability from which it stands by its answer.
const STANDS: f64 = 0.5;

type Inputs = [f64; INPUTS];
type Weights = [Inputs; CLASSES];

/// One model for each metering and for with and without a baseline.
#[derive(Debug, Clone)]
pub struct ByRegression<'a> {
    expected: &'a Expected,
    models: [[Box<Weights>; 2]; 2],
    priors: [f64; CLASSES],
}

fn class(causes: CauseSet) -> Option<usize> {
    sets().position(|one| one == causes)
}

fn sets() -> impl Iterator<Item = CauseSet> {
    std::iter::once(CauseSet::HEALTHY).chain(CAUSES.into_iter().map(CauseSet::one))
}

/// What is not measured counts as expected.
fn inputs(expected: &Expected, row: &Row, with_baseline: bool) -> Inputs {
    let scaled = expected.scaled(&row.reading, with_baseline.then_some(&row.baseline));
    let [outdoor, dry, wet] = around(&row.reading);
    let mut inputs = [0.0; INPUTS];
    inputs[0] = 1.0;
    for (place, value) in scaled.iter().enumerate() {
        // Beyond a few deviations only the sign tells more.
        let value = value.unwrap_or(0.0).clamp(-8.0, 8.0) / 2.0;
        inputs[1 + place] = value;
        inputs[1 + COUNT + place] = value * value / 4.0;
    }
    inputs[1 + 2 * COUNT..].copy_from_slice(&[(outdoor - 303.65) / 7.0, (dry - 297.4) / 2.0, (wet - 290.2) / 3.0]);
    inputs
}

fn probabilities(weights: &Weights, inputs: &Inputs) -> [f64; CLASSES] {
    let scores: [f64; CLASSES] =
        std::array::from_fn(|class| weights[class].iter().zip(inputs).map(|(weight, input)| weight * input).sum());
    let largest = scores.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let powers = scores.map(|score| (score - largest).exp());
    let sum: f64 = powers.iter().sum();
    powers.map(|power| power / sum)
}

/// Descends with a step for each weight by the mean and spread of its slope (Adam; Kingma and Ba 2015). Each class weighs
/// the same, however many rows it has.
fn train(points: &[(Inputs, usize)]) -> Box<Weights> {
    let mut counts = [0.0; CLASSES];
    points.iter().for_each(|(_, class)| counts[*class] += 1.0);
    let mut weights = Box::new([[0.0; INPUTS]; CLASSES]);
    let (mut mean, mut square) = (weights.clone(), weights.clone());
    for step in 1..=STEPS {
        let mut slope = Box::new([[0.0; INPUTS]; CLASSES]);
        for (inputs, truth) in points {
            let found = probabilities(&weights, inputs);
            let share = 1.0 / (counts[*truth] * CLASSES as f64);
            for class in 0..CLASSES {
                let miss = share * (found[class] - f64::from(class == *truth));
                slope[class].iter_mut().zip(inputs).for_each(|(slope, input)| *slope += miss * input);
            }
        }
        let (corrected, squared) = (1.0 - 0.9_f64.powi(step as i32), 1.0 - 0.999_f64.powi(step as i32));
        for class in 0..CLASSES {
            for place in 0..INPUTS {
                let slope = slope[class][place] + 2.0 * PENALTY * weights[class][place];
                mean[class][place] = 0.9 * mean[class][place] + 0.1 * slope;
                square[class][place] = 0.999 * square[class][place] + 0.001 * slope * slope;
                let size = (square[class][place] / squared).sqrt() + 1e-8;
                weights[class][place] -= 0.05 * mean[class][place] / corrected / size;
            }
        }
    }
    weights
}

impl<'a> ByRegression<'a> {
    /// Trained on the healthy rows and the single faults of a fleet that count.
    #[must_use]
    pub fn learn(expected: &'a Expected, rows: &[Row]) -> Self {
        let model = |fixed: bool, with_baseline: bool| {
            let points: Vec<(Inputs, usize)> = rows
                .iter()
                .filter(|row| row.fixed == fixed && row.counts)
                .filter_map(|row| Some((inputs(expected, row, with_baseline), class(row.truth)?)))
                .collect();
            train(&points)
        };
        let trained = super::fleet::in_parallel(4, |number| model(number >= 2, number % 2 == 1));
        let [valve, valve_baseline, orifice, orifice_baseline] = <[Box<Weights>; 4]>::try_from(trained).unwrap();
        // Every class weighed the same in training: what is likely beforehand comes in as for the library.
        let mut priors = [0.0; CLASSES];
        sets().zip(priors.iter_mut()).for_each(|(causes, prior)| *prior = Priors::default().weight(causes));
        Self { expected, models: [[valve, valve_baseline], [orifice, orifice_baseline]], priors }
    }
}

impl Judge for ByRegression<'_> {
    fn name(&self) -> &'static str {
        "regression"
    }

    fn judge(&self, row: &Row, with_baseline: bool) -> Call {
        let model = &self.models[usize::from(fixed(&row.reading))][usize::from(with_baseline)];
        let found = probabilities(model, &inputs(self.expected, row, with_baseline));
        let weighed: Vec<f64> = found.iter().zip(self.priors).map(|(found, prior)| found * prior).collect();
        let sum: f64 = weighed.iter().sum();
        let mut probabilities: Vec<(CauseSet, f64)> = sets().zip(weighed).map(|(set, one)| (set, one / sum)).collect();
        probabilities.sort_by(|one, two| two.1.total_cmp(&one.1));
        let (causes, likeliest) = probabilities[0];
        let standing = if likeliest >= STANDS { Call::standing(causes) } else { Call::default() };
        Call { probabilities, ..standing }
    }
}
