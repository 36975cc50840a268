//! The charge for a line set in C: from the equations of state, and from compact curves alone.

use crate::answer::{Answer, answer, given, status, unless_unset};
use crate::full::{RefrigerantFull, record};
use crate::generated::codes::{
    SATLINE_METERING_PLACE_INDOOR, SATLINE_METERING_PLACE_OUTDOOR, SATLINE_STATUS_BAD_STRUCT_SIZE,
    SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_OK, SATLINE_STATUS_OUT_OF_RANGE, SATLINE_STATUS_UNKNOWN_CHOICE,
};
use crate::tube::Tube;
#[cfg(feature = "eos")]
use satline::eos::{Properties, Reference};
use satline::lineset::{
    self, Behind, Compact, Covered, LineDensities, LinePhase, OutdoorDevice, default_pressure_uncertainty_pa,
};
use satline::uncertain::Uncertain;

/// Most accessories that a line set takes.
pub const SATLINE_LINE_SET_ACCESSORIES: usize = 16;

/// One of the two lines of satline_line_set.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct LineSetLine {
    /// Its tube, by satline_tube_find or another function of tubes.
    pub tube: Tube,
    /// Its length, metres.
    pub length_m: f64,
    /// One standard uncertainty of the length, metres; -1 (by satline_line_set_init) for a tape within a foot.
    pub length_uncertainty_m: f64,
    /// Temperature of what it carries, kelvin.
    pub temperature_k: f64,
    /// One standard uncertainty of the temperature, kelvin; -1 (by satline_line_set_init) for a thermometer's 1.4 degrees
    /// Fahrenheit.
    pub temperature_uncertainty_k: f64,
    /// Pressure in it, pascals, absolute; -1 (by satline_line_set_init) for saturated.
    pub pressure_pa: f64,
    /// One standard uncertainty of the pressure, pascals; -1 (by satline_line_set_init) for that of a gauge with a limit
    /// of error of 7 psi, or a twentieth of the pressure where that is less.
    pub pressure_uncertainty_pa: f64,
}

/// A line set and what is to be known of it. Start with satline_line_set_init.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct LineSet {
    /// sizeof(satline_line_set), set by satline_line_set_init.
    pub struct_size: u32,
    /// SATLINE_METERING_PLACE_INDOOR (by satline_line_set_init): the small line is all liquid.
    /// SATLINE_METERING_PLACE_OUTDOOR: it carries liquid and vapour; set downstream_temperature_k or downstream_pressure_pa.
    pub metering_place: i32,
    /// The small line, with the liquid before the metering device.
    pub liquid: LineSetLine,
    /// The large line, with the vapour in it.
    pub vapor: LineSetLine,
    /// Temperature of the small line behind an outdoor metering device, kelvin; -1 (by satline_line_set_init) if not known.
    pub downstream_temperature_k: f64,
    /// Pressure in it, pascals, absolute; -1 (by satline_line_set_init) if not known. One of the two, not both.
    pub downstream_pressure_pa: f64,
    /// One standard uncertainty of the one that is given; -1 (by satline_line_set_init) for the lines' own default.
    pub downstream_uncertainty: f64,
    /// Length of line set that the factory charge covers, metres, from the unit's label.
    pub covered_length_m: f64,
    /// One standard uncertainty of it, metres; 0 by satline_line_set_init.
    pub covered_length_uncertainty_m: f64,
    /// The small tube that the maker counts on; all 0 (by satline_line_set_init) for the line set's own.
    pub covered_liquid_tube: Tube,
    /// The large tube that the maker counts on; all 0 (by satline_line_set_init) for the line set's own.
    pub covered_vapor_tube: Tube,
    /// The maker's figure per length beyond what is covered, kilograms a metre; -1 (by satline_line_set_init) if there is
    /// none. It rules over the computed one.
    pub makers_charge_per_length_kg_m: f64,
    /// One standard uncertainty of that figure, kilograms a metre; 0 by satline_line_set_init.
    pub makers_charge_per_length_uncertainty_kg_m: f64,
}

/// What one line holds. Each value is followed by its standard uncertainty.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct LineSetLineCharge {
    /// Mean density, kilograms a cubic metre.
    pub density_kg_m3: f64,
    pub density_uncertainty_kg_m3: f64,
    /// Quality behind an outdoor metering device, 0 to 1; -1 in a line of one phase.
    pub quality: f64,
    /// Mass per length, kilograms a metre.
    pub charge_per_length_kg_m: f64,
    pub charge_per_length_uncertainty_kg_m: f64,
    /// Mass in the whole line, kilograms.
    pub holds_kg: f64,
    pub holds_uncertainty_kg: f64,
    /// Mass beyond what the factory charge covers, kilograms; negative where it covers more.
    pub beyond_kg: f64,
    pub beyond_uncertainty_kg: f64,
}

/// The charge for a line set. Start with satline_line_set_charge_init.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct LineSetCharge {
    /// sizeof(satline_line_set_charge), set by satline_line_set_charge_init.
    pub struct_size: u32,
    /// SATLINE_LINE_SET_ACTION_...; 0 before it is computed.
    pub action: i32,
    /// SATLINE_LINE_SET_ADVICE_...
    pub advice: i32,
    /// Bit n is set for caution n (SATLINE_LINE_SET_CAUTION_...).
    pub cautions: u32,
    /// What to add to the factory charge, kilograms; negative: what to recover.
    pub mass_kg: f64,
    pub mass_uncertainty_kg: f64,
    /// Both lines beyond what is covered, computed whether the maker's figure was given or not, kilograms.
    pub computed_kg: f64,
    pub computed_uncertainty_kg: f64,
    /// Drier and accessories, kilograms.
    pub accessories_kg: f64,
    pub accessories_uncertainty_kg: f64,
    /// Both lines per length, computed, kilograms a metre.
    pub charge_per_length_kg_m: f64,
    pub charge_per_length_uncertainty_kg_m: f64,
    /// What the small line holds.
    pub liquid: LineSetLineCharge,
    /// What the large line holds.
    pub vapor: LineSetLineCharge,
}

// Their layouts are part of the binary interface.
const _: () = assert!(size_of::<LineSetLine>() == 80 && size_of::<LineSetLineCharge>() == 72);
const _: () = assert!(size_of::<LineSet>() == 8 + 2 * 80 + 5 * 8 + 2 * 32 + 2 * 8);
const _: () = assert!(size_of::<LineSetCharge>() == 16 + 8 * 8 + 2 * 72);

impl LineSetLine {
    const EMPTY: Self = Self {
        tube: Tube::EMPTY,
        length_m: 0.0,
        length_uncertainty_m: -1.0,
        temperature_k: 0.0,
        temperature_uncertainty_k: -1.0,
        pressure_pa: -1.0,
        pressure_uncertainty_pa: -1.0,
    };

    fn given(&self) -> Answer<lineset::Line> {
        let mut line =
            lineset::Line::new(self.tube.given()?, self.length_m, self.temperature_k, unless_unset(self.pressure_pa));
        let set = |place: &mut Uncertain, uncertainty| {
            if let Some(uncertainty) = unless_unset(uncertainty) {
                place.standard_uncertainty = uncertainty;
            }
        };
        set(&mut line.length_m, self.length_uncertainty_m);
        set(&mut line.temperature_k, self.temperature_uncertainty_k);
        if let Some(pressure) = &mut line.pressure_pa {
            set(pressure, self.pressure_uncertainty_pa);
        }
        Ok(line)
    }
}

impl LineSet {
    const SIZE: u32 = size_of::<Self>() as u32;

    const EMPTY: Self = Self {
        struct_size: Self::SIZE,
        metering_place: SATLINE_METERING_PLACE_INDOOR,
        liquid: LineSetLine::EMPTY,
        vapor: LineSetLine::EMPTY,
        downstream_temperature_k: -1.0,
        downstream_pressure_pa: -1.0,
        downstream_uncertainty: -1.0,
        covered_length_m: 0.0,
        covered_length_uncertainty_m: 0.0,
        covered_liquid_tube: Tube::EMPTY,
        covered_vapor_tube: Tube::EMPTY,
        makers_charge_per_length_kg_m: -1.0,
        makers_charge_per_length_uncertainty_kg_m: 0.0,
    };

    fn outdoor_device(&self) -> Answer<Option<OutdoorDevice>> {
        let downstream = (unless_unset(self.downstream_temperature_k), unless_unset(self.downstream_pressure_pa));
        let (behind, usual) = match (self.metering_place, downstream) {
            (SATLINE_METERING_PLACE_INDOOR, _) => return Ok(None),
            (SATLINE_METERING_PLACE_OUTDOOR, (Some(temperature), None)) => {
                (Behind::Temperature(temperature), lineset::DEFAULT_TEMPERATURE_UNCERTAINTY_K)
            }
            (SATLINE_METERING_PLACE_OUTDOOR, (None, Some(pressure))) => {
                (Behind::Pressure(pressure), default_pressure_uncertainty_pa(pressure))
            }
            _ => return Err(SATLINE_STATUS_UNKNOWN_CHOICE),
        };
        let standard_uncertainty = unless_unset(self.downstream_uncertainty).unwrap_or(usual);
        Ok(Some(OutdoorDevice { behind, standard_uncertainty }))
    }

    fn given<'a>(&self, accessories_kg: &'a [Uncertain]) -> Answer<lineset::LineSet<'a>> {
        let tube = |tube: &Tube| if tube.inside_diameter_m == 0.0 { Ok(None) } else { tube.given().map(Some) };
        let of = |value, standard_uncertainty| Uncertain { value, standard_uncertainty };
        Ok(lineset::LineSet {
            liquid: self.liquid.given()?,
            vapor: self.vapor.given()?,
            outdoor_device: self.outdoor_device()?,
            covered: Covered {
                length_m: of(self.covered_length_m, self.covered_length_uncertainty_m),
                liquid_tube: tube(&self.covered_liquid_tube)?,
                vapor_tube: tube(&self.covered_vapor_tube)?,
            },
            accessories_kg,
            makers_charge_per_length_kg_m: unless_unset(self.makers_charge_per_length_kg_m)
                .map(|figure| of(figure, self.makers_charge_per_length_uncertainty_kg_m)),
        })
    }
}

impl LineSetLineCharge {
    const EMPTY: Self = Self {
        density_kg_m3: 0.0,
        density_uncertainty_kg_m3: 0.0,
        quality: -1.0,
        charge_per_length_kg_m: 0.0,
        charge_per_length_uncertainty_kg_m: 0.0,
        holds_kg: 0.0,
        holds_uncertainty_kg: 0.0,
        beyond_kg: 0.0,
        beyond_uncertainty_kg: 0.0,
    };

    fn of(line: &lineset::LineCharge) -> Self {
        Self {
            density_kg_m3: line.density_kg_m3.value,
            density_uncertainty_kg_m3: line.density_kg_m3.standard_uncertainty,
            quality: line.quality.unwrap_or(-1.0),
            charge_per_length_kg_m: line.charge_per_length_kg_m.value,
            charge_per_length_uncertainty_kg_m: line.charge_per_length_kg_m.standard_uncertainty,
            holds_kg: line.holds_kg.value,
            holds_uncertainty_kg: line.holds_kg.standard_uncertainty,
            beyond_kg: line.beyond_kg.value,
            beyond_uncertainty_kg: line.beyond_kg.standard_uncertainty,
        }
    }
}

impl LineSetCharge {
    const SIZE: u32 = size_of::<Self>() as u32;

    const EMPTY: Self = Self {
        struct_size: Self::SIZE,
        action: 0,
        advice: 0,
        cautions: 0,
        mass_kg: 0.0,
        mass_uncertainty_kg: 0.0,
        computed_kg: 0.0,
        computed_uncertainty_kg: 0.0,
        accessories_kg: 0.0,
        accessories_uncertainty_kg: 0.0,
        charge_per_length_kg_m: 0.0,
        charge_per_length_uncertainty_kg_m: 0.0,
        liquid: LineSetLineCharge::EMPTY,
        vapor: LineSetLineCharge::EMPTY,
    };

    fn of(charge: &lineset::LineSetCharge) -> Self {
        Self {
            struct_size: Self::SIZE,
            action: charge.action.number(),
            advice: charge.advice.number(),
            cautions: charge.caution_bits(),
            mass_kg: charge.mass_kg.value,
            mass_uncertainty_kg: charge.mass_kg.standard_uncertainty,
            computed_kg: charge.computed_kg.value,
            computed_uncertainty_kg: charge.computed_kg.standard_uncertainty,
            accessories_kg: charge.accessories_kg.value,
            accessories_uncertainty_kg: charge.accessories_kg.standard_uncertainty,
            charge_per_length_kg_m: charge.charge_per_length_kg_m.value,
            charge_per_length_uncertainty_kg_m: charge.charge_per_length_kg_m.standard_uncertainty,
            liquid: LineSetLineCharge::of(&charge.liquid),
            vapor: LineSetLineCharge::of(&charge.vapor),
        }
    }
}

/// Properties by a reference state that the refrigerant has; densities do not depend on it.
#[cfg(feature = "eos")]
fn properties(record: &'static satline::refrigerant::Refrigerant) -> Answer<Properties> {
    Properties::of(record.model, Reference::Iir)
        .or_else(|_| Properties::of(record.model, Reference::NormalBoiling))
        .map_err(status)
}

fn per_length(
    densities: &impl LineDensities,
    tube: &Tube,
    phase: i32,
    temperature_k: f64,
    pressure_pa: f64,
) -> Answer<f64> {
    let phase = LinePhase::from_number(phase).ok_or(SATLINE_STATUS_UNKNOWN_CHOICE)?;
    densities.charge_per_length(&tube.given()?, phase, temperature_k, unless_unset(pressure_pa)).map_err(status)
}

/// Computes the charge for a line set and writes it; leaves the caller's as it was on failure.
///
/// # Safety
/// As for the functions of the header.
unsafe fn charge(
    line_set: *const LineSet,
    accessories_kg: *const f64,
    accessories_uncertainty_kg: *const f64,
    count: u32,
    charge: *mut LineSetCharge,
    compute: impl FnOnce(&lineset::LineSet<'_>) -> Answer<lineset::LineSetCharge>,
) -> i32 {
    let found = || -> Answer<()> {
        // SAFETY: the header asks for a line set, and for an answer that may be read and written.
        let (line_set, place) = unsafe { (given(line_set)?, charge.as_mut().ok_or(SATLINE_STATUS_NULL_POINTER)?) };
        if line_set.struct_size != LineSet::SIZE || place.struct_size != LineSetCharge::SIZE {
            return Err(SATLINE_STATUS_BAD_STRUCT_SIZE);
        }
        let count = usize::try_from(count).unwrap_or(usize::MAX);
        if count > SATLINE_LINE_SET_ACCESSORIES {
            return Err(SATLINE_STATUS_OUT_OF_RANGE);
        }
        let mut accessories = [Uncertain::exact(0.0); SATLINE_LINE_SET_ACCESSORIES];
        if count > 0 {
            if accessories_kg.is_null() {
                return Err(SATLINE_STATUS_NULL_POINTER);
            }
            // SAFETY: not null, and the header asks for count masses.
            let masses = unsafe { core::slice::from_raw_parts(accessories_kg, count) };
            for (place, mass) in accessories.iter_mut().zip(masses) {
                place.value = *mass;
            }
            if !accessories_uncertainty_kg.is_null() {
                // SAFETY: not null, and the header asks for count uncertainties.
                let uncertainties = unsafe { core::slice::from_raw_parts(accessories_uncertainty_kg, count) };
                for (place, uncertainty) in accessories.iter_mut().zip(uncertainties) {
                    place.standard_uncertainty = *uncertainty;
                }
            }
        }
        let set = line_set.given(accessories.get(..count).unwrap_or_default())?;
        *place = LineSetCharge::of(&compute(&set)?);
        Ok(())
    };
    found().err().unwrap_or(SATLINE_STATUS_OK)
}

/// Empties the question. struct_size: sizeof(satline_line_set), so that a newer library knows how large yours is.
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_line_set_init(line_set: *mut LineSet, struct_size: u32) -> i32 {
    let empty = || if struct_size == LineSet::SIZE { Ok(LineSet::EMPTY) } else { Err(SATLINE_STATUS_BAD_STRUCT_SIZE) };
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { answer(line_set, empty) }
}

/// Empties the answer. struct_size: sizeof(satline_line_set_charge).
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_line_set_charge_init(charge: *mut LineSetCharge, struct_size: u32) -> i32 {
    let right = struct_size == LineSetCharge::SIZE;
    let empty = || if right { Ok(LineSetCharge::EMPTY) } else { Err(SATLINE_STATUS_BAD_STRUCT_SIZE) };
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { answer(charge, empty) }
}

/// Mass of refrigerant per metre of a line, from the equation of state: the bore's area times the density. Not in the
/// library for microcontrollers.
///
/// phase: SATLINE_LINE_PHASE_LIQUID or SATLINE_LINE_PHASE_VAPOR. temperature_k: kelvin. pressure_pa: pascals, absolute; -1
/// for saturated.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE (outside the refrigerant's range, a liquid line above its bubble temperature or a
/// vapour line below its dew temperature), SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_NOT_CONVERGED,
/// SATLINE_STATUS_UNKNOWN_CHOICE (phase), SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_VERSION_MISMATCH.
#[cfg(feature = "eos")]
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_charge_per_length_kg_m(
    refrigerant: *const RefrigerantFull,
    tube: *const Tube,
    phase: i32,
    temperature_k: f64,
    pressure_pa: f64,
    charge_per_length_kg_m: *mut f64,
) -> i32 {
    let compute = || -> Answer<f64> {
        // SAFETY: the header asks for a handle and a tube.
        let (record, tube) = unsafe { (record(refrigerant)?, given(tube)?) };
        per_length(&properties(record)?, tube, phase, temperature_k, pressure_pa)
    };
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(charge_per_length_kg_m, compute) }
}

/// The same from compact curves alone, without equations of state. Saturated densities are those of the curves; a
/// subcooled liquid's is within 1 % (20 K of subcooling), a superheated vapour's within 2 % (40 K of superheat).
///
/// Parameters and status: as satline_charge_per_length_kg_m.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_compact_charge_per_length_kg_m(
    refrigerant: *const RefrigerantFull,
    tube: *const Tube,
    phase: i32,
    temperature_k: f64,
    pressure_pa: f64,
    charge_per_length_kg_m: *mut f64,
) -> i32 {
    let compute = || -> Answer<f64> {
        // SAFETY: the header asks for a handle and a tube.
        let (record, tube) = unsafe { (record(refrigerant)?, given(tube)?) };
        per_length(&Compact(record), tube, phase, temperature_k, pressure_pa)
    };
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(charge_per_length_kg_m, compute) }
}

/// The charge for a line set, from the equation of state: what both lines hold beyond the length that the factory charge
/// covers, with drier and accessories; or by the maker's figure per length, with the computed one beside it. A negative
/// mass is to be recovered, never vented: show action, advice and cautions in words. Not in the library for
/// microcontrollers.
///
/// accessories_kg: count masses of drier and accessories, kilograms (at most SATLINE_LINE_SET_ACCESSORIES; null where count
/// is 0). accessories_uncertainty_kg: their standard uncertainties, or null for none.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE (a length, mass, tube or uncertainty outside its bound, a liquid line above its
/// bubble temperature, a vapour line below its dew temperature, or downstream above what is before the device),
/// SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_NOT_CONVERGED, SATLINE_STATUS_UNKNOWN_CHOICE (metering_place, or a device
/// outdoors without exactly one of downstream temperature and pressure), SATLINE_STATUS_BAD_STRUCT_SIZE (question or answer
/// not initialised), SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_VERSION_MISMATCH.
#[cfg(feature = "eos")]
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_charge_line_set(
    refrigerant: *const RefrigerantFull,
    line_set: *const LineSet,
    accessories_kg: *const f64,
    accessories_uncertainty_kg: *const f64,
    count: u32,
    line_set_charge: *mut LineSetCharge,
) -> i32 {
    let compute = |set: &lineset::LineSet<'_>| -> Answer<lineset::LineSetCharge> {
        // SAFETY: the header asks for a handle.
        let record = unsafe { record(refrigerant) }?;
        lineset::line_set_charge(&properties(record)?, set).map_err(status)
    };
    // SAFETY: the header states what the pointers must be.
    unsafe { charge(line_set, accessories_kg, accessories_uncertainty_kg, count, line_set_charge, compute) }
}

/// The same from compact curves alone, without equations of state; its uncertainty includes their error, which behind an
/// outdoor metering device is 5 % and 0.8 % per kelvin of glide beside the slip model's 15 %.
///
/// Parameters and status: as satline_charge_line_set.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_compact_charge_line_set(
    refrigerant: *const RefrigerantFull,
    line_set: *const LineSet,
    accessories_kg: *const f64,
    accessories_uncertainty_kg: *const f64,
    count: u32,
    line_set_charge: *mut LineSetCharge,
) -> i32 {
    let compute = |set: &lineset::LineSet<'_>| -> Answer<lineset::LineSetCharge> {
        // SAFETY: the header asks for a handle.
        let record = unsafe { record(refrigerant) }?;
        lineset::line_set_charge(&Compact(record), set).map_err(status)
    };
    // SAFETY: the header states what the pointers must be.
    unsafe { charge(line_set, accessories_kg, accessories_uncertainty_kg, count, line_set_charge, compute) }
}
