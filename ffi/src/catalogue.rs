//! Refrigerants by name. Only `satline_refrigerant_find` names them all; a program that does not call it carries only
//! the refrigerants it uses.

use crate::answer::{Answer, answer, status, text};
use crate::generated::{handles, text as words};
use crate::handle::{Refrigerant, curves};
use core::ffi::c_char;
use satline::Error;

/// Finds a refrigerant by its ASHRAE 34 designation, ignoring case, hyphens and spaces: "R-410A", "r410a". A program
/// that calls it carries every refrigerant; use the objects, such as &SATLINE_R410A, where flash is short.
///
/// Status: SATLINE_STATUS_UNKNOWN_REFRIGERANT (see satline_refrigerant_nearest), SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_refrigerant_find(name: *const c_char, refrigerant: *mut *const Refrigerant) -> i32 {
    let find = || -> Answer<*const Refrigerant> {
        // SAFETY: the header asks for a string.
        let found = satline::refrigerant::find(unsafe { text(name) }?).map_err(status)?;
        handles::ALL
            .iter()
            .copied()
            .find(|handle| core::ptr::eq(handle.core.cast(), found.curves))
            .map(core::ptr::from_ref)
            .ok_or(crate::generated::codes::SATLINE_STATUS_UNKNOWN_REFRIGERANT)
    };
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(refrigerant, find) }
}

/// The designation in the catalogue that is nearest to a name: what to offer after
/// SATLINE_STATUS_UNKNOWN_REFRIGERANT. The string lives for ever.
///
/// Status: SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_refrigerant_nearest(name: *const c_char, designation: *mut *const c_char) -> i32 {
    let nearest = || -> Answer<*const c_char> {
        // SAFETY: the header asks for a string.
        let nearest = match satline::refrigerant::find(unsafe { text(name) }?) {
            Ok(found) => found.designation(),
            Err(Error::UnknownRefrigerant { nearest }) => nearest,
            Err(other) => return Err(status(other)),
        };
        Ok(words::designation(nearest).as_ptr())
    };
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(designation, nearest) }
}

/// The ASHRAE 34 designation of a refrigerant, such as "R-410A". The string lives for ever.
///
/// Status: SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_VERSION_MISMATCH.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_refrigerant_designation(
    refrigerant: *const Refrigerant,
    designation: *mut *const c_char,
) -> i32 {
    // SAFETY: the header asks for a handle and for a pointer that may be written.
    unsafe {
        answer(designation, || curves(refrigerant).map(|curves| words::designation(curves.designation()).as_ptr()))
    }
}
