//! Shared helpers of the checks.

pub mod commission;
pub mod estimate;
pub mod fleet;
pub mod guard;
pub mod measured;
pub mod schemas;
pub mod signatures;
pub mod trial;
pub mod vectors;

use satline::eos::Model;
use satline::refrigerant::{self, Confidence};

/// The models that rest on published parameters alone: those which an outside library has too.
pub fn published() -> impl Iterator<Item = &'static Model> {
    let published = |confidence| confidence == Confidence::Published;
    refrigerant::ALL.iter().filter(move |entry| published(entry.confidence)).map(|entry| entry.model)
}

/// The README's Rust example, compiled and run as a documentation test.
#[cfg(doctest)]
#[doc = include_str!("../../README.md")]
pub struct Readme;
