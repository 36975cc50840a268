//! The C interface of satline. `include/satline.h` is made from these files by `satline-header`; so the doc comments
//! here are written for a reader of the header.
//!
//! Every function checks its pointers for null, computes, and only then writes its result, so a failure leaves the
//! caller's memory as it was. There is no heap, no global state and no callback.
#![no_std]
// What a caller must promise is the same for every function and stands once, at the top of the header.
#![allow(clippy::missing_safety_doc)]

#[cfg(any(feature = "std", test))]
extern crate std;

mod air;
mod answer;
#[cfg(feature = "eos")]
mod capacity;
mod catalogue;
mod coil;
mod finding;
#[cfg(feature = "eos")]
mod full;
mod generated;
mod handle;
mod limits;
#[cfg(feature = "eos")]
mod line_pressure;
// Needs full handles, which so far come with eos; the functions named compact need no more of it.
#[cfg(feature = "eos")]
mod lineset;
mod panic;
mod pressure;
mod reading;
mod saturation;
mod standing;
#[cfg(feature = "eos")]
mod state;
mod status;
mod target;
mod tube;
#[cfg(feature = "eos")]
mod uncertain;
mod version;
