//! Recovery in C: room in the cylinder before, balance after.

use crate::answer::{Answer, answer, given, status, unless_unset};
use crate::generated::codes::{SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_OK};
use crate::uncertain::Uncertain;
use satline::visit::{self, CHARGE_TOLERANCE};

/// A recovery: before it, and after it where the cylinder was weighed again. Masses in kilograms. Start with
/// satline_recovery_init.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct Recovery {
    /// sizeof(satline_recovery), set by satline_recovery_init.
    pub struct_size: u32,
    /// Always 0.
    pub reserved: u32,
    /// What the unit is expected to hold: satline_expected_charge_kg.
    pub expected_kg: Uncertain,
    /// The most that the cylinder may hold: satline_cylinder_fill.limit_kg. Of an unknown mixture give satline_cylinder_check
    /// everything that it may be, so that the lightest liquid decides.
    pub cylinder_limit_kg: f64,
    /// What is in the cylinder before: the scale less the tare.
    pub before_kg: Uncertain,
    /// What is in it after; value -1 (by satline_recovery_init) where it is not yet known.
    pub after_kg: Uncertain,
    /// How far expected and recovered mass may be apart, as a share of the expected; -1 (by satline_recovery_init) for 5 %
    /// (common practice).
    pub tolerance: f64,
}

/// What follows. Masses in kilograms. Start with satline_recovery_finding_init. What is not known is 0.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct RecoveryFinding {
    /// sizeof(satline_recovery_finding), set by satline_recovery_finding_init.
    pub struct_size: u32,
    /// Whether what is expected goes in: SATLINE_RECOVERY_ROOM_...; 0 before an answer.
    pub room: i32,
    /// How expected and recovered mass compare: SATLINE_RECOVERED_BALANCE_... With SATLINE_RECOVERED_BALANCE_NOT_YET
    /// recovered_kg, deviation_kg and room_after_kg are not known.
    pub balance: i32,
    /// Always 0.
    pub reserved: u32,
    /// Room in the cylinder before; negative where it is overfilled already.
    pub room_kg: Uncertain,
    /// What does not go in and needs another cylinder.
    pub excess_kg: f64,
    /// What came out.
    pub recovered_kg: Uncertain,
    /// Recovered less expected.
    pub deviation_kg: Uncertain,
    /// Room in the cylinder after; negative where it is overfilled.
    pub room_after_kg: f64,
}

// Their layouts are part of the binary interface.
const _: () = assert!(size_of::<Recovery>() == 72 && size_of::<RecoveryFinding>() == 80);

impl Recovery {
    const SIZE: u32 = size_of::<Self>() as u32;

    const EMPTY: Self = Self {
        struct_size: Self::SIZE,
        reserved: 0,
        expected_kg: Uncertain::EMPTY,
        cylinder_limit_kg: 0.0,
        before_kg: Uncertain::EMPTY,
        after_kg: Uncertain { value: -1.0, standard_uncertainty: 0.0 },
        tolerance: -1.0,
    };
}

impl RecoveryFinding {
    const SIZE: u32 = size_of::<Self>() as u32;

    const EMPTY: Self = Self {
        struct_size: Self::SIZE,
        room: 0,
        balance: 0,
        reserved: 0,
        room_kg: Uncertain::EMPTY,
        excess_kg: 0.0,
        recovered_kg: Uncertain::EMPTY,
        deviation_kg: Uncertain::EMPTY,
        room_after_kg: 0.0,
    };
}

/// Empties the question. struct_size: sizeof(satline_recovery).
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_recovery_init(recovery: *mut Recovery, struct_size: u32) -> i32 {
    let right = struct_size == Recovery::SIZE;
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { answer(recovery, || if right { Ok(Recovery::EMPTY) } else { Err(SATLINE_STATUS_BAD_STRUCT_SIZE) }) }
}

/// Empties the answer. struct_size: sizeof(satline_recovery_finding).
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_recovery_finding_init(finding: *mut RecoveryFinding, struct_size: u32) -> i32 {
    let right = struct_size == RecoveryFinding::SIZE;
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { answer(finding, || if right { Ok(RecoveryFinding::EMPTY) } else { Err(SATLINE_STATUS_BAD_STRUCT_SIZE) }) }
}

/// Whether the cylinder has room for what is expected, and whether all of it came out. Show the cautions of
/// satline_cautions_for with SATLINE_SITUATION_RECOVERING: a cylinder full of liquid bursts, and recovery is for licensed
/// people under the local codes.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE (also where the cylinder holds less after than before), SATLINE_STATUS_NOT_FINITE,
/// SATLINE_STATUS_BAD_STRUCT_SIZE (question or answer not initialised), SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_recovery_of(recovery: *const Recovery, finding: *mut RecoveryFinding) -> i32 {
    let judge = || -> Answer<()> {
        // SAFETY: the header asks for a question.
        let recovery = unsafe { given(recovery) }?;
        // SAFETY: the header asks for an answer that may be read and written.
        let finding = unsafe { finding.as_mut() }.ok_or(SATLINE_STATUS_NULL_POINTER)?;
        if recovery.struct_size != Recovery::SIZE || finding.struct_size != RecoveryFinding::SIZE {
            return Err(SATLINE_STATUS_BAD_STRUCT_SIZE);
        }
        let after = unless_unset(recovery.after_kg.value).map(|_| recovery.after_kg.checked()).transpose()?;
        let found = visit::recovery(&visit::Recovery {
            expected_kg: recovery.expected_kg.checked()?,
            cylinder_limit_kg: recovery.cylinder_limit_kg,
            before_kg: recovery.before_kg.checked()?,
            after_kg: after,
            tolerance: unless_unset(recovery.tolerance).unwrap_or(CHARGE_TOLERANCE),
        })
        .map_err(status)?;
        let maybe = |value: Option<_>| value.map_or(Uncertain::EMPTY, Uncertain::of);
        *finding = RecoveryFinding {
            struct_size: RecoveryFinding::SIZE,
            room: found.room.number(),
            balance: found.balance.number(),
            reserved: 0,
            room_kg: Uncertain::of(found.room_kg),
            excess_kg: found.excess_kg,
            recovered_kg: maybe(found.recovered_kg),
            deviation_kg: maybe(found.deviation_kg),
            room_after_kg: found.room_after_kg.unwrap_or(0.0),
        };
        Ok(())
    };
    judge().err().unwrap_or(SATLINE_STATUS_OK)
}
