//! What is measured on a usual visit, and what is read off the label.

use satline::quantity::KELVIN_PER_FAHRENHEIT;
use satline::reading::{Compressor, Field, Metering, MeteringPlace, Mode, Reading};
use satline::rig::{Conditions, Faults, Instruments, RATING_CONDITIONS, Sensors, Steady, Unit, WATTS_PER_TON};
use satline::saturation::SaturationCurves;

/// The instruments of a usual visit: neither a second wet bulb, nor a gauge at the discharge, nor a probe at the coil.
#[must_use]
pub fn usual() -> Sensors {
    [Field::SupplyWetBulb, Field::DischargePressure, Field::CoilOutletTemperature]
        .into_iter()
        .fold(Sensors::usual(), |sensors, field| sensors.with(field, None))
}

/// What the label and a look at the unit tell.
#[derive(Debug, Clone, Copy)]
pub struct Label {
    /// The refrigerant.
    pub refrigerant: &'static SaturationCurves,
    /// How it meters.
    pub metering: Metering,
    /// W.
    pub nominal_capacity: f64,
    /// The maker's subcooling of a valve unit, K.
    pub target_subcooling: Option<f64>,
}

impl Label {
    /// The label of a unit as designed. A valve unit's tells its subcooling at the rating point in whole °F.
    ///
    /// # Errors
    /// Those of [`Unit::solve`].
    pub fn of(
        designed: &Unit,
        refrigerant: &'static SaturationCurves,
        tons: f64,
        fixed: bool,
    ) -> Result<Self, satline::Error> {
        let target_subcooling = if fixed {
            None
        } else {
            let found = designed.solve(&RATING_CONDITIONS, &Faults::default())?;
            let bubble = designed.map.saturation(found.liquid_port.pressure)?.bubble_temperature;
            let subcooling = (bubble - found.liquid_port.temperature) / KELVIN_PER_FAHRENHEIT;
            Some(subcooling.round().max(0.0) * KELVIN_PER_FAHRENHEIT)
        };
        let metering = if fixed { Metering::FixedOrifice } else { Metering::ThermostaticValve };
        Ok(Self { refrigerant, metering, nominal_capacity: tons * WATTS_PER_TON, target_subcooling })
    }

    /// What instruments show of a state, with what the label says.
    ///
    /// # Errors
    /// A figure of the label outside its field's bound.
    pub fn reading(
        &self,
        instruments: &mut Instruments,
        state: &Steady,
        conditions: &Conditions,
    ) -> Result<Reading, satline::Error> {
        let mut reading = instruments.settled(state, conditions);
        reading.refrigerant = Some(self.refrigerant);
        reading.metering = Some(self.metering);
        reading.metering_place = Some(MeteringPlace::Indoor);
        reading.mode = Some(Mode::Cooling);
        reading.compressor = Some(Compressor::SingleSpeed);
        reading.set(Field::MinutesSinceChange, 20.0)?;
        reading.set(Field::NominalCapacity, self.nominal_capacity)?;
        if let Some(target) = self.target_subcooling {
            reading.set(Field::TargetSubcooling, target)?;
        }
        Ok(reading)
    }
}
