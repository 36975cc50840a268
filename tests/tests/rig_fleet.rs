//! Two thousand random units, faults and weathers: every one settles or says why not, and what settles balances. The
//! balances are computed again here, from what an answer shows and the parts' own laws.

use satline::rig::fleet::{UnitErrors, member};
use satline::rig::{
    AnyMetering, Around, Compression, Compressor, Faults, Metering, Point, RefrigerantMap, Steady, Stop, Unit,
};
use satline_tests::fleet::{Case, REFRIGERANTS, case, correlations, factors, maps, marginals, sample};
use std::collections::BTreeMap;

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
    for number in 0..2000 {
        let case = case(20_260, number);
        let (map, name) = (&maps[case.refrigerant], REFRIGERANTS[case.refrigerant]);
        let unit = case.member.unit(map).unwrap_or_else(|error| panic!("{number} {name}: {error}"));
        let found = unit.solve(&case.conditions, &case.faults);
        // The same question has the same answer.
        assert!(unit.solve(&case.conditions, &case.faults) == found, "{number} {name}");
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
        *outcomes.entry(outcome).or_insert(0) += 1;
    }
    println!("{outcomes:?}");
    println!("{worst:?}");
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

/// What a fleet is like, against common practice: its medians lie in the usual ranges, its spread is what was drawn.
#[test]
fn a_fleet_looks_like_the_field() {
    let sample = sample(7, 400);
    assert!(sample.len() > 390);
    let lines = marginals(&sample);
    let median = |what: &str| lines.iter().find(|line| line.0.starts_with(what)).unwrap().2[1];
    for (what, low, high) in [
        ("airflow", 390.0, 410.0),
        ("condensing over ambient, basic", 22.0, 30.0),
        ("condensing over ambient, standard", 17.0, 22.0),
        ("condensing over ambient, high", 12.0, 17.0),
        ("return air over evaporating", 30.0, 40.0),
        ("subcooling", 8.0, 12.0),
        ("superheat", 8.0, 20.0),
        ("temperature split", 16.0, 22.0),
        ("charge", 2.0, 4.0),
        ("efficiency, basic", 8.0, 10.0),
        ("efficiency, standard", 10.0, 12.0),
        ("capacity over nominal", 0.95, 1.05),
    ] {
        let found = median(what);
        assert!(found > low && found < high, "{what}: {found}");
    }
    // A fixed orifice shows its charge in the superheat, a valve in the subcooling.
    let correlation = |what: &str| correlations(&sample).into_iter().find(|line| line.0 == what).unwrap().2[0];
    assert!(correlation("charge and superheat, orifice") < -0.7);
    assert!(correlation("charge and subcooling, valve") > 0.6);
    assert!(correlation("charge and superheat, valve").abs() < 0.5);
    assert!(correlation("airflow and split") < -0.4);
}

/// A member is its seed and number alone; layers are kept apart.
#[test]
fn members_are_drawn_one_by_one() {
    let maps = maps();
    let one = member(3, 17);
    assert_eq!(one, member(3, 17));
    assert_ne!(one, member(3, 18));
    assert_ne!(one.errors, member(4, 17).errors);
    // Errors of the unit leave its nameplate alone; those of the installer leave the unit alone.
    let (designed, made) = (one.designed(&maps[0]).unwrap(), one.unit(&maps[0]).unwrap());
    assert_eq!(designed.nameplate_charge, made.nameplate_charge);
    assert_ne!(designed.parts.condenser, made.parts.condenser);
    assert_eq!(UnitErrors::NONE.on(&designed).parts, designed.parts);
    let spread = |of: fn(&UnitErrors) -> f64| {
        let logs: Vec<f64> = (0..2000).map(|number| of(&member(3, number).errors).ln()).collect();
        (logs.iter().map(|log| log * log).sum::<f64>() / 2000.0).sqrt()
    };
    for (found, drawn) in
        [(spread(|e| e.condenser), 0.1), (spread(|e| e.evaporator), 0.1), (spread(|e| e.displacement), 0.05)]
    {
        assert!((found / drawn - 1.0).abs() < 0.1, "{found} {drawn}");
    }
}

/// What a wrong charge costs valve units of R-410A, against the published factors (NIST Technical Note 1848, measured):
/// the median within 0.03, 0.05 and 0.06 at 10, 20 and 30 % missing.
#[test]
fn a_missing_charge_costs_what_was_published() {
    let lines = factors(7, 100);
    for (what, allowed) in [("-10", 0.03), ("-20", 0.05), ("-30", 0.06)] {
        let numbers = &lines.iter().find(|line| line.0.starts_with(&format!("capacity at {what}"))).unwrap().2;
        let (median, published) = (numbers[1], numbers[3]);
        println!("capacity at {what} %: median {median:.3}, published {published:.3}");
        assert!((median - published).abs() < allowed, "{what}: {median} {published}");
    }
}
