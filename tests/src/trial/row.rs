//! One reading with what is true of the unit that it was taken at.

use super::plan::Level;
use satline::diagnosis::CauseSet;
use satline::reading::Reading;
use satline::rig::{Conditions, Faults};

/// A fault counts once it costs this share of the capacity,
pub const CAPACITY_COST: f64 = 0.03;
/// or this share of the efficiency.
pub const EFFICIENCY_COST: f64 = 0.05;

/// A reading, the baseline of its unit, and the truth.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Number of the unit in its fleet.
    pub unit: u64,
    /// What it holds.
    pub refrigerant: &'static str,
    /// Whether it meters by a fixed orifice.
    pub fixed: bool,
    /// Which of the unit's visits, from the coldest outdoors to the hottest.
    pub visit: usize,
    /// The air.
    pub conditions: Conditions,
    /// What is wrong.
    pub truth: CauseSet,
    /// The severities, with the error that the installer made with the charge.
    pub faults: Faults,
    /// How bad.
    pub level: Level,
    /// Whether it costs enough to count; true of healthy units.
    pub counts: bool,
    /// Capacity over that of the same unit healthy, at its nameplate charge, in the same air.
    pub capacity: f64,
    /// Cooling for the power of compressor and fans, likewise.
    pub efficiency: f64,
    /// Whether something other than too little refrigerant is wrong and costs more, by itself in the same air, than what is
    /// missing of the charge does by itself.
    pub other_dominates: bool,
    /// Charge over the nameplate's.
    pub charge: f64,
    /// Whether liquid comes back to the compressor.
    pub wet_suction: bool,
    /// Whether the baseline was taken while something was a little wrong.
    pub baseline_off: bool,
    /// What the instruments showed.
    pub reading: Reading,
    /// What other instruments showed at the same unit, on another day, when it was taken for healthy.
    pub baseline: Reading,
}

/// The names of causes, joined; "healthy" of none.
#[must_use]
pub fn name(causes: CauseSet) -> String {
    if causes.is_empty() {
        return "healthy".to_string();
    }
    causes.iter().map(satline::diagnosis::Cause::name).collect::<Vec<_>>().join(" + ")
}

impl Row {
    /// The row in one line.
    #[must_use]
    pub fn line(&self) -> String {
        let celsius = |kelvin: f64| kelvin - 273.15;
        format!(
            "unit {} {} {}, {} ({}), outdoors {:.1} °C, return {:.1}/{:.1} °C, charge {:.1} %, capacity {:.1} %, efficiency {:.1} %{}",
            self.unit,
            self.refrigerant,
            if self.fixed { "orifice" } else { "valve" },
            name(self.truth),
            self.level.name(),
            celsius(self.conditions.outdoor_dry_bulb),
            celsius(self.conditions.return_dry_bulb),
            celsius(self.conditions.return_wet_bulb),
            100.0 * self.charge,
            100.0 * self.capacity,
            100.0 * self.efficiency,
            if self.wet_suction { ", liquid in the suction line" } else { "" },
        )
    }
}
