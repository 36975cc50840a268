//! The judge of judges: a trial must tell good from bad before its figures mean anything. Nothing here says how good the
//! diagnosis is; the binary `scorecard` prints that.

use satline::diagnosis::{Cause, CauseSet};
use satline_tests::trial::by_regression::ByRegression;
use satline_tests::trial::by_signs::BySigns;
use satline_tests::trial::calibration::{brier, log_score};
use satline_tests::trial::expected::Expected;
use satline_tests::trial::fleet::{maps, rows};
use satline_tests::trial::harm::{Harm, hurts};
use satline_tests::trial::judge::{Call, Judge, Judged};
use satline_tests::trial::outcome::{CLASSES, Outcome, rate};
use satline_tests::trial::page::{Wanted, page};
use satline_tests::trial::plan::Level;
use satline_tests::trial::prevalence::Prevalence;
use satline_tests::trial::recipe::Fleet;
use satline_tests::trial::row::Row;
use std::sync::OnceLock;

const UNITS: u64 = 8;

fn develop() -> &'static [Row] {
    static ROWS: OnceLock<Vec<Row>> = OnceLock::new();
    ROWS.get_or_init(|| rows(Fleet::Develop, Fleet::Develop.seed().unwrap(), UNITS, &maps()).rows)
}

/// How many units there are: designs that nobody would sell, or that do not run as built, are left out.
fn units(rows: &[Row]) -> usize {
    rows.iter().map(|row| row.unit).collect::<std::collections::BTreeSet<_>>().len()
}

/// Knows what is wrong and does what is right.
struct Truth;

impl Judge for Truth {
    fn name(&self) -> &'static str {
        "truth"
    }

    fn judge(&self, row: &Row, _: bool) -> Call {
        Call {
            probabilities: vec![(row.truth, 1.0)],
            says_correct: row.truth.is_empty() && !row.wet_suction,
            removes: row.truth == CauseSet::one(Cause::Overcharge),
            ..Call::standing(row.truth)
        }
    }
}

/// Always the same.
struct Always(CauseSet);

impl Judge for Always {
    fn name(&self) -> &'static str {
        "always"
    }

    fn judge(&self, _: &Row, _: bool) -> Call {
        Call { probabilities: vec![(self.0, 1.0)], ..Call::standing(self.0) }
    }
}

#[test]
fn rows_are_the_same_each_time() {
    let maps = maps();
    let seed = Fleet::Develop.seed().unwrap();
    // Fewer units are the first of more.
    let few = rows(Fleet::Develop, seed, 3, &maps).rows;
    assert!(few.iter().zip(develop()).all(|(one, two)| one == two));
    assert!(units(&few) > 0 && few.len() > 133 * units(&few));
    assert!(rows(Fleet::Tune, seed, 1, &maps).rows[0] != few[0]);
    // A fleet like the sealed one can be built; of another seed, and nobody judges it.
    assert!(rows(Fleet::Sealed, 1, 2, &maps).rows.len() > 300);
}

/// Instruments are others on each visit, and faults cost more the worse they are.
#[test]
fn rows_are_what_they_say() {
    let rows = develop();
    assert!(rows.windows(2).all(|pair| pair[0].reading != pair[1].reading && pair[0].reading != pair[0].baseline));
    for cause in [Cause::Undercharge, Cause::LowIndoorAirflow, Cause::CompressorLeakage, Cause::MeteringUnderfeeding] {
        let capacity = |level: Level| {
            let of_level = rows.iter().filter(|row| row.level == level && row.truth == CauseSet::one(cause));
            let capacities: Vec<f64> = of_level.map(|row| row.capacity).collect();
            capacities.iter().sum::<f64>() / capacities.len() as f64
        };
        let (mild, moderate, severe) = (capacity(Level::Mild), capacity(Level::Moderate), capacity(Level::Severe));
        assert!(1.0 > mild && mild > moderate && moderate > severe, "{cause:?} {mild} {moderate} {severe}");
    }
    let healthy = rows.iter().filter(|row| row.truth.is_empty());
    assert!(units(rows) > UNITS as usize / 2);
    assert_eq!(healthy.clone().count(), 6 * units(rows));
    assert!(healthy.clone().all(|row| (row.charge - 1.0).abs() <= 0.03 && row.counts));
    assert!(healthy.clone().all(|row| (row.capacity - 1.0).abs() < 0.03));
    assert!(rows.iter().any(|row| !row.counts) && rows.iter().any(|row| row.wet_suction));
}

#[test]
fn who_knows_the_truth_is_right_and_harms_nobody() {
    let rows = develop();
    let judged = Judged::of(&Truth, rows, true);
    for (row, call) in rows.iter().zip(&judged.calls) {
        assert_eq!(Outcome::of(row, call), Outcome::Correct);
        assert!(!hurts(row, call), "{}: {:?}", row.line(), Harm::of(row, call));
        assert!(brier(row, call) == 0.0 && log_score(row, call) == 0.0);
    }
    assert_eq!(rate(rows, &judged, |_| true, Outcome::Correct).value, 1.0);
}

#[test]
fn who_always_says_undercharge_harms() {
    let rows = develop();
    let judged = Judged::of(&Always(CauseSet::one(Cause::Undercharge)), rows, false);
    for (row, call) in rows.iter().zip(&judged.calls) {
        let short = row.truth == CauseSet::one(Cause::Undercharge);
        assert!(!short || !hurts(row, call));
        assert!(row.charge < 0.98 || Harm::AddsToFull.done(row, call));
        // One step of 5 % is too much above 100 %.
        assert_eq!(Harm::AddsTooMuch.done(row, call), row.charge > 1.0);
    }
    assert_eq!(rate(rows, &judged, |row| row.truth.is_empty(), Outcome::FalseAlarm).value, 1.0);
    let harmful = rows.iter().zip(&judged.calls).filter(|(row, call)| hurts(row, call)).count();
    assert!(harmful as f64 > 0.7 * rows.len() as f64);
}

#[test]
fn who_always_says_healthy_misses_and_harms() {
    let rows = develop();
    let judged = Judged::of(&Always(CauseSet::HEALTHY), rows, false);
    let fault = |row: &Row| row.counts && !row.truth.is_empty();
    assert_eq!(rate(rows, &judged, fault, Outcome::Missed).value, 1.0);
    assert_eq!(rate(rows, &judged, |row| !row.counts, Outcome::Correct).value, 1.0);
    for (row, call) in rows.iter().zip(&judged.calls) {
        assert_eq!(hurts(row, call), row.capacity <= 0.9 || row.wet_suction);
    }
}

#[test]
fn shares_sum_to_one() {
    let rows = develop();
    let expected = Expected::learn(rows);
    let regression = ByRegression::learn(&expected, rows);
    for judged in [Judged::of(&BySigns(&expected), rows, true), Judged::of(&regression, rows, false)] {
        for (title, class) in CLASSES {
            let sum: f64 = Outcome::ALL.iter().map(|outcome| rate(rows, &judged, class, *outcome).value).sum();
            assert!((sum - 1.0).abs() < 1e-9, "{title}: {sum}");
        }
        for call in judged.calls.iter().filter(|call| !call.probabilities.is_empty()) {
            assert!((call.probabilities.iter().map(|one| one.1).sum::<f64>() - 1.0).abs() < 1e-9);
        }
    }
    for prevalence in Prevalence::ALL {
        let weights = prevalence.weights(rows);
        assert!((weights.iter().sum::<f64>() - 1.0).abs() < 1e-9);
        assert!(rows.iter().zip(&weights).all(|(row, weight)| (*weight > 0.0) == row.counts));
    }
}

/// A rival that learnt does better on what it learnt from than one who does not look.
#[test]
fn the_regression_learns() {
    let rows = develop();
    let expected = Expected::learn(rows);
    let regression = ByRegression::learn(&expected, rows);
    let single = |row: &Row| row.counts && row.truth.len() < 2;
    let right = |judge: &dyn Judge| rate(rows, &Judged::of(judge, rows, true), single, Outcome::Correct).value;
    let (learnt, blind) = (right(&regression), right(&Always(CauseSet::HEALTHY)));
    assert!(learnt > 0.5 && learnt > 3.0 * blind, "{learnt} {blind}");
}

#[test]
fn the_page_is_the_same_each_time() {
    let wanted =
        Wanted { fleet: Fleet::Develop, seed: Fleet::Develop.seed().unwrap(), units: 3, learnt: 4, listed: 10 };
    let maps = maps();
    let once = page(&wanted, &maps);
    assert_eq!(once, page(&wanted, &maps));
    for heading in [
        "outcomes",
        "harm",
        "confusion",
        "risk against coverage",
        "reliability",
        "measured readings",
        "a measured trap",
    ] {
        assert!(once.contains(&format!("== {heading} ==")), "{heading}");
    }
    assert!(!once.contains("NaN"));
}
