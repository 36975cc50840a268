/* What is known of the instruments: taken where it can be true, refused with its status where not. */
#include "check.h"
#include <math.h>
#include <satline.h>

#define FIELD SATLINE_FIELD_SUCTION_PRESSURE_PA

static satline_accuracy gauge(void) {
    satline_accuracy one;
    memset(&one, 0, sizeof one);
    one.of_full_scale = 0.005;
    one.full_scale = 5.5e6;
    one.resolution = 700.0;
    one.group = 1;
    return one;
}

static void set(void) {
    satline_accuracies all;
    const satline_accuracy manifold = gauge();
    memset(&all, 0x5a, sizeof all);
    CHECK(satline_accuracies_init(&all, sizeof all) == SATLINE_STATUS_OK);
    CHECK(all.struct_size == sizeof all && all.present == 0 && all.accuracy[63].reserved == 0);
    CHECK(satline_accuracies_set(&all, FIELD, &manifold) == SATLINE_STATUS_OK);
    CHECK(satline_accuracies_set(&all, SATLINE_FIELD_OUTDOOR_DRY_BULB_K, &manifold) == SATLINE_STATUS_OK);
    CHECK(all.present == (((uint64_t)1 << FIELD) | ((uint64_t)1 << SATLINE_FIELD_OUTDOOR_DRY_BULB_K)));
    CHECK(memcmp(&all.accuracy[FIELD], &manifold, sizeof manifold) == 0);
}

/* The status is the expected one and the accuracies stay as they were. */
#define REFUSED(expected, call)                              \
    do {                                                     \
        satline_accuracies before_ = all;                    \
        CHECK((call) == (expected));                         \
        CHECK(memcmp(&before_, &all, sizeof all) == 0);      \
    } while (0)

#define WRONG(expected, member, value)                                \
    do {                                                              \
        satline_accuracy one_ = gauge();                              \
        one_.member = (value);                                        \
        REFUSED(expected, satline_accuracies_set(&all, FIELD, &one_)); \
    } while (0)

static void refused(void) {
    satline_accuracies all;
    satline_accuracy one = gauge();
    memset(&all, 0, sizeof all);
    REFUSED(SATLINE_STATUS_BAD_STRUCT_SIZE, satline_accuracies_set(&all, FIELD, &one));
    REFUSED(SATLINE_STATUS_BAD_STRUCT_SIZE, satline_accuracies_init(&all, 0));
    REFUSED(SATLINE_STATUS_BAD_STRUCT_SIZE, satline_accuracies_init(&all, sizeof all + 8));
    REFUSED(SATLINE_STATUS_NULL_POINTER, satline_accuracies_init(0, sizeof all));
    CHECK(satline_accuracies_init(&all, sizeof all) == SATLINE_STATUS_OK);
    REFUSED(SATLINE_STATUS_NULL_POINTER, satline_accuracies_set(0, FIELD, &one));
    REFUSED(SATLINE_STATUS_NULL_POINTER, satline_accuracies_set(&all, FIELD, 0));
    REFUSED(SATLINE_STATUS_UNKNOWN_FIELD, satline_accuracies_set(&all, -1, &one));
    REFUSED(SATLINE_STATUS_UNKNOWN_FIELD, satline_accuracies_set(&all, 63, &one));
    REFUSED(SATLINE_STATUS_UNKNOWN_FIELD, satline_accuracies_set(&all, INT32_MAX, &one));

    WRONG(SATLINE_STATUS_OUT_OF_RANGE, of_reading, 1.001);
    WRONG(SATLINE_STATUS_OUT_OF_RANGE, of_reading, -0.001);
    WRONG(SATLINE_STATUS_OUT_OF_RANGE, of_full_scale, 1.001);
    WRONG(SATLINE_STATUS_OUT_OF_RANGE, of_full_scale, 0.0);
    WRONG(SATLINE_STATUS_OUT_OF_RANGE, full_scale, 0.0);
    WRONG(SATLINE_STATUS_OUT_OF_RANGE, full_scale, -5.5e6);
    WRONG(SATLINE_STATUS_OUT_OF_RANGE, absolute, -1.0);
    WRONG(SATLINE_STATUS_OUT_OF_RANGE, resolution, -1.0);
    WRONG(SATLINE_STATUS_OUT_OF_RANGE, group, -1);
    WRONG(SATLINE_STATUS_OUT_OF_RANGE, group, SATLINE_HIGHEST_GROUP + 1);
    WRONG(SATLINE_STATUS_OUT_OF_RANGE, group, 257);
    WRONG(SATLINE_STATUS_BAD_STRUCT_SIZE, reserved, 1);
    WRONG(SATLINE_STATUS_NOT_FINITE, of_reading, (double)NAN);
    WRONG(SATLINE_STATUS_NOT_FINITE, of_full_scale, (double)INFINITY);
    WRONG(SATLINE_STATUS_NOT_FINITE, full_scale, (double)INFINITY);
    WRONG(SATLINE_STATUS_NOT_FINITE, absolute, (double)NAN);
    WRONG(SATLINE_STATUS_NOT_FINITE, resolution, -(double)INFINITY);
    one.group = SATLINE_HIGHEST_GROUP;
    CHECK(satline_accuracies_set(&all, FIELD, &one) == SATLINE_STATUS_OK);
}

/* What the unit did, and what is in it. */
static void choices(void) {
    satline_reading reading;
    int32_t value;
    CHECK(satline_reading_init(&reading, sizeof reading) == SATLINE_STATUS_OK);
    for (value = SATLINE_OPERATION_STEADY; value <= SATLINE_OPERATION_HEAD_PRESSURE_CONTROL; value++) {
        CHECK(satline_reading_set_choice(&reading, SATLINE_CHOICE_OPERATION, value) == SATLINE_STATUS_OK);
        CHECK(reading.choice[SATLINE_CHOICE_OPERATION] == value);
    }
    CHECK(satline_reading_set_choice(&reading, SATLINE_CHOICE_OPERATION, value) == SATLINE_STATUS_UNKNOWN_CHOICE);
    for (value = SATLINE_REFRIGERANT_CONDITION_AS_LABELLED; value <= SATLINE_REFRIGERANT_CONDITION_LEAK_SHIFTED; value++) {
        CHECK(satline_reading_set_choice(&reading, SATLINE_CHOICE_REFRIGERANT_CONDITION, value) == SATLINE_STATUS_OK);
    }
    CHECK(satline_reading_set_choice(&reading, SATLINE_CHOICE_REFRIGERANT_CONDITION, 0) == SATLINE_STATUS_UNKNOWN_CHOICE);
    CHECK(reading.choice[SATLINE_CHOICE_REFRIGERANT_CONDITION] == SATLINE_REFRIGERANT_CONDITION_LEAK_SHIFTED);
    CHECK(satline_reading_set_choice(&reading, 7, 1) == SATLINE_STATUS_UNKNOWN_FIELD);
}

int main(void) {
    set();
    refused();
    choices();
    return checks_report("accuracies");
}
