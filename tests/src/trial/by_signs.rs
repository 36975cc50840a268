//! A rival: a table of signs, the nearest row of which is the answer.

use super::expected::Expected;
use super::features::fixed;
use super::judge::{Call, Judge};
use super::row::Row;
use satline::diagnosis::{Cause, CauseSet};

/// Standard deviations of healthy units beyond which a deviation has a sign.
const SIGNED: f64 = 1.5;

/// Evaporating temperature, superheat, condensing temperature, subcooling, discharge temperature, warming of the outdoor
/// air, split.
type Signs = [i8; 7];

/// A unit with a fixed orifice: published (Rossi and Braun, a rooftop unit, as tabulated by Purdue); too much refrigerant
/// as the reverse of too little (common practice).
const ORIFICE: [(Cause, Signs); 6] = [
    (Cause::Undercharge, [-1, 1, -1, -1, 1, -1, -1]),
    (Cause::Overcharge, [1, -1, 1, 1, -1, 1, 1]),
    (Cause::CompressorLeakage, [1, -1, -1, -1, 0, -1, -1]),
    (Cause::LiquidLineRestriction, [-1, 1, -1, 1, 1, -1, -1]),
    (Cause::RestrictedCondenserAir, [1, -1, 1, -1, 1, 1, -1]),
    (Cause::LowIndoorAirflow, [-1, -1, -1, -1, -1, -1, 1]),
];

/// A unit with a valve: signs of measured slopes (NIST); the air's sides as in the other table, and compressor leakage and
/// a restriction from there too (common practice).
const VALVE: [(Cause, Signs); 6] = [
    (Cause::Undercharge, [-1, 1, -1, -1, 1, -1, -1]),
    (Cause::Overcharge, [-1, -1, 1, 1, 1, 1, 1]),
    (Cause::CompressorLeakage, [1, -1, -1, -1, 0, -1, -1]),
    (Cause::LiquidLineRestriction, [-1, 1, -1, 1, 1, -1, -1]),
    (Cause::RestrictedCondenserAir, [1, 1, 1, 1, 1, 1, -1]),
    (Cause::LowIndoorAirflow, [-1, -1, -1, -1, -1, -1, 1]),
];

/// The table's judge.
#[derive(Debug, Clone)]
pub struct BySigns<'a>(pub &'a Expected);

impl Judge for BySigns<'_> {
    fn name(&self) -> &'static str {
        "sign table"
    }

    fn judge(&self, row: &Row, with_baseline: bool) -> Call {
        let scaled = self.0.scaled(&row.reading, with_baseline.then_some(&row.baseline));
        let sign = |value: Option<f64>| value.map(|value| i8::from(value > SIGNED) - i8::from(value < -SIGNED));
        let signs: [Option<i8>; 7] = std::array::from_fn(|place| sign(scaled[place]));
        if signs.iter().flatten().all(|sign| *sign == 0) {
            return Call::standing(CauseSet::HEALTHY);
        }
        let table = if fixed(&row.reading) { &ORIFICE } else { &VALVE };
        let distance = |other: &Signs| {
            signs.iter().zip(other).filter_map(|(one, two)| Some((*one)?.abs_diff(*two))).map(u32::from).sum::<u32>()
        };
        let nearest = table.iter().map(|(_, other)| distance(other)).min().unwrap_or(0);
        let mut near = table.iter().filter(|(_, other)| distance(other) == nearest);
        match (near.next(), near.next()) {
            (Some((cause, _)), None) => Call::standing(CauseSet::one(*cause)),
            // Two rows as near: it cannot tell.
            _ => Call::default(),
        }
    }
}
