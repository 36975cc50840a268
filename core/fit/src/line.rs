//! One end of the saturation line of one refrigerant: both curves, as compact as their error budget allows.

use crate::piece;
use satline::Error;
use satline::eos::{End, Mixture};
use satline::saturation::{PressureCurve, SaturationLine, TemperatureCurve};

/// What one curve may be wrong by. A round trip adds the errors of two curves, so each gets about half of the promised
/// 20 µK and 1 ppm.
pub const TEMPERATURE_BUDGET: f64 = 8e-6;
/// Relative error of a pressure. At the flattest part of the line, 2 % a kelvin, this is 10 µK.
pub const PRESSURE_BUDGET: f64 = 2e-7;

/// Arguments per piece at which a fitted curve is compared with the equation of state, joints included.
const SAMPLES: u32 = 24;

/// A fitted line with its measured errors.
pub struct Fitted {
    pub line: SaturationLine,
    /// Worst |relative error| of pressure.
    pub pressure_error: f64,
    /// Worst |error| of temperature, K.
    pub temperature_error: f64,
}

impl Fitted {
    /// Bytes of coefficients.
    pub fn bytes(&self) -> usize {
        size_of_val(self.line.pressure.pieces) + size_of_val(self.line.temperature.pieces)
    }
}

fn saturation_pressure(mixture: &Mixture, end: End, temperature: f64) -> Result<f64, Error> {
    mixture.at_temperature(end, temperature).map(|point| point.pressure)
}

fn saturation_temperature(mixture: &Mixture, end: End, pressure: f64) -> Result<f64, Error> {
    mixture.at_pressure(end, pressure).map(|point| point.temperature)
}

/// Fits both curves between two temperatures.
pub fn fit(mixture: &Mixture, end: End, lower: f64, upper: f64) -> Result<Fitted, String> {
    let said = |error: Error| format!("{} {end:?}: {error}", mixture.model().identity.designation);
    let (pressure, pressure_error) = fit_pressure(mixture, end, lower, upper).map_err(said)?;
    let (temperature, temperature_error) = fit_temperature(mixture, end, &pressure).map_err(said)?;
    if !(pressure_error <= PRESSURE_BUDGET && temperature_error <= TEMPERATURE_BUDGET) {
        return Err(format!(
            "{} {end:?}: no division of the range keeps the error budget: {pressure_error:e}, {temperature_error:e} K",
            mixture.model().identity.designation
        ));
    }
    Ok(Fitted { line: SaturationLine { pressure, temperature }, pressure_error, temperature_error })
}

/// The coarsest even steps of temperature that keep the budget.
fn fit_pressure(mixture: &Mixture, end: End, lower: f64, upper: f64) -> Result<(PressureCurve, f64), Error> {
    let mut best = None;
    for steps_per_kelvin in [1.0 / 16.0, 1.0 / 8.0, 1.0 / 4.0, 1.0 / 2.0, 1.0] {
        let pieces = piece::even(lower, upper, steps_per_kelvin, |t| saturation_pressure(mixture, end, t))?;
        let mut curve = PressureCurve {
            lower,
            upper,
            lowest_pressure: 0.0,
            highest_pressure: f64::INFINITY,
            steps_per_kelvin,
            pieces: pieces.leak(),
        };
        (curve.lowest_pressure, curve.highest_pressure) = (curve.at(lower)?, curve.at(upper)?);
        let error =
            worst(
                lower,
                upper,
                curve.pieces.len(),
                |t| Ok(curve.at(t)? / saturation_pressure(mixture, end, t)? - 1.0),
            )?;
        let good = error <= PRESSURE_BUDGET;
        best = Some((curve, error));
        if good {
            break;
        }
    }
    best.ok_or(Error::BadComposition { reason: "no steps were tried" })
}

/// The coarsest division of the octaves of pressure that keeps the budget.
fn fit_temperature(mixture: &Mixture, end: End, inverse: &PressureCurve) -> Result<(TemperatureCurve, f64), Error> {
    let (lower, upper) = (inverse.lowest_pressure, inverse.highest_pressure);
    let mut best = None;
    for octave_bits in 0..=6_u32 {
        let shift = 52 - octave_bits;
        let (first_key, last_key) = (lower.to_bits() >> shift, upper.to_bits() >> shift);
        let mut pieces = Vec::new();
        for key in first_key..=last_key {
            let (from, to) = (f64::from_bits(key << shift), f64::from_bits((key + 1) << shift));
            let (low, high) = (from.max(lower), to.min(upper));
            if low < high {
                pieces.push(piece::fit(from, to, low, high, |p| saturation_temperature(mixture, end, p))?);
            }
        }
        let curve = TemperatureCurve {
            lower,
            upper,
            lowest_temperature: inverse.lower,
            highest_temperature: inverse.upper,
            octave_bits,
            first_key,
            pieces: pieces.leak(),
        };
        let error = worst(lower.ln(), upper.ln(), curve.pieces.len(), |ln_p| {
            let pressure = ln_p.exp().clamp(lower, upper);
            Ok(curve.at(pressure)? - saturation_temperature(mixture, end, pressure)?)
        })?;
        let good = error <= TEMPERATURE_BUDGET;
        best = Some((curve, error));
        if good {
            break;
        }
    }
    best.ok_or(Error::BadComposition { reason: "no division was tried" })
}

/// Worst absolute value of `error` over an even sweep with a fixed number of samples a piece.
pub fn worst(
    lower: f64,
    upper: f64,
    pieces: usize,
    mut error: impl FnMut(f64) -> Result<f64, Error>,
) -> Result<f64, Error> {
    let count = u32::try_from(pieces).unwrap_or(u32::MAX).saturating_mul(SAMPLES);
    let mut worst: f64 = 0.0;
    for index in 0..=count {
        let argument = lower + (upper - lower) * f64::from(index) / f64::from(count);
        worst = worst.max(error(argument.clamp(lower, upper))?.abs());
    }
    Ok(worst)
}
