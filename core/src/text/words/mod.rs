//! A finding in plain words, short enough to be read aloud in a minute on a roof.
//!
//! What must be said is always said; the rest fills up [`MOST_WORDS`] in the order of its weight. A word is what stands
//! between blanks; counted is everything from the second line to the cautions, which are standing sentences.

mod lines;
mod numbers;
#[cfg(test)]
mod tests;
mod what;
mod why;

use crate::diagnosis::{Caution, Finding};
use crate::reading::Reading;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use lines::{Line, fit};
use numbers::in_units;

/// The units of the words.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Units {
    /// Degrees Fahrenheit, cubic feet a minute, pounds beside kilograms.
    #[default]
    Ip,
    /// Degrees Celsius and kelvin, cubic metres, kilograms.
    Si,
}

/// Most words of a finding, without its first line and its cautions: what is read aloud in about a minute.
pub const MOST_WORDS: usize = 170;

/// A finding in plain words: a leak that may burn before anything else; what the finding stands by and what else is
/// likely; the charge, and how much to add or recover; why, by the measurements that are furthest from what was
/// expected; conditions that do not hold or are not known; the next check; the protocol's own verdict; cautions.
///
/// Every sentence says something that the finding holds, and every number stands with ± one standard uncertainty. Lines
/// that would make it longer than [`MOST_WORDS`] are left out, the least weighty first; all of them are in the finding.
#[must_use]
pub fn finding_to_words(label: &str, reading: &Reading, finding: &Finding, units: Units) -> String {
    let mut lines: Vec<Line> = Vec::new();
    let burns = finding.cautions.contains(Caution::FlammableLeak);
    if burns {
        lines.push(Line::always(format!("First: {}", in_units(Caution::FlammableLeak.sentence(), units))));
    }
    what::add(&mut lines, reading, finding, units);
    why::add(&mut lines, finding, units);
    what::add_next(&mut lines, finding, units);
    let mut out = heading(label, reading);
    for text in fit(&lines, MOST_WORDS) {
        out.push_str("\n  ");
        out.push_str(&text);
    }
    out.push_str("\n  Cautions:\n");
    for caution in finding.cautions.iter().filter(|caution| !(burns && *caution == Caution::FlammableLeak)) {
        out.push_str(&format!("  - {}\n", in_units(caution.sentence(), units)));
    }
    out
}

fn heading(label: &str, reading: &Reading) -> String {
    let refrigerant = reading.refrigerant.map_or("refrigerant not given", |refrigerant| refrigerant.designation());
    let metering =
        reading.metering.map_or(String::from("metering not given"), |metering| metering.name().replace('-', " "));
    if label.is_empty() { format!("{refrigerant}, {metering}") } else { format!("{label}: {refrigerant}, {metering}") }
}
