//! The nitrogen pressure test in C.

use crate::answer::{Answer, answer, given, status, unless_unset};
use crate::generated::codes::{
    SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_OK, SATLINE_STATUS_OUT_OF_RANGE,
};
use satline::quantity::{Pressure, Temperature};
use satline::visit::pressure_test::{self, PressureTestFinding, TestReading};
use satline::visit::{expected_nitrogen_pressure, nitrogen_density_kg_m3};

/// Most tube temperatures that a pressure test takes at one time.
pub const SATLINE_PRESSURE_TEST_TEMPERATURES: usize = 16;
/// Bit of satline_pressure_test_finding.given: the five values of the leak are set.
pub const SATLINE_PRESSURE_TEST_GIVEN_LEAK: u32 = 1;

/// The readings of a nitrogen pressure test, but for the temperatures, and what is asked of it. Start with
/// satline_pressure_test_init.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct PressureTest {
    /// sizeof(satline_pressure_test), set by satline_pressure_test_init.
    pub struct_size: u32,
    /// Always 0.
    pub reserved: u32,
    /// Pressure at the first reading, pascals, absolute: see satline_pressure_from_gauge_pa, with the station pressure of
    /// that time.
    pub first_pressure_pa: f64,
    /// Pressure at the last reading, pascals, absolute.
    pub last_pressure_pa: f64,
    /// From first to last reading, seconds.
    pub duration_s: f64,
    /// Low-side design pressure of the nameplate, pascals, absolute. Any pressure above it is refused.
    pub low_side_design_pressure_pa: f64,
    /// One standard uncertainty of each pressure, pascals; -1 (by satline_pressure_test_init) for that of a gauge with a
    /// limit of error of 3.5 psi. Where one gauge stays on for both readings, give what does not repeat.
    pub pressure_uncertainty_pa: f64,
    /// One standard uncertainty of the temperatures, kelvin; -1 (by satline_pressure_test_init) for that of a thermometer
    /// with a limit of error of 0.1 % and 1.3 degrees Fahrenheit.
    pub temperature_uncertainty_k: f64,
    /// Internal volume, cubic metres; -1 (by satline_pressure_test_init) where not known.
    pub volume_m3: f64,
    /// Largest drop allowed over the test, pascals; -1 (by satline_pressure_test_init) for 1 % of the first pressure.
    pub allowed_drop_pa: f64,
    /// Least time, seconds; -1 (by satline_pressure_test_init) for an hour (common practice).
    pub least_time_s: f64,
}

/// The answer to a pressure test. Start with satline_pressure_test_finding_init. What is not given is 0.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct TestFinding {
    /// sizeof(satline_pressure_test_finding), set by satline_pressure_test_finding_init.
    pub struct_size: u32,
    /// SATLINE_PRESSURE_TEST_OUTCOME_...; 0 before a test.
    pub outcome: i32,
    /// SATLINE_PRESSURE_TEST_REASON_...
    pub reason: i32,
    /// SATLINE_PRESSURE_TEST_ADVICE_...
    pub advice: i32,
    /// Bit n is set for caution n (SATLINE_PRESSURE_TEST_CAUTION_...).
    pub cautions: u32,
    /// SATLINE_PRESSURE_TEST_GIVEN_... bits.
    pub given: u32,
    /// Last pressure expected without a leak, pascals, absolute.
    pub expected_pressure_pa: f64,
    /// One standard uncertainty of it, pascals.
    pub expected_uncertainty_pa: f64,
    /// Last pressure less expected, pascals: negative for a drop.
    pub residual_pa: f64,
    /// One standard uncertainty of it, pascals.
    pub residual_uncertainty_pa: f64,
    /// What the expansion of copper would add to the expected pressure, pascals: counted in the uncertainty only.
    pub metal_expansion_pa: f64,
    /// The drop allowed, pascals.
    pub allowed_drop_pa: f64,
    /// The smallest drop that this test would have shown, pascals.
    pub smallest_drop_pa: f64,
    /// Rate of the drop, pascals an hour, at the last temperature.
    pub drop_rate_pa_h: f64,
    /// One standard uncertainty of it, pascals an hour.
    pub drop_rate_uncertainty_pa_h: f64,
    /// The smallest rate that this test would have shown, pascals an hour.
    pub smallest_rate_pa_h: f64,
    /// Density of the nitrogen at the first reading, kilograms per cubic metre.
    pub density_kg_m3: f64,
    /// Leak: volume times rate of the drop, Pa m3/s.
    pub leak_pa_m3_s: f64,
    /// One standard uncertainty of it, Pa m3/s.
    pub leak_uncertainty_pa_m3_s: f64,
    /// Leak: nitrogen lost, grams a year. A leak of refrigerant is another; nothing here converts one to the other.
    pub leak_g_yr: f64,
    /// One standard uncertainty of it, grams a year.
    pub leak_uncertainty_g_yr: f64,
    /// The smallest loss of nitrogen that this test would have shown, grams a year.
    pub smallest_leak_g_yr: f64,
}

// Their layouts are part of the binary interface.
const _: () = assert!(size_of::<PressureTest>() == 80 && size_of::<TestFinding>() == 152);

impl PressureTest {
    const SIZE: u32 = size_of::<Self>() as u32;

    const EMPTY: Self = Self {
        struct_size: Self::SIZE,
        reserved: 0,
        first_pressure_pa: 0.0,
        last_pressure_pa: 0.0,
        duration_s: 0.0,
        low_side_design_pressure_pa: 0.0,
        pressure_uncertainty_pa: -1.0,
        temperature_uncertainty_k: -1.0,
        volume_m3: -1.0,
        allowed_drop_pa: -1.0,
        least_time_s: -1.0,
    };
}

impl TestFinding {
    const SIZE: u32 = size_of::<Self>() as u32;

    const EMPTY: Self = Self {
        struct_size: Self::SIZE,
        outcome: 0,
        reason: 0,
        advice: 0,
        cautions: 0,
        given: 0,
        expected_pressure_pa: 0.0,
        expected_uncertainty_pa: 0.0,
        residual_pa: 0.0,
        residual_uncertainty_pa: 0.0,
        metal_expansion_pa: 0.0,
        allowed_drop_pa: 0.0,
        smallest_drop_pa: 0.0,
        drop_rate_pa_h: 0.0,
        drop_rate_uncertainty_pa_h: 0.0,
        smallest_rate_pa_h: 0.0,
        density_kg_m3: 0.0,
        leak_pa_m3_s: 0.0,
        leak_uncertainty_pa_m3_s: 0.0,
        leak_g_yr: 0.0,
        leak_uncertainty_g_yr: 0.0,
        smallest_leak_g_yr: 0.0,
    };

    fn of(found: &PressureTestFinding) -> Self {
        let leak = found.leak;
        Self {
            struct_size: Self::SIZE,
            outcome: found.outcome.number(),
            reason: found.reason.number(),
            advice: found.advice.number(),
            cautions: found.caution_bits(),
            given: if leak.is_some() { SATLINE_PRESSURE_TEST_GIVEN_LEAK } else { 0 },
            expected_pressure_pa: found.expected_pa.value,
            expected_uncertainty_pa: found.expected_pa.standard_uncertainty,
            residual_pa: found.residual_pa.value,
            residual_uncertainty_pa: found.residual_pa.standard_uncertainty,
            metal_expansion_pa: found.metal_expansion_pa,
            allowed_drop_pa: found.allowed_drop_pa,
            smallest_drop_pa: found.smallest_drop_pa,
            drop_rate_pa_h: found.drop_rate_pa_h.value,
            drop_rate_uncertainty_pa_h: found.drop_rate_pa_h.standard_uncertainty,
            smallest_rate_pa_h: found.smallest_rate_pa_h,
            density_kg_m3: found.density_kg_m3,
            leak_pa_m3_s: leak.map_or(0.0, |leak| leak.throughput_pa_m3_s.value),
            leak_uncertainty_pa_m3_s: leak.map_or(0.0, |leak| leak.throughput_pa_m3_s.standard_uncertainty),
            leak_g_yr: leak.map_or(0.0, |leak| leak.mass_rate_g_yr.value),
            leak_uncertainty_g_yr: leak.map_or(0.0, |leak| leak.mass_rate_g_yr.standard_uncertainty),
            smallest_leak_g_yr: leak.map_or(0.0, |leak| leak.smallest_g_yr),
        }
    }
}

/// Density of nitrogen, kilograms per cubic metre, by the equation of Span and others (2000).
///
/// pressure_pa: pascals, absolute. temperature_k: kelvin. Limits: SATLINE_ABSOLUTE_PRESSURE_OF_NITROGEN_LOWEST_PA and
/// SATLINE_TEMPERATURE_OF_NITROGEN_LOWEST_K with their highest.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE, SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_nitrogen_density_kg_m3(
    pressure_pa: f64,
    temperature_k: f64,
    density_kg_m3: *mut f64,
) -> i32 {
    let density =
        || nitrogen_density_kg_m3(Pressure::from_pascals(pressure_pa)?, Temperature::from_kelvin(temperature_k)?);
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(density_kg_m3, || density().map_err(status)) }
}

/// Pressure, pascals, absolute, that nitrogen shut in at one pressure and temperature has at a later temperature. The
/// metal's own expansion is left out: some 0.07 % for 14 K.
///
/// Units, limits, status: as satline_nitrogen_density_kg_m3.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_expected_nitrogen_pressure_pa(
    pressure_pa: f64,
    temperature_k: f64,
    later_temperature_k: f64,
    expected_pa: *mut f64,
) -> i32 {
    let expected = || {
        let (pressure, temperature) = (Pressure::from_pascals(pressure_pa)?, Temperature::from_kelvin(temperature_k)?);
        expected_nitrogen_pressure(pressure, temperature, Temperature::from_kelvin(later_temperature_k)?)
    };
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(expected_pa, || expected().map(Pressure::pascals).map_err(status)) }
}

/// Empties the question. struct_size: sizeof(satline_pressure_test).
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_pressure_test_init(test: *mut PressureTest, struct_size: u32) -> i32 {
    let right = struct_size == PressureTest::SIZE;
    let empty = || if right { Ok(PressureTest::EMPTY) } else { Err(SATLINE_STATUS_BAD_STRUCT_SIZE) };
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { answer(test, empty) }
}

/// Empties the answer. struct_size: sizeof(satline_pressure_test_finding).
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_pressure_test_finding_init(finding: *mut TestFinding, struct_size: u32) -> i32 {
    let right = struct_size == TestFinding::SIZE;
    let empty = || if right { Ok(TestFinding::EMPTY) } else { Err(SATLINE_STATUS_BAD_STRUCT_SIZE) };
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { answer(finding, empty) }
}

/// Temperatures of the tubes.
struct Temperatures([Temperature; SATLINE_PRESSURE_TEST_TEMPERATURES], usize);

impl Temperatures {
    /// # Safety
    /// `kelvins` is null or points at `count` numbers.
    unsafe fn read(kelvins: *const f64, count: u32) -> Answer<Self> {
        if kelvins.is_null() {
            return Err(SATLINE_STATUS_NULL_POINTER);
        }
        let count = usize::try_from(count).unwrap_or(usize::MAX);
        if count > SATLINE_PRESSURE_TEST_TEMPERATURES {
            return Err(SATLINE_STATUS_OUT_OF_RANGE);
        }
        // SAFETY: not null, and the caller promises count numbers.
        let kelvins = unsafe { core::slice::from_raw_parts(kelvins, count) };
        let mut temperatures = [Temperature::from_kelvin(273.15).map_err(status)?; SATLINE_PRESSURE_TEST_TEMPERATURES];
        for (place, kelvin) in temperatures.iter_mut().zip(kelvins) {
            *place = Temperature::from_kelvin(*kelvin).map_err(status)?;
        }
        Ok(Self(temperatures, count))
    }

    fn given(&self) -> &[Temperature] {
        self.0.get(..self.1).unwrap_or_default()
    }
}

/// Judges a nitrogen pressure test: whether the pressure fell by more than temperature and uncertainty explain, and
/// whether the test would have seen a leak that counts.
///
/// first_temperatures_k, last_temperatures_k: first_count and last_count temperatures of the tubes in kelvin (1 to
/// SATLINE_PRESSURE_TEST_TEMPERATURES). Show the finding's advice and cautions: only dry nitrogen, through a regulator
/// and with a relief valve, never oxygen or compressed air.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE (also for a pressure above the low-side design pressure),
/// SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_BAD_STRUCT_SIZE (question or answer not initialised),
/// SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_pressure_test_judge(
    test: *const PressureTest,
    first_temperatures_k: *const f64,
    first_count: u32,
    last_temperatures_k: *const f64,
    last_count: u32,
    finding: *mut TestFinding,
) -> i32 {
    let judge = || -> Answer<()> {
        // SAFETY: the header asks for a question.
        let test = unsafe { given(test) }?;
        // SAFETY: the header asks for an answer that may be read and written.
        let finding = unsafe { finding.as_mut() }.ok_or(SATLINE_STATUS_NULL_POINTER)?;
        if test.struct_size != PressureTest::SIZE || finding.struct_size != TestFinding::SIZE {
            return Err(SATLINE_STATUS_BAD_STRUCT_SIZE);
        }
        // SAFETY: the header asks for that many temperatures.
        let first = unsafe { Temperatures::read(first_temperatures_k, first_count) }?;
        // SAFETY: the same.
        let last = unsafe { Temperatures::read(last_temperatures_k, last_count) }?;
        let pressure = |pascals| Pressure::from_pascals(pascals).map_err(status);
        let reading = |pascals, at| -> Answer<_> {
            Ok(TestReading {
                pressure_uncertainty_pa: unless_unset(test.pressure_uncertainty_pa),
                temperature_uncertainty_k: unless_unset(test.temperature_uncertainty_k),
                ..TestReading::new(pressure(pascals)?, at)
            })
        };
        let test = pressure_test::PressureTest {
            first: reading(test.first_pressure_pa, first.given())?,
            last: reading(test.last_pressure_pa, last.given())?,
            duration_s: test.duration_s,
            low_side_design: pressure(test.low_side_design_pressure_pa)?,
            volume_m3: unless_unset(test.volume_m3),
            allowed_drop_pa: unless_unset(test.allowed_drop_pa),
            least_time_s: unless_unset(test.least_time_s),
        };
        *finding = TestFinding::of(&pressure_test::pressure_test(&test).map_err(status)?);
        Ok(())
    };
    judge().err().unwrap_or(SATLINE_STATUS_OK)
}
