//! Tubes and the charge for a line set: against figures from outside, against hand computation, and the compact way
//! against the equations of state for every refrigerant.

use satline::Error;
use satline::eos::{End, Mixture, Properties, Reference, StateInput};
use satline::lineset::{
    Behind, ChargeAction, ChargeAdvice, ChargeCaution, Compact, Covered, LIQUID_ERROR, Line, LineDensities, LinePhase,
    LineSet, OutdoorDevice, Tube, VAPOR_ERROR, flashed_error, line_set_charge,
};
use satline::quantity::{Atmosphere, Pressure, kelvin_from_fahrenheit};
use satline::refrigerant::{self, Refrigerant};
use satline::uncertain::Uncertain;

const OUNCES_PER_FOOT: f64 = 0.028_349_523_125 / 0.3048;

/// Properties by whichever reference state the refrigerant has; densities do not depend on it.
fn properties(record: &Refrigerant) -> Properties {
    Properties::of(record.model, Reference::Iir)
        .or_else(|_| Properties::of(record.model, Reference::NormalBoiling))
        .or_else(|_| Properties::of(record.model, Reference::Ashrae))
        .unwrap()
}

fn named(name: &str) -> Properties {
    properties(refrigerant::find(name).unwrap())
}

fn psig(value: f64) -> f64 {
    Pressure::from_psi_gauge(value, Atmosphere::STANDARD).unwrap().pascals()
}

fn tube(name: &str) -> Tube {
    Tube::named(name).unwrap()
}

/// Without uncertainties, so that only what a test adds has one.
fn exact_line(name: &str, length: f64, temperature: f64, pressure: Option<f64>) -> Line {
    Line {
        tube: tube(name).with_inside_diameter_uncertainty_m(0.0).unwrap(),
        length_m: Uncertain::exact(length),
        temperature_k: Uncertain::exact(temperature),
        pressure_pa: pressure.map(Uncertain::exact),
    }
}

/// A demo line set of R-454B: 60 ft of 3/8 and 3/4 in, 95 °F and 350 psig liquid, 45 °F dew and 10 °F of superheat.
fn demo() -> LineSet<'static> {
    let dew = kelvin_from_fahrenheit(45.0);
    let low = refrigerant::R454B.curves.dew.pressure.at(dew).unwrap();
    LineSet {
        liquid: exact_line("3/8", 18.288, kelvin_from_fahrenheit(95.0), Some(psig(350.0))),
        vapor: exact_line("3/4", 18.288, kelvin_from_fahrenheit(55.0), Some(low)),
        outdoor_device: None,
        covered: Covered::length_m(4.572),
        accessories_kg: &[],
        makers_charge_per_length_kg_m: None,
    }
}

/// Computed apart from this library: 0.498 and 0.072 oz/ft.
#[test]
fn the_demo_line_set_holds_what_was_computed_apart() {
    let set = demo();
    for densities in [&named("R-454B") as &dyn Fn2, &Compact(&refrigerant::R454B)] {
        let (liquid, vapor) = densities.per_length(&set);
        assert!((liquid / OUNCES_PER_FOOT - 0.498).abs() < 0.0015, "{}", liquid / OUNCES_PER_FOOT);
        assert!((vapor / OUNCES_PER_FOOT - 0.072).abs() < 0.0005, "{}", vapor / OUNCES_PER_FOOT);
    }
}

trait Fn2 {
    fn per_length(&self, set: &LineSet<'_>) -> (f64, f64);
}

impl<T: LineDensities> Fn2 for T {
    fn per_length(&self, set: &LineSet<'_>) -> (f64, f64) {
        let of = |phase, line: &Line| {
            self.charge_per_length(&line.tube, phase, line.temperature_k.value, line.pressure_pa.map(|p| p.value))
        };
        (of(LinePhase::Liquid, &set.liquid).unwrap(), of(LinePhase::Vapor, &set.vapor).unwrap())
    }
}

/// Common practice: about 0.6 oz/ft for R-410A in 3/8 and 3/4 or 7/8 in.
#[test]
fn a_foot_of_line_set_holds_about_what_the_trade_says() {
    let set = LineSet {
        liquid: Line::new(tube("3/8"), 20.0, kelvin_from_fahrenheit(100.0), None),
        vapor: Line::new(tube("3/4"), 20.0, kelvin_from_fahrenheit(45.0), None),
        ..demo()
    };
    let charge = line_set_charge(&named("R-410A"), &set).unwrap();
    let ounces = charge.charge_per_length_kg_m.value / OUNCES_PER_FOOT;
    assert!((0.55..0.65).contains(&ounces), "{ounces}");
}

/// R-410A from liquid at 35 °C, at 5 to 12 °C: 0.31 to 0.40 of the liquid's density, computed apart from this library by a
/// slip model.
#[test]
fn behind_an_outdoor_device_the_small_line_holds_a_third() {
    for densities in [&named("R-410A") as &dyn Flash, &Compact(&refrigerant::R410A)] {
        for celsius in [5.0, 8.0, 12.0] {
            let (share, quality) = densities.share(308.15, 273.15 + celsius);
            assert!((0.30..0.41).contains(&share), "{celsius} °C: {share}");
            assert!((0.1..0.3).contains(&quality), "{celsius} °C: {quality}");
        }
    }
}

trait Flash {
    fn share(&self, before: f64, behind: f64) -> (f64, f64);
}

impl<T: LineDensities> Flash for T {
    /// Mean density behind the device as a share of the density before it, and the quality.
    fn share(&self, before: f64, behind: f64) -> (f64, f64) {
        let flashed = self.behind_device(before, None, Behind::Temperature(behind)).unwrap();
        (flashed.density / self.liquid_density(before, None).unwrap(), flashed.quality)
    }
}

/// Worst relative error of the compact way against the equations of state, over every refrigerant.
struct Worst {
    of: &'static str,
    error: f64,
    at: String,
    count: usize,
}

impl Worst {
    fn new(of: &'static str) -> Self {
        Self { of, error: 0.0, at: String::new(), count: 0 }
    }

    fn compare(&mut self, compact: f64, exact: f64, at: impl Fn() -> String) {
        let error = (compact / exact - 1.0).abs();
        assert!(error.is_finite(), "{}: {}", self.of, at());
        self.count += 1;
        if error > self.error {
            self.error = error;
            self.at = at();
        }
    }

    /// Not above what is stated, and not so far below it that the statement says nothing.
    fn hold(&self, stated: f64, least: usize) {
        println!("{}: {:.4} at {} of {}", self.of, self.error, self.at, self.count);
        assert!(self.error <= stated, "{}: {} at {}", self.of, self.error, self.at);
        assert!(self.error > 0.5 * stated, "{}: only {}; state less", self.of, self.error);
        assert!(self.count >= least, "{}: only {} compared", self.of, self.count);
    }
}

fn temperatures(record: &Refrigerant, lowest: f64, highest_reduced: f64) -> impl Iterator<Item = f64> {
    let (lower, upper) = record.curves.temperature_range_k();
    let highest = upper.min(highest_reduced * record.points.critical_temperature_k);
    let first = (lower + 0.5).max(Mixture::of(record.model).unwrap().lowest_temperature()).max(lowest);
    (0..40).map(move |step| first + 10.0 * f64::from(step)).take_while(move |temperature| *temperature < highest)
}

#[test]
fn the_compact_way_keeps_to_its_stated_errors_for_every_refrigerant() {
    let mut liquid = Worst::new("subcooled liquid");
    let mut vapor = Worst::new("superheated vapour");
    // Of the stated error, which grows with the glide.
    let mut flashed = Worst::new("behind the device, share of what is stated");
    for record in refrigerant::ALL {
        let (exact, compact, name) = (properties(record), Compact(record), record.designation());
        let mixture = exact.mixture();
        for bubble in temperatures(record, 243.15, 0.95) {
            let Ok(point) = mixture.at_temperature(End::Bubble, bubble) else { continue };
            for subcooling in [0.0, 2.0, 8.0, 20.0] {
                let temperature = bubble - subcooling;
                let pressure = Some(point.pressure * (1.0 + 1e-6));
                let Ok(ours) = exact.liquid_density(temperature, pressure) else { continue };
                let Ok(theirs) = compact.liquid_density(temperature, pressure) else { continue };
                liquid.compare(theirs, ours, || format!("{name} {bubble} K, {subcooling} K"));
            }
        }
        for dew in temperatures(record, 223.15, 0.9) {
            let Ok(point) = mixture.at_temperature(End::Dew, dew) else { continue };
            for superheat in [0.0, 2.0, 5.0, 10.0, 20.0, 40.0] {
                let pressure = Some(point.pressure * (1.0 - 1e-6));
                let Ok(ours) = exact.vapor_density(dew + superheat, pressure) else { continue };
                let theirs = compact.vapor_density(dew + superheat, pressure).unwrap();
                vapor.compare(theirs, ours, || format!("{name} {dew} K, {superheat} K"));
            }
        }
        // Small lines behind a device: from liquid at up to 50 °C to −5 to 15 °C.
        for before in temperatures(record, 288.15, 0.93).take_while(|before| *before <= 323.15) {
            for behind in [268.15, 278.15, 288.15].into_iter().filter(|behind| *behind < before - 3.0) {
                // Some are solid there.
                let Ok(low) = record.curves.dew.pressure.at(behind) else { continue };
                let Ok(bubble) = record.curves.bubble.temperature.at(low) else { continue };
                for known in [Behind::Temperature(behind), Behind::Pressure(low)] {
                    let Ok(ours) = exact.behind_device(before, None, known) else { continue };
                    let theirs = compact.behind_device(before, None, known).unwrap();
                    let share = (theirs.density / ours.density - 1.0) / flashed_error(behind - bubble);
                    flashed.compare(1.0 + share, 1.0, || format!("{name} {before} K to {known:?}"));
                }
            }
        }
    }
    liquid.hold(LIQUID_ERROR, 4000);
    vapor.hold(VAPOR_ERROR, 6000);
    flashed.hold(1.0, 3000);
}
