//! The comparison of two refrigerants: against what must hold of any two, against published facts of R-22 and R-407C,
//! and for what it must forbid. tests/python/test_visit_retrofit.py compares its states with an outside library.

use approx::assert_relative_eq;
use satline::Error;
use satline::eos::{End, Mixture, Model, model};
use satline::quantity::{Pressure, Temperature, TemperatureDifference};
use satline::refrigerant::identity;
use satline::uncertain::Uncertain;
use satline::visit::retrofit::{
    Comparison, CondensingAt, Conditions, OilFamily, RetrofitCaution, RetrofitOutcome, RetrofitReason,
    compare_refrigerants, oil_family,
};

fn conditions(evaporating_f: f64, condensing_f: f64, superheat_k: f64, subcooling_k: f64) -> Conditions {
    let difference = |kelvin| TemperatureDifference::from_kelvin(kelvin).unwrap();
    Conditions::new(
        Temperature::from_fahrenheit(evaporating_f).unwrap(),
        Temperature::from_fahrenheit(condensing_f).unwrap(),
        difference(superheat_k),
        difference(subcooling_k),
    )
    .unwrap()
}

fn usual() -> Conditions {
    conditions(45.0, 110.0, 10.0, 10.0)
}

fn ratios(found: &Comparison) -> [f64; 13] {
    let (equal, cooling) = (&found.at_equal_displacement, &found.at_equal_capacity);
    [
        found.volumetric_capacity_ratio,
        found.coefficient_of_performance_ratio,
        found.charge_ratio,
        equal.mass_flow,
        equal.orifice_area,
        equal.suction_velocity,
        equal.discharge_velocity,
        equal.liquid_velocity,
        cooling.mass_flow,
        cooling.orifice_area,
        cooling.suction_velocity,
        cooling.discharge_velocity,
        cooling.liquid_velocity,
    ]
}

fn reasons(found: &Comparison) -> Vec<RetrofitReason> {
    found.reasons().collect()
}

#[test]
fn the_same_refrigerant_twice_changes_nothing() {
    for model in
        [&model::R22, &model::R410A, &model::R407C, &model::R454B, &model::R290, &model::R404A, &model::R1243ZF]
    {
        for at in [CondensingAt::Bubble, CondensingAt::Mean, CondensingAt::Dew] {
            let conditions = Conditions { condensing_at: at, ..usual() };
            let found = compare_refrigerants(model, model, &conditions).unwrap();
            assert!(ratios(&found).iter().all(|ratio| *ratio == 1.0), "{found:?}");
            assert_eq!(found.discharge_temperature_rise_k, 0.0);
            assert_eq!(found.outcome, RetrofitOutcome::Possible);
            assert_eq!(reasons(&found), [RetrofitReason::PressuresNoHigher]);
            assert!(!found.cautions().any(|caution| caution == RetrofitCaution::ChangeOil));
        }
    }
}

#[test]
fn the_other_way_round_is_the_reciprocal() {
    for (one, other) in [(&model::R22, &model::R407C), (&model::R410A, &model::R32), (&model::R134A, &model::R513A)] {
        let there = compare_refrigerants(one, other, &usual()).unwrap();
        let back = compare_refrigerants(other, one, &usual()).unwrap();
        for (there, back) in ratios(&there).into_iter().zip(ratios(&back)) {
            assert_relative_eq!(there * back, 1.0, max_relative = 1e-12);
        }
        assert_eq!((there.old, there.new), (back.new, back.old));
    }
}

/// R-407C for R-22 at 45 and 110 °F with 10 K of superheat and subcooling: about 0.92 (computed independently). The
/// default convention, dew for evaporating, bubble for condensing, superheat not counted as cooling, gives 0.923; the
/// others lie around it.
#[test]
fn r407c_for_r22() {
    let ratio = |conditions: Conditions| {
        compare_refrigerants(&model::R22, &model::R407C, &conditions).unwrap().volumetric_capacity_ratio
    };
    assert!((ratio(usual()) - 0.92).abs() < 0.005, "{}", ratio(usual()));
    let useful = ratio(Conditions { useful_superheat: 1.0, ..usual() });
    assert!(useful > ratio(usual()) && (useful - 0.935).abs() < 0.002, "{useful}");
    let [mean, dew] =
        [CondensingAt::Mean, CondensingAt::Dew].map(|at| ratio(Conditions { condensing_at: at, ..usual() }));
    assert!(ratio(usual()) < mean && mean < dew && dew < 0.98, "{mean} {dew}");
}

/// The pieces fit together: mass flow times effect is capacity, displacement and capacity flows differ by its ratio.
#[test]
fn the_ratios_are_consistent() {
    let pairs: [(&'static Model, &'static Model); 4] = [
        (&model::R22, &model::R407C),
        (&model::R22, &model::R438A),
        (&model::R410A, &model::R454B),
        (&model::R404A, &model::R448A),
    ];
    for (old, new) in pairs {
        let found = compare_refrigerants(old, new, &usual()).unwrap();
        let (equal, cooling) = (found.at_equal_displacement, found.at_equal_capacity);
        let effect = found.new.refrigerating_effect_j_kg / found.old.refrigerating_effect_j_kg;
        assert_relative_eq!(equal.mass_flow * effect, found.volumetric_capacity_ratio, max_relative = 1e-12);
        assert_relative_eq!(cooling.mass_flow * effect, 1.0, max_relative = 1e-12);
        assert_relative_eq!(equal.suction_velocity, 1.0, max_relative = 1e-12);
        assert_relative_eq!(cooling.suction_velocity, 1.0 / found.volumetric_capacity_ratio, max_relative = 1e-12);
        let area = |cycle: &satline::visit::retrofit::Cycle| {
            let drop = cycle.condensing_pressure_pa - cycle.evaporating_pressure_pa;
            1.0 / (cycle.refrigerating_effect_j_kg * (cycle.liquid_density_kg_m3 * drop).sqrt())
        };
        assert_relative_eq!(cooling.orifice_area, area(&found.new) / area(&found.old), max_relative = 1e-12);
        for cycle in [&found.old, &found.new] {
            assert_relative_eq!(
                cycle.pressure_ratio,
                cycle.condensing_pressure_pa / cycle.evaporating_pressure_pa,
                max_relative = 1e-15
            );
            assert!(cycle.discharge_temperature_k > usual().condensing.kelvin());
            assert!(cycle.coefficient_of_performance > 3.0 && cycle.coefficient_of_performance < 8.0);
        }
    }
}

#[test]
fn a_perfect_compressor_and_a_real_one() {
    let perfect = Conditions { isentropic_efficiency: 1.0, ..usual() };
    let (real, perfect) = (usual(), perfect);
    let found = |conditions| compare_refrigerants(&model::R22, &model::R410A, &conditions).unwrap();
    let (real, perfect) = (found(real), found(perfect));
    // Work by the efficiency; colder discharge; capacity untouched.
    assert_relative_eq!(
        real.new.coefficient_of_performance,
        0.7 * perfect.new.coefficient_of_performance,
        max_relative = 1e-12
    );
    assert!(perfect.new.discharge_temperature_k < real.new.discharge_temperature_k - 5.0);
    assert_eq!(perfect.volumetric_capacity_ratio, real.volumetric_capacity_ratio);
    // From Carnot's law: no machine between these temperatures does better.
    let (low, high) = (usual().evaporating.kelvin(), usual().condensing.kelvin());
    assert!(perfect.old.coefficient_of_performance < low / (high - low));
}

#[test]
fn what_a_condensing_temperature_is() {
    let at = |at| {
        let conditions = Conditions { condensing_at: at, ..usual() };
        compare_refrigerants(&model::R22, &model::R407C, &conditions).unwrap()
    };
    let mixture = Mixture::of(&model::R407C).unwrap();
    let kelvin = usual().condensing.kelvin();
    let ends = |pressure| [End::Bubble, End::Dew].map(|end| mixture.at_pressure(end, pressure).unwrap().temperature);
    let [bubble, _] = ends(at(CondensingAt::Bubble).new.condensing_pressure_pa);
    let [_, dew] = ends(at(CondensingAt::Dew).new.condensing_pressure_pa);
    let [lower, upper] = ends(at(CondensingAt::Mean).new.condensing_pressure_pa);
    assert!((bubble - kelvin).abs() < 1e-7 && (dew - kelvin).abs() < 1e-7);
    assert!((0.5 * (lower + upper) - kelvin).abs() < 1e-7);
    assert_relative_eq!(at(CondensingAt::Mean).new.condensing_glide_k, upper - lower, max_relative = 1e-7);
    // A pure refrigerant does not care.
    assert_eq!(at(CondensingAt::Dew).old.condensing_pressure_pa, at(CondensingAt::Bubble).old.condensing_pressure_pa);
}

#[test]
fn what_burns_or_poisons_more_is_blocked() {
    let plate = Pressure::from_psi_absolute(700.0).unwrap();
    let rated = Conditions { high_side_design_pressure: Some(plate), ..usual() };
    let outcome = |old, new| {
        let found = compare_refrigerants(old, new, &rated).unwrap();
        (found.outcome, reasons(&found))
    };
    for new in [&model::R32, &model::R454B, &model::R290, &model::R152A, &model::R1243ZF] {
        let (outcome, why) = outcome(&model::R22, new);
        assert_eq!(outcome, RetrofitOutcome::Blocked);
        let reason = match new.identity.designation {
            "R-1243zf" => RetrofitReason::ClassUnknown,
            _ => RetrofitReason::FlammableInClass1Unit,
        };
        assert!(why.contains(&reason), "{why:?}");
    }
    assert!(outcome(&model::R32, &model::R290).1.contains(&RetrofitReason::MoreFlammable));
    assert!(outcome(&model::R134A, &model::R245FA).1.contains(&RetrofitReason::MoreToxic));
    assert!(outcome(&model::R454B, &model::R717).1.contains(&RetrofitReason::MoreToxic));
    // No more so than before.
    assert_eq!(outcome(&model::R32, &model::R454B), (RetrofitOutcome::Possible, vec![RetrofitReason::WithinDesign]));
    assert_eq!(outcome(&model::R22, &model::R407C), (RetrofitOutcome::Possible, vec![RetrofitReason::WithinDesign]));
    let burns = compare_refrigerants(&model::R32, &model::R454B, &rated).unwrap();
    assert!(burns.cautions().any(|caution| caution == RetrofitCaution::Flammable));
}

#[test]
fn pressures_above_design_are_blocked() {
    let psi = |value| Some(Pressure::from_psi_absolute(value).unwrap());
    let found = |high, low| {
        let rated = Conditions { high_side_design_pressure: high, low_side_design_pressure: low, ..usual() };
        compare_refrigerants(&model::R22, &model::R410A, &rated).unwrap()
    };
    // R-410A at 110 °F has about 380 psia, at 125 °F some 465, at 80 °F 250 (bubble, from common pressure-temperature
    // charts); a unit for R-22 is made for 300 and 150 psig or so (common practice).
    let weak = found(psi(315.0), psi(165.0));
    assert_eq!(
        reasons(&weak),
        [
            RetrofitReason::CondensingAboveDesign,
            RetrofitReason::StandstillAboveDesign,
            RetrofitReason::LowSideAboveDesign
        ]
    );
    assert_eq!(weak.outcome, RetrofitOutcome::Blocked);
    assert_eq!(reasons(&found(psi(420.0), None)), [RetrofitReason::StandstillAboveDesign]);
    assert_eq!(reasons(&found(psi(500.0), psi(240.0))), [RetrofitReason::LowSideAboveDesign]);
    assert_eq!(reasons(&found(psi(500.0), psi(260.0))), [RetrofitReason::WithinDesign]);
    // Not known, so not told.
    let unknown = found(None, None);
    assert_eq!(unknown.outcome, RetrofitOutcome::CannotTell);
    assert_eq!(reasons(&unknown), [RetrofitReason::DesignPressureNeeded]);
    assert!(unknown.cautions().any(|caution| caution == RetrofitCaution::DesignPressureNotGiven));
    // Down in pressure nothing is needed of the plate.
    let down = compare_refrigerants(&model::R410A, &model::R407C, &usual()).unwrap();
    assert_eq!((down.outcome, reasons(&down)), (RetrofitOutcome::Possible, vec![RetrofitReason::PressuresNoHigher]));
    // R-744 is above its critical temperature at rest.
    let cold = conditions(0.0, 60.0, 5.0, 2.0);
    let dioxide = compare_refrigerants(&model::R22, &model::R744, &cold).unwrap();
    assert!(dioxide.new.standstill_pressure_pa.is_none());
    assert!(reasons(&dioxide).contains(&RetrofitReason::NoLiquidAtStandstill));
    assert_eq!(dioxide.outcome, RetrofitOutcome::Blocked);
    // R-134a in place of R-22 in a freezer draws air.
    let freezer = compare_refrigerants(&model::R22, &model::R134A, &conditions(-20.0, 100.0, 5.0, 2.0)).unwrap();
    assert!(reasons(&freezer).contains(&RetrofitReason::MayDrawAir));
}

#[test]
fn cautions_follow_the_change() {
    let has = |found: &Comparison, wanted| found.cautions().any(|caution| caution == wanted);
    let found = compare_refrigerants(&model::R22, &model::R407C, &usual()).unwrap();
    for wanted in [
        RetrofitCaution::LicensedPractice,
        RetrofitCaution::Label,
        RetrofitCaution::RecoverAll,
        RetrofitCaution::ChangeOil,
        RetrofitCaution::Seals,
        RetrofitCaution::ChargeAsLiquid,
    ] {
        assert!(has(&found, wanted), "{wanted:?}");
    }
    assert!(!has(&found, RetrofitCaution::Flammable) && !has(&found, RetrofitCaution::HotDischarge));
    assert!(!has(&found, RetrofitCaution::CapacityChanges) && !has(&found, RetrofitCaution::Estimated));
    let hot = Conditions { highest_discharge: Temperature::from_celsius(60.0).unwrap(), ..usual() };
    assert!(has(&compare_refrigerants(&model::R22, &model::R407C, &hot).unwrap(), RetrofitCaution::HotDischarge));
    let carried = compare_refrigerants(&model::R22, &model::R438A, &usual()).unwrap();
    assert!(has(&carried, RetrofitCaution::OilMayNotReturn) && has(&carried, RetrofitCaution::Estimated));
    let larger = compare_refrigerants(&model::R22, &model::R410A, &usual()).unwrap();
    assert!(has(&larger, RetrofitCaution::CapacityChanges) && has(&larger, RetrofitCaution::MeteringDevice));
    assert!(!has(&larger, RetrofitCaution::ChargeAsLiquid));
}

/// Common practice for each chemistry.
#[test]
fn oils_by_chemistry() {
    for (identity, oil) in [
        (&identity::R22, OilFamily::MineralOrAlkylbenzene),
        (&identity::R12, OilFamily::MineralOrAlkylbenzene),
        (&identity::R502, OilFamily::MineralOrAlkylbenzene),
        (&identity::R500, OilFamily::MineralOrAlkylbenzene),
        (&identity::R290, OilFamily::MineralOrAlkylbenzene),
        (&identity::R717, OilFamily::MineralOrAlkylbenzene),
        (&identity::R402A, OilFamily::AlkylbenzeneOrPolyolester),
        (&identity::R408A, OilFamily::AlkylbenzeneOrPolyolester),
        (&identity::R410A, OilFamily::Polyolester),
        (&identity::R407C, OilFamily::Polyolester),
        (&identity::R32, OilFamily::Polyolester),
        (&identity::R454B, OilFamily::Polyolester),
        (&identity::R422D, OilFamily::PolyolesterMineralMayDo),
        (&identity::R417A, OilFamily::PolyolesterMineralMayDo),
        (&identity::R134A, OilFamily::PolyolesterOrPolyalkyleneGlycol),
        (&identity::R744, OilFamily::PolyolesterOrPolyalkyleneGlycol),
        (&identity::R466A, OilFamily::AskTheMaker),
        (&identity::R1233ZDE, OilFamily::AskTheMaker),
    ] {
        assert_eq!(oil_family(identity), oil, "{}", identity.designation);
    }
}

#[test]
fn the_starting_charge_carries_the_scale() {
    let found = compare_refrigerants(&model::R22, &model::R407C, &usual()).unwrap();
    let charge = found.starting_charge(Uncertain::new(3.2, 0.05).unwrap(), 0.9).unwrap();
    assert_relative_eq!(charge.value, 3.2 * 0.9 * found.charge_ratio, max_relative = 1e-12);
    assert_relative_eq!(charge.standard_uncertainty / charge.value, 0.05 / 3.2, max_relative = 1e-9);
    for (mass, share) in [(-1.0, 0.9), (3.2, 1.1), (3.2, 0.0), (3.2, f64::NAN)] {
        assert!(found.starting_charge(Uncertain { value: mass, standard_uncertainty: 0.0 }, share).is_err());
    }
}

#[test]
fn impossible_conditions_say_which() {
    let quantity = |old, new, conditions: Conditions| match compare_refrigerants(old, new, &conditions) {
        Err(Error::OutOfRange { quantity, .. } | Error::NotFinite { quantity, .. }) => quantity,
        other => panic!("{other:?}"),
    };
    let above = conditions(45.0, 110.0, 10.0, 10.0);
    assert_eq!(quantity(&model::R22, &model::R744, above), "condensing state of the new refrigerant");
    assert_eq!(quantity(&model::R744, &model::R22, above), "condensing state of the old refrigerant");
    let upside_down = conditions(110.0, 45.0, 10.0, 10.0);
    assert_eq!(quantity(&model::R22, &model::R407C, upside_down), "condensing state of the old refrigerant");
    assert_eq!(
        quantity(&model::R22, &model::R407C, conditions(45.0, 110.0, -1.0, 5.0)),
        "superheat or subcooling of a cycle"
    );
    assert_eq!(
        quantity(&model::R22, &model::R407C, conditions(45.0, 110.0, 5.0, 61.0)),
        "superheat or subcooling of a cycle"
    );
    assert_eq!(
        quantity(&model::R22, &model::R407C, conditions(-300.0, 110.0, 5.0, 5.0)),
        "evaporating state of the old refrigerant"
    );
    for efficiency in [0.0, 1.01, f64::NAN] {
        let bad = Conditions { isentropic_efficiency: efficiency, ..usual() };
        assert_eq!(quantity(&model::R22, &model::R407C, bad), "isentropic efficiency");
    }
    for share in [-0.1, 1.1, f64::NAN] {
        let bad = Conditions { useful_superheat: share, ..usual() };
        assert_eq!(quantity(&model::R22, &model::R407C, bad), "useful share of the superheat");
    }
}

/// Every refrigerant against R-22 over the conditions of air conditioning: an answer or an error, and nothing that is not
/// a number.
#[test]
fn every_refrigerant_answers_or_says_why() {
    let mut answered = 0;
    for model in satline::eos::model::ALL {
        for (evaporating, condensing) in [(45.0, 110.0), (20.0, 130.0)] {
            match compare_refrigerants(&model::R22, model, &conditions(evaporating, condensing, 10.0, 5.0)) {
                Ok(found) => {
                    assert!(ratios(&found).iter().all(|ratio| ratio.is_finite() && *ratio > 0.0));
                    assert!(found.reasons().count() > 0 && found.cautions().count() > 0);
                    answered += 1;
                }
                Err(Error::OutOfRange { quantity, .. }) => assert!(quantity.ends_with("of the new refrigerant")),
                Err(error) => panic!("{}: {error}", model.identity.designation),
            }
        }
    }
    println!("{answered} of {} answered", 2 * satline::eos::model::ALL.len());
    assert!(answered > 250, "{answered}");
}
