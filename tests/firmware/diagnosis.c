/* What stands behind findings of demo readings, without and with a baseline of the same unit, every number to the bit:
 * compared between board and host. Also the program whose flash is measured: one finding of one refrigerant. */
#include "board.h"
#include <satline.h>

struct measured {
    int32_t field;
    double value;
};

/* Demo: a valve unit low on charge, and the same unit when it was healthy, on a cooler day. */
static const struct measured low[] = {
    {SATLINE_FIELD_OUTDOOR_DRY_BULB_K, 305.4},          {SATLINE_FIELD_RETURN_DRY_BULB_K, 297.0},
    {SATLINE_FIELD_RETURN_WET_BULB_K, 290.9},           {SATLINE_FIELD_SUPPLY_DRY_BULB_K, 287.0},
    {SATLINE_FIELD_SUCTION_PRESSURE_PA, 880000.0},      {SATLINE_FIELD_SUCTION_LINE_TEMPERATURE_K, 285.9},
    {SATLINE_FIELD_LIQUID_PRESSURE_PA, 2350000.0},      {SATLINE_FIELD_LIQUID_LINE_TEMPERATURE_K, 310.6},
    {SATLINE_FIELD_DISCHARGE_LINE_TEMPERATURE_K, 345.0}, {SATLINE_FIELD_TARGET_SUBCOOLING_K, 5.5},
    {SATLINE_FIELD_MINUTES_SINCE_CHANGE, 25.0},         {SATLINE_FIELD_AIRFLOW_M3_S, 0.55},
    {SATLINE_FIELD_NOMINAL_CAPACITY_W, 10550.0},        {SATLINE_FIELD_EXPECTED_CHARGE_KG, 3.2},
};
static const struct measured healthy[] = {
    {SATLINE_FIELD_OUTDOOR_DRY_BULB_K, 303.2},          {SATLINE_FIELD_RETURN_DRY_BULB_K, 297.4},
    {SATLINE_FIELD_RETURN_WET_BULB_K, 291.0},           {SATLINE_FIELD_SUPPLY_DRY_BULB_K, 286.3},
    {SATLINE_FIELD_SUCTION_PRESSURE_PA, 940000.0},      {SATLINE_FIELD_SUCTION_LINE_TEMPERATURE_K, 284.0},
    {SATLINE_FIELD_LIQUID_PRESSURE_PA, 2420000.0},      {SATLINE_FIELD_LIQUID_LINE_TEMPERATURE_K, 307.2},
    {SATLINE_FIELD_DISCHARGE_LINE_TEMPERATURE_K, 338.0}, {SATLINE_FIELD_TARGET_SUBCOOLING_K, 5.5},
    {SATLINE_FIELD_MINUTES_SINCE_CHANGE, 30.0},         {SATLINE_FIELD_AIRFLOW_M3_S, 0.55},
    {SATLINE_FIELD_NOMINAL_CAPACITY_W, 10550.0},        {SATLINE_FIELD_EXPECTED_CHARGE_KG, 3.2},
};

static satline_reading reading, baseline;
static satline_diagnosis_options options;
static satline_finding finding;
static satline_evidence evidence;
static uint64_t work[SATLINE_DIAGNOSIS_WORDS + SATLINE_BASELINE_WORDS];

static int take(satline_reading *into, const struct measured *rows, uint32_t count) {
    int32_t failed = satline_reading_init(into, sizeof *into);
    uint32_t i;
    failed |= satline_reading_set_choice(into, SATLINE_CHOICE_METERING, SATLINE_METERING_THERMOSTATIC_VALVE);
    for (i = 0; i < count; i++) failed |= satline_reading_set(into, rows[i].field, rows[i].value);
    return failed != SATLINE_STATUS_OK;
}

static int judge(void) {
    uint32_t i;
    if (satline_diagnose_with(&SATLINE_R410A, &reading, &options, &finding, &evidence) != SATLINE_STATUS_OK) return 1;
    put_number("charge", (uint32_t)finding.charge);
    put_number("reason", (uint32_t)finding.reason);
    put_number("next_check", (uint32_t)finding.next_check);
    put_number("advice", (uint32_t)finding.advice);
    put_number("cautions", finding.cautions);
    put_number("conclusion", (uint32_t)evidence.conclusion);
    put_number("stands", (uint32_t)evidence.stands);
    put_number("causes", evidence.causes);
    put_number("fits", (uint32_t)evidence.fits);
    for (i = 0; i < evidence.precondition_count; i++) {
        put_number("precondition", (uint32_t)evidence.precondition[i].precondition);
        put_number("status", (uint32_t)evidence.precondition[i].status);
        put_number("reason", (uint32_t)evidence.precondition[i].reason);
    }
    for (i = 0; i < evidence.feature_count; i++) {
        const satline_feature *feature = &evidence.feature[i];
        put_number("feature", (uint32_t)feature->feature);
        put_number("source", (uint32_t)feature->source);
        put_bits("value", feature->value);
        put_bits("standard_uncertainty", feature->standard_uncertainty);
        put_bits("expected", feature->expected);
        put_bits("expected_uncertainty", feature->expected_uncertainty);
    }
    for (i = 0; i < evidence.hypothesis_count; i++) {
        put_number("hypothesis", evidence.hypothesis[i].causes);
        put_bits("probability", evidence.hypothesis[i].probability);
    }
    put_number("amount_given", evidence.amount.given);
    put_bits("share", evidence.amount.share);
    put_bits("share_uncertainty", evidence.amount.standard_uncertainty);
    put_bits("lowest", evidence.amount.lowest);
    put_bits("highest", evidence.amount.highest);
    put_bits("mass_kg", evidence.amount.mass_kg);
    return 0;
}

int run(void) {
    if (take(&reading, low, sizeof low / sizeof low[0])) return 1;
    if (take(&baseline, healthy, sizeof healthy / sizeof healthy[0])) return 1;
    if (satline_diagnosis_options_init(&options, sizeof options) != SATLINE_STATUS_OK) return 1;
    if (satline_finding_init(&finding, sizeof finding) != SATLINE_STATUS_OK) return 1;
    if (satline_evidence_init(&evidence, sizeof evidence) != SATLINE_STATUS_OK) return 1;
    options.work = work;
    options.work_words = sizeof work / sizeof work[0];
    if (judge()) return 1;
    options.baseline = &baseline;
    options.baseline_count = 1;
    return judge();
}
