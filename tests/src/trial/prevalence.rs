//! Rows weighed as if faults were as common as in one population or another: the fleets hold each fault equally often,
//! which no street does.

use super::judge::Call;
use super::row::Row;
use satline::diagnosis::{Cause, CauseSet, Priors};
use std::collections::BTreeMap;

/// How common faults are.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Prevalence {
    /// Healthy, each fault and pairs together as common as each other.
    Uniform,
    /// As the library's own priors have it.
    Field,
    /// Nine of ten are healthy; the faults among themselves as in the field.
    MostlyHealthy,
}

impl Prevalence {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::Uniform, Self::Field, Self::MostlyHealthy];

    /// In words.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Uniform => "uniform",
            Self::Field => "as the default priors",
            Self::MostlyHealthy => "nine of ten healthy",
        }
    }

    fn weight(self, truth: CauseSet, pairs: f64, faulty: f64) -> f64 {
        let priors = Priors::default();
        match self {
            Self::Uniform if truth.len() > 1 => 1.0 / pairs,
            Self::Uniform => 1.0,
            Self::Field => priors.weight(truth),
            Self::MostlyHealthy if truth.is_empty() => 0.9,
            Self::MostlyHealthy => 0.1 * priors.weight(truth) / faulty,
        }
    }

    /// A call as it would be with priors of this prevalence: its probabilities by the ratio of these priors to the
    /// default ones, which is what replacing the priors does.
    #[must_use]
    pub fn turned(self, call: &Call) -> Call {
        let pairs = 12.0;
        let faulty = 1.0 - Priors::default().weight(CauseSet::HEALTHY);
        let factor = |set: CauseSet| {
            let own = if set.contains(Cause::Unmodelled) {
                Priors::default().weight(set)
            } else {
                self.weight(set, pairs, faulty)
            };
            own / Priors::default().weight(set)
        };
        let mut probabilities: Vec<(CauseSet, f64)> =
            call.probabilities.iter().map(|(set, one)| (*set, one * factor(*set))).collect();
        let sum: f64 = probabilities.iter().map(|(_, one)| one).sum();
        probabilities.iter_mut().for_each(|(_, one)| *one /= sum);
        probabilities.sort_by(|one, other| other.1.total_cmp(&one.1));
        Call { probabilities, ..call.clone() }
    }

    /// A weight for each row, with a sum of one; none for a fault too small to count.
    #[must_use]
    pub fn weights(self, rows: &[Row]) -> Vec<f64> {
        let mut counts: BTreeMap<u16, (CauseSet, f64)> = BTreeMap::new();
        for row in rows.iter().filter(|row| row.counts) {
            counts.entry(row.truth.bits()).or_insert((row.truth, 0.0)).1 += 1.0;
        }
        let sets: Vec<CauseSet> = counts.values().map(|(set, _)| *set).collect();
        let pairs = sets.iter().filter(|set| set.len() > 1).count().max(1) as f64;
        let faulty = sets.iter().filter(|set| !set.is_empty()).map(|set| Priors::default().weight(*set)).sum();
        let sum: f64 = sets.iter().map(|set| self.weight(*set, pairs, faulty)).sum();
        let of = |row: &Row| match counts.get(&row.truth.bits()) {
            Some((set, count)) if row.counts => self.weight(*set, pairs, faulty) / count / sum,
            _ => 0.0,
        };
        rows.iter().map(of).collect()
    }
}
