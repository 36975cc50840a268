/* Two refrigerants in one unit, airflow by static pressure, a maker's chart and delivered performance, through the C
 * interface. The numbers are those of tests/tests/{retrofit,airflow,target_grid}.rs, which say where they come from. */
#include "check.h"
#include "satline.h"
#include <math.h>

#define NEAR(value, expected, margin) CHECK(fabs((value) - (expected)) <= (margin))

static satline_uncertain pm(double value, double standard_uncertainty) {
    satline_uncertain made;
    made.value = value;
    made.standard_uncertainty = standard_uncertainty;
    return made;
}

static satline_retrofit conditions;
static satline_retrofit_comparison found;

static void usual(void) {
    CHECK(satline_retrofit_init(&conditions, sizeof conditions) == SATLINE_STATUS_OK);
    CHECK(satline_retrofit_comparison_init(&found, sizeof found) == SATLINE_STATUS_OK);
    conditions.evaporating_k = (45 + 459.67) / 1.8;
    conditions.condensing_k = (110 + 459.67) / 1.8;
    conditions.superheat_k = 10;
    conditions.subcooling_k = 10;
}

static int compare(const satline_refrigerant_full *from, const satline_refrigerant_full *to) {
    return satline_compare_refrigerants(from, to, &conditions, &found);
}

#define HAS(bits, number) (((bits) >> (number) & 1u) == 1u)

static void refrigerants(void) {
    satline_uncertain charge = pm(3.2, 0.05), start = pm(77, 77);
    usual();
    CHECK(conditions.isentropic_efficiency == 0.7);
    CHECK(compare(&SATLINE_R22_FULL, &SATLINE_R407C_FULL) == SATLINE_STATUS_OK);
    NEAR(found.volumetric_capacity_ratio, 0.92, 0.005);
    CHECK(found.outcome == SATLINE_RETROFIT_OUTCOME_CANNOT_TELL);
    CHECK(HAS(found.reasons, SATLINE_RETROFIT_REASON_DESIGN_PRESSURE_NEEDED));
    CHECK(HAS(found.cautions, SATLINE_RETROFIT_CAUTION_LABEL) && HAS(found.cautions, SATLINE_RETROFIT_CAUTION_CHANGE_OIL));
    CHECK(found.old_oil == SATLINE_OIL_MINERAL_OR_ALKYLBENZENE && found.new_oil == SATLINE_OIL_POLYOLESTER);
    NEAR(found.at_equal_displacement.suction_velocity, 1, 1e-12);
    NEAR(found.at_equal_displacement.mass_flow * found.new_cycle.refrigerating_effect_j_kg / found.old_cycle.refrigerating_effect_j_kg,
         found.volumetric_capacity_ratio, 1e-12);
    NEAR(found.at_equal_capacity.suction_velocity * found.volumetric_capacity_ratio, 1, 1e-12);
    CHECK(satline_retrofit_starting_charge_kg(&charge, found.charge_ratio, 0.9, &start) == SATLINE_STATUS_OK);
    NEAR(start.value, 3.2 * 0.9 * found.charge_ratio, 1e-12);
    NEAR(start.standard_uncertainty, 0.05 * 0.9 * found.charge_ratio, 1e-9);

    CHECK(compare(&SATLINE_R22_FULL, &SATLINE_R22_FULL) == SATLINE_STATUS_OK);
    CHECK(found.outcome == SATLINE_RETROFIT_OUTCOME_POSSIBLE && found.volumetric_capacity_ratio == 1);
    CHECK(compare(&SATLINE_R22_FULL, &SATLINE_R290_FULL) == SATLINE_STATUS_OK);
    CHECK(found.outcome == SATLINE_RETROFIT_OUTCOME_BLOCKED);
    CHECK(HAS(found.reasons, SATLINE_RETROFIT_REASON_FLAMMABLE_IN_CLASS_1_UNIT));
    CHECK(strstr(satline_retrofit_reason_sentence(SATLINE_RETROFIT_REASON_FLAMMABLE_IN_CLASS_1_UNIT), "burn") != 0);
    conditions.high_side_design_pressure_pa = 2.2e6;
    CHECK(compare(&SATLINE_R22_FULL, &SATLINE_R410A_FULL) == SATLINE_STATUS_OK);
    CHECK(HAS(found.reasons, SATLINE_RETROFIT_REASON_CONDENSING_ABOVE_DESIGN));
    CHECK(found.outcome == SATLINE_RETROFIT_OUTCOME_BLOCKED);

    usual();
    found.outcome = 77;
    CHECK(compare(&SATLINE_R22_FULL, &SATLINE_R744_FULL) == SATLINE_STATUS_OUT_OF_RANGE);
    CHECK(compare(0, &SATLINE_R407C_FULL) == SATLINE_STATUS_NULL_POINTER);
    CHECK(compare(&SATLINE_R22_FULL, 0) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_compare_refrigerants(&SATLINE_R22_FULL, &SATLINE_R22_FULL, 0, &found) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_compare_refrigerants(&SATLINE_R22_FULL, &SATLINE_R22_FULL, &conditions, 0) == SATLINE_STATUS_NULL_POINTER);
    conditions.condensing_at = 9;
    CHECK(compare(&SATLINE_R22_FULL, &SATLINE_R407C_FULL) == SATLINE_STATUS_UNKNOWN_CHOICE);
    usual();
    found.outcome = 77;
    conditions.superheat_k = (double)NAN;
    CHECK(compare(&SATLINE_R22_FULL, &SATLINE_R407C_FULL) == SATLINE_STATUS_NOT_FINITE);
    conditions.superheat_k = 10;
    conditions.high_side_design_pressure_pa = -2;
    CHECK(compare(&SATLINE_R22_FULL, &SATLINE_R407C_FULL) == SATLINE_STATUS_OUT_OF_RANGE);
    conditions.high_side_design_pressure_pa = -1;
    conditions.struct_size = 4;
    CHECK(compare(&SATLINE_R22_FULL, &SATLINE_R407C_FULL) == SATLINE_STATUS_BAD_STRUCT_SIZE);
    CHECK(found.outcome == 77);
    CHECK(satline_retrofit_init(&conditions, 12) == SATLINE_STATUS_BAD_STRUCT_SIZE);
    CHECK(satline_retrofit_init(0, sizeof conditions) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_retrofit_comparison_init(&found, 12) == SATLINE_STATUS_BAD_STRUCT_SIZE);
    start = pm(77, 77);
    CHECK(satline_retrofit_starting_charge_kg(&charge, 1, 90, &start) == SATLINE_STATUS_OUT_OF_RANGE);
    CHECK(satline_retrofit_starting_charge_kg(0, 1, 0.9, &start) == SATLINE_STATUS_NULL_POINTER && start.value == 77);
}

static void airflow(void) {
    const double statics[] = {25, 50, 75}, taps[] = {1, 2}, descending[] = {75, 50, 25};
    double airflows[] = {0.45, 0.55, 0.43, 0.53, 0.40, 0.50};
    satline_uncertain one = pm(0.3, 0.01), two = pm(80, 1), three = pm(20, 1), answer = pm(77, 77), zero = pm(0, 0);
    satline_fan_point now, then;
    satline_watts_per_airflow_found watts;
    satline_air_resistance_found dirt;
    satline_return_leakage_found leak;
    CHECK(satline_airflow_by_plenum_pressure(&one, &two, &three, &answer) == SATLINE_STATUS_OK);
    NEAR(answer.value, 0.6, 1e-12);
    CHECK(answer.standard_uncertainty > 0.02 && answer.standard_uncertainty < 0.03);
    answer = pm(77, 77);
    CHECK(satline_airflow_by_plenum_pressure(&one, &zero, &three, &answer) == SATLINE_STATUS_OUT_OF_RANGE);
    CHECK(satline_airflow_by_plenum_pressure(0, &two, &three, &answer) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_airflow_by_plenum_pressure(&one, &two, &three, 0) == SATLINE_STATUS_NULL_POINTER);
    two = pm(80, -1);
    CHECK(satline_airflow_by_plenum_pressure(&one, &two, &three, &answer) == SATLINE_STATUS_OUT_OF_RANGE);
    CHECK(answer.value == 77);

    one = pm(60, 2);
    CHECK(satline_airflow_by_blower_table(statics, 3, taps, 2, airflows, &one, 1, &answer) == SATLINE_STATUS_OK);
    NEAR(answer.value, 0.43 - 0.4 * 0.03, 1e-12);
    NEAR(answer.standard_uncertainty, 2 * 0.03 / 25, 1e-12);
    CHECK(satline_airflow_by_blower_table(statics, 3, taps, 2, airflows, &one, 1.5, &answer) == SATLINE_STATUS_NO_VALID_TEST);
    airflows[4] = (double)NAN;
    CHECK(satline_airflow_by_blower_table(statics, 3, taps, 2, airflows, &one, 1, &answer) == SATLINE_STATUS_NO_VALID_TEST);
    CHECK(satline_airflow_by_blower_table(statics, 3, taps, 2, airflows, &one, 2, &answer) == SATLINE_STATUS_OK);
    CHECK(satline_airflow_by_blower_table(descending, 3, taps, 2, airflows, &one, 2, &answer) == SATLINE_STATUS_OUT_OF_RANGE);
    CHECK(satline_airflow_by_blower_table(statics, 0, taps, 2, airflows, &one, 2, &answer) != SATLINE_STATUS_OK);
    CHECK(satline_airflow_by_blower_table(statics, 4000000000u, taps, 2, airflows, &one, 2, &answer) == SATLINE_STATUS_OUT_OF_RANGE);
    CHECK(satline_airflow_by_blower_table(0, 3, taps, 2, airflows, &one, 2, &answer) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_airflow_by_blower_table(statics, 3, taps, 2, 0, &one, 2, &answer) == SATLINE_STATUS_NULL_POINTER);

    now.airflow_m3_s = pm(0.5, 0);
    now.pressure_pa = pm(125, 0);
    now.power_w = pm(400, 0);
    one = pm(0.8, 0);
    two = pm(1, 0);
    CHECK(satline_fan_at_speed(&now, &one, &two, &then) == SATLINE_STATUS_OK);
    NEAR(then.power_w.value, 204.8, 1e-9);
    NEAR(then.pressure_pa.value, 80, 1e-9);
    CHECK(satline_fan_at_speed(&now, &zero, &two, &then) == SATLINE_STATUS_OUT_OF_RANGE);

    one = pm(800, 10);
    two = pm(1200 * 0.028316846592 / 60, 0);
    CHECK(satline_watts_per_airflow(&one, &two, -1, &watts) == SATLINE_STATUS_OK);
    CHECK(watts.outcome == SATLINE_LIMIT_ABOVE && watts.limit_watts_per_cfm == 0.58);
    NEAR(watts.watts_per_cfm.value, 800. / 1200, 1e-12);
    CHECK(satline_watts_per_airflow(&one, &two, 0.8, &watts) == SATLINE_STATUS_OK && watts.outcome == SATLINE_LIMIT_WITHIN);
    CHECK(satline_watts_per_airflow(&one, &two, -2, &watts) == SATLINE_STATUS_OUT_OF_RANGE);

    one = pm(80, 0);
    CHECK(satline_air_resistance(&one, &three, 0, 0, -1, &dirt) == SATLINE_STATUS_OK);
    CHECK(dirt.outcome == SATLINE_LIMIT_ABOVE && dirt.airflow_assumed == 1);
    NEAR(dirt.airflow_ratio.value, 0.5, 1e-12);
    CHECK(satline_air_resistance(&one, &three, &two, &two, -1, &dirt) == SATLINE_STATUS_OK && dirt.airflow_assumed == 0);
    CHECK(satline_air_resistance(&one, &three, &two, 0, -1, &dirt) == SATLINE_STATUS_NULL_POINTER);

    one = pm(297, 0.2);
    two = pm(303, 0.2);
    three = pm(325, 0.2);
    CHECK(satline_return_leakage(&one, &two, &three, -1, &leak) == SATLINE_STATUS_OK);
    NEAR(leak.fraction.value, 6. / 28, 1e-12);
    CHECK(leak.outcome == SATLINE_LIMIT_ABOVE);
    three = pm(297.3, 0.2);
    CHECK(satline_return_leakage(&one, &two, &three, -1, &leak) == SATLINE_STATUS_NOT_AVAILABLE);
    CHECK(strstr(satline_airflow_caution_sentence(SATLINE_AIRFLOW_CAUTION_MOVING_PARTS), "lock") != 0);
}

static void chart(void) {
    const double outdoor[] = {298.15, 308.15, 318.15}, inside[] = {289.15, 294.15};
    double cells[] = {5, 5.5, 6, 6.5, (double)NAN, 7.5};
    satline_target_grid grid;
    satline_target_deviation deviation;
    satline_uncertain row = pm(303.15, 0), column = pm(289.15, 0), measured = pm(8, 0.3), answer = pm(77, 77);
    CHECK(satline_target_grid_init(&grid, sizeof grid) == SATLINE_STATUS_OK);
    CHECK(satline_target_grid_at(&grid, &row, &column, &answer) == SATLINE_STATUS_UNKNOWN_CHOICE);
    grid.target = SATLINE_GRID_TARGET_SUBCOOLING;
    grid.row_axis = SATLINE_GRID_AXIS_OUTDOOR_DRY_BULB;
    grid.column_axis = SATLINE_GRID_AXIS_RETURN_DRY_BULB;
    grid.row_count = 3;
    grid.column_count = 2;
    CHECK(satline_target_grid_at(&grid, &row, &column, &answer) == SATLINE_STATUS_NULL_POINTER);
    grid.rows = outdoor;
    grid.columns = inside;
    grid.cells = cells;
    CHECK(satline_target_grid_at(&grid, &row, &column, &answer) == SATLINE_STATUS_OK);
    NEAR(answer.value, 5.5, 1e-12);
    CHECK(satline_target_grid_at(&grid, &row, 0, &answer) == SATLINE_STATUS_NOT_AVAILABLE);
    CHECK(satline_target_grid_compare(&grid, &measured, &row, &column, 1, &deviation) == SATLINE_STATUS_OK);
    CHECK(deviation.outcome == SATLINE_TARGET_OUTCOME_ABOVE && deviation.gap == 0);
    NEAR(deviation.deviation.value, 2.5, 1e-12);
    NEAR(deviation.deviation.standard_uncertainty, 0.3, 1e-12);
    row = pm(312, 0);
    CHECK(satline_target_grid_at(&grid, &row, &column, &answer) == SATLINE_STATUS_NO_VALID_TEST);
    CHECK(satline_target_grid_compare(&grid, &measured, &row, &column, 1, &deviation) == SATLINE_STATUS_OK);
    CHECK(deviation.outcome == SATLINE_TARGET_OUTCOME_NO_VALID_TEST && deviation.gap == SATLINE_GRID_GAP_BLANK);
    CHECK(satline_target_grid_compare(&grid, &measured, &row, &column, -1, &deviation) == SATLINE_STATUS_OUT_OF_RANGE);
    grid.column_axis = 0;
    grid.column_count = 0;
    grid.row_count = 2;
    row = pm(303.15, 0);
    CHECK(satline_target_grid_at(&grid, &row, 0, &answer) == SATLINE_STATUS_OK);
    NEAR(answer.value, 5.25, 1e-12);
    cells[0] = 300; /* a pressure among subcoolings */
    CHECK(satline_target_grid_at(&grid, &row, 0, &answer) == SATLINE_STATUS_OUT_OF_RANGE);
    grid.struct_size = 3;
    CHECK(satline_target_grid_at(&grid, &row, 0, &answer) == SATLINE_STATUS_BAD_STRUCT_SIZE);
    CHECK(satline_target_grid_init(&grid, 3) == SATLINE_STATUS_BAD_STRUCT_SIZE);
    row = pm(313.15, 0.4);
    column = pm(308.15, 0.3);
    CHECK(satline_approach_k(&row, &column, &answer) == SATLINE_STATUS_OK);
    NEAR(answer.value, 5, 1e-12);
    NEAR(answer.standard_uncertainty, 0.5, 1e-12);
}

static void performance(void) {
    satline_capacity_shape shape;
    satline_gain_found gain;
    satline_charge_fault_effect_found effect;
    satline_uncertain wet = pm((67 + 459.67) / 1.8, 0), outdoor = pm(308.15, 0), expected, ratio, deviation = pm(-0.2, 0);
    satline_uncertain indoor = pm(299.85, 0), before = pm(7600, 228), after = pm(9400, 282);
    CHECK(satline_capacity_shape_init(&shape) == SATLINE_STATUS_OK);
    CHECK(satline_expected_capacity_w(10e3, &wet, &outdoor, &shape, &expected) == SATLINE_STATUS_OK);
    NEAR(expected.value, 10e3, 1e-6);
    NEAR(expected.standard_uncertainty, 290, 1e-6);
    CHECK(satline_delivered(&before, &expected, &ratio) == SATLINE_STATUS_OK);
    NEAR(ratio.value, 0.76, 1e-9);
    CHECK(satline_gain(&before, &expected, &after, &expected, 1, &gain) == SATLINE_STATUS_OK);
    CHECK(gain.outcome == SATLINE_GAIN_BETTER);
    NEAR(gain.ratio.value, 94. / 76, 1e-9);
    CHECK(satline_gain(&before, &expected, &after, &expected, 2, &gain) == SATLINE_STATUS_OUT_OF_RANGE);
    CHECK(satline_charge_fault_effect(&deviation, &indoor, &outdoor, &effect) == SATLINE_STATUS_OK);
    NEAR(effect.capacity.value, 0.888, 5e-4);
    NEAR(effect.coefficient_of_performance.value, effect.capacity.value / effect.power.value, 1e-12);
    deviation.value = -0.5;
    CHECK(satline_charge_fault_effect(&deviation, &indoor, &outdoor, &effect) == SATLINE_STATUS_OUT_OF_RANGE);
    CHECK(satline_charge_fault_effect(0, &indoor, &outdoor, &effect) == SATLINE_STATUS_NULL_POINTER);
    wet.value = 310;
    CHECK(satline_expected_capacity_w(10e3, &wet, &outdoor, &shape, &expected) == SATLINE_STATUS_OUT_OF_RANGE);
    CHECK(satline_capacity_shape_init(0) == SATLINE_STATUS_NULL_POINTER);
    CHECK(strstr(satline_performance_caution_sentence(SATLINE_PERFORMANCE_CAUTION_ELECTRICITY), "live parts") != 0);
    CHECK(strstr(satline_chart_caution_sentence(SATLINE_CHART_CAUTION_RIGHT_CHART), "one model") != 0);
}

int main(void) {
    refrigerants();
    airflow();
    chart();
    performance();
    return checks_report("visit_retrofit");
}
