//! The trial: how well a diagnosis does on units whose state is known, beside other ways to judge the same readings.
//!
//! Simulated units of the rig, in three fleets that differ in their models: one to tune on, one to develop against, one
//! sealed until the end. A judge sees what instruments show and no more; what it says is held against what was wrong.
//! What the rig gets wrong, every judge is tried on: these are figures of a simulation, and no promise for the field.

pub mod ablation;
pub mod amounts;
pub mod by_protocol;
pub mod by_regression;
pub mod by_signs;
pub mod by_subcooling;
pub mod calibration;
pub mod conditions;
pub mod coverage;
pub mod engine;
pub mod expected;
pub mod features;
pub mod fleet;
pub mod harm;
pub mod interval;
pub mod judge;
pub mod linear;
pub mod measured;
pub mod outcome;
pub mod page;
pub mod plan;
pub mod prevalence;
pub mod recipe;
pub mod row;
pub mod sealed;
pub mod sha256;
pub mod short;
pub mod visit;
