//! The decay test of an evacuated unit in C.

use crate::answer::{Answer, answer, given, status, unless_unset};
use crate::generated::codes::{SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_OK};
use satline::quantity::Temperature;
use satline::visit::evacuation::{self, DecayFinding, Sample, check_samples, decay_test};
use satline::visit::{frost_point, water_saturation_pressure};

/// How many causes a decay test has room for.
pub const SATLINE_DECAY_CAUSES: usize = 4;

/// Bit of satline_decay_finding.given: plateau_pa and its uncertainty are set.
pub const SATLINE_DECAY_GIVEN_PLATEAU: u32 = 1;
/// Bit of satline_decay_finding.given: time_constant_s is set.
pub const SATLINE_DECAY_GIVEN_TIME_CONSTANT: u32 = 2;
/// Bit of satline_decay_finding.given: reaches_limit_s is set.
pub const SATLINE_DECAY_GIVEN_REACHES_LIMIT: u32 = 4;
/// Bit of satline_decay_finding.given: frost_point_k is set.
pub const SATLINE_DECAY_GIVEN_FROST_POINT: u32 = 8;
/// Bit of satline_decay_finding.given: evidence_for_curve is set.
pub const SATLINE_DECAY_GIVEN_EVIDENCE: u32 = 16;

/// A pressure at a time. This structure never changes.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct PressureSample {
    /// Time since the valve to the pump was closed, seconds.
    pub time_s: f64,
    /// Absolute pressure, pascals.
    pub pressure_pa: f64,
}

/// How well the pressures after isolation are known and what is asked of them. Start with satline_decay_init.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct Decay {
    /// sizeof(satline_decay), set by satline_decay_init.
    pub struct_size: u32,
    /// Always 0.
    pub reserved: u32,
    /// Temperature of the coldest tube, kelvin.
    pub coldest_temperature_k: f64,
    /// One standard uncertainty of it, kelvin; -1 (by satline_decay_init) for that of a thermometer with a limit of error
    /// of 0.1 % and 1.3 degrees Fahrenheit.
    pub temperature_uncertainty_k: f64,
    /// Smallest step that the gauge shows, pascals; -1 (by satline_decay_init) for a micron of mercury, 0.1333 Pa.
    pub resolution_pa: f64,
    /// Scatter of one reading besides, one standard deviation, pascals; -1 (by satline_decay_init) for none.
    pub noise_pa: f64,
    /// One standard uncertainty of the gauge's scale as a share of its reading; -1 (by satline_decay_init) for 0.058, a
    /// limit of error of 10 % (common practice).
    pub share: f64,
    /// To what the unit should have been evacuated, pascals; -1 (by satline_decay_init) for 500 microns, 66.7 Pa (common
    /// practice).
    pub target_pa: f64,
    /// Below what it must stay, pascals; -1 (by satline_decay_init) for 1000 microns, 133.3 Pa (common practice).
    pub limit_pa: f64,
    /// For how long, seconds; -1 (by satline_decay_init) for 600 (common practice).
    pub least_time_s: f64,
}

/// The answer to a decay test. Start with satline_decay_finding_init. What is not given is 0.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct DecayAnswer {
    /// sizeof(satline_decay_finding), set by satline_decay_finding_init.
    pub struct_size: u32,
    /// SATLINE_DECAY_OUTCOME_...; 0 before a test.
    pub outcome: i32,
    /// SATLINE_DECAY_REASON_...
    pub reason: i32,
    /// SATLINE_DECAY_BEHAVIOUR_...
    pub behaviour: i32,
    /// SATLINE_DECAY_ADVICE_...
    pub advice: i32,
    /// Bit n is set for caution n (SATLINE_DECAY_CAUTION_...).
    pub cautions: u32,
    /// SATLINE_DECAY_CAUSE_..., most likely first; 0 after the last.
    pub causes: [i32; SATLINE_DECAY_CAUSES],
    /// SATLINE_DECAY_GIVEN_... bits.
    pub given: u32,
    /// Always 0.
    pub reserved: u32,
    /// First to last time, seconds.
    pub watched_s: f64,
    /// The least time to watch, seconds.
    pub least_time_s: f64,
    /// Pressure at the first time by the shape found, pascals.
    pub first_pa: f64,
    /// One standard uncertainty of it, pascals.
    pub first_uncertainty_pa: f64,
    /// Pressure at the last time by the shape found, pascals.
    pub last_pa: f64,
    /// One standard uncertainty of it, pascals.
    pub last_uncertainty_pa: f64,
    /// Rate of the straight part of the rise, pascals a second: a leak is at most that.
    pub rate_pa_s: f64,
    /// One standard uncertainty of it, pascals a second.
    pub rate_uncertainty_pa_s: f64,
    /// The smallest rate that would have shown, pascals a second.
    pub smallest_rate_pa_s: f64,
    /// Where the pressure levels off, pascals.
    pub plateau_pa: f64,
    /// One standard uncertainty of it, pascals.
    pub plateau_uncertainty_pa: f64,
    /// Time constant of levelling off, seconds.
    pub time_constant_s: f64,
    /// When, from isolation, the rise reaches the limit, seconds.
    pub reaches_limit_s: f64,
    /// Saturation pressure of water or ice at the coldest tube, pascals.
    pub water_pressure_pa: f64,
    /// One standard uncertainty of it, pascals.
    pub water_uncertainty_pa: f64,
    /// Temperature at which water vapour of the last pressure is saturated, kelvin.
    pub frost_point_k: f64,
    /// Scatter of one reading, pascals.
    pub noise_pa: f64,
    /// Above 6 the pressure is shown to level off, below -6 to rise in a straight line; between, neither.
    pub evidence_for_curve: f64,
}

// Their layouts are part of the binary interface, and a sample is the core's own.
const _: () = assert!(size_of::<Decay>() == 72 && size_of::<DecayAnswer>() == 192);
const _: () = assert!(size_of::<PressureSample>() == size_of::<Sample>() && size_of::<Sample>() == 16);
const _: () = assert!(core::mem::offset_of!(Sample, pressure_pa) == core::mem::offset_of!(PressureSample, pressure_pa));
const _: () = assert!(evacuation::CAUSES_MAX < SATLINE_DECAY_CAUSES);

impl Decay {
    const SIZE: u32 = size_of::<Self>() as u32;

    const EMPTY: Self = Self {
        struct_size: Self::SIZE,
        reserved: 0,
        coldest_temperature_k: 0.0,
        temperature_uncertainty_k: -1.0,
        resolution_pa: -1.0,
        noise_pa: -1.0,
        share: -1.0,
        target_pa: -1.0,
        limit_pa: -1.0,
        least_time_s: -1.0,
    };
}

impl DecayAnswer {
    const SIZE: u32 = size_of::<Self>() as u32;

    const EMPTY: Self = Self {
        struct_size: Self::SIZE,
        outcome: 0,
        reason: 0,
        behaviour: 0,
        advice: 0,
        cautions: 0,
        causes: [0; SATLINE_DECAY_CAUSES],
        given: 0,
        reserved: 0,
        watched_s: 0.0,
        least_time_s: 0.0,
        first_pa: 0.0,
        first_uncertainty_pa: 0.0,
        last_pa: 0.0,
        last_uncertainty_pa: 0.0,
        rate_pa_s: 0.0,
        rate_uncertainty_pa_s: 0.0,
        smallest_rate_pa_s: 0.0,
        plateau_pa: 0.0,
        plateau_uncertainty_pa: 0.0,
        time_constant_s: 0.0,
        reaches_limit_s: 0.0,
        water_pressure_pa: 0.0,
        water_uncertainty_pa: 0.0,
        frost_point_k: 0.0,
        noise_pa: 0.0,
        evidence_for_curve: 0.0,
    };

    fn of(found: &DecayFinding) -> Self {
        let bit = |given: bool, bit: u32| if given { bit } else { 0 };
        let mut causes = [0; SATLINE_DECAY_CAUSES];
        for (place, cause) in causes.iter_mut().zip(found.causes()) {
            *place = cause.number();
        }
        Self {
            struct_size: Self::SIZE,
            outcome: found.outcome.number(),
            reason: found.reason.number(),
            behaviour: found.behaviour.number(),
            advice: found.advice.number(),
            cautions: found.caution_bits(),
            causes,
            given: bit(found.plateau_pa.is_some(), SATLINE_DECAY_GIVEN_PLATEAU)
                | bit(found.time_constant_s.is_some(), SATLINE_DECAY_GIVEN_TIME_CONSTANT)
                | bit(found.reaches_limit_s.is_some(), SATLINE_DECAY_GIVEN_REACHES_LIMIT)
                | bit(found.frost_point_k.is_some(), SATLINE_DECAY_GIVEN_FROST_POINT)
                | bit(found.evidence_for_curve.is_some(), SATLINE_DECAY_GIVEN_EVIDENCE),
            reserved: 0,
            watched_s: found.watched_s,
            least_time_s: found.least_time_s,
            first_pa: found.first_pa.value,
            first_uncertainty_pa: found.first_pa.standard_uncertainty,
            last_pa: found.last_pa.value,
            last_uncertainty_pa: found.last_pa.standard_uncertainty,
            rate_pa_s: found.rate_pa_s.value,
            rate_uncertainty_pa_s: found.rate_pa_s.standard_uncertainty,
            smallest_rate_pa_s: found.smallest_rate_pa_s,
            plateau_pa: found.plateau_pa.map_or(0.0, |plateau| plateau.value),
            plateau_uncertainty_pa: found.plateau_pa.map_or(0.0, |plateau| plateau.standard_uncertainty),
            time_constant_s: found.time_constant_s.unwrap_or(0.0),
            reaches_limit_s: found.reaches_limit_s.unwrap_or(0.0),
            water_pressure_pa: found.water_pressure_pa.value,
            water_uncertainty_pa: found.water_pressure_pa.standard_uncertainty,
            frost_point_k: found.frost_point_k.unwrap_or(0.0),
            noise_pa: found.noise_pa,
            evidence_for_curve: found.evidence_for_curve.unwrap_or(0.0),
        }
    }
}

/// The samples as the core has them.
///
/// # Safety
/// `samples` is null or points at `count` samples that nothing changes meanwhile.
unsafe fn series<'a>(samples: *const PressureSample, count: u32) -> Answer<&'a [Sample]> {
    if samples.is_null() {
        return Err(SATLINE_STATUS_NULL_POINTER);
    }
    let count = usize::try_from(count).unwrap_or(usize::MAX);
    // SAFETY: not null, of the same layout, and the caller promises count of them.
    Ok(unsafe { core::slice::from_raw_parts(samples.cast::<Sample>(), count) })
}

/// Saturation pressure of water, pascals: over ice up to 273.16 K, over liquid above (Hyland and Wexler 1983).
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE (see SATLINE_TEMPERATURE_OF_WATER_OR_ICE_LOWEST_K), SATLINE_STATUS_NOT_FINITE,
/// SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_water_saturation_pressure_pa(temperature_k: f64, pressure_pa: *mut f64) -> i32 {
    let pressure = || water_saturation_pressure(Temperature::from_kelvin(temperature_k)?);
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(pressure_pa, || pressure().map_err(status)) }
}

/// Temperature, kelvin, at which water vapour of that pressure (pascals) is saturated: below 273.16 K a frost point.
/// 500 microns, 66.7 Pa, are 248.6 K.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE, SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_frost_point_k(pressure_pa: f64, temperature_k: *mut f64) -> i32 {
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(temperature_k, || frost_point(pressure_pa).map(Temperature::kelvin).map_err(status)) }
}

/// Empties the question. struct_size: sizeof(satline_decay).
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_decay_init(decay: *mut Decay, struct_size: u32) -> i32 {
    let empty = || if struct_size == Decay::SIZE { Ok(Decay::EMPTY) } else { Err(SATLINE_STATUS_BAD_STRUCT_SIZE) };
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { answer(decay, empty) }
}

/// Empties the answer. struct_size: sizeof(satline_decay_finding).
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_decay_finding_init(finding: *mut DecayAnswer, struct_size: u32) -> i32 {
    let right = struct_size == DecayAnswer::SIZE;
    let empty = || if right { Ok(DecayAnswer::EMPTY) } else { Err(SATLINE_STATUS_BAD_STRUCT_SIZE) };
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { answer(finding, empty) }
}

/// Finds the first sample that a decay test would refuse: a time that is not later than the one before, a pressure below
/// zero, a value that is not finite. place: its index from 0, or count where all are good.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE for too few or too many samples, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_decay_first_bad(samples: *const PressureSample, count: u32, place: *mut u32) -> i32 {
    let find = || {
        // SAFETY: the header asks for count samples.
        let samples = unsafe { series(samples, count) }?;
        let bound = satline::bounds::DECAY_COUNT;
        bound.check(f64::from(count)).map_err(status)?;
        Ok(check_samples(samples).err().map_or(count, |(place, _)| u32::try_from(place).unwrap_or(count)))
    };
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(place, find) }
}

/// Judges the pressures of an evacuated unit after the pump is shut off: whether they held, and whether their rise is the
/// straight line of a leak or levels off as moisture and gas out of oil do.
///
/// samples: count pressures (5 to 10000) in the order of their times. Show the finding's advice and cautions.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE (see satline_decay_first_bad), SATLINE_STATUS_NOT_FINITE,
/// SATLINE_STATUS_NOT_AVAILABLE (times too uneven to tell shapes apart), SATLINE_STATUS_BAD_STRUCT_SIZE (question or
/// answer not initialised), SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_decay_judge(
    decay: *const Decay,
    samples: *const PressureSample,
    count: u32,
    finding: *mut DecayAnswer,
) -> i32 {
    let judge = || -> Answer<()> {
        // SAFETY: the header asks for a question.
        let decay = unsafe { given(decay) }?;
        // SAFETY: the header asks for an answer that may be read and written.
        let finding = unsafe { finding.as_mut() }.ok_or(SATLINE_STATUS_NULL_POINTER)?;
        if decay.struct_size != Decay::SIZE || finding.struct_size != DecayAnswer::SIZE {
            return Err(SATLINE_STATUS_BAD_STRUCT_SIZE);
        }
        // SAFETY: the header asks for count samples.
        let samples = unsafe { series(samples, count) }?;
        let test = evacuation::Decay {
            temperature_uncertainty_k: unless_unset(decay.temperature_uncertainty_k),
            resolution_pa: unless_unset(decay.resolution_pa),
            noise_pa: unless_unset(decay.noise_pa),
            share: unless_unset(decay.share),
            target_pa: unless_unset(decay.target_pa),
            limit_pa: unless_unset(decay.limit_pa),
            least_time_s: unless_unset(decay.least_time_s),
            ..evacuation::Decay::new(samples, Temperature::from_kelvin(decay.coldest_temperature_k).map_err(status)?)
        };
        *finding = DecayAnswer::of(&decay_test(&test).map_err(status)?);
        Ok(())
    };
    judge().err().unwrap_or(SATLINE_STATUS_OK)
}
