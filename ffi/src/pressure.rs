//! Gauge to absolute pressure.

use crate::answer::{answer, status};
use satline::quantity::{Atmosphere, GaugePressure, Pressure};

/// Absolute pressure from what a gauge shows.
///
/// gauge_pa: pascals above ambient, at least minus the ambient pressure (a gauge cannot read below vacuum).
/// ambient_pa: pascals, absolute, at the gauge (station pressure): 101325 at sea level, 84 000 or so at 1600 m.
/// pressure_pa: pascals, absolute.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE, SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_NULL_POINTER. The accepted ranges
/// are SATLINE_GAUGE_PRESSURE_LOWEST_PA and the constants beside it.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_pressure_from_gauge_pa(gauge_pa: f64, ambient_pa: f64, pressure_pa: *mut f64) -> i32 {
    let convert = || {
        let gauge = GaugePressure::from_pascals(gauge_pa)?;
        let ambient = Atmosphere::from_pascals(ambient_pa)?;
        Pressure::from_gauge(gauge, ambient).map(Pressure::pascals)
    };
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(pressure_pa, || convert().map_err(status)) }
}
