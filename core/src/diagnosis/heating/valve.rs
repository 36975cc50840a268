//! The reversing valve, by the suction gas before and behind it.
//!
//! Hot gas and suction gas pass the valve side by side. What leaks from one to the other warms the suction gas on its way
//! from the outdoor coil to the compressor; a tight valve warms it by conduction only, some 3 °F at most, and more than
//! some 5 °F is read as a leak (common practice). Between the two nothing is said, nor where the probes cannot tell.

use super::answers::{HeatingProblem, ReversingValve};
use super::finding::HeatingSet;
use super::judge::HeatingExtras;
use super::limits::{VALVE_RISE_HIGHEST_F, VALVE_RISE_LOWEST_F};
use crate::diagnosis::Value;
use crate::diagnosis::judge::kelvin;
use crate::diagnosis::limits::{SQRT_3, THERMOMETER_LIMIT_F, THERMOMETER_LIMIT_SHARE};
use crate::quantity::{KELVIN_PER_FAHRENHEIT, Temperature};
use crate::uncertain::root_of_squares;
use crate::visit::target_grid::COVERAGE;

/// One standard uncertainty of a valve probe.
pub(super) fn of_probe(extras: &HeatingExtras, temperature: Temperature) -> f64 {
    let limit = extras.valve_probe_accuracy.map(|accuracy| {
        (accuracy.of_reading * temperature.celsius()).abs() + accuracy.absolute + 0.5 * accuracy.resolution
    });
    // A limit that is no number or negative is none.
    let default =
        ((THERMOMETER_LIMIT_SHARE * temperature.fahrenheit()).abs() + THERMOMETER_LIMIT_F) * KELVIN_PER_FAHRENHEIT;
    limit.filter(|limit| limit.is_finite() && *limit >= 0.0).unwrap_or(default) / SQRT_3
}

/// Rise of the suction gas, K.
pub(super) fn rise(extras: &HeatingExtras) -> Option<Value> {
    let (before, behind) = (extras.valve_suction_inlet_temperature?, extras.valve_suction_outlet_temperature?);
    let uncertainty = root_of_squares([of_probe(extras, before), of_probe(extras, behind)]);
    Some(Value::new(behind.kelvin() - before.kelvin(), uncertainty))
}

/// What the rise says. A leak is suspected from the upper end of the band on, where the rise is clear of the lower end by
/// two standard uncertainties; a valve is tight up to the lower end, where it is clear of the upper end by as much.
pub(super) fn judge(rise: Option<Value>, problems: HeatingSet<HeatingProblem>, settled: bool) -> ReversingValve {
    let Some(rise) = rise else {
        return ReversingValve::NotMeasured;
    };
    if !settled || problems.contains(HeatingProblem::ValveTemperaturesContradict) {
        return ReversingValve::CannotTell;
    }
    let (lowest, highest) = (kelvin(VALVE_RISE_LOWEST_F), kelvin(VALVE_RISE_HIGHEST_F));
    let reach = COVERAGE * rise.standard_uncertainty;
    // Rounding in the conversion of two temperatures must not decide.
    let edge = 1e-9;
    if rise.value >= highest - edge && rise.value - reach > lowest {
        ReversingValve::Suspected
    } else if rise.value <= lowest + edge && rise.value + reach < highest {
        ReversingValve::Tight
    } else {
        ReversingValve::CannotTell
    }
}
