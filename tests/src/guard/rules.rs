//! What holds of every finding, told by the reading itself and not by the rules that made the finding.

use satline::diagnosis::{
    Advice, Cause, Caution, Charge, ChargeStatus, ConclusionReason, Finding, NeededFor, PreconditionStatus, Reason,
    ValueBound, ValueName,
};
use satline::quantity::{Atmosphere, KELVIN_PER_FAHRENHEIT};
use satline::reading::{Compressor, Metering, Mode, Operation, Reading, RefrigerantCondition, Stage};
use satline::text::{Units, finding_to_words};

/// What is done about before refrigerant is added.
const BEFORE_ADDING: [Cause; 6] = [
    Cause::LowIndoorAirflow,
    Cause::RestrictedCondenserAir,
    Cause::LiquidLineRestriction,
    Cause::MeteringOverfeeding,
    Cause::MeteringUnderfeeding,
    Cause::NonCondensables,
];

/// How far from one the probabilities may sum: they are weighed in single precision, and more than a few units in the last
/// place of two dozen of them would be a mistake.
const SUM: f64 = 1e-9;

/// Superheat, subcooling, condensing over outdoor air, evaporating over freezing; °F, from the reading alone.
struct Signs {
    superheat: Option<f64>,
    subcooling: Option<f64>,
    over_ambient: Option<f64>,
    over_freezing: Option<f64>,
}

impl Signs {
    fn of(reading: &Reading) -> Self {
        let fahrenheit = |kelvin: f64| kelvin / KELVIN_PER_FAHRENHEIT;
        let curves = reading.refrigerant;
        let dew = curves.zip(reading.suction_pressure).and_then(|(curves, one)| curves.dew_temperature(one).ok());
        let high = reading.liquid_pressure.or(reading.discharge_pressure);
        let bubble = curves.zip(high).and_then(|(curves, one)| curves.bubble_temperature(one).ok());
        let less = |warm: Option<f64>, cold: Option<f64>| Some(fahrenheit(warm? - cold?));
        let [dew, bubble] = [dew, bubble].map(|one| one.map(|one| one.kelvin()));
        Self {
            superheat: less(reading.suction_line_temperature.map(|one| one.kelvin()), dew),
            subcooling: less(bubble, reading.liquid_line_temperature.map(|one| one.kelvin())),
            over_ambient: less(bubble, reading.outdoor_dry_bulb.map(|one| one.kelvin())),
            over_freezing: less(dew, Some(273.15)),
        }
    }
}

/// Collects what is violated.
#[derive(Default)]
struct Violated(Vec<String>);

impl Violated {
    fn when(&mut self, wrong: bool, what: &str) {
        if wrong {
            self.0.push(what.to_string());
        }
    }
}

/// Everything that a finding of a reading must not have said, in words; empty when all is well.
#[must_use]
pub fn violated(reading: &Reading, finding: &Finding) -> Vec<String> {
    let mut violated = Violated::default();
    numbers(&mut violated, finding);
    if finding.advice == Advice::AddInSteps {
        adding(&mut violated, reading, finding);
        how_it_is_added(&mut violated, reading, finding);
    }
    if finding.advice == Advice::Recover {
        removing(&mut violated, finding);
    }
    said(&mut violated, reading, finding);
    cautions(&mut violated, reading, finding);
    verdicts(&mut violated, reading, finding);
    violated.0
}

/// Numbers are numbers, probabilities sum to one.
fn numbers(violated: &mut Violated, finding: &Finding) {
    let mut all = Vec::new();
    for name in ValueName::ALL {
        all.extend(finding.values.get(*name).map(|one| [one.value, one.standard_uncertainty]));
    }
    for (_, one) in finding.features.iter() {
        all.push([one.value, one.standard_uncertainty]);
        all.push([one.expected, one.expected_uncertainty]);
    }
    if let Some(amount) = finding.amount {
        all.push([amount.share, amount.standard_uncertainty]);
        all.push([amount.lowest, amount.highest]);
        violated.when(
            !(amount.lowest <= amount.share && amount.share <= amount.highest && amount.standard_uncertainty > 0.0),
            "an amount outside its interval",
        );
    }
    violated.when(all.iter().flatten().any(|one| !one.is_finite()), "a number that is none");
    violated.when(all.iter().any(|[_, uncertainty]| !uncertainty.is_finite()), "an uncertainty that is none");
    let probabilities: Vec<f64> = finding.hypotheses.iter().map(|one| one.probability).collect();
    violated.when(probabilities.iter().any(|one| !(0.0..=1.0).contains(one)), "a probability outside 0 to 1");
    let sum: f64 = probabilities.iter().sum();
    violated.when(!probabilities.is_empty() && (sum - 1.0).abs() > SUM, "probabilities that do not sum to one");
}

fn adding(violated: &mut Violated, reading: &Reading, finding: &Finding) {
    let likely = |cause| finding.hypotheses.marginal(cause);
    for cause in BEFORE_ADDING {
        let name = cause.name();
        violated.when(likely(cause) >= likely(Cause::Undercharge), &format!("adds while {name} is likelier"));
    }
    violated.when(finding.preconditions.any_missed(), "adds while a precondition does not hold");
    violated.when(finding.charge != Charge::Low, "adds to a charge that is not low");

    let signs = Signs::of(reading);
    violated.when(signs.superheat.is_none_or(|one| one < 2.0), "adds while superheat is near zero or not known");
    let superheat = finding.values.superheat;
    violated.when(
        superheat.is_none_or(|one| one.value <= 2.0 * one.standard_uncertainty),
        "adds while superheat cannot be told from zero",
    );
    violated.when(signs.over_ambient.is_none_or(|one| one > 25.0), "adds while the head pressure is high or not known");
    let over = reading.weighed_charge.zip(reading.expected_charge);
    violated.when(
        over.is_some_and(|(weighed, expected)| weighed.kilograms() > 1.03 * expected.kilograms()),
        "adds past the expected charge",
    );
    let air = reading.ambient_pressure.unwrap_or(Atmosphere::STANDARD).pascals();
    violated.when(
        reading.suction_pressure.is_none_or(|suction| suction.pascals() < air),
        "adds while the suction is below the pressure of the air",
    );
    violated.when(reading.refrigerant.is_none(), "adds a refrigerant that nobody named");
    let condition = reading.refrigerant_condition;
    violated
        .when(condition.is_some_and(|one| one != RefrigerantCondition::AsLabelled), "adds to a refrigerant in doubt");
    violated.when(signs.over_freezing.is_none_or(|one| one < 0.0), "adds to a coil below freezing");
    violated.when(
        reading.operation.is_some_and(|one| one != Operation::Steady),
        "adds while it pulls down, defrosts, cycles or holds its head",
    );
    violated.when(
        reading.return_dry_bulb.is_some_and(|air| air.fahrenheit() > 80.0 + 1e-6),
        "adds while the house is pulled down",
    );
    violated.when(reading.mode == Some(Mode::Heating), "adds in heating");
}

fn how_it_is_added(violated: &mut Violated, reading: &Reading, finding: &Finding) {
    violated.when(!finding.cautions.contains(Caution::SmallSteps), "adds without small steps");
    let blend = reading.refrigerant.is_some_and(|one| one.identity.components.len() > 1);
    violated.when(
        blend && !finding.cautions.contains(Caution::LiquidFromCylinder),
        "adds a blend and does not say as liquid",
    );
    let gone = Signs::of(reading).subcooling.is_some_and(|one| one < 1.8)
        || finding.values.subcooling.is_some_and(|one| one.bound == ValueBound::AtLeast);
    match finding.amount {
        Some(amount) => {
            violated.when(amount.share <= 0.0, "adds a negative amount");
            violated.when(amount.highest - amount.lowest < 0.01, "adds an amount without an interval");
            violated.when(gone && amount.bound != ValueBound::AtLeast, "tells an amount where subcooling is gone");
        }
        None => violated.when(true, "adds without an amount"),
    }
    for units in [Units::Ip, Units::Si] {
        let words = finding_to_words("", reading, finding, units);
        let work = words.lines().find(|line| line.starts_with("  Charge work: ")).unwrap_or_default();
        for needed in ["leak is found", "at most 5 % at a time", "fifteen minutes after each"] {
            violated.when(!work.contains(needed), &format!("adds without saying: {needed}"));
        }
        violated.when(blend && !work.contains("liquid, metered to vapour"), "adds a blend without saying how");
        violated.when(gone && !work.contains("at least"), "subcooling is gone and no word of at least");
    }
}

fn removing(violated: &mut Violated, finding: &Finding) {
    let likely = |cause| finding.hypotheses.marginal(cause);
    violated.when(
        likely(Cause::NonCondensables) >= likely(Cause::Overcharge),
        "removes while non-condensables are likelier",
    );
    violated.when(finding.preconditions.any_missed(), "removes while a precondition does not hold");
    violated.when(finding.charge != Charge::High, "removes of a charge that is not high");
    let gone = finding.values.superheat.is_some_and(|one| one.bound == ValueBound::AtLeast);
    let told = finding.amount.is_some_and(|amount| amount.share < 0.0 && amount.bound != ValueBound::AtLeast);
    violated.when(gone && told, "tells an amount where superheat is gone");
}

/// What the words say in both systems of units.
fn said(violated: &mut Violated, reading: &Reading, finding: &Finding) {
    for units in [Units::Ip, Units::Si] {
        let words = finding_to_words("", reading, finding, units);
        let body = words.split("\n  Cautions:").next().unwrap_or_default();
        let work = words.lines().find(|line| line.starts_with("  Charge work: ")).unwrap_or_default();
        let first = words.lines().nth(1).unwrap_or_default();
        if finding.advice == Advice::Recover {
            violated.when(!work.contains("into a recovery cylinder"), "removes without saying into what");
        }
        if finding.advice != Advice::AddInSteps {
            let tells = work.contains("found, add") || work.contains("Add ");
            violated.when(tells, "says add without the advice to");
        }
        if let Some(protocol) = body.lines().find(|line| line.contains("regional): remove refrigerant")) {
            violated
                .when(!protocol.contains("into a recovery cylinder"), "the protocol removes without saying into what");
        }
        let burns = finding.cautions.contains(Caution::FlammableLeak);
        let says = first.starts_with("  First: ") && first.contains("ventilate") && first.contains("ignition");
        violated.when(burns && !says, "a leak that may burn does not come first");
        violated.when(words.contains("NaN") || words.contains("inf "), "words with a number that is none");
    }
}

fn cautions(violated: &mut Violated, reading: &Reading, finding: &Finding) {
    let cautions = finding.cautions;
    let removes = finding.advice == Advice::Recover || finding.protocol.action == satline::charge::Action::Remove;
    violated.when(removes && !cautions.contains(Caution::RecoverOnly), "removes without the caution to recover");
    let floods = finding.values.superheat.is_some_and(|one| one.bound == ValueBound::AtLeast);
    let likely = |cause| finding.hypotheses.marginal(cause) > 0.5;
    let over = finding.charge == Charge::High || likely(Cause::Overcharge);
    violated.when(
        (floods || over) && !cautions.contains(Caution::FloodedCompressor),
        "liquid may come back and nobody says so",
    );
    violated.when(
        cautions.contains(Caution::FloodedCompressor) != cautions.contains(Caution::SweatingShell),
        "flooding without what a sweating shell proves",
    );
    let flammable = reading.refrigerant.is_some_and(|one| one.identity.safety_class.is_flammable());
    let short = finding.charge == Charge::Low
        || finding.advice == Advice::AddInSteps
        || likely(Cause::Undercharge)
        || finding.protocol.action == satline::charge::Action::Add;
    violated.when(
        flammable && short && !cautions.contains(Caution::FlammableLeak),
        "a charge that burns may be leaking and nobody says so",
    );
    violated.when(
        reading.refrigerant.is_none() && !cautions.contains(Caution::UnknownRefrigerant),
        "an unknown refrigerant without its caution",
    );
}

fn verdicts(violated: &mut Violated, reading: &Reading, finding: &Finding) {
    let staged = matches!(reading.compressor, Some(Compressor::TwoStage | Compressor::Variable))
        || (reading.compressor.is_none() && matches!(reading.stage, Some(Stage::Low | Stage::High)));
    if staged && reading.stage != Some(Stage::MakerChargingMode) {
        violated.when(finding.charge != Charge::NotJudged, "judges a staged unit outside its charging mode");
        violated.when(finding.advice != Advice::WeighIn && reading.mode != Some(Mode::Heating), "does not weigh in");
    }
    let airflow_known = finding.values.temperature_split.is_some_and(|one| one.target.is_some())
        || finding.values.airflow_per_capacity.is_some();
    if reading.metering == Some(Metering::FixedOrifice) && !airflow_known {
        violated.when(
            finding.charge != Charge::NotJudged && finding.charge_status == ChargeStatus::Confirmed,
            "confirms an orifice's charge without its airflow",
        );
    }
    if finding.charge == Charge::NotJudged {
        violated.when(
            matches!(finding.advice, Advice::AddInSteps | Advice::Recover | Advice::LeaveCharge),
            "advises on a charge that it did not judge",
        );
    }
    // What is missing or contradicts is said.
    let missing = finding.missing.iter().any(|missing| missing.needed_for == NeededFor::Verdict);
    violated
        .when(finding.reason == Reason::MissingMeasurement && !missing, "something is missing, and nobody says what");
    let missed = finding.preconditions.iter().any(|one| one.status == PreconditionStatus::NotMet);
    let reasoned =
        finding.preconditions.iter().all(|one| (one.status == PreconditionStatus::NotMet) == one.reason.is_some());
    violated.when(!reasoned, "a precondition missed without a reason");
    if finding.hypotheses.is_empty() {
        let said = match finding.conclusion.reason {
            ConclusionReason::PreconditionNotMet => missed,
            ConclusionReason::TooLittleMeasured => !missed || finding.missing.iter().next().is_some(),
            _ => false,
        };
        violated.when(!said || finding.conclusion.causes.is_some(), "nothing weighed, and nobody says why");
    }
}
