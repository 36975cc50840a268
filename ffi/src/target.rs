//! What the verification protocol asks for at the air's temperatures.

use crate::answer::{Answer, answer, status};
use crate::generated::codes::SATLINE_STATUS_NO_VALID_TEST;
use satline::Error;
use satline::charge::{Target, target_split, target_superheat};
use satline::quantity::AirTemperature;

/// A target at two air temperatures.
fn target(first_k: f64, second_k: f64, table: fn(AirTemperature, AirTemperature) -> Target) -> Answer<f64> {
    let air =
        || -> Result<_, Error> { Ok((AirTemperature::from_kelvin(first_k)?, AirTemperature::from_kelvin(second_k)?)) };
    let (first, second) = air().map_err(status)?;
    table(first, second).difference().map(|target| target.kelvin()).ok_or(SATLINE_STATUS_NO_VALID_TEST)
}

/// Target superheat of a fixed-orifice unit by the table of California Title 24, appendix RA3.2 (2008 and 2013): a
/// regional protocol; the maker's chart, where there is one, comes first.
///
/// return_wet_bulb_k: kelvin, at the indoor coil (50 to 76 degrees Fahrenheit have a target). outdoor_dry_bulb_k:
/// kelvin (55 to 115 degrees Fahrenheit). superheat_k: kelvin of difference.
///
/// Status: SATLINE_STATUS_NO_VALID_TEST where the table is blank or ends, SATLINE_STATUS_OUT_OF_RANGE (see
/// SATLINE_AIR_TEMPERATURE_LOWEST_K), SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_target_superheat_k(
    return_wet_bulb_k: f64,
    outdoor_dry_bulb_k: f64,
    superheat_k: *mut f64,
) -> i32 {
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(superheat_k, || target(return_wet_bulb_k, outdoor_dry_bulb_k, target_superheat)) }
}

/// Target temperature split over the indoor coil by the table of the same protocol, which withdrew it as an airflow
/// check in a later edition.
///
/// return_dry_bulb_k: kelvin, at the indoor coil (70 to 84 degrees Fahrenheit have a target). return_wet_bulb_k:
/// kelvin (50 to 76 degrees Fahrenheit). split_k: kelvin of difference.
///
/// Status: as satline_target_superheat_k.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_target_split_k(
    return_dry_bulb_k: f64,
    return_wet_bulb_k: f64,
    split_k: *mut f64,
) -> i32 {
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(split_k, || target(return_dry_bulb_k, return_wet_bulb_k, target_split)) }
}
