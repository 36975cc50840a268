//! The rules' verdict on the charge against all the evidence: what another fault explains better is not judged, and what
//! could hurt is not advised.

use super::cause::{Cause, CauseSet, Hypotheses};
use super::finding::{Advice, Charge, ChargeStatus, NextCheck, Reason, ValueBound};
use super::judge::{Judge, Verdict};
use super::limits::{LIKELY, OTHER_FAULT, SURE, WEIGHED_OVER_EXPECTED};
use super::precondition::{PreconditionStatus, Preconditions};
use super::weigh::Evidence;

/// How likely the likeliest other fault is than a charge fault.
fn likeliest_other(hypotheses: &Hypotheses, charge: Cause) -> f64 {
    let other = |cause: &&Cause| **cause != charge;
    Cause::ALL.iter().filter(other).map(|cause| hypotheses.marginal(*cause)).fold(0.0, f64::max)
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
            Charge::Correct if self.superheat_is_gone() => return Err(Reason::AtSaturation),
            _ => {}
        }
        Ok(self.acted_on(verdict, evidence))
    }

    /// Whether both signs of charge were measured, and only what to compare them with is missing.
    fn lacks_only_a_target(&self, reason: Reason) -> bool {
        let values = &self.computed.values;
        let both = values.superheat.is_some() && values.subcooling.is_some() && !self.computed.from_discharge;
        both && matches!(reason, Reason::NoTarget | Reason::MissingMeasurement)
    }

    fn superheat_is_gone(&self) -> bool {
        self.computed.values.superheat.is_some_and(|superheat| superheat.bound == ValueBound::AtLeast)
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
                && likeliest_other(evidence.hypotheses, cause) < OTHER_FAULT
                && evidence.fits
        });
        let stands = evidence.conclusion.causes == Some(agreed);
        let status = if stands { verdict.status } else { ChargeStatus::Provisional };
        // What the rules ask for first (a missing measurement, another look) comes first.
        let next_check = match verdict.next_check {
            NextCheck::None if !stands => evidence.next_check,
            NextCheck::FindLeak | NextCheck::ReadAgain | NextCheck::WeighCharge if !sure => evidence.next_check,
            other => other,
        };
        let advice = if sure { verdict.advice } else { Advice::DoNotCharge };
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
            let first = hypotheses.first().map_or(CauseSet::HEALTHY, |first| first.causes);
            return if first.is_empty() {
                Ok(verdict)
            } else if Cause::ALL.iter().any(|cause| hypotheses.marginal(*cause) > LIKELY) {
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
        // Without a target of its own, right takes more than likely.
        if evidence.hypotheses.probability(CauseSet::HEALTHY) < SURE {
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
