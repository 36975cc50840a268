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

/// One of the leading hypotheses at its likeliest severity.
struct Leader {
    probability: f64,
    change: Change,
    /// Measured less what it expects of the measured channels, solved by their covariance.
    solved: Vector,
}

pub(super) fn next_check(
    weighing: &Weighing,
    weights: &[f32; POINTS],
    hypotheses: &Hypotheses,
    conclusion: &Conclusion,
) -> NextCheck {
    if let Some(causes) = conclusion.causes {
        return confirms(causes);
    }
    let factors = Factors::of(&weighing.covariance, weighing.chosen.count);
    let mut best = (WORTH, None);
    let mut leaders: [Option<Leader>; LEADING] = [const { None }; LEADING];
    for (place, hypothesis) in leaders.iter_mut().zip(hypotheses.iter()) {
        if hypothesis.causes.contains(Cause::Unmodelled) {
            continue;
        }
        let likeliest = likeliest(weights, hypothesis.causes);
        let change = Change::of(weighing.kind.signature, Point::of(likeliest), &weighing.regressors);
        let mean = weighing.chosen.vector(&change.response.mean);
        let left: Vector = core::array::from_fn(|k| at(&weighing.residual, k) - at(&mean, k));
        *place = Some(Leader { probability: hypothesis.probability, change, solved: factors.solve(&left) });
    }
    for (channel, check, instrument, worth) in MEASURABLE {
        if weighing.measured.present.get(channel) == Some(&true) {
            continue;
        }
        let information = worth * information(weighing, &factors, &leaders, channel, instrument);
        if information > best.0 {
            best = (information, Some(check));
        }
    }
    // Non-condensables show best on a unit at rest.
    let standing = hypotheses.marginal(Cause::NonCondensables);
    if let (true, None) = ((0.1..0.9).contains(&standing), best.1) {
        return NextCheck::StandingPressure;
    }
    match best.1 {
        Some(check) => check,
        None => hypotheses
            .iter()
            .find(|one| !one.causes.is_empty())
            .map_or(NextCheck::ReadAgain, |one| confirms(one.causes)),
    }
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

/// Information expected of measuring a channel, nats.
fn information(
    weighing: &Weighing,
    factors: &Factors,
    leaders: &[Option<Leader>; LEADING],
    channel: usize,
    instrument: f32,
) -> f64 {
    let mut shared = [0.0; CHANNELS];
    for (place, measured) in shared.iter_mut().zip(weighing.chosen.place).take(weighing.chosen.count) {
        *place = weighing.full.get(channel, usize::from(measured));
    }
    let explained: f32 = factors.solve(&shared).iter().zip(&shared).map(|(x, y)| x * y).sum();
    let base = (weighing.full.get(channel, channel) - explained).max(0.01) + instrument * instrument;
    let (mut total, mut mean, mut square, mut within) = (0.0, 0.0, 0.0, 0.0);
    for leader in leaders.iter().flatten() {
        let predicted = at(&leader.change.response.mean, channel)
            + leader.solved.iter().zip(&shared).map(|(x, y)| x * y).sum::<f32>();
        let along = at(&leader.change.response.along, channel);
        let other = at(&leader.change.second_along, channel);
        let variance = base + along * along + other * other + at(&leader.change.response.beside, channel);
        let (predicted, variance) = (f64::from(predicted), f64::from(variance));
        total += leader.probability;
        mean += leader.probability * predicted;
        square += leader.probability * (predicted * predicted + variance);
        within += leader.probability * math::ln(variance);
    }
    if total <= 0.0 {
        return 0.0;
    }
    let (mean, square, within) = (mean / total, square / total, within / total);
    0.5 * (math::ln((square - mean * mean).max(1e-9)) - within)
}
