//! The blower: airflow by plenum pressure, from the maker's table, at another speed, and what it costs in power.

use super::{LimitOutcome, judge};
use crate::bounds;
use crate::error::Error;
use crate::math;
use crate::quantity::{Airflow, M3_S_PER_CFM, Power};
use crate::uncertain::{Uncertain, propagate};
use crate::visit::grid::{Axis, Cell, Grid, Lookup};

/// Most watts for each cubic foot a minute where nothing is said: 0.58, the limit of California Title 24 for ducted
/// cooling (2008 and 2013; from memory). Later editions and other places have others: give the one that applies.
pub const DEFAULT_WATTS_PER_CFM: f64 = 0.58;

/// Airflow in operation by plenum matching: the airflow measured through an opened and powered, or any other, path while
/// the supply plenum stood at another pressure, times √(Δp operating/Δp measured).
///
/// Holds where everything downstream of the plenum is the same both times, and for turbulent flow through it. The drop
/// across any part that stays as it was, such as a clean coil as wet as before, scales in the same way. Pressures are
/// differences to the room, Pa, and airflow is in m³/s.
///
/// # Errors
/// [`Error::OutOfRange`] or [`Error::NotFinite`] outside [`bounds::AIRFLOW`] or [`bounds::STATIC_PRESSURE`].
///
/// ```
/// use satline::uncertain::Uncertain;
/// use satline::visit::airflow::airflow_by_plenum_pressure;
/// // Demo: 0.50 m³/s measured while the plenum stood at 30 Pa; in operation it stands at 36 Pa.
/// let measured = Uncertain::new(0.50, 0.015)?;
/// let found = airflow_by_plenum_pressure(measured, Uncertain::new(36.0, 0.5)?, Uncertain::new(30.0, 0.5)?)?;
/// assert!((found.value - 0.5477).abs() < 1e-4 && (found.standard_uncertainty - 0.0175).abs() < 5e-4);
/// # Ok::<(), satline::Error>(())
/// ```
pub fn airflow_by_plenum_pressure(
    measured: Uncertain,
    operating_pressure_pa: Uncertain,
    measured_pressure_pa: Uncertain,
) -> Result<Uncertain, Error> {
    propagate([measured, operating_pressure_pa, measured_pressure_pa], |[measured, operating, during]| {
        let measured = Airflow::from_m3_s(measured)?.m3_s();
        let ratio = bounds::STATIC_PRESSURE.check(operating)? / bounds::STATIC_PRESSURE.check(during)?;
        Ok(measured * math::sqrt(ratio))
    })
}

/// A maker's blower table: airflow, or power, by external static pressure and speed tap. Blank cells stay blank.
#[derive(Debug, Clone, Copy)]
pub struct BlowerTable<'a, C = Option<f64>> {
    grid: Grid<'a, C>,
}

impl<'a, C: Cell> BlowerTable<'a, C> {
    /// A table of airflow: external static pressures in Pa, ascending, one row each; speed taps, ascending, one column each;
    /// cells row by row, airflow in m³/s.
    ///
    /// # Errors
    /// As [`Grid::new`], and for a cell outside [`bounds::AIRFLOW`] or a pressure outside [`bounds::EXTERNAL_STATIC`].
    pub fn of_airflow(statics_pa: &'a [f64], taps: &'a [f64], cells: &'a [C]) -> Result<Self, Error> {
        Self::of(statics_pa, taps, cells, &bounds::AIRFLOW)
    }

    /// A table of blower power in W, likewise.
    ///
    /// # Errors
    /// As [`BlowerTable::of_airflow`], with [`bounds::POWER`].
    pub fn of_power(statics_pa: &'a [f64], taps: &'a [f64], cells: &'a [C]) -> Result<Self, Error> {
        Self::of(statics_pa, taps, cells, &bounds::POWER)
    }

    fn of(statics: &'a [f64], taps: &'a [f64], cells: &'a [C], bound: &bounds::Bound) -> Result<Self, Error> {
        for value in statics {
            bounds::EXTERNAL_STATIC.check(*value)?;
        }
        for value in taps {
            bounds::SPEED_TAP.check(*value)?;
        }
        let grid = Grid::new(Axis::along(statics), Axis::steps(taps), cells)?;
        for cell in cells.iter().filter_map(|cell| cell.known()) {
            bound.check(cell)?;
        }
        Ok(Self { grid })
    }

    /// The table's value at an external static pressure, Pa, and a speed tap, between the rows of that tap; nothing is
    /// read between taps, nor beyond the table or from a blank cell.
    ///
    /// # Errors
    /// [`Error::NotFinite`] where a value is not a number.
    pub fn at(&self, static_pa: Uncertain, tap: f64) -> Result<Lookup, Error> {
        self.grid.at(static_pa, Uncertain::exact(tap))
    }
}

/// What a fan does at a state of operation.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FanPoint {
    /// m³/s.
    pub airflow_m3_s: Uncertain,
    /// Pressure rise, Pa.
    pub pressure_pa: Uncertain,
    /// Shaft power, W. Electric power follows only as far as the motor's efficiency stays.
    pub power_w: Uncertain,
}

/// The same fan in the same duct at another speed and air density, by the fan laws: airflow with the speed, pressure with
/// its square and the density, power with its cube and the density. Both are ratios, new over old.
///
/// # Errors
/// [`Error::OutOfRange`] or [`Error::NotFinite`] outside [`bounds::AIRFLOW`], [`bounds::STATIC_PRESSURE`],
/// [`bounds::POWER`], [`bounds::SPEED_RATIO`] or [`bounds::AIR_DENSITY_RATIO`].
///
/// ```
/// use satline::uncertain::Uncertain;
/// use satline::visit::airflow::{FanPoint, fan_at_speed};
/// let exact = Uncertain::exact;
/// let now = FanPoint { airflow_m3_s: exact(0.5), pressure_pa: exact(125.0), power_w: exact(400.0) };
/// let then = fan_at_speed(&now, exact(0.8), exact(1.0))?;
/// assert!((then.airflow_m3_s.value - 0.4).abs() < 1e-12);
/// assert!((then.pressure_pa.value - 80.0).abs() < 1e-9 && (then.power_w.value - 204.8).abs() < 1e-9);
/// # Ok::<(), satline::Error>(())
/// ```
pub fn fan_at_speed(now: &FanPoint, speed_ratio: Uncertain, density_ratio: Uncertain) -> Result<FanPoint, Error> {
    let speed = |ratio: f64| bounds::SPEED_RATIO.check(ratio);
    let density = |ratio: f64| bounds::AIR_DENSITY_RATIO.check(ratio);
    Ok(FanPoint {
        airflow_m3_s: propagate([now.airflow_m3_s, speed_ratio], |[airflow, n]| {
            Ok(Airflow::from_m3_s(airflow)?.m3_s() * speed(n)?)
        })?,
        pressure_pa: propagate([now.pressure_pa, speed_ratio, density_ratio], |[pressure, n, rho]| {
            let n = speed(n)?;
            Ok(bounds::STATIC_PRESSURE.check(pressure)? * n * n * density(rho)?)
        })?,
        power_w: propagate([now.power_w, speed_ratio, density_ratio], |[power, n, rho]| {
            let n = speed(n)?;
            Ok(Power::from_watts(power)?.watts() * n * n * n * density(rho)?)
        })?,
    })
}

/// Fan power for the air it moves, against a limit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WattsPerAirflow {
    /// W/(m³/s).
    pub watts_per_m3_s: Uncertain,
    /// W/cfm.
    pub watts_per_cfm: Uncertain,
    /// The limit, W/cfm.
    pub limit_watts_per_cfm: f64,
    /// How it compares.
    pub outcome: LimitOutcome,
}

/// Watts for each unit of airflow, against a limit in W/cfm ([`DEFAULT_WATTS_PER_CFM`] if none).
///
/// # Errors
/// [`Error::OutOfRange`] or [`Error::NotFinite`] outside [`bounds::POWER`], [`bounds::AIRFLOW`] or
/// [`bounds::WATTS_PER_CFM`].
pub fn watts_per_airflow(
    power_w: Uncertain,
    airflow_m3_s: Uncertain,
    limit_watts_per_cfm: Option<f64>,
) -> Result<WattsPerAirflow, Error> {
    let limit = bounds::WATTS_PER_CFM.check(limit_watts_per_cfm.unwrap_or(DEFAULT_WATTS_PER_CFM))?;
    let specific = propagate([power_w, airflow_m3_s], |[power, airflow]| {
        Ok(Power::from_watts(power)?.watts() / Airflow::from_m3_s(airflow)?.m3_s())
    })?;
    let per_cfm = Uncertain {
        value: specific.value * M3_S_PER_CFM,
        standard_uncertainty: specific.standard_uncertainty * M3_S_PER_CFM,
    };
    Ok(WattsPerAirflow {
        watts_per_m3_s: specific,
        watts_per_cfm: per_cfm,
        limit_watts_per_cfm: limit,
        outcome: judge(per_cfm, limit),
    })
}
