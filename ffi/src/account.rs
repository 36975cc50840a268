//! The charge by the scale, and how fast a unit leaks, in C.

use crate::answer::{Answer, answer, given, status, unless_unset};
use crate::generated::codes::{
    SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_OK, SATLINE_STATUS_UNKNOWN_CHOICE,
};
use crate::uncertain::{Uncertain, taken};
use satline::visit::{self, CHARGE_TOLERANCE, SCALE_SHARE, Start, charge_account, leak_rate};

/// Choice: what was inside before the weighings is not known.
pub const SATLINE_START_UNKNOWN: i32 = 1;
/// Choice: nothing was inside, the unit was evacuated.
pub const SATLINE_START_EVACUATED: i32 = 2;
/// Choice: start_kg was inside.
pub const SATLINE_START_HOLDS: i32 = 3;

/// What a unit should hold, kilograms. This structure never changes.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct ExpectedCharge {
    /// Charge of the nameplate; it covers the length of line set that the maker states.
    pub nameplate_kg: Uncertain,
    /// What the line set holds beyond that length, negative where it is shorter: satline_line_set_charge.mass_kg.
    pub line_set_kg: Uncertain,
    /// Driers and accessories.
    pub accessories_kg: Uncertain,
}

/// Refrigerant that was weighed in or out. This structure never changes.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct Weighing {
    /// Above zero what was added, below zero what was recovered, kilograms.
    pub change_kg: f64,
    /// Standard uncertainty of this weighing alone, kilograms: the scale's step, hoses.
    pub standard_uncertainty_kg: f64,
}

/// What should be inside and what was before. Start with satline_account_init.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct Account {
    /// sizeof(satline_account), set by satline_account_init.
    pub struct_size: u32,
    /// SATLINE_START_...; SATLINE_START_UNKNOWN by satline_account_init.
    pub start: i32,
    /// With SATLINE_START_HOLDS: what was inside, kilograms.
    pub start_kg: Uncertain,
    /// What should be inside.
    pub expected: ExpectedCharge,
    /// Standard uncertainty of the scale that all weighings share, as a share of the mass; -1 (by satline_account_init) for
    /// a limit of error of 0.5 % (common practice).
    pub scale_share: f64,
    /// How far the mass inside may be from the expected, as a share of it; -1 (by satline_account_init) for 5 % (common
    /// practice).
    pub tolerance: f64,
}

/// What the scale says. Start with satline_charge_account_init. What is not known is 0.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct ChargeAccount {
    /// sizeof(satline_charge_account), set by satline_charge_account_init.
    pub struct_size: u32,
    /// SATLINE_CHARGE_BALANCE_...; 0 before an answer. With SATLINE_CHARGE_BALANCE_UNKNOWN only expected_kg is known.
    pub balance: i32,
    /// What should be inside, kilograms: its value goes into a reading as SATLINE_FIELD_EXPECTED_CHARGE_KG.
    pub expected_kg: Uncertain,
    /// What is inside, kilograms: its value goes into a reading as SATLINE_FIELD_WEIGHED_CHARGE_KG.
    pub inside_kg: Uncertain,
    /// Inside less expected, kilograms.
    pub deviation_kg: Uncertain,
    /// The same as a share of the expected mass; 0 where nothing is expected.
    pub deviation: Uncertain,
}

/// An addition in a unit's log. This structure never changes.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct Addition {
    /// Days since any day: only differences count.
    pub day: f64,
    /// What had to be added to make the charge right, kilograms.
    pub mass_kg: Uncertain,
}

/// How fast a unit leaks. Start with satline_leak_rate_init.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct LeakRate {
    /// sizeof(satline_leak_rate), set by satline_leak_rate_init.
    pub struct_size: u32,
    /// Always 0.
    pub reserved: u32,
    /// From the first to the last addition, days.
    pub days: f64,
    /// What was added after the first, which only made the charge right, kilograms.
    pub lost_kg: Uncertain,
    /// Kilograms a year.
    pub kg_a_year: Uncertain,
    /// Share of the full charge a year.
    pub share_a_year: Uncertain,
    /// The last addition alone over the days since the one before, at most a year of them, as a share of the full charge a
    /// year: the annualizing method of 40 CFR 82.152 (from memory: read the rule).
    pub last_share_a_year: f64,
}

// Their layouts are part of the binary interface.
const _: () = assert!(size_of::<ExpectedCharge>() == 48 && size_of::<Account>() == 88);
const _: () = assert!(size_of::<ChargeAccount>() == 72 && size_of::<LeakRate>() == 72);
// Lists are taken as they are.
const _: () = assert!(size_of::<Weighing>() == size_of::<visit::Weighing>() && size_of::<Weighing>() == 16);
const _: () = assert!(size_of::<Addition>() == size_of::<visit::Addition>() && size_of::<Addition>() == 24);
const _: () = assert!(core::mem::offset_of!(visit::Weighing, standard_uncertainty_kg) == 8);
const _: () = assert!(core::mem::offset_of!(visit::Addition, mass_kg) == 8);
const _: () = assert!(core::mem::offset_of!(satline::uncertain::Uncertain, standard_uncertainty) == 8);

impl ExpectedCharge {
    fn checked(&self) -> Answer<visit::ExpectedCharge> {
        Ok(visit::ExpectedCharge {
            nameplate_kg: self.nameplate_kg.checked()?,
            line_set_kg: self.line_set_kg.checked()?,
            accessories_kg: self.accessories_kg.checked()?,
        })
    }
}

impl Account {
    const SIZE: u32 = size_of::<Self>() as u32;

    const EMPTY: Self = Self {
        struct_size: Self::SIZE,
        start: SATLINE_START_UNKNOWN,
        start_kg: Uncertain::EMPTY,
        expected: ExpectedCharge {
            nameplate_kg: Uncertain::EMPTY,
            line_set_kg: Uncertain::EMPTY,
            accessories_kg: Uncertain::EMPTY,
        },
        scale_share: -1.0,
        tolerance: -1.0,
    };

    fn start(&self) -> Answer<Start> {
        match self.start {
            SATLINE_START_UNKNOWN => Ok(Start::Unknown),
            SATLINE_START_EVACUATED => Ok(Start::Evacuated),
            SATLINE_START_HOLDS => self.start_kg.checked().map(Start::Holds),
            _ => Err(SATLINE_STATUS_UNKNOWN_CHOICE),
        }
    }
}

impl ChargeAccount {
    const SIZE: u32 = size_of::<Self>() as u32;

    const EMPTY: Self = Self {
        struct_size: Self::SIZE,
        balance: 0,
        expected_kg: Uncertain::EMPTY,
        inside_kg: Uncertain::EMPTY,
        deviation_kg: Uncertain::EMPTY,
        deviation: Uncertain::EMPTY,
    };
}

impl LeakRate {
    const SIZE: u32 = size_of::<Self>() as u32;

    const EMPTY: Self = Self {
        struct_size: Self::SIZE,
        reserved: 0,
        days: 0.0,
        lost_kg: Uncertain::EMPTY,
        kg_a_year: Uncertain::EMPTY,
        share_a_year: Uncertain::EMPTY,
        last_share_a_year: 0.0,
    };
}

/// A list as the core reads it: `U` has the layout of `T`.
///
/// # Safety
/// `list` is null or points at `count` of them; both types have one layout.
unsafe fn listed<'a, T, U>(list: *const T, count: u32) -> Answer<&'a [U]> {
    if count == 0 {
        return Ok(&[]);
    }
    if list.is_null() {
        return Err(SATLINE_STATUS_NULL_POINTER);
    }
    // SAFETY: not null, of one layout, and the caller promises count of them.
    Ok(unsafe { core::slice::from_raw_parts(list.cast::<U>(), usize::try_from(count).unwrap_or(usize::MAX)) })
}

/// Empties the question. struct_size: sizeof(satline_account).
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_account_init(account: *mut Account, struct_size: u32) -> i32 {
    let right = struct_size == Account::SIZE;
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { answer(account, || if right { Ok(Account::EMPTY) } else { Err(SATLINE_STATUS_BAD_STRUCT_SIZE) }) }
}

/// Empties the answer. struct_size: sizeof(satline_charge_account).
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_charge_account_init(found: *mut ChargeAccount, struct_size: u32) -> i32 {
    let right = struct_size == ChargeAccount::SIZE;
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { answer(found, || if right { Ok(ChargeAccount::EMPTY) } else { Err(SATLINE_STATUS_BAD_STRUCT_SIZE) }) }
}

/// Empties the answer. struct_size: sizeof(satline_leak_rate).
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_leak_rate_init(rate: *mut LeakRate, struct_size: u32) -> i32 {
    let right = struct_size == LeakRate::SIZE;
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { answer(rate, || if right { Ok(LeakRate::EMPTY) } else { Err(SATLINE_STATUS_BAD_STRUCT_SIZE) }) }
}

/// What a unit should hold, kilograms: nameplate, line set and accessories together.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE, SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_expected_charge_kg(
    expected: *const ExpectedCharge,
    expected_kg: *mut Uncertain,
) -> i32 {
    // SAFETY: the header asks for the parts.
    let compute = || unsafe { given(expected) }?.checked()?.total_kg().map(Uncertain::of).map_err(status);
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(expected_kg, compute) }
}

/// Compares what a unit holds by the scale with what it should hold. count weighings (may be 0, then weighings may be
/// null). The unit's own label comes first; show the cautions of satline_cautions_for with SATLINE_SITUATION_CHARGING.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE (also where more was recovered than was ever inside), SATLINE_STATUS_NOT_FINITE,
/// SATLINE_STATUS_UNKNOWN_CHOICE, SATLINE_STATUS_BAD_STRUCT_SIZE (question or answer not initialised),
/// SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_charge_account_of(
    account: *const Account,
    weighings: *const Weighing,
    count: u32,
    found: *mut ChargeAccount,
) -> i32 {
    let compare = || -> Answer<()> {
        // SAFETY: the header asks for a question.
        let account = unsafe { given(account) }?;
        // SAFETY: the header asks for an answer that may be read and written.
        let found = unsafe { found.as_mut() }.ok_or(SATLINE_STATUS_NULL_POINTER)?;
        if account.struct_size != Account::SIZE || found.struct_size != ChargeAccount::SIZE {
            return Err(SATLINE_STATUS_BAD_STRUCT_SIZE);
        }
        // SAFETY: the header asks for count of them; the layouts are the same, as asserted above.
        let weighings: &[visit::Weighing] = unsafe { listed(weighings, count) }?;
        let scale_share = unless_unset(account.scale_share).unwrap_or(SCALE_SHARE);
        let tolerance = unless_unset(account.tolerance).unwrap_or(CHARGE_TOLERANCE);
        let (expected, start) = (account.expected.checked()?, account.start()?);
        let answer = charge_account(&expected, start, weighings, scale_share, tolerance).map_err(status)?;
        let maybe = |value: Option<_>| value.map_or(Uncertain::EMPTY, Uncertain::of);
        *found = ChargeAccount {
            struct_size: ChargeAccount::SIZE,
            balance: answer.balance.number(),
            expected_kg: Uncertain::of(answer.expected_kg),
            inside_kg: maybe(answer.inside_kg),
            deviation_kg: maybe(answer.deviation_kg),
            deviation: maybe(answer.deviation),
        };
        Ok(())
    };
    compare().err().unwrap_or(SATLINE_STATUS_OK)
}

/// How fast a unit leaks, by what had to be added from time to time: count additions in the order of time, each taken to
/// have made the charge right; the first begins the account. Which rates oblige to repair, and when, is in the rule that
/// holds where the unit stands.
///
/// Status: SATLINE_STATUS_NOT_AVAILABLE (fewer than two additions), SATLINE_STATUS_OUT_OF_RANGE (also for days out of
/// order), SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_BAD_STRUCT_SIZE (answer not initialised), SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_leak_rate_of(
    full_charge_kg: *const Uncertain,
    additions: *const Addition,
    count: u32,
    rate: *mut LeakRate,
) -> i32 {
    let compute = || -> Answer<()> {
        // SAFETY: the header asks for a value.
        let full = unsafe { taken(full_charge_kg) }?;
        // SAFETY: the header asks for an answer that may be read and written.
        let rate = unsafe { rate.as_mut() }.ok_or(SATLINE_STATUS_NULL_POINTER)?;
        if rate.struct_size != LeakRate::SIZE {
            return Err(SATLINE_STATUS_BAD_STRUCT_SIZE);
        }
        // SAFETY: the header asks for count of them; the layouts are the same, as asserted above.
        let additions: &[visit::Addition] = unsafe { listed(additions, count) }?;
        let found = leak_rate(full, additions).map_err(status)?;
        *rate = LeakRate {
            struct_size: LeakRate::SIZE,
            reserved: 0,
            days: found.days,
            lost_kg: Uncertain::of(found.lost_kg),
            kg_a_year: Uncertain::of(found.kg_a_year),
            share_a_year: Uncertain::of(found.share_a_year),
            last_share_a_year: found.last_share_a_year,
        };
        Ok(())
    };
    compute().err().unwrap_or(SATLINE_STATUS_OK)
}
