//! A finding in C: a plain structure that the caller owns.

use crate::answer::{Answer, emptied, given};
use crate::generated::codes::{SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_OK};
use crate::handle::{Refrigerant, curves};
use crate::reading::Reading;
use satline::diagnosis::{self, MISSING_MAX, ValueName};

/// How many values a finding has room for.
pub const SATLINE_FINDING_VALUES: usize = 32;
/// How many missing fields a finding can name.
pub const SATLINE_FINDING_MISSING: usize = 16;

/// Bit of satline_value.given: value and standard_uncertainty are set.
pub const SATLINE_GIVEN_VALUE: u32 = 1;
/// Bit of satline_value.given: target is set.
pub const SATLINE_GIVEN_TARGET: u32 = 2;
/// Bit of satline_value.given: deviation is set.
pub const SATLINE_GIVEN_DEVIATION: u32 = 4;
/// Bit of satline_value.given: deviation_uncertainty is set.
pub const SATLINE_GIVEN_DEVIATION_UNCERTAINTY: u32 = 8;

/// One value of a finding, in the unit of its name; what is not given is 0.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct Value {
    pub value: f64,
    /// One standard uncertainty.
    pub standard_uncertainty: f64,
    /// What a standard, a table or the maker asks for.
    pub target: f64,
    /// Value minus target.
    pub deviation: f64,
    /// One standard uncertainty of the deviation.
    pub deviation_uncertainty: f64,
    /// SATLINE_GIVEN_... bits.
    pub given: u32,
    /// SATLINE_BOUND_...: whether the value is one-sided; 0 when there is no value.
    pub bound: i32,
}

/// A field that the reading does not have, and what it would allow.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct MissingField {
    /// SATLINE_FIELD_..., or SATLINE_MISSING_METERING.
    pub field: i32,
    /// SATLINE_NEEDED_FOR_...
    pub needed_for: i32,
}

/// The answer to a reading. Start with satline_finding_init.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct Finding {
    /// sizeof(satline_finding), set by satline_finding_init.
    pub struct_size: u32,
    /// SATLINE_CHARGE_...: what the evidence says of the charge; 0 before a diagnosis.
    pub charge: i32,
    /// SATLINE_CHARGE_STATUS_...
    pub charge_status: i32,
    /// SATLINE_REASON_...
    pub reason: i32,
    /// SATLINE_ACTION_...: the protocol's own verdict, kept apart from the evidence. A regional protocol: see edition.
    pub protocol_action: i32,
    /// SATLINE_NO_VALID_TEST_..., or 0 when there was a valid test.
    pub protocol_reason: i32,
    /// SATLINE_EDITION_...
    pub protocol_edition: i32,
    /// SATLINE_ROLE_...: whose tolerances were applied.
    pub protocol_role: i32,
    /// SATLINE_SPLIT_CHECK_...
    pub protocol_split: i32,
    /// SATLINE_NEXT_CHECK_...
    pub next_check: i32,
    /// SATLINE_ADVICE_...
    pub advice: i32,
    /// Bit n is set for caution n (SATLINE_CAUTION_...).
    pub cautions: u32,
    /// How many fields are named in missing.
    pub missing_count: u32,
    /// Always 0.
    pub reserved: u32,
    /// What was not measured and what for, most needed first.
    pub missing: [MissingField; SATLINE_FINDING_MISSING],
    /// Value n (SATLINE_VALUE_...).
    pub value: [Value; SATLINE_FINDING_VALUES],
}

// A finding's layout is part of the binary interface.
const _: () = assert!(size_of::<Finding>() == 56 + 16 * 8 + 32 * 48);
const _: () = assert!(diagnosis::VALUE_COUNT <= SATLINE_FINDING_VALUES);
const _: () = assert!(MISSING_MAX <= SATLINE_FINDING_MISSING);

impl Finding {
    const SIZE: u32 = size_of::<Self>() as u32;

    /// Writes a core finding over this one, place by place: a whole new one would double the stack.
    pub(crate) fn fill(&mut self, finding: &diagnosis::Finding) {
        self.charge = finding.charge.number();
        self.charge_status = finding.charge_status.number();
        self.reason = finding.reason.number();
        self.protocol_action = finding.protocol.action.number();
        self.protocol_reason = finding.protocol.reason.map_or(0, |reason| reason.number());
        self.protocol_edition = finding.protocol.edition.number();
        self.protocol_role = finding.protocol.role.number();
        self.protocol_split = finding.protocol.split.number();
        self.next_check = finding.next_check.number();
        self.advice = finding.advice.number();
        self.cautions = finding.cautions.bits();
        self.missing_count = 0;
        self.reserved = 0;
        let mut missing = finding.missing.iter();
        for place in &mut self.missing {
            *place = MissingField::NONE;
            if let Some(missing) = missing.next() {
                *place = MissingField { field: missing.field.number(), needed_for: missing.needed_for.number() };
                self.missing_count += 1;
            }
        }
        for (number, place) in (0..).zip(&mut self.value) {
            let name = ValueName::ALL.iter().copied().find(|name| name.number() == number);
            *place = name.and_then(|name| finding.values.get(name)).map_or(Value::NONE, Value::from);
        }
    }
}

impl MissingField {
    const NONE: Self = Self { field: 0, needed_for: 0 };
}

impl Value {
    const NONE: Self = Self {
        value: 0.0,
        standard_uncertainty: 0.0,
        target: 0.0,
        deviation: 0.0,
        deviation_uncertainty: 0.0,
        given: 0,
        bound: 0,
    };
}

impl From<diagnosis::Value> for Value {
    fn from(value: diagnosis::Value) -> Self {
        let bit = |given: Option<f64>, bit: u32| if given.is_some() { bit } else { 0 };
        Self {
            value: value.value,
            standard_uncertainty: value.standard_uncertainty,
            target: value.target.unwrap_or(0.0),
            deviation: value.deviation.unwrap_or(0.0),
            deviation_uncertainty: value.deviation_uncertainty.unwrap_or(0.0),
            given: SATLINE_GIVEN_VALUE
                | bit(value.target, SATLINE_GIVEN_TARGET)
                | bit(value.deviation, SATLINE_GIVEN_DEVIATION)
                | bit(value.deviation_uncertainty, SATLINE_GIVEN_DEVIATION_UNCERTAINTY),
            bound: value.bound.number(),
        }
    }
}

/// A caller's finding to be written.
///
/// # Safety
/// `finding` is null or may be read and written as its struct_size says.
pub(crate) unsafe fn known<'a>(finding: *mut Finding) -> Answer<&'a mut Finding> {
    // SAFETY: promised by the caller.
    let finding = unsafe { finding.as_mut() }.ok_or(SATLINE_STATUS_NULL_POINTER)?;
    if finding.struct_size == Finding::SIZE { Ok(finding) } else { Err(SATLINE_STATUS_BAD_STRUCT_SIZE) }
}

/// Empties a finding. struct_size: sizeof(satline_finding), so that a newer library knows how large yours is.
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_finding_init(finding: *mut Finding, struct_size: u32) -> i32 {
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes; zeros are one of these.
    unsafe { emptied(finding, struct_size) }
}

/// Judges a reading. Any subset of fields gives a finding: what cannot be judged is said in it, with the fields that
/// would allow it. The result is an aid to a licensed technician; read its cautions.
///
/// Status: SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_BAD_STRUCT_SIZE (reading or finding not initialised),
/// SATLINE_STATUS_VERSION_MISMATCH; and where the reading was written without satline_reading_set:
/// SATLINE_STATUS_UNKNOWN_FIELD, SATLINE_STATUS_UNKNOWN_CHOICE, SATLINE_STATUS_OUT_OF_RANGE,
/// SATLINE_STATUS_NOT_FINITE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_diagnose(
    refrigerant: *const Refrigerant,
    reading: *const Reading,
    finding: *mut Finding,
) -> i32 {
    let diagnose = || {
        // SAFETY: the header asks for a handle, a reading and a finding.
        let (curves, reading, finding) = unsafe { (curves(refrigerant)?, given(reading)?, known(finding)?) };
        let mut given = satline::Reading { refrigerant: Some(curves), ..satline::Reading::default() };
        reading.fill(&mut given)?;
        let options = diagnosis::Options::default();
        let mut diagnosis = diagnosis::Diagnosis::NOTHING;
        diagnosis.begin_anew(&given, &options);
        diagnosis.weigh_rest();
        let mut found = diagnosis::Finding::nothing();
        diagnosis.finish_onto(&mut found, &given, &options);
        finding.fill(&found);
        Ok(())
    };
    diagnose().err().unwrap_or(SATLINE_STATUS_OK)
}
