//! The line set: the tubes between the outdoor and the indoor unit, and what is in them.
//!
//! A tube is named by its size ([`Tube::named`]) or given by its diameters.

#[cfg(feature = "eos")]
mod flow;
mod friction;
mod sizes;
mod tube;

#[cfg(feature = "eos")]
pub use flow::*;
pub use friction::{FRICTION_ALLOWANCE, Fitting, Fittings, LAMINAR_TO, TURBULENT_FROM, friction_factor};
pub use tube::{DRAWN_COPPER_ROUGHNESS_M, Temper, Tube};
