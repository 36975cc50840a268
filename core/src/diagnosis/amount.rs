//! How much refrigerant to add or recover.

use super::finding::ValueBound;

/// The mass by which the charge is off, as far as the evidence tells.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ChargeAmount {
    /// Share of the nameplate charge: positive to add, negative to recover. On the cautious side: what is about twice as
    /// likely too little as too much, since the unit is read again before more is added.
    pub share: f64,
    /// One standard uncertainty of the share.
    pub standard_uncertainty: f64,
    /// Lower end of the interval that holds the true share with 90 %.
    pub lowest: f64,
    /// Upper end of it.
    pub highest: f64,
    /// The share of the expected charge in kg, where the reading gives one.
    pub mass_kg: Option<f64>,
    /// `AtLeast` once subcooling or superheat is gone: then it is at least `lowest` (in size), and the true amount unknown.
    pub bound: ValueBound,
}

/// Largest step in which refrigerant is added, as a share of the nameplate charge (common practice).
pub const LARGEST_STEP_SHARE: f64 = 0.05;
