//! Which measurements are missing, and what each is needed for.

use super::answers::{Frost, HeatingChartOutcome, HeatingNeed};
use super::chart::HeatingChartFinding;
use super::finding::HeatingValues;
use super::judge::HeatingExtras;
use crate::reading::{Field, Reading};

/// A measurement: a field of a reading, or one of [`HeatingExtras`].
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum HeatingField {
    /// The refrigerant of the reading.
    Refrigerant,
    /// A numeric field of the reading.
    Numeric(Field),
    /// The outdoor dew point.
    OutdoorDewPoint,
    /// The suction gas before the reversing valve.
    ValveSuctionInlet,
    /// The suction gas behind the reversing valve.
    ValveSuctionOutlet,
    /// Whatever the chart reads.
    OfTheChart,
}

impl HeatingField {
    /// The name with its unit, as used in files and in every language.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Refrigerant => "refrigerant",
            Self::Numeric(field) => field.name(),
            Self::OutdoorDewPoint => "outdoor_dew_point_k",
            Self::ValveSuctionInlet => "valve_suction_inlet_temperature_k",
            Self::ValveSuctionOutlet => "valve_suction_outlet_temperature_k",
            Self::OfTheChart => "what_the_chart_reads",
        }
    }
}

/// A missing measurement and what it is needed for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct HeatingMissingField {
    /// The measurement.
    pub field: HeatingField,
    /// What for.
    pub needed_for: HeatingNeed,
}

/// Most that can be missing.
const MOST: usize = 12;

/// The missing measurements.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct HeatingMissing {
    items: [Option<HeatingMissingField>; MOST],
}

impl HeatingMissing {
    pub(super) const NONE: Self = Self { items: [None; MOST] };

    /// The missing measurements, in the order of what they are needed for.
    pub fn iter(&self) -> impl Iterator<Item = HeatingMissingField> + '_ {
        self.items.iter().copied().flatten()
    }

    fn add(&mut self, applies: bool, field: HeatingField, needed_for: HeatingNeed) {
        if let (true, Some(free)) = (applies, self.items.iter_mut().find(|item| item.is_none())) {
            *free = Some(HeatingMissingField { field, needed_for });
        }
    }
}

pub(super) fn missing(
    reading: &Reading,
    extras: &HeatingExtras,
    values: &HeatingValues,
    frost: Frost,
    chart: Option<&HeatingChartFinding>,
) -> HeatingMissing {
    let mut found = HeatingMissing::NONE;
    let lacks = |field: Field| reading.get(field).is_none();
    for field in [Field::ReturnDryBulb, Field::SupplyDryBulb, Field::AirflowOverCoil, Field::AmbientPressure] {
        found.add(lacks(field), HeatingField::Numeric(field), HeatingNeed::Capacity);
    }
    for field in [Field::NominalCapacity, Field::OutdoorDryBulb] {
        found.add(lacks(field), HeatingField::Numeric(field), HeatingNeed::Ratio);
    }
    if values.coil_surface_temperature.is_none() {
        found.add(lacks(Field::SuctionPressure), HeatingField::Numeric(Field::SuctionPressure), HeatingNeed::Frost);
        found.add(reading.refrigerant.is_none(), HeatingField::Refrigerant, HeatingNeed::Frost);
    }
    let humidity_would_help = extras.outdoor_dew_point.is_none() && frost != Frost::CannotHappen;
    found.add(humidity_would_help, HeatingField::OutdoorDewPoint, HeatingNeed::Frost);
    for (given, field) in [
        (extras.valve_suction_inlet_temperature, HeatingField::ValveSuctionInlet),
        (extras.valve_suction_outlet_temperature, HeatingField::ValveSuctionOutlet),
    ] {
        found.add(given.is_none(), field, HeatingNeed::ReversingValve);
    }
    let chart_lacks = chart.is_some_and(|chart| chart.outcome == HeatingChartOutcome::NotMeasured);
    found.add(chart_lacks, HeatingField::OfTheChart, HeatingNeed::Chart);
    found
}
