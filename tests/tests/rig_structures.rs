//! The rig's choices between models: what each must do at its limits, and that the default changes nothing.

use satline::rig::{
    Accumulator, Air, Circuits, Condenser, CondenserModel, Conditions, Device, EfficiencyClass, Evaporator, Faults,
    LineSet, RATING_CONDITIONS, Rating, RefrigerantMap, ReturnDuct, Steady, Stop, Streams, Structure, Unit,
    VoidFraction,
};
use satline_tests::fleet::{REFRIGERANTS, maps};

fn unit<'a>(map: &'a RefrigerantMap, device: Device, structure: Structure) -> Unit<'a> {
    let rating = Rating::nominal(map, 3.0, EfficiencyClass::Standard, device, LineSet::RATED).unwrap();
    Unit::designed(map, &Rating { structure, ..rating }).unwrap()
}

fn solve(unit: &Unit, faults: Faults) -> Steady {
    unit.solve(&RATING_CONDITIONS, &faults).unwrap()
}

fn r410a() -> RefrigerantMap {
    maps().swap_remove(0)
}

/// Of saturated vapour that does not condense wholly both models are one zone of one temperature: the same.
#[test]
fn lumped_is_moving_boundary_where_both_phases_fill_the_coil() {
    let map = r410a();
    let unit = unit(&map, Device::ShortTube, Structure::default());
    let pressure = map.bubble_pressure(319.0).unwrap();
    let saturation = map.saturation(pressure).unwrap();
    let latent = saturation.vapor_enthalpy - saturation.liquid_enthalpy;
    let air = Air::from_dew_point(308.15, 283.15, 101_325.0);
    let mut streams = Streams {
        pressure,
        enthalpy: saturation.vapor_enthalpy - 0.02 * latent,
        mass_flow: 1.6 * unit.parts.design_flow,
        air,
        dry_air: unit.parts.condenser.design_air,
        void: VoidFraction::Zivi,
        metal: 0.0,
    };
    let both = |streams: &Streams| {
        [CondenserModel::MovingBoundary, CondenserModel::Lumped]
            .map(|model| model.condense(&unit.parts.condenser, &map, streams).unwrap())
    };
    let [moving, lumped] = both(&streams);
    assert_eq!(moving.shares, [0.0, 1.0, 0.0]);
    assert!((lumped.heat / moving.heat - 1.0).abs() < 1e-12, "{moving:?} {lumped:?}");
    assert!((lumped.charge / moving.charge - 1.0).abs() < 1e-12);
    // And the difference goes to nothing with the gas's superheat, not at a step.
    let mut last = f64::INFINITY;
    for superheat in [0.2, 0.1, 0.05, 0.01, 0.001] {
        streams.enthalpy = saturation.vapor_enthalpy + superheat * latent;
        let [moving, lumped] = both(&streams);
        let apart = (lumped.heat / moving.heat - 1.0).abs();
        assert!(apart < last && apart < 0.6 * superheat + 1e-9, "{superheat} {apart}");
        last = apart;
    }
}

/// Both models, each in a unit designed with it, agree at the rating point and differ away from it: another structure.
#[test]
fn the_lumped_condenser_is_another_structure() {
    let map = r410a();
    let moving = unit(&map, Device::TaperedValve, Structure::default());
    let structure = Structure { condenser: CondenserModel::Lumped, ..Structure::default() };
    let lumped = unit(&map, Device::TaperedValve, structure);
    let (a, b) = (solve(&moving, Faults::default()), solve(&lumped, Faults::default()));
    assert!((a.capacity / b.capacity - 1.0).abs() < 1e-4);
    assert!((a.liquid_port.temperature - b.liquid_port.temperature).abs() < 0.05);
    let over = Faults { overcharge: 0.2, ..Faults::default() };
    let (a, b) = (solve(&moving, over), solve(&lumped, over));
    assert!((a.discharge.pressure / b.discharge.pressure - 1.0).abs() > 2e-3);
}

#[test]
fn an_accumulator_of_no_volume_changes_no_bit() {
    let map = r410a();
    for device in [Device::ShortTube, Device::TaperedValve] {
        let bare = unit(&map, device, Structure::default());
        let odd = Accumulator { volume: 0.0, bleed: 0.5 };
        let none = unit(&map, device, Structure { accumulator: odd, ..Structure::default() });
        assert_eq!(bare.nameplate_charge.to_bits(), none.nameplate_charge.to_bits());
        for overcharge in [0.0, 0.3] {
            let faults = Faults { overcharge, ..Faults::default() };
            assert_eq!(solve(&bare, faults), solve(&none, faults));
        }
    }
}

/// An overcharged orifice unit floods; an accumulator holds part of what is too much.
#[test]
fn an_accumulator_holds_what_returns() {
    let map = r410a();
    let bare = unit(&map, Device::ShortTube, Structure::default());
    let accumulator = Accumulator { volume: 3e-3, ..Accumulator::default() };
    let kept = unit(&map, Device::ShortTube, Structure { accumulator, ..Structure::default() });
    let faults = Faults { overcharge: 0.3, ..Faults::default() };
    let (wet, dry) = (solve(&bare, faults), solve(&kept, faults));
    assert!(wet.compressor_inlet.quality < dry.compressor_inlet.quality);
    assert!(dry.condenser.shares[2] < wet.condenser.shares[2]);
    // Dry vapour only at the rating point: the nameplate charge grows by what gas fills the vessel, no more.
    let more = kept.nameplate_charge / bare.nameplate_charge - 1.0;
    assert!(more > 0.0 && more < 0.05, "{more}");
}

#[test]
fn uneven_air_costs_capacity_and_superheat() {
    let map = r410a();
    let even = unit(&map, Device::ShortTube, Structure::default());
    let streams = Streams {
        pressure: map.dew_pressure(281.0).unwrap(),
        enthalpy: map.saturation(map.bubble_pressure(313.0).unwrap()).unwrap().liquid_enthalpy,
        mass_flow: even.parts.design_flow,
        air: Air::from_wet_bulb(299.8, 292.6, 101_325.0),
        dry_air: even.parts.evaporator.design_air,
        void: VoidFraction::Zivi,
        metal: 0.0,
    };
    let coil = &even.parts.evaporator;
    let at = |imbalance| Circuits { imbalance }.evaporate(coil, &map, &streams).unwrap();
    let whole = at(0.0);
    // Two equal circuits are the whole coil.
    let halves = at(1e-9);
    assert!((halves.heat / whole.heat - 1.0).abs() < 1e-6 && (halves.charge / whole.charge - 1.0).abs() < 1e-6);
    assert!((halves.air.temperature - whole.air.temperature).abs() < 1e-6);
    let mut last = whole;
    for imbalance in [0.2, 0.4, 0.6, 0.8] {
        let found = at(imbalance);
        assert!(found.heat < last.heat && found.charge > last.charge, "{imbalance}");
        last = found;
    }
    let uneven = unit(&map, Device::ShortTube, Structure { air_imbalance: 0.6, ..Structure::default() });
    assert!(solve(&uneven, Faults::default()).capacity < 0.99 * solve(&even, Faults::default()).capacity);
}

#[test]
fn a_leaky_return_in_a_hot_attic_warms_what_the_coil_sees() {
    let map = r410a();
    let tight = unit(&map, Device::TaperedValve, Structure::default());
    let with = |leak, conductance| {
        let return_duct = ReturnDuct { leak, conductance, excess: 15.0 };
        solve(&unit(&map, Device::TaperedValve, Structure { return_duct, ..Structure::default() }), Faults::default())
    };
    let healthy = solve(&tight, Faults::default());
    // Nothing leaks, nothing conducts: nothing changes but rounding.
    assert!((with(0.0, 0.0).capacity / healthy.capacity - 1.0).abs() < 1e-9);
    let (leaking, conducting) = (with(0.1, 0.0), with(0.0, 20.0));
    assert!((leaking.indoor_air.0.temperature - (299.817 + 0.1 * (323.15 - 299.817))).abs() < 0.1);
    for warmed in [leaking, conducting] {
        assert!(warmed.indoor_air.0.temperature > healthy.indoor_air.0.temperature + 0.5);
        assert!(warmed.supply_dry_bulb > healthy.supply_dry_bulb);
        assert!(warmed.evaporator.temperature > healthy.evaporator.temperature);
    }
}

#[test]
fn a_unit_with_every_choice_settles_in_every_refrigerant() {
    for (map, name) in maps().iter().zip(REFRIGERANTS) {
        for device in [Device::ShortTube, Device::FlashingOrifice, Device::TaperedValve, Device::LinearValve] {
            let structure = Structure {
                condenser: CondenserModel::Lumped,
                air_imbalance: 0.3,
                return_duct: ReturnDuct { leak: 0.05, conductance: 5.0, excess: 10.0 },
                accumulator: Accumulator { volume: 2e-3, ..Accumulator::default() },
            };
            let found = unit(map, device, structure).solve(&RATING_CONDITIONS, &Faults::default());
            assert!(found.is_ok_and(|found| found.miss < 1e-7), "{name} {device:?}");
        }
    }
}

#[test]
fn the_impossible_is_refused_with_its_reason() {
    let map = r410a();
    let healthy = unit(&map, Device::TaperedValve, Structure::default());
    let none = Faults::default();
    let message = |unit: &Unit, conditions: Conditions, faults: Faults| {
        unit.solve(&conditions, &faults).expect_err("must be refused").to_string()
    };
    // No air at all: the limit of the severity, or of the part.
    let airless = Faults { low_indoor_airflow: 1.0, ..none };
    assert!(message(&healthy, RATING_CONDITIONS, airless).starts_with("low indoor airflow of 1 severity is outside 0"));
    let mut still = healthy;
    still.parts.indoor_airflow = 0.0;
    assert!(message(&still, RATING_CONDITIONS, none).starts_with("airflow of 0 m3/s"));
    still = healthy;
    still.parts.outdoor_airflow = f64::NAN;
    assert!(message(&still, RATING_CONDITIONS, none).starts_with("outdoor airflow is not a finite number"));
    // Nearly empty: vapour comes where liquid should.
    let empty = Faults { undercharge: 0.9, ..none };
    let error = healthy.solve(&RATING_CONDITIONS, &empty).unwrap_err();
    println!("{error}");
    assert!(matches!(Stop::of(&error), Some(Stop::NoLiquid | Stop::HotDischarge)), "{error}");
    // Too full for the condenser.
    let full = Faults { overcharge: 1.0, ..none };
    assert_eq!(Stop::of(&healthy.solve(&RATING_CONDITIONS, &full).unwrap_err()), Some(Stop::HighPressure));
    // Far colder outdoors than indoors: it runs as long as its condenser is the warmer coil, else it says why not.
    let mut stopped = false;
    for outdoor_c in [0.0, -10.0, -20.0, -30.0, -40.0, -50.0, -59.0] {
        let cold = Conditions {
            outdoor_dry_bulb: outdoor_c + 273.15,
            return_dry_bulb: 308.15,
            return_wet_bulb: 306.0,
            ..RATING_CONDITIONS
        };
        match healthy.solve(&cold, &none) {
            Ok(found) => {
                assert!(!stopped);
                let low = map.saturation(found.evaporator.inlet_pressure).unwrap().bubble_temperature;
                let high = map.saturation(found.condenser.pressure).unwrap().bubble_temperature;
                assert!(high > low, "{outdoor_c}: condensing at {high} K, evaporating at {low} K");
            }
            Err(error) => {
                println!("{outdoor_c} °C: {error}");
                assert!(matches!(Stop::of(&error), Some(stop) if stop != Stop::NoBalance), "{error}");
                stopped = true;
            }
        }
    }
    assert!(stopped);
    // Wetter than saturated, a severity below nothing, and no numbers.
    let wet = Conditions { return_wet_bulb: 300.0, ..RATING_CONDITIONS };
    assert!(message(&healthy, wet, none).contains("check both bulbs"));
    let negative = Faults { overcharge: -0.1, ..none };
    assert!(message(&healthy, RATING_CONDITIONS, negative).starts_with("overcharge of -0.1"));
    let nothing = Conditions { outdoor_dry_bulb: f64::NAN, ..RATING_CONDITIONS };
    assert!(message(&healthy, nothing, none).contains("not a finite number"));
    let odd = unit(&map, Device::TaperedValve, Structure { air_imbalance: 1.5, ..Structure::default() });
    assert!(message(&odd, RATING_CONDITIONS, none).starts_with("imbalance"));
}

#[test]
fn ratings_outside_their_range_are_refused() {
    let map = r410a();
    let rating = |tons, line_set| Rating::nominal(&map, tons, EfficiencyClass::Basic, Device::ShortTube, line_set);
    assert!(rating(0.0, LineSet::RATED).unwrap_err().to_string().starts_with("nominal capacity"));
    assert!(rating(3.0, LineSet { length: 200.0, lift: 0.0 }).unwrap_err().to_string().starts_with("length"));
    assert!(rating(3.0, LineSet { length: 20.0, lift: f64::NAN }).unwrap_err().to_string().starts_with("lift"));
}
