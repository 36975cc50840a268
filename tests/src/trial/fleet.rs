//! The rows of a fleet.

use super::conditions::{VISITS, visits};
use super::plan::{Level, Plan, pairs, singles};
use super::recipe::{Fleet, REFRIGERANTS, refrigerant};
use super::row::{CAPACITY_COST, EFFICIENCY_COST, Row};
use super::visit::{Label, usual};
use crate::commission::{LEAST_SUBCOOLING_K, commissioned, rated_subcooling};
use satline::Error;
use satline::diagnosis::{Cause, CauseSet};
use satline::reading::Reading;
use satline::rig::{Conditions, Device, Draws, Faults, RefrigerantMap, Steady, Stop, Unit};
use satline::{refrigerant as catalogue, saturation::SaturationCurves};
use std::sync::atomic::{AtomicU64, Ordering};

/// A row that could not be made: the unit would not run so, and why.
pub type Skip = (CauseSet, Level, String);

/// Rows of a fleet, and what was left out.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Rows {
    /// In the order of units, visits and plans.
    pub rows: Vec<Row>,
    /// What did not settle.
    pub skipped: Vec<Skip>,
}

/// The maps of [`REFRIGERANTS`].
///
/// # Panics
/// Never: each stands in the catalogue.
#[must_use]
pub fn maps() -> Vec<RefrigerantMap> {
    let map = |name: &&'static str| RefrigerantMap::of(name, catalogue::find(name).unwrap().model).unwrap();
    REFRIGERANTS.iter().map(map).collect()
}

/// Largest error of the charge of a unit that counts as healthy, as a share.
const HEALTHY_CHARGE_ERROR: f64 = 0.03;

/// One unit on all its visits.
struct Tried<'a> {
    number: u64,
    place: usize,
    fixed: bool,
    unit: Unit<'a>,
    label: Label,
    charge_error: f64,
    baseline: Reading,
    baseline_off: bool,
    /// Seeds of instruments.
    seeds: Draws,
    made: Rows,
}

/// A charge as the rig's faults have it.
fn charged(faults: Faults, error: f64) -> Faults {
    Faults { undercharge: f64::max(-error, 0.0), overcharge: f64::max(error, 0.0), ..faults }
}

fn reason(error: &Error) -> String {
    Stop::of(error).map_or_else(|| error.to_string(), |stop| format!("{stop:?}"))
}

/// Cooling and cooling by power.
fn worth(state: &Steady) -> (f64, f64) {
    (state.capacity, state.capacity / (state.compressor_power + state.fan_power))
}

fn curves(place: usize) -> &'static SaturationCurves {
    catalogue::find(REFRIGERANTS[place]).unwrap().curves
}

impl<'a> Tried<'a> {
    /// The unit of a number with its baseline, and the air on its other visits.
    fn of(
        fleet: Fleet,
        seed: u64,
        number: u64,
        maps: &'a [RefrigerantMap],
    ) -> Result<(Self, [Conditions; VISITS]), Error> {
        let mut draws = Draws::of(seed ^ 0x7121_a100, number);
        let place = refrigerant(draws.uniform(0.0, 1.0));
        let map = &maps[place];
        let member = fleet.member(seed, number);
        let fixed = matches!(member.device, Device::ShortTube | Device::FlashingOrifice);
        let designed = Unit::designed(map, &fleet.rating(&member, map, &mut draws)?)?;
        let advice = "this design has no subcooling at its rating point: nobody would sell it";
        let found = rated_subcooling(&designed)?.unwrap_or(0.0);
        satline::bounds::within("rated subcooling", "K", found, LEAST_SUBCOOLING_K, 30.0, advice)?;
        let label = Label::of(curves(place), member.tons, fixed, found)?;
        let unit = commissioned(&member.errors.on(&designed), &designed)?;
        let charge_error = draws.uniform(-HEALTHY_CHARGE_ERROR, HEALTHY_CHARGE_ERROR);
        let (air, others) = visits(&mut draws);

        // One in ten was dusty when its baseline was taken, one in ten a little short of charge.
        let luck = draws.uniform(0.0, 1.0);
        let then = charged(Faults::default(), if (0.1..0.2).contains(&luck) { -0.04 } else { charge_error });
        let then = Faults { restricted_condenser_air: if luck < 0.1 { 0.08 } else { 0.0 }, ..then };
        let mut seeds = Draws::of(seed ^ 0x1257_2000, number);
        let state = unit.solve(&air, &then)?;
        let baseline = label.reading(&mut usual().placed(seeds.bits()), &state, &air)?;
        let made = Rows::default();
        let tried =
            Self { number, place, fixed, unit, label, charge_error, baseline, baseline_off: luck < 0.2, seeds, made };
        Ok((tried, others))
    }

    /// All rows of one visit; pairs where asked for.
    fn visit(&mut self, visit: usize, air: &Conditions, with_pairs: bool) {
        let healthy = match self.unit.solve(air, &Faults::default()) {
            Ok(state) => worth(&state),
            Err(error) => {
                self.made.skipped.push((CauseSet::HEALTHY, Level::Healthy, reason(&error)));
                return;
            }
        };
        let mut plans = vec![Plan::HEALTHY];
        plans.extend(singles(self.fixed));
        if with_pairs {
            plans.extend(pairs(self.fixed));
        }
        for plan in plans {
            // Drawn whether the unit settles or not, so that one row's fate changes no other.
            let seed = self.seeds.bits();
            // Beside another fault, the charge is as the installer left it.
            let faults = if plan.of_charge() { plan.faults } else { charged(plan.faults, self.charge_error) };
            let row = self.unit.solve(air, &faults).and_then(|state| {
                let reading = self.label.reading(&mut usual().placed(seed), &state, air)?;
                Ok(self.row(visit, air, &plan, &faults, (&state, healthy), reading))
            });
            match row {
                Ok(row) => self.made.rows.push(row),
                Err(error) => self.made.skipped.push((plan.truth, plan.level, reason(&error))),
            }
        }
    }

    /// See [`Row::other_dominates`]; a fault that lets the unit run no longer by itself costs most of all.
    fn other_dominates(&self, air: &Conditions, plan: &Plan, healthy: (f64, f64)) -> bool {
        if plan.truth.is_empty() || plan.truth == CauseSet::one(Cause::Undercharge) {
            return false;
        }
        if !plan.truth.contains(Cause::Undercharge) {
            return true;
        }
        let cost = |faults: &Faults| {
            self.unit.solve(air, faults).map_or(f64::INFINITY, |state| {
                let (capacity, efficiency) = worth(&state);
                f64::max(1.0 - capacity / healthy.0, 1.0 - efficiency / healthy.1)
            })
        };
        let missing = Faults { undercharge: plan.faults.undercharge, ..Faults::default() };
        let other = Faults { undercharge: 0.0, ..plan.faults };
        cost(&other) > cost(&missing)
    }

    fn row(
        &self,
        visit: usize,
        air: &Conditions,
        plan: &Plan,
        faults: &Faults,
        (state, healthy): (&Steady, (f64, f64)),
        reading: Reading,
    ) -> Row {
        let (capacity, efficiency) = worth(state);
        let (capacity, efficiency) = (capacity / healthy.0, efficiency / healthy.1);
        let costs = capacity <= 1.0 - CAPACITY_COST || efficiency <= 1.0 - EFFICIENCY_COST;
        Row {
            unit: self.number,
            refrigerant: REFRIGERANTS[self.place],
            fixed: self.fixed,
            visit,
            conditions: *air,
            truth: plan.truth,
            faults: *faults,
            level: plan.level,
            counts: plan.truth.is_empty() || costs,
            other_dominates: self.other_dominates(air, plan, healthy),
            capacity,
            efficiency,
            charge: 1.0 - faults.undercharge + faults.overcharge,
            wet_suction: state.compressor_inlet.quality < 1.0 || state.vapor_port.quality <= 1.0,
            baseline_off: self.baseline_off,
            reading,
            baseline: self.baseline,
        }
    }
}

fn of_unit(fleet: Fleet, seed: u64, number: u64, maps: &[RefrigerantMap]) -> Rows {
    match Tried::of(fleet, seed, number, maps) {
        Ok((mut tried, visits)) => {
            // Pairs on two visits, of which one is cool and one is warm.
            let first = number as usize % (VISITS / 2);
            for (visit, air) in visits.iter().enumerate() {
                tried.visit(visit, air, visit % (VISITS / 2) == first);
            }
            tried.made
        }
        Err(error) => Rows { rows: Vec::new(), skipped: vec![(CauseSet::HEALTHY, Level::Healthy, reason(&error))] },
    }
}

/// Applies a function to all numbers below a count, on as many threads as there are; the answers in order.
///
/// # Panics
/// Where the function does.
pub fn in_parallel<T: Send>(count: u64, of: impl Fn(u64) -> T + Sync) -> Vec<T> {
    let threads = std::thread::available_parallelism().map_or(2, std::num::NonZero::get);
    let next = AtomicU64::new(0);
    let work = || {
        let mut done = Vec::new();
        loop {
            let number = next.fetch_add(1, Ordering::Relaxed);
            if number >= count {
                return done;
            }
            done.push((number, of(number)));
        }
    };
    let mut all: Vec<(u64, T)> = std::thread::scope(|scope| {
        let running: Vec<_> = (0..threads).map(|_| scope.spawn(work)).collect();
        running.into_iter().flat_map(|thread| thread.join().unwrap()).collect()
    });
    all.sort_by_key(|(number, _)| *number);
    all.into_iter().map(|(_, answer)| answer).collect()
}

/// The rows of the first units of a fleet; the same for the same seed, however many threads make them.
#[must_use]
pub fn rows(fleet: Fleet, seed: u64, units: u64, maps: &[RefrigerantMap]) -> Rows {
    let mut all = Rows::default();
    for mut one in in_parallel(units, |number| of_unit(fleet, seed, number, maps)) {
        all.rows.append(&mut one.rows);
        all.skipped.append(&mut one.skipped);
    }
    all
}
