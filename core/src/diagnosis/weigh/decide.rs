//! What to stand by, by expected harm.

use crate::diagnosis::cause::{Cause, CauseSet, Conclusion, ConclusionReason, Hypotheses};

/// Harm of saying that one cannot tell: another measurement, another quarter of an hour.
const CANNOT_TELL: f64 = 0.35;
/// Harm of naming the wrong fault, or a fault where there is none, or none where there is one: a day's work.
const WRONG: f64 = 1.0;
/// Harm of changing the charge on top of another fault: a new fault, and the old one hidden.
const WRONG_CHARGE: f64 = 3.0;
/// Harm of correcting a charge that is off while another fault stands beside it: its reading was not to be trusted.
const CHARGE_OF_TWO: f64 = 1.5;
/// Harm of naming one of two faults: the other shows once the first is mended.
const ONE_OF_TWO: f64 = 0.5;
/// Harm of taking a restriction for a metering device that passes too little, or the other way round: both hold refrigerant
/// back between the outdoor unit and the coil, and both are looked for along the same line.
const HELD_BACK: f64 = 0.5;
/// Harm of naming a second fault that is not there.
const ONE_TOO_MANY: f64 = 0.8;

/// Harm of standing by something when something else is true.
fn harm(said: CauseSet, truth: CauseSet) -> f64 {
    if said == truth {
        return 0.0;
    }
    let of_charge = |set: CauseSet| set.contains(Cause::Undercharge) || set.contains(Cause::Overcharge);
    let both = CauseSet::HEALTHY;
    let shared = said.iter().filter(|cause| truth.contains(*cause)).fold(both, CauseSet::with);
    let wrong_charge = said.iter().any(|cause| of_charge(CauseSet::one(cause)) && !truth.contains(cause));
    let only_charge = said.len() == 1 && of_charge(said);
    if wrong_charge {
        WRONG_CHARGE
    } else if only_charge && truth.len() > 1 {
        CHARGE_OF_TWO
    } else if holds_back(said) && holds_back(truth) {
        HELD_BACK
    } else if !said.is_empty() && shared == said {
        ONE_OF_TWO
    } else if !truth.is_empty() && shared == truth {
        ONE_TOO_MANY
    } else {
        WRONG
    }
}

/// Whether all that is wrong holds refrigerant back before the coil.
fn holds_back(causes: CauseSet) -> bool {
    causes == CauseSet::one(Cause::LiquidLineRestriction) || causes == CauseSet::one(Cause::MeteringUnderfeeding)
}

/// The hypothesis whose expected harm is least, unless saying nothing harms less.
pub(super) fn decide(hypotheses: &Hypotheses) -> Conclusion {
    let expected =
        |said: CauseSet| -> f64 { hypotheses.iter().map(|truth| truth.probability * harm(said, truth.causes)).sum() };
    let mut best = (CANNOT_TELL, None);
    // What could be stood by is among the likeliest few: a hypothesis below one half is stood by never.
    for candidate in hypotheses.iter().take(3) {
        if candidate.causes.contains(Cause::Unmodelled) {
            continue;
        }
        let harm = expected(candidate.causes);
        if harm < best.0 {
            best = (harm, Some(candidate.causes));
        }
    }
    match best.1 {
        Some(causes) => Conclusion { causes: Some(causes), reason: ConclusionReason::Stands },
        None => Conclusion::cannot_tell(ConclusionReason::TooClose),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::diagnosis::cause::Hypothesis;

    fn of(all: &[(CauseSet, f64)]) -> Hypotheses {
        let mut hypotheses = Hypotheses::NONE;
        for (causes, probability) in all {
            hypotheses.push(Hypothesis { causes: *causes, probability: *probability });
        }
        hypotheses
    }

    #[test]
    fn charge_takes_more_than_air() {
        let (low, air) = (CauseSet::one(Cause::Undercharge), CauseSet::one(Cause::LowIndoorAirflow));
        let at = |first, second, share: f64| decide(&of(&[(first, share), (second, 1.0 - share)])).causes;
        assert_eq!(at(air, low, 0.7), Some(air));
        assert_eq!(at(low, air, 0.7), None);
        assert_eq!(at(low, air, 0.95), Some(low));
        // One of two: the air can be mended first, the charge cannot.
        let both = CauseSet::two(Cause::Undercharge, Cause::LowIndoorAirflow);
        assert_eq!(at(air, both, 0.55), Some(air));
        assert_eq!(at(low, both, 0.55), None);
    }

    #[test]
    fn what_is_not_modelled_is_never_stood_by() {
        let unknown = CauseSet::one(Cause::Unmodelled);
        assert_eq!(decide(&of(&[(unknown, 0.9), (CauseSet::HEALTHY, 0.1)])).causes, None);
    }
}
