/* Stack and instruction counts.
 *
 * Stack: the memory below the stack pointer is painted, the call made, and the lowest changed word found.
 *
 * Instructions: QEMU runs with `-icount shift=0`, where one instruction takes one nanosecond of emulated time. SysTick
 * counts the board's clock of 25 MHz, so one tick is 40 instructions. A thousand calls are timed and the same loop
 * around an empty function with the same arguments is taken off. */
#include "board.h"
#include <satline.h>

enum { PAINTED = 65536, CALLS = 1000, INSTRUCTIONS_PER_TICK = 40 };

static volatile double pressure_pa = 914906.4, temperature_k = 289.8;
static double result;
static satline_reading reading;
static satline_finding finding;

static __attribute__((noinline)) int32_t nothing(const satline_refrigerant *r, double a, double *out) {
    __asm__ volatile("" : : "r"(r), "r"(&a), "r"(out) : "memory");
    return 0;
}
static __attribute__((noinline)) int32_t nothing_of_full(const satline_refrigerant_full *r, double a, double *out) {
    __asm__ volatile("" : : "r"(r), "r"(&a), "r"(out) : "memory");
    return 0;
}
static __attribute__((noinline)) int32_t nothing_more(const satline_refrigerant *r, double a, double b, double *out) {
    __asm__ volatile("" : : "r"(r), "r"(&a), "r"(&b), "r"(out) : "memory");
    return 0;
}

static void dew(void) { satline_dew_temperature_k(&SATLINE_R410A, pressure_pa, &result); }
static void superheat(void) { satline_superheat_k(&SATLINE_R410A, temperature_k, pressure_pa, &result); }
static void density(void) { satline_saturated_vapor_density_kg_m3(&SATLINE_R410A_FULL, temperature_k, &result); }
static void diagnose(void) { satline_diagnose(&SATLINE_R410A, &reading, &finding); }
static satline_standing standing;
static satline_standing_finding stands;
static void stand(void) {
    static const double temperatures_k[] = {293.15, 293.65};
    satline_standing_check(&SATLINE_R410A, &standing, temperatures_k, 2, &stands);
}
static satline_room room;
static satline_room_limit limit;
static satline_recovery_level level;
static void safety(void) {
    int32_t cautions[SATLINE_CAUTIONS];
    uint32_t count;
    satline_room_check(&SATLINE_R32, &room, &limit);
    satline_largest_charge_kg(&SATLINE_R32, 20, 1.8, &result);
    satline_smallest_area_m2(&SATLINE_R32, 3, 1.8, &result);
    satline_recovery_level_of(&SATLINE_R32, 3, 101325, &level);
    satline_cautions_for(&SATLINE_R32, SATLINE_SITUATION_CHARGING, cautions, SATLINE_CAUTIONS, &count);
}
static void empty_one(void) { nothing(&SATLINE_R410A, pressure_pa, &result); }
static void empty_full(void) { nothing_of_full(&SATLINE_R410A_FULL, temperature_k, &result); }
static void empty_two(void) { nothing_more(&SATLINE_R410A, temperature_k, pressure_pa, &result); }

/* Bytes of stack below this function's frame that the call uses. */
static __attribute__((noinline)) uint32_t stack_of(void (*call)(void)) {
    const uint32_t paint = 0xC5A35AC5u;
    volatile uint32_t *top, *at;
    __asm__ volatile("mov %0, sp" : "=r"(top));
    for (at = top - PAINTED / 4; at < top; at++) *at = paint;
    call();
    for (at = top - PAINTED / 4; at < top && *at == paint; at++) {
    }
    return (uint32_t)((uintptr_t)top - (uintptr_t)at);
}

static __attribute__((noinline)) uint32_t ticks_of(void (*call)(void)) {
    volatile uint32_t *const control = (volatile uint32_t *)0xE000E010u, *const reload = control + 1, *const now = control + 2;
    uint32_t before;
    int i;
    *control = 0;
    *reload = 0xFFFFFFu;
    *now = 0;
    *control = 5; /* on, processor clock, no interrupt */
    before = *now;
    for (i = 0; i < CALLS; i++) call();
    return (before - *now) & 0xFFFFFFu;
}

static uint32_t instructions_of(void (*call)(void), void (*empty)(void)) {
    return (ticks_of(call) - ticks_of(empty)) * INSTRUCTIONS_PER_TICK / CALLS;
}

int run(void) {
    satline_reading_init(&reading, sizeof reading);
    satline_finding_init(&finding, sizeof finding);
    satline_reading_set_choice(&reading, SATLINE_CHOICE_METERING, SATLINE_METERING_FIXED_ORIFICE);
    satline_reading_set(&reading, SATLINE_FIELD_OUTDOOR_DRY_BULB_K, 308.15);
    satline_reading_set(&reading, SATLINE_FIELD_RETURN_DRY_BULB_K, 298.7);
    satline_reading_set(&reading, SATLINE_FIELD_RETURN_WET_BULB_K, 291.5);
    satline_reading_set(&reading, SATLINE_FIELD_SUPPLY_DRY_BULB_K, 288.2);
    satline_reading_set(&reading, SATLINE_FIELD_SUCTION_PRESSURE_PA, pressure_pa);
    satline_reading_set(&reading, SATLINE_FIELD_SUCTION_LINE_TEMPERATURE_K, temperature_k);
    put_number("stack_bytes_dew_temperature", stack_of(dew));
    put_number("stack_bytes_superheat", stack_of(superheat));
    put_number("stack_bytes_diagnose", stack_of(diagnose));
    satline_standing_init(&standing, sizeof standing);
    satline_standing_finding_init(&stands, sizeof stands);
    standing.pressure_pa = 1.5e6;
    put_number("stack_bytes_standing_check", stack_of(stand));
    satline_room_init(&room, sizeof room);
    satline_room_limit_init(&limit, sizeof limit);
    room.height_m = 1.8;
    room.area_m2 = 20;
    room.charge_kg = 3;
    satline_recovery_level_init(&level, sizeof level);
    put_number("stack_bytes_safety", stack_of(safety));
    put_number("instructions_dew_temperature", instructions_of(dew, empty_one));
    put_number("instructions_superheat", instructions_of(superheat, empty_two));
    put_number("stack_bytes_saturated_density", stack_of(density));
    put_number("instructions_saturated_density", instructions_of(density, empty_full));
    put_number("instructions_diagnose", instructions_of(diagnose, empty_one));
    return 0;
}
