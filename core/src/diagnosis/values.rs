//! What can be computed from a reading, each value with its standard uncertainty.

use super::finding::{Value, ValueBound, Values};
use super::limits::{DISCHARGE_DROP_HIGHEST_F, SQRT_3, ZERO_STANDARDS};
use super::uncertainty::standard;
use crate::charge::{NoValidTest, SlopedTarget, sloped_split, sloped_superheat};
use crate::quantity::KELVIN_PER_FAHRENHEIT;
use crate::reading::{Field, Metering, MeteringPlace, Reading};
use crate::saturation::SaturationCurves;
use crate::uncertain::root_of_squares;

/// The values, and what was learnt on the way.
pub(super) struct Computed<'a> {
    pub values: &'a mut Values,
    /// A pressure lies outside the refrigerant's curve.
    pub outside_curve: bool,
    /// The high side comes from a discharge pressure because no liquid pressure was given.
    pub from_discharge: bool,
    /// Why the table has no target superheat.
    pub no_target: Option<NoValidTest>,
    /// Glide at the suction and at the high-side pressure, K; zero where unknown.
    pub suction_glide: f64,
    /// See `suction_glide`.
    pub high_side_glide: f64,
}

impl<'a> Computed<'a> {
    /// Without any value: those that stand there are emptied.
    pub(super) fn nothing(values: &'a mut Values) -> Self {
        *values = Values::default();
        Self {
            values,
            outside_curve: false,
            from_discharge: false,
            no_target: None,
            suction_glide: 0.0,
            high_side_glide: 0.0,
        }
    }
}

impl Value {
    pub(super) fn new(value: f64, standard_uncertainty: f64) -> Self {
        Self {
            value,
            standard_uncertainty,
            target: None,
            deviation: None,
            deviation_uncertainty: None,
            bound: ValueBound::Exact,
        }
    }

    pub(super) fn against(self, target: f64, deviation_uncertainty: f64) -> Self {
        Self {
            target: Some(target),
            deviation: Some(self.value - target),
            deviation_uncertainty: Some(deviation_uncertainty),
            ..self
        }
    }

    /// A superheat or subcooling that cannot be told from zero is one-sided: beyond zero it stops moving.
    fn one_sided_at_zero(self) -> Self {
        let at_zero = self.value <= ZERO_STANDARDS * self.standard_uncertainty;
        Self { bound: if at_zero { ValueBound::AtLeast } else { ValueBound::Exact }, ..self }
    }
}

/// Computes what the fields allow. Expects a reading taken in cooling.
#[inline(never)]
pub(super) fn compute<'a>(reading: &Reading, values: &'a mut Values) -> Computed<'a> {
    let mut computed = Computed::nothing(values);
    target_superheat(reading, &mut computed);
    suction_side(reading, &mut computed);
    high_side(reading, &mut computed);
    compressor(reading, computed.values);
    air_side(reading, computed.values);
    computed
}

fn target_superheat(reading: &Reading, computed: &mut Computed) {
    if let Some(maker) = reading.target_superheat {
        computed.values.target_superheat = Some(Value::new(maker.kelvin(), standard(reading, Field::TargetSuperheat)));
        return;
    }
    // The table is for fixed orifices; a valve holds its own superheat.
    if matches!(reading.metering, Some(Metering::ThermostaticValve | Metering::ElectronicValve)) {
        return;
    }
    if let (Some(wet_bulb), Some(outdoor)) = (reading.return_wet_bulb, reading.outdoor_dry_bulb) {
        match sloped_superheat(wet_bulb, outdoor) {
            Ok(target) => {
                let uncertainty = root_of_squares([
                    target.by_wet_bulb * standard(reading, Field::ReturnWetBulb),
                    target.by_dry_bulb * standard(reading, Field::OutdoorDryBulb),
                ]);
                computed.values.target_superheat = Some(Value::new(target.kelvin, uncertainty));
            }
            Err(reason) => computed.no_target = Some(reason),
        }
    }
}

fn suction_side(reading: &Reading, computed: &mut Computed) {
    let (Some(refrigerant), Some(pressure)) = (reading.refrigerant, reading.suction_pressure) else {
        return;
    };
    let (Ok(dew), Ok(slope)) = (refrigerant.dew_temperature(pressure), refrigerant.dew_temperature_slope(pressure))
    else {
        computed.outside_curve = true;
        return;
    };
    if let Ok(bubble) = refrigerant.bubble_temperature(pressure) {
        computed.suction_glide = dew.kelvin() - bubble.kelvin();
    }
    let from_pressure = root_of_squares([slope * standard(reading, Field::SuctionPressure), of_curves(refrigerant)]);
    computed.values.dew_temperature = Some(Value::new(dew.kelvin(), from_pressure.abs()));
    if let Some(line) = reading.suction_line_temperature {
        let uncertainty = root_of_squares([from_pressure, standard(reading, Field::SuctionLineTemperature)]);
        let superheat = Value::new(line.kelvin() - dew.kelvin(), uncertainty).one_sided_at_zero();
        computed.values.superheat = Some(match computed.values.target_superheat {
            Some(target) => {
                superheat.against(target.value, root_of_squares([uncertainty, target.standard_uncertainty]))
            }
            None => superheat,
        });
    }
}

fn high_side(reading: &Reading, computed: &mut Computed) {
    let Some(refrigerant) = reading.refrigerant else {
        return;
    };
    let (pressure, field, drop) = match (reading.liquid_pressure, reading.discharge_pressure) {
        (Some(liquid), _) => (liquid, Field::LiquidPressure, 0.0),
        (None, Some(discharge)) => {
            computed.from_discharge = true;
            let drop = DISCHARGE_DROP_HIGHEST_F * KELVIN_PER_FAHRENHEIT / SQRT_3;
            (discharge, Field::DischargePressure, drop)
        }
        (None, None) => return,
    };
    let (Ok(bubble), Ok(slope)) =
        (refrigerant.bubble_temperature(pressure), refrigerant.bubble_temperature_slope(pressure))
    else {
        computed.outside_curve = true;
        return;
    };
    if let Ok(dew) = refrigerant.dew_temperature(pressure) {
        computed.high_side_glide = dew.kelvin() - bubble.kelvin();
    }
    let from_pressure = root_of_squares([slope * standard(reading, field), of_curves(refrigerant)]);
    computed.values.bubble_temperature = Some(Value::new(bubble.kelvin(), root_of_squares([from_pressure, drop])));
    if let Some(outdoor) = reading.outdoor_dry_bulb {
        let uncertainty = root_of_squares([from_pressure, drop, standard(reading, Field::OutdoorDryBulb)]);
        computed.values.condensing_over_ambient = Some(Value::new(bubble.kelvin() - outdoor.kelvin(), uncertainty));
    }
    // With the metering device outdoors the small line is two-phase: its temperature tells no subcooling.
    if reading.metering_place == Some(MeteringPlace::Outdoor) {
        return;
    }
    if let Some(line) = reading.liquid_line_temperature {
        let uncertainty = root_of_squares([from_pressure, drop, standard(reading, Field::LiquidLineTemperature)]);
        let subcooling = Value::new(bubble.kelvin() - line.kelvin(), uncertainty).one_sided_at_zero();
        computed.values.subcooling = Some(match reading.target_subcooling {
            Some(target) => {
                let of_target = standard(reading, Field::TargetSubcooling);
                subcooling.against(target.kelvin(), root_of_squares([uncertainty, of_target]))
            }
            None => subcooling,
        });
    }
}

/// What tells liquid at the compressor better than a sweating shell.
fn compressor(reading: &Reading, values: &mut Values) {
    let Some(refrigerant) = reading.refrigerant else { return };
    if let (Some(dew), Some(sump)) = (values.dew_temperature, reading.sump_temperature) {
        let uncertainty = root_of_squares([dew.standard_uncertainty, standard(reading, Field::SumpTemperature)]);
        values.sump_over_dew = Some(Value::new(sump.kelvin() - dew.value, uncertainty));
    }
    let pressure = reading.discharge_pressure.or(reading.liquid_pressure);
    let dew = pressure.and_then(|pressure| refrigerant.dew_temperature(pressure).ok());
    if let (Some(dew), Some(line), Some(bubble)) = (dew, reading.discharge_line_temperature, values.bubble_temperature)
    {
        let uncertainty =
            root_of_squares([bubble.standard_uncertainty, standard(reading, Field::DischargeLineTemperature)]);
        values.discharge_superheat = Some(Value::new(line.kelvin() - dew.kelvin(), uncertainty));
    }
}

fn air_side(reading: &Reading, values: &mut Values) {
    if let (Some(line), Some(outdoor)) = (reading.liquid_line_temperature, reading.outdoor_dry_bulb) {
        if reading.metering_place != Some(MeteringPlace::Outdoor) {
            let uncertainty = root_of_squares([
                standard(reading, Field::LiquidLineTemperature),
                standard(reading, Field::OutdoorDryBulb),
            ]);
            let approach = Value::new(line.kelvin() - outdoor.kelvin(), uncertainty);
            values.approach = Some(match reading.target_approach {
                Some(target) => approach.against(target.kelvin(), uncertainty),
                None => approach,
            });
        }
    }
    let target = match (reading.return_dry_bulb, reading.return_wet_bulb) {
        (Some(dry_bulb), Some(wet_bulb)) => sloped_split(dry_bulb, wet_bulb).ok(),
        _ => None,
    };
    if let Some(target) = target {
        values.target_split = Some(Value::new(target.kelvin, split_target_uncertainty(reading, target)));
    }
    if let (Some(return_air), Some(supply)) = (reading.return_dry_bulb, reading.supply_dry_bulb) {
        let (of_return, of_supply) = (standard(reading, Field::ReturnDryBulb), standard(reading, Field::SupplyDryBulb));
        let split = Value::new(return_air.kelvin() - supply.kelvin(), root_of_squares([of_return, of_supply]));
        values.temperature_split = Some(match target {
            // The return dry bulb stands on both sides of the deviation, so its error partly cancels.
            Some(target) => split.against(
                target.kelvin,
                root_of_squares([
                    of_supply,
                    (1.0 - target.by_dry_bulb) * of_return,
                    target.by_wet_bulb * standard(reading, Field::ReturnWetBulb),
                ]),
            ),
            None => split,
        });
    }
    if let (Some(airflow), Some(capacity)) = (reading.airflow, reading.nominal_capacity) {
        let share = 1.0 / capacity.watts();
        values.airflow_per_capacity =
            Some(Value::new(airflow.m3_s() * share, standard(reading, Field::AirflowOverCoil) * share));
    }
}

/// What the curves themselves are uncertain by: zero for published models, whose error is far below any probe's.
pub(super) fn of_curves(refrigerant: &SaturationCurves) -> f64 {
    refrigerant.identity.saturation_uncertainty_k.unwrap_or(0.0)
}

fn split_target_uncertainty(reading: &Reading, target: SlopedTarget) -> f64 {
    root_of_squares([
        target.by_dry_bulb * standard(reading, Field::ReturnDryBulb),
        target.by_wet_bulb * standard(reading, Field::ReturnWetBulb),
    ])
}
