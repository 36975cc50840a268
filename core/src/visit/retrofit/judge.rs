//! Whether a change of refrigerant is forbidden, and what to mind.

use super::answers::{RetrofitCaution as Caution, RetrofitOutcome as Outcome, RetrofitReason as Reason};
use super::oil::{OilFamily, holds_chlorine};
use super::{Comparison, Conditions, GLIDE_K, TENTH};
use crate::quantity::{Atmosphere, Pressure};
use crate::refrigerant::identity::{Identity, SafetyClass};

/// How readily a class burns, 0 to 3, and whether it is of higher toxicity. An unknown class has neither.
fn rank(class: SafetyClass) -> Option<(u8, bool)> {
    Some(match class {
        SafetyClass::A1 => (0, false),
        SafetyClass::A2L => (1, false),
        SafetyClass::A2 => (2, false),
        SafetyClass::A3 => (3, false),
        SafetyClass::B1 => (0, true),
        SafetyClass::B2L => (1, true),
        SafetyClass::B2 => (2, true),
        SafetyClass::B3 => (3, true),
        SafetyClass::Unclassified => return None,
    })
}

/// A bit set of those that are given.
fn bits(rows: impl IntoIterator<Item = (i32, bool)>) -> u32 {
    rows.into_iter().filter(|(_, given)| *given).fold(0, |bits, (number, _)| bits | 1_u32.wrapping_shl(number as u32))
}

pub(super) fn reasons(old: &Identity, new: &Identity, found: &Comparison, conditions: &Conditions) -> u32 {
    let same = core::ptr::eq(old, new) || old == new;
    // A unit whose refrigerant's class is not known was made for the mildest, as far as anyone can tell.
    let (burnt, toxic) = rank(old.safety_class).unwrap_or((0, false));
    let (burns, poisons) = rank(new.safety_class).unwrap_or((0, false));
    let unknown = rank(new.safety_class).is_none();
    let above = |pressure: Option<f64>, design: Option<Pressure>| match (pressure, design) {
        (Some(pressure), Some(design)) => pressure > design.pascals(),
        _ => false,
    };
    let (before, after) = (&found.old, &found.new);
    let (high, low) = (conditions.high_side_design_pressure, conditions.low_side_design_pressure);
    let no_liquid = after.standstill_pressure_pa.is_none() || after.low_side_standstill_pressure_pa.is_none();
    let higher = |new: Option<f64>, old: Option<f64>| matches!((new, old), (Some(new), Some(old)) if new > old);
    let rises = after.condensing_pressure_pa > before.condensing_pressure_pa
        || higher(after.standstill_pressure_pa, before.standstill_pressure_pa);
    let condensing_above = above(Some(after.condensing_pressure_pa), high);
    let standstill_above = above(after.standstill_pressure_pa, high);
    let low_above = above(after.low_side_standstill_pressure_pa, low);
    let ambient = Atmosphere::STANDARD.pascals();
    bits([
        (Reason::FlammableInClass1Unit.number(), !same && burnt == 0 && burns > 0),
        (Reason::MoreFlammable.number(), burnt > 0 && burns > burnt),
        (Reason::ClassUnknown.number(), !same && unknown),
        (Reason::MoreToxic.number(), poisons && !toxic),
        (Reason::CondensingAboveDesign.number(), condensing_above),
        (Reason::StandstillAboveDesign.number(), standstill_above),
        (Reason::LowSideAboveDesign.number(), low_above),
        (Reason::NoLiquidAtStandstill.number(), no_liquid && !same),
        (Reason::DesignPressureNeeded.number(), high.is_none() && rises),
        (Reason::PressuresNoHigher.number(), high.is_none() && !rises && !no_liquid),
        (Reason::WithinDesign.number(), high.is_some() && !(condensing_above || standstill_above || low_above)),
        (
            Reason::MayDrawAir.number(),
            after.evaporating_pressure_pa < ambient && before.evaporating_pressure_pa >= ambient,
        ),
    ])
}

pub(super) fn outcome(reasons: u32) -> Outcome {
    let any = |reasons_of: &[Reason]| reasons_of.iter().any(|reason| reasons >> reason.number() & 1 == 1);
    if any(&[
        Reason::FlammableInClass1Unit,
        Reason::MoreFlammable,
        Reason::ClassUnknown,
        Reason::MoreToxic,
        Reason::CondensingAboveDesign,
        Reason::StandstillAboveDesign,
        Reason::LowSideAboveDesign,
        Reason::NoLiquidAtStandstill,
    ]) {
        Outcome::Blocked
    } else if any(&[Reason::DesignPressureNeeded]) {
        Outcome::CannotTell
    } else {
        Outcome::Possible
    }
}

pub(super) fn cautions(old: &Identity, new: &Identity, found: &Comparison, conditions: &Conditions) -> u32 {
    let (before, after) = (found.old_oil, found.new_oil);
    let may_stay = after == OilFamily::PolyolesterMineralMayDo && before == OilFamily::MineralOrAlkylbenzene;
    let off = |ratio: f64| !(1.0 / (1.0 + TENTH)..=1.0 + TENTH).contains(&ratio);
    let glide = found.new.evaporating_glide_k.max(found.new.condensing_glide_k);
    let changed = old != new;
    bits([
        (Caution::LicensedPractice.number(), true),
        (Caution::Label.number(), changed),
        (Caution::RecoverAll.number(), changed),
        (Caution::ChangeOil.number(), before != after || after == OilFamily::AskTheMaker),
        (Caution::OilMayNotReturn.number(), may_stay),
        (Caution::Seals.number(), holds_chlorine(old) && !holds_chlorine(new)),
        (Caution::Flammable.number(), new.safety_class.is_flammable()),
        (Caution::ChargeAsLiquid.number(), glide > GLIDE_K),
        (Caution::HotDischarge.number(), found.new.discharge_temperature_k > conditions.highest_discharge.kelvin()),
        (
            Caution::MeteringDevice.number(),
            off(found.at_equal_capacity.orifice_area) || off(found.at_equal_displacement.orifice_area),
        ),
        (Caution::CapacityChanges.number(), off(found.volumetric_capacity_ratio)),
        (Caution::Estimated.number(), old.saturation_uncertainty_k.is_some() || new.saturation_uncertainty_k.is_some()),
        (Caution::DesignPressureNotGiven.number(), conditions.high_side_design_pressure.is_none()),
        (Caution::PressureControls.number(), changed),
    ])
}
