//! The rules' verdict on the charge against all the evidence: what another fault explains better is not judged, and what
//! could hurt is not advised.

use super::cause::{Cause, CauseSet, Hypotheses};
use super::feature::{FeatureName, Source};
use super::finding::{Advice, Charge, ChargeStatus, NextCheck, Reason, ValueBound};
use super::judge::{Judge, Verdict, kelvin};
use super::limits::{
    CONDENSING_OVER_AMBIENT_ALONE_F, FAULT_MOST, HEALTHY_LEAST, LEFT_STANDARDS, LIKELY, OTHER_FAULT, SUPERHEAT_LEFT_K,
    SURE, TOP_UP_MOST, WEIGHED_OVER_EXPECTED,
};
use super::precondition::{PreconditionStatus, Preconditions};
use super::weigh::Evidence;

/// How likely the likeliest other fault is than a charge fault.
fn likeliest_other(hypotheses: &Hypotheses, charge: Cause) -> f64 {
    let other = |cause: &&Cause| **cause != charge;
    Cause::ALL.iter().filter(other).map(|cause| hypotheses.marginal(*cause)).fold(0.0, f64::max)
}

/// How likely the likeliest fault is.
fn likeliest_fault(hypotheses: &Hypotheses) -> f64 {
    Cause::ALL.iter().map(|cause| hypotheses.marginal(*cause)).fold(0.0, f64::max)
}

impl Judge<'_> {
    /// The verdict that stands once all is weighed.
    pub(super) fn reconciled(
        &self,
        rules: Result<Verdict, Reason>,
        evidence: Option<&Evidence>,
        preconditions: &Preconditions,
    ) -> Result<Verdict, Reason> {
        let verdict = match (rules, evidence) {
            (Ok(verdict), None) => verdict,
            (Ok(verdict), Some(evidence)) => supported(verdict, evidence)?,
            (Err(reason), Some(evidence)) if self.lacks_only_a_target(reason) => by_evidence(reason, evidence)?,
            (Err(reason), _) => return Err(reason),
        };
        if matches!(verdict.charge, Charge::Low | Charge::High) {
            let missed = preconditions.iter().find(|one| one.status == PreconditionStatus::NotMet);
            if let Some(reason) = missed.and_then(|one| one.reason) {
                return Err(reason);
            }
        }
        match verdict.charge {
            Charge::Low => self.may_add()?,
            // Liquid may be on its way to the compressor: that is never right.
            Charge::Correct if self.superheat_is_nearly_gone() => return Err(Reason::AtSaturation),
            _ => {}
        }
        Ok(self.acted_on(verdict, evidence))
    }

    /// Whether both signs of charge were measured, and only what to compare them with is missing.
    fn lacks_only_a_target(&self, reason: Reason) -> bool {
        let values = &self.computed.values;
        let both = values.superheat.is_some() && values.subcooling.is_some() && !self.computed.from_discharge;
        both && self.reading.outdoor_dry_bulb.is_some()
            && matches!(reason, Reason::NoTarget | Reason::MissingMeasurement)
    }

    fn superheat_is_gone(&self) -> bool {
        self.computed.values.superheat.is_some_and(|superheat| superheat.bound == ValueBound::AtLeast)
    }

    fn superheat_is_nearly_gone(&self) -> bool {
        let superheat = self.computed.values.superheat;
        superheat.is_some_and(|one| one.value <= LEFT_STANDARDS * one.standard_uncertainty + SUPERHEAT_LEFT_K)
    }

    /// Whether something speaks for the outdoor coil: its leaving air, this unit's own healthy readings, or a condensing
    /// temperature so low that a blocked coil has no part in it. Low subcooling alone does not: on a tested unit with all
    /// its charge a blocked coil took it from 9.7 to 0.6 °F.
    fn condenser_is_ruled_out(&self, evidence: &Evidence) -> bool {
        let over = self.computed.values.condensing_over_ambient;
        let by_baseline = evidence
            .features
            .get(FeatureName::CondensingOverAmbient)
            .is_some_and(|feature| feature.source == Source::Baseline);
        by_baseline
            || self.reading.condenser_leaving_dry_bulb.is_some()
            || over.is_some_and(|over| over.value < kelvin(CONDENSING_OVER_AMBIENT_ALONE_F))
    }

    /// What forbids adding whatever else is likely.
    fn may_add(&self) -> Result<(), Reason> {
        if self.superheat_is_gone() {
            return Err(Reason::AtSaturation);
        }
        if self.coil_is_near_freezing() {
            return Err(Reason::CoilFreezing);
        }
        let over = match (self.reading.weighed_charge, self.reading.expected_charge) {
            (Some(weighed), Some(expected)) => weighed.kilograms() / expected.kilograms() - 1.0,
            _ => f64::NEG_INFINITY,
        };
        if over > WEIGHED_OVER_EXPECTED { Err(Reason::ChargeAlreadyWeighed) } else { Ok(()) }
    }

    /// With the advice that the evidence allows, the status that it confirms, and its next check.
    fn acted_on(&self, verdict: Verdict, evidence: Option<&Evidence>) -> Verdict {
        let Some(evidence) = evidence else { return verdict };
        let (cause, agreed) = match verdict.charge {
            Charge::Low => (Some(Cause::Undercharge), CauseSet::one(Cause::Undercharge)),
            Charge::High => (Some(Cause::Overcharge), CauseSet::one(Cause::Overcharge)),
            _ => (None, CauseSet::HEALTHY),
        };
        let sure = cause.is_none_or(|cause| {
            evidence.hypotheses.marginal(cause) >= SURE
                && likeliest_other(&evidence.hypotheses, cause) < OTHER_FAULT
                && evidence.fits
        });
        let stands = evidence.conclusion.causes == Some(agreed);
        let stands = stands && (cause.is_some() || evidence.hypotheses.probability(CauseSet::HEALTHY) >= SURE);
        let status = if stands { verdict.status } else { ChargeStatus::Provisional };
        // What the rules ask for first (a missing measurement, another look) comes first.
        let next_check = match verdict.next_check {
            NextCheck::None if !stands => evidence.next_check,
            NextCheck::FindLeak | NextCheck::ReadAgain | NextCheck::WeighCharge if !sure => evidence.next_check,
            other => other,
        };
        let coil_in_doubt = verdict.charge == Charge::Low && !self.condenser_is_ruled_out(evidence);
        let (sure, next_check) =
            if sure && coil_in_doubt { (false, NextCheck::MeasureCondenserAir) } else { (sure, next_check) };
        let much = evidence.amount.is_none_or(|amount| amount.share.abs() > TOP_UP_MOST);
        let advice = match verdict.advice {
            _ if !sure => Advice::DoNotCharge,
            Advice::AddInSteps if much => Advice::WeighIn,
            advice => advice,
        };
        Verdict { status, next_check, advice, ..verdict }
    }
}

/// A verdict of the rules, unless the evidence speaks for something else.
fn supported(verdict: Verdict, evidence: &Evidence) -> Result<Verdict, Reason> {
    let hypotheses = &evidence.hypotheses;
    let cause = match verdict.charge {
        Charge::Low => Cause::Undercharge,
        Charge::High => Cause::Overcharge,
        Charge::Correct => {
            let other = likeliest_fault(hypotheses);
            return if hypotheses.probability(CauseSet::HEALTHY) >= HEALTHY_LEAST && other <= FAULT_MOST {
                Ok(verdict)
            } else if other > LIKELY {
                Err(Reason::OtherCauseLikelier)
            } else {
                Err(Reason::EvidenceTooClose)
            };
        }
        Charge::NotJudged => return Ok(verdict),
    };
    let likely = hypotheses.marginal(cause);
    if likeliest_other(hypotheses, cause) > likely || evidence.conclusion.causes.is_some_and(|all| !all.contains(cause))
    {
        Err(Reason::OtherCauseLikelier)
    } else if likely < LIKELY {
        Err(Reason::EvidenceTooClose)
    } else {
        Ok(verdict)
    }
}

/// A verdict where the rules have no target, from all that was measured together.
fn by_evidence(reason: Reason, evidence: &Evidence) -> Result<Verdict, Reason> {
    let causes = evidence.conclusion.causes.ok_or(reason)?;
    let (charge, advice) = if causes.is_empty() {
        // Without a target of its own, right takes more than likely; and where the table of an orifice is blank, hardly any
        // superheat is left to tell it from flooding.
        if reason == Reason::NoTarget || evidence.hypotheses.probability(CauseSet::HEALTHY) < SURE {
            return Err(reason);
        }
        (Charge::Correct, Advice::LeaveCharge)
    } else if causes == CauseSet::one(Cause::Undercharge) {
        (Charge::Low, Advice::AddInSteps)
    } else if causes == CauseSet::one(Cause::Overcharge) {
        (Charge::High, Advice::Recover)
    } else {
        return Err(Reason::OtherCauseLikelier);
    };
    let (status, reason) = (ChargeStatus::Provisional, Reason::JudgedByEvidence);
    Ok(Verdict { charge, status, reason, next_check: evidence.next_check, advice })
}
