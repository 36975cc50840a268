//! What a wrong charge costs in capacity and power, by published factors.

use crate::bounds;
use crate::error::Error;
use crate::uncertain::{Uncertain, propagate};

/// Coefficients of Y = 1 + (a0 + a1·Tid + a2·Tod + a3·f)·f, temperatures in °C, f the charge's relative deviation.
#[derive(Debug, Clone, Copy)]
struct Factor([f64; 4]);

// NIST, fault effects of an air-cooled split unit with a thermostatic valve (TN 1848 and the papers of its family).
const CAPACITY_UNDER: Factor = Factor([-0.946, 0.0493, -0.001_18, -1.15]);
const CAPACITY_OVER: Factor = Factor([-0.163, 0.0114, -0.000_21, -0.140]);
const POWER_UNDER: Factor = Factor([-0.313, 0.0115, 0.002_66, -0.116]);
const POWER_OVER: Factor = Factor([0.219, -0.005_01, 0.000_989, 0.284]);

/// How far a unit with a valve may lie from the factors, as a limit of error, at deviations of 10, 20 and 30 %.
const LIMITS: [(f64, f64); 4] = [(0.0, 0.0), (0.1, 0.03), (0.2, 0.05), (0.3, 0.06)];
/// √3: a limit of error read as a rectangular distribution has its standard uncertainty there.
const SQRT_3: f64 = 1.732_050_807_568_877_2;

impl Factor {
    fn at(self, indoor_c: f64, outdoor_c: f64, deviation: f64) -> f64 {
        let Self([a0, a1, a2, a3]) = self;
        1.0 + (a0 + a1 * indoor_c + a2 * outdoor_c + a3 * deviation) * deviation
    }
}

/// What a wrong charge does, over the same unit with the right charge.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ChargeFaultEffect {
    /// Cooling capacity.
    pub capacity: Uncertain,
    /// Electric power.
    pub power: Uncertain,
    /// Capacity over power: the coefficient of performance.
    pub coefficient_of_performance: Uncertain,
}

/// Capacity and power of a cooling unit with a wrong charge, over those with the right one, by the NIST factors (TN 1848
/// family, split unit with a thermostatic valve).
///
/// `deviation` is the charge's relative deviation, −0.3 to 0.3; indoor and outdoor dry bulb in K, within
/// [`bounds::FAULT_INDOOR`] and [`bounds::FAULT_OUTDOOR`]. Besides the inputs' own, the uncertainty holds how far units
/// with a valve lie from the factors: 0.03, 0.05 and 0.06 as limits of error at 10, 20 and 30 %, in between straight. A
/// unit with a fixed orifice loses more below about 90 % of its charge.
///
/// # Errors
/// [`Error::OutOfRange`] or [`Error::NotFinite`] outside those ranges or [`bounds::CHARGE_DEVIATION`].
///
/// ```
/// use satline::uncertain::Uncertain;
/// use satline::visit::charge_fault::charge_fault_effect;
/// let (indoor, outdoor) = (Uncertain::exact(299.85), Uncertain::exact(308.15));
/// let found = charge_fault_effect(Uncertain::exact(-0.2), indoor, outdoor)?;
/// assert!((found.capacity.value - 0.888).abs() < 5e-4);
/// assert!((found.capacity.standard_uncertainty - 0.05 / 3.0_f64.sqrt()).abs() < 1e-12);
/// # Ok::<(), satline::Error>(())
/// ```
pub fn charge_fault_effect(
    deviation: Uncertain,
    indoor_dry_bulb_k: Uncertain,
    outdoor_dry_bulb_k: Uncertain,
) -> Result<ChargeFaultEffect, Error> {
    let checked = |deviation: f64, indoor: f64, outdoor: f64| -> Result<[f64; 3], Error> {
        Ok([
            bounds::CHARGE_DEVIATION.check(deviation)?,
            bounds::FAULT_INDOOR.check(indoor)? - 273.15,
            bounds::FAULT_OUTDOOR.check(outdoor)? - 273.15,
        ])
    };
    checked(deviation.value, indoor_dry_bulb_k.value, outdoor_dry_bulb_k.value)?;
    let of = |under: Factor, over: Factor, [f, indoor, outdoor]: [f64; 3]| {
        if f < 0.0 { under.at(indoor, outdoor, f) } else { over.at(indoor, outdoor, f) }
    };
    let capacity = |values| of(CAPACITY_UNDER, CAPACITY_OVER, values);
    let power = |values| of(POWER_UNDER, POWER_OVER, values);
    let model = Uncertain { value: 0.0, standard_uncertainty: limit(deviation.value.abs()) / SQRT_3 };
    // The two factors' departures are taken as independent: nothing says how they go together.
    let inputs = [deviation, indoor_dry_bulb_k, outdoor_dry_bulb_k, model, model];
    let with = |function: &dyn Fn([f64; 3], f64, f64) -> f64| {
        propagate(inputs, |[f, indoor, outdoor, first, second]| {
            Ok(function(checked(f, indoor, outdoor)?, first, second))
        })
    };
    Ok(ChargeFaultEffect {
        capacity: with(&|values, first, _| capacity(values) + first)?,
        power: with(&|values, _, second| power(values) + second)?,
        coefficient_of_performance: with(&|values, first, second| {
            (capacity(values) + first) / (power(values) + second)
        })?,
    })
}

/// The limit of error of the factors at a deviation's size, between the stated ones in a straight line.
fn limit(size: f64) -> f64 {
    let pairs = LIMITS.iter().zip(LIMITS.iter().skip(1));
    let within = pairs.map(|((from, low), (to, high))| (from, low, to, high)).find(|(_, _, to, _)| size <= **to);
    let last = LIMITS.last().map_or(0.0, |(_, limit)| *limit);
    within.map_or(last, |(from, low, to, high)| low + (high - low) * (size - from) / (to - from))
}
