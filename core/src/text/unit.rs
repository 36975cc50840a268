//! Strings with a unit, such as `118 psig` or `6 lb 4 oz`, to SI.

use super::error::Fault;
use crate::error::code;
use crate::quantity::{
    Atmosphere, GaugePressure, KELVIN_PER_FAHRENHEIT, KG_PER_POUND, M3_S_PER_CFM, PASCALS_PER_INCH_OF_MERCURY,
    PASCALS_PER_PSI, Pressure, WATTS_PER_BTU_H, WATTS_PER_TON,
};
use alloc::format;
use alloc::string::String;

/// What a unit string measures.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Quantity {
    /// Pressure of refrigerant: gauge or absolute, and the unit must say which.
    Pressure,
    /// Ambient pressure, absolute.
    Ambient,
    /// An error of a pressure, where gauge and absolute are the same.
    PressureDifference,
    Temperature,
    TemperatureDifference,
    Airflow,
    Power,
    Mass,
    Minutes,
    Altitude,
}

/// How a unit becomes SI.
#[derive(Debug, Clone, Copy, PartialEq)]
enum To {
    /// Times a factor.
    Times(f64),
    /// Plus an offset, then times a factor.
    Shift(f64, f64),
    /// Times a factor, above ambient.
    Gauge(f64),
    /// A pressure unit that does not say gauge or absolute.
    Ambiguous,
}

const FT: f64 = 0.3048;
const OUNCES: f64 = KG_PER_POUND / 16.0;

const PRESSURE: &[(&str, To)] = &[
    ("psig", To::Gauge(PASCALS_PER_PSI)),
    ("psia", To::Times(PASCALS_PER_PSI)),
    ("Pa", To::Times(1.0)),
    ("kPa abs", To::Times(1e3)),
    ("kPa gauge", To::Gauge(1e3)),
    ("kPag", To::Gauge(1e3)),
    ("MPa abs", To::Times(1e6)),
    ("MPa gauge", To::Gauge(1e6)),
    ("bar abs", To::Times(1e5)),
    ("bar gauge", To::Gauge(1e5)),
    ("bara", To::Times(1e5)),
    ("barg", To::Gauge(1e5)),
    ("inHg gauge", To::Gauge(PASCALS_PER_INCH_OF_MERCURY)),
    ("inHg vacuum", To::Gauge(-PASCALS_PER_INCH_OF_MERCURY)),
    ("inHg abs", To::Times(PASCALS_PER_INCH_OF_MERCURY)),
    ("psi", To::Ambiguous),
    ("kPa", To::Ambiguous),
    ("MPa", To::Ambiguous),
    ("bar", To::Ambiguous),
    ("inHg", To::Ambiguous),
];
const AMBIENT: &[(&str, To)] = &[
    ("psia", To::Times(PASCALS_PER_PSI)),
    ("psi", To::Times(PASCALS_PER_PSI)),
    ("inHg", To::Times(PASCALS_PER_INCH_OF_MERCURY)),
    ("Pa", To::Times(1.0)),
    ("hPa", To::Times(100.0)),
    ("mbar", To::Times(100.0)),
    ("kPa", To::Times(1e3)),
    ("bar", To::Times(1e5)),
];
const PRESSURE_DIFFERENCE: &[(&str, To)] = &[
    ("psi", To::Times(PASCALS_PER_PSI)),
    ("Pa", To::Times(1.0)),
    ("kPa", To::Times(1e3)),
    ("bar", To::Times(1e5)),
    ("inHg", To::Times(PASCALS_PER_INCH_OF_MERCURY)),
];
const TEMPERATURE: &[(&str, To)] = &[
    ("degF", To::Shift(459.67, KELVIN_PER_FAHRENHEIT)),
    ("°F", To::Shift(459.67, KELVIN_PER_FAHRENHEIT)),
    ("F", To::Shift(459.67, KELVIN_PER_FAHRENHEIT)),
    ("degC", To::Shift(273.15, 1.0)),
    ("°C", To::Shift(273.15, 1.0)),
    ("C", To::Shift(273.15, 1.0)),
    ("K", To::Times(1.0)),
];
const TEMPERATURE_DIFFERENCE: &[(&str, To)] = &[
    ("degF", To::Times(KELVIN_PER_FAHRENHEIT)),
    ("°F", To::Times(KELVIN_PER_FAHRENHEIT)),
    ("F", To::Times(KELVIN_PER_FAHRENHEIT)),
    ("degC", To::Times(1.0)),
    ("°C", To::Times(1.0)),
    ("C", To::Times(1.0)),
    ("K", To::Times(1.0)),
];
const AIRFLOW: &[(&str, To)] = &[
    ("cfm", To::Times(M3_S_PER_CFM)),
    ("m3/s", To::Times(1.0)),
    ("m3/h", To::Times(1.0 / 3600.0)),
    ("L/s", To::Times(1e-3)),
];
const POWER: &[(&str, To)] = &[
    ("ton", To::Times(WATTS_PER_TON)),
    ("tons", To::Times(WATTS_PER_TON)),
    ("Btu/h", To::Times(WATTS_PER_BTU_H)),
    ("kW", To::Times(1e3)),
    ("W", To::Times(1.0)),
];
const MASS: &[(&str, To)] =
    &[("lb", To::Times(KG_PER_POUND)), ("oz", To::Times(OUNCES)), ("kg", To::Times(1.0)), ("g", To::Times(1e-3))];
const MINUTES: &[(&str, To)] = &[
    ("min", To::Times(1.0)),
    ("minutes", To::Times(1.0)),
    ("h", To::Times(60.0)),
    ("hours", To::Times(60.0)),
    ("s", To::Times(1.0 / 60.0)),
];
const ALTITUDE: &[(&str, To)] = &[("ft", To::Times(FT)), ("m", To::Times(1.0))];

impl Quantity {
    pub(super) const ALL: &[Self] = &[
        Self::Pressure,
        Self::Ambient,
        Self::PressureDifference,
        Self::Temperature,
        Self::TemperatureDifference,
        Self::Airflow,
        Self::Power,
        Self::Mass,
        Self::Minutes,
        Self::Altitude,
    ];

    /// The word for it, as in the schemas.
    pub(super) const fn name(self) -> &'static str {
        match self {
            Self::Pressure => "pressure",
            Self::Ambient => "ambient_pressure",
            Self::PressureDifference => "pressure_difference",
            Self::Temperature => "temperature",
            Self::TemperatureDifference => "temperature_difference",
            Self::Airflow => "airflow",
            Self::Power => "power",
            Self::Mass => "mass",
            Self::Minutes => "minutes",
            Self::Altitude => "altitude",
        }
    }

    /// The units that it is understood in.
    pub(super) fn unit_names(self) -> impl Iterator<Item = &'static str> {
        self.units().iter().filter(|(_, to)| *to != To::Ambiguous).map(|(name, _)| *name)
    }

    fn units(self) -> &'static [(&'static str, To)] {
        match self {
            Self::Pressure => PRESSURE,
            Self::Ambient => AMBIENT,
            Self::PressureDifference => PRESSURE_DIFFERENCE,
            Self::Temperature => TEMPERATURE,
            Self::TemperatureDifference => TEMPERATURE_DIFFERENCE,
            Self::Airflow => AIRFLOW,
            Self::Power => POWER,
            Self::Mass => MASS,
            Self::Minutes => MINUTES,
            Self::Altitude => ALTITUDE,
        }
    }
}

/// A value in SI.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Si {
    pub value: f64,
    /// Whether it was a gauge pressure, made absolute with the ambient pressure.
    pub gauge: bool,
}

/// The SI value of a string with its unit. A gauge pressure needs the ambient pressure.
pub(super) fn to_si(text: &str, quantity: Quantity, ambient: Atmosphere) -> Result<Si, Fault> {
    let (number, unit_text, rest) = number_and_unit(text)?;
    let (first, gauge) = match find(unit_text, quantity)? {
        To::Times(factor) => (number * factor, false),
        To::Shift(offset, factor) => ((number + offset) * factor, false),
        To::Gauge(factor) => {
            let gauge = GaugePressure::from_pascals(number * factor)?;
            (Pressure::from_gauge(gauge, ambient)?.pascals(), true)
        }
        To::Ambiguous => return Err(ambiguous(text, unit_text)),
    };
    if rest.is_empty() {
        return Ok(Si { value: first, gauge });
    }
    // Only a mass is said in two units at once.
    if quantity == Quantity::Mass && unit_text.eq_ignore_ascii_case("lb") {
        let (ounces, unit_text, rest) = number_and_unit(rest)?;
        if unit_text.eq_ignore_ascii_case("oz") && rest.is_empty() && (0.0..16.0).contains(&ounces) {
            return Ok(Si { value: first + ounces * OUNCES, gauge: false });
        }
    }
    Err(Fault::form(format!("\"{text}\" is not one number with one unit (or a mass such as \"6 lb 4 oz\")")))
}

fn ambiguous(text: &str, unit: &str) -> Fault {
    let (gauge, absolute) = match unit {
        "psi" => (String::from("psig"), String::from("psia")),
        other => (format!("{other} gauge"), format!("{other} abs")),
    };
    Fault::new(
        code::UNKNOWN_UNIT,
        format!("\"{text}\" does not say gauge or absolute: write \"{gauge}\" for a gauge reading or \"{absolute}\""),
    )
}

/// Splits `118 psig` into its number, its unit and what follows a second number.
fn number_and_unit(text: &str) -> Result<(f64, &str, &str), Fault> {
    let text = text.trim();
    let end =
        text.find(|letter: char| !matches!(letter, '0'..='9' | '+' | '-' | '.' | 'e' | 'E')).unwrap_or(text.len());
    let (number, rest) = text.split_at_checked(end).unwrap_or((text, ""));
    let Ok(number) = number.parse::<f64>() else {
        return Err(Fault::form(format!("\"{text}\" does not begin with a number: write it as in \"118 psig\"")));
    };
    if !number.is_finite() {
        return Err(Fault::new(
            code::NOT_FINITE,
            format!("\"{text}\" is not a finite number: give one, or leave the field out"),
        ));
    }
    let rest = rest.trim_start();
    if rest.is_empty() {
        return Err(Fault::new(code::UNKNOWN_UNIT, format!("\"{text}\" has no unit: write it as in \"118 psig\"")));
    }
    // A digit inside a unit (m3/s) follows a letter; a second number follows a blank.
    let second =
        rest.char_indices().zip(rest.chars().skip(1)).find(|((_, here), next)| *here == ' ' && next.is_ascii_digit());
    let end = second.map_or(rest.len(), |((index, _), _)| index);
    let (unit, rest) = rest.split_at_checked(end).unwrap_or((rest, ""));
    Ok((number, unit.trim(), rest.trim()))
}

fn find(unit: &str, quantity: Quantity) -> Result<To, Fault> {
    let units = quantity.units();
    let exact = units.iter().find(|(name, _)| *name == unit);
    let loose = || units.iter().find(|(name, _)| name.eq_ignore_ascii_case(unit));
    exact.or_else(loose).map(|(_, to)| *to).ok_or_else(|| {
        let nearest = crate::nearest::nearest(unit, quantity.unit_names());
        let mut list = String::new();
        for name in quantity.unit_names() {
            if !list.is_empty() {
                list.push_str(", ");
            }
            list.push_str(name);
        }
        Fault::new(
            code::UNKNOWN_UNIT,
            format!("unknown unit \"{unit}\": the nearest is {nearest}; known here are {list}"),
        )
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use approx::assert_relative_eq;
    use proptest::prelude::*;

    fn si(text: &str, quantity: Quantity) -> f64 {
        to_si(text, quantity, Atmosphere::STANDARD).unwrap().value
    }

    #[test]
    fn units_of_the_trade_become_si() {
        // Conversion factors: NIST SP 811, computed apart from the constants used here.
        for (text, quantity, expected) in [
            ("118 psig", Quantity::Pressure, 914_906.36),
            ("14.6959488 psia", Quantity::Pressure, 101_325.0),
            ("118psig", Quantity::Pressure, 914_906.36),
            ("10 inHg vacuum", Quantity::Pressure, 101_325.0 - 33_863.89),
            ("-10 inHg gauge", Quantity::Pressure, 101_325.0 - 33_863.89),
            ("800 kPa gauge", Quantity::Pressure, 901_325.0),
            ("9.01325 bara", Quantity::Pressure, 901_325.0),
            ("24.9 inHg", Quantity::Ambient, 84_321.09),
            ("95 degF", Quantity::Temperature, 308.15),
            ("35 °C", Quantity::Temperature, 308.15),
            ("308.15 K", Quantity::Temperature, 308.15),
            ("8 degF", Quantity::TemperatureDifference, 4.444_444_444),
            ("8 K", Quantity::TemperatureDifference, 8.0),
            ("1200 cfm", Quantity::Airflow, 0.566_336_93),
            ("3 ton", Quantity::Power, 10_550.56),
            ("36000 Btu/h", Quantity::Power, 10_550.56),
            ("10.5 kW", Quantity::Power, 10_500.0),
            ("6 lb", Quantity::Mass, 2.721_554_22),
            ("6 lb 4 oz", Quantity::Mass, 2.834_952_3),
            ("100 oz", Quantity::Mass, 2.834_952_3),
            ("20 min", Quantity::Minutes, 20.0),
            ("1.5 h", Quantity::Minutes, 90.0),
            ("5280 ft", Quantity::Altitude, 1609.344),
        ] {
            assert_relative_eq!(si(text, quantity), expected, max_relative = 1e-6);
        }
    }

    #[test]
    fn what_cannot_be_understood_is_refused() {
        let fault = |text: &str, quantity| to_si(text, quantity, Atmosphere::STANDARD).unwrap_err();
        assert!(fault("118 psi", Quantity::Pressure).message.contains("psig"));
        assert!(fault("118 psgi", Quantity::Pressure).message.contains("nearest is psig"));
        assert_eq!(fault("118", Quantity::Pressure).code, code::UNKNOWN_UNIT);
        assert_eq!(fault("1e999 psig", Quantity::Pressure).code, code::NOT_FINITE);
        assert_eq!(fault("NaN degF", Quantity::Temperature).code, code::MALFORMED_TEXT);
        assert_eq!(fault("-20 psig", Quantity::Pressure).code, code::OUT_OF_RANGE);
        assert_eq!(fault("35 inHg vacuum", Quantity::Pressure).code, code::OUT_OF_RANGE);
        assert!(to_si("1,200 cfm", Quantity::Airflow, Atmosphere::STANDARD).is_err());
        assert!(to_si("6 lb 20 oz", Quantity::Mass, Atmosphere::STANDARD).is_err());
        assert!(to_si("6 degF 4 degF", Quantity::Temperature, Atmosphere::STANDARD).is_err());
        assert!(to_si("", Quantity::Mass, Atmosphere::STANDARD).is_err());
    }

    proptest! {
        #[test]
        fn no_string_panics_or_gives_a_number_that_is_not_finite(text in "\\PC*", number in any::<f64>()) {
            for quantity in [Quantity::Pressure, Quantity::Ambient, Quantity::Temperature, Quantity::Mass, Quantity::Minutes] {
                for text in [text.clone(), format!("{number} {text}"), format!("{number} lb {text}")] {
                    if let Ok(Si { value, .. }) = to_si(&text, quantity, Atmosphere::STANDARD) {
                        // A finite number times a factor may still overflow; the bound of the field refuses that.
                        prop_assert!(!value.is_nan());
                    }
                }
            }
        }
    }
}
