//! What the charge account answers with.

use crate::charge::answers::answers;

answers! {
    /// How the mass inside compares with the expected mass.
    ChargeBalance {
        /// What was inside before is not known.
        Unknown = 1 "unknown"
            "What was inside before is not known, so the scale does not say what is inside now. Recover all of it into a cylinder and weigh it, or judge the charge by measurement.";
        /// Within the tolerance for certain.
        Right = 2 "right" "By the scale the unit holds what it should.";
        /// Less for certain.
        Short = 3 "short"
            "By the scale the unit holds less than it should. Find out why before adding: a unit that was full has a leak.";
        /// More for certain.
        Over = 4 "over" "By the scale the unit holds more than it should: recover the difference into a cylinder.";
        /// Neither for certain.
        TooUncertain = 5 "too-uncertain"
            "The difference is within what scale, nameplate and line set leave open: judge the charge by measurement.";
    }
}

answers! {
    /// Whether the cylinder has room for what is expected.
    RoomVerdict {
        /// More than that.
        Enough = 1 "enough" "The cylinder has room for what is expected. Weigh it as it fills and stop at its limit.";
        /// Not certain.
        Barely = 2 "barely" "It may just fit, or not: have a second cylinder at hand, and stop at the limit.";
        /// Less.
        TooLittle = 3 "too-little" "It does not fit: take an emptier cylinder, or a second one.";
        /// Nothing may go in.
        Full = 4 "full" "The cylinder is at its limit or beyond it: put nothing into it, keep it cool, and have it relieved by somebody qualified where it is overfilled.";
    }
}

answers! {
    /// How the mass that came out compares with what was expected.
    RecoveredBalance {
        /// Not weighed after.
        NotYet = 1 "not-yet" "Weigh the cylinder again when the recovery has ended.";
        /// All, within the tolerance for certain.
        All = 2 "all" "What was expected came out. Let the unit stand and watch its pressure: liquid that boils out of oil or cold parts brings it back.";
        /// Less for certain.
        Short = 3 "short"
            "Less came out than was expected. Either the unit was short, which means a leak, or refrigerant is still inside, in oil, in cold parts or behind a closed valve: watch the pressure, warm the cold parts, and recover again before opening it.";
        /// More for certain.
        More = 4 "more"
            "More came out than was expected. Either the unit was overcharged, or the cylinder took in something else: do not reuse it before it is identified.";
        /// Neither for certain.
        TooUncertain = 5 "too-uncertain" "The difference is within what scale and expectation leave open.";
    }
}
