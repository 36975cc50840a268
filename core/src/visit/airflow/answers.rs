//! What the airflow checks answer with.

use crate::charge::answers::answers;

answers! {
    /// How a value compares with its limit, uncertainty allowed for.
    LimitOutcome {
        /// Below the limit by more than the uncertainty.
        Within = 1 "within" "It is within the limit.";
        /// Above the limit by more than the uncertainty.
        Above = 2 "above" "It is above the limit.";
        /// Too near to the limit to tell.
        CannotTell = 3 "cannot-tell" "It is nearer to the limit than the measurement can tell: measure better.";
        /// Not possible as measured.
        Contradicts = 4 "contradicts"
            "The measurements contradict each other: check each probe's place and that the air has settled.";
    }
}

answers! {
    /// What can hurt, or mislead, where airflow is measured.
    AirflowCaution {
        /// Always.
        MovingParts = 1 "moving-parts"
            "A blower starts without warning and carries mains voltage: lock the power out before a hand goes in.";
        /// Always.
        LicensedPractice = 2 "licensed-practice"
            "Electrical work, and wiring a speed tap anew, follow local codes and belong to licensed practice.";
        /// Always.
        Settle = 3 "settle"
            "Let the unit run until readings settle, registers open, the filter in place, the coil as wet or as dry as in the reading compared with.";
        /// With combustion appliances.
        Combustion = 4 "combustion"
            "Return leaks and low airflow can draw combustion gas into the house: test draught and carbon monoxide where anything burns fuel.";
    }
}
