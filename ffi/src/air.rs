//! Moist air in C.

use crate::answer::{Answer, answer, status};
use crate::generated::codes::{SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_OK};
use satline::Error;
use satline::air::{MoistAir as Air, actual_airflow_m3_s, density_ratio, standard_airflow_m3_s};
use satline::quantity::{AirTemperature, Airflow, Atmosphere, Temperature};

/// Bit of satline_moist_air.defined: dew_point_k is set; air drier than a dew point of -100 degrees Celsius has none.
pub const SATLINE_DEFINED_DEW_POINT: u32 = 1;

/// Moist air. Start with satline_moist_air_init. Saturation, dew point and wet bulb are over ice below 0 degrees Celsius.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct MoistAir {
    /// sizeof(satline_moist_air), set by satline_moist_air_init.
    pub struct_size: u32,
    /// SATLINE_DEFINED_... bits.
    pub defined: u32,
    /// Kelvin.
    pub dry_bulb_k: f64,
    /// Ambient (station) pressure, pascals.
    pub pressure_pa: f64,
    /// Thermodynamic wet bulb, kelvin.
    pub wet_bulb_k: f64,
    /// Kelvin; 0 where there is none.
    pub dew_point_k: f64,
    /// Vapour pressure over saturation pressure, 0 to 1.
    pub relative_humidity: f64,
    /// Kilograms of water to a kilogram of dry air.
    pub humidity_ratio: f64,
    /// Humidity ratio over that of saturated air, 0 to 1.
    pub degree_of_saturation: f64,
    /// Partial pressure of the water, pascals.
    pub vapor_pressure_pa: f64,
    /// Joules to a kilogram of dry air, from dry air and liquid water at 0 degrees Celsius.
    pub enthalpy_j_kg: f64,
    /// Kilograms of air and water to a cubic metre.
    pub density_kg_m3: f64,
    /// Cubic metres to a kilogram of dry air.
    pub specific_volume_m3_kg: f64,
    /// Density over that of standard air, 0.075 lb/ft3.
    pub density_ratio: f64,
}

// Its layout is part of the binary interface.
const _: () = assert!(size_of::<MoistAir>() == 8 + 12 * 8);

impl MoistAir {
    const SIZE: u32 = size_of::<Self>() as u32;

    const EMPTY: Self = Self {
        struct_size: Self::SIZE,
        defined: 0,
        dry_bulb_k: 0.0,
        pressure_pa: 0.0,
        wet_bulb_k: 0.0,
        dew_point_k: 0.0,
        relative_humidity: 0.0,
        humidity_ratio: 0.0,
        degree_of_saturation: 0.0,
        vapor_pressure_pa: 0.0,
        enthalpy_j_kg: 0.0,
        density_kg_m3: 0.0,
        specific_volume_m3_kg: 0.0,
        density_ratio: 0.0,
    };

    fn of(air: &Air) -> Self {
        let dew_point = air.dew_point_k();
        Self {
            struct_size: Self::SIZE,
            defined: if dew_point.is_ok() { SATLINE_DEFINED_DEW_POINT } else { 0 },
            dry_bulb_k: air.dry_bulb().kelvin(),
            pressure_pa: air.pressure().pascals(),
            wet_bulb_k: air.wet_bulb_k(),
            dew_point_k: dew_point.unwrap_or(0.0),
            relative_humidity: air.relative_humidity(),
            humidity_ratio: air.humidity_ratio(),
            degree_of_saturation: air.degree_of_saturation(),
            vapor_pressure_pa: air.vapor_pressure_pa(),
            enthalpy_j_kg: air.enthalpy_j_kg(),
            density_kg_m3: air.density_kg_m3(),
            specific_volume_m3_kg: air.specific_volume_m3_kg(),
            density_ratio: density_ratio(air),
        }
    }
}

/// Computes air and writes it; leaves the caller's as it was on failure.
///
/// # Safety
/// As for the functions of the header.
unsafe fn compute(
    dry_bulb_k: f64,
    pressure_pa: f64,
    air: *mut MoistAir,
    from: impl FnOnce(AirTemperature, Atmosphere) -> Result<Air, Error>,
) -> i32 {
    let found = || -> Answer<()> {
        // SAFETY: the header asks for air, whose first member may be read.
        let place = unsafe { air.as_mut() }.ok_or(SATLINE_STATUS_NULL_POINTER)?;
        if place.struct_size != MoistAir::SIZE {
            return Err(SATLINE_STATUS_BAD_STRUCT_SIZE);
        }
        let dry = AirTemperature::from_kelvin(dry_bulb_k).map_err(status)?;
        let pressure = Atmosphere::from_pascals(pressure_pa).map_err(status)?;
        *place = MoistAir::of(&from(dry, pressure).map_err(status)?);
        Ok(())
    };
    found().err().unwrap_or(SATLINE_STATUS_OK)
}

/// Pressure of the standard atmosphere. A barometer at the unit is better: weather moves the pressure by some 2 %.
///
/// altitude_m: metres above sea level, -500 to 5500. pressure_pa: pascals.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE, SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_standard_pressure_pa(altitude_m: f64, pressure_pa: *mut f64) -> i32 {
    let found = || Atmosphere::at_altitude_m(altitude_m).map(Atmosphere::pascals).map_err(status);
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(pressure_pa, found) }
}

/// Empties air. struct_size: sizeof(satline_moist_air).
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_moist_air_init(air: *mut MoistAir, struct_size: u32) -> i32 {
    let right = struct_size == MoistAir::SIZE;
    let empty = || if right { Ok(MoistAir::EMPTY) } else { Err(SATLINE_STATUS_BAD_STRUCT_SIZE) };
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { answer(air, empty) }
}

/// Air from its dry bulb and wet bulb. Below 0 degrees Celsius the wick holds ice.
///
/// dry_bulb_k: kelvin, -60 to 70 degrees Celsius. wet_bulb_k: kelvin, from that of dry air to the dry bulb.
/// pressure_pa: station pressure, 50 to 110 kPa. air: initialised by satline_moist_air_init.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE, SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_BAD_STRUCT_SIZE,
/// SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_moist_air_from_wet_bulb(
    dry_bulb_k: f64,
    wet_bulb_k: f64,
    pressure_pa: f64,
    air: *mut MoistAir,
) -> i32 {
    let from = |dry: AirTemperature, pressure: Atmosphere| {
        let wet = AirTemperature::from_kelvin(wet_bulb_k)?;
        Air::from_wet_bulb(dry, wet, pressure)
    };
    // SAFETY: the header states what the pointer must be.
    unsafe { compute(dry_bulb_k, pressure_pa, air, from) }
}

/// Air from its dry bulb and relative humidity.
///
/// dry_bulb_k: kelvin, -60 to 70 degrees Celsius. relative_humidity: 0 to 1.
/// pressure_pa: station pressure, 50 to 110 kPa. air: initialised by satline_moist_air_init.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE, SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_BAD_STRUCT_SIZE,
/// SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_moist_air_from_relative_humidity(
    dry_bulb_k: f64,
    relative_humidity: f64,
    pressure_pa: f64,
    air: *mut MoistAir,
) -> i32 {
    let from =
        |dry: AirTemperature, pressure: Atmosphere| Air::from_relative_humidity(dry, relative_humidity, pressure);
    // SAFETY: the header states what the pointer must be.
    unsafe { compute(dry_bulb_k, pressure_pa, air, from) }
}

/// Air from its dry bulb and dew point (frost point below 0 degrees Celsius).
///
/// dry_bulb_k: kelvin, -60 to 70 degrees Celsius. dew_point_k: kelvin, from -100 degrees Celsius to the dry bulb.
/// pressure_pa: station pressure, 50 to 110 kPa. air: initialised by satline_moist_air_init.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE, SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_BAD_STRUCT_SIZE,
/// SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_moist_air_from_dew_point(
    dry_bulb_k: f64,
    dew_point_k: f64,
    pressure_pa: f64,
    air: *mut MoistAir,
) -> i32 {
    let from = |dry: AirTemperature, pressure: Atmosphere| {
        let dew = Temperature::from_kelvin(dew_point_k)?;
        Air::from_dew_point(dry, dew, pressure)
    };
    // SAFETY: the header states what the pointer must be.
    unsafe { compute(dry_bulb_k, pressure_pa, air, from) }
}

/// Air from its dry bulb and humidity ratio.
///
/// dry_bulb_k: kelvin, -60 to 70 degrees Celsius. humidity_ratio: kilograms of water to a kilogram of dry air, 0 to that of saturated air.
/// pressure_pa: station pressure, 50 to 110 kPa. air: initialised by satline_moist_air_init.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE, SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_BAD_STRUCT_SIZE,
/// SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_moist_air_from_humidity_ratio(
    dry_bulb_k: f64,
    humidity_ratio: f64,
    pressure_pa: f64,
    air: *mut MoistAir,
) -> i32 {
    let from = |dry: AirTemperature, pressure: Atmosphere| Air::from_humidity_ratio(dry, humidity_ratio, pressure);
    // SAFETY: the header states what the pointer must be.
    unsafe { compute(dry_bulb_k, pressure_pa, air, from) }
}

/// The flow at standard air (SCFM) of a volume flow (ACFM) in this air: its dry air at 0.075 lb/ft3.
///
/// actual_m3_s: cubic metres a second, 0.01 to 10. air: as computed by one of the functions above. standard_m3_s: cubic metres a second.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE, SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_BAD_STRUCT_SIZE,
/// SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_standard_airflow_m3_s(
    actual_m3_s: f64,
    air: *const MoistAir,
    standard_m3_s: *mut f64,
) -> i32 {
    // SAFETY: the header asks for air and for a pointer that may be written.
    unsafe { answer(standard_m3_s, || converted(actual_m3_s, air, standard_airflow_m3_s)) }
}

/// The volume flow (ACFM) in this air of a flow at standard air (SCFM).
///
/// standard_m3_s: cubic metres a second, 0.01 to 10. air: as computed by one of the functions above. actual_m3_s: cubic metres a second.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE, SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_BAD_STRUCT_SIZE,
/// SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_actual_airflow_m3_s(
    standard_m3_s: f64,
    air: *const MoistAir,
    actual_m3_s: *mut f64,
) -> i32 {
    // SAFETY: the header asks for air and for a pointer that may be written.
    unsafe { answer(actual_m3_s, || converted(standard_m3_s, air, actual_airflow_m3_s)) }
}

/// # Safety
/// As for the functions of the header.
unsafe fn converted(flow: f64, air: *const MoistAir, convert: fn(Airflow, &Air) -> f64) -> Answer<f64> {
    // SAFETY: the header asks for air.
    let given = unsafe { crate::answer::given(air) }?;
    if given.struct_size != MoistAir::SIZE {
        return Err(SATLINE_STATUS_BAD_STRUCT_SIZE);
    }
    let air = || {
        let (dry, pressure) =
            (AirTemperature::from_kelvin(given.dry_bulb_k)?, Atmosphere::from_pascals(given.pressure_pa)?);
        Ok((Airflow::from_m3_s(flow)?, Air::from_humidity_ratio(dry, given.humidity_ratio, pressure)?))
    };
    let (flow, air) = air().map_err(status)?;
    Ok(convert(flow, &air))
}
