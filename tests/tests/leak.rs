//! What a leak does to a blend, against the simple theory, against a second program for the same balance written here,
//! and against what must hold of any leak. The isothermal leak of a vessel at equilibrium is the model of Kim and Didion
//! (HVAC&R Research 1 (1995) 3-20, from memory); with an outside library it is compared in tests/python/test_leak.py.

use satline::Error;
use satline::eos::{End, Filling, Leaving, MAX_COMPONENTS, Mixture, Model, PerComponent, Vessel, model};
use satline::refrigerant::{LeakCaution, flammable_share, leak_cautions};

fn vessel(model: &'static Model, temperature: f64, share: f64) -> Vessel {
    Vessel::filled(&Mixture::of(model).unwrap(), temperature, Filling::LiquidVolumeFraction(share)).unwrap()
}

fn worst_difference(one: &PerComponent, other: &PerComponent) -> f64 {
    one.iter().zip(other).map(|(one, other)| (one - other).abs()).fold(0.0, f64::max)
}

/// Bubble or dew temperature, K.
fn at(end: End, mixture: &Mixture, pressure: f64) -> f64 {
    mixture.at_pressure(end, pressure).unwrap().temperature
}

#[test]
fn liquid_and_vapor_are_in_equilibrium_and_add_up() {
    for model in [&model::R407C, &model::R454B, &model::R448A, &model::R455A, &model::R410A, &model::R470A] {
        let new = vessel(model, 295.15, 0.8);
        for leaving in Leaving::ALL {
            let left = new.after_leak(leaving, 0.5).unwrap();
            // Every component is in the liquid or in the vapour, and half of the mass is gone.
            let (share, x, y) = (left.liquid_mass_share(), left.liquid_mass_fractions(), left.vapor_mass_fractions());
            for (k, total) in left.mass_fractions().iter().enumerate() {
                assert!((share * x[k] + (1.0 - share) * y[k] - total).abs() < 1e-12);
            }
            assert!((left.density() / new.density() - 0.5).abs() < 1e-12);
            let volume = left.liquid_volume_fraction();
            let mass = volume * left.liquid_density() + (1.0 - volume) * left.vapor_density();
            assert!((mass / left.density() - 1.0).abs() < 1e-12);
            // By another path: the liquid's own bubble point is this very equilibrium.
            let liquid = Mixture::with_mass_fractions(model, &x).unwrap();
            let bubble = liquid.at_temperature(End::Bubble, 295.15).unwrap();
            assert!((bubble.pressure / left.pressure() - 1.0).abs() < 1e-9);
            let density = bubble.bulk_density * liquid.molar_mass;
            assert!((density / left.liquid_density() - 1.0).abs() < 1e-9);
            let moles = bubble.incipient_fractions();
            let masses: Vec<f64> =
                model.fluids.iter().zip(moles).map(|(fluid, mole)| fluid.molar_mass * mole).collect();
            for (k, mass) in masses.iter().enumerate() {
                assert!((mass / masses.iter().sum::<f64>() - y[k]).abs() < 1e-9);
            }
        }
    }
}

/// What has left, counted from the leaving phase alone (Simpson's rule over forty pieces), and what remains make up what
/// was there.
#[test]
fn no_component_is_lost_or_made() {
    for (model, leaving) in
        [(&model::R407C, Leaving::Vapor), (&model::R448A, Leaving::Vapor), (&model::R448A, Leaving::Liquid)]
    {
        let new = vessel(model, 295.15, 0.8);
        let leaves = |fraction: f64| {
            let here = new.after_leak(leaving, fraction).unwrap();
            match leaving {
                Leaving::Liquid => here.liquid_mass_fractions(),
                Leaving::Vapor => here.vapor_mass_fractions(),
            }
        };
        let (lost, pieces) = (0.6, 40);
        let width = lost / f64::from(pieces);
        let mut gone = [0.0; MAX_COMPONENTS];
        for piece in 0..pieces {
            let from = width * f64::from(piece);
            for (weight, part) in [(1.0, 0.0), (4.0, 0.5), (1.0, 1.0)] {
                for (place, share) in gone.iter_mut().zip(leaves(from + part * width)) {
                    *place += weight / 6.0 * width * share;
                }
            }
        }
        let remaining = new.after_leak(leaving, lost).unwrap().mass_fractions();
        for (k, first) in new.mass_fractions().iter().enumerate() {
            let balance = gone[k] + (1.0 - lost) * remaining[k] - first;
            assert!(balance.abs() < 1e-9, "{} {k} {balance:e}", model.identity.designation);
        }
    }
}

/// Where the vapour holds next to nothing, Rayleigh's equation dx/d ln m = y − x, from bubble points alone. What is left
/// of a difference is what the vapour holds, and goes with it.
#[test]
fn a_thin_vapor_gives_rayleighs_equation() {
    let rayleigh = |model: &'static Model, temperature: f64, lost: f64| -> PerComponent {
        let slope = |x: &PerComponent| -> PerComponent {
            let mixture = Mixture::with_mass_fractions(model, x).unwrap();
            let moles = mixture.at_temperature(End::Bubble, temperature).unwrap().incipient_fractions();
            let mut y = [0.0; MAX_COMPONENTS];
            for ((place, fluid), mole) in y.iter_mut().zip(model.fluids).zip(moles) {
                *place = fluid.molar_mass * mole;
            }
            let total: f64 = y.iter().sum();
            std::array::from_fn(|k| y[k] / total - x[k])
        };
        let components = model.identity.components;
        let mut x: PerComponent = std::array::from_fn(|k| components.get(k).map_or(0.0, |part| part.mass_fraction));
        let steps = 200;
        let width = (1.0_f64 - lost).ln() / f64::from(steps);
        for _ in 0..steps {
            // The midpoint rule: another method than the library's.
            let k1 = slope(&x);
            let middle: PerComponent = std::array::from_fn(|k| x[k] + 0.5 * width * k1[k]);
            let k2 = slope(&middle);
            x = std::array::from_fn(|k| x[k] + width * k2[k]);
        }
        x
    };
    for model in [&model::R407C, &model::R454B] {
        let mut before = f64::INFINITY;
        for temperature in [240.0, 220.0, 200.0] {
            // Filled to the brim, so that little but liquid is there at first.
            let left = vessel(model, temperature, 0.999).after_leak(Leaving::Vapor, 0.3).unwrap();
            let simple = rayleigh(model, temperature, 0.3);
            let difference = worst_difference(&left.mass_fractions(), &simple);
            let held = 1.0 - left.liquid_mass_share();
            println!("{} {temperature} K: {difference:.1e}, vapour holds {held:.1e}", model.identity.designation);
            assert!(
                difference < held && difference < 0.5 * before,
                "{temperature}: {difference:e} {held:e} {before:e}"
            );
            before = difference;
        }
        assert!(before < 1e-4);
    }
}

/// The same balance by another program: the liquid's composition and share of the volume as unknowns, every equilibrium
/// a bubble point, steps by Heun's method with what two step lengths tell extrapolated.
#[test]
fn a_second_program_agrees() {
    let (model, temperature) = (&model::R454B, 295.15);
    struct Point {
        densities: [f64; 2],
        vapor: [f64; 2],
        pressure: f64,
    }
    // Mass densities of the two components in the whole vessel at a liquid of composition x that fills a share.
    let point = |x: f64, share: f64| -> Point {
        let liquid = Mixture::with_mass_fractions(model, &[x, 1.0 - x, 0.0, 0.0, 0.0, 0.0]).unwrap();
        let bubble = liquid.at_temperature(End::Bubble, temperature).unwrap();
        let density = bubble.bulk_density * liquid.molar_mass;
        let vapor: [f64; 2] = std::array::from_fn(|k| bubble.incipient_densities[k] * model.fluids[k].molar_mass);
        let liquids = [density * x, density * (1.0 - x)];
        let densities = std::array::from_fn(|k| share * liquids[k] + (1.0 - share) * vapor[k]);
        Point { densities, vapor, pressure: bubble.pressure }
    };
    let settle = |wanted: [f64; 2], mut x: f64, mut share: f64| -> (f64, f64) {
        for _ in 0..20 {
            let here = point(x, share);
            let (dx, ds) = (1e-5, 1e-5);
            let (by_x, by_s) = (point(x + dx, share), point(x, share + ds));
            let [a, b] = std::array::from_fn(|k| (by_x.densities[k] - here.densities[k]) / dx);
            let [c, d] = std::array::from_fn(|k| (by_s.densities[k] - here.densities[k]) / ds);
            let [p, q] = std::array::from_fn(|k| wanted[k] - here.densities[k]);
            let determinant = a * d - b * c;
            let (step_x, step_s) = ((p * d - q * c) / determinant, (a * q - b * p) / determinant);
            (x, share) = (x + step_x, share + step_s);
            if step_x.abs() + step_s.abs() < 1e-13 {
                break;
            }
        }
        (x, share)
    };
    let new = vessel(model, temperature, 0.8);
    let leak = |steps: u32, lost: f64| -> ([f64; 2], f64) {
        let (mut x, mut share) = (new.liquid_mass_fractions()[0], 0.8);
        let mut total = point(x, share).densities;
        let mass = (total[0] + total[1]) * lost / f64::from(steps);
        for _ in 0..steps {
            let leaves = |vapor: [f64; 2]| vapor.map(|part| part / (vapor[0] + vapor[1]));
            let first = leaves(point(x, share).vapor);
            let (x1, s1) = settle(std::array::from_fn(|k| total[k] - mass * first[k]), x, share);
            let second = leaves(point(x1, s1).vapor);
            total = std::array::from_fn(|k| total[k] - 0.5 * mass * (first[k] + second[k]));
            (x, share) = settle(total, x1, s1);
        }
        let sum = total[0] + total[1];
        (total.map(|part| part / sum), point(x, share).pressure)
    };
    let (coarse, fine) = (leak(40, 0.5), leak(80, 0.5));
    let extrapolated = |coarse: f64, fine: f64| fine + (fine - coarse) / 3.0;
    let left = new.after_leak(Leaving::Vapor, 0.5).unwrap();
    let remaining = extrapolated(coarse.0[0], fine.0[0]);
    let pressure = extrapolated(coarse.1, fine.1);
    println!("R-32 {remaining} {}, Pa {pressure} {}", left.mass_fractions()[0], left.pressure());
    assert!((left.mass_fractions()[0] - remaining).abs() < 1e-8);
    assert!((left.pressure() / pressure - 1.0).abs() < 1e-8);
}

#[test]
fn one_leak_is_the_same_as_many_small_ones() {
    for (model, temperature) in [(&model::R407C, 295.15), (&model::R448A, 313.15), (&model::R470A, 295.15)] {
        for leaving in Leaving::ALL {
            let new = vessel(model, temperature, 0.8);
            let whole = new.after_leak(leaving, 0.8).unwrap();
            // Each a fraction of what is there then, so that the same is lost in all.
            let part = 1.0 - 0.2_f64.powf(1.0 / 400.0);
            let parts = (0..400).try_fold(new, |here, _| here.after_leak(leaving, part)).unwrap();
            let difference = worst_difference(&whole.mass_fractions(), &parts.mass_fractions());
            println!("{} {}: {difference:.1e}", model.identity.designation, leaving.name());
            assert!(difference < 1e-9, "{difference:e}");
        }
    }
}

#[test]
fn a_pure_refrigerant_does_not_shift() {
    for model in [&model::R22, &model::R32, &model::R290, &model::R744] {
        let new = vessel(model, 280.0, 0.5);
        let left = new.after_leak(Leaving::Vapor, 0.5).unwrap();
        assert_eq!(left.mass_fractions()[0], 1.0);
        assert!((left.pressure() / new.pressure() - 1.0).abs() < 1e-9);
        // By hand: of half liquid and half vapour by volume, half the mass remains.
        let (liquid, vapor) = (new.liquid_density(), new.vapor_density());
        let share = (0.25 * (liquid + vapor) - vapor) / (liquid - vapor);
        assert!((left.liquid_volume_fraction() - share).abs() < 1e-9);
    }
}

/// Trends that the trade knows: common practice, and the reason why blends are charged as liquid.
#[test]
fn shifts_go_the_way_they_are_known_to_go() {
    let half = |model| vessel(model, 295.15, 0.8).after_leak(Leaving::Vapor, 0.5).unwrap();
    let shift =
        |left: &Vessel, end| at(end, left.mixture(), 6e5) - at(end, &Mixture::of(left.mixture().model()).unwrap(), 6e5);
    // R-407C becomes richer in R-134a, and both its temperatures rise by kelvins.
    let r407c = half(&model::R407C);
    let w = r407c.mass_fractions();
    assert!(w[0] < 0.18 && w[1] < 0.22 && w[2] > 0.60, "{w:?}");
    assert!(shift(&r407c, End::Bubble) > 3.0 && shift(&r407c, End::Dew) > 3.0);
    // The same leak as liquid hardly shifts it.
    let drained = vessel(&model::R407C, 295.15, 0.8).after_leak(Leaving::Liquid, 0.5).unwrap();
    assert!(worst_difference(&drained.mass_fractions(), &[0.23, 0.25, 0.52, 0.0, 0.0, 0.0]) < 0.005);
    // R-410A is near to an azeotrope: a tenth of a kelvin.
    let r410a = half(&model::R410A);
    assert!(shift(&r410a, End::Bubble).abs() < 0.1 && shift(&r410a, End::Dew).abs() < 0.1);
    // From R-454B the R-32 leaves first. Both components burn; the vapour holds more R-32 than the label says.
    let new = vessel(&model::R454B, 295.15, 0.8);
    assert!(new.vapor_mass_fractions()[0] > 0.76);
    let r454b = half(&model::R454B);
    assert!(r454b.mass_fractions()[0] < 0.64 && shift(&r454b, End::Dew) > 1.0);
    // R-448A loses and keeps R-134a and R-1234ze(E).
    let w = half(&model::R448A).mass_fractions();
    assert!(w[0] < 0.20 && w[1] < 0.24 && w[3] > 0.25 && w[4] > 0.09, "{w:?}");
    // R-455A loses its carbon dioxide almost wholly.
    assert!(half(&model::R455A).mass_fractions()[0] < 0.01);
    // The less liquid there was, the more of the blend was vapour, and the less a leak shifts it.
    let little = vessel(&model::R407C, 295.15, 0.2).after_leak(Leaving::Vapor, 0.5).unwrap();
    assert!(little.mass_fractions()[2] < r407c.mass_fractions()[2]);
}

#[test]
fn a_vessel_can_be_given_by_its_mass() {
    let r407c = Mixture::of(&model::R407C).unwrap();
    for share in [0.001, 0.05, 0.3, 0.8, 0.999] {
        let one = vessel(&model::R407C, 300.0, share);
        let same = Vessel::filled(&r407c, 300.0, Filling::Density(one.density())).unwrap();
        assert!((same.liquid_volume_fraction() - share).abs() < 1e-9);
        assert!((same.pressure() / one.pressure() - 1.0).abs() < 1e-9);
    }
    let (bubble, dew) =
        (r407c.at_temperature(End::Bubble, 300.0).unwrap(), r407c.at_temperature(End::Dew, 300.0).unwrap());
    let nearly = |share| vessel(&model::R407C, 300.0, share).pressure();
    assert!((nearly(0.999) / bubble.pressure - 1.0).abs() < 1e-4);
    assert!(nearly(0.001) > dew.pressure && (nearly(0.001) / dew.pressure - 1.0) < 0.01);
    for density in [1.0, 1300.0, f64::NAN, -5.0] {
        let error = Vessel::filled(&r407c, 300.0, Filling::Density(density)).unwrap_err();
        assert!(matches!(error, Error::OutOfRange { unit: "kg/m3", .. } | Error::NotFinite { unit: "kg/m3", .. }));
    }
}

#[test]
fn where_the_liquid_is_gone_the_error_says_so() {
    for model in [&model::R407C, &model::R454B, &model::R448A, &model::R22] {
        for (leaving, share) in [(Leaving::Vapor, 0.8), (Leaving::Liquid, 0.8), (Leaving::Vapor, 0.05)] {
            let new = vessel(model, 295.15, share);
            let error = new.after_leak(leaving, 0.999).unwrap_err();
            let Error::OutOfRange { value, lower, upper, advice, .. } = error else { panic!("{error}") };
            assert_eq!((value, lower), (0.999, 0.0));
            assert!(upper > 0.1 && upper < 0.999 && advice.contains("vapour"));
            // That far it goes, to the last drop; then the pressure is the dew pressure of what is left.
            let last = new.after_leak(leaving, upper).unwrap();
            assert!(last.liquid_volume_fraction() < 1e-9);
            let dew = last.mixture().at_temperature(End::Dew, 295.15).unwrap().pressure;
            assert!((dew / last.pressure() - 1.0).abs() < 1e-8);
            assert!(new.after_leak(leaving, upper + 1e-6).is_err());
        }
    }
}

#[test]
fn bad_input_is_refused_by_name() {
    let r407c = Mixture::of(&model::R407C).unwrap();
    for share in [0.0, 1.0, -0.1, 80.0, f64::NAN, f64::INFINITY] {
        let error = Vessel::filled(&r407c, 295.15, Filling::LiquidVolumeFraction(share)).unwrap_err();
        assert!(error.to_string().contains("liquid volume fraction"), "{error}");
    }
    for temperature in [100.0, 365.0, 700.0, f64::NAN] {
        let error = Vessel::filled(&r407c, temperature, Filling::default()).unwrap_err();
        assert!(error.to_string().contains("saturation temperature"), "{error}");
    }
    let new = Vessel::filled(&r407c, 295.15, Filling::default()).unwrap();
    assert_eq!(new.liquid_volume_fraction(), 0.8);
    for lost in [-0.1, 50.0, f64::NAN, f64::INFINITY] {
        let error = new.after_leak(Leaving::Vapor, lost).unwrap_err();
        assert!(error.to_string().contains("fraction of the mass lost"), "{error}");
    }
    // Nothing lost, nothing changed.
    let same = new.after_leak(Leaving::Vapor, 0.0).unwrap();
    assert_eq!(same.pressure(), new.pressure());
    assert!(worst_difference(&same.mass_fractions(), &new.mass_fractions()) < 1e-15);
    assert!(Leaving::from_name("gas").unwrap_err().to_string().contains("liquid, vapor"));
    for leaving in Leaving::ALL {
        assert_eq!(Leaving::from_name(leaving.name()), Ok(leaving));
    }
}

#[test]
fn cautions_say_what_a_leak_makes_of_it() {
    let cautions = |model, lost| {
        let left = vessel(model, 295.15, 0.8).after_leak(Leaving::Vapor, lost).unwrap();
        leak_cautions(&left).collect::<Vec<_>>()
    };
    assert_eq!(cautions(&model::R22, 0.5), [LeakCaution::LicensedPractice]);
    assert_eq!(cautions(&model::R407C, 0.0), [LeakCaution::LicensedPractice]);
    assert_eq!(cautions(&model::R407C, 0.5), [LeakCaution::LicensedPractice, LeakCaution::CompositionShifted]);
    assert!(cautions(&model::R454B, 0.0).contains(&LeakCaution::Flammable));
    // What burns in R-455A stays behind when the carbon dioxide has gone.
    assert!(cautions(&model::R455A, 0.5).contains(&LeakCaution::RicherInFlammable));
    // R-467A, class 2L: R-32 and isobutane burn, and the R-32 leaves first.
    let new = vessel(&model::R467A, 295.15, 0.8);
    let (label, vapor) = (&[0.22, 0.05, 0.724, 0.006], new.vapor_mass_fractions());
    assert!((flammable_share(model::R467A.identity, label) - 0.226).abs() < 1e-12);
    assert!(flammable_share(model::R467A.identity, &vapor) > 0.3);
    assert!(cautions(&model::R467A, 0.0).contains(&LeakCaution::RicherInFlammable));
}

/// Every blend at an outdoor and an attic temperature, where it has two phases there.
#[test]
fn every_refrigerant_leaks() {
    let mut done = 0;
    for model in model::ALL {
        let mixture = Mixture::of(model).unwrap();
        for temperature in [268.15, 295.15, 318.15] {
            let Ok(bubble) = mixture.at_temperature(End::Bubble, temperature) else { continue };
            for share in [0.1, 0.8] {
                let new = Vessel::filled(&mixture, temperature, Filling::LiquidVolumeFraction(share)).unwrap();
                assert!(new.pressure() <= bubble.pressure * (1.0 + 1e-9), "{}", model.identity.designation);
                for leaving in Leaving::ALL {
                    // So near to its critical temperature that half the mass is all the liquid there is.
                    let left = match new.after_leak(leaving, 0.5) {
                        Err(Error::OutOfRange { upper, .. }) => new.after_leak(leaving, upper),
                        other => other,
                    };
                    let left = left.unwrap_or_else(|error| panic!("{} {error}", model.identity.designation));
                    let sum: f64 = left.mass_fractions().iter().sum();
                    assert!((sum - 1.0).abs() < 1e-12);
                    // What leaves as vapour leaves the pressure lower.
                    let steady = 1.0 + 1e-9;
                    assert!(leaving == Leaving::Liquid || left.pressure() <= new.pressure() * steady);
                    done += 1;
                }
            }
        }
    }
    println!("{done} leaks");
    assert!(done > 1000);
}
