//! Evaluation of one curve: no division, no transcendental function, no panic.

use crate::bounds;
use crate::error::Error;

/// Degree of the polynomial in each piece.
pub const DEGREE: usize = 5;

/// Coefficients of one piece, lowest power first, in a local variable from −1 to 1.
pub type Piece = [f64; DEGREE + 1];

/// Bits of the mantissa of a 64-bit float.
const MANTISSA_BITS: u32 = 52;
/// The exponent bits of 1.0.
const ONE: u64 = 0x3FF0_0000_0000_0000;

#[inline]
fn horner(piece: &Piece, local: f64) -> f64 {
    let [c0, c1, c2, c3, c4, c5] = *piece;
    c0 + local * (c1 + local * (c2 + local * (c3 + local * (c4 + local * c5))))
}

#[inline]
fn horner_slope(piece: &Piece, local: f64) -> f64 {
    let [_, c1, c2, c3, c4, c5] = *piece;
    c1 + local * (2.0 * c2 + local * (3.0 * c3 + local * (4.0 * c4 + local * (5.0 * c5))))
}

/// A saturated property as a function of temperature, in octaves of the distance from the critical temperature: there the
/// properties bend most, and pieces that shrink towards it keep one accuracy all along.
#[derive(Debug)]
pub struct PropertyCurve {
    /// Lowest temperature, K.
    pub lower: f64,
    /// Highest temperature, K.
    pub upper: f64,
    /// The temperature from which the distance counts, K; above the highest.
    pub end: f64,
    /// An octave of distance is divided into two to this power of pieces.
    pub octave_bits: u32,
    /// The leading bits (exponent and top mantissa bits) of the distance in the first piece.
    pub first_key: u64,
    /// The polynomials, from the highest temperature down.
    pub pieces: &'static [Piece],
}

impl PropertyCurve {
    /// The property at a temperature in kelvin.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] or [`Error::NotFinite`].
    #[inline]
    pub fn at(&self, temperature: f64) -> Result<f64, Error> {
        let found = if temperature >= self.lower && temperature <= self.upper {
            in_octaves(self.end - temperature, self.octave_bits, self.first_key, self.pieces)
        } else {
            None
        };
        match found {
            Some((piece, local)) => Ok(horner(piece, local)),
            None => Err(refuse_temperature(temperature, self.lower, self.upper)),
        }
    }
}

/// The piece of a positive argument whose leading bits number the pieces, and its local variable.
#[inline]
fn in_octaves(argument: f64, octave_bits: u32, first_key: u64, pieces: &[Piece]) -> Option<(&Piece, f64)> {
    let bits = argument.to_bits();
    let octave_bits = octave_bits.min(16);
    let piece = pieces.get((bits >> (MANTISSA_BITS - octave_bits)).wrapping_sub(first_key) as usize)?;
    // What is left of the mantissa below the piece's leading bits, moved up to the top: 1 to 2 across the piece.
    let rest = (bits << octave_bits) & ((1 << MANTISSA_BITS) - 1);
    Some((piece, 2.0 * (f64::from_bits(ONE | rest) - 1.5)))
}

#[inline]
fn in_even_steps(
    lower: f64,
    upper: f64,
    steps_per_kelvin: f64,
    pieces: &[Piece],
    temperature: f64,
) -> Result<f64, Error> {
    if !(temperature >= lower && temperature <= upper) {
        return Err(refuse_temperature(temperature, lower, upper));
    }
    let steps = (temperature - lower) * steps_per_kelvin;
    // The last piece also serves the upper limit itself, where the index may be one past it.
    let index = (steps as usize).min(pieces.len().saturating_sub(1));
    let Some(piece) = pieces.get(index) else {
        return Err(refuse_temperature(temperature, lower, upper));
    };
    Ok(horner(piece, 2.0 * (steps - index as f64) - 1.0))
}

#[cold]
fn refuse_temperature(value: f64, lower: f64, upper: f64) -> Error {
    bounds::refuse(
        "saturation temperature",
        "K",
        value,
        lower,
        upper,
        "above it the refrigerant has no saturated state or is too near its critical point; check the unit and the refrigerant",
    )
}

/// Saturation pressure as a function of temperature, in even steps of temperature.
#[derive(Debug)]
pub struct PressureCurve {
    /// Lowest temperature, K.
    pub lower: f64,
    /// Highest temperature, K.
    pub upper: f64,
    /// Lowest pressure of the line, Pa: results stay within these, so that a round trip is always accepted.
    pub lowest_pressure: f64,
    /// Highest pressure of the line, Pa.
    pub highest_pressure: f64,
    /// Steps per kelvin: a power of two, so that multiplying by it is exact.
    pub steps_per_kelvin: f64,
    /// The polynomials, from the lowest temperature up.
    pub pieces: &'static [Piece],
}

impl PressureCurve {
    /// Pressure in pascals at a temperature in kelvin.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] or [`Error::NotFinite`].
    #[inline]
    pub fn at(&self, temperature: f64) -> Result<f64, Error> {
        let pressure = in_even_steps(self.lower, self.upper, self.steps_per_kelvin, self.pieces, temperature)?;
        Ok(pressure.clamp_to(self.lowest_pressure, self.highest_pressure))
    }
}

/// Saturation temperature as a function of pressure, in even steps of the mantissa within each octave of pressure.
#[derive(Debug)]
pub struct TemperatureCurve {
    /// Lowest pressure, Pa.
    pub lower: f64,
    /// Highest pressure, Pa.
    pub upper: f64,
    /// Lowest temperature of the line, K: results stay within these, so that a round trip is always accepted.
    pub lowest_temperature: f64,
    /// Highest temperature of the line, K.
    pub highest_temperature: f64,
    /// An octave is divided into two to this power of pieces.
    pub octave_bits: u32,
    /// The leading bits (exponent and top mantissa bits) of the first piece.
    pub first_key: u64,
    /// The polynomials, from the lowest pressure up.
    pub pieces: &'static [Piece],
}

impl TemperatureCurve {
    /// Temperature in kelvin at an absolute pressure in pascals.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] or [`Error::NotFinite`].
    #[inline]
    pub fn at(&self, pressure: f64) -> Result<f64, Error> {
        let (piece, local) = self.locate(pressure)?;
        Ok(horner(piece, local).clamp_to(self.lowest_temperature, self.highest_temperature))
    }

    /// Slope in kelvin per pascal at an absolute pressure in pascals.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] or [`Error::NotFinite`].
    pub fn slope_at(&self, pressure: f64) -> Result<f64, Error> {
        let (piece, local) = self.locate(pressure)?;
        // Half the width of the piece: its octave's start, over two to the power of octave_bits + 1.
        let octave = f64::from_bits(pressure.to_bits() & !((1 << MANTISSA_BITS) - 1));
        Ok(horner_slope(piece, local) * f64::from(2_u32 << self.octave_bits.min(16)) / octave)
    }

    #[inline]
    fn locate(&self, pressure: f64) -> Result<(&'static Piece, f64), Error> {
        if !(pressure >= self.lower && pressure <= self.upper) {
            return Err(self.refuse(pressure));
        }
        in_octaves(pressure, self.octave_bits, self.first_key, self.pieces).ok_or_else(|| self.refuse(pressure))
    }

    #[cold]
    fn refuse(&self, value: f64) -> Error {
        bounds::refuse(
            "absolute pressure",
            "Pa",
            value,
            self.lower,
            self.upper,
            "check the unit, gauge against absolute, and that this is the refrigerant in the unit",
        )
    }
}

/// `f64::clamp` can panic; this cannot.
trait ClampTo {
    fn clamp_to(self, lower: f64, upper: f64) -> f64;
}

impl ClampTo for f64 {
    #[inline]
    fn clamp_to(self, lower: f64, upper: f64) -> f64 {
        if self < lower {
            lower
        } else if self > upper {
            upper
        } else {
            self
        }
    }
}
