//! Airflow by static pressure: what pressures at the blower, filter and coil say of the air that passes, and what leaks
//! into the return.
//!
//! Every measured input comes with its standard uncertainty, and every answer. Where two readings share a bias, as of one
//! gauge used twice, their ratio is better known than is said here. Show [`AirflowCaution::ALL`] with the answers.

mod answers;
mod blower;
mod filter;
mod leakage;

pub use answers::{AirflowCaution, LimitOutcome};
pub use blower::{BlowerTable, DEFAULT_WATTS_PER_CFM, WattsPerAirflow};
pub use blower::{FanPoint, airflow_by_plenum_pressure, fan_at_speed, watts_per_airflow};
pub use filter::{DEFAULT_RESISTANCE_LIMIT, Resistance, resistance};
pub use leakage::{DEFAULT_LEAKAGE_LIMIT, Leakage, return_leakage};

use crate::uncertain::Uncertain;

/// How many standard uncertainties a value must lie from its limit before it counts as within or above.
pub const COVERAGE: f64 = 2.0;

/// How a value compares with a limit.
fn judge(value: Uncertain, limit: f64) -> LimitOutcome {
    let reach = COVERAGE * value.standard_uncertainty;
    if value.value + reach <= limit {
        LimitOutcome::Within
    } else if value.value - reach > limit {
        LimitOutcome::Above
    } else {
        LimitOutcome::CannotTell
    }
}
