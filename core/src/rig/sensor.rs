//! Instruments at a unit: what they show of a state.
//!
//! Three layers of error, kept apart: the instrument's bias and how well its clamp sits, drawn once for a visit; noise,
//! drawn for every sample; the lag and the steps of the display, which follow from no chance. The errors of the unit
//! itself and of its installation are the unit's.

use super::draws::Draws;
use super::moist::Air;
use super::steady::Steady;
use super::unit::Conditions;
use crate::math;
use crate::quantity::{KELVIN_PER_FAHRENHEIT, PASCALS_PER_PSI};
use crate::reading::{Accuracy, FIELD_COUNT, Field, Reading};

/// One instrument channel.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub struct Sensor {
    /// Limits of its error, which it states and within which its bias of a visit is drawn, each value as likely; and
    /// the step of its display.
    pub accuracy: Accuracy,
    /// Standard deviation of its noise, in the field's SI unit.
    pub noise: f64,
    /// Time constant of its lag, s.
    pub time_constant: f64,
    /// Share of the way to the temperature around by which a strapped probe is off, on average: its share of a visit is
    /// drawn from 0 to twice that.
    pub ambient_share: f64,
}

impl Sensor {
    /// Without error or lag.
    pub const EXACT: Self = Self { accuracy: Accuracy::EXACT, noise: 0.0, time_constant: 0.0, ambient_share: 0.0 };
}

/// Which fields are measured, and with what.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sensors {
    channels: [Option<Sensor>; FIELD_COUNT],
}

/// Every field that a state of the rig can supply.
const SUPPLIED: [Field; 17] = [
    Field::OutdoorDryBulb,
    Field::CondenserLeavingDryBulb,
    Field::ReturnDryBulb,
    Field::ReturnWetBulb,
    Field::SupplyDryBulb,
    Field::SupplyWetBulb,
    Field::AmbientPressure,
    Field::SuctionPressure,
    Field::SuctionLineTemperature,
    Field::LiquidPressure,
    Field::LiquidLineTemperature,
    Field::DischargePressure,
    Field::DischargeLineTemperature,
    Field::CoilOutletTemperature,
    Field::CondensingSurfaceTemperature,
    Field::AirflowOverCoil,
    Field::CompressorPower,
];

impl Sensors {
    /// No instrument at all.
    #[must_use]
    pub const fn none() -> Self {
        Self { channels: [None; FIELD_COUNT] }
    }

    /// Every field that the rig can supply, without error.
    #[must_use]
    pub fn exact() -> Self {
        SUPPLIED.into_iter().fold(Self::none(), |all, field| all.with(field, Some(Sensor::EXACT)))
    }

    /// The same fields within the limits of the 2013 edition of California Title 24 (RA3.2): thermometers
    /// ±(0.1 % of °F + 1.3 °F), 3.5 psi in the suction line, 7 psi in the liquid line. What it does not say is common
    /// practice: displays to 0.1 °F and 0.1 psi, noise of 0.05 K and 0.05 psi, clamps on lines with a time constant of 12 s,
    /// air probes with 20 s, clamps 2 % of the way to the air around, airflow within 10 % (as diagnosis supposes), power
    /// within 2 %, ambient pressure within 2 hPa.
    #[must_use]
    pub fn usual() -> Self {
        SUPPLIED.into_iter().fold(Self::none(), |all, field| all.with(field, Some(usual(field))))
    }

    /// With another sensor of a field, or without one.
    #[must_use]
    pub fn with(mut self, field: Field, sensor: Option<Sensor>) -> Self {
        if let Some(channel) = self.channels.get_mut(field as usize) {
            *channel = sensor;
        }
        self
    }

    /// The sensor of a field.
    #[must_use]
    pub fn get(&self, field: Field) -> Option<Sensor> {
        self.channels.get(field as usize).copied().flatten()
    }

    /// Brings the instruments to a unit: the seed decides what is wrong with them on this visit, and their noise. Channels of
    /// one group of their accuracies have one bias: each is off by the same share of its own limit.
    #[must_use]
    pub fn placed(&self, seed: u64) -> Instruments {
        let mut draws = Draws::new(seed);
        // Both are drawn for every field, so that leaving one out changes no other.
        let mut placed = self.channels.map(|sensor| Placed {
            sensor,
            bias: draws.uniform(-1.0, 1.0),
            ambient_share: draws.uniform(0.0, 2.0) * sensor.unwrap_or_default().ambient_share,
            shown: None,
        });
        // Drawn all the same, so that a group leaves the draws of the others as they were.
        let mut shared = [None; 1 + u8::MAX as usize];
        for channel in &mut placed {
            let Some(sensor) = channel.sensor.filter(|sensor| sensor.accuracy.group != 0) else { continue };
            if let Some(first) = shared.get_mut(usize::from(sensor.accuracy.group)) {
                channel.bias = *first.get_or_insert(channel.bias);
            }
        }
        Instruments { placed, draws }
    }
}

fn usual(field: Field) -> Sensor {
    // A share of °F is the same share of °C and of 32 °F.
    let step = 0.1 * KELVIN_PER_FAHRENHEIT;
    let thermometer = Sensor {
        accuracy: Accuracy {
            of_reading: 0.001,
            absolute: (1.3 + 0.001 * 32.0) * KELVIN_PER_FAHRENHEIT - 0.5 * step,
            resolution: step,
            ..Accuracy::EXACT
        },
        noise: 0.05,
        time_constant: 20.0,
        ambient_share: 0.0,
    };
    let clamp = Sensor { time_constant: 12.0, ambient_share: 0.02, ..thermometer };
    let plain = |of_reading, absolute, resolution, noise, time_constant| Sensor {
        accuracy: Accuracy { of_reading, absolute, resolution, ..Accuracy::EXACT },
        noise,
        time_constant,
        ambient_share: 0.0,
    };
    let gauge =
        |psi: f64| plain(0.0, (psi - 0.05) * PASCALS_PER_PSI, 0.1 * PASCALS_PER_PSI, 0.05 * PASCALS_PER_PSI, 0.5);
    match field {
        Field::SuctionPressure => gauge(3.5),
        Field::LiquidPressure | Field::DischargePressure => gauge(7.0),
        Field::SuctionLineTemperature
        | Field::LiquidLineTemperature
        | Field::DischargeLineTemperature
        | Field::CoilOutletTemperature
        | Field::CondensingSurfaceTemperature => clamp,
        Field::AmbientPressure => plain(0.0, 150.0, 100.0, 0.0, 0.0),
        Field::AirflowOverCoil => plain(0.1, 0.0, 0.0, 0.0, 0.0),
        Field::CompressorPower => plain(0.02, 0.0, 1.0, 2.0, 1.0),
        _ => thermometer,
    }
}

/// The true value of a field, in its SI unit, and the temperature around a probe there, K.
fn truth(field: Field, state: &Steady, conditions: &Conditions) -> Option<(f64, f64)> {
    let (indoors, outdoors) = (conditions.return_dry_bulb, conditions.outdoor_dry_bulb);
    Some(match field {
        Field::OutdoorDryBulb => (outdoors, outdoors),
        Field::CondenserLeavingDryBulb => (state.condenser.air_temperature, outdoors),
        Field::ReturnDryBulb => (indoors, indoors),
        Field::ReturnWetBulb => (conditions.return_wet_bulb, indoors),
        Field::SupplyDryBulb => (state.supply_dry_bulb, indoors),
        Field::SupplyWetBulb => {
            let supply = Air { temperature: state.supply_dry_bulb, ..state.evaporator.air };
            (supply.wet_bulb(), indoors)
        }
        Field::AmbientPressure => (conditions.ambient_pressure, outdoors),
        Field::SuctionPressure => (state.vapor_port.pressure, outdoors),
        Field::SuctionLineTemperature => (state.vapor_port.temperature, outdoors),
        Field::LiquidPressure => (state.liquid_port.pressure, outdoors),
        Field::LiquidLineTemperature => (state.liquid_port.temperature, outdoors),
        Field::DischargePressure => (state.discharge.pressure, outdoors),
        Field::DischargeLineTemperature => (state.discharge.temperature, outdoors),
        Field::CoilOutletTemperature => (state.evaporator.temperature, indoors),
        Field::CondensingSurfaceTemperature => (state.condenser.surface_temperature, outdoors),
        Field::AirflowOverCoil => (state.indoor_airflow, indoors),
        Field::CompressorPower => (state.compressor_power, outdoors),
        _ => return None,
    })
}

/// What the display's zero is: a share of the reading and the steps of the display count from it.
fn zero(field: Field, conditions: &Conditions) -> f64 {
    match field.bound().unit {
        "K" => 273.15,
        "Pa" if field != Field::AmbientPressure => conditions.ambient_pressure,
        _ => 0.0,
    }
}

/// A sensor at its place, on one visit.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Placed {
    sensor: Option<Sensor>,
    /// −1 to 1, of the limit of error.
    bias: f64,
    ambient_share: f64,
    /// What it has come to, before bias, noise and the steps of the display.
    shown: Option<f64>,
}

/// Instruments at a unit, on one visit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Instruments {
    placed: [Placed; FIELD_COUNT],
    draws: Draws,
}

impl Instruments {
    /// A sample after they have had time to settle.
    ///
    /// ```
    /// use satline::eos::model;
    /// use satline::rig::{Device, Faults, RATING_CONDITIONS, Rating, RefrigerantMap, Sensors, Unit};
    /// let map = RefrigerantMap::of("R-410A", &model::R410A)?;
    /// let unit = Unit::designed(&map, &Rating::usual(10_550.0, Device::ShortTube))?;
    /// let state = unit.solve(&RATING_CONDITIONS, &Faults::default())?;
    /// let reading = Sensors::usual().placed(1).settled(&state, &RATING_CONDITIONS);
    /// let shown = reading.suction_pressure.expect("measured").pascals();
    /// assert!((shown - state.vapor_port.pressure).abs() < 26e3);
    /// # Ok::<(), satline::Error>(())
    /// ```
    pub fn settled(&mut self, state: &Steady, conditions: &Conditions) -> Reading {
        self.sample(state, conditions, f64::INFINITY)
    }

    /// A sample a time in seconds after the one before, in which the unit was in this state.
    ///
    /// The first sample finds them settled. What a display cannot show — a value outside the field's bound — is left
    /// out of the reading; refrigerant and metering are the caller's to fill in. Accuracies are those of the instruments,
    /// which know nothing of how their clamps sit. A time that is negative or not a number counts as none.
    pub fn sample(&mut self, state: &Steady, conditions: &Conditions, seconds: f64) -> Reading {
        let mut reading = Reading::default();
        let draws = &mut self.draws;
        for (field, placed) in Field::ALL.iter().copied().zip(self.placed.iter_mut()) {
            let chance = draws.normal();
            let (Some(sensor), Some((value, around))) = (placed.sensor, truth(field, state, conditions)) else {
                continue;
            };
            let felt = value + placed.ambient_share * (around - value);
            let seconds = seconds.max(0.0);
            let shown = match placed.shown {
                Some(before) if sensor.time_constant > 0.0 => {
                    before + (felt - before) * (1.0 - math::exp(-seconds / sensor.time_constant))
                }
                _ => felt,
            };
            placed.shown = Some(shown);
            let zero = zero(field, conditions);
            let Accuracy { of_reading, of_full_scale, full_scale, absolute, resolution, .. } = sensor.accuracy;
            let limit = (of_reading * (shown - zero)).abs() + of_full_scale * full_scale + absolute;
            let exact = shown + placed.bias * limit + sensor.noise * chance;
            // A field whose value its bound refuses stays unset.
            if reading.set(field, stepped(exact, zero, resolution)).is_ok() {
                if let Some(accuracy) = reading.accuracy.get_mut(field as usize) {
                    *accuracy = Some(sensor.accuracy);
                }
            }
        }
        reading
    }
}

/// The nearest step of a display that counts from a zero.
fn stepped(value: f64, zero: f64, step: f64) -> f64 {
    if !(step > 0.0) {
        return value;
    }
    let steps = (value - zero) / step;
    let whole = (steps.abs() + 0.5) as i64 as f64;
    zero + if steps < 0.0 { -whole } else { whole } * step
}

#[cfg(test)]
mod tests {
    use super::super::{Device, Faults, RATING_CONDITIONS, Rating, RefrigerantMap, Unit};
    use super::*;
    use crate::eos::model;
    use crate::quantity::SiQuantity;

    fn state() -> Steady {
        let map = RefrigerantMap::of("R-410A", &model::R410A).unwrap();
        let unit = Unit::designed(&map, &Rating::usual(10_550.0, Device::ShortTube)).unwrap();
        unit.solve(&RATING_CONDITIONS, &Faults::default()).unwrap()
    }

    #[test]
    fn exact_instruments_show_the_state() {
        let state = state();
        let reading = Sensors::exact().placed(3).settled(&state, &RATING_CONDITIONS);
        let set = Field::ALL.iter().filter(|field| reading.get(**field).is_some()).count();
        assert_eq!(set, SUPPLIED.len());
        for (field, value) in [
            (Field::OutdoorDryBulb, RATING_CONDITIONS.outdoor_dry_bulb),
            (Field::ReturnWetBulb, RATING_CONDITIONS.return_wet_bulb),
            (Field::SuctionPressure, state.vapor_port.pressure),
            (Field::SuctionLineTemperature, state.vapor_port.temperature),
            (Field::LiquidPressure, state.liquid_port.pressure),
            (Field::LiquidLineTemperature, state.liquid_port.temperature),
            (Field::DischargeLineTemperature, state.discharge.temperature),
            (Field::SupplyDryBulb, state.supply_dry_bulb),
            (Field::AirflowOverCoil, state.indoor_airflow),
            (Field::CompressorPower, state.compressor_power),
        ] {
            assert_eq!(reading.get(field), Some(value), "{field:?}");
        }
        // The supply air is nearly saturated and carries the evaporator's water: its wet bulb stands just below.
        let wet = reading.supply_wet_bulb.unwrap().si();
        assert!(wet < state.supply_dry_bulb && wet > state.supply_dry_bulb - 4.0, "{wet}");
        assert!(reading.refrigerant.is_none() && reading.expected_charge.is_none());
    }

    /// Over many visits the errors have the standard uncertainty that a rectangular limit stands for; within one visit
    /// only the noise changes.
    #[test]
    fn bias_and_noise_are_as_stated() {
        const VISITS: u32 = 4000;
        let state = state();
        let sensors = Sensors::usual();
        for field in [Field::SuctionPressure, Field::SupplyDryBulb, Field::LiquidPressure, Field::CompressorPower] {
            let truth = truth(field, &state, &RATING_CONDITIONS).unwrap().0;
            let sensor = sensors.get(field).unwrap();
            let shown = truth - zero(field, &RATING_CONDITIONS);
            let limit = sensor.accuracy.of_reading * shown.abs() + sensor.accuracy.absolute;
            let error_of = |instruments: &mut Instruments| {
                instruments.settled(&state, &RATING_CONDITIONS).get(field).unwrap() - truth
            };
            let (mut sum, mut squares) = (0.0, 0.0);
            for seed in 0..VISITS {
                let error = error_of(&mut sensors.placed(u64::from(seed)));
                assert!(error.abs() <= limit + 6.0 * sensor.noise + sensor.accuracy.resolution);
                (sum, squares) = (sum + error, squares + error * error);
            }
            let count = f64::from(VISITS);
            let step = sensor.accuracy.resolution;
            let variance = limit * limit / 3.0 + sensor.noise * sensor.noise + step * step / 12.0;
            // Four standard errors: of the mean; of the variance, whose relative one is √(0.8/n) for a rectangle.
            assert!((sum / count).abs() < 4.0 * f64::sqrt(variance / count), "{field:?} {}", sum / count);
            assert!((squares / count / variance - 1.0).abs() < 4.0 * f64::sqrt(0.9 / count), "{field:?}");

            // A hundred samples of one visit.
            let mut instruments = sensors.placed(77);
            let errors: [f64; 100] = core::array::from_fn(|_| error_of(&mut instruments));
            let mean = errors.iter().sum::<f64>() / 100.0;
            let spread = errors.iter().map(|error| (error - mean) * (error - mean)).sum::<f64>() / 99.0;
            let noise = sensor.noise * sensor.noise + step * step / 12.0;
            assert!((spread / noise - 1.0).abs() < 0.7, "{field:?} {} {}", spread.sqrt(), noise.sqrt());
            let bias = instruments.placed[field as usize].bias * limit;
            assert!((mean - bias).abs() < 5.0 * f64::sqrt(noise / 100.0) + 0.02 * limit, "{field:?} {mean} {bias}");
        }
    }

    /// β of 5 % on a 55 °F pipe in 95 °F air reads 2.0 °F high.
    #[test]
    fn a_poor_clamp_reads_towards_the_air() {
        let mut state = state();
        state.vapor_port.temperature = crate::quantity::kelvin_from_fahrenheit(55.0);
        let clamp = Sensor { ambient_share: 0.05, ..Sensor::EXACT };
        let sensors = Sensors::none().with(Field::SuctionLineTemperature, Some(clamp));
        let mut sum = 0.0;
        for seed in 0..2000 {
            let reading = sensors.placed(seed).settled(&state, &RATING_CONDITIONS);
            let error = reading.suction_line_temperature.unwrap().kelvin() - state.vapor_port.temperature;
            assert!((0.0..=4.001 * KELVIN_PER_FAHRENHEIT).contains(&error));
            sum += error / 2000.0;
        }
        // Four standard errors of a rectangle of that width.
        let error = 4.0 * 4.0 / f64::sqrt(12.0) / f64::sqrt(2000.0);
        assert!((sum / KELVIN_PER_FAHRENHEIT - 2.0).abs() < error, "{sum}");
    }

    #[test]
    fn a_step_is_followed_by_its_time_constant() {
        let before = state();
        let mut after = before;
        after.liquid_port.temperature -= 10.0;
        let field = Field::LiquidLineTemperature;
        let lagging = Sensor { time_constant: 40.0, ..Sensor::EXACT };
        let sensors = Sensors::none().with(field, Some(lagging));
        let mut instruments = sensors.placed(1);
        let show = |reading: Reading| reading.get(field).unwrap() - before.liquid_port.temperature;
        assert_eq!(show(instruments.sample(&before, &RATING_CONDITIONS, 1.0)), 0.0);
        let mut last = 0.0;
        for _ in 0..40 {
            let now = show(instruments.sample(&after, &RATING_CONDITIONS, 1.0));
            assert!(now < last);
            last = now;
        }
        assert!((last + 10.0 * (1.0 - (-1.0_f64).exp())).abs() < 1e-9, "{last}");
        assert_eq!(show(instruments.settled(&after, &RATING_CONDITIONS)), -10.0);
        // A time that is none changes nothing.
        assert_eq!(show(instruments.sample(&before, &RATING_CONDITIONS, f64::NAN)), -10.0);
    }

    #[test]
    fn a_group_shares_its_bias_and_leaves_the_others_alone() {
        let state = state();
        let gauge = |group| {
            let accuracy = Accuracy { of_full_scale: 0.01, full_scale: 5e6, group, ..Accuracy::EXACT };
            Some(Sensor { accuracy, ..Sensor::EXACT })
        };
        let alone = Sensors::usual().with(Field::SuctionPressure, gauge(0)).with(Field::LiquidPressure, gauge(0));
        let grouped = Sensors::usual().with(Field::SuctionPressure, gauge(7)).with(Field::LiquidPressure, gauge(7));
        for seed in 0..20 {
            let settled = |sensors: &Sensors| sensors.placed(seed).settled(&state, &RATING_CONDITIONS);
            let (apart, together) = (settled(&alone), settled(&grouped));
            let error = |reading: &Reading, field| {
                reading.get(field).unwrap() - truth(field, &state, &RATING_CONDITIONS).unwrap().0
            };
            let (suction, liquid) = (error(&together, Field::SuctionPressure), error(&together, Field::LiquidPressure));
            assert!((suction - liquid).abs() < 1e-6 && suction.abs() <= 50_000.0, "{suction} {liquid}");
            assert!((error(&apart, Field::SuctionPressure) - error(&apart, Field::LiquidPressure)).abs() > 1.0);
            for field in Field::ALL.iter().copied().filter(|field| *field != Field::LiquidPressure) {
                assert_eq!(apart.get(field), together.get(field), "{field:?}");
            }
        }
    }

    #[test]
    fn a_display_shows_whole_steps() {
        let step = 0.1 * KELVIN_PER_FAHRENHEIT;
        let fahrenheit = |kelvin: f64| (kelvin - 273.15) * 1.8 + 32.0;
        for (value, shown) in [(61.43, 61.4), (61.46, 61.5), (-3.26, -3.3), (32.02, 32.0)] {
            let kelvin = stepped((value - 32.0) / 1.8 + 273.15, 273.15, step);
            assert!((fahrenheit(kelvin) - shown).abs() < 1e-9, "{value}");
        }
        assert_eq!(stepped(5.3, 0.0, 0.0), 5.3);
    }

    /// What an instrument cannot show is left out.
    #[test]
    fn beyond_the_display() {
        let mut state = state();
        state.compressor_power = 0.0;
        let reading = Sensors::exact().placed(1).settled(&state, &RATING_CONDITIONS);
        assert!(reading.compressor_power.is_none() && reading.accuracy[Field::CompressorPower as usize].is_none());
    }
}
