//! What a visit to a unit computes besides the charge: whether what stands in a bottle or in a unit at rest has the
//! pressure that it should have, whether a unit is tight and dry, and whether its tubes are strong enough.
//!
//! Works from the saturation curves alone, but for the pressure test (feature `eos`), so that an instrument links only
//! the refrigerants that it names. What else in the catalogue would have such a pressure is asked of
//! [`crate::refrigerant::matches`].

mod answers;
pub mod evacuation;
pub mod line_drop;
#[cfg(feature = "eos")]
mod nitrogen;
#[cfg(feature = "eos")]
pub mod pressure_test;
pub mod standing;
pub mod tube_rating;
mod water;

pub use evacuation::{Decay, DecayFinding, decay_test, frost_point, water_saturation_pressure};
pub use line_drop::{LineDrop, LineDropFinding, line_temperature_drop};
#[cfg(feature = "eos")]
pub use nitrogen::{expected_nitrogen_pressure, nitrogen_density_kg_m3};
#[cfg(feature = "eos")]
pub use pressure_test::{PressureTest, PressureTestFinding};
pub use standing::{Standing, StandingFinding, standing_check};
pub use tube_rating::{CopperTube, TubeRating, copper_tube_rating};
