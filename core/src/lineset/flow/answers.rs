//! What to do about a line, in words.

use crate::charge::answers::answers;

answers! {
    /// What to do about a line, or to look at. The limits stand with the computation of each.
    LineAdvice {
        /// Nothing.
        Nothing = 1 "nothing" "Within usual limits at this flow: nothing to change on this evidence.";
        /// Liquid boils before the metering device.
        FlashGasExpected = 2 "flash-gas-expected"
            "Liquid boils in the line before it reaches the metering device, which then starves the coil: check the charge and the condenser first, look for a kink or a plugged drier, then consider a larger liquid line, fewer fittings or less lift.";
        /// The subcooling left lies within its uncertainty of none.
        FlashGasPossible = 3 "flash-gas-possible"
            "So little subcooling is left at the metering device that flash gas cannot be ruled out: look at a sight glass or measure the line's temperature and pressure at the device.";
        /// Friction.
        LiquidLineTooSmall = 4 "liquid-line-too-small"
            "Friction in the liquid line costs more than 1 K (2 degrees Fahrenheit) of subcooling: the line is small or long for this flow. A larger one holds more charge: weigh that in.";
        /// Hammer and noise.
        LiquidTooFast = 5 "liquid-too-fast"
            "The liquid moves faster than 1.5 m/s (300 ft/min): a valve that shuts quickly hammers, and the line may be heard.";
        /// Suction loss.
        SuctionLineTooSmall = 6 "suction-line-too-small"
            "The suction line loses more than 1.1 K (2 degrees Fahrenheit) of dew temperature, which costs capacity: a larger tube or fewer fittings, as far as a riser still carries oil.";
        /// Discharge loss.
        DischargeLineTooSmall = 7 "discharge-line-too-small"
            "The hot gas line loses more than 1.1 K (2 degrees Fahrenheit) of dew temperature, which costs compressor power: a larger tube or fewer fittings, as far as a riser still carries oil.";
        /// Noise.
        VaporTooFast = 8 "vapor-too-fast"
            "The vapour moves faster than is usual for this line: expect noise and wear at bends; a larger tube.";
        /// Slow.
        VaporTooSlow = 9 "vapor-too-slow"
            "The vapour moves slower than is usual for this line: oil may lie in it. Slope it towards the compressor and keep it free of low spots.";
        /// Oil.
        RiserTooSlow = 10 "riser-too-slow"
            "The vapour is too slow to carry oil up this riser: a smaller riser, or two in parallel, by the unit maker's instructions. The compressor runs out of oil otherwise.";
        /// Oil, within the uncertainty.
        RiserMarginal = 11 "riser-marginal"
            "The vapour carries oil up this riser by a small margin only: at part load or in cold weather it will not. Check at the lowest flow at which the unit runs.";
        /// Lift.
        LiftHigh = 12 "lift-high"
            "The height between the units exceeds 15 m (50 ft), beyond which makers commonly set limits: the limits of the unit rule, ask its maker.";
        /// Length.
        LineLong = 13 "line-long"
            "The line is longer than 24 m (80 ft): makers commonly ask for more than usual there, as a crankcase heater, a valve against drift of liquid, more oil. The limits of the unit rule, ask its maker.";
        /// Heat gain.
        InsulateLine = 14 "insulate-line"
            "The suction line warms the vapour by more than 5 K (9 degrees Fahrenheit): insulate it, or mend its insulation. Warm vapour costs capacity and runs the compressor hot, and the superheat read outdoors is not the coil's.";
        /// Sweating.
        SurfaceSweats = 15 "surface-sweats"
            "The surface is colder than the dew point of the air around it, so it will sweat and drip: thicker insulation, its joints closed against vapour.";
    }
}

answers! {
    /// What can hurt or mislead when a line is changed.
    LineCaution {
        /// Always.
        LicensedPractice = 1 "licensed-practice"
            "Work on refrigerant lines follows local codes and belongs to licensed practice.";
        /// Always.
        UnitMaker = 2 "unit-maker"
            "The unit maker's table of line sizes, lengths and heights comes before this estimate.";
        /// Where a change of the line is advised.
        OpenCircuit = 3 "open-circuit"
            "Before a line is cut: recover the refrigerant, and braze under flowing nitrogen. After it: pressure test with nitrogen and evacuate.";
        /// The refrigerant can burn.
        FlammableRefrigerant = 4 "flammable-refrigerant"
            "This refrigerant can burn: no flame or spark near an open circuit, fresh air, and a leak detector made for it.";
    }
}

/// A set of advice in the order of its numbers.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub(super) struct Chosen(u32);

impl Chosen {
    /// The same with `advice` where it applies.
    pub(super) const fn with(self, advice: LineAdvice, applies: bool) -> Self {
        if applies { Self(self.0 | 1_u32.wrapping_shl(advice.number() as u32)) } else { self }
    }

    /// As bits: bit `n` is the advice of number `n`; nothing where no other applies.
    pub(super) const fn bits(self) -> u32 {
        match self.0 {
            0 => 1_u32.wrapping_shl(LineAdvice::Nothing.number() as u32),
            bits => bits,
        }
    }
}

/// The advice of a set of bits.
pub(super) fn advice_in(bits: u32) -> impl Iterator<Item = LineAdvice> {
    LineAdvice::ALL.iter().copied().filter(move |advice| bits & 1_u32.wrapping_shl(advice.number() as u32) != 0)
}

/// The cautions that go with advice.
pub(super) fn cautions_with(advice: u32, flammable: bool) -> u32 {
    let changes = [
        LineAdvice::FlashGasExpected,
        LineAdvice::LiquidLineTooSmall,
        LineAdvice::LiquidTooFast,
        LineAdvice::SuctionLineTooSmall,
        LineAdvice::DischargeLineTooSmall,
        LineAdvice::VaporTooFast,
        LineAdvice::RiserTooSlow,
    ];
    let opens = advice_in(advice).any(|given| changes.contains(&given));
    let bit = |caution: LineCaution, applies: bool| if applies { 1_u32 << caution.number() } else { 0 };
    bit(LineCaution::LicensedPractice, true)
        | bit(LineCaution::UnitMaker, true)
        | bit(LineCaution::OpenCircuit, opens)
        | bit(LineCaution::FlammableRefrigerant, flammable)
}

/// The cautions of a set of bits.
pub(super) fn cautions_in(bits: u32) -> impl Iterator<Item = LineCaution> {
    LineCaution::ALL.iter().copied().filter(move |caution| bits & 1_u32.wrapping_shl(caution.number() as u32) != 0)
}
