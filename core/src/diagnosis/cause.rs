//! What can be wrong with a unit, and sets of it.

use crate::charge::answers::answers;

answers! {
    /// A cause: a mechanism, not the part to be replaced.
    Cause {
        /// Too little refrigerant.
        Undercharge = 1 "undercharge" "too little refrigerant";
        /// Too much refrigerant.
        Overcharge = 2 "overcharge" "too much refrigerant";
        /// Too little air over the indoor coil: filter, blower, coil, registers.
        LowIndoorAirflow = 3 "low-indoor-airflow" "too little air over the indoor coil";
        /// Too little air over the outdoor coil: dirt, fan, its own hot air coming back.
        RestrictedCondenserAir = 4 "restricted-condenser-air" "too little air over the outdoor coil";
        /// A restriction in the liquid line: filter-drier, part-closed valve, kink.
        LiquidLineRestriction = 5 "liquid-line-restriction" "a restriction in the liquid line";
        /// Gas that leaks back inside the compressor, or past a reversing valve.
        CompressorLeakage = 6 "compressor-leakage" "gas leaking back through the compressor or reversing valve";
        /// Air or nitrogen in the circuit.
        NonCondensables = 7 "non-condensables" "air or nitrogen in the circuit";
        /// The metering device passes too much: loose bulb, wrong orifice, stuck open.
        MeteringOverfeeding = 8 "metering-overfeeding" "a metering device that passes too much";
        /// The metering device passes too little: lost bulb charge, wrong orifice, stuck or plugged.
        MeteringUnderfeeding = 9 "metering-underfeeding" "a metering device that passes too little";
        /// Something that none of the others describes.
        Unmodelled = 10 "unmodelled" "something that none of the known faults describes";
    }
}

/// A set of causes. Empty: a healthy unit.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Hash)]
pub struct CauseSet {
    bits: u16,
}

impl CauseSet {
    /// No cause: a healthy unit.
    pub const HEALTHY: Self = Self { bits: 0 };

    /// One cause.
    #[must_use]
    pub const fn one(cause: Cause) -> Self {
        Self::HEALTHY.with(cause)
    }

    /// Two causes.
    #[must_use]
    pub const fn two(first: Cause, second: Cause) -> Self {
        Self::one(first).with(second)
    }

    /// With one more.
    #[must_use]
    pub const fn with(self, cause: Cause) -> Self {
        Self { bits: self.bits | 1_u16.wrapping_shl(cause as u32) }
    }

    /// Whether a cause is among them.
    #[must_use]
    pub const fn contains(self, cause: Cause) -> bool {
        self.bits & 1_u16.wrapping_shl(cause as u32) != 0
    }

    /// Whether there is none.
    #[must_use]
    pub const fn is_empty(self) -> bool {
        self.bits == 0
    }

    /// How many there are.
    #[must_use]
    pub const fn len(self) -> usize {
        self.bits.count_ones() as usize
    }

    /// The causes, in the order of their numbers.
    pub fn iter(self) -> impl Iterator<Item = Cause> {
        Cause::ALL.iter().copied().filter(move |cause| self.contains(*cause))
    }

    /// As a bit set: bit `n` stands for the cause with number `n`.
    #[must_use]
    pub const fn bits(self) -> u16 {
        self.bits
    }
}

/// A set of causes with its probability.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Hypothesis {
    /// What would be wrong; empty for a healthy unit.
    pub causes: CauseSet,
    /// Probability, 0 to 1.
    pub probability: f64,
}

/// Most hypotheses that a finding weighs: healthy, nine causes, twelve pairs, and what is not modelled.
pub const HYPOTHESES_MAX: usize = 24;

/// The hypotheses of a finding, most likely first. Their probabilities sum to 1, unless nothing could be weighed: then
/// there is none.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Hypotheses {
    items: [Hypothesis; HYPOTHESES_MAX],
    count: usize,
}

impl Hypotheses {
    pub(crate) const NONE: Self =
        Self { items: [Hypothesis { causes: CauseSet::HEALTHY, probability: 0.0 }; HYPOTHESES_MAX], count: 0 };

    /// The hypotheses, most likely first.
    pub fn iter(&self) -> impl Iterator<Item = Hypothesis> + '_ {
        self.items.iter().copied().take(self.count)
    }

    /// The most likely one.
    #[must_use]
    pub fn first(&self) -> Option<Hypothesis> {
        self.iter().next()
    }

    /// Probability of exactly these causes.
    #[must_use]
    pub fn probability(&self, causes: CauseSet) -> f64 {
        self.iter().filter(|one| one.causes == causes).map(|one| one.probability).sum()
    }

    /// Probability that a cause is among what is wrong.
    #[must_use]
    pub fn marginal(&self, cause: Cause) -> f64 {
        self.iter().filter(|one| one.causes.contains(cause)).map(|one| one.probability).sum()
    }

    /// How many there are.
    #[must_use]
    pub const fn len(&self) -> usize {
        self.count
    }

    /// Whether nothing could be weighed.
    #[must_use]
    pub const fn is_empty(&self) -> bool {
        self.count == 0
    }

    pub(crate) const fn clear(&mut self) {
        *self = Self::NONE;
    }

    /// Adds to the probability of a set of causes.
    pub(crate) fn add(&mut self, causes: CauseSet, probability: f64) {
        match self.items.iter_mut().take(self.count).find(|one| one.causes == causes) {
            Some(known) => known.probability += probability,
            None => self.push(Hypothesis { causes, probability }),
        }
    }

    /// Divides all by their sum: they then sum to 1 to double precision.
    pub(crate) fn normalise(&mut self) {
        let sum: f64 = self.iter().map(|one| one.probability).sum();
        if sum > 0.0 {
            self.items.iter_mut().take(self.count).for_each(|one| one.probability /= sum);
        }
    }

    pub(crate) fn push(&mut self, hypothesis: Hypothesis) {
        if let Some(place) = self.items.get_mut(self.count) {
            *place = hypothesis;
            self.count += 1;
        }
    }

    /// Most likely first; equal ones in the order they came.
    pub(crate) fn sort(&mut self) {
        for end in 1..self.count {
            let mut place = end;
            while place > 0 {
                let (Some(left), Some(right)) = (self.items.get(place - 1).copied(), self.items.get(place).copied())
                else {
                    break;
                };
                if left.probability >= right.probability {
                    break;
                }
                self.items.swap(place - 1, place);
                place -= 1;
            }
        }
    }
}

answers! {
    /// Why a finding concludes as it does.
    ConclusionReason {
        /// The evidence singles this out clearly enough to act on.
        Stands = 1 "stands" "The evidence singles this out clearly enough to act on.";
        /// Something that must be so before a diagnosis is not so.
        PreconditionNotMet = 2 "precondition-not-met"
            "Something that must hold before a diagnosis does not hold; see the preconditions.";
        /// Too little was measured to weigh causes.
        TooLittleMeasured = 3 "too-little-measured" "Too little was measured to tell causes apart.";
        /// The leading explanations are too close.
        TooClose = 4 "too-close" "The leading explanations are too close to act on one of them.";
        /// Nothing that is known fits the readings.
        NothingFits = 5 "nothing-fits"
            "No known fault fits these readings: suspect an instrument, a second fault, or the data of the unit.";
    }
}

/// What a finding stands by.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Conclusion {
    /// The causes it stands by, empty for a healthy unit; `None` when it cannot tell.
    pub causes: Option<CauseSet>,
    /// Why.
    pub reason: ConclusionReason,
}

impl Conclusion {
    pub(crate) const fn cannot_tell(reason: ConclusionReason) -> Self {
        Self { causes: None, reason }
    }
}
