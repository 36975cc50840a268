//! What faults do to the rig's readings, by sign, against published tables and facts of the trade.

use satline::quantity::{KELVIN_PER_FAHRENHEIT, kelvin_from_fahrenheit};
use satline::refrigerant;
use satline::rig::{Conditions, Device, Faults, RATING_CONDITIONS, Rating, RefrigerantMap, Steady, Unit};
use satline_tests::measured::Page;

const THREE_TONS: f64 = 10_550.0;
/// A mild day, 84 °F.
const MILD: Conditions = Conditions { outdoor_dry_bulb: 302.039, ..RATING_CONDITIONS };

fn map() -> RefrigerantMap {
    RefrigerantMap::of("R-410A", refrigerant::find("R-410A").unwrap().model).unwrap()
}

/// Evaporating temperature, superheat at the vapour port, condensing temperature, subcooling at the liquid port, discharge
/// temperature, rise of the outdoor air and temperature split, K.
fn shown(map: &RefrigerantMap, found: &Steady, conditions: &Conditions) -> [f64; 7] {
    let low = map.saturation(found.vapor_port.pressure).unwrap();
    let liquid = map.saturation(found.liquid_port.pressure).unwrap();
    [
        low.dew_temperature,
        found.vapor_port.temperature - low.dew_temperature,
        map.saturation(found.discharge.pressure).unwrap().dew_temperature,
        liquid.bubble_temperature - found.liquid_port.temperature,
        found.discharge.temperature,
        found.condenser.air_temperature - conditions.outdoor_dry_bulb,
        conditions.return_dry_bulb - found.supply_dry_bulb,
    ]
}

const COLUMNS: [&str; 7] = ["Tevap", "SH", "Tcond", "SC", "Tdis", "outdoor air rise", "split"];
/// Columns of the refrigerant's side.
const REFRIGERANT_SIDE: usize = 5;

/// The published rows with sound signs (Rossi and Braun, a rooftop unit with a fixed orifice, as tabulated by Purdue): +1,
/// −1, or 0 for the discharge under compressor leakage, whose sign depends on the leak's path.
fn published(size: usize) -> [(&'static str, Faults, [i8; 7]); 5] {
    let none = Faults::default();
    let of = |severities: [f64; 3]| severities[size];
    [
        ("undercharge", Faults { undercharge: of([0.05, 0.15, 0.3]), ..none }, [-1, 1, -1, -1, 1, -1, -1]),
        (
            "compressor leakage",
            Faults { compressor_leakage: of([0.05, 0.15, 0.3]), ..none },
            [1, -1, -1, -1, 0, -1, -1],
        ),
        (
            "liquid-line restriction",
            Faults { liquid_line_restriction: of([0.05, 0.15, 0.3]), ..none },
            [-1, 1, -1, 1, 1, -1, -1],
        ),
        (
            "restricted condenser air",
            Faults { restricted_condenser_air: of([0.15, 0.35, 0.5]), ..none },
            [1, -1, 1, -1, 1, 1, -1],
        ),
        (
            "low indoor airflow",
            Faults { low_indoor_airflow: of([0.1, 0.25, 0.5]), ..none },
            [-1, -1, -1, -1, -1, -1, 1],
        ),
    ]
}

/// At most one sign of the refrigerant's side may be missed; it is the known one: under restricted condenser air this
/// rig's subcooling rises a little where the tested unit's fell. Both have been measured elsewhere, on different units.
#[test]
fn the_orifice_table() {
    let map = map();
    for (device, conditions) in [
        (Device::ShortTube, RATING_CONDITIONS),
        (Device::ShortTube, MILD),
        (Device::FlashingOrifice, RATING_CONDITIONS),
    ] {
        let unit = Unit::designed(&map, &Rating::usual(THREE_TONS, device)).unwrap();
        let healthy = shown(&map, &unit.solve(&conditions, &Faults::default()).unwrap(), &conditions);
        for size in 0..3 {
            let mut missed = Vec::new();
            let mut page = Page::default();
            for (fault, faults, signs) in published(size) {
                let found = shown(&map, &unit.solve(&conditions, &faults).unwrap(), &conditions);
                let changes: [f64; 7] = std::array::from_fn(|place| found[place] - healthy[place]);
                page.row(fault, &changes, 1);
                for ((change, sign), column) in changes.iter().zip(signs).zip(COLUMNS) {
                    if f64::from(sign) * change < 0.0 {
                        missed.push((fault, column));
                    }
                }
            }
            if device == Device::ShortTube && conditions == RATING_CONDITIONS && size == 1 {
                page.stands();
            }
            let refrigerant_side =
                missed.iter().filter(|(_, column)| COLUMNS[..REFRIGERANT_SIDE].contains(column)).count();
            assert!(refrigerant_side <= 1);
            // KNOWN misses; of the split, by 0.01 K where a seventh of the air is missing on a mild day.
            let mut known = vec![("restricted condenser air", "SC")];
            if conditions == MILD && size == 0 {
                known.push(("restricted condenser air", "split"));
            }
            assert_eq!(missed, known);
        }
    }
}

/// Low airflow lowers suction pressure and superheat of an orifice system and raises the split (common practice).
#[test]
fn low_airflow_of_an_orifice() {
    let map = map();
    let unit = Unit::designed(&map, &Rating::usual(THREE_TONS, Device::ShortTube)).unwrap();
    let mut before = shown(&map, &unit.solve(&MILD, &Faults::default()).unwrap(), &MILD);
    for low_indoor_airflow in [0.1, 0.2, 0.3, 0.4] {
        let found = unit.solve(&MILD, &Faults { low_indoor_airflow, ..Faults::default() }).unwrap();
        let found = shown(&map, &found, &MILD);
        assert!(found[0] < before[0] - 0.2 && found[1] < before[1] - 1.0 && found[6] > before[6] + 0.6, "{found:?}");
        before = found;
    }
}

/// Much overcharge floods an orifice system's suction line, also into the compressor; a valve holds it back (common
/// practice).
#[test]
fn overcharge_floods_an_orifice_system() {
    let map = map();
    let faults = Faults { overcharge: 0.25, ..Faults::default() };
    for device in [Device::ShortTube, Device::FlashingOrifice] {
        let unit = Unit::designed(&map, &Rating::usual(THREE_TONS, device)).unwrap();
        let found = unit.solve(&RATING_CONDITIONS, &faults).unwrap();
        println!("{device:?}: quality at the port {:.3}", found.vapor_port.quality);
        assert!(found.vapor_port.quality < 0.99 && found.compressor_inlet.quality < 1.0);
    }
    let unit = Unit::designed(&map, &Rating::usual(THREE_TONS, Device::TaperedValve)).unwrap();
    assert!(unit.solve(&RATING_CONDITIONS, &faults).unwrap().vapor_port.quality > 1.0);
}

/// An orifice unit with generous airflow, 450 cfm a ton, on a day of 97 °F, the return air at 80 °F with a wet bulb of
/// 67 °F, short of charge by more than a little: high superheat, almost no subcooling, low suction pressure, and its split
/// rises by about 6 °F when the charge is made right (common practice, ±3 °F).
#[test]
fn charging_an_orifice_unit_on_a_hot_day() {
    let map = map();
    let mut rating = Rating::usual(THREE_TONS, Device::ShortTube);
    rating.indoor_airflow_by_capacity *= 450.0 / 400.0;
    let unit = Unit::designed(&map, &rating).unwrap();
    let conditions = Conditions { outdoor_dry_bulb: kelvin_from_fahrenheit(97.0), ..RATING_CONDITIONS };
    let right = unit.solve(&conditions, &Faults::default()).unwrap();
    for undercharge in [0.2, 0.25, 0.3] {
        let short = unit.solve(&conditions, &Faults { undercharge, ..Faults::default() }).unwrap();
        let (before, after) = (shown(&map, &short, &conditions), shown(&map, &right, &conditions));
        let rise = (after[6] - before[6]) / KELVIN_PER_FAHRENHEIT;
        println!(
            "{:.0} % short: superheat {:.1} °F, subcooling {:.1} °F, the split rises by {rise:.1} °F to {:.1} °F",
            100.0 * undercharge,
            before[1] / KELVIN_PER_FAHRENHEIT,
            before[3] / KELVIN_PER_FAHRENHEIT,
            after[6] / KELVIN_PER_FAHRENHEIT
        );
        assert!(before[1] > after[1] + 10.0 && before[3] < 0.5 && before[0] < after[0] - 3.0);
        assert!((rise - 6.0).abs() < 3.0);
    }
}

/// Slopes of measured valve units (NIST): superheat, subcooling, discharge temperature, COP, compressor power, evaporating
/// and condensing pressure. The rig meets 23 of 28; those it misses are held here.
#[test]
fn the_valve_slopes() {
    let map = map();
    let unit = Unit::designed(&map, &Rating::usual(THREE_TONS, Device::TaperedValve)).unwrap();
    let none = Faults::default();
    let seven = |found: &Steady| {
        let [_, superheat, _, subcooling, discharge, ..] = shown(&map, found, &RATING_CONDITIONS);
        let power = found.compressor_power;
        [
            superheat,
            subcooling,
            discharge,
            found.capacity / power,
            power,
            found.vapor_port.pressure,
            found.discharge.pressure,
        ]
    };
    let columns = ["SH", "SC", "Tdis", "COP", "W", "Pe", "Pc"];
    let healthy = seven(&unit.solve(&RATING_CONDITIONS, &none).unwrap());
    let mut missed = Vec::new();
    for (fault, faults, signs) in [
        ("undercharge", Faults { undercharge: 0.3, ..none }, [1, -1, 1, -1, 1, -1, -1]),
        ("overcharge", Faults { overcharge: 0.2, ..none }, [-1, 1, 1, 1, 1, -1, 1]),
        ("restricted condenser air", Faults { restricted_condenser_air: 0.35, ..none }, [1, 1, 1, -1, 1, 1, 1]),
        ("low indoor airflow", Faults { low_indoor_airflow: 0.35, ..none }, [-1; 7]),
    ] {
        let found = seven(&unit.solve(&RATING_CONDITIONS, &faults).unwrap());
        for ((now, before), (sign, column)) in found.iter().zip(healthy).zip(signs.iter().zip(columns)) {
            if f64::from(*sign) * (now - before) <= 0.0 {
                missed.push((fault, column));
            }
        }
    }
    println!("missed: {missed:?}");
    // KNOWN misses.
    let known = [
        ("undercharge", "W"),
        ("overcharge", "COP"),
        ("restricted condenser air", "SH"),
        ("low indoor airflow", "SC"),
        ("low indoor airflow", "Tdis"),
    ];
    assert_eq!(missed, known);
}
