/* Every line of tests/data/vectors.csv on the board, and a diagnosis, so that this program carries the whole interface:
 * what its symbol table lacks, no part of the library can reach. */
#include "../c/vector.h"
#include "board.h"
#include "vectors.inc"

#ifdef PANIC_PROBE
uint32_t satline_panic_probe(uint32_t value);
static volatile uint32_t zero;
#endif

static satline_reading reading;
static satline_finding finding;
static satline_accuracies accuracies;
static satline_diagnosis_options options;
static satline_evidence evidence;
static uint64_t work[SATLINE_DIAGNOSIS_WORDS + SATLINE_BASELINE_WORDS];

/* Calls what the vectors do not, so that the linker keeps it. */
static int rest(void) {
    const satline_refrigerant *found;
    const satline_refrigerant_full *full;
    satline_refrigerant curves;
    double lowest, highest;
    satline_limits limits;
    satline_field_range range;
    const char *text;
    int32_t field, failed = 0;
    failed |= satline_check_abi(SATLINE_ABI_VERSION);
    failed |= satline_refrigerant_find("r410a", &found);
    failed |= satline_refrigerant_nearest("R-401A", &text);
    failed |= satline_refrigerant_designation(found, &text);
    failed |= satline_refrigerant_limits(found, &limits);
    failed |= satline_full_find("r410a", &full);
    failed |= satline_full_designation(full, &text);
    failed |= satline_full_curves(full, &curves);
    failed |= satline_saturated_limits(full, &lowest, &highest);
    failed |= satline_field_find("suction_pressure_pa", &field);
    failed |= satline_field_nearest("suction", &text);
    failed |= satline_field_name(field, &text);
    failed |= satline_field_limits(field, &range);
    failed |= satline_reading_init(&reading, sizeof reading);
    failed |= satline_reading_set(&reading, field, 914906.4);
    failed |= satline_reading_set_choice(&reading, SATLINE_CHOICE_METERING, SATLINE_METERING_FIXED_ORIFICE);
    failed |= satline_finding_init(&finding, sizeof finding);
    failed |= satline_diagnose(found, &reading, &finding);
    {
        const satline_accuracy gauge = {0, 0.005, 5.5e6, 0, 690, 1, 0};
        failed |= satline_accuracies_init(&accuracies, sizeof accuracies);
        failed |= satline_accuracies_set(&accuracies, field, &gauge);
        failed |= satline_diagnosis_options_init(&options, sizeof options);
        failed |= satline_evidence_init(&evidence, sizeof evidence);
        failed |= satline_diagnose_with(found, &reading, &options, &finding, &evidence);
        options.baseline = &reading;
        options.baseline_count = 1;
        options.accuracies = options.baseline_accuracies = &accuracies;
        options.work = work;
        options.work_words = sizeof work / sizeof work[0];
        options.causes[SATLINE_CAUSE_OVERCHARGE] = 0.1;
        failed |= satline_diagnose_with(found, &reading, &options, &finding, &evidence);
        put_text(satline_cause_name(1));
        put_text(satline_cause_sentence(1));
        put_text(satline_feature_name(1));
        put_text(satline_feature_sentence(1));
        put_text(satline_source_sentence(1));
        put_text(satline_precondition_sentence(1));
        put_text(satline_precondition_status_sentence(1));
        put_text(satline_conclusion_sentence(evidence.conclusion));
        put_text(" ");
    }
    put_text(satline_reason_sentence(finding.reason));
    put_text(" ");
    put_text(satline_charge_sentence(finding.charge));
    put_text(satline_charge_status_sentence(finding.charge_status));
    put_text(satline_action_sentence(finding.protocol_action));
    put_text(satline_no_valid_test_sentence(finding.protocol_reason));
    put_text(satline_next_check_sentence(finding.next_check));
    put_text(satline_advice_sentence(finding.advice));
    put_text(satline_caution_sentence(1));
    put_text(satline_needed_for_sentence(1));
    put_text(satline_value_name(0));
    put_text(satline_status_name(0));
    put_text(satline_status_message(0));
    put_text(satline_version());
    put_text("\n");
    return failed;
}

int run(void) {
    const uint32_t count = sizeof vectors / sizeof vectors[0];
    uint32_t i, equal = 0;
    for (i = 0; i < count; i++) {
        if (vector_holds(&vectors[i])) {
            equal++;
        } else {
            put_text("differs: ");
            put_text(vectors[i].function);
            put_text(" ");
            put_text(vectors[i].refrigerant);
            put_number(" vector", i);
        }
    }
    put_number("vectors_equal", equal);
    put_number("vectors_total", count);
#ifdef PANIC_PROBE
    if (zero == 1) put_number("probe", satline_panic_probe(zero));
#endif
    return rest() != SATLINE_STATUS_OK || equal != count;
}
