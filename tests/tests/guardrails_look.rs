use satline::diagnosis::*;
use satline::reading::*;
use satline::refrigerant;
use satline::rig::*;
use satline::quantity::*;
use satline_tests::trial::visit::*;
use satline_tests::trial::row::name;
#[test]
fn nc() {
    let map = RefrigerantMap::of("R-410A", refrigerant::find("R-410A").unwrap().model).unwrap();
    let curves = refrigerant::find("R-410A").unwrap().curves;
    let mut n = std::collections::BTreeMap::new();
    for device in [Device::ShortTube, Device::TaperedValve, Device::LinearValve, Device::FlashingOrifice] {
        let unit = Unit::designed(&map, &Rating::usual(10_550., device)).unwrap();
        let fixed = matches!(device, Device::ShortTube | Device::FlashingOrifice);
        let label = Label::of(curves, 3., fixed, satline_tests::commission::rated_subcooling(&unit).unwrap().unwrap()).unwrap();
        for t in [298., 303., 308.15, 313.] { for nc in [0.1, 0.2, 0.3, 0.5, 0.8, 1.2, 2.0] { for seed in 0..20 {
            let air = Conditions { outdoor_dry_bulb: t, return_dry_bulb: 298.15, return_wet_bulb: 291.5, ..RATING_CONDITIONS };
            let Ok(state) = unit.solve(&air, &Faults { non_condensables: nc, ..Faults::default() }) else { *n.entry("nosolve".to_string()).or_insert(0)+=1; continue };
            for (k, sensors) in [usual(), usual().with(Field::CondensingSurfaceTemperature, None), usual().with(Field::CondensingSurfaceTemperature, None).with(Field::CondenserLeavingDryBulb, None).with(Field::CompressorPower, None).with(Field::DischargeLineTemperature, None)].into_iter().enumerate() {
            let r = label.reading(&mut sensors.placed(seed), &state, &air).unwrap();
            let f = diagnose_with(&r, &Options::default());
            *n.entry(format!("{k} {:?} {:?}", f.charge, f.advice)).or_insert(0) += 1;
            if f.charge == Charge::High && (k < 1 || f.advice == Advice::Recover) { println!("{k} {device:?} {t} nc {nc}: {:?} {:?} {} NC {:.2} over {:.2}", f.advice, f.reason, f.conclusion.causes.map_or("?".into(), name), f.hypotheses.marginal(Cause::NonCondensables), f.hypotheses.marginal(Cause::Overcharge)); }
            }
        } } }
    }
    println!("{n:#?}");
}
#[test]
fn trade() {
    for refr in ["R-22", "R-410A"] { for device in [Device::ShortTube, Device::FlashingOrifice] { for wb in [65., 67.] {
    let map = RefrigerantMap::of(refr, refrigerant::find(refr).unwrap().model).unwrap();
    let mut rating = Rating::usual(10_550., device);
    rating.indoor_airflow_by_capacity *= 450. / 400.;
    let unit = Unit::designed(&map, &rating).unwrap();
    let air = Conditions { outdoor_dry_bulb: kelvin_from_fahrenheit(97.), return_dry_bulb: kelvin_from_fahrenheit(78.), return_wet_bulb: kelvin_from_fahrenheit(wb), ..RATING_CONDITIONS };
    for u in [0., 0.05, 0.1, 0.15, 0.2, 0.25, 0.3, 0.35, 0.4] {
        let Ok(s) = unit.solve(&air, &Faults { undercharge: u, ..Faults::default() }) else { println!("{refr} {u} no"); continue };
        let low = map.saturation(s.vapor_port.pressure).unwrap(); let liq = map.saturation(s.liquid_port.pressure).unwrap();
        println!("{refr} {device:?} {wb} {u}: split {:.1} sh {:.1} sc {:.1} dew {:.1} cap {:.0}", 1.8*(air.return_dry_bulb - s.supply_dry_bulb), 1.8*(s.vapor_port.temperature-low.dew_temperature), 1.8*(liq.bubble_temperature-s.liquid_port.temperature), (low.dew_temperature-273.15)*1.8+32., s.capacity);
    } } } }
}
