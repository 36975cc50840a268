//! Which fields were not given, and what each is needed for.

use super::airflow::Airflow;
use super::finding::{FieldName, Missing, NeededFor};
use super::judge::Judge;
use crate::reading::{Field, Metering, MeteringPlace, Mode};

impl Judge<'_> {
    /// Fields that were not given, the most needed first.
    pub(super) fn missing(&self) -> Missing {
        let mut missing = Missing::NONE;
        let reading = self.reading;
        // In heating and with the metering device outdoors no measurement would help.
        if reading.mode == Some(Mode::Heating) {
            return missing;
        }
        if reading.refrigerant.is_none() {
            missing.add(FieldName::Refrigerant, NeededFor::Verdict);
        }
        let valve = match reading.metering {
            None => {
                missing.add(FieldName::Metering, NeededFor::Verdict);
                None
            }
            Some(Metering::FixedOrifice) => Some(false),
            Some(Metering::ThermostaticValve | Metering::ElectronicValve) => Some(true),
        };
        if valve == Some(true) && reading.metering_place == Some(MeteringPlace::Outdoor) {
            return missing;
        }
        let mut need = |field: Field, needed_for: NeededFor| {
            if reading.get(field).is_none() {
                missing.add(FieldName::Numeric(field), needed_for);
            }
        };
        let (suction_side, liquid_side) = match valve {
            Some(false) => (NeededFor::Verdict, NeededFor::Confirmation),
            Some(true) => (NeededFor::Confirmation, NeededFor::Verdict),
            None => (NeededFor::Verdict, NeededFor::Verdict),
        };
        if valve != Some(true) {
            need(Field::SuctionPressure, suction_side);
            need(Field::SuctionLineTemperature, suction_side);
            if reading.target_superheat.is_none() {
                need(Field::OutdoorDryBulb, NeededFor::Verdict);
                need(Field::ReturnWetBulb, NeededFor::Verdict);
            }
        }
        // A discharge pressure allows a judgement of its own, though never a confirmed one.
        let stand_in = reading.discharge_pressure.is_some();
        need(Field::LiquidPressure, if stand_in { NeededFor::Confirmation } else { liquid_side });
        need(Field::LiquidLineTemperature, liquid_side);
        if valve == Some(true) {
            need(Field::TargetSubcooling, NeededFor::Verdict);
        }
        need(Field::SuctionPressure, suction_side);
        need(Field::SuctionLineTemperature, suction_side);
        need(Field::OutdoorDryBulb, NeededFor::Confirmation);
        need(Field::MinutesSinceChange, NeededFor::Confirmation);
        if self.airflow == Airflow::Unknown {
            need(Field::ReturnDryBulb, NeededFor::Confirmation);
            need(Field::ReturnWetBulb, NeededFor::Confirmation);
            need(Field::SupplyDryBulb, NeededFor::Confirmation);
        }
        need(Field::ReturnDryBulb, NeededFor::Protocol);
        missing
    }

    pub(super) fn add_suction_side(&self, missing: &mut Missing, needed_for: NeededFor) {
        for field in [Field::SuctionPressure, Field::SuctionLineTemperature] {
            if self.reading.get(field).is_none() {
                missing.add(FieldName::Numeric(field), needed_for);
            }
        }
    }
}
