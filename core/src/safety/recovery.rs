//! How far a circuit is evacuated into a recovery cylinder before it is opened or given up: 40 CFR 82.156, table 1, for
//! recovery equipment made on or after 15 November 1993, and classes of appliances by 40 CFR 82.152 (from memory).

use super::answers::{ApplianceClass, RecoveryNote};
use crate::bounds;
use crate::error::Error;
use crate::quantity::{
    Atmosphere, KG_PER_POUND, PASCALS_PER_INCH_OF_MERCURY, PASCALS_PER_PSI, Temperature, kelvin_from_fahrenheit,
};
use crate::refrigerant::identity::SafetyClass;
use crate::saturation::SaturationCurves;

/// The temperature by which appliances are classed, °F.
const CLASS_F: f64 = 104.0;
/// The boundaries between low, medium, high and very high pressure, psia at 104 °F (40 CFR 82.152, from memory).
const BOUNDARIES_PSIA: [f64; 3] = [45.0, 170.0, 355.0];
/// The charge from which deeper levels hold, lb.
const LARGE_CHARGE_LB: f64 = 200.0;
/// Millimetres of mercury, absolute, for low-pressure appliances.
const LOW_PRESSURE_MM_HG: f64 = 25.0;
/// Millimetres in an inch.
const MM_PER_INCH: f64 = 25.4;
/// How near to a boundary is near.
const NEAR: f64 = 0.02;

/// The answer.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct RecoveryLevel {
    /// Class of the appliance.
    pub class: ApplianceClass,
    /// Pressure of the liquid at 104 °F, Pa, by which it is classed; none above or next to the critical temperature.
    pub pressure_at_104_f_pa: Option<f64>,
    /// Whether the charge is 200 lb or more.
    pub is_large: bool,
    /// The level as the rule states it: inches of mercury below the standard atmosphere; none where the rule states an
    /// absolute pressure (low-pressure appliances).
    pub vacuum_in_hg: Option<f64>,
    /// The level, Pa, absolute.
    pub pressure_pa: f64,
    /// What a gauge shows that reads zero in the air here, Pa: negative is a vacuum.
    pub gauge_pa: f64,
    notes: u32,
}

impl RecoveryLevel {
    /// What to know besides, in the order of their numbers.
    pub fn notes(&self) -> impl Iterator<Item = RecoveryNote> + '_ {
        RecoveryNote::ALL.iter().copied().filter(|note| self.notes & bit(*note) != 0)
    }

    /// The notes as a bit set: bit `n` stands for the note with number `n`.
    #[must_use]
    pub const fn note_bits(&self) -> u32 {
        self.notes
    }
}

const fn bit(note: RecoveryNote) -> u32 {
    1_u32.wrapping_shl(note.number() as u32)
}

/// The level to which an appliance's refrigerant is recovered by 40 CFR 82.156, table 1.
///
/// Read the rule: it has exceptions, named in the notes, and local law may be stricter. `charge_kg`: the appliance's full
/// charge ([`bounds::APPLIANCE_CHARGE`]). `ambient`: the pressure of the air at the gauge, for [`RecoveryLevel::gauge_pa`].
///
/// # Errors
/// [`Error::OutOfRange`] or [`Error::NotFinite`] outside [`bounds::APPLIANCE_CHARGE`].
///
/// ```
/// use satline::quantity::Atmosphere;
/// use satline::safety::{ApplianceClass, recovery_level};
/// let found = recovery_level(&satline::saturation::R134A, 3.0, Atmosphere::STANDARD)?;
/// assert_eq!((found.class, found.vacuum_in_hg), (ApplianceClass::MediumPressure, Some(10.0)));
/// assert!((found.pressure_pa - 67_461.0).abs() < 1.0);
/// # Ok::<(), satline::Error>(())
/// ```
pub fn recovery_level(
    refrigerant: &SaturationCurves,
    charge_kg: f64,
    ambient: Atmosphere,
) -> Result<RecoveryLevel, Error> {
    let charge = bounds::APPLIANCE_CHARGE.check(charge_kg)?;
    let at = kelvin_from_fahrenheit(CLASS_F);
    // Curves end at 0.99 of the critical temperature; next to it every refrigerant of the catalogue stands far above the
    // last boundary.
    let pressure = if at > refrigerant.bubble.pressure.upper {
        None
    } else {
        Some(refrigerant.bubble_pressure(Temperature::from_kelvin(at)?)?.pascals())
    };
    let class = class(pressure);
    let is_large = charge / KG_PER_POUND >= LARGE_CHARGE_LB;
    let vacuum_in_hg = match (class, is_large) {
        (ApplianceClass::VeryHighPressure, _) | (ApplianceClass::HighPressure, false) => Some(0.0),
        (ApplianceClass::HighPressure, true) | (ApplianceClass::MediumPressure, false) => Some(10.0),
        (ApplianceClass::MediumPressure, true) => Some(15.0),
        (ApplianceClass::LowPressure, _) => None,
    };
    let pressure_pa = match vacuum_in_hg {
        Some(vacuum) => Atmosphere::STANDARD.pascals() - vacuum * PASCALS_PER_INCH_OF_MERCURY,
        None => LOW_PRESSURE_MM_HG / MM_PER_INCH * PASCALS_PER_INCH_OF_MERCURY,
    };
    Ok(RecoveryLevel {
        class,
        pressure_at_104_f_pa: pressure,
        is_large,
        vacuum_in_hg,
        pressure_pa,
        gauge_pa: pressure_pa - ambient.pascals(),
        notes: notes(refrigerant, pressure, ambient),
    })
}

fn class(pressure: Option<f64>) -> ApplianceClass {
    let [low, medium, high] = BOUNDARIES_PSIA.map(|psia| psia * PASCALS_PER_PSI);
    match pressure {
        Some(pressure) if pressure < low => ApplianceClass::LowPressure,
        Some(pressure) if pressure < medium => ApplianceClass::MediumPressure,
        Some(pressure) if pressure <= high => ApplianceClass::HighPressure,
        _ => ApplianceClass::VeryHighPressure,
    }
}

fn notes(refrigerant: &SaturationCurves, pressure: Option<f64>, ambient: Atmosphere) -> u32 {
    let identity = refrigerant.identity;
    let near = pressure.is_some_and(|pressure| {
        BOUNDARIES_PSIA.iter().any(|psia| (pressure / (psia * PASCALS_PER_PSI) - 1.0).abs() <= NEAR)
    });
    // The exempt uses are of carbon dioxide, ammonia and some hydrocarbons (40 CFR 82.154, from memory).
    let exempt = identity.safety_class == SafetyClass::A3 || matches!(identity.designation, "R-744" | "R-717");
    let here = (ambient.pascals() - Atmosphere::STANDARD.pascals()).abs() > 0.02 * Atmosphere::STANDARD.pascals();
    [
        (RecoveryNote::ReadTheRule, true),
        (RecoveryNote::EquipmentDate, true),
        (RecoveryNote::LeakingAppliance, true),
        (RecoveryNote::SmallAppliance, true),
        (RecoveryNote::NonMajorRepair, true),
        (RecoveryNote::Vehicle, true),
        (RecoveryNote::NearClassBoundary, near),
        (RecoveryNote::PossiblyExempt, exempt),
        (RecoveryNote::NotSeaLevel, here),
    ]
    .into_iter()
    .filter(|(_, given)| *given)
    .fold(0, |bits, (note, _)| bits | bit(note))
}
