//! Whether the amount to add or recover is right, where only the charge is wrong.

use super::engine::Engine;
use super::fleet::in_parallel;
use super::interval::Tally;
use super::plan::Level;
use super::row::Row;
use satline::diagnosis::{Cause, CauseSet, ChargeAmount, ValueBound};
use std::fmt::Write;

/// Share that is missing of a row's charge, negative of too much: what an amount should say.
fn missing(row: &Row) -> f64 {
    1.0 - row.charge
}

/// Whether the interval holds the truth; of an amount of which an end is known, whether the truth lies beyond it.
fn holds(row: &Row, amount: &ChargeAmount) -> bool {
    let truth = missing(row);
    match amount.bound {
        ValueBound::Exact => amount.lowest <= truth && truth <= amount.highest,
        _ => truth.abs() >= f64::min(amount.lowest.abs(), amount.highest.abs()) && truth * amount.share >= 0.0,
    }
}

/// Told amounts against the truth, by cause and level, with and without a baseline.
#[must_use]
pub fn amounts(rows: &[Row]) -> String {
    let mut page = format!(
        "  {:<34}{:>8}{:>20}{:>20}{:>26}{:>26}{:>20}{:>20}\n",
        "wrong by",
        "rows",
        "told, %",
        "of them one-sided",
        "mean told - true, points",
        "mean size of that",
        "in its 90 %",
        "one-sided and so"
    );
    for with_baseline in [false, true] {
        for cause in [Cause::Undercharge, Cause::Overcharge] {
            for level in [Level::Mild, Level::Moderate, Level::Severe] {
                let of_kind: Vec<&Row> =
                    rows.iter().filter(|row| row.level == level && row.truth == CauseSet::one(cause)).collect();
                let told = in_parallel(of_kind.len() as u64, |place| {
                    Engine::finding(of_kind[place as usize], with_baseline).amount
                });
                let (mut all, mut one_sided) = (Tally::default(), Tally::default());
                let (mut off, mut size) = (Tally::default(), Tally::default());
                let (mut held, mut held_one_sided) = (Tally::default(), Tally::default());
                for (row, amount) in of_kind.iter().zip(&told) {
                    all.add(row.unit, f64::from(amount.is_some()), 1.0);
                    let Some(amount) = amount else { continue };
                    let exact = amount.bound == ValueBound::Exact;
                    one_sided.add(row.unit, f64::from(!exact), 1.0);
                    let holds = f64::from(holds(row, amount));
                    if exact {
                        let miss = amount.share - missing(row);
                        off.add(row.unit, miss, 1.0);
                        size.add(row.unit, miss.abs(), 1.0);
                        held.add(row.unit, holds, 1.0);
                    } else {
                        held_one_sided.add(row.unit, holds, 1.0);
                    }
                }
                let title = format!("{} {}", cause.name(), level.name());
                let title = title + if with_baseline { ", baseline" } else { "" };
                let _ = writeln!(
                    page,
                    "  {title:<34}{:>8}{:>20}{:>20}{:>26}{:>26}{:>20}{:>20}",
                    of_kind.len(),
                    all.share(),
                    one_sided.share(),
                    off.mean(),
                    size.mean(),
                    held.share(),
                    held_one_sided.share(),
                );
            }
        }
    }
    page.push('\n');
    page
}
