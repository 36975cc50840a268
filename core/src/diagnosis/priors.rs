//! How likely each cause is before anything is measured.

use super::cause::{Cause, CauseSet};
use crate::bounds::within;
use crate::error::Error;

/// How many causes have a prior of their own; what is not modelled has one beside them.
const CAUSES: usize = 9;

/// Probabilities before anything is measured. They count against each other: only their ratios matter.
///
/// The default is meant for a unit that someone was called to: about half of them have nothing that can be measured
/// (common practice, after surveys of units in the field in which charge and airflow lead by far). A metering device
/// is seldom the cause, and when it is, a loose or badly insulated bulb is commoner than a stuck body (common practice).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Priors {
    healthy: f64,
    causes: [f64; CAUSES],
    pairs: f64,
    unmodelled: f64,
}

impl Default for Priors {
    fn default() -> Self {
        Self {
            healthy: 0.45,
            // Undercharge, overcharge, low airflow, condenser air, restriction, leakage, non-condensables, overfeeding,
            // underfeeding.
            causes: [0.15, 0.07, 0.10, 0.08, 0.02, 0.02, 0.025, 0.02, 0.015],
            pairs: 1.0,
            unmodelled: 0.01,
        }
    }
}

const ADVICE: &str = "give weights above 0 and up to 1: how likely each is before anything is measured";

impl Priors {
    /// The weight of a set of causes: of a pair, what chance brings together times [`Priors::with_pairs`].
    #[must_use]
    pub fn weight(&self, causes: CauseSet) -> f64 {
        if causes.is_empty() {
            return self.healthy;
        }
        if causes.contains(Cause::Unmodelled) {
            return self.unmodelled;
        }
        let product = causes.iter().map(|cause| self.one(cause)).product::<f64>();
        if causes.len() > 1 { self.pairs * product } else { product }
    }

    fn one(&self, cause: Cause) -> f64 {
        self.causes.get((cause.number() as usize).wrapping_sub(1)).copied().unwrap_or(self.unmodelled)
    }

    /// With another weight of a healthy unit.
    ///
    /// # Errors
    /// [`Error::OutOfRange`], [`Error::NotFinite`] for a weight that is not above 0 and at most 1.
    pub fn with_healthy(self, weight: f64) -> Result<Self, Error> {
        Ok(Self { healthy: checked(weight)?, ..self })
    }

    /// With another weight of one cause.
    ///
    /// ```
    /// use satline::diagnosis::{Cause, Priors};
    /// // A fleet whose bulbs were strapped on badly (demo).
    /// let priors = Priors::default().with_cause(Cause::MeteringOverfeeding, 0.2)?;
    /// assert!(priors.with_cause(Cause::Overcharge, f64::NAN).is_err());
    /// # assert_ne!(priors, Priors::default());
    /// # Ok::<(), satline::Error>(())
    /// ```
    ///
    /// # Errors
    /// [`Error::OutOfRange`], [`Error::NotFinite`] for a weight that is not above 0 and at most 1.
    pub fn with_cause(self, cause: Cause, weight: f64) -> Result<Self, Error> {
        let weight = checked(weight)?;
        let mut changed = self;
        match changed.causes.get_mut((cause.number() as usize).wrapping_sub(1)) {
            Some(place) => *place = weight,
            None => changed.unmodelled = weight,
        }
        Ok(changed)
    }

    /// With another factor of pairs: 1 when faults come together by chance alone, more when neglect brings them together.
    ///
    /// # Errors
    /// [`Error::OutOfRange`], [`Error::NotFinite`] outside 0 to 100.
    pub fn with_pairs(self, factor: f64) -> Result<Self, Error> {
        let advice = "give a factor: 1 when faults meet by chance alone";
        Ok(Self { pairs: within("factor of pairs", "1", factor, 0.0, 100.0, advice)?, ..self })
    }
}

fn checked(weight: f64) -> Result<f64, Error> {
    within("prior weight", "1", weight, 1e-9, 1.0, ADVICE)
}
