//! The rules' verdict on the charge against all the evidence: what another fault explains better is not judged, and what
//! could hurt is not advised.

use super::amount::ChargeAmount;
use super::cause::{Cause, CauseSet, Hypotheses};
use super::feature::{FeatureName, Source};
use super::finding::{Advice, Charge, ChargeStatus, NextCheck, Reason, Value, ValueBound};
use super::judge::{Judge, Verdict, kelvin};
use super::limits::{
    CONDENSING_OVER_AMBIENT_ALONE_F, FAULT_MOST, HEALTHY_LEAST, HIGHEST_RETURN_F, LEFT_STANDARDS, LIKELY, OTHER_FAULT,
    SUPERHEAT_LEFT_K, SUPERHEAT_NEAR_ZERO_F, SURE, TOP_UP_MOST, TOP_UP_WITHOUT_TARGET_MOST, WEIGHED_OVER_EXPECTED,
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
            (Ok(Verdict { charge: Charge::Low, .. }), _) if self.holds_enough() => {
                return Err(Reason::ChargeAlreadyWeighed);
            }
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
            Charge::Low if self.holds_enough() => return Err(Reason::ChargeAlreadyWeighed),
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

    /// An amount is a least one as soon as the value that would tell it is: both are shown, and must agree.
    pub(super) fn one_sided(&self, amount: ChargeAmount) -> ChargeAmount {
        let values = &self.computed.values;
        let tells = if amount.share > 0.0 { values.subcooling } else { values.superheat };
        if tells.is_some_and(|value| value.bound == ValueBound::AtLeast) {
            ChargeAmount { bound: ValueBound::AtLeast, ..amount }
        } else {
            amount
        }
    }

    /// What forbids adding whatever else is likely.
    fn may_add(&self) -> Result<(), Reason> {
        let near_zero = |superheat: Value| superheat.value < kelvin(SUPERHEAT_NEAR_ZERO_F);
        if self.superheat_is_gone() || self.computed.values.superheat.is_some_and(near_zero) {
            return Err(Reason::AtSaturation);
        }
        if self.coil_is_near_freezing() {
            return Err(Reason::CoilFreezing);
        }
        if self.condenser_is_in_doubt() {
            return Err(Reason::CondenserAirFirst);
        }
        Ok(())
    }

    /// What the scale says against adding.
    fn holds_enough(&self) -> bool {
        let over = match (self.reading.weighed_charge, self.reading.expected_charge) {
            (Some(weighed), Some(expected)) => weighed.kilograms() / expected.kilograms() - 1.0,
            _ => f64::NEG_INFINITY,
        };
        over > WEIGHED_OVER_EXPECTED
    }

    /// What must be looked at before refrigerant is added, however likely a lack of it is: the head pressure over the outdoor
    /// air; and on a valve that holds its superheat, or where that pressure is not low, whether the outdoor coil gets its
    /// air, for without it a full unit may lose its subcooling too (measured on one unit: 9.7 to 0.6 °F).
    fn unseen(&self, evidence: &Evidence) -> Option<NextCheck> {
        // Within the thermometer's error the air may still be too warm: judged, not acted on.
        if self.reading.return_dry_bulb.is_some_and(|air| air.fahrenheit() > HIGHEST_RETURN_F + 1e-9) {
            return Some(NextCheck::Settle);
        }
        if self.computed.values.condensing_over_ambient.is_none() {
            let no_air = self.reading.outdoor_dry_bulb.is_none();
            return Some(if no_air { NextCheck::TakeMissing } else { NextCheck::MeasureLiquidSide });
        }
        let seen = evidence.features.get(FeatureName::CondenserAirRise).is_some();
        // A lack of refrigerant lowers the condensing temperature, by more than its uncertainty to be told.
        let lowered = evidence
            .features
            .get(FeatureName::CondensingOverAmbient)
            .is_some_and(|over| over.source == Source::Baseline && over.standard_deviations() < -1.0);
        let high = self
            .computed
            .values
            .condensing_over_ambient
            .is_some_and(|over| over.value >= kelvin(CONDENSING_OVER_AMBIENT_ALONE_F));
        ((self.valve_holds() || high) && !seen && !lowered).then_some(NextCheck::MeasureCondenserAir)
    }

    /// With the advice that the evidence allows, the status that it confirms, and its next check.
    fn acted_on(&self, verdict: Verdict, evidence: Option<&Evidence>) -> Verdict {
        // A rule alone does not know what else could show the same.
        let Some(evidence) = evidence else {
            let advice = if verdict.charge == Charge::Correct { verdict.advice } else { Advice::DoNotCharge };
            return Verdict { status: ChargeStatus::Provisional, advice, ..verdict };
        };
        let (cause, agreed) = match verdict.charge {
            Charge::Low => (Some(Cause::Undercharge), CauseSet::one(Cause::Undercharge)),
            Charge::High => (Some(Cause::Overcharge), CauseSet::one(Cause::Overcharge)),
            _ => (None, CauseSet::HEALTHY),
        };
        let stands = evidence.conclusion.causes == Some(agreed);
        // A charge is acted on only where the finding stands by it.
        let sure = cause.is_none_or(|cause| {
            stands
                && evidence.hypotheses.marginal(cause) >= SURE
                && likeliest_other(evidence.hypotheses, cause) < OTHER_FAULT
                && evidence.fits
        });
        let stands = stands && (cause.is_some() || evidence.hypotheses.probability(CauseSet::HEALTHY) >= SURE);
        // What the rules ask for first (a missing measurement, another look) comes first.
        let next_check = match verdict.next_check {
            NextCheck::None if !stands => evidence.next_check,
            NextCheck::FindLeak | NextCheck::ReadAgain | NextCheck::WeighCharge if !sure => evidence.next_check,
            other => other,
        };
        let unseen = match verdict.charge {
            Charge::Low => self.unseen(evidence),
            Charge::High => air_inside(evidence),
            _ => None,
        };
        let next_check = match (unseen, next_check) {
            (Some(look), NextCheck::None | NextCheck::FindLeak) => look,
            (_, other) => other,
        };
        let status = if stands && unseen.is_none() { verdict.status } else { ChargeStatus::Provisional };
        let by_target = verdict.reason != Reason::JudgedByEvidence;
        let most = if by_target { TOP_UP_MOST } else { TOP_UP_WITHOUT_TARGET_MOST };
        let much = evidence.amount.is_none_or(|amount| amount.share.abs() > most);
        let advice = match verdict.advice {
            _ if !sure || unseen.is_some() => Advice::DoNotCharge,
            Advice::AddInSteps if much => Advice::WeighIn,
            advice => advice,
        };
        Verdict { status, next_check, advice, ..verdict }
    }
}

/// What must be looked at before refrigerant is taken, however likely too much of it is: air or nitrogen inside piles up
/// subcooling as well, and only a two-phase surface of the coil, or the scale, tells them apart.
fn air_inside(evidence: &Evidence) -> Option<NextCheck> {
    let told = [FeatureName::SurfaceDifference, FeatureName::WeighedCharge];
    told.iter().all(|name| evidence.features.get(*name).is_none()).then_some(NextCheck::MeasureCoilSurface)
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
