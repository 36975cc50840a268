//! What the standing-pressure check answers with.

use crate::charge::answers::answers;

answers! {
    /// What is known of the liquid.
    Liquid {
        /// Whether there is any liquid is not known.
        Unknown = 1 "unknown" "Whether there is liquid is not known.";
        /// Liquid is known to be there, how much is not: seen in a glass, heard, or known from the weight.
        Present = 2 "present" "There is liquid; how much is not known.";
        /// Most of the mass is liquid, as in a bottle that is not nearly empty: the pressure is the bubble pressure.
        Most = 3 "most" "Most of the refrigerant is liquid.";
    }
}

answers! {
    /// How the pressure compares with what the refrigerant's would be.
    Outcome {
        /// Within the band and its uncertainty.
        Consistent = 1 "consistent" "The pressure fits the refrigerant at this temperature.";
        /// Above the band.
        Excess = 2 "excess" "The pressure is higher than this refrigerant has at this temperature.";
        /// Below the band.
        TooLow = 3 "too-low" "The pressure is lower than this refrigerant's liquid has at this temperature.";
        /// Not comparable; the reason says why.
        NotJudged = 4 "not-judged" "The pressure cannot be judged at these temperatures.";
    }
}

answers! {
    /// Why.
    Reason {
        /// Between dew and bubble pressure, uncertainty allowed for.
        WithinBand = 1 "within-band"
            "It lies between dew and bubble pressure within the uncertainty. That does not prove what is inside: other refrigerants and mixtures of refrigerants can have the same pressure.";
        /// At the bubble pressure, where most is liquid.
        AtBubble = 2 "at-bubble"
            "It is the bubble pressure within the uncertainty, as it must be where most is liquid. That does not prove what is inside: other refrigerants and mixtures of refrigerants can have the same pressure.";
        /// Above the bubble pressure.
        AboveBubble = 3 "above-bubble" "It lies above the bubble pressure by more than the uncertainty.";
        /// Below the dew pressure.
        BelowDew = 4 "below-dew" "It lies below the dew pressure by more than the uncertainty.";
        /// Below the bubble pressure, though most is liquid.
        BelowBubble = 5 "below-bubble"
            "It lies below the bubble pressure by more than the uncertainty, though most is liquid.";
        /// The parts that hold liquid have different temperatures.
        TemperaturesUnequal = 6 "temperatures-unequal"
            "The parts that may hold liquid differ in temperature by more than allowed. The coldest liquid sets the pressure, but only once the rest has come to it.";
    }
}

answers! {
    /// What could be behind it.
    Cause {
        /// Air, nitrogen or moisture.
        NonCondensables = 1 "non-condensables" "Air or nitrogen is mixed in.";
        /// Another refrigerant, or several mixed.
        OtherRefrigerant = 2 "other-refrigerant" "Another refrigerant is inside, or a mixture of several.";
        /// The last liquid is gone.
        NoLiquid = 3 "no-liquid" "No liquid is left: the charge, or the bottle, is all but empty.";
        /// A part colder than those measured holds liquid.
        ColderPart = 4 "colder-part" "A part that was not measured is colder and holds the liquid.";
        /// A part warmer than those measured holds liquid.
        WarmerPart = 5 "warmer-part" "The liquid is warmer than the place that was measured.";
        /// No room for vapour.
        FullOfLiquid = 6 "full-of-liquid" "The bottle is full of liquid to the brim.";
        /// A leak has taken the volatile components first.
        CompositionShifted = 7 "composition-shifted"
            "A vapour leak has taken the volatile components first, so the blend is no longer what its label says.";
    }
}

answers! {
    /// What to do.
    Advice {
        /// Nothing on this evidence.
        Nothing = 1 "nothing" "Nothing on this evidence.";
        /// Recover, evacuate, recharge.
        RecoverEvacuateRecharge = 2 "recover-evacuate-recharge"
            "Recover the refrigerant, evacuate, and recharge with new: never purge, which vents refrigerant and does not get the air out.";
        /// Find the leak.
        FindLeak = 3 "find-leak" "Refrigerant does not wear out: weigh what is left and look for the leak before adding any.";
        /// Identify what is inside.
        Identify = 4 "identify"
            "Have what is inside identified by an analyser or a laboratory before any of it is used, added to or mixed.";
        /// Let temperatures even out.
        WaitForOneTemperature = 5 "wait-for-one-temperature"
            "Leave it at rest, out of sun and draught, until every part that may hold liquid has one temperature, then read again.";
    }
}

answers! {
    /// What can hurt, or mislead.
    Caution {
        /// Always.
        LicensedPractice = 1 "licensed-practice"
            "Work on refrigerant and its records follow local codes and belong to licensed practice.";
        /// Always.
        Pressure = 2 "pressure" "The vessel is under pressure: gloves and eye protection, and bleed hoses with care.";
        /// Always.
        NotIdentified = 3 "not-identified"
            "A pressure does not identify a refrigerant: mixed refrigerants can stand at any pressure between those of their parts.";
        /// The refrigerant can burn.
        FlammableRefrigerant = 4 "flammable-refrigerant"
            "This refrigerant can burn: no ignition source, fresh air, a leak detector, and tools and cylinder rated for it.";
        /// What is inside may not be what it should.
        TreatAsFlammable = 5 "treat-as-flammable"
            "Until what is inside is identified, treat it as flammable, and air mixed with it as able to burn inside.";
        /// Never purge.
        NeverPurge = 6 "never-purge" "Do not purge or vent: it is unlawful in many places and leaves most of the air inside.";
        /// Possibly full of liquid.
        MayBeFullOfLiquid = 7 "may-be-full-of-liquid"
            "A bottle without room for vapour bursts when it warms: weigh it against its tare and 80 % filling, and keep it cool.";
        /// A blend's composition may have shifted.
        BlendMayHaveShifted = 8 "blend-may-have-shifted"
            "A leak shifts a blend's composition and so its bubble and dew pressures: pressure alone does not tell a shifted blend from air or another refrigerant.";
    }
}
