//! What is measured on a usual visit, and what is read off the label.

use satline::quantity::KELVIN_PER_FAHRENHEIT;
use satline::reading::{Accuracy, Compressor, Field, Metering, MeteringPlace, Mode, Reading};
use satline::rig::{Conditions, Instruments, Sensors, Steady, WATTS_PER_TON};
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
    /// Today none.
    pub fn of(
        refrigerant: &'static SaturationCurves,
        tons: f64,
        fixed: bool,
        rated_subcooling: f64,
    ) -> Result<Self, satline::Error> {
        let subcooling = rated_subcooling / KELVIN_PER_FAHRENHEIT;
        let target_subcooling = (!fixed).then(|| subcooling.round().max(0.0) * KELVIN_PER_FAHRENHEIT);
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
        // The same clamp, moved along the liquid line to the metering device: its error is the same at both ends.
        if let Some(line) = reading.liquid_line_temperature {
            let error = line.kelvin() - state.liquid_port.temperature;
            reading.set(Field::MeteringInletTemperature, state.metering_inlet.temperature + error)?;
            let [start, end] = [Field::LiquidLineTemperature, Field::MeteringInletTemperature].map(|one| one as usize);
            let shared = reading.accuracy[start].map(|accuracy| Accuracy { group: 1, ..accuracy });
            (reading.accuracy[start], reading.accuracy[end]) = (shared, shared);
        }
        reading.set(Field::MinutesSinceChange, 20.0)?;
        reading.set(Field::NominalCapacity, self.nominal_capacity)?;
        if let Some(target) = self.target_subcooling {
            reading.set(Field::TargetSubcooling, target)?;
        }
        Ok(reading)
    }
}
