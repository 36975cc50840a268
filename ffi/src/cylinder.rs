//! Cylinders in C: they need the density of liquids, and so full handles.

use crate::answer::{Answer, answer, given, status, unless_unset};
use crate::full::{RefrigerantFull, record};
use crate::generated::codes::{
    SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_OK, SATLINE_STATUS_OUT_OF_RANGE,
};
use satline::quantity::Temperature;
use satline::safety::{self, CANDIDATES_MAX, Contents, cylinder_contents_kg, cylinder_fill};

/// Most refrigerants that may be in a cylinder, where it is not known which.
pub const SATLINE_CANDIDATES: usize = 16;

/// A question about a cylinder. Start with satline_cylinder_init. Temperatures in kelvin, masses in kilograms.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct Cylinder {
    /// sizeof(satline_cylinder), set by satline_cylinder_init.
    pub struct_size: u32,
    /// Always 0.
    pub reserved: u32,
    /// The water capacity stamped on the cylinder, kilograms of water.
    pub water_capacity_kg: f64,
    /// The tare stamped on it; -1 (by satline_cylinder_init) where it is not known.
    pub tare_kg: f64,
    /// The mass inside (see satline_cylinder_contents_kg); -1 (by satline_cylinder_init) where it is not known.
    pub contents_kg: f64,
    /// The cylinder's temperature now; -1 (by satline_cylinder_init) where it is not known.
    pub temperature_k: f64,
    /// The highest temperature it may meet; -1 (by satline_cylinder_init) for 130 degrees Fahrenheit.
    pub highest_temperature_k: f64,
}

/// The answer about a cylinder. Start with satline_cylinder_fill_init. What is not given is 0.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct CylinderFill {
    /// sizeof(satline_cylinder_fill), set by satline_cylinder_fill_init.
    pub struct_size: u32,
    /// SATLINE_FILL_RULE_...: what limits the filling; 0 before an answer.
    pub rule: i32,
    /// SATLINE_FILL_VERDICT_...; 0 where the contents are not given.
    pub verdict: i32,
    /// 1 where full_at_limit_k is at least that: the density curve ends there.
    pub full_at_limit_at_least: i32,
    /// 1 where full_k is at least that.
    pub full_at_least: i32,
    /// 1 where margin_now_k is set.
    pub has_margin_now: i32,
    pub volume_m3: f64,
    /// The most by the rule of 80 % at 77 degrees Fahrenheit.
    pub eighty_percent_kg: f64,
    /// The mass whose liquid fills the cylinder at the highest temperature.
    pub liquid_full_kg: f64,
    /// The lesser of the two: the limit.
    pub limit_kg: f64,
    /// What a scale shows at the limit; 0 where the tare is not given.
    pub scale_limit_kg: f64,
    pub highest_temperature_k: f64,
    /// Temperature at which a cylinder filled to the limit is full of liquid.
    pub full_at_limit_k: f64,
    /// That less the highest temperature.
    pub margin_at_limit_k: f64,
    /// Limit less contents: negative where it is overfilled.
    pub room_left_kg: f64,
    /// Temperature at which the present contents fill the cylinder with liquid.
    pub full_k: f64,
    /// That less the highest temperature: negative where the cylinder would burst before.
    pub margin_k: f64,
    /// That less the cylinder's temperature now.
    pub margin_now_k: f64,
}

// Their layouts are part of the binary interface.
const _: () = assert!(size_of::<Cylinder>() == 48 && size_of::<CylinderFill>() == 120);
const _: () = assert!(CANDIDATES_MAX == SATLINE_CANDIDATES);

impl Cylinder {
    const SIZE: u32 = size_of::<Self>() as u32;

    const EMPTY: Self = Self {
        struct_size: Self::SIZE,
        reserved: 0,
        water_capacity_kg: 0.0,
        tare_kg: -1.0,
        contents_kg: -1.0,
        temperature_k: -1.0,
        highest_temperature_k: -1.0,
    };
}

impl CylinderFill {
    const SIZE: u32 = size_of::<Self>() as u32;

    const EMPTY: Self = Self {
        struct_size: Self::SIZE,
        rule: 0,
        verdict: 0,
        full_at_limit_at_least: 0,
        full_at_least: 0,
        has_margin_now: 0,
        volume_m3: 0.0,
        eighty_percent_kg: 0.0,
        liquid_full_kg: 0.0,
        limit_kg: 0.0,
        scale_limit_kg: 0.0,
        highest_temperature_k: 0.0,
        full_at_limit_k: 0.0,
        margin_at_limit_k: 0.0,
        room_left_kg: 0.0,
        full_k: 0.0,
        margin_k: 0.0,
        margin_now_k: 0.0,
    };

    fn of(found: &safety::CylinderFill) -> Self {
        let contents = found.contents;
        let number = |value: fn(&Contents) -> f64| contents.as_ref().map_or(0.0, value);
        Self {
            struct_size: Self::SIZE,
            rule: found.rule.number(),
            verdict: contents.map_or(0, |contents| contents.verdict.number()),
            full_at_limit_at_least: i32::from(found.full_at_limit.at_least),
            full_at_least: i32::from(contents.is_some_and(|contents| contents.full.at_least)),
            has_margin_now: i32::from(contents.is_some_and(|contents| contents.margin_now_k.is_some())),
            volume_m3: found.volume_m3,
            eighty_percent_kg: found.eighty_percent_kg,
            liquid_full_kg: found.liquid_full_kg,
            limit_kg: found.limit_kg,
            scale_limit_kg: found.scale_limit_kg.unwrap_or(0.0),
            highest_temperature_k: found.highest_temperature_k,
            full_at_limit_k: found.full_at_limit.kelvin,
            margin_at_limit_k: found.margin_at_limit_k,
            room_left_kg: number(|contents| contents.room_left_kg),
            full_k: number(|contents| contents.full.kelvin),
            margin_k: number(|contents| contents.margin_k),
            margin_now_k: number(|contents| contents.margin_now_k.unwrap_or(0.0)),
        }
    }
}

/// Empties the question. struct_size: sizeof(satline_cylinder), so that a newer library knows how large yours is.
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_cylinder_init(cylinder: *mut Cylinder, struct_size: u32) -> i32 {
    let right = struct_size == Cylinder::SIZE;
    let empty = || if right { Ok(Cylinder::EMPTY) } else { Err(SATLINE_STATUS_BAD_STRUCT_SIZE) };
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { answer(cylinder, empty) }
}

/// Empties the answer. struct_size: sizeof(satline_cylinder_fill).
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_cylinder_fill_init(fill: *mut CylinderFill, struct_size: u32) -> i32 {
    let right = struct_size == CylinderFill::SIZE;
    let empty = || if right { Ok(CylinderFill::EMPTY) } else { Err(SATLINE_STATUS_BAD_STRUCT_SIZE) };
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { answer(fill, empty) }
}

/// The mass inside a cylinder: what a scale shows less the tare, all in kilograms.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE (also where the scale shows less than the tare), SATLINE_STATUS_NOT_FINITE,
/// SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_cylinder_contents_kg(scale_kg: f64, tare_kg: f64, contents_kg: *mut f64) -> i32 {
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(contents_kg, || cylinder_contents_kg(scale_kg, tare_kg).map_err(status)) }
}

/// How much a cylinder may hold, by the rule of 80 % and by the density of its liquid at the highest temperature, and how
/// its contents compare.
///
/// candidates: count full refrigerants (1 to SATLINE_CANDIDATES): what is inside, or, where that is not known, everything
/// that may be; the lightest liquid decides. The tolerance of scale and stamp is not counted. A cylinder must be rated for
/// the refrigerant; filling is for certified people under the local codes.
///
/// Status: SATLINE_STATUS_NOT_AVAILABLE (a candidate has no liquid, or almost none, at 130 degrees Fahrenheit, as R-744:
/// such cylinders are filled by the ratio stamped on them), SATLINE_STATUS_OUT_OF_RANGE (also for contents beyond what
/// the coldest liquid would fill), SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_BAD_STRUCT_SIZE (question or answer not
/// initialised), SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_VERSION_MISMATCH.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_cylinder_check(
    candidates: *const *const RefrigerantFull,
    count: u32,
    cylinder: *const Cylinder,
    fill: *mut CylinderFill,
) -> i32 {
    let check = || -> Answer<()> {
        // SAFETY: the header asks for a question.
        let cylinder = unsafe { given(cylinder) }?;
        // SAFETY: the header asks for an answer that may be read and written.
        let fill = unsafe { fill.as_mut() }.ok_or(SATLINE_STATUS_NULL_POINTER)?;
        if cylinder.struct_size != Cylinder::SIZE || fill.struct_size != CylinderFill::SIZE {
            return Err(SATLINE_STATUS_BAD_STRUCT_SIZE);
        }
        if candidates.is_null() {
            return Err(SATLINE_STATUS_NULL_POINTER);
        }
        let count = usize::try_from(count).unwrap_or(usize::MAX);
        if count == 0 || count > SATLINE_CANDIDATES {
            return Err(SATLINE_STATUS_OUT_OF_RANGE);
        }
        // SAFETY: not null, and the header asks for count handles, of which there is at least one.
        let (first, handles) = unsafe { (record(*candidates)?, core::slice::from_raw_parts(candidates, count)) };
        let mut records = [first; SATLINE_CANDIDATES];
        for (place, handle) in records.iter_mut().zip(handles) {
            // SAFETY: the header asks for handles.
            *place = unsafe { record(*handle) }?;
        }
        let temperature = |kelvin| unless_unset(kelvin).map(Temperature::from_kelvin).transpose().map_err(status);
        let question = safety::Cylinder {
            tare_kg: unless_unset(cylinder.tare_kg),
            contents_kg: unless_unset(cylinder.contents_kg),
            temperature: temperature(cylinder.temperature_k)?,
            highest_temperature: temperature(cylinder.highest_temperature_k)?,
            ..safety::Cylinder::new(records.get(..count).unwrap_or_default(), cylinder.water_capacity_kg)
        };
        *fill = CylinderFill::of(&cylinder_fill(&question).map_err(status)?);
        Ok(())
    };
    check().err().unwrap_or(SATLINE_STATUS_OK)
}
