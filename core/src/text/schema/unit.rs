//! Strings with a unit, and loosely written names, as patterns.

use super::super::unit::Quantity;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use serde_json::{Value, json};

/// A number as a unit string begins with.
const NUMBER: &str = r"[+-]?(?:[0-9]+\.?[0-9]*|\.[0-9]+)(?:[eE][+-]?[0-9]+)?";
/// Ounces beside pounds: below 16.
const OUNCES: &str = r"\+?0*(?:[0-9]|1[0-5])(?:\.[0-9]*)?";

/// A string with a unit of that quantity, in whatever case.
pub(super) fn string_with_unit(quantity: Quantity) -> Value {
    let units: Vec<&str> = quantity.unit_names().collect();
    let either: Vec<String> = units.iter().map(|unit| any_case(unit)).collect();
    let mut pattern = format!(r"^\s*{NUMBER}\s*(?:{})\s*$", either.join("|"));
    let mut description = format!("A number with its unit: {}.", units.join(", "));
    if quantity == Quantity::Mass {
        let (pounds, ounces) = (any_case("lb"), any_case("oz"));
        pattern = format!(r"{pattern}|^\s*{NUMBER}\s*{pounds} +{OUNCES}\s*{ounces}\s*$");
        description += " Pounds and ounces may stand together, as in 6 lb 4 oz.";
    }
    json!({ "type": "string", "pattern": pattern, "description": description })
}

/// A pattern for a word in any case.
pub(super) fn any_case(word: &str) -> String {
    word.chars().map(letter).collect()
}

fn letter(letter: char) -> String {
    match letter {
        'a'..='z' | 'A'..='Z' => format!("[{}{}]", letter.to_ascii_lowercase(), letter.to_ascii_uppercase()),
        '0'..='9' | ' ' | '°' | '%' => String::from(letter),
        other => format!(r"\{other}"),
    }
}

/// A pattern for a refrigerant's designation in any case, with or without hyphens and blanks.
pub(super) fn designation(name: &str) -> String {
    let letters = name.chars().filter(|letter| !matches!(letter, '-' | ' ' | '_')).map(letter);
    letters.collect::<Vec<_>>().join("[-_ ]*")
}
