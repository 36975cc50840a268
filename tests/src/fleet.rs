//! Random units, faults and weather for the checks of the rig.

use satline::refrigerant;
use satline::rig::fleet::{Member, member};
use satline::rig::{
    Air, AnyMetering, Conditions, Device, Draws, EfficiencyClass, Faults, RATING_CONDITIONS, RefrigerantMap, Steady,
    Unit, WATTS_PER_TON,
};

/// Refrigerants of residential units, past and present.
pub const REFRIGERANTS: [&str; 10] =
    ["R-410A", "R-22", "R-32", "R-454B", "R-407C", "R-134a", "R-290", "R-452B", "R-421A", "R-1234yf"];

/// The maps of [`REFRIGERANTS`].
pub fn maps() -> Vec<RefrigerantMap> {
    let map = |name: &&'static str| RefrigerantMap::of(name, refrigerant::find(name).unwrap().model).unwrap();
    REFRIGERANTS.iter().map(map).collect()
}

/// The stated box of faults: highest severities.
pub const WORST: Faults = Faults {
    undercharge: 0.4,
    overcharge: 0.4,
    low_indoor_airflow: 0.6,
    restricted_condenser_air: 0.6,
    liquid_line_restriction: 0.6,
    compressor_leakage: 0.4,
    non_condensables: 0.6,
    metering_overfeeding: 0.8,
    metering_underfeeding: 0.5,
    suction_line_heat_gain: 5.0,
};

/// Sets one fault by its place to a share of [`WORST`].
fn set(faults: &mut Faults, place: usize, share: f64) {
    let (field, worst) = match place {
        0 => (&mut faults.undercharge, WORST.undercharge),
        1 => (&mut faults.overcharge, WORST.overcharge),
        2 => (&mut faults.low_indoor_airflow, WORST.low_indoor_airflow),
        3 => (&mut faults.restricted_condenser_air, WORST.restricted_condenser_air),
        4 => (&mut faults.liquid_line_restriction, WORST.liquid_line_restriction),
        5 => (&mut faults.compressor_leakage, WORST.compressor_leakage),
        6 => (&mut faults.non_condensables, WORST.non_condensables),
        7 => (&mut faults.metering_overfeeding, WORST.metering_overfeeding),
        8 => (&mut faults.metering_underfeeding, WORST.metering_underfeeding),
        _ => (&mut faults.suction_line_heat_gain, WORST.suction_line_heat_gain),
    };
    *field = share * worst;
}

/// One case of the box.
pub struct Case {
    /// Place in [`REFRIGERANTS`].
    pub refrigerant: usize,
    /// The unit.
    pub member: Member,
    /// The weather.
    pub conditions: Conditions,
    /// What is wrong.
    pub faults: Faults,
}

/// The case of a number: a member of the fleet of `seed`, weather from the box (outdoor 10 to 52 °C, return 15 to 32 °C
/// of 20 to 95 % relative humidity, 70 to 104 kPa), and no, one or two faults.
pub fn case(seed: u64, number: u64) -> Case {
    let mut draws = Draws::of(seed ^ 0xface, number);
    let mut faults = Faults::default();
    let first = draws.uniform(0.0, 10.0) as usize;
    let second = draws.uniform(0.0, 10.0) as usize;
    let kind = draws.uniform(0.0, 1.0);
    if kind > 0.1 {
        set(&mut faults, first, draws.uniform(0.0, 1.0));
    }
    if kind > 0.5 {
        set(&mut faults, second, draws.uniform(0.0, 1.0));
    }
    let return_dry_bulb = 273.15 + draws.uniform(15.0, 32.0);
    let ambient_pressure = draws.uniform(70e3, 104e3);
    let saturated = Air::from_dew_point(return_dry_bulb, return_dry_bulb, ambient_pressure);
    let humidity_ratio = draws.uniform(0.2, 0.95) * saturated.humidity_ratio;
    let air = Air { temperature: return_dry_bulb, humidity_ratio, pressure: ambient_pressure };
    let conditions = Conditions {
        outdoor_dry_bulb: 273.15 + draws.uniform(10.0, 52.0),
        return_dry_bulb,
        return_wet_bulb: air.wet_bulb(),
        ambient_pressure,
    };
    let refrigerant = draws.uniform(0.0, REFRIGERANTS.len() as f64) as usize;
    Case { refrigerant, member: member(seed, number), conditions, faults }
}

/// A unit of the fleet at the rating point, as numbers of the trade.
#[derive(Debug, Clone, Copy)]
pub struct Seen {
    /// Whether it has a fixed orifice.
    pub fixed: bool,
    /// Its class.
    pub class: EfficiencyClass,
    /// Airflow.
    pub cfm_by_ton: f64,
    /// °F.
    pub condensing_over_ambient: f64,
    /// Return air over evaporating, °F.
    pub coil_difference: f64,
    /// At the port, °F.
    pub superheat: f64,
    /// At the port, °F.
    pub subcooling: f64,
    /// °F.
    pub split: f64,
    /// Nameplate charge.
    pub pounds_by_ton: f64,
    /// Btu/(W·h), with both fans.
    pub efficiency: f64,
    /// Share of the charge too much.
    pub charge_error: f64,
    /// Capacity over nominal.
    pub capacity: f64,
    /// Factors on condenser, evaporator, displacement and blower.
    pub errors: [f64; 4],
}

const FAHRENHEIT: f64 = 1.8;

/// Superheat and subcooling at the outdoor unit's ports, K.
pub fn charge_signs(map: &RefrigerantMap, found: &Steady) -> (f64, f64) {
    let low = map.saturation(found.vapor_port.pressure).unwrap();
    let high = map.saturation(found.liquid_port.pressure - found.non_condensable_pressure).unwrap();
    (found.vapor_port.temperature - low.dew_temperature, high.bubble_temperature - found.liquid_port.temperature)
}

fn seen(member: &Member, unit: &Unit, found: &Steady) -> Seen {
    let map = unit.map;
    let (superheat, subcooling) = charge_signs(map, found);
    let bubble = map.saturation(found.liquid_port.pressure).unwrap().bubble_temperature;
    let dew = map.saturation(found.coil_outlet_pressure).unwrap().dew_temperature;
    let air = RATING_CONDITIONS;
    let net = found.capacity - unit.parts.indoor_fan_power;
    let cubic_feet_a_minute = found.indoor_airflow / 0.028_316_846_592 * 60.0;
    Seen {
        fixed: matches!(member.device, Device::ShortTube | Device::FlashingOrifice),
        class: member.class,
        cfm_by_ton: cubic_feet_a_minute / member.tons,
        condensing_over_ambient: FAHRENHEIT * (bubble - air.outdoor_dry_bulb),
        coil_difference: FAHRENHEIT * (air.return_dry_bulb - dew),
        superheat: FAHRENHEIT * superheat,
        subcooling: FAHRENHEIT * subcooling,
        split: FAHRENHEIT * (air.return_dry_bulb - found.supply_dry_bulb),
        pounds_by_ton: unit.nameplate_charge / 0.453_592_37 / member.tons,
        efficiency: net / (found.compressor_power + found.fan_power) * 3.412_141_633,
        charge_error: member.installation.charge_error,
        capacity: found.capacity / (member.tons * WATTS_PER_TON),
        errors: [member.errors.condenser, member.errors.evaporator, member.errors.displacement, member.errors.blower],
    }
}

/// The fleet of a seed at the rating point, charged as its installers left it; R-410A, R-22, R-32, R-454B and R-407C.
pub fn sample(seed: u64, count: u64) -> Vec<Seen> {
    let maps = maps();
    (0..count)
        .filter_map(|number| {
            let member = member(seed, number);
            let unit = member.unit(&maps[number as usize % 5]).ok()?;
            let found = unit.solve(&RATING_CONDITIONS, &member.installation.faults()).ok()?;
            Some(seen(&member, &unit, &found))
        })
        .collect()
}

/// A line of a printed table: what, what is usual, and numbers.
pub type Line = (String, &'static str, Vec<f64>);

/// Prints a table.
pub fn print(title: &str, lines: &[Line]) {
    println!("{title}");
    for (what, usual, numbers) in lines {
        let numbers: String = numbers.iter().map(|number| format!("{number:9.2}")).collect();
        println!("  {what:<44}{numbers}   {usual}");
    }
    println!();
}

/// Value below which a share of the values lies.
pub fn quantile(values: impl Iterator<Item = f64>, share: f64) -> f64 {
    let mut values: Vec<f64> = values.collect();
    values.sort_by(f64::total_cmp);
    values[((values.len() - 1) as f64 * share).round() as usize]
}

fn spread(what: impl Into<String>, usual: &'static str, values: &[f64]) -> Line {
    let at = |share| quantile(values.iter().copied(), share);
    (what.into(), usual, vec![at(0.05), at(0.5), at(0.95)])
}

/// Marginals beside common practice.
pub fn marginals(sample: &[Seen]) -> Vec<Line> {
    let all = |of: fn(&Seen) -> f64| sample.iter().map(of).collect::<Vec<_>>();
    let class = |class: EfficiencyClass, of: fn(&Seen) -> f64| {
        sample.iter().filter(|seen| seen.class == class).map(of).collect::<Vec<_>>()
    };
    let (basic, standard, high) = (EfficiencyClass::Basic, EfficiencyClass::Standard, EfficiencyClass::High);
    vec![
        spread("airflow, cfm/ton", "400, 350 to 450", &all(|s| s.cfm_by_ton)),
        spread("condensing over ambient, basic, °F", "25 to 30", &class(basic, |s| s.condensing_over_ambient)),
        spread("condensing over ambient, standard, °F", "20", &class(standard, |s| s.condensing_over_ambient)),
        spread("condensing over ambient, high, °F", "15", &class(high, |s| s.condensing_over_ambient)),
        spread("return air over evaporating, °F", "35 ± 5", &all(|s| s.coil_difference)),
        spread("subcooling at the port, °F", "8 to 12 at the right charge", &all(|s| s.subcooling)),
        spread("superheat at the port, °F", "8 to 20 at the rating point", &all(|s| s.superheat)),
        spread("temperature split, °F", "16 to 22", &all(|s| s.split)),
        spread("charge, lb/ton", "2 to 4", &all(|s| s.pounds_by_ton)),
        spread("efficiency, basic, Btu/Wh", "EER 8 to 10", &class(basic, |s| s.efficiency)),
        spread("efficiency, standard, Btu/Wh", "EER 10 to 12", &class(standard, |s| s.efficiency)),
        spread("efficiency, high, Btu/Wh", "EER 12 to 14", &class(high, |s| s.efficiency)),
        spread("capacity over nominal", "0.9 to 1.1", &all(|s| s.capacity)),
    ]
}

fn correlation(sample: &[Seen], x: fn(&Seen) -> f64, y: fn(&Seen) -> f64) -> f64 {
    let count = sample.len() as f64;
    let mean = |of: fn(&Seen) -> f64| sample.iter().map(of).sum::<f64>() / count;
    let (mx, my) = (mean(x), mean(y));
    let sum = |f: &dyn Fn(&Seen) -> f64| sample.iter().map(f).sum::<f64>();
    let both = sum(&|s| (x(s) - mx) * (y(s) - my));
    both / (sum(&|s| (x(s) - mx) * (x(s) - mx)) * sum(&|s| (y(s) - my) * (y(s) - my))).sqrt()
}

/// Correlations of the charge error and of unit errors with what an instrument shows.
pub fn correlations(sample: &[Seen]) -> Vec<Line> {
    let fixed: Vec<Seen> = sample.iter().filter(|s| s.fixed).copied().collect();
    let valve: Vec<Seen> = sample.iter().filter(|s| !s.fixed).copied().collect();
    let standard: Vec<Seen> = sample.iter().filter(|s| s.class == EfficiencyClass::Standard).copied().collect();
    let line = |what: &str, usual, value| (what.to_string(), usual, vec![value]);
    vec![
        line("charge and subcooling, orifice", "positive", correlation(&fixed, |s| s.charge_error, |s| s.subcooling)),
        line(
            "charge and subcooling, valve",
            "strongly positive",
            correlation(&valve, |s| s.charge_error, |s| s.subcooling),
        ),
        line(
            "charge and superheat, orifice",
            "strongly negative",
            correlation(&fixed, |s| s.charge_error, |s| s.superheat),
        ),
        line("charge and superheat, valve", "near nothing", correlation(&valve, |s| s.charge_error, |s| s.superheat)),
        line("airflow and split", "negative", correlation(sample, |s| s.errors[3], |s| s.split)),
        line(
            "condenser and condensing over ambient, standard",
            "negative",
            correlation(&standard, |s| s.errors[0], |s| s.condensing_over_ambient),
        ),
        line("displacement and capacity", "positive", correlation(sample, |s| s.errors[2], |s| s.capacity)),
    ]
}

/// Members of a fleet of R-410A with one kind of device.
fn of_kind(map: &RefrigerantMap, fixed: bool, seed: u64, count: u64) -> Vec<Unit<'_>> {
    let units = (0..count).filter_map(|number| member(seed, number).unit(map).ok());
    units.filter(|unit| matches!(unit.parts.metering, AnyMetering::Valve(_)) != fixed).collect()
}

fn charged(share: f64) -> Faults {
    Faults { undercharge: f64::max(1.0 - share, 0.0), overcharge: f64::max(share - 1.0, 0.0), ..Faults::default() }
}

/// Medians of superheat and subcooling, °F, of R-410A units at 80 to 120 % of their charge.
pub fn charge_table(seed: u64, count: u64) -> Vec<Line> {
    let map = maps().swap_remove(0);
    let mut lines = Vec::new();
    for (fixed, name) in [(true, "orifice"), (false, "valve")] {
        for share in [0.8, 0.9, 1.0, 1.1, 1.2] {
            let signs: Vec<(f64, f64)> = of_kind(&map, fixed, seed, count)
                .iter()
                .filter_map(|unit| unit.solve(&RATING_CONDITIONS, &charged(share)).ok())
                .map(|found| charge_signs(&map, &found))
                .collect();
            let middle = |of: fn(&(f64, f64)) -> f64| FAHRENHEIT * quantile(signs.iter().map(of), 0.5);
            let usual = "superheat, subcooling, °F";
            lines.push((
                format!("{name} at {:.0} % charge", 100.0 * share),
                usual,
                vec![middle(|s| s.0), middle(|s| s.1)],
            ));
        }
    }
    lines
}

/// Published factors of capacity and power by charge (NIST Technical Note 1848): 1 + (a + b·Tid + c·Tod + d·f)·f with
/// indoor and outdoor air in °C and f the share of charge too much.
pub fn published(f: f64, indoor_c: f64, outdoor_c: f64) -> (f64, f64) {
    let (capacity, power) = if f < 0.0 {
        ([-0.946, 0.0493, -0.001_18, -1.15], [-0.313, 0.0115, 0.002_66, -0.116])
    } else {
        ([-0.163, 0.0114, -0.000_21, -0.140], [0.219, -0.005_01, 0.000_989, 0.284])
    };
    let factor = |[a, b, c, d]: [f64; 4]| 1.0 + (a + b * indoor_c + c * outdoor_c + d * f) * f;
    (factor(capacity), factor(power))
}

/// Capacity and compressor power of R-410A valve units at a wrong charge over those at the right one: 5 %, median and
/// 95 %, and the published factor, at 26.7 °C indoors and 35 °C outdoors.
pub fn factors(seed: u64, count: u64) -> Vec<Line> {
    let map = maps().swap_remove(0);
    let units = of_kind(&map, false, seed, count);
    let mut lines = Vec::new();
    for f in [-0.3, -0.2, -0.1, 0.1, 0.2, 0.3] {
        let ratios: Vec<(f64, f64)> = units
            .iter()
            .filter_map(|unit| {
                let right = unit.solve(&RATING_CONDITIONS, &Faults::default()).ok()?;
                let wrong = unit.solve(&RATING_CONDITIONS, &charged(1.0 + f)).ok()?;
                Some((wrong.capacity / right.capacity, wrong.compressor_power / right.compressor_power))
            })
            .collect();
        let (capacity, power) = published(f, 26.7, 35.0);
        for (what, of, published) in
            [("capacity", (|r| r.0) as fn(&(f64, f64)) -> f64, capacity), ("power", |r| r.1, power)]
        {
            let at = |share| quantile(ratios.iter().map(of), share);
            let name = format!("{what} at {:+.0} % charge", 100.0 * f);
            lines.push((name, "5 %, median, 95 %; published", vec![at(0.05), at(0.5), at(0.95), published]));
        }
    }
    lines
}
