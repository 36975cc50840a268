//! How the units of each fleet are built: what is tuned on one structure is judged on another.

use satline::Error;
use satline::rig::fleet::{Member, member};
use satline::rig::{
    Accumulator, CondenserModel, Device, Draws, Rating, RefrigerantMap, ReturnDuct, Structure, VoidFraction,
};

/// One of the fleets.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Fleet {
    /// For fitting numbers: condenser by moving boundaries, Zivi's void, an even evaporator, a short tube or a tapered
    /// needle.
    Tune,
    /// For judging while the work goes on: a lumped condenser, Smith's void, air unevenly over the evaporator, an orifice
    /// by the square-root law or a linear needle.
    Develop,
    /// For the end: any of the devices and condensers, and what the others lack: a leaky and warm return duct, an
    /// accumulator, valves with more or less in reserve, a charge that follows the liquid in the condenser differently.
    Sealed,
}

impl Fleet {
    /// By its word.
    #[must_use]
    pub fn named(name: &str) -> Option<Self> {
        [Self::Tune, Self::Develop, Self::Sealed].into_iter().find(|fleet| fleet.name() == name)
    }

    /// Its word.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Tune => "tune",
            Self::Develop => "develop",
            Self::Sealed => "sealed",
        }
    }

    /// The seed of its units; the sealed fleet's comes from who opens it.
    #[must_use]
    pub const fn seed(self) -> Option<u64> {
        match self {
            Self::Tune => Some(0x7e57_0001),
            Self::Develop => Some(0xde7e_0002),
            Self::Sealed => None,
        }
    }

    /// A unit as it is sold, before it meets its refrigerant.
    #[must_use]
    pub fn member(self, seed: u64, number: u64) -> Member {
        let mut member = member(seed, number);
        let fixed = matches!(member.device, Device::ShortTube | Device::FlashingOrifice);
        // A stream of its own, so that the member stays the one of its seed and number.
        let mut draws = Draws::of(seed ^ 0x5747_1c7e, number);
        match self {
            Self::Tune => {
                member.structure = Structure::default();
                member.void = VoidFraction::Zivi;
                member.device = if fixed { Device::ShortTube } else { Device::TaperedValve };
            }
            Self::Develop => {
                member.structure = Structure {
                    condenser: CondenserModel::Lumped,
                    air_imbalance: draws.uniform(0.1, 0.3),
                    ..Structure::default()
                };
                member.void = VoidFraction::Smith;
                member.device = if fixed { Device::FlashingOrifice } else { Device::LinearValve };
            }
            Self::Sealed => {
                let condensers = [CondenserModel::MovingBoundary, CondenserModel::Lumped];
                let has_accumulator = draws.uniform(0.0, 1.0) < 0.5;
                member.structure = Structure {
                    condenser: draws.choose(&condensers, CondenserModel::Lumped),
                    air_imbalance: draws.uniform(0.0, 0.25),
                    return_duct: ReturnDuct {
                        leak: draws.uniform(0.0, 0.05),
                        conductance: draws.uniform(0.0, 15.0),
                        excess: draws.uniform(0.0, 10.0),
                    },
                    accumulator: Accumulator {
                        volume: if has_accumulator { 4e-4 * member.tons } else { 0.0 },
                        ..Accumulator::default()
                    },
                };
                member.void = draws.choose(&[VoidFraction::Smith, VoidFraction::Zivi], VoidFraction::Smith);
            }
        }
        member
    }

    /// What the maker designed it from.
    ///
    /// # Errors
    /// Those of [`Member::rating`].
    pub fn rating(self, member: &Member, map: &RefrigerantMap, draws: &mut Draws) -> Result<Rating, Error> {
        let rating = member.rating(map)?;
        Ok(match self {
            Self::Tune => rating,
            Self::Develop => Rating { valve_reserve: draws.uniform(0.2, 0.4), ..rating },
            Self::Sealed => Rating {
                valve_reserve: draws.uniform(0.15, 0.45),
                superheat_above_static: draws.uniform(2.5, 4.0),
                charge_beyond: rating.charge_beyond * draws.uniform(0.5, 1.5),
                ..rating
            },
        })
    }
}

/// The refrigerants of the fleets.
pub const REFRIGERANTS: [&str; 4] = ["R-410A", "R-22", "R-32", "R-454B"];

/// Which of [`REFRIGERANTS`] a unit holds, from an even draw: 0.6, 0.15, 0.15, 0.1 of them.
#[must_use]
pub fn refrigerant(share: f64) -> usize {
    [0.6, 0.75, 0.9].iter().filter(|limit| share >= **limit).count()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn fleets_differ_in_their_models() {
        for number in 0..20 {
            let tune = Fleet::Tune.member(1, number);
            let develop = Fleet::Develop.member(1, number);
            assert_ne!(tune.structure.condenser, develop.structure.condenser);
            assert_ne!(tune.device, develop.device);
            assert_ne!(tune.void, develop.void);
            assert_eq!(tune, Fleet::Tune.member(1, number));
            // What was bought is the seed's.
            assert_eq!((tune.tons, tune.class), (develop.tons, develop.class));
        }
        assert_ne!(Fleet::Tune.seed(), Fleet::Develop.seed());
        assert!(Fleet::named("sealed") == Some(Fleet::Sealed) && Fleet::named("other").is_none());
    }

    #[test]
    fn refrigerants_by_their_shares() {
        assert_eq!([0.0, 0.59, 0.6, 0.75, 0.9, 0.99].map(refrigerant), [0, 0, 1, 2, 3, 3]);
    }
}
