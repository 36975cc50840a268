//! A diagnosis with all that is known besides the reading, in C, in memory of the caller's.

use crate::answer::{Answer, answer, given, status};
use crate::evidence::Evidence;
use crate::finding::{self, Finding};
use crate::generated::codes::{
    SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_OK, SATLINE_STATUS_OUT_OF_RANGE,
    SATLINE_STATUS_UNKNOWN_CHOICE,
};
use crate::handle::{Refrigerant, curves};
use crate::reading::Reading;
use core::mem::MaybeUninit;
use satline::charge::{Edition, Protocol, Role};
use satline::diagnosis::{self, Cause, Options, Priors};
use satline::saturation::SaturationCurves;

/// Most baseline readings that a diagnosis takes.
pub const SATLINE_BASELINE_READINGS: usize = 16;
/// How many causes the options have room for.
pub const SATLINE_DIAGNOSIS_CAUSES: usize = 16;
/// How many 8-byte words a diagnosis works in, besides those of its baseline.
pub const SATLINE_DIAGNOSIS_WORDS: usize = 832;
/// How many 8-byte words more it needs for each baseline reading.
pub const SATLINE_BASELINE_WORDS: usize = 320;

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

// The layout is part of the binary interface: four numbers, two pointers, two numbers, the weights, and nothing between.
const _: () =
    assert!(size_of::<DiagnosisOptions>() == 16 + 2 * size_of::<*mut u64>() + 8 + 8 * (2 + SATLINE_DIAGNOSIS_CAUSES));
const _: () = assert!(Cause::ALL.len() < SATLINE_DIAGNOSIS_CAUSES);

/// Words of the work that hold the reading and, behind it, the finding.
const READING_WORDS: usize = SATLINE_BASELINE_WORDS;
const FINDING_WORDS: usize = SATLINE_DIAGNOSIS_WORDS - READING_WORDS;

// What is kept in the work must fit, and words are aligned for it.
const _: () = assert!(size_of::<satline::Reading>() <= 8 * READING_WORDS && align_of::<satline::Reading>() <= 8);
const _: () = assert!(size_of::<diagnosis::Finding>() <= 8 * FINDING_WORDS && align_of::<diagnosis::Finding>() <= 8);

impl DiagnosisOptions {
    const SIZE: u32 = size_of::<Self>() as u32;

    const DEFAULT: Self = Self {
        struct_size: Self::SIZE,
        reserved: 0,
        protocol_edition: 0,
        protocol_role: 0,
        baseline: core::ptr::null(),
        work: core::ptr::null_mut(),
        baseline_count: 0,
        work_words: 0,
        healthy: 0.0,
        pairs: 0.0,
        causes: [0.0; SATLINE_DIAGNOSIS_CAUSES],
    };

    fn protocol(&self) -> Answer<Protocol> {
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
    fn priors(&self) -> Answer<Priors> {
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
    unsafe fn baseline(&self) -> Answer<&[Reading]> {
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

    /// What to work in; none where the stack is to be used.
    ///
    /// # Safety
    /// `work` is null or points at `work_words` words that nothing else uses during `'a`.
    unsafe fn work<'a>(&self, baseline: &[Reading]) -> Answer<Option<Work<'a>>> {
        if self.work.is_null() {
            let needed = !baseline.is_empty() || self.work_words != 0;
            return if needed { Err(SATLINE_STATUS_NULL_POINTER) } else { Ok(None) };
        }
        if (self.work_words as usize) < SATLINE_DIAGNOSIS_WORDS + SATLINE_BASELINE_WORDS * baseline.len() {
            return Err(SATLINE_STATUS_BAD_STRUCT_SIZE);
        }
        // SAFETY: there are so many words, each part fits into its own (asserted above), they are aligned for it, and what
        // may be uninitialised may hold anything.
        Ok(Some(unsafe {
            Work {
                reading: &mut *self.work.cast(),
                finding: &mut *self.work.add(READING_WORDS).cast(),
                baseline: core::slice::from_raw_parts_mut(
                    self.work.add(SATLINE_DIAGNOSIS_WORDS).cast(),
                    baseline.len(),
                ),
            }
        }))
    }
}

/// What a diagnosis works in.
struct Work<'a> {
    reading: &'a mut MaybeUninit<satline::Reading>,
    finding: &'a mut MaybeUninit<diagnosis::Finding>,
    baseline: &'a mut [MaybeUninit<satline::Reading>],
}

/// Converts and checks a reading where it is to stand: it is too large for the stack of a small board.
fn convert<'a>(
    place: &'a mut MaybeUninit<satline::Reading>,
    curves: &'static SaturationCurves,
    reading: &Reading,
) -> Answer<&'a satline::Reading> {
    let place = place.write(satline::Reading::default());
    place.refrigerant = Some(curves);
    reading.fill(place)?;
    Ok(place)
}

impl<'a> Work<'a> {
    /// Judges a reading. `baseline` is as long as the work's.
    fn judge(
        self,
        curves: &'static SaturationCurves,
        reading: &Reading,
        baseline: &[Reading],
        options: &DiagnosisOptions,
    ) -> Answer<&'a diagnosis::Finding> {
        let reading = convert(self.reading, curves, reading)?;
        for (place, reading) in self.baseline.iter_mut().zip(baseline) {
            convert(place, curves, reading)?;
        }
        let count = self.baseline.len().min(baseline.len());
        // SAFETY: so many have just been written.
        let baseline = unsafe { core::slice::from_raw_parts(self.baseline.as_ptr().cast(), count) };
        let options = Options { protocol: options.protocol()?, baseline, priors: options.priors()? };
        Ok(self.finding.write(diagnosis::diagnose_with(reading, &options)))
    }
}

/// Writes what was found over the caller's structures.
fn tell(found: &diagnosis::Finding, finding: &mut Finding, evidence: Option<&mut Evidence>) {
    finding.fill(found);
    if let Some(evidence) = evidence {
        evidence.fill(found);
    }
}

/// Judges with its own frame to work in. Not inlined, so that only who asks for it pays for the frame.
#[inline(never)]
fn judge_on_stack(
    curves: &'static SaturationCurves,
    reading: &Reading,
    options: &DiagnosisOptions,
    finding: &mut Finding,
    evidence: Option<&mut Evidence>,
) -> Answer<()> {
    let (mut own_reading, mut own_finding) = (MaybeUninit::uninit(), MaybeUninit::uninit());
    let work = Work { reading: &mut own_reading, finding: &mut own_finding, baseline: &mut [] };
    tell(work.judge(curves, reading, &[], options)?, finding, evidence);
    Ok(())
}

/// Empties the options: no baseline, and the defaults. struct_size: sizeof(satline_diagnosis_options), so that a newer
/// library knows how large yours is.
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_diagnosis_options_init(options: *mut DiagnosisOptions, struct_size: u32) -> i32 {
    let fresh = || {
        if struct_size == DiagnosisOptions::SIZE {
            Ok(DiagnosisOptions::DEFAULT)
        } else {
            Err(SATLINE_STATUS_BAD_STRUCT_SIZE)
        }
    };
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { answer(options, fresh) }
}

/// Judges a reading with all that is known besides, and gives what stands behind the finding. With null options the
/// finding is that of satline_diagnose. The result is an aid to a licensed technician; read its cautions.
///
/// options: null for the defaults. evidence: null where only the finding is asked for. The options' memory to work in
/// must not overlap any other argument. Only reads options and their baseline, so that calls at once may share these,
/// but not the memory to work in.
///
/// Status: SATLINE_STATUS_NULL_POINTER (also a baseline without memory to work in), SATLINE_STATUS_BAD_STRUCT_SIZE (a
/// structure not initialised, reserved not 0, or too few words to work in), SATLINE_STATUS_VERSION_MISMATCH,
/// SATLINE_STATUS_OUT_OF_RANGE (too many baseline readings; a weight; a value), SATLINE_STATUS_NOT_FINITE,
/// SATLINE_STATUS_UNKNOWN_CHOICE (edition, role, a weight of no cause; a choice of a reading),
/// SATLINE_STATUS_UNKNOWN_FIELD.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_diagnose_with(
    refrigerant: *const Refrigerant,
    reading: *const Reading,
    options: *const DiagnosisOptions,
    finding: *mut Finding,
    evidence: *mut Evidence,
) -> i32 {
    let diagnose = || {
        // SAFETY: the header asks for a handle, a reading, a finding and, or null, an evidence.
        let (curves, reading, finding, evidence) =
            unsafe { (curves(refrigerant)?, given(reading)?, finding::known(finding)?, Evidence::known(evidence)?) };
        // SAFETY: the header asks for options, or null.
        let options = unsafe { options.as_ref() }.unwrap_or(&DiagnosisOptions::DEFAULT);
        if options.struct_size != DiagnosisOptions::SIZE || options.reserved != 0 {
            return Err(SATLINE_STATUS_BAD_STRUCT_SIZE);
        }
        // SAFETY: the header asks for so many readings.
        let baseline = unsafe { options.baseline() }?;
        // SAFETY: the header asks for so many words, apart from everything else.
        match unsafe { options.work(baseline) }? {
            Some(work) => tell(work.judge(curves, reading, baseline, options)?, finding, evidence),
            None => judge_on_stack(curves, reading, options, finding, evidence)?,
        }
        Ok(())
    };
    diagnose().err().unwrap_or(SATLINE_STATUS_OK)
}
