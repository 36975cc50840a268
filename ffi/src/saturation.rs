//! The saturation line of a refrigerant: bubble and dew, both ways, superheat and subcooling.

use crate::answer::{Answer, answer, status};
use crate::handle::{Refrigerant, curves};
use satline::Error;
use satline::quantity::{Pressure, Temperature, TemperatureDifference};
use satline::saturation::SaturationCurves;

/// Evaluates a curve at a temperature.
///
/// # Safety
/// As for the functions of the header.
#[inline]
unsafe fn at_temperature(
    refrigerant: *const Refrigerant,
    temperature_k: f64,
    out: *mut f64,
    evaluate: fn(&SaturationCurves, Temperature) -> Result<Pressure, Error>,
) -> i32 {
    let compute = || -> Answer<f64> {
        // SAFETY: the header asks for a handle.
        let curves = unsafe { curves(refrigerant) }?;
        let temperature = Temperature::from_kelvin(temperature_k).map_err(status)?;
        evaluate(curves, temperature).map(Pressure::pascals).map_err(status)
    };
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(out, compute) }
}

/// Evaluates a curve at a pressure.
///
/// # Safety
/// As for the functions of the header.
#[inline]
unsafe fn at_pressure(
    refrigerant: *const Refrigerant,
    pressure_pa: f64,
    out: *mut f64,
    evaluate: fn(&SaturationCurves, Pressure) -> Result<Temperature, Error>,
) -> i32 {
    let compute = || -> Answer<f64> {
        // SAFETY: the header asks for a handle.
        let curves = unsafe { curves(refrigerant) }?;
        let pressure = Pressure::from_pascals(pressure_pa).map_err(status)?;
        evaluate(curves, pressure).map(Temperature::kelvin).map_err(status)
    };
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(out, compute) }
}

/// Evaluates a difference between a line's temperature and a curve.
///
/// # Safety
/// As for the functions of the header.
#[inline]
unsafe fn at_line(
    refrigerant: *const Refrigerant,
    temperature_k: f64,
    pressure_pa: f64,
    out: *mut f64,
    evaluate: fn(&SaturationCurves, Temperature, Pressure) -> Result<TemperatureDifference, Error>,
) -> i32 {
    let compute = || -> Answer<f64> {
        // SAFETY: the header asks for a handle.
        let curves = unsafe { curves(refrigerant) }?;
        let temperature = Temperature::from_kelvin(temperature_k).map_err(status)?;
        let pressure = Pressure::from_pascals(pressure_pa).map_err(status)?;
        evaluate(curves, temperature, pressure).map(TemperatureDifference::kelvin).map_err(status)
    };
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(out, compute) }
}

/// Bubble pressure at a temperature: where the first vapour forms.
///
/// temperature_k: kelvin. pressure_pa: pascals, absolute.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE (see satline_refrigerant_limits), SATLINE_STATUS_NOT_FINITE,
/// SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_VERSION_MISMATCH.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_bubble_pressure_pa(
    refrigerant: *const Refrigerant,
    temperature_k: f64,
    pressure_pa: *mut f64,
) -> i32 {
    // SAFETY: the header states what the pointers must be.
    unsafe { at_temperature(refrigerant, temperature_k, pressure_pa, SaturationCurves::bubble_pressure) }
}

/// Dew pressure at a temperature: where the last liquid goes.
///
/// temperature_k: kelvin. pressure_pa: pascals, absolute.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE (see satline_refrigerant_limits), SATLINE_STATUS_NOT_FINITE,
/// SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_VERSION_MISMATCH.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_dew_pressure_pa(
    refrigerant: *const Refrigerant,
    temperature_k: f64,
    pressure_pa: *mut f64,
) -> i32 {
    // SAFETY: the header states what the pointers must be.
    unsafe { at_temperature(refrigerant, temperature_k, pressure_pa, SaturationCurves::dew_pressure) }
}

/// Bubble temperature at a pressure: where the first vapour forms.
///
/// pressure_pa: pascals, absolute (see satline_pressure_from_gauge_pa). temperature_k: kelvin.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE (see satline_refrigerant_limits), SATLINE_STATUS_NOT_FINITE,
/// SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_VERSION_MISMATCH.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_bubble_temperature_k(
    refrigerant: *const Refrigerant,
    pressure_pa: f64,
    temperature_k: *mut f64,
) -> i32 {
    // SAFETY: the header states what the pointers must be.
    unsafe { at_pressure(refrigerant, pressure_pa, temperature_k, SaturationCurves::bubble_temperature) }
}

/// Dew temperature at a pressure: where the last liquid goes.
///
/// pressure_pa: pascals, absolute (see satline_pressure_from_gauge_pa). temperature_k: kelvin.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE (see satline_refrigerant_limits), SATLINE_STATUS_NOT_FINITE,
/// SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_VERSION_MISMATCH.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_dew_temperature_k(
    refrigerant: *const Refrigerant,
    pressure_pa: f64,
    temperature_k: *mut f64,
) -> i32 {
    // SAFETY: the header states what the pointers must be.
    unsafe { at_pressure(refrigerant, pressure_pa, temperature_k, SaturationCurves::dew_temperature) }
}

/// Superheat: line temperature minus dew temperature. Negative means that liquid is present.
///
/// temperature_k: kelvin, of the line. pressure_pa: pascals, absolute, at the same place. superheat_k: kelvin of
/// difference (multiply by 1.8 for degrees Fahrenheit).
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE (see satline_refrigerant_limits), SATLINE_STATUS_NOT_FINITE,
/// SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_VERSION_MISMATCH.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_superheat_k(
    refrigerant: *const Refrigerant,
    temperature_k: f64,
    pressure_pa: f64,
    superheat_k: *mut f64,
) -> i32 {
    // SAFETY: the header states what the pointers must be.
    unsafe { at_line(refrigerant, temperature_k, pressure_pa, superheat_k, SaturationCurves::superheat) }
}

/// Subcooling: bubble temperature minus line temperature. Negative means that vapour is present.
///
/// temperature_k: kelvin, of the line. pressure_pa: pascals, absolute, at the same place. subcooling_k: kelvin of
/// difference (multiply by 1.8 for degrees Fahrenheit).
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE (see satline_refrigerant_limits), SATLINE_STATUS_NOT_FINITE,
/// SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_VERSION_MISMATCH.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_subcooling_k(
    refrigerant: *const Refrigerant,
    temperature_k: f64,
    pressure_pa: f64,
    subcooling_k: *mut f64,
) -> i32 {
    // SAFETY: the header states what the pointers must be.
    unsafe { at_line(refrigerant, temperature_k, pressure_pa, subcooling_k, SaturationCurves::subcooling) }
}
