//! How every function answers: a status returned, the result through a pointer.

use crate::generated::codes::{SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_OK};

/// A result, or the status that says why there is none.
pub(crate) type Answer<T> = Result<T, i32>;

/// Computes, writes the result through `out` if there is one, and gives the status.
///
/// # Safety
/// `out` is null or may be written as a `T`.
#[inline]
pub(crate) unsafe fn answer<T>(out: *mut T, compute: impl FnOnce() -> Answer<T>) -> i32 {
    if out.is_null() {
        return SATLINE_STATUS_NULL_POINTER;
    }
    match compute() {
        Ok(value) => {
            // SAFETY: not null, and the caller promises that what is not null may be written.
            unsafe { out.write(value) };
            SATLINE_STATUS_OK
        }
        Err(status) => status,
    }
}

/// Empties a structure of which nothing but the size is not zero. Written as zeros: an empty one as a constant would take
/// its whole size of a board's flash.
///
/// # Safety
/// `out` is null or may be written as a `T`, which begins with its `struct_size` and may be all zeros.
pub(crate) unsafe fn emptied<T>(out: *mut T, struct_size: u32) -> i32 {
    if out.is_null() {
        return SATLINE_STATUS_NULL_POINTER;
    }
    if struct_size as usize != size_of::<T>() {
        return SATLINE_STATUS_BAD_STRUCT_SIZE;
    }
    // SAFETY: not null, and the caller promises the rest.
    unsafe {
        out.write_bytes(0, 1);
        out.cast::<u32>().write(struct_size);
    }
    SATLINE_STATUS_OK
}

/// The status of a core error.
#[inline]
pub(crate) fn status(error: satline::Error) -> i32 {
    error.code()
}

/// What a pointer points at, or the status for null.
///
/// # Safety
/// `pointer` is null or points at a valid `T` that nothing changes meanwhile.
#[inline]
pub(crate) unsafe fn given<'a, T>(pointer: *const T) -> Answer<&'a T> {
    // SAFETY: promised by the caller.
    unsafe { pointer.as_ref() }.ok_or(SATLINE_STATUS_NULL_POINTER)
}

/// A C string, or the status for null. Bytes that are not UTF-8 end the string: no known name has any.
///
/// # Safety
/// `text` is null or points at a string that ends with a zero byte.
pub(crate) unsafe fn text<'a>(text: *const core::ffi::c_char) -> Answer<&'a str> {
    if text.is_null() {
        return Err(SATLINE_STATUS_NULL_POINTER);
    }
    // SAFETY: not null, and the caller promises the zero byte.
    let text = unsafe { core::ffi::CStr::from_ptr(text) };
    Ok(text.to_str().unwrap_or("?"))
}

/// What is given unless it is the -1 that stands for "not known" or "the default"; any other negative number is refused
/// further on.
#[inline]
pub(crate) fn unless_unset(value: f64) -> Option<f64> {
    (value != -1.0).then_some(value)
}
