//! What a visit to a unit computes besides the charge: so far, whether what stands in a bottle or in a unit at rest has
//! the pressure that it should have.
//!
//! Works from the saturation curves alone, so that an instrument links only the refrigerants that it names. What else
//! in the catalogue would have such a pressure is asked of [`crate::refrigerant::matches`].

mod account;
mod account_answers;
mod answers;
mod recovered;
pub mod standing;

pub use account::{
    Addition, CHARGE_TOLERANCE, ChargeAccount, ExpectedCharge, LeakRate, SCALE_SHARE, Start, Weighing, charge_account,
    leak_rate,
};
pub use account_answers::{ChargeBalance, RecoveredBalance, RoomVerdict};
pub use recovered::{Recovery, RecoveryFinding, recovery};
pub use standing::{Standing, StandingFinding, standing_check};
