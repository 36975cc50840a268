//! Why a unit does not run.

use crate::error::Error;

/// Why a unit finds no steady state that could be trusted: what protects it would stop it, or nothing would flow.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Stop {
    /// The suction pressure falls out of the range in which such units run.
    LowPressure,
    /// The discharge pressure rises to where such units are cut out.
    HighPressure,
    /// The discharge gas is hotter than oil and windings stand.
    HotDischarge,
    /// So much liquid returns that the compressor would be flooded.
    FloodedCompressor,
    /// The outdoor air is so cold against the indoor air that nothing drives liquid through the metering device.
    NoLift,
    /// So little liquid reaches the metering device that the charge is below what the unit can run with.
    NoLiquid,
    /// No steady state was found, and none of the above was near.
    NoBalance,
}

impl Stop {
    /// All reasons.
    pub const ALL: [Self; 7] = [
        Self::LowPressure,
        Self::HighPressure,
        Self::HotDischarge,
        Self::FloodedCompressor,
        Self::NoLift,
        Self::NoLiquid,
        Self::NoBalance,
    ];

    /// The reason, in words.
    #[must_use]
    pub const fn reason(self) -> &'static str {
        match self {
            Self::LowPressure => {
                "the suction pressure falls so low that the unit stops: too little refrigerant or too little heat reaches the coil"
            }
            Self::HighPressure => {
                "the discharge pressure rises until the unit is cut out: the outdoor coil cannot give off the heat, or is full of liquid"
            }
            Self::HotDischarge => {
                "the discharge gas is too hot for oil and windings: the compressor stops on its protection"
            }
            Self::FloodedCompressor => {
                "liquid floods back to the compressor: no steady state of such a unit can be trusted"
            }
            Self::NoLift => {
                "the outdoor air is too cold against the indoor air: nothing drives liquid through the metering device"
            }
            Self::NoLiquid => {
                "next to no liquid reaches the metering device: the charge is below what the unit can start and run with"
            }
            Self::NoBalance => "no steady state was found: choose milder conditions or a fault less severe",
        }
    }

    /// The error that carries this reason.
    #[must_use]
    pub const fn error(self) -> Error {
        Error::NotAvailable { quantity: "steady state", reason: self.reason() }
    }

    /// The reason that an error carries.
    #[must_use]
    pub fn of(error: &Error) -> Option<Self> {
        let Error::NotAvailable { reason, .. } = error else { return None };
        Self::ALL.into_iter().find(|stop| stop.reason() == *reason)
    }
}
