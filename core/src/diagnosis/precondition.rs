//! What must hold before a diagnosis, and whether it does.

use super::finding::Reason;
use crate::charge::answers::answers;

answers! {
    /// Something that must hold before superheat, subcooling and causes are judged.
    PreconditionName {
        /// Settled since start or the last change.
        Steady = 1 "steady" "the unit has run long enough without a change";
        /// Cooling at full capacity without interruption: no pull-down, defrost, fan cycling or head-pressure control.
        Operation = 2 "operation" "the unit runs steadily, without defrost, fan cycling or head-pressure control";
        /// One speed, or held in the maker's charging mode.
        Compressor = 3 "compressor" "the compressor runs at one speed or in its maker's charging mode";
        /// Outdoor air within the protocol's range.
        OutdoorAir = 4 "outdoor-air" "the outdoor air is warm enough for a charge test";
        /// Return air within the protocol's range.
        IndoorAir = 5 "indoor-air" "the return air is warm enough for a charge test";
        /// Return wet bulb plausible against its dry bulb.
        WetBulb = 6 "wet-bulb" "the return wet bulb fits its dry bulb";
        /// Indoor airflow known, by measurement or by the temperature split.
        Airflow = 7 "airflow" "the airflow over the indoor coil is known and right";
        /// Pressures that a running unit can show, hoses in their places.
        Pressures = 8 "pressures" "the pressures are what a running unit with open valves and seated hoses shows";
        /// Line temperatures that fit pressures and air.
        LineTemperatures = 9 "line-temperatures" "the line temperatures fit their pressures and the air";
        /// Metering device and its place known.
        Metering = 10 "metering" "the metering device and its place are known";
        /// Refrigerant known, as labelled, and plausible for its pressures.
        Refrigerant = 11 "refrigerant" "the refrigerant is known, unmixed, and fits its pressures";
    }
}

answers! {
    /// Whether a precondition holds.
    PreconditionStatus {
        /// It holds.
        Met = 1 "met" "yes";
        /// It does not hold.
        NotMet = 2 "not-met" "no";
        /// The reading does not say.
        Unknown = 3 "unknown" "not known";
    }
}

/// A precondition with its answer.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Precondition {
    /// Which.
    pub name: PreconditionName,
    /// Whether it holds.
    pub status: PreconditionStatus,
    /// What speaks against it, where it does not hold.
    pub reason: Option<Reason>,
}

/// How many preconditions there are.
pub const PRECONDITION_COUNT: usize = PreconditionName::ALL.len();

/// The preconditions of a finding, in the order of their numbers.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Preconditions {
    items: [(PreconditionStatus, Option<Reason>); PRECONDITION_COUNT],
}

impl Preconditions {
    pub(crate) const UNKNOWN: Self = Self { items: [(PreconditionStatus::Unknown, None); PRECONDITION_COUNT] };

    /// The preconditions, in the order of their numbers.
    pub fn iter(&self) -> impl Iterator<Item = Precondition> + '_ {
        PreconditionName::ALL.iter().zip(self.items).map(|(name, (status, reason))| Precondition {
            name: *name,
            status,
            reason,
        })
    }

    /// The answer to one.
    #[must_use]
    pub fn status(&self, name: PreconditionName) -> PreconditionStatus {
        self.iter().find(|one| one.name == name).map_or(PreconditionStatus::Unknown, |one| one.status)
    }

    /// Whether one of them is known not to hold.
    #[must_use]
    pub fn any_missed(&self) -> bool {
        self.iter().any(|one| one.status == PreconditionStatus::NotMet)
    }

    pub(crate) fn met(&mut self, name: PreconditionName) {
        self.put(name, PreconditionStatus::Met, None);
    }

    pub(crate) fn not_met(&mut self, name: PreconditionName, reason: Reason) {
        self.put(name, PreconditionStatus::NotMet, Some(reason));
    }

    /// A miss is not overwritten: the first reason stands.
    fn put(&mut self, name: PreconditionName, status: PreconditionStatus, reason: Option<Reason>) {
        let index = (name.number() as usize).wrapping_sub(1);
        if let Some(place) = self.items.get_mut(index) {
            if place.0 != PreconditionStatus::NotMet {
                *place = (status, reason);
            }
        }
    }
}
