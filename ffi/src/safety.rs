//! Room limits, recovery levels and cautions in C.

use crate::answer::{Answer, answer, given, status, unless_unset};
use crate::generated::codes::{
    SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_OK, SATLINE_STATUS_UNKNOWN_CHOICE,
};
use crate::handle::{Refrigerant, curves};
use satline::quantity::{Atmosphere, Mass};
use satline::safety::{self, Given, Installation, Situation, cautions_for, recovery_level, room_limit};

/// Most cautions that satline_cautions_for writes.
pub const SATLINE_CAUTIONS: usize = 24;

/// Bit of satline_room_limit.given: lower_flammability_limit_kg_m3 is set.
pub const SATLINE_ROOM_GIVEN_FLAMMABILITY_LIMIT: u32 = 1;
/// Bit of satline_room_limit.given: m1_kg, m2_kg and m3_kg are set.
pub const SATLINE_ROOM_GIVEN_BANDS: u32 = 2;
/// Bit of satline_room_limit.given: largest_charge_kg is set.
pub const SATLINE_ROOM_GIVEN_LARGEST_CHARGE: u32 = 4;
/// Bit of satline_room_limit.given: smallest_area_m2 is set.
pub const SATLINE_ROOM_GIVEN_SMALLEST_AREA: u32 = 8;
/// Bit of satline_room_limit.given: within_limit is set.
pub const SATLINE_ROOM_GIVEN_WITHIN_LIMIT: u32 = 16;
/// Bit of satline_room_limit.given: the concentration and what belongs to it are set.
pub const SATLINE_ROOM_GIVEN_CONCENTRATION: u32 = 32;

/// A question about a room and a charge of flammable refrigerant. Start with satline_room_init; set the height or the
/// installation, and the area, the charge or both.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct Room {
    /// sizeof(satline_room), set by satline_room_init.
    pub struct_size: u32,
    /// SATLINE_INSTALLATION_..., whose usual height is then taken; 0 (by satline_room_init) where height_m is given.
    pub installation: i32,
    /// Height above the floor at which refrigerant would come out, metres.
    pub height_m: f64,
    /// Floor area of the room, square metres; -1 (by satline_room_init) where it is asked for.
    pub area_m2: f64,
    /// The charge, kilograms; -1 (by satline_room_init) where it is asked for.
    pub charge_kg: f64,
    /// Height of the ceiling, metres, for the concentration only; -1 (by satline_room_init) for 2.2 m.
    pub ceiling_height_m: f64,
    /// 1 where the room is ventilated mechanically, else 0.
    pub ventilated: i32,
    /// Always 0.
    pub reserved: i32,
}

/// The answer about a room. Start with satline_room_limit_init. What is not given is 0.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct RoomLimit {
    /// sizeof(satline_room_limit), set by satline_room_limit_init.
    pub struct_size: u32,
    /// SATLINE_ROOM_OUTCOME_...; 0 before an answer.
    pub outcome: i32,
    /// SATLINE_ROOM_REASON_...
    pub reason: i32,
    /// SATLINE_ROOM_CLAUSE_...
    pub clause: i32,
    /// Bit n is set for assumption n (SATLINE_ROOM_ASSUMPTION_...).
    pub assumptions: u32,
    /// SATLINE_ROOM_GIVEN_... bits.
    pub given: u32,
    /// 1 where the charge is within the limit of the room, 0 where it is not.
    pub within_limit: i32,
    /// 1 where the concentration is more than a quarter of the lower flammability limit.
    pub exceeds_quarter: i32,
    /// Kilograms a cubic metre.
    pub lower_flammability_limit_kg_m3: f64,
    /// The height used, metres.
    pub height_m: f64,
    /// Up to it no room is too small by the clause.
    pub m1_kg: f64,
    /// Up to it the formula for unventilated rooms applies.
    pub m2_kg: f64,
    /// Above it not indoors.
    pub m3_kg: f64,
    /// The most that this room may hold by the formula.
    pub largest_charge_kg: f64,
    /// The smallest room for this charge by the formula.
    pub smallest_area_m2: f64,
    /// The charge spread evenly over the room, for information.
    pub concentration_kg_m3: f64,
    /// That over the lower flammability limit.
    pub share_of_limit: f64,
    /// The height to which it is spread, metres.
    pub ceiling_height_m: f64,
}

/// How far refrigerant is recovered. Start with satline_recovery_level_init. What is not given is 0.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct RecoveryLevel {
    /// sizeof(satline_recovery_level), set by satline_recovery_level_init.
    pub struct_size: u32,
    /// SATLINE_APPLIANCE_CLASS_...; 0 before an answer.
    pub appliance_class: i32,
    /// Bit n is set for note n (SATLINE_RECOVERY_NOTE_...).
    pub notes: u32,
    /// 1 where the charge is 200 lb or more.
    pub is_large: i32,
    /// 1 where vacuum_in_hg is set; the level of a low-pressure appliance is stated as an absolute pressure.
    pub is_vacuum: i32,
    /// 1 where pressure_at_104_f_pa is set; not above or next to the critical temperature.
    pub has_pressure_at_104_f: i32,
    /// The level as the rule states it: inches of mercury below the standard atmosphere.
    pub vacuum_in_hg: f64,
    /// The level, pascals, absolute.
    pub pressure_pa: f64,
    /// What a gauge shows that reads zero in the air here, pascals: negative is a vacuum.
    pub gauge_pa: f64,
    /// Pressure of the liquid at 104 degrees Fahrenheit, by which the appliance is classed, pascals, absolute.
    pub pressure_at_104_f_pa: f64,
}

// Their layouts are part of the binary interface.
const _: () = assert!(size_of::<Room>() == 48 && size_of::<RoomLimit>() == 112 && size_of::<RecoveryLevel>() == 56);
const _: () = assert!(safety::CAUTIONS_MAX <= SATLINE_CAUTIONS);

const fn flag(given: bool, bit: u32) -> u32 {
    if given { bit } else { 0 }
}

impl Room {
    const SIZE: u32 = size_of::<Self>() as u32;

    const EMPTY: Self = Self {
        struct_size: Self::SIZE,
        installation: 0,
        height_m: 0.0,
        area_m2: -1.0,
        charge_kg: -1.0,
        ceiling_height_m: -1.0,
        ventilated: 0,
        reserved: 0,
    };
}

impl RoomLimit {
    const SIZE: u32 = size_of::<Self>() as u32;

    const EMPTY: Self = Self {
        struct_size: Self::SIZE,
        outcome: 0,
        reason: 0,
        clause: 0,
        assumptions: 0,
        given: 0,
        within_limit: 0,
        exceeds_quarter: 0,
        lower_flammability_limit_kg_m3: 0.0,
        height_m: 0.0,
        m1_kg: 0.0,
        m2_kg: 0.0,
        m3_kg: 0.0,
        largest_charge_kg: 0.0,
        smallest_area_m2: 0.0,
        concentration_kg_m3: 0.0,
        share_of_limit: 0.0,
        ceiling_height_m: 0.0,
    };

    fn of(found: &safety::RoomLimit) -> Self {
        let (bands, concentration) = (found.bands, found.concentration);
        Self {
            struct_size: Self::SIZE,
            outcome: found.outcome.number(),
            reason: found.reason.number(),
            clause: found.clause.number(),
            assumptions: found.assumption_bits(),
            given: flag(found.lower_flammability_limit_kg_m3.is_some(), SATLINE_ROOM_GIVEN_FLAMMABILITY_LIMIT)
                | flag(bands.is_some(), SATLINE_ROOM_GIVEN_BANDS)
                | flag(found.largest_charge_kg.is_some(), SATLINE_ROOM_GIVEN_LARGEST_CHARGE)
                | flag(found.smallest_area_m2.is_some(), SATLINE_ROOM_GIVEN_SMALLEST_AREA)
                | flag(found.within_limit.is_some(), SATLINE_ROOM_GIVEN_WITHIN_LIMIT)
                | flag(concentration.is_some(), SATLINE_ROOM_GIVEN_CONCENTRATION),
            within_limit: i32::from(found.within_limit == Some(true)),
            exceeds_quarter: i32::from(concentration.is_some_and(|spread| spread.exceeds_quarter)),
            lower_flammability_limit_kg_m3: found.lower_flammability_limit_kg_m3.unwrap_or(0.0),
            height_m: found.height_m,
            m1_kg: bands.map_or(0.0, |bands| bands.m1_kg),
            m2_kg: bands.map_or(0.0, |bands| bands.m2_kg),
            m3_kg: bands.map_or(0.0, |bands| bands.m3_kg),
            largest_charge_kg: found.largest_charge_kg.unwrap_or(0.0),
            smallest_area_m2: found.smallest_area_m2.unwrap_or(0.0),
            concentration_kg_m3: concentration.map_or(0.0, |spread| spread.kg_m3),
            share_of_limit: concentration.map_or(0.0, |spread| spread.share_of_limit),
            ceiling_height_m: concentration.map_or(0.0, |spread| spread.ceiling_height_m),
        }
    }
}

impl RecoveryLevel {
    const SIZE: u32 = size_of::<Self>() as u32;

    const EMPTY: Self = Self {
        struct_size: Self::SIZE,
        appliance_class: 0,
        notes: 0,
        is_large: 0,
        is_vacuum: 0,
        has_pressure_at_104_f: 0,
        vacuum_in_hg: 0.0,
        pressure_pa: 0.0,
        gauge_pa: 0.0,
        pressure_at_104_f_pa: 0.0,
    };
}

/// Empties the question. struct_size: sizeof(satline_room), so that a newer library knows how large yours is.
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_room_init(room: *mut Room, struct_size: u32) -> i32 {
    let empty = || if struct_size == Room::SIZE { Ok(Room::EMPTY) } else { Err(SATLINE_STATUS_BAD_STRUCT_SIZE) };
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { answer(room, empty) }
}

/// Empties the answer. struct_size: sizeof(satline_room_limit).
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_room_limit_init(limit: *mut RoomLimit, struct_size: u32) -> i32 {
    let right = struct_size == RoomLimit::SIZE;
    let empty = || if right { Ok(RoomLimit::EMPTY) } else { Err(SATLINE_STATUS_BAD_STRUCT_SIZE) };
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { answer(limit, empty) }
}

/// How much of a flammable refrigerant an unventilated room may hold, how small the room may be, and whether the charge
/// fits (IEC 60335-2-40, annex GG, as widely quoted: 2.5 LFL^1.25 h sqrt(area), for charges above m1 and up to m2).
///
/// Where the rule is not for the case, the outcome is SATLINE_ROOM_OUTCOME_NOT_APPLICABLE, with its reason and without a
/// number. Show clause and assumptions with every answer: it is no permit, the local code decides.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE (also where neither area nor charge is set), SATLINE_STATUS_NOT_FINITE,
/// SATLINE_STATUS_UNKNOWN_CHOICE (installation, ventilated), SATLINE_STATUS_BAD_STRUCT_SIZE (question or answer not
/// initialised), SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_VERSION_MISMATCH.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_room_check(
    refrigerant: *const Refrigerant,
    room: *const Room,
    limit: *mut RoomLimit,
) -> i32 {
    let check = || -> Answer<()> {
        // SAFETY: the header asks for a handle and a question.
        let (curves, room) = unsafe { (curves(refrigerant)?, given(room)?) };
        // SAFETY: the header asks for an answer that may be read and written.
        let limit = unsafe { limit.as_mut() }.ok_or(SATLINE_STATUS_NULL_POINTER)?;
        if room.struct_size != Room::SIZE || limit.struct_size != RoomLimit::SIZE {
            return Err(SATLINE_STATUS_BAD_STRUCT_SIZE);
        }
        let height_m = match room.installation {
            0 => room.height_m,
            number => Installation::from_number(number).ok_or(SATLINE_STATUS_UNKNOWN_CHOICE)?.height_m(),
        };
        let charge = unless_unset(room.charge_kg).map(Mass::from_kilograms).transpose().map_err(status)?;
        let given = match (unless_unset(room.area_m2), charge) {
            (Some(area), Some(charge)) => Given::Both(area, charge),
            (None, Some(charge)) => Given::Charge(charge),
            // Where neither is set, the area is refused further on.
            (_, None) => Given::Area(room.area_m2),
        };
        let question = safety::Room {
            ceiling_height_m: unless_unset(room.ceiling_height_m),
            ventilated: match room.ventilated {
                0 => false,
                1 => true,
                _ => return Err(SATLINE_STATUS_UNKNOWN_CHOICE),
            },
            ..safety::Room::new(curves.identity, height_m, given)
        };
        *limit = RoomLimit::of(&room_limit(&question).map_err(status)?);
        Ok(())
    };
    check().err().unwrap_or(SATLINE_STATUS_OK)
}

/// Largest charge in kilograms that an unventilated room may hold; satline_room_check says more, and why not.
///
/// area_m2: square metres of floor. height_m: metres above the floor at which refrigerant would come out: floor 0.6,
/// window 1.0, wall 1.8, ceiling 2.2.
///
/// Status: SATLINE_STATUS_NOT_AVAILABLE (the refrigerant does not burn, its limit is unknown, or the formula is not for so
/// small or so large a charge), SATLINE_STATUS_OUT_OF_RANGE, SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_NULL_POINTER,
/// SATLINE_STATUS_VERSION_MISMATCH.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_largest_charge_kg(
    refrigerant: *const Refrigerant,
    area_m2: f64,
    height_m: f64,
    charge_kg: *mut f64,
) -> i32 {
    // SAFETY: the header asks for a handle and for a pointer that may be written.
    unsafe {
        answer(charge_kg, || {
            safety::largest_charge_kg(curves(refrigerant)?.identity, area_m2, height_m).map_err(status)
        })
    }
}

/// Smallest floor area in square metres of an unventilated room for a charge; satline_room_check says more, and why not.
///
/// charge_kg: kilograms. height_m: as satline_largest_charge_kg.
///
/// Status: as satline_largest_charge_kg. SATLINE_STATUS_NOT_AVAILABLE also for a charge so small that the clause asks for
/// no smallest room.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_smallest_area_m2(
    refrigerant: *const Refrigerant,
    charge_kg: f64,
    height_m: f64,
    area_m2: *mut f64,
) -> i32 {
    // SAFETY: the header asks for a handle and for a pointer that may be written.
    unsafe {
        answer(area_m2, || {
            let charge = Mass::from_kilograms(charge_kg).map_err(status)?;
            safety::smallest_area_m2(curves(refrigerant)?.identity, charge, height_m).map_err(status)
        })
    }
}

/// Empties the answer. struct_size: sizeof(satline_recovery_level).
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_recovery_level_init(level: *mut RecoveryLevel, struct_size: u32) -> i32 {
    let right = struct_size == RecoveryLevel::SIZE;
    let empty = || if right { Ok(RecoveryLevel::EMPTY) } else { Err(SATLINE_STATUS_BAD_STRUCT_SIZE) };
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { answer(level, empty) }
}

/// How far an appliance is evacuated by recovery before it is opened: 40 CFR 82.156, table 1, for recovery equipment made
/// on or after 15 November 1993. Read the rule: it has exceptions, named in the notes, and local law may be stricter.
///
/// charge_kg: the appliance's full charge, kilograms. ambient_pressure_pa: pascals, absolute, of the air at the gauge.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE, SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_BAD_STRUCT_SIZE (answer not
/// initialised), SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_VERSION_MISMATCH.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_recovery_level_of(
    refrigerant: *const Refrigerant,
    charge_kg: f64,
    ambient_pressure_pa: f64,
    level: *mut RecoveryLevel,
) -> i32 {
    let find = || -> Answer<()> {
        // SAFETY: the header asks for a handle.
        let curves = unsafe { curves(refrigerant) }?;
        // SAFETY: the header asks for an answer that may be read and written.
        let level = unsafe { level.as_mut() }.ok_or(SATLINE_STATUS_NULL_POINTER)?;
        if level.struct_size != RecoveryLevel::SIZE {
            return Err(SATLINE_STATUS_BAD_STRUCT_SIZE);
        }
        let ambient = Atmosphere::from_pascals(ambient_pressure_pa).map_err(status)?;
        let found = recovery_level(curves, charge_kg, ambient).map_err(status)?;
        *level = RecoveryLevel {
            struct_size: RecoveryLevel::SIZE,
            appliance_class: found.class.number(),
            notes: found.note_bits(),
            is_large: i32::from(found.is_large),
            is_vacuum: i32::from(found.vacuum_in_hg.is_some()),
            has_pressure_at_104_f: i32::from(found.pressure_at_104_f_pa.is_some()),
            vacuum_in_hg: found.vacuum_in_hg.unwrap_or(0.0),
            pressure_pa: found.pressure_pa,
            gauge_pa: found.gauge_pa,
            pressure_at_104_f_pa: found.pressure_at_104_f_pa.unwrap_or(0.0),
        };
        Ok(())
    };
    find().err().unwrap_or(SATLINE_STATUS_OK)
}

/// What can hurt when working with a refrigerant, the most urgent first: numbers for satline_safety_caution_sentence.
///
/// refrigerant: null where it is not known what is inside. situation: SATLINE_SITUATION_... cautions: room for that many;
/// count: how many were written, at most SATLINE_CAUTIONS.
///
/// Status: SATLINE_STATUS_UNKNOWN_CHOICE (situation), SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_VERSION_MISMATCH.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_cautions_for(
    refrigerant: *const Refrigerant,
    situation: i32,
    cautions: *mut i32,
    room: u32,
    count: *mut u32,
) -> i32 {
    let find = || -> Answer<u32> {
        if cautions.is_null() {
            return Err(SATLINE_STATUS_NULL_POINTER);
        }
        let identity = if refrigerant.is_null() {
            None
        } else {
            // SAFETY: the header asks for null or a handle.
            Some(unsafe { curves(refrigerant) }?.identity)
        };
        let situation = Situation::from_number(situation).ok_or(SATLINE_STATUS_UNKNOWN_CHOICE)?;
        let mut written = 0;
        for caution in cautions_for(identity, situation).iter() {
            if written >= room {
                break;
            }
            // SAFETY: not null, and the header asks for room for this many.
            unsafe { cautions.add(written as usize).write(caution.number()) };
            written += 1;
        }
        Ok(written)
    };
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(count, find) }
}
