//! How a call stands to the truth.

use super::interval::{Rate, Tally};
use super::judge::{Call, Judged};
use super::plan::{CAUSES, Level};
use super::prevalence::Prevalence;
use super::row::{Row, name};
use satline::diagnosis::CauseSet;
use std::fmt::Write;

/// How a call stands to the truth.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Outcome {
    /// It names exactly what is wrong, or that nothing is.
    Correct,
    /// It names some of two faults and nothing else.
    Partly,
    /// It names a fault in a healthy unit.
    FalseAlarm,
    /// It calls a faulty unit healthy.
    Missed,
    /// It names another fault.
    Misdiagnosis,
    /// It does not say.
    NoResponse,
}

impl Outcome {
    /// All of them.
    pub const ALL: [Self; 6] =
        [Self::Correct, Self::Partly, Self::FalseAlarm, Self::Missed, Self::Misdiagnosis, Self::NoResponse];

    /// The outcome of a call. Of a fault too small to count, naming it and calling the unit healthy are both right.
    #[must_use]
    pub fn of(row: &Row, call: &Call) -> Self {
        let Some(stands) = call.stands else { return Self::NoResponse };
        if stands == row.truth || (!row.counts && stands.is_empty()) {
            Self::Correct
        } else if row.truth.is_empty() {
            Self::FalseAlarm
        } else if stands.is_empty() {
            Self::Missed
        } else if row.level == Level::Pair && stands.iter().all(|cause| row.truth.contains(cause)) {
            Self::Partly
        } else {
            Self::Misdiagnosis
        }
    }
}

/// Whether a row could have an outcome at all.
fn possible(outcome: Outcome, row: &Row) -> bool {
    match outcome {
        Outcome::Correct | Outcome::NoResponse => true,
        Outcome::Partly => row.level == Level::Pair,
        Outcome::FalseAlarm => row.truth.is_empty(),
        Outcome::Missed => !row.truth.is_empty() && row.counts,
        Outcome::Misdiagnosis => !row.truth.is_empty(),
    }
}

/// A class of rows.
pub type Class = (&'static str, fn(&Row) -> bool);

/// The classes that outcomes are counted in.
pub const CLASSES: [Class; 5] = [
    ("healthy", |row| row.truth.is_empty()),
    ("one fault, moderate or severe", clear_fault),
    ("one fault, mild", |row| row.counts && row.level == Level::Mild),
    ("two faults", |row| row.counts && row.level == Level::Pair),
    ("too small to count", |row| !row.counts),
];

/// A moderate or severe single fault that counts.
#[must_use]
pub fn clear_fault(row: &Row) -> bool {
    row.counts && matches!(row.level, Level::Moderate | Level::Severe)
}

/// Share of an outcome among the rows of a class.
#[must_use]
pub fn rate(rows: &[Row], judged: &Judged, class: impl Fn(&Row) -> bool, outcome: Outcome) -> Rate {
    let of_class = rows.iter().zip(&judged.calls).filter(|(row, _)| class(row));
    Tally::of(of_class.map(|(row, call)| (row.unit, Outcome::of(row, call) == outcome))).share()
}

fn heading(page: &mut String, first: &str) {
    let _ = writeln!(
        page,
        "  {first:<34}{:>7}{:>19}{:>19}{:>19}{:>19}{:>19}{:>19}",
        "rows", "correct", "partly right", "false alarm", "missed", "misdiagnosis", "no response"
    );
}

fn line(page: &mut String, first: &str, rows: &[Row], judged: &Judged, class: &dyn Fn(&Row) -> bool) {
    let count = rows.iter().filter(|row| class(row)).count();
    let _ = write!(page, "  {first:<34}{count:>7}");
    for outcome in Outcome::ALL {
        if rows.iter().any(|row| class(row) && possible(outcome, row)) {
            let _ = write!(page, "{:>19}", rate(rows, judged, class, outcome));
        } else {
            let _ = write!(page, "{:>19}", "-");
        }
    }
    page.push('\n');
}

/// A table of every judge in each class of rows.
#[must_use]
pub fn by_class(rows: &[Row], all: &[Judged]) -> String {
    let mut page = String::new();
    for (title, class) in CLASSES {
        let _ = writeln!(page, "{title}");
        heading(&mut page, "judge");
        for judged in all {
            line(&mut page, &judged.title(), rows, judged, &class);
        }
        page.push('\n');
    }
    page
}

/// Outcomes of every judge over all rows that count, weighed by how common their fault is.
#[must_use]
pub fn weighed(rows: &[Row], all: &[Judged]) -> String {
    let mut page = String::new();
    for prevalence in Prevalence::ALL {
        let weights = prevalence.weights(rows);
        let _ = writeln!(page, "all rows, prevalence {}", prevalence.words());
        heading(&mut page, "judge");
        for judged in all {
            let _ = write!(page, "  {:<34}{:>7}", judged.title(), rows.iter().filter(|row| row.counts).count());
            for outcome in Outcome::ALL {
                let mut tally = Tally::default();
                for ((row, call), weight) in rows.iter().zip(&judged.calls).zip(&weights).filter(|(_, one)| **one > 0.0)
                {
                    tally.add(row.unit, f64::from(Outcome::of(row, call) == outcome), *weight);
                }
                let _ = write!(page, "{:>19}", tally.share());
            }
            page.push('\n');
        }
        page.push('\n');
    }
    page
}

/// A table of one judge by cause and level, of rows that count.
#[must_use]
pub fn by_cause(rows: &[Row], judged: &Judged) -> String {
    let mut page = String::new();
    heading(&mut page, &judged.title());
    for cause in CAUSES {
        for level in [Level::Mild, Level::Moderate, Level::Severe] {
            let class = |row: &Row| row.counts && row.truth == CauseSet::one(cause) && row.level == level;
            line(&mut page, &format!("{} {}", cause.name(), level.name()), rows, judged, &class);
        }
    }
    let mut pairs: Vec<CauseSet> = rows.iter().map(|row| row.truth).filter(|truth| truth.len() == 2).collect();
    pairs.sort_by_key(|pair| pair.bits());
    pairs.dedup();
    for pair in pairs {
        let class = |row: &Row| row.counts && row.truth == pair;
        // The long names of two causes leave no room.
        let short = name(pair).replace("liquid-line-", "").replace("restricted-", "").replace("metering-", "");
        line(&mut page, &short, rows, judged, &class);
    }
    page.push('\n');
    page
}

/// What was called what: rows by truth, columns by what the judge stands by.
#[must_use]
pub fn confusion(rows: &[Row], judged: &Judged) -> String {
    const SHORT: [&str; 12] = [
        "healthy", "under", "over", "airflow", "cond.air", "restrict", "leakage", "noncond", "ovfeed", "unfeed",
        "pair", "none",
    ];
    let place = |causes: CauseSet| match causes.len() {
        0 => 0,
        1 => CAUSES.iter().position(|cause| causes.contains(*cause)).map_or(10, |place| 1 + place),
        _ => 10,
    };
    let mut counts = [[0_usize; 12]; 11];
    for (row, call) in rows.iter().zip(&judged.calls).filter(|(row, _)| row.counts) {
        counts[place(row.truth)][call.stands.map_or(11, place)] += 1;
    }
    let mut page = format!("{}\n  {:<10}", judged.title(), "truth");
    for short in SHORT {
        let _ = write!(page, "{short:>9}");
    }
    page.push('\n');
    for (short, line) in SHORT.iter().zip(counts) {
        let _ = write!(page, "  {short:<10}");
        for count in line {
            let _ = write!(page, "{count:>9}");
        }
        page.push('\n');
    }
    page.push('\n');
    page
}
