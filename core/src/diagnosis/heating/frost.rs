//! Whether frost grows on the outdoor coil: its surface against 0 °C and against the dew (frost) point of the air.

use super::answers::{Frost, HeatingProblem};
use super::finding::{HeatingSet, HeatingValues};
use super::inputs::Inputs;
use super::judge::HeatingExtras;
use super::limits::{
    DEW_POINT_LIMIT_K, FROST_DIFFERENCE_K, FROST_STANDARDS, SURFACE_OVER_BEND_K, SURFACE_OVER_DEW_K, WATER_OR_ICE_SHARE,
};
use crate::diagnosis::Value;
use crate::diagnosis::limits::SQRT_3;
use crate::diagnosis::uncertainty::standard;
use crate::diagnosis::values::of_curves;
use crate::quantity::{Pressure, Temperature};
use crate::reading::{Field, Reading};
use crate::uncertain::root_of_squares;

/// Dew temperature at the compressor's suction.
pub(super) fn evaporating(reading: &Reading, inputs: &Inputs) -> Option<Value> {
    let refrigerant = reading.refrigerant?;
    let found = inputs.value(|at| Ok(refrigerant.dew_temperature(Pressure::from_pascals(at.suction)?)?.kelvin()))?;
    Some(Value::new(found.value, root_of_squares([found.standard_uncertainty, of_curves(refrigerant)])))
}

/// The coil's surface: above the evaporating temperature by none to twice the usual, which is its limit of error.
fn surface(reading: &Reading, evaporating: Option<Value>) -> Option<Value> {
    let above = |from: f64, uncertainty: f64, usual: f64| {
        Value::new(from + usual, root_of_squares([uncertainty, usual / SQRT_3]))
    };
    if let Some(dew) = evaporating {
        return Some(above(dew.value, dew.standard_uncertainty, SURFACE_OVER_DEW_K));
    }
    let bend = reading.condensing_surface_temperature?.kelvin();
    Some(above(bend, standard(reading, Field::CondensingSurfaceTemperature), SURFACE_OVER_BEND_K))
}

/// Standard uncertainty of an outdoor dew point, K.
pub(super) fn of_dew_point(dew_point: Temperature) -> f64 {
    let below_freezing = (-WATER_OR_ICE_SHARE * dew_point.celsius()).max(0.0);
    root_of_squares([DEW_POINT_LIMIT_K / SQRT_3, below_freezing / SQRT_3])
}

/// Fills in the coil's values and judges. Expects the evaporating temperature in `values` where it can be trusted.
pub(super) fn judge(
    reading: &Reading,
    extras: &HeatingExtras,
    problems: HeatingSet<HeatingProblem>,
    values: &mut HeatingValues,
) -> Frost {
    let trusted = values.evaporating_temperature.filter(|_| !is_in_doubt(problems));
    let bend_is_in_doubt = problems.contains(HeatingProblem::CoilTemperaturesContradict);
    let found = surface(reading, trusted).filter(|_| trusted.is_some() || !bend_is_in_doubt);
    values.coil_surface_temperature = found;
    let Some(coil) = found else {
        return Frost::Unknown;
    };
    let over = |other: f64, uncertainty: f64, sign: f64| {
        Value::new(sign * (coil.value - other), root_of_squares([coil.standard_uncertainty, uncertainty]))
    };
    values.outdoor_over_coil =
        reading.outdoor_dry_bulb.map(|outdoor| over(outdoor.kelvin(), standard(reading, Field::OutdoorDryBulb), -1.0));
    let dew_point_is_wrong = problems.contains(HeatingProblem::DewPointContradicts);
    values.coil_over_dew_point = extras
        .outdoor_dew_point
        .filter(|_| !dew_point_is_wrong)
        .map(|dew_point| over(dew_point.kelvin(), of_dew_point(dew_point), 1.0));
    let over_freezing = side(Value::new(coil.value - 273.15, coil.standard_uncertainty), 0.0);
    match values.coil_over_dew_point.map(|over| side(over, 0.0)) {
        // Above the dew point the coil stays dry, warm or cold.
        Some(Side::Above) => Frost::FrostFree,
        Some(Side::Below) => match over_freezing {
            Side::Below => Frost::Forms,
            Side::Above => Frost::CondensationOnly,
            Side::Near => Frost::CannotTell,
        },
        Some(Side::Near) if over_freezing == Side::Above => Frost::CannotHappen,
        Some(Side::Near) => Frost::CannotTell,
        None => match (over_freezing, values.outdoor_over_coil) {
            (Side::Above, _) => Frost::CannotHappen,
            (Side::Below, Some(under)) if under.value > FROST_DIFFERENCE_K => Frost::Possible,
            // Without the outdoor air's temperature nothing speaks against it.
            (Side::Below, None) => Frost::Possible,
            _ => Frost::CannotTell,
        },
    }
}

/// Whether the suction pressure is not to be trusted.
fn is_in_doubt(problems: HeatingSet<HeatingProblem>) -> bool {
    [
        HeatingProblem::SuctionPressureContradicts,
        HeatingProblem::PressuresContradict,
        HeatingProblem::PressureOutsideCurve,
    ]
    .into_iter()
    .any(|problem| problems.contains(problem))
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Side {
    Below,
    Near,
    Above,
}

/// On which side of an edge a value lies, clear of it by its uncertainty.
fn side(value: Value, edge: f64) -> Side {
    let reach = FROST_STANDARDS * value.standard_uncertainty;
    if value.value + reach < edge {
        Side::Below
    } else if value.value - reach > edge {
        Side::Above
    } else {
        Side::Near
    }
}
