//! The one check that would part the leading hypotheses best.
//!
//! For every channel that was not measured: how far apart the leading hypotheses put it, given what was measured, against how
//! sure each of them is of it. Half the logarithm of that ratio is the information expected of measuring it, were the
//! mixture a normal distribution.

use super::constants::EXPECTED_CHARGE;
use super::expected::at;
use super::hypotheses::{Change, POINTS, Point};
use super::matrix::{Factors, Vector};
use super::{
    AIRFLOW, CHANNELS, CHARGE, COIL_OUTLET, CONDENSER_AIR, CONDENSING, DISCHARGE, EVAPORATING, LINE_DROP, LIQUID_LINE,
    POWER, SUPPLY, SUPPLY_WET, SURFACE, Weighing,
};
use crate::diagnosis::cause::{Cause, CauseSet, Conclusion, Hypotheses};
use crate::diagnosis::finding::NextCheck;
use crate::math;

/// How many of the leading hypotheses are looked at.
const LEADING: usize = 4;
/// Least information that makes another measurement worth its time, nats.
const WORTH: f64 = 0.05;

/// Channels that can be measured in addition: the check, ± of the usual instrument (K or %), and how much of its
/// information is worth the trouble: a scale takes longer than a probe.
const MEASURABLE: [(usize, NextCheck, f32, f64); 13] = [
    (AIRFLOW, NextCheck::MeasureAirflow, 6.0, 1.0),
    (SUPPLY, NextCheck::MeasureAirflow, 0.5, 1.0),
    (DISCHARGE, NextCheck::MeasureDischargeLine, 0.6, 1.0),
    (CONDENSER_AIR, NextCheck::MeasureCondenserAir, 0.5, 1.0),
    (POWER, NextCheck::MeasurePower, 1.5, 0.8),
    (SURFACE, NextCheck::MeasureCoilSurface, 0.5, 0.9),
    (COIL_OUTLET, NextCheck::MeasureCoilOutlet, 0.5, 0.9),
    (SUPPLY_WET, NextCheck::MeasureSupplyWetBulb, 0.5, 0.9),
    (LINE_DROP, NextCheck::LiquidLineDrop, 0.2, 1.0),
    (CHARGE, NextCheck::WeighCharge, EXPECTED_CHARGE, 0.4),
    (EVAPORATING, NextCheck::MeasureSuctionSide, 0.6, 1.0),
    (CONDENSING, NextCheck::MeasureLiquidSide, 0.6, 1.0),
    (LIQUID_LINE, NextCheck::MeasureLiquidSide, 0.5, 1.0),
];

/// What confirms a cause, or is done about it first.
pub(super) fn confirms(causes: CauseSet) -> NextCheck {
    // Of two, what is no charge fault comes first: a charge is corrected last.
    let of_charge = |cause: &Cause| matches!(cause, Cause::Undercharge | Cause::Overcharge);
    let first = causes.iter().find(|cause| !of_charge(cause)).or_else(|| causes.iter().next());
    match first {
        None => NextCheck::None,
        Some(Cause::Undercharge) => NextCheck::FindLeak,
        Some(Cause::Overcharge) => NextCheck::WeighCharge,
        Some(Cause::LowIndoorAirflow) => NextCheck::IndoorAirflow,
        Some(Cause::RestrictedCondenserAir) => NextCheck::CondenserAir,
        Some(Cause::LiquidLineRestriction) => NextCheck::LiquidLineDrop,
        Some(Cause::CompressorLeakage) => NextCheck::CompressorTest,
        Some(Cause::NonCondensables) => NextCheck::StandingPressure,
        Some(Cause::MeteringOverfeeding | Cause::MeteringUnderfeeding) => NextCheck::MeteringDevice,
        Some(Cause::Unmodelled) => NextCheck::CheckInstruments,
    }
}

/// What the leading hypotheses expect of a channel that was not measured, summed up.
#[derive(Clone, Copy)]
struct Sums {
    /// Variance that all share, with the instrument's own.
    base: f32,
    total: f64,
    mean: f64,
    square: f64,
    within: f64,
}

impl Sums {
    const NONE: Self = Self { base: 0.0, total: 0.0, mean: 0.0, square: 0.0, within: 0.0 };

    fn add(&mut self, probability: f64, predicted: f32, variance: f32) {
        let (predicted, variance) = (f64::from(predicted), f64::from(variance));
        self.total += probability;
        self.mean += probability * predicted;
        self.square += probability * (predicted * predicted + variance);
        self.within += probability * math::ln(variance);
    }

    /// Information expected of measuring it, nats.
    fn information(&self) -> f64 {
        if self.total <= 0.0 {
            return 0.0;
        }
        let (mean, square, within) = (self.mean / self.total, self.square / self.total, self.within / self.total);
        0.5 * (math::ln((square - mean * mean).max(1e-9)) - within)
    }
}

#[inline(never)]
pub(super) fn next_check(
    weighing: &Weighing,
    weights: &[f32; POINTS],
    hypotheses: &Hypotheses,
    conclusion: &Conclusion,
) -> NextCheck {
    if let Some(causes) = conclusion.causes {
        return confirms(causes);
    }
    let best = most_telling(weighing, weights, hypotheses);
    // Non-condensables show best on a unit at rest.
    let standing = hypotheses.marginal(Cause::NonCondensables);
    if let (true, None) = ((0.1..0.9).contains(&standing), best) {
        return NextCheck::StandingPressure;
    }
    match best {
        Some(check) => check,
        None => hypotheses
            .iter()
            .find(|one| !one.causes.is_empty())
            .map_or(NextCheck::ReadAgain, |one| confirms(one.causes)),
    }
}

/// The measurement that tells most, if any is worth its time.
#[inline(never)]
fn most_telling(weighing: &Weighing, weights: &[f32; POINTS], hypotheses: &Hypotheses) -> Option<NextCheck> {
    let chosen = &weighing.chosen;
    let factors = Factors::of(&weighing.covariance, chosen.count);
    let mut sums = [Sums::NONE; MEASURABLE.len()];
    for (sums, (channel, _, instrument, _)) in sums.iter_mut().zip(&MEASURABLE) {
        let Some(place) = chosen.unmeasured(*channel) else { continue };
        let (shared, own) = weighing.shared(place);
        let explained: f32 = factors.solve(&shared).iter().zip(&shared).map(|(x, y)| x * y).sum();
        sums.base = (own - explained).max(0.01) + instrument * instrument;
    }
    let mut change = Change::NONE;
    for hypothesis in hypotheses.iter().take(LEADING).filter(|one| !one.causes.contains(Cause::Unmodelled)) {
        let likeliest = likeliest(weights, hypothesis.causes);
        change.put(weighing.signature, Point::of(likeliest), &weighing.regressors);
        let mean = chosen.vector(&change.response.mean);
        let left: Vector = core::array::from_fn(|k| at(&weighing.residual, k) - at(&mean, k));
        let solved = factors.solve(&left);
        for (sums, (channel, ..)) in sums.iter_mut().zip(&MEASURABLE) {
            let Some(place) = chosen.unmeasured(*channel) else { continue };
            let (shared, _) = weighing.shared(place);
            let predicted =
                at(&change.response.mean, *channel) + solved.iter().zip(&shared).map(|(x, y)| x * y).sum::<f32>();
            let along = at(&change.response.along, *channel);
            let other = at(&change.second_along, *channel);
            let variance = sums.base + along * along + other * other + at(&change.response.beside, *channel);
            sums.add(hypothesis.probability, predicted, variance);
        }
    }
    let mut best = (WORTH, None);
    for (sums, (_, check, _, worth)) in sums.iter().zip(&MEASURABLE) {
        let information = worth * sums.information();
        if information > best.0 {
            best = (information, Some(*check));
        }
    }
    best.1
}

fn likeliest(weights: &[f32; POINTS], causes: CauseSet) -> usize {
    let mut best = (0, -1.0);
    for (number, weight) in weights.iter().enumerate() {
        if *weight > best.1 && Point::of(number).causes() == causes {
            best = (number, *weight);
        }
    }
    best.0
}

impl Weighing {
    /// Covariance of a channel that was not measured with those that were, by its place, and its own variance.
    fn shared(&self, place: usize) -> (Vector, f32) {
        let mut shared = [0.0; CHANNELS];
        let row = self.covariance.row(place);
        shared.iter_mut().zip(row).take(self.chosen.count).for_each(|(place, x)| *place = *x);
        (shared, row.last().copied().unwrap_or(0.0))
    }
}
