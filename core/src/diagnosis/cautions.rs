//! What can hurt.

use super::cause::Cause;
use super::finding::{Caution, Cautions, Charge, Reason, Value, ValueBound};
use super::judge::{Judge, Verdict, kelvin};
use super::limits::{CONDENSING_OVER_AMBIENT_HIGHEST_F, DISCHARGE_HIGHEST_F, LIKELY};
use super::weigh::Evidence;
use crate::charge::Action;
use crate::reading::RefrigerantCondition;

impl Judge<'_> {
    /// What can hurt, in this reading and in what follows from it.
    pub(super) fn cautions(&self, verdict: &Verdict, action: Action, evidence: Option<&Evidence>) -> Cautions {
        let values = &self.computed.values;
        let mut cautions = Cautions::NONE;
        cautions.add(Caution::LicensedPractice);
        cautions.add(Caution::Pressure);
        cautions.add(Caution::Electricity);
        let at_saturation = |value: Option<Value>| value.is_some_and(|value| value.bound == ValueBound::AtLeast);
        let identity = self.reading.refrigerant.map(|refrigerant| refrigerant.identity);
        let adding = verdict.charge == Charge::Low;
        let likely = |cause| evidence.is_some_and(|evidence| evidence.hypotheses.marginal(cause) > LIKELY);
        let low = adding || likely(Cause::Undercharge);
        // Whoever is told to add, by whomever, or finds a circuit empty, may stand in what leaked out.
        let leaks = low
            || action == Action::Add
            || matches!(verdict.reason, Reason::HoseNotSeated | Reason::SuctionBelowAtmosphere)
            || self.reading.refrigerant_condition == Some(RefrigerantCondition::LeakShifted);
        let high = verdict.charge == Charge::High || likely(Cause::Overcharge);
        let wet = at_saturation(values.superheat);
        let flammable = identity.is_some_and(|identity| identity.safety_class.is_flammable());
        let given = [
            (Caution::FlammableLeak, flammable && leaks),
            (Caution::FloodedCompressor, wet || high),
            (Caution::SweatingShell, wet || high),
            (
                Caution::HotDischarge,
                self.reading.discharge_line_temperature.is_some_and(|line| line.fahrenheit() > DISCHARGE_HIGHEST_F),
            ),
            (Caution::SuctionBelowAtmosphere, verdict.reason == Reason::SuctionBelowAtmosphere),
            (Caution::FlammableRefrigerant, flammable),
            (Caution::UnknownRefrigerant, identity.is_none()),
            (Caution::Freezing, self.coil_is_near_freezing()),
            (Caution::Floodback, at_saturation(values.superheat)),
            (Caution::RecoverOnly, verdict.charge == Charge::High || action == Action::Remove),
            (Caution::SmallSteps, adding),
            (Caution::LiquidFromCylinder, adding && identity.is_some_and(|identity| identity.components.len() > 1)),
            (Caution::AmountUnknown, at_saturation(values.superheat) || at_saturation(values.subcooling)),
            (Caution::DischargePressureUsed, self.computed.from_discharge),
            (
                Caution::HighHead,
                verdict.reason == Reason::CondenserAirFirst
                    || values
                        .condensing_over_ambient
                        .is_some_and(|over| over.value > kelvin(CONDENSING_OVER_AMBIENT_HIGHEST_F)),
            ),
        ];
        for (caution, applies) in given {
            if applies {
                cautions.add(caution);
            }
        }
        cautions
    }
}
