//! One property along the saturation line, as compact as its error budget allows.

use crate::line::worst;
use crate::piece;
use satline::Error;
use satline::saturation::PropertyCurve;

/// Relative error that a saturated density may have: a little less than the 1 ppm that is promised, since the fit looks at
/// some points only.
pub const DENSITY_BUDGET: f64 = 9e-7;
/// Error that a saturated enthalpy may have, J/kg: about one part in 10⁵ of a heat of evaporation.
pub const ENTHALPY_BUDGET: f64 = 2.0;

/// A fitted property with its measured error, in the unit of its budget.
pub struct Fitted {
    pub curve: PropertyCurve,
    pub error: f64,
}

/// Fits a property between two temperatures below `end`, the critical one; `relative` says how its error is counted.
pub fn fit(
    (lower, upper, end): (f64, f64, f64),
    relative: bool,
    budget: f64,
    mut property: impl FnMut(f64) -> Result<f64, Error>,
) -> Result<Fitted, Error> {
    let mut best = None;
    for octave_bits in 0..=6_u32 {
        let shift = 52 - octave_bits;
        let (first_key, last_key) = ((end - upper).to_bits() >> shift, (end - lower).to_bits() >> shift);
        let mut pieces = Vec::new();
        for key in first_key..=last_key {
            let (from, to) = (f64::from_bits(key << shift), f64::from_bits((key + 1) << shift));
            let (low, high) = (from.max(end - upper), to.min(end - lower));
            // A piece of no width would have no polynomial.
            if !(low < high) {
                return Err(Error::BadComposition { reason: "a piece of a property has no width" });
            }
            // The distance back to a temperature may round past the ends.
            let mut at_distance = |distance: f64| property((end - distance).clamp(lower, upper));
            pieces.push(piece::fit(from, to, low, high, &mut at_distance)?);
        }
        let curve = PropertyCurve { lower, upper, end, octave_bits, first_key, pieces: pieces.leak() };
        let error = worst(lower, upper, curve.pieces.len(), |temperature| {
            let (found, truth) = (curve.at(temperature)?, property(temperature)?);
            Ok(if relative { found / truth - 1.0 } else { found - truth })
        })?;
        let good = error <= budget;
        best = Some(Fitted { curve, error });
        if good {
            break;
        }
    }
    best.filter(|fitted| fitted.error <= budget).ok_or(Error::NotConverged {
        calculation: "fit of a saturated property",
        value: upper,
        unit: "K",
    })
}
