//! Every number of the worked examples in core/docs/safety.md is what the library computes.

use satline::quantity::{
    Atmosphere, KG_PER_POUND, Mass, PASCALS_PER_INCH_OF_MERCURY, PASCALS_PER_PSI, fahrenheit_from_kelvin,
};
use satline::refrigerant::identity::{R32, R290, R454B};
use satline::refrigerant::{self, Refrigerant};
use satline::safety::{
    ApplianceClass, Cylinder, FillVerdict, Given, Installation, Room, RoomReason, cylinder_fill, recovery_level,
    room_limit,
};

/// The page on one line, so that a sentence may be broken anywhere.
fn page() -> String {
    let text = include_str!("../../core/docs/safety.md");
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

fn says(page: &str, text: &str) {
    assert!(page.contains(text), "core/docs/safety.md does not say: {text}");
}

#[test]
fn rooms() {
    let page = page();
    let charge = Mass::from_kilograms(3.0).unwrap();
    let found = room_limit(&Room::new(&R454B, Installation::Wall.height_m(), Given::Both(9.0, charge))).unwrap();
    let bands = found.bands.unwrap();
    says(
        &page,
        &format!(
            "LFL {:.3} kg/m³, so m1 is {:.3} kg and m2 {:.2} kg",
            found.lower_flammability_limit_kg_m3.unwrap(),
            bands.m1_kg,
            bands.m2_kg
        ),
    );
    says(
        &page,
        &format!(
            "At 1.8 m it allows {:.2} kg, and 3.0 kg need {:.2} m²: the charge is too much",
            found.largest_charge_kg.unwrap(),
            found.smallest_area_m2.unwrap()
        ),
    );
    assert_eq!(found.within_limit, Some(false));
    says(&page, &format!("2.2 m it would be {:.0} % of", 100.0 * found.concentration.unwrap().share_of_limit));
    let at =
        |identity, place: Installation| room_limit(&Room::new(identity, place.height_m(), Given::Area(20.0))).unwrap();
    let (ceiling, floor) = (at(&R32, Installation::Ceiling), at(&R32, Installation::Floor));
    says(&page, &format!("of a room of 20 m².* At most {:.2} kg.", ceiling.largest_charge_kg.unwrap()));
    assert_eq!(floor.reason, RoomReason::RoomBelowBand);
    says(&page, &format!("less than m1, {:.3} kg", floor.bands.unwrap().m1_kg));
    let wall = at(&R290, Installation::Wall);
    says(
        &page,
        &format!("At most {:.3} kg; m1 is {:.3} kg", wall.largest_charge_kg.unwrap(), wall.bands.unwrap().m1_kg),
    );
}

#[test]
fn cylinders() {
    let page = page();
    for refrigerant in [
        &refrigerant::R410A,
        &refrigerant::R404A,
        &refrigerant::R32,
        &refrigerant::R454B,
        &refrigerant::R22,
        &refrigerant::R125,
    ] {
        let full =
            fahrenheit_from_kelvin(cylinder_fill(&Cylinder::new(&[refrigerant], 20.0)).unwrap().full_at_limit.kelvin);
        says(&page, &format!("| {} | {full:.1} °F | {:.1} °F |", refrigerant.designation(), full - 130.0));
    }
    let pounds = |kilograms: f64| kilograms / KG_PER_POUND;
    let fill = |candidates: &[&'static Refrigerant], contents: f64| {
        cylinder_fill(&Cylinder {
            tare_kg: Some(28.0 * KG_PER_POUND),
            contents_kg: Some(contents * KG_PER_POUND),
            ..Cylinder::new(candidates, 47.6 * KG_PER_POUND)
        })
        .unwrap()
    };
    let some = fill(&[&refrigerant::R410A], 20.0);
    says(
        &page,
        &format!(
            "At most {:.1} lb: stop at {:.1} lb on the scale. Room is left for {:.1} lb.",
            pounds(some.limit_kg),
            pounds(some.scale_limit_kg.unwrap()),
            pounds(some.contents.unwrap().room_left_kg)
        ),
    );
    let over = fill(&[&refrigerant::R410A], 45.0).contents.unwrap();
    assert_eq!(over.verdict, FillVerdict::Overfilled);
    says(&page, &format!("full of liquid at {:.0} °F", fahrenheit_from_kelvin(over.full.kelvin)));
    let mixed = fill(&[&refrigerant::R22, &refrigerant::R410A, &refrigerant::R290], 1.0);
    says(&page, &format!("decides: at most {:.1} lb", pounds(mixed.limit_kg)));
    for gas in [&refrigerant::R744, &refrigerant::R23, &refrigerant::R170] {
        assert!(cylinder_fill(&Cylinder::new(&[gas], 20.0)).is_err());
    }
}

#[test]
fn recovery() {
    let page = page();
    let high = Atmosphere::at_altitude_m(5280.0 * 0.3048).unwrap();
    let found = recovery_level(refrigerant::R134A.curves, 3.0, high).unwrap();
    assert_eq!(found.class, ApplianceClass::MediumPressure);
    says(
        &page,
        &format!(
            "medium pressure, {:.0} inHg, {:.1} kPa absolute; a gauge that reads zero in the thinner air there shows {:.1} kPa, {:.1} inHg",
            found.vacuum_in_hg.unwrap(),
            found.pressure_pa / 1e3,
            found.gauge_pa / 1e3,
            -found.gauge_pa / PASCALS_PER_INCH_OF_MERCURY
        ),
    );
    let psia = |refrigerant: &Refrigerant| {
        let found = recovery_level(refrigerant.curves, 3.0, Atmosphere::STANDARD).unwrap();
        found.pressure_at_104_f_pa.unwrap() / PASCALS_PER_PSI
    };
    says(
        &page,
        &format!("R-410A ({:.0} psia) and R-32 ({:.0} psia)", psia(&refrigerant::R410A), psia(&refrigerant::R32)),
    );
    for (curves, name) in [
        (&refrigerant::R23, "very high"),
        (&refrigerant::R22, "high"),
        (&refrigerant::R134A, "medium"),
        (&refrigerant::R123, "low"),
    ] {
        let stated = |charge| match recovery_level(curves.curves, charge, Atmosphere::STANDARD).unwrap().vacuum_in_hg {
            Some(vacuum) => format!("{vacuum:.0} inHg"),
            None => "25 mm Hg absolute".to_string(),
        };
        says(&page, &format!("| {name} pressure | {} | {} |", stated(3.0), stated(300.0)));
    }
}
