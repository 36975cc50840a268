//! Advice that hurts: refrigerant added where there is enough, taken where there is none too much, or a unit left alone
//! that loses much or floods its compressor.

use super::interval::Tally;
use super::judge::{Call, Judged};
use super::row::{Row, name};
use satline::diagnosis::{Cause, CauseSet};
use std::fmt::Write;

/// A way to hurt.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Harm {
    /// Adds to a unit that holds 98 % or more.
    AddsToFull,
    /// Adds so much that the unit would hold more than 105 %.
    AddsTooMuch,
    /// Removes from a unit that holds 102 % or less.
    RemovesFromFull,
    /// Calls the charge right while a tenth or more of the capacity is lost.
    CorrectWhileLosing,
    /// Calls the charge right while liquid comes back to the compressor.
    CorrectWhileFlooding,
    /// Adds while something else is wrong that counts.
    AddsBesideAnotherFault,
}

impl Harm {
    /// All of them.
    pub const ALL: [Self; 6] = [
        Self::AddsToFull,
        Self::AddsTooMuch,
        Self::RemovesFromFull,
        Self::CorrectWhileLosing,
        Self::CorrectWhileFlooding,
        Self::AddsBesideAnotherFault,
    ];

    /// In words.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::AddsToFull => "adds at 98 % of the charge or more",
            Self::AddsTooMuch => "adds to more than 105 % of the charge",
            Self::RemovesFromFull => "removes at 102 % of the charge or less",
            Self::CorrectWhileLosing => "calls the charge right while a tenth of the capacity is lost",
            Self::CorrectWhileFlooding => "calls the charge right while liquid floods back",
            Self::AddsBesideAnotherFault => "adds while another fault counts",
        }
    }

    /// Whether a call hurts so.
    #[must_use]
    pub fn done(self, row: &Row, call: &Call) -> bool {
        match self {
            Self::AddsToFull => call.adds && row.charge >= 0.98,
            Self::AddsTooMuch => call.adds && row.charge + call.share > 1.05,
            Self::RemovesFromFull => call.removes && row.charge <= 1.02,
            Self::CorrectWhileLosing => call.says_correct && row.capacity <= 0.9,
            Self::CorrectWhileFlooding => call.says_correct && row.wet_suction,
            Self::AddsBesideAnotherFault => {
                let another = !row.truth.is_empty() && row.truth != CauseSet::one(Cause::Undercharge);
                call.adds && row.counts && another
            }
        }
    }

    /// Every way in which a call hurts.
    #[must_use]
    pub fn of(row: &Row, call: &Call) -> Vec<Self> {
        Self::ALL.into_iter().filter(|harm| harm.done(row, call)).collect()
    }
}

/// Whether a call hurts in some way.
#[must_use]
pub fn hurts(row: &Row, call: &Call) -> bool {
    Harm::ALL.into_iter().any(|harm| harm.done(row, call))
}

/// Rows in which a call hurts, as a tally.
#[must_use]
pub fn tally(rows: &[Row], judged: &Judged) -> Tally {
    Tally::of(rows.iter().zip(&judged.calls).map(|(row, call)| (row.unit, hurts(row, call))))
}

/// Counts of every judge, and the share of rows and of units. What floods in a healthy unit, which is what some air does
/// to an orifice, is counted and told apart.
#[must_use]
pub fn counts(rows: &[Row], all: &[Judged]) -> String {
    let mut page = format!("  {:<24}", "judge");
    for (place, _) in Harm::ALL.iter().enumerate() {
        let _ = write!(page, "{:>7}", ["A", "B", "C", "D", "E", "F"][place]);
    }
    let _ = writeln!(page, "{:>14}{:>8}{:>21}{:>22}", "E in healthy", "any", "% of rows", "% of units harmed");
    for judged in all {
        let pairs = || rows.iter().zip(&judged.calls);
        let _ = write!(page, "  {:<24}", judged.title());
        for harm in Harm::ALL {
            let _ = write!(page, "{:>7}", pairs().filter(|(row, call)| harm.done(row, call)).count());
        }
        let healthy =
            pairs().filter(|(row, call)| row.truth.is_empty() && Harm::CorrectWhileFlooding.done(row, call)).count();
        let any = pairs().filter(|(row, call)| hurts(row, call)).count();
        let mut harmed = std::collections::BTreeMap::new();
        pairs().for_each(|(row, call)| *harmed.entry(row.unit).or_insert(false) |= hurts(row, call));
        let units = Tally::of(harmed.into_iter()).share();
        let _ = writeln!(page, "{healthy:>14}{any:>8}{:>21}{units:>22}", tally(rows, judged).share());
    }
    for (harm, letter) in Harm::ALL.iter().zip(["A", "B", "C", "D", "E", "F"]) {
        let _ = writeln!(page, "  {letter}: {}", harm.words());
    }
    let units = rows.iter().map(|row| row.unit).collect::<std::collections::BTreeSet<_>>().len();
    let bound = 300.0 / units.max(1) as f64;
    let _ = writeln!(page, "  Where none is seen: at most {bound:.1} % with 95 %, three over {units} units.\n");
    page
}

/// Each row in which a judge hurts: what it is, what was said, and why that hurts; at most so many, worst kinds first.
#[must_use]
pub fn list(rows: &[Row], judged: &Judged, most: usize) -> String {
    let mut found: Vec<(&Row, &Call, Vec<Harm>)> = rows
        .iter()
        .zip(&judged.calls)
        .map(|(row, call)| (row, call, Harm::of(row, call)))
        .filter(|(_, _, harms)| !harms.is_empty())
        .collect();
    found.sort_by_key(|(_, _, harms)| harms[0] as usize);
    let mut page = format!("{}: {} rows\n", judged.title(), found.len());
    for (row, call, harms) in found.iter().take(most) {
        let words: Vec<&str> = harms.iter().map(|harm| harm.words()).collect();
        let likely: Vec<String> = call
            .probabilities
            .iter()
            .take(3)
            .map(|(causes, probability)| format!("{} {:.0} %", name(*causes), 100.0 * probability))
            .collect();
        let advice = match (call.adds, call.removes) {
            (true, _) => format!(", adds {:.0} %", 100.0 * call.share),
            (_, true) => ", removes".to_string(),
            _ => String::new(),
        };
        let stands = call.stands.map_or("cannot tell".to_string(), name);
        let _ = writeln!(page, "  {}", row.line());
        let _ = writeln!(page, "    stands by {stands}{advice}; likely: {}; {}", likely.join(", "), words.join(", "));
    }
    if found.len() > most {
        let _ = writeln!(page, "  and {} more", found.len() - most);
    }
    page.push('\n');
    page
}
