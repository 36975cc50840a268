//! The ranges of a refrigerant's curves: what an out-of-range status leaves open.

use crate::answer::answer;
use crate::handle::{Refrigerant, curves};

/// Where the saturation curves of a refrigerant answer, limits included. A temperature just above the highest is too
/// near the critical point for them. This structure never changes.
#[repr(C)]
pub struct Limits {
    /// Temperatures for the bubble pressure, kelvin.
    pub lowest_bubble_temperature_k: f64,
    pub highest_bubble_temperature_k: f64,
    /// Temperatures for the dew pressure, kelvin.
    pub lowest_dew_temperature_k: f64,
    pub highest_dew_temperature_k: f64,
    /// Pressures for the bubble temperature and for subcooling, pascals, absolute.
    pub lowest_bubble_pressure_pa: f64,
    pub highest_bubble_pressure_pa: f64,
    /// Pressures for the dew temperature and for superheat, pascals, absolute.
    pub lowest_dew_pressure_pa: f64,
    pub highest_dew_pressure_pa: f64,
}

/// The ranges in which a refrigerant's curves answer: what to show after SATLINE_STATUS_OUT_OF_RANGE.
///
/// Status: SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_VERSION_MISMATCH.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_refrigerant_limits(refrigerant: *const Refrigerant, limits: *mut Limits) -> i32 {
    let compute = || {
        // SAFETY: the header asks for a handle.
        let curves = unsafe { curves(refrigerant) }?;
        Ok(Limits {
            lowest_bubble_temperature_k: curves.bubble.pressure.lower,
            highest_bubble_temperature_k: curves.bubble.pressure.upper,
            lowest_dew_temperature_k: curves.dew.pressure.lower,
            highest_dew_temperature_k: curves.dew.pressure.upper,
            lowest_bubble_pressure_pa: curves.bubble.temperature.lower,
            highest_bubble_pressure_pa: curves.bubble.temperature.upper,
            lowest_dew_pressure_pa: curves.dew.temperature.lower,
            highest_dew_pressure_pa: curves.dew.temperature.upper,
        })
    };
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(limits, compute) }
}
