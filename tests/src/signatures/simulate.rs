//! Units of the rig with and without faults, as the channels that the diagnosis weighs.

use crate::commission::{commissioned, rated_subcooling};
use satline::quantity::{M3_S_PER_CFM, WATTS_PER_TON};
use satline::refrigerant;
use satline::rig::fleet::{Member, member};
use satline::rig::{Air, Conditions, Device, Draws, Faults, RefrigerantMap, Steady, Structure, Unit, VoidFraction};
use std::thread;

/// How many channels a row has: those that a reading can have, and two that only a next check can.
pub const CHANNELS: usize = 16;

/// The refrigerants that signatures are learnt from.
pub const REFRIGERANTS: [&str; 6] = ["R-410A", "R-22", "R-32", "R-454B", "R-407C", "R-134a"];

/// How many causes are simulated.
pub const CAUSES: usize = 9;

/// Severities at which each cause is simulated, in the order of the causes' numbers; of metering devices one row for a
/// fixed orifice and one for a valve.
#[must_use]
pub fn severities(cause: usize, valve: bool) -> [f64; 5] {
    match (cause, valve) {
        (0 | 1, _) => [0.06, 0.12, 0.18, 0.25, 0.34],
        (2, _) => [0.12, 0.22, 0.32, 0.42, 0.52],
        (3, _) => [0.15, 0.28, 0.40, 0.52, 0.64],
        (4, _) => [0.12, 0.24, 0.36, 0.48, 0.60],
        (5, _) => [0.06, 0.13, 0.20, 0.28, 0.38],
        (6, _) => [0.10, 0.22, 0.36, 0.52, 0.72],
        (7, false) => [0.12, 0.26, 0.42, 0.58, 0.76],
        (7, true) => [0.12, 0.24, 0.36, 0.48, 0.62],
        _ => [0.10, 0.19, 0.28, 0.38, 0.48],
    }
}

/// Sets a cause to a severity.
pub fn set(faults: &mut Faults, cause: usize, severity: f64) {
    let place = match cause {
        0 => &mut faults.undercharge,
        1 => &mut faults.overcharge,
        2 => &mut faults.low_indoor_airflow,
        3 => &mut faults.restricted_condenser_air,
        4 => &mut faults.liquid_line_restriction,
        5 => &mut faults.compressor_leakage,
        6 => &mut faults.non_condensables,
        7 => &mut faults.metering_overfeeding,
        _ => &mut faults.metering_underfeeding,
    };
    *place = severity;
}

/// A simulated state.
#[derive(Debug, Clone)]
pub struct Row {
    /// Which unit.
    pub unit: usize,
    /// Whether it has a valve.
    pub valve: bool,
    /// Place in [`REFRIGERANTS`].
    pub refrigerant: usize,
    /// Outdoor dry bulb, return dry bulb, return wet bulb, K; station pressure, Pa.
    pub air: [f64; 4],
    /// Causes with their severities.
    pub faults: Vec<(usize, f64)>,
    /// The channels.
    pub channels: [f64; CHANNELS],
    /// Capacity, W.
    pub capacity: f64,
    /// Compressor power, W.
    pub power: f64,
    /// Subcooling at the rated liquid port, as the maker would print it, K.
    pub rated_subcooling: f64,
}

/// The structure on which signatures are learnt.
#[must_use]
pub fn structure_a(number: u64) -> Member {
    let one = member(0x5a71_17e5, number);
    let fixed = matches!(one.device, Device::ShortTube | Device::FlashingOrifice);
    let device = if fixed { Device::ShortTube } else { Device::TaperedValve };
    Member { structure: Structure::default(), void: VoidFraction::Zivi, device, ..one }
}

fn channels(unit: &Unit, state: &Steady, air: &Conditions, nominal: f64, faults: &Faults) -> Option<[f64; CHANNELS]> {
    let map = unit.map;
    let low = map.saturation(state.vapor_port.pressure).ok()?;
    let high = map.saturation(state.liquid_port.pressure).ok()?;
    let discharge = map.saturation(state.discharge.pressure).ok()?;
    let supply = Air { temperature: state.supply_dry_bulb, ..state.evaporator.air };
    let rest = map.bubble_pressure(air.outdoor_dry_bulb).ok()?;
    let foreign = faults.non_condensables * 101_325.0 * air.outdoor_dry_bulb / 294.0;
    let standing = map.saturation(rest + foreign).ok()?.bubble_temperature - air.outdoor_dry_bulb;
    let usual = 400.0 * M3_S_PER_CFM / WATTS_PER_TON * nominal;
    Some([
        low.dew_temperature,
        state.vapor_port.temperature,
        high.bubble_temperature,
        state.liquid_port.temperature,
        state.discharge.temperature,
        state.supply_dry_bulb,
        state.condenser.air_temperature,
        100.0 * (state.compressor_power / nominal).ln(),
        100.0 * (state.indoor_airflow / usual).ln(),
        state.condenser.surface_temperature,
        discharge.bubble_temperature,
        state.evaporator.temperature,
        supply.wet_bulb(),
        100.0 * (state.charge / unit.nameplate_charge).ln(),
        state.liquid_port.temperature - state.metering_inlet.temperature,
        standing,
    ])
}

/// Weather of a unit's visit.
fn weather(draws: &mut Draws) -> Conditions {
    let return_dry_bulb = 273.15 + draws.uniform(20.5, 28.5);
    let ambient_pressure = draws.uniform(83e3, 102.5e3);
    let saturated = Air::from_dew_point(return_dry_bulb, return_dry_bulb, ambient_pressure);
    let humidity_ratio = draws.uniform(0.28, 0.72) * saturated.humidity_ratio;
    let air = Air { temperature: return_dry_bulb, humidity_ratio, pressure: ambient_pressure };
    Conditions {
        outdoor_dry_bulb: 273.15 + draws.uniform(14.0, 46.0),
        return_dry_bulb,
        return_wet_bulb: air.wet_bulb(),
        ambient_pressure,
    }
}

/// Pairs of causes that hide each other: charge with airflow, condenser air, restriction, metering, non-condensables.
pub const PAIRS: [(usize, usize); 12] =
    [(0, 2), (0, 3), (0, 4), (0, 6), (0, 7), (0, 8), (1, 2), (1, 3), (1, 4), (1, 6), (1, 7), (1, 8)];

fn faults_of(valve: bool) -> Vec<Vec<(usize, f64)>> {
    let mut all = vec![vec![]];
    for cause in 0..CAUSES {
        all.extend(severities(cause, valve).map(|severity| vec![(cause, severity)]));
    }
    for (first, second) in PAIRS {
        for (i, j) in [(1, 2), (3, 2), (2, 3)] {
            all.push(vec![(first, severities(first, valve)[i]), (second, severities(second, valve)[j])]);
        }
    }
    all
}

fn of_unit(number: usize, maps: &[RefrigerantMap], design: fn(u64) -> Member, conditions: usize) -> Vec<Row> {
    let mut draws = Draws::of(0x00c0_ffee, number as u64);
    let refrigerant = if draws.uniform(0.0, 1.0) < 0.4 { 0 } else { (number / 2) % maps.len() };
    let Some(map) = maps.get(refrigerant) else { return vec![] };
    let one = design(number as u64);
    let valve = matches!(one.device, Device::TaperedValve | Device::LinearValve);
    let Ok(designed) = one.designed(map) else { return vec![] };
    let Ok(unit) = commissioned(&one.errors.on(&designed), &designed) else { return vec![] };
    let Ok(Some(rated_subcooling)) = rated_subcooling(&designed) else { return vec![] };
    let nominal = one.tons * WATTS_PER_TON;
    let mut rows = vec![];
    for _ in 0..conditions {
        let air = weather(&mut draws);
        for causes in faults_of(valve) {
            let mut faults = Faults::default();
            for (cause, severity) in &causes {
                set(&mut faults, *cause, *severity);
            }
            let Ok(state) = unit.solve(&air, &faults) else { continue };
            let Some(channels) = channels(&unit, &state, &air, nominal, &faults) else { continue };
            rows.push(Row {
                unit: number,
                valve,
                refrigerant,
                air: [air.outdoor_dry_bulb, air.return_dry_bulb, air.return_wet_bulb, air.ambient_pressure],
                faults: causes,
                channels,
                capacity: state.capacity,
                power: state.compressor_power,
                rated_subcooling,
            });
        }
    }
    rows
}

/// Rows of a fleet: every unit healthy, with every single cause at each severity and with the pairs, in weather of its
/// own. Units that do not run so are left out.
///
/// # Panics
/// If a refrigerant has no map.
#[must_use]
pub fn rows(units: usize, conditions: usize, design: fn(u64) -> Member) -> Vec<Row> {
    let maps: Vec<RefrigerantMap> = REFRIGERANTS
        .iter()
        .map(|name| RefrigerantMap::of(name, refrigerant::find(name).unwrap().model).unwrap())
        .collect();
    let workers = thread::available_parallelism().map_or(2, usize::from);
    thread::scope(|scope| {
        let maps = &maps;
        let handles: Vec<_> = (0..workers)
            .map(|worker| {
                scope.spawn(move || {
                    let mine = (worker..units).step_by(workers);
                    mine.flat_map(|number| of_unit(number, maps, design, conditions)).collect::<Vec<_>>()
                })
            })
            .collect();
        let mut all: Vec<Row> = handles.into_iter().flat_map(|handle| handle.join().unwrap()).collect();
        all.sort_by_key(|row| row.unit);
        all
    })
}
