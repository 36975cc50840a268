//! What can hurt.

use super::finding::{Caution, Cautions, Charge, Reason, Value, ValueBound};
use super::judge::{Judge, Verdict, kelvin};
use super::limits::CONDENSING_OVER_AMBIENT_HIGHEST_F;
use crate::charge::Action;

impl Judge<'_> {
    /// What can hurt, in this reading and in what follows from it.
    pub(super) fn cautions(&self, verdict: &Verdict, action: Action) -> Cautions {
        let values = &self.computed.values;
        let mut cautions = Cautions::NONE;
        cautions.add(Caution::LicensedPractice);
        cautions.add(Caution::Pressure);
        cautions.add(Caution::Electricity);
        let at_saturation = |value: Option<Value>| value.is_some_and(|value| value.bound == ValueBound::AtLeast);
        let identity = self.reading.refrigerant.map(|refrigerant| refrigerant.identity);
        let adding = verdict.charge == Charge::Low;
        let given = [
            (Caution::FlammableRefrigerant, identity.is_some_and(|identity| identity.safety_class.is_flammable())),
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
