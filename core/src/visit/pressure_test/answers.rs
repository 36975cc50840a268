//! What a pressure test answers with.

use crate::charge::answers::answers;

answers! {
    /// How the test ended.
    Outcome {
        /// No drop, and the test would have seen one that counts.
        Pass = 1 "pass" "The pressure held: a drop larger than allowed would have shown.";
        /// A drop beyond the uncertainty.
        Fail = 2 "fail" "The pressure fell by more than temperature and uncertainty explain.";
        /// Neither.
        CannotTell = 3 "cannot-tell" "The test can tell neither a leak nor its absence.";
    }
}

answers! {
    /// Why.
    Reason {
        /// Held, and the bound on what could be hidden is small enough.
        Held = 1 "held"
            "Corrected for temperature the pressure is what it was, and a leak larger than allowed would have shown.";
        /// Fell beyond uncertainty.
        Fell = 2 "fell" "Corrected for temperature the pressure fell by more than two standard uncertainties.";
        /// The uncertainty is larger than what is allowed.
        TooUncertain = 3 "too-uncertain"
            "The drop that could hide in the uncertainty of gauge and thermometer is larger than the drop allowed.";
        /// Too short a time.
        TooShort = 4 "too-short" "The test was shorter than asked for.";
        /// The pressure rose more than the temperature explains.
        Rose = 5 "rose"
            "Corrected for temperature the pressure rose: the gas was not at the probes' temperature, or the cylinder's valve was open.";
    }
}

answers! {
    /// What to do.
    Advice {
        /// Go on.
        ReleaseAndEvacuate = 1 "release-and-evacuate"
            "Release the nitrogen slowly to the open air, then evacuate.";
        /// Look for the leak.
        FindLeak = 2 "find-leak"
            "Find the leak with bubble solution at every joint, valve core and flare; release the pressure before touching a joint.";
        /// Do it longer or better.
        WatchLonger = 3 "watch-longer"
            "Leave it standing longer, with probes fastened to shaded tubes and insulated, and a gauge of finer scale; read when the temperature is again near that of the first reading.";
        /// Repeat from the start.
        Repeat = 4 "repeat"
            "Close the cylinder and take its hose off, wait until tubes and gas have one temperature, and start again.";
    }
}

answers! {
    /// What can hurt.
    Caution {
        /// Always.
        LicensedPractice = 1 "licensed-practice"
            "Test pressure, holding time and records follow local codes and the maker's instructions, and belong to licensed practice.";
        /// Always.
        Regulator = 2 "regulator"
            "A full nitrogen cylinder holds 150 bar and more: never connect it without a pressure regulator and a relief valve set at or below the test pressure's limit.";
        /// Always.
        NeverOxygenOrAir = 3 "never-oxygen-or-air"
            "Never use oxygen or compressed air: with oil they explode; air also brings moisture in. Never use a burning gas.";
        /// Always.
        StandClear = 4 "stand-clear"
            "Compressed gas stores energy that liquid does not: raise the pressure in steps, stand clear, and never tighten or strike a joint under pressure.";
        /// Always.
        WeakestPart = 5 "weakest-part"
            "The weakest part decides: close off or take out compressors, valves, hoses and controls that are not rated for the test pressure.";
        /// Always.
        Suffocation = 6 "suffocation"
            "Nitrogen cannot be smelled and displaces air: vent it outdoors or with plenty of fresh air.";
        /// The sun may bring it above the design pressure.
        WillRise = 7 "will-rise"
            "Shut in gas rises with the sun: fill so that at the warmest it stays below the low-side design pressure.";
    }
}
