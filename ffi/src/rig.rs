//! The rig in C: a simulated unit, at rest in its course or followed in time, in storage of the caller's.

use crate::answer::{Answer, answer, given, status};
use crate::full::{RefrigerantFull, record};
use crate::generated::codes::{
    SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_OK, SATLINE_STATUS_UNKNOWN_CHOICE,
};
use satline::Field;
use satline::rig::{
    Conditions, Device, EfficiencyClass, Faults, Inputs, LineSet, Moment, Motion, Rating, RefrigerantMap, Sensors,
    Steady, Trip, Unit, WATTS_PER_TON,
};

/// How many 8-byte words the storage of a refrigerant's map has.
pub const SATLINE_RIG_MAP_WORDS: usize = 9216;
/// How many 8-byte words the storage of a unit has.
pub const SATLINE_RIG_UNIT_WORDS: usize = 256;
/// How many 8-byte words the storage of a unit followed in time has.
pub const SATLINE_RIG_MOTION_WORDS: usize = 512;

/// Metering device: a fixed orifice by the correlation of Payne and O'Neal.
pub const SATLINE_RIG_DEVICE_SHORT_TUBE: i32 = 1;
/// Metering device: a fixed orifice by a square-root law.
pub const SATLINE_RIG_DEVICE_SQUARE_ROOT: i32 = 2;
/// Metering device: a thermostatic valve with a tapered needle.
pub const SATLINE_RIG_DEVICE_TAPERED_VALVE: i32 = 3;
/// Metering device: a thermostatic valve with a linear needle.
pub const SATLINE_RIG_DEVICE_LINEAR_VALVE: i32 = 4;
/// Efficiency class: small coils.
pub const SATLINE_RIG_CLASS_BASIC: i32 = 1;
/// Efficiency class: usual coils.
pub const SATLINE_RIG_CLASS_STANDARD: i32 = 2;
/// Efficiency class: large coils.
pub const SATLINE_RIG_CLASS_HIGH: i32 = 3;
/// Start of a motion: the unit has stood for long.
pub const SATLINE_RIG_START_AT_REST: i32 = 1;
/// Start of a motion: the unit has run for long.
pub const SATLINE_RIG_START_SETTLED: i32 = 2;
/// The unit has not tripped.
pub const SATLINE_RIG_TRIP_NONE: i32 = 0;
/// The low-pressure switch has stopped it.
pub const SATLINE_RIG_TRIP_LOW_PRESSURE: i32 = 1;
/// The high-pressure switch has stopped it.
pub const SATLINE_RIG_TRIP_HIGH_PRESSURE: i32 = 2;

/// Storage for the map of a refrigerant's properties. What is in it is the library's own. Units made with it point into
/// it: keep it where it is, and unchanged, as long as they are used.
#[repr(C)]
pub struct RigMap {
    /// sizeof(satline_rig_map), set by satline_rig_map_init.
    pub struct_size: u32,
    /// Whether it has been made.
    pub made: u32,
    pub words: [u64; SATLINE_RIG_MAP_WORDS],
}

/// Storage for a unit. What is in it is the library's own.
#[repr(C)]
pub struct RigUnit {
    /// sizeof(satline_rig_unit), set by satline_rig_unit_init.
    pub struct_size: u32,
    /// Whether it has been made.
    pub made: u32,
    pub words: [u64; SATLINE_RIG_UNIT_WORDS],
}

/// Storage for a unit that is followed in time. What is in it is the library's own.
#[repr(C)]
pub struct RigMotion {
    /// sizeof(satline_rig_motion), set by satline_rig_motion_init.
    pub struct_size: u32,
    /// Whether it has been started.
    pub made: u32,
    pub words: [u64; SATLINE_RIG_MOTION_WORDS],
}

/// What a unit is built from. Start with satline_rig_rating_init: a standard unit with a 25 ft line set.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct RigRating {
    /// sizeof(satline_rig_rating), set by satline_rig_rating_init.
    pub struct_size: u32,
    /// SATLINE_RIG_DEVICE_...
    pub device: i32,
    /// SATLINE_RIG_CLASS_...
    pub efficiency_class: i32,
    /// Always 0.
    pub reserved: i32,
    /// Nominal cooling capacity, watts: 1 to 6 tons.
    pub nominal_capacity_w: f64,
    /// Length of each line, with what the fittings are worth, metres.
    pub line_length_m: f64,
    /// How much higher the indoor unit stands, metres.
    pub lift_m: f64,
}

/// The air around a unit that cools. This structure never changes.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct RigConditions {
    /// Air entering the outdoor coil, kelvin.
    pub outdoor_dry_bulb_k: f64,
    /// Return air, kelvin.
    pub return_dry_bulb_k: f64,
    /// Its wet bulb, kelvin.
    pub return_wet_bulb_k: f64,
    /// Ambient (station) pressure, pascals.
    pub ambient_pressure_pa: f64,
}

/// What is wrong with a unit, each from 0 (nothing). Start with satline_rig_faults_init: all 0.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct RigFaults {
    /// sizeof(satline_rig_faults), set by satline_rig_faults_init.
    pub struct_size: u32,
    /// Always 0.
    pub reserved: u32,
    /// Share of the nameplate charge that is missing. Not looked at in a motion, which has its own charge.
    pub undercharge: f64,
    /// Share of the nameplate charge that is too much. Not looked at in a motion.
    pub overcharge: f64,
    /// Share of the indoor airflow that is missing.
    pub low_indoor_airflow: f64,
    /// Share of the outdoor airflow that is missing.
    pub restricted_condenser_air: f64,
    /// Pressure drop in the liquid line at the design flow, as a share of the whole drop to the evaporator.
    pub liquid_line_restriction: f64,
    /// Share of the compressor's flow that leaks back.
    pub compressor_leakage: f64,
    /// Nitrogen inside, as a share of what fills the unit at 101325 Pa and 294 K.
    pub non_condensables: f64,
    /// Of an orifice, how much too wide, as a share of its flow; of a valve, superheat that its bulb feels too much, in
    /// units of 15 K.
    pub metering_overfeeding: f64,
    /// Share of the metering device's flow that is missing when fully open.
    pub metering_underfeeding: f64,
    /// How many times more heat than it should the suction line takes up, less one.
    pub suction_line_heat_gain: f64,
}

/// A unit at one moment. Start with satline_rig_state_init. Fields named as those of a reading are what exact instruments
/// would show; one that could not be shown is 0.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct RigState {
    /// sizeof(satline_rig_state), set by satline_rig_state_init.
    pub struct_size: u32,
    /// 1 while the compressor runs.
    pub runs: u32,
    /// SATLINE_RIG_TRIP_...
    pub trip: i32,
    /// Always 0.
    pub reserved: i32,
    /// Time since the motion began, seconds; 0 of a unit at rest in its course.
    pub seconds: f64,
    /// Pascals, absolute, at the vapour port.
    pub suction_pressure_pa: f64,
    /// Kelvin, at the vapour port.
    pub suction_line_temperature_k: f64,
    /// Pascals, absolute, at the liquid port.
    pub liquid_pressure_pa: f64,
    /// Kelvin, at the liquid port.
    pub liquid_line_temperature_k: f64,
    /// Pascals, absolute.
    pub discharge_pressure_pa: f64,
    /// Kelvin.
    pub discharge_line_temperature_k: f64,
    /// Kelvin.
    pub coil_outlet_temperature_k: f64,
    /// Kelvin.
    pub condensing_surface_temperature_k: f64,
    /// Kelvin.
    pub condenser_leaving_dry_bulb_k: f64,
    /// Kelvin, behind the fan.
    pub supply_dry_bulb_k: f64,
    /// Kelvin.
    pub supply_wet_bulb_k: f64,
    /// Cubic metres a second, of supply air.
    pub airflow_m3_s: f64,
    /// What the indoor coil takes from the air, watts.
    pub capacity_w: f64,
    /// The part that cools the air, watts.
    pub sensible_capacity_w: f64,
    /// Watts.
    pub compressor_power_w: f64,
    /// Both fans, watts.
    pub fan_power_w: f64,
    /// Refrigerant flow, kilograms a second.
    pub mass_flow_kg_s: f64,
    /// Refrigerant inside, kilograms.
    pub charge_kg: f64,
    /// Line less dew temperature at the vapour port, kelvin; 0 while wet gas returns.
    pub superheat_k: f64,
    /// Bubble less line temperature at the liquid port, by the pressure shown there, kelvin.
    pub subcooling_k: f64,
    /// Share of vapour at the vapour port by enthalpy, above 1 where superheated.
    pub vapor_port_quality: f64,
    /// Lift of a thermostatic valve's needle, 0 to 1; -1 without a valve.
    pub valve_lift: f64,
}

// Their layouts are part of the binary interface, and what is kept in them must fit.
const _: () = assert!(size_of::<RigRating>() == 40 && size_of::<RigFaults>() == 88 && size_of::<RigState>() == 200);
const _: () = assert!(size_of::<RefrigerantMap>() <= 8 * SATLINE_RIG_MAP_WORDS && align_of::<RefrigerantMap>() <= 8);
const _: () = assert!(size_of::<Unit>() <= 8 * SATLINE_RIG_UNIT_WORDS && align_of::<Unit>() <= 8);
const _: () = assert!(size_of::<Motion>() <= 8 * SATLINE_RIG_MOTION_WORDS && align_of::<Motion>() <= 8);

/// Stands in `made` of storage that holds something.
const MADE: u32 = 0x5a71_11e5;

/// Storage that holds a value of the library.
trait Storage {
    type Held: Copy;
    const SIZE: u32;
    fn head(&mut self) -> (&mut u32, &mut u32, *mut u64);
    fn seen(&self) -> (u32, u32, *const u64);
}

macro_rules! storage {
    ($($name:ident holds $held:ty;)*) => {$(
        impl Storage for $name {
            type Held = $held;
            const SIZE: u32 = size_of::<Self>() as u32;
            fn head(&mut self) -> (&mut u32, &mut u32, *mut u64) {
                (&mut self.struct_size, &mut self.made, self.words.as_mut_ptr())
            }
            fn seen(&self) -> (u32, u32, *const u64) {
                (self.struct_size, self.made, self.words.as_ptr())
            }
        }
    )*};
}
storage! {
    RigUnit holds Unit<'static>;
    RigMotion holds Motion<'static>;
}

/// Keeps a value in storage that was initialised.
///
/// # Safety
/// `place` is null or points at storage that may be read and written.
unsafe fn keep<S: Storage>(place: *mut S, value: S::Held) -> Answer<()> {
    // SAFETY: promised by the caller.
    let (size, made, words) = unsafe { place.as_mut() }.ok_or(SATLINE_STATUS_NULL_POINTER)?.head();
    if *size != S::SIZE {
        return Err(SATLINE_STATUS_BAD_STRUCT_SIZE);
    }
    // SAFETY: the words are aligned and large enough, which is asserted above.
    unsafe { words.cast::<S::Held>().write(value) };
    *made = MADE;
    Ok(())
}

/// A copy of what is kept in storage.
///
/// # Safety
/// `place` is null or points at storage that only this library has written.
unsafe fn kept<S: Storage>(place: *const S) -> Answer<S::Held> {
    // SAFETY: promised by the caller.
    let (size, made, words) = unsafe { given(place) }?.seen();
    if size != S::SIZE || made != MADE {
        return Err(SATLINE_STATUS_BAD_STRUCT_SIZE);
    }
    // SAFETY: it was made, so the words hold such a value.
    Ok(unsafe { words.cast::<S::Held>().read() })
}

/// The map in its storage.
///
/// # Safety
/// `map` is null or points at a map that only this library has written and that stays.
unsafe fn mapped(map: *const RigMap) -> Answer<&'static RefrigerantMap> {
    // SAFETY: promised by the caller.
    let map = unsafe { given(map) }?;
    if map.struct_size != size_of::<RigMap>() as u32 || map.made != MADE {
        return Err(SATLINE_STATUS_BAD_STRUCT_SIZE);
    }
    // SAFETY: it was made, so the words hold a map; the header asks that it stays.
    Ok(unsafe { &*map.words.as_ptr().cast() })
}

impl RigConditions {
    fn conditions(&self) -> Conditions {
        Conditions {
            outdoor_dry_bulb: self.outdoor_dry_bulb_k,
            return_dry_bulb: self.return_dry_bulb_k,
            return_wet_bulb: self.return_wet_bulb_k,
            ambient_pressure: self.ambient_pressure_pa,
        }
    }
}

impl RigFaults {
    const SIZE: u32 = size_of::<Self>() as u32;

    const NONE: Self = Self {
        struct_size: Self::SIZE,
        reserved: 0,
        undercharge: 0.0,
        overcharge: 0.0,
        low_indoor_airflow: 0.0,
        restricted_condenser_air: 0.0,
        liquid_line_restriction: 0.0,
        compressor_leakage: 0.0,
        non_condensables: 0.0,
        metering_overfeeding: 0.0,
        metering_underfeeding: 0.0,
        suction_line_heat_gain: 0.0,
    };

    fn faults(&self) -> Answer<Faults> {
        if self.struct_size != Self::SIZE {
            return Err(SATLINE_STATUS_BAD_STRUCT_SIZE);
        }
        Ok(Faults {
            undercharge: self.undercharge,
            overcharge: self.overcharge,
            low_indoor_airflow: self.low_indoor_airflow,
            restricted_condenser_air: self.restricted_condenser_air,
            liquid_line_restriction: self.liquid_line_restriction,
            compressor_leakage: self.compressor_leakage,
            non_condensables: self.non_condensables,
            metering_overfeeding: self.metering_overfeeding,
            metering_underfeeding: self.metering_underfeeding,
            suction_line_heat_gain: self.suction_line_heat_gain,
        })
    }
}

impl RigState {
    const SIZE: u32 = size_of::<Self>() as u32;

    fn of(map: &RefrigerantMap, state: &Steady, conditions: &Conditions, moment: Option<&Moment>) -> Answer<Self> {
        let shown = Sensors::exact().placed(0).settled(state, conditions);
        let of = |field| shown.get(field).unwrap_or(0.0);
        let low = map.saturation(state.vapor_port.pressure).map_err(status)?;
        let high = map.saturation(state.liquid_port.pressure).map_err(status)?;
        Ok(Self {
            struct_size: Self::SIZE,
            runs: u32::from(moment.is_none_or(|moment| moment.runs)),
            trip: match moment.and_then(|moment| moment.trip) {
                None => SATLINE_RIG_TRIP_NONE,
                Some(Trip::LowPressure) => SATLINE_RIG_TRIP_LOW_PRESSURE,
                Some(Trip::HighPressure) => SATLINE_RIG_TRIP_HIGH_PRESSURE,
            },
            reserved: 0,
            seconds: moment.map_or(0.0, |moment| moment.seconds),
            suction_pressure_pa: of(Field::SuctionPressure),
            suction_line_temperature_k: of(Field::SuctionLineTemperature),
            liquid_pressure_pa: of(Field::LiquidPressure),
            liquid_line_temperature_k: of(Field::LiquidLineTemperature),
            discharge_pressure_pa: of(Field::DischargePressure),
            discharge_line_temperature_k: of(Field::DischargeLineTemperature),
            coil_outlet_temperature_k: of(Field::CoilOutletTemperature),
            condensing_surface_temperature_k: of(Field::CondensingSurfaceTemperature),
            condenser_leaving_dry_bulb_k: of(Field::CondenserLeavingDryBulb),
            supply_dry_bulb_k: of(Field::SupplyDryBulb),
            supply_wet_bulb_k: of(Field::SupplyWetBulb),
            airflow_m3_s: of(Field::AirflowOverCoil),
            capacity_w: state.capacity,
            sensible_capacity_w: state.sensible_capacity,
            compressor_power_w: state.compressor_power,
            fan_power_w: state.fan_power,
            mass_flow_kg_s: state.mass_flow,
            charge_kg: state.charge,
            superheat_k: (state.vapor_port.temperature - low.dew_temperature).max(0.0),
            subcooling_k: high.bubble_temperature - state.liquid_port.temperature,
            vapor_port_quality: state.vapor_port.quality,
            valve_lift: state.valve_lift.unwrap_or(-1.0),
        })
    }

    /// Writes a state into the caller's, which must be initialised.
    ///
    /// # Safety
    /// `place` is null or may be read and written.
    unsafe fn put(place: *mut Self, compute: impl FnOnce() -> Answer<Self>) -> i32 {
        let put = || -> Answer<()> {
            // SAFETY: promised by the caller.
            let place = unsafe { place.as_mut() }.ok_or(SATLINE_STATUS_NULL_POINTER)?;
            if place.struct_size != Self::SIZE {
                return Err(SATLINE_STATUS_BAD_STRUCT_SIZE);
            }
            *place = compute()?;
            Ok(())
        };
        put().err().unwrap_or(SATLINE_STATUS_OK)
    }
}

/// Empties storage for a map. struct_size: sizeof(satline_rig_map). The rig is not in the library for microcontrollers.
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_rig_map_init(map: *mut RigMap, struct_size: u32) -> i32 {
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { emptied(map, struct_size, |map| (&mut map.struct_size, &mut map.made)) }
}

/// Empties storage for a unit. struct_size: sizeof(satline_rig_unit).
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_rig_unit_init(unit: *mut RigUnit, struct_size: u32) -> i32 {
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { emptied(unit, struct_size, |unit| (&mut unit.struct_size, &mut unit.made)) }
}

/// Empties storage for a unit followed in time. struct_size: sizeof(satline_rig_motion).
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_rig_motion_init(motion: *mut RigMotion, struct_size: u32) -> i32 {
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { emptied(motion, struct_size, |motion| (&mut motion.struct_size, &mut motion.made)) }
}

/// # Safety
/// `place` is null or may be written for `struct_size` bytes.
unsafe fn emptied<T>(place: *mut T, struct_size: u32, head: impl Fn(&mut T) -> (&mut u32, &mut u32)) -> i32 {
    if place.is_null() {
        return SATLINE_STATUS_NULL_POINTER;
    }
    if struct_size as usize != size_of::<T>() {
        return SATLINE_STATUS_BAD_STRUCT_SIZE;
    }
    // SAFETY: not null, and the size is right; zeros are a valid value of plain numbers.
    let place = unsafe {
        place.write_bytes(0, 1);
        &mut *place
    };
    *head(place).0 = struct_size;
    SATLINE_STATUS_OK
}

/// A standard 3-ton unit with a tapered valve and a 25 ft line set. struct_size: sizeof(satline_rig_rating).
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_rig_rating_init(rating: *mut RigRating, struct_size: u32) -> i32 {
    let usual = || {
        if struct_size as usize != size_of::<RigRating>() {
            return Err(SATLINE_STATUS_BAD_STRUCT_SIZE);
        }
        Ok(RigRating {
            struct_size,
            device: SATLINE_RIG_DEVICE_TAPERED_VALVE,
            efficiency_class: SATLINE_RIG_CLASS_STANDARD,
            reserved: 0,
            nominal_capacity_w: 3.0 * WATTS_PER_TON,
            line_length_m: LineSet::RATED.length,
            lift_m: LineSet::RATED.lift,
        })
    };
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { answer(rating, usual) }
}

/// No fault at all. struct_size: sizeof(satline_rig_faults).
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_rig_faults_init(faults: *mut RigFaults, struct_size: u32) -> i32 {
    let none =
        || if struct_size == RigFaults::SIZE { Ok(RigFaults::NONE) } else { Err(SATLINE_STATUS_BAD_STRUCT_SIZE) };
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { answer(faults, none) }
}

/// Empties a state. struct_size: sizeof(satline_rig_state).
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_rig_state_init(state: *mut RigState, struct_size: u32) -> i32 {
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { emptied(state, struct_size, |state| (&mut state.struct_size, &mut state.runs)) }
}

/// Maps the properties of a refrigerant, in some tens of milliseconds and with up to 512 KiB of stack.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE, SATLINE_STATUS_NOT_CONVERGED (refrigerants that no such unit runs with),
/// SATLINE_STATUS_BAD_STRUCT_SIZE (map not initialised), SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_VERSION_MISMATCH.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_rig_map_make(refrigerant: *const RefrigerantFull, map: *mut RigMap) -> i32 {
    let make = || -> Answer<()> {
        // SAFETY: the header asks for a handle.
        let record = unsafe { record(refrigerant) }?;
        // SAFETY: the header asks for storage that may be read and written.
        let place = unsafe { map.as_mut() }.ok_or(SATLINE_STATUS_NULL_POINTER)?;
        if place.struct_size as usize != size_of::<RigMap>() {
            return Err(SATLINE_STATUS_BAD_STRUCT_SIZE);
        }
        let made = RefrigerantMap::of(record.designation(), record.model).map_err(status)?;
        // SAFETY: the words are aligned and large enough, which is asserted above.
        unsafe { place.words.as_mut_ptr().cast::<RefrigerantMap>().write(made) };
        place.made = MADE;
        Ok(())
    };
    make().err().unwrap_or(SATLINE_STATUS_OK)
}

/// Builds a unit that meets its rating at 95 degrees Fahrenheit outdoors and 80/67 indoors, with the charge that it then
/// holds as its nameplate's. The unit points into the map.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE, SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_UNKNOWN_CHOICE (device, class),
/// SATLINE_STATUS_BAD_STRUCT_SIZE (something is not initialised, or the map not made), SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_rig_unit_make(
    map: *const RigMap,
    rating: *const RigRating,
    unit: *mut RigUnit,
) -> i32 {
    let make = || -> Answer<()> {
        // SAFETY: the header asks for a map that was made and stays, and for a rating.
        let (map, rating) = unsafe { (mapped(map)?, given(rating)?) };
        if rating.struct_size as usize != size_of::<RigRating>() {
            return Err(SATLINE_STATUS_BAD_STRUCT_SIZE);
        }
        let device = match rating.device {
            SATLINE_RIG_DEVICE_SHORT_TUBE => Device::ShortTube,
            SATLINE_RIG_DEVICE_SQUARE_ROOT => Device::FlashingOrifice,
            SATLINE_RIG_DEVICE_TAPERED_VALVE => Device::TaperedValve,
            SATLINE_RIG_DEVICE_LINEAR_VALVE => Device::LinearValve,
            _ => return Err(SATLINE_STATUS_UNKNOWN_CHOICE),
        };
        let class = match rating.efficiency_class {
            SATLINE_RIG_CLASS_BASIC => EfficiencyClass::Basic,
            SATLINE_RIG_CLASS_STANDARD => EfficiencyClass::Standard,
            SATLINE_RIG_CLASS_HIGH => EfficiencyClass::High,
            _ => return Err(SATLINE_STATUS_UNKNOWN_CHOICE),
        };
        let lines = LineSet { length: rating.line_length_m, lift: rating.lift_m };
        let tons = rating.nominal_capacity_w / WATTS_PER_TON;
        let made = Rating::nominal(map, tons, class, device, lines).and_then(|rating| Unit::designed(map, &rating));
        // SAFETY: the header asks for storage that may be read and written.
        unsafe { keep(unit, made.map_err(status)?) }
    };
    make().err().unwrap_or(SATLINE_STATUS_OK)
}

/// The charge on the unit's nameplate, kilograms, its line set included.
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE (unit not made), SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_rig_unit_nameplate_charge_kg(unit: *const RigUnit, charge_kg: *mut f64) -> i32 {
    // SAFETY: the header asks for a unit and for a pointer that may be written.
    unsafe { answer(charge_kg, || kept(unit).map(|unit| unit.nameplate_charge)) }
}

/// Where a unit settles.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE, SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_NOT_AVAILABLE (such a unit would not
/// run: it would trip, flood its compressor or freeze), SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_rig_solve(
    unit: *const RigUnit,
    conditions: *const RigConditions,
    faults: *const RigFaults,
    state: *mut RigState,
) -> i32 {
    let solve = || -> Answer<RigState> {
        // SAFETY: the header asks for a unit, conditions and faults.
        let (unit, conditions, faults) =
            unsafe { (kept(unit)?, given(conditions)?.conditions(), given(faults)?.faults()?) };
        let found = unit.solve(&conditions, &faults).map_err(status)?;
        RigState::of(unit.map, &found, &conditions, None)
    };
    // SAFETY: the header asks for a state that may be read and written.
    unsafe { RigState::put(state, solve) }
}

/// Begins to follow a unit in time. start: SATLINE_RIG_START_...; charge_kg: the charge of a unit that stands, kilograms;
/// of one that runs it is the nameplate's and the faults'. The motion points into the unit's map, not at the unit.
///
/// Status: as satline_rig_solve; SATLINE_STATUS_UNKNOWN_CHOICE (start).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_rig_motion_start(
    unit: *const RigUnit,
    conditions: *const RigConditions,
    faults: *const RigFaults,
    start: i32,
    charge_kg: f64,
    motion: *mut RigMotion,
) -> i32 {
    let begin = || -> Answer<()> {
        // SAFETY: the header asks for a unit, conditions and faults.
        let (unit, conditions, faults) =
            unsafe { (kept(unit)?, given(conditions)?.conditions(), given(faults)?.faults()?) };
        let begun = match start {
            SATLINE_RIG_START_AT_REST => Motion::at_rest(&unit, &conditions, charge_kg),
            SATLINE_RIG_START_SETTLED => Motion::settled(&unit, &conditions, &faults),
            _ => return Err(SATLINE_STATUS_UNKNOWN_CHOICE),
        };
        // SAFETY: the header asks for storage that may be read and written.
        unsafe { keep(motion, begun.map_err(status)?) }
    };
    begin().err().unwrap_or(SATLINE_STATUS_OK)
}

/// Follows a unit for one step: hardware in the loop. seconds: length of the step, best 1. calls: 1 while the thermostat
/// calls, else 0. charging_kg_s: refrigerant charged into the low side, kilograms a second; negative when it is taken out.
///
/// Status: as satline_rig_solve; the motion then stays as it was.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_rig_motion_step(
    motion: *mut RigMotion,
    seconds: f64,
    calls: i32,
    conditions: *const RigConditions,
    faults: *const RigFaults,
    charging_kg_s: f64,
    state: *mut RigState,
) -> i32 {
    let step = || -> Answer<RigState> {
        // SAFETY: the header asks for a motion, conditions and faults.
        let (mut moved, conditions, faults) =
            unsafe { (kept(motion)?, given(conditions)?.conditions(), given(faults)?.faults()?) };
        let calls = match calls {
            0 => false,
            1 => true,
            _ => return Err(SATLINE_STATUS_UNKNOWN_CHOICE),
        };
        let inputs = Inputs { calls, conditions, faults, charging: charging_kg_s };
        let moment = *moved.step(seconds, &inputs).map_err(status)?;
        let found = RigState::of(moved.map(), &moment.state, &conditions, Some(&moment))?;
        // SAFETY: the header asks for storage that may be read and written.
        unsafe { keep(motion, moved) }?;
        Ok(found)
    };
    // SAFETY: the header asks for a state that may be read and written.
    unsafe { RigState::put(state, step) }
}
