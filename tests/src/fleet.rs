//! Random units, faults and weather for the checks of the rig.

use satline::refrigerant;
use satline::rig::fleet::{Member, member};
use satline::rig::{Air, Conditions, Draws, Faults, RefrigerantMap};

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
    pub refrigerant: usize,
    pub member: Member,
    pub conditions: Conditions,
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
