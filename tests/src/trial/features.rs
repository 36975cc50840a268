//! What the rivals look at: computed here, apart from the library's own features.

use satline::quantity::M3_S_PER_CFM;
use satline::reading::{Field, Metering, Reading};
use satline::rig::WATTS_PER_TON;

/// How many.
pub const COUNT: usize = 10;

/// Evaporating temperature, superheat, condensing temperature, subcooling, discharge temperature, warming of the outdoor
/// air, temperature split (K); compressor power and airflow for the capacity (shares); saturation over the outdoor coil's
/// surface (K).
pub type Features = [Option<f64>; COUNT];

/// Place of the subcooling.
pub const SUBCOOLING: usize = 3;

/// Air that the features depend on: outdoor dry bulb, return dry and wet bulb, K; missing ones at their usual value.
pub type Around = [f64; 3];

/// The features of a reading.
#[must_use]
pub fn features(reading: &Reading) -> Features {
    let get = |field| reading.get(field);
    let difference = |first: Option<f64>, second: Option<f64>| Some(first? - second?);
    let curves = reading.refrigerant;
    let dew = curves.and_then(|curves| Some(curves.dew_temperature(reading.suction_pressure?).ok()?.kelvin()));
    let bubble = curves.and_then(|curves| Some(curves.bubble_temperature(reading.liquid_pressure?).ok()?.kelvin()));
    let by_capacity = |field, usual: f64| Some(get(field)? / get(Field::NominalCapacity)? / usual);
    [
        dew,
        difference(get(Field::SuctionLineTemperature), dew),
        bubble,
        difference(bubble, get(Field::LiquidLineTemperature)),
        get(Field::DischargeLineTemperature),
        difference(get(Field::CondenserLeavingDryBulb), get(Field::OutdoorDryBulb)),
        difference(get(Field::ReturnDryBulb), get(Field::SupplyDryBulb)),
        by_capacity(Field::CompressorPower, 1.0),
        by_capacity(Field::AirflowOverCoil, 400.0 * M3_S_PER_CFM / WATTS_PER_TON),
        difference(bubble, get(Field::CondensingSurfaceTemperature)),
    ]
}

/// The air of a reading.
#[must_use]
pub fn around(reading: &Reading) -> Around {
    let or = |field, usual: f64| reading.get(field).unwrap_or(usual);
    [or(Field::OutdoorDryBulb, 303.65), or(Field::ReturnDryBulb, 297.4), or(Field::ReturnWetBulb, 290.2)]
}

/// Whether the metering is a fixed orifice.
#[must_use]
pub fn fixed(reading: &Reading) -> bool {
    reading.metering == Some(Metering::FixedOrifice)
}
