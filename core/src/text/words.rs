//! A finding in plain words, short enough to be read aloud on a roof.

use crate::diagnosis::{Charge, ChargeStatus, Finding, NeededFor, Value, ValueBound, ValueName};
use crate::quantity::{KELVIN_PER_FAHRENHEIT, M3_S_PER_CFM, WATTS_PER_TON, fahrenheit_from_kelvin};
use crate::reading::Reading;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

/// The units of the words.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Units {
    /// Degrees Fahrenheit, cubic feet a minute.
    #[default]
    Ip,
    /// Degrees Celsius and kelvin, cubic metres.
    Si,
}

/// A finding in plain words: what, why, the values with ± one standard uncertainty, the protocol, what to do, cautions.
#[must_use]
pub fn finding_to_words(label: &str, reading: &Reading, finding: &Finding, units: Units) -> String {
    let mut out = String::new();
    let mut line = |text: String| {
        out.push_str(&text);
        out.push('\n');
    };
    line(heading(label, reading));
    line(format!("  Charge: {}", verdict(finding)));
    line(format!("  Why: {}", in_units(finding.reason.sentence(), units)));
    let judged = judged_value(finding);
    for name in [ValueName::Superheat, ValueName::Subcooling, ValueName::TemperatureSplit] {
        if let Some(value) = finding.values.get(name) {
            line(format!("  {}", value_in_words(name, value, units, judged == Some(name))));
        }
    }
    let others = others(finding, units);
    if !others.is_empty() {
        line(format!("  Also: {}.", others.join("; ")));
    }
    for purpose in NeededFor::ALL {
        let fields: Vec<String> = finding
            .missing
            .iter()
            .filter(|missing| missing.needed_for == *purpose)
            .map(|missing| plain_name(missing.field.name()))
            .collect();
        if !fields.is_empty() {
            line(format!("  Not measured, needed {}: {}.", purpose.sentence(), fields.join(", ")));
        }
    }
    line(format!("  Next: {}", finding.next_check.sentence()));
    line(format!("  Charge work: {}", finding.advice.sentence()));
    line(format!("  {}", protocol(finding, units)));
    line(String::from("  Cautions:"));
    for caution in finding.cautions.iter() {
        line(format!("  - {}", in_units(caution.sentence(), units)));
    }
    out
}

fn heading(label: &str, reading: &Reading) -> String {
    let refrigerant = reading.refrigerant.map_or("refrigerant not given", |refrigerant| refrigerant.designation());
    let metering =
        reading.metering.map_or(String::from("metering not given"), |metering| metering.name().replace('-', " "));
    if label.is_empty() { format!("{refrigerant}, {metering}") } else { format!("{label}: {refrigerant}, {metering}") }
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

/// The value that decided.
fn judged_value(finding: &Finding) -> Option<ValueName> {
    use crate::diagnosis::Reason;
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
    add(ValueName::DewTemperature, &as_temperature);
    add(ValueName::BubbleTemperature, &as_temperature);
    add(ValueName::CondensingOverAmbient, &as_difference);
    add(ValueName::Approach, &|value| match value.target {
        Some(target) => format!("{} (target {:.1})", as_difference(value), target / step(units)),
        None => as_difference(value),
    });
    add(ValueName::AirflowPerCapacity, &|value| airflow(value, units));
    others
}

fn protocol(finding: &Finding, units: Units) -> String {
    let protocol = finding.protocol;
    let why = match protocol.reason {
        Some(reason) => format!(": {}", in_units(reason.sentence(), units)),
        None => String::from("."),
    };
    format!(
        "Protocol ({}, {}): {}{why} {} It is regional, and names an action, not a cause.",
        protocol.edition.sentence(),
        protocol.role.name(),
        protocol.action.sentence(),
        protocol.split.sentence(),
    )
}

/// Kelvins in one degree of the units.
fn step(units: Units) -> f64 {
    match units {
        Units::Ip => KELVIN_PER_FAHRENHEIT,
        Units::Si => 1.0,
    }
}

pub(super) fn difference(value: f64, uncertainty: f64, units: Units) -> String {
    let unit = match units {
        Units::Ip => "°F",
        Units::Si => "K",
    };
    format!("{:.1} ± {:.1} {unit}", value / step(units), uncertainty / step(units))
}

pub(super) fn temperature(value: Value, units: Units) -> String {
    let (shown, unit) = match units {
        Units::Ip => (fahrenheit_from_kelvin(value.value), "°F"),
        Units::Si => (value.value - 273.15, "°C"),
    };
    format!("{shown:.1} ± {:.1} {unit}", value.standard_uncertainty / step(units))
}

fn airflow(value: Value, units: Units) -> String {
    let (factor, unit) = match units {
        Units::Ip => (WATTS_PER_TON / M3_S_PER_CFM, "cfm per ton"),
        Units::Si => (3600.0 * 1000.0, "m³/h per kW"),
    };
    format!("{:.0} ± {:.0} {unit}", value.value * factor, value.standard_uncertainty * factor)
}

/// Sentences state limits as the protocol does, in °F; in SI the Celsius value is put beside them.
pub(super) fn in_units(sentence: &str, units: Units) -> String {
    if units == Units::Ip { String::from(sentence) } else { beside_celsius(sentence) }
}

/// Puts the Celsius value after a Fahrenheit temperature such as `55 °F`. Differences, which are written with a decimal
/// or stand below 10, become kelvins.
fn beside_celsius(sentence: &str) -> String {
    let mut out = String::new();
    let mut rest = sentence;
    while let Some((before, after)) = rest.split_once(" °F") {
        out.push_str(before);
        out.push_str(" °F");
        let number = before.rsplit(' ').next().unwrap_or("");
        if let Ok(value) = number.parse::<f64>() {
            if value < 10.0 {
                out.push_str(&format!(" ({:.1} K)", value * KELVIN_PER_FAHRENHEIT));
            } else {
                out.push_str(&format!(" ({:.0} °C)", (value - 32.0) * KELVIN_PER_FAHRENHEIT));
            }
        }
        rest = after;
    }
    out.push_str(rest);
    out
}

/// A field's name in plain words, without its unit.
pub(super) fn plain_name(name: &str) -> String {
    let name = ["_m3_s", "_pa", "_kg", "_k", "_w"].iter().find_map(|unit| name.strip_suffix(unit)).unwrap_or(name);
    name.replace('_', " ")
}

pub(super) fn sentence_case(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map(|first| first.to_uppercase().chain(letters).collect()).unwrap_or_default()
}
