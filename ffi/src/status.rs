//! Status numbers in words.

use crate::generated::text;
use core::ffi::c_char;

/// The name of a status, such as "out-of-range"; "unknown-status" for a number that is none. Never null; lives for
/// ever.
#[unsafe(no_mangle)]
pub extern "C" fn satline_status_name(status: i32) -> *const c_char {
    text::status_name(status).as_ptr()
}

/// What a status means and what to do about it, in English, for a person. Never null; lives for ever.
#[unsafe(no_mangle)]
pub extern "C" fn satline_status_message(status: i32) -> *const c_char {
    text::status_message(status).as_ptr()
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeMap;
    use std::string::{String, ToString};

    const HEADER: &str = include_str!("../include/satline.h");

    /// The header's constants that begin so, without the beginning.
    fn constants(prefix: &str) -> BTreeMap<String, i32> {
        HEADER
            .lines()
            .filter_map(|line| line.strip_prefix("#define ")?.strip_prefix(prefix)?.split_once(' '))
            .map(|(name, number)| (name.to_string(), number.parse().expect("a number")))
            .collect()
    }

    #[test]
    fn the_header_has_the_status_numbers_of_the_error_table() {
        let table = satline::error::TABLE.iter();
        let table: BTreeMap<_, _> = table.map(|row| (row.name.to_uppercase().replace('-', "_"), row.code)).collect();
        assert_eq!(constants("SATLINE_STATUS_"), table);
    }

    #[test]
    fn numbers_in_use_never_change() {
        // As first published. Rows may be added below; none may be altered or taken out.
        let published = [
            ("OK", 0),
            ("OUT_OF_RANGE", 1),
            ("NOT_FINITE", 2),
            ("UNKNOWN_REFRIGERANT", 3),
            ("UNKNOWN_FIELD", 4),
            ("UNKNOWN_CHOICE", 5),
            ("NOT_CONVERGED", 6),
            ("BAD_COMPOSITION", 7),
            ("UNKNOWN_UNIT", 8),
            ("MALFORMED_TEXT", 9),
            ("NULL_POINTER", 10),
            ("BAD_STRUCT_SIZE", 11),
            ("VERSION_MISMATCH", 12),
            ("NO_VALID_TEST", 100),
            ("NOT_AVAILABLE", 101),
        ];
        let header = constants("SATLINE_STATUS_");
        for (name, number) in published {
            assert_eq!(header.get(name), Some(&number), "{name}");
        }
    }

    #[test]
    fn the_header_has_every_field_and_refrigerant() {
        let fields = satline::Field::ALL.iter();
        let fields: BTreeMap<_, _> = fields.map(|field| (field.name().to_uppercase(), *field as i32)).collect();
        assert_eq!(constants("SATLINE_FIELD_"), fields);
        for refrigerant in satline::refrigerant::ALL {
            let name = refrigerant.designation().replace(['-', '(', ')'], "").to_uppercase();
            let line = std::format!("extern const struct satline_refrigerant SATLINE_{name};");
            assert!(HEADER.lines().any(|found| found == line), "{line}");
        }
    }
}
