//! How much the charge is off.

use super::Weighing;
use super::expected::difference;
use super::hypotheses::{POINTS, Point};
use super::response::{pair_causes, severity};
use super::{CONDENSING, EVAPORATING, LIQUID_LINE, SUCTION_LINE};
use crate::diagnosis::amount::ChargeAmount;
use crate::diagnosis::cause::{Cause, Conclusion, Hypotheses};
use crate::diagnosis::finding::ValueBound;
use crate::math;
use crate::reading::Reading;

/// Standard deviations either side that hold 90 %.
const NINETY: f64 = 1.645;
/// Half the step between two severities of charge, as a share, by √3: they stand for all between them.
const BETWEEN_NODES: f64 = 0.025;
/// Standard deviations by which less is told than the mean.
const CAUTIOUS: f64 = 0.43;
/// Superheat or subcooling below which it may be gone, K.
const GONE_K: f32 = 1.0;

/// The amount, where the charge is likelier off than not.
#[inline(never)]
pub(super) fn amount(
    weighing: &Weighing,
    reading: &Reading,
    weights: &[f32; POINTS],
    hypotheses: &Hypotheses,
    conclusion: &Conclusion,
) -> Option<ChargeAmount> {
    let low = hypotheses.marginal(Cause::Undercharge);
    let high = hypotheses.marginal(Cause::Overcharge);
    let (cause, sign) = if low >= high { (0, 1.0) } else { (1, -1.0) };
    let stands = conclusion
        .causes
        .is_some_and(|causes| causes.contains(Cause::Undercharge) || causes.contains(Cause::Overcharge));
    if !stands && low.max(high) < 0.5 {
        return None;
    }
    let (mut sum, mut first, mut second) = (0.0_f64, 0.0_f64, 0.0_f64);
    for (number, weight) in weights.iter().enumerate() {
        let node = match Point::of(number) {
            Point::Single(single, node) if single == cause => node,
            Point::Pair(pair, node, _) if pair_causes(pair).0 == cause => node,
            _ => continue,
        };
        let share = f64::from(severity(weighing.signature, cause, node));
        let weight = f64::from(*weight);
        sum += weight;
        first += weight * share;
        second += weight * share * share;
    }
    if sum <= 0.0 {
        return None;
    }
    // Of what a full unit holds: a severity counts from the nameplate's charge already.
    let mean = first / sum;
    let variance = (second / sum - mean * mean).max(0.0) + BETWEEN_NODES * BETWEEN_NODES;
    let deviation = math::sqrt(variance);
    // More can be added after the next look, what is too much cannot be taken back as easily: told is what is twice as
    // likely too little as too much.
    let told = (mean - CAUTIOUS * deviation).max(0.5 * mean);
    let (near, far) = ((mean - NINETY * deviation).max(0.0), mean + NINETY * deviation);
    let (lowest, highest) = if sign > 0.0 { (near, far) } else { (-far, -near) };
    let gone = if sign > 0.0 { (CONDENSING, LIQUID_LINE) } else { (SUCTION_LINE, EVAPORATING) };
    let at_saturation = measured_difference(weighing, gone).is_some_and(|kelvin| kelvin < GONE_K);
    Some(ChargeAmount {
        share: sign * told,
        standard_uncertainty: deviation,
        lowest,
        highest,
        mass_kg: reading.expected_charge.map(|expected| sign * told * expected.kilograms()),
        bound: if at_saturation { ValueBound::AtLeast } else { ValueBound::Exact },
    })
}

fn measured_difference(weighing: &Weighing, (plus, minus): (usize, usize)) -> Option<f32> {
    let compared = &weighing.compared;
    let known = |channel: usize| compared.present.get(channel) == Some(&true);
    (known(plus) && known(minus)).then(|| difference(&compared.measured, plus, Some(minus)))
}
