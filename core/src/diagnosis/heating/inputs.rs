//! What heating is judged by, as inputs of one computation: what depends on the same probe moves together, so that
//! correlated errors add and cancel as they should.

use super::limits::{AMBIENT_LIMIT_PA, ASSUMED_AMBIENT_LIMIT_PA, ASSUMED_HUMIDITY, POWER_LIMIT_SHARE};
use crate::diagnosis::Value;
use crate::diagnosis::limits::SQRT_3;
use crate::diagnosis::uncertainty::standard;
use crate::error::Error;
use crate::quantity::Atmosphere;
use crate::reading::{Field, Reading};
use crate::uncertain::{Uncertain, propagate};

const COUNT: usize = 12;

/// The inputs, each with its standard uncertainty; NaN where not measured.
#[derive(Debug, Clone, Copy)]
pub(super) struct Inputs([Uncertain; COUNT]);

/// The inputs at one point, in SI; NaN where not measured, and so is all that depends on it.
#[derive(Debug, Clone, Copy)]
pub(super) struct At {
    pub outdoor: f64,
    pub return_dry: f64,
    pub return_wet: f64,
    pub supply: f64,
    pub suction: f64,
    pub liquid: f64,
    pub discharge: f64,
    pub discharge_line: f64,
    pub airflow: f64,
    pub power: f64,
    pub ambient: f64,
    pub humidity: f64,
}

impl At {
    const fn from(values: [f64; COUNT]) -> Self {
        let [
            outdoor,
            return_dry,
            return_wet,
            supply,
            suction,
            liquid,
            discharge,
            discharge_line,
            airflow,
            power,
            ambient,
            humidity,
        ] = values;
        Self {
            outdoor,
            return_dry,
            return_wet,
            supply,
            suction,
            liquid,
            discharge,
            discharge_line,
            airflow,
            power,
            ambient,
            humidity,
        }
    }
}

/// A value that was not measured.
pub(super) const MISSING: Error =
    Error::NotAvailable { quantity: "value of a heating finding", reason: "a measurement that it needs is missing" };

impl Inputs {
    pub(super) fn of(reading: &Reading) -> Self {
        let field = |field: Field| match reading.get(field) {
            Some(value) => Uncertain { value, standard_uncertainty: standard(reading, field) },
            None => Uncertain::exact(f64::NAN),
        };
        let stated = |field: Field| reading.accuracy.get(field as usize).copied().flatten().is_some();
        let or_default = |found: Uncertain, which: Field, limit: f64| {
            if stated(which) { found } else { Uncertain { standard_uncertainty: limit / SQRT_3, ..found } }
        };
        let power = field(Field::CompressorPower);
        let ambient = match reading.ambient_pressure {
            Some(_) => or_default(field(Field::AmbientPressure), Field::AmbientPressure, AMBIENT_LIMIT_PA),
            None => Uncertain {
                value: Atmosphere::STANDARD.pascals(),
                standard_uncertainty: ASSUMED_AMBIENT_LIMIT_PA / SQRT_3,
            },
        };
        let (humidity, limit) = ASSUMED_HUMIDITY;
        Self([
            field(Field::OutdoorDryBulb),
            field(Field::ReturnDryBulb),
            field(Field::ReturnWetBulb),
            field(Field::SupplyDryBulb),
            field(Field::SuctionPressure),
            field(Field::LiquidPressure),
            field(Field::DischargePressure),
            field(Field::DischargeLineTemperature),
            field(Field::AirflowOverCoil),
            if power.value.is_nan() {
                power
            } else {
                or_default(power, Field::CompressorPower, POWER_LIMIT_SHARE * power.value)
            },
            ambient,
            Uncertain { value: humidity, standard_uncertainty: limit / SQRT_3 },
        ])
    }

    /// The inputs as measured.
    pub(super) fn at(&self) -> At {
        At::from(self.0.map(|input| input.value))
    }

    /// What a function makes of the inputs, with its uncertainty; none where it needs what is missing.
    pub(super) fn value(&self, function: impl Fn(&At) -> Result<f64, Error>) -> Option<Value> {
        let found = propagate(self.0, |values| {
            let found = function(&At::from(values))?;
            if found.is_finite() { Ok(found) } else { Err(MISSING) }
        });
        // An accuracy stated beyond all measure leaves no value.
        found
            .ok()
            .filter(|found| found.standard_uncertainty.is_finite())
            .map(|found| Value::new(found.value, found.standard_uncertainty))
    }
}
