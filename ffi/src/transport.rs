//! Viscosity, thermal conductivity and surface tension of full refrigerants.

use crate::answer::{Answer, answer, status};
use crate::full::{RefrigerantFull, record};
use satline::Error;
use satline::eos::Mixture;

/// Evaluates a property of the refrigerant's mixture.
///
/// # Safety
/// As for the functions of the header.
unsafe fn of_mixture(
    refrigerant: *const RefrigerantFull,
    out: *mut f64,
    evaluate: impl Fn(&Mixture) -> Result<f64, Error>,
) -> i32 {
    let compute = || -> Answer<f64> {
        // SAFETY: the header asks for a handle.
        let record = unsafe { record(refrigerant) }?;
        Mixture::of(record.model).and_then(|mixture| evaluate(&mixture)).map_err(status)
    };
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(out, compute) }
}

/// Viscosity in Pa s of one phase of the refrigerant's composition. Not in the library for microcontrollers, nor are the
/// functions below.
///
/// temperature_k: kelvin, from the highest of the components' lowest temperatures (R-1234yf, R-1234ze(E) and R-E170:
/// 213.15) to the lowest of their highest, at most 500. density_kg_m3: kilograms a cubic metre, of one phase, as
/// satline_state.density_kg_m3 of a liquid or a vapour; 0 for the dilute gas.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE (outside these, or a density that is clearly one of liquid and vapour together),
/// SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_VERSION_MISMATCH.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_viscosity_pa_s(
    refrigerant: *const RefrigerantFull,
    temperature_k: f64,
    density_kg_m3: f64,
    viscosity_pa_s: *mut f64,
) -> i32 {
    // SAFETY: the header states what the pointers must be.
    unsafe {
        of_mixture(refrigerant, viscosity_pa_s, |mixture| mixture.viscosity_by_mass(temperature_k, density_kg_m3))
    }
}

/// Stated relative error of the refrigerant's viscosities, as 0.15 for 15 %.
///
/// Status: SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_VERSION_MISMATCH.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_viscosity_error(
    refrigerant: *const RefrigerantFull,
    viscosity_error: *mut f64,
) -> i32 {
    // SAFETY: the header states what the pointers must be.
    unsafe { of_mixture(refrigerant, viscosity_error, Mixture::viscosity_error) }
}

/// Thermal conductivity in W/(m K) of one phase of a pure refrigerant, where a correlation is published.
///
/// temperature_k: kelvin, in the correlation's range. density_kg_m3: as satline_viscosity_pa_s.
///
/// Status: SATLINE_STATUS_NOT_AVAILABLE (a blend, or none is published), SATLINE_STATUS_OUT_OF_RANGE (outside the
/// correlation's range of temperature and pressure, or a density of liquid and vapour together), SATLINE_STATUS_NOT_FINITE,
/// SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_VERSION_MISMATCH.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_thermal_conductivity_w_m_k(
    refrigerant: *const RefrigerantFull,
    temperature_k: f64,
    density_kg_m3: f64,
    thermal_conductivity_w_m_k: *mut f64,
) -> i32 {
    // SAFETY: the header states what the pointers must be.
    unsafe {
        of_mixture(refrigerant, thermal_conductivity_w_m_k, |mixture| {
            mixture.thermal_conductivity_by_mass(temperature_k, density_kg_m3)
        })
    }
}

/// Stated relative error of the refrigerant's thermal conductivity, as 0.05 for 5 %; near the critical point it is larger.
///
/// Status: SATLINE_STATUS_NOT_AVAILABLE (a blend, or none is published), SATLINE_STATUS_NULL_POINTER,
/// SATLINE_STATUS_VERSION_MISMATCH.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_thermal_conductivity_error(
    refrigerant: *const RefrigerantFull,
    thermal_conductivity_error: *mut f64,
) -> i32 {
    // SAFETY: the header states what the pointers must be.
    unsafe { of_mixture(refrigerant, thermal_conductivity_error, Mixture::thermal_conductivity_error) }
}

/// Surface tension in N/m of a pure refrigerant's liquid under its own vapour, where a correlation is published.
///
/// temperature_k: kelvin, from the correlation's lowest to its critical temperature.
///
/// Status: SATLINE_STATUS_NOT_AVAILABLE (a blend, or none is published), SATLINE_STATUS_OUT_OF_RANGE,
/// SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_VERSION_MISMATCH.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_surface_tension_n_m(
    refrigerant: *const RefrigerantFull,
    temperature_k: f64,
    surface_tension_n_m: *mut f64,
) -> i32 {
    // SAFETY: the header states what the pointers must be.
    unsafe { of_mixture(refrigerant, surface_tension_n_m, |mixture| mixture.surface_tension(temperature_k)) }
}

/// Stated relative error of the refrigerant's surface tension, as 0.05 for 5 %; near the critical point at least 0.2 mN/m.
///
/// Status: SATLINE_STATUS_NOT_AVAILABLE (a blend, or none is published), SATLINE_STATUS_NULL_POINTER,
/// SATLINE_STATUS_VERSION_MISMATCH.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_surface_tension_error(
    refrigerant: *const RefrigerantFull,
    surface_tension_error: *mut f64,
) -> i32 {
    // SAFETY: the header states what the pointers must be.
    unsafe { of_mixture(refrigerant, surface_tension_error, Mixture::surface_tension_error) }
}
