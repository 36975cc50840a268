//! The scorecard as a page of plain text.

use super::ablation::ablations;
use super::amounts::amounts;
use super::by_protocol::ByProtocol;
use super::by_regression::ByRegression;
use super::by_signs::BySigns;
use super::by_subcooling::BySubcooling;
use super::calibration::{reliability, scores};
use super::coverage::risk;
use super::engine::Engine;
use super::expected::Expected;
use super::fleet::{Rows, rows};
use super::harm;
use super::judge::{Judge, Judged};
use super::measured;
use super::outcome::{by_cause, by_class, confusion, weighed};
use super::plan::Level;
use super::recipe::Fleet;
use super::row::name;
use satline::rig::RefrigerantMap;
use std::collections::BTreeMap;
use std::fmt::Write;

/// What to print.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Wanted {
    /// Which fleet is judged.
    pub fleet: Fleet,
    /// Its seed.
    pub seed: u64,
    /// How many of its units.
    pub units: u64,
    /// How many units of the tuning fleet the rivals learn from.
    pub learnt: u64,
    /// How many harmful rows are listed of each way to hurt.
    pub listed: usize,
}

/// What the fleet is made of, and what did not settle.
#[must_use]
pub fn make(wanted: &Wanted, made: &Rows) -> String {
    let mut page = String::new();
    let small = made.rows.iter().filter(|row| !row.counts).count();
    let _ = writeln!(page, "  {} units, {} rows, {small} of them too small to count", wanted.units, made.rows.len());
    let learnt = wanted.learnt;
    let _ = writeln!(page, "  the rivals learnt from {learnt} units of the tuning fleet");
    if wanted.fleet == Fleet::Tune {
        let _ = writeln!(page, "  and this is that fleet: their figures are better here than elsewhere");
    }
    for (title, of) in [
        ("refrigerant", (|row| row.refrigerant.to_string()) as fn(&super::row::Row) -> String),
        ("metering", |row| if row.fixed { "orifice" } else { "valve" }.to_string()),
        ("level", |row| row.level.name().to_string()),
    ] {
        let mut counts: BTreeMap<String, usize> = BTreeMap::new();
        made.rows.iter().for_each(|row| *counts.entry(of(row)).or_default() += 1);
        let counts: Vec<String> = counts.iter().map(|(what, count)| format!("{what} {count}")).collect();
        let _ = writeln!(page, "  rows by {title}: {}", counts.join(", "));
    }
    let healthy = made.rows.iter().filter(|row| row.level == Level::Healthy);
    let wet = healthy.clone().filter(|row| row.wet_suction).count();
    let _ = writeln!(page, "  liquid in the suction line of {wet} of {} healthy rows", healthy.count());
    let mut counts: BTreeMap<String, usize> = BTreeMap::new();
    for (truth, level, reason) in &made.skipped {
        *counts.entry(format!("{}, {}: {reason}", name(*truth), level.name())).or_default() += 1;
    }
    let _ = writeln!(page, "  {} did not settle and are left out", made.skipped.len());
    for (what, count) in &counts {
        let _ = writeln!(page, "    {count} {what}");
    }
    page.push('\n');
    page
}

fn section(page: &mut String, title: &str, about: &str, text: &str) {
    let _ = writeln!(page, "== {title} ==\n{about}\n\n{text}");
}

/// Makes the fleet, lets every judge see it, and hands over the fleet, what was said, and the rival that learnt most.
pub(super) fn judged_by_all<R>(
    wanted: &Wanted,
    maps: &[RefrigerantMap],
    then: impl FnOnce(&Rows, &[Judged], &ByRegression) -> R,
) -> R {
    let made = rows(wanted.fleet, wanted.seed, wanted.units, maps);
    let tune_seed = Fleet::Tune.seed().unwrap_or_default();
    let tuning = rows(Fleet::Tune, tune_seed, wanted.learnt, maps).rows;
    let expected = Expected::learn(&tuning);
    let subcooling = BySubcooling::learn(&expected, &tuning);
    let signs = BySigns(&expected);
    let regression = ByRegression::learn(&expected, &tuning);
    let judges: [&dyn Judge; 5] = [&Engine, &ByProtocol, &subcooling, &signs, &regression];
    let judged: Vec<Judged> = judges
        .iter()
        .flat_map(|judge| [false, true].map(|with_baseline| (judge, with_baseline)))
        // The protocol knows of no baseline.
        .filter(|(judge, with_baseline)| !(*with_baseline && judge.name() == ByProtocol.name()))
        .map(|(judge, with_baseline)| Judged::of(*judge, &made.rows, with_baseline))
        .collect();
    then(&made, &judged, &regression)
}

/// Judges the fleet and writes the page.
#[must_use]
pub fn page(wanted: &Wanted, maps: &[RefrigerantMap]) -> String {
    judged_by_all(wanted, maps, |made, judged, regression| written(wanted, made, judged, regression))
}

fn written(wanted: &Wanted, made: &Rows, judged: &[Judged], regression: &ByRegression) -> String {
    let rows = &made.rows;
    let own = |name| judged.iter().filter(move |one: &&Judged| one.name == name);
    let each = |of: &dyn Fn(&Judged) -> String, name| own(name).map(of).collect::<String>();

    let mut page = String::new();
    let title = format!("fleet {}", wanted.fleet.name());
    section(&mut page, &title, "What is judged.", &make(wanted, made));
    section(
        &mut page,
        "outcomes",
        "Shares of rows in % with 95 % intervals, units drawn again.",
        &(by_class(rows, judged) + &weighed(rows, judged)),
    );
    section(
        &mut page,
        "harm",
        "Rows in which the advice would hurt, of all rows.",
        &(harm::counts(rows, judged) + &harm::weighed(rows, judged)),
    );
    section(
        &mut page,
        "by cause and level",
        "Of faults that count. What the evidence is taken for, in %.",
        &each(&|one| by_cause(rows, one), Engine.name()),
    );
    section(&mut page, "confusion", "Rows by truth, columns by what it stands by.", &{
        each(&|one| confusion(rows, one), Engine.name()) + &each(&|one| confusion(rows, one), regression.name())
    });
    section(
        &mut page,
        "risk against coverage",
        "Share of wrong answers in %, if only the rows are answered of which the judge is surest.",
        &risk(rows, judged),
    );
    section(
        &mut page,
        "scores of probabilities",
        "Lower is better; a probability below 0.0001 counts as that. Rows weighed by how common their fault is.",
        &scores(rows, judged),
    );
    section(
        &mut page,
        "reliability",
        "How often the likeliest answer is right, by what was said of it.",
        &each(&|one| reliability(rows, one), Engine.name()),
    );
    section(
        &mut page,
        "amounts",
        "Of rows in which only the charge is wrong: what the evidence tells to add or recover, in % of the nameplate charge.",
        &amounts(rows),
    );
    section(
        &mut page,
        "without an instrument",
        "In % of rows of the first 120 units: moderate and severe single faults named and not answered, false alarms, harm.",
        &ablations(rows, &[&Engine, regression]),
    );
    section(&mut page, "measured readings", "NISTIR 7350, appendix D: healthy.", &measured::healthy());
    section(
        &mut page,
        "a measured trap",
        "All its charge, a blocked outdoor coil: subcooling 0.6 °F of 9.7, 400 psia; completed by demo values.",
        &measured::trap(),
    );
    section(
        &mut page,
        "harmful rows",
        "Each with what was said and why it hurts.",
        &each(
            &|one| harm::list(rows, one, wanted.listed, |row| Engine::explained(row, one.with_baseline)),
            Engine.name(),
        ),
    );
    page
}
