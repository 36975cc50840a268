//! Every number of the worked examples in core/docs/account.md is what the library computes.

use satline::eos::{Properties, Reference, model};
use satline::lineset::{Covered, Line, LineSet, Tube, line_set_charge};
use satline::quantity::{Atmosphere, KG_PER_POUND, Pressure, Temperature};
use satline::refrigerant::{R22, R290, R410A, Refrigerant};
use satline::safety::{Cylinder, cylinder_fill};
use satline::saturation::R454B;
use satline::uncertain::Uncertain;
use satline::visit::{
    Addition, CHARGE_TOLERANCE, ChargeAccount, ExpectedCharge, Recovery, RecoveryFinding, SCALE_SHARE, Start, Weighing,
    charge_account, leak_rate, recovery,
};

fn known(value: f64, standard_uncertainty: f64) -> Uncertain {
    Uncertain::new(value, standard_uncertainty).unwrap()
}

fn words(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// Fails with every sentence that the page lacks.
fn stand_in_the_page(sentences: &[String]) {
    let page = words(include_str!("../../core/docs/account.md"));
    let missing: Vec<&String> = sentences.iter().filter(|sentence| !page.contains(&words(sentence))).collect();
    assert!(missing.is_empty(), "not in core/docs/account.md:\n{missing:#?}");
}

/// The line set of core/docs/line_set.md.
fn line_set() -> Uncertain {
    let properties = Properties::of(&model::R454B, Reference::Iir).unwrap();
    let foot = 0.3048;
    let liquid_pressure = Pressure::from_psi_gauge(350.0, Atmosphere::STANDARD).unwrap().pascals();
    let vapor_pressure = R454B.dew_pressure(Temperature::from_fahrenheit(45.0).unwrap()).unwrap().pascals();
    let line = |tube, fahrenheit, pressure| {
        let temperature = Temperature::from_fahrenheit(fahrenheit).unwrap().kelvin();
        Line::new(Tube::named(tube).unwrap(), 60.0 * foot, temperature, Some(pressure))
    };
    let set = LineSet {
        liquid: line("3/8", 95.0, liquid_pressure),
        vapor: line("3/4", 55.0, vapor_pressure),
        outdoor_device: None,
        covered: Covered::length_m(15.0 * foot),
        accessories_kg: &[known(0.06, 0.01)],
        makers_charge_per_length_kg_m: None,
    };
    line_set_charge(&properties, &set).unwrap().mass_kg
}

fn account(start: Start, change: f64) -> ChargeAccount {
    let expected = ExpectedCharge {
        nameplate_kg: known(6.0 * KG_PER_POUND, 0.02),
        line_set_kg: line_set(),
        accessories_kg: Uncertain::exact(0.0),
    };
    let weighed = [Weighing { change_kg: change, standard_uncertainty_kg: 0.01 }];
    charge_account(&expected, start, &weighed, SCALE_SHARE, CHARGE_TOLERANCE).unwrap()
}

fn both(mass: Uncertain, places: usize) -> String {
    format!("{:.places$} ± {:.places$}", mass.value, mass.standard_uncertainty)
}

#[test]
fn charge() {
    let found = account(Start::Evacuated, 3.10);
    let share = found.deviation.unwrap();
    let percent = known(100.0 * share.value, 100.0 * share.standard_uncertainty);
    stand_in_the_page(&[
        format!("({} kg)", both(known(6.0 * KG_PER_POUND, 0.02), 2)),
        format!("included: {} kg", both(line_set(), 3)),
        format!("It should hold {} kg", both(found.expected_kg, 3)),
        format!(
            "holds {} kg: {} kg, {} %. The balance is *{}*",
            both(found.inside_kg.unwrap(), 3),
            both(found.deviation_kg.unwrap(), 3),
            both(percent, 1),
            found.balance.name()
        ),
        format!("| {:.0} % of the expected |", 100.0 * CHARGE_TOLERANCE),
        format!("| {:.1} % of the mass |", 100.0 * SCALE_SHARE * 3.0_f64.sqrt()),
    ]);
    let unknown = account(Start::Unknown, 0.40);
    assert_eq!(unknown.inside_kg, None);
    stand_in_the_page(&[format!("the balance is *{}*, and no mass is given", unknown.balance.name())]);
}

#[test]
fn leaks() {
    let log = [(0.0, 0.5), (200.0, 0.40), (365.0, 0.35)];
    let found = leak_rate(
        Uncertain::exact(3.45),
        &log.map(|(day, mass)| Addition { day, mass_kg: known(mass, if day > 0.0 { 0.02 } else { 0.0 }) }),
    )
    .unwrap();
    let share = found.share_a_year;
    stand_in_the_page(&[
        format!(
            "{} kg a year, {} % of the charge",
            both(found.kg_a_year, 2),
            both(known(100.0 * share.value, 100.0 * share.standard_uncertainty), 1)
        ),
        format!("{:.1} %. Which rates oblige", 100.0 * found.last_share_a_year),
    ]);
}

fn recover(candidates: &[&'static Refrigerant], scale: f64, after: Option<f64>) -> RecoveryFinding {
    let pounds = |value: f64, uncertainty: f64| known(value * KG_PER_POUND, uncertainty * KG_PER_POUND);
    let cylinder = cylinder_fill(&Cylinder::new(candidates, 47.6 * KG_PER_POUND)).unwrap();
    recovery(&Recovery {
        expected_kg: pounds(7.7, 0.1),
        cylinder_limit_kg: cylinder.limit_kg,
        before_kg: pounds(scale - 28.0, 0.05),
        after_kg: after.map(|scale| pounds(scale - 28.0, 0.05)),
        tolerance: CHARGE_TOLERANCE,
    })
    .unwrap()
}

#[test]
fn recoveries() {
    let pounds = |mass: f64| mass / KG_PER_POUND;
    let both = |mass: Uncertain| both(known(pounds(mass.value), pounds(mass.standard_uncertainty)), 2);
    let found = recover(&[&R410A], 48.0, Some(54.2));
    let tight = recover(&[&R410A], 66.0, None);
    let mixed = recover(&[&R22, &R410A, &R290], 48.0, None);
    stand_in_the_page(&[
        format!("Room is left for {:.1} lb: *{}*. Afterwards", pounds(found.room_kg.value), found.room.name()),
        format!(
            "{} lb came out, {} lb against what was expected: *{}*. {}",
            both(found.recovered_kg.unwrap()),
            both(found.deviation_kg.unwrap()),
            found.balance.name(),
            // The page goes on as the answer does.
            found.balance.sentence().split_once(". ").unwrap().1
        ),
        format!(
            "Room is left for {:.1} lb: *{}*, and {:.1} lb need another cylinder",
            pounds(tight.room_kg.value),
            tight.room.name(),
            pounds(tight.excess_kg)
        ),
        format!("the cylinder is *{}*, {:.1} lb beyond its limit", mixed.room.name(), -pounds(mixed.room_kg.value)),
    ]);
}
