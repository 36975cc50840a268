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

mod account;
mod accuracies;
mod air;
mod airflow;
mod answer;
#[cfg(feature = "eos")]
mod capacity;
mod catalogue;
mod coil;
mod cylinder;
mod diagnosis;
mod diagnosis_options;
mod evacuation;
mod evidence;
mod finding;
mod full;
mod generated;
mod handle;
mod limits;
#[cfg(feature = "eos")]
mod line_pressure;
mod lineset;
mod panic;
mod performance;
mod pressure;
#[cfg(feature = "eos")]
mod pressure_test;
mod reading;
mod recovery;
#[cfg(feature = "eos")]
mod retrofit;
#[cfg(feature = "rig")]
mod rig;
mod safety;
mod saturated;
mod saturation;
mod standing;
#[cfg(feature = "eos")]
mod state;
mod status;
mod target;
mod target_grid;
#[cfg(feature = "eos")]
mod transport;
mod tube;
mod tube_rating;
mod uncertain;
mod version;
