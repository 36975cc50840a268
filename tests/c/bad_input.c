/* Bad questions: the status says what is wrong, and the output stays as it was. */
#include "check.h"
#include <math.h>
#include <satline.h>

#define SENTINEL 1234.5
/* The status is the expected one and the output is untouched. */
#define REFUSED(expected, call)     \
    do {                            \
        out = SENTINEL;             \
        CHECK((call) == (expected)); \
        CHECK(out == SENTINEL);     \
    } while (0)

static double out;

typedef int32_t at_argument(const satline_refrigerant *, double, double *);

static void curve(at_argument *function, double lowest, double highest) {
    const satline_refrigerant *r = &SATLINE_R410A;
    const satline_refrigerant zeroed = {0, 0};
    satline_refrigerant other = SATLINE_R410A;
    const double bad[] = {(double)NAN, (double)INFINITY, -(double)INFINITY};
    size_t i;
    CHECK(function(r, lowest, &out) == SATLINE_STATUS_OK && function(r, highest, &out) == SATLINE_STATUS_OK);
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, function(r, nextafter(lowest, 0.0), &out));
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, function(r, nextafter(highest, 1e9), &out));
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, function(r, 0.0, &out));
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, function(r, -5.0, &out));
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, function(r, 1e300, &out));
    for (i = 0; i < sizeof bad / sizeof bad[0]; i++) REFUSED(SATLINE_STATUS_NOT_FINITE, function(r, bad[i], &out));
    REFUSED(SATLINE_STATUS_NULL_POINTER, function(0, lowest, &out));
    CHECK(function(r, lowest, 0) == SATLINE_STATUS_NULL_POINTER);
    REFUSED(SATLINE_STATUS_VERSION_MISMATCH, function(&zeroed, lowest, &out));
    other.version += 1;
    REFUSED(SATLINE_STATUS_VERSION_MISMATCH, function(&other, lowest, &out));
    other = SATLINE_R410A;
    other.core = 0;
    REFUSED(SATLINE_STATUS_NULL_POINTER, function(&other, lowest, &out));
}

static void curves(void) {
    satline_limits limits;
    const satline_refrigerant *r = &SATLINE_R410A;
    CHECK(satline_refrigerant_limits(r, &limits) == SATLINE_STATUS_OK);
    curve(satline_bubble_pressure_pa, limits.lowest_bubble_temperature_k, limits.highest_bubble_temperature_k);
    curve(satline_dew_pressure_pa, limits.lowest_dew_temperature_k, limits.highest_dew_temperature_k);
    curve(satline_bubble_temperature_k, limits.lowest_bubble_pressure_pa, limits.highest_bubble_pressure_pa);
    curve(satline_dew_temperature_k, limits.lowest_dew_pressure_pa, limits.highest_dew_pressure_pa);
    /* R-410A's critical temperature is 344.5 K (ASHRAE Refrigeration tables): nothing is answered there or above. */
    CHECK(limits.highest_dew_temperature_k < 344.5);
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_dew_pressure_pa(r, 345.0, &out));
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_bubble_pressure_pa(r, 345.0, &out));
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_superheat_k(r, 290.0, limits.highest_dew_pressure_pa * 1.001, &out));
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_superheat_k(r, 10.0, 8e5, &out));
    REFUSED(SATLINE_STATUS_NOT_FINITE, satline_superheat_k(r, (double)NAN, 8e5, &out));
    REFUSED(SATLINE_STATUS_NOT_FINITE, satline_subcooling_k(r, 300.0, (double)INFINITY, &out));
    REFUSED(SATLINE_STATUS_NULL_POINTER, satline_subcooling_k(0, 300.0, 8e5, &out));
    CHECK(satline_superheat_k(r, 290.0, 8e5, 0) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_refrigerant_limits(r, 0) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_refrigerant_limits(0, &limits) == SATLINE_STATUS_NULL_POINTER);
}

static void gauge(void) {
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_pressure_from_gauge_pa(-101325.0, 101325.0, &out));
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_pressure_from_gauge_pa(-15.0 * 6894.757293168361, 101325.0, &out));
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_pressure_from_gauge_pa(8e5, SATLINE_AMBIENT_PRESSURE_LOWEST_PA - 1, &out));
    REFUSED(SATLINE_STATUS_NOT_FINITE, satline_pressure_from_gauge_pa((double)NAN, 101325.0, &out));
    REFUSED(SATLINE_STATUS_NOT_FINITE, satline_pressure_from_gauge_pa(0.0, (double)INFINITY, &out));
    CHECK(satline_pressure_from_gauge_pa(0.0, 101325.0, 0) == SATLINE_STATUS_NULL_POINTER);
}

static void names(void) {
    const satline_refrigerant *found = &SATLINE_R22;
    const char *nearest = "";
    int32_t field = -7;
    satline_field_range range = {1.0, 2.0};
    CHECK(satline_refrigerant_find("R-410", &found) == SATLINE_STATUS_UNKNOWN_REFRIGERANT && found == &SATLINE_R22);
    CHECK(satline_refrigerant_nearest("R-410", &nearest) == SATLINE_STATUS_OK);
    CHECK_TEXT(nearest, "R-410A");
    CHECK(satline_refrigerant_nearest("r407", &nearest) == SATLINE_STATUS_OK);
    CHECK_TEXT(nearest, "R-407A");
    CHECK(satline_refrigerant_find("", &found) == SATLINE_STATUS_UNKNOWN_REFRIGERANT);
    CHECK(satline_refrigerant_find("\xff\xfe", &found) == SATLINE_STATUS_UNKNOWN_REFRIGERANT);
    CHECK(satline_refrigerant_find(0, &found) == SATLINE_STATUS_NULL_POINTER && found == &SATLINE_R22);
    CHECK(satline_refrigerant_find("R-22", 0) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_refrigerant_nearest(0, &nearest) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_refrigerant_designation(0, &nearest) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_refrigerant_designation(&SATLINE_R22, 0) == SATLINE_STATUS_NULL_POINTER);

    CHECK(satline_field_find("suction_presure_pa", &field) == SATLINE_STATUS_UNKNOWN_FIELD && field == -7);
    CHECK(satline_field_nearest("suction_presure_pa", &nearest) == SATLINE_STATUS_OK);
    CHECK_TEXT(nearest, "suction_pressure_pa");
    CHECK(satline_field_find("liquid_line_temperature_k", &field) == SATLINE_STATUS_OK);
    CHECK(field == SATLINE_FIELD_LIQUID_LINE_TEMPERATURE_K);
    CHECK(satline_field_name(field, &nearest) == SATLINE_STATUS_OK);
    CHECK_TEXT(nearest, "liquid_line_temperature_k");
    CHECK(satline_field_name(63, &nearest) == SATLINE_STATUS_UNKNOWN_FIELD);
    CHECK(satline_field_limits(-1, &range) == SATLINE_STATUS_UNKNOWN_FIELD && range.lowest == 1.0);
    CHECK(satline_field_limits(field, &range) == SATLINE_STATUS_OK && range.lowest == SATLINE_TEMPERATURE_LOWEST_K);
    CHECK(satline_field_find(0, &field) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_field_find("airflow_m3_s", 0) == SATLINE_STATUS_NULL_POINTER);

    CHECK_TEXT(satline_status_name(SATLINE_STATUS_OUT_OF_RANGE), "out-of-range");
    CHECK_TEXT(satline_status_name(-1), "unknown-status");
    CHECK(strstr(satline_status_message(SATLINE_STATUS_UNKNOWN_REFRIGERANT), "ASHRAE 34") != 0);
    CHECK(satline_status_message(12345) != 0);
}

static void targets(void) {
    /* 60 degrees Fahrenheit wet bulb at 95 outdoors: the table is blank there. */
    REFUSED(SATLINE_STATUS_NO_VALID_TEST, satline_target_superheat_k((60.0 + 459.67) / 1.8, (95.0 + 459.67) / 1.8, &out));
    REFUSED(SATLINE_STATUS_NO_VALID_TEST, satline_target_superheat_k((40.0 + 459.67) / 1.8, (95.0 + 459.67) / 1.8, &out));
    REFUSED(SATLINE_STATUS_NO_VALID_TEST, satline_target_split_k((84.0 + 459.67) / 1.8, (55.0 + 459.67) / 1.8, &out));
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_target_superheat_k(65.0, 95.0, &out));
    REFUSED(SATLINE_STATUS_NOT_FINITE, satline_target_split_k((double)NAN, 290.0, &out));
    CHECK(satline_target_superheat_k(290.0, 300.0, 0) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_target_split_k(298.0, 290.0, 0) == SATLINE_STATUS_NULL_POINTER);
}

static void versions(void) {
    CHECK(satline_check_abi(SATLINE_ABI_VERSION) == SATLINE_STATUS_OK);
    CHECK(satline_check_abi(SATLINE_ABI_VERSION + 1) == SATLINE_STATUS_VERSION_MISMATCH);
    CHECK(satline_check_abi(SATLINE_ABI_VERSION + 0x10000u) == SATLINE_STATUS_VERSION_MISMATCH);
    CHECK(satline_check_abi(0) == SATLINE_STATUS_VERSION_MISMATCH);
    CHECK(strchr(satline_version(), '.') != 0);
    CHECK(sizeof(satline_refrigerant) == 2 * sizeof(void *));
}

int main(void) {
    curves();
    gauge();
    names();
    targets();
    versions();
    return checks_report("bad_input");
}
