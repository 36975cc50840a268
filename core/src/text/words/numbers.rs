//! Numbers with their ± in the units of the reader.

use super::Units;
use crate::diagnosis::{FeatureName, Value};
use crate::quantity::{KELVIN_PER_FAHRENHEIT, KG_PER_POUND, M3_S_PER_CFM, WATTS_PER_TON, fahrenheit_from_kelvin};
use alloc::format;
use alloc::string::String;

/// Kelvins in one degree of the units.
pub(super) fn step(units: Units) -> f64 {
    match units {
        Units::Ip => KELVIN_PER_FAHRENHEIT,
        Units::Si => 1.0,
    }
}

/// A temperature difference with ±.
pub(super) fn difference(value: f64, uncertainty: f64, units: Units) -> String {
    let unit = match units {
        Units::Ip => "°F",
        Units::Si => "K",
    };
    format!("{:.1} ± {:.1} {unit}", value / step(units), uncertainty / step(units))
}

fn degrees(kelvin: f64, units: Units) -> f64 {
    match units {
        Units::Ip => fahrenheit_from_kelvin(kelvin),
        Units::Si => kelvin - 273.15,
    }
}

/// A temperature with ±.
pub(super) fn temperature(value: Value, units: Units) -> String {
    let unit = if units == Units::Ip { "°F" } else { "°C" };
    format!("{:.1} ± {:.1} {unit}", degrees(value.value, units), value.standard_uncertainty / step(units))
}

/// Airflow for the capacity with ±.
pub(super) fn airflow(value: Value, units: Units) -> String {
    let (factor, unit) = match units {
        Units::Ip => (WATTS_PER_TON / M3_S_PER_CFM, "cfm per ton"),
        Units::Si => (3600.0 * 1000.0, "m³/h per kW"),
    };
    format!("{:.0} ± {:.0} {unit}", value.value * factor, value.standard_uncertainty * factor)
}

/// A feature's value with ± and unit, and a second one of its kind with ± alone.
pub(super) fn feature(
    name: FeatureName,
    (value, value_uncertainty): (f64, f64),
    (other, other_uncertainty): (f64, f64),
    units: Units,
) -> (String, String) {
    match name {
        FeatureName::CompressorPower | FeatureName::Airflow | FeatureName::WeighedCharge => (
            format!("{:.0} ± {:.0} %", 100.0 * value, 100.0 * value_uncertainty),
            format!("{:.0} ± {:.0}", 100.0 * other, 100.0 * other_uncertainty),
        ),
        FeatureName::Evaporating | FeatureName::Discharge => {
            let unit = if units == Units::Ip { "°F" } else { "°C" };
            (
                format!("{:.1} ± {:.1} {unit}", degrees(value, units), value_uncertainty / step(units)),
                format!("{:.1} ± {:.1}", degrees(other, units), other_uncertainty / step(units)),
            )
        }
        _ => (
            difference(value, value_uncertainty, units),
            format!("{:.1} ± {:.1}", other / step(units), other_uncertainty / step(units)),
        ),
    }
}

/// A mass with ±; with pounds beside it in IP, ounces below one pound. Without ± where it is a lower limit.
pub(super) fn mass(kg: f64, uncertainty: Option<f64>, units: Units) -> String {
    let metric = format!("{} kg", with_uncertainty(kg, uncertainty));
    if units == Units::Si {
        return metric;
    }
    let pounds = kg / KG_PER_POUND;
    let (factor, unit) = if pounds < 0.5 { (16.0, "oz") } else { (1.0, "lb") };
    let factor = factor / KG_PER_POUND;
    format!("{metric} ({} {unit})", with_uncertainty(kg * factor, uncertainty.map(|one| one * factor)))
}

/// As many decimals as show the first digit of the uncertainty, three at most; two where there is none.
fn with_uncertainty(value: f64, uncertainty: Option<f64>) -> String {
    let Some(uncertainty) = uncertainty else { return format!("{value:.2}") };
    let decimals = match uncertainty {
        large if large >= 0.95 => 0,
        tenths if tenths >= 0.095 => 1,
        hundredths if hundredths >= 0.0095 => 2,
        _ => 3,
    };
    format!("{value:.decimals$} ± {uncertainty:.decimals$}")
}

/// A probability in whole percent. Nothing is certain, and nothing that was weighed is impossible.
pub(super) fn percent(probability: f64) -> String {
    if probability > 0.99 {
        String::from("over 99 %")
    } else if probability < 0.01 {
        String::from("under 1 %")
    } else {
        format!("{:.0} %", 100.0 * probability)
    }
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn decimals_follow_the_uncertainty() {
        assert_eq!(mass(0.31, Some(0.078), Units::Ip), "0.31 ± 0.08 kg (0.7 ± 0.2 lb)");
        assert_eq!(mass(0.1, Some(0.02), Units::Ip), "0.10 ± 0.02 kg (3.5 ± 0.7 oz)");
        assert_eq!(mass(3.2, Some(1.2), Units::Si), "3 ± 1 kg");
        assert_eq!(mass(0.2, None, Units::Si), "0.20 kg");
        assert_eq!(percent(0.931), "93 %");
        assert_eq!((percent(1.0), percent(0.002)), (String::from("over 99 %"), String::from("under 1 %")));
    }
}
