//! Temperature drop along a liquid line: a pressure drop shows as one only where the liquid flashes.
//!
//! At the first clamp there is liquid, so its pressure is at least the bubble pressure at its temperature. Where liquid
//! and vapour stand together at the second, the pressure there is at most the bubble pressure at its own temperature
//! (for a blend, less as more has evaporated). So the pressure fell by at least the difference of the two bubble
//! pressures. A line that stays subcooled hardly cools by losing pressure (0.05 K for 100 kPa of R-410A, less for others):
//! it cools or warms by heat exchange.

use super::standing::Uncertainty;
use crate::charge::answers::answers;
use crate::error::Error;
use crate::quantity::{Pressure, Temperature};
use crate::saturation::SaturationCurves;
use crate::uncertain::Uncertain;
use crate::uncertain::root_of_squares;

answers! {
    /// What is known of the line at the second clamp.
    Flash {
        /// Nothing.
        Unknown = 1 "unknown" "Whether the liquid flashes is not known.";
        /// It flashes.
        Flashing = 2 "flashing" "The liquid flashes: bubbles in a sight glass, a hiss, frost or sweat from there on.";
        /// It does not.
        Subcooled = 3 "subcooled" "The line is known to be subcooled at the second clamp.";
    }
}

answers! {
    /// What the two temperatures show.
    Outcome {
        /// A pressure drop of at least the stated amount.
        PressureDrop = 1 "pressure-drop"
            "The liquid flashes and cools: the pressure falls between the clamps by at least the amount stated. Look for a clogged drier, a kink or a half-closed valve between them.";
        /// That, if it flashes.
        DropIfFlashing = 2 "drop-if-flashing"
            "If the liquid flashes between the clamps, the pressure falls by at least the amount stated; if it stays subcooled, the line only loses heat. Look for bubbles, frost or sweat, or measure the pressure.";
        /// Heat exchange.
        HeatExchange = 3 "heat-exchange"
            "A line that stays subcooled cools or warms by heat exchange, hardly by losing pressure: its temperatures say nothing about its pressure.";
        /// No drop beyond the uncertainty.
        NoEvidence = 4 "no-evidence"
            "There is no drop of temperature beyond the uncertainty. That does not prove that nothing restricts the line: a subcooled liquid loses pressure with hardly any cooling.";
        /// Warmer.
        Warmed = 5 "warmed"
            "The line warms along its way, by heat from outside: that can hide a drop, and says nothing about the pressure.";
    }
}

answers! {
    /// What can hurt, or mislead.
    Caution {
        /// Always.
        LicensedPractice = 1 "licensed-practice"
            "Work on refrigerant circuits follows local codes and belongs to licensed practice.";
        /// Always.
        ClampsInAir = 2 "clamps-in-air"
            "Both clamps need clean metal and insulation: in hot or cold air each reads towards the air.";
        /// Flammable.
        FlammableRefrigerant = 3 "flammable-refrigerant"
            "This refrigerant can burn: no ignition source, fresh air, and a leak detector, before a drier is opened.";
    }
}

/// How many standard uncertainties a drop must exceed.
pub const COVERAGE: f64 = 2.0;

/// Two clamps on one line, in the direction of the flow.
#[derive(Debug, Clone, Copy)]
pub struct LineDrop {
    /// The refrigerant.
    pub refrigerant: &'static SaturationCurves,
    /// At the first clamp, where there is liquid only.
    pub upstream: Temperature,
    /// At the second.
    pub downstream: Temperature,
    /// What is known of the line at the second clamp.
    pub flash: Flash,
    /// One standard uncertainty of the difference of the two, K; else that of two thermometers with limits of error of
    /// 0.1 % and 1.3 °F. Two clamps compared on one tube beforehand are far better.
    pub difference_uncertainty_k: Option<f64>,
}

/// The answer.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct LineDropFinding {
    /// What it shows.
    pub outcome: Outcome,
    /// First less second temperature, K.
    pub temperature_drop_k: Uncertain,
    /// Least pressure drop where the liquid flashes, Pa: difference of the bubble pressures. Below zero where it warms.
    pub least_pressure_drop_pa: Uncertain,
    /// The same drop of temperature that would not have shown, K.
    pub smallest_drop_k: f64,
    /// Bubble pressure at the first clamp: the least pressure of the liquid there.
    pub upstream_bubble: Pressure,
    flammable: bool,
}

impl LineDropFinding {
    /// What can hurt or mislead, in the order of their numbers.
    pub fn cautions(&self) -> impl Iterator<Item = Caution> + '_ {
        let flammable = self.flammable;
        Caution::ALL.iter().copied().filter(move |caution| flammable || *caution != Caution::FlammableRefrigerant)
    }

    /// The cautions as a bit set: bit `n` stands for the caution with number `n`.
    #[must_use]
    pub fn caution_bits(&self) -> u32 {
        self.cautions().fold(0, |bits, caution| bits | 1_u32.wrapping_shl(caution.number() as u32))
    }
}

/// The least pressure drop that a drop of temperature along a line means, if it means one.
///
/// # Errors
/// [`Error::OutOfRange`] for temperatures outside the refrigerant's curves and uncertainties outside
/// [`crate::bounds::TEMPERATURE_UNCERTAINTY`].
///
/// ```
/// use satline::quantity::Temperature;
/// use satline::saturation::R410A;
/// use satline::visit::line_drop::{Flash, LineDrop, Outcome, line_temperature_drop};
/// // Demo: 95 °F before the drier, 89 °F and a hiss after it, two clamps matched to 0.5 °F.
/// let found = line_temperature_drop(&LineDrop {
///     refrigerant: &R410A,
///     upstream: Temperature::from_fahrenheit(95.0)?,
///     downstream: Temperature::from_fahrenheit(89.0)?,
///     flash: Flash::Flashing,
///     difference_uncertainty_k: Some(0.28),
/// })?;
/// assert_eq!(found.outcome, Outcome::PressureDrop);
/// assert!((found.least_pressure_drop_pa.value - 173e3).abs() < 1e3);
/// # Ok::<(), satline::Error>(())
/// ```
pub fn line_temperature_drop(line: &LineDrop) -> Result<LineDropFinding, Error> {
    let curves = line.refrigerant;
    let upstream_bubble = curves.bubble_pressure(line.upstream)?;
    let downstream_bubble = curves.bubble_pressure(line.downstream)?;
    let uncertainty = match line.difference_uncertainty_k {
        Some(value) => crate::bounds::TEMPERATURE_UNCERTAINTY.check(value)?,
        None => {
            let of = |at| Uncertainty::given(None, None, at).map(|uncertainty| uncertainty.temperature_k);
            root_of_squares([of(line.upstream)?, of(line.downstream)?])
        }
    };
    let drop = line.upstream.kelvin() - line.downstream.kelvin();
    // What is uncertain is the difference; the level at which the curve is read matters little.
    let per_kelvin = 1.0 / curves.bubble_temperature_slope(downstream_bubble)?;
    let smallest = COVERAGE * uncertainty;
    Ok(LineDropFinding {
        outcome: match line.flash {
            Flash::Subcooled => Outcome::HeatExchange,
            _ if drop < -smallest => Outcome::Warmed,
            _ if drop <= smallest => Outcome::NoEvidence,
            Flash::Flashing => Outcome::PressureDrop,
            Flash::Unknown => Outcome::DropIfFlashing,
        },
        temperature_drop_k: Uncertain::new(drop, uncertainty)?,
        least_pressure_drop_pa: Uncertain::new(
            upstream_bubble.pascals() - downstream_bubble.pascals(),
            per_kelvin * uncertainty,
        )?,
        smallest_drop_k: smallest,
        upstream_bubble,
        flammable: curves.identity.safety_class.is_flammable(),
    })
}
