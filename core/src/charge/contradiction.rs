//! What no running unit can show, whatever its faults.

use crate::reading::{Mode, Reading};

/// How a reading contradicts itself.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Contradiction {
    /// Suction not below the high side, or liquid pressure above discharge.
    Pressures,
    /// A wet bulb above its dry bulb, or in cooling supply air not colder than return air.
    AirTemperatures,
}

/// By how much a liquid pressure may seem to exceed the discharge pressure before it counts: two gauges at the limits
/// that the 2013 protocol asks of them, ±7 psi each (from memory), in pascals.
pub(crate) const GAUGES_DISAGREE_PA: f64 = 2.0 * 7.0 * crate::quantity::PASCALS_PER_PSI;

/// By how much the supply wet bulb may seem to exceed its dry bulb, K: supply air leaves a wet coil nearly saturated, and
/// two thermometers of one maker read apart by this much (common practice). Return air is never that damp.
const BULBS_DISAGREE_K: f64 = 0.5;

/// The first contradiction found.
pub(crate) fn contradiction(reading: &Reading) -> Option<Contradiction> {
    let suction = reading.suction_pressure.map(|pressure| pressure.pascals());
    let liquid = reading.liquid_pressure.map(|pressure| pressure.pascals());
    let discharge = reading.discharge_pressure.map(|pressure| pressure.pascals());
    let reaches = |low: Option<f64>, high: Option<f64>| matches!((low, high), (Some(low), Some(high)) if low >= high);
    if reaches(suction, liquid)
        || reaches(suction, discharge)
        || reaches(liquid, discharge.map(|pressure| pressure + GAUGES_DISAGREE_PA))
    {
        return Some(Contradiction::Pressures);
    }
    let return_dry = reading.return_dry_bulb.map(|air| air.kelvin());
    let return_wet = reading.return_wet_bulb.map(|air| air.kelvin());
    let supply_dry = reading.supply_dry_bulb.map(|air| air.kelvin());
    let supply_wet = reading.supply_wet_bulb.map(|air| air.kelvin());
    let return_contradicts = matches!((return_wet, return_dry), (Some(wet), Some(dry)) if wet > dry);
    let cooling = reading.mode != Some(Mode::Heating);
    if return_contradicts
        || reaches(supply_wet, supply_dry.map(|dry| dry + BULBS_DISAGREE_K))
        || (cooling && reaches(supply_dry, return_dry))
    {
        return Some(Contradiction::AirTemperatures);
    }
    None
}
