//! The line set: the tubes between the outdoor and the indoor unit, and what is in them.
//!
//! A tube is named by its size ([`Tube::named`]) or given by its diameters. What it holds per length follows from the
//! density of the refrigerant in it ([`LineDensities`]): from the equations of state with feature `eos`, else from the
//! compact curves ([`Compact`]). [`line_set_charge`] puts both lines together, less what the factory charge covers.
//!
//! What their length and height cost, with feature `eos`: [`liquid_line`] and [`vapor_line`].

mod answers;
mod charge;
mod compact;
mod density;
#[cfg(feature = "eos")]
mod exact;
#[cfg(feature = "eos")]
mod flow;
mod friction;
mod set;
mod sizes;
mod slip;
mod tube;

pub use answers::{ChargeAction, ChargeAdvice, ChargeCaution, LinePhase};
pub use charge::{LineCharge, LineSetCharge, line_set_charge};
pub use compact::{Compact, LIQUID_ERROR, VAPOR_ERROR, flashed_error};
pub use density::{Behind, Flashed, LineDensities};
#[cfg(feature = "eos")]
pub use flow::*;
pub use friction::{FRICTION_ALLOWANCE, Fitting, Fittings, LAMINAR_TO, TURBULENT_FROM, friction_factor};
pub use set::{
    Covered, DEFAULT_LENGTH_UNCERTAINTY_M, DEFAULT_TEMPERATURE_UNCERTAINTY_K, Line, LineSet, OutdoorDevice,
    default_pressure_uncertainty_pa,
};
pub use slip::{SLIP_ALLOWANCE, void_fraction};
pub use tube::{DRAWN_COPPER_ROUGHNESS_M, Temper, Tube};
