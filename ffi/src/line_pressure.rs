//! Lines in C: friction, lift, what a liquid line leaves of the subcooling, what a vapour line costs.

use crate::answer::{Answer, answer, given, status, unless_unset};
use crate::full::{RefrigerantFull, record};
use crate::generated::codes::{
    SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_OK, SATLINE_STATUS_UNKNOWN_CHOICE,
};
use crate::uncertain::{Uncertain, taken};
use satline::eos::{Properties, Reference};
use satline::lineset::{self, Fitting, Fittings, LineEnd, LineHeat, Run, Tube, VaporDuty};

/// Room for the numbers of fittings of a line, by kind: element SATLINE_FITTING_... counts those of that kind.
pub const SATLINE_LINE_FITTINGS: usize = 16;

/// The state of a vapour line is known at its inlet: of a suction line at the coil.
pub const SATLINE_LINE_END_INLET: i32 = 1;
/// The state of a vapour line is known at its outlet: of a suction line at the compressor.
pub const SATLINE_LINE_END_OUTLET: i32 = 2;

/// Bit of satline_liquid_line_result.given: flash gas begins on the way; flash_begins_m is set, and the loss is at least
/// drop_pa.
pub const SATLINE_LINE_GIVEN_FLASH: u32 = 1;
/// Bit of satline_liquid_line_result.given: flash_vapor_share is set.
pub const SATLINE_LINE_GIVEN_FLASH_SHARE: u32 = 2;
/// Bit of satline_vapor_line_result.given: dew_loss_k and the superheats are set; not above the critical pressure.
pub const SATLINE_LINE_GIVEN_DEW: u32 = 4;
/// Bit of satline_vapor_line_result.given: flow_over_least and what follows are set; the vapour flows upwards.
pub const SATLINE_LINE_GIVEN_RISER: u32 = 8;
/// Bit of satline_vapor_line_result.given: capacity_loss is set; it is a suction line.
pub const SATLINE_LINE_GIVEN_CAPACITY: u32 = 16;
/// Bit of satline_vapor_line_result.given: coldest_surface_k is set; the heat comes from the air.
pub const SATLINE_LINE_GIVEN_SURFACE: u32 = 32;
/// Bit of satline_vapor_line_result.given: the surface is colder than the air's dew point, so it sweats.
pub const SATLINE_LINE_GIVEN_SWEATS: u32 = 64;

/// The way of a line: part of the questions below.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct LineRun {
    /// Inside diameter of the tube, metres.
    pub inside_diameter_m: f64,
    /// Outside diameter, metres; 0 where it is not known. Heat from the air needs it.
    pub outside_diameter_m: f64,
    /// Length along the tube, metres.
    pub length_m: Uncertain,
    /// Height of its end over its beginning, by the way the refrigerant flows, metres: positive where it flows upwards;
    /// no more than the length.
    pub rise_m: Uncertain,
    /// Straight length that other fittings stand for, metres.
    pub equivalent_length_m: f64,
    /// How many fittings there are of each kind, by SATLINE_FITTING_...
    pub fittings: [u32; SATLINE_LINE_FITTINGS],
}

/// A liquid line with its refrigerant. Start with satline_liquid_line_init. What is known exactly has a standard
/// uncertainty of 0.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct LiquidLine {
    /// sizeof(satline_liquid_line), set by satline_liquid_line_init.
    pub struct_size: u32,
    pub reserved: u32,
    /// From the outdoor unit's liquid port to the metering device; the rise is the lift where the evaporator is above.
    pub run: LineRun,
    /// Kilograms a second.
    pub mass_flow_kg_s: Uncertain,
    /// At the liquid port, pascals, absolute.
    pub pressure_pa: Uncertain,
    /// At the liquid port, kelvin.
    pub temperature_k: Uncertain,
    /// What a drier and other accessories lose at this flow, pascals.
    pub drier_drop_pa: Uncertain,
    /// Heat that the line takes up, watts; negative where it gives heat off.
    pub heat_gain_w: Uncertain,
}

/// What a liquid line does. Start with satline_liquid_line_result_init. What is not given is 0.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct LiquidLineResult {
    /// sizeof(satline_liquid_line_result), set by satline_liquid_line_result_init.
    pub struct_size: u32,
    /// SATLINE_LINE_GIVEN_... bits.
    pub given: u32,
    /// Bit n is set for advice n (SATLINE_LINE_ADVICE_...).
    pub advice: u32,
    /// Bit n is set for caution n (SATLINE_LINE_CAUTION_...).
    pub cautions: u32,
    /// Loss by friction, fittings included, pascals.
    pub friction_pa: Uncertain,
    /// Loss by height, pascals; negative where the liquid flows down.
    pub lift_pa: Uncertain,
    /// The whole loss, drier included, pascals; at least this where flash gas begins on the way.
    pub drop_pa: Uncertain,
    /// At the metering device, pascals, absolute.
    pub outlet_pressure_pa: Uncertain,
    /// At the metering device, kelvin.
    pub outlet_temperature_k: Uncertain,
    /// Subcooling at the liquid port, kelvin.
    pub subcooling_k: Uncertain,
    /// Subcooling left at the metering device, kelvin; negative: so much is missing for liquid to arrive.
    pub subcooling_left_k: Uncertain,
    /// Subcooling that the line takes, kelvin: at least so much is needed at the port.
    pub subcooling_needed_k: Uncertain,
    /// Metres a second.
    pub velocity_m_s: Uncertain,
    /// Friction as a loss of bubble temperature, kelvin.
    pub friction_k: f64,
    /// Lift as a loss of bubble temperature, kelvin.
    pub lift_k: f64,
    /// Reynolds number at the port.
    pub reynolds: f64,
    /// Where flash gas begins, metres along the tube.
    pub flash_begins_m: f64,
    /// The vapour's share of the mass at the metering device; at least this.
    pub flash_vapor_share: f64,
}

/// A suction or discharge line with its refrigerant. Start with satline_vapor_line_init.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct VaporLine {
    /// sizeof(satline_vapor_line), set by satline_vapor_line_init.
    pub struct_size: u32,
    /// SATLINE_VAPOR_DUTY_...; suction by satline_vapor_line_init.
    pub duty: i32,
    /// SATLINE_LINE_END_...: where pressure and temperature are known; the inlet by satline_vapor_line_init.
    pub known_at: i32,
    /// 1 where the air around the line warms or cools it, 0 (by satline_vapor_line_init) where heat_w is given instead.
    pub from_air: i32,
    pub run: LineRun,
    /// Kilograms a second.
    pub mass_flow_kg_s: Uncertain,
    /// Pascals, absolute.
    pub pressure_pa: Uncertain,
    /// Kelvin.
    pub temperature_k: Uncertain,
    /// Heat that the line takes up, watts; used where from_air is 0.
    pub heat_w: Uncertain,
    /// Dry bulb of the air around the line, kelvin.
    pub ambient_k: Uncertain,
    /// Convection and radiation outside, W/(m2 K); 9 with an uncertainty of 1 by satline_vapor_line_init (still air).
    pub outside_coefficient_w_m2_k: Uncertain,
    /// Conductivity of the insulation, W/(m K); 0.038 with an uncertainty of 0.003 by satline_vapor_line_init.
    pub insulation_conductivity_w_m_k: Uncertain,
    /// Thickness of the insulation, metres; 0 (by satline_vapor_line_init) for a bare line.
    pub insulation_thickness_m: f64,
    /// Dew point of the air around the line, kelvin; -1 (by satline_vapor_line_init) where sweating is not asked for.
    pub dew_point_k: f64,
    /// Density of the oil-rich liquid on the wall, kg/m3; 950 with an uncertainty of 29 by satline_vapor_line_init.
    pub oil_density_kg_m3: Uncertain,
    /// Discharge pressure of the compressor, pascals, absolute, where the clearance is to count in the capacity loss of
    /// a suction line; -1 (by satline_vapor_line_init) where not.
    pub discharge_pressure_pa: f64,
    /// Clearance volume of the compressor over its displacement; 0.04 by satline_vapor_line_init.
    pub clearance: f64,
}

/// What a vapour line does. Start with satline_vapor_line_result_init. What is not given is 0.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct VaporLineResult {
    /// sizeof(satline_vapor_line_result), set by satline_vapor_line_result_init.
    pub struct_size: u32,
    /// SATLINE_LINE_GIVEN_... bits.
    pub given: u32,
    /// Bit n is set for advice n (SATLINE_LINE_ADVICE_...).
    pub advice: u32,
    /// Bit n is set for caution n (SATLINE_LINE_CAUTION_...).
    pub cautions: u32,
    /// Loss by friction, fittings included, pascals.
    pub friction_pa: Uncertain,
    /// Loss by height, pascals; negative where the vapour flows down.
    pub lift_pa: Uncertain,
    /// Loss by acceleration, pascals.
    pub acceleration_pa: Uncertain,
    /// The whole loss, pascals.
    pub drop_pa: Uncertain,
    /// The loss as one of dew temperature, kelvin.
    pub dew_loss_k: Uncertain,
    /// Pascals, absolute.
    pub inlet_pressure_pa: Uncertain,
    /// Pascals, absolute.
    pub outlet_pressure_pa: Uncertain,
    /// Kelvin.
    pub inlet_temperature_k: Uncertain,
    /// Kelvin.
    pub outlet_temperature_k: Uncertain,
    /// Kelvin; of a suction line the coil's.
    pub inlet_superheat_k: Uncertain,
    /// Kelvin; of a suction line the compressor's.
    pub outlet_superheat_k: Uncertain,
    /// Outlet less inlet superheat, kelvin.
    pub superheat_rise_k: Uncertain,
    /// Metres a second.
    pub inlet_velocity_m_s: Uncertain,
    /// Metres a second.
    pub outlet_velocity_m_s: Uncertain,
    /// Heat taken up, watts; negative where given off.
    pub heat_w: Uncertain,
    /// Outlet less inlet temperature, kelvin.
    pub temperature_rise_k: Uncertain,
    /// Temperature of the outer surface where it is coldest, kelvin.
    pub coldest_surface_k: Uncertain,
    /// Mass flow over the least that carries oil up the riser: below 1 oil stays behind.
    pub flow_over_least: Uncertain,
    /// The share of the capacity that the pressure drop costs.
    pub capacity_loss: Uncertain,
    /// The least mass flow that carries oil up, kilograms a second.
    pub least_mass_flow_kg_s: f64,
    /// The least velocity that carries oil up, metres a second.
    pub least_velocity_m_s: f64,
    /// Reynolds number at the inlet.
    pub reynolds: f64,
}

// Their layouts are part of the binary interface.
const _: () = assert!(size_of::<LineRun>() == 56 + 4 * SATLINE_LINE_FITTINGS);
const _: () = assert!(size_of::<LiquidLine>() == 8 + 120 + 5 * 16 && size_of::<LiquidLineResult>() == 16 + 9 * 16 + 40);
const _: () = assert!(size_of::<VaporLine>() == 16 + 120 + 8 * 16 + 4 * 8);
const _: () = assert!(size_of::<VaporLineResult>() == 16 + 19 * 16 + 24);
const _: () = assert!(Fitting::ALL.len() < SATLINE_LINE_FITTINGS);

/// The default of an uncertain number.
const fn usual(value: f64, standard_uncertainty: f64) -> Uncertain {
    Uncertain { value, standard_uncertainty }
}

impl LineRun {
    const EMPTY: Self = Self {
        inside_diameter_m: 0.0,
        outside_diameter_m: 0.0,
        length_m: Uncertain::EMPTY,
        rise_m: Uncertain::EMPTY,
        equivalent_length_m: 0.0,
        fittings: [0; SATLINE_LINE_FITTINGS],
    };

    fn checked(&self) -> Answer<Run> {
        let tube = if self.outside_diameter_m == 0.0 {
            Tube::from_inside_diameter_m(self.inside_diameter_m)
        } else {
            let wall = 0.5 * (self.outside_diameter_m - self.inside_diameter_m);
            Tube::from_outside_diameter_m(self.outside_diameter_m, wall)
        };
        let mut fittings = Fittings::NONE.with_length_m(self.equivalent_length_m).map_err(status)?;
        for (number, count) in (0_i32..).zip(self.fittings) {
            if count > 0 {
                let fitting = Fitting::from_number(number).ok_or(SATLINE_STATUS_UNKNOWN_CHOICE)?;
                fittings = fittings.with(fitting, count).map_err(status)?;
            }
        }
        Ok(Run {
            tube: tube.map_err(status)?,
            length_m: self.length_m.checked()?,
            rise_m: self.rise_m.checked()?,
            fittings,
        })
    }
}

macro_rules! sized {
    ($($name:ident)*) => {$(
        impl $name {
            const SIZE: u32 = size_of::<Self>() as u32;
        }
    )*};
}
sized!(LiquidLine LiquidLineResult VaporLine VaporLineResult);

impl LiquidLine {
    const EMPTY: Self = Self {
        struct_size: Self::SIZE,
        reserved: 0,
        run: LineRun::EMPTY,
        mass_flow_kg_s: Uncertain::EMPTY,
        pressure_pa: Uncertain::EMPTY,
        temperature_k: Uncertain::EMPTY,
        drier_drop_pa: Uncertain::EMPTY,
        heat_gain_w: Uncertain::EMPTY,
    };
}

impl VaporLine {
    const EMPTY: Self = Self {
        struct_size: Self::SIZE,
        duty: VaporDuty::Suction.number(),
        known_at: SATLINE_LINE_END_INLET,
        from_air: 0,
        run: LineRun::EMPTY,
        mass_flow_kg_s: Uncertain::EMPTY,
        pressure_pa: Uncertain::EMPTY,
        temperature_k: Uncertain::EMPTY,
        heat_w: Uncertain::EMPTY,
        ambient_k: Uncertain::EMPTY,
        outside_coefficient_w_m2_k: usual(lineset::DEFAULT_OUTSIDE_COEFFICIENT_W_M2_K, 1.0),
        insulation_conductivity_w_m_k: usual(0.038, 0.003),
        insulation_thickness_m: 0.0,
        dew_point_k: -1.0,
        oil_density_kg_m3: usual(lineset::DEFAULT_OIL_DENSITY_KG_M3, 29.0),
        discharge_pressure_pa: -1.0,
        clearance: lineset::DEFAULT_CLEARANCE,
    };

    fn heat(&self) -> Answer<LineHeat> {
        match self.from_air {
            0 => Ok(LineHeat::Power(self.heat_w.checked()?)),
            1 => Ok(LineHeat::From(lineset::Surroundings {
                ambient_k: self.ambient_k.checked()?,
                dew_point_k: unless_unset(self.dew_point_k),
                outside_coefficient_w_m2_k: self.outside_coefficient_w_m2_k.checked()?,
                insulation: if self.insulation_thickness_m == 0.0 {
                    None
                } else {
                    Some(lineset::Insulation {
                        thickness_m: self.insulation_thickness_m,
                        conductivity_w_m_k: self.insulation_conductivity_w_m_k.checked()?,
                    })
                },
            })),
            _ => Err(SATLINE_STATUS_UNKNOWN_CHOICE),
        }
    }
}

impl LiquidLineResult {
    const EMPTY: Self = Self {
        struct_size: Self::SIZE,
        given: 0,
        advice: 0,
        cautions: 0,
        friction_pa: Uncertain::EMPTY,
        lift_pa: Uncertain::EMPTY,
        drop_pa: Uncertain::EMPTY,
        outlet_pressure_pa: Uncertain::EMPTY,
        outlet_temperature_k: Uncertain::EMPTY,
        subcooling_k: Uncertain::EMPTY,
        subcooling_left_k: Uncertain::EMPTY,
        subcooling_needed_k: Uncertain::EMPTY,
        velocity_m_s: Uncertain::EMPTY,
        friction_k: 0.0,
        lift_k: 0.0,
        reynolds: 0.0,
        flash_begins_m: 0.0,
        flash_vapor_share: 0.0,
    };

    fn of(found: &lineset::LiquidLineResult) -> Self {
        Self {
            struct_size: Self::SIZE,
            given: bit(found.flash_begins_m.is_some(), SATLINE_LINE_GIVEN_FLASH)
                | bit(found.flash_vapor_share.is_some(), SATLINE_LINE_GIVEN_FLASH_SHARE),
            advice: found.advice_bits(),
            cautions: found.caution_bits(),
            friction_pa: Uncertain::of(found.friction_pa),
            lift_pa: Uncertain::of(found.lift_pa),
            drop_pa: Uncertain::of(found.drop_pa),
            outlet_pressure_pa: Uncertain::of(found.outlet_pressure_pa),
            outlet_temperature_k: Uncertain::of(found.outlet_temperature_k),
            subcooling_k: Uncertain::of(found.subcooling_k),
            subcooling_left_k: Uncertain::of(found.subcooling_left_k),
            subcooling_needed_k: Uncertain::of(found.subcooling_needed_k),
            velocity_m_s: Uncertain::of(found.velocity_m_s),
            friction_k: found.friction_k,
            lift_k: found.lift_k,
            reynolds: found.reynolds,
            flash_begins_m: found.flash_begins_m.unwrap_or(0.0),
            flash_vapor_share: found.flash_vapor_share.unwrap_or(0.0),
        }
    }
}

impl VaporLineResult {
    const EMPTY: Self = Self {
        struct_size: Self::SIZE,
        given: 0,
        advice: 0,
        cautions: 0,
        friction_pa: Uncertain::EMPTY,
        lift_pa: Uncertain::EMPTY,
        acceleration_pa: Uncertain::EMPTY,
        drop_pa: Uncertain::EMPTY,
        dew_loss_k: Uncertain::EMPTY,
        inlet_pressure_pa: Uncertain::EMPTY,
        outlet_pressure_pa: Uncertain::EMPTY,
        inlet_temperature_k: Uncertain::EMPTY,
        outlet_temperature_k: Uncertain::EMPTY,
        inlet_superheat_k: Uncertain::EMPTY,
        outlet_superheat_k: Uncertain::EMPTY,
        superheat_rise_k: Uncertain::EMPTY,
        inlet_velocity_m_s: Uncertain::EMPTY,
        outlet_velocity_m_s: Uncertain::EMPTY,
        heat_w: Uncertain::EMPTY,
        temperature_rise_k: Uncertain::EMPTY,
        coldest_surface_k: Uncertain::EMPTY,
        flow_over_least: Uncertain::EMPTY,
        capacity_loss: Uncertain::EMPTY,
        least_mass_flow_kg_s: 0.0,
        least_velocity_m_s: 0.0,
        reynolds: 0.0,
    };

    fn of(found: &lineset::VaporLineResult) -> Self {
        let or_none = |value: Option<satline::uncertain::Uncertain>| value.map_or(Uncertain::EMPTY, Uncertain::of);
        let riser = found.riser;
        Self {
            struct_size: Self::SIZE,
            given: bit(found.dew_loss_k.is_some(), SATLINE_LINE_GIVEN_DEW)
                | bit(riser.is_some(), SATLINE_LINE_GIVEN_RISER)
                | bit(found.capacity_loss.is_some(), SATLINE_LINE_GIVEN_CAPACITY)
                | bit(found.heat.coldest_surface_k.is_some(), SATLINE_LINE_GIVEN_SURFACE)
                | bit(found.heat.sweats == Some(true), SATLINE_LINE_GIVEN_SWEATS),
            advice: found.advice_bits(),
            cautions: found.caution_bits(),
            friction_pa: Uncertain::of(found.friction_pa),
            lift_pa: Uncertain::of(found.lift_pa),
            acceleration_pa: Uncertain::of(found.acceleration_pa),
            drop_pa: Uncertain::of(found.drop_pa),
            dew_loss_k: or_none(found.dew_loss_k),
            inlet_pressure_pa: Uncertain::of(found.inlet_pressure_pa),
            outlet_pressure_pa: Uncertain::of(found.outlet_pressure_pa),
            inlet_temperature_k: Uncertain::of(found.inlet_temperature_k),
            outlet_temperature_k: Uncertain::of(found.outlet_temperature_k),
            inlet_superheat_k: or_none(found.inlet_superheat_k),
            outlet_superheat_k: or_none(found.outlet_superheat_k),
            superheat_rise_k: or_none(found.heat.superheat_rise_k),
            inlet_velocity_m_s: Uncertain::of(found.inlet_velocity_m_s),
            outlet_velocity_m_s: Uncertain::of(found.outlet_velocity_m_s),
            heat_w: Uncertain::of(found.heat.heat_w),
            temperature_rise_k: Uncertain::of(found.heat.temperature_rise_k),
            coldest_surface_k: or_none(found.heat.coldest_surface_k),
            flow_over_least: or_none(riser.map(|riser| riser.flow_over_least)),
            capacity_loss: or_none(found.capacity_loss),
            least_mass_flow_kg_s: riser.map_or(0.0, |riser| riser.least_mass_flow_kg_s),
            least_velocity_m_s: riser.map_or(0.0, |riser| riser.least_velocity_m_s),
            reynolds: found.reynolds,
        }
    }
}

const fn bit(given: bool, bit: u32) -> u32 {
    if given { bit } else { 0 }
}

/// The properties behind a handle. Only differences of enthalpy enter, so any reference state does.
///
/// # Safety
/// As for the functions of the header.
unsafe fn properties(refrigerant: *const RefrigerantFull) -> Answer<Properties> {
    // SAFETY: promised by the caller.
    let record = unsafe { record(refrigerant) }?;
    Properties::of(record.model, Reference::Iir).map_err(status)
}

/// Empties a question or an answer.
///
/// # Safety
/// `place` is null or may be written for `struct_size` bytes.
unsafe fn empty<T>(place: *mut T, struct_size: u32, size: u32, empty: T) -> i32 {
    let checked = || if struct_size == size { Ok(empty) } else { Err(SATLINE_STATUS_BAD_STRUCT_SIZE) };
    // SAFETY: promised by the caller.
    unsafe { answer(place, checked) }
}

/// Darcy friction factor, from laminar flow (64/Re) to rough turbulent flow without a jump, by Churchill's equation of
/// 1977: within 3.2 % of Colebrook's from a Reynolds number of 4000. relative_roughness: roughness over inside diameter;
/// that of drawn copper is 1.5e-6 m.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE, SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_friction_factor(reynolds: f64, relative_roughness: f64, factor: *mut f64) -> i32 {
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(factor, || lineset::friction_factor(reynolds, relative_roughness).map_err(status)) }
}

/// Pressure that refrigerant loses over a height: density times g times height, pascals; negative where it flows down.
///
/// height_m: metres. temperature_k: kelvin. pressure_pa: pascals, absolute; -1 for saturated liquid at that temperature.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE (also between dew and bubble pressure), SATLINE_STATUS_NOT_FINITE,
/// SATLINE_STATUS_NOT_CONVERGED, SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_VERSION_MISMATCH.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_lift_pressure_pa(
    refrigerant: *const RefrigerantFull,
    height_m: f64,
    temperature_k: f64,
    pressure_pa: f64,
    loss_pa: *mut f64,
) -> i32 {
    let compute = || -> Answer<f64> {
        // SAFETY: the header asks for a handle.
        let properties = unsafe { properties(refrigerant) }?;
        let loss = if pressure_pa == -1.0 {
            lineset::lift_pressure_saturated_pa(&properties, height_m, temperature_k)
        } else {
            lineset::lift_pressure_pa(&properties, height_m, temperature_k, pressure_pa)
        };
        loss.map_err(status)
    };
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(loss_pa, compute) }
}

/// Mass flow in kilograms a second behind a cooling capacity in watts: over the enthalpy taken up between the liquid line
/// and the coil's outlet, each given by temperature in kelvin and absolute pressure in pascals.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE (also for a liquid that is none and a vapour that is none),
/// SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_NOT_CONVERGED, SATLINE_STATUS_NULL_POINTER,
/// SATLINE_STATUS_VERSION_MISMATCH.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_line_mass_flow_kg_s(
    refrigerant: *const RefrigerantFull,
    capacity_w: *const Uncertain,
    liquid_temperature_k: *const Uncertain,
    liquid_pressure_pa: *const Uncertain,
    suction_temperature_k: *const Uncertain,
    suction_pressure_pa: *const Uncertain,
    mass_flow_kg_s: *mut Uncertain,
) -> i32 {
    let compute = || -> Answer<Uncertain> {
        // SAFETY: the header asks for a handle.
        let properties = unsafe { properties(refrigerant) }?;
        // SAFETY: the header asks for values.
        let (liquid, suction, capacity) = unsafe {
            (
                [taken(liquid_temperature_k)?, taken(liquid_pressure_pa)?],
                [taken(suction_temperature_k)?, taken(suction_pressure_pa)?],
                taken(capacity_w)?,
            )
        };
        let flow = lineset::mass_flow_kg_s(&properties, capacity, liquid, suction);
        flow.map(Uncertain::of).map_err(status)
    };
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(mass_flow_kg_s, compute) }
}

/// Empties the question. struct_size: sizeof(satline_liquid_line).
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_liquid_line_init(line: *mut LiquidLine, struct_size: u32) -> i32 {
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { empty(line, struct_size, LiquidLine::SIZE, LiquidLine::EMPTY) }
}

/// Empties the answer. struct_size: sizeof(satline_liquid_line_result).
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_liquid_line_result_init(result: *mut LiquidLineResult, struct_size: u32) -> i32 {
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { empty(result, struct_size, LiquidLineResult::SIZE, LiquidLineResult::EMPTY) }
}

/// Follows the liquid from the outdoor unit's port to the metering device: losses by friction, height and drier, the
/// subcooling left, and whether the liquid boils on the way. Show the advice and the cautions of the answer.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE (a rise greater than the length, a temperature above the bubble temperature, a drop
/// of more than half of the pressure, or a value outside its range), SATLINE_STATUS_NOT_FINITE,
/// SATLINE_STATUS_UNKNOWN_CHOICE (no such fitting), SATLINE_STATUS_NOT_CONVERGED (near the critical point),
/// SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_VERSION_MISMATCH.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_liquid_line_follow(
    refrigerant: *const RefrigerantFull,
    line: *const LiquidLine,
    result: *mut LiquidLineResult,
) -> i32 {
    let follow = || -> Answer<()> {
        // SAFETY: the header asks for a handle, a question, and an answer that may be read and written.
        let (properties, line) = unsafe { (properties(refrigerant)?, given(line)?) };
        // SAFETY: as above.
        let result = unsafe { result.as_mut() }.ok_or(SATLINE_STATUS_NULL_POINTER)?;
        if line.struct_size != LiquidLine::SIZE || result.struct_size != LiquidLineResult::SIZE {
            return Err(SATLINE_STATUS_BAD_STRUCT_SIZE);
        }
        let question = lineset::LiquidLine {
            properties: &properties,
            run: line.run.checked()?,
            mass_flow_kg_s: line.mass_flow_kg_s.checked()?,
            pressure_pa: line.pressure_pa.checked()?,
            temperature_k: line.temperature_k.checked()?,
            drier_drop_pa: line.drier_drop_pa.checked()?,
            heat_gain_w: line.heat_gain_w.checked()?,
        };
        *result = LiquidLineResult::of(&lineset::liquid_line(&question).map_err(status)?);
        Ok(())
    };
    follow().err().unwrap_or(SATLINE_STATUS_OK)
}

/// Empties the question. struct_size: sizeof(satline_vapor_line).
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_vapor_line_init(line: *mut VaporLine, struct_size: u32) -> i32 {
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { empty(line, struct_size, VaporLine::SIZE, VaporLine::EMPTY) }
}

/// Empties the answer. struct_size: sizeof(satline_vapor_line_result).
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_vapor_line_result_init(result: *mut VaporLineResult, struct_size: u32) -> i32 {
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { empty(result, struct_size, VaporLineResult::SIZE, VaporLineResult::EMPTY) }
}

/// Follows vapour through a suction or discharge line: losses, the loss of dew temperature, oil return in a riser, what
/// the pressure drop costs of the capacity, and the heat from the air with the superheat at both ends. Show the advice and
/// the cautions of the answer. Ask at the least flow at which the unit runs whether oil returns.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE (a rise greater than the length, a temperature below the dew temperature, a drop of
/// more than half of the pressure, or a value outside its range), SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_UNKNOWN_CHOICE
/// (no such duty, end or fitting), SATLINE_STATUS_NOT_AVAILABLE (the vapour would condense on the way, or heat from the air
/// without the outside diameter), SATLINE_STATUS_NOT_CONVERGED (near the critical point), SATLINE_STATUS_BAD_STRUCT_SIZE,
/// SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_VERSION_MISMATCH.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_vapor_line_follow(
    refrigerant: *const RefrigerantFull,
    line: *const VaporLine,
    result: *mut VaporLineResult,
) -> i32 {
    let follow = || -> Answer<()> {
        // SAFETY: the header asks for a handle, a question, and an answer that may be read and written.
        let (properties, line) = unsafe { (properties(refrigerant)?, given(line)?) };
        // SAFETY: as above.
        let result = unsafe { result.as_mut() }.ok_or(SATLINE_STATUS_NULL_POINTER)?;
        if line.struct_size != VaporLine::SIZE || result.struct_size != VaporLineResult::SIZE {
            return Err(SATLINE_STATUS_BAD_STRUCT_SIZE);
        }
        let question = lineset::VaporLine {
            properties: &properties,
            duty: VaporDuty::from_number(line.duty).ok_or(SATLINE_STATUS_UNKNOWN_CHOICE)?,
            run: line.run.checked()?,
            mass_flow_kg_s: line.mass_flow_kg_s.checked()?,
            known_at: match line.known_at {
                SATLINE_LINE_END_INLET => LineEnd::Inlet,
                SATLINE_LINE_END_OUTLET => LineEnd::Outlet,
                _ => return Err(SATLINE_STATUS_UNKNOWN_CHOICE),
            },
            pressure_pa: line.pressure_pa.checked()?,
            temperature_k: line.temperature_k.checked()?,
            heat: line.heat()?,
            oil_density_kg_m3: line.oil_density_kg_m3.checked()?,
            discharge_pressure_pa: unless_unset(line.discharge_pressure_pa),
            clearance: line.clearance,
        };
        *result = VaporLineResult::of(&lineset::vapor_line(&question).map_err(status)?);
        Ok(())
    };
    follow().err().unwrap_or(SATLINE_STATUS_OK)
}
