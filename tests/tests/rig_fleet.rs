//! Two thousand random units, faults and weathers: every one settles or says why not, and what settles balances. The
//! balances are computed again here, from what an answer shows and the parts' own laws.

use satline::rig::{
    AnyMetering, Around, Compression, Compressor, Faults, Metering, Point, RefrigerantMap, Steady, Stop, Unit,
};
use satline_tests::fleet::{Case, REFRIGERANTS, case, maps};
use std::collections::BTreeMap;
use std::time::Instant;

/// What balances may miss, relatively.
const CLOSED: f64 = 1e-6;

/// A compressor part of whose flow goes round again: by halving the enthalpy of its mixed inlet.
fn compression(map: &RefrigerantMap, unit: &Unit, found: &Steady, leak: f64) -> Compression {
    let (suction, high) = (&found.compressor_inlet, found.discharge.pressure);
    let run = |enthalpy: f64| {
        let inlet: Point = map.at_enthalpy(suction.pressure, enthalpy).unwrap();
        unit.parts.compressor.run(map, &inlet, high).unwrap()
    };
    let (mut low, mut top) =
        (suction.enthalpy, suction.enthalpy + leak * 1.2 * (found.discharge.enthalpy - suction.enthalpy));
    for _ in 0..80 {
        let middle = 0.5 * (low + top);
        let mixed = suction.enthalpy + leak * (run(middle).discharge_enthalpy - suction.enthalpy);
        if mixed > middle { low = middle } else { top = middle }
    }
    let whole = run(low);
    Compression { mass_flow: (1.0 - leak) * whole.mass_flow, ..whole }
}

/// Every balance of a settled unit, as names and relative misses.
fn balances(map: &RefrigerantMap, unit: &Unit, faults: &Faults, found: &Steady) -> Vec<(&'static str, f64)> {
    let parts = &unit.parts;
    let flow = found.mass_flow;
    let duty = found.condenser.heat;
    let ran = compression(map, unit, found, faults.compressor_leakage);
    let heat_kept = (ran.discharge_enthalpy - found.compressor_inlet.enthalpy) * flow;

    // Mass: what the device passes, what the compressor draws; what is inside.
    let loose = 15.0 * faults.metering_overfeeding;
    let valve = matches!(parts.metering, AnyMetering::Valve(_));
    let around = Around {
        inlet: found.metering_inlet,
        outlet_pressure: found.evaporator.inlet_pressure,
        bulb_superheat: found.evaporator.superheat + if valve { loose } else { 0.0 },
    };
    let wider = if valve { 1.0 } else { 1.0 + faults.metering_overfeeding };
    let passed = parts.metering.flow(map, &around).unwrap() * wider * (1.0 - faults.metering_underfeeding);
    let charged = unit.nameplate_charge * (1.0 - faults.undercharge + faults.overcharge);

    // Energy: air and refrigerant of both coils, the circuit as a whole.
    let (indoor, indoor_dry) = found.indoor_air;
    let (outdoor, outdoor_dry) = found.outdoor_air;
    let air_cooled = indoor_dry * (indoor.enthalpy() - found.evaporator.air.enthalpy());
    let air_warmed = outdoor_dry * outdoor.heat_capacity() * (found.condenser.air_temperature - outdoor.temperature);
    let taken = flow * (found.evaporator.enthalpy - found.metering_inlet.enthalpy);
    let given = flow * (found.discharge.enthalpy - found.condenser.enthalpy);
    // Lines: from the coil to the compressor, and on the liquid's way. The discharge line loses nothing.
    let gains = flow * (found.compressor_inlet.enthalpy - found.evaporator.enthalpy)
        + flow * (found.metering_inlet.enthalpy - found.condenser.enthalpy);
    // What the lines take up is their conductance times the difference to the air around.
    let warmed = |line: &satline::rig::Line, at: &Point, times: f64| {
        line.conductance * times * (outdoor.temperature - at.temperature)
    };
    let lines = warmed(&parts.suction_line, &found.vapor_port, 1.0 + faults.suction_line_heat_gain)
        + warmed(&parts.suction_inlet, &found.compressor_inlet, 1.0);
    vec![
        ("metering passes what the compressor draws", passed / flow - 1.0),
        ("compressor draws its flow", ran.mass_flow / flow - 1.0),
        ("compressor's power", ran.power / found.compressor_power - 1.0),
        ("charge inside", found.charge / charged - 1.0),
        ("evaporator's refrigerant and air", (taken - air_cooled) / duty),
        ("evaporator's heat", (taken - found.capacity) / duty),
        ("condenser's refrigerant and air", (given - air_warmed) / duty),
        ("lines", (gains - lines) / duty),
        ("whole circuit", (found.capacity + lines + heat_kept - duty) / duty),
    ]
}

/// What no settled unit may show.
fn sane(found: &Steady, case: &Case) -> bool {
    let air = &found.evaporator.air;
    let outdoor = case.conditions.outdoor_dry_bulb;
    found.mass_flow > 0.0
        && found.capacity > 0.0
        && found.compressor_power > 0.0
        && found.sensible_capacity <= found.capacity * (1.0 + 1e-9)
        && found.compressor_inlet.pressure < found.coil_outlet_pressure
        && found.evaporator.inlet_pressure < found.metering_inlet.pressure
        && found.evaporator.surface_temperature < case.conditions.return_dry_bulb
        && found.evaporator.temperature < case.conditions.return_dry_bulb
        && found.condenser.surface_temperature > outdoor
        && found.condenser.air_temperature < found.discharge.temperature
        && found.liquid_port.temperature > outdoor - 1.0
        && air.temperature < case.conditions.return_dry_bulb
        && air.humidity_ratio > 0.0
        && (found.evaporator.shares.iter().sum::<f64>() - 1.0).abs() < 1e-9
        && (found.condenser.shares.iter().sum::<f64>() - 1.0).abs() < 1e-9
}

#[test]
fn every_unit_settles_or_says_why_not() {
    let maps = maps();
    let mut outcomes = BTreeMap::new();
    let mut worst: BTreeMap<&str, f64> = BTreeMap::new();
    let mut times = Vec::new();
    for number in 0..2000 {
        let case = case(20_260, number);
        let (map, name) = (&maps[case.refrigerant], REFRIGERANTS[case.refrigerant]);
        let unit = case.member.unit(map).unwrap_or_else(|error| panic!("{number} {name}: {error}"));
        let start = Instant::now();
        let found = unit.solve(&case.conditions, &case.faults);
        times.push(start.elapsed());
        let outcome = match &found {
            Ok(_) => "settled".to_string(),
            // Anything else would be an error without a reason.
            Err(error) => format!("{:?}", Stop::of(error).unwrap_or_else(|| panic!("{number} {name}: {error}"))),
        };
        if let Ok(found) = &found {
            for (balance, miss) in balances(map, &unit, &case.faults, found) {
                assert!(miss.abs() < CLOSED, "{number} {name}: {balance} misses {miss:e}");
                let most = worst.entry(balance).or_default();
                *most = most.max(miss.abs());
            }
            assert!(sane(found, &case), "{number} {name} {:?} {:?} {found:?}", case.conditions, case.faults);
        }
        if outcome == "NoBalance" {
            println!("{number} {name} {:?} {:?} {:?}", case.conditions, case.faults, case.member);
        }
        *outcomes.entry(outcome).or_insert(0) += 1;
    }
    times.sort();
    let slow = times.iter().filter(|time| time.as_micros() > 10_000).count();
    println!("{outcomes:?}");
    println!("{worst:?}");
    println!("a solve: median {:?}, worst {:?}, {slow} of {} above 10 ms", times[1000], times[1999], times.len());
    // The box is one of units that run: most must, and none may end without a reason found.
    assert!(outcomes["settled"] > 1900, "{outcomes:?}");
    assert!(!outcomes.contains_key("NoBalance"), "{outcomes:?}");
}

/// A solve gives the same bits whatever was solved before it.
#[test]
fn a_solve_repeats_to_the_bit() {
    let maps = maps();
    let once = |number: u64| {
        let case = case(20_260, number);
        case.member.unit(&maps[case.refrigerant]).unwrap().solve(&case.conditions, &case.faults)
    };
    let forwards: Vec<_> = (0..40).map(once).collect();
    let mut backwards: Vec<_> = (0..40).rev().map(once).collect();
    backwards.reverse();
    assert!(forwards == backwards);
}
