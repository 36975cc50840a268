/* What stands behind a finding, and what a diagnosis is told besides the reading: given where it can be, refused with its
 * status where not, the caller's memory then as it was. That the numbers are Rust's is tested in ffi/src/diagnosis.rs. */
#include "check.h"
#include <math.h>
#include <satline.h>
#include <stddef.h>

enum { BASELINE = 2, WORDS = SATLINE_DIAGNOSIS_WORDS + BASELINE * SATLINE_BASELINE_WORDS };

static satline_reading reading, baseline[BASELINE];
static satline_diagnosis_options options;
static satline_finding finding;
static satline_evidence evidence;
static satline_accuracies accuracies;
/* One word more, which must stay as it is. */
static uint64_t work[WORDS + 1];

static void set(satline_reading *into, int32_t field, double value) {
    CHECK(satline_reading_set(into, field, value) == SATLINE_STATUS_OK);
}

/* Demo: a valve unit whose liquid line is `warmer` than it should be, kelvin. */
static void valve(satline_reading *into, double warmer) {
    CHECK(satline_reading_init(into, sizeof *into) == SATLINE_STATUS_OK);
    CHECK(satline_reading_set_choice(into, SATLINE_CHOICE_METERING, SATLINE_METERING_THERMOSTATIC_VALVE) == 0);
    set(into, SATLINE_FIELD_OUTDOOR_DRY_BULB_K, 305.4);
    set(into, SATLINE_FIELD_RETURN_DRY_BULB_K, 297.0);
    set(into, SATLINE_FIELD_RETURN_WET_BULB_K, 290.9);
    set(into, SATLINE_FIELD_SUPPLY_DRY_BULB_K, 286.0);
    set(into, SATLINE_FIELD_SUCTION_PRESSURE_PA, 930000.0);
    set(into, SATLINE_FIELD_SUCTION_LINE_TEMPERATURE_K, 283.9 + warmer);
    set(into, SATLINE_FIELD_LIQUID_PRESSURE_PA, 2450000.0);
    set(into, SATLINE_FIELD_LIQUID_LINE_TEMPERATURE_K, 307.9 + warmer);
    set(into, SATLINE_FIELD_TARGET_SUBCOOLING_K, 5.5);
    set(into, SATLINE_FIELD_MINUTES_SINCE_CHANGE, 25.0);
    set(into, SATLINE_FIELD_AIRFLOW_M3_S, 0.55);
    set(into, SATLINE_FIELD_NOMINAL_CAPACITY_W, 10550.0);
}

static void fresh(void) {
    valve(&reading, 4.5);
    valve(&baseline[0], 0.0);
    valve(&baseline[1], 0.3);
    CHECK(satline_accuracies_init(&accuracies, sizeof accuracies) == SATLINE_STATUS_OK);
    CHECK(satline_diagnosis_options_init(&options, sizeof options) == SATLINE_STATUS_OK);
    options.baseline = baseline;
    options.baseline_count = BASELINE;
    options.work = work;
    options.work_words = WORDS;
    options.accuracies = &accuracies;
    options.baseline_accuracies = &accuracies;
    memset(work, 0xa5, sizeof work);
    CHECK(satline_finding_init(&finding, sizeof finding) == SATLINE_STATUS_OK);
    CHECK(satline_evidence_init(&evidence, sizeof evidence) == SATLINE_STATUS_OK);
}

static int32_t diagnose(void) { return satline_diagnose_with(&SATLINE_R410A, &reading, &options, &finding, &evidence); }

static void layout(void) {
    CHECK(sizeof(satline_precondition) == 12 && sizeof(satline_feature) == 40 && sizeof(satline_hypothesis) == 16);
    CHECK(sizeof(satline_charge_amount) == 48 && sizeof(satline_evidence) == 2064);
    CHECK(offsetof(satline_evidence, amount) == 32 && offsetof(satline_evidence, precondition) == 80);
    CHECK(offsetof(satline_evidence, feature) == 272 && offsetof(satline_evidence, hypothesis) == 1552);
    CHECK(sizeof(satline_diagnosis_options) == 168 + 4 * sizeof(void *));
    CHECK(offsetof(satline_diagnosis_options, baseline) == 16);
    CHECK(offsetof(satline_diagnosis_options, causes) == sizeof(satline_diagnosis_options) - 16 * 8);
    /* Old programs: a finding stays as it was. */
    CHECK(sizeof(satline_finding) == 56 + 16 * 8 + 32 * 48);
    memset(&options, 0x5a, sizeof options);
    memset(&evidence, 0x5a, sizeof evidence);
    CHECK(satline_diagnosis_options_init(&options, sizeof options) == SATLINE_STATUS_OK);
    CHECK(options.struct_size == sizeof options && options.reserved == 0 && options.baseline == 0 && options.work == 0);
    CHECK(options.causes[15] == 0 && options.healthy == 0 && options.pairs == 0 && options.accuracies == 0);
    CHECK(satline_evidence_init(&evidence, sizeof evidence) == SATLINE_STATUS_OK);
    CHECK(evidence.struct_size == sizeof evidence && evidence.conclusion == 0 && evidence.hypothesis[31].probability == 0);
}

/* What must hold of every answer, whatever was found. */
static void plausible(void) {
    double sum = 0, before = 1;
    uint32_t i;
    CHECK(evidence.precondition_count == SATLINE_PRECONDITION_REFRIGERANT);
    for (i = 0; i < evidence.precondition_count; i++) {
        const satline_precondition *one = &evidence.precondition[i];
        CHECK(one->precondition == (int32_t)i + 1);
        CHECK(one->status >= SATLINE_PRECONDITION_STATUS_MET && one->status <= SATLINE_PRECONDITION_STATUS_UNKNOWN);
        CHECK((one->reason != 0) == (one->status == SATLINE_PRECONDITION_STATUS_NOT_MET));
        CHECK(strcmp(satline_precondition_sentence(one->precondition), "unknown") != 0);
        CHECK(strcmp(satline_precondition_status_sentence(one->status), "unknown") != 0);
    }
    CHECK(evidence.feature_count <= SATLINE_FEATURE_WEIGHED_CHARGE_SHARE);
    for (i = 0; i < evidence.feature_count; i++) {
        const satline_feature *one = &evidence.feature[i];
        CHECK(i == 0 || one->feature > evidence.feature[i - 1].feature);
        CHECK(one->standard_uncertainty >= 0 && one->expected_uncertainty >= 0);
        CHECK(one->source >= SATLINE_SOURCE_BASELINE && one->source <= SATLINE_SOURCE_CLASS);
        CHECK(strcmp(satline_feature_name(one->feature), "unknown") != 0);
    }
    for (i = 0; i < evidence.hypothesis_count; i++) {
        const satline_hypothesis *one = &evidence.hypothesis[i];
        CHECK(one->probability >= 0 && one->probability <= before && one->reserved == 0);
        CHECK((one->causes & ~0x7feu) == 0);
        sum += one->probability;
        before = one->probability;
    }
    CHECK(evidence.hypothesis_count == 0 || fabs(sum - 1) < 1e-9);
    CHECK((evidence.stands == 1) == (evidence.conclusion == SATLINE_CONCLUSION_STANDS));
    CHECK(evidence.stands == 1 || evidence.causes == 0);
    CHECK(strlen(satline_conclusion_sentence(evidence.conclusion)) > 20);
    CHECK(evidence.amount.given == 0 ||
          (evidence.amount.lowest <= evidence.amount.share && evidence.amount.share <= evidence.amount.highest));
    /* What is not counted is empty. */
    CHECK(evidence.precondition[15].precondition == 0 && evidence.feature[31].feature == 0);
    CHECK(evidence.hypothesis[31].probability == 0 && evidence.hypothesis[31].causes == 0);
}

static void diagnosed(void) {
    satline_finding plain;
    satline_evidence first;
    fresh();
    CHECK(satline_finding_init(&plain, sizeof plain) == SATLINE_STATUS_OK);
    CHECK(satline_diagnose(&SATLINE_R410A, &reading, &plain) == SATLINE_STATUS_OK);
    /* The defaults: null options, and options as they were initialised, are what satline_diagnose gives. */
    CHECK(satline_diagnose_with(&SATLINE_R410A, &reading, 0, &finding, &evidence) == SATLINE_STATUS_OK);
    CHECK(memcmp(&finding, &plain, sizeof plain) == 0);
    plausible();
    first = evidence;
    CHECK(satline_diagnosis_options_init(&options, sizeof options) == SATLINE_STATUS_OK);
    memset(&evidence, 0x5a, sizeof evidence);
    CHECK(satline_evidence_init(&evidence, sizeof evidence) == SATLINE_STATUS_OK);
    CHECK(diagnose() == SATLINE_STATUS_OK && memcmp(&finding, &plain, sizeof plain) == 0);
    CHECK(memcmp(&evidence, &first, sizeof first) == 0);
    /* Only the finding. */
    memset(&finding, 0x5a, sizeof finding);
    CHECK(satline_finding_init(&finding, sizeof finding) == SATLINE_STATUS_OK);
    CHECK(satline_diagnose_with(&SATLINE_R410A, &reading, &options, &finding, 0) == SATLINE_STATUS_OK);
    CHECK(memcmp(&finding, &plain, sizeof plain) == 0);
    /* In the caller's memory: the same, whatever was in it, and nothing beyond it is touched. */
    fresh();
    options.baseline_count = 0;
    options.baseline = 0;
    options.work_words = SATLINE_DIAGNOSIS_WORDS;
    CHECK(diagnose() == SATLINE_STATUS_OK && memcmp(&finding, &plain, sizeof plain) == 0);
    CHECK(memcmp(&evidence, &first, sizeof first) == 0);
    CHECK(work[SATLINE_DIAGNOSIS_WORDS] == 0xa5a5a5a5a5a5a5a5u);
    /* With a baseline; twice the same, although the memory is used again as the first left it. */
    fresh();
    CHECK(diagnose() == SATLINE_STATUS_OK);
    plausible();
    first = evidence;
    plain = finding;
    CHECK(diagnose() == SATLINE_STATUS_OK && memcmp(&finding, &plain, sizeof plain) == 0);
    CHECK(memcmp(&evidence, &first, sizeof first) == 0 && work[WORDS] == 0xa5a5a5a5a5a5a5a5u);
    /* Nothing measured: nothing weighed. */
    CHECK(satline_reading_init(&reading, sizeof reading) == SATLINE_STATUS_OK);
    CHECK(diagnose() == SATLINE_STATUS_OK && evidence.stands == 0 && evidence.amount.given == 0);
    plausible();
    /* The protocol asked for. */
    fresh();
    options.protocol_edition = SATLINE_EDITION_TITLE_24_RA3_2_2008;
    options.protocol_role = SATLINE_ROLE_VERIFIER;
    CHECK(diagnose() == SATLINE_STATUS_OK);
    CHECK(finding.protocol_edition == SATLINE_EDITION_TITLE_24_RA3_2_2008 && finding.protocol_role == SATLINE_ROLE_VERIFIER);
}

/* The status is the expected one, and finding and evidence stay as they were. */
#define REFUSED(expected, call)                                    \
    do {                                                           \
        satline_finding finding_ = finding;                        \
        satline_evidence evidence_ = evidence;                     \
        CHECK((call) == (expected));                               \
        CHECK(memcmp(&finding_, &finding, sizeof finding) == 0);   \
        CHECK(memcmp(&evidence_, &evidence, sizeof evidence) == 0); \
    } while (0)

/* With one thing wrong. */
#define WRONG(expected, place, value)   \
    do {                                \
        fresh();                        \
        place = (value);                \
        REFUSED(expected, diagnose());  \
    } while (0)

static void refused(void) {
    const satline_refrigerant *r = &SATLINE_R410A;
    const satline_refrigerant nothing = {0, 0};
    int32_t number;
    fresh();
    REFUSED(SATLINE_STATUS_BAD_STRUCT_SIZE, satline_evidence_init(&evidence, sizeof evidence - 8));
    REFUSED(SATLINE_STATUS_BAD_STRUCT_SIZE, satline_diagnosis_options_init(&options, 0));
    REFUSED(SATLINE_STATUS_NULL_POINTER, satline_evidence_init(0, sizeof evidence));
    REFUSED(SATLINE_STATUS_NULL_POINTER, satline_diagnosis_options_init(0, sizeof options));
    REFUSED(SATLINE_STATUS_NULL_POINTER, satline_diagnose_with(0, &reading, &options, &finding, &evidence));
    REFUSED(SATLINE_STATUS_NULL_POINTER, satline_diagnose_with(r, 0, &options, &finding, &evidence));
    REFUSED(SATLINE_STATUS_NULL_POINTER, satline_diagnose_with(r, &reading, &options, 0, &evidence));
    REFUSED(SATLINE_STATUS_VERSION_MISMATCH, satline_diagnose_with(&nothing, &reading, &options, &finding, &evidence));

    WRONG(SATLINE_STATUS_BAD_STRUCT_SIZE, options.struct_size, 0);
    WRONG(SATLINE_STATUS_BAD_STRUCT_SIZE, options.reserved, 1);
    WRONG(SATLINE_STATUS_BAD_STRUCT_SIZE, finding.struct_size, 0);
    WRONG(SATLINE_STATUS_BAD_STRUCT_SIZE, evidence.struct_size, 8);
    WRONG(SATLINE_STATUS_BAD_STRUCT_SIZE, reading.struct_size, 0);
    WRONG(SATLINE_STATUS_BAD_STRUCT_SIZE, baseline[1].struct_size, 0);
    WRONG(SATLINE_STATUS_BAD_STRUCT_SIZE, accuracies.struct_size, 0);
    WRONG(SATLINE_STATUS_NULL_POINTER, options.baseline, 0);
    WRONG(SATLINE_STATUS_NULL_POINTER, options.work, 0);
    WRONG(SATLINE_STATUS_BAD_STRUCT_SIZE, options.work_words, WORDS - 1);
    WRONG(SATLINE_STATUS_BAD_STRUCT_SIZE, options.work_words, 0);
    WRONG(SATLINE_STATUS_OUT_OF_RANGE, options.baseline_count, SATLINE_BASELINE_READINGS + 1);
    WRONG(SATLINE_STATUS_OUT_OF_RANGE, options.baseline_count, UINT32_MAX);
    /* Words without memory, and a baseline without memory. */
    fresh();
    options.baseline_count = 0;
    options.work = 0;
    REFUSED(SATLINE_STATUS_NULL_POINTER, diagnose());
    options.work_words = 0;
    CHECK(diagnose() == SATLINE_STATUS_OK);
    options.baseline_count = 1;
    REFUSED(SATLINE_STATUS_NULL_POINTER, diagnose());

    WRONG(SATLINE_STATUS_UNKNOWN_CHOICE, options.protocol_edition, 2012);
    WRONG(SATLINE_STATUS_UNKNOWN_CHOICE, options.protocol_edition, -1);
    WRONG(SATLINE_STATUS_UNKNOWN_CHOICE, options.protocol_role, 3);
    for (number = 0; number < SATLINE_DIAGNOSIS_CAUSES; number++) {
        const int known = number >= SATLINE_CAUSE_UNDERCHARGE && number <= SATLINE_CAUSE_UNMODELLED;
        WRONG(known ? SATLINE_STATUS_NOT_FINITE : SATLINE_STATUS_UNKNOWN_CHOICE, options.causes[number], (double)NAN);
        WRONG(known ? SATLINE_STATUS_OUT_OF_RANGE : SATLINE_STATUS_UNKNOWN_CHOICE, options.causes[number], 1.01);
        WRONG(known ? SATLINE_STATUS_OUT_OF_RANGE : SATLINE_STATUS_UNKNOWN_CHOICE, options.causes[number], -0.1);
    }
    WRONG(SATLINE_STATUS_NOT_FINITE, options.healthy, (double)INFINITY);
    WRONG(SATLINE_STATUS_OUT_OF_RANGE, options.healthy, 1e-12);
    WRONG(SATLINE_STATUS_OUT_OF_RANGE, options.healthy, 2);
    WRONG(SATLINE_STATUS_NOT_FINITE, options.pairs, (double)NAN);
    WRONG(SATLINE_STATUS_OUT_OF_RANGE, options.pairs, -1);
    WRONG(SATLINE_STATUS_OUT_OF_RANGE, options.pairs, 100.5);

    /* Written around our functions, in the reading and in a baseline. */
    for (number = -1; number < BASELINE; number++) {
        satline_reading *const one = number < 0 ? &reading : &baseline[number];
        WRONG(SATLINE_STATUS_NOT_FINITE, one->value[SATLINE_FIELD_LIQUID_PRESSURE_PA], (double)NAN);
        WRONG(SATLINE_STATUS_OUT_OF_RANGE, one->value[SATLINE_FIELD_SUCTION_PRESSURE_PA], -5.0);
        WRONG(SATLINE_STATUS_UNKNOWN_FIELD, one->present, one->present | (uint64_t)1 << 63);
        WRONG(SATLINE_STATUS_UNKNOWN_CHOICE, one->choice[SATLINE_CHOICE_METERING], 9);
        WRONG(SATLINE_STATUS_BAD_STRUCT_SIZE, one->reserved, 1);
    }
    /* In accuracies, today's or the baseline's. */
    for (number = 0; number < 2; number++) {
        fresh();
        accuracies.present = (uint64_t)1 << SATLINE_FIELD_LIQUID_PRESSURE_PA;
        accuracies.accuracy[SATLINE_FIELD_LIQUID_PRESSURE_PA].absolute = (double)NAN;
        if (number == 0) options.accuracies = 0;
        else options.baseline_accuracies = 0;
        REFUSED(SATLINE_STATUS_NOT_FINITE, diagnose());
    }
    options.accuracies = 0;
    CHECK(diagnose() == SATLINE_STATUS_OK);
}

static void words(void) {
    int32_t cause;
    CHECK_TEXT(satline_cause_name(SATLINE_CAUSE_LIQUID_LINE_RESTRICTION), "liquid-line-restriction");
    CHECK_TEXT(satline_cause_sentence(SATLINE_CAUSE_UNDERCHARGE), "too little refrigerant");
    CHECK_TEXT(satline_cause_name(0), "unknown");
    CHECK_TEXT(satline_cause_name(INT32_MIN), "unknown");
    CHECK_TEXT(satline_cause_sentence(11), "unknown");
    CHECK_TEXT(satline_feature_name(SATLINE_FEATURE_CONDENSING_OVER_AMBIENT_K), "condensing_over_ambient_k");
    CHECK_TEXT(satline_feature_sentence(SATLINE_FEATURE_SUBCOOLING_K), "subcooling");
    CHECK_TEXT(satline_source_sentence(SATLINE_SOURCE_PROTOCOL), "the protocol's table");
    CHECK_TEXT(satline_source_sentence(0), "unknown");
    CHECK_TEXT(satline_conclusion_sentence(99), "unknown");
    CHECK_TEXT(satline_precondition_sentence(-1), "unknown");
    CHECK_TEXT(satline_precondition_status_sentence(4), "unknown");
    for (cause = SATLINE_CAUSE_UNDERCHARGE; cause <= SATLINE_CAUSE_UNMODELLED; cause++)
        CHECK(strcmp(satline_cause_name(cause), "unknown") != 0 && strlen(satline_cause_sentence(cause)) > 10);
}

int main(void) {
    layout();
    diagnosed();
    refused();
    words();
    return checks_report("evidence");
}
