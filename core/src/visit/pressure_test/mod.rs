//! The nitrogen pressure test: two pressures some hours apart, corrected for temperature with real nitrogen.
//!
//! The answer is statistical. A drop is one only beyond [`COVERAGE`] standard uncertainties, and a pass needs more than
//! no drop: the drop that could still hide must be no larger than the one allowed. Else the test cannot tell.

mod answers;
pub use answers::{Advice, Caution, Outcome, Reason};

use super::nitrogen::Nitrogen;
use super::standing::Uncertainty;
use crate::bounds;
use crate::error::Error;
use crate::quantity::{Pressure, Temperature};
use crate::uncertain::root_of_squares;
use crate::uncertain::{Uncertain, propagate};

/// How many standard uncertainties a drop must exceed.
pub const COVERAGE: f64 = 2.0;
/// The drop allowed where nothing is said, as a share of the first absolute pressure. An allowance of our own: codes and
/// makers ask for no drop at all, which no gauge can show.
pub const DEFAULT_ALLOWED_SHARE: f64 = 0.01;
/// Least time where nothing is said, s: an hour, common practice; codes and makers may ask for a day.
pub const DEFAULT_LEAST_TIME_S: f64 = 3600.0;
/// Expansion of copper's volume, 1/K: three times its linear 16.5e-6 (from memory, handbook value at 20 °C).
const COPPER_VOLUME_EXPANSION: f64 = 3.0 * 16.5e-6;
/// √3, which makes a standard uncertainty of a limit of error.
const SQRT_3: f64 = 1.732_050_807_568_877_2;
const SECONDS_PER_HOUR: f64 = 3600.0;
/// Grams in a kilogram times seconds in a year of 365.25 days.
const GRAM_YEAR: f64 = 1e3 * 31_557_600.0;

/// What is read at one time.
#[derive(Debug, Clone, Copy)]
pub struct TestReading<'a> {
    /// The pressure, absolute: the gauge with the station pressure of that time, see [`Pressure::from_gauge`].
    pub pressure: Pressure,
    /// Temperatures of the tubes, and so of the gas, at one or more places. Their mean counts.
    pub temperatures: &'a [Temperature],
    /// One standard uncertainty of the pressure, Pa; else that of a gauge with a limit of error of 3.5 psi. Where one
    /// gauge stays on for both readings its constant error falls out: give what does not repeat, such as its resolution.
    pub pressure_uncertainty_pa: Option<f64>,
    /// One standard uncertainty of the temperatures, K; else that of a thermometer with a limit of error of 0.1 % of its
    /// Fahrenheit value and 1.3 °F.
    pub temperature_uncertainty_k: Option<f64>,
}

impl<'a> TestReading<'a> {
    /// A reading with default uncertainties.
    #[must_use]
    pub const fn new(pressure: Pressure, temperatures: &'a [Temperature]) -> Self {
        Self { pressure, temperatures, pressure_uncertainty_pa: None, temperature_uncertainty_k: None }
    }
}

/// The two readings and what is asked of them.
#[derive(Debug, Clone, Copy)]
pub struct PressureTest<'a> {
    /// The first reading, the cylinder closed and the gas settled.
    pub first: TestReading<'a>,
    /// The last reading.
    pub last: TestReading<'a>,
    /// Time between them, s.
    pub duration_s: f64,
    /// The low-side design pressure of the nameplate, absolute (its gauge figure and the station pressure). Every test
    /// pressure must be at or below it: the whole unit is joined during a test, and the low side is the weaker.
    pub low_side_design: Pressure,
    /// Internal volume, m³, for a leak as a flow.
    pub volume_m3: Option<f64>,
    /// Largest drop allowed over the test, Pa; [`DEFAULT_ALLOWED_SHARE`] of the first pressure if none.
    pub allowed_drop_pa: Option<f64>,
    /// Least time, s; [`DEFAULT_LEAST_TIME_S`] if none.
    pub least_time_s: Option<f64>,
}

impl<'a> PressureTest<'a> {
    /// A test with the defaults and no volume.
    #[must_use]
    pub const fn new(
        first: TestReading<'a>,
        last: TestReading<'a>,
        duration_s: f64,
        low_side_design: Pressure,
    ) -> Self {
        Self { first, last, duration_s, low_side_design, volume_m3: None, allowed_drop_pa: None, least_time_s: None }
    }
}

/// A leak as a flow of nitrogen at the test's pressure; a leak of refrigerant at its own pressure is another, which
/// nothing here converts.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Leak {
    /// Volume times the rate of the drop, Pa·m³/s, at the last temperature. Negative where the pressure rose.
    pub throughput_pa_m3_s: Uncertain,
    /// Nitrogen lost, g a year of 365.25 days.
    pub mass_rate_g_yr: Uncertain,
    /// The smallest loss that this test would have shown, g a year.
    pub smallest_g_yr: f64,
}

/// The answer.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct PressureTestFinding {
    /// Pass, fail, or neither.
    pub outcome: Outcome,
    /// Why.
    pub reason: Reason,
    /// What to do.
    pub advice: Advice,
    cautions: u32,
    /// Mean temperature at the first reading, K, the differences between probes as an uncertainty with the rest.
    pub first_temperature_k: Uncertain,
    /// The same at the last reading.
    pub last_temperature_k: Uncertain,
    /// Last pressure expected without a leak, absolute, Pa.
    pub expected_pa: Uncertain,
    /// Last pressure less expected, Pa: negative for a drop. Its uncertainty holds both readings and the metal.
    pub residual_pa: Uncertain,
    /// What the expansion of copper would add to the expected pressure, Pa: not added, but counted in the uncertainty
    /// as a limit of error.
    pub metal_expansion_pa: f64,
    /// The drop allowed, Pa.
    pub allowed_drop_pa: f64,
    /// The smallest drop that this test would have shown, Pa.
    pub smallest_drop_pa: f64,
    /// Rate of the drop, Pa an hour, at the last temperature.
    pub drop_rate_pa_h: Uncertain,
    /// The smallest rate that this test would have shown, Pa an hour.
    pub smallest_rate_pa_h: f64,
    /// Density of the nitrogen at the first reading, kg/m³.
    pub density_kg_m3: f64,
    /// The leak as a flow, where the volume is known.
    pub leak: Option<Leak>,
}

impl PressureTestFinding {
    /// What can hurt, in the order of their numbers.
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

/// Judges a pressure test.
///
/// # Errors
/// [`Error::OutOfRange`] or [`Error::NotFinite`] for a pressure above the low-side design pressure or outside
/// [`bounds::NITROGEN_PRESSURE`], a mean temperature outside [`bounds::NITROGEN_TEMPERATURE`], no or too many
/// temperatures ([`bounds::PROBE_COUNT`]), times, volume and uncertainties outside their bounds.
///
/// ```
/// use satline::quantity::{Atmosphere, Pressure, Temperature};
/// use satline::visit::pressure_test::{Outcome, PressureTest, TestReading, pressure_test};
/// let sea = Atmosphere::STANDARD;
/// let (hot, cool) = ([Temperature::from_fahrenheit(95.0)?], [Temperature::from_fahrenheit(70.0)?]);
/// // Demo: 400 psi at 95 °F in the evening, 379.9 at 70 °F in the morning; low-side design 450 psi. A fine gauge.
/// let fine = |psi: f64, at| -> Result<_, satline::Error> {
///     let new = TestReading::new(Pressure::from_psi_gauge(psi, sea)?, at);
///     Ok(TestReading { pressure_uncertainty_pa: Some(1e3), temperature_uncertainty_k: Some(0.3), ..new })
/// };
/// let design = Pressure::from_psi_gauge(450.0, sea)?;
/// let test = PressureTest::new(fine(400.0, &hot)?, fine(379.9, &cool)?, 12.0 * 3600.0, design);
/// assert_eq!(pressure_test(&test)?.outcome, Outcome::Pass);
/// let leaking = PressureTest::new(fine(400.0, &hot)?, fine(370.0, &cool)?, 12.0 * 3600.0, design);
/// assert_eq!(pressure_test(&leaking)?.outcome, Outcome::Fail);
/// # Ok::<(), satline::Error>(())
/// ```
pub fn pressure_test(test: &PressureTest<'_>) -> Result<PressureTestFinding, Error> {
    let duration_s = bounds::TEST_DURATION.check(test.duration_s)?;
    let least_time_s = bounds::TEST_DURATION.check(test.least_time_s.unwrap_or(DEFAULT_LEAST_TIME_S))?;
    let (first, last) = (Point::of(&test.first, test)?, Point::of(&test.last, test)?);
    let allowed_drop_pa = match test.allowed_drop_pa {
        Some(value) => bounds::ALLOWED_DROP.check(value)?,
        None => DEFAULT_ALLOWED_SHARE * first.pressure.value,
    };
    let nitrogen = Nitrogen::new()?;
    let expected = propagate([first.pressure, first.temperature, last.temperature], |[pressure, first, last]| {
        nitrogen.later_pressure(pressure, first, last)
    })?;
    let cooled_by = first.temperature.value - last.temperature.value;
    let metal_expansion_pa = expected.value * COPPER_VOLUME_EXPANSION * cooled_by;
    let of_metal = metal_expansion_pa / SQRT_3;
    let residual = Uncertain::new(
        last.pressure.value - expected.value,
        root_of_squares([last.pressure.standard_uncertainty, expected.standard_uncertainty, of_metal]),
    )?;
    let smallest_drop_pa = COVERAGE * residual.standard_uncertainty;
    let (outcome, reason) = judge(residual.value, smallest_drop_pa, allowed_drop_pa, duration_s < least_time_s);
    let hours = duration_s / SECONDS_PER_HOUR;
    let leak = match test.volume_m3 {
        Some(volume) => Some(leak(&nitrogen, volume, duration_s, residual, expected.value, &last)?),
        None => None,
    };
    Ok(PressureTestFinding {
        outcome,
        reason,
        advice: match reason {
            Reason::Held => Advice::ReleaseAndEvacuate,
            Reason::Fell => Advice::FindLeak,
            Reason::TooUncertain | Reason::TooShort => Advice::WatchLonger,
            Reason::Rose => Advice::Repeat,
        },
        cautions: Caution::ALL.iter().fold(0, |bits, caution| bits | bit(*caution)),
        first_temperature_k: first.temperature,
        last_temperature_k: last.temperature,
        expected_pa: expected,
        residual_pa: residual,
        metal_expansion_pa,
        allowed_drop_pa,
        smallest_drop_pa,
        drop_rate_pa_h: Uncertain::new(-residual.value / hours, residual.standard_uncertainty / hours)?,
        smallest_rate_pa_h: smallest_drop_pa / hours,
        density_kg_m3: nitrogen.density_kg_m3(first.pressure.value, first.temperature.value)?,
        leak,
    })
}

fn judge(residual: f64, smallest: f64, allowed: f64, short: bool) -> (Outcome, Reason) {
    if residual < -smallest {
        // However short the test: a drop is a drop.
        (Outcome::Fail, Reason::Fell)
    } else if residual > smallest {
        (Outcome::CannotTell, Reason::Rose)
    } else if short {
        (Outcome::CannotTell, Reason::TooShort)
    } else if smallest - residual > allowed {
        (Outcome::CannotTell, Reason::TooUncertain)
    } else {
        (Outcome::Pass, Reason::Held)
    }
}

fn leak(
    nitrogen: &Nitrogen,
    volume: f64,
    duration: f64,
    residual: Uncertain,
    expected: f64,
    last: &Point,
) -> Result<Leak, Error> {
    let volume = bounds::INTERNAL_VOLUME.check(volume)?;
    let rate = volume / duration;
    // Two pressures at one temperature: what is missing is the difference of their densities.
    let at = |pressure: f64| nitrogen.density_kg_m3(pressure, last.temperature.value);
    let mass_rate =
        propagate([residual], |[residual]| Ok((at(expected)? - at(expected + residual)?) * rate * GRAM_YEAR))?;
    Ok(Leak {
        throughput_pa_m3_s: Uncertain::new(-residual.value * rate, residual.standard_uncertainty * rate)?,
        mass_rate_g_yr: mass_rate,
        smallest_g_yr: COVERAGE * mass_rate.standard_uncertainty,
    })
}

/// A reading with its uncertainties.
struct Point {
    pressure: Uncertain,
    temperature: Uncertain,
}

impl Point {
    fn of(reading: &TestReading<'_>, test: &PressureTest<'_>) -> Result<Self, Error> {
        bounds::PROBE_COUNT.check(reading.temperatures.len() as f64)?;
        let pressure = bounds::NITROGEN_PRESSURE.check(reading.pressure.pascals())?;
        bounds::within(
            "test pressure",
            "Pa",
            pressure,
            bounds::NITROGEN_PRESSURE.lower,
            test.low_side_design.pascals(),
            "release nitrogen: the low-side design pressure of the nameplate is the limit, and parts may burst above it",
        )?;
        let kelvins = || reading.temperatures.iter().map(|temperature| temperature.kelvin());
        let mean = Temperature::from_kelvin(kelvins().sum::<f64>() / reading.temperatures.len() as f64)?;
        let spread = kelvins().fold(0.0, f64::max) - kelvins().fold(f64::INFINITY, f64::min);
        let own = Uncertainty::given(reading.pressure_uncertainty_pa, reading.temperature_uncertainty_k, mean)?;
        // Where between the probes the gas as a whole lies is not known: their half spread is a limit of error.
        let temperature = root_of_squares([own.temperature_k, 0.5 * spread / SQRT_3]);
        Ok(Self {
            pressure: Uncertain::new(pressure, own.pressure_pa)?,
            temperature: Uncertain::new(mean.kelvin(), temperature)?,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_side_of_each_limit() {
        // Residual, smallest drop that shows, drop allowed, short.
        for (case, wanted) in [
            ((0.0, 1.0, 2.0, false), (Outcome::Pass, Reason::Held)),
            ((-0.9, 1.0, 2.0, false), (Outcome::Pass, Reason::Held)),
            ((-0.9, 1.0, 1.8, false), (Outcome::CannotTell, Reason::TooUncertain)),
            ((0.0, 3.0, 2.0, false), (Outcome::CannotTell, Reason::TooUncertain)),
            ((-1.1, 1.0, 9.0, false), (Outcome::Fail, Reason::Fell)),
            ((-1.1, 1.0, 9.0, true), (Outcome::Fail, Reason::Fell)),
            ((0.0, 1.0, 2.0, true), (Outcome::CannotTell, Reason::TooShort)),
            ((1.1, 1.0, 2.0, false), (Outcome::CannotTell, Reason::Rose)),
        ] {
            assert_eq!(judge(case.0, case.1, case.2, case.3), wanted, "{case:?}");
        }
    }
}
