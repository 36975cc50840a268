//! What a decay test answers with.

use crate::charge::answers::answers;

answers! {
    /// How the test ended.
    Outcome {
        /// Held.
        Pass = 1 "pass" "The vacuum held.";
        /// Did not.
        Fail = 2 "fail" "The vacuum did not hold, or was never reached.";
        /// Neither.
        CannotTell = 3 "cannot-tell" "The test can tell neither a tight, dry unit nor its contrary.";
    }
}

answers! {
    /// How the pressure went.
    Behaviour {
        /// No rise beyond the noise.
        Steady = 1 "steady" "The pressure did not change beyond the gauge's noise.";
        /// A straight line.
        Straight = 2 "straight"
            "The pressure rose in a straight line; no curve that levels off within about twice the time watched fits it.";
        /// Levelling off.
        LevellingOff = 3 "levelling-off" "The pressure rose and levelled off.";
        /// Levelling off onto a straight rise.
        Both = 4 "both" "The pressure began to level off and then went on rising in a straight line.";
        /// Rising, of unknown shape.
        Undecided = 5 "undecided" "The pressure rose; whether straight or levelling off cannot be told yet.";
        /// Falling.
        Falling = 6 "falling" "The pressure fell.";
    }
}

answers! {
    /// Why.
    Reason {
        /// Held.
        Held = 1 "held" "After the time asked for, the pressure was below the limit by more than the uncertainty.";
        /// Above the limit.
        AboveLimit = 2 "above-limit" "The pressure rose above the limit by more than the uncertainty.";
        /// Not pulled down.
        NotPulledDown = 3 "not-pulled-down"
            "The pressure at isolation was above the target by more than the uncertainty: the evacuation was not finished.";
        /// Too short.
        TooShort = 4 "too-short" "The pressure was not watched for the time asked for.";
        /// Within the uncertainty of the limit.
        NearLimit = 5 "near-limit" "The last pressure and the limit differ by less than the uncertainty of the gauge.";
        /// Below the limit and on its way above.
        StillRising = 6 "still-rising"
            "The pressure is below the limit, but on its way above it before long.";
        /// Ice or water would not show.
        TooColdToSeeWater = 7 "too-cold-to-see-water"
            "At the coldest tube water or ice has less vapour pressure than the limit: a held vacuum does not show that it is dry.";
        /// Falling.
        Fell = 8 "fell"
            "An isolated unit cannot lose pressure: the valve to the pump is open, the gauge drifts, or vapour goes into the oil.";
    }
}

answers! {
    /// What could be behind it.
    Cause {
        /// A leak.
        Leak = 1 "leak" "A leak: a straight rise goes on for hours, up to the air's pressure.";
        /// Water.
        Moisture = 2 "moisture"
            "Water or ice at the coldest tube: the pressure levels off at its vapour pressure there.";
        /// Gas out of oil and hoses.
        Outgassing = 3 "outgassing"
            "Gas that leaves oil, hoses or desiccant, or pressure evening out between near and far parts.";
        /// Water that gives off vapour slowly.
        SlowMoisture = 4 "slow-moisture"
            "Water under oil or ice that evaporates slowly: it can rise in a straight line too until it nears its vapour pressure.";
    }
}

answers! {
    /// What to do.
    Advice {
        /// Go on.
        Charge = 1 "charge" "Go on to charging; break the vacuum with refrigerant, not with air.";
        /// Look for the leak.
        FindLeak = 2 "find-leak" "Fill with dry nitrogen for a pressure test and find the leak.";
        /// Dry.
        BreakWithNitrogen = 3 "break-with-nitrogen"
            "Break the vacuum with dry nitrogen, change the pump's oil, warm the coldest parts, and evacuate again.";
        /// Pump on.
        PumpLonger = 4 "pump-longer"
            "Pump longer through short, wide hoses with the valve cores out, then isolate and watch again.";
        /// Watch longer.
        WatchLonger = 5 "watch-longer" "Keep it isolated and watch longer, at least for the time stated.";
        /// Warm it.
        Warm = 6 "warm" "Warm the coldest part above freezing, or repeat in milder weather, and watch again.";
        /// See to the gauge.
        CheckGauge = 7 "check-gauge"
            "Check that the pump is shut off and that the gauge is clean, warm and connected away from the pump; then watch again.";
    }
}

answers! {
    /// What can hurt, or mislead.
    Caution {
        /// Always.
        LicensedPractice = 1 "licensed-practice"
            "Evacuation and its records follow local codes and the maker's instructions, and belong to licensed practice; refrigerant is recovered first, never vented.";
        /// Always.
        NoMotorInVacuum = 2 "no-motor-in-vacuum"
            "Never start a compressor, nor test its windings with high voltage, while it stands in a vacuum: they arc and burn.";
        /// Always.
        GaugeAway = 3 "gauge-away"
            "Measure with an electronic vacuum gauge at the far side of the unit, hoses off: a gauge at the pump reads the pump, and rubber hoses outgas.";
        /// Water would freeze.
        WaterFreezes = 4 "water-freezes"
            "Below 611 Pa (4600 microns) water freezes: ice gives off vapour slowly, and its pressure can be below the target although it is wet.";
    }
}
