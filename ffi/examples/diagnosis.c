/* Demo: a valve unit judged against its own readings from the day it was known to be healthy. Prints what may be wrong and
 * how probable that is, what the finding stands by, and what to check next. */
#include <satline.h>
#include <stdio.h>

#define CHECKED(call)                       \
    do {                                    \
        const int32_t status_ = (call);     \
        if (status_ != SATLINE_STATUS_OK) { \
            fprintf(stderr, "%s: %s\n", satline_status_name(status_), satline_status_message(status_)); \
            return 1;                       \
        }                                   \
    } while (0)

static double kelvin(double fahrenheit) { return (fahrenheit + 459.67) * 5.0 / 9.0; }
static double pascals(double psig) { return psig * 6894.757293168361 + 101325.0; }

struct measured {
    double outdoor_f, return_f, wet_bulb_f, supply_f, suction_psig, suction_line_f, liquid_psig, liquid_line_f;
};
static const struct measured when_healthy = {90.0, 76.0, 63.0, 57.0, 125.0, 53.0, 345.0, 95.0};
static const struct measured today = {92.0, 76.5, 63.5, 60.0, 112.0, 58.0, 330.0, 99.0};

static int take(satline_reading *reading, const struct measured *measured) {
    CHECKED(satline_reading_init(reading, sizeof *reading));
    CHECKED(satline_reading_set_choice(reading, SATLINE_CHOICE_METERING, SATLINE_METERING_THERMOSTATIC_VALVE));
    CHECKED(satline_reading_set(reading, SATLINE_FIELD_OUTDOOR_DRY_BULB_K, kelvin(measured->outdoor_f)));
    CHECKED(satline_reading_set(reading, SATLINE_FIELD_RETURN_DRY_BULB_K, kelvin(measured->return_f)));
    CHECKED(satline_reading_set(reading, SATLINE_FIELD_RETURN_WET_BULB_K, kelvin(measured->wet_bulb_f)));
    CHECKED(satline_reading_set(reading, SATLINE_FIELD_SUPPLY_DRY_BULB_K, kelvin(measured->supply_f)));
    CHECKED(satline_reading_set(reading, SATLINE_FIELD_SUCTION_PRESSURE_PA, pascals(measured->suction_psig)));
    CHECKED(satline_reading_set(reading, SATLINE_FIELD_SUCTION_LINE_TEMPERATURE_K, kelvin(measured->suction_line_f)));
    CHECKED(satline_reading_set(reading, SATLINE_FIELD_LIQUID_PRESSURE_PA, pascals(measured->liquid_psig)));
    CHECKED(satline_reading_set(reading, SATLINE_FIELD_LIQUID_LINE_TEMPERATURE_K, kelvin(measured->liquid_line_f)));
    CHECKED(satline_reading_set(reading, SATLINE_FIELD_TARGET_SUBCOOLING_K, 10.0 / 1.8));
    CHECKED(satline_reading_set(reading, SATLINE_FIELD_MINUTES_SINCE_CHANGE, 20.0));
    return 0;
}

static void print_causes(uint32_t causes) {
    int32_t cause;
    if (causes == 0) printf(" nothing");
    for (cause = 1; cause < SATLINE_DIAGNOSIS_CAUSES; cause++)
        if (causes >> cause & 1) printf(" %s", satline_cause_name(cause));
}

int main(void) {
    static uint64_t work[SATLINE_DIAGNOSIS_WORDS + SATLINE_BASELINE_WORDS];
    satline_reading reading, baseline;
    satline_diagnosis_options options;
    satline_finding finding;
    satline_evidence evidence;
    int32_t caution;
    uint32_t i;
    if (take(&reading, &today) || take(&baseline, &when_healthy)) return 1;
    CHECKED(satline_diagnosis_options_init(&options, sizeof options));
    options.baseline = &baseline;
    options.baseline_count = 1;
    options.work = work;
    options.work_words = sizeof work / sizeof work[0];
    CHECKED(satline_finding_init(&finding, sizeof finding));
    CHECKED(satline_evidence_init(&evidence, sizeof evidence));
    CHECKED(satline_diagnose_with(&SATLINE_R410A, &reading, &options, &finding, &evidence));
    for (i = 0; i < evidence.hypothesis_count && evidence.hypothesis[i].probability >= 0.01; i++) {
        printf("%3.0f %%", 100.0 * evidence.hypothesis[i].probability);
        print_causes(evidence.hypothesis[i].causes);
        printf("\n");
    }
    printf("conclusion:");
    if (evidence.stands) print_causes(evidence.causes);
    printf(" (%s)\ncharge: %s\nnext: %s\n", satline_conclusion_sentence(evidence.conclusion),
           satline_charge_sentence(finding.charge), satline_next_check_sentence(finding.next_check));
    for (caution = 1; caution < 32; caution++)
        if (finding.cautions >> caution & 1) printf("caution: %s\n", satline_caution_sentence(caution));
    return 0;
}
