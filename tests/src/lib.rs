//! Shared helpers of the checks.

pub mod vectors;

/// The README's Rust example, compiled and run as a documentation test.
#[cfg(doctest)]
#[doc = include_str!("../../README.md")]
pub struct Readme;
