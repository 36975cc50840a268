//! Delivered performance: capacity over what the unit should deliver at these conditions, before and after, and what a
//! wrong charge costs.

use crate::bounds;
use crate::charge::answers::answers;
use crate::error::Error;
use crate::math;
use crate::quantity::Power;
use crate::uncertain::{Uncertain, propagate};

answers! {
    /// What two measurements of a unit say of the work between them.
    GainOutcome {
        /// More than before.
        Better = 1 "better" "It delivers more, for the same conditions, than before.";
        /// Less than before.
        Worse = 2 "worse" "It delivers less, for the same conditions, than before.";
        /// Nearer than the uncertainty.
        CannotTell = 3 "cannot-tell" "The difference is smaller than the measurement can tell.";
    }
}

answers! {
    /// What can hurt, or mislead, where performance is judged. Show all of them.
    PerformanceCaution {
        /// Always.
        SameConditions = 1 "same-conditions"
            "Compare at settled, like conditions: airflow, coil as wet as before, filter in place.";
        /// Always.
        NotACause = 2 "not-a-cause"
            "Low capacity does not say why: measure airflow, charge and temperatures before anything is changed.";
        /// Always.
        Electricity = 3 "electricity"
            "Power is measured on live parts: only by those licensed to, with rated meter and gloves.";
        /// Always.
        LicensedPractice = 4 "licensed-practice"
            "Work on refrigerant and wiring follows local codes and belongs to licensed practice.";
    }
}

/// How many standard uncertainties a gain must have to be told.
pub const COVERAGE: f64 = 2.0;

/// Rating conditions of cooling: 95 °F outdoors (AHRI 210/240), K.
pub const RATING_OUTDOOR_K: f64 = 308.15;
/// Rating conditions of cooling: return wet bulb 67 °F (AHRI 210/240), K.
pub const RATING_WET_BULB_K: f64 = 292.594_444_444_444_4;

/// How the capacity of a unit in cooling depends on its air, where its maker's data are not at hand.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CapacityShape {
    /// Relative change with the return wet bulb, 1/K.
    pub by_wet_bulb: Uncertain,
    /// Relative change with the outdoor dry bulb, 1/K.
    pub by_outdoor: Uncertain,
    /// One standard uncertainty of the nominal capacity itself, as a share of it.
    pub of_nominal: f64,
}

impl CapacityShape {
    /// Common practice for split units with a wet coil at nominal airflow: between a published general curve (2.5 %/K and
    /// −0.8 %/K at rating, from memory) and a measured unit (3.3 %/K and −1.2 %/K, fitted to the wet-coil rows of NISTIR
    /// 7350, appendix D). The nominal capacity may be off by 5 % as a limit of error.
    pub const COMMON: Self = Self {
        by_wet_bulb: Uncertain { value: 0.029, standard_uncertainty: 0.004 },
        by_outdoor: Uncertain { value: -0.010, standard_uncertainty: 0.002 },
        of_nominal: 0.029,
    };
}

/// What a unit should deliver at its air, W, from its nominal capacity at rating conditions: nominal·exp(a·ΔT wet bulb +
/// b·ΔT outdoors). The maker's table ([`crate::visit::target_grid`]) is better.
///
/// Holds for cooling with a wet coil at nominal airflow; a dry coil delivers more than its wet bulb says. The uncertainty
/// grows with the distance from rating conditions.
///
/// # Errors
/// [`Error::OutOfRange`] or [`Error::NotFinite`] outside [`bounds::POWER`], [`bounds::CORRECTED_WET_BULB`],
/// [`bounds::CORRECTED_OUTDOOR`] or [`bounds::CAPACITY_SLOPE`].
///
/// ```
/// use satline::uncertain::Uncertain;
/// use satline::visit::performance::{CapacityShape, expected_capacity};
/// // Demo: 10.5 kW nominal, return wet bulb 17 °C, 40 °C outdoors.
/// let air = |celsius: f64| Uncertain::new(celsius + 273.15, 0.5);
/// let found = expected_capacity(10_500.0, air(17.0)?, air(40.0)?, &CapacityShape::COMMON)?;
/// assert!((found.value - 9304.4).abs() < 1.0 && (found.standard_uncertainty - 332.0).abs() < 10.0);
/// # Ok::<(), satline::Error>(())
/// ```
pub fn expected_capacity(
    nominal_w: f64,
    return_wet_bulb_k: Uncertain,
    outdoor_dry_bulb_k: Uncertain,
    shape: &CapacityShape,
) -> Result<Uncertain, Error> {
    let nominal = Power::from_watts(nominal_w)?.watts();
    bounds::CORRECTED_WET_BULB.check(return_wet_bulb_k.value)?;
    bounds::CORRECTED_OUTDOOR.check(outdoor_dry_bulb_k.value)?;
    bounds::CAPACITY_SLOPE.check(shape.by_wet_bulb.value)?;
    bounds::CAPACITY_SLOPE.check(shape.by_outdoor.value)?;
    let share = Uncertain::new(1.0, shape.of_nominal)?;
    let inputs = [share, shape.by_wet_bulb, shape.by_outdoor, return_wet_bulb_k, outdoor_dry_bulb_k];
    propagate(inputs, |[share, by_wet_bulb, by_outdoor, wet_bulb, outdoor]| {
        let exponent = by_wet_bulb * (wet_bulb - RATING_WET_BULB_K) + by_outdoor * (outdoor - RATING_OUTDOOR_K);
        Ok(nominal * share * math::exp(exponent))
    })
}

/// Capacity delivered over capacity expected at the same conditions.
///
/// # Errors
/// [`Error::OutOfRange`] or [`Error::NotFinite`] outside [`bounds::POWER`].
///
/// ```
/// use satline::uncertain::Uncertain;
/// use satline::visit::performance::delivered;
/// let found = delivered(Uncertain::new(8000.0, 400.0)?, Uncertain::new(10_000.0, 300.0)?)?;
/// assert!((found.value - 0.8).abs() < 1e-12 && (found.standard_uncertainty - 0.0467).abs() < 1e-3);
/// # Ok::<(), satline::Error>(())
/// ```
pub fn delivered(capacity_w: Uncertain, expected_w: Uncertain) -> Result<Uncertain, Error> {
    propagate([capacity_w, expected_w], |[capacity, expected]| {
        Ok(Power::from_watts(capacity)?.watts() / Power::from_watts(expected)?.watts())
    })
}

/// Before and after.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Gain {
    /// Delivered over expected, before.
    pub before: Uncertain,
    /// Delivered over expected, after.
    pub after: Uncertain,
    /// After over before: what the work gained at equal conditions.
    pub ratio: Uncertain,
    /// What it says.
    pub outcome: GainOutcome,
}

/// Capacity measured and expected before the work and after it, W.
///
/// `shared`: the share of each expected value's uncertainty, 0 to 1, that both have in common and that so cancels in the
/// gain. 1 where both come from one nominal capacity or one table at like conditions; 0 where they have nothing in common.
///
/// # Errors
/// [`Error::OutOfRange`] or [`Error::NotFinite`] outside [`bounds::POWER`] or [`bounds::SHARED_UNCERTAINTY`].
pub fn gain(
    (before_w, before_expected_w): (Uncertain, Uncertain),
    (after_w, after_expected_w): (Uncertain, Uncertain),
    shared: f64,
) -> Result<Gain, Error> {
    let shared = bounds::SHARED_UNCERTAINTY.check(shared)?;
    let before = delivered(before_w, before_expected_w)?;
    let after = delivered(after_w, after_expected_w)?;
    let own = math::sqrt(1.0 - shared * shared);
    let relative = |expected: Uncertain, share: f64| share * expected.standard_uncertainty / expected.value;
    let of = |expected: Uncertain| Uncertain { value: 0.0, standard_uncertainty: relative(expected, own) };
    // What is common moves both expectations by its own amount in each.
    let common = Uncertain { value: 0.0, standard_uncertainty: 1.0 };
    let (first, last) = (relative(before_expected_w, shared), relative(after_expected_w, shared));
    let inputs = [before_w, after_w, of(before_expected_w), of(after_expected_w), common];
    let ratio = propagate(inputs, |[before, after, before_own, after_own, common]| {
        let first = before_expected_w.value * (1.0 + before_own + first * common);
        let last = after_expected_w.value * (1.0 + after_own + last * common);
        let ratio = |capacity, expected| -> Result<f64, Error> {
            Ok(Power::from_watts(capacity)?.watts() / Power::from_watts(expected)?.watts())
        };
        Ok(ratio(after, last)? / ratio(before, first)?)
    })?;
    let reach = COVERAGE * ratio.standard_uncertainty;
    let outcome = if ratio.value - reach > 1.0 {
        GainOutcome::Better
    } else if ratio.value + reach < 1.0 {
        GainOutcome::Worse
    } else {
        GainOutcome::CannotTell
    };
    Ok(Gain { before, after, ratio, outcome })
}
