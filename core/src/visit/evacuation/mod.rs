//! Evacuation: how the pressure of a unit goes after the pump is shut off, and whether that shows it tight and dry.
//!
//! A leak raises the pressure in a straight line, since the air outside pushes with the same force all the time; water
//! and gas out of oil raise it to a level, water to its vapour pressure at the coldest tube. The shapes are compared
//! honestly (see `shape`), and where time or gauge do not suffice the answer is that it cannot be told, with the time
//! that would do. Needs no equation of state and no heap.

mod answers;
mod fit;
mod judge;
mod shape;

pub use answers::{Advice, Behaviour, Cause, Caution, Outcome, Reason};
pub use shape::DECISIVE;

use crate::air::water;
use crate::bounds;
use crate::error::Error;
use crate::quantity::Temperature;
use crate::uncertain::Uncertain;
use judge::{Asked, finding};
use shape::shape;

/// Pascals in a micron of mercury (a thousandth of the conventional millimetre of mercury, NIST SP 811).
pub const PASCALS_PER_MICRON: f64 = 0.133_322_4;
/// To what pressure a unit is evacuated where nothing is said, Pa: 500 microns, common practice.
pub const DEFAULT_TARGET_PA: f64 = 500.0 * PASCALS_PER_MICRON;
/// Below what it must stay, Pa: 1000 microns, common practice.
pub const DEFAULT_LIMIT_PA: f64 = 1000.0 * PASCALS_PER_MICRON;
/// For how long, s: ten minutes, common practice.
pub const DEFAULT_LEAST_TIME_S: f64 = 600.0;
/// Resolution of an electronic vacuum gauge, Pa: a micron, common practice.
pub const DEFAULT_RESOLUTION_PA: f64 = PASCALS_PER_MICRON;
/// One standard uncertainty of such a gauge as a share of its reading: a limit of error of 10 %, common practice.
pub const DEFAULT_SHARE: f64 = 0.1 / SQRT_3;
/// How many standard uncertainties count.
pub const COVERAGE: f64 = 2.0;
/// A rise that would cross the limit within so many times the least time is not yet a pass. A choice of our own: with
/// ten minutes, within the hour.
pub const LOOK_AHEAD: f64 = 6.0;

const SQRT_3: f64 = 1.732_050_807_568_877_2;

/// A pressure at a time.
#[derive(Debug, Clone, Copy, PartialEq)]
#[repr(C)]
pub struct Sample {
    /// Time since the valve to the pump was closed, s.
    pub time_s: f64,
    /// Absolute pressure, Pa.
    pub pressure_pa: f64,
}

/// What is measured after isolation, and how well.
#[derive(Debug, Clone, Copy)]
pub struct Decay<'a> {
    /// The pressures in the order of their times.
    pub samples: &'a [Sample],
    /// Temperature of the coldest tube.
    pub coldest: Temperature,
    /// One standard uncertainty of it, K; else that of a thermometer with a limit of error of 0.1 % and 1.3 °F.
    pub temperature_uncertainty_k: Option<f64>,
    /// Smallest step that the gauge shows, Pa; [`DEFAULT_RESOLUTION_PA`] if none.
    pub resolution_pa: Option<f64>,
    /// Scatter of one reading besides, one standard deviation, Pa; that of the resolution alone if none.
    pub noise_pa: Option<f64>,
    /// One standard uncertainty of the gauge's scale, as a share of the reading; [`DEFAULT_SHARE`] if none.
    pub share: Option<f64>,
    /// To what the unit should have been pulled down, Pa; [`DEFAULT_TARGET_PA`] if none.
    pub target_pa: Option<f64>,
    /// Below what it must stay, Pa; [`DEFAULT_LIMIT_PA`] if none.
    pub limit_pa: Option<f64>,
    /// For how long, s; [`DEFAULT_LEAST_TIME_S`] if none.
    pub least_time_s: Option<f64>,
}

impl<'a> Decay<'a> {
    /// A test with the defaults.
    #[must_use]
    pub const fn new(samples: &'a [Sample], coldest: Temperature) -> Self {
        Self {
            samples,
            coldest,
            temperature_uncertainty_k: None,
            resolution_pa: None,
            noise_pa: None,
            share: None,
            target_pa: None,
            limit_pa: None,
            least_time_s: None,
        }
    }
}

/// Most causes that a finding names.
pub const CAUSES_MAX: usize = 3;

/// The answer.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct DecayFinding {
    /// Pass, fail, or neither.
    pub outcome: Outcome,
    /// Why.
    pub reason: Reason,
    /// How the pressure went.
    pub behaviour: Behaviour,
    causes: [Option<Cause>; CAUSES_MAX],
    /// What to do.
    pub advice: Advice,
    cautions: u32,
    /// First to last time, s.
    pub watched_s: f64,
    /// The least time to watch, s: what was asked for, or what the gauge needs to show a rise from the first pressure to
    /// the limit within that time, if that is longer.
    pub least_time_s: f64,
    /// Pressure at the first time by the shape found, Pa; uncertainty of scatter and scale.
    pub first_pa: Uncertain,
    /// The same at the last time.
    pub last_pa: Uncertain,
    /// Rate of the straight part of the rise, Pa/s: a leak is at most that.
    pub rate_pa_s: Uncertain,
    /// The smallest rate that would have shown, Pa/s.
    pub smallest_rate_pa_s: f64,
    /// Where the pressure levels off, Pa; none for a straight or undecided rise.
    pub plateau_pa: Option<Uncertain>,
    /// Time constant of levelling off, s.
    pub time_constant_s: Option<f64>,
    /// When, from isolation, the rise reaches the limit, s; none where it does not.
    pub reaches_limit_s: Option<f64>,
    /// Saturation pressure of water, or of ice, at the coldest tube, Pa.
    pub water_pressure_pa: Uncertain,
    /// Temperature at which water vapour of the last pressure is saturated, K; none outside the equations.
    pub frost_point_k: Option<f64>,
    /// Scatter of one reading, Pa: as given, or as found where that is more.
    pub noise_pa: f64,
    /// Akaike's criterion of a straight line less that of a curve: above [`DECISIVE`] the curve is shown, below its
    /// negative the line. None for too few readings.
    pub evidence_for_curve: Option<f64>,
}

impl DecayFinding {
    /// What could be behind a rise, most likely first.
    pub fn causes(&self) -> impl Iterator<Item = Cause> + '_ {
        self.causes.iter().copied().flatten()
    }

    /// What can hurt or mislead, in the order of their numbers.
    pub fn cautions(&self) -> impl Iterator<Item = Caution> + '_ {
        Caution::ALL.iter().copied().filter(|caution| self.cautions & bit(*caution) != 0)
    }

    /// The cautions as a bit set: bit `n` stands for the caution with number `n`.
    #[must_use]
    pub const fn caution_bits(&self) -> u32 {
        self.cautions
    }
}

const fn bit(caution: Caution) -> u32 {
    1_u32.wrapping_shl(caution.number() as u32)
}

/// Saturation pressure of water in Pa: over ice up to 0.01 °C, over liquid above (Hyland and Wexler 1983).
///
/// # Errors
/// [`Error::OutOfRange`] outside [`bounds::WATER_TEMPERATURE`].
///
/// ```
/// use satline::quantity::Temperature;
/// // ASHRAE Handbook Fundamentals 2017, chapter 1, table 3, by newer equations: 3169.7 Pa at 25 °C.
/// let water = satline::visit::water_saturation_pressure(Temperature::from_celsius(25.0)?)?;
/// assert!((water / 3169.7 - 1.0).abs() < 2e-4);
/// # Ok::<(), satline::Error>(())
/// ```
pub fn water_saturation_pressure(temperature: Temperature) -> Result<f64, Error> {
    Ok(water::saturation(bounds::WATER_TEMPERATURE.check(temperature.kelvin())?).0)
}

/// Temperature at which water vapour of that pressure (Pa) is saturated: a frost point below 0.01 °C. Water colder than
/// that is not seen by a gauge that reads the pressure.
///
/// # Errors
/// [`Error::OutOfRange`] or [`Error::NotFinite`] outside [`bounds::VACUUM_PRESSURE`] or the equations' range, which begins
/// near 0.0014 Pa.
///
/// ```
/// use satline::visit::{evacuation::PASCALS_PER_MICRON, frost_point};
/// assert!((frost_point(500.0 * PASCALS_PER_MICRON)?.fahrenheit() + 12.1).abs() < 0.05);
/// # Ok::<(), satline::Error>(())
/// ```
pub fn frost_point(pressure_pa: f64) -> Result<Temperature, Error> {
    let pressure = bounds::VACUUM_PRESSURE.check(pressure_pa)?;
    let (coldest, hottest) = (bounds::WATER_TEMPERATURE.lower, bounds::WATER_TEMPERATURE.upper);
    let advice = "no equation for ice reaches so low a pressure";
    let (quantity, lower) = ("pressure of water vapour", water::saturation(coldest).0);
    bounds::within(quantity, "Pa", pressure, lower, bounds::VACUUM_PRESSURE.upper, advice)?;
    Temperature::from_kelvin(water::saturation_temperature(pressure, coldest, hottest))
}

/// Checks number, times and pressures of a series.
///
/// # Errors
/// [`Error::OutOfRange`] or [`Error::NotFinite`] with the place of the reading concerned (0 for the number of readings):
/// fewer than five, a time not later than the one before, a pressure below zero.
pub fn check_samples(samples: &[Sample]) -> Result<(), (usize, Error)> {
    bounds::DECAY_COUNT.check(samples.len() as f64).map_err(|error| (0, error))?;
    let mut before = None;
    for (place, sample) in samples.iter().enumerate() {
        let check = || {
            let bound = bounds::DECAY_TIME;
            let time = bound.check(sample.time_s)?;
            if before.is_some_and(|before| time <= before) {
                let advice = "times must increase: sort the readings and leave out repeated ones";
                return Err(bounds::refuse(
                    bound.quantity,
                    bound.unit,
                    time,
                    before.unwrap_or(0.0),
                    bound.upper,
                    advice,
                ));
            }
            bounds::VACUUM_PRESSURE.check(sample.pressure_pa)?;
            Ok(time)
        };
        before = Some(check().map_err(|error| (place, error))?);
    }
    Ok(())
}

/// Judges the pressures after isolation.
///
/// # Errors
/// Those of [`check_samples`], and values outside [`bounds::WATER_TEMPERATURE`], [`bounds::VACUUM_LIMIT`],
/// [`bounds::VACUUM_NOISE`], [`bounds::VACUUM_SHARE`], [`bounds::TEST_DURATION`] and
/// [`bounds::TEMPERATURE_UNCERTAINTY`]; a limit below the target; less than a second from first to last.
///
/// ```
/// use satline::quantity::Temperature;
/// use satline::visit::evacuation::{Behaviour, Cause, Decay, Outcome, PASCALS_PER_MICRON, Sample, decay_test};
/// // Demo: 400 microns at isolation, rising by 40 microns a minute in a straight line, read every half minute.
/// let mut samples = [Sample { time_s: 0.0, pressure_pa: 0.0 }; 31];
/// for (place, sample) in samples.iter_mut().enumerate() {
///     let minutes = 0.5 * place as f64;
///     *sample = Sample { time_s: 60.0 * minutes, pressure_pa: (400.0 + 40.0 * minutes) * PASCALS_PER_MICRON };
/// }
/// let found = decay_test(&Decay::new(&samples, Temperature::from_celsius(20.0)?))?;
/// assert_eq!((found.outcome, found.behaviour), (Outcome::CannotTell, Behaviour::Straight));
/// assert_eq!(found.causes().next(), Some(Cause::Leak));
/// assert!((found.reaches_limit_s.unwrap() - 900.0).abs() < 1.0);
/// # Ok::<(), satline::Error>(())
/// ```
pub fn decay_test(decay: &Decay<'_>) -> Result<DecayFinding, Error> {
    check_samples(decay.samples).map_err(|(_, error)| error)?;
    let asked = Asked::of(decay)?;
    let (Some(first), Some(last)) = (decay.samples.first(), decay.samples.last()) else {
        return Err(bounds::refuse("number of pressures", "readings", 0.0, 5.0, 1e4, bounds::DECAY_COUNT.advice));
    };
    let advice = "watch for minutes, not for moments";
    let time = last.time_s - first.time_s;
    let span = bounds::within("time watched after isolation", "s", time, 1.0, bounds::DECAY_TIME.upper, advice)?;
    let Some(found) = shape(decay.samples, first.time_s, span, asked.noise_pa) else {
        let reason = "the times leave no room to tell a level from a rise: spread the readings evenly";
        return Err(Error::NotAvailable { quantity: "shape of the pressure after isolation", reason });
    };
    let water = asked.water(decay.coldest, decay.temperature_uncertainty_k)?;
    Ok(finding(&asked, &found, water, (first.time_s, span), decay.samples.len() as f64))
}
