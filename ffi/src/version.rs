//! Whether header and library belong together.

use crate::generated::codes::{SATLINE_STATUS_OK, SATLINE_STATUS_VERSION_MISMATCH};
use core::ffi::{CStr, c_char};

/// Version of the binary interface: 0x10000 times the major plus the minor number. The minor number rises when
/// something is added, the major one when something that existed changes.
pub const SATLINE_ABI_VERSION: u32 = 0x1_0000;

const VERSION: &CStr = match CStr::from_bytes_with_nul(concat!(env!("CARGO_PKG_VERSION"), "\0").as_bytes()) {
    Ok(version) => version,
    Err(_) => c"",
};

/// The library's version, such as "0.1.0". Never null.
#[unsafe(no_mangle)]
pub extern "C" fn satline_version() -> *const c_char {
    VERSION.as_ptr()
}

/// Checks that the library can serve a program built with another header. Call it once at start, with
/// SATLINE_ABI_VERSION: `satline_check_abi(SATLINE_ABI_VERSION)`.
///
/// Returns SATLINE_STATUS_OK when the major numbers are equal and the header's minor number is not above the
/// library's, else SATLINE_STATUS_VERSION_MISMATCH.
#[unsafe(no_mangle)]
pub extern "C" fn satline_check_abi(header_abi_version: u32) -> i32 {
    let major = |version: u32| version >> 16;
    if major(header_abi_version) == major(SATLINE_ABI_VERSION) && header_abi_version <= SATLINE_ABI_VERSION {
        SATLINE_STATUS_OK
    } else {
        SATLINE_STATUS_VERSION_MISMATCH
    }
}
