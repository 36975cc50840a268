//! The library's own diagnosis as a judge.

use super::judge::{Call, Judge, ONE_STEP};
use super::row::Row;
use satline::diagnosis::{Advice, Charge, Finding, Options, ValueBound, diagnose_with};

/// [`diagnose_with`] at its defaults.
#[derive(Debug, Clone, Copy, Default)]
pub struct Engine;

impl Engine {
    /// Its finding on a row.
    #[must_use]
    pub fn finding(row: &Row, with_baseline: bool) -> Finding {
        let baseline = if with_baseline { std::slice::from_ref(&row.baseline) } else { &[] };
        diagnose_with(&row.reading, &Options { baseline, ..Options::default() })
    }
}

impl Engine {
    /// Why it says what it says of a row, in a few words.
    #[must_use]
    pub fn explained(row: &Row, with_baseline: bool) -> String {
        let finding = Self::finding(row, with_baseline);
        let apart: String = finding
            .features
            .iter()
            .filter(|(_, feature)| feature.standard_deviations().abs() >= 2.0)
            .map(|(name, feature)| format!(", {} {:+.1} σ", name.sentence(), feature.standard_deviations()))
            .collect();
        format!(
            "charge {} ({}, {}), conclusion {}{apart}",
            finding.charge.name(),
            finding.charge_status.name(),
            finding.reason.name(),
            finding.conclusion.reason.name(),
        )
    }
}

/// How much a finding has added before the next look: of an amount of which only an end is known, that end; at least one
/// step there, and one step where there is no amount.
fn share(finding: &Finding) -> f64 {
    match finding.amount {
        Some(amount) if amount.bound == ValueBound::Exact => amount.share,
        Some(amount) => f64::max(amount.lowest, ONE_STEP),
        None => ONE_STEP,
    }
}

impl Judge for Engine {
    fn name(&self) -> &'static str {
        "evidence"
    }

    fn has_priors(&self) -> bool {
        true
    }

    fn judge(&self, row: &Row, with_baseline: bool) -> Call {
        let finding = Self::finding(row, with_baseline);
        Call {
            stands: finding.conclusion.causes,
            probabilities: finding.hypotheses.iter().map(|one| (one.causes, one.probability)).collect(),
            adds: finding.advice == Advice::AddInSteps,
            share: share(&finding),
            removes: finding.advice == Advice::Recover,
            says_correct: finding.charge == Charge::Correct,
        }
    }
}
