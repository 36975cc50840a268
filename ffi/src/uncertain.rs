//! A value with its standard uncertainty, in C.

use crate::answer::{Answer, given, status};
use satline::uncertain;

/// A value with one standard uncertainty, both in the unit that the argument's name states. An instrument's limit of
/// error becomes a standard uncertainty by dividing by 1.73; 0 where the value is taken as known. This structure never
/// changes.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct Uncertain {
    pub value: f64,
    pub standard_uncertainty: f64,
}

impl Uncertain {
    pub(crate) const EMPTY: Self = Self { value: 0.0, standard_uncertainty: 0.0 };

    pub(crate) fn of(found: uncertain::Uncertain) -> Self {
        Self { value: found.value, standard_uncertainty: found.standard_uncertainty }
    }

    pub(crate) fn checked(&self) -> Answer<uncertain::Uncertain> {
        uncertain::Uncertain::new(self.value, self.standard_uncertainty).map_err(status)
    }
}

/// What a pointer points at, checked.
///
/// # Safety
/// `pointer` is null or points at a value that nothing changes meanwhile.
pub(crate) unsafe fn taken(pointer: *const Uncertain) -> Answer<uncertain::Uncertain> {
    // SAFETY: promised by the caller.
    unsafe { given(pointer) }?.checked()
}
