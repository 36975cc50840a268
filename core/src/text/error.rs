//! What is wrong with a text, and where.

use crate::error::{Error, code};
use alloc::string::String;
use core::fmt;

/// A text that is not a reading, with the place and what to do.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct TextError {
    /// The line, from 1.
    pub line: usize,
    /// Which reading of an array, from 1; none for a single reading or when the array itself is broken.
    pub reading: Option<usize>,
    /// The field, as it stands in the text.
    pub field: Option<String>,
    /// What was wrong and what to do.
    pub message: String,
    /// The number of the error in the table of [`crate::error`].
    pub code: i32,
}

impl fmt::Display for TextError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "line {}", self.line)?;
        if let Some(reading) = self.reading {
            write!(out, ", reading {reading}")?;
        }
        if let Some(field) = &self.field {
            write!(out, ", field {field}")?;
        }
        write!(out, ": {}", self.message)
    }
}

impl core::error::Error for TextError {}

/// A fault before its place is known.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Fault {
    pub code: i32,
    pub message: String,
}

impl Fault {
    pub(super) fn new(code: i32, message: impl Into<String>) -> Self {
        Self { code, message: message.into() }
    }

    /// A fault of form: not the JSON that was expected.
    pub(super) fn form(message: impl Into<String>) -> Self {
        Self::new(code::MALFORMED_TEXT, message)
    }
}

impl From<Error> for Fault {
    fn from(error: Error) -> Self {
        Self::new(error.code(), alloc::format!("{error}"))
    }
}
