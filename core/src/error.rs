//! The one error table.
//!
//! Every failure that the library can report stands here once, with a number that is never reused, a name and a
//! message. The C status codes and the Python exception classes are compared with [`TABLE`] by a test.

/// What went wrong, with what is needed to put it right.
///
/// An error means that a question could not be understood or answered. A reading that is understood but does not
/// allow a judgement is not an error: it gives a finding with its reason.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum Error {
    /// A value lies outside the accepted range.
    #[error("{quantity} of {value} {unit} is outside {lower} to {upper} {unit}: {advice}")]
    OutOfRange {
        /// The quantity, in words.
        quantity: &'static str,
        /// The unit of `value`, `lower` and `upper`.
        unit: &'static str,
        /// The value given.
        value: f64,
        /// The lowest accepted value.
        lower: f64,
        /// The highest accepted value.
        upper: f64,
        /// What to do about it.
        advice: &'static str,
    },
    /// A value is not a number, or infinite.
    #[error("{quantity} is not a finite number: give a value in {unit} from {lower} to {upper}, or leave it out")]
    NotFinite {
        /// The quantity, in words.
        quantity: &'static str,
        /// The unit expected.
        unit: &'static str,
        /// The lowest accepted value.
        lower: f64,
        /// The highest accepted value.
        upper: f64,
    },
    /// No refrigerant of that name is in the catalogue.
    #[error("unknown refrigerant: the nearest name in the catalogue is {nearest}")]
    UnknownRefrigerant {
        /// The catalogue's nearest designation.
        nearest: &'static str,
    },
    /// No reading field of that name or number exists.
    #[error("unknown reading field: the nearest field is {nearest}")]
    UnknownField {
        /// The nearest field name.
        nearest: &'static str,
    },
    /// A word or number is not one of the choices of a field.
    #[error("{field} is not one of its choices: use {choices}")]
    UnknownChoice {
        /// The field, in words.
        field: &'static str,
        /// The accepted choices, separated by commas.
        choices: &'static str,
    },
    /// An iterative solution did not converge (equations of state only).
    #[error("{calculation} did not converge at {value} {unit}: use a state further from the critical point")]
    NotConverged {
        /// What was being solved.
        calculation: &'static str,
        /// The input.
        value: f64,
        /// The unit of the input.
        unit: &'static str,
    },
    /// A composition is not usable.
    #[error("the composition is not usable: {reason}")]
    BadComposition {
        /// Why.
        reason: &'static str,
    },
    /// The question is understood, but no trustworthy answer is known: nothing is published, or a rule does not apply.
    #[error("{quantity} is not available: {reason}")]
    NotAvailable {
        /// What was asked for.
        quantity: &'static str,
        /// Why there is none, and what to do.
        reason: &'static str,
    },
}

impl Error {
    /// The fixed number of this error: never 0, never reused. The C interface returns it as its status.
    #[must_use]
    pub const fn code(&self) -> i32 {
        match self {
            Self::OutOfRange { .. } => code::OUT_OF_RANGE,
            Self::NotFinite { .. } => code::NOT_FINITE,
            Self::UnknownRefrigerant { .. } => code::UNKNOWN_REFRIGERANT,
            Self::UnknownField { .. } => code::UNKNOWN_FIELD,
            Self::UnknownChoice { .. } => code::UNKNOWN_CHOICE,
            Self::NotConverged { .. } => code::NOT_CONVERGED,
            Self::BadComposition { .. } => code::BAD_COMPOSITION,
            Self::NotAvailable { .. } => code::NOT_AVAILABLE,
        }
    }
}

/// The numbers of [`TABLE`], by name.
pub mod code {
    #![allow(missing_docs)] // each number is described by its row of the table
    pub const OK: i32 = 0;
    pub const OUT_OF_RANGE: i32 = 1;
    pub const NOT_FINITE: i32 = 2;
    pub const UNKNOWN_REFRIGERANT: i32 = 3;
    pub const UNKNOWN_FIELD: i32 = 4;
    pub const UNKNOWN_CHOICE: i32 = 5;
    pub const NOT_CONVERGED: i32 = 6;
    pub const BAD_COMPOSITION: i32 = 7;
    pub const UNKNOWN_UNIT: i32 = 8;
    pub const MALFORMED_TEXT: i32 = 9;
    pub const NULL_POINTER: i32 = 10;
    pub const BAD_STRUCT_SIZE: i32 = 11;
    pub const VERSION_MISMATCH: i32 = 12;
    pub const NO_VALID_TEST: i32 = 100;
    pub const NOT_AVAILABLE: i32 = 101;
}

/// One row of [`TABLE`].
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Row {
    /// The fixed number.
    pub code: i32,
    /// The name, in lower case with hyphens.
    pub name: &'static str,
    /// What it means and what to do, for a caller who has only the number.
    pub message: &'static str,
}

/// Every status that the library can report, in all its languages. Numbers below 100 are errors; from 100 on they
/// are answers without a value.
pub const TABLE: &[Row] = &[
    Row { code: code::OK, name: "ok", message: "done" },
    Row {
        code: code::OUT_OF_RANGE,
        name: "out-of-range",
        message: "a value lies outside its accepted range: check the unit, absolute against gauge pressure, and the refrigerant",
    },
    Row {
        code: code::NOT_FINITE,
        name: "not-finite",
        message: "a value is not a number or is infinite: give a finite value or leave it out",
    },
    Row {
        code: code::UNKNOWN_REFRIGERANT,
        name: "unknown-refrigerant",
        message: "no refrigerant of that name is in the catalogue: use its ASHRAE 34 designation, such as R-410A",
    },
    Row { code: code::UNKNOWN_FIELD, name: "unknown-field", message: "no reading field of that name or number exists" },
    Row {
        code: code::UNKNOWN_CHOICE,
        name: "unknown-choice",
        message: "a word or number is not one of the field's choices",
    },
    Row {
        code: code::NOT_CONVERGED,
        name: "not-converged",
        message: "the equation of state found no solution: use a state further from the critical point",
    },
    Row {
        code: code::BAD_COMPOSITION,
        name: "bad-composition",
        message: "a composition is not usable: fractions must be positive, sum to one, and every pair must be known",
    },
    Row { code: code::UNKNOWN_UNIT, name: "unknown-unit", message: "a unit is not known for that quantity" },
    Row {
        code: code::MALFORMED_TEXT,
        name: "malformed-text",
        message: "a text is not a reading in JSON: see the line named",
    },
    Row { code: code::NULL_POINTER, name: "null-pointer", message: "a pointer argument is null" },
    Row {
        code: code::BAD_STRUCT_SIZE,
        name: "bad-struct-size",
        message: "struct_size is not set: initialise the structure with its init function",
    },
    Row {
        code: code::VERSION_MISMATCH,
        name: "version-mismatch",
        message: "header and library do not belong together: rebuild with the header of this library",
    },
    Row {
        code: code::NO_VALID_TEST,
        name: "no-valid-test",
        message: "the protocol has no valid test at these conditions: weigh the charge in, or come back in other weather",
    },
    Row {
        code: code::NOT_AVAILABLE,
        name: "not-available",
        message: "no trustworthy answer is known: nothing is published for it, or the rule does not apply",
    },
];

/// The row of a status number, if there is one.
#[must_use]
pub fn row(code: i32) -> Option<&'static Row> {
    TABLE.iter().find(|row| row.code == code)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_and_names_are_unique() {
        for (index, row) in TABLE.iter().enumerate() {
            assert!(!row.message.is_empty());
            for other in &TABLE[index + 1..] {
                assert_ne!(row.code, other.code);
                assert_ne!(row.name, other.name);
            }
        }
    }
}
