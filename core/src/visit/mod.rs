//! What a visit to a unit computes besides the charge: whether what stands in a bottle or in a unit at rest has the pressure
//! that it should have, airflow by static pressure, a maker's own chart, delivered performance and, with the equations of
//! state, what another refrigerant would do in the unit.
//!
//! All but the last works from the saturation curves alone, so that an instrument links only the refrigerants that it
//! names. What else in the catalogue would have such a pressure is asked of [`crate::refrigerant::matches`].

pub mod airflow;
mod answers;
pub mod charge_fault;
pub mod grid;
pub mod performance;
#[cfg(feature = "eos")]
pub mod retrofit;
pub mod standing;
pub mod target_grid;

pub use standing::{Standing, StandingFinding, standing_check};
