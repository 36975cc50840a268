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

/// A temperature behind the device that comes from a pressure must give that pressure's density back, blend or not.
#[test]
fn temperature_and_pressure_behind_the_device_agree() {
    for name in ["R-32", "R-410A", "R-454B", "R-407C", "R-455A", "R-290", "R-744"] {
        let exact = named(name);
        let before = if name == "R-744" { 290.0 } else { 308.15 };
        let liquid = exact.saturated_liquid(before).unwrap();
        let pressure = 0.4 * liquid.pressure;
        let found = exact.state(StateInput::PressureEnthalpy { pressure, enthalpy: liquid.enthalpy }).unwrap();
        let by_pressure = exact.behind_device(before, None, Behind::Pressure(pressure)).unwrap();
        let by_temperature = exact.behind_device(before, None, Behind::Temperature(found.temperature)).unwrap();
        assert!((by_pressure.quality - found.quality.unwrap()).abs() < 1e-12, "{name}");
        assert!((by_pressure.quality - by_temperature.quality).abs() < 1e-7, "{name}");
        assert!((by_pressure.density / by_temperature.density - 1.0).abs() < 1e-6, "{name}");
        // With both phases at one speed the volumes of their masses add up, which the state's density tells.
        assert!(by_pressure.density > found.density, "{name}: slip holds liquid back");
    }
}

/// Subcooling that the drop in pressure does not use up: nothing flashes, and the line stays full of liquid.
#[test]
fn a_small_drop_flashes_nothing() {
    let exact = named("R-454B");
    let (temperature, pressure) = (300.0, 2.5e6);
    let bubble = exact.saturated_liquid(temperature).unwrap().pressure;
    for densities in [&exact as &dyn Small, &Compact(&refrigerant::R454B)] {
        let (density, quality) = densities.small(temperature, pressure, 1.05 * bubble);
        assert!(quality == 0.0 && (density / exact.density_of(temperature) - 1.0).abs() < 0.01);
        assert!(densities.small(temperature, pressure, 0.8 * bubble).1 > 0.0);
    }
}

trait Small {
    fn small(&self, temperature: f64, pressure: f64, behind: f64) -> (f64, f64);
    fn density_of(&self, temperature: f64) -> f64;
}

impl<T: LineDensities> Small for T {
    fn small(&self, temperature: f64, pressure: f64, behind: f64) -> (f64, f64) {
        let found = self.behind_device(temperature, Some(pressure), Behind::Pressure(behind)).unwrap();
        (found.density, found.quality)
    }
    fn density_of(&self, temperature: f64) -> f64 {
        self.liquid_density(temperature, None).unwrap()
    }
}

#[test]
fn the_mass_is_what_is_added_up_by_hand() {
    let exact = named("R-454B");
    let drier = Uncertain::new(0.05, 0.01).unwrap();
    let accessories = [drier, Uncertain::exact(0.02)];
    let set = LineSet { accessories_kg: &accessories, ..demo() };
    let charge = line_set_charge(&exact, &set).unwrap();
    // 45 ft beyond the 15 covered.
    let by_hand = 45.0 * (0.498 + 0.072) * 0.028_349_523_125;
    assert!((charge.computed_kg.value / by_hand - 1.0).abs() < 4e-3, "{}", charge.computed_kg.value);
    assert!((charge.mass_kg.value - charge.computed_kg.value - 0.07).abs() < 1e-12);
    assert_eq!((charge.action, charge.advice), (ChargeAction::Add, ChargeAdvice::AskForMakersFigure));
    // By line: what it holds, less what is covered, is what it needs.
    for line in [charge.liquid, charge.vapor] {
        assert!((line.holds_kg.value * 45.0 / 60.0 - line.beyond_kg.value).abs() < 1e-12);
        assert!((line.charge_per_length_kg_m.value * 18.288 - line.holds_kg.value).abs() < 1e-12);
        assert!(line.quality.is_none());
    }
    assert!((charge.liquid.beyond_kg.value + charge.vapor.beyond_kg.value - charge.computed_kg.value).abs() < 1e-12);
    assert!((charge.accessories_kg.standard_uncertainty - 0.01).abs() < 1e-12);
}

/// Each input alone, against its share by hand; together they add as squares.
#[test]
fn uncertainties_are_those_computed_by_hand() {
    let exact = named("R-454B");
    let per_length = line_set_charge(&exact, &demo()).unwrap();
    let of = |set: &LineSet<'_>| line_set_charge(&exact, set).unwrap().computed_kg.standard_uncertainty;
    // Only the half per cent of each density: of the equations and the composition.
    let alone = of(&demo());
    let (liquid, vapor) = (per_length.liquid.beyond_kg.value, per_length.vapor.beyond_kg.value);
    assert!((alone - 0.005 * liquid.hypot(vapor)).abs() < 1e-9);
    let share = |with: f64| (with * with - alone * alone).sqrt();
    // One tape for both lines: their errors add, not their squares.
    let mut set = demo();
    set.liquid.length_m.standard_uncertainty = 0.2;
    set.vapor.length_m.standard_uncertainty = 0.2;
    assert!((share(of(&set)) / (0.2 * per_length.charge_per_length_kg_m.value) - 1.0).abs() < 1e-6);
    // An area goes with the square of its diameter.
    let mut set = demo();
    set.liquid.tube = set.liquid.tube.with_inside_diameter_uncertainty_m(5e-5).unwrap();
    assert!((share(of(&set)) / (2.0 * 5e-5 / set.liquid.tube.inside_diameter_m() * liquid) - 1.0).abs() < 1e-3);
    // Temperature of the liquid: its density's slope.
    let mut set = demo();
    set.liquid.temperature_k.standard_uncertainty = 1.0;
    let pressure = Some(set.liquid.pressure_pa.unwrap().value);
    let density = |change: f64| exact.liquid_density(set.liquid.temperature_k.value + change, pressure).unwrap();
    let slope = (density(-0.01) - density(0.01)) / 0.02 / density(0.0);
    assert!((share(of(&set)) / (slope * liquid) - 1.0).abs() < 0.01);
    // What is covered.
    let mut set = demo();
    set.covered.length_m.standard_uncertainty = 1.0;
    assert!((share(of(&set)) / per_length.charge_per_length_kg_m.value - 1.0).abs() < 1e-6);
    // Accessories, beside the lines.
    let accessories = [Uncertain::new(0.05, 0.03).unwrap()];
    let set = LineSet { accessories_kg: &accessories, ..demo() };
    assert!((line_set_charge(&exact, &set).unwrap().mass_kg.standard_uncertainty - alone.hypot(0.03)).abs() < 1e-12);
}

#[test]
fn shorter_than_covered_is_recovered_and_as_long_is_left() {
    let exact = named("R-454B");
    let charge = |length: f64| {
        let mut set = demo();
        set.liquid.length_m = Uncertain::new(length, 0.1).unwrap();
        set.vapor.length_m = set.liquid.length_m;
        line_set_charge(&exact, &set).unwrap()
    };
    let short = charge(3.0);
    assert_eq!(short.action, ChargeAction::Recover);
    assert!((short.mass_kg.value + short.charge_per_length_kg_m.value * 1.572).abs() < 1e-9);
    let sentence = short.action.sentence().to_lowercase();
    assert!(sentence.contains("recover") && sentence.contains("never vent") && !sentence.contains("remove"));
    assert_eq!(charge(4.572).action, ChargeAction::Nothing);
    assert_eq!(charge(4.9).action, ChargeAction::Add);
    assert_eq!(charge(0.0).action, ChargeAction::Recover);
    // A wider tube than the maker counts on wants more even at the covered length.
    let mut set = demo();
    (set.liquid.length_m.value, set.vapor.length_m.value) = (4.572, 4.572);
    set.covered.liquid_tube = Some(tube("1/4"));
    let wider = line_set_charge(&exact, &set).unwrap();
    let by_hand = wider.liquid.density_kg_m3.value * 4.572 * (tube("3/8").bore_area_m2() - tube("1/4").bore_area_m2());
    assert!(wider.action == ChargeAction::Add && (wider.mass_kg.value - by_hand).abs() < 1e-9);
}

#[test]
fn the_makers_figure_rules_and_a_wrong_one_shows() {
    let exact = named("R-454B");
    let with = |ounces_per_foot: f64| {
        let figure = Uncertain::new(ounces_per_foot * OUNCES_PER_FOOT, 0.01 * OUNCES_PER_FOOT).unwrap();
        line_set_charge(&exact, &LineSet { makers_charge_per_length_kg_m: Some(figure), ..demo() }).unwrap()
    };
    let close = with(0.58);
    assert_eq!(close.advice, ChargeAdvice::WeighThenVerify);
    assert!((close.mass_kg.value - 0.58 * 45.0 * 0.028_349_523_125).abs() < 1e-9);
    assert!((close.computed_kg.value - line_set_charge(&exact, &demo()).unwrap().mass_kg.value).abs() < 1e-12);
    // A figure for 1/4 in, or in g/m taken for oz/ft.
    assert_eq!(with(0.25).advice, ChargeAdvice::FiguresDiffer);
}

#[test]
fn an_outdoor_device_leaves_less_and_says_how_surely() {
    let exact = named("R-410A");
    let mut set = demo();
    set.liquid = Line::new(tube("3/8"), 18.288, 308.15, None);
    set.vapor = Line::new(tube("3/4"), 18.288, 283.15, None);
    let indoors = line_set_charge(&exact, &set).unwrap();
    set.outdoor_device = Some(OutdoorDevice { behind: Behind::Temperature(281.15), standard_uncertainty: 0.5 });
    let outdoors = line_set_charge(&exact, &set).unwrap();
    let ratio = outdoors.liquid.holds_kg.value / indoors.liquid.holds_kg.value;
    assert!((0.31..0.40).contains(&ratio), "{ratio}");
    assert!(outdoors.liquid.quality.is_some_and(|quality| quality > 0.1 && quality < 0.3));
    let relative = |charge: Uncertain| charge.standard_uncertainty / charge.value;
    assert!(relative(indoors.liquid.density_kg_m3) < 0.01 && relative(outdoors.liquid.density_kg_m3) > 0.15);
    assert_eq!(outdoors.vapor, indoors.vapor);
}

/// For every refrigerant, by both ways, at states inside its range: more in the liquid line than in the vapour line of the
/// same size, both ways alike.
#[test]
fn every_refrigerant_answers() {
    let mut answered = 0;
    for record in refrigerant::ALL {
        let exact = properties(record);
        let critical = record.points.critical_temperature_k;
        let (lower, _) = record.curves.temperature_range_k();
        let cold = (0.78 * critical).min(280.15).max(lower + 1.0);
        let warm = (0.88 * critical).min(308.15).max(cold + 5.0);
        let high = record.curves.bubble.pressure.at(warm + 4.0).unwrap();
        let low = record.curves.dew.pressure.at(cold).unwrap();
        let mut set = demo();
        set.liquid = Line::new(tube("3/8"), 18.288, warm, Some(high));
        set.vapor = Line::new(tube("3/8"), 18.288, cold + 6.0, Some(low));
        for device in [None, Some(OutdoorDevice { behind: Behind::Pressure(low), standard_uncertainty: 0.0 })] {
            set.outdoor_device = device;
            let name = record.designation();
            let ours = line_set_charge(&exact, &set).unwrap_or_else(|error| panic!("{name}: {error}"));
            let theirs = line_set_charge(&Compact(record), &set).unwrap_or_else(|error| panic!("{name}: {error}"));
            assert!(ours.liquid.holds_kg.value > ours.vapor.holds_kg.value, "{name}");
            assert!(ours.mass_kg.value > 0.0 && ours.mass_kg.standard_uncertainty > 0.0, "{name}");
            // Each way's own uncertainty covers what it differs by from the other.
            let apart = (ours.mass_kg.value - theirs.mass_kg.value).abs();
            assert!(apart < 2.0 * theirs.mass_kg.standard_uncertainty, "{name}: {apart}");
            let burns = record.identity().safety_class.is_flammable();
            assert_eq!(ours.cautions().any(|caution| caution == ChargeCaution::FlammableRefrigerant), burns, "{name}");
            answered += 1;
        }
    }
    assert_eq!(answered, 2 * refrigerant::ALL.len());
}

fn limits(error: Error) -> (&'static str, f64, f64) {
    match error {
        Error::OutOfRange { quantity, lower, upper, .. } => (quantity, lower, upper),
        other => panic!("{other:?}"),
    }
}

#[test]
fn a_line_of_the_wrong_phase_is_refused_with_its_limit() {
    for record in [&refrigerant::R410A, &refrigerant::R407C, &refrigerant::R290, &refrigerant::R744] {
        let exact = properties(record);
        let warm = if record.designation() == "R-744" { 285.0 } else { 310.0 };
        let pressure = record.curves.bubble.pressure.at(warm).unwrap();
        let dew = record.curves.dew.temperature.at(pressure).unwrap();
        for (liquid, vapor) in [
            (exact.liquid_density(dew + 5.0, Some(pressure)), exact.vapor_density(warm - 5.0, Some(pressure))),
            (
                Compact(record).liquid_density(dew + 5.0, Some(pressure)),
                Compact(record).vapor_density(warm - 5.0, Some(pressure)),
            ),
        ] {
            let (quantity, lower, upper) = limits(liquid.unwrap_err());
            assert!(quantity == "temperature of the liquid line" && (upper - warm).abs() < 1e-3 && lower < upper);
            let (quantity, lower, upper) = limits(vapor.unwrap_err());
            assert!(quantity == "temperature of the vapour line" && (lower - dew).abs() < 1e-3 && lower < upper);
        }
        // Between bubble and dew it is neither.
        let between = 0.5 * (warm + dew);
        if dew - warm > 0.1 {
            assert!(exact.liquid_density(between, Some(pressure)).is_err());
            assert!(exact.vapor_density(between, Some(pressure)).is_err());
        }
    }
    // Above the critical pressure there is one dense fluid: a gas cooler's line of R-744 at 35 °C and 100 bar holds what the
    // equation of Span and Wagner says.
    let dense = named("R-744").liquid_density(308.15, Some(1e7)).unwrap();
    assert!((dense - 712.8).abs() < 1.5, "{dense}");
    assert!(Compact(&refrigerant::R744).liquid_density(308.15, Some(1e7)).is_err());
}

#[test]
fn bad_input_is_named() {
    let exact = named("R-454B");
    type Change = fn(&mut LineSet<'static>);
    let refused = |change: Change| {
        let mut set = demo();
        change(&mut set);
        line_set_charge(&exact, &set).unwrap_err()
    };
    let cases: [(Change, &str); 9] = [
        (|set| set.liquid.length_m.value = -1.0, "length of the line set"),
        (|set| set.vapor.length_m.standard_uncertainty = -0.1, "uncertainty of the length"),
        (|set| set.covered.length_m.value = -1.0, "length that the factory charge covers"),
        (|set| set.accessories_kg = &[Uncertain { value: -0.1, standard_uncertainty: 0.0 }], "mass"),
        (|set| set.makers_charge_per_length_kg_m = Some(Uncertain::exact(54.0)), "charge per length of line set"),
        (|set| set.liquid.temperature_k.value = 95.0, "temperature"),
        (|set| set.liquid.temperature_k.value = 330.0, "temperature of the liquid line"),
        (|set| set.vapor.temperature_k.value = 270.0, "temperature of the vapour line"),
        (|set| set.liquid.temperature_k.standard_uncertainty = 20.0, "uncertainty of the temperature"),
    ];
    for (change, quantity) in cases {
        let named = limits(refused(change)).0;
        assert!(
            named == quantity || (quantity == "temperature" && named.contains("temperature")),
            "{named}: {quantity}"
        );
    }
    for (behind, quantity) in [
        (Behind::Temperature(312.0), "temperature behind the metering device"),
        (Behind::Pressure(2.6e6), "pressure behind the metering device"),
    ] {
        let device = OutdoorDevice { behind, standard_uncertainty: 0.0 };
        let found = line_set_charge(&exact, &LineSet { outdoor_device: Some(device), ..demo() }).unwrap_err();
        assert_eq!(limits(found).0, quantity);
        let set = LineSet { outdoor_device: Some(device), ..demo() };
        assert_eq!(limits(line_set_charge(&Compact(&refrigerant::R454B), &set).unwrap_err()).0, quantity);
    }
    for bad in [f64::NAN, f64::INFINITY] {
        let mut set = demo();
        set.liquid.length_m.value = bad;
        assert!(matches!(line_set_charge(&exact, &set), Err(Error::NotFinite { .. })));
        assert!(matches!(exact.vapor_density(bad, None), Err(Error::NotFinite { .. })));
        assert!(matches!(exact.liquid_density(300.0, Some(bad)), Err(Error::NotFinite { .. })));
        assert!(matches!(Compact(&refrigerant::R22).vapor_density(300.0, Some(bad)), Err(Error::NotFinite { .. })));
    }
}

/// Every number that the page on the line set prints, computed anew from the page's own demo.
#[test]
fn the_page_prints_what_is_computed() {
    const PAGE: &str = include_str!("../../core/docs/line_set.md");
    let exact = named("R-454B");
    let (length, drier) = (60.0 * 0.3048, [Uncertain::new(0.06, 0.01).unwrap()]);
    let dew = refrigerant::R454B.curves.dew.pressure.at(kelvin_from_fahrenheit(45.0)).unwrap();
    let mut set = LineSet {
        liquid: Line::new(tube("3/8"), length, kelvin_from_fahrenheit(95.0), Some(psig(350.0))),
        vapor: Line::new(tube("3/4"), length, kelvin_from_fahrenheit(55.0), Some(dew)),
        accessories_kg: &drier,
        ..demo()
    };
    let both = |mass: Uncertain| {
        let (kg, u) = (mass.value, mass.standard_uncertainty);
        let ounce = 0.028_349_523_125;
        format!("{:.1} ± {:.1} oz = {kg:.3} ± {u:.3} kg", kg / ounce, u / ounce)
    };
    let row = |line: &satline::lineset::LineCharge| {
        let per_length = line.charge_per_length_kg_m.value;
        let (ounces, grams) = (per_length / OUNCES_PER_FOOT, 1e3 * per_length);
        let density = line.density_kg_m3.value;
        format!("{density:.1} kg/m³ | {ounces:.3} oz/ft = {grams:.2} g/m | {} |", both(line.holds_kg))
    };
    let charge = line_set_charge(&exact, &set).unwrap();
    let behind = Behind::Temperature(kelvin_from_fahrenheit(47.0));
    set.outdoor_device = Some(OutdoorDevice { behind, standard_uncertainty: 0.5 });
    let outdoors = line_set_charge(&exact, &set).unwrap();
    let area = 2.0 * tube("3/8").inside_diameter_uncertainty_m() / tube("3/8").inside_diameter_m();
    for expected in [
        format!("| small line | {}", row(&charge.liquid)),
        format!("| large line | {}", row(&charge.vapor)),
        format!("| both lines, beyond the covered length | {} |", both(charge.computed_kg)),
        format!("| with the drier | **{}: add", both(charge.mass_kg)),
        format!("| small line, quality {:.3} | {}", outdoors.liquid.quality.unwrap(), row(&outdoors.liquid)),
        format!("| to add, with large line and drier | | | {} |", both(outdoors.mass_kg)),
        format!("moves the area of 3/8 in tube by {:.1} %", 100.0 * area),
        format!("| 95 °F, 350 psig | 35.0 °C, {:.0} kPa absolute |", 1e-3 * psig(350.0)),
        format!("within a foot | 60 ft | {length:.2} m |"),
        format!("0.311 in bore | {:.2} mm bore", 1e3 * tube("3/8").inside_diameter_m()),
        format!("0.680 in bore | {:.2} mm bore", 1e3 * tube("3/4").inside_diameter_m()),
        format!("| 2.1 oz | {:.3} ± {:.3} kg |", drier[0].value, drier[0].standard_uncertainty),
        format!("all {} refrigerants", refrigerant::ALL.len()),
    ] {
        assert!(PAGE.contains(&expected), "the page should say: {expected}");
    }
    assert!((2.1 * 0.028_349_523_125_f64 - 0.06).abs() < 1e-3);
}
