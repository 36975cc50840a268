//! Which oil goes with a refrigerant, from what its components are.
//!
//! Common practice, not a standard: oils without polar groups mix with refrigerants that hold chlorine and with
//! hydrocarbons, but not with those that hold only fluorine. The compressor's maker decides.

use crate::charge::answers::answers;
use crate::refrigerant::identity::Identity;

answers! {
    /// The kind of oil that is commonly used with a refrigerant (common practice; the compressor's maker decides).
    OilFamily {
        /// For refrigerants with chlorine, hydrocarbons and ammonia.
        MineralOrAlkylbenzene = 1 "mineral-or-alkylbenzene" "Mineral oil or alkylbenzene.";
        /// For blends of refrigerants with and without chlorine.
        AlkylbenzeneOrPolyolester = 2 "alkylbenzene-or-polyolester" "Alkylbenzene or polyolester.";
        /// For refrigerants without chlorine.
        Polyolester = 3 "polyolester" "Polyolester; it draws water from the air, so keep it closed.";
        /// For blends without chlorine that hold a little hydrocarbon to carry mineral oil back.
        PolyolesterMineralMayDo = 4 "polyolester-mineral-may-do"
            "Polyolester; the hydrocarbon in the blend may carry mineral oil back in compact units, not in long lines or tall risers.";
        /// For carbon dioxide, and for single refrigerants that vehicles use with polyalkylene glycol.
        PolyolesterOrPolyalkyleneGlycol = 5 "polyolester-or-polyalkylene-glycol"
            "Polyolester, or polyalkylene glycol where the compressor was made for it (vehicles, carbon dioxide): never one in place of the other without the maker's word.";
        /// Not known here.
        AskTheMaker = 6 "ask-the-maker" "Not known here: ask the compressor's maker.";
    }
}

/// Refrigerants with chlorine.
const CHLORINATED: [&str; 11] =
    ["R-11", "R-12", "R-13", "R-22", "R-113", "R-114", "R-115", "R-123", "R-124", "R-141b", "R-142b"];
/// Hydrocarbons.
const HYDROCARBONS: [&str; 7] = ["R-170", "R-290", "R-600", "R-600a", "R-601", "R-601a", "R-1270"];
/// Components of whose oils nothing is said here.
const OTHERS: [&str; 4] = ["R-13I1", "R-1224yd(Z)", "R-1233zd(E)", "R-E170"];
/// Single refrigerants that vehicles, or carbon dioxide units, use with polyalkylene glycol.
const GLYCOL: [&str; 3] = ["R-134a", "R-744", "R-1234yf"];

/// Share of chlorinated components from which a blend behaves as they do.
const MOSTLY: f64 = 0.7;
/// Least and largest share of hydrocarbons that a blend holds to carry oil rather than to cool.
const CARRIES_OIL: (f64, f64) = (0.01, 0.06);

fn share(identity: &Identity, names: &[&str]) -> f64 {
    let components = identity.components.iter();
    components.filter(|part| names.contains(&part.designation)).map(|part| part.mass_fraction).sum()
}

/// Whether the refrigerant holds chlorine, whose oils and seals differ.
pub(super) fn holds_chlorine(identity: &Identity) -> bool {
    share(identity, &CHLORINATED) > 0.0
}

/// The oil that is commonly used with a refrigerant, from what its components are (common practice).
///
/// ```
/// use satline::refrigerant::identity;
/// use satline::visit::retrofit::{OilFamily, oil_family};
/// assert_eq!(oil_family(&identity::R22), OilFamily::MineralOrAlkylbenzene);
/// assert_eq!(oil_family(&identity::R407C), OilFamily::Polyolester);
/// ```
#[must_use]
pub fn oil_family(identity: &Identity) -> OilFamily {
    let (chlorine, hydrocarbon) = (share(identity, &CHLORINATED), share(identity, &HYDROCARBONS));
    let (least, most) = CARRIES_OIL;
    if share(identity, &OTHERS) > 0.0 {
        OilFamily::AskTheMaker
    } else if chlorine >= MOSTLY || hydrocarbon >= 0.5 || share(identity, &["R-717"]) > 0.0 {
        OilFamily::MineralOrAlkylbenzene
    } else if chlorine > 0.0 {
        OilFamily::AlkylbenzeneOrPolyolester
    } else if share(identity, &GLYCOL) == 1.0 && identity.components.len() == 1 {
        OilFamily::PolyolesterOrPolyalkyleneGlycol
    } else if (least..=most).contains(&hydrocarbon) {
        OilFamily::PolyolesterMineralMayDo
    } else {
        OilFamily::Polyolester
    }
}
