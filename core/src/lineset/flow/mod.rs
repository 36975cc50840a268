//! What flows in the lines: pressure drop, lift, subcooling left, oil return and heat gain.
//!
//! A line is followed from one end to the other in short pieces, with density, viscosity and enthalpy from the equation
//! of state, so that pressure, mass and energy agree at every joint. What comes out says what a technician must decide:
//! [`liquid_line`] whether liquid reaches the metering device, [`vapor_line`] what the suction or discharge line costs,
//! whether oil comes back, and by how much the superheat at the compressor differs from that at the coil.

mod answers;
mod fluid;
mod heat;
mod lift;
mod liquid;
mod march;
mod oil;
mod run;
mod vapor;

pub use answers::{LineAdvice, LineCaution};
pub use heat::{DEFAULT_OUTSIDE_COEFFICIENT_W_M2_K, Insulation, LineHeat, Surroundings};
pub use lift::{STANDARD_GRAVITY, lift_pressure_pa, lift_pressure_saturated_pa, mass_flow_kg_s};
pub use liquid::{FLASH_COVERAGE, LiquidLine, LiquidLineResult, liquid_line};
pub use oil::{DEFAULT_OIL_DENSITY_KG_M3, oil_return_mass_flux_kg_s_m2};
pub use run::{LineEnd, Run};
pub use vapor::{
    DEFAULT_CLEARANCE, DEW_LOSS_LIMIT_K, HeatGain, Riser, VaporDuty, VaporLine, VaporLineResult, vapor_line,
};
