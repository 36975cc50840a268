//! Which tables a finding was computed from.

use crate::saturation::{Piece, SaturationCurves, SaturationLine};
use alloc::format;
use alloc::string::String;

/// FNV-1a in 64 bits: a fingerprint that tells tables apart, no protection against forgery.
struct Fnv(u64);

impl Fnv {
    const fn new() -> Self {
        Self(0xcbf2_9ce4_8422_2325)
    }

    fn bytes(&mut self, bytes: &[u8]) {
        for byte in bytes {
            self.0 = (self.0 ^ u64::from(*byte)).wrapping_mul(0x0000_0100_0000_01b3);
        }
    }

    fn bits(&mut self, bits: u64) {
        self.bytes(&bits.to_le_bytes());
    }

    fn numbers(&mut self, numbers: &[f64]) {
        for number in numbers {
            self.bits(number.to_bits());
        }
    }

    fn pieces(&mut self, pieces: &[Piece]) {
        for piece in pieces {
            self.numbers(piece);
        }
    }

    fn line(&mut self, line: &SaturationLine) {
        let (pressure, temperature) = (&line.pressure, &line.temperature);
        self.numbers(&[pressure.lower, pressure.upper, pressure.lowest_pressure, pressure.highest_pressure]);
        self.numbers(&[pressure.steps_per_kelvin]);
        self.pieces(pressure.pieces);
        self.numbers(&[temperature.lower, temperature.upper]);
        self.numbers(&[temperature.lowest_temperature, temperature.highest_temperature]);
        self.bits(u64::from(temperature.octave_bits));
        self.bits(temperature.first_key);
        self.pieces(temperature.pieces);
    }
}

/// A fingerprint of a refrigerant's saturation tables: `fnv1a64:` and sixteen hexadecimal digits.
///
/// It is FNV-1a in 64 bits over, each number as the eight bytes of its IEEE 754 bits, the lowest byte first: the designation
/// (UTF-8); then of the bubble and then of the dew line, of the curve of pressure its lowest and highest temperature,
/// lowest and highest pressure, steps per kelvin and coefficients, and of the curve of temperature its lowest and highest
/// pressure, lowest and highest temperature, octave bits, first key and coefficients. It tells whether two findings rest
/// on the same tables; it is no proof against forgery.
///
/// ```
/// use satline::text::tables_fingerprint;
/// let fingerprint = tables_fingerprint(&satline::saturation::R410A);
/// assert!(fingerprint.starts_with("fnv1a64:") && fingerprint.len() == 24);
/// assert_ne!(fingerprint, tables_fingerprint(&satline::saturation::R32));
/// ```
#[must_use]
pub fn tables_fingerprint(curves: &SaturationCurves) -> String {
    let mut sum = Fnv::new();
    sum.bytes(curves.designation().as_bytes());
    sum.line(curves.bubble);
    sum.line(curves.dew);
    format!("fnv1a64:{:016x}", sum.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_sum_is_fnv_1a() {
        // Published examples of FNV-1a in 64 bits (from memory).
        for (text, expected) in
            [("", 0xcbf2_9ce4_8422_2325), ("a", 0xaf63_dc4c_8601_ec8c), ("foobar", 0x8594_4171_f739_67e8)]
        {
            let mut sum = Fnv::new();
            sum.bytes(text.as_bytes());
            assert_eq!(sum.0, expected);
        }
    }

    #[test]
    fn no_two_refrigerants_share_a_fingerprint() {
        let all: alloc::collections::BTreeSet<_> =
            crate::refrigerant::ALL.iter().map(|one| tables_fingerprint(one.curves)).collect();
        assert_eq!(all.len(), crate::refrigerant::ALL.len());
    }
}
