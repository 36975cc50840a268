//! The compact tables against the equations of state they are made from, at points the fit did not look at.

use proptest::prelude::*;
use satline::eos::{End, Mixture};
use satline::refrigerant::{self, Refrigerant};
use satline::saturation::SaturationLine;

/// What the tables promise.
const TEMPERATURE: f64 = 20e-6;
const PRESSURE: f64 = 1e-6;

fn lines(refrigerant: &'static Refrigerant) -> [(End, &'static SaturationLine); 2] {
    [(End::Bubble, refrigerant.curves.bubble), (End::Dew, refrigerant.curves.dew)]
}

/// All promises at one temperature and the pressure that belongs to it.
fn hold(mixture: &Mixture, end: End, line: &SaturationLine, temperature: f64) {
    let label = mixture.model().identity.designation;
    let truth = mixture.at_temperature(end, temperature).unwrap().pressure;
    let pressure = line.pressure.at(temperature).unwrap();
    assert!((pressure / truth - 1.0).abs() <= PRESSURE, "{label} {end:?} {temperature} K: {pressure} {truth}");
    let back = line.temperature.at(pressure).unwrap();
    assert!((back - temperature).abs() <= TEMPERATURE, "{label} {end:?} {temperature} K comes back as {back}");
    let true_back = mixture.at_pressure(end, pressure).unwrap().temperature;
    assert!((back - true_back).abs() <= TEMPERATURE, "{label} {end:?} {pressure} Pa: {back} {true_back}");
    let again = line.pressure.at(back).unwrap();
    assert!((again / pressure - 1.0).abs() <= PRESSURE, "{label} {end:?} {pressure} Pa comes back as {again}");
}

/// Joints and range ends, with their neighbours on both sides.
#[test]
fn joints_and_ends() {
    for refrigerant in refrigerant::ALL {
        let mixture = Mixture::of(refrigerant.model).unwrap();
        for (end, line) in lines(refrigerant) {
            let curve = &line.pressure;
            let mut step = 0.0;
            while curve.lower + step <= curve.upper {
                let joint = curve.lower + step;
                for temperature in [joint.next_down(), joint, joint.next_up()] {
                    if temperature >= curve.lower && temperature <= curve.upper {
                        hold(&mixture, end, line, temperature);
                    }
                }
                // Neighbouring pieces meet: the jump at a joint is far below the promise.
                if step > 0.0 && joint < curve.upper {
                    let (below, at) = (curve.at(joint.next_down()).unwrap(), curve.at(joint).unwrap());
                    assert!((below / at - 1.0).abs() < 1e-12);
                }
                step += 1.0 / curve.steps_per_kelvin;
            }
            hold(&mixture, end, line, curve.upper);
            let inverse = &line.temperature;
            let width = 2_f64.powi(-i32::try_from(inverse.octave_bits).unwrap());
            let mut joint = 2_f64.powi(inverse.lower.log2().floor() as i32);
            while joint <= inverse.upper {
                let octave = 2_f64.powi(joint.log2().floor() as i32);
                if joint > inverse.lower {
                    let (below, at) = (inverse.at(joint.next_down()).unwrap(), inverse.at(joint).unwrap());
                    assert!((below - at).abs() < 1e-9, "{below} {at}");
                    let truth = mixture.at_pressure(end, joint).unwrap().temperature;
                    assert!((at - truth).abs() <= TEMPERATURE);
                }
                joint += octave * width;
            }
        }
    }
}

/// Both curves rise strictly, and their slopes are the derivatives.
#[test]
fn curves_rise() {
    for refrigerant in refrigerant::ALL {
        for (_, line) in lines(refrigerant) {
            let (mut last_t, mut last_p) = (0.0, 0.0);
            for index in 0..=5000 {
                let share = f64::from(index) / 5000.0;
                let pressure = line.temperature.lower * (line.temperature.upper / line.temperature.lower).powf(share);
                let pressure = pressure.min(line.temperature.upper);
                let temperature = line.temperature.at(pressure).unwrap();
                assert!(temperature > last_t);
                last_t = temperature;
                let at = (line.pressure.lower + share * (line.pressure.upper - line.pressure.lower))
                    .min(line.pressure.upper);
                let value = line.pressure.at(at).unwrap();
                assert!(value > last_p);
                last_p = value;
                if index > 0 && index < 4990 {
                    let step = 1e-6 * pressure;
                    let rise = line.temperature.at(pressure + step).unwrap() - temperature;
                    let slope = line.temperature.slope_at(pressure).unwrap();
                    assert!((rise / step / slope - 1.0).abs() < 1e-3, "{rise} {slope}");
                }
            }
        }
    }
}

/// Bytes of coefficients of every refrigerant, pinned: growth must be meant.
#[test]
fn bytes_are_pinned() {
    let bytes = |line: &SaturationLine| size_of_val(line.pressure.pieces) + size_of_val(line.temperature.pieces);
    let found: Vec<(&str, usize)> = refrigerant::ALL
        .iter()
        .map(|refrigerant| {
            let curves = refrigerant.curves;
            let shared = std::ptr::eq(curves.bubble, curves.dew);
            (curves.designation(), bytes(curves.bubble) + if shared { 0 } else { bytes(curves.dew) })
        })
        .collect();
    let pinned = include_str!("../data/table_bytes.csv");
    let pinned = pinned.lines().filter(|line| !line.starts_with('#')).skip(1);
    let found = found.into_iter().map(|(designation, bytes)| format!("{designation},{bytes}"));
    assert!(found.eq(pinned.map(String::from)), "regenerate tests/data/table_bytes.csv if the growth is meant");
}

/// The ranges that design asks for: from 213.15 K or the equation's own limit to 0.99 of the critical temperature.
#[test]
fn ranges() {
    for refrigerant in refrigerant::ALL {
        let mixture = Mixture::of(refrigerant.model).unwrap();
        let (low, high) = refrigerant.curves.temperature_range_k();
        assert_eq!(low, mixture.lowest_temperature().max(213.15));
        let end = 0.99 * mixture.critical_point().unwrap().temperature;
        assert!(high <= end && high > end - 0.02, "{high} {end}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 400, ..ProptestConfig::default() })]

    #[test]
    fn anywhere(which in 0..refrigerant::ALL.len(), dew: bool, share in 0.0..=1.0_f64) {
        let refrigerant = refrigerant::ALL[which];
        let (end, line) = lines(refrigerant)[usize::from(dew)];
        let curve = &line.pressure;
        let temperature = (curve.lower + share * (curve.upper - curve.lower)).min(curve.upper);
        hold(&Mixture::of(refrigerant.model).unwrap(), end, line, temperature);
    }

    #[test]
    fn any_bits_give_a_value_or_an_error(which in 0..refrigerant::ALL.len(), dew: bool, bits: u64) {
        let value = f64::from_bits(bits);
        let (_, line) = lines(refrigerant::ALL[which])[usize::from(dew)];
        if let Ok(pressure) = line.pressure.at(value) {
            prop_assert!(pressure.is_finite() && pressure > 0.0);
        }
        if let Ok(temperature) = line.temperature.at(value) {
            prop_assert!(temperature.is_finite() && temperature > 0.0);
        }
    }
}
