//! What a diagnosis is told besides the reading, in C: a plain structure that the caller owns.

use crate::accuracies::Accuracies;
use crate::answer::{Answer, emptied, status};
use crate::generated::codes::{
    SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_OUT_OF_RANGE, SATLINE_STATUS_UNKNOWN_CHOICE,
};
use crate::reading::Reading;
use satline::charge::{Edition, Protocol, Role};
use satline::diagnosis::{Cause, Priors};

/// Most baseline readings that a diagnosis takes.
pub const SATLINE_BASELINE_READINGS: usize = 16;
/// How many causes the options have room for.
pub const SATLINE_DIAGNOSIS_CAUSES: usize = 16;

/// What a diagnosis is told besides the reading. Start with satline_diagnosis_options_init: nothing, and the defaults.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct DiagnosisOptions {
    /// sizeof(satline_diagnosis_options), set by satline_diagnosis_options_init.
    pub struct_size: u32,
    /// Must be 0.
    pub reserved: u32,
    /// SATLINE_EDITION_...: the protocol whose own verdict is quoted; 0 for the default.
    pub protocol_edition: i32,
    /// SATLINE_ROLE_...: whose tolerances are applied; 0 for the default.
    pub protocol_role: i32,
    /// baseline_count readings of the same unit with the same refrigerant, taken when it was known to be healthy; null
    /// when there is none. Readings taken in heating, or with another metering device, are passed over.
    pub baseline: *const Reading,
    /// Accuracies of the reading's instruments; null for those that the verification protocol asks for.
    pub accuracies: *const Accuracies,
    /// Accuracies of the instruments of all baseline readings, likewise.
    pub baseline_accuracies: *const Accuracies,
    /// Memory to work in: work_words 8-byte words, at least SATLINE_DIAGNOSIS_WORDS and SATLINE_BASELINE_WORDS more for
    /// each baseline reading. Nothing is kept in it between calls, and it need not be cleared. Null, with 0 words: the
    /// diagnosis works on its stack, and can have no baseline.
    pub work: *mut u64,
    /// How many baseline readings there are, 0 to SATLINE_BASELINE_READINGS.
    pub baseline_count: u32,
    /// How many words work has.
    pub work_words: u32,
    /// Weight of a healthy unit before anything is measured, above 0 and up to 1; only ratios of weights matter. 0 for
    /// the default.
    pub healthy: f64,
    /// Factor of pairs of causes, up to 100: 1 when faults meet by chance alone, more when neglect brings them together,
    /// 1e-9 for practically no pair. 0 for the default.
    pub pairs: f64,
    /// Weight n is that of cause n (SATLINE_CAUSE_...) before anything is measured, above 0 and up to 1. 0 for the
    /// default, and where no cause has that number.
    pub causes: [f64; SATLINE_DIAGNOSIS_CAUSES],
}

// The layout is part of the binary interface: four numbers, four pointers, two numbers, the weights, and nothing between.
const _: () =
    assert!(size_of::<DiagnosisOptions>() == 16 + 4 * size_of::<*mut u64>() + 8 + 8 * (2 + SATLINE_DIAGNOSIS_CAUSES));
const _: () = assert!(Cause::ALL.len() < SATLINE_DIAGNOSIS_CAUSES);

impl DiagnosisOptions {
    pub(crate) const SIZE: u32 = size_of::<Self>() as u32;

    pub(crate) const DEFAULT: Self = Self {
        struct_size: Self::SIZE,
        reserved: 0,
        protocol_edition: 0,
        protocol_role: 0,
        baseline: core::ptr::null(),
        accuracies: core::ptr::null(),
        baseline_accuracies: core::ptr::null(),
        work: core::ptr::null_mut(),
        baseline_count: 0,
        work_words: 0,
        healthy: 0.0,
        pairs: 0.0,
        causes: [0.0; SATLINE_DIAGNOSIS_CAUSES],
    };

    pub(crate) fn protocol(&self) -> Answer<Protocol> {
        let mut protocol = Protocol::default();
        if self.protocol_edition != 0 {
            protocol.edition = Edition::from_number(self.protocol_edition).ok_or(SATLINE_STATUS_UNKNOWN_CHOICE)?;
        }
        if self.protocol_role != 0 {
            protocol.role = Role::from_number(self.protocol_role).ok_or(SATLINE_STATUS_UNKNOWN_CHOICE)?;
        }
        Ok(protocol)
    }

    /// A weight that is not a number is not 0, so the core sees and refuses it.
    pub(crate) fn priors(&self) -> Answer<Priors> {
        let mut priors = Priors::default();
        if self.healthy != 0.0 {
            priors = priors.with_healthy(self.healthy).map_err(status)?;
        }
        if self.pairs != 0.0 {
            priors = priors.with_pairs(self.pairs).map_err(status)?;
        }
        for (number, weight) in (0..).zip(&self.causes) {
            if *weight != 0.0 {
                let cause = Cause::from_number(number).ok_or(SATLINE_STATUS_UNKNOWN_CHOICE)?;
                priors = priors.with_cause(cause, *weight).map_err(status)?;
            }
        }
        Ok(priors)
    }

    /// The baseline as the caller has it.
    ///
    /// # Safety
    /// `baseline` is null or points at `baseline_count` readings.
    pub(crate) unsafe fn baseline(&self) -> Answer<&[Reading]> {
        let count = self.baseline_count as usize;
        if count > SATLINE_BASELINE_READINGS {
            return Err(SATLINE_STATUS_OUT_OF_RANGE);
        }
        if count == 0 {
            return Ok(&[]);
        }
        if self.baseline.is_null() {
            return Err(SATLINE_STATUS_NULL_POINTER);
        }
        // SAFETY: not null, and promised by the caller.
        Ok(unsafe { core::slice::from_raw_parts(self.baseline, count) })
    }
}

/// Empties the options: no baseline, and the defaults. struct_size: sizeof(satline_diagnosis_options), so that a newer
/// library knows how large yours is.
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_diagnosis_options_init(options: *mut DiagnosisOptions, struct_size: u32) -> i32 {
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes; zeros are one of these.
    unsafe { emptied(options, struct_size) }
}
