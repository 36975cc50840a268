//! What the evidence says of the charge: a few conservative rules, asked in a fixed order.
//!
//! A rule that finds a reason not to judge ends the questions. Every number stands in [`super::limits`]. Causes are not
//! weighed here; a wrong "correct" harms as a wrong "add" does, so what another fault could imitate is not judged.

use super::airflow::{Airflow, airflow};
use super::cause::{Conclusion, ConclusionReason};
use super::finding::{
    Advice, Charge, ChargeStatus, FieldName, Finding, Missing, NeededFor, NextCheck, Reason, Value, ValueBound, Values,
};
use super::limits::*;
use super::options::Options;
use super::plausible;
use super::precondition::Preconditions;
use super::preconditions::allow_weighing;
use super::values::{Computed, compute};
use super::weigh::{Evidence, Weighing};
use crate::charge::Protocol;
use crate::charge::protocol::{capacity_is_not_held, side};
use crate::quantity::KELVIN_PER_FAHRENHEIT;
use crate::reading::{Field, Metering, MeteringPlace, Mode, Operation, Reading, RefrigerantCondition};

/// Judges a reading. Any subset of its fields gives a finding; nothing in it is an error.
///
/// The protocol quoted in the finding is the default one; see [`diagnose_by`] for another edition or role.
///
/// ```
/// use satline::diagnosis::{Charge, Reason, diagnose};
/// use satline::reading::Reading;
/// let finding = diagnose(&Reading::default());
/// assert_eq!((finding.charge, finding.reason), (Charge::NotJudged, Reason::MissingMeasurement));
/// assert!(finding.missing.iter().any(|missing| missing.field.name() == "refrigerant"));
/// ```
#[must_use]
pub fn diagnose(reading: &Reading) -> Finding {
    diagnose_by(reading, Protocol::default())
}

/// Judges a reading, quoting the given protocol. The evidence rules do not depend on it.
#[must_use]
pub fn diagnose_by(reading: &Reading, protocol: Protocol) -> Finding {
    diagnose_with(reading, &Options { protocol, ..Options::default() })
}

/// Judges a reading with all that is known besides: the unit's own healthy readings, other priors, another protocol.
#[must_use]
pub fn diagnose_with(reading: &Reading, options: &Options) -> Finding {
    let mut diagnosis = Diagnosis::begin(reading, options);
    diagnosis.weigh_rest();
    diagnosis.finish(reading, options)
}

/// A diagnosis in slices, for an instrument that has other things to do between them: begin, step until done, finish,
/// each with the same reading and options. The same finding as [`diagnose_with`] to the last bit.
///
/// ```
/// use satline::Reading;
/// use satline::diagnosis::{Diagnosis, Options, diagnose_with};
/// let (reading, options) = (Reading::default(), Options::default());
/// let mut diagnosis = Diagnosis::begin(&reading, &options);
/// while !diagnosis.step() {
///     // Serve the display, sample the probes.
/// }
/// assert_eq!(diagnosis.finish(&reading, &options), diagnose_with(&reading, &options));
/// ```
///
/// On a small board, where the stack has no room for it, it stands in a place of its own and is begun there, and so does
/// the finding:
///
/// ```
/// use satline::Reading;
/// use satline::diagnosis::{Diagnosis, Finding, Options, diagnose};
/// let (reading, options) = (Reading::default(), Options::default());
/// let (mut diagnosis, mut finding) = (Diagnosis::NOTHING, Finding::nothing());
/// diagnosis.begin_anew(&reading, &options);
/// diagnosis.weigh_rest();
/// diagnosis.finish_onto(&mut finding, &reading, &options);
/// assert_eq!(finding, diagnose(&reading));
/// ```
#[derive(Debug, Clone, Copy)]
pub struct Diagnosis {
    weighing: Weighing,
    allowed: bool,
    weighs: bool,
}

impl Diagnosis {
    /// One that was not begun: a place for [`Diagnosis::begin_anew`].
    pub const NOTHING: Self = Self { weighing: Weighing::NONE, allowed: false, weighs: false };

    /// Looks at the preconditions, and begins to weigh causes where they allow it.
    #[must_use]
    pub fn begin(reading: &Reading, options: &Options) -> Self {
        let mut diagnosis = Self::NOTHING;
        diagnosis.begin_anew(reading, options);
        diagnosis
    }

    /// As [`Diagnosis::begin`], in its place, whatever it was before.
    pub fn begin_anew(&mut self, reading: &Reading, options: &Options) {
        self.allowed = weighing_allowed(reading);
        self.weighs = self.allowed && self.weighing.begin(reading, options.baseline);
    }

    /// Weighs a few more hypotheses; true once all are weighed. Steps beyond that change nothing.
    pub fn step(&mut self) -> bool {
        !self.weighs || self.weighing.step()
    }

    /// Weighs all that is left at once, sooner than step by step.
    pub fn weigh_rest(&mut self) {
        if self.weighs {
            self.weighing.weigh_rest();
        }
    }

    /// The finding. Hypotheses that are not weighed yet are weighed now.
    #[must_use]
    pub fn finish(&self, reading: &Reading, options: &Options) -> Finding {
        let mut finding = Finding::nothing();
        self.finish_onto(&mut finding, reading, options);
        finding
    }

    /// As [`Diagnosis::finish`], over a finding that stands already, whatever is in it.
    pub fn finish_onto(&self, finding: &mut Finding, reading: &Reading, options: &Options) {
        if self.weighs && !self.weighing.is_done() {
            return self.finish_rest(finding, reading, options);
        }
        let Finding { values, missing, preconditions, hypotheses, features, .. } = finding;
        let evidence = if self.weighs {
            Some(self.weighing.finish(reading, &options.priors, hypotheses, features))
        } else {
            hypotheses.clear();
            features.clear();
            None
        };
        let computed = computed(reading, values);
        let judge = Judge::of(reading, &computed);
        *preconditions = judge.preconditions();
        *missing = judge.missing();
        let verdict = judge.verdict(missing, evidence.as_ref(), preconditions);
        let protocol = options.protocol.verdict(reading);
        let cautions = judge.cautions(&verdict, protocol.action, evidence.as_ref());
        let silent =
            if self.allowed { ConclusionReason::TooLittleMeasured } else { ConclusionReason::PreconditionNotMet };
        let (conclusion, fits, amount) = match evidence {
            Some(evidence) => {
                (evidence.conclusion, evidence.fits, evidence.amount.map(|amount| judge.one_sided(amount)))
            }
            None => (Conclusion::cannot_tell(silent), true, None),
        };
        finding.charge = verdict.charge;
        finding.charge_status = verdict.status;
        finding.reason = verdict.reason;
        finding.protocol = protocol;
        finding.next_check = verdict.next_check;
        finding.advice = verdict.advice;
        finding.cautions = cautions;
        finding.conclusion = conclusion;
        finding.fits = fits;
        finding.amount = amount;
    }

    /// Not inlined, so that only who finishes early pays for the copy.
    #[cold]
    #[inline(never)]
    fn finish_rest(&self, finding: &mut Finding, reading: &Reading, options: &Options) {
        let mut all = *self;
        all.weigh_rest();
        all.finish_onto(finding, reading, options);
    }
}

/// Whether the preconditions allow to weigh causes. Not inlined: the values are needed again only once all is weighed.
#[inline(never)]
fn weighing_allowed(reading: &Reading) -> bool {
    let mut values = Values::default();
    let computed = computed(reading, &mut values);
    allow_weighing(&Judge::of(reading, &computed).preconditions())
}

/// In heating the two ports change their parts, so no value of cooling is computed.
fn computed<'a>(reading: &Reading, values: &'a mut Values) -> Computed<'a> {
    if reading.mode == Some(Mode::Heating) { Computed::nothing(values) } else { compute(reading, values) }
}

fn not_judged(reason: Reason, evidence: Option<&Evidence>) -> Verdict {
    let (next_check, advice) = after(reason);
    let next_check = match (next_check, evidence) {
        (NextCheck::WeighCharge | NextCheck::LiquidLineDrop | NextCheck::MeteringDevice, Some(evidence)) => {
            evidence.next_check
        }
        _ => next_check,
    };
    Verdict { charge: Charge::NotJudged, status: ChargeStatus::Provisional, reason, next_check, advice }
}

/// A judgement, with what follows from it.
pub(super) struct Verdict {
    pub(super) charge: Charge,
    pub(super) status: ChargeStatus,
    pub(super) reason: Reason,
    pub(super) next_check: NextCheck,
    pub(super) advice: Advice,
}

/// What to do when a reason forbids a judgement.
fn after(reason: Reason) -> (NextCheck, Advice) {
    match reason {
        Reason::MissingMeasurement | Reason::LiquidPressureNeeded => (NextCheck::TakeMissing, Advice::DoNotCharge),
        Reason::HeatingMode
        | Reason::OutdoorTooCold
        | Reason::MeteringOutdoors
        | Reason::NoTarget
        | Reason::IndoorOutsideRange => (NextCheck::WeighCharge, Advice::WeighIn),
        Reason::NotInChargingMode => (NextCheck::ChargingMode, Advice::WeighIn),
        Reason::NotSettled | Reason::OperationUnsteady => (NextCheck::Settle, Advice::DoNotCharge),
        Reason::PressureOutsideCurve | Reason::CondensingBelowAmbient | Reason::RefrigerantInDoubt => {
            (NextCheck::IdentifyRefrigerant, Advice::DoNotCharge)
        }
        Reason::AirflowFirst => (NextCheck::IndoorAirflow, Advice::DoNotCharge),
        Reason::AirflowUnknown => (NextCheck::MeasureAirflow, Advice::DoNotCharge),
        Reason::CondenserAirFirst => (NextCheck::CondenserAir, Advice::DoNotCharge),
        Reason::CoilFreezing => (NextCheck::ThawCoil, Advice::DoNotCharge),
        Reason::RestrictionSuspected => (NextCheck::LiquidLineDrop, Advice::DoNotCharge),
        Reason::MeteringOverfeeds | Reason::SignsConflict => (NextCheck::MeteringDevice, Advice::DoNotCharge),
        Reason::AtSaturation
        | Reason::OtherCauseLikelier
        | Reason::EvidenceTooClose
        | Reason::ChargeAlreadyWeighed
        | Reason::SuctionBelowAtmosphere => (NextCheck::WeighCharge, Advice::DoNotCharge),
        Reason::PressuresContradict
        | Reason::AirTemperaturesContradict
        | Reason::LineTemperatureContradicts
        | Reason::EqualPressures
        | Reason::HoseNotSeated
        | Reason::ServiceValvePartClosed
        | Reason::DischargeLineContradicts
        | Reason::JudgedBySuperheat
        | Reason::JudgedBySubcooling
        | Reason::JudgedByEvidence
        | Reason::JudgedByDischargePressure => (NextCheck::CheckInstruments, Advice::DoNotCharge),
    }
}

pub(super) struct Judge<'a> {
    pub(super) reading: &'a Reading,
    pub(super) computed: &'a Computed<'a>,
    pub(super) airflow: Airflow,
}

impl<'a> Judge<'a> {
    fn of(reading: &'a Reading, computed: &'a Computed<'a>) -> Self {
        Self { reading, computed, airflow: airflow(computed.values) }
    }
}

impl Judge<'_> {
    /// What the rules say and the evidence allows.
    #[inline(never)]
    fn verdict(&self, missing: &mut Missing, evidence: Option<&Evidence>, preconditions: &Preconditions) -> Verdict {
        let rules = self.charge(missing);
        self.reconciled(rules, evidence, preconditions).unwrap_or_else(|reason| not_judged(reason, evidence))
    }

    #[inline(never)]
    fn charge(&self, missing: &mut Missing) -> Result<Verdict, Reason> {
        self.conditions()?;
        let metering = self.reading.metering.ok_or(Reason::MissingMeasurement)?;
        let (charge, reason, deviation, band) = match metering {
            Metering::FixedOrifice => self.orifice()?,
            Metering::ThermostaticValve | Metering::ElectronicValve => self.valve(missing)?,
        };
        if charge == Charge::Low && self.coil_is_near_freezing() {
            return Err(Reason::CoilFreezing);
        }
        let clear = self.is_clear(charge, deviation, band);
        let status = self.status(metering, charge, reason, clear);
        let next_check = self.next_check(metering, charge, status);
        let advice = match charge {
            Charge::Low => Advice::AddInSteps,
            Charge::High => Advice::Recover,
            _ => Advice::LeaveCharge,
        };
        Ok(Verdict { charge, status, reason, next_check, advice })
    }

    /// What forbids a judgement whatever the metering device.
    fn conditions(&self) -> Result<(), Reason> {
        let (reading, values) = (self.reading, &*self.computed.values);
        if reading.mode == Some(Mode::Heating) {
            return Err(Reason::HeatingMode);
        }
        if capacity_is_not_held(reading) {
            return Err(Reason::NotInChargingMode);
        }
        let operation = reading.operation.filter(|operation| *operation != Operation::Steady);
        if operation.is_some() {
            return Err(Reason::OperationUnsteady);
        }
        if reading.refrigerant_condition.is_some_and(|one| one != RefrigerantCondition::AsLabelled) {
            return Err(Reason::RefrigerantInDoubt);
        }
        let misread = plausible::pressures(reading)
            .or_else(|| plausible::wet_bulb(reading))
            .or_else(|| plausible::discharge_line(reading, self.computed));
        if let Some(reason) = misread {
            return Err(reason);
        }
        if self.computed.outside_curve {
            return Err(Reason::PressureOutsideCurve);
        }
        if reading.minutes_since_change.is_some_and(|minutes| minutes.minutes() < SETTLING_MINUTES) {
            return Err(Reason::NotSettled);
        }
        self.saturation_fits_the_air()?;
        if reading.outdoor_dry_bulb.is_some_and(|air| air.fahrenheit() < LOWEST_OUTDOOR_F - 1e-9) {
            return Err(Reason::OutdoorTooCold);
        }
        if values.condensing_over_ambient.is_some_and(|over| over.value > kelvin(CONDENSING_OVER_AMBIENT_HIGHEST_F)) {
            return Err(Reason::CondenserAirFirst);
        }
        if self.airflow == Airflow::Low {
            return Err(Reason::AirflowFirst);
        }
        if values.dew_temperature.is_some_and(|dew| dew.value - 273.15 < FREEZING_C) {
            return Err(Reason::CoilFreezing);
        }
        Ok(())
    }

    /// Line temperatures and condensing temperature against their pressures and the air.
    pub(super) fn saturation_fits_the_air(&self) -> Result<(), Reason> {
        let (reading, values) = (self.reading, &*self.computed.values);
        let below = |value: Option<Value>, allowance: f64| {
            value.is_some_and(|value| value.value < -(allowance + CONTRADICTION_STANDARDS * value.standard_uncertainty))
        };
        if below(values.condensing_over_ambient, 0.0) {
            return Err(Reason::CondensingBelowAmbient);
        }
        // Liquid and vapour together can lie anywhere in the glide, but not beyond it.
        let warmest_air = match (reading.outdoor_dry_bulb, reading.return_dry_bulb) {
            (Some(outdoor), Some(indoor)) => Some(outdoor.kelvin().max(indoor.kelvin())),
            _ => None,
        };
        let vapour_line_too_warm = matches!((reading.suction_line_temperature, warmest_air, values.superheat),
            (Some(line), Some(air), Some(superheat)) if line.kelvin()
                > air + kelvin(VAPOUR_LINE_OVER_AIR_F) + CONTRADICTION_STANDARDS * superheat.standard_uncertainty);
        if below(values.superheat, self.computed.suction_glide)
            || below(values.subcooling, self.computed.high_side_glide)
            || below(values.approach, 0.0)
            || vapour_line_too_warm
        {
            return Err(Reason::LineTemperatureContradicts);
        }
        Ok(())
    }

    /// Superheat against its target, unless another fault could show the same.
    fn orifice(&self) -> Result<(Charge, Reason, Value, f64), Reason> {
        let values = &self.computed.values;
        if self.computed.no_target.is_some() && values.target_superheat.is_none() {
            return Err(Reason::NoTarget);
        }
        let superheat = values.superheat.ok_or(Reason::MissingMeasurement)?;
        let deviation = superheat.deviation.ok_or(Reason::MissingMeasurement)?;
        // Only a true liquid pressure says enough of the liquid side.
        let subcooling = values.subcooling.filter(|_| !self.computed.from_discharge);
        let charge = match side(deviation, SUPERHEAT_BAND_F) {
            1 if subcooling.is_some_and(|value| value.value > self.orifice_subcooling_high()) => {
                return Err(Reason::RestrictionSuspected);
            }
            // A lack of refrigerant does not raise the condensing temperature.
            1 if self.condenser_is_in_doubt() => return Err(Reason::CondenserAirFirst),
            1 => Charge::Low,
            -1 if matches!(self.airflow, Airflow::Unknown) => return Err(Reason::AirflowUnknown),
            -1 if subcooling.is_some_and(|value| value.value < self.orifice_subcooling_low()) => {
                return Err(Reason::SignsConflict);
            }
            -1 => Charge::High,
            _ if superheat.bound == ValueBound::AtLeast => return Err(Reason::AtSaturation),
            _ => Charge::Correct,
        };
        Ok((charge, Reason::JudgedBySuperheat, superheat, SUPERHEAT_BAND_F))
    }

    fn orifice_subcooling_high(&self) -> f64 {
        match self.reading.target_subcooling {
            Some(target) => target.kelvin() + kelvin(SUBCOOLING_BAND_F),
            None => kelvin(ORIFICE_SUBCOOLING_HIGH_F),
        }
    }

    fn orifice_subcooling_low(&self) -> f64 {
        match self.reading.target_subcooling {
            Some(target) => target.kelvin() - kelvin(SUBCOOLING_BAND_F),
            None => kelvin(ORIFICE_SUBCOOLING_LOW_F),
        }
    }

    /// Subcooling against the maker's figure, while the valve is in control.
    fn valve(&self, missing: &mut Missing) -> Result<(Charge, Reason, Value, f64), Reason> {
        if self.reading.metering_place == Some(MeteringPlace::Outdoor) {
            return Err(Reason::MeteringOutdoors);
        }
        let values = &self.computed.values;
        let subcooling = values.subcooling.ok_or(Reason::MissingMeasurement)?;
        let deviation = subcooling.deviation.ok_or(Reason::MissingMeasurement)?;
        let (side, reason) = if self.computed.from_discharge {
            // The true deviation lies between the one shown and that much less.
            let least = deviation - kelvin(DISCHARGE_DROP_HIGHEST_F);
            let (upper, lower) = (side(deviation, SUBCOOLING_BAND_F), side(least, SUBCOOLING_BAND_F));
            if upper != lower {
                missing.add(FieldName::Numeric(Field::LiquidPressure), NeededFor::Verdict);
                return Err(Reason::LiquidPressureNeeded);
            }
            (upper, Reason::JudgedByDischargePressure)
        } else {
            (side(deviation, SUBCOOLING_BAND_F), Reason::JudgedBySubcooling)
        };
        let in_control = self.valve_control();
        let charge = match (side, in_control) {
            (1, None) | (-1, None) => {
                self.add_suction_side(missing, NeededFor::Verdict);
                return Err(Reason::MissingMeasurement);
            }
            (_, Some(Control::Overfeeds)) => return Err(Reason::MeteringOverfeeds),
            // Starved with little liquid in front of it: the lack of refrigerant explains both.
            (-1, Some(Control::Holds | Control::Starves)) => {
                self.condenser_allows_low(missing)?;
                Charge::Low
            }
            (_, Some(Control::Starves)) => return Err(Reason::RestrictionSuspected),
            (1, _) => Charge::High,
            _ if subcooling.bound == ValueBound::AtLeast => return Err(Reason::AtSaturation),
            _ => Charge::Correct,
        };
        Ok((charge, reason, subcooling, SUBCOOLING_BAND_F))
    }

    /// Low subcooling means low charge only while the condensing temperature is not raised as well.
    fn condenser_allows_low(&self, missing: &mut Missing) -> Result<(), Reason> {
        match self.computed.values.condensing_over_ambient {
            Some(_) if self.condenser_is_in_doubt() => Err(Reason::CondenserAirFirst),
            Some(_) => Ok(()),
            None => {
                missing.add(FieldName::Numeric(Field::OutdoorDryBulb), NeededFor::Verdict);
                Err(Reason::MissingMeasurement)
            }
        }
    }

    /// Whether the unit has a valve, and it holds its superheat.
    pub(super) fn valve_holds(&self) -> bool {
        self.reading.metering.is_some_and(|metering| metering != Metering::FixedOrifice)
            && self.valve_control() == Some(Control::Holds)
    }

    fn valve_control(&self) -> Option<Control> {
        let superheat = self.computed.values.superheat?;
        let (lowest, highest) = crate::charge::Role::Installer.tolerances().valve_superheat_k(self.reading);
        Some(if superheat.value < lowest {
            Control::Overfeeds
        } else if superheat.value > highest {
            Control::Starves
        } else {
            Control::Holds
        })
    }

    /// Whether the condensing temperature stands higher over the outdoor air than a lack of refrigerant allows.
    pub(super) fn condenser_is_in_doubt(&self) -> bool {
        let over = self.computed.values.condensing_over_ambient;
        over.is_some_and(|over| over.value + over.standard_uncertainty > kelvin(CONDENSING_OVER_AMBIENT_FOR_LOW_F))
    }

    pub(super) fn coil_is_near_freezing(&self) -> bool {
        let dew = self.computed.values.dew_temperature;
        dew.is_some_and(|dew| dew.value - 273.15 < FREEZING_C + FREEZING_MARGIN_K)
    }

    /// On an orifice: whether the liquid side speaks against a superheat that is on target, by liquid that boils or piles up.
    fn liquid_side_is_in_doubt(&self) -> bool {
        let subcooling = self.computed.values.subcooling.filter(|_| !self.computed.from_discharge);
        subcooling
            .is_some_and(|value| value.bound == ValueBound::AtLeast || value.value > self.orifice_subcooling_high())
    }

    /// Whether the deviation lies clear of the edge of its band by one standard uncertainty.
    fn is_clear(&self, charge: Charge, value: Value, band: f64) -> bool {
        let (Some(deviation), Some(uncertainty)) = (value.deviation, value.deviation_uncertainty) else {
            return false;
        };
        let beyond = deviation.abs() - kelvin(band);
        if charge == Charge::Correct { -beyond >= uncertainty } else { beyond >= uncertainty }
    }

    fn status(&self, metering: Metering, charge: Charge, reason: Reason, clear: bool) -> ChargeStatus {
        let values = &self.computed.values;
        // A restriction (low) or a blocked condenser (high) on an orifice shows on the liquid side only.
        let liquid_side = values.subcooling.is_some() && !self.computed.from_discharge;
        let sides_known = match metering {
            Metering::FixedOrifice if charge == Charge::Correct => !self.liquid_side_is_in_doubt(),
            Metering::FixedOrifice => liquid_side,
            Metering::ThermostaticValve | Metering::ElectronicValve => values.superheat.is_some(),
        };
        let confirmed = clear
            && sides_known
            && self.airflow == Airflow::Good
            && self.reading.minutes_since_change.is_some()
            && self.reading.outdoor_dry_bulb.is_some()
            && reason != Reason::JudgedByDischargePressure
            // Non-condensables and a restriction also raise subcooling, and low airflow lowers an orifice's superheat: too
            // much refrigerant is certain only on a scale.
            && charge != Charge::High
            && !self.condenser_is_in_doubt();
        if confirmed { ChargeStatus::Confirmed } else { ChargeStatus::Provisional }
    }

    fn next_check(&self, metering: Metering, charge: Charge, status: ChargeStatus) -> NextCheck {
        let values = &self.computed.values;
        let valve = metering != Metering::FixedOrifice;
        match (charge, status) {
            (Charge::Low, ChargeStatus::Confirmed) => NextCheck::FindLeak,
            (_, ChargeStatus::Confirmed) => NextCheck::None,
            _ if self.airflow == Airflow::Unknown => NextCheck::MeasureAirflow,
            _ if self.airflow == Airflow::Doubtful => NextCheck::IndoorAirflow,
            _ if valve && values.superheat.is_none() => NextCheck::MeasureSuctionSide,
            _ if !valve && self.liquid_side_is_in_doubt() => NextCheck::WeighCharge,
            _ if values.subcooling.is_none() || self.computed.from_discharge => NextCheck::MeasureLiquidSide,
            _ if self.reading.minutes_since_change.is_none() => NextCheck::Settle,
            _ if self.reading.outdoor_dry_bulb.is_none() => NextCheck::TakeMissing,
            (Charge::High, _) => NextCheck::WeighCharge,
            _ => NextCheck::ReadAgain,
        }
    }
}

/// How a valve does its work, by the superheat it leaves.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Control {
    Overfeeds,
    Holds,
    Starves,
}

/// A difference in degrees Fahrenheit as kelvin.
pub(super) fn kelvin(fahrenheit: f64) -> f64 {
    fahrenheit * KELVIN_PER_FAHRENHEIT
}
