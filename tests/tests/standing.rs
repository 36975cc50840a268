//! The standing-pressure check and the catalogue's matches, against tables, Dalton's law and the vessel of the equations
//! of state.

use satline::Error;
use satline::eos::{Filling, Leaving, Mixture, Vessel, model};
use satline::quantity::{Pressure, Temperature};
use satline::refrigerant::{self, MATCHES_MAX, matches};
use satline::saturation::{R22, R134A, R407C, R410A, R454B, R744, SaturationCurves};
use satline::visit::standing::{
    Advice, Cause, Caution, Liquid, Outcome, Reason, Standing, StandingFinding, standing_check,
};

fn celsius(value: f64) -> Temperature {
    Temperature::from_celsius(value).unwrap()
}

fn pascals(value: f64) -> Pressure {
    Pressure::from_pascals(value).unwrap()
}

fn found(
    refrigerant: &'static SaturationCurves,
    pressure: f64,
    temperatures: &[Temperature],
    liquid: Liquid,
) -> StandingFinding {
    let check = Standing {
        liquid,
        pressure_uncertainty_pa: Some(3e3),
        temperature_uncertainty_k: Some(0.2),
        ..Standing::new(refrigerant, pascals(pressure), temperatures)
    };
    standing_check(&check).unwrap()
}

/// Saturation pressures of the ASHRAE Handbook Fundamentals (chapter of refrigerant properties), from memory; R-410A by
/// the 2004 mixture model, computed apart from this library.
const TABLE: [(&SaturationCurves, f64, f64); 4] =
    [(&R134A, 20.0, 571.71e3), (&R134A, 0.0, 292.80e3), (&R22, 20.0, 910.0e3), (&R410A, 40.0, 2425.6e3)];

#[test]
fn a_pressure_from_the_tables_is_consistent() {
    for (refrigerant, temperature, pressure) in TABLE {
        for liquid in [Liquid::Unknown, Liquid::Present, Liquid::Most] {
            let found = found(refrigerant, pressure, &[celsius(temperature)], liquid);
            assert_eq!((found.outcome, found.advice), (Outcome::Consistent, Advice::Nothing));
            assert_eq!(found.causes().count(), 0);
            assert!(found.non_condensables.is_none() && found.above_bubble_k.unwrap().abs() < 0.05);
            // What would not have shown is some two uncertainties, and a blend's band besides.
            let band = if liquid == Liquid::Most { 0.0 } else { found.bubble.value_pa - found.dew.value_pa };
            let unseen = found.unseen_at_most_pa.unwrap();
            assert!((unseen - band - 2.0 * found.bubble.standard_uncertainty_pa).abs() < 2e3, "{unseen}");
        }
    }
}

/// Dalton's law: air of a known partial pressure over the liquid.
#[test]
fn air_is_found_with_its_partial_pressure() {
    for (refrigerant, temperature, pressure) in TABLE {
        for air in [90e3, 150e3, 300e3] {
            let found = found(refrigerant, pressure + air, &[celsius(temperature)], Liquid::Present);
            assert_eq!((found.outcome, found.reason), (Outcome::Excess, Reason::AboveBubble));
            assert_eq!(found.causes().next(), Some(Cause::NonCondensables));
            assert!(found.causes().any(|cause| cause == Cause::OtherRefrigerant));
            assert_eq!(found.advice, Advice::RecoverEvacuateRecharge);
            assert!(found.advice.sentence().contains("never purge"));
            for caution in [Caution::NeverPurge, Caution::TreatAsFlammable, Caution::MayBeFullOfLiquid] {
                assert!(found.cautions().any(|given| given == caution));
            }
            let partial = found.non_condensables.unwrap();
            assert!((partial.estimate.value_pa - air).abs() < partial.estimate.standard_uncertainty_pa);
            assert!(partial.at_most_pa >= partial.estimate.value_pa - 1.0);
            assert!(found.above_bubble_k.unwrap() > 1.0 && found.unseen_at_most_pa.is_none());
        }
    }
}

#[test]
fn too_low_a_pressure_means_no_liquid_or_another_refrigerant() {
    for (refrigerant, temperature, pressure) in TABLE {
        let low = |liquid| found(refrigerant, 0.6 * pressure, &[celsius(temperature)], liquid);
        let unknown = low(Liquid::Unknown);
        assert_eq!((unknown.outcome, unknown.reason), (Outcome::TooLow, Reason::BelowDew));
        assert_eq!((unknown.causes().next(), unknown.advice), (Some(Cause::NoLiquid), Advice::FindLeak));
        // Where liquid is known to be there, there is liquid.
        for liquid in [Liquid::Present, Liquid::Most] {
            let known = low(liquid);
            assert_eq!(known.outcome, Outcome::TooLow);
            assert_eq!((known.causes().next(), known.advice), (Some(Cause::OtherRefrigerant), Advice::Identify));
            assert!(known.causes().all(|cause| cause != Cause::NoLiquid));
        }
        let blend = refrigerant.identity.components.len() > 1;
        assert_eq!(unknown.causes().any(|cause| cause == Cause::CompositionShifted), blend);
        assert_eq!(unknown.cautions().any(|caution| caution == Caution::BlendMayHaveShifted), blend);
    }
}

/// Where a blend stands between its two ends depends on how much liquid there is, and the equations of state know.
#[test]
fn a_blend_at_rest_is_consistent_however_full() {
    let r407c = Mixture::of(&model::R407C).unwrap();
    for share in [0.002, 0.05, 0.3, 0.6, 0.95] {
        let vessel = Vessel::filled(&r407c, 298.15, Filling::LiquidVolumeFraction(share)).unwrap();
        let found = found(&R407C, vessel.pressure(), &[celsius(25.0)], Liquid::Unknown);
        assert_eq!((found.outcome, found.reason), (Outcome::Consistent, Reason::WithinBand), "{share}");
    }
    let at = |pressure, liquid| found(&R407C, pressure, &[celsius(25.0)], liquid);
    let dew = R407C.dew_pressure(celsius(25.0)).unwrap().pascals();
    let bubble = R407C.bubble_pressure(celsius(25.0)).unwrap().pascals();
    // Mostly liquid, yet at the dew pressure: that is not this refrigerant.
    assert_eq!(at(dew, Liquid::Unknown).outcome, Outcome::Consistent);
    assert_eq!((at(dew, Liquid::Most).outcome, at(dew, Liquid::Most).reason), (Outcome::TooLow, Reason::BelowBubble));
    assert_eq!(
        (at(bubble, Liquid::Most).outcome, at(bubble, Liquid::Most).reason),
        (Outcome::Consistent, Reason::AtBubble)
    );
    // In a band this wide much air would not show unless most is known to be liquid: the finding says how much.
    let (wide, narrow) = (at(bubble, Liquid::Unknown), at(bubble, Liquid::Most));
    assert!(wide.unseen_at_most_pa.unwrap() > 150e3 && narrow.unseen_at_most_pa.unwrap() < 50e3);
}

/// Half of a bottle of R-407C leaked as vapour: the pressure alone still passes, and only knowing that most is liquid
/// shows the shift.
#[test]
fn a_shifted_blend_can_hide_in_its_band() {
    let r407c = Mixture::of(&model::R407C).unwrap();
    let left = Vessel::filled(&r407c, 295.15, Filling::default()).unwrap().after_leak(Leaving::Vapor, 0.5).unwrap();
    let at = |liquid| found(&R407C, left.pressure(), &[celsius(22.0)], liquid);
    assert_eq!(at(Liquid::Unknown).outcome, Outcome::Consistent);
    assert!(at(Liquid::Unknown).cautions().any(|caution| caution == Caution::BlendMayHaveShifted));
    let known = at(Liquid::Most);
    assert_eq!(known.outcome, Outcome::TooLow);
    assert!(known.causes().any(|cause| cause == Cause::CompositionShifted));
}

#[test]
fn the_coldest_part_sets_the_pressure_and_unequal_parts_are_not_judged() {
    let pressure = R410A.bubble_pressure(celsius(20.0)).unwrap().pascals();
    let near = found(&R410A, pressure, &[celsius(20.6), celsius(20.0), celsius(20.3)], Liquid::Unknown);
    assert_eq!((near.outcome, near.temperature_k), (Outcome::Consistent, 293.15));
    assert!((near.spread_k - 0.6).abs() < 1e-9);
    // The difference widens the uncertainty.
    let even = found(&R410A, pressure, &[celsius(20.0)], Liquid::Unknown);
    assert!((near.temperature_uncertainty_k - (0.04 + 0.36_f64 / 3.0).sqrt()).abs() < 1e-9);
    assert!(near.bubble.standard_uncertainty_pa > even.bubble.standard_uncertainty_pa);
    // In the sun: one coil ten kelvins above the other.
    for factor in [0.5, 1.0, 1.5] {
        let apart = found(&R410A, factor * pressure, &[celsius(20.0), celsius(30.0)], Liquid::Unknown);
        assert_eq!((apart.outcome, apart.reason), (Outcome::NotJudged, Reason::TemperaturesUnequal));
        assert_eq!((apart.advice, apart.causes().count()), (Advice::WaitForOneTemperature, 0));
        assert!(apart.non_condensables.is_none() && apart.unseen_at_most_pa.is_none());
    }
    // Who allows more is judged by the coldest.
    let temperatures = [celsius(20.0), celsius(22.0)];
    let check = Standing { largest_spread_k: Some(3.0), ..Standing::new(&R410A, pascals(pressure), &temperatures) };
    assert_eq!(standing_check(&check).unwrap().outcome, Outcome::Consistent);
}

/// The stated uncertainty is that of the difference: taken apart by moving each input by its own.
#[test]
fn the_uncertainty_is_what_the_inputs_make_it() {
    let bubble = |celsius_value: f64| R407C.bubble_pressure(celsius(celsius_value)).unwrap().pascals();
    let by_temperature = bubble(25.1) - bubble(24.9);
    let expected = (3e3_f64.powi(2) + by_temperature.powi(2) + (0.005 * bubble(25.0)).powi(2)).sqrt();
    let given = found(&R407C, 1.2e6, &[celsius(25.0)], Liquid::Present).bubble.standard_uncertainty_pa;
    assert!((given / expected - 1.0).abs() < 1e-3, "{given} {expected}");
    // Just inside and just outside of two of them.
    for (count, outcome) in [(1.99, Outcome::Consistent), (2.01, Outcome::Excess)] {
        assert_eq!(found(&R407C, bubble(25.0) + count * given, &[celsius(25.0)], Liquid::Present).outcome, outcome);
    }
    // Defaults: a gauge of 3.5 psi and a thermometer of 0.1 % and 1.3 °F as limits of error, over √3.
    let default = standing_check(&Standing::new(&R407C, pascals(1.2e6), &[celsius(25.0)])).unwrap();
    let (gauge, thermometer) = (3.5 * 6894.757 / 3_f64.sqrt(), (0.077 + 1.3) / 1.8 / 3_f64.sqrt());
    assert!((default.temperature_uncertainty_k - thermometer).abs() < 1e-6);
    let expected =
        (gauge.powi(2) + (5.0 * by_temperature * thermometer).powi(2) + (0.005 * bubble(25.0)).powi(2)).sqrt();
    assert!((default.bubble.standard_uncertainty_pa / expected - 1.0).abs() < 1e-3);
}

#[test]
fn flammable_refrigerants_are_cautioned_and_words_are_complete() {
    let caution = |refrigerant: &'static SaturationCurves| {
        let pressure = refrigerant.bubble_pressure(celsius(20.0)).unwrap().pascals();
        let found = found(refrigerant, pressure, &[celsius(20.0)], Liquid::Unknown);
        assert!(found.cautions().any(|caution| caution == Caution::NotIdentified));
        found.cautions().any(|caution| caution == Caution::FlammableRefrigerant)
    };
    assert!(caution(&R454B) && !caution(&R410A));
    for cause in Cause::ALL {
        assert!(!cause.sentence().is_empty() && Cause::from_number(cause.number()) == Some(*cause));
    }
}

#[test]
fn every_refrigerant_is_found_at_its_own_bubble_pressure() {
    for refrigerant in refrigerant::ALL {
        let (low, high) = refrigerant.curves.temperature_range_k();
        for share in [0.2, 0.5, 0.8] {
            let temperature = Temperature::from_kelvin(low + share * (high - low)).unwrap();
            let Ok(pressure) = refrigerant.curves.bubble_pressure(temperature) else { continue };
            let found = matches(pressure, temperature, Some(2e3), Some(0.1)).unwrap();
            let (place, own) = found
                .iter()
                .enumerate()
                .find(|(_, found)| found.refrigerant.designation() == refrigerant.designation())
                .unwrap_or_else(|| panic!("{} at {}", refrigerant.designation(), temperature.kelvin()));
            assert!(own.fits() && own.distance_k.abs() < 1e-4, "{}", refrigerant.designation());
            // Its bubble temperature is this one; only one just as near may stand before it.
            for other in found.iter().take(place) {
                assert!((other.bubble_temperature_k - temperature.kelvin()).abs() < 1e-4);
            }
        }
    }
}

#[test]
fn matches_are_ordered_and_counted() {
    // R-22 at 25 °C: 1044 kPa (ASHRAE Handbook Fundamentals, from memory).
    let found = matches(pascals(1.044e6), celsius(25.0), Some(10e3), Some(0.3)).unwrap();
    assert_eq!(found.iter().next().unwrap().refrigerant.designation(), "R-22");
    assert!(found.iter().any(|found| found.fits() && found.refrigerant.designation() == "R-407C"));
    assert!(found.iter().all(|found| found.refrigerant.designation() != "R-410A"));
    let fitting: Vec<bool> = found.iter().map(|found| found.fits()).collect();
    assert!(fitting.windows(2).all(|pair| pair[0] || !pair[1]), "those that fit come first");
    assert!(found.fitting() >= fitting.iter().filter(|fits| **fits).count());
    // By hand over the whole catalogue.
    let by_hand = refrigerant::ALL.iter().filter(|refrigerant| {
        let Ok(bubble) = refrigerant.curves.bubble_temperature(pascals(1.044e6)) else { return false };
        let dew = refrigerant.curves.dew_temperature(pascals(1.044e6)).unwrap();
        298.15 > bubble.kelvin() - 0.9 && 298.15 < dew.kelvin() + 0.9
    });
    assert!(found.fitting().abs_diff(by_hand.count()) <= 3);
    // Signs: a pressure too high for R-134a at 25 °C is a negative distance, one too low for it a positive.
    for (pressure, sign) in [(7.0e5, -1.0), (6.3e5, 1.0)] {
        let found = matches(pascals(pressure), celsius(25.0), Some(1e3), Some(0.1)).unwrap();
        let r134a = found.iter().find(|found| found.refrigerant.designation() == "R-134a").unwrap();
        // The slope of R-134a there: about 19 kPa/K.
        assert!((r134a.distance_k * sign - 1.8).abs() < 0.4, "{}", r134a.distance_k);
        assert!(!r134a.fits());
    }
    // Where nothing fits, the nearest are named all the same.
    let nothing = matches(pascals(9.5e6), celsius(25.0), Some(1e3), Some(0.1)).unwrap();
    assert_eq!(nothing.fitting(), 0);
    assert!(nothing.iter().count() <= MATCHES_MAX && nothing.iter().all(|found| !found.fits()));
}

#[test]
fn bad_input_is_refused_by_name() {
    let good = [celsius(20.0)];
    let check = Standing::new(&R410A, pascals(1.4e6), &good);
    let refused = |check: &Standing<'_>| standing_check(check).unwrap_err();
    let none = refused(&Standing { temperatures: &[], ..check });
    assert!(matches!(none, Error::OutOfRange { quantity: "number of temperatures", value: 0.0, .. }), "{none}");
    let many = [celsius(20.0); 17];
    assert!(matches!(refused(&Standing { temperatures: &many, ..check }), Error::OutOfRange { upper: 16.0, .. }));
    for bad in [-1.0, 1e7, f64::NAN, f64::INFINITY] {
        for (check, word) in [
            (Standing { pressure_uncertainty_pa: Some(bad), ..check }, "uncertainty of the pressure"),
            (Standing { temperature_uncertainty_k: Some(bad), ..check }, "uncertainty of the temperature"),
            (Standing { largest_spread_k: Some(bad), ..check }, "difference allowed"),
        ] {
            assert!(refused(&check).to_string().contains(word));
        }
        assert!(matches(pascals(1e6), celsius(20.0), Some(bad), None).is_err());
        assert!(matches(pascals(1e6), celsius(20.0), None, Some(bad)).is_err());
    }
    // Above its critical temperature (31 °C) there is no liquid carbon dioxide.
    let hot = refused(&Standing::new(&R744, pascals(7e6), &[celsius(35.0)]));
    assert!(hot.to_string().contains("critical"), "{hot}");
    // A pressure outside the curve is no error: the finding is what it is for.
    let empty = standing_check(&Standing::new(&R410A, pascals(101_325.0 * 0.1), &good)).unwrap();
    assert_eq!((empty.outcome, empty.above_bubble_k), (Outcome::TooLow, None));
    let burst = standing_check(&Standing::new(&R410A, pascals(2e7), &good)).unwrap();
    assert_eq!((burst.outcome, burst.above_bubble_k), (Outcome::Excess, None));
}
