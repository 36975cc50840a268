//! From a reading to the channels that are weighed, and how their errors hang together.
//!
//! Channels are what instruments show, not what is computed from them: a superheat and a subcooling are differences of
//! channels, so that one pressure's error moves the evaporating temperature and the superheat together by itself.

use super::constants::{CLAMP, DEPRESSION_UNKNOWN, EXPECTED_CHARGE, OUTDOOR_UNKNOWN, RETURN_UNKNOWN};
use super::expected::Slopes;
use super::matrix::{Half, Vector};
use super::{
    AIRFLOW, CHANNELS, CHARGE, COIL_OUTLET, CONDENSER_AIR, CONDENSING, DISCHARGE, DISCHARGE_CONDENSING, EVAPORATING,
    LINE_DROP, LIQUID_LINE, POWER, SUCTION_LINE, SUPPLY, SUPPLY_WET, SURFACE,
};
use crate::diagnosis::uncertainty::parts;
use crate::math;
use crate::quantity::{M3_S_PER_CFM, Pressure, SiQuantity, WATTS_PER_TON};
use crate::reading::{Field, Reading};
use crate::saturation::SaturationCurves;

/// Airflow by capacity that counts as usual, m³/(s·W): 400 cfm a ton.
const USUAL_AIRFLOW: f64 = 400.0 * M3_S_PER_CFM / WATTS_PER_TON;

/// The air around a reading, K, with one standard uncertainty of each where it is not measured.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Around {
    /// Outdoor dry bulb, return dry bulb, return wet bulb.
    pub kelvin: [f32; 3],
    /// Uncertainty where not measured; zero where it is.
    pub unknown: [f32; 3],
}

impl Around {
    pub(super) fn of(reading: &Reading) -> Self {
        let single = |field| reading.get(field).map(|kelvin| kelvin as f32);
        let mut around = Self { kelvin: [0.0; 3], unknown: [0.0; 3] };
        let (outdoor, of_outdoor) = known_or(single(Field::OutdoorDryBulb), OUTDOOR_UNKNOWN.0, OUTDOOR_UNKNOWN.1);
        // A wet bulb says more of an unknown dry bulb than nothing does.
        let wet = single(Field::ReturnWetBulb);
        let likely = wet.map_or(RETURN_UNKNOWN.0, |wet| wet + DEPRESSION_UNKNOWN.0);
        let (dry, of_dry) = known_or(single(Field::ReturnDryBulb), likely, RETURN_UNKNOWN.1);
        let (wet, of_wet) = known_or(wet, dry - DEPRESSION_UNKNOWN.0, DEPRESSION_UNKNOWN.1);
        around.kelvin = [outdoor, dry, wet];
        around.unknown = [of_outdoor, of_dry, of_wet];
        around
    }
}

fn known_or(known: Option<f32>, mean: f32, deviation: f32) -> (f32, f32) {
    known.map_or((mean, deviation), |value| (value, 0.0))
}

/// What was measured, by channel.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Measured {
    /// Values, as the instruments should show them of what they are at: a clamp's usual error is taken off. Zero where
    /// not measured.
    pub value: Vector,
    /// Which channels are measured.
    pub present: [bool; CHANNELS],
    /// K of saturation by Pa, of the three pressures.
    by_pressure: [f32; 3],
}

impl Measured {
    pub(super) const NONE: Self = Self { value: [0.0; CHANNELS], present: [false; CHANNELS], by_pressure: [0.0; 3] };

    pub(super) fn count(&self) -> usize {
        self.present.iter().filter(|one| **one).count()
    }

    fn put(&mut self, channel: usize, value: Option<f64>) {
        if let (Some(value), Some(place), Some(present)) =
            (value, self.value.get_mut(channel), self.present.get_mut(channel))
        {
            *place = value as f32;
            *present = true;
        }
    }

    /// The channels of a reading. A pressure outside the refrigerant's curve gives none.
    #[inline(never)]
    pub(super) fn of(reading: &Reading, curves: &SaturationCurves, around: &Around) -> Self {
        let mut measured = Self::NONE;
        let low = reading.suction_pressure.and_then(|pressure| sloped(pressure, |p| curves.dew_temperature(p)));
        let high = |pressure: Option<Pressure>| pressure.and_then(|one| sloped(one, |p| curves.bubble_temperature(p)));
        let pressures = [
            (EVAPORATING, low),
            (CONDENSING, high(reading.liquid_pressure)),
            (DISCHARGE_CONDENSING, high(reading.discharge_pressure)),
        ];
        measured.by_pressure = pressures.map(|(_, found)| found.map_or(0.0, |(_, by_pressure)| by_pressure as f32));
        for (channel, found) in pressures {
            measured.put(channel, found.map(|(kelvin, _)| kelvin));
        }
        for (channel, field, indoors) in CLAMPED.iter().copied() {
            let air = f64::from(around.kelvin[usize::from(indoors)]);
            let unclamped = |shown: f64| (shown - f64::from(CLAMP.0) * air) / (1.0 - f64::from(CLAMP.0));
            measured.put(channel, reading.get(field).map(unclamped));
        }
        for (channel, field) in AIR.iter().copied() {
            measured.put(channel, reading.get(field));
        }
        // Each by its own way to the air.
        if let (Some(start), Some(end)) = (reading.liquid_line_temperature, reading.metering_inlet_temperature) {
            measured.put(LINE_DROP, Some(start.kelvin() - end.kelvin()));
        }
        let percent = |value: Option<f64>, usual: Option<f64>| match (value, usual) {
            (Some(value), Some(usual)) if value > 0.0 && usual > 0.0 => Some(100.0 * math::ln(value / usual)),
            _ => None,
        };
        let nominal = reading.nominal_capacity.map(SiQuantity::si);
        measured.put(POWER, percent(reading.get(Field::CompressorPower), nominal));
        let usual = nominal.map(|watts| USUAL_AIRFLOW * watts);
        measured.put(AIRFLOW, percent(reading.get(Field::AirflowOverCoil), usual));
        measured.put(CHARGE, percent(reading.get(Field::WeighedCharge), reading.get(Field::ExpectedCharge)));
        measured
    }
}

/// Temperature and its slope by pressure.
fn sloped<T: SiQuantity, E>(pressure: Pressure, at: impl Fn(Pressure) -> Result<T, E>) -> Option<(f64, f64)> {
    let kelvin = at(pressure).ok()?.si();
    let step = 0.01 * pressure.pascals();
    let nearby = at(Pressure::from_pascals(pressure.pascals() - step).ok()?).ok()?.si();
    Some((kelvin, (kelvin - nearby) / step))
}

/// Probes strapped to a line: channel, field, and whether the air around is that indoors.
static CLAMPED: [(usize, Field, bool); 5] = [
    (SUCTION_LINE, Field::SuctionLineTemperature, false),
    (LIQUID_LINE, Field::LiquidLineTemperature, false),
    (DISCHARGE, Field::DischargeLineTemperature, false),
    (SURFACE, Field::CondensingSurfaceTemperature, false),
    (COIL_OUTLET, Field::CoilOutletTemperature, true),
];
/// Probes in air.
static AIR: [(usize, Field); 3] = [
    (SUPPLY, Field::SupplyDryBulb),
    (CONDENSER_AIR, Field::CondenserLeavingDryBulb),
    (SUPPLY_WET, Field::SupplyWetBulb),
];

/// Most groups of instruments that share an error; further ones are taken as if they shared none.
const GROUPS: usize = 6;

/// What an error moves.
#[derive(Clone, Copy)]
enum Moves<'a> {
    /// A few channels, each by a factor.
    Few(&'a [(usize, f32)]),
    /// Every channel, against what an air's error lets expect.
    Against(&'a Vector),
}

/// Collects the errors of a reading as a covariance of its channels against what the air lets expect.
struct Errors<'a> {
    covariance: &'a mut Half,
    /// The groups' numbers, 0 where there is none yet, and the channels that each group's shared error moves.
    groups: [u8; GROUPS],
    loads: &'a mut [Vector; GROUPS],
    reading: &'a Reading,
}

impl Errors<'_> {
    /// An error of a field that moves one channel.
    #[inline(never)]
    fn add_one(&mut self, field: Field, channel: usize, factor: f32) {
        self.add(field, Moves::Few(&[(channel, factor)]));
    }

    /// An error of the field, by the channels that it moves: a bias, which its group may share, and what a display rounds.
    #[inline(never)]
    fn add(&mut self, field: Field, moves: Moves) {
        if self.reading.get(field).is_none() {
            return;
        }
        let parts = parts(self.reading, field);
        let group = self.reading.accuracy.get(field as usize).copied().flatten().map_or(0, |one| one.group);
        let bias = parts.bias as f32;
        let mut groups = self.groups.iter_mut().zip(self.loads.iter_mut());
        let place = if group == 0 { None } else { groups.find(|(known, _)| **known == group || **known == 0) };
        match (place, moves) {
            (Some((known, vector)), Moves::Few(moves)) => {
                *known = group;
                for (channel, factor) in moves {
                    if let Some(load) = vector.get_mut(*channel) {
                        *load += factor * bias;
                    }
                }
            }
            (Some((known, vector)), Moves::Against(slopes)) => {
                *known = group;
                vector.iter_mut().zip(slopes).for_each(|(load, slope)| *load += -slope * bias);
            }
            (None, moves) => self.add_own(bias, moves),
        }
        self.add_own(parts.resolution as f32, moves);
    }

    #[inline(never)]
    fn add_own(&mut self, deviation: f32, moves: Moves) {
        if deviation == 0.0 {
            return;
        }
        let variance = deviation * deviation;
        match moves {
            Moves::Few(moves) => {
                for (place, (i, left)) in moves.iter().enumerate() {
                    for (j, right) in moves.iter().take(place + 1) {
                        self.covariance.add(*i, *j, left * right * variance);
                    }
                }
            }
            Moves::Against(slopes) => {
                let mut places = self.covariance.0.iter_mut();
                for (i, left) in slopes.iter().enumerate() {
                    slopes.iter().take(i + 1).zip(&mut places).for_each(|(x, place)| *place += left * x * variance);
                }
            }
        }
    }
}

/// Writes the covariance of measured less expected, from the instruments alone, over a matrix.
#[inline(never)]
pub(super) fn instruments(
    covariance: &mut Half,
    reading: &Reading,
    measured: &Measured,
    around: &Around,
    slopes: &Slopes,
) {
    *covariance = Half::ZERO;
    let mut loads = [[0.0; CHANNELS]; GROUPS];
    let mut errors = Errors { covariance, groups: [0; GROUPS], loads: &mut loads, reading };
    let [low, high, discharge] = measured.by_pressure;
    errors.add_one(Field::SuctionPressure, EVAPORATING, low);
    errors.add_one(Field::LiquidPressure, CONDENSING, high);
    errors.add_one(Field::DischargePressure, DISCHARGE_CONDENSING, discharge);
    for (channel, field, indoors) in CLAMPED.iter().copied() {
        let to_air = around.kelvin[usize::from(indoors)] - measured.value.get(channel).copied().unwrap_or(0.0);
        // The liquid line's probe is one end of the line's drop.
        let ends = [(channel, 1.0), (LINE_DROP, 1.0)];
        let moved = if field == Field::LiquidLineTemperature { 2 } else { 1 };
        errors.add(field, Moves::Few(ends.get(..moved).unwrap_or(&[])));
        if reading.get(field).is_some() {
            errors.add_own(CLAMP.1 * to_air, Moves::Few(&[(channel, 1.0)]));
        }
    }
    errors.add_one(Field::MeteringInletTemperature, LINE_DROP, -1.0);
    // Two places in different air, with the same clamp or another.
    errors.add_own(0.1, Moves::Few(&[(LINE_DROP, 1.0)]));
    for (channel, field) in AIR.iter().copied() {
        errors.add_one(field, channel, 1.0);
    }
    let shares = [(POWER, Field::CompressorPower), (AIRFLOW, Field::AirflowOverCoil), (CHARGE, Field::WeighedCharge)];
    for (channel, field) in shares {
        let percent = reading.get(field).map_or(0.0, |value| (100.0 / value.max(1e-9)) as f32);
        errors.add_one(field, channel, percent);
    }
    errors.add_own(EXPECTED_CHARGE, Moves::Few(&[(CHARGE, 1.0)]));
    let fields = [Field::OutdoorDryBulb, Field::ReturnDryBulb, Field::ReturnWetBulb];
    for ((field, slopes), unknown) in fields.into_iter().zip(&slopes.0).zip(around.unknown) {
        errors.add(field, Moves::Against(slopes));
        errors.add_own(unknown, Moves::Against(slopes));
    }
    for (group, vector) in errors.groups.iter().zip(errors.loads.iter()) {
        if *group != 0 {
            errors.covariance.add_outer(vector);
        }
    }
}
