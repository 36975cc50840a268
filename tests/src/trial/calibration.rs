//! Whether probabilities mean what they say.

use super::interval::Tally;
use super::judge::{Call, Judged};
use super::prevalence::Prevalence;
use super::row::Row;
use std::fmt::Write;

/// Probabilities below this count as this in the logarithm: a judge who rules the truth out would lose without end.
const FLOOR: f64 = 1e-4;
const BINS: usize = 10;

fn of_truth(row: &Row, call: &Call) -> f64 {
    call.probabilities.iter().filter(|(causes, _)| *causes == row.truth).map(|(_, probability)| probability).sum()
}

/// The squared distance of the probabilities from the truth: 0 at best, 2 at worst.
#[must_use]
pub fn brier(row: &Row, call: &Call) -> f64 {
    let own = of_truth(row, call);
    let others: f64 =
        call.probabilities.iter().filter(|(causes, _)| *causes != row.truth).map(|(_, one)| one * one).sum();
    (1.0 - own) * (1.0 - own) + others
}

/// Minus the logarithm of the truth's probability.
#[must_use]
pub fn log_score(row: &Row, call: &Call) -> f64 {
    -of_truth(row, call).max(FLOOR).ln()
}

/// Rows with their calls and weights, of a judge who gives probabilities; turned to the prevalence's priors where the judge
/// has priors that can be replaced.
fn weighed<'a>(
    rows: &'a [Row],
    judged: &'a Judged,
    prevalence: Prevalence,
) -> impl Iterator<Item = (&'a Row, Call, f64)> {
    rows.iter()
        .zip(&judged.calls)
        .zip(prevalence.weights(rows))
        .filter(|((_, call), weight)| *weight > 0.0 && !call.probabilities.is_empty())
        .map(move |((row, call), weight)| {
            (row, if judged.has_priors { prevalence.turned(call) } else { call.clone() }, weight)
        })
}

/// Scores of all judges who give probabilities, at each prevalence.
#[must_use]
pub fn scores(rows: &[Row], all: &[Judged]) -> String {
    let mut page = format!(
        "  {:<24}{:<24}{:>10}{:>24}{:>24}{:>24}\n",
        "judge", "prevalence", "answered", "Brier", "log score", "top is right"
    );
    for judged in all.iter().filter(|judged| judged.calls.iter().any(|call| !call.probabilities.is_empty())) {
        for prevalence in Prevalence::ALL {
            let mut tallies = [Tally::default(), Tally::default(), Tally::default()];
            for (row, call, weight) in weighed(rows, judged, prevalence) {
                let right = f64::from(call.top().is_some_and(|(causes, _)| causes == row.truth));
                for (tally, value) in tallies.iter_mut().zip([brier(row, &call), log_score(row, &call), right]) {
                    tally.add(row.unit, value, weight);
                }
            }
            let [brier, log, right] = tallies;
            let _ = writeln!(
                page,
                "  {:<24}{:<24}{:>9.1}%{:>24}{:>24}{:>24}",
                judged.title(),
                prevalence.words(),
                100.0 * brier.weight(),
                brier.mean().plain(),
                log.mean().plain(),
                right.share(),
            );
        }
    }
    page.push('\n');
    page
}

/// How often the likeliest answer is right, by what was said of it.
#[must_use]
pub fn reliability(rows: &[Row], judged: &Judged) -> String {
    let mut page = String::new();
    if judged.calls.iter().all(|call| call.probabilities.is_empty()) {
        return format!("{} gives no probabilities\n\n", judged.title());
    }
    for prevalence in Prevalence::ALL {
        let mut bins = vec![(Tally::default(), Tally::default()); BINS];
        for (row, call, weight) in weighed(rows, judged, prevalence) {
            if let Some((causes, probability)) = call.top() {
                let bin = ((probability * BINS as f64) as usize).min(BINS - 1);
                bins[bin].0.add(row.unit, probability, weight);
                bins[bin].1.add(row.unit, f64::from(causes == row.truth), weight);
            }
        }
        let _ = writeln!(page, "{}, prevalence {}", judged.title(), prevalence.words());
        let _ = writeln!(page, "  {:<12}{:>12}{:>12}{:>22}", "said", "% of weight", "mean said", "right, %");
        let (mut gap, mut all) = (0.0, 0.0);
        for (bin, (said, right)) in bins.iter().enumerate().filter(|(_, (said, _))| said.weight() > 0.0) {
            let (mean, rate, weight) = (said.mean().value, right.share(), said.weight());
            gap += weight * (mean - rate.value).abs();
            all += weight;
            let range = format!("{}-{} %", 10 * bin, 10 * bin + 10);
            let _ = writeln!(page, "  {range:<12}{:>12.1}{:>12.1}{rate:>22}", 100.0 * weight, 100.0 * mean);
        }
        let _ = writeln!(page, "  mean gap between said and right: {:.1} %\n", 100.0 * gap / all);
    }
    page
}
