//! A finding before anything was judged: the place that a diagnosis writes over.

use super::cause::{Conclusion, ConclusionReason, Hypotheses};
use super::feature::Features;
use super::finding::{Advice, Cautions, Charge, ChargeStatus, Finding, Missing, NextCheck, Reason, Values};
use super::precondition::Preconditions;
use crate::charge::{Action, Protocol, ProtocolVerdict, SplitCheck};

impl Finding {
    /// Before anything was judged; what [`Diagnosis::finish_onto`](super::Diagnosis::finish_onto) writes over.
    #[must_use]
    pub fn nothing() -> Self {
        let Protocol { edition, role } = Protocol::default();
        Self {
            charge: Charge::NotJudged,
            charge_status: ChargeStatus::Provisional,
            reason: Reason::MissingMeasurement,
            protocol: ProtocolVerdict {
                action: Action::NoValidTest,
                reason: None,
                edition,
                role,
                split: SplitCheck::NotTested,
            },
            values: Values::default(),
            missing: Missing::NONE,
            next_check: NextCheck::TakeMissing,
            advice: Advice::DoNotCharge,
            cautions: Cautions::NONE,
            preconditions: Preconditions::UNKNOWN,
            features: Features::NONE,
            hypotheses: Hypotheses::NONE,
            conclusion: Conclusion::cannot_tell(ConclusionReason::TooLittleMeasured),
            fits: true,
            amount: None,
        }
    }
}
