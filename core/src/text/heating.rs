//! A heating finding in plain words and as JSON.

use super::words::{Units, difference, in_units, plain_name, sentence_case, temperature};
use super::write::{WrittenMissing, WrittenValue, pretty};
use crate::diagnosis::{
    HeatingCapacity, HeatingChartFinding, HeatingChartOutcome, HeatingFinding, HeatingNeed, HeatingValues, Value,
};
use crate::quantity::{PASCALS_PER_PSI, WATTS_PER_BTU_H, fahrenheit_from_kelvin};
use crate::visit::target_grid::GridTarget;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use serde::ser::{Serialize, SerializeMap, Serializer};

/// A heating finding in plain words: what is wrong with the reading, the heat, frost, the reversing valve and the chart with
/// their values and ± one standard uncertainty, what cannot be judged, what is missing, cautions.
///
/// ```
/// use satline::diagnosis::{HeatingExtras, judge_heating};
/// use satline::reading::{Mode, Reading};
/// use satline::text::{Units, heating_to_words};
/// let reading = Reading { mode: Some(Mode::Heating), ..Reading::default() };
/// let words = heating_to_words(&judge_heating(&reading, &HeatingExtras::default(), None), Units::Ip);
/// assert!(words.contains("the charge is judged by weight only"));
/// ```
#[must_use]
pub fn heating_to_words(finding: &HeatingFinding, units: Units) -> String {
    let mut out = String::new();
    let mut line = |text: String| {
        out.push_str(&text);
        out.push('\n');
    };
    let list = |title: &str, sentences: Vec<&str>| -> Vec<String> {
        let lines = sentences.iter().map(|sentence| format!("- {}", in_units(sentence, units)));
        let title = (!sentences.is_empty()).then(|| format!("{title}:"));
        title.into_iter().chain(lines).collect()
    };
    line(String::from("Heating"));
    let problems: Vec<&str> = finding.problems.iter().map(|problem| problem.sentence()).collect();
    list("Wrong with the reading", problems).into_iter().for_each(&mut line);
    let values = &finding.values;
    if let Some(rise) = values.supply_rise {
        line(format!("Supply rise: {}.", difference(rise.value, rise.standard_uncertainty, units)));
    }
    if let Some(heat) = values.delivered_capacity {
        line(format!("Heat delivered: {}{}.", power(heat, units), ratio(finding, units)));
    }
    let not_compared = finding.capacity == HeatingCapacity::NotCompared && values.delivered_capacity.is_none();
    if !not_compared {
        line(format!("Capacity: {}", in_units(finding.capacity.sentence(), units)));
    }
    line(format!("Frost: {}", finding.frost.sentence()));
    let coil = coil(values, units);
    if !coil.is_empty() {
        line(format!("  {}.", sentence_case(&coil.join("; "))));
    }
    let rise = values.valve_suction_rise.map_or(String::new(), |rise| {
        format!(" The gas warms by {}.", difference(rise.value, rise.standard_uncertainty, units))
    });
    line(format!("Reversing valve: {}{rise}", in_units(finding.reversing_valve.sentence(), units)));
    if let Some(chart) = &finding.chart {
        line(format!("Maker's chart, {}", of_chart(chart, units)));
    }
    let limits: Vec<&str> = finding.limits.iter().map(|limit| limit.sentence()).collect();
    list("What cannot be judged, or is not in these values", limits).into_iter().for_each(&mut line);
    for purpose in HeatingNeed::ALL {
        let fields: Vec<String> = finding
            .missing
            .iter()
            .filter(|missing| missing.needed_for == *purpose)
            .map(|missing| plain_name(missing.field.name()))
            .collect();
        if !fields.is_empty() {
            line(format!("Not measured, needed {}: {}.", purpose.sentence(), fields.join(", ")));
        }
    }
    let cautions: Vec<&str> = finding.cautions.iter().map(|caution| caution.sentence()).collect();
    list("Cautions", cautions).into_iter().for_each(&mut line);
    out
}

/// A finding as a JSON object: names of the vocabulary, SI with the unit in the name; what is not known is left out.
///
/// ```
/// use satline::diagnosis::{HeatingExtras, judge_heating};
/// use satline::text::heating_to_json;
/// let finding = judge_heating(&satline::Reading::default(), &HeatingExtras::default(), None);
/// assert!(heating_to_json(&finding).contains("\"not-heating\""));
/// ```
#[must_use]
pub fn heating_to_json(finding: &HeatingFinding) -> String {
    pretty(&Written(finding))
}

fn power(value: Value, units: Units) -> String {
    match units {
        Units::Ip => {
            format!("{:.0} ± {:.0} Btu/h", value.value / WATTS_PER_BTU_H, value.standard_uncertainty / WATTS_PER_BTU_H)
        }
        Units::Si => format!("{:.2} ± {:.2} kW", value.value / 1e3, value.standard_uncertainty / 1e3),
    }
}

/// The ratio with the outdoor temperature to which it belongs.
fn ratio(finding: &HeatingFinding, units: Units) -> String {
    let Some(ratio) = finding.values.capacity_ratio else {
        return String::new();
    };
    let at = match (finding.outdoor_dry_bulb, units) {
        (Some(outdoor), Units::Ip) => format!("at {:.0} °F outdoors", outdoor.fahrenheit()),
        (Some(outdoor), Units::Si) => format!("at {:.0} °C outdoors", outdoor.celsius()),
        (None, _) => String::from("outdoor temperature not given"),
    };
    format!(", {:.0} ± {:.0} % of nominal, {at}", 100.0 * ratio.value, 100.0 * ratio.standard_uncertainty)
}

fn coil(values: &HeatingValues, units: Units) -> Vec<String> {
    let mut parts = Vec::new();
    for (name, title, value) in values.all() {
        let Some(value) = value else { continue };
        match name {
            "evaporating_temperature_k" | "coil_surface_temperature_k" => {
                parts.push(format!("{title} {}", temperature(value, units)));
            }
            "outdoor_over_coil_k" | "coil_over_dew_point_k" => {
                parts.push(format!("{title} {}", difference(value.value, value.standard_uncertainty, units)));
            }
            _ => {}
        }
    }
    parts
}

fn of_chart(chart: &HeatingChartFinding, units: Units) -> String {
    let name = match chart.feature {
        GridTarget::TemperatureSplit => String::from("supply rise"),
        other => other.name().replace('-', " "),
    };
    let mut text = format!("{name}: {}", chart.outcome.sentence());
    if let Some(value) = chart.measured {
        let measured = in_unit(chart.feature, value.value, units, false);
        let give = in_unit(chart.feature, value.standard_uncertainty, units, true);
        let unit = unit(chart.feature, units);
        text += &format!(" Measured {measured} ± {give} {unit}");
        if let (Some(target), Some(deviation), Some(of_deviation)) =
            (value.target, value.deviation, value.deviation_uncertainty)
        {
            text += &format!(
                ", chart {}: {} ± {} {}",
                in_unit(chart.feature, target, units, false),
                in_unit(chart.feature, deviation.abs(), units, true),
                in_unit(chart.feature, of_deviation, units, true),
                if deviation >= 0.0 { "above" } else { "below" },
            );
        }
        text.push('.');
    }
    if let (HeatingChartOutcome::NoTarget, Some(gap)) = (chart.outcome, chart.gap) {
        text += &format!(" {}", gap.sentence());
    }
    text
}

/// Pressures of a chart are shown absolute: a finding does not know the ambient pressure.
fn unit(feature: GridTarget, units: Units) -> &'static str {
    let (ip, si) = match feature {
        GridTarget::LiquidPressure | GridTarget::DischargePressure | GridTarget::SuctionPressure => ("psia", "kPa abs"),
        GridTarget::DischargeTemperature => ("°F", "°C"),
        GridTarget::Capacity => ("Btu/h", "W"),
        GridTarget::Power => ("W", "W"),
        _ => ("°F", "K"),
    };
    if units == Units::Ip { ip } else { si }
}

fn in_unit(feature: GridTarget, value: f64, units: Units, is_difference: bool) -> String {
    match (feature, units) {
        (GridTarget::LiquidPressure | GridTarget::DischargePressure | GridTarget::SuctionPressure, Units::Ip) => {
            format!("{:.1}", value / PASCALS_PER_PSI)
        }
        (GridTarget::LiquidPressure | GridTarget::DischargePressure | GridTarget::SuctionPressure, Units::Si) => {
            format!("{:.0}", value / 1e3)
        }
        (GridTarget::DischargeTemperature, Units::Ip) if !is_difference => {
            format!("{:.1}", fahrenheit_from_kelvin(value))
        }
        (GridTarget::DischargeTemperature, Units::Si) if !is_difference => format!("{:.1}", value - 273.15),
        (GridTarget::Capacity, Units::Ip) => format!("{:.0}", value / WATTS_PER_BTU_H),
        (GridTarget::Capacity, Units::Si) | (GridTarget::Power, _) => format!("{value:.0}"),
        (_, Units::Ip) => format!("{:.1}", 1.8 * value),
        (_, Units::Si) => format!("{value:.1}"),
    }
}

struct Written<'a>(&'a HeatingFinding);

impl Serialize for Written<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let finding = self.0;
        let mut map = serializer.serialize_map(None)?;
        map.serialize_entry("capacity", finding.capacity.name())?;
        if let Some(outdoor) = finding.outdoor_dry_bulb {
            map.serialize_entry("outdoor_dry_bulb_k", &outdoor.kelvin())?;
        }
        map.serialize_entry("frost", finding.frost.name())?;
        map.serialize_entry("reversing_valve", finding.reversing_valve.name())?;
        if let Some(chart) = &finding.chart {
            map.serialize_entry("chart", &WrittenChart(chart))?;
        }
        map.serialize_entry("values", &WrittenValues(&finding.values))?;
        let names = |found: Vec<&'static str>| found;
        map.serialize_entry("problems", &names(finding.problems.iter().map(|found| found.name()).collect()))?;
        map.serialize_entry("limits", &names(finding.limits.iter().map(|found| found.name()).collect()))?;
        map.serialize_entry(
            "missing",
            &finding
                .missing
                .iter()
                .map(|one| WrittenMissing(one.field.name(), one.needed_for.name()))
                .collect::<Vec<_>>(),
        )?;
        map.serialize_entry("cautions", &names(finding.cautions.iter().map(|found| found.name()).collect()))?;
        map.end()
    }
}

struct WrittenValues<'a>(&'a HeatingValues);

impl Serialize for WrittenValues<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer
            .collect_map(self.0.all().into_iter().filter_map(|(name, _, value)| Some((name, WrittenValue(value?)))))
    }
}

struct WrittenChart<'a>(&'a HeatingChartFinding);

impl Serialize for WrittenChart<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut map = serializer.serialize_map(None)?;
        map.serialize_entry("feature", self.0.feature.name())?;
        map.serialize_entry("outcome", self.0.outcome.name())?;
        if let Some(measured) = self.0.measured {
            map.serialize_entry("measured", &WrittenValue(measured))?;
        }
        if let Some(gap) = self.0.gap {
            map.serialize_entry("gap", gap.name())?;
        }
        map.end()
    }
}
