//! A diagnosis with all that is known besides the reading, in C, in memory of the caller's.

use crate::accuracies::Accuracies;
use crate::answer::{Answer, given};
use crate::diagnosis_options::DiagnosisOptions;
use crate::evidence::Evidence;
use crate::finding::{self, Finding};
use crate::generated::codes::{SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_OK};
use crate::handle::{Refrigerant, curves};
use crate::reading::Reading;
use core::mem::MaybeUninit;
use satline::charge::Protocol;
use satline::diagnosis::{self, Diagnosis, Options, Priors};
use satline::saturation::SaturationCurves;

/// How many 8-byte words a diagnosis works in, besides those of its baseline.
pub const SATLINE_DIAGNOSIS_WORDS: usize = 832;
/// How many 8-byte words more it needs for each baseline reading.
pub const SATLINE_BASELINE_WORDS: usize = 320;

/// Words of the work that hold the reading, behind it the weighing, and behind that the finding.
const READING_WORDS: usize = SATLINE_BASELINE_WORDS;
const WEIGHING_WORDS: usize = 224;
const FINDING_WORDS: usize = SATLINE_DIAGNOSIS_WORDS - READING_WORDS - WEIGHING_WORDS;

// What is kept in the work must fit, and words are aligned for it.
const _: () = assert!(size_of::<satline::Reading>() <= 8 * READING_WORDS && align_of::<satline::Reading>() <= 8);
const _: () = assert!(size_of::<Diagnosis>() <= 8 * WEIGHING_WORDS && align_of::<Diagnosis>() <= 8);
const _: () = assert!(size_of::<diagnosis::Finding>() <= 8 * FINDING_WORDS && align_of::<diagnosis::Finding>() <= 8);

/// All that was given, its references seen to, not yet converted.
struct Question<'a> {
    curves: &'static SaturationCurves,
    reading: &'a Reading,
    accuracies: Option<&'a Accuracies>,
    baseline: &'a [Reading],
    baseline_accuracies: Option<&'a Accuracies>,
    protocol: Protocol,
    priors: Priors,
}

/// What a diagnosis works in.
struct Work<'a> {
    reading: &'a mut MaybeUninit<satline::Reading>,
    diagnosis: &'a mut MaybeUninit<Diagnosis>,
    finding: &'a mut MaybeUninit<diagnosis::Finding>,
    baseline: &'a mut [MaybeUninit<satline::Reading>],
}

/// Converts and checks a reading where it is to stand: it is too large for the stack of a small board.
fn convert<'a>(
    place: &'a mut MaybeUninit<satline::Reading>,
    curves: &'static SaturationCurves,
    reading: &Reading,
    accuracies: Option<&Accuracies>,
) -> Answer<&'a satline::Reading> {
    let place = place.write(satline::Reading::default());
    place.refrigerant = Some(curves);
    reading.fill(place)?;
    if let Some(accuracies) = accuracies {
        accuracies.fill(place)?;
    }
    Ok(place)
}

impl<'a> Work<'a> {
    /// The caller's memory, divided; none where there is none and the stack is to be used.
    ///
    /// # Safety
    /// The options' `work` is null or points at `work_words` words that nothing else uses during `'a`.
    unsafe fn of(options: &DiagnosisOptions, baseline: usize) -> Answer<Option<Self>> {
        if options.work.is_null() {
            let needed = baseline != 0 || options.work_words != 0;
            return if needed { Err(SATLINE_STATUS_NULL_POINTER) } else { Ok(None) };
        }
        // There are at most SATLINE_BASELINE_READINGS, so this does not overflow.
        if (options.work_words as usize) < SATLINE_DIAGNOSIS_WORDS + SATLINE_BASELINE_WORDS * baseline {
            return Err(SATLINE_STATUS_BAD_STRUCT_SIZE);
        }
        // SAFETY: there are so many words, each part fits into its own (asserted above), they are aligned for it, and
        // what may be uninitialised may hold anything.
        Ok(Some(unsafe {
            Self {
                reading: &mut *options.work.cast(),
                diagnosis: &mut *options.work.add(READING_WORDS).cast(),
                finding: &mut *options.work.add(READING_WORDS + WEIGHING_WORDS).cast(),
                baseline: core::slice::from_raw_parts_mut(options.work.add(SATLINE_DIAGNOSIS_WORDS).cast(), baseline),
            }
        }))
    }

    /// Judges a reading; a baseline beyond the places for it is not looked at.
    fn judge(self, question: &Question) -> Answer<&'a diagnosis::Finding> {
        let Self { reading, diagnosis, finding, baseline } = self;
        let reading = convert(reading, question.curves, question.reading, question.accuracies)?;
        let mut converted = 0;
        for (place, reading) in baseline.iter_mut().zip(question.baseline) {
            convert(place, question.curves, reading, question.baseline_accuracies)?;
            converted += 1;
        }
        // SAFETY: so many of the first have just been written.
        let baseline = unsafe { core::slice::from_raw_parts(baseline.as_ptr().cast(), converted) };
        let options = Options { protocol: question.protocol, baseline, priors: question.priors };
        // Each in its place from the beginning: one returned would stand on the stack first.
        let diagnosis = diagnosis.write(Diagnosis::NOTHING);
        diagnosis.begin_anew(reading, &options);
        diagnosis.weigh_rest();
        let finding = finding.write(diagnosis::Finding::nothing());
        diagnosis.finish_onto(finding, reading, &options);
        Ok(finding)
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
fn judge_on_stack(question: &Question, finding: &mut Finding, evidence: Option<&mut Evidence>) -> Answer<()> {
    let (mut own_reading, mut own_diagnosis, mut own_finding) =
        (MaybeUninit::uninit(), MaybeUninit::uninit(), MaybeUninit::uninit());
    let (reading, diagnosis, own_finding) = (&mut own_reading, &mut own_diagnosis, &mut own_finding);
    let work = Work { reading, diagnosis, finding: own_finding, baseline: &mut [] };
    tell(work.judge(question)?, finding, evidence);
    Ok(())
}

/// Judges a reading with all that is known besides, and gives what stands behind the finding. With null options the
/// finding is that of satline_diagnose. The result is an aid to a licensed technician; read its cautions. A whole program:
/// ffi/examples/diagnosis.c.
///
/// options: null for the defaults. evidence: null where only the finding is asked for. The options' memory to work in
/// must not overlap any other argument. Options and what they point at are only read, so that calls at once may share
/// them; the memory to work in is written, and they may not share that.
///
/// Status: SATLINE_STATUS_NULL_POINTER (also a baseline without memory to work in), SATLINE_STATUS_BAD_STRUCT_SIZE (a
/// structure not initialised, reserved not 0, or too few words to work in), SATLINE_STATUS_VERSION_MISMATCH,
/// SATLINE_STATUS_OUT_OF_RANGE (too many baseline readings; a weight, an accuracy, a field), SATLINE_STATUS_NOT_FINITE,
/// SATLINE_STATUS_UNKNOWN_CHOICE (edition, role, a weight of no cause, a choice of a reading),
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
        // SAFETY: the header asks for so many readings, and for accuracies, or null.
        let (baseline, accuracies, baseline_accuracies) =
            unsafe { (options.baseline()?, options.accuracies.as_ref(), options.baseline_accuracies.as_ref()) };
        let question = Question {
            curves,
            reading,
            accuracies,
            baseline,
            baseline_accuracies,
            protocol: options.protocol()?,
            priors: options.priors()?,
        };
        // SAFETY: the header asks for so many words, apart from everything else.
        match unsafe { Work::of(options, baseline.len()) }? {
            Some(work) => tell(work.judge(&question)?, finding, evidence),
            None => judge_on_stack(&question, finding, evidence)?,
        }
        Ok(())
    };
    diagnose().err().unwrap_or(SATLINE_STATUS_OK)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::accuracies::{Accuracy, satline_accuracies_init, satline_accuracies_set};
    use crate::diagnosis_options::satline_diagnosis_options_init;
    use crate::evidence::satline_evidence_init;
    use crate::finding::satline_finding_init;
    use crate::generated::codes::{
        SATLINE_CHOICE_METERING, SATLINE_EDITION_TITLE_24_RA3_2_2008, SATLINE_METERING_FIXED_ORIFICE,
        SATLINE_METERING_THERMOSTATIC_VALVE, SATLINE_ROLE_VERIFIER,
    };
    use crate::generated::handles::SATLINE_R410A;
    use crate::reading::{satline_reading_init, satline_reading_set, satline_reading_set_choice};
    use satline::Field;
    use satline::charge::{Edition, Role};
    use satline::diagnosis::{Cause, ValueName, diagnose_with};
    use satline::reading::Metering;
    use satline::saturation::R410A;
    use std::vec::Vec;

    /// Demo: a valve unit, its subcooling `less` kelvin below 6 K and its superheat as much higher.
    fn valve(less: f64) -> Vec<(Field, f64)> {
        Vec::from([
            (Field::OutdoorDryBulb, 305.4),
            (Field::ReturnDryBulb, 297.0),
            (Field::ReturnWetBulb, 290.9),
            (Field::SupplyDryBulb, 286.0),
            (Field::SuctionPressure, 930_000.0),
            (Field::SuctionLineTemperature, 283.9 + less),
            (Field::LiquidPressure, 2_450_000.0),
            (Field::LiquidLineTemperature, 307.9 + less),
            (Field::TargetSubcooling, 5.5),
            (Field::MinutesSinceChange, 25.0),
            (Field::AirflowOverCoil, 0.55),
            (Field::NominalCapacity, 10_550.0),
            (Field::ExpectedCharge, 3.2),
        ])
    }

    /// Demo: an orifice unit with a superheat of `superheat` kelvin and nothing taken at the liquid port.
    fn orifice(superheat: f64) -> Vec<(Field, f64)> {
        let mut fields = valve(0.0);
        fields.retain(|(field, _)| (*field as i32) < 9);
        fields.push((Field::SuctionLineTemperature, 281.3 + superheat));
        fields
    }

    fn in_c(metering: i32, fields: &[(Field, f64)]) -> Reading {
        let mut reading = MaybeUninit::uninit();
        // SAFETY: a variable of ours, initialised first.
        unsafe {
            assert_eq!(satline_reading_init(reading.as_mut_ptr(), size_of::<Reading>() as u32), SATLINE_STATUS_OK);
            let mut reading = reading.assume_init();
            assert_eq!(satline_reading_set_choice(&mut reading, SATLINE_CHOICE_METERING, metering), SATLINE_STATUS_OK);
            for (field, value) in fields {
                assert_eq!(satline_reading_set(&mut reading, *field as i32, *value), SATLINE_STATUS_OK);
            }
            reading
        }
    }

    fn in_rust(metering: i32, fields: &[(Field, f64)]) -> satline::Reading {
        let metering = Metering::from_number(metering).ok();
        let mut reading = satline::Reading { refrigerant: Some(&R410A), metering, ..satline::Reading::default() };
        fields.iter().for_each(|(field, value)| reading.set(*field, *value).unwrap());
        reading
    }

    fn options() -> DiagnosisOptions {
        let mut options = MaybeUninit::uninit();
        // SAFETY: a variable of ours.
        unsafe {
            let size = size_of::<DiagnosisOptions>() as u32;
            assert_eq!(satline_diagnosis_options_init(options.as_mut_ptr(), size), SATLINE_STATUS_OK);
            options.assume_init()
        }
    }

    fn diagnosed(reading: &Reading, options: &DiagnosisOptions) -> (Finding, Evidence) {
        let (mut finding, mut evidence) = (MaybeUninit::uninit(), MaybeUninit::uninit());
        // SAFETY: variables of ours, initialised first.
        unsafe {
            assert_eq!(satline_finding_init(finding.as_mut_ptr(), size_of::<Finding>() as u32), SATLINE_STATUS_OK);
            assert_eq!(satline_evidence_init(evidence.as_mut_ptr(), size_of::<Evidence>() as u32), SATLINE_STATUS_OK);
            let (finding, evidence) = (finding.as_mut_ptr(), evidence.as_mut_ptr());
            let status = satline_diagnose_with(&raw const SATLINE_R410A, reading, options, finding, evidence);
            assert_eq!(status, SATLINE_STATUS_OK);
            (*finding, *evidence)
        }
    }

    /// Every number of C's answer is that of Rust's, to the bit.
    #[track_caller]
    fn same((finding, evidence): (Finding, Evidence), rust: &diagnosis::Finding) {
        assert_eq!(
            (finding.charge, finding.charge_status, finding.reason, finding.next_check, finding.advice),
            (
                rust.charge.number(),
                rust.charge_status.number(),
                rust.reason.number(),
                rust.next_check.number(),
                rust.advice.number()
            )
        );
        assert_eq!(
            (finding.protocol_action, finding.protocol_edition, finding.protocol_role, finding.cautions),
            (
                rust.protocol.action.number(),
                rust.protocol.edition.number(),
                rust.protocol.role.number(),
                rust.cautions.bits()
            )
        );
        for name in ValueName::ALL {
            let value = finding.value[name.number() as usize];
            let expected = rust.values.get(*name).map(|value| (value.value, value.standard_uncertainty));
            assert_eq!((value.given != 0).then_some((value.value, value.standard_uncertainty)), expected, "{name:?}");
        }
        let preconditions: Vec<_> = rust
            .preconditions
            .iter()
            .map(|one| (one.name.number(), one.status.number(), one.reason.map_or(0, |reason| reason.number())))
            .collect();
        let in_c = &evidence.precondition[..evidence.precondition_count as usize];
        assert_eq!(
            in_c.iter().map(|one| (one.precondition, one.status, one.reason)).collect::<Vec<_>>(),
            preconditions
        );
        let features: Vec<_> = rust
            .features
            .iter()
            .map(|(name, one)| {
                let numbers = (one.value, one.standard_uncertainty, one.expected, one.expected_uncertainty);
                (name.number(), one.source.number(), numbers)
            })
            .collect();
        let in_c = &evidence.feature[..evidence.feature_count as usize];
        let in_c = in_c.iter().map(|one| {
            let numbers = (one.value, one.standard_uncertainty, one.expected, one.expected_uncertainty);
            (one.feature, one.source, numbers)
        });
        assert_eq!(in_c.collect::<Vec<_>>(), features);
        let hypotheses: Vec<_> =
            rust.hypotheses.iter().map(|one| (u32::from(one.causes.bits()), one.probability)).collect();
        let in_c = &evidence.hypothesis[..evidence.hypothesis_count as usize];
        assert_eq!(in_c.iter().map(|one| (one.causes, one.probability)).collect::<Vec<_>>(), hypotheses);
        assert_eq!(
            (evidence.stands == 1).then_some(evidence.causes),
            rust.conclusion.causes.map(|causes| u32::from(causes.bits()))
        );
        assert_eq!((evidence.conclusion, evidence.fits == 1), (rust.conclusion.reason.number(), rust.fits));
        let amount = evidence.amount;
        assert_eq!(
            (amount.given != 0).then_some((
                amount.share,
                amount.standard_uncertainty,
                amount.lowest,
                amount.highest,
                (amount.given & 2 != 0).then_some(amount.mass_kg),
                amount.bound
            )),
            rust.amount.map(|one| (
                one.share,
                one.standard_uncertainty,
                one.lowest,
                one.highest,
                one.mass_kg,
                one.bound.number()
            ))
        );
    }

    #[test]
    fn c_gives_what_rust_gives_with_and_without_a_baseline() {
        let mut work = [u64::MAX; SATLINE_DIAGNOSIS_WORDS + 2 * SATLINE_BASELINE_WORDS];
        let kinds = [SATLINE_METERING_THERMOSTATIC_VALVE, SATLINE_METERING_FIXED_ORIFICE];
        for (metering, off) in kinds.into_iter().flat_map(|kind| [0.0, 2.0, 4.5, 5.9].map(|off| (kind, off))) {
            let demo = if metering == SATLINE_METERING_FIXED_ORIFICE { orifice } else { valve };
            let (reading, rust) = (in_c(metering, &demo(off)), in_rust(metering, &demo(off)));
            same(diagnosed(&reading, &options()), &diagnose_with(&rust, &Options::default()));

            let mut options = options();
            options.work = work.as_mut_ptr();
            options.work_words = work.len() as u32;
            same(diagnosed(&reading, &options), &diagnose_with(&rust, &Options::default()));

            let healthy = [in_c(metering, &demo(0.0)), in_c(metering, &demo(0.3))];
            options.baseline = healthy.as_ptr();
            options.baseline_count = 2;
            options.protocol_edition = SATLINE_EDITION_TITLE_24_RA3_2_2008;
            options.protocol_role = SATLINE_ROLE_VERIFIER;
            options.healthy = 0.3;
            options.pairs = 2.0;
            options.causes[Cause::Overcharge.number() as usize] = 0.4;
            options.causes[Cause::Unmodelled.number() as usize] = 0.02;
            let baseline = [in_rust(metering, &demo(0.0)), in_rust(metering, &demo(0.3))];
            let protocol = Protocol { edition: Edition::Ra3Of2008, role: Role::Verifier };
            let priors = Priors::default()
                .with_healthy(0.3)
                .and_then(|priors| priors.with_pairs(2.0))
                .and_then(|priors| priors.with_cause(Cause::Overcharge, 0.4))
                .and_then(|priors| priors.with_cause(Cause::Unmodelled, 0.02))
                .unwrap();
            same(
                diagnosed(&reading, &options),
                &diagnose_with(&rust, &Options { protocol, baseline: &baseline, priors }),
            );
        }
    }

    #[test]
    fn the_question_reaches_the_core_as_it_was_asked() {
        // What the core makes of a baseline is its own; here, that each reading arrives with the right accuracies.
        let mut accuracies = MaybeUninit::uninit();
        let gauge = Accuracy {
            of_reading: 0.01,
            of_full_scale: 0.0,
            full_scale: 0.0,
            absolute: 0.0,
            resolution: 0.0,
            group: 3,
            reserved: 0,
        };
        // SAFETY: a variable of ours, initialised first.
        let fine = unsafe {
            let size = size_of::<Accuracies>() as u32;
            assert_eq!(satline_accuracies_init(accuracies.as_mut_ptr(), size), SATLINE_STATUS_OK);
            let field = Field::SuctionPressure as i32;
            assert_eq!(satline_accuracies_set(accuracies.as_mut_ptr(), field, &gauge), SATLINE_STATUS_OK);
            accuracies.assume_init()
        };
        let mut place = MaybeUninit::uninit();
        let reading = in_c(SATLINE_METERING_THERMOSTATIC_VALVE, &valve(1.0));
        let mut expected = in_rust(SATLINE_METERING_THERMOSTATIC_VALVE, &valve(1.0));
        assert_eq!(convert(&mut place, &R410A, &reading, None).ok(), Some(&expected));
        let accuracy = satline::reading::Accuracy { of_reading: 0.01, group: 3, ..satline::reading::Accuracy::EXACT };
        expected.accuracy[Field::SuctionPressure as usize] = Some(accuracy);
        assert_eq!(convert(&mut place, &R410A, &reading, Some(&fine)).ok(), Some(&expected));

        // The finding's own: today's gauge is better than the default, so the superheat is sharper.
        let mut options = options();
        let loose = diagnosed(&reading, &options).0;
        options.accuracies = &raw const fine;
        let sharp = diagnosed(&reading, &options).0;
        let superheat = ValueName::Superheat.number() as usize;
        assert_eq!(loose.value[superheat].value, sharp.value[superheat].value);
        assert!(sharp.value[superheat].standard_uncertainty < loose.value[superheat].standard_uncertainty);
        same((sharp, diagnosed(&reading, &options).1), &diagnose_with(&expected, &Options::default()));
    }
}
