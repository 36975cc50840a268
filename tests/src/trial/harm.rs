//! Advice that hurts: refrigerant added where there is enough, taken where there is none too much, or a unit left alone
//! that loses much or floods its compressor.

use super::interval::Tally;
use super::judge::{Call, Judged};
use super::prevalence::Prevalence;
use super::row::{Row, name};
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
    /// Adds while something else is wrong that counts, and costs more than what is missing of the charge.
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
            Self::AddsBesideAnotherFault => "adds while another fault dominates",
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
            Self::AddsBesideAnotherFault => call.adds && row.counts && row.other_dominates,
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
    page.truncate(page.len() - 1);
    let _ = writeln!(page, "{:>9}{:>9}", "adds", "removes");
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
        let adds = judged.calls.iter().filter(|call| call.adds).count();
        let removes = judged.calls.iter().filter(|call| call.removes).count();
        let harmful = tally(rows, judged).share();
        let _ = writeln!(page, "{healthy:>14}{any:>8}{harmful:>21}{units:>22}{adds:>9}{removes:>9}");
    }
    for (harm, letter) in Harm::ALL.iter().zip(["A", "B", "C", "D", "E", "F"]) {
        let _ = writeln!(page, "  {letter}: {}", harm.words());
    }
    let units = rows.iter().map(|row| row.unit).collect::<std::collections::BTreeSet<_>>().len();
    let bound = 300.0 / units.max(1) as f64;
    let _ = writeln!(page, "  Where none is seen: at most {bound:.1} % with 95 %, three over {units} units.\n");
    page
}

/// Harmful rows in % at each prevalence; what is too small to count has no weight there.
#[must_use]
pub fn weighed(rows: &[Row], all: &[Judged]) -> String {
    let mut page = format!("  {:<24}", "judge, % of rows");
    for prevalence in Prevalence::ALL {
        let _ = write!(page, "{:>24}", prevalence.words());
    }
    page.push('\n');
    for judged in all {
        let _ = write!(page, "  {:<24}", judged.title());
        for prevalence in Prevalence::ALL {
            let mut tally = Tally::default();
            for ((row, call), weight) in rows.iter().zip(&judged.calls).zip(prevalence.weights(rows)) {
                tally.add(row.unit, f64::from(hurts(row, call)), weight);
            }
            let _ = write!(page, "{:>24}", tally.share());
        }
        page.push('\n');
    }
    page.push('\n');
    page
}

/// Each row in which a judge hurts, by the worst way in which it does; of each way at most so many. Says what the row is,
/// what was said, and what the judge's explanation is.
#[must_use]
pub fn list(rows: &[Row], judged: &Judged, most: usize, explained: impl Fn(&Row) -> String) -> String {
    let mut page = String::new();
    for harm in Harm::ALL {
        let found: Vec<(&Row, &Call)> =
            rows.iter().zip(&judged.calls).filter(|(row, call)| Harm::of(row, call).first() == Some(&harm)).collect();
        let _ = writeln!(page, "{} {}: {} rows", judged.title(), harm.words(), found.len());
        for (row, call) in found.iter().take(most) {
            let likely: Vec<String> = call
                .probabilities
                .iter()
                .take(3)
                .map(|(causes, probability)| format!("{} {:.0} %", name(*causes), 100.0 * probability))
                .collect();
            let likely = if likely.is_empty() { "nothing weighed".to_string() } else { likely.join(", ") };
            let advice = match (call.adds, call.removes) {
                (true, _) => format!("adds {:.0} %", 100.0 * call.share),
                (_, true) => "removes".to_string(),
                _ => "leaves the charge".to_string(),
            };
            let stands = call.stands.map_or("cannot tell".to_string(), name);
            let also: String = Harm::of(row, call).iter().skip(1).map(|other| format!("; {}", other.words())).collect();
            let _ = writeln!(page, "  {}", row.line());
            let _ = writeln!(page, "    {advice}; stands by {stands}; {likely}; {}{also}", explained(row));
        }
        if found.len() > most {
            let _ = writeln!(page, "  and {} more", found.len() - most);
        }
    }
    page.push('\n');
    page
}
