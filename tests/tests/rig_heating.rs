//! The rig as a heat pump: its balances, and how it follows the weather.

use satline::rig::{
    Accumulator, Air, Compressor, Device, EfficiencyClass, Faults, HEATING_RATING_CONDITIONS, Heating,
    HeatingConditions, LineSet, Rating, RefrigerantMap, Stop, Structure, Unit,
};
use satline_tests::fleet::{REFRIGERANTS, maps};

fn weather(outdoor_c: f64, relative_humidity: f64) -> HeatingConditions {
    let temperature = outdoor_c + 273.15;
    let saturated = Air::from_dew_point(temperature, temperature, 101_325.0);
    let air = Air { humidity_ratio: relative_humidity * saturated.humidity_ratio, ..saturated };
    HeatingConditions { outdoor_dry_bulb: temperature, outdoor_wet_bulb: air.wet_bulb(), ..HEATING_RATING_CONDITIONS }
}

fn heat_pump<'a>(map: &'a RefrigerantMap, device: Device, accumulator: f64) -> Unit<'a> {
    let line_set = LineSet { length: 9.0, lift: 2.0 };
    let rating = Rating::nominal(map, 3.0, EfficiencyClass::Standard, device, line_set).unwrap();
    let accumulator = Accumulator { volume: accumulator, ..Accumulator::default() };
    let rating = Rating { structure: Structure { accumulator, ..rating.structure }, ..rating };
    Unit::designed(map, &rating).unwrap().with_heating(5.0).unwrap()
}

/// Energy in and out, recomputed from what the answer shows; each must close to 1e-6.
fn assert_balanced(map: &RefrigerantMap, unit: &Unit, found: &Heating) {
    let duty = found.condenser.heat;
    let flow = found.mass_flow;
    let run = unit.parts.compressor.run(map, &found.compressor_inlet, found.discharge.pressure).unwrap();
    let (indoor, indoor_dry) = found.indoor_air;
    let (outdoor, outdoor_dry) = found.outdoor_air;
    let from_air = outdoor_dry * (outdoor.enthalpy() - found.evaporator.air.enthalpy());
    let to_air = indoor_dry * indoor.heat_capacity() * (found.condenser.air_temperature - indoor.temperature);
    let gas_in = found.discharge.enthalpy - found.vapor_port.enthalpy;
    let vapor_line = unit.parts.suction_line.conductance * (found.vapor_port.temperature - outdoor.temperature) / flow;
    let delivered = indoor_dry * indoor.heat_capacity() * (found.supply_dry_bulb - indoor.temperature);
    let misses = [
        run.mass_flow / flow - 1.0,
        run.power / found.compressor_power - 1.0,
        (from_air - flow * (found.compressor_inlet.enthalpy - found.metering_inlet.enthalpy)) / duty,
        (to_air - flow * (found.vapor_port.enthalpy - vapor_line - found.condenser.enthalpy)) / duty,
        (delivered - found.capacity) / duty,
        // The whole: outdoor air and work in, indoor air and the lines' losses out.
        (from_air + flow * (run.discharge_enthalpy - found.compressor_inlet.enthalpy)
            - to_air
            - flow * (gas_in + vapor_line))
            / duty,
        found.charge / unit.nameplate_charge - 1.0,
    ];
    assert!(misses.iter().all(|miss| miss.abs() < 1e-6), "{misses:?}");
}

#[test]
fn less_heat_at_a_lower_performance_the_colder_it_is() {
    for (map, name) in maps().iter().zip(REFRIGERANTS) {
        let unit = heat_pump(map, Device::TaperedValve, 0.0);
        let at = |outdoor_c: f64| unit.solve_heating(&weather(outdoor_c, 0.7), &Faults::default());
        let mut last: Option<Heating> = None;
        for outdoor_c in [18.0, 14.0, 10.0, 6.0, 2.0, -2.0, -6.0, -10.0] {
            let found = match at(outdoor_c) {
                Ok(found) => found,
                // Refrigerants of low pressure, or whose gas gets too hot, stop before −10 °C, with that reason.
                Err(error) => {
                    println!("{name} at {outdoor_c} °C: {error}");
                    assert!(outdoor_c < 0.0);
                    assert!(matches!(Stop::of(&error), Some(Stop::LowPressure | Stop::HotDischarge)), "{error}");
                    break;
                }
            };
            assert_balanced(map, &unit, &found);
            if let Some(warmer) = &last {
                assert!(found.capacity < warmer.capacity && found.cop < warmer.cop, "{name} {outdoor_c}");
                assert!(found.supply_dry_bulb < warmer.supply_dry_bulb, "{name} {outdoor_c}");
                assert!(found.compressor_inlet.pressure < warmer.compressor_inlet.pressure, "{name} {outdoor_c}");
            }
            last = Some(found);
        }
        // Common practice: a heat pump's heating at 47 °F is about its cooling, COP 3 to 4.
        let rated = unit.solve_heating(&HEATING_RATING_CONDITIONS, &Faults::default()).unwrap();
        let share = rated.capacity / (3.0 * satline::rig::WATTS_PER_TON);
        println!("{name}: heating by cooling {share:.2}, COP {:.2}", rated.cop);
        assert!(share > 0.8 && share < 1.25 && rated.cop > 2.8 && rated.cop < 4.5, "{name} {share} {}", rated.cop);
        assert!(rated.supply_dry_bulb > 305.0 && rated.supply_dry_bulb < 318.0, "{name}");
        assert!((rated.evaporator.superheat - 5.0).abs() < 0.01, "{name}");
    }
}

#[test]
fn frost_grows_on_a_cold_coil_in_moist_air_only() {
    let map = &maps()[0];
    let unit = heat_pump(map, Device::TaperedValve, 0.0);
    let frosts =
        |outdoor_c, humidity| unit.solve_heating(&weather(outdoor_c, humidity), &Faults::default()).unwrap().frosts;
    assert!(frosts(2.0, 0.95) && frosts(-5.0, 0.95));
    // Warm: the coil is above freezing. Dry: it is above the dew point.
    assert!(!frosts(15.0, 0.95) && !frosts(-5.0, 0.3));
}

#[test]
fn faults_cost_heat() {
    let map = &maps()[0];
    let unit = heat_pump(map, Device::TaperedValve, 0.0);
    let solve = |faults: Faults| unit.solve_heating(&HEATING_RATING_CONDITIONS, &faults).unwrap();
    let healthy = solve(Faults::default());
    let airless = solve(Faults { low_indoor_airflow: 0.3, ..Faults::default() });
    assert!(airless.discharge.pressure > 1.1 * healthy.discharge.pressure && airless.cop < healthy.cop);
    assert!(airless.supply_dry_bulb > healthy.supply_dry_bulb + 3.0);
    let dirty = solve(Faults { restricted_condenser_air: 0.4, ..Faults::default() });
    assert!(dirty.capacity < healthy.capacity && dirty.compressor_inlet.pressure < healthy.compressor_inlet.pressure);
    let leaking = solve(Faults { compressor_leakage: 0.2, ..Faults::default() });
    assert!(leaking.capacity < 0.95 * healthy.capacity);
    let empty = solve(Faults { undercharge: 0.35, ..Faults::default() });
    assert!(empty.capacity < healthy.capacity && empty.discharge.pressure < healthy.discharge.pressure);
}

/// An orifice floods the outdoor coil in the cold; an accumulator keeps the liquid back, and with it the charge.
#[test]
fn an_accumulator_keeps_liquid_from_the_compressor() {
    let map = &maps()[0];
    let (bare, kept) = (heat_pump(map, Device::ShortTube, 0.0), heat_pump(map, Device::ShortTube, 4e-3));
    let solve = |unit: &Unit, outdoor_c| unit.solve_heating(&weather(outdoor_c, 0.7), &Faults::default());
    let (wet, dry) = (solve(&bare, -8.0).unwrap(), solve(&kept, -8.0).unwrap());
    println!("suction quality at -8 °C: {:.3} and {:.3}", wet.compressor_inlet.quality, dry.compressor_inlet.quality);
    assert!(wet.compressor_inlet.quality < 0.9 && dry.compressor_inlet.quality > 0.93);
    assert_balanced(map, &kept, &dry);
}

#[test]
fn what_cannot_heat_says_so() {
    let map = &maps()[0];
    let rating = Rating::nominal(map, 3.0, EfficiencyClass::High, Device::LinearValve, LineSet::RATED).unwrap();
    let cooling = Unit::designed(map, &rating).unwrap();
    let error = cooling.solve_heating(&HEATING_RATING_CONDITIONS, &Faults::default()).unwrap_err();
    assert!(error.to_string().contains("only cools"), "{error}");
    let unit = cooling.with_heating(5.0).unwrap();
    // The device for heating changes nothing of cooling.
    let (before, after) = (
        cooling.solve(&satline::rig::RATING_CONDITIONS, &Faults::default()).unwrap(),
        unit.solve(&satline::rig::RATING_CONDITIONS, &Faults::default()).unwrap(),
    );
    assert_eq!(before, after);
    for conditions in [
        HeatingConditions { outdoor_dry_bulb: f64::NAN, ..HEATING_RATING_CONDITIONS },
        HeatingConditions { outdoor_wet_bulb: 285.0, ..HEATING_RATING_CONDITIONS },
        HeatingConditions { ambient_pressure: 0.0, ..HEATING_RATING_CONDITIONS },
    ] {
        assert!(matches!(unit.solve_heating(&conditions, &Faults::default()).unwrap_err().code(), 1 | 2));
    }
    // Nobody heats from such air.
    let hot = HeatingConditions { outdoor_dry_bulb: 330.0, outdoor_wet_bulb: 305.0, ..HEATING_RATING_CONDITIONS };
    let error = unit.solve_heating(&hot, &Faults::default()).unwrap_err();
    assert!(error.to_string().starts_with("outdoor dry bulb of 330 K is outside 243.15 to 303.15 K"), "{error}");
}
