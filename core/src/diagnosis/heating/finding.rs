//! The answer for heating. Fixed size, no heap.

use super::answers::{Frost, HeatingCapacity, HeatingCaution, HeatingLimit, HeatingProblem, ReversingValve};
use super::chart::HeatingChartFinding;
use super::missing::HeatingMissing;
use crate::diagnosis::Value;
use crate::quantity::AirTemperature;
use core::marker::PhantomData;

/// Everything computed. A value that its fields do not allow is `None`.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
#[non_exhaustive]
pub struct HeatingValues {
    /// Supply minus return dry bulb, K.
    pub supply_rise: Option<Value>,
    /// Heat given to the indoor air, W: the airflow's mass times its specific heat times the rise.
    pub delivered_capacity: Option<Value>,
    /// Delivered over nominal capacity, at today's outdoor temperature.
    pub capacity_ratio: Option<Value>,
    /// Dew temperature at the compressor's suction pressure, K: where the outdoor coil evaporates, or a little below.
    pub evaporating_temperature: Option<Value>,
    /// The outdoor coil's surface, K: from the evaporating temperature, else from a clamp on a return bend.
    pub coil_surface_temperature: Option<Value>,
    /// Outdoor dry bulb minus the coil's surface, K.
    pub outdoor_over_coil: Option<Value>,
    /// The coil's surface minus the outdoor dew (frost) point, K: below zero the coil gathers water.
    pub coil_over_dew_point: Option<Value>,
    /// Rise of the suction gas through the reversing valve, K.
    pub valve_suction_rise: Option<Value>,
}

impl HeatingValues {
    /// All of them: name with its unit, title in plain words, and the value.
    #[must_use]
    pub const fn all(&self) -> [(&'static str, &'static str, Option<Value>); 8] {
        [
            ("supply_rise_k", "supply rise", self.supply_rise),
            ("delivered_capacity_w", "heat delivered", self.delivered_capacity),
            ("capacity_ratio", "delivered over nominal capacity", self.capacity_ratio),
            ("evaporating_temperature_k", "evaporating (dew) temperature", self.evaporating_temperature),
            ("coil_surface_temperature_k", "outdoor coil surface", self.coil_surface_temperature),
            ("outdoor_over_coil_k", "outdoor air over coil surface", self.outdoor_over_coil),
            ("coil_over_dew_point_k", "coil surface over outdoor dew point", self.coil_over_dew_point),
            ("valve_suction_rise_k", "rise of suction gas in the reversing valve", self.valve_suction_rise),
        ]
    }
}

/// A set of answers of one kind.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct HeatingSet<T> {
    bits: u32,
    kind: PhantomData<T>,
}

/// An answer that can be in a [`HeatingSet`].
pub trait InSet: Copy + 'static {
    /// Every one of them.
    const EVERY: &'static [Self];
    /// Its bit.
    fn bit(self) -> u32;
}

macro_rules! in_set {
    ($($name:ident)+) => {$(
        impl InSet for $name {
            const EVERY: &'static [Self] = Self::ALL;
            fn bit(self) -> u32 {
                1_u32.wrapping_shl(self as u32)
            }
        }
    )+};
}
in_set! { HeatingLimit HeatingProblem HeatingCaution }

impl<T: InSet> HeatingSet<T> {
    pub(super) const NONE: Self = Self { bits: 0, kind: PhantomData };

    pub(super) fn add_if(&mut self, applies: bool, answer: T) {
        if applies {
            self.bits |= answer.bit();
        }
    }

    /// Whether that answer is in it.
    #[must_use]
    pub fn contains(&self, answer: T) -> bool {
        self.bits & answer.bit() != 0
    }

    /// Whether there is none.
    #[must_use]
    pub const fn is_empty(&self) -> bool {
        self.bits == 0
    }

    /// The answers, in the order of their numbers.
    pub fn iter(&self) -> impl Iterator<Item = T> + '_ {
        T::EVERY.iter().copied().filter(|answer| self.contains(*answer))
    }
}

/// The answer for heating.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct HeatingFinding {
    /// What the delivered heat says.
    pub capacity: HeatingCapacity,
    /// The outdoor temperature to which the ratio of the capacity belongs.
    pub outdoor_dry_bulb: Option<AirTemperature>,
    /// Whether frost grows on the outdoor coil.
    pub frost: Frost,
    /// What the suction temperatures at the reversing valve say.
    pub reversing_valve: ReversingValve,
    /// The measurement against the maker's chart, where one was given.
    pub chart: Option<HeatingChartFinding>,
    /// Everything computed, each value with its standard uncertainty.
    pub values: HeatingValues,
    /// What is wrong with the reading itself.
    pub problems: HeatingSet<HeatingProblem>,
    /// What heating does not let one judge, and what the values leave out.
    pub limits: HeatingSet<HeatingLimit>,
    /// What was not measured, and what for.
    pub missing: HeatingMissing,
    /// What can hurt.
    pub cautions: HeatingSet<HeatingCaution>,
}
