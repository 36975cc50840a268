//! The scorecard in short, as it stands in `core/docs/diagnosis.md` between two markers.

use super::ablation::{LEFT_OUT, without};
use super::calibration::gap;
use super::harm::{hurts, tally};
use super::interval::{Rate, Tally};
use super::judge::{Judge, Judged};
use super::outcome::{CLASSES, Outcome, clear_fault, rate};
use super::page::{Wanted, judged_by_all};
use super::prevalence::Prevalence;
use super::row::Row;
use satline::rig::RefrigerantMap;
use std::fmt::Write;

/// Where the page's figures begin.
pub const BEGIN: &str = "<!-- scorecard:begin -->";
/// Where they end.
pub const END: &str = "<!-- scorecard:end -->";

/// A page with other figures between its markers.
///
/// # Errors
/// In words, where the page does not have each marker once, in order.
pub fn replaced(page: &str, figures: &str) -> Result<String, String> {
    let parts: Vec<&str> = page.split(BEGIN).collect();
    let [before, rest] = parts[..] else { return Err(format!("the page does not have {BEGIN} once")) };
    let parts: Vec<&str> = rest.split(END).collect();
    let [_, after] = parts[..] else { return Err(format!("the page does not have {END} once after it")) };
    Ok(format!("{before}{BEGIN}\n{figures}{END}{after}"))
}

/// Titles, widths and dashes of a table in Markdown.
fn heading(text: &mut String, titles: &[&str]) {
    let _ = writeln!(text, "| {} |", titles.join(" | "));
    let _ = writeln!(text, "|{}", "---|".repeat(titles.len()));
}

fn line(text: &mut String, title: &str, cells: &[String]) {
    let _ = writeln!(text, "| {title} | {} |", cells.join(" | "));
}

fn right(rows: &[Row], judged: &Judged, place: usize) -> String {
    let (_, class) = CLASSES[place];
    rate(rows, judged, class, Outcome::Correct).to_string()
}

fn false_alarms(rows: &[Row], judged: &Judged) -> Rate {
    rate(rows, judged, |row| row.truth.is_empty(), Outcome::FalseAlarm)
}

/// How many rows, and their share: a few in thousands would round to none.
fn harmful(rows: &[Row], judged: &Judged) -> String {
    let count = rows.iter().zip(&judged.calls).filter(|(row, call)| hurts(row, call)).count();
    format!("{count}: {}", tally(rows, judged).share())
}

fn harmed_units(rows: &[Row], judged: &Judged) -> Rate {
    let mut harmed = std::collections::BTreeMap::new();
    for (row, call) in rows.iter().zip(&judged.calls) {
        *harmed.entry(row.unit).or_insert(false) |= hurts(row, call);
    }
    Tally::of(harmed.into_iter()).share()
}

fn rates(text: &mut String, rows: &[Row], all: &[Judged]) {
    heading(
        text,
        &[
            "judge",
            "healthy named",
            "clear fault named",
            "mild fault named",
            "two faults named",
            "false alarms",
            "harmful rows",
            "units harmed",
        ],
    );
    for judged in all {
        let mut cells: Vec<String> = [0, 1, 2, 3].map(|place| right(rows, judged, place)).to_vec();
        cells.push(false_alarms(rows, judged).to_string());
        cells.push(harmful(rows, judged));
        cells.push(harmed_units(rows, judged).to_string());
        line(text, &judged.title(), &cells);
    }
}

fn gaps(text: &mut String, rows: &[Row], all: &[Judged]) {
    heading(
        text,
        &["mean gap between said and right, points", "uniform", "as the default priors", "nine of ten healthy"],
    );
    for judged in all {
        let gaps = Prevalence::ALL.map(|prevalence| gap(rows, judged, prevalence));
        if gaps.iter().all(Option::is_some) {
            line(text, &judged.title(), &gaps.map(|one| format!("{:.1}", 100.0 * one.unwrap_or_default())));
        }
    }
}

fn ablated(text: &mut String, rows: &[Row], judge: &dyn Judge) {
    heading(text, &["without", "baseline", "clear fault named", "false alarms", "harmful rows"]);
    for (title, leave_out) in LEFT_OUT {
        let less = without(rows, leave_out);
        for with_baseline in [false, true] {
            let judged = Judged::of(judge, &less, with_baseline);
            line(
                text,
                title,
                &[
                    if with_baseline { "yes" } else { "no" }.to_string(),
                    rate(&less, &judged, clear_fault, Outcome::Correct).to_string(),
                    false_alarms(&less, &judged).to_string(),
                    harmful(&less, &judged),
                ],
            );
        }
    }
}

/// Judges the fleet and writes its figures in short.
#[must_use]
pub fn short(wanted: &Wanted, maps: &[RefrigerantMap]) -> String {
    judged_by_all(wanted, maps, |made, judged, _| {
        let rows = &made.rows;
        let mut text = String::new();
        let units = rows.iter().map(|row| row.unit).collect::<std::collections::BTreeSet<_>>().len();
        let _ = writeln!(
            text,
            "Fleet `{}`: of {} designs drawn {units} run as they would be sold, {} rows; the rivals learnt from {} units of the fleet `tune`. In % with \
             95 % intervals, units drawn again; where none of {units} units shows a thing, the upper end is 3/{units}, {:.1} %.\n",
            wanted.fleet.name(),
            wanted.units,
            rows.len(),
            wanted.learnt,
            300.0 / units.max(1) as f64,
        );
        rates(&mut text, rows, judged);
        text.push('\n');
        gaps(&mut text, rows, judged);
        text.push_str("\nThe evidence without an instrument, on the first 120 designs at most:\n\n");
        ablated(&mut text, rows, &super::engine::Engine);
        text
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_what_stands_between_the_markers_is_replaced() {
        let page = format!("a\n{BEGIN}\nold\n{END}\nb\n");
        let new = replaced(&page, "new\n").unwrap();
        assert_eq!(new, format!("a\n{BEGIN}\nnew\n{END}\nb\n"));
        assert_eq!(replaced(&new, "new\n").unwrap(), new);
        for wrong in ["", BEGIN, END, &format!("{END}{BEGIN}"), &format!("{page}{page}")] {
            assert!(replaced(wrong, "new\n").is_err(), "{wrong}");
        }
    }
}
