//! What a question about a line set and its answer are made of, in words.

use crate::charge::answers::answers;

answers! {
    /// What a line carries.
    LinePhase {
        /// Liquid: the small line where the metering device is indoors.
        Liquid = 1 "liquid" "The line carries liquid.";
        /// Vapour: the large line.
        Vapor = 2 "vapor" "The line carries vapour.";
    }
}

answers! {
    /// What to do with the charge for a line set.
    ChargeAction {
        /// Longer than the factory charge covers.
        Add = 1 "add" "Add this much to the factory charge.";
        /// Shorter than the factory charge covers.
        Recover = 2 "recover"
            "Recover this much into a cylinder: the factory charge covers more than this line set holds. Never vent it.";
        /// Less than its uncertainty.
        Nothing = 3 "nothing" "Leave the factory charge as it is: what the line set wants is less than its uncertainty.";
    }
}

answers! {
    /// What to check of the figures.
    ChargeAdvice {
        /// The maker's figure and the computed one agree, or there is no maker's figure.
        WeighThenVerify = 1 "weigh-then-verify"
            "Weigh it on a scale, then verify the charge by subcooling or superheat as the unit's label says.";
        /// No maker's figure was given.
        AskForMakersFigure = 2 "ask-for-makers-figure"
            "Look for the maker's own figures, the charge per length and the length that the factory charge covers: they rule over computed ones. Weigh it on a scale, then verify by subcooling or superheat.";
        /// The maker's figure and the computed one differ by more than their uncertainty.
        FiguresDiffer = 3 "figures-differ"
            "The maker's figure and the computed one differ by more than their uncertainty: check refrigerant, tube sizes, metering device and the unit of the figure before weighing anything in.";
    }
}

answers! {
    /// What can hurt.
    ChargeCaution {
        /// Always.
        LicensedPractice = 1 "licensed-practice"
            "Work on refrigerant and its records follow local codes and belong to licensed practice.";
        /// Always.
        Pressure = 2 "pressure" "Lines and cylinder are under pressure: gloves and eye protection.";
        /// The refrigerant can burn.
        FlammableRefrigerant = 3 "flammable-refrigerant"
            "This refrigerant can burn: no ignition source, fresh air, a leak detector, and tools and cylinder rated for it.";
        /// The refrigerant can burn, and the line set adds to what can leak into a room.
        RoomLimit = 4 "room-limit"
            "The whole charge, factory and line set together, must stay within the limit for the smallest room it can leak into.";
        /// The refrigerant is toxic.
        ToxicRefrigerant = 5 "toxic-refrigerant" "This refrigerant is toxic: breathing protection and ventilation as its code asks.";
        /// A blend with glide.
        ChargeAsLiquid = 6 "charge-as-liquid"
            "This is a blend: take it from the cylinder as liquid, and meter it into vapour before a running compressor.";
        /// The pressure is high.
        HighPressure = 7 "high-pressure"
            "Carbon dioxide stands at several times the pressure of other refrigerants: only tube, fittings and hoses rated for it.";
    }
}
