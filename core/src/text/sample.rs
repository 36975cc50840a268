//! Findings put together by hand, for the tests of how a finding is written and said (demo, invented).

use crate::diagnosis::{
    Advice, Cause, CauseSet, Charge, ChargeAmount, ChargeStatus, Conclusion, ConclusionReason, Feature, FeatureName,
    Features, Finding, Hypotheses, Hypothesis, NextCheck, PreconditionName, Preconditions, Reason, Source, ValueBound,
    diagnose,
};
use crate::reading::Reading;

/// A unit that is 12 % short, found by its own baseline; every number here is invented.
pub(super) fn undercharged(reading: &Reading) -> Finding {
    let mut finding = diagnose(reading);
    let mut features = Features::NONE;
    for (name, value, uncertainty, expected, expected_uncertainty, source) in [
        (FeatureName::Subcooling, 1.2, 0.6, 5.4, 0.8, Source::Baseline),
        (FeatureName::Superheat, 12.9, 0.7, 6.0, 1.2, Source::Baseline),
        (FeatureName::CondensingOverAmbient, 8.2, 0.5, 9.8, 0.9, Source::Class),
        (FeatureName::Discharge, 341.2, 0.5, 335.0, 3.0, Source::Class),
        (FeatureName::TemperatureSplit, 10.6, 0.6, 10.9, 0.9, Source::Protocol),
    ] {
        let feature = Feature { value, standard_uncertainty: uncertainty, expected, expected_uncertainty, source };
        features.put(name, feature);
    }
    let mut hypotheses = Hypotheses::NONE;
    for (causes, probability) in [
        (CauseSet::one(Cause::Undercharge), 0.93),
        (CauseSet::two(Cause::Undercharge, Cause::LowIndoorAirflow), 0.04),
        (CauseSet::one(Cause::LiquidLineRestriction), 0.02),
        (CauseSet::HEALTHY, 0.01),
    ] {
        hypotheses.push(Hypothesis { causes, probability });
    }
    let mut preconditions = Preconditions::UNKNOWN;
    for name in PreconditionName::ALL {
        if *name != PreconditionName::Airflow {
            preconditions.met(*name);
        }
    }
    finding.charge = Charge::Low;
    finding.charge_status = ChargeStatus::Confirmed;
    finding.reason = Reason::JudgedBySubcooling;
    finding.next_check = NextCheck::FindLeak;
    finding.advice = Advice::AddInSteps;
    finding.features = features;
    finding.hypotheses = hypotheses;
    finding.preconditions = preconditions;
    finding.conclusion =
        Conclusion { causes: Some(CauseSet::one(Cause::Undercharge)), reason: ConclusionReason::Stands };
    finding.fits = true;
    finding.amount = Some(ChargeAmount {
        share: 0.12,
        standard_uncertainty: 0.03,
        lowest: 0.07,
        highest: 0.17,
        mass_kg: Some(0.31),
        bound: ValueBound::Exact,
    });
    finding
}
