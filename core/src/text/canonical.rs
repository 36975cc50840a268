//! JSON as values, and its one canonical form, so that the same record always gives the same bytes.
//!
//! The form is that of RFC 8785: no white space; the names of an object sorted by the UTF-16 code units that they are made
//! of; numbers as ECMAScript writes them (the shortest digits that read back to the same double, plain from 1e-6 to below
//! 1e21, with an exponent outside; minus zero as 0); in strings `"` and `\` escaped, control characters as `\b \t \n \f \r`
//! or `\u` with four digits in lower case, all else as it is; UTF-8. A number that no double can hold is refused, as is a
//! name given twice.

use super::error::Fault;
use super::json::{Entries, Kind, kind};
use super::read::{boolean, number, string};
use crate::error::code;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use serde_json::value::RawValue;

/// Objects and arrays within each other, at most: far more than any record needs, and no danger to the stack.
const DEEPEST: usize = 32;

/// A piece of JSON.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Json {
    Null,
    Boolean(bool),
    Number(f64),
    String(String),
    Array(Vec<Json>),
    Object(Vec<(String, Json)>),
}

impl Json {
    pub(super) fn text(text: impl Into<String>) -> Self {
        Self::String(text.into())
    }

    /// A valid piece of JSON as values; numbers are read exactly.
    pub(super) fn parse(piece: &str) -> Result<Self, Fault> {
        parse(piece, DEEPEST)
    }

    /// The canonical text.
    pub(super) fn canonical(&self) -> Result<String, Fault> {
        let mut out = String::new();
        write(self, &mut out)?;
        Ok(out)
    }
}

fn parse(piece: &str, depth: usize) -> Result<Json, Fault> {
    let form = |error: serde_json::Error| Fault::form(format!("{error}"));
    if depth == 0 {
        return Err(Fault::form(format!("more than {DEEPEST} objects or arrays within each other")));
    }
    let raw: &RawValue = serde_json::from_str(piece).map_err(form)?;
    Ok(match kind(piece) {
        Kind::Null => Json::Null,
        Kind::Boolean => Json::Boolean(boolean(raw)?),
        Kind::Number => match number(raw)? {
            finite if finite.is_finite() => Json::Number(finite),
            _ => return Err(Fault::new(code::NOT_FINITE, format!("{piece} is larger than any number here can be"))),
        },
        Kind::String => Json::String(string(raw)?),
        Kind::Array => {
            let parts: Vec<&RawValue> = serde_json::from_str(piece).map_err(form)?;
            Json::Array(parts.iter().map(|part| parse(part.get(), depth - 1)).collect::<Result<_, _>>()?)
        }
        Kind::Object => {
            let Entries(entries) = serde_json::from_str(piece).map_err(form)?;
            let mut object: Vec<(String, Json)> = Vec::new();
            for entry in entries {
                if object.iter().any(|(name, _)| *name == entry.name) {
                    return Err(Fault::form(format!("{} given twice; keep one", entry.name)));
                }
                let value = parse(entry.value.get(), depth - 1)?;
                object.push((entry.name, value));
            }
            // The order of names means nothing, so that values that mean the same are equal.
            object.sort_by(|(left, _), (right, _)| left.encode_utf16().cmp(right.encode_utf16()));
            Json::Object(object)
        }
    })
}

fn write(value: &Json, out: &mut String) -> Result<(), Fault> {
    match value {
        Json::Null => out.push_str("null"),
        Json::Boolean(value) => out.push_str(if *value { "true" } else { "false" }),
        Json::Number(value) => out.push_str(&number_to_text(*value)?),
        Json::String(value) => write_string(value, out),
        Json::Array(values) => {
            out.push('[');
            for (index, value) in values.iter().enumerate() {
                if index > 0 {
                    out.push(',');
                }
                write(value, out)?;
            }
            out.push(']');
        }
        Json::Object(entries) => {
            let mut sorted: Vec<&(String, Json)> = entries.iter().collect();
            sorted.sort_by(|(left, _), (right, _)| left.encode_utf16().cmp(right.encode_utf16()));
            out.push('{');
            for (index, (name, value)) in sorted.into_iter().enumerate() {
                if index > 0 {
                    out.push(',');
                }
                write_string(name, out);
                out.push(':');
                write(value, out)?;
            }
            out.push('}');
        }
    }
    Ok(())
}

fn write_string(text: &str, out: &mut String) {
    out.push('"');
    for letter in text.chars() {
        match letter {
            '"' => out.push_str("\\\""),
            '\\' => out.push_str("\\\\"),
            '\u{8}' => out.push_str("\\b"),
            '\t' => out.push_str("\\t"),
            '\n' => out.push_str("\\n"),
            '\u{c}' => out.push_str("\\f"),
            '\r' => out.push_str("\\r"),
            control if u32::from(control) < 0x20 => out.push_str(&format!("\\u{:04x}", u32::from(control))),
            other => out.push(other),
        }
    }
    out.push('"');
}

/// The shortest digits that read back to the same number, as `d.ddde±x`. Of two equally short ones the nearer, of two
/// equally near ones the even: Rust's own shortest form takes the upper of those.
fn shortest(value: f64) -> String {
    let shortest = format!("{value:e}");
    let digits = shortest.split('e').next().unwrap_or("").bytes().filter(u8::is_ascii_digit).count();
    let nearest = format!("{value:.*e}", digits.saturating_sub(1));
    if nearest.parse() == Ok(value) { nearest } else { shortest }
}

/// A number as ECMAScript writes it.
fn number_to_text(value: f64) -> Result<String, Fault> {
    if !value.is_finite() {
        return Err(Fault::new(code::NOT_FINITE, "NaN and infinities are not values: leave it out"));
    }
    if value == 0.0 {
        return Ok(String::from("0"));
    }
    let scientific = shortest(value.abs());
    let (mantissa, exponent) = scientific.split_once('e').unwrap_or((&scientific, "0"));
    let exponent: i32 = exponent.parse().unwrap_or(0);
    let digits: String = mantissa.chars().filter(char::is_ascii_digit).collect();
    let count = i32::try_from(digits.len()).unwrap_or(i32::MAX);
    // The decimal point stands after this many digits.
    let point = exponent + 1;
    let zeros = |count: i32| "0".repeat(usize::try_from(count).unwrap_or(0));
    let split = |at: i32| digits.split_at_checked(usize::try_from(at).unwrap_or(0)).unwrap_or((&digits, ""));
    let unsigned = if count <= point && point <= 21 {
        format!("{digits}{}", zeros(point - count))
    } else if 0 < point && point <= 21 {
        let (whole, rest) = split(point);
        format!("{whole}.{rest}")
    } else if -6 < point && point <= 0 {
        format!("0.{}{digits}", zeros(-point))
    } else {
        let (first, rest) = split(1);
        let dot = if rest.is_empty() { "" } else { "." };
        let sign = if exponent < 0 { "" } else { "+" };
        format!("{first}{dot}{rest}e{sign}{exponent}")
    };
    Ok(if value < 0.0 { format!("-{unsigned}") } else { unsigned })
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// IEEE 754 bits and text: RFC 8785, appendix B.
    const APPENDIX_B: &[(u64, &str)] = &[
        (0x0000_0000_0000_0000, "0"),
        (0x8000_0000_0000_0000, "0"),
        (0x0000_0000_0000_0001, "5e-324"),
        (0x8000_0000_0000_0001, "-5e-324"),
        (0x7fef_ffff_ffff_ffff, "1.7976931348623157e+308"),
        (0xffef_ffff_ffff_ffff, "-1.7976931348623157e+308"),
        (0x4340_0000_0000_0000, "9007199254740992"),
        (0xc340_0000_0000_0000, "-9007199254740992"),
        (0x4430_0000_0000_0000, "295147905179352830000"),
        (0x44b5_2d02_c7e1_4af5, "9.999999999999997e+22"),
        (0x44b5_2d02_c7e1_4af6, "1e+23"),
        (0x44b5_2d02_c7e1_4af7, "1.0000000000000001e+23"),
        (0x444b_1ae4_d6e2_ef4e, "999999999999999700000"),
        (0x444b_1ae4_d6e2_ef4f, "999999999999999900000"),
        (0x444b_1ae4_d6e2_ef50, "1e+21"),
        (0x3eb0_c6f7_a0b5_ed8c, "9.999999999999997e-7"),
        (0x3eb0_c6f7_a0b5_ed8d, "0.000001"),
        (0x41b3_de43_5555_5553, "333333333.3333332"),
        (0x41b3_de43_5555_5554, "333333333.33333325"),
        (0x41b3_de43_5555_5555, "333333333.3333333"),
        (0x41b3_de43_5555_5556, "333333333.3333334"),
        (0x41b3_de43_5555_5557, "333333333.33333343"),
        (0xbecb_f647_612f_3696, "-0.0000033333333333333333"),
        (0x4314_3ff3_c1cb_0959, "1424953923781206.2"),
    ];

    fn canonical(text: &str) -> String {
        Json::parse(text).unwrap().canonical().unwrap()
    }

    #[test]
    fn numbers_are_those_of_the_standard() {
        for (bits, text) in APPENDIX_B {
            assert_eq!(number_to_text(f64::from_bits(*bits)).unwrap(), *text);
        }
        // The two rows of the same table that must fail.
        for bits in [0x7fff_ffff_ffff_ffff, 0x7ff0_0000_0000_0000] {
            assert_eq!(number_to_text(f64::from_bits(bits)).unwrap_err().code, code::NOT_FINITE);
        }
    }

    #[test]
    fn the_examples_of_the_standard() {
        // RFC 8785, sections 3.2.2 and 3.2.3.
        let text = r#"{"numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
            "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/", "literals": [null, true, false]}"#;
        let expected = "{\"literals\":[null,true,false],\"numbers\":[333333333.3333333,1e+30,4.5,0.002,1e-27],\
            \"string\":\"€$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"}";
        assert_eq!(canonical(text), expected);
        let text = r#"{"\u20ac": "Euro Sign", "\r": "Carriage Return", "\ufb33": "Hebrew Letter Dalet With Dagesh",
            "1": "One", "\ud83d\ude00": "Emoji: Grinning Face", "\u0080": "Control",
            "\u00f6": "Latin Small Letter O With Diaeresis"}"#;
        let order = ["Carriage", "One", "Control", "Latin", "Euro", "Emoji", "Hebrew"];
        let sorted = canonical(text);
        let places: Vec<_> = order.iter().map(|name| sorted.find(name).unwrap()).collect();
        assert!(places.is_sorted(), "{sorted}");
    }

    #[test]
    fn what_has_no_canonical_form_is_refused() {
        assert_eq!(Json::parse("1e999").unwrap_err().code, code::NOT_FINITE);
        let deep = format!("{}1{}", "[".repeat(40), "]".repeat(40));
        for text in ["{\"a\": 1, \"a\": 1}", "\"\\ud800\"", "[1,]", deep.as_str()] {
            assert_eq!(Json::parse(text).unwrap_err().code, code::MALFORMED_TEXT, "{text}");
        }
        assert!(Json::parse(&"[".repeat(100_000)).is_err());
    }

    /// Any JSON.
    pub(crate) fn json() -> impl Strategy<Value = Json> {
        let number = any::<f64>().prop_filter("finite", |number| number.is_finite());
        // Minus zero reads back as zero.
        let number = number.prop_map(|number| if number == 0.0 { 0.0 } else { number });
        let leaf = prop_oneof![
            Just(Json::Null),
            any::<bool>().prop_map(Json::Boolean),
            number.prop_map(Json::Number),
            any::<String>().prop_map(Json::String)
        ];
        leaf.prop_recursive(4, 40, 6, |inner| {
            let names = proptest::collection::btree_map(any::<String>(), inner.clone(), 0..6);
            prop_oneof![
                proptest::collection::vec(inner, 0..6).prop_map(Json::Array),
                names.prop_map(|map| {
                    let mut entries: Vec<_> = map.into_iter().collect();
                    entries.sort_by(|(left, _), (right, _)| left.encode_utf16().cmp(right.encode_utf16()));
                    Json::Object(entries)
                })
            ]
        })
    }

    proptest! {
        #[test]
        fn what_is_written_reads_back_and_is_written_the_same(value in json()) {
            let text = value.canonical().unwrap();
            let back = Json::parse(&text).unwrap();
            prop_assert_eq!(&back, &value);
            prop_assert_eq!(back.canonical().unwrap(), text);
        }

        #[test]
        fn every_number_reads_back_to_the_same_bits(bits in any::<u64>()) {
            let number = f64::from_bits(bits);
            if number.is_finite() && number != 0.0 {
                prop_assert_eq!(number_to_text(number).unwrap().parse::<f64>().unwrap().to_bits(), bits);
            }
        }
    }
}
