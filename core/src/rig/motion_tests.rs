use super::*;
use crate::eos::model;
use std::boxed::Box;
use std::vec::Vec;

const DEVICES: [Device; 4] = [Device::ShortTube, Device::FlashingOrifice, Device::TaperedValve, Device::LinearValve];

fn map() -> Box<RefrigerantMap> {
    Box::new(RefrigerantMap::of("R-410A", &model::R410A).unwrap())
}

fn unit(map: &RefrigerantMap, device: Device) -> Unit<'_> {
    Unit::designed(map, &Rating::usual(10_550.0, device)).unwrap()
}

fn superheat(map: &RefrigerantMap, state: &Steady) -> f64 {
    state.vapor_port.temperature - map.saturation(state.vapor_port.pressure).unwrap().dew_temperature
}

fn subcooling(map: &RefrigerantMap, state: &Steady) -> f64 {
    let pressure = state.liquid_port.pressure - state.non_condensable_pressure;
    map.saturation(pressure).unwrap().bubble_temperature - state.liquid_port.temperature
}

/// What instruments show of both states, and the powers, side by side.
fn worst(one: &Steady, other: &Steady) -> f64 {
    let all = |state: &Steady| {
        [
            state.mass_flow,
            state.compressor_power,
            state.capacity,
            state.charge,
            state.vapor_port.pressure,
            state.vapor_port.temperature,
            state.liquid_port.pressure,
            state.liquid_port.temperature,
            state.discharge.temperature,
            state.supply_dry_bulb,
            state.low_side_charge,
        ]
    };
    all(one).iter().zip(all(other)).map(|(one, other)| (one / other - 1.0).abs()).fold(0.0, f64::max)
}

/// From rest, from another charge and from other weather: the same end, that of the steady solution.
#[test]
fn a_unit_left_alone_comes_to_its_steady_state() {
    let map = map();
    for device in DEVICES {
        let unit = unit(&map, device);
        let steady = unit.solve(&RATING_CONDITIONS, &Faults::default()).unwrap();
        let inputs = Inputs::running(RATING_CONDITIONS);
        let cool = Conditions { outdoor_dry_bulb: 298.15, return_wet_bulb: 290.15, ..RATING_CONDITIONS };
        let mut from_rest = Motion::at_rest(&unit, &RATING_CONDITIONS, unit.nameplate_charge).unwrap();
        let over = Faults { overcharge: 0.15, ..Faults::default() };
        let mut from_more = Motion::settled(&unit, &RATING_CONDITIONS, &over).unwrap();
        let less = Inputs { charging: -0.15 * unit.nameplate_charge / 100.0, ..inputs };
        for _ in 0..100 {
            from_more.step(1.0, &less).unwrap();
        }
        let mut from_cool = Motion::settled(&unit, &cool, &Faults::default()).unwrap();
        for motion in [&mut from_rest, &mut from_more, &mut from_cool] {
            assert!(worst(&motion.moment().state, &steady) > 1e-3);
            for _ in 0..400 {
                motion.step(1.0, &inputs).unwrap();
            }
            run(motion, inputs, &[], 12_000.0, 10.0, |_, _| {}).unwrap();
            let miss = worst(&motion.moment().state, &steady);
            assert!(miss < 1e-6, "{device:?} {miss}");
        }
    }
}

/// Minutes, as technicians wait: 5 % of the change is left after 2 to 15 of them. Charging raises the subcooling of a
/// unit with a valve, and lowers the superheat of one with an orifice.
#[test]
fn charging_shows_within_minutes() {
    let map = map();
    let inputs = Inputs::running(RATING_CONDITIONS);
    for device in DEVICES {
        let unit = unit(&map, device);
        let valve = matches!(device, Device::TaperedValve | Device::LinearValve);
        let shown = |state: &Steady| if valve { subcooling(&map, state) } else { -superheat(&map, state) };
        for charging in [0.01, -0.01] {
            let mut motion = Motion::settled(&unit, &RATING_CONDITIONS, &Faults::default()).unwrap();
            let before = shown(&motion.moment().state);
            let mut course = Vec::new();
            let charge = [Change { at: 0.0, inputs: Inputs { charging, ..inputs } }, Change { at: 10.0, inputs }];
            run(&mut motion, inputs, &charge, 7200.0, 1.0, |moment, _| course.push(shown(&moment.state))).unwrap();
            let whole = course.last().unwrap() - before;
            assert!(whole * charging > 0.0 && whole.abs() > 0.5, "{device:?} {whole}");
            let late = course.iter().rposition(|now| ((now - before) / whole - 1.0).abs() > 0.05).unwrap();
            assert!((120..900).contains(&late), "{device:?} {late}");
            // It goes there without turning back.
            assert!(course.windows(2).all(|pair| (pair[1] - pair[0]) * charging > -1e-3), "{device:?}");
        }
    }
}

/// Refrigerant is neither made nor lost, whatever happens.
#[test]
fn charge_is_kept() {
    let map = map();
    let unit = unit(&map, Device::ShortTube);
    let mut motion = Motion::at_rest(&unit, &RATING_CONDITIONS, 0.8 * unit.nameplate_charge).unwrap();
    let on = Inputs::running(RATING_CONDITIONS);
    let off = Inputs::standing(RATING_CONDITIONS);
    let low_air = Faults { low_indoor_airflow: 0.3, ..Faults::default() };
    let schedule = [
        Change { at: 300.0, inputs: Inputs { charging: 0.003, ..on } },
        Change { at: 400.0, inputs: off },
        Change { at: 700.0, inputs: on },
        Change { at: 900.0, inputs: Inputs { charging: -0.002, faults: low_air, ..on } },
        Change { at: 950.0, inputs: on },
        Change { at: 1000.0, inputs: Inputs { charging: 0.001, ..off } },
    ];
    let mut expected = 0.8 * unit.nameplate_charge;
    run(&mut motion, on, &schedule, 1200.0, 1.0, |moment, inputs| {
        expected += inputs.charging;
        let miss = (moment.state.charge - expected).abs();
        assert!(miss < 1e-7 * expected, "{} {miss}", moment.seconds);
    })
    .unwrap();
    let rates = 0.3 - 0.1 + 0.2;
    assert!((motion.charge() - 0.8 * unit.nameplate_charge - rates).abs() < 1e-9);
}

/// The suction pressure falls below where it ends, as the high side lacks the refrigerant that lay in the coil,
/// and comes back. With a valve, liquid floods back in the first seconds instead.
#[test]
fn a_start() {
    let map = map();
    for device in DEVICES {
        let unit = unit(&map, device);
        let mut motion = Motion::at_rest(&unit, &RATING_CONDITIONS, unit.nameplate_charge).unwrap();
        let rest = motion.moment().state;
        let boiling = map.bubble_pressure(RATING_CONDITIONS.return_dry_bulb).unwrap();
        assert!((rest.vapor_port.pressure / boiling - 1.0).abs() < 1e-9);
        assert_eq!((rest.vapor_port.pressure, rest.mass_flow), (rest.liquid_port.pressure, 0.0));
        let mut course = Vec::new();
        for _ in 0..1800 {
            motion.step(1.0, &Inputs::running(RATING_CONDITIONS)).unwrap();
            course.push(*motion.moment());
        }
        let pressure = |second: usize| course[second].state.vapor_port.pressure;
        let lowest = (0..1800).min_by(|one, other| pressure(*one).total_cmp(&pressure(*other))).unwrap();
        let wettest = course.iter().map(|moment| moment.state.compressor_inlet.quality).fold(2.0, f64::min);
        let share = pressure(lowest) / pressure(1799);
        std::eprintln!("{device:?}: lowest {share:.3} of the end after {lowest} s, wettest {wettest:.3}");
        // Half a minute of fall; the discharge pressure rises throughout the first seconds.
        assert!(pressure(30) < 1.03 * pressure(1799) && pressure(5) > 1.1 * pressure(1799), "{device:?}");
        let high = |second: usize| course[second].state.discharge.pressure;
        assert!((0..10).all(|second| high(second + 1) > high(second)), "{device:?}");
        if matches!(device, Device::ShortTube | Device::FlashingOrifice) {
            assert!(share < 0.99 && (10..90).contains(&lowest), "{device:?} {share} {lowest}");
        } else {
            // Its bulb is still warm: the valve stands wide open, and liquid comes back.
            assert!(wettest < 0.99 && course[60..].iter().all(|moment| moment.state.compressor_inlet.quality > 1.0));
        }
        assert!(course.iter().all(|moment| moment.runs && moment.state.miss < 1e-7));
    }
}

/// An orifice with ever more refrigerant: the superheat goes to nothing, and then wet gas returns, without a jump.
#[test]
fn an_orifice_floods_smoothly() {
    let map = map();
    for device in [Device::ShortTube, Device::FlashingOrifice] {
        let unit = unit(&map, device);
        let mut motion = Motion::settled(&unit, &RATING_CONDITIONS, &Faults::default()).unwrap();
        let inputs = Inputs { charging: 0.001, ..Inputs::running(RATING_CONDITIONS) };
        let mut last = superheat(&map, &motion.moment().state);
        let mut flooded = None;
        for second in 0..700 {
            let state = motion.step(1.0, &inputs).unwrap().state;
            let now = superheat(&map, &state);
            assert!(now - last < 1e-3 && last - now < 0.25, "{device:?} {second} s: {last} to {now}");
            last = now;
            if flooded.is_none() && state.vapor_port.quality < 1.0 {
                flooded = Some(second);
            }
        }
        let flooded = flooded.unwrap();
        assert!((100..600).contains(&flooded) && last.abs() < 0.05, "{flooded} {last}");
        assert!(motion.moment().state.compressor_inlet.quality < 0.99);
    }
}

/// A door opened, a fan slowed, the condenser's air blocked, each in a running unit: signs as in the steady state, and
/// no jump.
#[test]
fn what_happens_around() {
    let map = map();
    let unit = unit(&map, Device::ShortTube);
    let sound = Inputs::running(RATING_CONDITIONS);
    let warm = Conditions { return_dry_bulb: 303.15, return_wet_bulb: 296.15, ..RATING_CONDITIONS };
    let slow = Faults { low_indoor_airflow: 0.4, ..Faults::default() };
    let blocked = Faults { restricted_condenser_air: 0.5, ..Faults::default() };
    for (name, inputs, suction, superheat_rises, liquid) in [
        ("door", Inputs { conditions: warm, ..sound }, true, true, true),
        ("fan", Inputs { faults: slow, ..sound }, false, false, false),
        ("condenser", Inputs { faults: blocked, ..sound }, true, false, true),
    ] {
        let mut motion = Motion::settled(&unit, &RATING_CONDITIONS, &Faults::default()).unwrap();
        let before = motion.moment().state;
        let mut last = before;
        run(&mut motion, inputs, &[], 900.0, 1.0, |moment, _| {
            let share = moment.state.vapor_port.pressure / last.vapor_port.pressure;
            assert!((share - 1.0).abs() < 0.03, "{name} {} {share}", moment.seconds);
            last = moment.state;
        })
        .unwrap();
        assert_eq!(last.vapor_port.pressure > before.vapor_port.pressure, suction, "{name}");
        assert_eq!(superheat(&map, &last) > superheat(&map, &before), superheat_rises, "{name}");
        assert_eq!(last.liquid_port.pressure > before.liquid_port.pressure, liquid, "{name}");
        let steady = unit.solve(&inputs.conditions, &inputs.faults).unwrap();
        assert!(worst(&last, &steady) < 0.02, "{name} {}", worst(&last, &steady));
    }
}

/// Pressures meet after a stop, at the colder of both airs; a unit with its condenser's air shut off trips, stands while
/// it is called for, and starts again after the call has ended.
#[test]
fn stops_and_trips() {
    let map = map();
    let unit = unit(&map, Device::TaperedValve);
    let mut motion = Motion::settled(&unit, &RATING_CONDITIONS, &Faults::default()).unwrap();
    run(&mut motion, Inputs::standing(RATING_CONDITIONS), &[], 900.0, 1.0, |moment, _| assert!(!moment.runs)).unwrap();
    let state = motion.moment().state;
    let colder = map.bubble_pressure(RATING_CONDITIONS.return_dry_bulb).unwrap();
    assert!((state.vapor_port.pressure / colder - 1.0).abs() < 1e-4);
    assert!((state.liquid_port.pressure / colder - 1.0).abs() < 1e-4);
    let cold = Conditions { outdoor_dry_bulb: 285.15, ..RATING_CONDITIONS };
    run(&mut motion, Inputs::standing(cold), &[], 900.0, 1.0, |_, _| {}).unwrap();
    let colder = map.bubble_pressure(285.15).unwrap();
    assert!((motion.moment().state.liquid_port.pressure / colder - 1.0).abs() < 1e-4);

    let mut motion = Motion::settled(&unit, &RATING_CONDITIONS, &Faults::default()).unwrap();
    let shut = Faults { restricted_condenser_air: 0.9, ..Faults::default() };
    let inputs = Inputs { faults: shut, ..Inputs::running(RATING_CONDITIONS) };
    let mut tripped = None;
    run(&mut motion, inputs, &[], 600.0, 1.0, |moment, _| {
        if tripped.is_none() && moment.trip.is_some() {
            tripped = Some(moment.seconds);
        }
    })
    .unwrap();
    assert!(tripped.unwrap() > 5.0 && tripped.unwrap() < 300.0, "{tripped:?}");
    assert_eq!((motion.moment().trip, motion.moment().runs), (Some(Trip::HighPressure), false));
    motion.step(1.0, &Inputs::standing(RATING_CONDITIONS)).unwrap();
    motion.step(1.0, &Inputs::running(RATING_CONDITIONS)).unwrap();
    assert!(motion.moment().runs && motion.moment().trip.is_none());
}

/// What is refused leaves the motion as it was.
#[test]
fn refusals() {
    let map = map();
    let unit = unit(&map, Device::ShortTube);
    let mut motion = Motion::settled(&unit, &RATING_CONDITIONS, &Faults::default()).unwrap();
    let before = *motion.moment();
    let inputs = Inputs::running(RATING_CONDITIONS);
    let dry = Conditions { return_wet_bulb: 310.0, ..RATING_CONDITIONS };
    let severe = Faults { low_indoor_airflow: 1.0, ..Faults::default() };
    for (seconds, inputs) in [
        (0.0, inputs),
        (f64::NAN, inputs),
        (60.0, inputs),
        (1.0, Inputs { charging: 0.5, ..inputs }),
        (1.0, Inputs { conditions: dry, ..inputs }),
        (1.0, Inputs { faults: severe, ..inputs }),
    ] {
        let error = motion.step(seconds, &inputs).unwrap_err();
        assert!(matches!(error, crate::Error::OutOfRange { .. } | crate::Error::NotFinite { .. }), "{error:?}");
        assert_eq!(*motion.moment(), before);
    }
    let usual = Inertia::usual(&unit.parts);
    let mut unsteady = motion.with_inertia(Inertia { shell_time: f64::NAN, ..usual });
    assert!(unsteady.is_err());
    unsteady = motion.with_inertia(Inertia { bulb_time: -1.0, ..usual });
    assert!(unsteady.is_err());
    // Without metal only the charge has to find its place.
    let none = Inertia { evaporator: 0.0, condenser: 0.0, shell: 0.0, shell_time: 0.0, bulb_time: 0.0, ..usual };
    let mut light = motion.with_inertia(none).unwrap();
    let blocked = Faults { restricted_condenser_air: 0.2, ..Faults::default() };
    run(&mut light, Inputs { faults: blocked, ..inputs }, &[], 300.0, 1.0, |_, _| {}).unwrap();
    let steady = unit.solve(&RATING_CONDITIONS, &blocked).unwrap();
    assert!(worst(&light.moment().state, &steady) < 1e-6);
    let charge = 2.5 * unit.nameplate_charge;
    assert!(Motion::at_rest(&unit, &RATING_CONDITIONS, charge).is_err());
}

/// Units of several refrigerants and sizes started in random weather with random charge and faults, a door opened, charge
/// changed, stopped and started again: every visit goes through.
#[test]
fn random_visits() {
    let mut draws = Draws::new(20);
    let (mut whole, mut failed, mut tripped, mut wettest) = (0, 0, 0, 1.0_f64);
    for (designation, model) in [
        ("R-410A", &model::R410A),
        ("R-22", &model::R22),
        ("R-454B", &model::R454B),
        ("R-32", &model::R32),
        ("R-407C", &model::R407C),
    ] {
        let map = Box::new(RefrigerantMap::of(designation, model).unwrap());
        for number in 0..8 {
            let device = DEVICES[number % 4];
            let mut unit = Unit::designed(&map, &Rating::usual(draws.uniform(5_000.0, 18_000.0), device)).unwrap();
            if number > 3 {
                unit.parts.structure.condenser = CondenserModel::Lumped;
                unit.parts.structure.air_imbalance = 0.2;
            }
            let indoors = draws.uniform(294.0, 302.0);
            let conditions = Conditions {
                outdoor_dry_bulb: draws.uniform(293.0, 316.0),
                return_dry_bulb: indoors,
                return_wet_bulb: indoors - draws.uniform(3.0, 11.0),
                ambient_pressure: draws.uniform(80e3, 102e3),
            };
            let faults = Faults {
                low_indoor_airflow: draws.uniform(0.0, 0.4),
                restricted_condenser_air: draws.uniform(0.0, 0.3),
                metering_underfeeding: draws.uniform(0.0, 0.2),
                ..Faults::default()
            };
            let charge = unit.nameplate_charge * draws.uniform(0.7, 1.2);
            whole += 1;
            let mut visit = || -> Result<Option<Trip>, (f64, crate::Error)> {
                let mut motion = Motion::at_rest(&unit, &conditions, charge).map_err(|error| (0.0, error))?;
                let on = Inputs { faults, ..Inputs::running(conditions) };
                let open = Conditions { return_wet_bulb: indoors - 2.0, ..conditions };
                let schedule = [
                    Change { at: 200.0, inputs: Inputs { charging: 2e-3, ..on } },
                    Change { at: 260.0, inputs: on },
                    Change { at: 400.0, inputs: Inputs { conditions: open, ..on } },
                    Change { at: 600.0, inputs: Inputs::standing(conditions) },
                    Change { at: 650.0, inputs: on },
                    Change { at: 800.0, inputs: Inputs { charging: -2e-3, faults: Faults::default(), ..on } },
                    Change { at: 860.0, inputs: on },
                ];
                let mut seconds = 0.0;
                let mut trip = None;
                run(&mut motion, on, &schedule, 1000.0, 1.0, |moment, _| {
                    seconds = moment.seconds;
                    trip = trip.or(moment.trip);
                    let state = &moment.state;
                    let all = [state.vapor_port.pressure, state.liquid_port.pressure, state.capacity, state.charge];
                    assert!(all.iter().all(|value| value.is_finite()));
                    wettest = wettest.min(state.compressor_inlet.quality);
                })
                .map_err(|error| (seconds, error))?;
                Ok(trip)
            };
            match visit() {
                Ok(Some(trip)) => {
                    tripped += 1;
                    std::eprintln!("tripped: {designation} {device:?} {trip:?}");
                }
                Ok(None) => {}
                Err((seconds, error)) => {
                    failed += 1;
                    std::eprintln!(
                        "failed: {designation} {number} {device:?} {seconds} {:.2} {:.1} {:.1} {:.1} {faults:?}: {error}",
                        charge / unit.nameplate_charge,
                        conditions.outdoor_dry_bulb - 273.15,
                        conditions.return_dry_bulb - 273.15,
                        conditions.return_wet_bulb - 273.15
                    );
                }
            }
        }
    }
    std::eprintln!("{whole} visits, {failed} failed, {tripped} tripped, wettest suction {wettest:.3}");
    assert_eq!((failed, tripped), (0, 0));
    // Liquid came back, but no compressor was drowned.
    assert!(wettest < 0.98 && wettest > 0.7, "{wettest}");
}
