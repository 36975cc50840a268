/* Readings and findings: a demo reading judged, missing fields named, bad readings refused. */
#include "check.h"
#include <math.h>
#include <satline.h>

static double kelvin(double fahrenheit) { return (fahrenheit + 459.67) * 5.0 / 9.0; }
static double pascals(double psig) { return psig * 6894.757293168361 + 101325.0; }

static void set(satline_reading *reading, int32_t field, double value) {
    CHECK(satline_reading_set(reading, field, value) == SATLINE_STATUS_OK);
}

/* Demo: a fixed-orifice R-410A unit; superheat on target, but the air cools far more than it should. */
static void demo(satline_reading *reading) {
    CHECK(satline_reading_init(reading, sizeof *reading) == SATLINE_STATUS_OK);
    CHECK(satline_reading_set_choice(reading, SATLINE_CHOICE_METERING, SATLINE_METERING_FIXED_ORIFICE) == 0);
    set(reading, SATLINE_FIELD_OUTDOOR_DRY_BULB_K, kelvin(95.0));
    set(reading, SATLINE_FIELD_RETURN_DRY_BULB_K, kelvin(78.0));
    set(reading, SATLINE_FIELD_RETURN_WET_BULB_K, kelvin(65.0));
    set(reading, SATLINE_FIELD_SUPPLY_DRY_BULB_K, kelvin(52.0));
    set(reading, SATLINE_FIELD_SUCTION_PRESSURE_PA, pascals(105.0));
    set(reading, SATLINE_FIELD_SUCTION_LINE_TEMPERATURE_K, kelvin(42.0));
}

static int32_t judge(const satline_reading *reading, satline_finding *finding) {
    CHECK(satline_finding_init(finding, sizeof *finding) == SATLINE_STATUS_OK);
    return satline_diagnose(&SATLINE_R410A, reading, finding);
}

static int names(const satline_finding *finding, int32_t field, int32_t needed_for) {
    uint32_t i;
    for (i = 0; i < finding->missing_count; i++)
        if (finding->missing[i].field == field && finding->missing[i].needed_for == needed_for) return 1;
    return 0;
}

static void judged(void) {
    satline_reading reading;
    satline_finding finding;
    const satline_value *value;
    double superheat = 0;
    demo(&reading);
    CHECK(judge(&reading, &finding) == SATLINE_STATUS_OK);
    /* Airflow first: a split of 26 against 18.8 degrees Fahrenheit by the table of appendix RA3.2 (from memory). */
    CHECK(finding.charge == SATLINE_CHARGE_NOT_JUDGED);
    CHECK(finding.reason == SATLINE_REASON_AIRFLOW_FIRST);
    CHECK(finding.next_check == SATLINE_NEXT_CHECK_INDOOR_AIRFLOW);
    CHECK(finding.cautions & (1u << SATLINE_CAUTION_LICENSED_PRACTICE));
    CHECK(finding.cautions & (1u << SATLINE_CAUTION_PRESSURE));
    CHECK(finding.protocol_edition == SATLINE_EDITION_TITLE_24_RA3_2_2013);
    CHECK(finding.protocol_split == SATLINE_SPLIT_CHECK_ABOVE);
    value = &finding.value[SATLINE_VALUE_TEMPERATURE_SPLIT_K];
    CHECK((value->given & SATLINE_GIVEN_TARGET) && fabs(value->value * 1.8 - 26.0) < 1e-9);
    CHECK(fabs(value->target * 1.8 - 18.8) < 1e-9 && fabs(value->deviation * 1.8 - 7.2) < 1e-9);
    value = &finding.value[SATLINE_VALUE_SUPERHEAT_K];
    CHECK(satline_superheat_k(&SATLINE_R410A, kelvin(42.0), pascals(105.0), &superheat) == SATLINE_STATUS_OK);
    CHECK((value->given & SATLINE_GIVEN_VALUE) && value->value == superheat && value->standard_uncertainty > 0);
    CHECK(finding.value[SATLINE_VALUE_SUBCOOLING_K].given == 0);
    CHECK(finding.value[31].given == 0);
    CHECK(strlen(satline_reason_sentence(finding.reason)) > 20);
    CHECK_TEXT(satline_value_name(SATLINE_VALUE_SUPERHEAT_K), "superheat_k");
    CHECK_TEXT(satline_reason_sentence(-3), "unknown");
}

static void missing(void) {
    satline_reading reading;
    satline_finding finding;
    /* Nothing measured: not judged, and the finding says what would help. */
    CHECK(satline_reading_init(&reading, sizeof reading) == SATLINE_STATUS_OK);
    CHECK(judge(&reading, &finding) == SATLINE_STATUS_OK);
    CHECK(finding.charge == SATLINE_CHARGE_NOT_JUDGED && finding.reason == SATLINE_REASON_MISSING_MEASUREMENT);
    CHECK(finding.missing_count > 0);
    CHECK(names(&finding, SATLINE_MISSING_METERING, SATLINE_NEEDED_FOR_VERDICT));
    CHECK(finding.protocol_action == SATLINE_ACTION_NO_VALID_TEST && finding.protocol_reason != 0);
    /* All but the suction pressure. */
    demo(&reading);
    reading.present &= ~((uint64_t)1 << SATLINE_FIELD_SUCTION_PRESSURE_PA);
    CHECK(judge(&reading, &finding) == SATLINE_STATUS_OK);
    CHECK(finding.charge == SATLINE_CHARGE_NOT_JUDGED);
    CHECK(names(&finding, SATLINE_FIELD_SUCTION_PRESSURE_PA, SATLINE_NEEDED_FOR_VERDICT));
    CHECK(!names(&finding, SATLINE_FIELD_SUCTION_LINE_TEMPERATURE_K, SATLINE_NEEDED_FOR_VERDICT));
    CHECK(finding.value[SATLINE_VALUE_SUPERHEAT_K].given == 0);
    /* A pressure that fits no R-410A unit is still a finding, not an error. */
    demo(&reading);
    set(&reading, SATLINE_FIELD_SUCTION_PRESSURE_PA, 2e4);
    CHECK(judge(&reading, &finding) == SATLINE_STATUS_OK && finding.charge == SATLINE_CHARGE_NOT_JUDGED);
}

/* The call is refused and neither structure changes. */
#define REFUSED(expected, call)                                                          \
    do {                                                                                 \
        satline_reading reading_ = reading;                                              \
        satline_finding finding_ = finding;                                              \
        CHECK((call) == (expected));                                                     \
        CHECK(memcmp(&reading_, &reading, sizeof reading) == 0);                         \
        CHECK(memcmp(&finding_, &finding, sizeof finding) == 0);                         \
    } while (0)

static void refused(void) {
    satline_reading reading;
    satline_finding finding;
    const satline_refrigerant *r = &SATLINE_R410A;
    memset(&reading, 0, sizeof reading);
    memset(&finding, 0, sizeof finding);
    /* Never initialised, or initialised for another size. */
    REFUSED(SATLINE_STATUS_BAD_STRUCT_SIZE, satline_reading_set(&reading, SATLINE_FIELD_AIRFLOW_M3_S, 0.5));
    REFUSED(SATLINE_STATUS_BAD_STRUCT_SIZE, satline_reading_set_choice(&reading, 0, 1));
    REFUSED(SATLINE_STATUS_BAD_STRUCT_SIZE, satline_reading_init(&reading, 0));
    REFUSED(SATLINE_STATUS_BAD_STRUCT_SIZE, satline_reading_init(&reading, sizeof reading + 8));
    REFUSED(SATLINE_STATUS_BAD_STRUCT_SIZE, satline_finding_init(&finding, 0));
    demo(&reading);
    REFUSED(SATLINE_STATUS_BAD_STRUCT_SIZE, satline_diagnose(r, &reading, &finding));
    CHECK(satline_finding_init(&finding, sizeof finding) == SATLINE_STATUS_OK);
    reading.struct_size = 0;
    REFUSED(SATLINE_STATUS_BAD_STRUCT_SIZE, satline_diagnose(r, &reading, &finding));

    demo(&reading);
    REFUSED(SATLINE_STATUS_NULL_POINTER, satline_diagnose(0, &reading, &finding));
    REFUSED(SATLINE_STATUS_NULL_POINTER, satline_diagnose(r, 0, &finding));
    REFUSED(SATLINE_STATUS_NULL_POINTER, satline_diagnose(r, &reading, 0));
    REFUSED(SATLINE_STATUS_NULL_POINTER, satline_reading_set(0, 0, 300.0));
    REFUSED(SATLINE_STATUS_NULL_POINTER, satline_reading_set_choice(0, 0, 1));
    REFUSED(SATLINE_STATUS_NULL_POINTER, satline_reading_init(0, sizeof reading));
    REFUSED(SATLINE_STATUS_NULL_POINTER, satline_finding_init(0, sizeof finding));

    REFUSED(SATLINE_STATUS_UNKNOWN_FIELD, satline_reading_set(&reading, -1, 300.0));
    REFUSED(SATLINE_STATUS_UNKNOWN_FIELD, satline_reading_set(&reading, 63, 300.0));
    REFUSED(SATLINE_STATUS_UNKNOWN_FIELD, satline_reading_set(&reading, 64, 300.0));
    REFUSED(SATLINE_STATUS_UNKNOWN_FIELD, satline_reading_set(&reading, INT32_MAX, 300.0));
    REFUSED(SATLINE_STATUS_UNKNOWN_FIELD, satline_reading_set_choice(&reading, 7, 1));
    REFUSED(SATLINE_STATUS_UNKNOWN_FIELD, satline_reading_set_choice(&reading, -1, 1));
    REFUSED(SATLINE_STATUS_UNKNOWN_CHOICE, satline_reading_set_choice(&reading, SATLINE_CHOICE_MODE, 0));
    REFUSED(SATLINE_STATUS_UNKNOWN_CHOICE, satline_reading_set_choice(&reading, SATLINE_CHOICE_MODE, 77));
    REFUSED(SATLINE_STATUS_NOT_FINITE, satline_reading_set(&reading, SATLINE_FIELD_OUTDOOR_DRY_BULB_K, (double)NAN));
    REFUSED(SATLINE_STATUS_NOT_FINITE, satline_reading_set(&reading, SATLINE_FIELD_AIRFLOW_M3_S, (double)INFINITY));
    /* Fahrenheit where kelvin is asked for; a gauge pressure below zero. */
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_reading_set(&reading, SATLINE_FIELD_OUTDOOR_DRY_BULB_K, 95.0));
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_reading_set(&reading, SATLINE_FIELD_SUCTION_PRESSURE_PA, -5.0));

    /* Written around our functions. */
    reading.value[SATLINE_FIELD_SUCTION_PRESSURE_PA] = (double)NAN;
    REFUSED(SATLINE_STATUS_NOT_FINITE, satline_diagnose(r, &reading, &finding));
    reading.value[SATLINE_FIELD_SUCTION_PRESSURE_PA] = 1e12;
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_diagnose(r, &reading, &finding));
    demo(&reading);
    reading.present |= (uint64_t)1 << 63;
    REFUSED(SATLINE_STATUS_UNKNOWN_FIELD, satline_diagnose(r, &reading, &finding));
    demo(&reading);
    reading.choice[SATLINE_CHOICE_METERING] = -4;
    REFUSED(SATLINE_STATUS_UNKNOWN_CHOICE, satline_diagnose(r, &reading, &finding));
    demo(&reading);
    reading.choice[7] = 1;
    REFUSED(SATLINE_STATUS_UNKNOWN_FIELD, satline_diagnose(r, &reading, &finding));
}

int main(void) {
    judged();
    missing();
    refused();
    return checks_report("diagnosis");
}
