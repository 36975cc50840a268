//! Filter and coil: their pressure drop against the drop when clean.

use super::{LimitOutcome, judge};
use crate::bounds;
use crate::error::Error;
use crate::math;
use crate::quantity::Airflow;
use crate::uncertain::{Uncertain, propagate};

/// Resistance, over that when clean, from which a part counts as dirty where nothing is said (common practice: a filter is
/// due when its pressure drop at the same airflow has doubled).
pub const DEFAULT_RESISTANCE_LIMIT: f64 = 2.0;

/// The resistance of a filter or a coil against what it was when clean.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Resistance {
    /// Pressure drop over the airflow's square, over the same when clean.
    pub resistance_ratio: Uncertain,
    /// Airflow that the part passes at the same pressure drop, over that when clean: 1/√(resistance ratio). What the whole
    /// system loses is less, as the rest of it has its own resistance and the fan its own curve.
    pub airflow_ratio: Uncertain,
    /// Above the limit means dirty.
    pub outcome: LimitOutcome,
    /// Whether the airflow was taken to be the same as when clean. A dirty part lowers the airflow and with it its own drop,
    /// unless the blower holds its airflow: the resistance is then at least what is said, and within means little.
    pub airflow_assumed: bool,
}

/// Compares a pressure drop with that of the clean part.
///
/// Drops are in Pa across the part alone, a coil's as wet or as dry as when clean. Airflow now and when clean, in m³/s,
/// makes the comparison fair; without it the airflow is taken to be the same. `limit` is
/// [`DEFAULT_RESISTANCE_LIMIT`] if none.
///
/// # Errors
/// [`Error::OutOfRange`] or [`Error::NotFinite`] outside [`bounds::STATIC_PRESSURE`], [`bounds::AIRFLOW`] or
/// [`bounds::RESISTANCE_RATIO`].
///
/// ```
/// use satline::uncertain::Uncertain;
/// use satline::visit::airflow::{LimitOutcome, resistance};
/// // Demo: a filter with 30 Pa when clean shows 75 Pa.
/// let found = resistance(Uncertain::new(75.0, 1.5)?, Uncertain::new(30.0, 1.0)?, None, None)?;
/// assert_eq!(found.outcome, LimitOutcome::Above);
/// assert!((found.airflow_ratio.value - 0.632).abs() < 1e-3 && found.airflow_assumed);
/// # Ok::<(), satline::Error>(())
/// ```
pub fn resistance(
    drop_pa: Uncertain,
    clean_drop_pa: Uncertain,
    airflows_m3_s: Option<(Uncertain, Uncertain)>,
    limit: Option<f64>,
) -> Result<Resistance, Error> {
    let limit = bounds::RESISTANCE_RATIO.check(limit.unwrap_or(DEFAULT_RESISTANCE_LIMIT))?;
    let (now, clean) = airflows_m3_s.unwrap_or((Uncertain::exact(1.0), Uncertain::exact(1.0)));
    let ratio = |[drop, clean_drop, now, clean]: [f64; 4]| -> Result<f64, Error> {
        let flow = Airflow::from_m3_s(clean)?.m3_s() / Airflow::from_m3_s(now)?.m3_s();
        Ok(bounds::STATIC_PRESSURE.check(drop)? / bounds::STATIC_PRESSURE.check(clean_drop)? * flow * flow)
    };
    let inputs = [drop_pa, clean_drop_pa, now, clean];
    let resistance_ratio = propagate(inputs, ratio)?;
    Ok(Resistance {
        resistance_ratio,
        airflow_ratio: propagate(inputs, |values| Ok(1.0 / math::sqrt(ratio(values)?)))?,
        outcome: judge(resistance_ratio, limit),
        airflow_assumed: airflows_m3_s.is_none(),
    })
}
