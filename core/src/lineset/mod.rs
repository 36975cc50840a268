//! The line set: the tubes between the outdoor and the indoor unit, and what is in them.
//!
//! A tube is named by its size ([`Tube::named`]) or given by its diameters.

mod sizes;
mod tube;

pub use tube::{DRAWN_COPPER_ROUGHNESS_M, Temper, Tube};
