/* The standing-pressure check. Pressures are from tables: ASHRAE Handbook Fundamentals, from memory. */
#include "check.h"
#include <math.h>
#include <satline.h>

static satline_standing question;
static satline_standing_finding finding;

static void start(double pressure_pa) {
    CHECK(satline_standing_init(&question, sizeof question) == SATLINE_STATUS_OK);
    CHECK(satline_standing_finding_init(&finding, sizeof finding) == SATLINE_STATUS_OK);
    question.pressure_pa = pressure_pa;
    question.pressure_uncertainty_pa = 3e3;
    question.temperature_uncertainty_k = 0.2;
}

static void good(void) {
    /* R-134a at 20 degrees Celsius: 571.71 kPa. */
    const double one[] = {293.15}, near[] = {293.15, 293.65}, apart[] = {293.15, 303.15};
    start(571.71e3);
    CHECK(satline_standing_check(&SATLINE_R134A, &question, one, 1, &finding) == SATLINE_STATUS_OK);
    CHECK(finding.outcome == SATLINE_STANDING_OUTCOME_CONSISTENT && finding.causes[0] == 0);
    CHECK(finding.given == (SATLINE_STANDING_GIVEN_ABOVE_BUBBLE | SATLINE_STANDING_GIVEN_UNSEEN));
    CHECK(fabs(finding.above_bubble_k) < 0.05 && fabs(finding.bubble_pressure_pa - 571.71e3) < 200);
    CHECK(finding.unseen_at_most_pa > 0 && finding.unseen_at_most_pa < 20e3);
    /* Dalton: 100 kPa of air over it. */
    start(671.71e3);
    question.liquid = SATLINE_STANDING_LIQUID_MOST;
    CHECK(satline_standing_check(&SATLINE_R134A, &question, near, 2, &finding) == SATLINE_STATUS_OK);
    CHECK(finding.outcome == SATLINE_STANDING_OUTCOME_EXCESS);
    CHECK(finding.causes[0] == SATLINE_STANDING_CAUSE_NON_CONDENSABLES);
    CHECK(finding.advice == SATLINE_STANDING_ADVICE_RECOVER_EVACUATE_RECHARGE);
    CHECK(strstr(satline_standing_advice_sentence(finding.advice), "never purge") != 0);
    CHECK((finding.cautions >> SATLINE_STANDING_CAUTION_NEVER_PURGE & 1) == 1);
    CHECK((finding.given & SATLINE_STANDING_GIVEN_NON_CONDENSABLES) != 0);
    CHECK(fabs(finding.non_condensables_pa - 100e3) < 1e3);
    CHECK(fabs(finding.spread_k - 0.5) < 1e-9 && finding.temperature_k == 293.15);
    CHECK_TEXT(satline_standing_cause_sentence(finding.causes[0]), "Air or nitrogen is mixed in.");
    start(300e3);
    CHECK(satline_standing_check(&SATLINE_R134A, &question, one, 1, &finding) == SATLINE_STATUS_OK);
    CHECK(finding.outcome == SATLINE_STANDING_OUTCOME_TOO_LOW);
    CHECK(finding.causes[0] == SATLINE_STANDING_CAUSE_NO_LIQUID);
    CHECK(satline_standing_check(&SATLINE_R134A, &question, apart, 2, &finding) == SATLINE_STATUS_OK);
    CHECK(finding.outcome == SATLINE_STANDING_OUTCOME_NOT_JUDGED);
    CHECK(finding.reason == SATLINE_STANDING_REASON_TEMPERATURES_UNEQUAL);
}

#define REFUSED(expected, call)                                     \
    do {                                                            \
        finding.outcome = 77;                                       \
        CHECK((call) == (expected) && finding.outcome == 77);       \
    } while (0)

static void bad(void) {
    const double one[] = {293.15}, not_finite[] = {293.15, (double)NAN}, hot[] = {390.0};
    double many[17];
    const satline_refrigerant *r = &SATLINE_R134A;
    size_t i;
    for (i = 0; i < 17; i++) many[i] = 293.15;
    start(571.71e3);
    CHECK(satline_standing_check(r, &question, many, 16, &finding) == SATLINE_STATUS_OK);
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_standing_check(r, &question, many, 17, &finding));
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_standing_check(r, &question, one, 0, &finding));
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_standing_check(r, &question, hot, 1, &finding));
    REFUSED(SATLINE_STATUS_NOT_FINITE, satline_standing_check(r, &question, not_finite, 2, &finding));
    REFUSED(SATLINE_STATUS_NULL_POINTER, satline_standing_check(0, &question, one, 1, &finding));
    REFUSED(SATLINE_STATUS_NULL_POINTER, satline_standing_check(r, 0, one, 1, &finding));
    REFUSED(SATLINE_STATUS_NULL_POINTER, satline_standing_check(r, &question, 0, 1, &finding));
    CHECK(satline_standing_check(r, &question, one, 1, 0) == SATLINE_STATUS_NULL_POINTER);
    question.liquid = 9;
    REFUSED(SATLINE_STATUS_UNKNOWN_CHOICE, satline_standing_check(r, &question, one, 1, &finding));
    start(571.71e3);
    question.pressure_uncertainty_pa = -2;
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_standing_check(r, &question, one, 1, &finding));
    start((double)INFINITY);
    REFUSED(SATLINE_STATUS_NOT_FINITE, satline_standing_check(r, &question, one, 1, &finding));
    start(571.71e3);
    question.struct_size = 0;
    REFUSED(SATLINE_STATUS_BAD_STRUCT_SIZE, satline_standing_check(r, &question, one, 1, &finding));
    start(571.71e3);
    finding.struct_size = 8;
    REFUSED(SATLINE_STATUS_BAD_STRUCT_SIZE, satline_standing_check(r, &question, one, 1, &finding));
    CHECK(satline_standing_init(&question, 12) == SATLINE_STATUS_BAD_STRUCT_SIZE);
    CHECK(satline_standing_finding_init(&finding, 12) == SATLINE_STATUS_BAD_STRUCT_SIZE);
    CHECK(satline_standing_init(0, sizeof question) == SATLINE_STATUS_NULL_POINTER);
}

static void what_is_in_this_bottle(void) {
    satline_match nearest[24];
    uint32_t count = 0, few = 0, i;
    /* R-22 at 25 degrees Celsius: 1044 kPa. */
    CHECK(satline_refrigerant_matches(1.044e6, 298.15, 5e3, 0.2, nearest, 24, &count) == SATLINE_STATUS_OK);
    CHECK(count > 3 && count <= 24 && nearest[0].refrigerant == &SATLINE_R22 && nearest[0].fits == 1);
    CHECK(fabs(nearest[0].bubble_temperature_k - 298.15) < 0.1);
    for (i = 0; i < count; i++) {
        double bubble = 0;
        CHECK(satline_bubble_temperature_k(nearest[i].refrigerant, 1.044e6, &bubble) == SATLINE_STATUS_OK);
        CHECK(bubble == nearest[i].bubble_temperature_k);
        CHECK((nearest[i].fits == 1) == (fabs(nearest[i].distance_k) <= 2 * nearest[i].standard_uncertainty_k));
    }
    CHECK(satline_refrigerant_matches(1.044e6, 298.15, -1, -1, nearest, 2, &few) == SATLINE_STATUS_OK && few == 2);
    few = 77;
    CHECK(satline_refrigerant_matches(1.044e6, 298.15, -2, -1, nearest, 2, &few) == SATLINE_STATUS_OUT_OF_RANGE);
    CHECK(satline_refrigerant_matches((double)NAN, 298.15, -1, -1, nearest, 2, &few) == SATLINE_STATUS_NOT_FINITE);
    CHECK(satline_refrigerant_matches(1.044e6, 298.15, -1, -1, 0, 2, &few) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_refrigerant_matches(1.044e6, 298.15, -1, -1, nearest, 2, 0) == SATLINE_STATUS_NULL_POINTER);
    CHECK(few == 77);
}

int main(void) {
    good();
    bad();
    what_is_in_this_bottle();
    return checks_report("standing");
}
