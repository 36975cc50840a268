//! Capacity and efficiency from the refrigerant's side: what pressures, temperatures and either a mass flow or the
//! compressor's power say (feature `eos`).
//!
//! Enthalpies at the ports come from the equation of state. The mass flow is measured, or follows from the compressor's
//! power: the share of it that stays in the gas, over the rise of enthalpy from suction to discharge.

mod circuit;
mod state;

pub use circuit::{Circuit, CircuitCapacity, EvaporatorEnd, Probe, USUAL_WORK_SHARE};
