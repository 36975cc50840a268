//! From a reading in heating to its finding.

use super::answers::{
    Frost, HeatingCapacity, HeatingCaution, HeatingChartOutcome, HeatingLimit, HeatingProblem, ReversingValve,
};
use super::capacity::{self, delivered};
use super::chart::{self, HeatingChart, HeatingChartFinding};
use super::finding::{HeatingFinding, HeatingSet, HeatingValues};
use super::frost;
use super::inputs::Inputs;
use super::missing::{HeatingMissing, missing};
use super::problems::problems;
use super::valve;
use crate::quantity::Temperature;
use crate::reading::{Accuracy, Reading};

/// What heating is judged by besides a reading. All of it may be left out.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub struct HeatingExtras {
    /// Dew point of the outdoor air; below 0 °C the frost point, over ice. A weather report's counts over water there and
    /// may be given too: its uncertainty takes that in.
    pub outdoor_dew_point: Option<Temperature>,
    /// Suction gas at the reversing valve, on its way from the outdoor coil.
    pub valve_suction_inlet_temperature: Option<Temperature>,
    /// Suction gas behind the reversing valve, on its way to the compressor.
    pub valve_suction_outlet_temperature: Option<Temperature>,
    /// Limits of error of those two probes against each other, in K; those of thermometers in general where not given.
    pub valve_probe_accuracy: Option<Accuracy>,
}

/// Judges what can be judged in heating. Any subset of fields gives a finding; nothing in it is an error.
///
/// The heat delivered is that of the air, blower included. Its ratio to nominal is called very low only where it lies, by
/// two standard uncertainties, below half of nominal at 47 °F outdoors and warmer, three tenths at 17 °F, straight between
/// (common practice); nothing else is concluded from it. Frost is judged by the outdoor coil's surface against 0 °C and
/// the outdoor dew point, each clear by one standard uncertainty. A leak of the reversing valve is suspected where the
/// suction gas warms by 5 °F or more in it, and by more than 3 °F beyond two standard uncertainties (common practice). A
/// maker's chart is compared as [`TargetGrid::compare`](crate::visit::target_grid::TargetGrid::compare) does, but for
/// probes that stand in the measurement and on an axis, whose error moves both.
///
/// ```
/// use satline::diagnosis::{HeatingExtras, HeatingLimit, HeatingProblem, judge_heating};
/// use satline::reading::{Mode, Reading};
/// let reading = Reading { mode: Some(Mode::Heating), ..Reading::default() };
/// let finding = judge_heating(&reading, &HeatingExtras::default(), None);
/// assert!(finding.limits.contains(HeatingLimit::ChargeByWeight));
/// let cooling = judge_heating(&Reading::default(), &HeatingExtras::default(), None);
/// assert!(cooling.problems.contains(HeatingProblem::NotHeating));
/// ```
#[must_use]
pub fn judge_heating(reading: &Reading, extras: &HeatingExtras, chart: Option<&HeatingChart<'_>>) -> HeatingFinding {
    let inputs = Inputs::of(reading);
    let mut values = HeatingValues {
        supply_rise: inputs.value(|at| Ok(at.supply - at.return_dry)),
        evaporating_temperature: frost::evaporating(reading, &inputs),
        valve_suction_rise: valve::rise(extras),
        ..HeatingValues::default()
    };
    let problems = problems(reading, extras, &inputs, &values);
    if problems.contains(HeatingProblem::NotHeating) || problems.contains(HeatingProblem::Defrosting) {
        return nothing(reading, extras, problems, chart);
    }
    let settled = !problems.contains(HeatingProblem::NotSettled);
    let air_is_in_doubt =
        problems.contains(HeatingProblem::SupplyNotWarmer) || problems.contains(HeatingProblem::WetBulbContradicts);
    values.delivered_capacity = inputs.value(delivered).filter(|_| !air_is_in_doubt);
    if let (Some(heat), Some(nominal)) = (values.delivered_capacity, reading.nominal_capacity) {
        let share = 1.0 / nominal.watts();
        values.capacity_ratio =
            Some(crate::diagnosis::Value::new(heat.value * share, heat.standard_uncertainty * share));
    }
    let frost = frost::judge(reading, extras, problems, &mut values);
    let chart = chart.map(|chart| chart::judge(chart, &inputs, problems));
    HeatingFinding {
        capacity: capacity::judge(reading, values.capacity_ratio, settled),
        outdoor_dry_bulb: reading.outdoor_dry_bulb,
        frost,
        reversing_valve: valve::judge(values.valve_suction_rise, problems, settled),
        chart,
        values,
        problems,
        limits: limits(reading, &values),
        missing: missing(reading, extras, &values, frost, chart.as_ref()),
        cautions: cautions(reading, frost),
    }
}

/// Nothing is judged: the reading is not of heating.
fn nothing(
    reading: &Reading,
    extras: &HeatingExtras,
    problems: HeatingSet<HeatingProblem>,
    chart: Option<&HeatingChart<'_>>,
) -> HeatingFinding {
    let values = HeatingValues::default();
    HeatingFinding {
        capacity: HeatingCapacity::NotCompared,
        outdoor_dry_bulb: reading.outdoor_dry_bulb,
        frost: Frost::Unknown,
        reversing_valve: valve::rise(extras).map_or(ReversingValve::NotMeasured, |_| ReversingValve::CannotTell),
        chart: chart.map(|chart| HeatingChartFinding {
            feature: chart.feature(),
            outcome: HeatingChartOutcome::NotComparable,
            measured: None,
            gap: None,
        }),
        values,
        problems,
        limits: limits(reading, &values),
        missing: HeatingMissing::NONE,
        cautions: cautions(reading, Frost::Unknown),
    }
}

fn limits(reading: &Reading, values: &HeatingValues) -> HeatingSet<HeatingLimit> {
    let mut limits = HeatingSet::NONE;
    let (heat, coil) = (values.delivered_capacity.is_some(), values.coil_surface_temperature.is_some());
    for (applies, limit) in [
        (true, HeatingLimit::ChargeByWeight),
        (true, HeatingLimit::NoSuperheatTarget),
        (true, HeatingLimit::NoSubcoolingTarget),
        (values.capacity_ratio.is_some(), HeatingLimit::RatioOutdoorTemperature),
        (heat, HeatingLimit::AllHeatCounts),
        (heat && reading.ambient_pressure.is_none(), HeatingLimit::SeaLevelAssumed),
        (coil, HeatingLimit::FrostNotSeen),
        (coil && values.coil_over_dew_point.is_none(), HeatingLimit::OutdoorHumidityUnknown),
        (values.valve_suction_rise.is_some(), HeatingLimit::ValveConduction),
        (true, HeatingLimit::DefrostNotTold),
    ] {
        limits.add_if(applies, limit);
    }
    limits
}

fn cautions(reading: &Reading, frost: Frost) -> HeatingSet<HeatingCaution> {
    let mut cautions = HeatingSet::NONE;
    let identity = reading.refrigerant.map(|refrigerant| refrigerant.identity);
    for (applies, caution) in [
        (true, HeatingCaution::LicensedPractice),
        (true, HeatingCaution::Pressure),
        (true, HeatingCaution::HotGas),
        (true, HeatingCaution::Electricity),
        (identity.is_some_and(|identity| identity.safety_class.is_flammable()), HeatingCaution::FlammableRefrigerant),
        (identity.is_none(), HeatingCaution::UnknownRefrigerant),
        (!matches!(frost, Frost::CannotHappen | Frost::CondensationOnly | Frost::FrostFree), HeatingCaution::Ice),
    ] {
        cautions.add_if(applies, caution);
    }
    cautions
}
