//! The standing-pressure check in C, and what else would have such a pressure.

use crate::answer::{Answer, answer, given, status, unless_unset};
use crate::generated::codes::{
    SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_OK, SATLINE_STATUS_OUT_OF_RANGE,
    SATLINE_STATUS_UNKNOWN_CHOICE, SATLINE_STATUS_UNKNOWN_REFRIGERANT,
};
use crate::generated::handles;
use crate::handle::{Refrigerant, curves};
use satline::quantity::{Pressure, Temperature};
use satline::refrigerant::matches;
use satline::visit::standing::{self, Liquid, standing_check};

/// Most temperatures that a standing-pressure check takes.
pub const SATLINE_STANDING_TEMPERATURES: usize = 16;
/// How many causes a standing-pressure check has room for.
pub const SATLINE_STANDING_CAUSES: usize = 8;

/// Bit of satline_standing_finding.given: above_bubble_k is set.
pub const SATLINE_STANDING_GIVEN_ABOVE_BUBBLE: u32 = 1;
/// Bit of satline_standing_finding.given: the three values of non_condensables are set.
pub const SATLINE_STANDING_GIVEN_NON_CONDENSABLES: u32 = 2;
/// Bit of satline_standing_finding.given: unseen_at_most_pa is set.
pub const SATLINE_STANDING_GIVEN_UNSEEN: u32 = 4;

/// What is measured at a bottle or a unit at rest, and how well. Start with satline_standing_init.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct Standing {
    /// sizeof(satline_standing), set by satline_standing_init.
    pub struct_size: u32,
    /// SATLINE_STANDING_LIQUID_...: what is known of the liquid; unknown by satline_standing_init.
    pub liquid: i32,
    /// The pressure, pascals, absolute.
    pub pressure_pa: f64,
    /// One standard uncertainty of the pressure, pascals; -1 (by satline_standing_init) for that of a gauge with a limit
    /// of error of 3.5 psi.
    pub pressure_uncertainty_pa: f64,
    /// One standard uncertainty of each temperature, kelvin; -1 (by satline_standing_init) for that of a thermometer
    /// with a limit of error of 0.1 % and 1.3 degrees Fahrenheit.
    pub temperature_uncertainty_k: f64,
    /// By how much the temperatures may differ, kelvin; -1 (by satline_standing_init) for 1 K.
    pub largest_spread_k: f64,
}

/// The answer to a standing-pressure check. Start with satline_standing_finding_init. What is not given is 0.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct StandingFinding {
    /// sizeof(satline_standing_finding), set by satline_standing_finding_init.
    pub struct_size: u32,
    /// SATLINE_STANDING_OUTCOME_...; 0 before a check.
    pub outcome: i32,
    /// SATLINE_STANDING_REASON_...
    pub reason: i32,
    /// SATLINE_STANDING_ADVICE_...
    pub advice: i32,
    /// Bit n is set for caution n (SATLINE_STANDING_CAUTION_...).
    pub cautions: u32,
    /// SATLINE_STANDING_GIVEN_... bits.
    pub given: u32,
    /// SATLINE_STANDING_CAUSE_..., most likely first; 0 after the last.
    pub causes: [i32; SATLINE_STANDING_CAUSES],
    /// The temperature by which it is judged, that of the coldest part, kelvin.
    pub temperature_k: f64,
    /// One standard uncertainty of it, the differences between the parts included, kelvin.
    pub temperature_uncertainty_k: f64,
    /// Warmest less coldest part, kelvin.
    pub spread_k: f64,
    /// Bubble pressure at that temperature, pascals, absolute.
    pub bubble_pressure_pa: f64,
    /// One standard uncertainty of measured less bubble pressure, pascals.
    pub bubble_uncertainty_pa: f64,
    /// Dew pressure at that temperature, pascals, absolute.
    pub dew_pressure_pa: f64,
    /// One standard uncertainty of measured less dew pressure, pascals.
    pub dew_uncertainty_pa: f64,
    /// Bubble temperature at the measured pressure less that temperature, kelvin.
    pub above_bubble_k: f64,
    /// Partial pressure of non-condensables, should they be the cause and most of the refrigerant be liquid, pascals.
    pub non_condensables_pa: f64,
    /// One standard uncertainty of it, pascals.
    pub non_condensables_uncertainty_pa: f64,
    /// The same partial pressure where the liquid is nearly gone, pascals.
    pub non_condensables_at_most_pa: f64,
    /// Where the pressure fits: a partial pressure of non-condensables up to this would not have shown, pascals.
    pub unseen_at_most_pa: f64,
}

/// A refrigerant and how far its saturation lies from what was measured. This structure never changes.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct Match {
    /// The refrigerant.
    pub refrigerant: *const Refrigerant,
    /// 1 where it fits within two standard uncertainties, else 0.
    pub fits: i32,
    /// Always 0.
    pub reserved: i32,
    /// Measured temperature less the nearer end of the refrigerant's band from bubble to dew temperature at the measured
    /// pressure, kelvin; 0 inside. Negative: the pressure is too high for this refrigerant; positive: too low.
    pub distance_k: f64,
    /// Bubble temperature at the measured pressure, kelvin.
    pub bubble_temperature_k: f64,
    /// Dew temperature at the measured pressure, kelvin.
    pub dew_temperature_k: f64,
    /// One standard uncertainty of the distance, kelvin.
    pub standard_uncertainty_k: f64,
}

// Their layouts are part of the binary interface.
const _: () = assert!(size_of::<Standing>() == 40 && size_of::<StandingFinding>() == 152);
const _: () = assert!(standing::CAUSES_MAX < SATLINE_STANDING_CAUSES);

impl Standing {
    const SIZE: u32 = size_of::<Self>() as u32;

    const EMPTY: Self = Self {
        struct_size: Self::SIZE,
        liquid: Liquid::Unknown.number(),
        pressure_pa: 0.0,
        pressure_uncertainty_pa: -1.0,
        temperature_uncertainty_k: -1.0,
        largest_spread_k: -1.0,
    };
}

impl StandingFinding {
    const SIZE: u32 = size_of::<Self>() as u32;

    const EMPTY: Self = Self {
        struct_size: Self::SIZE,
        outcome: 0,
        reason: 0,
        advice: 0,
        cautions: 0,
        given: 0,
        causes: [0; SATLINE_STANDING_CAUSES],
        temperature_k: 0.0,
        temperature_uncertainty_k: 0.0,
        spread_k: 0.0,
        bubble_pressure_pa: 0.0,
        bubble_uncertainty_pa: 0.0,
        dew_pressure_pa: 0.0,
        dew_uncertainty_pa: 0.0,
        above_bubble_k: 0.0,
        non_condensables_pa: 0.0,
        non_condensables_uncertainty_pa: 0.0,
        non_condensables_at_most_pa: 0.0,
        unseen_at_most_pa: 0.0,
    };

    fn of(found: &standing::StandingFinding) -> Self {
        let bit = |given: bool, bit: u32| if given { bit } else { 0 };
        let partial = found.non_condensables;
        let mut causes = [0; SATLINE_STANDING_CAUSES];
        for (place, cause) in causes.iter_mut().zip(found.causes()) {
            *place = cause.number();
        }
        Self {
            struct_size: Self::SIZE,
            outcome: found.outcome.number(),
            reason: found.reason.number(),
            advice: found.advice.number(),
            cautions: found.caution_bits(),
            given: bit(found.above_bubble_k.is_some(), SATLINE_STANDING_GIVEN_ABOVE_BUBBLE)
                | bit(partial.is_some(), SATLINE_STANDING_GIVEN_NON_CONDENSABLES)
                | bit(found.unseen_at_most_pa.is_some(), SATLINE_STANDING_GIVEN_UNSEEN),
            causes,
            temperature_k: found.temperature_k,
            temperature_uncertainty_k: found.temperature_uncertainty_k,
            spread_k: found.spread_k,
            bubble_pressure_pa: found.bubble.value_pa,
            bubble_uncertainty_pa: found.bubble.standard_uncertainty_pa,
            dew_pressure_pa: found.dew.value_pa,
            dew_uncertainty_pa: found.dew.standard_uncertainty_pa,
            above_bubble_k: found.above_bubble_k.unwrap_or(0.0),
            non_condensables_pa: partial.map_or(0.0, |partial| partial.estimate.value_pa),
            non_condensables_uncertainty_pa: partial.map_or(0.0, |partial| partial.estimate.standard_uncertainty_pa),
            non_condensables_at_most_pa: partial.map_or(0.0, |partial| partial.at_most_pa),
            unseen_at_most_pa: found.unseen_at_most_pa.unwrap_or(0.0),
        }
    }
}

/// Empties the question. struct_size: sizeof(satline_standing), so that a newer library knows how large yours is.
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_standing_init(standing: *mut Standing, struct_size: u32) -> i32 {
    let empty =
        || if struct_size == Standing::SIZE { Ok(Standing::EMPTY) } else { Err(SATLINE_STATUS_BAD_STRUCT_SIZE) };
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { answer(standing, empty) }
}

/// Empties the answer. struct_size: sizeof(satline_standing_finding).
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_standing_finding_init(finding: *mut StandingFinding, struct_size: u32) -> i32 {
    let right = struct_size == StandingFinding::SIZE;
    let empty = || if right { Ok(StandingFinding::EMPTY) } else { Err(SATLINE_STATUS_BAD_STRUCT_SIZE) };
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { answer(finding, empty) }
}

/// Whether the pressure of a bottle, or of a unit at rest, is the one its refrigerant has at its temperature.
///
/// temperatures_k: count temperatures in kelvin (1 to SATLINE_STANDING_TEMPERATURES), one of every part that may hold
/// liquid. They are judged by the coldest, whose liquid sets the pressure; where they differ by more than allowed, the
/// outcome is SATLINE_STANDING_OUTCOME_NOT_JUDGED. A pressure does not identify a refrigerant, and non-condensables are
/// removed by recovering, evacuating and recharging, never by purging: show the finding's advice and cautions.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE (also for a temperature without liquid, see satline_refrigerant_limits),
/// SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_UNKNOWN_CHOICE (liquid), SATLINE_STATUS_BAD_STRUCT_SIZE (question or answer
/// not initialised), SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_VERSION_MISMATCH.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_standing_check(
    refrigerant: *const Refrigerant,
    standing: *const Standing,
    temperatures_k: *const f64,
    count: u32,
    finding: *mut StandingFinding,
) -> i32 {
    let check = || -> Answer<()> {
        // SAFETY: the header asks for a handle and a question.
        let (curves, standing) = unsafe { (curves(refrigerant)?, given(standing)?) };
        // SAFETY: the header asks for an answer that may be read and written.
        let finding = unsafe { finding.as_mut() }.ok_or(SATLINE_STATUS_NULL_POINTER)?;
        if standing.struct_size != Standing::SIZE || finding.struct_size != StandingFinding::SIZE {
            return Err(SATLINE_STATUS_BAD_STRUCT_SIZE);
        }
        if temperatures_k.is_null() {
            return Err(SATLINE_STATUS_NULL_POINTER);
        }
        let count = usize::try_from(count).unwrap_or(usize::MAX);
        if count > SATLINE_STANDING_TEMPERATURES {
            return Err(SATLINE_STATUS_OUT_OF_RANGE);
        }
        // SAFETY: not null, and the header asks for count temperatures.
        let kelvins = unsafe { core::slice::from_raw_parts(temperatures_k, count) };
        let pressure = Pressure::from_pascals(standing.pressure_pa).map_err(status)?;
        let mut temperatures = [Temperature::from_kelvin(273.15).map_err(status)?; SATLINE_STANDING_TEMPERATURES];
        for (place, kelvin) in temperatures.iter_mut().zip(kelvins) {
            *place = Temperature::from_kelvin(*kelvin).map_err(status)?;
        }
        let check = standing::Standing {
            liquid: Liquid::from_number(standing.liquid).ok_or(SATLINE_STATUS_UNKNOWN_CHOICE)?,
            pressure_uncertainty_pa: unless_unset(standing.pressure_uncertainty_pa),
            temperature_uncertainty_k: unless_unset(standing.temperature_uncertainty_k),
            largest_spread_k: unless_unset(standing.largest_spread_k),
            ..standing::Standing::new(curves, pressure, temperatures.get(..count).unwrap_or_default())
        };
        *finding = StandingFinding::of(&standing_check(&check).map_err(status)?);
        Ok(())
    };
    check().err().unwrap_or(SATLINE_STATUS_OK)
}

/// What could be in this bottle: the refrigerants whose saturation is nearest to a pressure and a temperature measured
/// at rest, with liquid there. Those that fit come first, by how near the temperature is to their bubble temperature,
/// then the nearest others. The list says what is possible, not what is inside: several refrigerants fit almost any
/// pressure, mixtures fit all in between, and air adds to it. A program that calls it carries every refrigerant.
///
/// pressure_pa: pascals, absolute. temperature_k: kelvin. The uncertainties are standard ones, in pascals and kelvin; -1
/// for those of usual instruments (see satline_standing). nearest: room for that many; count: how many were written, at
/// most 24.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE, SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_refrigerant_matches(
    pressure_pa: f64,
    temperature_k: f64,
    pressure_uncertainty_pa: f64,
    temperature_uncertainty_k: f64,
    nearest: *mut Match,
    room: u32,
    count: *mut u32,
) -> i32 {
    let find = || -> Answer<u32> {
        if nearest.is_null() {
            return Err(SATLINE_STATUS_NULL_POINTER);
        }
        let pressure = Pressure::from_pascals(pressure_pa).map_err(status)?;
        let temperature = Temperature::from_kelvin(temperature_k).map_err(status)?;
        let uncertainties = (unless_unset(pressure_uncertainty_pa), unless_unset(temperature_uncertainty_k));
        let found = matches(pressure, temperature, uncertainties.0, uncertainties.1).map_err(status)?;
        let mut written = 0;
        for found in found.iter().take(usize::try_from(room).unwrap_or(usize::MAX)) {
            let handle = handles::ALL
                .iter()
                .copied()
                .find(|handle| core::ptr::eq(handle.core.cast(), found.refrigerant.curves))
                .ok_or(SATLINE_STATUS_UNKNOWN_REFRIGERANT)?;
            let row = Match {
                refrigerant: core::ptr::from_ref(handle),
                fits: i32::from(found.fits()),
                reserved: 0,
                distance_k: found.distance_k,
                bubble_temperature_k: found.bubble_temperature_k,
                dew_temperature_k: found.dew_temperature_k,
                standard_uncertainty_k: found.standard_uncertainty_k,
            };
            // SAFETY: not null, and the header asks for room for this many.
            unsafe { nearest.add(written as usize).write(row) };
            written += 1;
        }
        Ok(written)
    };
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(count, find) }
}
