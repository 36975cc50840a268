//! What is known of the instruments of a reading, in C: a plain structure that the caller owns.

use crate::answer::{Answer, emptied, given, status};
use crate::generated::codes::{
    SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_OK, SATLINE_STATUS_OUT_OF_RANGE,
    SATLINE_STATUS_UNKNOWN_FIELD,
};
use crate::reading::SATLINE_READING_FIELDS;
use satline::Field;

/// The highest number of a group of channels.
pub const SATLINE_HIGHEST_GROUP: i32 = 250;

/// Limits of error of one instrument channel; they add up, and divided by the square root of 3 the sum is one standard
/// uncertainty. Zero all of it, then set what is known. This structure never changes.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct Accuracy {
    /// Share of the reading: of the degrees Celsius of a temperature, of the gauge value of a pressure. 0.5 % is 0.005.
    pub of_reading: f64,
    /// Share of full_scale.
    pub of_full_scale: f64,
    /// The span of the instrument's range, in the field's unit: of a gauge, its highest gauge pressure. 0 if, and only if,
    /// of_full_scale is 0.
    pub full_scale: f64,
    /// In the field's unit.
    pub absolute: f64,
    /// The smallest step shown, in the field's unit; half of it is added.
    pub resolution: f64,
    /// 0 for an error of its own. Channels with the same other number, up to SATLINE_HIGHEST_GROUP, share one error, all but
    /// the step shown: both gauges of one manifold that were zeroed against the same reference.
    pub group: i32,
    /// Must be 0.
    pub reserved: i32,
}

/// Accuracies of the fields of a reading. Start with satline_accuracies_init, then set those that are known; any other
/// field keeps the accuracy that the verification protocol asks of instruments.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct Accuracies {
    /// sizeof(satline_accuracies), set by satline_accuracies_init.
    pub struct_size: u32,
    /// Must be 0.
    pub reserved: u32,
    /// Bit n is set when the accuracy of field n is given.
    pub present: u64,
    /// The accuracy of field n (SATLINE_FIELD_...).
    pub accuracy: [Accuracy; SATLINE_READING_FIELDS],
}

// Their layouts are part of the binary interface.
const _: () = assert!(size_of::<Accuracy>() == 48);
const _: () = assert!(size_of::<Accuracies>() == 16 + 64 * 48);

impl Accuracy {
    #[cfg(test)]
    const NONE: Self = Self {
        of_reading: 0.0,
        of_full_scale: 0.0,
        full_scale: 0.0,
        absolute: 0.0,
        resolution: 0.0,
        group: 0,
        reserved: 0,
    };

    fn checked(&self) -> Answer<satline::reading::Accuracy> {
        if self.reserved != 0 {
            return Err(SATLINE_STATUS_BAD_STRUCT_SIZE);
        }
        let group = u8::try_from(self.group).ok().filter(|group| i32::from(*group) <= SATLINE_HIGHEST_GROUP);
        let accuracy = satline::reading::Accuracy {
            of_reading: self.of_reading,
            of_full_scale: self.of_full_scale,
            full_scale: self.full_scale,
            absolute: self.absolute,
            resolution: self.resolution,
            group: group.ok_or(SATLINE_STATUS_OUT_OF_RANGE)?,
        };
        accuracy.checked().map_err(status)
    }
}

impl Accuracies {
    const SIZE: u32 = size_of::<Self>() as u32;

    #[cfg(test)]
    const EMPTY: Self =
        Self { struct_size: Self::SIZE, reserved: 0, present: 0, accuracy: [Accuracy::NONE; SATLINE_READING_FIELDS] };

    /// Gives a core reading its accuracies. The caller may have written the structure without our functions, so
    /// everything is checked again.
    pub(crate) fn fill(&self, reading: &mut satline::Reading) -> Answer<()> {
        if self.struct_size != Self::SIZE || self.reserved != 0 {
            return Err(SATLINE_STATUS_BAD_STRUCT_SIZE);
        }
        for (number, accuracy) in (0_i32..).zip(self.accuracy.iter()) {
            if (self.present >> (number as u32 & 63)) & 1 == 1 {
                let field = Field::from_number(number).map_err(status)?;
                let place = reading.accuracy.get_mut(field as usize);
                *place.ok_or(SATLINE_STATUS_UNKNOWN_FIELD)? = Some(accuracy.checked()?);
            }
        }
        Ok(())
    }
}

/// Empties accuracies: every field keeps the default. struct_size: sizeof(satline_accuracies), so that a newer library
/// knows how large yours is.
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_accuracies_init(accuracies: *mut Accuracies, struct_size: u32) -> i32 {
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes; zeros are one of these.
    unsafe { emptied(accuracies, struct_size) }
}

/// Sets the accuracy of a field. field: SATLINE_FIELD_... .
///
/// Status: SATLINE_STATUS_UNKNOWN_FIELD, SATLINE_STATUS_OUT_OF_RANGE (a share above 1, a limit below 0, of_full_scale
/// without full_scale or the other way round, a group below 0 or above SATLINE_HIGHEST_GROUP), SATLINE_STATUS_NOT_FINITE,
/// SATLINE_STATUS_BAD_STRUCT_SIZE (not initialised, or reserved not 0), SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_accuracies_set(
    accuracies: *mut Accuracies,
    field: i32,
    accuracy: *const Accuracy,
) -> i32 {
    let set = || -> Answer<()> {
        // SAFETY: the header asks for accuracies, null or initialised, and for an accuracy.
        let accuracies = unsafe { accuracies.as_mut() }.ok_or(SATLINE_STATUS_NULL_POINTER)?;
        if accuracies.struct_size != Accuracies::SIZE {
            return Err(SATLINE_STATUS_BAD_STRUCT_SIZE);
        }
        // SAFETY: as above.
        let accuracy = *unsafe { given(accuracy) }?;
        Field::from_number(field).map_err(status)?;
        accuracy.checked()?;
        let place = usize::try_from(field).ok().and_then(|index| accuracies.accuracy.get_mut(index));
        *place.ok_or(SATLINE_STATUS_UNKNOWN_FIELD)? = accuracy;
        accuracies.present |= 1_u64.wrapping_shl(field as u32);
        Ok(())
    };
    set().err().unwrap_or(SATLINE_STATUS_OK)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::generated::codes::{
        SATLINE_FIELD_LIQUID_PRESSURE_PA, SATLINE_FIELD_SUCTION_PRESSURE_PA, SATLINE_STATUS_NOT_FINITE,
    };

    fn manifold() -> Accuracies {
        let mut all = Accuracies::EMPTY;
        let gauge = Accuracy { of_full_scale: 0.005, full_scale: 5.5e6, resolution: 700.0, group: 2, ..Accuracy::NONE };
        for field in [SATLINE_FIELD_SUCTION_PRESSURE_PA, SATLINE_FIELD_LIQUID_PRESSURE_PA] {
            // SAFETY: both are variables of ours.
            assert_eq!(unsafe { satline_accuracies_set(&mut all, field, &gauge) }, SATLINE_STATUS_OK);
        }
        all
    }

    #[test]
    fn what_was_set_reaches_the_core_and_nothing_else() {
        let mut reading = satline::Reading::default();
        assert_eq!(manifold().fill(&mut reading), Ok(()));
        for field in Field::ALL {
            let expected =
                matches!(field, Field::SuctionPressure | Field::LiquidPressure).then_some(satline::reading::Accuracy {
                    of_full_scale: 0.005,
                    full_scale: 5.5e6,
                    resolution: 700.0,
                    group: 2,
                    ..satline::reading::Accuracy::EXACT
                });
            assert_eq!(reading.accuracy[*field as usize], expected, "{field:?}");
        }
    }

    #[test]
    fn what_was_written_around_the_functions_is_checked_again() {
        let place = SATLINE_FIELD_SUCTION_PRESSURE_PA as usize;
        let refused = |change: fn(&mut Accuracies, usize)| {
            let mut all = manifold();
            change(&mut all, place);
            all.fill(&mut satline::Reading::default()).unwrap_err()
        };
        assert_eq!(refused(|all, place| all.accuracy[place].absolute = f64::NAN), SATLINE_STATUS_NOT_FINITE);
        assert_eq!(refused(|all, place| all.accuracy[place].full_scale = 0.0), SATLINE_STATUS_OUT_OF_RANGE);
        assert_eq!(refused(|all, place| all.accuracy[place].group = 251), SATLINE_STATUS_OUT_OF_RANGE);
        assert_eq!(refused(|all, place| all.accuracy[place].reserved = 1), SATLINE_STATUS_BAD_STRUCT_SIZE);
        assert_eq!(refused(|all, _| all.present |= 1 << 63), SATLINE_STATUS_UNKNOWN_FIELD);
        assert_eq!(refused(|all, _| all.reserved = 1), SATLINE_STATUS_BAD_STRUCT_SIZE);
        assert_eq!(refused(|all, _| all.struct_size = 0), SATLINE_STATUS_BAD_STRUCT_SIZE);
    }
}
