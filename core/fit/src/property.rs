//! One property along the saturation line, as compact as its error budget allows.

use crate::line::worst;
use crate::piece;
use satline::Error;
use satline::saturation::PropertyCurve;

/// Relative error that a saturated density may have.
pub const DENSITY_BUDGET: f64 = 1e-5;
/// Error that a saturated enthalpy may have, J/kg: about one part in 10⁵ of a heat of evaporation.
pub const ENTHALPY_BUDGET: f64 = 2.0;

/// A fitted property with its measured error, in the unit of its budget.
pub struct Fitted {
    pub curve: PropertyCurve,
    pub error: f64,
}

/// Fits a property between two temperatures; `relative` says how its error is counted.
pub fn fit(
    lower: f64,
    upper: f64,
    relative: bool,
    budget: f64,
    mut property: impl FnMut(f64) -> Result<f64, Error>,
) -> Result<Fitted, Error> {
    let mut best = None;
    for steps_per_kelvin in [1.0 / 32.0, 1.0 / 16.0, 1.0 / 8.0, 1.0 / 4.0, 1.0 / 2.0, 1.0] {
        let pieces = piece::even(lower, upper, steps_per_kelvin, &mut property)?;
        let curve = PropertyCurve { lower, upper, steps_per_kelvin, pieces: pieces.leak() };
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
