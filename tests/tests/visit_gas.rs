//! Pressure test, evacuation, tube rating and temperature drop of a line, against papers, handbooks and physics.

use satline::eos::{End, Mixture, Properties, Reference, StateInput, model};
use satline::quantity::{Atmosphere, GaugePressure, PASCALS_PER_PSI, Pressure, Temperature};
use satline::saturation::{R32, R407C, R410A, SaturationCurves};
use satline::visit::evacuation::{
    self, Advice, Behaviour, Cause, Decay, DecayFinding, PASCALS_PER_MICRON, Reason, Sample, decay_test,
};
use satline::visit::line_drop::{self, Flash, LineDrop, line_temperature_drop};
use satline::visit::pressure_test::{self, Outcome, PressureTest, TestReading};
use satline::visit::tube_rating::{self, CopperTube, Joint, Temper, copper_tube_rating};
use satline::visit::{expected_nitrogen_pressure, frost_point, nitrogen_density_kg_m3, water_saturation_pressure};
use satline::{Error, refrigerant};

fn fahrenheit(value: f64) -> Temperature {
    Temperature::from_fahrenheit(value).unwrap()
}

fn kelvin(value: f64) -> Temperature {
    Temperature::from_kelvin(value).unwrap()
}

fn psig(value: f64) -> Pressure {
    Pressure::from_psi_gauge(value, Atmosphere::STANDARD).unwrap()
}

fn gauge_psi(pressure: Pressure) -> f64 {
    (pressure.pascals() - Atmosphere::STANDARD.pascals()) / PASCALS_PER_PSI
}

// Nitrogen.

/// Span, Lemmon, Jacobsen, Wagner and Yokozeki (2000), table of single-phase states, as quoted in the tests of two open
/// programs (read there, not in the paper): K, MPa, mol/dm³, half a unit of the last digit, cv, cp in J/(mol·K), w in m/s.
const SINGLE_PHASE: [(f64, f64, f64, f64, f64, f64, f64); 10] = [
    (280.0, 1.0, 0.43104, 5e-6, 20.89, 29.66, 342.4),
    (500.0, 1.0, 0.23958, 5e-6, 21.29, 29.72, 457.0),
    (500.0, 10.0, 2.3024, 5e-5, 21.49, 30.82, 483.1),
    (80.0, 0.1, 0.15633, 5e-6, 21.48, 31.15, 178.3),
    (90.0, 0.5, 26.615, 5e-4, 28.57, 59.87, 720.8),
    (1000.0, 2.0, 0.23889, 5e-6, 24.40, 32.75, 635.5),
    (100.0, 5.0, 25.436, 5e-4, 27.71, 59.87, 673.2),
    (70.0, 10.0, 30.605, 5e-4, 32.34, 54.75, 989.6),
    (350.0, 20.0, 6.3552, 5e-5, 21.64, 34.19, 449.7),
    (1000.0, 50.0, 5.1051, 5e-5, 24.79, 33.68, 748.9),
];

#[test]
fn nitrogen_as_printed_in_its_paper() {
    let nitrogen = Mixture::of(&model::R728).unwrap();
    let properties = Properties::of(&model::R728, Reference::NormalBoiling).unwrap();
    let mut states = 0;
    for (temperature, megapascals, printed, half_digit, cv, cp, w) in SINGLE_PHASE {
        let pressure = 1e6 * megapascals;
        let density = nitrogen.density(temperature, pressure).unwrap();
        assert!((density / 1e3 - printed).abs() <= half_digit, "{temperature} {pressure}: {density}");
        let state = properties.state(StateInput::TemperaturePressure { temperature, pressure }).unwrap();
        let molar = |value: Option<f64>| value.unwrap() * nitrogen.molar_mass;
        assert!((molar(state.isochoric_heat_capacity) - cv).abs() <= 0.005 + 1e-9, "{temperature} {pressure}");
        assert!((molar(state.isobaric_heat_capacity) - cp).abs() <= 0.005 + 1e-9, "{temperature} {pressure}");
        assert!((state.speed_of_sound.unwrap() - w).abs() <= 0.05 + 1e-9, "{temperature} {pressure}");
        states += 1;
    }
    assert_eq!(states, SINGLE_PHASE.len());
    // The same paper's saturated states: K, MPa, liquid and vapour density in mol/dm³.
    for (temperature, megapascals, liquid, vapor, half) in [
        (80.0, 0.13687, 28.341, 0.21737, 5e-6),
        (100.0, 0.77827, 24.608, 1.1409, 5e-5),
        (120.0, 2.51058, 18.682, 4.4653, 5e-5),
    ] {
        let found = nitrogen.at_temperature(End::Bubble, temperature).unwrap();
        assert!((found.pressure / 1e6 - megapascals).abs() <= 5e-6);
        assert!((found.bulk_density / 1e3 - liquid).abs() <= 5e-4);
        assert!((found.incipient_density() / 1e3 - vapor).abs() <= half);
    }
}

#[test]
fn nitrogen_is_a_test_gas_and_no_refrigerant() {
    assert!(refrigerant::ALL.iter().all(|known| known.designation() != "R-728"));
    assert!(model::ALL.iter().all(|known| known.identity.designation != "R-728"));
    assert!(matches!(refrigerant::find("R-728"), Err(Error::UnknownRefrigerant { .. })));
    assert_eq!(refrigerant::ALL.len(), model::ALL.len());
    let found = refrigerant::matches(psig(500.0), fahrenheit(70.0), None, None).unwrap();
    assert!(found.iter().all(|found| found.refrigerant.designation() != "R-728"));
}

/// Computed apart from this library with the same equation: 500.0 psi on the gauge at 95 °F is 475.0 at 70 °F, where an
/// ideal gas would have 476.8.
#[test]
fn the_worked_example() {
    let morning = expected_nitrogen_pressure(psig(500.0), fahrenheit(95.0), fahrenheit(70.0)).unwrap();
    assert!((gauge_psi(morning) - 475.0).abs() < 0.05, "{}", gauge_psi(morning));
    let ratio = fahrenheit(70.0).kelvin() / fahrenheit(95.0).kelvin();
    let ideal = Pressure::from_pascals(psig(500.0).pascals() * ratio).unwrap();
    assert!((gauge_psi(ideal) - 476.8).abs() < 0.05);
}

#[test]
fn nitrogen_at_constant_density() {
    for bar in [1.0, 5.0, 30.0, 100.0, 150.0] {
        let pressure = Pressure::from_pascals(bar * 1e5).unwrap();
        let mut last = 0.0;
        for step in 0..=10 {
            let later = kelvin(200.0 + 20.0 * f64::from(step));
            let found = expected_nitrogen_pressure(pressure, kelvin(300.0), later).unwrap_or(pressure);
            assert!(found.pascals() > last || found == pressure, "rises with temperature");
            last = found.pascals();
            // Back again, and the density the same on the way.
            if found.pascals() <= 1.5e7 && found != pressure {
                let back = expected_nitrogen_pressure(found, later, kelvin(300.0)).unwrap();
                assert!((back.pascals() / pressure.pascals() - 1.0).abs() < 1e-12);
                let there = nitrogen_density_kg_m3(found, later).unwrap();
                let here = nitrogen_density_kg_m3(pressure, kelvin(300.0)).unwrap();
                assert!((there / here - 1.0).abs() < 1e-12);
            }
        }
        // Thin, it is an ideal gas.
        let thin = nitrogen_density_kg_m3(Pressure::from_pascals(1e3).unwrap(), kelvin(300.0)).unwrap();
        assert!((thin * 8.314_462_6 * 300.0 / (1e3 * 0.028_013_48) - 1.0).abs() < 1e-5);
    }
    for (pressure, temperature) in [(999.0, 300.0), (1.6e7, 300.0), (1e6, 199.0), (1e6, 401.0)] {
        let refused = nitrogen_density_kg_m3(Pressure::from_pascals(pressure).unwrap(), kelvin(temperature));
        let Err(Error::OutOfRange { quantity, .. }) = refused else { panic!("{refused:?}") };
        assert!(quantity.contains("nitrogen"));
    }
}

// The pressure test.

fn reading(pressure: Pressure, at: &[Temperature]) -> TestReading<'_> {
    TestReading {
        pressure_uncertainty_pa: Some(1.0e3),
        temperature_uncertainty_k: Some(0.3),
        ..TestReading::new(pressure, at)
    }
}

#[test]
fn a_tight_unit_passes_and_a_leak_fails() {
    let (hot, cool) = ([fahrenheit(95.0)], [fahrenheit(70.0)]);
    let test = |last: f64| PressureTest {
        volume_m3: Some(0.012),
        ..PressureTest::new(reading(psig(500.0), &hot), reading(psig(last), &cool), 12.0 * 3600.0, psig(550.0))
    };
    let tight = pressure_test::pressure_test(&test(475.0)).unwrap();
    assert_eq!((tight.outcome, tight.reason), (Outcome::Pass, pressure_test::Reason::Held));
    assert!(tight.residual_pa.value.abs() < 0.05 * PASCALS_PER_PSI);
    // Root sum of squares by hand: both gauges, both thermometers (p/T a kelvin, and for a real gas as much more as the
    // worked example says, 25.0 psi against 23.2), the metal.
    let real = 25.0 / 23.2;
    let (first, last) = (psig(500.0).pascals(), psig(475.0).pascals());
    let by_hand = [1e3 * last / first, 1e3, real * 0.3 * last / 308.15, real * 0.3 * last / 294.26];
    let metal = last * 3.0 * 16.5e-6 * 13.89;
    let sum: f64 = by_hand.iter().map(|part| part * part).sum::<f64>() + metal * metal / 3.0;
    assert!((tight.residual_pa.standard_uncertainty / sum.sqrt() - 1.0).abs() < 0.02);
    assert!((tight.metal_expansion_pa / metal - 1.0).abs() < 1e-3);
    assert!((tight.smallest_drop_pa - 2.0 * tight.residual_pa.standard_uncertainty).abs() < 1e-9);
    assert!(tight.smallest_drop_pa < tight.allowed_drop_pa);
    assert_eq!(tight.cautions().count(), pressure_test::Caution::ALL.len());
    assert!(tight.cautions().any(|caution| caution.sentence().contains("oxygen")));

    let leaking = pressure_test::pressure_test(&test(465.0)).unwrap();
    assert_eq!((leaking.outcome, leaking.advice), (Outcome::Fail, pressure_test::Advice::FindLeak));
    let drop = 10.0 * PASCALS_PER_PSI - tight.residual_pa.value;
    assert!((leaking.drop_rate_pa_h.value - drop / 12.0).abs() < 1e-6 * drop);
    let leak = leaking.leak.unwrap();
    assert!((leak.throughput_pa_m3_s.value / (0.012 * drop / 43_200.0) - 1.0).abs() < 1e-9);
    // Mass by the ideal gas: within the compressibility at 33 bar.
    let grams = 0.012 * drop * 28.013_48 / (8.314_462_6 * cool[0].kelvin()) / 43_200.0 * 365.25 * 86_400.0;
    assert!((leak.mass_rate_g_yr.value / grams - 1.0).abs() < 0.02, "{} {grams}", leak.mass_rate_g_yr.value);
    assert!(leak.smallest_g_yr < leak.mass_rate_g_yr.value && leak.smallest_g_yr > 0.0);
}

#[test]
fn usual_instruments_cannot_tell_what_fine_ones_can() {
    let at = [fahrenheit(80.0)];
    let usual = PressureTest::new(
        TestReading::new(psig(400.0), &at),
        TestReading::new(psig(399.0), &at),
        86_400.0,
        psig(450.0),
    );
    let found = pressure_test::pressure_test(&usual).unwrap();
    assert_eq!((found.outcome, found.reason), (Outcome::CannotTell, pressure_test::Reason::TooUncertain));
    // Two limits of error of 3.5 psi and of 1.38 °F (0.1 % of 80 and 1.3), by hand, in psi.
    let (gauge, gas) = (3.5 / 3f64.sqrt(), 1.38 / 1.8 / 3f64.sqrt() * 414.7 / 299.8 * 1.06);
    let by_hand = (2.0 * gauge * gauge + 2.0 * gas * gas).sqrt();
    assert!((found.residual_pa.standard_uncertainty / PASCALS_PER_PSI / by_hand - 1.0).abs() < 0.01);
    let fine = PressureTest { first: reading(psig(400.0), &at), last: reading(psig(399.0), &at), ..usual };
    assert_eq!(pressure_test::pressure_test(&fine).unwrap().outcome, Outcome::Pass);
    // Allowed half a psi only, it is the fine ones that cannot tell.
    let strict = PressureTest { allowed_drop_pa: Some(0.5 * PASCALS_PER_PSI), ..fine };
    assert_eq!(pressure_test::pressure_test(&strict).unwrap().outcome, Outcome::CannotTell);
    let short = PressureTest { duration_s: 1800.0, ..fine };
    assert_eq!(pressure_test::pressure_test(&short).unwrap().reason, pressure_test::Reason::TooShort);
    let rose = PressureTest { last: reading(psig(410.0), &at), ..fine };
    assert_eq!(pressure_test::pressure_test(&rose).unwrap().reason, pressure_test::Reason::Rose);
    // Probes that differ widen it.
    let sun = [fahrenheit(70.0), fahrenheit(90.0)];
    let uneven = PressureTest { last: reading(psig(399.0), &sun), ..fine };
    let wide = pressure_test::pressure_test(&uneven).unwrap();
    assert!(
        (wide.last_temperature_k.standard_uncertainty - (0.09 + (10.0 / 1.8_f64).powi(2) / 3.0).sqrt()).abs() < 1e-6
    );
    assert_eq!(wide.outcome, Outcome::CannotTell);
}

#[test]
fn what_a_pressure_test_refuses() {
    let at = [fahrenheit(80.0)];
    let good = PressureTest::new(reading(psig(400.0), &at), reading(psig(399.0), &at), 86_400.0, psig(450.0));
    assert!(pressure_test::pressure_test(&good).is_ok());
    let many = [at[0]; 17];
    for (test, wanted) in [
        (PressureTest { low_side_design: psig(399.9), ..good }, "test pressure"),
        (PressureTest { last: reading(psig(451.0), &at), ..good }, "test pressure"),
        (PressureTest { duration_s: -3600.0, ..good }, "duration of the pressure test"),
        (PressureTest { duration_s: f64::NAN, ..good }, "duration of the pressure test"),
        (PressureTest { least_time_s: Some(0.0), ..good }, "duration of the pressure test"),
        (PressureTest { volume_m3: Some(0.0), ..good }, "internal volume"),
        (PressureTest { allowed_drop_pa: Some(-1.0), ..good }, "drop allowed in a pressure test"),
        (PressureTest { first: reading(psig(400.0), &[]), ..good }, "number of tube temperatures"),
        (PressureTest { first: reading(psig(400.0), &many), ..good }, "number of tube temperatures"),
        (PressureTest { first: reading(psig(400.0), &[kelvin(450.0)]), ..good }, "temperature of nitrogen"),
    ] {
        match pressure_test::pressure_test(&test) {
            Err(Error::OutOfRange { quantity, advice, .. }) => {
                assert!(quantity == wanted && !advice.is_empty(), "{quantity}")
            }
            Err(Error::NotFinite { quantity, .. }) => assert_eq!(quantity, wanted),
            other => panic!("{wanted}: {other:?}"),
        }
    }
    let Err(Error::OutOfRange { upper, advice, .. }) =
        pressure_test::pressure_test(&PressureTest { low_side_design: psig(399.9), ..good })
    else {
        panic!()
    };
    assert!(upper == psig(399.9).pascals() && advice.contains("low-side design pressure"));
}

// Water and ice.

#[test]
fn vapour_pressures_of_water_and_ice() {
    // ASHRAE Fundamentals 2017 ch. 1, table 3 (published; its equations are newer and differ by some 1e-4), Pa at °C.
    for (celsius, pressure) in [(-20.0, 103.24), (5.0, 872.6), (25.0, 3169.7), (50.0, 12_351.3), (100.0, 101_418.0)] {
        let found = water_saturation_pressure(Temperature::from_celsius(celsius).unwrap()).unwrap();
        assert!((found / pressure - 1.0).abs() < 2e-4, "{celsius}: {found}");
    }
    // IAPWS R14-08(2011), sublimation pressure for checking a program (from memory): 8.94735 Pa at 230 K.
    assert!((water_saturation_pressure(kelvin(230.0)).unwrap() / 8.947_35 - 1.0).abs() < 1e-3);
    // IAPWS-IF97, saturation for checking a program (from memory): 3536.58941 Pa at 300 K.
    assert!((water_saturation_pressure(kelvin(300.0)).unwrap() / 3_536.589_41 - 1.0).abs() < 2e-4);
    // Frost points in the trade's unit, computed apart from this library: °F at microns of mercury.
    for (microns, wanted) in [(500.0, -12.1), (1000.0, 0.8)] {
        let found = frost_point(microns * PASCALS_PER_MICRON).unwrap().fahrenheit();
        assert!((found - wanted).abs() < 0.05, "{microns}: {found}");
    }
    assert!(matches!(frost_point(-1.0), Err(Error::OutOfRange { .. })));
    assert!(matches!(frost_point(1e-4), Err(Error::OutOfRange { quantity: "pressure of water vapour", .. })));
    assert!(water_saturation_pressure(kelvin(150.0)).is_err());
}

// Evacuation. Pressures made from physics, with noise from a fixed sequence, read to the resolution of the gauge.

/// Numbers that look normal with mean 0 and standard deviation 1: sums of twelve from a linear congruential generator.
struct Noise(u64);

impl Noise {
    fn uniform(&mut self) -> f64 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 11) as f64 / (1_u64 << 53) as f64
    }

    fn next(&mut self) -> f64 {
        (0..12).map(|_| self.uniform()).sum::<f64>() - 6.0
    }
}

/// Readings in microns every `interval` seconds, rounded to whole microns.
fn watched(seed: u64, minutes: f64, interval: f64, noise: f64, microns: impl Fn(f64) -> f64) -> Vec<Sample> {
    let mut scatter = Noise(seed);
    let count = (60.0 * minutes / interval).round() as u32;
    let at = |step: u32| interval * f64::from(step);
    (0..=count)
        .map(|step| (microns(at(step)) + noise * scatter.next()).round())
        .enumerate()
        .map(|(step, microns)| Sample { time_s: at(step as u32), pressure_pa: microns * PASCALS_PER_MICRON })
        .collect()
}

fn judged(samples: &[Sample], celsius: f64, noise: f64) -> DecayFinding {
    let noise_pa = (noise > 0.0).then_some(noise * PASCALS_PER_MICRON);
    let coldest = Temperature::from_celsius(celsius).unwrap();
    decay_test(&Decay { noise_pa, temperature_uncertainty_k: Some(0.3), ..Decay::new(samples, coldest) }).unwrap()
}

/// Microns that level off, with the time constant in seconds.
fn levelling(from: f64, to: f64, tau: f64) -> impl Fn(f64) -> f64 {
    move |time: f64| to + (from - to) * (-time / tau).exp()
}

#[test]
fn a_leak_is_straight_and_moisture_levels_off() {
    // Air through a leak: choked, so the same rate all the time. 30 microns a minute.
    let leak = judged(&watched(1, 15.0, 15.0, 2.0, |t| 450.0 + 0.5 * t), 20.0, 2.0);
    assert_eq!((leak.outcome, leak.reason), (evacuation::Outcome::CannotTell, Reason::StillRising));
    assert_eq!((leak.behaviour, leak.causes().next()), (Behaviour::Straight, Some(Cause::Leak)));
    assert_eq!(leak.advice, Advice::FindLeak);
    let rate = leak.rate_pa_s;
    assert!((rate.value / PASCALS_PER_MICRON - 0.5).abs() < 3.0 * rate.standard_uncertainty / PASCALS_PER_MICRON);
    assert!((leak.reaches_limit_s.unwrap() - 1100.0).abs() < 20.0);
    // Longer, and it is above the limit.
    let longer = judged(&watched(1, 30.0, 15.0, 2.0, |t| 450.0 + 0.5 * t), 20.0, 2.0);
    assert_eq!((longer.outcome, longer.reason), (evacuation::Outcome::Fail, Reason::AboveLimit));

    // Ice at the coldest tube, -10 °C, gives off vapour until its pressure is reached: 1949 microns.
    let ice = water_saturation_pressure(Temperature::from_celsius(-10.0).unwrap()).unwrap() / PASCALS_PER_MICRON;
    let moist = judged(&watched(2, 30.0, 15.0, 2.0, levelling(450.0, ice, 400.0)), -10.0, 2.0);
    assert_eq!((moist.outcome, moist.behaviour), (evacuation::Outcome::Fail, Behaviour::LevellingOff));
    assert_eq!((moist.causes().next(), moist.advice), (Some(Cause::Moisture), Advice::BreakWithNitrogen));
    assert!(moist.cautions().any(|caution| caution == evacuation::Caution::WaterFreezes));
    assert!((moist.time_constant_s.unwrap() / 400.0 - 1.0).abs() < 0.05);
    let plateau = moist.plateau_pa.unwrap();
    assert!((plateau.value / PASCALS_PER_MICRON - ice).abs() < 20.0);

    // Gas out of the oil: it levels off far below the water's pressure at 20 °C, and under the limit.
    let oil = judged(&watched(3, 20.0, 15.0, 2.0, levelling(400.0, 620.0, 200.0)), 20.0, 2.0);
    assert_eq!((oil.outcome, oil.reason), (evacuation::Outcome::Pass, Reason::Held));
    assert_eq!((oil.behaviour, oil.causes().next()), (Behaviour::LevellingOff, Some(Cause::Outgassing)));

    let both = judged(&watched(4, 30.0, 10.0, 2.0, |t| levelling(300.0, 500.0, 150.0)(t) + 0.2 * t), 20.0, 2.0);
    assert_eq!((both.behaviour, both.causes().next()), (Behaviour::Both, Some(Cause::Leak)));
    assert!((both.rate_pa_s.value / PASCALS_PER_MICRON - 0.2).abs() < 0.02);

    let tight = judged(&watched(5, 15.0, 15.0, 2.0, |_| 400.0), 20.0, 2.0);
    assert_eq!((tight.outcome, tight.behaviour), (evacuation::Outcome::Pass, Behaviour::Steady));
    assert_eq!((tight.causes().count(), tight.advice), (0, Advice::Charge));
    let falling = judged(&watched(6, 15.0, 15.0, 2.0, |t| 600.0 - 0.2 * t), 20.0, 2.0);
    assert_eq!((falling.outcome, falling.reason), (evacuation::Outcome::CannotTell, Reason::Fell));
}

#[test]
fn what_a_vacuum_cannot_show() {
    // Held for ten minutes, but too warm a vacuum to begin with; too short; too near the limit; too cold to see ice.
    let high = judged(&watched(7, 15.0, 15.0, 2.0, |_| 700.0), 20.0, 2.0);
    assert_eq!((high.outcome, high.reason), (evacuation::Outcome::Fail, Reason::NotPulledDown));
    let short = judged(&watched(8, 5.0, 15.0, 2.0, |_| 400.0), 20.0, 2.0);
    assert_eq!((short.outcome, short.reason), (evacuation::Outcome::CannotTell, Reason::TooShort));
    assert_eq!(short.least_time_s, 600.0);
    let near = judged(&watched(9, 20.0, 15.0, 2.0, levelling(480.0, 960.0, 300.0)), 20.0, 2.0);
    assert_eq!(near.reason, Reason::NearLimit);
    // Ice at -20 °C has 774 microns: below the limit of 1000 it would not show. At -17 °C, 1030.
    let cold = judged(&watched(10, 15.0, 15.0, 2.0, |_| 400.0), -20.0, 2.0);
    assert_eq!((cold.outcome, cold.reason), (evacuation::Outcome::CannotTell, Reason::TooColdToSeeWater));
    assert_eq!(cold.advice, Advice::Warm);
    let less = judged(&watched(10, 15.0, 15.0, 2.0, |_| 400.0), -17.0, 2.0);
    assert_eq!(less.reason, Reason::Held);
    // A pump that stops at the water's own pressure: at 1 °C 4920 microns.
    let boiling = judged(&watched(11, 15.0, 15.0, 2.0, |_| 4930.0), 1.0, 2.0);
    assert_eq!((boiling.outcome, boiling.causes().next()), (evacuation::Outcome::Fail, Some(Cause::Moisture)));
    // A coarse gauge read seldom needs longer than the ten minutes: by hand (2·s·√(12·dt)·600/rise)^(2/3).
    let samples = watched(12, 20.0, 120.0, 0.0, |_| 400.0);
    let coarse = Decay { resolution_pa: Some(300.0 * PASCALS_PER_MICRON), ..Decay::new(&samples, kelvin(293.15)) };
    let found = decay_test(&coarse).unwrap();
    let by_hand = (2.0 * (300.0 / 12f64.sqrt()) * (12.0 * 120f64).sqrt() * 600.0 / 600.0).powf(2.0 / 3.0);
    assert!((found.least_time_s - by_hand.max(600.0)).abs() < 1e-6, "{} {by_hand}", found.least_time_s);
}

/// How often a definite word is wrong: over many sequences of noise.
#[test]
fn shapes_are_not_mistaken() {
    type Case = (&'static str, Box<dyn Fn(f64) -> f64>, &'static [Behaviour]);
    let cases: [Case; 5] = [
        ("steady", Box::new(|_| 400.0), &[Behaviour::Steady]),
        ("leak", Box::new(|t| 400.0 + 0.3 * t), &[Behaviour::Straight]),
        ("slow leak", Box::new(|t| 400.0 + 0.02 * t), &[Behaviour::Straight, Behaviour::Undecided, Behaviour::Steady]),
        ("level", Box::new(levelling(400.0, 700.0, 200.0)), &[Behaviour::LevellingOff]),
        ("slow level", Box::new(levelling(400.0, 460.0, 600.0)), &[Behaviour::LevellingOff, Behaviour::Undecided]),
    ];
    for (name, microns, allowed) in cases {
        let mut wrong = 0;
        for seed in 0..200 {
            let found = judged(&watched(1000 + seed, 15.0, 15.0, 3.0, &microns), 20.0, 3.0);
            wrong += u32::from(!allowed.contains(&found.behaviour));
        }
        println!("{name}: {wrong} of 200");
        assert!(wrong <= 6, "{name}: {wrong} of 200");
    }
    // The stated uncertainty of a leak's rate holds what was put in, as often as two standard uncertainties should.
    let mut outside = 0;
    for seed in 0..400 {
        let rate = judged(&watched(5000 + seed, 15.0, 15.0, 3.0, |t| 400.0 + 0.3 * t), 20.0, 3.0).rate_pa_s;
        outside += u32::from((rate.value - 0.3 * PASCALS_PER_MICRON).abs() > 2.0 * rate.standard_uncertainty);
    }
    println!("outside two standard uncertainties: {outside} of 400");
    assert!((6..=32).contains(&outside), "{outside} of 400; 4.6 % would be 18");
}

#[test]
fn what_a_decay_test_refuses() {
    let good = watched(1, 15.0, 60.0, 0.0, |_| 400.0);
    let at = kelvin(293.15);
    assert!(decay_test(&Decay::new(&good, at)).is_ok());
    let changed = |place: usize, change: fn(&mut Sample)| {
        let mut samples = good.clone();
        change(&mut samples[place]);
        samples
    };
    for (samples, quantity, place) in [
        (changed(3, |sample| sample.time_s = 120.0), "time of a pressure after isolation", 3),
        (changed(3, |sample| sample.time_s = 60.0), "time of a pressure after isolation", 3),
        (changed(0, |sample| sample.time_s = -1.0), "time of a pressure after isolation", 0),
        (changed(7, |sample| sample.pressure_pa = -0.1), "absolute pressure of an evacuated unit", 7),
        (changed(7, |sample| sample.pressure_pa = f64::NAN), "absolute pressure of an evacuated unit", 7),
        (good[..4].to_vec(), "number of pressures after isolation", 0),
        (Vec::new(), "number of pressures after isolation", 0),
    ] {
        let (found, error) = evacuation::check_samples(&samples).unwrap_err();
        let same = decay_test(&Decay::new(&samples, at)).unwrap_err();
        let (Error::OutOfRange { quantity: named, .. } | Error::NotFinite { quantity: named, .. }) = error else {
            panic!("{error}")
        };
        assert_eq!((named, found, error.to_string()), (quantity, place, same.to_string()));
    }
    let moment: Vec<Sample> = (0..9).map(|i| Sample { time_s: 0.1 * f64::from(i), pressure_pa: 50.0 }).collect();
    assert!(decay_test(&Decay::new(&moment, at)).is_err());
    let base = Decay::new(&good, at);
    for decay in [
        Decay { limit_pa: Some(50.0), ..base },
        Decay { target_pa: Some(0.0), ..base },
        Decay { noise_pa: Some(0.0), ..base },
        Decay { resolution_pa: Some(-1.0), ..base },
        Decay { share: Some(0.6), ..base },
        Decay { least_time_s: Some(f64::INFINITY), ..base },
        Decay { coldest: kelvin(100.0), ..base },
        Decay { temperature_uncertainty_k: Some(-0.1), ..base },
    ] {
        assert!(decay_test(&decay).is_err(), "{decay:?}");
    }
}

/// Whatever the readings, the answer is an error or made of finite numbers.
#[test]
fn no_series_gives_nan() {
    let mut numbers = Noise(77);
    let mut answered = 0;
    for case in 0..2000 {
        let count = 5 + (12.0 * numbers.uniform()) as usize;
        let mut time = 0.0;
        let samples: Vec<Sample> = (0..count)
            .map(|place| {
                time += 10f64.powf(9.0 * numbers.uniform() - 6.0);
                let pressure_pa = match case % 4 {
                    0 => 110e3 * numbers.uniform(),
                    1 => 0.0,
                    2 => 10f64.powf(10.0 * numbers.uniform() - 5.0),
                    _ => f64::from(u8::from(place > count / 2)) * 100.0,
                };
                Sample { time_s: time, pressure_pa }
            })
            .collect();
        let Ok(found) = decay_test(&Decay::new(&samples, kelvin(173.15 + 300.0 * numbers.uniform()))) else { continue };
        answered += 1;
        let values = [found.first_pa, found.last_pa, found.rate_pa_s, found.water_pressure_pa];
        let values = values.iter().chain(&found.plateau_pa).flat_map(|value| [value.value, value.standard_uncertainty]);
        let others = [found.watched_s, found.least_time_s, found.smallest_rate_pa_s, found.noise_pa];
        let optional = [found.time_constant_s, found.reaches_limit_s, found.frost_point_k, found.evidence_for_curve];
        for value in values.chain(others).chain(optional.into_iter().flatten()) {
            assert!(value.is_finite(), "{found:?} of {samples:?}");
        }
    }
    assert!(answered > 1500, "{answered}");
}

#[test]
fn answers_have_words_of_their_own() {
    macro_rules! check {
        ($($kind:path),*) => {$(
            let all = <$kind>::ALL;
            for (place, answer) in all.iter().enumerate() {
                assert_eq!(<$kind>::from_number(answer.number()), Some(*answer));
                assert!(answer.sentence().ends_with('.') && answer.sentence().len() > 15, "{answer:?}");
                for other in &all[place + 1..] {
                    assert!(answer.number() != other.number() && answer.name() != other.name());
                }
            }
        )*};
    }
    check!(pressure_test::Outcome, pressure_test::Reason, pressure_test::Advice, pressure_test::Caution);
    check!(evacuation::Outcome, evacuation::Reason, Behaviour, Cause, Advice, evacuation::Caution);
    check!(Temper, Joint, tube_rating::Outcome, tube_rating::Caution, Flash, line_drop::Outcome, line_drop::Caution);
}

// Tubes.

/// Diameter, wall, by how much thinner and larger it may be, and both rows of ratings.
type Ratings = ((f64, f64, f64, f64), [f64; 7], [f64; 7]);

/// Copper Tube Handbook, table 3c (read): rated pressures in psi of type M tube at 100, 150, 200, 250, 300, 350 and 400 °F,
/// annealed and drawn. Sizes of ASTM B88 (3/8, 1/2 and 3/4: in, wall, its tolerance; from memory); diameters +0.0025 in
/// annealed for the two small sizes, +0.003 for the third, +0.001 drawn (from memory).
#[test]
fn ratings_as_in_the_handbook() {
    let temperatures = [100.0, 150.0, 200.0, 250.0, 300.0, 350.0, 400.0];
    let rows: [Ratings; 3] = [
        (
            (0.500, 0.025, 0.002, 0.0025),
            [570.0, 485.0, 466.0, 456.0, 447.0, 380.0, 285.0],
            [982.0, 982.0, 982.0, 982.0, 953.0, 925.0, 896.0],
        ),
        (
            (0.625, 0.028, 0.003, 0.0025),
            [494.0, 420.0, 403.0, 395.0, 387.0, 329.0, 247.0],
            [850.0, 850.0, 850.0, 850.0, 825.0, 800.0, 776.0],
        ),
        (
            (0.875, 0.032, 0.003, 0.003),
            [407.0, 346.0, 332.0, 326.0, 319.0, 271.0, 204.0],
            [701.0, 701.0, 701.0, 701.0, 680.0, 660.0, 639.0],
        ),
    ];
    for ((diameter, wall, thinner, larger), annealed, drawn) in rows {
        for (place, temperature) in temperatures.into_iter().enumerate() {
            let rated = |temper, joint, larger: f64| {
                let tube = CopperTube {
                    outside_diameter_m: diameter * 0.0254,
                    wall_m: wall * 0.0254,
                    temper,
                    joint,
                    temperature: fahrenheit(temperature),
                    wall_tolerance_m: Some(thinner * 0.0254),
                    diameter_tolerance_m: Some(larger * 0.0254),
                };
                copper_tube_rating(&tube, None).unwrap().rating.pascals() / PASCALS_PER_PSI
            };
            let soft = rated(Temper::Annealed, Joint::Brazed, larger);
            assert!((soft - annealed[place]).abs() < 1.0, "{diameter} at {temperature}: {soft}");
            let hard = rated(Temper::Drawn, Joint::Unheated, 0.001);
            assert!((hard - drawn[place]).abs() < 1.0, "{diameter} at {temperature}, drawn: {hard}");
            // The flame makes hard tube soft.
            assert_eq!(rated(Temper::Drawn, Joint::Brazed, larger), soft);
        }
    }
}

fn tube(diameter: f64, wall: f64, temperature: f64) -> CopperTube {
    CopperTube {
        outside_diameter_m: diameter * 0.0254,
        wall_m: wall * 0.0254,
        temper: Temper::Annealed,
        joint: Joint::Brazed,
        temperature: fahrenheit(temperature),
        wall_tolerance_m: None,
        diameter_tolerance_m: None,
    }
}

#[test]
fn tubes_of_air_conditioning() {
    // By hand with S = 6000 psi at 100 °F: nominal 2·6000·0.032/(0.375 − 0.0256) = 1099 psi.
    let small = copper_tube_rating(&tube(0.375, 0.032, 100.0), None).unwrap();
    assert!((small.nominal_pa.value / PASCALS_PER_PSI - 1099.03).abs() < 0.05);
    assert!((small.allowable_stress_pa / PASCALS_PER_PSI - 6000.0).abs() < 1e-6);
    // A published list of ASTM B280 coils at 150 °F (read), psi; the default tolerance is a little stricter than its own.
    for (diameter, wall, listed) in [
        (0.250, 0.030, 1195.0),
        (0.375, 0.032, 836.0),
        (0.500, 0.032, 618.0),
        (0.625, 0.035, 525.0),
        (0.750, 0.035, 435.0),
        (0.875, 0.045, 495.0),
        (1.125, 0.050, 420.0),
    ] {
        let found = copper_tube_rating(&tube(diameter, wall, 150.0), None).unwrap();
        let ratio = found.rating.pascals() / PASCALS_PER_PSI / listed;
        assert!(ratio > 0.955 && ratio <= 1.0, "{diameter}: {ratio}");
        assert!(found.nominal_pa.value / PASCALS_PER_PSI > listed);
    }
    // The stress runs straight between 100 and 150 °F, stays the same below, and falls with temperature.
    let stress = |temperature| copper_tube_rating(&tube(0.5, 0.032, temperature), None).unwrap().allowable_stress_pa;
    assert!((stress(125.0) / PASCALS_PER_PSI - 5550.0).abs() < 1e-6);
    assert!((stress(-20.0) / stress(100.0) - 1.0).abs() < 1e-12);
    assert!((stress(400.0) / PASCALS_PER_PSI - 3000.0).abs() < 1e-6);

    let design = |psi| Some(GaugePressure::from_psi(psi).unwrap());
    for (psi, wanted) in [
        (450.0, tube_rating::Outcome::Sufficient),
        (500.0, tube_rating::Outcome::Marginal),
        (600.0, tube_rating::Outcome::Insufficient),
    ] {
        let found = copper_tube_rating(&tube(0.875, 0.045, 150.0), design(psi)).unwrap();
        assert_eq!(found.outcome, Some(wanted), "{psi}");
        assert!((found.margin_pa.unwrap() - (found.rating.pascals() - psi * PASCALS_PER_PSI)).abs() < 1e-6);
    }
    assert!(small.cautions().any(|caution| caution.sentence().contains("heat pump")));
    for bad in [
        tube(0.0, 0.032, 100.0),
        tube(0.375, 0.2, 100.0),
        tube(0.375, 0.0, 100.0),
        tube(0.375, f64::NAN, 100.0),
        tube(0.375, 0.032, 450.0),
        tube(0.375, 0.032, -50.0),
        CopperTube { wall_tolerance_m: Some(0.032 * 0.0254), ..tube(0.375, 0.032, 100.0) },
        CopperTube { diameter_tolerance_m: Some(-1e-5), ..tube(0.375, 0.032, 100.0) },
    ] {
        assert!(copper_tube_rating(&bad, None).is_err(), "{bad:?}");
    }
}

// A line.

fn line(refrigerant: &'static SaturationCurves, upstream: f64, downstream: f64, flash: Flash) -> LineDrop {
    LineDrop {
        refrigerant,
        upstream: fahrenheit(upstream),
        downstream: fahrenheit(downstream),
        flash,
        difference_uncertainty_k: Some(0.28),
    }
}

/// Throttling by the equations of state: from liquid at enthalpy h to a lower pressure at the same h. The temperatures of
/// the two states must never promise more than the pressure that was really lost.
#[test]
fn the_least_pressure_drop_is_the_least() {
    for (model, curves) in [(&model::R410A, &R410A), (&model::R407C, &R407C), (&model::R32, &R32)] {
        let properties = Properties::of(model, Reference::Iir).unwrap();
        for subcooling in [0.5, 3.0, 8.0] {
            let temperature = fahrenheit(95.0).kelvin();
            let bubble = properties.saturated_liquid(temperature + subcooling).unwrap().pressure;
            let start = StateInput::TemperaturePressure { temperature, pressure: bubble };
            let enthalpy = properties.state(start).unwrap().enthalpy;
            let mut flashed = 0;
            for share in [0.98, 0.9, 0.8, 0.6, 0.4] {
                let pressure = share * bubble;
                let end = properties.state(StateInput::PressureEnthalpy { pressure, enthalpy }).unwrap();
                let found = line_temperature_drop(&LineDrop {
                    downstream: kelvin(end.temperature),
                    upstream: kelvin(temperature),
                    ..line(curves, 95.0, 95.0, Flash::Unknown)
                })
                .unwrap();
                let lost = bubble - pressure;
                if end.quality.is_some() {
                    flashed += 1;
                    assert!(found.least_pressure_drop_pa.value < lost, "{share}: {found:?}");
                    if share < 0.7 {
                        assert_eq!(found.outcome, line_drop::Outcome::DropIfFlashing);
                        // And it is most of it, once well into flashing.
                        assert!(found.least_pressure_drop_pa.value > 0.3 * lost, "{share}: {found:?}");
                    }
                } else {
                    // Still liquid: pressure lost, temperature hardly changed.
                    assert!(temperature - end.temperature < 0.055e-5 * lost, "{subcooling} {share}");
                    assert_eq!(found.outcome, line_drop::Outcome::NoEvidence, "{subcooling} {share}");
                }
            }
            assert!(flashed >= 2);
        }
    }
}

#[test]
fn what_a_temperature_drop_says() {
    use line_drop::Outcome;
    for (upstream, downstream, flash, wanted) in [
        (95.0, 89.0, Flash::Flashing, Outcome::PressureDrop),
        (95.0, 89.0, Flash::Unknown, Outcome::DropIfFlashing),
        (95.0, 89.0, Flash::Subcooled, Outcome::HeatExchange),
        (95.0, 94.5, Flash::Flashing, Outcome::NoEvidence),
        (95.0, 99.0, Flash::Unknown, Outcome::Warmed),
    ] {
        assert_eq!(line_temperature_drop(&line(&R410A, upstream, downstream, flash)).unwrap().outcome, wanted);
    }
    assert!(Outcome::NoEvidence.sentence().contains("does not prove"));
    assert!(Outcome::HeatExchange.sentence().contains("heat exchange"));
    // Two usual clamps cannot tell 2 °F.
    let usual = LineDrop { difference_uncertainty_k: None, ..line(&R410A, 95.0, 93.0, Flash::Flashing) };
    assert_eq!(line_temperature_drop(&usual).unwrap().outcome, Outcome::NoEvidence);
    let cautions =
        |refrigerant| line_temperature_drop(&line(refrigerant, 95.0, 89.0, Flash::Unknown)).unwrap().caution_bits();
    let fire = 1 << line_drop::Caution::FlammableRefrigerant.number();
    assert!(cautions(&R32) & fire != 0 && cautions(&R410A) & fire == 0);
    assert!(line_temperature_drop(&line(&R410A, 200.0, 89.0, Flash::Unknown)).is_err());
    let bad = LineDrop { difference_uncertainty_k: Some(f64::NAN), ..usual };
    assert!(line_temperature_drop(&bad).is_err());
}
