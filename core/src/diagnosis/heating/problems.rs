//! What is wrong with a reading of heating, before anything is judged by it.

use super::answers::HeatingProblem;
use super::capacity::return_air;
use super::finding::{HeatingSet, HeatingValues};
use super::frost::of_dew_point;
use super::inputs::Inputs;
use super::judge::HeatingExtras;
use super::limits::{VALVE_FALL_F, WARMEST_EVAPORATING_C};
use super::valve::of_probe;
use crate::charge::GAUGES_DISAGREE_PA;
use crate::diagnosis::judge::kelvin;
use crate::diagnosis::limits::{CONTRADICTION_STANDARDS, SETTLING_MINUTES};
use crate::diagnosis::uncertainty::standard;
use crate::diagnosis::values::of_curves;
use crate::reading::{Field, Mode, Operation, Reading};
use crate::saturation::SaturationCurves;
use crate::uncertain::root_of_squares;

/// Whether the outdoor coil is being defrosted.
fn is_defrosting(reading: &Reading) -> bool {
    reading.operation == Some(Operation::Defrost)
}

/// Everything wrong.
pub(super) fn problems(
    reading: &Reading,
    extras: &HeatingExtras,
    inputs: &Inputs,
    values: &HeatingValues,
) -> HeatingSet<HeatingProblem> {
    let mut found = HeatingSet::NONE;
    let checks = Checks { reading, extras };
    let settled = reading.minutes_since_change.is_none_or(|minutes| minutes.minutes() >= SETTLING_MINUTES);
    let rise = values.supply_rise.is_some_and(|rise| rise.value <= 0.0);
    for (applies, problem) in [
        (reading.mode != Some(Mode::Heating), HeatingProblem::NotHeating),
        (is_defrosting(reading), HeatingProblem::Defrosting),
        (!settled, HeatingProblem::NotSettled),
        (rise, HeatingProblem::SupplyNotWarmer),
        (checks.wet_bulb(inputs), HeatingProblem::WetBulbContradicts),
        (checks.suction_is_hot(values), HeatingProblem::SuctionPressureContradicts),
        (checks.pressures(), HeatingProblem::PressuresContradict),
        (checks.outside_curve(), HeatingProblem::PressureOutsideCurve),
        (checks.lines(), HeatingProblem::LineTemperaturesContradict),
        (checks.dew_point(), HeatingProblem::DewPointContradicts),
        (checks.valve(values), HeatingProblem::ValveTemperaturesContradict),
        (
            checks.warmer(Field::CondensingSurfaceTemperature, Field::OutdoorDryBulb),
            HeatingProblem::CoilTemperaturesContradict,
        ),
    ] {
        found.add_if(applies, problem);
    }
    found
}

struct Checks<'a> {
    reading: &'a Reading,
    extras: &'a HeatingExtras,
}

/// What two temperatures may differ by without contradiction even where their probes are called exact, K: boiling liquid has
/// the very temperature of its pressure, and curves end in some digit.
const EDGE_K: f64 = 0.05;

/// Whether one temperature lies above another by more than their uncertainties allow.
fn exceeds(value: f64, other: f64, uncertainties: [f64; 2]) -> bool {
    value > other + EDGE_K + CONTRADICTION_STANDARDS * root_of_squares(uncertainties)
}

impl Checks<'_> {
    /// Whether one measured temperature is above another.
    fn warmer(&self, one: Field, other: Field) -> bool {
        let of = |field| standard(self.reading, field);
        matches!((self.reading.get(one), self.reading.get(other)),
            (Some(value), Some(limit)) if exceeds(value, limit, [of(one), of(other)]))
    }

    fn wet_bulb(&self, inputs: &Inputs) -> bool {
        let both = self.reading.return_dry_bulb.is_some() && self.reading.return_wet_bulb.is_some();
        both && return_air(&inputs.at()).is_err()
    }

    /// Evaporating gas is colder than the air that warms it.
    fn suction_is_hot(&self, values: &HeatingValues) -> bool {
        let Some(dew) = values.evaporating_temperature else {
            return false;
        };
        let of_outdoor = standard(self.reading, Field::OutdoorDryBulb);
        match self.reading.outdoor_dry_bulb {
            Some(outdoor) => exceeds(dew.value, outdoor.kelvin(), [dew.standard_uncertainty, of_outdoor]),
            None => dew.value - 273.15 > WARMEST_EVAPORATING_C,
        }
    }

    fn pressures(&self) -> bool {
        let of = |field| self.reading.get(field);
        let reaches =
            |low: Option<f64>, high: Option<f64>| matches!((low, high), (Some(low), Some(high)) if low >= high);
        let (suction, liquid) = (of(Field::SuctionPressure), of(Field::LiquidPressure));
        let discharge = of(Field::DischargePressure);
        reaches(suction, liquid)
            || reaches(suction, discharge)
            || reaches(liquid, discharge.map(|pressure| pressure + GAUGES_DISAGREE_PA))
    }

    fn outside_curve(&self) -> bool {
        let Some(refrigerant) = self.reading.refrigerant else {
            return false;
        };
        let suction = self.reading.suction_pressure;
        suction.is_some_and(|pressure| refrigerant.dew_temperature(pressure).is_err())
            || self.reading.liquid_pressure.is_some_and(|pressure| refrigerant.bubble_temperature(pressure).is_err())
    }

    /// Hot gas goes in, warm liquid comes back.
    fn lines(&self) -> bool {
        let (vapor, liquid) = (Field::SuctionLineTemperature, Field::LiquidLineTemperature);
        let (coil, discharge) = (Field::CoilOutletTemperature, Field::DischargeLineTemperature);
        self.warmer(Field::ReturnDryBulb, vapor)
            || self.warmer(liquid, vapor)
            || self.warmer(coil, vapor)
            || self.warmer(vapor, discharge)
            || self.warmer(liquid, discharge)
            || self.reading.refrigerant.is_some_and(|refrigerant| self.liquid_is_too_warm(refrigerant))
    }

    /// Liquid, even with vapour in it, is no warmer than the dew temperature of its pressure.
    fn liquid_is_too_warm(&self, refrigerant: &SaturationCurves) -> bool {
        let (Some(pressure), Some(line)) = (self.reading.liquid_pressure, self.reading.liquid_line_temperature) else {
            return false;
        };
        let (Ok(dew), Ok(slope)) = (refrigerant.dew_temperature(pressure), refrigerant.dew_temperature_slope(pressure))
        else {
            return false;
        };
        let of_pressure =
            root_of_squares([slope * standard(self.reading, Field::LiquidPressure), of_curves(refrigerant)]);
        exceeds(line.kelvin(), dew.kelvin(), [of_pressure, standard(self.reading, Field::LiquidLineTemperature)])
    }

    fn dew_point(&self) -> bool {
        matches!((self.extras.outdoor_dew_point, self.reading.outdoor_dry_bulb), (Some(dew), Some(air))
            if exceeds(dew.kelvin(), air.kelvin(), [of_dew_point(dew), standard(self.reading, Field::OutdoorDryBulb)]))
    }

    /// Suction gas does not cool in the valve, nor come from the coil warmer than the outdoor air.
    fn valve(&self, values: &HeatingValues) -> bool {
        let falls = values.valve_suction_rise.is_some_and(|rise| {
            rise.value < -(kelvin(VALVE_FALL_F) + CONTRADICTION_STANDARDS * rise.standard_uncertainty)
        });
        let of_outdoor = standard(self.reading, Field::OutdoorDryBulb);
        let warm = matches!((self.extras.valve_suction_inlet_temperature, self.reading.outdoor_dry_bulb),
            (Some(gas), Some(air)) if exceeds(gas.kelvin(), air.kelvin(), [of_probe(self.extras, gas), of_outdoor]));
        falls || warm
    }
}
