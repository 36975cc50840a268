//! The verdict of a named charge verification protocol.
//!
//! California Title 24, Residential Appendix RA3.2 (2008 and 2013 editions): a regional protocol, quoted here for what
//! it asks, not as a rule for everywhere. Its verdict is an action ("add"), not a cause: superheat above target also
//! comes from a restriction, a wrong orifice, a warm house. What the evidence shows stands in [`crate::diagnosis`].

use super::answers::answers;
use super::contradiction::contradiction;
use super::target::{NoValidTest, sloped_split, sloped_superheat};
use crate::quantity::KELVIN_PER_FAHRENHEIT;
use crate::reading::{Compressor, Metering, MeteringPlace, Mode, Reading, Stage};

answers! {
    /// The edition of the protocol.
    Edition {
        /// 2008.
        Ra3Of2008 = 2008 "title-24-ra3.2-2008" "California Title 24, appendix RA3.2, 2008 edition";
        /// 2013.
        Ra3Of2013 = 2013 "title-24-ra3.2-2013" "California Title 24, appendix RA3.2, 2013 edition";
    }
}

answers! {
    /// Who applies the protocol: the verifier's tolerances are one degree wider.
    Role {
        /// The installing technician.
        Installer = 1 "installer" "installer's tolerances";
        /// The independent verifier.
        Verifier = 2 "verifier" "verifier's tolerances";
    }
}

answers! {
    /// What the protocol says to do.
    Action {
        /// The charge passes.
        Pass = 1 "pass" "pass";
        /// Add refrigerant.
        Add = 2 "add" "add refrigerant";
        /// Remove refrigerant: recover it into a cylinder.
        Remove = 3 "remove" "remove refrigerant, into a recovery cylinder";
        /// The protocol has no valid test here.
        NoValidTest = 4 "no-valid-test" "no valid test";
    }
}

answers! {
    /// The protocol's temperature-split test of the indoor airflow. A later edition withdrew it (from memory).
    SplitCheck {
        /// Within tolerance of the target.
        Within = 1 "within" "The temperature split is within its tolerance.";
        /// Above: the air moves too slowly through the coil.
        Above = 2 "above" "The temperature split is above its tolerance: too little air.";
        /// Below: low capacity, too much air, a return leak, or a probe in sight of the coil.
        Below = 3 "below" "The temperature split is below its tolerance: measure again, then suspect low capacity.";
        /// Not measured, or no target at these conditions.
        NotTested = 4 "not-tested" "The temperature split could not be tested.";
    }
}

/// A protocol as it is applied. The default is the 2013 edition with the installer's tolerances.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Protocol {
    /// The edition.
    pub edition: Edition,
    /// The role, which sets the tolerances.
    pub role: Role,
}

impl Default for Protocol {
    fn default() -> Self {
        Self { edition: Edition::Ra3Of2013, role: Role::Installer }
    }
}

/// What the protocol concludes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[non_exhaustive]
pub struct ProtocolVerdict {
    /// Pass, add, remove, or no valid test.
    pub action: Action,
    /// Why there is no valid test; none otherwise.
    pub reason: Option<NoValidTest>,
    /// The edition applied.
    pub edition: Edition,
    /// The role applied.
    pub role: Role,
    /// Its test of the indoor airflow.
    pub split: SplitCheck,
}

/// The tolerances of a role, °F.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Tolerances {
    /// Superheat of a fixed orifice, either side of its target.
    pub superheat_f: f64,
    /// Subcooling of a valve system, either side of the maker's figure.
    pub subcooling_f: f64,
    /// Lowest superheat of a valve, where the maker gives none.
    pub valve_superheat_lowest_f: f64,
    /// Highest superheat of a valve, where the maker gives none.
    pub valve_superheat_highest_f: f64,
    /// Temperature split, either side of its target.
    pub split_f: f64,
}

/// Lowest outdoor dry bulb of the standard method, °F (RA3.2).
pub const LOWEST_OUTDOOR_F: f64 = 55.0;
/// Lowest return dry bulb, °F (RA3.2, from memory).
pub const LOWEST_RETURN_F: f64 = 70.0;
/// Minutes to run before recording, and again after every adjustment (RA3.2).
pub const SETTLING_MINUTES: f64 = 15.0;

/// Rounding allowance at the edge of a tolerance, °F: a value that went through kelvin must not fail by 1e-13.
const EDGE_F: f64 = 1e-9;

impl Role {
    /// The tolerances of the role (RA3.2; the same in both editions).
    #[must_use]
    pub const fn tolerances(self) -> Tolerances {
        match self {
            Self::Installer => Tolerances {
                superheat_f: 5.0,
                subcooling_f: 3.0,
                valve_superheat_lowest_f: 4.0,
                valve_superheat_highest_f: 25.0,
                split_f: 3.0,
            },
            Self::Verifier => Tolerances {
                superheat_f: 6.0,
                subcooling_f: 4.0,
                valve_superheat_lowest_f: 3.0,
                valve_superheat_highest_f: 26.0,
                split_f: 4.0,
            },
        }
    }
}

impl Tolerances {
    /// The superheat that a valve must hold, lowest and highest, K: around the maker's figure where there is one.
    #[must_use]
    pub fn valve_superheat_k(&self, reading: &Reading) -> (f64, f64) {
        match reading.target_superheat {
            Some(target) => {
                let band = self.superheat_f * KELVIN_PER_FAHRENHEIT;
                (target.kelvin() - band, target.kelvin() + band)
            }
            None => (
                self.valve_superheat_lowest_f * KELVIN_PER_FAHRENHEIT,
                self.valve_superheat_highest_f * KELVIN_PER_FAHRENHEIT,
            ),
        }
    }
}

/// Where a deviation lies against a band, both in kelvin: -1 below, 0 within, 1 above.
pub(crate) fn side(deviation_k: f64, band_f: f64) -> i32 {
    let band = (band_f + EDGE_F) * KELVIN_PER_FAHRENHEIT;
    i32::from(deviation_k > band) - i32::from(deviation_k < -band)
}

/// Whether the compressor is staged or variable and was not held in its maker's charging mode.
pub(crate) fn capacity_is_not_held(reading: &Reading) -> bool {
    let staged = match reading.compressor {
        Some(Compressor::TwoStage | Compressor::Variable) => true,
        Some(Compressor::SingleSpeed) => false,
        // A stage without a compressor kind betrays a staged one.
        None => matches!(reading.stage, Some(Stage::Low | Stage::High)),
    };
    staged && reading.stage != Some(Stage::MakerChargingMode)
}

impl Protocol {
    /// The protocol's verdict on a reading.
    ///
    /// Fixed orifice: superheat against the maker's figure or the table. Valve: subcooling against the maker's figure,
    /// with the superheat inside what a valve must hold. Outdoor and return dry bulb must be known, and
    /// [`LOWEST_OUTDOOR_F`] and [`LOWEST_RETURN_F`] at least; a reading that says it was taken less than
    /// [`SETTLING_MINUTES`] after a change has no valid test. A discharge pressure never stands in for a liquid
    /// pressure here.
    ///
    /// ```
    /// use satline::charge::{Action, NoValidTest, Protocol};
    /// use satline::reading::Reading;
    /// let verdict = Protocol::default().verdict(&Reading::default());
    /// assert_eq!(verdict.action, Action::NoValidTest);
    /// assert_eq!(verdict.reason, Some(NoValidTest::MeasurementMissing));
    /// ```
    #[must_use]
    pub fn verdict(&self, reading: &Reading) -> ProtocolVerdict {
        let (action, reason) = match self.test(reading) {
            Ok(action) => (action, None),
            Err(reason) => (Action::NoValidTest, Some(reason)),
        };
        ProtocolVerdict { action, reason, edition: self.edition, role: self.role, split: self.split_check(reading) }
    }

    fn test(&self, reading: &Reading) -> Result<Action, NoValidTest> {
        prerequisites(reading)?;
        match reading.metering.ok_or(NoValidTest::MeasurementMissing)? {
            Metering::FixedOrifice => self.superheat_test(reading),
            Metering::ThermostaticValve | Metering::ElectronicValve => self.subcooling_test(reading),
        }
    }

    fn superheat_test(&self, reading: &Reading) -> Result<Action, NoValidTest> {
        let target = match (reading.target_superheat, reading.return_wet_bulb, reading.outdoor_dry_bulb) {
            (Some(maker), ..) => maker.kelvin(),
            (None, Some(wet_bulb), Some(outdoor)) => sloped_superheat(wet_bulb, outdoor)?.kelvin,
            _ => return Err(NoValidTest::MeasurementMissing),
        };
        let superheat = superheat_k(reading)?;
        // More superheat than the target asks for more refrigerant.
        Ok(match side(superheat - target, self.role.tolerances().superheat_f) {
            1 => Action::Add,
            -1 => Action::Remove,
            _ => Action::Pass,
        })
    }

    fn subcooling_test(&self, reading: &Reading) -> Result<Action, NoValidTest> {
        if reading.metering_place == Some(MeteringPlace::Outdoor) {
            return Err(NoValidTest::MeteringOutdoors);
        }
        let target = reading.target_subcooling.ok_or(NoValidTest::MakerTargetMissing)?.kelvin();
        let superheat = superheat_k(reading)?;
        let subcooling = subcooling_k(reading)?;
        let tolerances = self.role.tolerances();
        let edge = EDGE_F * KELVIN_PER_FAHRENHEIT;
        let (lowest, highest) = tolerances.valve_superheat_k(reading);
        Ok(match side(subcooling - target, tolerances.subcooling_f) {
            1 => Action::Remove,
            -1 => Action::Add,
            _ if superheat < lowest - edge || superheat > highest + edge => return Err(NoValidTest::ValveOutOfControl),
            _ => Action::Pass,
        })
    }

    fn split_check(&self, reading: &Reading) -> SplitCheck {
        let (Some(return_air), Some(supply), Some(wet_bulb)) =
            (reading.return_dry_bulb, reading.supply_dry_bulb, reading.return_wet_bulb)
        else {
            return SplitCheck::NotTested;
        };
        if reading.mode == Some(Mode::Heating) {
            return SplitCheck::NotTested;
        }
        let Ok(target) = sloped_split(return_air, wet_bulb) else {
            return SplitCheck::NotTested;
        };
        let deviation = return_air.kelvin() - supply.kelvin() - target.kelvin;
        match side(deviation, self.role.tolerances().split_f) {
            1 => SplitCheck::Above,
            -1 => SplitCheck::Below,
            _ => SplitCheck::Within,
        }
    }
}

/// What is known to rule the test out comes before what is not known.
fn prerequisites(reading: &Reading) -> Result<(), NoValidTest> {
    if reading.mode == Some(Mode::Heating) {
        return Err(NoValidTest::HeatingMode);
    }
    if capacity_is_not_held(reading) {
        return Err(NoValidTest::NotAtFullCapacity);
    }
    if contradiction(reading).is_some() {
        return Err(NoValidTest::ReadingContradicts);
    }
    let below = |air: Option<crate::quantity::AirTemperature>, lowest: f64| {
        air.is_some_and(|air| air.fahrenheit() < lowest - EDGE_F)
    };
    if below(reading.outdoor_dry_bulb, LOWEST_OUTDOOR_F) {
        return Err(NoValidTest::OutdoorTooCold);
    }
    if below(reading.return_dry_bulb, LOWEST_RETURN_F) {
        return Err(NoValidTest::ReturnTooCold);
    }
    if reading.minutes_since_change.is_some_and(|minutes| minutes.minutes() < SETTLING_MINUTES) {
        return Err(NoValidTest::NotSettled);
    }
    match (reading.outdoor_dry_bulb, reading.return_dry_bulb) {
        (Some(_), Some(_)) => Ok(()),
        _ => Err(NoValidTest::MeasurementMissing),
    }
}

fn superheat_k(reading: &Reading) -> Result<f64, NoValidTest> {
    match (reading.refrigerant, reading.suction_line_temperature, reading.suction_pressure) {
        (Some(refrigerant), Some(line), Some(pressure)) => match refrigerant.superheat(line, pressure) {
            Ok(superheat) => Ok(superheat.kelvin()),
            Err(_) => Err(NoValidTest::ReadingContradicts),
        },
        _ => Err(NoValidTest::MeasurementMissing),
    }
}

fn subcooling_k(reading: &Reading) -> Result<f64, NoValidTest> {
    match (reading.refrigerant, reading.liquid_line_temperature, reading.liquid_pressure) {
        (Some(refrigerant), Some(line), Some(pressure)) => match refrigerant.subcooling(line, pressure) {
            Ok(subcooling) => Ok(subcooling.kelvin()),
            Err(_) => Err(NoValidTest::ReadingContradicts),
        },
        _ => Err(NoValidTest::MeasurementMissing),
    }
}
