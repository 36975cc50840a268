/* The charge by the scale, leaks and recovery through the C interface. Demo values; expected numbers are by hand. */
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

static satline_account account;
static satline_charge_account found;

static void usual(void) {
    CHECK(satline_account_init(&account, sizeof account) == SATLINE_STATUS_OK);
    CHECK(satline_charge_account_init(&found, sizeof found) == SATLINE_STATUS_OK);
    account.expected.nameplate_kg = pm(2.72, 0.02);
    account.expected.line_set_kg = pm(0.73, 0.03);
    account.expected.accessories_kg = pm(0.05, 0.01);
    account.start = SATLINE_START_EVACUATED;
}

static void charge(void) {
    satline_weighing weighings[3] = {{2.0, 0.01}, {1.4, 0.01}, {-0.3, 0.01}};
    satline_uncertain expected = pm(77, 77);
    usual();
    CHECK(satline_expected_charge_kg(&account.expected, &expected) == SATLINE_STATUS_OK);
    NEAR(expected.value, 3.50, 1e-12);
    NEAR(expected.standard_uncertainty, sqrt(0.02 * 0.02 + 0.03 * 0.03 + 0.01 * 0.01), 1e-12);

    CHECK(satline_charge_account_of(&account, weighings, 3, &found) == SATLINE_STATUS_OK);
    CHECK(found.balance == SATLINE_CHARGE_BALANCE_SHORT);
    NEAR(found.inside_kg.value, 3.1, 1e-12);
    /* Three weighings of their own 0.01 kg, and the scale's limit of error of 0.5 % over all of them together. */
    NEAR(found.inside_kg.standard_uncertainty, sqrt(3 * 1e-4 + pow(3.1 * 0.005, 2) / 3), 1e-9);
    NEAR(found.deviation_kg.value, -0.4, 1e-12);
    NEAR(found.deviation.value, -0.4 / 3.5, 1e-12);
    CHECK(strstr(satline_charge_balance_sentence(found.balance), "leak") != 0);
    CHECK_TEXT(satline_charge_balance_sentence(99), "unknown");

    account.start = SATLINE_START_HOLDS;
    account.start_kg = pm(0.4, 0.0);
    CHECK(satline_charge_account_of(&account, weighings, 3, &found) == SATLINE_STATUS_OK);
    CHECK(found.balance == SATLINE_CHARGE_BALANCE_RIGHT);
    account.tolerance = 0.0;
    CHECK(satline_charge_account_of(&account, weighings, 3, &found) == SATLINE_STATUS_OK);
    CHECK(found.balance == SATLINE_CHARGE_BALANCE_TOO_UNCERTAIN);
    account.start = SATLINE_START_UNKNOWN;
    CHECK(satline_charge_account_of(&account, 0, 0, &found) == SATLINE_STATUS_OK);
    CHECK(found.balance == SATLINE_CHARGE_BALANCE_UNKNOWN && found.inside_kg.value == 0);
    NEAR(found.expected_kg.value, 3.5, 1e-12);
}

static void refused(void) {
    satline_weighing out = {-4.0, 0.0};
    usual();
    found.balance = 77;
    CHECK(satline_charge_account_of(&account, &out, 1, &found) == SATLINE_STATUS_OUT_OF_RANGE);
    out.change_kg = NAN;
    CHECK(satline_charge_account_of(&account, &out, 1, &found) == SATLINE_STATUS_NOT_FINITE);
    out.change_kg = 3.0;
    out.standard_uncertainty_kg = -0.1;
    CHECK(satline_charge_account_of(&account, &out, 1, &found) == SATLINE_STATUS_OUT_OF_RANGE);
    CHECK(satline_charge_account_of(&account, 0, 1, &found) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_charge_account_of(0, &out, 1, &found) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_charge_account_of(&account, &out, 1, 0) == SATLINE_STATUS_NULL_POINTER);
    account.start = 9;
    CHECK(satline_charge_account_of(&account, 0, 0, &found) == SATLINE_STATUS_UNKNOWN_CHOICE);
    usual();
    account.expected.nameplate_kg.value = -1;
    CHECK(satline_charge_account_of(&account, 0, 0, &found) == SATLINE_STATUS_OUT_OF_RANGE);
    usual();
    account.scale_share = 2;
    found.balance = 77;
    CHECK(satline_charge_account_of(&account, 0, 0, &found) == SATLINE_STATUS_OUT_OF_RANGE);
    CHECK(found.balance == 77);
    account.struct_size = 0;
    CHECK(satline_charge_account_of(&account, 0, 0, &found) == SATLINE_STATUS_BAD_STRUCT_SIZE);
    CHECK(satline_account_init(&account, 1) == SATLINE_STATUS_BAD_STRUCT_SIZE);
    CHECK(satline_account_init(0, sizeof account) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_charge_account_init(&found, 1) == SATLINE_STATUS_BAD_STRUCT_SIZE);
    CHECK(satline_expected_charge_kg(0, &account.start_kg) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_expected_charge_kg(&account.expected, 0) == SATLINE_STATUS_NULL_POINTER);
}

static void leaks(void) {
    satline_addition log[3];
    satline_uncertain full = pm(3.0, 0.05);
    satline_leak_rate rate;
    CHECK(satline_leak_rate_init(&rate, sizeof rate) == SATLINE_STATUS_OK);
    log[0].day = 10;
    log[0].mass_kg = pm(1.0, 0.01);
    log[1].day = 83;
    log[1].mass_kg = pm(0.3, 0.01);
    CHECK(satline_leak_rate_of(&full, log, 2, &rate) == SATLINE_STATUS_OK);
    /* 0.3 kg in 73 days: a fifth of a year, so 1.5 kg and half the charge a year. */
    NEAR(rate.days, 73, 1e-12);
    NEAR(rate.kg_a_year.value, 1.5, 1e-12);
    NEAR(rate.kg_a_year.standard_uncertainty, 0.05, 1e-12);
    NEAR(rate.share_a_year.value, 0.5, 1e-12);
    NEAR(rate.last_share_a_year, 0.5, 1e-12);
    /* Another fifth of a kilogram, two years later. */
    log[2].day = 83 + 730;
    log[2].mass_kg = pm(0.2, 0.01);
    CHECK(satline_leak_rate_of(&full, log, 3, &rate) == SATLINE_STATUS_OK);
    NEAR(rate.lost_kg.value, 0.5, 1e-12);
    NEAR(rate.last_share_a_year, 0.2 / 3, 1e-12);
    rate.days = 77;
    CHECK(satline_leak_rate_of(&full, log, 1, &rate) == SATLINE_STATUS_NOT_AVAILABLE);
    log[1].day = 5;
    CHECK(satline_leak_rate_of(&full, log, 2, &rate) == SATLINE_STATUS_OUT_OF_RANGE);
    full.value = 0;
    log[1].day = 83;
    CHECK(satline_leak_rate_of(&full, log, 2, &rate) == SATLINE_STATUS_OUT_OF_RANGE);
    CHECK(satline_leak_rate_of(0, log, 2, &rate) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_leak_rate_of(&full, 0, 2, &rate) == SATLINE_STATUS_NULL_POINTER);
    CHECK(rate.days == 77);
    rate.struct_size = 0;
    CHECK(satline_leak_rate_of(&full, log, 2, &rate) == SATLINE_STATUS_BAD_STRUCT_SIZE);
    CHECK(satline_leak_rate_init(&rate, 1) == SATLINE_STATUS_BAD_STRUCT_SIZE);
}

static void recovered(void) {
    static const satline_refrigerant_full *const may_be[] = {&SATLINE_R22_FULL, &SATLINE_R410A_FULL, &SATLINE_R290_FULL};
    satline_cylinder cylinder;
    satline_cylinder_fill fill, of_mixture;
    satline_recovery recovery;
    satline_recovery_finding finding;
    CHECK(satline_cylinder_init(&cylinder, sizeof cylinder) == SATLINE_STATUS_OK);
    CHECK(satline_cylinder_fill_init(&fill, sizeof fill) == SATLINE_STATUS_OK);
    CHECK(satline_cylinder_fill_init(&of_mixture, sizeof of_mixture) == SATLINE_STATUS_OK);
    cylinder.water_capacity_kg = 21.6;
    CHECK(satline_cylinder_check(may_be + 1, 1, &cylinder, &fill) == SATLINE_STATUS_OK);
    CHECK(satline_cylinder_check(may_be, 3, &cylinder, &of_mixture) == SATLINE_STATUS_OK);
    CHECK(of_mixture.limit_kg < 0.5 * fill.limit_kg);

    CHECK(satline_recovery_init(&recovery, sizeof recovery) == SATLINE_STATUS_OK);
    CHECK(satline_recovery_finding_init(&finding, sizeof finding) == SATLINE_STATUS_OK);
    recovery.expected_kg = pm(3.5, 0.04);
    recovery.cylinder_limit_kg = fill.limit_kg;
    recovery.before_kg = pm(9.1, 0.01);
    CHECK(satline_recovery_of(&recovery, &finding) == SATLINE_STATUS_OK);
    CHECK(finding.room == SATLINE_RECOVERY_ROOM_ENOUGH && finding.balance == SATLINE_RECOVERED_BALANCE_NOT_YET);
    NEAR(finding.room_kg.value, fill.limit_kg - 9.1, 1e-12);
    CHECK(finding.excess_kg == 0 && finding.recovered_kg.value == 0);
    recovery.after_kg = pm(11.9, 0.01);
    CHECK(satline_recovery_of(&recovery, &finding) == SATLINE_STATUS_OK);
    CHECK(finding.balance == SATLINE_RECOVERED_BALANCE_SHORT);
    NEAR(finding.recovered_kg.value, 2.8, 1e-12);
    NEAR(finding.recovered_kg.standard_uncertainty, 0.01 * sqrt(2.0), 1e-12);
    NEAR(finding.deviation_kg.value, -0.7, 1e-12);
    NEAR(finding.room_after_kg, fill.limit_kg - 11.9, 1e-12);
    CHECK(strstr(satline_recovered_balance_sentence(finding.balance), "still inside") != 0);
    /* Not known what it is: the lightest liquid, propane, leaves no room at all. */
    recovery.cylinder_limit_kg = of_mixture.limit_kg;
    recovery.after_kg = pm(-1, 0);
    CHECK(satline_recovery_of(&recovery, &finding) == SATLINE_STATUS_OK);
    CHECK(finding.room == SATLINE_RECOVERY_ROOM_FULL && finding.room_kg.value < 0);
    CHECK(finding.excess_kg > 3.5);
    CHECK(strstr(satline_recovery_room_sentence(finding.room), "nothing") != 0);

    finding.room = 77;
    recovery.after_kg = pm(9.0, 0.01);
    CHECK(satline_recovery_of(&recovery, &finding) == SATLINE_STATUS_OUT_OF_RANGE);
    recovery.after_kg = pm(-2, 0);
    CHECK(satline_recovery_of(&recovery, &finding) == SATLINE_STATUS_OUT_OF_RANGE);
    recovery.after_kg = pm(-1, 0);
    recovery.before_kg = pm(NAN, 0.01);
    CHECK(satline_recovery_of(&recovery, &finding) == SATLINE_STATUS_NOT_FINITE);
    CHECK(satline_recovery_of(0, &finding) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_recovery_of(&recovery, 0) == SATLINE_STATUS_NULL_POINTER);
    CHECK(finding.room == 77);
    finding.struct_size = 0;
    CHECK(satline_recovery_of(&recovery, &finding) == SATLINE_STATUS_BAD_STRUCT_SIZE);
    CHECK(satline_recovery_init(&recovery, 1) == SATLINE_STATUS_BAD_STRUCT_SIZE);
    CHECK(satline_recovery_finding_init(&finding, 1) == SATLINE_STATUS_BAD_STRUCT_SIZE);
}

int main(void) {
    charge();
    refused();
    leaks();
    recovered();
    return checks_report("account");
}
