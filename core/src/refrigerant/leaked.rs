//! What can hurt once a blend has leaked: what its components are, and so the catalogue, is needed to say it.

use super::{Identity, find};
use crate::charge::answers::answers;
use crate::eos::Vessel;

answers! {
    /// What can hurt, or mislead, where a refrigerant has leaked.
    LeakCaution {
        /// Always.
        LicensedPractice = 1 "licensed-practice"
            "Work on refrigerant and its records follow local codes and belong to licensed practice; a leak is found and mended before anything is added.";
        /// The composition has changed.
        CompositionShifted = 2 "composition-shifted"
            "What is left is no longer the blend on the label: its bubble and dew temperatures have moved. Recover it and recharge with new rather than top up.";
        /// What is left can burn.
        Flammable = 3 "flammable"
            "What leaks can burn: no ignition source, fresh air, a leak detector, and tools and cylinder rated for it.";
        /// The vapour, or the liquid, holds more that burns than the label says.
        RicherInFlammable = 4 "richer-in-flammable"
            "The vapour, or the liquid left behind, holds more of the components that burn than the blend on the label: judge a leak into a room by the worst case of fractionation, as ASHRAE 34 does, not by the label's composition.";
    }
}

/// Change of a mass fraction from which a composition counts as shifted: the narrowest tolerances that ASHRAE 34 gives
/// for a component are about this wide (from memory).
const SHIFTED: f64 = 0.005;

/// Share of a mass that can burn: the components of class 2L, 2 or 3, and those whose class is not known.
///
/// The mass fractions are in the order of the identity's components.
///
/// ```
/// use satline::refrigerant::{R448A, flammable_share};
/// let share = flammable_share(R448A.identity(), &[0.26, 0.26, 0.20, 0.21, 0.07]);
/// assert!((share - 0.53).abs() < 1e-12); // R-32, R-1234yf and R-1234ze(E)
/// ```
#[must_use]
pub fn flammable_share(identity: &Identity, mass_fractions: &[f64]) -> f64 {
    let burns = |designation| find(designation).map_or(true, |found| found.identity().safety_class.is_flammable());
    let components = identity.components.iter().zip(mass_fractions);
    components.filter(|(component, _)| burns(component.designation)).map(|(_, fraction)| fraction).sum()
}

/// What can hurt, or mislead, at a vessel from which a refrigerant leaks or has leaked, in the order of their numbers.
pub fn leak_cautions(vessel: &Vessel) -> impl Iterator<Item = LeakCaution> {
    let identity = vessel.mixture().model().identity;
    let mut label = [0.0; crate::eos::MAX_COMPONENTS];
    for (place, component) in label.iter_mut().zip(identity.components) {
        *place = component.mass_fraction;
    }
    let shifted = vessel.mass_fractions().iter().zip(label).any(|(now, then)| (now - then).abs() > SHIFTED);
    let burns = identity.safety_class.is_flammable();
    let share = |fractions: &[f64]| flammable_share(identity, fractions);
    let richest = share(&vessel.vapor_mass_fractions()).max(share(&vessel.liquid_mass_fractions()));
    let given = [
        (LeakCaution::LicensedPractice, true),
        (LeakCaution::CompositionShifted, shifted),
        (LeakCaution::Flammable, burns),
        // Class 1 of ASHRAE 34 means that not even the worst case of fractionation burns.
        (LeakCaution::RicherInFlammable, burns && richest > share(&label) + SHIFTED),
    ];
    given.into_iter().filter(|(_, applies)| *applies).map(|(caution, _)| caution)
}
