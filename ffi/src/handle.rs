//! The refrigerant handle.

use crate::answer::{Answer, given};
use crate::generated::codes::{SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_VERSION_MISMATCH};
use core::ffi::c_void;
use satline::saturation::SaturationCurves;

/// The handle version of this library.
pub(crate) const HANDLE_VERSION: u32 = 1;

/// A refrigerant: one of the objects below, or found by name. Programs pass its address and never look inside. Its
/// size never changes, because an exported object may be copied into the program that uses it.
#[repr(C)]
pub struct Refrigerant {
    /// Version of what `core` points at.
    pub version: u32,
    /// The saturation curves, inside the library.
    pub core: *const c_void,
}

// SAFETY: a handle is never changed, and what it points at is a constant.
unsafe impl Sync for Refrigerant {}

impl Refrigerant {
    /// The handle of these curves.
    pub(crate) const fn of(curves: &'static SaturationCurves) -> Self {
        Self { version: HANDLE_VERSION, core: core::ptr::from_ref(curves).cast() }
    }
}

/// The curves behind a handle.
///
/// # Safety
/// `refrigerant` is null or one of this library's handles, or a copy of one.
#[inline]
pub(crate) unsafe fn curves(refrigerant: *const Refrigerant) -> Answer<&'static SaturationCurves> {
    // SAFETY: promised by the caller.
    let refrigerant = unsafe { given(refrigerant) }?;
    if refrigerant.version != HANDLE_VERSION {
        return Err(SATLINE_STATUS_VERSION_MISMATCH);
    }
    // SAFETY: a handle of this version points at one of the library's curves, which live for ever, or is null where
    // a program zeroed it.
    unsafe { refrigerant.core.cast::<SaturationCurves>().as_ref() }.ok_or(SATLINE_STATUS_NULL_POINTER)
}
