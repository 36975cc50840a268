//! Readings in the units of the trade: °F, and psig at sea level. All of them are demo.

use satline::diagnosis::{Finding, Options, diagnose_with};
use satline::quantity::{
    Atmosphere, KELVIN_PER_FAHRENHEIT, M3_S_PER_CFM, Pressure, WATTS_PER_TON, kelvin_from_fahrenheit,
};
use satline::reading::{Field, Metering, MeteringPlace, Operation, Reading};
use satline::saturation::SaturationCurves;

/// A reading that is made step by step.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ByHand(pub Reading);

impl ByHand {
    /// A unit of 3 tons that has run twenty minutes; nothing measured.
    #[must_use]
    pub fn of(refrigerant: &'static SaturationCurves, metering: Metering) -> Self {
        let reading = Reading {
            refrigerant: Some(refrigerant),
            metering: Some(metering),
            metering_place: Some(MeteringPlace::Indoor),
            operation: Some(Operation::Steady),
            ..Reading::default()
        };
        Self(reading).set(Field::MinutesSinceChange, 20.0).set(Field::NominalCapacity, 3.0 * WATTS_PER_TON)
    }

    /// A field in its SI unit.
    ///
    /// # Panics
    /// Outside its bound, as all of these.
    #[must_use]
    pub fn set(mut self, field: Field, value: f64) -> Self {
        self.0.set(field, value).unwrap();
        self
    }

    /// A temperature, °F.
    #[must_use]
    pub fn f(self, field: Field, fahrenheit: f64) -> Self {
        self.set(field, kelvin_from_fahrenheit(fahrenheit))
    }

    /// A temperature difference, °F.
    #[must_use]
    pub fn df(self, field: Field, fahrenheit: f64) -> Self {
        self.set(field, fahrenheit * KELVIN_PER_FAHRENHEIT)
    }

    /// A pressure, psig.
    #[must_use]
    pub fn psig(self, field: Field, psig: f64) -> Self {
        self.set(field, Pressure::from_psi_gauge(psig, Atmosphere::STANDARD).unwrap().pascals())
    }

    /// Outdoor air, return dry and wet bulb, supply air; °F.
    #[must_use]
    pub fn air(self, outdoor: f64, dry_bulb: f64, wet_bulb: f64, supply: f64) -> Self {
        self.f(Field::OutdoorDryBulb, outdoor)
            .f(Field::ReturnDryBulb, dry_bulb)
            .f(Field::ReturnWetBulb, wet_bulb)
            .f(Field::SupplyDryBulb, supply)
    }

    /// Airflow over the indoor coil, cfm.
    #[must_use]
    pub fn cfm(self, cfm: f64) -> Self {
        self.set(Field::AirflowOverCoil, cfm * M3_S_PER_CFM)
    }

    /// Suction pressure, psig, and the vapour line, °F.
    #[must_use]
    pub fn suction(self, psig: f64, line: f64) -> Self {
        self.psig(Field::SuctionPressure, psig).f(Field::SuctionLineTemperature, line)
    }

    /// Liquid pressure, psig, and the liquid line, °F.
    #[must_use]
    pub fn liquid(self, psig: f64, line: f64) -> Self {
        self.psig(Field::LiquidPressure, psig).f(Field::LiquidLineTemperature, line)
    }

    /// The vapour line by its superheat, °F, at the suction pressure that is set.
    #[must_use]
    pub fn superheat(self, fahrenheit: f64) -> Self {
        let curves = self.0.refrigerant.unwrap();
        let dew = curves.dew_temperature(self.0.suction_pressure.unwrap()).unwrap();
        self.f(Field::SuctionLineTemperature, dew.fahrenheit() + fahrenheit)
    }

    /// The liquid line by its subcooling, °F, at the liquid pressure that is set.
    #[must_use]
    pub fn subcooling(self, fahrenheit: f64) -> Self {
        let curves = self.0.refrigerant.unwrap();
        let bubble = curves.bubble_temperature(self.0.liquid_pressure.unwrap()).unwrap();
        self.f(Field::LiquidLineTemperature, bubble.fahrenheit() - fahrenheit)
    }

    /// Without a field.
    #[must_use]
    pub fn without(self, field: Field) -> Self {
        Self(keeping(&self.0, |one| one != field))
    }

    /// What the diagnosis says.
    #[must_use]
    pub fn finding(&self) -> Finding {
        diagnose_with(&self.0, &Options::default())
    }

    /// What it says with a baseline.
    #[must_use]
    pub fn finding_beside(&self, baseline: &[Reading]) -> Finding {
        diagnose_with(&self.0, &Options { baseline, ..Options::default() })
    }
}

/// A reading with some of its numeric fields; what is known without measuring stays.
#[must_use]
pub fn keeping(reading: &Reading, keep: impl Fn(Field) -> bool) -> Reading {
    let mut kept = Reading {
        refrigerant: reading.refrigerant,
        metering: reading.metering,
        metering_place: reading.metering_place,
        mode: reading.mode,
        compressor: reading.compressor,
        stage: reading.stage,
        operation: reading.operation,
        refrigerant_condition: reading.refrigerant_condition,
        accuracy: reading.accuracy,
        ..Reading::default()
    };
    for field in Field::ALL.iter().copied().filter(|field| keep(*field)) {
        if let Some(value) = reading.get(field) {
            kept.set(field, value).unwrap_or_default();
        }
    }
    kept
}
