/* Findings of demo readings, every number to the bit: compared between board and host. */
#include "board.h"
#include <satline.h>

struct measured {
    int32_t field;
    double value;
};

/* Demo: an orifice unit with superheat on target but too cold supply air; a valve unit low on subcooling. */
static const struct measured orifice[] = {
    {SATLINE_FIELD_OUTDOOR_DRY_BULB_K, 308.15},         {SATLINE_FIELD_RETURN_DRY_BULB_K, 298.706},
    {SATLINE_FIELD_RETURN_WET_BULB_K, 291.483},         {SATLINE_FIELD_SUPPLY_DRY_BULB_K, 284.261},
    {SATLINE_FIELD_SUCTION_PRESSURE_PA, 825274.5},      {SATLINE_FIELD_SUCTION_LINE_TEMPERATURE_K, 278.706},
};
static const struct measured valve[] = {
    {SATLINE_FIELD_OUTDOOR_DRY_BULB_K, 305.4},          {SATLINE_FIELD_RETURN_DRY_BULB_K, 297.0},
    {SATLINE_FIELD_RETURN_WET_BULB_K, 290.9},           {SATLINE_FIELD_SUPPLY_DRY_BULB_K, 286.0},
    {SATLINE_FIELD_SUCTION_PRESSURE_PA, 930000.0},      {SATLINE_FIELD_SUCTION_LINE_TEMPERATURE_K, 283.9},
    {SATLINE_FIELD_LIQUID_PRESSURE_PA, 2450000.0},      {SATLINE_FIELD_LIQUID_LINE_TEMPERATURE_K, 312.6},
    {SATLINE_FIELD_TARGET_SUBCOOLING_K, 5.5},           {SATLINE_FIELD_MINUTES_SINCE_CHANGE, 25.0},
    {SATLINE_FIELD_AIRFLOW_M3_S, 0.55},                 {SATLINE_FIELD_NOMINAL_CAPACITY_W, 10550.0},
};

static satline_reading reading;
static satline_finding finding;

static int judge(const satline_refrigerant *refrigerant, int32_t metering, const struct measured *rows, uint32_t count) {
    int32_t failed = satline_reading_init(&reading, sizeof reading) | satline_finding_init(&finding, sizeof finding);
    uint32_t i;
    failed |= satline_reading_set_choice(&reading, SATLINE_CHOICE_METERING, metering);
    for (i = 0; i < count; i++) failed |= satline_reading_set(&reading, rows[i].field, rows[i].value);
    failed |= satline_diagnose(refrigerant, &reading, &finding);
    if (failed) return 1;
    put_text(satline_charge_sentence(finding.charge));
    put_text(" ");
    put_text(satline_reason_sentence(finding.reason));
    put_text("\n");
    put_number("charge_status", (uint32_t)finding.charge_status);
    put_number("protocol_action", (uint32_t)finding.protocol_action);
    put_number("protocol_reason", (uint32_t)finding.protocol_reason);
    put_number("next_check", (uint32_t)finding.next_check);
    put_number("advice", (uint32_t)finding.advice);
    put_number("cautions", finding.cautions);
    put_number("missing_count", finding.missing_count);
    for (i = 0; i < SATLINE_FINDING_VALUES; i++) {
        const satline_value *value = &finding.value[i];
        if (!value->given) continue;
        put_bits(satline_value_name((int32_t)i), value->value);
        put_bits("standard_uncertainty", value->standard_uncertainty);
        put_bits("target", value->target);
        put_bits("deviation", value->deviation);
        put_bits("deviation_uncertainty", value->deviation_uncertainty);
    }
    return 0;
}

int run(void) {
    return judge(&SATLINE_R410A, SATLINE_METERING_FIXED_ORIFICE, orifice, sizeof orifice / sizeof orifice[0]) ||
           judge(&SATLINE_R410A, SATLINE_METERING_THERMOSTATIC_VALVE, valve, sizeof valve / sizeof valve[0]);
}
