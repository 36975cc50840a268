//! The full refrigerant: with saturated densities and enthalpies and, where the library has them, equations of state.
//!
//! A handle is {version, core}, whatever the library was built with. What `core` points at, the core's record, is laid out
//! otherwise with the feature `eos` than without: it names its equation of state or has no such field. That is safe because
//! handle and functions come from one build. A program never reads the record; it gets the pointer either from an object
//! in the library it is linked with or, where a system copies exported objects into the program, from that library at
//! load time. So the version need not tell the two builds apart: a program built against one runs with the other, unless
//! it calls functions of states, which a library without `eos` lacks, and the linker or loader says so by name.

use crate::answer::{Answer, answer, given, status, text};
use crate::generated::codes::{
    SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_UNKNOWN_REFRIGERANT, SATLINE_STATUS_VERSION_MISMATCH,
};
use crate::generated::{full, text as words};
use crate::handle::Refrigerant;
use core::ffi::{c_char, c_void};
use satline::refrigerant::Refrigerant as Record;

/// The version of full handles of this library.
pub(crate) const FULL_VERSION: u32 = 1;

/// A refrigerant with its full record: saturated densities and enthalpies from compact curves and, where the library is
/// built with equations of state (on hosts; satline_state_... functions), any other state. One of the objects below whose
/// names end in _FULL, or found by name. Programs pass its address and never look inside. Its size never changes. A program
/// that names one carries its record and no other; &SATLINE_R410A alone, without _FULL, is smaller and has all that
/// superheat, subcooling and a diagnosis need.
#[repr(C)]
pub struct RefrigerantFull {
    /// Version of what `core` points at.
    pub version: u32,
    /// The full record, inside the library.
    pub core: *const c_void,
}

// SAFETY: a handle is never changed, and what it points at is a constant.
unsafe impl Sync for RefrigerantFull {}

impl RefrigerantFull {
    /// The handle of this record.
    pub(crate) const fn of(record: &'static Record) -> Self {
        Self { version: FULL_VERSION, core: core::ptr::from_ref(record).cast() }
    }
}

/// The record behind a handle.
///
/// # Safety
/// `refrigerant` is null or one of this library's full handles, or a copy of one.
pub(crate) unsafe fn record(refrigerant: *const RefrigerantFull) -> Answer<&'static Record> {
    // SAFETY: promised by the caller.
    let refrigerant = unsafe { given(refrigerant) }?;
    if refrigerant.version != FULL_VERSION {
        return Err(SATLINE_STATUS_VERSION_MISMATCH);
    }
    // SAFETY: a handle of this version points at one of the library's records, which live for ever, or is null where a
    // program zeroed it.
    unsafe { refrigerant.core.cast::<Record>().as_ref() }.ok_or(SATLINE_STATUS_NULL_POINTER)
}

/// Finds a full refrigerant by its ASHRAE 34 designation, ignoring case, hyphens and spaces: "R-410A", "r410a". A
/// program that calls it carries the full record of every refrigerant; use the objects, such as &SATLINE_R410A_FULL, where
/// size matters.
///
/// Status: SATLINE_STATUS_UNKNOWN_REFRIGERANT (see satline_refrigerant_nearest), SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_full_find(name: *const c_char, refrigerant: *mut *const RefrigerantFull) -> i32 {
    let find = || -> Answer<*const RefrigerantFull> {
        // SAFETY: the header asks for a string.
        let found = satline::refrigerant::find(unsafe { text(name) }?).map_err(status)?;
        full::ALL
            .iter()
            .copied()
            .find(|handle| core::ptr::eq(handle.core.cast(), found))
            .map(core::ptr::from_ref)
            .ok_or(SATLINE_STATUS_UNKNOWN_REFRIGERANT)
    };
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(refrigerant, find) }
}

/// The ASHRAE 34 designation of a full refrigerant, such as "R-410A". The string lives for ever.
///
/// Status: SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_VERSION_MISMATCH.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_full_designation(
    refrigerant: *const RefrigerantFull,
    designation: *mut *const c_char,
) -> i32 {
    // SAFETY: the header asks for a handle and for a pointer that may be written.
    unsafe {
        answer(designation, || record(refrigerant).map(|record| words::designation(record.designation()).as_ptr()))
    }
}

/// The saturation curves of a full refrigerant, for functions that take a satline_refrigerant: writes the handle, which
/// the caller owns and may keep or copy, into *curves. It is as good as the object without _FULL, such as SATLINE_R410A,
/// and the program carries nothing more for it.
///
/// Status: SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_VERSION_MISMATCH.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_full_curves(refrigerant: *const RefrigerantFull, curves: *mut Refrigerant) -> i32 {
    // SAFETY: the header asks for a handle and for a pointer that may be written.
    unsafe { answer(curves, || record(refrigerant).map(|record| Refrigerant::of(record.curves))) }
}
