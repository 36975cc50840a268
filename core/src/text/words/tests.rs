//! What is said, in which order, and that it is short.

use super::*;
use crate::diagnosis::{
    Advice, Cause, CauseSet, Caution, ChargeAmount, Conclusion, ConclusionReason, FeatureName, Features, Hypotheses,
    Hypothesis, NextCheck, Preconditions, Reason, ValueBound, diagnose,
};
use crate::text::readings_from_json;
use crate::text::sample::undercharged;

const DEMO: &str = include_str!("../../../examples/demo_school.json");

/// Words between the first line and the cautions.
fn count(text: &str) -> usize {
    let body = text.split_once("\n  Cautions:").unwrap().0;
    lines::words(body.split_once('\n').map_or("", |(_, body)| body))
}

#[test]
fn everything_stands_in_its_order() {
    let reading = Reading { refrigerant: Some(&crate::saturation::R410A), ..Reading::default() };
    let mut finding = undercharged(&reading);
    finding.cautions.add(Caution::FlammableLeak);
    let text = finding_to_words("Demo", &reading, &finding, Units::Ip);
    let expected = [
        "Demo: R-410A, metering not given",
        "First: If it may be leaking indoors: ventilate and remove every source of ignition before anything else.",
        "Stands by: too little refrigerant (93 %). Next likely: too little refrigerant, with too little air over the indoor coil (4 %)",
        "Charge: LOW, confirmed.",
        "Charge work: Once the leak is found, add about 0.31 ± 0.08 kg (0.7 ± 0.2 lb), 12 ± 3 % of the nameplate charge (7 to 17 %), at most 5 % at a time, fifteen minutes after each; a blend as liquid, metered to vapour.",
        "Why: A valve system is judged by its subcooling against the maker's figure.",
        "- Superheat 23.2 ± 1.3 °F, expected 10.8 ± 2.2 by this unit's own readings when healthy.",
        "- Subcooling 2.2 ± 1.1 °F, expected 9.7 ± 1.4 by this unit's own readings when healthy.",
        "Conditions not known: airflow.",
        "Next: Refrigerant does not wear out: look for the leak before adding any.",
        "Protocol (California Title 24, appendix RA3.2, 2013 edition, installer; regional): no valid test.",
        "Cautions:",
    ];
    let mut rest = text.as_str();
    for part in expected {
        let (_, after) = rest.split_once(part).unwrap_or_else(|| panic!("{part} in order in\n{text}"));
        rest = after;
    }
    // Said first, it is not said twice.
    assert_eq!(text.matches("source of ignition before").count(), 1);
    let si = finding_to_words("Demo", &reading, &finding, Units::Si);
    assert!(si.contains("Superheat 12.9 ± 0.7 K, expected 6.0 ± 1.2 by"), "{si}");
    assert!(si.contains("add about 0.31 ± 0.08 kg, 12 ± 3 % of"), "{si}");
}

#[test]
fn features_are_said_by_their_weight_and_in_their_units() {
    let mut finding = undercharged(&Reading::default());
    let share = crate::diagnosis::Feature {
        value: 0.8,
        standard_uncertainty: 0.04,
        expected: 1.0,
        expected_uncertainty: 0.02,
        source: crate::diagnosis::Source::Class,
    };
    finding.missing = crate::diagnosis::Missing::NONE;
    finding.hypotheses = Hypotheses::NONE;
    finding.features.put(FeatureName::Airflow, share);
    let text = finding_to_words("", &Reading::default(), &finding, Units::Ip);
    let airflow = text.find("- Airflow for the capacity 80 ± 4 %, expected 100 ± 2 by units of its kind.").unwrap();
    let superheat = text.find("- Superheat").unwrap();
    let discharge = text.find("- Discharge line temperature 154.5 ± 0.9 °F, expected 143.3 ± 5.4 by").unwrap();
    assert!(superheat < airflow && airflow < discharge, "{text}");
    // The fifth and sixth weigh least.
    assert!(!text.contains("Temperature split") && !text.contains("Condensing over"), "{text}");
}

#[test]
fn what_cannot_be_told_says_so_and_what_is_likeliest() {
    let mut finding = undercharged(&Reading::default());
    finding.conclusion = Conclusion::cannot_tell(ConclusionReason::TooClose);
    finding.next_check = NextCheck::MeasureDischargeLine;
    finding.missing = crate::diagnosis::Missing::NONE;
    let text = finding_to_words("", &Reading::default(), &finding, Units::Ip);
    let expected = "Cannot tell: The leading explanations are too close to act on one of them. Likeliest: too little \
                    refrigerant (93 %); too little refrigerant, with too little air over the indoor coil (4 %)";
    assert!(text.contains(expected), "{text}");
    assert!(text.contains("from the compressor. Of what can still be measured, it would settle most."), "{text}");
    finding.conclusion =
        Conclusion { causes: Some(CauseSet::HEALTHY), reason: crate::diagnosis::ConclusionReason::Stands };
    finding.fits = false;
    let text = finding_to_words("", &Reading::default(), &finding, Units::Ip);
    let expected = "Stands by: no fault that these measurements can show (1 %), though nothing known fits";
    assert!(text.contains(expected), "{text}");
}

#[test]
fn amounts_follow_the_advice_and_the_bound() {
    let mut finding = undercharged(&Reading::default());
    let mut said = |advice: Advice, amount: ChargeAmount| {
        finding.advice = advice;
        finding.amount = Some(amount);
        let text = finding_to_words("", &Reading::default(), &finding, Units::Ip);
        String::from(text.lines().find_map(|line| line.strip_prefix("  Charge work: ")).unwrap())
    };
    let amount = ChargeAmount {
        share: -0.2,
        standard_uncertainty: 0.05,
        lowest: -0.28,
        highest: -0.12,
        mass_kg: Some(-0.6),
        bound: ValueBound::Exact,
    };
    assert_eq!(
        said(Advice::Recover, amount),
        "Recover about 0.6 ± 0.1 kg (1.3 ± 0.3 lb), 20 ± 5 % of the nameplate charge (12 to 28 %), into a \
         recovery cylinder, a little at a time, fifteen minutes after each."
    );
    // An advice that does not ask for it is not turned into one that does.
    let kept = said(Advice::DoNotCharge, amount);
    assert!(kept.starts_with(Advice::DoNotCharge.sentence()) && kept.contains("is over by about"), "{kept}");
    assert!(said(Advice::AddInSteps, amount).starts_with(Advice::AddInSteps.sentence()));
    let least = ChargeAmount { bound: ValueBound::AtLeast, ..amount };
    assert!(said(Advice::Recover, least).starts_with("Recover at least 0.36 kg (0.79 lb), 12 % of"));
    let shares = ChargeAmount { share: 0.12, lowest: 0.07, highest: 0.17, mass_kg: None, ..amount };
    assert!(said(Advice::AddInSteps, shares).contains("add about 12 ± 5 % of the nameplate charge (7 to 17 %),"));
}

#[test]
fn values_stand_in_where_nothing_could_be_weighed() {
    let labelled = &readings_from_json(DEMO).unwrap()[1];
    let mut finding = diagnose(&labelled.reading);
    finding.features = Features::NONE;
    finding.hypotheses = Hypotheses::NONE;
    finding.conclusion = Conclusion::cannot_tell(ConclusionReason::TooLittleMeasured);
    finding.amount = None;
    finding.preconditions = undercharged(&labelled.reading).preconditions;
    let words = finding_to_words(&labelled.label, &labelled.reading, &finding, Units::Ip);
    for part in ["Unit 2, gymnasium: R-410A, fixed orifice", "°F", "±", "Cautions", "local codes", "cfm per ton"] {
        assert!(words.contains(part), "{part} in {words}");
    }
    let si = finding_to_words("", &labelled.reading, &finding, Units::Si);
    assert!(si.contains(" K") && si.contains("°C") && si.contains("m³/h per kW"), "{si}");
    assert!(!si.contains("°F,"));
}

#[test]
fn the_demo_can_be_read_aloud_in_a_minute() {
    for labelled in readings_from_json(DEMO).unwrap() {
        assert!(labelled.demo);
        let finding = diagnose(&labelled.reading);
        for units in [Units::Ip, Units::Si] {
            let words = finding_to_words(&labelled.label, &labelled.reading, &finding, units);
            assert!(count(&words) <= MOST_WORDS, "{words}");
            assert!(words.contains("Next: ") && words.contains("Protocol (") && words.contains("Charge work: "));
        }
    }
}

#[test]
fn no_finding_is_longer_than_a_minute() {
    let reading = Reading { refrigerant: Some(&crate::saturation::R410A), ..Reading::default() };
    let mut finding = undercharged(&reading);
    finding.cautions.add(Caution::FlammableLeak);
    finding.preconditions = Preconditions::UNKNOWN;
    finding.fits = false;
    let longest = CauseSet::two(Cause::LiquidLineRestriction, Cause::CompressorLeakage);
    finding.hypotheses = Hypotheses::NONE;
    for probability in [0.5, 0.3, 0.2] {
        finding.hypotheses.push(Hypothesis { causes: longest, probability });
    }
    for reason in Reason::ALL {
        for next in NextCheck::ALL {
            for why in ConclusionReason::ALL {
                finding.reason = *reason;
                finding.next_check = *next;
                let causes = (*why == ConclusionReason::Stands).then_some(longest);
                finding.conclusion = Conclusion { causes, reason: *why };
                for units in [Units::Ip, Units::Si] {
                    let text = finding_to_words("", &reading, &finding, units);
                    assert!(count(&text) <= MOST_WORDS, "{} words: {text}", count(&text));
                }
            }
        }
    }
}
