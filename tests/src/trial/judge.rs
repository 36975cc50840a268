//! Who judges a reading, and what a judgement says.

use super::fleet::in_parallel;
use super::row::Row;
use satline::diagnosis::CauseSet;

/// What a judge says of one reading.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Call {
    /// What it stands by, empty for a healthy unit; nothing where it cannot tell.
    pub stands: Option<CauseSet>,
    /// How likely each set of causes is, most likely first; empty of a judge that does not say.
    pub probabilities: Vec<(CauseSet, f64)>,
    /// Whether it tells to add refrigerant.
    pub adds: bool,
    /// How much of the nameplate charge to add before the next look, where it tells to.
    pub share: f64,
    /// Whether it tells to remove refrigerant.
    pub removes: bool,
    /// Whether it says that the charge is right.
    pub says_correct: bool,
}

/// Largest step in which refrigerant is added when no amount is told (common practice).
pub const ONE_STEP: f64 = satline::diagnosis::LARGEST_STEP_SHARE;

impl Call {
    /// A call that stands by causes and does with the charge what follows from them.
    #[must_use]
    pub fn standing(causes: CauseSet) -> Self {
        use satline::diagnosis::Cause::{Overcharge, Undercharge};
        Self {
            stands: Some(causes),
            adds: causes == CauseSet::one(Undercharge),
            share: ONE_STEP,
            removes: causes == CauseSet::one(Overcharge),
            says_correct: causes.is_empty(),
            ..Self::default()
        }
    }

    /// What it takes for likeliest: by its probabilities, or what it stands by.
    #[must_use]
    pub fn top(&self) -> Option<(CauseSet, f64)> {
        self.probabilities.first().copied()
    }
}

/// Someone who judges readings.
pub trait Judge: Sync {
    /// A short name.
    fn name(&self) -> &'static str;

    /// Whether its probabilities rest on [`satline::diagnosis::Priors`], and can so be turned to other ones.
    fn has_priors(&self) -> bool {
        false
    }

    /// What it says of a row's reading, with or without the baseline of its unit. It may look at nothing but the two
    /// readings.
    fn judge(&self, row: &Row, with_baseline: bool) -> Call;
}

/// A judge's calls on rows.
#[derive(Debug, Clone, PartialEq)]
pub struct Judged {
    /// The judge's name.
    pub name: &'static str,
    /// Whether it had the baselines.
    pub with_baseline: bool,
    /// See [`Judge::has_priors`].
    pub has_priors: bool,
    /// One call a row.
    pub calls: Vec<Call>,
}

/// Rows judged at a time by one thread.
const CHUNK: usize = 256;

impl Judged {
    /// Lets a judge see all rows.
    #[must_use]
    pub fn of(judge: &dyn Judge, rows: &[Row], with_baseline: bool) -> Self {
        let chunks: Vec<&[Row]> = rows.chunks(CHUNK).collect();
        let calls = in_parallel(chunks.len() as u64, |number| {
            chunks[number as usize].iter().map(|row| judge.judge(row, with_baseline)).collect::<Vec<_>>()
        });
        Self {
            name: judge.name(),
            with_baseline,
            has_priors: judge.has_priors(),
            calls: calls.into_iter().flatten().collect(),
        }
    }

    /// Name and what it was given.
    #[must_use]
    pub fn title(&self) -> String {
        format!("{}{}", self.name, if self.with_baseline { ", baseline" } else { "" })
    }
}
