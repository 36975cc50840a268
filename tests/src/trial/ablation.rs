//! What is lost when an instrument stays in the van.

use super::harm::tally;
use super::judge::{Judge, Judged};
use super::outcome::{Outcome, clear_fault, rate};
use super::row::Row;
use satline::reading::Reading;
use std::fmt::Write;

/// An instrument, and how it is left out.
pub(super) type LeftOut = (&'static str, fn(&mut Reading));

/// What is left out, from the reading and from the baseline.
pub(super) const LEFT_OUT: [LeftOut; 6] = [
    ("nothing", |_| ()),
    ("airflow", |reading| reading.airflow = None),
    ("discharge line", |reading| reading.discharge_line_temperature = None),
    ("return wet bulb", |reading| reading.return_wet_bulb = None),
    ("compressor power", |reading| reading.compressor_power = None),
    ("surface of the outdoor coil", |reading| reading.condensing_surface_temperature = None),
];

/// How many units it is tried on: each instrument is a whole trial more.
const UNITS: u64 = 120;

/// Rows of the first units, without an instrument in reading and baseline.
pub(super) fn without(rows: &[Row], leave_out: fn(&mut Reading)) -> Vec<Row> {
    let mut less: Vec<Row> = rows.iter().filter(|row| row.unit < UNITS).copied().collect();
    for row in &mut less {
        leave_out(&mut row.reading);
        leave_out(&mut row.baseline);
    }
    less
}

/// How some judges do without each.
#[must_use]
pub fn ablations(rows: &[Row], judges: &[&dyn Judge]) -> String {
    let mut page = format!(
        "  {:<24}{:<30}{:>22}{:>22}{:>22}{:>22}\n",
        "judge", "without", "clear faults right", "no response there", "false alarms", "harmful rows"
    );
    for (title, leave_out) in LEFT_OUT {
        let less = without(rows, leave_out);
        for judge in judges {
            for with_baseline in [false, true] {
                let judged = Judged::of(*judge, &less, with_baseline);
                let _ = writeln!(
                    page,
                    "  {:<24}{title:<30}{:>22}{:>22}{:>22}{:>22}",
                    judged.title(),
                    rate(&less, &judged, clear_fault, Outcome::Correct),
                    rate(&less, &judged, clear_fault, Outcome::NoResponse),
                    rate(&less, &judged, |row| row.truth.is_empty(), Outcome::FalseAlarm),
                    tally(&less, &judged).share(),
                );
            }
        }
    }
    page.push('\n');
    page
}
