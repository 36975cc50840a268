//! The compact curves of saturated density and enthalpy against the equations of state they are made from, at points the
//! fit did not look at, and against each other.

use satline::eos::{End, Mixture, Properties, Reference};
use satline::quantity::Temperature;
use satline::refrigerant::{self, Refrigerant};

/// What the curves promise: a relative error of a density, and of an enthalpy J/kg.
const DENSITY: f64 = 1e-6;
const ENTHALPY: f64 = 2.0;

fn reference(mixture: &Mixture) -> Properties {
    Properties::of(mixture.model(), Reference::Iir)
        .or_else(|_| Properties::of(mixture.model(), Reference::NormalBoiling))
        .unwrap()
}

/// Temperatures all over the range, closer towards its upper end, with joints of pieces and their neighbours.
fn temperatures(refrigerant: &Refrigerant) -> Vec<f64> {
    let (lower, upper) = refrigerant.saturated_range_k();
    let span = upper - lower;
    let mut all: Vec<f64> = (0..=160).map(|index| lower + span * f64::from(index) / 160.0).collect();
    all.extend((0..=60).map(|index| upper - 0.2 * span * f64::from(index) / 61.7));
    for curve in refrigerant.properties.all() {
        let width = 2_f64.powi(-i32::try_from(curve.octave_bits).unwrap());
        for octave in 0..9 {
            for piece in 0..1_u32 << curve.octave_bits {
                let joint = curve.end - 2_f64.powi(octave) * (1.0 + width * f64::from(piece));
                all.extend([joint.next_down(), joint, joint.next_up()]);
            }
        }
    }
    all.retain(|temperature| *temperature >= lower && *temperature <= upper);
    all
}

#[test]
fn within_what_they_promise() {
    let mut worst_of_latent: f64 = 0.0;
    for refrigerant in refrigerant::ALL {
        let mixture = Mixture::of(refrigerant.model).unwrap();
        let reference = reference(&mixture);
        let name = refrigerant.designation();
        for kelvin in temperatures(refrigerant) {
            let at = Temperature::from_kelvin(kelvin).unwrap();
            let truth = |end| {
                let point = mixture.at_temperature(end, kelvin).unwrap();
                let enthalpy = reference.enthalpy_at(kelvin, point.bulk_density).unwrap();
                (point.bulk_density * mixture.molar_mass, enthalpy)
            };
            let (liquid, vapor) = (truth(End::Bubble), truth(End::Dew));
            let latent = vapor.1 - liquid.1;
            for (found, truth) in [
                (refrigerant.saturated_liquid_density_kg_m3(at).unwrap(), liquid.0),
                (refrigerant.saturated_vapor_density_kg_m3(at).unwrap(), vapor.0),
            ] {
                assert!((found / truth - 1.0).abs() <= DENSITY, "{name} {kelvin} K: {found} {truth} kg/m³");
            }
            for (found, truth) in [
                (refrigerant.saturated_liquid_enthalpy_j_kg(at).unwrap(), liquid.1),
                (refrigerant.saturated_vapor_enthalpy_j_kg(at).unwrap(), vapor.1),
            ] {
                assert!((found - truth).abs() <= ENTHALPY, "{name} {kelvin} K: {found} {truth} J/kg");
                worst_of_latent = worst_of_latent.max((found - truth).abs() / latent);
            }
        }
    }
    println!("worst error of an enthalpy over latent heat: {worst_of_latent:.2e}");
    assert!(worst_of_latent < 1e-5, "{worst_of_latent}");
}

/// Clapeyron's equation couples all five curves of a pure fluid: latent heat is T·(v″ − v′)·dp/dT.
#[test]
fn clapeyron() {
    for refrigerant in refrigerant::ALL.iter().filter(|found| found.identity().components.len() == 1) {
        let (lower, upper) = refrigerant.saturated_range_k();
        for share in [0.1, 0.3, 0.5, 0.7, 0.9] {
            let kelvin = lower + share * (upper - lower);
            let at = Temperature::from_kelvin(kelvin).unwrap();
            let pressure = |offset: f64| refrigerant.curves.bubble.pressure.at(kelvin + offset).unwrap();
            let slope = (8.0 * (pressure(0.1) - pressure(-0.1)) - (pressure(0.2) - pressure(-0.2))) / 1.2;
            let volume = 1.0 / refrigerant.saturated_vapor_density_kg_m3(at).unwrap()
                - 1.0 / refrigerant.saturated_liquid_density_kg_m3(at).unwrap();
            let latent = refrigerant.saturated_vapor_enthalpy_j_kg(at).unwrap()
                - refrigerant.saturated_liquid_enthalpy_j_kg(at).unwrap();
            let ratio = kelvin * volume * slope / latent;
            assert!((ratio - 1.0).abs() < 5e-5, "{} {kelvin} K: {ratio}", refrigerant.designation());
        }
    }
}

/// A vapour is thinner than its liquid and holds more heat; towards the critical point both gaps shrink.
#[test]
fn signs_and_trends() {
    for refrigerant in refrigerant::ALL {
        let (lower, upper) = refrigerant.saturated_range_k();
        let (mut last_liquid, mut last_vapor, mut last_latent) = (f64::INFINITY, 0.0, f64::INFINITY);
        for index in 0..=400 {
            let kelvin = (lower + (upper - lower) * f64::from(index) / 400.0).min(upper);
            let at = Temperature::from_kelvin(kelvin).unwrap();
            let liquid = refrigerant.saturated_liquid_density_kg_m3(at).unwrap();
            let vapor = refrigerant.saturated_vapor_density_kg_m3(at).unwrap();
            let latent = refrigerant.saturated_vapor_enthalpy_j_kg(at).unwrap()
                - refrigerant.saturated_liquid_enthalpy_j_kg(at).unwrap();
            assert!(liquid < last_liquid && vapor > last_vapor && latent < last_latent);
            assert!(liquid > vapor && latent > 0.0, "{} {kelvin} K", refrigerant.designation());
            (last_liquid, last_vapor, last_latent) = (liquid, vapor, latent);
        }
    }
}

/// They answer wherever the curves of pressure do, and refuse beyond.
#[test]
fn ranges() {
    for refrigerant in refrigerant::ALL {
        let (lower, upper) = refrigerant.saturated_range_k();
        assert_eq!((lower, upper), refrigerant.curves.temperature_range_k());
        for beyond in [lower.next_down(), upper.next_up()] {
            let at = Temperature::from_kelvin(beyond).unwrap();
            for refused in [
                refrigerant.saturated_liquid_density_kg_m3(at),
                refrigerant.saturated_vapor_density_kg_m3(at),
                refrigerant.saturated_liquid_enthalpy_j_kg(at),
                refrigerant.saturated_vapor_enthalpy_j_kg(at),
            ] {
                let Err(satline::Error::OutOfRange { value, lower: least, upper: most, .. }) = refused else {
                    panic!("{} {beyond} K: {refused:?}", refrigerant.designation());
                };
                assert_eq!((value, least, most), (beyond, lower, upper));
            }
        }
    }
}

/// Bytes of coefficients of the four curves of every refrigerant, pinned: growth must be meant.
#[test]
fn bytes_are_pinned() {
    let found = refrigerant::ALL.iter().map(|refrigerant| {
        let bytes: usize = refrigerant.properties.all().iter().map(|curve| size_of_val(curve.pieces)).sum();
        format!("{},{bytes}", refrigerant.designation())
    });
    let pinned = include_str!("../data/property_bytes.csv");
    let pinned = pinned.lines().filter(|line| !line.starts_with('#')).skip(1);
    assert!(
        found.eq(pinned.map(String::from)),
        "regenerate tests/data/property_bytes.csv from the tables' own headers if the growth is meant"
    );
}
