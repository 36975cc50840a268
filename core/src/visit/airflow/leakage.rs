//! Return leakage: the share of the air at the unit that was never in the rooms.

use super::{COVERAGE, LimitOutcome, judge};
use crate::bounds;
use crate::error::Error;
use crate::math;
use crate::uncertain::{Uncertain, propagate};

/// Leakage above which there is something to mend where nothing is said (common practice: a tenth of the airflow).
pub const DEFAULT_LEAKAGE_LIMIT: f64 = 0.1;

/// The share of the air at the unit that leaked into the return.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Leakage {
    /// Leaked over all air, by mass.
    pub fraction: Uncertain,
    /// Against the limit. Contradicts where the mixed air lies outside the two by more than the uncertainty.
    pub outcome: LimitOutcome,
}

/// Return leakage from the state of the air at the return grilles, at the unit's inlet, and where the leak draws from:
/// fraction = (mixed − return)/(leak − return).
///
/// All three are dry bulb temperatures in K, or all three are humidity ratios in kg/kg. A duct through a hot attic also
/// warms its air, and a motor before the probe does: humidity ratios see only what leaked. `limit` is
/// [`DEFAULT_LEAKAGE_LIMIT`] if none.
///
/// # Errors
/// [`Error::NotAvailable`] where the leaking air is too like the return air to tell: within two standard uncertainties of
/// their difference. [`Error::OutOfRange`] or [`Error::NotFinite`] outside [`bounds::AIR_TEMPERATURE`],
/// [`bounds::LEAKAGE_HUMIDITY_RATIO`] or [`bounds::LEAKAGE_LIMIT`].
///
/// ```
/// use satline::uncertain::Uncertain;
/// use satline::visit::airflow::{LimitOutcome, return_leakage};
/// // Demo: 24 °C at the grilles, 27.5 °C at the unit, 48 °C in the attic, each ±0.3 K.
/// let air = |celsius: f64| Uncertain::new(celsius + 273.15, 0.3);
/// let found = return_leakage(air(24.0)?, air(27.5)?, air(48.0)?, None)?;
/// assert!((found.fraction.value - 0.1458).abs() < 1e-4 && (found.fraction.standard_uncertainty - 0.0165).abs() < 5e-4);
/// assert_eq!(found.outcome, LimitOutcome::Above);
/// assert!(return_leakage(air(24.0)?, air(24.1)?, air(24.5)?, None).is_err());
/// # Ok::<(), satline::Error>(())
/// ```
pub fn return_leakage(
    return_air: Uncertain,
    mixed_air: Uncertain,
    leaking_air: Uncertain,
    limit: Option<f64>,
) -> Result<Leakage, Error> {
    let limit = bounds::LEAKAGE_LIMIT.check(limit.unwrap_or(DEFAULT_LEAKAGE_LIMIT))?;
    let inputs = [return_air, mixed_air, leaking_air];
    // No air is as cold as one kelvin, nor holds as much water: the first value tells which of the two it is.
    let bound = if return_air.value > 1.0 { &bounds::AIR_TEMPERATURE } else { &bounds::LEAKAGE_HUMIDITY_RATIO };
    for input in inputs {
        bound.check(input.value)?;
    }
    let squares = [return_air, leaking_air].map(|air| air.standard_uncertainty * air.standard_uncertainty);
    let reach = COVERAGE * math::sqrt(squares.iter().sum());
    let difference = leaking_air.value - return_air.value;
    // Zero difference tells nothing, however well it is known.
    if !(difference.abs() > reach) {
        return Err(Error::NotAvailable {
            quantity: "return leakage",
            reason: "the air where the leak draws from is too like the return air: come back when they differ more, or compare humidity ratios",
        });
    }
    let fraction = propagate(inputs, |[inside, mixed, outside]| Ok((mixed - inside) / (outside - inside)))?;
    let spread = COVERAGE * fraction.standard_uncertainty;
    let outside = fraction.value + spread < 0.0 || fraction.value - spread > 1.0;
    Ok(Leakage { fraction, outcome: if outside { LimitOutcome::Contradicts } else { judge(fraction, limit) } })
}
