//! Times the rig in one run: its solves of a fleet, sound and faulty, and a step in time, beside one bubble point of
//! R-410A from the equation of state. Prints `name,microseconds,ratio to the bubble point`.

use satline::Error;
use satline::eos::{End, Mixture, model};
use satline::rig::{Device, Faults, Inputs, Motion, RATING_CONDITIONS, Rating, RefrigerantMap, Unit, fleet};
use std::hint::black_box;
use std::time::Instant;

/// Units of the fleet; each is solved sound and with each of the faults.
const UNITS: u64 = 200;
const FAULTS: [Faults; 4] = [
    Faults { undercharge: 0.3, ..NONE },
    Faults { overcharge: 0.3, ..NONE },
    Faults { low_indoor_airflow: 0.4, restricted_condenser_air: 0.4, ..NONE },
    Faults { liquid_line_restriction: 0.3, compressor_leakage: 0.2, ..NONE },
];
const NONE: Faults = Faults {
    undercharge: 0.0,
    overcharge: 0.0,
    low_indoor_airflow: 0.0,
    restricted_condenser_air: 0.0,
    liquid_line_restriction: 0.0,
    compressor_leakage: 0.0,
    non_condensables: 0.0,
    metering_overfeeding: 0.0,
    metering_underfeeding: 0.0,
    suction_line_heat_gain: 0.0,
};

/// Seconds of a call; the least of three, as other work may interrupt one.
fn seconds(mut call: impl FnMut()) -> f64 {
    let once = |call: &mut dyn FnMut()| {
        let start = Instant::now();
        call();
        start.elapsed().as_secs_f64()
    };
    (0..3).map(|_| once(&mut call)).fold(f64::INFINITY, f64::min)
}

fn main() -> Result<(), Error> {
    let mixture = Mixture::of(&model::R410A)?;
    let bubble = seconds(|| {
        for index in 0..1000 {
            black_box(mixture.at_temperature(End::Bubble, black_box(250.0 + 0.05 * f64::from(index))).is_ok());
        }
    }) / 1000.0;
    let tell = |name: &str, seconds: f64| println!("{name},{:.1},{:.1}", seconds * 1e6, seconds / bubble);
    tell("bubble point", bubble);

    let map = RefrigerantMap::of("R-410A", &model::R410A)?;
    let mut times = Vec::new();
    for number in 0..UNITS {
        let unit = fleet::member(1, number).unit(&map)?;
        for faults in [NONE].iter().chain(&FAULTS) {
            times.push(seconds(|| {
                black_box(unit.solve(&RATING_CONDITIONS, black_box(faults)).is_ok());
            }));
        }
    }
    times.sort_by(f64::total_cmp);
    tell("a solve, median", times[times.len() / 2]);
    tell("a solve, slowest", times[times.len() - 1]);

    let unit = Unit::designed(&map, &Rating::usual(10_550.0, Device::TaperedValve))?;
    let mut motion = Motion::at_rest(&unit, &RATING_CONDITIONS, unit.nameplate_charge)?;
    let inputs = Inputs::running(RATING_CONDITIONS);
    let start = Instant::now();
    for _ in 0..1800 {
        motion.step(1.0, &inputs)?;
    }
    tell("a step of a start, mean", start.elapsed().as_secs_f64() / 1800.0);
    Ok(())
}
