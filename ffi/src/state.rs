//! States from the equations of state, in C: a plain structure that the caller owns.

use crate::answer::{Answer, status};
use crate::full::{RefrigerantFull, record};
use crate::generated::codes::{
    SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_OK, SATLINE_STATUS_UNKNOWN_CHOICE,
};
use satline::eos::{PerComponent, PhaseKind, Properties, Reference, StateInput};

/// How many components a state has room for.
pub const SATLINE_STATE_COMPONENTS: usize = 8;

/// Reference state: 200 kJ/kg and 1 kJ/(kg K) for saturated liquid at 0 degrees Celsius.
pub const SATLINE_REFERENCE_IIR: i32 = 0;
/// Reference state: zero for saturated liquid at -40 degrees Celsius.
pub const SATLINE_REFERENCE_ASHRAE: i32 = 1;
/// Reference state: zero for saturated liquid at the standard atmosphere, 101325 Pa.
pub const SATLINE_REFERENCE_NBP: i32 = 2;

/// Phase: liquid. Numbers in use never change; 0 before a state is computed.
pub const SATLINE_PHASE_LIQUID: i32 = 1;
/// Phase: vapour.
pub const SATLINE_PHASE_VAPOR: i32 = 2;
/// Phase: liquid and vapour together.
pub const SATLINE_PHASE_TWO_PHASE: i32 = 3;
/// Phase: at or above the critical temperature and pressure.
pub const SATLINE_PHASE_SUPERCRITICAL: i32 = 4;

/// Bit of satline_state.defined: both heat capacities and the speed of sound are set; they belong to one phase.
pub const SATLINE_DEFINED_HEAT_CAPACITIES: u32 = 1;
/// Bit of satline_state.defined: quality and the mass fractions of both phases are set; they belong to two phases.
pub const SATLINE_DEFINED_QUALITY: u32 = 2;

/// A state of a refrigerant, by mass. Start with satline_state_init. What is not defined is 0.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct State {
    /// sizeof(satline_state), set by satline_state_init.
    pub struct_size: u32,
    /// SATLINE_DEFINED_... bits. At a quality of exactly 0 or 1 all are set: the heat capacities and the speed of sound
    /// are then those of the saturated liquid or vapour.
    pub defined: u32,
    /// SATLINE_PHASE_...; at a quality of exactly 0 liquid, of exactly 1 vapour.
    pub phase: i32,
    /// How many components the refrigerant has.
    pub component_count: u32,
    /// Kelvin.
    pub temperature_k: f64,
    /// Pascals, absolute.
    pub pressure_pa: f64,
    /// Of two phases the mass of both over their volume.
    pub density_kg_m3: f64,
    /// By the reference state, as are entropy and internal energy.
    pub enthalpy_j_kg: f64,
    pub entropy_j_kg_k: f64,
    pub internal_energy_j_kg: f64,
    /// Heat capacity at constant pressure.
    pub specific_heat_j_kg_k: f64,
    /// Heat capacity at constant volume.
    pub isochoric_specific_heat_j_kg_k: f64,
    pub speed_of_sound_m_s: f64,
    /// The vapour's share of the mass, 0 to 1.
    pub quality: f64,
    /// Mass fractions of the components in the liquid of two phases, in the order of ASHRAE 34.
    pub liquid_mass_fraction: [f64; SATLINE_STATE_COMPONENTS],
    /// Mass fractions of the components in the vapour of two phases.
    pub vapor_mass_fraction: [f64; SATLINE_STATE_COMPONENTS],
}

// A state's layout is part of the binary interface.
const _: () = assert!(size_of::<State>() == 16 + 10 * 8 + 2 * 8 * SATLINE_STATE_COMPONENTS);
const _: () = assert!(satline::eos::MAX_COMPONENTS <= SATLINE_STATE_COMPONENTS);

impl State {
    const SIZE: u32 = size_of::<Self>() as u32;

    const EMPTY: Self = Self {
        struct_size: Self::SIZE,
        defined: 0,
        phase: 0,
        component_count: 0,
        temperature_k: 0.0,
        pressure_pa: 0.0,
        density_kg_m3: 0.0,
        enthalpy_j_kg: 0.0,
        entropy_j_kg_k: 0.0,
        internal_energy_j_kg: 0.0,
        specific_heat_j_kg_k: 0.0,
        isochoric_specific_heat_j_kg_k: 0.0,
        speed_of_sound_m_s: 0.0,
        quality: 0.0,
        liquid_mass_fraction: [0.0; SATLINE_STATE_COMPONENTS],
        vapor_mass_fraction: [0.0; SATLINE_STATE_COMPONENTS],
    };

    fn of(state: &satline::eos::State, component_count: usize) -> Self {
        let one = state.isobaric_heat_capacity.is_some();
        let two = state.quality.is_some();
        let fractions = |of_phase: Option<PerComponent>| {
            let mut room = [0.0; SATLINE_STATE_COMPONENTS];
            for (place, fraction) in room.iter_mut().zip(of_phase.unwrap_or_default()) {
                *place = fraction;
            }
            room
        };
        Self {
            struct_size: Self::SIZE,
            defined: if one { SATLINE_DEFINED_HEAT_CAPACITIES } else { 0 }
                | if two { SATLINE_DEFINED_QUALITY } else { 0 },
            phase: match state.phase {
                PhaseKind::Liquid => SATLINE_PHASE_LIQUID,
                PhaseKind::Vapor => SATLINE_PHASE_VAPOR,
                PhaseKind::TwoPhase => SATLINE_PHASE_TWO_PHASE,
                PhaseKind::Supercritical => SATLINE_PHASE_SUPERCRITICAL,
            },
            component_count: component_count as u32,
            temperature_k: state.temperature,
            pressure_pa: state.pressure,
            density_kg_m3: state.density,
            enthalpy_j_kg: state.enthalpy,
            entropy_j_kg_k: state.entropy,
            internal_energy_j_kg: state.internal_energy,
            specific_heat_j_kg_k: state.isobaric_heat_capacity.unwrap_or(0.0),
            isochoric_specific_heat_j_kg_k: state.isochoric_heat_capacity.unwrap_or(0.0),
            speed_of_sound_m_s: state.speed_of_sound.unwrap_or(0.0),
            quality: state.quality.unwrap_or(0.0),
            liquid_mass_fraction: fractions(state.liquid_mass_fractions),
            vapor_mass_fraction: fractions(state.vapor_mass_fractions),
        }
    }
}

/// Computes a state and writes it; leaves the caller's as it was on failure.
///
/// # Safety
/// As for the functions of the header.
unsafe fn compute(refrigerant: *const RefrigerantFull, input: StateInput, reference: i32, state: *mut State) -> i32 {
    let found = || -> Answer<()> {
        // SAFETY: the header asks for a state, whose first member may be read.
        let place = unsafe { state.as_mut() }.ok_or(SATLINE_STATUS_NULL_POINTER)?;
        if place.struct_size != State::SIZE {
            return Err(SATLINE_STATUS_BAD_STRUCT_SIZE);
        }
        // SAFETY: the header asks for a handle.
        let record = unsafe { record(refrigerant) }?;
        let reference = match reference {
            SATLINE_REFERENCE_IIR => Reference::Iir,
            SATLINE_REFERENCE_ASHRAE => Reference::Ashrae,
            SATLINE_REFERENCE_NBP => Reference::NormalBoiling,
            _ => return Err(SATLINE_STATUS_UNKNOWN_CHOICE),
        };
        let found = Properties::of(record.model, reference).and_then(|properties| properties.state(input));
        *place = State::of(&found.map_err(status)?, record.identity().components.len());
        Ok(())
    };
    found().err().unwrap_or(SATLINE_STATUS_OK)
}

/// Empties a state. struct_size: sizeof(satline_state), so that a newer library knows how large yours is. Not in the
/// library for microcontrollers, nor are the functions below.
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_state_init(state: *mut State, struct_size: u32) -> i32 {
    let empty = || if struct_size == State::SIZE { Ok(State::EMPTY) } else { Err(SATLINE_STATUS_BAD_STRUCT_SIZE) };
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { crate::answer::answer(state, empty) }
}

/// The state at a temperature and a pressure, from the equation of state. Between dew and bubble pressure these do not
/// fix a state, which is SATLINE_STATUS_OUT_OF_RANGE: give a quality instead of one of them.
///
/// temperature_k: kelvin. pressure_pa: pascals, absolute. reference: SATLINE_REFERENCE_...
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE (outside the equation's range, inside the two-phase region, or the refrigerant has
/// no saturated liquid at the reference state), SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_NOT_CONVERGED (so near to the
/// critical point), SATLINE_STATUS_UNKNOWN_CHOICE (no such reference), SATLINE_STATUS_BAD_STRUCT_SIZE,
/// SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_VERSION_MISMATCH.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_state_tp(
    refrigerant: *const RefrigerantFull,
    temperature_k: f64,
    pressure_pa: f64,
    reference: i32,
    state: *mut State,
) -> i32 {
    let input = StateInput::TemperaturePressure { temperature: temperature_k, pressure: pressure_pa };
    // SAFETY: the header states what the pointers must be.
    unsafe { compute(refrigerant, input, reference, state) }
}

/// The state at a pressure and an enthalpy by the reference state, in one phase or two.
///
/// pressure_pa: pascals, absolute. enthalpy_j_kg: joules a kilogram. reference: SATLINE_REFERENCE_...
///
/// Status: as satline_state_tp.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_state_ph(
    refrigerant: *const RefrigerantFull,
    pressure_pa: f64,
    enthalpy_j_kg: f64,
    reference: i32,
    state: *mut State,
) -> i32 {
    let input = StateInput::PressureEnthalpy { pressure: pressure_pa, enthalpy: enthalpy_j_kg };
    // SAFETY: the header states what the pointers must be.
    unsafe { compute(refrigerant, input, reference, state) }
}

/// The state at a pressure and an entropy by the reference state, in one phase or two.
///
/// pressure_pa: pascals, absolute. entropy_j_kg_k: joules a kilogram and kelvin. reference: SATLINE_REFERENCE_...
///
/// Status: as satline_state_tp.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_state_ps(
    refrigerant: *const RefrigerantFull,
    pressure_pa: f64,
    entropy_j_kg_k: f64,
    reference: i32,
    state: *mut State,
) -> i32 {
    let input = StateInput::PressureEntropy { pressure: pressure_pa, entropy: entropy_j_kg_k };
    // SAFETY: the header states what the pointers must be.
    unsafe { compute(refrigerant, input, reference, state) }
}

/// The state at a temperature and a quality: 0 is saturated liquid (the bubble point), 1 saturated vapour (the dew
/// point).
///
/// temperature_k: kelvin. quality: the vapour's share of the mass, 0 to 1. reference: SATLINE_REFERENCE_...
///
/// Status: as satline_state_tp.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_state_tq(
    refrigerant: *const RefrigerantFull,
    temperature_k: f64,
    quality: f64,
    reference: i32,
    state: *mut State,
) -> i32 {
    let input = StateInput::TemperatureQuality { temperature: temperature_k, quality };
    // SAFETY: the header states what the pointers must be.
    unsafe { compute(refrigerant, input, reference, state) }
}

/// The state at a pressure and a quality: 0 is saturated liquid (the bubble point), 1 saturated vapour (the dew point).
///
/// pressure_pa: pascals, absolute. quality: the vapour's share of the mass, 0 to 1. reference: SATLINE_REFERENCE_...
///
/// Status: as satline_state_tp.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_state_pq(
    refrigerant: *const RefrigerantFull,
    pressure_pa: f64,
    quality: f64,
    reference: i32,
    state: *mut State,
) -> i32 {
    let input = StateInput::PressureQuality { pressure: pressure_pa, quality };
    // SAFETY: the header states what the pointers must be.
    unsafe { compute(refrigerant, input, reference, state) }
}
