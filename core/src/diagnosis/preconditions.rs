//! Whether what must hold before a diagnosis does.

use super::airflow::Airflow;
use super::finding::Reason;
use super::judge::Judge;
use super::limits::{HIGHEST_RETURN_F, LOWEST_OUTDOOR_F, SETTLING_MINUTES, SQRT_3};
use super::plausible;
use super::precondition::{PreconditionName, Preconditions};
use super::uncertainty::standard;
use crate::charge::protocol::{LOWEST_RETURN_F, capacity_is_not_held};
use crate::quantity::KELVIN_PER_FAHRENHEIT;
use crate::reading::{Field, MeteringPlace, Mode, Operation, RefrigerantCondition};

/// Most that a thermometer's own error may stretch the range of the return air, °F: that of the protocol's instruments.
const THERMOMETER_MOST_F: f64 = 1.5;
/// Rounding allowance at an edge, °F.
const EDGE_F: f64 = 1e-9;

impl Judge<'_> {
    /// Every precondition with its answer.
    pub(super) fn preconditions(&self) -> Preconditions {
        let mut answers = Preconditions::UNKNOWN;
        self.running(&mut answers);
        self.air(&mut answers);
        self.instruments(&mut answers);
        self.parts(&mut answers);
        answers
    }

    fn running(&self, answers: &mut Preconditions) {
        let reading = self.reading;
        match reading.minutes_since_change.map(|one| one.minutes()) {
            Some(minutes) if minutes < SETTLING_MINUTES => {
                answers.not_met(PreconditionName::Steady, Reason::NotSettled)
            }
            Some(_) => answers.met(PreconditionName::Steady),
            None => {}
        }
        match reading.operation {
            _ if reading.mode == Some(Mode::Heating) => {
                answers.not_met(PreconditionName::Operation, Reason::HeatingMode);
            }
            Some(Operation::Steady) => answers.met(PreconditionName::Operation),
            Some(_) => answers.not_met(PreconditionName::Operation, Reason::OperationUnsteady),
            None => {}
        }
        if capacity_is_not_held(reading) {
            answers.not_met(PreconditionName::Compressor, Reason::NotInChargingMode);
        } else if reading.compressor.is_some() {
            answers.met(PreconditionName::Compressor);
        }
    }

    fn air(&self, answers: &mut Preconditions) {
        let reading = self.reading;
        match reading.outdoor_dry_bulb.map(|air| air.fahrenheit()) {
            Some(outdoor) if outdoor < LOWEST_OUTDOOR_F - EDGE_F => {
                answers.not_met(PreconditionName::OutdoorAir, Reason::OutdoorTooCold);
            }
            Some(_) => answers.met(PreconditionName::OutdoorAir),
            None => {}
        }
        let limit = standard(reading, Field::ReturnDryBulb) * SQRT_3 / KELVIN_PER_FAHRENHEIT;
        let probe = limit.min(THERMOMETER_MOST_F) + EDGE_F;
        match reading.return_dry_bulb.map(|air| air.fahrenheit()) {
            // The limits are those of the air; a thermometer that reads a little beyond may stand in air that is within.
            Some(indoor) if !(LOWEST_RETURN_F - probe..=HIGHEST_RETURN_F + probe).contains(&indoor) => {
                answers.not_met(PreconditionName::IndoorAir, Reason::IndoorOutsideRange);
            }
            Some(_) => answers.met(PreconditionName::IndoorAir),
            None => {}
        }
        match plausible::wet_bulb(reading) {
            Some(reason) => answers.not_met(PreconditionName::WetBulb, reason),
            None if reading.return_wet_bulb.is_some() && reading.return_dry_bulb.is_some() => {
                answers.met(PreconditionName::WetBulb);
            }
            None => {}
        }
        match self.airflow {
            Airflow::Good => answers.met(PreconditionName::Airflow),
            Airflow::Low => answers.not_met(PreconditionName::Airflow, Reason::AirflowFirst),
            Airflow::Doubtful | Airflow::Unknown => {}
        }
    }

    fn instruments(&self, answers: &mut Preconditions) {
        let reading = self.reading;
        let misfit = self.saturation_fits_the_air().err();
        let of_pressures =
            plausible::pressures(reading).or(misfit.filter(|reason| *reason == Reason::CondensingBelowAmbient));
        match of_pressures {
            Some(reason) => answers.not_met(PreconditionName::Pressures, reason),
            None if reading.suction_pressure.is_some()
                && (reading.liquid_pressure.is_some() || reading.discharge_pressure.is_some()) =>
            {
                answers.met(PreconditionName::Pressures);
            }
            None => {}
        }
        let of_lines = misfit
            .filter(|reason| *reason == Reason::LineTemperatureContradicts)
            .or_else(|| plausible::discharge_line(reading, self.computed));
        match of_lines {
            Some(reason) => answers.not_met(PreconditionName::LineTemperatures, reason),
            None if self.computed.values.superheat.is_some() && self.computed.values.subcooling.is_some() => {
                answers.met(PreconditionName::LineTemperatures);
            }
            None => {}
        }
    }

    fn parts(&self, answers: &mut Preconditions) {
        let reading = self.reading;
        match (reading.metering, reading.metering_place) {
            (Some(_), Some(MeteringPlace::Outdoor)) => {
                answers.not_met(PreconditionName::Metering, Reason::MeteringOutdoors);
            }
            (Some(_), Some(MeteringPlace::Indoor)) => answers.met(PreconditionName::Metering),
            _ => {}
        }
        let doubtful = reading.refrigerant_condition.is_some_and(|one| one != RefrigerantCondition::AsLabelled);
        if doubtful {
            answers.not_met(PreconditionName::Refrigerant, Reason::RefrigerantInDoubt);
        } else if self.computed.outside_curve {
            answers.not_met(PreconditionName::Refrigerant, Reason::PressureOutsideCurve);
        } else if reading.refrigerant.is_some() {
            answers.met(PreconditionName::Refrigerant);
        }
    }
}

/// Whether causes may be weighed: low airflow and a warm house are themselves weighed, all else that is missed forbids it.
pub(super) fn allow_weighing(preconditions: &Preconditions) -> bool {
    use super::precondition::PreconditionStatus::NotMet;
    !preconditions
        .iter()
        .any(|one| one.status == NotMet && !matches!(one.name, PreconditionName::Airflow | PreconditionName::IndoorAir))
}
