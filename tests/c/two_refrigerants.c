/* For the check that a program carries only the refrigerants it names. */
#include <satline.h>

int main(void) {
    double out = 0;
    const double temperature = 293.15;
    satline_standing question;
    satline_standing_finding finding;
    satline_standing_init(&question, sizeof question);
    satline_standing_finding_init(&finding, sizeof finding);
    question.pressure_pa = 1.4e6;
    if (satline_standing_check(&SATLINE_R410A, &question, &temperature, 1, &finding) != SATLINE_STATUS_OK) return 1;
    int32_t status = satline_dew_temperature_k(&SATLINE_R410A, 8e5, &out);
    return status == SATLINE_STATUS_OK ? satline_bubble_temperature_k(&SATLINE_R22, 8e5, &out) : status;
}
