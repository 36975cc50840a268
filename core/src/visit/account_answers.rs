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
