//! When refrigerant is not removed, and what removing means: recovering it into a cylinder.

use satline::diagnosis::{Advice, Cause, Caution, Charge, ChargeStatus, NextCheck, Options, ValueName, diagnose_with};
use satline::reading::{Field, Metering, Reading};
use satline::refrigerant;
use satline::rig::{
    Conditions, Device, Faults, RATING_CONDITIONS, Rating, RefrigerantMap, Sensors, Unit, WATTS_PER_TON,
};
use satline::saturation::R410A;
use satline::text::{Units, finding_to_words};
use satline_tests::commission::rated_subcooling;
use satline_tests::guard::by_hand::ByHand;
use satline_tests::guard::pool::pool;
use satline_tests::guard::rules::violated;
use satline_tests::trial::engine::Engine;
use satline_tests::trial::visit::{Label, usual};
use std::fs;
use std::path::Path;

const TONS: f64 = 3.0;

/// Readings of R-410A units, with an orifice and with a valve, on four days, with a fault; by several sets of instruments.
fn simulated(sensors: &Sensors, faults: &Faults, mut each: impl FnMut(&Reading)) {
    let record = refrigerant::find("R-410A").unwrap();
    let map = RefrigerantMap::of("R-410A", record.model).unwrap();
    for device in [Device::ShortTube, Device::FlashingOrifice, Device::TaperedValve, Device::LinearValve] {
        let unit = Unit::designed(&map, &Rating::usual(TONS * WATTS_PER_TON, device)).unwrap();
        let fixed = matches!(device, Device::ShortTube | Device::FlashingOrifice);
        let label = Label::of(record.curves, TONS, fixed, rated_subcooling(&unit).unwrap().unwrap()).unwrap();
        for outdoor_dry_bulb in [298.15, 303.15, 308.15, 313.15] {
            let air =
                Conditions { outdoor_dry_bulb, return_dry_bulb: 298.15, return_wet_bulb: 291.65, ..RATING_CONDITIONS };
            let state = unit.solve(&air, faults).unwrap();
            for seed in 0..4 {
                each(&label.reading(&mut sensors.placed(seed), &state, &air).unwrap());
            }
        }
    }
}

/// Without what tells air inside from too much refrigerant.
fn without_a_surface() -> Sensors {
    usual().with(Field::CondensingSurfaceTemperature, None)
}

/// Hardly more than a manifold and clamps.
fn few() -> Sensors {
    [Field::CondenserLeavingDryBulb, Field::CompressorPower, Field::DischargeLineTemperature]
        .into_iter()
        .fold(without_a_surface(), |sensors, field| sensors.with(field, None))
}

const SEVERITIES: [f64; 7] = [0.1, 0.2, 0.35, 0.5, 0.8, 1.2, 1.6];

/// Air or nitrogen inside piles up subcooling; on a usual visit it is never called too much refrigerant. Where nothing that
/// was measured tells them apart, the charge may be called high provisionally, and nothing is taken: what is asked for
/// first is a measurement, or the scale.
#[test]
fn air_inside_is_not_too_much_refrigerant() {
    let mut called_so = 0;
    for non_condensables in SEVERITIES {
        let faults = Faults { non_condensables, ..Faults::default() };
        simulated(&usual(), &faults, |reading| {
            let finding = diagnose_with(reading, &Options::default());
            assert!(finding.charge != Charge::High && finding.advice != Advice::Recover, "{non_condensables}");
            called_so += u32::from(finding.hypotheses.marginal(Cause::NonCondensables) > 0.5);
        });
        for sensors in [without_a_surface(), few()] {
            simulated(&sensors, &faults, |reading| {
                let finding = diagnose_with(reading, &Options::default());
                assert!(finding.advice != Advice::Recover, "{non_condensables}");
                if finding.charge == Charge::High {
                    assert_eq!(finding.charge_status, ChargeStatus::Provisional);
                    assert!(finding.next_check != NextCheck::None);
                    let likely = |cause| finding.hypotheses.marginal(cause);
                    assert!(likely(Cause::Overcharge) > likely(Cause::NonCondensables));
                }
            });
        }
    }
    // It is seen for what it is, not only not misnamed.
    assert!(called_so > 100, "{called_so}");
}

/// The neighbour: too much refrigerant, measured in full, is still recovered.
#[test]
fn too_much_refrigerant_is_recovered() {
    let mut recovered = 0;
    simulated(&usual(), &Faults { overcharge: 0.25, ..Faults::default() }, |reading| {
        let finding = diagnose_with(reading, &Options::default());
        assert!(violated(reading, &finding).is_empty());
        if finding.advice == Advice::Recover {
            recovered += 1;
            assert!(finding.cautions.contains(Caution::RecoverOnly) && finding.charge == Charge::High);
        }
    });
    assert!(recovered > 20, "{recovered}");
}

/// By hand: 20 °F of subcooling where 9 is asked for, and a return bend 14 °F colder than saturation, as air inside has it.
#[test]
fn a_cold_return_bend_speaks_of_air() {
    let piled_up = ByHand::of(&R410A, Metering::ThermostaticValve)
        .air(85.0, 77.0, 66.0, 59.5)
        .cfm(1200.0)
        .f(Field::CondenserLeavingDryBulb, 103.0)
        .psig(Field::SuctionPressure, 128.0)
        .superheat(10.0)
        .psig(Field::LiquidPressure, 365.0)
        .subcooling(20.0)
        .df(Field::TargetSubcooling, 9.0);
    let bend = |below: f64| {
        let saturated = R410A.bubble_temperature(piled_up.0.liquid_pressure.unwrap()).unwrap().fahrenheit();
        piled_up.f(Field::CondensingSurfaceTemperature, saturated - below).finding()
    };
    let air = bend(14.0);
    assert!(air.hypotheses.marginal(Cause::NonCondensables) > air.hypotheses.marginal(Cause::Overcharge));
    assert!(air.charge != Charge::High && air.advice != Advice::Recover, "{:?}", air.reason);
    // Without the bend nobody knows, and nothing is taken.
    assert!(piled_up.finding().advice != Advice::Recover);
}

/// Wherever something is to be removed, the words say into what, and the caution stands beside it.
#[test]
fn removing_is_recovering() {
    assert!(Advice::Recover.sentence().contains("into a recovery cylinder"));
    assert!(satline::charge::Action::Remove.sentence().contains("into a recovery cylinder"));
    assert!(Caution::RecoverOnly.sentence().contains("recovering into a cylinder"));
    let (mut advised, mut quoted) = (0, 0);
    for row in pool() {
        let finding = Engine::finding(row, false);
        let advises = finding.advice == Advice::Recover;
        let quotes = finding.protocol.action == satline::charge::Action::Remove;
        if !advises && !quotes {
            continue;
        }
        advised += u32::from(advises);
        quoted += u32::from(quotes);
        assert!(finding.cautions.contains(Caution::RecoverOnly), "{}", row.line());
        for units in [Units::Ip, Units::Si] {
            let words = finding_to_words("", &row.reading, &finding, units);
            assert!(words.contains("into a recovery cylinder") && words.contains("never vent"), "{words}");
        }
    }
    assert!(advised > 20 && quoted > 20, "{advised} {quoted}");
}

/// Every string in the sources below a folder that is not in a comment.
fn strings(folder: &Path, found: &mut Vec<(String, String)>) {
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            strings(&path, found);
            continue;
        }
        let name = path.file_name().unwrap().to_string_lossy().into_owned();
        if !name.ends_with(".rs") {
            continue;
        }
        let text = fs::read_to_string(&path).unwrap();
        let code: String =
            text.lines().filter(|line| !line.trim_start().starts_with("//")).map(|line| format!("{line}\n")).collect();
        // Of texts between quotes every second is a string; the few quotes as characters do not matter to words.
        found.extend(
            code.replace("'\"'", "")
                .replace("\\\"", "")
                .split('"')
                .skip(1)
                .step_by(2)
                .map(|one| (name.clone(), one.to_string())),
        );
    }
}

/// Words that let something out.
const LETS_OUT: [&str; 12] =
    ["vent", "vents", "vented", "bleed", "bled", "purge", "purges", "purged", "release", "released", "blow", "exhaust"];

/// Sentences with such a word that are right: they forbid it, or let out nitrogen, or empty a hose.
const RIGHT: [&str; 9] = [
    "never vent",
    "Never vent",
    "never purge, which vents refrigerant",
    "Do not purge or vent",
    "hoses",
    "nitrogen",
    "Nitrogen",
    "release the pressure before touching a joint",
    "bleed of the accumulator",
];

/// Nobody is ever told to let refrigerant out: every sentence in the sources of the library is looked at.
#[test]
fn no_sentence_lets_refrigerant_out() {
    let mut all = Vec::new();
    strings(&Path::new(env!("CARGO_MANIFEST_DIR")).join("../core/src"), &mut all);
    let lets_out = |sentence: &str| {
        let lower = sentence.to_lowercase();
        lower.split(|letter: char| !letter.is_alphabetic()).any(|word| LETS_OUT.contains(&word))
    };
    let wrong: Vec<_> = all
        .iter()
        .filter(|(_, sentence)| {
            sentence.contains(' ') && lets_out(sentence) && !RIGHT.iter().any(|right| sentence.contains(right))
        })
        .collect();
    assert!(wrong.is_empty(), "{wrong:?}");
    // The sentences are there, and the search finds what it should.
    for answer in Advice::ALL {
        assert!(all.iter().any(|(_, sentence)| sentence == answer.sentence()), "{answer:?}");
    }
    assert!(lets_out("Purge a little off the top.") && !lets_out("Ventilate the room."));
}

/// Too much refrigerant that comes back as liquid breaks the compressor; a wet shell alone proves nothing on a humid day,
/// and what does prove it is computed where it was measured.
#[test]
fn flooding_is_named_and_a_sweating_shell_proves_nothing() {
    let flooded = ByHand::of(&R410A, Metering::FixedOrifice)
        .air(85.0, 77.0, 66.0, 59.5)
        .cfm(1200.0)
        .psig(Field::SuctionPressure, 135.0)
        .superheat(0.5)
        .psig(Field::LiquidPressure, 335.0)
        .subcooling(17.0)
        .f(Field::SumpTemperature, 52.0)
        .f(Field::DischargeLineTemperature, 118.0);
    let finding = flooded.finding();
    for caution in [Caution::FloodedCompressor, Caution::SweatingShell, Caution::Floodback] {
        assert!(finding.cautions.contains(caution), "{caution:?}");
    }
    assert!(Caution::FloodedCompressor.sentence().contains("breaks it"));
    let shell = Caution::SweatingShell.sentence();
    assert!(shell.contains("proves nothing on a humid day") && shell.contains("sump") && shell.contains("discharge"));
    // 52 °F is some 4 °F over the dew temperature at 135 psig, 118 °F some 11 over that at 335.
    let fahrenheit = |name| finding.values.get(name).unwrap().value * 1.8;
    assert!((2.0..7.0).contains(&fahrenheit(ValueName::SumpOverDew)), "{}", fahrenheit(ValueName::SumpOverDew));
    assert!((5.0..16.0).contains(&fahrenheit(ValueName::DischargeSuperheat)));
    let unmeasured = flooded.without(Field::SumpTemperature).without(Field::DischargeLineTemperature).finding();
    assert!(unmeasured.values.sump_over_dew.is_none() && unmeasured.values.discharge_superheat.is_none());
    assert!(unmeasured.cautions.contains(Caution::SweatingShell));
}

/// Every simulated unit that is called too full, or whose superheat is gone, comes with both cautions; a dry one that
/// nobody calls so with neither.
#[test]
fn flooding_is_named_wherever_it_may_be() {
    let (mut named, mut dry) = (0, 0);
    for row in pool() {
        let finding = Engine::finding(row, true);
        let said = finding.cautions.contains(Caution::FloodedCompressor);
        assert_eq!(said, finding.cautions.contains(Caution::SweatingShell));
        if finding.charge == Charge::High || finding.cautions.contains(Caution::Floodback) {
            assert!(said, "{}", row.line());
            named += 1;
        } else if !said {
            dry += 1;
        }
    }
    assert!(named > 50 && dry > 50, "{named} {dry}");
}
