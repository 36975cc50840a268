//! The words of a heating finding: each with a fixed number, a name for files and a sentence.

use crate::charge::answers::answers;

answers! {
    /// What the delivered heat says.
    HeatingCapacity {
        /// Very low.
        VeryLow = 1 "very-low"
            "Very little heat: below half of nominal at 47 °F and warmer, or below three tenths at 17 °F (common practice). First check airflow, both coils, the reversing valve and whether the compressor runs as it should.";
        /// Not very low, which is all that is judged.
        NotVeryLow = 2 "not-very-low"
            "Not very low for this outdoor temperature. More than that the nominal figure does not tell.";
        /// Too near to the limit.
        CannotTell = 3 "cannot-tell"
            "The ratio is nearer to the limit of very low than the measurement can tell.";
        /// No ratio, or no rule for it.
        NotCompared = 4 "not-compared"
            "Not compared: that takes a settled unit at full stage, both air temperatures, airflow, nominal capacity and an outdoor temperature of 17 °F or more.";
    }
}

answers! {
    /// Whether frost grows on the outdoor coil.
    Frost {
        /// It does.
        Forms = 1 "forms"
            "Frost forms: the outdoor coil is below freezing and below the frost point of the air. Heat falls until a defrost clears it.";
        /// It can, if the air is damp enough.
        Possible = 2 "possible"
            "Frost is possible: the outdoor coil is below freezing and well below the outdoor air. Whether it forms depends on the humidity, which is not known.";
        /// Water, not ice.
        CondensationOnly = 3 "condensation-only"
            "The outdoor coil gathers water but no frost: it is below the dew point of the air and above freezing.";
        /// No water at all.
        FrostFree = 4 "frost-free" "No frost: the outdoor coil is above the dew point of the air, so it stays dry.";
        /// Whatever the humidity.
        CannotHappen = 5 "cannot-happen"
            "Frost cannot grow now, whatever the humidity: the outdoor coil is above freezing.";
        /// Too near to tell.
        CannotTell = 6 "cannot-tell"
            "The outdoor coil is nearer to freezing, to the dew point or to the air than the measurement can tell.";
        /// Nothing to judge it by.
        Unknown = 7 "unknown"
            "Not known: it takes the pressure at the compressor's suction, or a clamp on a return bend of the outdoor coil.";
    }
}

answers! {
    /// What the two suction temperatures at the reversing valve say.
    ReversingValve {
        /// No leak seen.
        Tight = 1 "tight"
            "No leak is seen: the suction gas hardly warms in the reversing valve, by 3 °F at most (common practice).";
        /// A leak is suspected.
        Suspected = 2 "suspected"
            "A leak of the reversing valve is suspected: the suction gas warms by 5 °F or more on its way through it, as hot gas leaking across would do (common practice). Check that it has shifted fully, and repeat with both clamps insulated, before it is replaced.";
        /// Too near to tell.
        CannotTell = 3 "cannot-tell"
            "The two temperatures do not tell a leak from none: use two probes read side by side, insulated, a hand's width from the valve.";
        /// Not measured.
        NotMeasured = 4 "not-measured"
            "Not measured: it takes the temperature of the suction gas before and behind the reversing valve.";
    }
}

answers! {
    /// How a measurement compares with the maker's chart.
    HeatingChartOutcome {
        /// Within the tolerance by more than the uncertainty.
        Within = 1 "within" "It is within the tolerance of the chart.";
        /// Above it.
        Above = 2 "above" "It is above the chart by more than the tolerance.";
        /// Below it.
        Below = 3 "below" "It is below the chart by more than the tolerance.";
        /// Too near to tell.
        CannotTell = 4 "cannot-tell" "It is nearer to the end of the tolerance than the measurement can tell.";
        /// The chart is blank or ends here.
        NoTarget = 5 "no-target" "The chart has no target at these conditions.";
        /// A measurement that the chart needs is missing.
        NotMeasured = 6 "not-measured" "A measurement that the chart needs is missing.";
        /// A chart of superheat, subcooling or approach.
        NotForHeating = 7 "not-for-heating"
            "The chart gives superheat, subcooling or approach, which mean nothing here in heating.";
        /// The reading contradicts itself, or has not settled.
        NotComparable = 8 "not-comparable"
            "Not compared, because the reading has not settled or contradicts itself.";
    }
}

answers! {
    /// What heating does not let one judge, and what a value of this finding leaves out.
    HeatingLimit {
        /// Always.
        ChargeByWeight = 1 "charge-by-weight"
            "In heating the charge is judged by weight only: recover it, weigh it, and compare with the nameplate and the line set; or test in cooling on a warm day.";
        /// Always.
        NoSuperheatTarget = 2 "no-superheat-target"
            "Superheat has no target in heating: do not add or remove refrigerant by it.";
        /// Always.
        NoSubcoolingTarget = 3 "no-subcooling-target"
            "Subcooling has no target in heating: part of the charge waits in an accumulator or the outdoor coil, so it does not show what is inside.";
        /// There is a ratio.
        RatioOutdoorTemperature = 4 "ratio-outdoor-temperature"
            "A nominal heating capacity holds at 47 °F outdoors and falls as it gets colder. The ratio belongs to today's outdoor temperature and is no share of what the unit should give today.";
        /// There is a capacity.
        AllHeatCounts = 5 "all-heat-counts"
            "The rise of the supply air counts every heat in it: the blower's is in, and electric strips must be off.";
        /// No ambient pressure was given.
        SeaLevelAssumed = 6 "sea-level-assumed"
            "No ambient pressure was given, so air at sea level was assumed: at 5000 ft the heat is a sixth less than shown.";
        /// Frost was judged.
        FrostNotSeen = 7 "frost-not-seen"
            "Whether frost grows is told, not how much is there already: look at the coil.";
        /// Frost was judged without humidity.
        OutdoorHumidityUnknown = 8 "outdoor-humidity-unknown"
            "The humidity outdoors is not known: with a dew point it could be said whether frost forms.";
        /// The valve was judged.
        ValveConduction = 9 "valve-conduction"
            "The hot body of the valve warms the clamps too, and a valve that has not shifted fully warms the gas as a leaking one does.";
        /// Not told.
        DefrostNotTold = 10 "defrost-not-told"
            "A reading taken during a defrost, or in the ten minutes after one, says nothing of heating: wait for it to end.";
    }
}

answers! {
    /// What is wrong with the reading itself.
    HeatingProblem {
        /// The reading is not of heating.
        NotHeating = 1 "not-heating"
            "The reading is not marked as taken in heating, so nothing of heating is judged.";
        /// A defrost runs.
        Defrosting = 2 "defrosting"
            "A defrost runs: the unit cools the house and heats its outdoor coil. Wait until it has ended and the unit has settled.";
        /// Less than fifteen minutes since start or the last change.
        NotSettled = 3 "not-settled"
            "The unit has not run fifteen minutes since it was started or changed: capacity, valve and chart are not judged.";
        /// Supply air not warmer than return air.
        SupplyNotWarmer = 4 "supply-not-warmer"
            "The supply air is not warmer than the return air, which is not heating: a defrost, a reversing valve that has not shifted, a compressor that does not run, or probes exchanged.";
        /// The wet bulb does not fit.
        WetBulbContradicts = 5 "wet-bulb-contradicts"
            "The return wet bulb does not fit its dry bulb: wet the wick, or the probes are exchanged.";
        /// The suction pressure was taken on the hot side.
        SuctionPressureContradicts = 6 "suction-pressure-contradicts"
            "The suction pressure belongs to gas warmer than the outdoor air, so it is not the compressor's suction: in heating the vapour port carries hot gas. Use the suction port of the compressor.";
        /// Pressures out of order.
        PressuresContradict = 7 "pressures-contradict"
            "The pressures contradict each other: suction is not below the high side, or liquid is above discharge. Hoses, fields, or a compressor that is not pumping.";
        /// A pressure without a saturated state.
        PressureOutsideCurve = 8 "pressure-outside-curve"
            "A pressure lies outside this refrigerant's saturation range: wrong refrigerant, wrong unit of pressure, or gauge taken for absolute.";
        /// Line temperatures out of order.
        LineTemperaturesContradict = 9 "line-temperatures-contradict"
            "The line temperatures do not fit heating: the vapour line carries hot gas, warmer than return air and than the liquid, and liquid is no warmer than its pressure allows. Probe contact, probes exchanged, or a valve that has not shifted.";
        /// More water than air can hold.
        DewPointContradicts = 10 "dew-point-contradicts"
            "The outdoor dew point is above the outdoor air, which cannot be: check both.";
        /// The two temperatures at the valve.
        ValveTemperaturesContradict = 11 "valve-temperatures-contradict"
            "The suction temperatures at the reversing valve cannot be right: the gas does not cool on its way through it, and does not leave the outdoor coil warmer than the air. Probes exchanged, or badly placed.";
        /// The two temperatures of the outdoor coil.
        CoilTemperaturesContradict = 12 "coil-temperatures-contradict"
            "The return bend of the outdoor coil is warmer than the outdoor air, so it does not evaporate: a defrost, a valve that has not shifted, or a badly placed clamp.";
    }
}

answers! {
    /// What a missing measurement is needed for.
    HeatingNeed {
        /// The delivered heat.
        Capacity = 1 "capacity" "for the heat delivered";
        /// Its comparison with nominal.
        Ratio = 2 "ratio" "to compare it with nominal";
        /// Frost.
        Frost = 3 "frost" "to tell whether frost forms";
        /// The reversing valve.
        ReversingValve = 4 "reversing-valve" "for the reversing valve";
        /// The maker's chart.
        Chart = 5 "chart" "for the maker's chart";
    }
}

answers! {
    /// What can hurt.
    HeatingCaution {
        /// Always.
        LicensedPractice = 1 "licensed-practice"
            "Work on refrigerant and its records follow local codes and belong to licensed practice.";
        /// Always.
        Pressure = 2 "pressure"
            "The circuit is under pressure: gloves and eye protection, and purge hoses with care.";
        /// Always.
        HotGas = 3 "hot-gas"
            "In heating the large line carries hot gas at high pressure: it burns, and a low-side gauge does not belong on it.";
        /// Always.
        Electricity = 4 "electricity"
            "Open panels expose live parts and capacitors that stay charged; a defrost starts and stops the outdoor fan without warning.";
        /// The refrigerant can burn.
        FlammableRefrigerant = 5 "flammable-refrigerant"
            "This refrigerant can burn: no ignition source, fresh air, a leak detector, and tools and cylinder rated for it.";
        /// The refrigerant is not known.
        UnknownRefrigerant = 6 "unknown-refrigerant"
            "The refrigerant is not known: treat it as flammable until it is identified.";
        /// Frost may be there.
        Ice = 7 "ice"
            "Never chip ice off a coil: the tubes are under pressure. Let a defrost or warm water melt it, and watch for ice underfoot.";
    }
}
