//! What can hurt, by refrigerant and by what is being done.

use super::answers::{Caution, Situation};
use crate::refrigerant::identity::{Identity, SafetyClass};

/// Most cautions that one list holds.
pub const CAUTIONS_MAX: usize = 24;
const _: () = assert!(Caution::ALL.len() <= CAUTIONS_MAX);

/// A list of cautions, the most urgent first.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Cautions([Option<Caution>; CAUTIONS_MAX]);

impl Cautions {
    /// One by one, the most urgent first.
    pub fn iter(&self) -> impl Iterator<Item = Caution> + '_ {
        self.0.iter().copied().flatten()
    }

    /// Whether this one is among them.
    #[must_use]
    pub fn contains(&self, caution: Caution) -> bool {
        self.iter().any(|given| given == caution)
    }
}

/// What can hurt when working with a refrigerant; none where it is not known what is inside.
///
/// ```
/// use satline::refrigerant::identity::R454B;
/// use satline::safety::{Caution, Situation, cautions_for};
/// let cautions = cautions_for(Some(&R454B), Situation::Charging);
/// assert_eq!(cautions.iter().next(), Some(Caution::MildlyFlammable));
/// assert!(cautions.contains(Caution::LiquidFromCylinder) && cautions.contains(Caution::LicensedPractice));
/// ```
#[must_use]
pub fn cautions_for(refrigerant: Option<&Identity>, situation: Situation) -> Cautions {
    let mut list = [None; CAUTIONS_MAX];
    // The order of the numbers is the order of urgency.
    let given = Caution::ALL.iter().copied().filter(|caution| applies(*caution, refrigerant, situation));
    for (place, caution) in list.iter_mut().zip(given) {
        *place = Some(caution);
    }
    Cautions(list)
}

fn applies(caution: Caution, refrigerant: Option<&Identity>, situation: Situation) -> bool {
    let class = refrigerant.map_or(SafetyClass::Unclassified, |identity| identity.safety_class);
    let is = |designation: &str| refrigerant.is_some_and(|identity| identity.designation == designation);
    let during = |situations: &[Situation]| situations.contains(&situation);
    let on_unit = situation != Situation::Cylinder;
    match caution {
        Caution::Flammable => {
            matches!(class, SafetyClass::A2 | SafetyClass::A3 | SafetyClass::B2 | SafetyClass::B3)
        }
        Caution::MildlyFlammable => matches!(class, SafetyClass::A2L | SafetyClass::B2L),
        Caution::Toxic => {
            matches!(class, SafetyClass::B1 | SafetyClass::B2L | SafetyClass::B2 | SafetyClass::B3)
        }
        Caution::Unclassified => class == SafetyClass::Unclassified,
        Caution::CarbonDioxide => is("R-744"),
        Caution::NeverOxygen => during(&[Situation::PressureTest, Situation::LeakSearch, Situation::OpeningCircuit]),
        Caution::TestPressure => during(&[Situation::PressureTest, Situation::LeakSearch]),
        Caution::Suffocation => !is("R-717"),
        // Ammonia is the only one of the catalogue lighter than air.
        Caution::SuffocationAbove => is("R-717"),
        Caution::FillLimit => during(&[Situation::Recovering, Situation::Cylinder]) && !is("R-744"),
        Caution::CylinderHeat => during(&[Situation::Charging, Situation::Recovering, Situation::Cylinder]),
        Caution::PressureRelief => !during(&[Situation::OpeningCircuit, Situation::Measuring]),
        Caution::LiquidFromCylinder => situation == Situation::Charging && refrigerant.is_some_and(is_zeotropic),
        Caution::RecoverNeverVent => during(&[Situation::Recovering, Situation::OpeningCircuit]),
        Caution::EmptyBeforeFlame => situation == Situation::OpeningCircuit,
        Caution::Pressure | Caution::LicensedPractice => true,
        Caution::Electricity | Caution::HotSurfaces => on_unit,
    }
}

/// Blends of the 400 series boil over a glide; those of the 500 series are azeotropes (ASHRAE 34 numbers them so).
fn is_zeotropic(identity: &Identity) -> bool {
    identity.components.len() > 1 && !identity.designation.starts_with("R-5")
}
