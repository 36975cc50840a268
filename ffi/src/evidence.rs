//! What stands behind a finding, in C: a plain structure that the caller owns.

use crate::answer::{Answer, emptied};
use crate::generated::codes::SATLINE_STATUS_BAD_STRUCT_SIZE;
use satline::diagnosis::{self, FEATURE_COUNT, HYPOTHESES_MAX, PRECONDITION_COUNT};

/// How many preconditions an evidence has room for.
pub const SATLINE_EVIDENCE_PRECONDITIONS: usize = 16;
/// How many features an evidence has room for.
pub const SATLINE_EVIDENCE_FEATURES: usize = 32;
/// How many hypotheses an evidence has room for.
pub const SATLINE_EVIDENCE_HYPOTHESES: usize = 32;

/// Bit of satline_charge_amount.given: everything but mass_kg is set.
pub const SATLINE_AMOUNT_GIVEN_SHARE: u32 = 1;
/// Bit of satline_charge_amount.given: mass_kg is set.
pub const SATLINE_AMOUNT_GIVEN_MASS: u32 = 2;

/// Something that must hold before a diagnosis, and whether it does.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct Precondition {
    /// SATLINE_PRECONDITION_...
    pub precondition: i32,
    /// SATLINE_PRECONDITION_STATUS_...
    pub status: i32,
    /// SATLINE_REASON_...: what speaks against it, where it does not hold; else 0.
    pub reason: i32,
}

/// One feature, measured against what was expected of this unit if healthy, in the unit of its name: K, or a share.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct Feature {
    /// SATLINE_FEATURE_...
    pub feature: i32,
    /// SATLINE_SOURCE_...: the most trusted source that the expectation rests on.
    pub source: i32,
    /// What was measured.
    pub value: f64,
    /// One standard uncertainty of it, from the instruments.
    pub standard_uncertainty: f64,
    /// What was expected in today's air.
    pub expected: f64,
    /// One standard uncertainty of that.
    pub expected_uncertainty: f64,
}

/// What may be wrong, and how probable it is.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct Hypothesis {
    /// Bit n is set for cause n (SATLINE_CAUSE_...); 0 for a healthy unit.
    pub causes: u32,
    /// Always 0.
    pub reserved: u32,
    /// 0 to 1.
    pub probability: f64,
}

/// How much refrigerant to add or recover, as far as the evidence tells; all 0 where it does not. Never adjust by this
/// number at once: add in weighed steps, and measure again after each.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct ChargeAmount {
    /// Share of the nameplate charge: positive to add, negative to recover.
    pub share: f64,
    /// One standard uncertainty of the share.
    pub standard_uncertainty: f64,
    /// Lower end of the interval that holds the true share with 90 %.
    pub lowest: f64,
    /// Upper end of it.
    pub highest: f64,
    /// The share of the expected charge, kilograms, where the reading gives one.
    pub mass_kg: f64,
    /// SATLINE_AMOUNT_GIVEN_... bits.
    pub given: u32,
    /// SATLINE_BOUND_...: whether the share is one-sided; 0 when there is none.
    pub bound: i32,
}

/// What stands behind a finding. Start with satline_evidence_init.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct Evidence {
    /// sizeof(satline_evidence), set by satline_evidence_init.
    pub struct_size: u32,
    /// How many preconditions are in precondition.
    pub precondition_count: u32,
    /// How many features could be measured.
    pub feature_count: u32,
    /// How many hypotheses were weighed; 0 when nothing could be.
    pub hypothesis_count: u32,
    /// 1 when the finding stands by causes, 0 when it cannot tell.
    pub stands: i32,
    /// What it stands by, when it stands: bit n for cause n (SATLINE_CAUSE_...); 0 for a healthy unit.
    pub causes: u32,
    /// SATLINE_CONCLUSION_...: why it stands or not; 0 before a diagnosis.
    pub conclusion: i32,
    /// 1 when what is most likely also fits; 0 when no known fault explains the readings.
    pub fits: i32,
    /// How much to add or recover.
    pub amount: ChargeAmount,
    /// The preconditions, in the order of their numbers.
    pub precondition: [Precondition; SATLINE_EVIDENCE_PRECONDITIONS],
    /// The features, in the order of their numbers.
    pub feature: [Feature; SATLINE_EVIDENCE_FEATURES],
    /// The hypotheses, most likely first. Their probabilities sum to 1.
    pub hypothesis: [Hypothesis; SATLINE_EVIDENCE_HYPOTHESES],
}

// The layout is part of the binary interface.
const _: () = assert!(size_of::<Evidence>() == 32 + 48 + 16 * 12 + 32 * 40 + 32 * 16);
const _: () = assert!(PRECONDITION_COUNT <= SATLINE_EVIDENCE_PRECONDITIONS);
const _: () = assert!(FEATURE_COUNT <= SATLINE_EVIDENCE_FEATURES);
const _: () = assert!(HYPOTHESES_MAX <= SATLINE_EVIDENCE_HYPOTHESES);

impl Precondition {
    const NONE: Self = Self { precondition: 0, status: 0, reason: 0 };
}

impl From<diagnosis::Precondition> for Precondition {
    fn from(one: diagnosis::Precondition) -> Self {
        Self {
            precondition: one.name.number(),
            status: one.status.number(),
            reason: one.reason.map_or(0, |reason| reason.number()),
        }
    }
}

impl Feature {
    const NONE: Self =
        Self { feature: 0, source: 0, value: 0.0, standard_uncertainty: 0.0, expected: 0.0, expected_uncertainty: 0.0 };
}

impl From<(diagnosis::FeatureName, diagnosis::Feature)> for Feature {
    fn from((name, feature): (diagnosis::FeatureName, diagnosis::Feature)) -> Self {
        Self {
            feature: name.number(),
            source: feature.source.number(),
            value: feature.value,
            standard_uncertainty: feature.standard_uncertainty,
            expected: feature.expected,
            expected_uncertainty: feature.expected_uncertainty,
        }
    }
}

impl Hypothesis {
    const NONE: Self = Self { causes: 0, reserved: 0, probability: 0.0 };
}

impl From<diagnosis::Hypothesis> for Hypothesis {
    fn from(one: diagnosis::Hypothesis) -> Self {
        Self { causes: one.causes.bits().into(), reserved: 0, probability: one.probability }
    }
}

impl ChargeAmount {
    const NONE: Self =
        Self { share: 0.0, standard_uncertainty: 0.0, lowest: 0.0, highest: 0.0, mass_kg: 0.0, given: 0, bound: 0 };
}

impl From<diagnosis::ChargeAmount> for ChargeAmount {
    fn from(amount: diagnosis::ChargeAmount) -> Self {
        let mass = if amount.mass_kg.is_some() { SATLINE_AMOUNT_GIVEN_MASS } else { 0 };
        Self {
            share: amount.share,
            standard_uncertainty: amount.standard_uncertainty,
            lowest: amount.lowest,
            highest: amount.highest,
            mass_kg: amount.mass_kg.unwrap_or(0.0),
            given: SATLINE_AMOUNT_GIVEN_SHARE | mass,
            bound: amount.bound.number(),
        }
    }
}

/// Writes a list over an array, what is left of it as `none`, and gives how many were written.
fn list<T: Copy, U: Into<T>>(places: &mut [T], mut items: impl Iterator<Item = U>, none: T) -> u32 {
    let mut count = 0;
    for place in places {
        *place = none;
        if let Some(item) = items.next() {
            *place = item.into();
            count += 1;
        }
    }
    count
}

impl Evidence {
    const SIZE: u32 = size_of::<Self>() as u32;

    /// Writes a core finding over this one, place by place: a whole new one would double the stack.
    pub(crate) fn fill(&mut self, finding: &diagnosis::Finding) {
        self.precondition_count = list(&mut self.precondition, finding.preconditions.iter(), Precondition::NONE);
        self.feature_count = list(&mut self.feature, finding.features.iter(), Feature::NONE);
        self.hypothesis_count = list(&mut self.hypothesis, finding.hypotheses.iter(), Hypothesis::NONE);
        self.stands = finding.conclusion.causes.is_some().into();
        self.causes = finding.conclusion.causes.map_or(0, |causes| causes.bits().into());
        self.conclusion = finding.conclusion.reason.number();
        self.fits = finding.fits.into();
        self.amount = finding.amount.map_or(ChargeAmount::NONE, ChargeAmount::from);
    }

    /// A caller's evidence to be written; none where the pointer is null.
    ///
    /// # Safety
    /// `evidence` is null or may be read and written as its struct_size says.
    pub(crate) unsafe fn known<'a>(evidence: *mut Self) -> Answer<Option<&'a mut Self>> {
        // SAFETY: promised by the caller.
        match unsafe { evidence.as_mut() } {
            Some(evidence) if evidence.struct_size != Self::SIZE => Err(SATLINE_STATUS_BAD_STRUCT_SIZE),
            evidence => Ok(evidence),
        }
    }
}

/// Empties an evidence. struct_size: sizeof(satline_evidence), so that a newer library knows how large yours is.
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_evidence_init(evidence: *mut Evidence, struct_size: u32) -> i32 {
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes; zeros are one of these.
    unsafe { emptied(evidence, struct_size) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use satline::diagnosis::{
        Cause, CauseSet, Conclusion, ConclusionReason, FeatureName, Source, ValueBound, diagnose,
    };
    use std::vec::Vec;

    fn empty() -> Evidence {
        let mut evidence = core::mem::MaybeUninit::uninit();
        // SAFETY: a variable of ours, initialised by the call.
        unsafe {
            assert_eq!(satline_evidence_init(evidence.as_mut_ptr(), Evidence::SIZE), 0);
            evidence.assume_init()
        }
    }

    #[test]
    fn conclusion_and_amount_arrive_whatever_they_are() {
        let mut finding = diagnose(&satline::Reading::default());
        let amount = diagnosis::ChargeAmount {
            share: 0.12,
            standard_uncertainty: 0.03,
            lowest: 0.07,
            highest: 0.17,
            mass_kg: None,
            bound: ValueBound::AtLeast,
        };
        let pair = CauseSet::two(Cause::Undercharge, Cause::NonCondensables);
        let mut evidence = empty();
        for (causes, bits) in [(Some(pair), 1 << 1 | 1 << 7), (Some(CauseSet::HEALTHY), 0), (None, 0)] {
            finding.conclusion = Conclusion { causes, reason: ConclusionReason::TooClose };
            for (mass_kg, given) in [(Some(0.4), 3), (None, 1)] {
                finding.amount = Some(diagnosis::ChargeAmount { mass_kg, ..amount });
                finding.fits = mass_kg.is_some();
                evidence.fill(&finding);
                assert_eq!((evidence.stands, evidence.causes), (causes.is_some().into(), bits));
                assert_eq!((evidence.conclusion, evidence.fits), (4, finding.fits.into()));
                let told = evidence.amount;
                assert_eq!((told.given, told.bound, told.mass_kg), (given, 2, mass_kg.unwrap_or(0.0)));
                assert_eq!((told.share, told.standard_uncertainty), (0.12, 0.03));
                assert_eq!((told.lowest, told.highest), (0.07, 0.17));
            }
        }
        finding.amount = None;
        evidence.fill(&finding);
        assert_eq!((evidence.amount.given, evidence.amount.share, evidence.amount.bound), (0, 0.0, 0));
    }

    #[test]
    fn features_and_hypotheses_arrive_and_what_was_there_before_is_gone() {
        let feature = diagnosis::Feature {
            value: 1.0,
            standard_uncertainty: 2.0,
            expected: 3.0,
            expected_uncertainty: 4.0,
            source: Source::Protocol,
        };
        let mut places = [Feature { feature: 9, ..Feature::NONE }; 3];
        let count = list(&mut places, [(FeatureName::Airflow, feature)].into_iter(), Feature::NONE);
        let told = places[0];
        assert_eq!((count, told.feature, told.source), (1, 9, 3));
        let numbers = (told.value, told.standard_uncertainty, told.expected, told.expected_uncertainty);
        assert_eq!(numbers, (1.0, 2.0, 3.0, 4.0));
        assert_eq!((places[1].feature, places[2].feature), (0, 0));

        let causes = CauseSet::two(Cause::Overcharge, Cause::MeteringUnderfeeding);
        let likely = [(causes, 0.8), (CauseSet::HEALTHY, 0.2)]
            .map(|(causes, probability)| diagnosis::Hypothesis { causes, probability });
        let mut places = [Hypothesis { probability: 5.0, ..Hypothesis::NONE }; 3];
        assert_eq!(list(&mut places, likely.into_iter(), Hypothesis::NONE), 2);
        let told: Vec<_> = places.iter().map(|one| (one.causes, one.probability)).collect();
        assert_eq!(told, [(1 << 2 | 1 << 9, 0.8), (0, 0.2), (0, 0.0)]);
    }
}
