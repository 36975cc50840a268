//! How much of a flammable refrigerant a room may hold, and how small the room may be.
//!
//! IEC 60335-2-40, annex GG, as widely quoted: in an unventilated room m_max = 2.5 LFL^(5/4) h0 √A (kg, kg/m³, m, m²), for
//! charges above m1 and up to m2. The factors of m1, m2 and m3 and the clause numbers are from memory.

use super::answers::{Assumption, Clause, Installation, RoomOutcome, RoomReason};
use crate::bounds;
use crate::error::Error;
use crate::math;
use crate::quantity::Mass;
use crate::refrigerant::identity::{Identity, SafetyClass};

/// Coefficient of the formula.
const COEFFICIENT: f64 = 2.5;
/// Exponent of the lower flammability limit.
const LIMIT_EXPONENT: f64 = 1.25;
/// m1, m2 and m3 over the lower flammability limit, m³: classes 2 and 3, and class 2L. From memory.
const BANDS: [f64; 3] = [4.0, 26.0, 130.0];
const BANDS_2L: [f64; 3] = [6.0, 52.0, 260.0];
/// The greatest height of the widely quoted table, m.
const HIGHEST_OF_TABLE_M: f64 = 2.2;
/// The share of the lower flammability limit that the concentration is compared with.
const QUARTER: f64 = 0.25;
/// Height to which the concentration is spread where no ceiling is given, m.
pub const DEFAULT_CEILING_HEIGHT_M: f64 = 2.2;

impl Installation {
    /// The height h0 that the standard takes for it, m.
    #[must_use]
    pub const fn height_m(self) -> f64 {
        match self {
            Self::Floor => 0.6,
            Self::Window => 1.0,
            Self::Wall => 1.8,
            Self::Ceiling => HIGHEST_OF_TABLE_M,
        }
    }
}

/// What is known: the room, the charge, or both.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Given {
    /// The floor area of the room, m²: how much may be charged?
    Area(f64),
    /// The charge: how small may the room be?
    Charge(Mass),
    /// Both: does the charge fit?
    Both(f64, Mass),
}

/// A question about a room.
#[derive(Debug, Clone, Copy)]
pub struct Room<'a> {
    /// The refrigerant.
    pub refrigerant: &'a Identity,
    /// Height above the floor at which refrigerant would come out, m ([`bounds::RELEASE_HEIGHT`]);
    /// [`Installation::height_m`] has the standard's own.
    pub height_m: f64,
    /// Area ([`bounds::ROOM_AREA`]), charge, or both.
    pub given: Given,
    /// Height of the ceiling, m ([`bounds::CEILING_HEIGHT`]), for the concentration only; [`DEFAULT_CEILING_HEIGHT_M`] if
    /// none.
    pub ceiling_height_m: Option<f64>,
    /// Whether the room is ventilated mechanically; then the formula does not apply.
    pub ventilated: bool,
}

impl<'a> Room<'a> {
    /// An unventilated room.
    #[must_use]
    pub const fn new(refrigerant: &'a Identity, height_m: f64, given: Given) -> Self {
        Self { refrigerant, height_m, given, ceiling_height_m: None, ventilated: false }
    }
}

/// The charges at which the rules of the standard change.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bands {
    /// m1: up to it no room is too small, kg.
    pub m1_kg: f64,
    /// m2: up to it the formula for unventilated rooms applies, kg.
    pub m2_kg: f64,
    /// m3: above it not indoors, kg.
    pub m3_kg: f64,
}

/// The charge spread evenly over the room: for information, not a rule of the clause.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Concentration {
    /// Charge over volume, kg/m³.
    pub kg_m3: f64,
    /// Of the lower flammability limit, 1 being all of it.
    pub share_of_limit: f64,
    /// Whether that is more than a quarter.
    pub exceeds_quarter: bool,
    /// The height to which it is spread, m.
    pub ceiling_height_m: f64,
}

/// The answer.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct RoomLimit {
    /// Whether the rule gives a limit.
    pub outcome: RoomOutcome,
    /// Why.
    pub reason: RoomReason,
    /// Where the rule stands.
    pub clause: Clause,
    /// The lower flammability limit used, kg/m³, where one is known.
    pub lower_flammability_limit_kg_m3: Option<f64>,
    /// The height used, m.
    pub height_m: f64,
    /// m1, m2 and m3 of this refrigerant, where the standard's bands are for it.
    pub bands: Option<Bands>,
    /// The most that this room may hold by the formula, kg.
    pub largest_charge_kg: Option<f64>,
    /// The smallest room for this charge by the formula, m².
    pub smallest_area_m2: Option<f64>,
    /// Where room and charge are both known and the clause judges them: whether the charge is within its limit.
    pub within_limit: Option<bool>,
    /// Where room and charge are both known and the refrigerant's limit is too.
    pub concentration: Option<Concentration>,
    assumptions: u32,
}

impl RoomLimit {
    /// What the answer takes for granted, in the order of their numbers; nothing where no clause is applied.
    pub fn assumptions(&self) -> impl Iterator<Item = Assumption> + '_ {
        Assumption::ALL.iter().copied().filter(|assumption| self.assumptions & bit(*assumption) != 0)
    }

    /// The assumptions as a bit set: bit `n` stands for the assumption with number `n`.
    #[must_use]
    pub const fn assumption_bits(&self) -> u32 {
        self.assumptions
    }
}

const fn bit(assumption: Assumption) -> u32 {
    1_u32.wrapping_shl(assumption.number() as u32)
}

/// Judges a room and a charge of flammable refrigerant.
///
/// Where the rule does not apply the outcome says so and no number is given: see [`RoomReason`]. The answer is no permit:
/// editions differ, the unit's label and the local code decide.
///
/// # Errors
/// [`Error::OutOfRange`] or [`Error::NotFinite`] outside [`bounds::RELEASE_HEIGHT`], [`bounds::ROOM_AREA`] or
/// [`bounds::CEILING_HEIGHT`], and for a unit above the ceiling given.
///
/// ```
/// use satline::quantity::Mass;
/// use satline::refrigerant::identity::R454B;
/// use satline::safety::{Given, Installation, Room, RoomOutcome, room_limit};
/// // A wall unit with 3.0 kg of R-454B (demo) in a bedroom of 12 m².
/// let charge = Mass::from_kilograms(3.0)?;
/// let found = room_limit(&Room::new(&R454B, Installation::Wall.height_m(), Given::Both(12.0, charge)))?;
/// assert_eq!((found.outcome, found.within_limit), (RoomOutcome::RoomLimit, Some(true)));
/// assert!((found.largest_charge_kg.unwrap() - 3.42).abs() < 0.01);
/// assert!((found.smallest_area_m2.unwrap() - 9.24).abs() < 0.01);
/// # Ok::<(), satline::Error>(())
/// ```
pub fn room_limit(room: &Room<'_>) -> Result<RoomLimit, Error> {
    let checked = Checked::of(room)?;
    let limit = room.refrigerant.lower_flammability_limit_kg_m3;
    let bands = limit.and_then(|limit| Bands::of(room.refrigerant.safety_class, limit));
    let mut answer = RoomLimit {
        outcome: RoomOutcome::NotApplicable,
        reason: RoomReason::LimitUnknown,
        clause: Clause::None,
        lower_flammability_limit_kg_m3: limit,
        height_m: checked.height_m,
        bands,
        largest_charge_kg: None,
        smallest_area_m2: None,
        within_limit: None,
        concentration: limit.and_then(|limit| checked.concentration(limit)),
        assumptions: 0,
    };
    match (unsuitable(room), limit, bands) {
        (None, Some(limit), Some(bands)) => {
            let per_root = COEFFICIENT * math::pow(limit, LIMIT_EXPONENT) * checked.height_m;
            answer.judge(&checked, per_root, &bands);
        }
        (Some(reason), ..) => answer.reason = reason,
        _ => {}
    }
    answer.assume(checked.height_m);
    Ok(answer)
}

/// Largest charge in kilograms that an unventilated room of that floor area may hold, refrigerant coming out at that
/// height. [`room_limit`] says more: clause, assumptions, bands.
///
/// # Errors
/// [`Error::OutOfRange`] or [`Error::NotFinite`] as [`room_limit`]; [`Error::NotAvailable`] with the reason where the
/// formula does not apply: the refrigerant does not burn, its limit is unknown, or the result lies outside m1 to m2.
///
/// ```
/// use satline::refrigerant::identity::{R32, R410A};
/// assert!((satline::safety::largest_charge_kg(&R32, 20.0, 2.2)? - 5.62).abs() < 0.005);
/// assert!(satline::safety::largest_charge_kg(&R410A, 20.0, 2.2).is_err());
/// # Ok::<(), satline::Error>(())
/// ```
pub fn largest_charge_kg(refrigerant: &Identity, area_m2: f64, height_m: f64) -> Result<f64, Error> {
    let found = room_limit(&Room::new(refrigerant, height_m, Given::Area(area_m2)))?;
    let quantity = "largest charge for a room";
    found.largest_charge_kg.ok_or(Error::NotAvailable { quantity, reason: found.reason.sentence() })
}

/// Smallest floor area in square metres of an unventilated room for a charge, refrigerant coming out at that height.
///
/// # Errors
/// As [`largest_charge_kg`]. A charge up to m1 needs no smallest room by this clause: that too is
/// [`Error::NotAvailable`], since it is not a room of 0 m².
pub fn smallest_area_m2(refrigerant: &Identity, charge: Mass, height_m: f64) -> Result<f64, Error> {
    let found = room_limit(&Room::new(refrigerant, height_m, Given::Charge(charge)))?;
    let quantity = "smallest room for a charge";
    found.smallest_area_m2.ok_or(Error::NotAvailable { quantity, reason: found.reason.sentence() })
}

/// Why no formula is for this refrigerant and room, whatever its size.
fn unsuitable(room: &Room<'_>) -> Option<RoomReason> {
    match room.refrigerant.safety_class {
        SafetyClass::Unclassified => Some(RoomReason::Unclassified),
        SafetyClass::A1 | SafetyClass::B1 => Some(RoomReason::DoesNotBurn),
        SafetyClass::B2L | SafetyClass::B2 | SafetyClass::B3 => Some(RoomReason::Toxic),
        SafetyClass::A2L | SafetyClass::A2 | SafetyClass::A3 => room.ventilated.then_some(RoomReason::Ventilated),
    }
}

impl Bands {
    fn of(class: SafetyClass, limit: f64) -> Option<Self> {
        let [m1, m2, m3] = match class {
            SafetyClass::A2L => BANDS_2L,
            SafetyClass::A2 | SafetyClass::A3 => BANDS,
            _ => return None,
        };
        Some(Self { m1_kg: m1 * limit, m2_kg: m2 * limit, m3_kg: m3 * limit })
    }
}

/// A question whose values are inside their bounds.
struct Checked {
    height_m: f64,
    area_m2: Option<f64>,
    charge_kg: Option<f64>,
    ceiling_height_m: f64,
}

impl Checked {
    fn of(room: &Room<'_>) -> Result<Self, Error> {
        let (area, charge) = match room.given {
            Given::Area(area) => (Some(area), None),
            Given::Charge(charge) => (None, Some(charge)),
            Given::Both(area, charge) => (Some(area), Some(charge)),
        };
        let height_m = bounds::RELEASE_HEIGHT.check(room.height_m)?;
        let ceiling_height_m = match room.ceiling_height_m {
            Some(ceiling) => {
                let ceiling = bounds::CEILING_HEIGHT.check(ceiling)?;
                let bound = bounds::RELEASE_HEIGHT;
                let advice = "a unit hangs below the ceiling: check both heights";
                bounds::within(bound.quantity, bound.unit, height_m, bound.lower, ceiling, advice)?;
                ceiling
            }
            None => DEFAULT_CEILING_HEIGHT_M,
        };
        Ok(Self {
            height_m,
            area_m2: area.map(|area| bounds::ROOM_AREA.check(area)).transpose()?,
            charge_kg: charge.map(Mass::kilograms),
            ceiling_height_m,
        })
    }

    fn concentration(&self, limit: f64) -> Option<Concentration> {
        let kg_m3 = self.charge_kg? / (self.area_m2? * self.ceiling_height_m);
        Some(Concentration {
            kg_m3,
            share_of_limit: kg_m3 / limit,
            exceeds_quarter: kg_m3 > QUARTER * limit,
            ceiling_height_m: self.ceiling_height_m,
        })
    }
}

impl RoomLimit {
    /// Decides by the charge where there is one, else by what the room would hold. `per_root`: kg per √m².
    fn judge(&mut self, checked: &Checked, per_root: f64, bands: &Bands) {
        let room_holds = checked.area_m2.map(|area| per_root * math::sqrt(area));
        let inside = |mass: f64| mass > bands.m1_kg && mass <= bands.m2_kg;
        (self.outcome, self.reason) = match (checked.charge_kg, room_holds) {
            (Some(charge), _) if charge <= bands.m1_kg => (RoomOutcome::NoRoomLimit, RoomReason::BelowBand),
            (Some(charge), _) if charge > bands.m3_kg => (RoomOutcome::NotApplicable, RoomReason::AboveLargest),
            (Some(charge), _) if charge > bands.m2_kg => (RoomOutcome::NotApplicable, RoomReason::AboveBand),
            (Some(_), _) => (RoomOutcome::RoomLimit, RoomReason::WithinBand),
            (None, Some(holds)) if holds <= bands.m1_kg => (RoomOutcome::NotApplicable, RoomReason::RoomBelowBand),
            (None, Some(holds)) if holds > bands.m2_kg => (RoomOutcome::NotApplicable, RoomReason::RoomAboveBand),
            (None, _) => (RoomOutcome::RoomLimit, RoomReason::WithinBand),
        };
        match self.outcome {
            RoomOutcome::RoomLimit => {
                self.clause = Clause::UnventilatedRoom;
                self.largest_charge_kg = room_holds.filter(|holds| inside(*holds));
                self.smallest_area_m2 = checked.charge_kg.map(|charge| (charge / per_root) * (charge / per_root));
                self.within_limit =
                    checked.charge_kg.and_then(|charge| room_holds.map(|room_holds| charge <= room_holds));
            }
            RoomOutcome::NoRoomLimit => {
                self.clause = Clause::SmallCharge;
                self.within_limit = checked.area_m2.map(|_| true);
            }
            RoomOutcome::NotApplicable => {}
        }
    }

    fn assume(&mut self, height_m: f64) {
        let clause = self.clause != Clause::None;
        let formula = self.clause == Clause::UnventilatedRoom;
        let given = [
            (Assumption::Unventilated, formula),
            (Assumption::ReleaseHeight, formula),
            (Assumption::WholeCharge, formula),
            (Assumption::FlammabilityLimit, self.lower_flammability_limit_kg_m3.is_some()),
            (Assumption::Bands, self.bands.is_some()),
            (Assumption::FixedUnit, clause),
            (Assumption::EditionsDiffer, true),
            (Assumption::HeightAboveTable, formula && height_m > HIGHEST_OF_TABLE_M),
            (Assumption::CeilingHeight, self.concentration.is_some()),
        ];
        self.assumptions =
            given.into_iter().filter(|(_, holds)| *holds).fold(0, |bits, (assumption, _)| bits | bit(assumption));
    }
}
