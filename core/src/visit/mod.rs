//! What a visit to a unit computes besides the charge: whether what stands in a bottle or in a unit at rest has the
//! pressure that it should have; whether a unit is tight and dry, and its tubes strong enough; airflow by static pressure,
//! a maker's own chart, delivered performance; the charge by the scale, leaks and recovery; and what another refrigerant
//! would do in the unit.
//!
//! Works from the saturation curves alone, but for the pressure test and the comparison of refrigerants (feature `eos`),
//! so that an instrument links only the refrigerants that it names. What else in the catalogue would have such a pressure
//! is asked of [`crate::refrigerant::matches`].

mod account;
mod account_answers;
pub mod airflow;
mod answers;
pub mod charge_fault;
pub mod evacuation;
pub mod grid;
pub mod line_drop;
#[cfg(feature = "eos")]
mod nitrogen;
pub mod performance;
#[cfg(feature = "eos")]
pub mod pressure_test;
mod recovered;
#[cfg(feature = "eos")]
pub mod retrofit;
pub mod standing;
pub mod target_grid;
pub mod tube_rating;

pub use account::{
    Addition, CHARGE_TOLERANCE, ChargeAccount, ExpectedCharge, LeakRate, SCALE_SHARE, Start, Weighing, charge_account,
    leak_rate,
};
pub use account_answers::{ChargeBalance, RecoveredBalance, RoomVerdict};
pub use evacuation::{Decay, DecayFinding, decay_test, frost_point, water_saturation_pressure};
pub use line_drop::{LineDrop, LineDropFinding, line_temperature_drop};
#[cfg(feature = "eos")]
pub use nitrogen::{expected_nitrogen_pressure, nitrogen_density_kg_m3};
#[cfg(feature = "eos")]
pub use pressure_test::{PressureTest, PressureTestFinding};
pub use recovered::{Recovery, RecoveryFinding, recovery};
pub use standing::{Standing, StandingFinding, standing_check};
pub use tube_rating::{CopperTube, TubeRating, copper_tube_rating};
