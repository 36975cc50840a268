//! A rival: the subcooling alone, against the unit's baseline, the maker's figure, or the mean of its kind.

use super::expected::Expected;
use super::features::{SUBCOOLING, features, fixed};
use super::judge::{Call, Judge};
use super::row::Row;
use satline::diagnosis::{Cause, CauseSet};
use satline::reading::{Field, Reading};

/// Share of healthy rows of the tuning fleet that it may take for faulty.
const FALSE_ALARMS: f64 = 0.05;

/// Too little below a threshold, too much above, healthy between.
#[derive(Debug, Clone)]
pub struct BySubcooling<'a> {
    expected: &'a Expected,
    /// By metering and by whether there is a baseline, K.
    thresholds: [[f64; 2]; 2],
}

impl<'a> BySubcooling<'a> {
    /// With thresholds from the healthy rows of a fleet.
    #[must_use]
    pub fn learn(expected: &'a Expected, rows: &[Row]) -> Self {
        let mut judge = Self { expected, thresholds: [[0.0; 2]; 2] };
        for (of_kind, is_fixed) in [false, true].into_iter().enumerate() {
            for (place, with_baseline) in [false, true].into_iter().enumerate() {
                let healthy = rows.iter().filter(|row| row.truth.is_empty() && row.fixed == is_fixed);
                let mut sizes: Vec<f64> = healthy
                    .filter_map(|row| judge.residual(&row.reading, with_baseline.then_some(&row.baseline)))
                    .map(f64::abs)
                    .collect();
                sizes.sort_by(f64::total_cmp);
                let at = (sizes.len() as f64 * (1.0 - FALSE_ALARMS)) as usize;
                judge.thresholds[of_kind][place] = sizes.get(at).copied().unwrap_or(f64::INFINITY);
            }
        }
        judge
    }

    fn residual(&self, reading: &Reading, baseline: Option<&Reading>) -> Option<f64> {
        match (baseline, reading.get(Field::TargetSubcooling)) {
            (None, Some(target)) => Some(features(reading)[SUBCOOLING]? - target),
            _ => self.expected.deviations(reading, baseline)[SUBCOOLING],
        }
    }
}

impl Judge for BySubcooling<'_> {
    fn name(&self) -> &'static str {
        "subcooling"
    }

    fn judge(&self, row: &Row, with_baseline: bool) -> Call {
        let threshold = self.thresholds[usize::from(fixed(&row.reading))][usize::from(with_baseline)];
        match self.residual(&row.reading, with_baseline.then_some(&row.baseline)) {
            None => Call::default(),
            Some(residual) if residual < -threshold => Call::standing(CauseSet::one(Cause::Undercharge)),
            Some(residual) if residual > threshold => Call::standing(CauseSet::one(Cause::Overcharge)),
            Some(_) => Call::standing(CauseSet::HEALTHY),
        }
    }
}
