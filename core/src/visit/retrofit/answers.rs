//! What a comparison of two refrigerants answers with.

use crate::charge::answers::answers;

answers! {
    /// Which end of the saturation line, or what between, a condensing temperature of a blend is.
    CondensingAt {
        /// The bubble temperature at the condensing pressure.
        Bubble = 1 "bubble" "The condensing temperature is the bubble temperature at the condensing pressure.";
        /// The mean of bubble and dew temperature.
        Mean = 2 "mean" "The condensing temperature is the mean of bubble and dew temperature at the condensing pressure.";
        /// The dew temperature.
        Dew = 3 "dew" "The condensing temperature is the dew temperature at the condensing pressure.";
    }
}

answers! {
    /// Whether the unit may be thought of as a unit for the new refrigerant.
    RetrofitOutcome {
        /// Nothing here speaks against it.
        Possible = 1 "possible"
            "Nothing looked at here speaks against it; the maker, the label and the local code still decide.";
        /// Something forbids it.
        Blocked = 2 "blocked" "Do not do this: the reasons say why.";
        /// A fact is missing that decides.
        CannotTell = 3 "cannot-tell" "It cannot be told until what the reason names is known.";
    }
}

answers! {
    /// Why.
    RetrofitReason {
        /// Class 1 to 2L, 2 or 3.
        FlammableInClass1Unit = 1 "flammable-in-class-1-unit"
            "A unit made for a refrigerant that does not burn must not be filled with one that does: its relays, wiring, room and charge were never judged for it.";
        /// From 2L to 2 or 3, or from 2 to 3.
        MoreFlammable = 2 "more-flammable" "The new refrigerant burns more readily than the one that the unit was made for.";
        /// The class is not known.
        ClassUnknown = 3 "class-unknown"
            "The safety class of the new refrigerant is not known here, so it is taken to burn.";
        /// From A to B.
        MoreToxic = 4 "more-toxic" "The new refrigerant is of higher toxicity (class B) than the one the unit was made for.";
        /// Running.
        CondensingAboveDesign = 5 "condensing-above-design"
            "The condensing pressure would be above the design pressure of the high side.";
        /// At rest.
        StandstillAboveDesign = 6 "standstill-above-design"
            "At rest and hot, the pressure would be above the design pressure of the high side.";
        /// At rest, low side.
        LowSideAboveDesign = 7 "low-side-above-design"
            "At rest, the pressure would be above the design pressure of the low side.";
        /// Above the critical temperature at rest.
        NoLiquidAtStandstill = 8 "no-liquid-at-standstill"
            "The new refrigerant is above its critical temperature when the unit stands in the heat: its pressure at rest is then set by charge and volume, not by a saturation line.";
        /// No design pressure was given, and the new refrigerant has the higher pressure.
        DesignPressureNeeded = 9 "design-pressure-needed"
            "The new refrigerant has the higher pressure and no design pressure was given: read it off the unit's plate.";
        /// No design pressure was given, nor is one needed.
        PressuresNoHigher = 10 "pressures-no-higher" "The new refrigerant's pressures are no higher than the old one's.";
        /// Pressures are within the design pressures given.
        WithinDesign = 11 "within-design" "Running and at rest, the pressures are within the design pressure given.";
        /// Evaporating below the ambient pressure.
        MayDrawAir = 12 "may-draw-air"
            "The evaporating pressure would be below the standard atmosphere, where the old one's was not: any leak draws air and water in.";
    }
}

answers! {
    /// What can hurt, or go wrong.
    RetrofitCaution {
        /// Always.
        LicensedPractice = 1 "licensed-practice"
            "Changing the refrigerant of a unit is for licensed people under the local code, which may forbid it; ask the unit's maker first.";
        /// Always.
        Label = 2 "label"
            "Label the unit with the new refrigerant, its mass and its oil, and take the old label's figures out of use.";
        /// Always.
        RecoverAll = 3 "recover-all"
            "Recover all of the old refrigerant, evacuate, and never top one refrigerant up with another.";
        /// Another oil family.
        ChangeOil = 4 "change-oil"
            "The new refrigerant commonly needs another kind of oil: old oil that does not come back starves the compressor. Ask its maker, and how little of the old oil may stay.";
        /// A hydrocarbon in the blend may carry mineral oil.
        OilMayNotReturn = 5 "oil-may-not-return"
            "Where the mineral oil stays, watch the oil level: with long lines, risers or a suction accumulator it may not come back.";
        /// Chlorine gone.
        Seals = 6 "seals"
            "Seals that swelled in a refrigerant with chlorine shrink and leak in one without: renew O-rings, valve cores and caps, and the filter-drier, and search for leaks again after a while.";
        /// The new one burns.
        Flammable = 7 "flammable"
            "The new refrigerant burns: unit, room, charge, tools and cylinder must be rated for it, and the local code allow it.";
        /// A blend with glide.
        ChargeAsLiquid = 8 "charge-as-liquid"
            "A blend with glide leaves the cylinder as liquid, metered to vapour before a running compressor; take superheat from dew and subcooling from bubble.";
        /// The discharge is too hot.
        HotDischarge = 9 "hot-discharge"
            "The discharge would be hotter than the limit given: oil and valves suffer. Lower the superheat or do not do it.";
        /// The metering device has the wrong size.
        MeteringDevice = 10 "metering-device"
            "The metering device would be too small or too large by more than a tenth: change the orifice or the valve, or its setting.";
        /// The capacity changes.
        CapacityChanges = 11 "capacity-changes"
            "The capacity of the same compressor changes by more than a tenth: check the load, the airflow and the motor's current.";
        /// Properties are estimated.
        Estimated = 12 "estimated"
            "Properties of one of the blends rest on an estimated parameter and are less certain: leave a margin to every limit.";
        /// No design pressure was given.
        DesignPressureNotGiven = 13 "design-pressure-not-given"
            "No design pressure was given, so none was checked: read it off the unit's plate, relief valves and switches included.";
        /// Pressure switches and relief.
        PressureControls = 14 "pressure-controls"
            "Set pressure switches and controls, and check the relief device, for the new refrigerant's pressures.";
    }
}
