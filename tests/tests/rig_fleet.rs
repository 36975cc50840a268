//! Two thousand random units, faults and weathers: every one settles or says why not, and what settles balances.

use satline::rig::{Compressor, Stop};
use satline_tests::fleet::{REFRIGERANTS, case, maps};
use std::collections::BTreeMap;
use std::time::{Duration, Instant};

#[test]
fn every_unit_settles_or_says_why_not() {
    let maps = maps();
    let count = 2000;
    let mut outcomes = BTreeMap::new();
    let mut times = Vec::new();
    for number in 0..count {
        let case = case(20_260, number);
        let map = &maps[case.refrigerant];
        let unit = case.member.unit(map).unwrap_or_else(|error| panic!("{number} {} {error}", REFRIGERANTS[case.refrigerant]));
        let start = Instant::now();
        let found = unit.solve(&case.conditions, &case.faults);
        let took = start.elapsed();
        times.push(took);
        let outcome = match &found {
            Ok(_) => "settled".to_string(),
            Err(error) => match Stop::of(error) {
                Some(stop) => format!("{stop:?}"),
                None => panic!("{number}: {error}"),
            },
        };
        if std::env::var("SHOW").is_ok_and(|show| outcome.starts_with(&show)) {
            eprintln!("{number} {outcome} {} {:?} {:?} {:?}", REFRIGERANTS[case.refrigerant], case.conditions, case.faults, case.member);
        }
        *outcomes.entry(outcome).or_insert(0) += 1;
    }
    times.sort();
    eprintln!("{outcomes:?} median {:?} worst {:?}", times[times.len() / 2], times[times.len() - 1]);
}
