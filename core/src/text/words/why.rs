//! Why: what was measured against what was expected, conditions, and what is missing.

use super::Units;
use super::lines::Line;
use super::numbers::{airflow, difference, feature, in_units, step, temperature};
use crate::diagnosis::{
    Feature, FeatureName, Finding, NeededFor, PreconditionStatus, Reason, Value, ValueBound, ValueName,
};
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

/// Ranks of the features, the furthest from its expectation first: at most four are said.
const FEATURE_RANKS: [u8; 4] = [1, 2, 5, 6];

pub(super) fn add(lines: &mut Vec<Line>, finding: &Finding, units: Units) {
    lines.push(Line::always(format!("Why: {}", in_units(finding.reason.sentence(), units))));
    let judged = judged_value(finding).and_then(|name| Some((name, finding.values.get(name)?)));
    let decides = judged.map(|(name, _)| name);
    if let Some((name, value)) = judged {
        lines.push(Line::ranked(1, format!("- {}", value_in_words(name, value, units, true))));
    }
    if finding.features.iter().next().is_some() {
        let features = weightiest(finding, decides);
        // What decides is one of the four.
        let ranks = FEATURE_RANKS.into_iter().skip(usize::from(decides.is_some()));
        for ((name, one), rank) in features.into_iter().zip(ranks) {
            lines.push(Line::ranked(rank, format!("- {}", feature_in_words(name, one, units))));
        }
    } else {
        add_values(lines, finding, decides, units);
    }
    if let Some(line) = conditions(finding) {
        lines.push(line);
    }
    for (purpose, rank) in NeededFor::ALL.iter().zip([3, 5, 9]) {
        let missing = finding.missing.iter().filter(|missing| missing.needed_for == *purpose);
        let fields: Vec<String> = missing.map(|missing| plain_name(missing.field.name())).collect();
        if !fields.is_empty() {
            lines.push(Line::ranked(
                rank,
                format!("Not measured, needed {}: {}.", purpose.sentence(), fields.join(", ")),
            ));
        }
    }
}

/// The features, the one furthest from its expectation, in its own uncertainties, first. The one that decides has been
/// said already.
fn weightiest(finding: &Finding, said: Option<ValueName>) -> Vec<(FeatureName, Feature)> {
    let said = said.map(ValueName::name);
    let mut features: Vec<_> = finding.features.iter().filter(|(name, _)| Some(name.name()) != said).collect();
    features.sort_by(|(_, left), (_, right)| {
        right.standard_deviations().abs().total_cmp(&left.standard_deviations().abs())
    });
    features
}

fn feature_in_words(name: FeatureName, one: Feature, units: Units) -> String {
    let measured = (one.value, one.standard_uncertainty);
    let expected = (one.expected, one.expected_uncertainty);
    let (measured, expected) = feature(name, measured, expected, units);
    format!("{} {measured}, expected {expected} by {}.", sentence_case(name.sentence()), one.source.sentence())
}

/// Without features: the values themselves.
fn add_values(lines: &mut Vec<Line>, finding: &Finding, said: Option<ValueName>, units: Units) {
    let values = [(ValueName::Superheat, 1), (ValueName::Subcooling, 2), (ValueName::TemperatureSplit, 6)];
    for (name, rank) in values.into_iter().filter(|(name, _)| said != Some(*name)) {
        if let Some(value) = finding.values.get(name) {
            lines.push(Line::ranked(rank, format!("- {}", value_in_words(name, value, units, false))));
        }
    }
    let mut others = others(finding, units).into_iter();
    if let Some(first) = others.next() {
        let line = Line::ranked(9, format!("Also: {first}")).closed(".");
        lines.push(others.fold(line, |line, other| line.and(9, format!("; {other}"))));
    }
}

/// The value that decided.
fn judged_value(finding: &Finding) -> Option<ValueName> {
    match finding.reason {
        Reason::JudgedBySuperheat => Some(ValueName::Superheat),
        Reason::JudgedBySubcooling | Reason::JudgedByDischargePressure => Some(ValueName::Subcooling),
        _ => None,
    }
}

fn value_in_words(name: ValueName, value: Value, units: Units, decides: bool) -> String {
    let mut text =
        format!("{} {}", sentence_case(name.title()), difference(value.value, value.standard_uncertainty, units));
    if let (Some(target), Some(deviation)) = (value.target, value.deviation) {
        let off = deviation.abs() / step(units);
        let side = if deviation >= 0.0 { "above" } else { "below" };
        let at_least = if value.bound == ValueBound::AtLeast { "at least " } else { "" };
        let give = value.deviation_uncertainty.unwrap_or(0.0) / step(units);
        text += &format!(", target {:.1}: {at_least}{off:.1} ± {give:.1} {side}", target / step(units));
    }
    if value.bound == ValueBound::AtLeast {
        text += ", at saturation, true amount unknown";
    }
    if decides {
        text += " (this decides)";
    }
    text.push('.');
    text
}

fn others(finding: &Finding, units: Units) -> Vec<String> {
    let mut others = Vec::new();
    let mut add = |name: ValueName, show: &dyn Fn(Value) -> String| {
        if let Some(value) = finding.values.get(name) {
            others.push(format!("{} {}", name.title(), show(value)));
        }
    };
    let as_difference = |value: Value| difference(value.value, value.standard_uncertainty, units);
    let as_temperature = |value: Value| temperature(value, units);
    // A target stands beside its value already where there is one.
    if finding.values.superheat.is_none() {
        add(ValueName::TargetSuperheat, &as_difference);
    }
    if finding.values.temperature_split.is_none() {
        add(ValueName::TargetSplit, &as_difference);
    }
    add(ValueName::AirflowPerCapacity, &|value| airflow(value, units));
    add(ValueName::DewTemperature, &as_temperature);
    add(ValueName::BubbleTemperature, &as_temperature);
    add(ValueName::CondensingOverAmbient, &as_difference);
    add(ValueName::Approach, &|value| match value.target {
        Some(target) => format!("{} (target {:.1})", as_difference(value), target / step(units)),
        None => as_difference(value),
    });
    others
}

/// Preconditions that do not hold or are not known, in one line.
fn conditions(finding: &Finding) -> Option<Line> {
    let named = |status: PreconditionStatus| {
        let those = finding.preconditions.iter().filter(|one| one.status == status);
        those.map(|one| one.name.name().replace('-', " ")).collect::<Vec<_>>().join(", ")
    };
    let (missed, unknown) = (named(PreconditionStatus::NotMet), named(PreconditionStatus::Unknown));
    let text = match (missed.is_empty(), unknown.is_empty()) {
        (true, true) => return None,
        (true, false) => format!("Conditions not known: {unknown}."),
        (false, true) => format!("Conditions not met: {missed}."),
        (false, false) => format!("Conditions not met: {missed}; not known: {unknown}."),
    };
    Some(Line::ranked(1, text))
}

/// A field's name in plain words, without its unit.
pub(in crate::text) fn plain_name(name: &str) -> String {
    let name = ["_m3_s", "_pa", "_kg", "_k", "_w"].iter().find_map(|unit| name.strip_suffix(unit)).unwrap_or(name);
    name.replace('_', " ")
}

pub(in crate::text) fn sentence_case(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map(|first| first.to_uppercase().chain(letters).collect()).unwrap_or_default()
}
