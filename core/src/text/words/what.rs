//! What the finding stands by, what to do about the charge, and what comes next.

use super::Units;
use super::lines::Line;
use super::numbers::{in_units, mass, percent};
use crate::diagnosis::{
    Advice, CauseSet, Charge, ChargeAmount, ChargeStatus, ConclusionReason, Finding, NextCheck, ValueBound,
};
use crate::reading::Reading;
use alloc::format;
use alloc::string::String;

/// A hypothesis less likely than this is not worth saying.
const WORTH_SAYING: f64 = 0.01;

pub(super) fn add(lines: &mut alloc::vec::Vec<Line>, reading: &Reading, finding: &Finding, units: Units) {
    lines.push(conclusion(finding));
    lines.push(Line::always(format!("Charge: {}", verdict(finding))));
    lines.push(Line::always(format!("Charge work: {}", charge_work(reading, finding, units))));
}

pub(super) fn add_next(lines: &mut alloc::vec::Vec<Line>, finding: &Finding, units: Units) {
    let mut next = Line::always(format!("Next: {}", finding.next_check.sentence()));
    if finding.conclusion.reason == ConclusionReason::TooClose && asks_for_a_measurement(finding.next_check) {
        next = next.and(3, " Of what can still be measured, it would settle most.");
    }
    lines.push(next);
    lines.push(protocol(finding, units));
}

/// The causes in plain words.
fn causes_in_words(causes: CauseSet) -> String {
    let mut text = String::new();
    for cause in causes.iter() {
        if !text.is_empty() {
            text.push_str(", with ");
        }
        text.push_str(cause.sentence());
    }
    if text.is_empty() { String::from("no fault that these measurements can show") } else { text }
}

fn conclusion(finding: &Finding) -> Line {
    let conclusion = finding.conclusion;
    let likely = |nth: &mut dyn Iterator<Item = crate::diagnosis::Hypothesis>| {
        let one = nth.next().filter(|one| one.probability >= WORTH_SAYING)?;
        Some(format!("{} ({})", causes_in_words(one.causes), percent(one.probability)))
    };
    let Some(causes) = conclusion.causes else {
        let mut line = Line::always(format!("Cannot tell: {}", conclusion.reason.sentence()));
        let mut hypotheses = finding.hypotheses.iter();
        if let Some(first) = likely(&mut hypotheses) {
            line = line.and(1, format!(" Likeliest: {first}")).closed(".");
            for rank in [1, 7] {
                if let Some(next) = likely(&mut hypotheses) {
                    line = line.and(rank, format!("; {next}"));
                }
            }
        }
        return line;
    };
    let probability = percent(finding.hypotheses.probability(causes));
    let mut line = Line::always(format!("Stands by: {} ({probability})", causes_in_words(causes))).closed(".");
    if !finding.fits {
        line = line.and(0, ", though nothing known fits all of it");
    }
    let mut others = finding.hypotheses.iter().filter(|one| one.causes != causes);
    for (rank, before) in [(2, ". Next likely: "), (7, "; ")] {
        if let Some(next) = likely(&mut others) {
            line = line.and(rank, format!("{before}{next}"));
        }
    }
    line
}

fn verdict(finding: &Finding) -> String {
    let status = match finding.charge_status {
        ChargeStatus::Confirmed => "confirmed",
        _ => "provisional",
    };
    match finding.charge {
        Charge::NotJudged => String::from("not judged."),
        charge => format!("{}, {status}.", charge.name().to_uppercase()),
    }
}

/// The advice, with the amount where there is one and the advice is to change the charge in its direction.
fn charge_work(reading: &Reading, finding: &Finding, units: Units) -> String {
    let advice = finding.advice.sentence();
    let Some(amount) = &finding.amount else { return String::from(advice) };
    let how_much = how_much(amount, units);
    match finding.advice {
        Advice::AddInSteps if amount.share > 0.0 => {
            let blend = reading.refrigerant.is_some_and(|refrigerant| refrigerant.identity.components.len() > 1);
            let as_liquid = if blend { "; a blend as liquid, metered to vapour" } else { "" };
            format!(
                "Once the leak is found, add {how_much}, at most {:.0} % at a time, fifteen minutes after each{as_liquid}.",
                100.0 * crate::diagnosis::LARGEST_STEP_SHARE
            )
        }
        Advice::Recover if amount.share < 0.0 => {
            format!("Recover {how_much}, into a recovery cylinder, a little at a time, fifteen minutes after each.")
        }
        _ => format!("{advice} By the evidence the charge is {} by {how_much}.", side(amount.share)),
    }
}

fn side(share: f64) -> &'static str {
    if share > 0.0 { "short" } else { "over" }
}

/// An amount as mass and share, with its ± and interval; a one-sided one as the least that it can be.
fn how_much(amount: &ChargeAmount, units: Units) -> String {
    let share = amount.share.abs();
    let kg_per_share = amount.mass_kg.map(|mass| mass.abs() / share).filter(|one| one.is_finite());
    let (near, far) =
        if amount.share < 0.0 { (-amount.highest, -amount.lowest) } else { (amount.lowest, amount.highest) };
    let near = near.max(0.0);
    let whole = |share: f64| format!("{:.0}", 100.0 * share);
    if amount.bound == ValueBound::AtLeast {
        let mass = kg_per_share.map_or(String::new(), |one| format!("{}, ", mass(one * near, None, units)));
        return format!("at least {mass}{} % of the nameplate charge (how much in all is not known)", whole(near));
    }
    let mass = kg_per_share.map_or(String::new(), |one| {
        format!("{}, ", mass(one * share, Some(one * amount.standard_uncertainty), units))
    });
    format!(
        "about {mass}{} ± {} % of the nameplate charge ({} to {} %)",
        whole(share),
        whole(amount.standard_uncertainty),
        whole(near),
        whole(far)
    )
}

const fn asks_for_a_measurement(check: NextCheck) -> bool {
    matches!(
        check,
        NextCheck::MeasureAirflow
            | NextCheck::MeasureLiquidSide
            | NextCheck::MeasureSuctionSide
            | NextCheck::MeasureDischargeLine
            | NextCheck::MeasureCondenserAir
            | NextCheck::MeasurePower
            | NextCheck::MeasureCoilSurface
            | NextCheck::MeasureSupplyWetBulb
            | NextCheck::MeasureCoilOutlet
    )
}

/// The protocol's own verdict, apart from the evidence.
fn protocol(finding: &Finding, units: Units) -> Line {
    let protocol = finding.protocol;
    let (edition, role, action) = (protocol.edition.sentence(), protocol.role.name(), protocol.action.sentence());
    let line = Line::always(format!("Protocol ({edition}, {role}; regional): {action}."));
    let line = match protocol.reason {
        Some(reason) => line.and(6, format!(" {}", in_units(reason.sentence(), units))),
        None => line,
    };
    line.and(7, format!(" {}", protocol.split.sentence())).and(9, " It names an action, not a cause.")
}
