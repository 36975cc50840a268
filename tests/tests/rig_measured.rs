//! The rig against measured units. What it reproduces and misses, with numbers: `core/docs/rig.md`.

use satline::quantity::{
    KELVIN_PER_FAHRENHEIT, KG_PER_POUND, PASCALS_PER_PSI, WATTS_PER_BTU_H, kelvin_from_fahrenheit,
};
use satline::refrigerant;
use satline::rig::{Compressor, Conditions, Device, Faults, RATING_CONDITIONS, Rating, RefrigerantMap, Steady, Unit};
use satline_tests::measured::{
    COMPRESSOR, Misses, Page, TUNED_ON, Tuned, at, mass_flow_times_enthalpy, misses, rows, unit,
};

const THREE_TONS: f64 = 10_550.0;

fn map() -> RefrigerantMap {
    RefrigerantMap::of("R-410A", refrigerant::find("R-410A").unwrap().model).unwrap()
}

fn root_mean_square(values: impl Iterator<Item = f64>) -> f64 {
    let squares: Vec<f64> = values.map(|value| value * value).collect();
    (squares.iter().sum::<f64>() / squares.len() as f64).sqrt()
}

/// At a share of the nameplate charge.
fn charged(unit: &Unit, conditions: &Conditions, share: f64) -> Steady {
    let undercharge = f64::max(1.0 - share, 0.0);
    let overcharge = f64::max(share - 1.0, 0.0);
    unit.solve(conditions, &Faults { undercharge, overcharge, ..Faults::default() }).unwrap()
}

fn subcooling(map: &RefrigerantMap, found: &Steady) -> f64 {
    map.saturation(found.liquid_port.pressure).unwrap().bubble_temperature - found.liquid_port.temperature
}

/// NISTIR 7350, appendix D: tuned on five rows, the other seven predicted.
#[test]
fn nistir_7350() {
    let map = map();
    let unit = unit(&map, &Tuned::of(&Tuned::FOUND)).unwrap();
    assert_eq!(TUNED_ON.len(), 5);
    let all: Vec<(f64, Misses)> = rows()
        .iter()
        .map(|row| {
            let found = at(&unit, row).unwrap();
            (row["test"], misses(&map, &found, row))
        })
        .collect();
    let mut page = Page::default();
    for (test, miss) in &all {
        let mut name = format!("{test}");
        if TUNED_ON.contains(test) {
            name += ", tuned";
        }
        let kelvins = [miss.evaporating, miss.condensing, miss.coil_superheat, miss.port_superheat, miss.subcooling];
        let shares = [miss.capacity, miss.power, miss.mass_flow, miss.reported_capacity].map(|share| 100.0 * share);
        page.row(&name, &kelvins, 2);
        page.more(&shares, 1);
        assert!(miss.evaporating.abs() < 0.5 && miss.condensing.abs() < 0.5, "{test} {miss:?}");
        assert!(miss.capacity.abs() < 0.04 && miss.power.abs() < 0.04, "{test} {miss:?}");
    }
    let predicted: Vec<Misses> = all.iter().filter(|row| !TUNED_ON.contains(&row.0)).map(|row| row.1).collect();
    assert_eq!(predicted.len(), 7);
    let worst = [
        root_mean_square(predicted.iter().map(|miss| miss.coil_superheat)),
        root_mean_square(predicted.iter().map(|miss| miss.port_superheat)),
        root_mean_square(predicted.iter().map(|miss| miss.subcooling)),
    ];
    page.row("rms of the predicted", &worst, 2);
    page.stands();
    assert!(worst.iter().all(|value| *value < 1.0));
    // KNOWN miss: against the report's own number of the refrigerant's capacity 4 % is not kept, because that number is
    // 4 to 6 % below the report's own mass flow times enthalpies, on which the rig is tuned.
    let (low, high) = all.iter().fold((1.0_f64, 0.0_f64), |(low, high), (_, miss)| {
        (low.min(miss.reported_capacity), high.max(miss.reported_capacity))
    });
    println!("against the report's number: {:+.1} to {:+.1} %", 100.0 * low, 100.0 * high);
    assert!((low - 0.043).abs() < 0.003 && (high - 0.082).abs() < 0.003, "{low} {high}");
}

/// The compressor alone, between the suction state and discharge pressure of each row: flow, power, discharge temperature.
#[test]
fn the_compressor_of_nistir_7350() {
    let map = map();
    let mut worst = [0.0_f64; 3];
    for row in rows() {
        let pa = |name: &str| row[name] * PASCALS_PER_PSI;
        let kelvin = |name: &str| kelvin_from_fahrenheit(row[name]);
        let suction = map.vapor_at_temperature(pa("compressor_suction_psia"), kelvin("compressor_suction_f")).unwrap();
        let high = pa("compressor_discharge_psia");
        let found = COMPRESSOR.run(&map, &suction, high).unwrap();
        let gas = map.vapor_at_enthalpy(high, found.discharge_enthalpy).unwrap();
        let beyond = [
            found.mass_flow / (row["mass_flow_lb_h"] * KG_PER_POUND / 3600.0) - 1.0,
            found.power / row["compressor_power_w"] - 1.0,
            gas.temperature - kelvin("compressor_discharge_f"),
        ];
        worst = std::array::from_fn(|place| worst[place].max(beyond[place].abs()));
    }
    println!("flow {:.2} %, power {:.2} %, discharge {:.2} K", 100.0 * worst[0], 100.0 * worst[1], worst[2]);
    // The curves are stated to 0.9 % of flow, a rounded figure, and 2.2 % of the efficiency.
    assert!(worst[0] < 0.009_5 && worst[1] < 0.022 && worst[2] < 1.5);
}

/// The report contradicts itself by 4 to 6 % on the refrigerant's side. Its air side, blower's heat added, speaks for
/// mass flow times enthalpies where the coil is dry and for its own number where the coil is wet.
#[test]
fn the_report_against_itself() {
    let map = map();
    let text = include_str!("../data/nistir7350_capacity.csv");
    let mut lines = text.lines().filter(|line| !line.starts_with('#'));
    let names: Vec<&str> = lines.next().unwrap().split(',').collect();
    let place = |name: &str| names.iter().position(|other| *other == name).unwrap();
    let (mut dry, mut wet) = (Vec::new(), Vec::new());
    for (row, line) in rows().iter().zip(lines) {
        let cells: Vec<f64> = line.split(',').map(|cell| cell.parse().unwrap()).collect();
        assert_eq!(row["test"], cells[0]);
        let flow = mass_flow_times_enthalpy(&map, row);
        let reported = row["refrigerant_capacity_btu_h"] * WATTS_PER_BTU_H / flow - 1.0;
        let air = (cells[place("net_btu_h")] * WATTS_PER_BTU_H + cells[place("blower_w")]) / flow - 1.0;
        println!("{:2} reported {:+.1} %, by the air {:+.1} %", row["test"], 100.0 * reported, 100.0 * air);
        assert!(reported < -0.04 && reported > -0.06);
        if cells[place("shr")] > 0.99 { dry.push(air) } else { wet.push(air) }
    }
    let mean = |values: &[f64]| values.iter().sum::<f64>() / values.len() as f64;
    println!("by the air: dry {:+.1} %, wet {:+.1} %", 100.0 * mean(&dry), 100.0 * mean(&wet));
    assert!(mean(&dry).abs() < 0.015 && mean(&wet) < -0.035);
}

/// Factors of capacity and of power at a share of charge missing or too much; NIST TN 1848: 1 + (a + b·indoor + c·outdoor
/// + d·f)·f with dry bulbs in °C.
fn nist(coefficients: [f64; 4], indoor: f64, outdoor: f64, share: f64) -> f64 {
    let [a, b, c, d] = coefficients;
    1.0 + (a + b * indoor + c * outdoor + d * share) * share
}

const CAPACITY_UNDER: [f64; 4] = [-0.946, 0.0493, -0.001_18, -1.15];
const CAPACITY_OVER: [f64; 4] = [-0.163, 0.0114, -0.000_21, -0.140];
const POWER_UNDER: [f64; 4] = [-0.313, 0.0115, 0.002_66, -0.116];
const POWER_OVER: [f64; 4] = [0.219, -0.005_01, 0.000_989, 0.284];

/// What charge does to capacity and power of a valve unit: NIST's factors for 26.7 °C indoors and 35 °C outdoors, .956,
/// .888 and .798 of the capacity at a tenth, a fifth and three tenths missing, within .03, .05 and .06.
#[test]
fn capacity_and_power_follow_the_charge() {
    let map = map();
    for device in [Device::TaperedValve, Device::LinearValve] {
        let unit = Unit::designed(&map, &Rating::usual(THREE_TONS, device)).unwrap();
        let full = charged(&unit, &RATING_CONDITIONS, 1.0);
        let power = |found: &Steady| found.compressor_power + found.fan_power;
        for (share, published, within) in [(-0.1, 0.956, 0.03), (-0.2, 0.888, 0.05), (-0.3, 0.798, 0.06)] {
            let found = charged(&unit, &RATING_CONDITIONS, 1.0 + share);
            let capacity = found.capacity / full.capacity;
            let of_power = power(&found) / power(&full);
            let published_power = nist(POWER_UNDER, 26.7, 35.0, share);
            println!(
                "{device:?} {share:+}: capacity {capacity:.3} of {published}, power {of_power:.3} of {published_power:.3}"
            );
            assert!((nist(CAPACITY_UNDER, 26.7, 35.0, share) - published).abs() < 6e-4);
            assert!((capacity - published).abs() < within);
            assert!((of_power - published_power).abs() < 0.02);
        }
        for share in [0.1, 0.2, 0.3] {
            let found = charged(&unit, &RATING_CONDITIONS, 1.0 + share);
            let capacity = found.capacity / full.capacity - nist(CAPACITY_OVER, 26.7, 35.0, share);
            let of_power = power(&found) / power(&full) - nist(POWER_OVER, 26.7, 35.0, share);
            println!("{device:?} {share:+}: capacity {capacity:+.3}, power {of_power:+.3} beyond the published factor");
            assert!(capacity.abs() < 0.03 && of_power.abs() < 0.05);
        }
    }
}

/// NIST's factors of capacity elsewhere too, within the same limits; with a dry coil, which the tested units hardly had, the
/// rig loses less.
#[test]
fn capacity_follows_the_charge_elsewhere() {
    let map = map();
    let unit = Unit::designed(&map, &Rating::usual(THREE_TONS, Device::TaperedValve)).unwrap();
    let mut page = Page::default();
    for (indoor, wet_bulb, outdoor) in [
        (26.7, 19.4, 27.8),
        (26.7, 19.4, 35.0),
        (26.7, 19.4, 40.6),
        (23.9, 17.0, 35.0),
        (21.1, 15.6, 27.8),
        (21.1, 15.6, 35.0),
        (26.7, 14.0, 35.0),
    ] {
        let conditions = Conditions {
            outdoor_dry_bulb: outdoor + 273.15,
            return_dry_bulb: indoor + 273.15,
            return_wet_bulb: wet_bulb + 273.15,
            ambient_pressure: 101_325.0,
        };
        let full = charged(&unit, &conditions, 1.0).capacity;
        let beyond = [-0.1, -0.2, -0.3].map(|share| {
            charged(&unit, &conditions, 1.0 + share).capacity / full - nist(CAPACITY_UNDER, indoor, outdoor, share)
        });
        page.row(&format!("{indoor}/{wet_bulb} | {outdoor}"), &beyond, 3);
        assert!(beyond.iter().zip([0.03, 0.05, 0.06]).all(|(beyond, within)| beyond.abs() < within), "{beyond:?}");
    }
    page.stands();
}

/// A fixed orifice loses clearly below nine tenths of its charge, more than a valve does (NIST TN 1848 and its family).
#[test]
fn an_orifice_loses_more_than_a_valve() {
    let map = map();
    let loss = |device| {
        let unit = Unit::designed(&map, &Rating::usual(THREE_TONS, device)).unwrap();
        let full = charged(&unit, &RATING_CONDITIONS, 1.0).capacity;
        [0.9, 0.85, 0.8, 0.7].map(|share| 1.0 - charged(&unit, &RATING_CONDITIONS, share).capacity / full)
    };
    let valve = loss(Device::TaperedValve);
    for device in [Device::ShortTube, Device::FlashingOrifice] {
        let orifice = loss(device);
        println!("{device:?} loses {orifice:.3?}, a valve {valve:.3?} at 90, 85, 80, 70 % of charge");
        assert!(orifice[0] > 0.05 && orifice[1] > 0.09 && orifice[2] > 0.12 && orifice[3] > 0.2);
        assert!(orifice.iter().zip(valve).all(|(orifice, valve)| *orifice > valve));
    }
}

/// A thermostatic valve is fully open by about 80 % of charge (Li, Braun and Shen 2004 and measurements).
#[test]
fn a_valve_is_fully_open_near_four_fifths_of_charge() {
    let map = map();
    for device in [Device::TaperedValve, Device::LinearValve] {
        let unit = Unit::designed(&map, &Rating::usual(THREE_TONS, device)).unwrap();
        let lift = |share| charged(&unit, &RATING_CONDITIONS, share).valve_lift.unwrap();
        let (mut open, mut throttling) = (0.6, 1.0);
        assert!(lift(open) >= 1.0 && lift(throttling) < 1.0);
        for _ in 0..12 {
            let middle = 0.5 * (open + throttling);
            if lift(middle) >= 1.0 {
                open = middle;
            } else {
                throttling = middle;
            }
        }
        println!("{device:?} is fully open below {:.1} % of charge", 100.0 * open);
        assert!(open > 0.75 && open < 0.86, "{open}");
    }
}

/// A measured valve unit: 8.2 °F of subcooling at full charge, 2.7 °F at 80 %, 18.5 °F at 110.6 %.
#[test]
fn subcooling_has_two_slopes() {
    let map = map();
    let mut rating = Rating::usual(THREE_TONS, Device::TaperedValve);
    rating.subcooling = 8.2 * KELVIN_PER_FAHRENHEIT;
    let unit = Unit::designed(&map, &rating).unwrap();
    let mut known = [0.0; 3];
    for (place, (share, measured)) in known.iter_mut().zip([(1.0, 8.2), (0.8, 2.7), (1.106, 18.5)]) {
        let found = subcooling(&map, &charged(&unit, &RATING_CONDITIONS, share)) / KELVIN_PER_FAHRENHEIT;
        println!("{:.1} % of charge: {found:.1} °F of {measured}", 100.0 * share);
        *place = found - measured;
        assert!(place.abs() < 3.0, "{share}: {found}");
    }
    // KNOWN miss within the tolerance: below nine tenths of its charge the rig's liquid line carries flash gas, where the
    // measured unit still subcooled.
    assert!((known[1] + 2.7).abs() < 0.1 && known[2] < -1.5, "{known:?}");
    // No slope of the charge with the liquid in the condenser meets both: 6 kg for the whole condenser hold the subcooling
    // at 80 % of charge, but then it hardly rises above 100 %, and capacity hardly falls.
    rating.charge_slope = 6.0 / THREE_TONS;
    let held = Unit::designed(&map, &rating).unwrap();
    let [low, high] = [0.8, 1.106].map(|share| charged(&held, &RATING_CONDITIONS, share));
    let loss = 1.0 - low.capacity / charged(&held, &RATING_CONDITIONS, 1.0).capacity;
    let [low, high] = [low, high].map(|found| subcooling(&map, &found) / KELVIN_PER_FAHRENHEIT);
    println!("with 6 kg: 80 % {low:.1} °F, 110.6 % {high:.1} °F, loss of capacity at 80 % {loss:.3}");
    assert!((low - 2.7).abs() < 1.0 && high < 18.5 - 6.0 && loss < 0.112 - 0.05);
}
