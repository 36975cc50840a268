//! A reading in C: a plain structure that the caller owns.

use crate::answer::{Answer, answer, emptied, status, text};
use crate::generated::codes::{
    SATLINE_CHOICE_COMPRESSOR, SATLINE_CHOICE_METERING, SATLINE_CHOICE_METERING_PLACE, SATLINE_CHOICE_MODE,
    SATLINE_CHOICE_OPERATION, SATLINE_CHOICE_REFRIGERANT_CONDITION, SATLINE_CHOICE_STAGE,
    SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_OK, SATLINE_STATUS_UNKNOWN_FIELD,
};
use crate::generated::text as words;
use core::ffi::c_char;
use satline::reading::{Compressor, Metering, MeteringPlace, Mode, Operation, RefrigerantCondition, Stage};
use satline::{Error, Field};

/// How many numeric fields a reading has room for.
pub const SATLINE_READING_FIELDS: usize = 64;
/// How many choices a reading has room for.
pub const SATLINE_READING_CHOICES: usize = 8;

/// One set of measurements taken at a unit. Start with satline_reading_init, then set what was measured; what is not
/// set is reported as missing, with the measurement that would help.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct Reading {
    /// sizeof(satline_reading), set by satline_reading_init.
    pub struct_size: u32,
    /// Must be 0.
    pub reserved: u32,
    /// Bit n is set when field n is given.
    pub present: u64,
    /// Field n (SATLINE_FIELD_...), in the unit of its name.
    pub value: [f64; SATLINE_READING_FIELDS],
    /// Choice n (SATLINE_CHOICE_...): 0 when not given.
    pub choice: [i32; SATLINE_READING_CHOICES],
}

// A reading's layout is part of the binary interface.
const _: () = assert!(size_of::<Reading>() == 560);
const _: () = assert!(satline::reading::FIELD_COUNT <= SATLINE_READING_FIELDS);

impl Reading {
    const SIZE: u32 = size_of::<Self>() as u32;
}

/// A caller's reading to be changed.
///
/// # Safety
/// `reading` is null or may be read and written as its struct_size says.
unsafe fn known<'a>(reading: *mut Reading) -> Answer<&'a mut Reading> {
    // SAFETY: promised by the caller.
    let reading = unsafe { reading.as_mut() }.ok_or(SATLINE_STATUS_NULL_POINTER)?;
    if reading.struct_size == Reading::SIZE { Ok(reading) } else { Err(SATLINE_STATUS_BAD_STRUCT_SIZE) }
}

fn done(answer: Answer<()>) -> i32 {
    answer.err().unwrap_or(SATLINE_STATUS_OK)
}

/// Empties a reading. struct_size: sizeof(satline_reading), so that a newer library knows how large yours is.
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_reading_init(reading: *mut Reading, struct_size: u32) -> i32 {
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes; zeros are one of these.
    unsafe { emptied(reading, struct_size) }
}

/// Sets a numeric field. field: SATLINE_FIELD_... . value: in the unit of the field's name (all pressures absolute).
///
/// Status: SATLINE_STATUS_UNKNOWN_FIELD, SATLINE_STATUS_OUT_OF_RANGE (see satline_field_limits),
/// SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_reading_set(reading: *mut Reading, field: i32, value: f64) -> i32 {
    let set = || {
        // SAFETY: the header asks for a reading.
        let reading = unsafe { known(reading) }?;
        let value = Field::from_number(field).and_then(|field| field.bound().check(value)).map_err(status)?;
        let place = usize::try_from(field).ok().and_then(|index| reading.value.get_mut(index));
        *place.ok_or(SATLINE_STATUS_UNKNOWN_FIELD)? = value;
        reading.present |= 1_u64.wrapping_shl(field as u32);
        Ok(())
    };
    done(set())
}

/// Sets a choice. choice: SATLINE_CHOICE_... . value: one of that choice's constants, such as
/// SATLINE_METERING_FIXED_ORIFICE.
///
/// Status: SATLINE_STATUS_UNKNOWN_FIELD (no such choice), SATLINE_STATUS_UNKNOWN_CHOICE (no such value),
/// SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_reading_set_choice(reading: *mut Reading, choice: i32, value: i32) -> i32 {
    let set = || {
        // SAFETY: the header asks for a reading.
        let reading = unsafe { known(reading) }?;
        put_choice(None, choice, value)?;
        let place = usize::try_from(choice).ok().and_then(|index| reading.choice.get_mut(index));
        *place.ok_or(SATLINE_STATUS_UNKNOWN_FIELD)? = value;
        Ok(())
    };
    done(set())
}

/// Checks a choice, and sets it in a core reading if there is one.
fn put_choice(reading: Option<&mut satline::Reading>, choice: i32, value: i32) -> Answer<()> {
    macro_rules! put {
        ($field:ident, $kind:ident) => {{
            let value = $kind::from_number(value).map_err(status)?;
            if let Some(reading) = reading {
                reading.$field = Some(value);
            }
        }};
    }
    match choice {
        SATLINE_CHOICE_METERING => put!(metering, Metering),
        SATLINE_CHOICE_METERING_PLACE => put!(metering_place, MeteringPlace),
        SATLINE_CHOICE_MODE => put!(mode, Mode),
        SATLINE_CHOICE_COMPRESSOR => put!(compressor, Compressor),
        SATLINE_CHOICE_STAGE => put!(stage, Stage),
        SATLINE_CHOICE_OPERATION => put!(operation, Operation),
        SATLINE_CHOICE_REFRIGERANT_CONDITION => put!(refrigerant_condition, RefrigerantCondition),
        _ => return Err(SATLINE_STATUS_UNKNOWN_FIELD),
    }
    Ok(())
}

impl Reading {
    /// Fills an empty core reading. The caller may have written the structure without our functions, so everything is
    /// checked again.
    pub(crate) fn fill(&self, reading: &mut satline::Reading) -> Answer<()> {
        if self.struct_size != Self::SIZE || self.reserved != 0 {
            return Err(SATLINE_STATUS_BAD_STRUCT_SIZE);
        }
        for (number, value) in (0_i32..).zip(self.value.iter()) {
            if (self.present >> (number as u32 & 63)) & 1 == 1 {
                Field::from_number(number).and_then(|field| reading.set(field, *value)).map_err(status)?;
            }
        }
        for (number, value) in (0_i32..).zip(self.choice.iter()) {
            if *value != 0 {
                put_choice(Some(reading), number, *value)?;
            }
        }
        Ok(())
    }
}

/// The number of a field from its name, such as "suction_pressure_pa".
///
/// Status: SATLINE_STATUS_UNKNOWN_FIELD (see satline_field_nearest), SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_field_find(name: *const c_char, field: *mut i32) -> i32 {
    // SAFETY: the header asks for a string and a pointer that may be written.
    unsafe { answer(field, || Field::from_name(text(name)?).map(|field| field as i32).map_err(status)) }
}

/// The field name that is nearest to a name: what to offer after SATLINE_STATUS_UNKNOWN_FIELD. The string lives for
/// ever.
///
/// Status: SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_field_nearest(name: *const c_char, nearest: *mut *const c_char) -> i32 {
    let find = || -> Answer<*const c_char> {
        // SAFETY: the header asks for a string.
        let name = match Field::from_name(unsafe { text(name) }?) {
            Ok(field) => field.name(),
            Err(Error::UnknownField { nearest }) => nearest,
            Err(other) => return Err(status(other)),
        };
        let field = Field::from_name(name).map_err(status)?;
        Ok(words::field_name(field as i32).as_ptr())
    };
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(nearest, find) }
}

/// The name of a field, with its unit. The string lives for ever.
///
/// Status: SATLINE_STATUS_UNKNOWN_FIELD, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_field_name(field: i32, name: *mut *const c_char) -> i32 {
    let find = || Field::from_number(field).map(|field| words::field_name(field as i32).as_ptr()).map_err(status);
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(name, find) }
}

/// The range that a field accepts, limits included.
#[repr(C)]
pub struct FieldLimits {
    /// In the unit of the field's name.
    pub lowest: f64,
    pub highest: f64,
}

/// The range that a field accepts: what to show after SATLINE_STATUS_OUT_OF_RANGE.
///
/// Status: SATLINE_STATUS_UNKNOWN_FIELD, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_field_limits(field: i32, limits: *mut FieldLimits) -> i32 {
    let find = || {
        let bound = Field::from_number(field).map_err(status)?.bound();
        Ok(FieldLimits { lowest: bound.lower, highest: bound.upper })
    };
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(limits, find) }
}
