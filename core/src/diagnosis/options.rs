//! What a diagnosis is told besides the reading.

use super::priors::Priors;
use crate::charge::Protocol;
use crate::reading::Reading;

/// Besides the reading: which protocol to quote, the unit's own healthy readings, and what is likely beforehand.
///
/// ```
/// use satline::Reading;
/// use satline::diagnosis::{Options, diagnose_with};
/// let healthy = [Reading::default()];
/// let finding = diagnose_with(&Reading::default(), &Options { baseline: &healthy, ..Options::default() });
/// assert!(finding.conclusion.causes.is_none());
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Options<'a> {
    /// The protocol whose own verdict is quoted.
    pub protocol: Protocol,
    /// Readings of the same unit, taken when it was known to be healthy; empty when there is none. More of them taken with
    /// the same instruments do not sharpen it below the instruments' bias. Readings taken in heating, or at another
    /// refrigerant or metering device, are passed over.
    pub baseline: &'a [Reading],
    /// Probabilities before anything is measured.
    pub priors: Priors,
}
