/* Stack and instruction counts.
 *
 * Stack: the memory below the stack pointer is painted, the call made, and the lowest changed word found.
 *
 * Instructions: QEMU runs with `-icount shift=0`, where one instruction takes one nanosecond of emulated time. SysTick
 * counts the board's clock of 25 MHz, so one tick is 40 instructions. A thousand calls are timed, of a diagnosis fifty,
 * and the same loop around an empty function with the same arguments is taken off. A count that ran over is 0. */
#include "board.h"
#include <satline.h>

enum { PAINTED = 65536, CALLS = 1000, DIAGNOSES = 50, INSTRUCTIONS_PER_TICK = 40 };

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
/* A valve unit with everything measured that a technician may measure, on the stack, and in the caller's memory with a
 * baseline of the same unit and accuracies of its instruments. */
static satline_reading full, baseline;
static satline_accuracies accuracies;
static satline_diagnosis_options options;
static satline_evidence evidence;
static uint64_t work[SATLINE_DIAGNOSIS_WORDS + SATLINE_BASELINE_WORDS];
static int32_t diagnosed;
static void diagnose_on_stack(void) { diagnosed = satline_diagnose_with(&SATLINE_R410A, &full, 0, &finding, &evidence); }
static void diagnose_with(void) { diagnosed = satline_diagnose_with(&SATLINE_R410A, &full, &options, &finding, &evidence); }
static void take_all(satline_reading *into, double warmer) {
    static const struct {
        int32_t field;
        double value;
    } rows[] = {
        {SATLINE_FIELD_OUTDOOR_DRY_BULB_K, 305.4},           {SATLINE_FIELD_CONDENSER_LEAVING_DRY_BULB_K, 315.2},
        {SATLINE_FIELD_RETURN_DRY_BULB_K, 297.0},            {SATLINE_FIELD_RETURN_WET_BULB_K, 290.9},
        {SATLINE_FIELD_SUPPLY_DRY_BULB_K, 286.0},            {SATLINE_FIELD_SUPPLY_WET_BULB_K, 284.9},
        {SATLINE_FIELD_AMBIENT_PRESSURE_PA, 100500.0},       {SATLINE_FIELD_SUCTION_PRESSURE_PA, 930000.0},
        {SATLINE_FIELD_SUCTION_LINE_TEMPERATURE_K, 283.9},   {SATLINE_FIELD_LIQUID_PRESSURE_PA, 2450000.0},
        {SATLINE_FIELD_LIQUID_LINE_TEMPERATURE_K, 307.9},    {SATLINE_FIELD_DISCHARGE_PRESSURE_PA, 2490000.0},
        {SATLINE_FIELD_DISCHARGE_LINE_TEMPERATURE_K, 340.0}, {SATLINE_FIELD_COIL_OUTLET_TEMPERATURE_K, 283.4},
        {SATLINE_FIELD_CONDENSING_SURFACE_TEMPERATURE_K, 313.0}, {SATLINE_FIELD_SUMP_TEMPERATURE_K, 320.0},
        {SATLINE_FIELD_AIRFLOW_M3_S, 0.55},                  {SATLINE_FIELD_NOMINAL_CAPACITY_W, 10550.0},
        {SATLINE_FIELD_COMPRESSOR_POWER_W, 2500.0},          {SATLINE_FIELD_EXPECTED_CHARGE_KG, 3.2},
        {SATLINE_FIELD_MINUTES_SINCE_CHANGE, 25.0},          {SATLINE_FIELD_TARGET_SUBCOOLING_K, 5.5},
    };
    uint32_t i;
    satline_reading_init(into, sizeof *into);
    satline_reading_set_choice(into, SATLINE_CHOICE_METERING, SATLINE_METERING_THERMOSTATIC_VALVE);
    for (i = 0; i < sizeof rows / sizeof rows[0]; i++) diagnosed |= satline_reading_set(into, rows[i].field, rows[i].value);
    diagnosed |= satline_reading_set(into, SATLINE_FIELD_SUCTION_LINE_TEMPERATURE_K, 283.9 + warmer);
    diagnosed |= satline_reading_set(into, SATLINE_FIELD_LIQUID_LINE_TEMPERATURE_K, 307.9 + warmer);
}
static void prepare_diagnosis(void) {
    static const satline_accuracy gauge = {0.005, 0, 0, 0, 690, 1, 0};
    take_all(&full, 4.0);
    take_all(&baseline, 0.0);
    diagnosed |= satline_evidence_init(&evidence, sizeof evidence);
    diagnosed |= satline_accuracies_init(&accuracies, sizeof accuracies);
    diagnosed |= satline_accuracies_set(&accuracies, SATLINE_FIELD_SUCTION_PRESSURE_PA, &gauge);
    diagnosed |= satline_accuracies_set(&accuracies, SATLINE_FIELD_LIQUID_PRESSURE_PA, &gauge);
    diagnosed |= satline_diagnosis_options_init(&options, sizeof options);
    options.baseline = &baseline;
    options.baseline_count = 1;
    options.accuracies = options.baseline_accuracies = &accuracies;
    options.work = work;
    options.work_words = sizeof work / sizeof work[0];
}
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
static satline_moist_air moist;
static satline_coil_air coil;
static satline_split split;
static satline_coil_capacity capacity;
static satline_coil_airflow airflow;
static satline_apparatus_dew_point surface;
static void moist_air(void) { satline_moist_air_from_relative_humidity(299.15, 0.5, 101325, &moist); }
static void wet_bulb_air(void) { satline_moist_air_from_wet_bulb(299.15, 291.5, 101325, &moist); }
static void coil_split(void) { satline_coil_split(&coil, &split); }
static void coil_capacity(void) { satline_coil_capacity_at(&coil, 0.6, 0.02, SATLINE_AIRFLOW_ENTERING, &capacity); }
static void coil_airflow(void) { satline_coil_airflow_from(&coil, SATLINE_HEAT_REFRIGERANT, 1e4, 500, 400, 20, &airflow); }
static void coil_surface(void) { satline_coil_apparatus_dew_point(&coil, &surface); }
static satline_decay decay;
static satline_decay_finding decayed;
static satline_pressure_sample samples[61];
static void watch(void) { satline_decay_judge(&decay, samples, 61, &decayed); }
static satline_copper_tube tube;
static satline_tube_rating rating;
static void rate(void) { satline_copper_tube_rate(&tube, &rating); }
static satline_line_drop drop;
static void along(void) { satline_line_temperature_drop(&SATLINE_R410A, 308.0, 304.0, SATLINE_LINE_FLASH_UNKNOWN, -1, &drop); }
/* The charge by the scale, a leak rate and a recovery, each of which must be answered. */
static satline_charge_account accounted;
static satline_leak_rate leaks;
static satline_recovery_finding recovered;
static void by_the_scale(void) {
    static const satline_weighing weighings[] = {{2, 0.01}, {1.5, 0.01}};
    static const satline_addition log[] = {{0, {1, 0.01}}, {200, {0.4, 0.01}}, {365, {0.3, 0.01}}};
    static const satline_uncertain full = {3.5, 0.05};
    static satline_account account;
    static satline_recovery recovery;
    satline_account_init(&account, sizeof account);
    account.start = SATLINE_START_EVACUATED;
    account.expected.nameplate_kg = full;
    satline_charge_account_of(&account, weighings, 2, &accounted);
    satline_leak_rate_of(&full, log, 3, &leaks);
    satline_recovery_init(&recovery, sizeof recovery);
    recovery.expected_kg = full;
    recovery.cylinder_limit_kg = 18;
    recovery.after_kg.value = 3.5;
    satline_recovery_of(&recovery, &recovered);
}
/* The deepest of the functions of airflow, charts and performance. */
static void visit_small(void) {
    static const double rows[] = {298.15, 308.15, 318.15}, columns[] = {289.15, 294.15}, cells[] = {5, 5.5, 6, 6.5, 7, 7.5};
    static const satline_uncertain row = {303.15, 0.5}, column = {291.15, 0.5}, measured = {8, 0.5}, charge = {-0.2, 0.02},
                                   indoor = {299.85, 0.5}, power = {8000, 200}, expected = {10000, 300}, cold = {297, 0.2};
    static satline_target_grid grid;
    static satline_target_deviation deviation;
    static satline_charge_fault_effect_found effect;
    static satline_gain_found gain;
    static satline_return_leakage_found leakage;
    static satline_capacity_shape shape;
    static satline_uncertain capacity;
    satline_target_grid_init(&grid, sizeof grid);
    grid.target = SATLINE_GRID_TARGET_SUBCOOLING;
    grid.row_axis = SATLINE_GRID_AXIS_OUTDOOR_DRY_BULB;
    grid.column_axis = SATLINE_GRID_AXIS_RETURN_DRY_BULB;
    grid.row_count = 3;
    grid.column_count = 2;
    grid.rows = rows;
    grid.columns = columns;
    grid.cells = cells;
    satline_target_grid_compare(&grid, &measured, &row, &column, 1, &deviation);
    satline_charge_fault_effect(&charge, &indoor, &row, &effect);
    satline_gain(&power, &expected, &power, &expected, 0.5, &gain);
    satline_return_leakage(&cold, &indoor, &row, -1, &leakage);
    satline_capacity_shape_init(&shape);
    satline_expected_capacity_w(1e4, &column, &row, &shape, &capacity);
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

/* Ticks of so many calls; 0 where the timer ran over. */
static __attribute__((noinline)) uint32_t ticks_of(void (*call)(void), int calls) {
    volatile uint32_t *const control = (volatile uint32_t *)0xE000E010u, *const reload = control + 1, *const now = control + 2;
    uint32_t before;
    int i;
    *control = 0;
    *reload = 0xFFFFFFu;
    *now = 0;
    *control = 5; /* on, processor clock, no interrupt */
    before = *now;
    for (i = 0; i < calls; i++) call();
    before = (before - *now) & 0xFFFFFFu;
    return *control >> 16 & 1 ? 0 : before; /* bit 16: it has counted to 0 since it was read */
}

static uint32_t instructions_each(void (*call)(void), void (*empty)(void), int calls) {
    const uint32_t ticks = ticks_of(call, calls);
    return ticks == 0 ? 0 : (uint32_t)((uint64_t)(ticks - ticks_of(empty, calls)) * INSTRUCTIONS_PER_TICK / (uint32_t)calls);
}

static uint32_t instructions_of(void (*call)(void), void (*empty)(void)) { return instructions_each(call, empty, CALLS); }

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
    put_number("stack_bytes_visit", stack_of(visit_small));
    satline_charge_account_init(&accounted, sizeof accounted);
    satline_leak_rate_init(&leaks, sizeof leaks);
    satline_recovery_finding_init(&recovered, sizeof recovered);
    put_number("stack_bytes_by_the_scale", stack_of(by_the_scale));
    put_number("answers_by_the_scale", (uint32_t)(accounted.balance * 100 + recovered.room * 10 + recovered.balance));
    put_number("stack_bytes_diagnose", stack_of(diagnose));
    prepare_diagnosis();
    if (diagnosed != SATLINE_STATUS_OK) return 1;
    put_number("stack_bytes_diagnose_with", stack_of(diagnose_with));
    if (diagnosed != SATLINE_STATUS_OK) return 1;
    put_number("stack_bytes_diagnose_on_stack", stack_of(diagnose_on_stack));
    if (diagnosed != SATLINE_STATUS_OK) return 1;
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
    satline_moist_air_init(&moist, sizeof moist);
    satline_coil_air_init(&coil, sizeof coil);
    satline_split_init(&split, sizeof split);
    satline_coil_capacity_init(&capacity, sizeof capacity);
    satline_coil_airflow_init(&airflow, sizeof airflow);
    satline_apparatus_dew_point_init(&surface, sizeof surface);
    coil.entering_measure = coil.leaving_measure = SATLINE_HUMIDITY_RELATIVE;
    coil.entering_dry_bulb_k = 299.15;
    coil.entering_humidity = 0.5;
    coil.leaving_dry_bulb_k = 286.15;
    coil.leaving_humidity = 0.92;
    coil.entering_dry_bulb_uncertainty = coil.leaving_dry_bulb_uncertainty = 0.2;
    coil.entering_humidity_uncertainty = coil.leaving_humidity_uncertainty = 0.01;
    {
        uint32_t deepest = stack_of(moist_air), other = stack_of(wet_bulb_air);
        put_number("stack_bytes_moist_air", deepest > other ? deepest : other);
    }
    {
        void (*const questions[])(void) = {coil_split, coil_capacity, coil_airflow, coil_surface};
        uint32_t deepest = 0, i;
        for (i = 0; i < 4; i++) {
            const uint32_t stack = stack_of(questions[i]);
            if (stack > deepest) deepest = stack;
        }
        /* Each question must have had its answer: one refused at once would use little. */
        if (split.split_k == 0 || capacity.total_w == 0 || airflow.dry_air_kg_s == 0 || surface.temperature_k == 0) deepest = 0;
        put_number("stack_bytes_coil", deepest);
    }
    put_number("instructions_moist_air", instructions_of(moist_air, empty_one));
    /* A leak under noise of a micron: every shape is tried. */
    satline_decay_init(&decay, sizeof decay);
    satline_decay_finding_init(&decayed, sizeof decayed);
    decay.coldest_temperature_k = 293.15;
    for (int i = 0; i < 61; i++) {
        samples[i].time_s = 15.0 * i;
        samples[i].pressure_pa = (450.0 + 0.5 * samples[i].time_s + (i * 37 % 11 - 5) / 5.0) * 0.1333224;
    }
    put_number("stack_bytes_decay_judge", stack_of(watch));
    satline_copper_tube_init(&tube, sizeof tube);
    satline_tube_rating_init(&rating, sizeof rating);
    tube.outside_diameter_m = 0.01905;
    tube.wall_m = 0.0010668;
    tube.temperature_k = 340.0;
    tube.design_gauge_pressure_pa = 4e6;
    put_number("stack_bytes_copper_tube_rate", stack_of(rate));
    satline_line_drop_init(&drop, sizeof drop);
    put_number("stack_bytes_line_temperature_drop", stack_of(along));
    put_number("outcomes_decay_tube_line", (uint32_t)(decayed.outcome * 100 + rating.outcome * 10 + drop.outcome));
    put_number("instructions_dew_temperature", instructions_of(dew, empty_one));
    put_number("instructions_superheat", instructions_of(superheat, empty_two));
    put_number("stack_bytes_saturated_density", stack_of(density));
    put_number("instructions_saturated_density", instructions_of(density, empty_full));
    put_number("instructions_diagnose", instructions_each(diagnose, empty_one, DIAGNOSES));
    put_number("instructions_diagnose_with", instructions_each(diagnose_with, empty_one, DIAGNOSES));
    return 0;
}
