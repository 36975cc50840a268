//! What is made wrong with a unit, and how badly.

use satline::diagnosis::{Cause, CauseSet};
use satline::rig::Faults;

/// How bad a fault is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Level {
    /// Nothing is wrong.
    Healthy,
    /// One fault, hardly felt.
    Mild,
    /// One fault, felt.
    Moderate,
    /// One fault that nobody misses.
    Severe,
    /// Two moderate faults, one of which is the charge.
    Pair,
}

impl Level {
    /// All of them.
    pub const ALL: [Self; 5] = [Self::Healthy, Self::Mild, Self::Moderate, Self::Severe, Self::Pair];

    /// Its word.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Healthy => "healthy",
            Self::Mild => "mild",
            Self::Moderate => "moderate",
            Self::Severe => "severe",
            Self::Pair => "pair",
        }
    }
}

/// The causes that the rig can have.
pub const CAUSES: [Cause; 9] = [
    Cause::Undercharge,
    Cause::Overcharge,
    Cause::LowIndoorAirflow,
    Cause::RestrictedCondenserAir,
    Cause::LiquidLineRestriction,
    Cause::CompressorLeakage,
    Cause::NonCondensables,
    Cause::MeteringOverfeeding,
    Cause::MeteringUnderfeeding,
];

/// What may hide behind a wrong charge, or hide it.
pub const PARTNERS: [Cause; 6] = [
    Cause::LowIndoorAirflow,
    Cause::RestrictedCondenserAir,
    Cause::LiquidLineRestriction,
    Cause::MeteringOverfeeding,
    Cause::MeteringUnderfeeding,
    Cause::NonCondensables,
];

/// One state to put a unit into.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Plan {
    /// What is wrong.
    pub truth: CauseSet,
    /// How bad.
    pub level: Level,
    /// The severities for the rig.
    pub faults: Faults,
}

impl Plan {
    /// Nothing is wrong.
    pub const HEALTHY: Self = Self { truth: CauseSet::HEALTHY, level: Level::Healthy, faults: NONE };

    /// Whether the charge is part of what is wrong.
    #[must_use]
    pub fn of_charge(&self) -> bool {
        self.truth.contains(Cause::Undercharge) || self.truth.contains(Cause::Overcharge)
    }
}

const NONE: Faults = Faults {
    undercharge: 0.0,
    overcharge: 0.0,
    low_indoor_airflow: 0.0,
    restricted_condenser_air: 0.0,
    liquid_line_restriction: 0.0,
    compressor_leakage: 0.0,
    non_condensables: 0.0,
    metering_overfeeding: 0.0,
    metering_underfeeding: 0.0,
    suction_line_heat_gain: 0.0,
};

/// Mild, moderate and severe of a cause, in the rig's severities.
fn severities(cause: Cause, fixed: bool) -> [f64; 3] {
    match cause {
        Cause::Undercharge | Cause::Overcharge => [0.10, 0.20, 0.30],
        Cause::LowIndoorAirflow => [0.20, 0.35, 0.50],
        Cause::RestrictedCondenserAir => [0.25, 0.45, 0.60],
        Cause::LiquidLineRestriction => [0.20, 0.40, 0.60],
        Cause::CompressorLeakage => [0.10, 0.20, 0.35],
        Cause::NonCondensables => [0.15, 0.35, 0.70],
        Cause::MeteringOverfeeding if fixed => [0.2, 0.4, 0.7],
        Cause::MeteringOverfeeding => [0.2, 0.4, 0.6],
        Cause::MeteringUnderfeeding => [0.15, 0.30, 0.45],
        _ => [0.0; 3],
    }
}

fn put(faults: &mut Faults, cause: Cause, severity: f64) {
    let place = match cause {
        Cause::Undercharge => &mut faults.undercharge,
        Cause::Overcharge => &mut faults.overcharge,
        Cause::LowIndoorAirflow => &mut faults.low_indoor_airflow,
        Cause::RestrictedCondenserAir => &mut faults.restricted_condenser_air,
        Cause::LiquidLineRestriction => &mut faults.liquid_line_restriction,
        Cause::CompressorLeakage => &mut faults.compressor_leakage,
        Cause::NonCondensables => &mut faults.non_condensables,
        Cause::MeteringOverfeeding => &mut faults.metering_overfeeding,
        Cause::MeteringUnderfeeding => &mut faults.metering_underfeeding,
        _ => return,
    };
    *place = severity;
}

/// Each cause alone at its three severities, for a unit with a fixed orifice or with a valve.
#[must_use]
pub fn singles(fixed: bool) -> Vec<Plan> {
    let mut plans = Vec::new();
    for cause in CAUSES {
        let levels = [Level::Mild, Level::Moderate, Level::Severe];
        for (level, severity) in levels.into_iter().zip(severities(cause, fixed)) {
            let mut plan = Plan { truth: CauseSet::one(cause), level, ..Plan::HEALTHY };
            put(&mut plan.faults, cause, severity);
            plans.push(plan);
        }
    }
    plans
}

/// A wrong charge with each of its partners, both moderate.
#[must_use]
pub fn pairs(fixed: bool) -> Vec<Plan> {
    let mut plans = Vec::new();
    for charge in [Cause::Undercharge, Cause::Overcharge] {
        for partner in PARTNERS {
            let mut plan = Plan { truth: CauseSet::two(charge, partner), level: Level::Pair, ..Plan::HEALTHY };
            put(&mut plan.faults, charge, severities(charge, fixed)[1]);
            put(&mut plan.faults, partner, severities(partner, fixed)[1]);
            plans.push(plan);
        }
    }
    plans
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_plan_makes_something_wrong_and_each_differs() {
        let all: Vec<Plan> = singles(true).into_iter().chain(pairs(true)).collect();
        assert_eq!(all.len(), 27 + 12);
        for (place, plan) in all.iter().enumerate() {
            assert!(plan.faults != NONE && !plan.truth.is_empty());
            assert!(all.iter().skip(place + 1).all(|other| other.faults != plan.faults));
        }
    }
}
