//! The catalogue: what each refrigerant is and where its numbers come from.

mod catalogue;
pub mod identity;
#[cfg(feature = "eos")]
mod leaked;
mod matches;
mod saturated;
mod sources;

pub use catalogue::*;
pub use identity::{Component, Identity, SafetyClass};
#[cfg(feature = "eos")]
pub use leaked::{LeakCaution, flammable_share, leak_cautions};
pub use matches::{MATCHES_MAX, Match, Matches, matches};

use crate::error::Error;
use crate::saturation::{Points, SaturatedProperties, SaturationCurves};

/// How well the properties of a refrigerant are known.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Confidence {
    /// Equations and mixture parameters are published.
    Published,
    /// At least one mixture parameter was estimated here; the error is larger and stated.
    Estimated,
}

impl Confidence {
    /// The word used in every language.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Published => "published",
            Self::Estimated => "estimated",
        }
    }
}

/// Global warming potential over 100 years, carbon dioxide = 1.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Gwp {
    /// The potential; of a blend weighted by mass.
    pub value: f64,
    /// Where it comes from.
    pub source: &'static str,
}

/// The full record of a refrigerant. Reached by reference; it refers to its curves, not they to it.
pub struct Refrigerant {
    /// Chemical name, or the components with their shares.
    pub name: &'static str,
    /// The compact saturation curves, with the refrigerant's identity.
    pub curves: &'static SaturationCurves,
    /// Saturated densities and enthalpies.
    pub properties: &'static SaturatedProperties,
    /// Normal boiling and critical points, computed from the equation of state.
    pub points: &'static Points,
    /// How well the properties are known.
    pub confidence: Confidence,
    /// Global warming potential over 100 years, with its source.
    pub global_warming_potential: Option<Gwp>,
    /// Publications from which the numbers come.
    pub sources: &'static [&'static str],
    /// The equation of state.
    #[cfg(feature = "eos")]
    pub model: &'static crate::eos::Model,
}

/// Its designation: the tables behind it would fill pages.
impl core::fmt::Debug for Refrigerant {
    fn fmt(&self, formatter: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        formatter.debug_tuple("Refrigerant").field(&self.designation()).finish()
    }
}

impl Refrigerant {
    /// What the refrigerant is.
    #[must_use]
    pub const fn identity(&self) -> &'static Identity {
        self.curves.identity
    }

    /// Standard uncertainty of bubble and dew temperatures in K where a mixture parameter was estimated; `None` where all
    /// parameters are published.
    #[must_use]
    pub const fn saturation_uncertainty_k(&self) -> Option<f64> {
        self.curves.identity.saturation_uncertainty_k
    }

    /// The ASHRAE 34 designation.
    #[must_use]
    pub const fn designation(&self) -> &'static str {
        self.curves.identity.designation
    }
}

/// Finds a refrigerant by designation, ignoring case, hyphens and spaces: `R-410A`, `r410a`, `R 410A`.
///
/// # Errors
/// [`Error::UnknownRefrigerant`] with the nearest designation of the catalogue.
///
/// ```
/// assert_eq!(satline::refrigerant::find("r410a")?.designation(), "R-410A");
/// # Ok::<(), satline::Error>(())
/// ```
pub fn find(name: &str) -> Result<&'static Refrigerant, Error> {
    ALL.iter().copied().find(|refrigerant| same(name, refrigerant.designation())).ok_or_else(|| {
        Error::UnknownRefrigerant {
            nearest: crate::nearest::nearest(name, ALL.iter().map(|refrigerant| refrigerant.designation())),
        }
    })
}

/// Whether two names are the same but for case, hyphens and spaces.
fn same(left: &str, right: &str) -> bool {
    let letters = |text: &'_ str| {
        let mut kept = [0_u8; 24];
        let mut count = 0;
        for byte in text.bytes().filter(|byte| !matches!(byte, b'-' | b' ' | b'_')) {
            match kept.get_mut(count) {
                Some(place) => *place = byte.to_ascii_lowercase(),
                None => return None,
            }
            count += 1;
        }
        Some((kept, count))
    };
    letters(left).is_some() && letters(left) == letters(right)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn finds_by_loose_spelling_and_offers_the_nearest() {
        for name in ["R-410A", "r410a", "R 410a", "R410A"] {
            assert_eq!(find(name).unwrap().designation(), "R-410A");
        }
        assert_eq!(find("R-410").unwrap_err(), Error::UnknownRefrigerant { nearest: "R-410A" });
        assert!(find("").is_err());
        assert!(find("a name much longer than any designation in any standard").is_err());
    }

    #[test]
    fn every_entry_is_complete() {
        for refrigerant in ALL {
            let identity = refrigerant.identity();
            let sum: f64 = identity.components.iter().map(|component| component.mass_fraction).sum();
            assert!((sum - 1.0).abs() < 1e-12, "{}", identity.designation);
            assert!(!refrigerant.sources.is_empty());
            if identity.safety_class != SafetyClass::Unclassified {
                let burns = identity.safety_class.is_flammable();
                let limit = identity.lower_flammability_limit_kg_m3;
                assert!(burns || limit.is_none(), "{}", identity.designation);
            }
        }
    }
}
