//! Two refrigerants in the same unit at stated conditions: what changes, and whether anything forbids it.
//!
//! Both run the plain cycle at the same evaporating and condensing temperatures, superheat and subcooling. The
//! evaporating temperature of a blend is its dew temperature; what its condensing temperature is, is a choice
//! ([`CondensingAt`]). Nothing here is measured: the conditions are stated, so the ratios carry the uncertainty of the
//! properties alone (blends marked estimated get a caution).

mod answers;
mod cycle;
mod judge;
mod oil;

pub use answers::{CondensingAt, RetrofitCaution, RetrofitOutcome, RetrofitReason};
pub use cycle::Cycle;
pub use oil::{OilFamily, oil_family};

use crate::bounds;
use crate::eos::Model;
use crate::error::Error;
use crate::quantity::{Mass, Pressure, Temperature, TemperatureDifference};
use crate::uncertain::{Uncertain, propagate};

/// Share of the work of compression that an ideal compressor would need, where nothing is said (common practice for
/// small hermetic compressors near their rating point: 0.65 to 0.75).
pub const DEFAULT_ISENTROPIC_EFFICIENCY: f64 = 0.7;
/// The hottest that an air-cooled unit stands at rest, K, where nothing is said: 125 °F, from which ASHRAE 15 has the
/// high side of air-cooled units designed (from memory).
pub const DEFAULT_STANDSTILL_K: f64 = 324.816_666_666_666_7;
/// The hottest that the low side stands at rest, K, where nothing is said: 80 °F, from which ASHRAE 15 has low sides
/// designed (from memory).
pub const DEFAULT_LOW_SIDE_STANDSTILL_K: f64 = 299.816_666_666_666_7;
/// Discharge temperature, K, beyond which there is a caution where nothing is said: 225 °F (common practice; the
/// compressor maker's figure rules).
pub const DEFAULT_HIGHEST_DISCHARGE_K: f64 = 380.372_222_222_222_2;
/// Share of the computed charge with which to start (common practice: the rest is added by superheat or subcooling).
pub const DEFAULT_STARTING_SHARE: f64 = 0.9;
/// By how much a capacity or an orifice may change before there is a caution (common practice).
const TENTH: f64 = 0.1;
/// Glide, K, from which a blend is charged as liquid only.
const GLIDE_K: f64 = 0.5;

/// Which of the two refrigerants.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Side {
    Old,
    New,
}

/// The conditions at which two refrigerants are compared.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Conditions {
    /// Evaporating temperature: the dew temperature at the evaporating pressure.
    pub evaporating: Temperature,
    /// Condensing temperature, as `condensing_at` says.
    pub condensing: Temperature,
    /// What the condensing temperature of a blend is; the bubble temperature if not said, which gives the blend the
    /// highest pressure of the three.
    pub condensing_at: CondensingAt,
    /// Superheat at the compressor's inlet, above the dew temperature.
    pub superheat: TemperatureDifference,
    /// Subcooling before the metering device, below the bubble temperature.
    pub subcooling: TemperatureDifference,
    /// Share of the superheat that is picked up in the evaporator and counts as cooling, 0 to 1. None if not said: the
    /// vapour port is at the outdoor unit, and what the line picks up cools nothing.
    pub useful_superheat: f64,
    /// Isentropic efficiency of the compressor, the same for both; [`DEFAULT_ISENTROPIC_EFFICIENCY`] if not said.
    pub isentropic_efficiency: f64,
    /// The hottest that the unit stands at rest; [`DEFAULT_STANDSTILL_K`] if not said.
    pub standstill: Temperature,
    /// The hottest that its low side stands at rest; [`DEFAULT_LOW_SIDE_STANDSTILL_K`] if not said.
    pub low_side_standstill: Temperature,
    /// Design pressure of the high side, absolute, from the unit's plate.
    pub high_side_design_pressure: Option<Pressure>,
    /// Design pressure of the low side, absolute, from the unit's plate.
    pub low_side_design_pressure: Option<Pressure>,
    /// Discharge temperature beyond which there is a caution; [`DEFAULT_HIGHEST_DISCHARGE_K`] if not said.
    pub highest_discharge: Temperature,
}

impl Conditions {
    /// Conditions with everything else as it is where nothing is said.
    ///
    /// # Errors
    /// None in practice: the defaults lie within their bounds.
    pub fn new(
        evaporating: Temperature,
        condensing: Temperature,
        superheat: TemperatureDifference,
        subcooling: TemperatureDifference,
    ) -> Result<Self, Error> {
        Ok(Self {
            evaporating,
            condensing,
            condensing_at: CondensingAt::Bubble,
            superheat,
            subcooling,
            useful_superheat: 0.0,
            isentropic_efficiency: DEFAULT_ISENTROPIC_EFFICIENCY,
            standstill: Temperature::from_kelvin(DEFAULT_STANDSTILL_K)?,
            low_side_standstill: Temperature::from_kelvin(DEFAULT_LOW_SIDE_STANDSTILL_K)?,
            high_side_design_pressure: None,
            low_side_design_pressure: None,
            highest_discharge: Temperature::from_kelvin(DEFAULT_HIGHEST_DISCHARGE_K)?,
        })
    }
}

/// How flows change, as ratios of the new refrigerant to the old.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FlowRatios {
    /// Mass flow.
    pub mass_flow: f64,
    /// Area of the orifice, for the same flow coefficient: A ∝ m/√(ρ·Δp), with the liquid's density before it and the
    /// difference of condensing and evaporating pressure. Real orifices choke as the liquid flashes, so this is a first
    /// size, not the last.
    pub orifice_area: f64,
    /// Velocity in the suction line, by the density at the compressor's inlet.
    pub suction_velocity: f64,
    /// Velocity in the discharge line.
    pub discharge_velocity: f64,
    /// Velocity in the liquid line.
    pub liquid_velocity: f64,
}

impl FlowRatios {
    fn of(old: &Cycle, new: &Cycle, mass_flow: f64) -> Self {
        Self {
            mass_flow,
            orifice_area: mass_flow * old.orifice_flux() / new.orifice_flux(),
            suction_velocity: mass_flow * old.suction_density_kg_m3 / new.suction_density_kg_m3,
            discharge_velocity: mass_flow * old.discharge_density_kg_m3 / new.discharge_density_kg_m3,
            liquid_velocity: mass_flow * old.liquid_density_kg_m3 / new.liquid_density_kg_m3,
        }
    }
}

/// The answer. Ratios are of the new refrigerant to the old.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Comparison {
    /// Whether anything forbids it.
    pub outcome: RetrofitOutcome,
    reasons: u32,
    cautions: u32,
    /// The old refrigerant at the conditions.
    pub old: Cycle,
    /// The new refrigerant at the conditions.
    pub new: Cycle,
    /// Cooling of the same compressor, the volumetric efficiency taken as the same.
    pub volumetric_capacity_ratio: f64,
    /// Coefficient of performance, the isentropic efficiency taken as the same.
    pub coefficient_of_performance_ratio: f64,
    /// New less old discharge temperature, K.
    pub discharge_temperature_rise_k: f64,
    /// Charge of the same volumes, by the density of saturated liquid at the condensing pressure.
    pub charge_ratio: f64,
    /// Flows with the compressor's displacement as it is.
    pub at_equal_displacement: FlowRatios,
    /// Flows for the same cooling.
    pub at_equal_capacity: FlowRatios,
    /// Oil that the old refrigerant commonly has.
    pub old_oil: OilFamily,
    /// Oil that the new refrigerant commonly needs.
    pub new_oil: OilFamily,
}

impl Comparison {
    /// Why the outcome is what it is, in the order of their numbers.
    pub fn reasons(&self) -> impl Iterator<Item = RetrofitReason> + '_ {
        RetrofitReason::ALL.iter().copied().filter(|reason| self.reasons >> reason.number() & 1 == 1)
    }

    /// What can hurt or go wrong, in the order of their numbers.
    pub fn cautions(&self) -> impl Iterator<Item = RetrofitCaution> + '_ {
        RetrofitCaution::ALL.iter().copied().filter(|caution| self.cautions >> caution.number() & 1 == 1)
    }

    /// The reasons as a bit set: bit `n` stands for the reason with number `n`.
    #[must_use]
    pub const fn reason_bits(&self) -> u32 {
        self.reasons
    }

    /// The cautions as a bit set: bit `n` stands for the caution with number `n`.
    #[must_use]
    pub const fn caution_bits(&self) -> u32 {
        self.cautions
    }

    /// The mass of the new refrigerant with which to start, kg: see [`starting_charge`].
    ///
    /// # Errors
    /// As [`starting_charge`].
    pub fn starting_charge(&self, old_charge: Uncertain, share: f64) -> Result<Uncertain, Error> {
        starting_charge(old_charge, self.charge_ratio, share)
    }
}

/// The mass of the new refrigerant with which to start, kg: the old charge (kg, with its uncertainty) times the charge
/// ratio times a share, [`DEFAULT_STARTING_SHARE`] by common practice. The rest is added by superheat or subcooling.
///
/// # Errors
/// [`Error::OutOfRange`] or [`Error::NotFinite`] for a mass outside [`bounds::MASS`], a ratio outside
/// [`bounds::CHARGE_RATIO`] or a share outside [`bounds::STARTING_SHARE`].
pub fn starting_charge(old_charge: Uncertain, charge_ratio: f64, share: f64) -> Result<Uncertain, Error> {
    let share = bounds::STARTING_SHARE.check(share)? * bounds::CHARGE_RATIO.check(charge_ratio)?;
    propagate([old_charge], |[mass]| Ok(Mass::from_kilograms(mass)?.kilograms() * share))
}

/// Compares two refrigerants in the same unit at stated conditions.
///
/// # Errors
/// [`Error::OutOfRange`] or [`Error::NotFinite`] for conditions outside their bounds, and where one of the refrigerants
/// has no such state (the quantity says which refrigerant and which part of the cycle): a condensing temperature above
/// the critical one, or not above the evaporating pressure. [`Error::NotConverged`] near a critical point.
///
/// ```
/// use satline::eos::model;
/// use satline::quantity::{Temperature, TemperatureDifference};
/// use satline::visit::retrofit::{Conditions, RetrofitReason, compare_refrigerants};
/// let ten = TemperatureDifference::from_kelvin(10.0)?;
/// let (cold, warm) = (Temperature::from_fahrenheit(45.0)?, Temperature::from_fahrenheit(110.0)?);
/// let conditions = Conditions::new(cold, warm, ten, ten)?;
/// let found = compare_refrigerants(&model::R22, &model::R407C, &conditions)?;
/// assert!((found.volumetric_capacity_ratio - 0.923).abs() < 1e-3);
/// // Its pressure is the higher, so the unit's plate decides.
/// assert!(found.reasons().any(|reason| reason == RetrofitReason::DesignPressureNeeded));
/// # Ok::<(), satline::Error>(())
/// ```
pub fn compare_refrigerants(
    old: &'static Model,
    new: &'static Model,
    conditions: &Conditions,
) -> Result<Comparison, Error> {
    bounds::ISENTROPIC_EFFICIENCY.check(conditions.isentropic_efficiency)?;
    bounds::USEFUL_SUPERHEAT.check(conditions.useful_superheat)?;
    let (before, after) = (Cycle::of(old, conditions, Side::Old)?, Cycle::of(new, conditions, Side::New)?);
    let displacement = after.suction_density_kg_m3 / before.suction_density_kg_m3;
    let capacity = before.refrigerating_effect_j_kg / after.refrigerating_effect_j_kg;
    let mut found = Comparison {
        outcome: RetrofitOutcome::Possible,
        reasons: 0,
        cautions: 0,
        old: before,
        new: after,
        volumetric_capacity_ratio: after.volumetric_capacity_j_m3 / before.volumetric_capacity_j_m3,
        coefficient_of_performance_ratio: after.coefficient_of_performance / before.coefficient_of_performance,
        discharge_temperature_rise_k: after.discharge_temperature_k - before.discharge_temperature_k,
        charge_ratio: after.bubble_density_kg_m3 / before.bubble_density_kg_m3,
        at_equal_displacement: FlowRatios::of(&before, &after, displacement),
        at_equal_capacity: FlowRatios::of(&before, &after, capacity),
        old_oil: oil_family(old.identity),
        new_oil: oil_family(new.identity),
    };
    found.reasons = judge::reasons(old.identity, new.identity, &found, conditions);
    found.outcome = judge::outcome(found.reasons);
    found.cautions = judge::cautions(old.identity, new.identity, &found, conditions);
    Ok(found)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::kelvin_from_fahrenheit;

    #[test]
    fn defaults_in_kelvin_are_the_fahrenheit_they_stand_for() {
        for (kelvin, fahrenheit) in
            [(DEFAULT_STANDSTILL_K, 125.0), (DEFAULT_LOW_SIDE_STANDSTILL_K, 80.0), (DEFAULT_HIGHEST_DISCHARGE_K, 225.0)]
        {
            assert!((kelvin - kelvin_from_fahrenheit(fahrenheit)).abs() < 1e-9);
        }
    }
}
