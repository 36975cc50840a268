//! What a verification protocol asks for at given air temperatures.

use pyo3::prelude::*;
use satline::charge;
use satline::quantity::AirTemperature;

use crate::elementwise::two_or_none;

/// Target superheat in kelvin of a fixed-orifice unit.
///
/// From the table of California Title 24, Residential Appendix RA3.2 (2008 and 2013 editions; transcribed from
/// memory), for a return wet bulb of 50 to 76 degF and an outdoor dry bulb of 55 to 115 degF, interpolated between its
/// cells. Where the table is blank or the air outside it, there is no valid test: None for numbers; for arrays the
/// result is a masked array with those cells masked. The maker's chart for the unit, where there is one, comes first.
#[pyfunction]
pub fn target_superheat_k<'py>(
    return_wet_bulb_k: &Bound<'py, PyAny>,
    outdoor_dry_bulb_k: &Bound<'py, PyAny>,
) -> PyResult<Bound<'py, PyAny>> {
    two_or_none(
        (return_wet_bulb_k, "return_wet_bulb_k"),
        (outdoor_dry_bulb_k, "outdoor_dry_bulb_k"),
        |wet_bulb, outdoor| {
            let (wet_bulb, outdoor) = (AirTemperature::from_kelvin(wet_bulb)?, AirTemperature::from_kelvin(outdoor)?);
            Ok(charge::target_superheat(wet_bulb, outdoor).difference().map(|target| target.kelvin()))
        },
    )
}

/// Target temperature split in kelvin: what the return air should be cooled by.
///
/// From the table of California Title 24, Residential Appendix RA3.2 (2008 and 2013 editions, withdrawn as an airflow
/// check in a later one; transcribed from memory), for a return dry bulb of 70 to 84 degF and a return wet bulb of 50
/// to 76 degF, interpolated between its cells. Where there is no valid test: None for numbers; for arrays the result
/// is a masked array with those cells masked.
#[pyfunction]
pub fn target_split_k<'py>(
    return_dry_bulb_k: &Bound<'py, PyAny>,
    return_wet_bulb_k: &Bound<'py, PyAny>,
) -> PyResult<Bound<'py, PyAny>> {
    two_or_none(
        (return_dry_bulb_k, "return_dry_bulb_k"),
        (return_wet_bulb_k, "return_wet_bulb_k"),
        |dry_bulb, wet_bulb| {
            let (dry_bulb, wet_bulb) = (AirTemperature::from_kelvin(dry_bulb)?, AirTemperature::from_kelvin(wet_bulb)?);
            Ok(charge::target_split(dry_bulb, wet_bulb).difference().map(|target| target.kelvin()))
        },
    )
}
