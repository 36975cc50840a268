//! Tubes in C.

use crate::answer::{Answer, answer, status, text};
use crate::generated::codes::SATLINE_STATUS_UNKNOWN_CHOICE;
use core::ffi::c_char;
use satline::lineset::{self, Temper};

/// A tube of a line set. This structure never changes; one filled by the functions below may be copied.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct Tube {
    /// Inside diameter, metres.
    pub inside_diameter_m: f64,
    /// One standard uncertainty of it, metres.
    pub inside_diameter_uncertainty_m: f64,
    /// Outside diameter, metres; 0 where only the inside diameter is known.
    pub outside_diameter_m: f64,
    /// Wall thickness, metres; 0 where only the inside diameter is known.
    pub wall_m: f64,
}

impl Tube {
    pub(crate) const EMPTY: Self =
        Self { inside_diameter_m: 0.0, inside_diameter_uncertainty_m: 0.0, outside_diameter_m: 0.0, wall_m: 0.0 };

    fn of(tube: &lineset::Tube) -> Self {
        Self {
            inside_diameter_m: tube.inside_diameter_m(),
            inside_diameter_uncertainty_m: tube.inside_diameter_uncertainty_m(),
            outside_diameter_m: tube.outside_diameter_m().unwrap_or(0.0),
            wall_m: tube.wall_m().unwrap_or(0.0),
        }
    }

    /// The core's tube; a structure that was filled by hand is checked as any other input.
    pub(crate) fn given(&self) -> Answer<lineset::Tube> {
        let tube = if self.outside_diameter_m == 0.0 {
            lineset::Tube::from_inside_diameter_m(self.inside_diameter_m)
        } else {
            lineset::Tube::from_outside_diameter_m(self.outside_diameter_m, self.wall_m)
        };
        tube.and_then(|tube| tube.with_inside_diameter_uncertainty_m(self.inside_diameter_uncertainty_m))
            .map_err(status)
    }
}

/// Finds a tube by its name: of ASTM B280 by its outside diameter in inches, "3/8", "1-1/8" or "1 1/8 in"; of EN 12735-1
/// by outside diameter and wall in millimetres, "10x1", or "10 mm" where there is one wall to it.
///
/// temper: SATLINE_TEMPER_ANNEALED or SATLINE_TEMPER_DRAWN for that ASTM B280 tube; 0 for either standard, annealed where
/// it exists.
///
/// Status: SATLINE_STATUS_UNKNOWN_CHOICE (no such size, or no such temper), SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_tube_find(name: *const c_char, temper: i32, tube: *mut Tube) -> i32 {
    let find = || -> Answer<Tube> {
        // SAFETY: the header asks for a string.
        let name = unsafe { text(name) }?;
        let found = match temper {
            0 => lineset::Tube::named(name),
            number => lineset::Tube::b280(name, Temper::from_number(number).ok_or(SATLINE_STATUS_UNKNOWN_CHOICE)?),
        };
        found.map(|tube| Tube::of(&tube)).map_err(status)
    };
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(tube, find) }
}

/// A tube of that inside diameter, known within a caliper's 0.1 mm.
///
/// inside_diameter_m: metres.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE, SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_tube_from_inside_diameter_m(inside_diameter_m: f64, tube: *mut Tube) -> i32 {
    let make = || lineset::Tube::from_inside_diameter_m(inside_diameter_m).map(|tube| Tube::of(&tube)).map_err(status);
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(tube, make) }
}

/// A tube of that outside diameter and wall thickness, with a standard tube's tolerances.
///
/// outside_diameter_m, wall_m: metres. The wall must stay below the radius.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE (also a wall that leaves no bore), SATLINE_STATUS_NOT_FINITE,
/// SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_tube_from_outside_diameter_m(
    outside_diameter_m: f64,
    wall_m: f64,
    tube: *mut Tube,
) -> i32 {
    let make = || {
        let made = lineset::Tube::from_outside_diameter_m(outside_diameter_m, wall_m);
        made.map(|tube| Tube::of(&tube)).map_err(status)
    };
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(tube, make) }
}
