//! The maker's chart for heating: what was measured against its target.

use super::answers::{HeatingChartOutcome, HeatingProblem};
use super::capacity::delivered;
use super::finding::HeatingSet;
use super::inputs::{At, Inputs, MISSING};
use crate::bounds;
use crate::diagnosis::Value;
use crate::error::Error;
use crate::uncertain::Uncertain;
use crate::visit::grid::{GridGap, Lookup};
use crate::visit::target_grid::{COVERAGE, GridAxis, GridTarget, TargetGrid};

/// A maker's chart with its tolerance.
///
/// A chart of pressures, of the discharge temperature, of capacity or power is compared with the field of that name as it
/// is meant in heating; one of temperature split with the rise of the supply air.
#[derive(Debug, Clone, Copy)]
pub struct HeatingChart<'a> {
    grid: TargetGrid<'a>,
    tolerance: f64,
}

impl<'a> HeatingChart<'a> {
    /// A chart, and the maker's tolerance in its target's SI unit.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] or [`Error::NotFinite`] for a tolerance outside [`bounds::TARGET_TOLERANCE`].
    pub fn new(grid: TargetGrid<'a>, tolerance: f64) -> Result<Self, Error> {
        Ok(Self { grid, tolerance: bounds::TARGET_TOLERANCE.check(tolerance)? })
    }

    /// What the chart gives.
    #[must_use]
    pub const fn feature(&self) -> GridTarget {
        self.grid.target()
    }
}

/// A measurement against the maker's chart.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HeatingChartFinding {
    /// What the chart gives.
    pub feature: GridTarget,
    /// How it compares.
    pub outcome: HeatingChartOutcome,
    /// What was measured, with target and deviation where the chart has one, in the target's SI unit.
    pub measured: Option<Value>,
    /// Why the chart has no target, where it has none.
    pub gap: Option<GridGap>,
}

/// What the chart's target is compared with; NaN where not measured.
fn feature(target: GridTarget, at: &At) -> Result<f64, Error> {
    match target {
        GridTarget::Superheat | GridTarget::Subcooling | GridTarget::Approach => Err(MISSING),
        GridTarget::LiquidPressure => Ok(at.liquid),
        GridTarget::DischargePressure => Ok(at.discharge),
        GridTarget::SuctionPressure => Ok(at.suction),
        GridTarget::DischargeTemperature => Ok(at.discharge_line),
        GridTarget::TemperatureSplit => Ok(at.supply - at.return_dry),
        GridTarget::Capacity => delivered(at),
        GridTarget::Power => Ok(at.power),
    }
}

fn along(axis: GridAxis, at: &At) -> f64 {
    match axis {
        GridAxis::OutdoorDryBulb => at.outdoor,
        GridAxis::ReturnDryBulb => at.return_dry,
        GridAxis::ReturnWetBulb => at.return_wet,
        GridAxis::SuctionPressure => at.suction,
        GridAxis::LiquidPressure => at.liquid,
        GridAxis::Airflow => at.airflow,
    }
}

fn target(grid: &TargetGrid<'_>, at: &At) -> Result<Lookup, Error> {
    let exact = |axis| Uncertain::exact(along(axis, at));
    grid.at(exact(grid.row()), grid.column().map(exact))
}

pub(super) fn judge(
    chart: &HeatingChart<'_>,
    inputs: &Inputs,
    problems: HeatingSet<HeatingProblem>,
) -> HeatingChartFinding {
    let wanted = chart.grid.target();
    let answer = |outcome, measured, gap| HeatingChartFinding { feature: wanted, outcome, measured, gap };
    if matches!(wanted, GridTarget::Superheat | GridTarget::Subcooling | GridTarget::Approach) {
        return answer(HeatingChartOutcome::NotForHeating, None, None);
    }
    let Some(measured) = inputs.value(|at| feature(wanted, at)) else {
        return answer(HeatingChartOutcome::NotMeasured, None, None);
    };
    if is_in_doubt(problems) {
        return answer(HeatingChartOutcome::NotComparable, Some(measured), None);
    }
    let target_value = match target(&chart.grid, &inputs.at()) {
        Ok(Lookup::At(value)) => value.value,
        Ok(Lookup::NoValidTest(gap)) => return answer(HeatingChartOutcome::NoTarget, Some(measured), Some(gap)),
        Err(_) => return answer(HeatingChartOutcome::NotMeasured, Some(measured), None),
    };
    // A probe that stands in the measurement and on an axis moves both.
    let deviation = inputs.value(|at| match target(&chart.grid, at)? {
        Lookup::At(value) => Ok(feature(wanted, at)? - value.value),
        Lookup::NoValidTest(_) => Err(MISSING),
    });
    let Some(deviation) = deviation else {
        return answer(HeatingChartOutcome::NoTarget, Some(measured), Some(GridGap::Uncertain));
    };
    let reach = COVERAGE * deviation.standard_uncertainty;
    let outcome = if deviation.value.abs() + reach <= chart.tolerance {
        HeatingChartOutcome::Within
    } else if deviation.value - reach > chart.tolerance {
        HeatingChartOutcome::Above
    } else if deviation.value + reach < -chart.tolerance {
        HeatingChartOutcome::Below
    } else {
        HeatingChartOutcome::CannotTell
    };
    answer(outcome, Some(measured.against(target_value, deviation.standard_uncertainty)), None)
}

/// Whether anything that a chart may read contradicts itself.
fn is_in_doubt(problems: HeatingSet<HeatingProblem>) -> bool {
    [
        HeatingProblem::NotSettled,
        HeatingProblem::SupplyNotWarmer,
        HeatingProblem::WetBulbContradicts,
        HeatingProblem::SuctionPressureContradicts,
        HeatingProblem::PressuresContradict,
        HeatingProblem::PressureOutsideCurve,
        HeatingProblem::LineTemperaturesContradict,
        HeatingProblem::CoilTemperaturesContradict,
    ]
    .into_iter()
    .any(|problem| problems.contains(problem))
}
