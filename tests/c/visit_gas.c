/* Pressure test, decay test, tube rating and temperature drop of a line. Sources stand beside the values. */
#include "check.h"
#include <math.h>
#include <satline.h>

#define OK SATLINE_STATUS_OK

static const double psi = 6894.757293168361, station = 101325.0, micron = 0.1333224;

static double fahrenheit(double value) { return (value + 459.67) / 1.8; }
static double absolute(double psig) { return psig * psi + station; }

static satline_pressure_test test;
static satline_pressure_test_finding tested;

static void fill(double last_psig) {
    CHECK(satline_pressure_test_init(&test, sizeof test) == OK);
    CHECK(satline_pressure_test_finding_init(&tested, sizeof tested) == OK);
    test.first_pressure_pa = absolute(500.0);
    test.last_pressure_pa = absolute(last_psig);
    test.duration_s = 43200.0;
    test.low_side_design_pressure_pa = absolute(550.0);
    test.pressure_uncertainty_pa = 1e3;
    test.temperature_uncertainty_k = 0.3;
}

static void nitrogen(void) {
    double hot[1], cool[2], found = 77.0;
    hot[0] = fahrenheit(95.0);
    cool[0] = cool[1] = fahrenheit(70.0);
    /* Span and others (2000): 0.43104 mol/dm3 at 280 K and 1 MPa. */
    CHECK(satline_nitrogen_density_kg_m3(1e6, 280.0, &found) == OK);
    CHECK(fabs(found / 28.01348 - 0.43104) < 5e-6);
    /* Computed apart from this library: 500.0 psi at 95 degrees Fahrenheit are 475.0 at 70. */
    CHECK(satline_expected_nitrogen_pressure_pa(absolute(500.0), hot[0], cool[0], &found) == OK);
    CHECK(fabs((found - station) / psi - 475.0) < 0.05);
    fill(475.0);
    CHECK(satline_pressure_test_judge(&test, hot, 1, cool, 2, &tested) == OK);
    CHECK(tested.outcome == SATLINE_PRESSURE_TEST_OUTCOME_PASS && tested.given == 0);
    CHECK(tested.expected_pressure_pa == found && fabs(tested.residual_pa) < 0.05 * psi);
    CHECK(tested.smallest_drop_pa == 2 * tested.residual_uncertainty_pa && tested.smallest_drop_pa < tested.allowed_drop_pa);
    CHECK((tested.cautions >> SATLINE_PRESSURE_TEST_CAUTION_NEVER_OXYGEN_OR_AIR & 1) == 1);
    CHECK(strstr(satline_pressure_test_caution_sentence(SATLINE_PRESSURE_TEST_CAUTION_REGULATOR), "relief valve") != 0);
    fill(460.0);
    test.volume_m3 = 0.012;
    CHECK(satline_pressure_test_judge(&test, hot, 1, cool, 2, &tested) == OK);
    CHECK(tested.outcome == SATLINE_PRESSURE_TEST_OUTCOME_FAIL && tested.given == SATLINE_PRESSURE_TEST_GIVEN_LEAK);
    CHECK(fabs(tested.leak_pa_m3_s + 0.012 * tested.residual_pa / 43200.0) < 1e-9);
    CHECK(tested.advice == SATLINE_PRESSURE_TEST_ADVICE_FIND_LEAK && tested.leak_g_yr > tested.smallest_leak_g_yr);
}

#define REFUSED(expected, call)                                      \
    do {                                                             \
        tested.outcome = 77;                                         \
        CHECK((call) == (expected) && tested.outcome == 77);         \
    } while (0)

static void bad_nitrogen(void) {
    double at[17], found = 77.0;
    size_t i;
    for (i = 0; i < 17; i++) at[i] = 300.0;
    CHECK(satline_nitrogen_density_kg_m3(2e7, 300.0, &found) == SATLINE_STATUS_OUT_OF_RANGE);
    CHECK(satline_nitrogen_density_kg_m3(1e6, 450.0, &found) == SATLINE_STATUS_OUT_OF_RANGE);
    CHECK(satline_expected_nitrogen_pressure_pa(1e6, 300.0, (double)NAN, &found) == SATLINE_STATUS_NOT_FINITE);
    CHECK(satline_expected_nitrogen_pressure_pa(1e6, 300.0, 290.0, 0) == SATLINE_STATUS_NULL_POINTER);
    CHECK(found == 77.0);
    fill(475.0);
    test.low_side_design_pressure_pa = absolute(499.0);
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_pressure_test_judge(&test, at, 1, at, 1, &tested));
    fill(475.0);
    test.duration_s = -43200.0;
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_pressure_test_judge(&test, at, 1, at, 1, &tested));
    fill(475.0);
    test.volume_m3 = 0.0;
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_pressure_test_judge(&test, at, 1, at, 1, &tested));
    fill(475.0);
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_pressure_test_judge(&test, at, 0, at, 1, &tested));
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_pressure_test_judge(&test, at, 1, at, 17, &tested));
    REFUSED(SATLINE_STATUS_NULL_POINTER, satline_pressure_test_judge(&test, 0, 1, at, 1, &tested));
    REFUSED(SATLINE_STATUS_NULL_POINTER, satline_pressure_test_judge(0, at, 1, at, 1, &tested));
    CHECK(satline_pressure_test_judge(&test, at, 1, at, 1, 0) == SATLINE_STATUS_NULL_POINTER);
    test.struct_size = 8;
    REFUSED(SATLINE_STATUS_BAD_STRUCT_SIZE, satline_pressure_test_judge(&test, at, 1, at, 1, &tested));
    CHECK(satline_pressure_test_init(&test, 8) == SATLINE_STATUS_BAD_STRUCT_SIZE);
    CHECK(satline_pressure_test_finding_init(&tested, 8) == SATLINE_STATUS_BAD_STRUCT_SIZE);
}

static satline_pressure_sample samples[61];

static void vacuum(void) {
    satline_decay decay;
    satline_decay_finding found;
    uint32_t place = 77;
    double value = 77.0;
    int i;
    /* ASHRAE Fundamentals 2017, chapter 1, table 3: 3169.7 Pa at 25 degrees Celsius, by newer equations
     * which differ by some 1e-4; computed apart from this library:
     * a frost point of -12.1 degrees Fahrenheit at 500 microns. */
    CHECK(satline_water_saturation_pressure_pa(298.15, &value) == OK && fabs(value / 3169.7 - 1) < 2e-4);
    CHECK(satline_frost_point_k(500 * micron, &value) == OK && fabs(value * 1.8 - 459.67 + 12.1) < 0.05);
    CHECK(satline_frost_point_k(-1.0, &value) == SATLINE_STATUS_OUT_OF_RANGE);
    /* A leak of 30 microns a minute. */
    for (i = 0; i < 61; i++) {
        samples[i].time_s = 15.0 * i;
        samples[i].pressure_pa = (450.0 + 0.5 * samples[i].time_s) * micron;
    }
    CHECK(satline_decay_init(&decay, sizeof decay) == OK && satline_decay_finding_init(&found, sizeof found) == OK);
    decay.coldest_temperature_k = 293.15;
    CHECK(satline_decay_first_bad(samples, 61, &place) == OK && place == 61);
    CHECK(satline_decay_judge(&decay, samples, 61, &found) == OK);
    CHECK(found.outcome == SATLINE_DECAY_OUTCOME_CANNOT_TELL && found.behaviour == SATLINE_DECAY_BEHAVIOUR_STRAIGHT);
    CHECK(found.causes[0] == SATLINE_DECAY_CAUSE_LEAK && found.causes[3] == 0);
    CHECK(fabs(found.rate_pa_s / micron - 0.5) < 1e-6 && fabs(found.reaches_limit_s - 1100.0) < 0.1);
    CHECK((found.given & SATLINE_DECAY_GIVEN_REACHES_LIMIT) && !(found.given & SATLINE_DECAY_GIVEN_PLATEAU));
    CHECK(found.evidence_for_curve < -6.0 && found.watched_s == 900.0);
    CHECK_TEXT(satline_decay_behaviour_sentence(SATLINE_DECAY_BEHAVIOUR_STEADY),
               "The pressure did not change beyond the gauge's noise.");
    /* Gas out of oil: levels off below the limit. */
    for (i = 0; i < 61; i++) samples[i].pressure_pa = (600.0 - 200.0 * exp(-samples[i].time_s / 150.0)) * micron;
    CHECK(satline_decay_judge(&decay, samples, 61, &found) == OK && found.outcome == SATLINE_DECAY_OUTCOME_PASS);
    CHECK(found.behaviour == SATLINE_DECAY_BEHAVIOUR_LEVELLING_OFF && fabs(found.plateau_pa / micron - 600.0) < 1.0);
    CHECK(fabs(found.time_constant_s - 150.0) < 1.0 && found.causes[0] == SATLINE_DECAY_CAUSE_OUTGASSING);
    /* What is refused, and where. */
    found.outcome = 77;
    CHECK(satline_decay_judge(&decay, samples, 4, &found) == SATLINE_STATUS_OUT_OF_RANGE);
    CHECK(satline_decay_judge(&decay, 0, 61, &found) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_decay_judge(0, samples, 61, &found) == SATLINE_STATUS_NULL_POINTER);
    samples[9].time_s = samples[8].time_s;
    CHECK(satline_decay_judge(&decay, samples, 61, &found) == SATLINE_STATUS_OUT_OF_RANGE);
    CHECK(satline_decay_first_bad(samples, 61, &place) == OK && place == 9);
    samples[5].pressure_pa = -1.0;
    CHECK(satline_decay_first_bad(samples, 61, &place) == OK && place == 5);
    CHECK(satline_decay_first_bad(samples, 3, &place) == SATLINE_STATUS_OUT_OF_RANGE && place == 5);
    decay.limit_pa = 10.0;
    CHECK(satline_decay_judge(&decay, samples, 5, &found) == SATLINE_STATUS_OUT_OF_RANGE);
    decay.struct_size = 0;
    CHECK(satline_decay_judge(&decay, samples, 5, &found) == SATLINE_STATUS_BAD_STRUCT_SIZE);
    CHECK(found.outcome == 77);
    CHECK(satline_decay_init(&decay, 8) == SATLINE_STATUS_BAD_STRUCT_SIZE);
    CHECK(satline_decay_finding_init(0, sizeof found) == SATLINE_STATUS_NULL_POINTER);
}

static void tubes(void) {
    satline_copper_tube tube;
    satline_tube_rating rating;
    CHECK(satline_copper_tube_init(&tube, sizeof tube) == OK && satline_tube_rating_init(&rating, sizeof rating) == OK);
    /* Copper Tube Handbook, table 3c: 1/2 inch type M tube, annealed, 494 psi at 100 degrees Fahrenheit; drawn 850. */
    tube.outside_diameter_m = 0.625 * 0.0254;
    tube.wall_m = 0.028 * 0.0254;
    tube.temperature_k = fahrenheit(100.0);
    tube.wall_tolerance_m = 0.003 * 0.0254;
    tube.diameter_tolerance_m = 0.0025 * 0.0254;
    CHECK(satline_copper_tube_rate(&tube, &rating) == OK && rating.outcome == 0 && rating.margin_pa == 0);
    CHECK(fabs(rating.rating_gauge_pressure_pa / psi - 494.0) < 1.0);
    CHECK(rating.cautions >> SATLINE_TUBE_CAUTION_VAPOUR_LINE_IS_DISCHARGE & 1);
    tube.temper = SATLINE_TUBE_TEMPER_DRAWN;
    CHECK(satline_copper_tube_rate(&tube, &rating) == OK && rating.counted_as == SATLINE_TUBE_TEMPER_ANNEALED);
    tube.joint = SATLINE_TUBE_JOINT_UNHEATED;
    tube.diameter_tolerance_m = 0.001 * 0.0254;
    tube.design_gauge_pressure_pa = 900 * psi;
    CHECK(satline_copper_tube_rate(&tube, &rating) == OK && fabs(rating.rating_gauge_pressure_pa / psi - 850.0) < 1.0);
    CHECK(rating.outcome == SATLINE_TUBE_OUTCOME_MARGINAL && fabs(rating.margin_pa / psi + 50.0) < 1.0);
    rating.outcome = 77;
    tube.temper = 9;
    CHECK(satline_copper_tube_rate(&tube, &rating) == SATLINE_STATUS_UNKNOWN_CHOICE);
    tube.temper = SATLINE_TUBE_TEMPER_DRAWN;
    tube.wall_m = 0.0;
    CHECK(satline_copper_tube_rate(&tube, &rating) == SATLINE_STATUS_OUT_OF_RANGE);
    CHECK(satline_copper_tube_rate(0, &rating) == SATLINE_STATUS_NULL_POINTER && rating.outcome == 77);
    rating.struct_size = 0;
    CHECK(satline_copper_tube_rate(&tube, &rating) == SATLINE_STATUS_BAD_STRUCT_SIZE);
}

static void lines(void) {
    satline_line_drop drop;
    double before = 0, after = 0;
    const double first = fahrenheit(95.0), second = fahrenheit(89.0);
    CHECK(satline_line_drop_init(&drop, sizeof drop) == OK);
    CHECK(satline_line_temperature_drop(&SATLINE_R410A, first, second, SATLINE_LINE_FLASH_FLASHING, 0.28, &drop) == OK);
    CHECK(satline_bubble_pressure_pa(&SATLINE_R410A, first, &before) == OK);
    CHECK(satline_bubble_pressure_pa(&SATLINE_R410A, second, &after) == OK);
    CHECK(drop.outcome == SATLINE_LINE_DROP_OUTCOME_PRESSURE_DROP && drop.least_pressure_drop_pa == before - after);
    CHECK(fabs(drop.temperature_drop_k - 6.0 / 1.8) < 1e-9 && drop.temperature_drop_uncertainty_k == 0.28);
    CHECK(satline_line_temperature_drop(&SATLINE_R410A, first, second, SATLINE_LINE_FLASH_SUBCOOLED, 0.28, &drop) == OK);
    CHECK(drop.outcome == SATLINE_LINE_DROP_OUTCOME_HEAT_EXCHANGE);
    CHECK(strstr(satline_line_drop_outcome_sentence(SATLINE_LINE_DROP_OUTCOME_NO_EVIDENCE), "does not prove") != 0);
    drop.outcome = 77;
    CHECK(satline_line_temperature_drop(&SATLINE_R410A, first, second, 9, 0.28, &drop) == SATLINE_STATUS_UNKNOWN_CHOICE);
    CHECK(satline_line_temperature_drop(&SATLINE_R410A, 400.0, second, 1, 0.28, &drop) == SATLINE_STATUS_OUT_OF_RANGE);
    CHECK(satline_line_temperature_drop(0, first, second, 1, 0.28, &drop) == SATLINE_STATUS_NULL_POINTER);
    CHECK(drop.outcome == 77);
    drop.struct_size = 0;
    CHECK(satline_line_temperature_drop(&SATLINE_R410A, first, second, 1, -1, &drop) == SATLINE_STATUS_BAD_STRUCT_SIZE);
}

int main(void) {
    nitrogen();
    bad_nitrogen();
    vacuum();
    tubes();
    lines();
    return checks_report("visit_gas");
}
