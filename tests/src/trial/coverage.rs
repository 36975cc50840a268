//! Risk against coverage: how often a judge errs if it answers only where it is surest.

use super::interval::Tally;
use super::judge::Judged;
use super::row::Row;
use std::fmt::Write;

/// Shares of rows answered.
const COVERAGES: [f64; 6] = [0.1, 0.2, 0.4, 0.6, 0.8, 1.0];

/// Share of wrong answers among the rows of which a judge is surest, for several shares answered, and at the point where
/// it stands by its answers itself. Rows too small to count are left out.
#[must_use]
pub fn risk(rows: &[Row], all: &[Judged]) -> String {
    let mut page = format!("  {:<24}", "judge");
    for coverage in COVERAGES {
        let _ = write!(page, "{:>19}", format!("{:.0} % answered", 100.0 * coverage));
    }
    let _ = writeln!(page, "{:>14}{:>19}", "stands, %", "wrong of those");
    for judged in all {
        let counted: Vec<_> = rows.iter().zip(&judged.calls).filter(|(row, _)| row.counts).collect();
        let _ = write!(page, "  {:<24}", judged.title());
        let mut sorted: Vec<(f64, u64, bool)> = counted
            .iter()
            .filter_map(|(row, call)| call.top().map(|(causes, sure)| (sure, row.unit, causes != row.truth)))
            .collect();
        // Stable, so that equal ones stay in the order of rows.
        sorted.sort_by(|one, two| two.0.total_cmp(&one.0));
        for coverage in COVERAGES {
            let answered = (coverage * counted.len() as f64).round() as usize;
            if answered == 0 || answered > sorted.len() {
                let _ = write!(page, "{:>19}", "-");
            } else {
                let wrong = Tally::of(sorted[..answered].iter().map(|(_, unit, wrong)| (*unit, *wrong))).share();
                let _ = write!(page, "{wrong:>19}");
            }
        }
        let standing: Vec<_> = counted.iter().filter(|(_, call)| call.stands.is_some()).collect();
        let wrong = Tally::of(standing.iter().map(|(row, call)| (row.unit, call.stands != Some(row.truth)))).share();
        let share = 100.0 * standing.len() as f64 / counted.len().max(1) as f64;
        let _ = writeln!(page, "{share:>14.1}{wrong:>19}");
    }
    page.push('\n');
    page
}
