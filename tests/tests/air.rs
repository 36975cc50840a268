//! Moist air against the handbook's examples, physics and itself. The comparison with an open library over the whole range
//! is tests/python/oracle_air.py.

use approx::{assert_abs_diff_eq, assert_relative_eq};
use proptest::prelude::*;
use satline::Error;
use satline::air::{
    MoistAir, actual_airflow_m3_s, cfm_per_ton_from_m3_s_w, density_ratio, m3_s_w_from_cfm_per_ton,
    saturated_humidity_ratio, standard_airflow_m3_s,
};
use satline::quantity::{AirTemperature, Airflow, Atmosphere, PASCALS_PER_PSI, Temperature};

fn dry(celsius: f64) -> AirTemperature {
    AirTemperature::from_celsius(celsius).unwrap()
}

fn pascals(value: f64) -> Atmosphere {
    Atmosphere::from_pascals(value).unwrap()
}

/// ASHRAE Fundamentals 2017 ch. 1, example 1 (published), read off a chart: so it holds to 1 %.
#[test]
fn the_handbooks_chart_reading() {
    let fahrenheit = |value| AirTemperature::from_fahrenheit(value).unwrap();
    let pressure = pascals(14.696 * PASCALS_PER_PSI);
    let air = MoistAir::from_wet_bulb(fahrenheit(100.0), fahrenheit(65.0), pressure).unwrap();
    assert_relative_eq!(air.humidity_ratio(), 0.00523, max_relative = 0.01);
    // Btu/lb from 0 °F dry air and 32 °F water; here from 0 °C both: the dry air's part is moved by 0.24 · 32.
    let btu_lb = air.enthalpy_j_kg() / 2326.0 + 0.2402 * 32.0;
    assert_relative_eq!(btu_lb, 29.80, max_relative = 0.01);
    assert_relative_eq!(air.specific_volume_m3_kg() / 0.062_428, 14.22, max_relative = 0.01);
    assert_abs_diff_eq!(air.relative_humidity(), 0.13, epsilon = 0.005);
    assert_abs_diff_eq!(
        Temperature::from_kelvin(air.dew_point_k().unwrap()).unwrap().fahrenheit(),
        40.0,
        epsilon = 0.5
    );
}

/// The same in SI: 40 °C dry, 20 °C wet bulb, 101.325 kPa (published), read off a chart: W to a unit of its last digit
/// (the chapter's own equation 33 gives .0064).
#[test]
fn the_handbooks_example_in_si() {
    let air = MoistAir::from_wet_bulb(dry(40.0), dry(20.0), Atmosphere::STANDARD).unwrap();
    assert_abs_diff_eq!(air.humidity_ratio(), 0.0065, epsilon = 0.0001);
    assert_abs_diff_eq!(air.enthalpy_j_kg(), 56.7e3, epsilon = 0.3e3);
    assert_abs_diff_eq!(air.specific_volume_m3_kg(), 0.896, epsilon = 0.0005);
    assert_abs_diff_eq!(air.relative_humidity(), 0.14, epsilon = 0.005);
    assert_abs_diff_eq!(air.dew_point_k().unwrap() - 273.15, 7.0, epsilon = 0.5);
}

/// Where air over a wick has two wet bulbs, one over ice and one over liquid.
fn twice(air: &MoistAir) -> bool {
    let over_ice =
        MoistAir::from_wet_bulb(air.dry_bulb(), AirTemperature::from_kelvin(273.15 - 1e-9).unwrap(), air.pressure());
    let over_liquid =
        MoistAir::from_wet_bulb(air.dry_bulb(), AirTemperature::from_kelvin(273.15).unwrap(), air.pressure());
    let low = over_liquid.map_or(0.0, |air| air.humidity_ratio());
    over_ice.is_ok_and(|ice| air.humidity_ratio() >= low && air.humidity_ratio() <= ice.humidity_ratio())
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    /// Any pair gives the other three, and each of them gives the first back.
    #[test]
    fn the_four_pairs_agree(celsius in -60.0..70.0_f64, share in 0.001..1.0_f64, pressure in 50e3..110e3_f64) {
        let (dry, pressure) = (dry(celsius), pascals(pressure));
        let air = MoistAir::from_relative_humidity(dry, share, pressure).unwrap();
        let ratio = air.humidity_ratio();
        let back = MoistAir::from_humidity_ratio(dry, ratio, pressure).unwrap();
        prop_assert!((back.relative_humidity() - share).abs() < 1e-12);
        let dew = Temperature::from_kelvin(air.dew_point_k().unwrap()).unwrap();
        prop_assert!(dew.kelvin() <= dry.kelvin());
        let by_dew = MoistAir::from_dew_point(dry, dew, pressure).unwrap();
        prop_assert!((by_dew.humidity_ratio() / ratio - 1.0).abs() < 1e-10);
        prop_assert_eq!(by_dew.dew_point_k().unwrap(), dew.kelvin());
        let wet_k = air.wet_bulb_k();
        prop_assert!(wet_k <= dry.kelvin());
        // The wet bulb of the coldest air lies below the range of air temperatures.
        if let Ok(wet) = AirTemperature::from_kelvin(wet_k) {
            let by_wet = MoistAir::from_wet_bulb(dry, wet, pressure).unwrap();
            // 1e-10 K of wet bulb.
            prop_assert!((by_wet.humidity_ratio() - ratio).abs() < 1e-12 + 1e-10 * ratio, "{} {}", by_wet.humidity_ratio(), ratio);
            prop_assert_eq!(by_wet.wet_bulb_k(), wet_k);
        }
        prop_assert!(air.degree_of_saturation() <= 1.0 + 1e-15 && air.degree_of_saturation() <= share + 1e-12);
    }

    /// From the wet bulb and back, also over ice; where there are two wet bulbs the one over liquid is the answer.
    #[test]
    fn a_wet_bulb_is_found_again(celsius in -59.0..70.0_f64, share in 0.0..1.0_f64, pressure in 50e3..110e3_f64) {
        let (dry, pressure) = (dry(celsius), pascals(pressure));
        let lowest = MoistAir::from_humidity_ratio(dry, 0.0, pressure).unwrap().wet_bulb_k().max(213.15);
        let wet_k = lowest + share * (dry.kelvin() - lowest);
        let wet = AirTemperature::from_kelvin(wet_k).unwrap();
        let air = MoistAir::from_wet_bulb(dry, wet, pressure).unwrap();
        let again = MoistAir::from_humidity_ratio(dry, air.humidity_ratio(), pressure).unwrap();
        let found = again.wet_bulb_k();
        if wet_k < 273.15 && twice(&air) {
            prop_assert!(found >= 273.15 && found < 276.0);
        } else {
            prop_assert!((found - wet_k).abs() < 1e-9, "{found} {wet_k}");
        }
    }

    /// Dew point, wet bulb and dry bulb stand in this order, and dry air cools a wick furthest.
    #[test]
    fn the_wet_bulb_lies_between(celsius in -60.0..70.0_f64, share in 0.001..1.0_f64, pressure in 50e3..110e3_f64) {
        let (dry, pressure) = (dry(celsius), pascals(pressure));
        let air = MoistAir::from_relative_humidity(dry, share, pressure).unwrap();
        let (dew, wet) = (air.dew_point_k().unwrap(), air.wet_bulb_k());
        // Over ice and liquid alike; near 0 °C a dew point over ice may lie 0.01 K beside one over liquid.
        prop_assert!(dew <= wet + 1e-9 && wet <= dry.kelvin(), "{dew} {wet} {}", dry.kelvin());
        let drier = MoistAir::from_relative_humidity(dry, 0.5 * share, pressure).unwrap();
        prop_assert!(drier.wet_bulb_k() < wet && drier.density_kg_m3() > air.density_kg_m3());
        prop_assert!(drier.enthalpy_j_kg() < air.enthalpy_j_kg());
    }

    /// Higher up the same relative humidity is more water to a kg of air, the air is thinner, and a wick cools further.
    #[test]
    fn altitude_has_its_signs(celsius in -40.0..60.0_f64, share in 0.01..0.95_f64, altitude in 0.0..4000.0_f64) {
        let at = |altitude| {
            MoistAir::from_relative_humidity(dry(celsius), share, Atmosphere::at_altitude_m(altitude).unwrap()).unwrap()
        };
        let (low, high) = (at(altitude), at(altitude + 500.0));
        prop_assert!(high.humidity_ratio() > low.humidity_ratio());
        prop_assert!(high.density_kg_m3() < low.density_kg_m3());
        prop_assert!((high.dew_point_k().unwrap() - low.dew_point_k().unwrap()).abs() < 1e-9);
        prop_assert!(high.wet_bulb_k() < low.wet_bulb_k() || twice(&low) || twice(&high));
    }

    #[test]
    fn nothing_panics_and_no_answer_is_nan(celsius in -60.0..70.0_f64, other in -200.0..200.0_f64, pressure in 50e3..110e3_f64) {
        let (dry, pressure) = (dry(celsius), pascals(pressure));
        let made = [
            AirTemperature::from_celsius(other).and_then(|wet| MoistAir::from_wet_bulb(dry, wet, pressure)),
            MoistAir::from_relative_humidity(dry, other / 100.0, pressure),
            Temperature::from_celsius(other).and_then(|dew| MoistAir::from_dew_point(dry, dew, pressure)),
            MoistAir::from_humidity_ratio(dry, other / 1000.0, pressure),
        ];
        for air in made.into_iter().flatten() {
            let all = [air.wet_bulb_k(), air.relative_humidity(), air.enthalpy_j_kg(), air.density_kg_m3(), air.degree_of_saturation()];
            prop_assert!(all.iter().all(|value| value.is_finite()));
            prop_assert!(air.dew_point_k().is_ok_and(|dew| dew <= dry.kelvin()) || air.humidity_ratio() < 1e-6);
        }
    }
}

#[test]
fn saturated_air_has_one_temperature() {
    for celsius in [-40.0, -0.5, 0.0, 0.005, 0.01, 20.0, 60.0] {
        for air in [
            MoistAir::from_relative_humidity(dry(celsius), 1.0, pascals(9e4)).unwrap(),
            MoistAir::from_wet_bulb(dry(celsius), dry(celsius), pascals(9e4)).unwrap(),
            MoistAir::from_dew_point(dry(celsius), Temperature::from_celsius(celsius).unwrap(), pascals(9e4)).unwrap(),
        ] {
            assert_abs_diff_eq!(air.relative_humidity(), 1.0, epsilon = 1e-15);
            assert_abs_diff_eq!(air.wet_bulb_k(), celsius + 273.15, epsilon = 1e-10);
            assert_abs_diff_eq!(air.dew_point_k().unwrap(), celsius + 273.15, epsilon = 1e-10);
            let limit = saturated_humidity_ratio(Temperature::from_celsius(celsius).unwrap(), pascals(9e4)).unwrap();
            assert_relative_eq!(air.humidity_ratio(), limit, max_relative = 1e-14);
            // What is saturated may be given again as such.
            MoistAir::from_humidity_ratio(dry(celsius), air.humidity_ratio(), pascals(9e4)).unwrap();
            MoistAir::from_relative_humidity(dry(celsius), air.relative_humidity(), pascals(9e4)).unwrap();
        }
    }
}

#[test]
fn air_without_water_has_no_dew_point_but_a_wet_bulb() {
    let air = MoistAir::from_relative_humidity(dry(30.0), 0.0, Atmosphere::STANDARD).unwrap();
    let missing = air.dew_point_k().unwrap_err();
    assert!(matches!(missing, Error::NotAvailable { quantity: "dew point temperature", .. }));
    // By hand: at 10.5 °C Ws is .00788, and (2501 − 2.326 · 10.5) · .00788 = 19.5 is nearly 1.006 (30 − 10.5) = 19.6.
    assert_abs_diff_eq!(air.wet_bulb_k() - 273.15, 10.5, epsilon = 0.05);
    let again = AirTemperature::from_kelvin(air.wet_bulb_k()).unwrap();
    assert!(MoistAir::from_wet_bulb(dry(30.0), again, Atmosphere::STANDARD).unwrap().humidity_ratio() < 1e-12);
}

fn refused(result: Result<MoistAir, Error>, name: &str, low: f64, high: f64) {
    let Err(Error::OutOfRange { quantity, lower, upper, .. }) = result else { panic!("{name}: {result:?}") };
    assert_eq!(quantity, name);
    assert_abs_diff_eq!(lower, low, epsilon = 0.2);
    assert_abs_diff_eq!(upper, high, epsilon = 0.2);
}

#[test]
fn what_cannot_be_is_refused_with_its_limits() {
    let sea = Atmosphere::STANDARD;
    refused(MoistAir::from_wet_bulb(dry(30.0), dry(30.1), sea), "wet bulb temperature", 283.55, 303.15);
    refused(MoistAir::from_wet_bulb(dry(30.0), dry(10.0), sea), "wet bulb temperature", 283.55, 303.15);
    refused(MoistAir::from_wet_bulb(dry(-10.0), dry(-15.0), sea), "wet bulb temperature", 259.8, 263.15);
    // At 6 °C ice on the wick goes down to -2.2 °C, liquid to where dry air has it; between is nothing.
    refused(MoistAir::from_wet_bulb(dry(6.0), dry(-4.0), sea), "wet bulb temperature", 270.6, 279.15);
    refused(MoistAir::from_relative_humidity(dry(20.0), 1.01, sea), "relative humidity", 0.0, 1.0);
    refused(MoistAir::from_relative_humidity(dry(20.0), -0.01, sea), "relative humidity", 0.0, 1.0);
    let dew = |celsius| Temperature::from_celsius(celsius).unwrap();
    refused(MoistAir::from_dew_point(dry(20.0), dew(20.5), sea), "dew point temperature", 173.15, 293.15);
    refused(MoistAir::from_dew_point(dry(20.0), dew(-101.0), sea), "dew point temperature", 173.15, 293.15);
    refused(MoistAir::from_humidity_ratio(dry(20.0), 0.016, sea), "humidity ratio", 0.0, 0.0147);
    refused(MoistAir::from_humidity_ratio(dry(20.0), -1e-9, sea), "humidity ratio", 0.0, 0.0147);
    // The limits given are themselves accepted.
    let Err(Error::OutOfRange { lower, .. }) = MoistAir::from_wet_bulb(dry(30.0), dry(10.0), sea) else { panic!() };
    MoistAir::from_wet_bulb(dry(30.0), AirTemperature::from_kelvin(lower).unwrap(), sea).unwrap();
}

#[test]
fn standard_air_and_altitude() {
    // 0.075 lb/ft³ (ASHRAE 37, from memory): dry air at 70 °F and 29.92 inHg has it nearly.
    let air =
        MoistAir::from_relative_humidity(AirTemperature::from_fahrenheit(70.0).unwrap(), 0.0, Atmosphere::STANDARD)
            .unwrap();
    assert_relative_eq!(density_ratio(&air), 1.0, max_relative = 2e-3);
    let flow = Airflow::from_m3_s(0.5).unwrap();
    let standard = standard_airflow_m3_s(flow, &air);
    assert_relative_eq!(actual_airflow_m3_s(Airflow::from_m3_s(standard).unwrap(), &air), 0.5, max_relative = 1e-15);
    // 400 cfm a ton: 0.18878 m³/s to 3516.85 W.
    assert_relative_eq!(m3_s_w_from_cfm_per_ton(400.0).unwrap(), 5.3678e-5, max_relative = 1e-4);
    assert_relative_eq!(
        cfm_per_ton_from_m3_s_w(m3_s_w_from_cfm_per_ton(350.0).unwrap()).unwrap(),
        350.0,
        max_relative = 1e-14
    );
    assert!(m3_s_w_from_cfm_per_ton(400e3).is_err() && cfm_per_ton_from_m3_s_w(f64::NAN).is_err());
}
