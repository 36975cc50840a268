//! The trial: how well a diagnosis does on units whose state is known, beside other ways to judge the same readings.
//!
//! Simulated units of the rig, in three fleets that differ in their models: one to tune on, one to develop against, one
//! sealed until the end. A judge sees what instruments show and no more; what it says is held against what was wrong.
//! What the rig gets wrong, every judge is tried on: these are figures of a simulation, and no promise for the field.

pub mod conditions;
pub mod fleet;
pub mod plan;
pub mod recipe;
pub mod row;
pub mod sealed;
pub mod sha256;
pub mod visit;
