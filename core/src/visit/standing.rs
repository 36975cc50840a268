//! The standing-pressure check: a bottle, or a unit at rest, of known temperature, its pressure against bubble and dew.
//!
//! Once everything that holds liquid has come to one temperature, the pressure lies between dew and bubble pressure: at
//! the bubble pressure where the vessel is nearly full of liquid, at the dew pressure where the liquid is nearly gone.
//! Above the band something else is in there, mostly air; below it there is no liquid left or another refrigerant. (Li
//! and Braun's standing test for non-condensables; the rest is thermodynamics.)

pub use super::answers::{Advice, Cause, Caution, Liquid, Outcome, Reason};
use crate::bounds;
use crate::error::Error;
use crate::quantity::{KELVIN_PER_FAHRENHEIT, PASCALS_PER_PSI, Pressure, Temperature, fahrenheit_from_kelvin};
use crate::saturation::SaturationCurves;
use crate::uncertain::root_of_squares;

/// How many standard uncertainties a pressure may lie outside the band before it counts as outside.
pub const COVERAGE: f64 = 2.0;

/// One standard uncertainty of a bubble or dew pressure, as a share of it: for the mixture models and for what a
/// composition may be off within its tolerance. An allowance of our own, not a published figure.
pub const PROPERTY_ALLOWANCE: f64 = 0.005;

/// By how much, in kelvin, the temperatures of the parts that hold liquid may differ where nothing else is said.
pub const DEFAULT_LARGEST_SPREAD_K: f64 = 1.0;

/// Limit of error of the gauge where none is given, psi (California Title 24, RA3.2, 2013, suction; from memory).
const GAUGE_LIMIT_PSI: f64 = 3.5;
/// Limit of error of the thermometer where none is given, share of its Fahrenheit value and °F (RA3.2, 2008).
const THERMOMETER_LIMIT: (f64, f64) = (0.001, 1.3);
/// √3: a limit of error read as a rectangular distribution has its standard uncertainty there.
const SQRT_3: f64 = 1.732_050_807_568_877_2;

/// What is measured, and how well.
#[derive(Debug, Clone, Copy)]
pub struct Standing<'a> {
    /// The refrigerant that should be inside.
    pub refrigerant: &'static SaturationCurves,
    /// The pressure, absolute.
    pub pressure: Pressure,
    /// The temperature of every part that may hold liquid: for a bottle its wall below the level, for a unit both coils,
    /// the compressor's shell and the receiver.
    pub temperatures: &'a [Temperature],
    /// What is known of the liquid.
    pub liquid: Liquid,
    /// One standard uncertainty of the pressure, Pa; else that of a gauge with a limit of error of 3.5 psi.
    pub pressure_uncertainty_pa: Option<f64>,
    /// One standard uncertainty of each temperature, K; else that of a thermometer with a limit of error of 0.1 % of its
    /// Fahrenheit value and 1.3 °F.
    pub temperature_uncertainty_k: Option<f64>,
    /// By how much the temperatures may differ, K; beyond it nothing is judged. [`DEFAULT_LARGEST_SPREAD_K`] if none.
    pub largest_spread_k: Option<f64>,
}

impl<'a> Standing<'a> {
    /// A check with nothing known of the liquid and default uncertainties.
    #[must_use]
    pub const fn new(
        refrigerant: &'static SaturationCurves,
        pressure: Pressure,
        temperatures: &'a [Temperature],
    ) -> Self {
        Self {
            refrigerant,
            pressure,
            temperatures,
            liquid: Liquid::Unknown,
            pressure_uncertainty_pa: None,
            temperature_uncertainty_k: None,
            largest_spread_k: None,
        }
    }
}

/// A pressure with its uncertainty.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Estimate {
    /// Pa.
    pub value_pa: f64,
    /// One standard uncertainty, Pa.
    pub standard_uncertainty_pa: f64,
}

/// Partial pressure of non-condensables, should they be the cause.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PartialPressure {
    /// Pressure less bubble pressure: what it is where most of the refrigerant is liquid. Gas dissolved in the liquid is
    /// not counted.
    pub estimate: Estimate,
    /// Pressure less dew pressure, Pa: what it is where the liquid is nearly gone. The same as the estimate for a pure
    /// refrigerant, and where most is known to be liquid.
    pub at_most_pa: f64,
}

/// Most causes that a finding names.
pub const CAUSES_MAX: usize = 4;

/// The answer.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct StandingFinding {
    /// How the pressure compares.
    pub outcome: Outcome,
    /// Why.
    pub reason: Reason,
    causes: [Option<Cause>; CAUSES_MAX],
    /// What to do.
    pub advice: Advice,
    cautions: u32,
    /// The temperature by which it is judged, that of the coldest part, K.
    pub temperature_k: f64,
    /// One standard uncertainty of that temperature, the differences between the parts included, K.
    pub temperature_uncertainty_k: f64,
    /// Warmest less coldest part, K.
    pub spread_k: f64,
    /// Bubble pressure at that temperature; its uncertainty is that of its comparison with the measured pressure.
    pub bubble: Estimate,
    /// Dew pressure at that temperature, likewise.
    pub dew: Estimate,
    /// Bubble temperature at the measured pressure less that temperature, K: how far off the pressure is, as a
    /// temperature. None where the pressure lies outside the refrigerant's curve.
    pub above_bubble_k: Option<f64>,
    /// Where the pressure is in excess: partial pressure of non-condensables, should they be the cause.
    pub non_condensables: Option<PartialPressure>,
    /// Where the pressure fits: a partial pressure of non-condensables up to this, Pa, would not have shown.
    pub unseen_at_most_pa: Option<f64>,
}

impl StandingFinding {
    /// What could be behind it, most likely first; nothing where the pressure fits.
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

/// One standard uncertainty of a gauge and of a thermometer.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Uncertainty {
    /// Pa.
    pub pressure_pa: f64,
    /// K.
    pub temperature_k: f64,
}

impl Uncertainty {
    /// What is given, or the default of instruments at that temperature.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] or [`Error::NotFinite`] outside [`bounds::PRESSURE_UNCERTAINTY`] or
    /// [`bounds::TEMPERATURE_UNCERTAINTY`].
    pub fn given(pressure_pa: Option<f64>, temperature_k: Option<f64>, at: Temperature) -> Result<Self, Error> {
        let (share, limit) = THERMOMETER_LIMIT;
        let fahrenheit = (share * fahrenheit_from_kelvin(at.kelvin())).abs() + limit;
        Ok(Self {
            pressure_pa: match pressure_pa {
                Some(value) => bounds::PRESSURE_UNCERTAINTY.check(value)?,
                None => GAUGE_LIMIT_PSI * PASCALS_PER_PSI / SQRT_3,
            },
            temperature_k: match temperature_k {
                Some(value) => bounds::TEMPERATURE_UNCERTAINTY.check(value)?,
                None => fahrenheit * KELVIN_PER_FAHRENHEIT / SQRT_3,
            },
        })
    }
}

/// Compares a standing pressure with what the refrigerant's would be.
///
/// Temperatures that differ by no more than allowed are judged by the coldest, since the coldest liquid sets the
/// pressure, and their difference widens its uncertainty; beyond that nothing is judged. Outside the band means by more
/// than [`COVERAGE`] standard uncertainties of gauge, thermometer and properties ([`PROPERTY_ALLOWANCE`]) together.
///
/// # Errors
/// [`Error::OutOfRange`] or [`Error::NotFinite`] for no or too many temperatures ([`bounds::TEMPERATURE_COUNT`]), for
/// a coldest temperature outside the refrigerant's curves (above its critical temperature there is no liquid), and for
/// uncertainties and spread outside their bounds.
///
/// ```
/// use satline::quantity::{Atmosphere, Pressure, Temperature};
/// use satline::saturation::R134A;
/// use satline::visit::standing::{Advice, Cause, Outcome, Standing, standing_check};
/// // A bottle of R-134a (demo) at 24 °C that shows 6.5 bar gauge; 5.45 bar would be right.
/// let pressure = Pressure::from_pascals(650e3 + Atmosphere::STANDARD.pascals())?;
/// let found = standing_check(&Standing::new(&R134A, pressure, &[Temperature::from_celsius(24.0)?]))?;
/// assert_eq!((found.outcome, found.advice), (Outcome::Excess, Advice::RecoverEvacuateRecharge));
/// assert_eq!(found.causes().next(), Some(Cause::NonCondensables));
/// let air = found.non_condensables.unwrap().estimate;
/// assert!((air.value_pa - 105e3).abs() < 2e3 && air.standard_uncertainty_pa < 20e3);
/// # Ok::<(), satline::Error>(())
/// ```
pub fn standing_check(check: &Standing<'_>) -> Result<StandingFinding, Error> {
    bounds::TEMPERATURE_COUNT.check(check.temperatures.len() as f64)?;
    let kelvins = || check.temperatures.iter().map(|temperature| temperature.kelvin());
    let coldest = Temperature::from_kelvin(kelvins().fold(f64::INFINITY, f64::min))?;
    let spread = kelvins().fold(0.0, f64::max) - coldest.kelvin();
    let largest = match check.largest_spread_k {
        Some(value) => bounds::TEMPERATURE_SPREAD.check(value)?,
        None => DEFAULT_LARGEST_SPREAD_K,
    };
    let mut uncertainty = Uncertainty::given(check.pressure_uncertainty_pa, check.temperature_uncertainty_k, coldest)?;
    // A part that is warmer may still hold liquid: a limit of error like any other.
    uncertainty.temperature_k = root_of_squares([uncertainty.temperature_k, spread / SQRT_3]);
    let band = Band::at(check.refrigerant, coldest, uncertainty)?;
    let (outcome, reason) = if spread > largest {
        (Outcome::NotJudged, Reason::TemperaturesUnequal)
    } else {
        band.judge(check.pressure.pascals(), check.liquid)
    };
    Ok(band.finding(check, coldest, spread, uncertainty, outcome, reason))
}

/// Bubble and dew pressure with the uncertainty of a comparison.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Band {
    bubble: Estimate,
    dew: Estimate,
}

impl Band {
    fn at(curves: &SaturationCurves, temperature: Temperature, uncertainty: Uncertainty) -> Result<Self, Error> {
        let (bubble, dew) = (curves.bubble_pressure(temperature)?, curves.dew_pressure(temperature)?);
        // The slope of a pressure is one over that of the temperature.
        let of = |pressure: Pressure, slope: f64| Estimate {
            value_pa: pressure.pascals(),
            standard_uncertainty_pa: root_of_squares([
                uncertainty.pressure_pa,
                uncertainty.temperature_k / slope,
                PROPERTY_ALLOWANCE * pressure.pascals(),
            ]),
        };
        Ok(Self {
            bubble: of(bubble, curves.bubble_temperature_slope(bubble)?),
            dew: of(dew, curves.dew_temperature_slope(dew)?),
        })
    }

    fn judge(&self, pressure: f64, liquid: Liquid) -> (Outcome, Reason) {
        let most = liquid == Liquid::Most;
        if pressure > self.bubble.value_pa + COVERAGE * self.bubble.standard_uncertainty_pa {
            return (Outcome::Excess, Reason::AboveBubble);
        }
        let lower = self.lower(liquid);
        match (pressure < lower.value_pa - COVERAGE * lower.standard_uncertainty_pa, most) {
            (true, true) => (Outcome::TooLow, Reason::BelowBubble),
            (true, false) => (Outcome::TooLow, Reason::BelowDew),
            (false, true) => (Outcome::Consistent, Reason::AtBubble),
            (false, false) => (Outcome::Consistent, Reason::WithinBand),
        }
    }

    /// The lowest pressure of the refrigerant alone.
    fn lower(&self, liquid: Liquid) -> Estimate {
        if liquid == Liquid::Most { self.bubble } else { self.dew }
    }

    fn finding(
        &self,
        check: &Standing<'_>,
        temperature: Temperature,
        spread: f64,
        uncertainty: Uncertainty,
        outcome: Outcome,
        reason: Reason,
    ) -> StandingFinding {
        let pressure = check.pressure.pascals();
        let lower = self.lower(check.liquid);
        let blend = check.refrigerant.identity.components.len() > 1;
        let subcooling = check.refrigerant.subcooling(temperature, check.pressure);
        StandingFinding {
            outcome,
            reason,
            causes: causes(outcome, check.liquid, blend),
            advice: match (outcome, check.liquid) {
                (Outcome::Consistent, _) => Advice::Nothing,
                (Outcome::Excess, _) => Advice::RecoverEvacuateRecharge,
                (Outcome::TooLow, Liquid::Unknown) => Advice::FindLeak,
                (Outcome::TooLow, _) => Advice::Identify,
                (Outcome::NotJudged, _) => Advice::WaitForOneTemperature,
            },
            cautions: cautions(outcome, check.refrigerant.identity.safety_class.is_flammable(), blend),
            temperature_k: temperature.kelvin(),
            temperature_uncertainty_k: uncertainty.temperature_k,
            spread_k: spread,
            bubble: self.bubble,
            dew: self.dew,
            above_bubble_k: subcooling.ok().map(|difference| difference.kelvin()),
            non_condensables: (outcome == Outcome::Excess).then_some(PartialPressure {
                estimate: Estimate {
                    value_pa: pressure - self.bubble.value_pa,
                    standard_uncertainty_pa: self.bubble.standard_uncertainty_pa,
                },
                at_most_pa: pressure - lower.value_pa,
            }),
            unseen_at_most_pa: (outcome == Outcome::Consistent)
                .then(|| (pressure - lower.value_pa + COVERAGE * lower.standard_uncertainty_pa).max(0.0)),
        }
    }
}

fn causes(outcome: Outcome, liquid: Liquid, blend: bool) -> [Option<Cause>; CAUSES_MAX] {
    let shifted = blend.then_some(Cause::CompositionShifted);
    match (outcome, liquid) {
        (Outcome::Consistent | Outcome::NotJudged, _) => [None; CAUSES_MAX],
        (Outcome::Excess, _) => [
            Some(Cause::NonCondensables),
            Some(Cause::OtherRefrigerant),
            Some(Cause::WarmerPart),
            Some(Cause::FullOfLiquid),
        ],
        // Where nothing is known of the liquid, an empty bottle is far commoner than a wrong one.
        (Outcome::TooLow, Liquid::Unknown) => {
            [Some(Cause::NoLiquid), Some(Cause::OtherRefrigerant), Some(Cause::ColderPart), shifted]
        }
        (Outcome::TooLow, _) => [Some(Cause::OtherRefrigerant), Some(Cause::ColderPart), shifted, None],
    }
}

fn cautions(outcome: Outcome, flammable: bool, blend: bool) -> u32 {
    let doubtful = matches!(outcome, Outcome::Excess | Outcome::TooLow);
    [
        (Caution::LicensedPractice, true),
        (Caution::Pressure, true),
        (Caution::NotIdentified, true),
        (Caution::FlammableRefrigerant, flammable),
        (Caution::TreatAsFlammable, doubtful),
        (Caution::NeverPurge, outcome == Outcome::Excess),
        (Caution::MayBeFullOfLiquid, outcome == Outcome::Excess),
        (Caution::BlendMayHaveShifted, blend && outcome != Outcome::NotJudged),
    ]
    .into_iter()
    .filter(|(_, given)| *given)
    .fold(0, |bits, (caution, _)| bits | bit(caution))
}
