//! Densities and enthalpies along the saturation line, from the compact curves of a full refrigerant.

use crate::answer::{Answer, answer, status};
use crate::full::{RefrigerantFull, record};
use crate::generated::codes::SATLINE_STATUS_NULL_POINTER;
use satline::Error;
use satline::quantity::Temperature;
use satline::refrigerant::Refrigerant as Record;

/// Evaluates a curve at a temperature.
///
/// # Safety
/// As for the functions of the header.
#[inline]
unsafe fn at(
    refrigerant: *const RefrigerantFull,
    temperature_k: f64,
    out: *mut f64,
    evaluate: fn(&Record, Temperature) -> Result<f64, Error>,
) -> i32 {
    let compute = || -> Answer<f64> {
        // SAFETY: the header asks for a handle.
        let record = unsafe { record(refrigerant) }?;
        evaluate(record, Temperature::from_kelvin(temperature_k).map_err(status)?).map_err(status)
    };
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(out, compute) }
}

/// Density of saturated liquid at its bubble point: of a blend the liquid of the overall composition. From compact curves,
/// within 1 ppm of the equation of state.
///
/// temperature_k: kelvin. density_kg_m3: kilograms a cubic metre.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE (see satline_saturated_limits), SATLINE_STATUS_NOT_FINITE,
/// SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_VERSION_MISMATCH.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_saturated_liquid_density_kg_m3(
    refrigerant: *const RefrigerantFull,
    temperature_k: f64,
    density_kg_m3: *mut f64,
) -> i32 {
    // SAFETY: the header states what the pointers must be.
    unsafe { at(refrigerant, temperature_k, density_kg_m3, Record::saturated_liquid_density_kg_m3) }
}

/// Density of saturated vapour at its dew point: of a blend the vapour of the overall composition, which stands at another
/// pressure than the liquid at the same temperature. From compact curves, within 1 ppm of the equation of state.
///
/// temperature_k: kelvin. density_kg_m3: kilograms a cubic metre.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE (see satline_saturated_limits), SATLINE_STATUS_NOT_FINITE,
/// SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_VERSION_MISMATCH.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_saturated_vapor_density_kg_m3(
    refrigerant: *const RefrigerantFull,
    temperature_k: f64,
    density_kg_m3: *mut f64,
) -> i32 {
    // SAFETY: the header states what the pointers must be.
    unsafe { at(refrigerant, temperature_k, density_kg_m3, Record::saturated_vapor_density_kg_m3) }
}

/// Enthalpy of saturated liquid at its bubble point. It counts from 200 kJ/kg for saturated liquid at 0 degrees Celsius
/// (SATLINE_REFERENCE_IIR); of R-14, which has no liquid there, from zero for saturated liquid at 101325 Pa. From compact
/// curves, within 2 J/kg of the equation of state.
///
/// temperature_k: kelvin. enthalpy_j_kg: joules a kilogram.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE (see satline_saturated_limits), SATLINE_STATUS_NOT_FINITE,
/// SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_VERSION_MISMATCH.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_saturated_liquid_enthalpy_j_kg(
    refrigerant: *const RefrigerantFull,
    temperature_k: f64,
    enthalpy_j_kg: *mut f64,
) -> i32 {
    // SAFETY: the header states what the pointers must be.
    unsafe { at(refrigerant, temperature_k, enthalpy_j_kg, Record::saturated_liquid_enthalpy_j_kg) }
}

/// Enthalpy of saturated vapour at its dew point, counted as satline_saturated_liquid_enthalpy_j_kg does; so the difference
/// of the two is the latent heat, of a blend between two pressures. From compact curves, within 2 J/kg of the equation of
/// state.
///
/// temperature_k: kelvin. enthalpy_j_kg: joules a kilogram.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE (see satline_saturated_limits), SATLINE_STATUS_NOT_FINITE,
/// SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_VERSION_MISMATCH.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_saturated_vapor_enthalpy_j_kg(
    refrigerant: *const RefrigerantFull,
    temperature_k: f64,
    enthalpy_j_kg: *mut f64,
) -> i32 {
    // SAFETY: the header states what the pointers must be.
    unsafe { at(refrigerant, temperature_k, enthalpy_j_kg, Record::saturated_vapor_enthalpy_j_kg) }
}

/// The lowest and highest temperature, in kelvin, at which the four functions above answer. Both are written or neither.
///
/// Status: SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_VERSION_MISMATCH.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_saturated_limits(
    refrigerant: *const RefrigerantFull,
    lowest_temperature_k: *mut f64,
    highest_temperature_k: *mut f64,
) -> i32 {
    let range = || -> Answer<(f64, f64)> {
        if lowest_temperature_k.is_null() {
            return Err(SATLINE_STATUS_NULL_POINTER);
        }
        // SAFETY: the header asks for a handle.
        unsafe { record(refrigerant) }.map(Record::saturated_range_k)
    };
    let highest = || {
        let (lowest, highest) = range()?;
        // SAFETY: not null, and the header asks for a pointer that may be written.
        unsafe { lowest_temperature_k.write(lowest) };
        Ok(highest)
    };
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(highest_temperature_k, highest) }
}
