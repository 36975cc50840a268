//! Airflow by static pressure and return leakage, in C.

use crate::answer::{Answer, answer, status, unless_unset};
use crate::generated::codes::{SATLINE_STATUS_NO_VALID_TEST, SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_OUT_OF_RANGE};
use crate::uncertain::{Uncertain, taken};
use satline::visit::airflow;
use satline::visit::grid::Lookup;

/// What a fan does at a state of operation. This structure never changes.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct FanPoint {
    /// Cubic metres a second.
    pub airflow_m3_s: Uncertain,
    /// Pressure rise, pascals.
    pub pressure_pa: Uncertain,
    /// Shaft power, watts.
    pub power_w: Uncertain,
}

/// Fan power for the air it moves. This structure never changes.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct WattsPerAirflow {
    /// Watts for each cubic metre a second.
    pub watts_per_m3_s: Uncertain,
    /// Watts for each cubic foot a minute.
    pub watts_per_cfm: Uncertain,
    /// The limit, watts for each cubic foot a minute.
    pub limit_watts_per_cfm: f64,
    /// SATLINE_LIMIT_...
    pub outcome: i32,
    /// Always 0.
    pub reserved: i32,
}

/// The resistance of a filter or a coil against what it was when clean. This structure never changes.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct Resistance {
    /// Pressure drop over the airflow's square, over the same when clean.
    pub resistance_ratio: Uncertain,
    /// Airflow that the part passes at the same pressure drop, over that when clean.
    pub airflow_ratio: Uncertain,
    /// SATLINE_LIMIT_...: above means dirty.
    pub outcome: i32,
    /// 1 where the airflow was taken to be the same as when clean: the resistance is then at least what is said.
    pub airflow_assumed: i32,
}

/// Return leakage. This structure never changes.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct Leakage {
    /// Leaked over all air, by mass.
    pub fraction: Uncertain,
    /// SATLINE_LIMIT_...
    pub outcome: i32,
    /// Always 0.
    pub reserved: i32,
}

// Their layouts are part of the binary interface.
const _: () = assert!(size_of::<FanPoint>() == 48 && size_of::<WattsPerAirflow>() == 48);
const _: () = assert!(size_of::<Resistance>() == 40 && size_of::<Leakage>() == 24);

/// Numbers that the caller owns.
///
/// # Safety
/// `numbers` is null or points at `count` numbers.
pub(crate) unsafe fn numbers<'a>(numbers: *const f64, count: u32) -> Answer<&'a [f64]> {
    if numbers.is_null() {
        return Err(SATLINE_STATUS_NULL_POINTER);
    }
    // More than any axis has: never a length that could overflow an address.
    if count > 65_536 {
        return Err(SATLINE_STATUS_OUT_OF_RANGE);
    }
    // SAFETY: not null, and promised by the caller.
    Ok(unsafe { core::slice::from_raw_parts(numbers, count as usize) })
}

/// What a table says, as a status or a value.
pub(crate) fn looked_up(found: Result<Lookup, satline::Error>) -> Answer<Uncertain> {
    match found.map_err(status)? {
        Lookup::At(value) => Ok(Uncertain::of(value)),
        Lookup::NoValidTest(_) => Err(SATLINE_STATUS_NO_VALID_TEST),
    }
}

/// Airflow in operation by plenum matching: the airflow measured while the supply plenum stood at another pressure, times
/// the root of operating over measured pressure. Everything downstream of the plenum must be the same both times.
///
/// measured_m3_s: cubic metres a second. operating_pressure_pa, measured_pressure_pa: pascals above the room. Show the
/// cautions SATLINE_AIRFLOW_CAUTION_... with every answer on airflow.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE, SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_airflow_by_plenum_pressure(
    measured_m3_s: *const Uncertain,
    operating_pressure_pa: *const Uncertain,
    measured_pressure_pa: *const Uncertain,
    airflow_m3_s: *mut Uncertain,
) -> i32 {
    let compute = || {
        // SAFETY: the header asks for values.
        let (measured, operating, during) =
            unsafe { (taken(measured_m3_s)?, taken(operating_pressure_pa)?, taken(measured_pressure_pa)?) };
        airflow::airflow_by_plenum_pressure(measured, operating, during).map(Uncertain::of).map_err(status)
    };
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(airflow_m3_s, compute) }
}

/// Airflow from a maker's blower table at an external static pressure and a speed tap: between the rows of that tap,
/// nothing between taps, beyond the table or from a blank cell.
///
/// statics_pa: rows, ascending, pascals. taps: columns, ascending. airflows_m3_s: row_count times tap_count cells, row by
/// row; a blank cell is NaN. static_pa: pascals.
///
/// Status: SATLINE_STATUS_NO_VALID_TEST (blank, beyond the table, no such tap), SATLINE_STATUS_OUT_OF_RANGE (also for an
/// axis that does not ascend), SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_airflow_by_blower_table(
    statics_pa: *const f64,
    row_count: u32,
    taps: *const f64,
    tap_count: u32,
    airflows_m3_s: *const f64,
    static_pa: *const Uncertain,
    tap: f64,
    airflow_m3_s: *mut Uncertain,
) -> i32 {
    let compute = || {
        // SAFETY: the header asks for that many numbers.
        let (rows, columns) = unsafe { (numbers(statics_pa, row_count)?, numbers(taps, tap_count)?) };
        let count = row_count.checked_mul(tap_count).ok_or(SATLINE_STATUS_OUT_OF_RANGE)?;
        // SAFETY: the header asks for a cell for each row and tap, and for a value.
        let (cells, at) = unsafe { (numbers(airflows_m3_s, count)?, taken(static_pa)?) };
        let table = airflow::BlowerTable::of_airflow(rows, columns, cells).map_err(status)?;
        looked_up(table.at(at, tap))
    };
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(airflow_m3_s, compute) }
}

/// The same fan in the same duct at another speed and air density, by the fan laws; both are ratios, new over old.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE, SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_fan_at_speed(
    now: *const FanPoint,
    speed_ratio: *const Uncertain,
    density_ratio: *const Uncertain,
    then: *mut FanPoint,
) -> i32 {
    let compute = || {
        // SAFETY: the header asks for a point and values.
        let (now, speed, density) = unsafe { (crate::answer::given(now)?, taken(speed_ratio)?, taken(density_ratio)?) };
        let now = airflow::FanPoint {
            airflow_m3_s: now.airflow_m3_s.checked()?,
            pressure_pa: now.pressure_pa.checked()?,
            power_w: now.power_w.checked()?,
        };
        let then = airflow::fan_at_speed(&now, speed, density).map_err(status)?;
        Ok(FanPoint {
            airflow_m3_s: Uncertain::of(then.airflow_m3_s),
            pressure_pa: Uncertain::of(then.pressure_pa),
            power_w: Uncertain::of(then.power_w),
        })
    };
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(then, compute) }
}

/// Fan power for each unit of airflow against a limit in watts for each cubic foot a minute; -1 for 0.58 (California Title
/// 24, 2008 and 2013; from memory).
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE, SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_watts_per_airflow(
    power_w: *const Uncertain,
    airflow_m3_s: *const Uncertain,
    limit_watts_per_cfm: f64,
    found: *mut WattsPerAirflow,
) -> i32 {
    let compute = || {
        // SAFETY: the header asks for values.
        let (power, air) = unsafe { (taken(power_w)?, taken(airflow_m3_s)?) };
        let found = airflow::watts_per_airflow(power, air, unless_unset(limit_watts_per_cfm)).map_err(status)?;
        Ok(WattsPerAirflow {
            watts_per_m3_s: Uncertain::of(found.watts_per_m3_s),
            watts_per_cfm: Uncertain::of(found.watts_per_cfm),
            limit_watts_per_cfm: found.limit_watts_per_cfm,
            outcome: found.outcome.number(),
            reserved: 0,
        })
    };
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(found, compute) }
}

/// A filter's or coil's pressure drop against the drop when clean, pascals. airflow_m3_s and clean_airflow_m3_s, cubic
/// metres a second, make the comparison fair; null for both where they are not known. limit: resistance over that when
/// clean from which the part is dirty; -1 for 2 (common practice).
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE, SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_NULL_POINTER (also where one airflow is
/// null and the other is not).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_air_resistance(
    drop_pa: *const Uncertain,
    clean_drop_pa: *const Uncertain,
    airflow_m3_s: *const Uncertain,
    clean_airflow_m3_s: *const Uncertain,
    limit: f64,
    found: *mut Resistance,
) -> i32 {
    let compute = || {
        // SAFETY: the header asks for values.
        let (drop, clean) = unsafe { (taken(drop_pa)?, taken(clean_drop_pa)?) };
        let airflows = if airflow_m3_s.is_null() && clean_airflow_m3_s.is_null() {
            None
        } else {
            // SAFETY: the header asks for values.
            Some(unsafe { (taken(airflow_m3_s)?, taken(clean_airflow_m3_s)?) })
        };
        let found = airflow::resistance(drop, clean, airflows, unless_unset(limit)).map_err(status)?;
        Ok(Resistance {
            resistance_ratio: Uncertain::of(found.resistance_ratio),
            airflow_ratio: Uncertain::of(found.airflow_ratio),
            outcome: found.outcome.number(),
            airflow_assumed: i32::from(found.airflow_assumed),
        })
    };
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(found, compute) }
}

/// Return leakage from the air at the grilles, at the unit's inlet, and where the leak draws from: (mixed - return)/(leak -
/// return). All three dry bulb temperatures in kelvin, or all three humidity ratios in kilograms for each kilogram of dry
/// air. limit: leakage above which there is something to mend; -1 for 0.1 (common practice).
///
/// Status: SATLINE_STATUS_NOT_AVAILABLE (the leaking air is too like the return air to tell), SATLINE_STATUS_OUT_OF_RANGE,
/// SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_return_leakage(
    return_air: *const Uncertain,
    mixed_air: *const Uncertain,
    leaking_air: *const Uncertain,
    limit: f64,
    found: *mut Leakage,
) -> i32 {
    let compute = || {
        // SAFETY: the header asks for values.
        let (inside, mixed, outside) = unsafe { (taken(return_air)?, taken(mixed_air)?, taken(leaking_air)?) };
        let found = airflow::return_leakage(inside, mixed, outside, unless_unset(limit)).map_err(status)?;
        Ok(Leakage { fraction: Uncertain::of(found.fraction), outcome: found.outcome.number(), reserved: 0 })
    };
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(found, compute) }
}
