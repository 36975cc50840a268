//! Refrigerant properties and charge diagnostics for air conditioning.
//!
//! Readings go in, findings come out: see [`reading::Reading`]. The saturation curves of a refrigerant are reached as
//! a static, such as [`saturation::R410A`]; its full record is in [`refrigerant`].
//!
//! The package uses no heap, no `std` and no `unsafe`, and does not panic. Feature `eos` adds the equations of state
//! behind the curves, feature `text` the reading and writing of JSON and plain words.
#![no_std]
#![forbid(unsafe_code)]

#[cfg(any(feature = "text", test))]
extern crate alloc;
#[cfg(test)]
extern crate std;

pub mod air;
pub mod bounds;
#[cfg(feature = "eos")]
pub mod capacity;
pub mod charge;
pub mod diagnosis;
#[cfg(feature = "eos")]
pub mod eos;
pub mod error;
pub mod lineset;
mod math;
mod nearest;
pub mod quantity;
pub mod reading;
pub mod refrigerant;
#[cfg(feature = "rig")]
pub mod rig;
pub mod safety;
pub mod saturation;
#[cfg(feature = "text")]
pub mod text;
pub mod uncertain;
pub mod visit;

pub use diagnosis::{Finding, diagnose};
pub use error::Error;
pub use reading::{Field, Reading};
