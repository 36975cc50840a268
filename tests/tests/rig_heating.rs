//! The rig as a heat pump: its balances, and how it follows the weather.

use satline::rig::fleet::member;
use satline::rig::{
    Air, Compressor, Device, EfficiencyClass, Faults, HEATING_RATING_CONDITIONS, HeatingConditions, LineSet, Rating,
    Stop, Unit,
};
use satline_tests::fleet::{REFRIGERANTS, maps};

fn weather(outdoor_c: f64, humidity: f64) -> HeatingConditions {
    let temperature = outdoor_c + 273.15;
    let saturated = Air::from_dew_point(temperature, temperature, 101_325.0);
    let air = Air { humidity_ratio: humidity * saturated.humidity_ratio, ..saturated };
    HeatingConditions { outdoor_dry_bulb: temperature, outdoor_wet_bulb: air.wet_bulb(), ..HEATING_RATING_CONDITIONS }
}

#[test]
fn it_follows_the_weather() {
    let maps = maps();
    for (map, name) in maps.iter().zip(REFRIGERANTS).take(5) {
        for device in [Device::TaperedValve, Device::ShortTube] {
            let rating = Rating::nominal(map, 3.0, EfficiencyClass::Standard, device, LineSet::RATED).unwrap();
            let cooling = Unit::designed(map, &rating).unwrap();
            let unit = cooling.with_heating(5.0).unwrap_or_else(|e| panic!("{name} {device:?} {e}"));
            for outdoor in [15.0, 10.0, 5.0, 0.0, -5.0, -10.0, -15.0, -20.0] {
                match unit.solve_heating(&weather(outdoor, 0.7), &Faults::default()) {
                    Ok(f) => println!(
                        "{name} {device:?} {outdoor} Q {:.0} cop {:.2} supply {:.1} SH {:.1} shares {:?} Tdis {:.1} frost {} high {:.0} miss {:.1e}",
                        f.capacity,
                        f.cop,
                        f.supply_dry_bulb - 273.15,
                        f.evaporator.superheat,
                        f.condenser.shares,
                        f.discharge.temperature - 273.15,
                        f.frosts,
                        f.discharge.pressure / 1e3,
                        f.miss
                    ),
                    Err(e) => println!("{name} {device:?} {outdoor} {e}"),
                }
            }
        }
    }
}
