/* Superheat of an R-410A suction line: superheat [psig] [line temperature in degrees Fahrenheit]. */
#include <satline.h>
#include <stdio.h>
#include <stdlib.h>

/* Superheat in degrees Fahrenheit from a gauge reading at sea level, or a status. */
int32_t superheat_f(double psig, double line_f, double *superheat) {
    double pressure_pa, superheat_k;
    int32_t status = satline_pressure_from_gauge_pa(psig * 6894.757293168361, 101325.0, &pressure_pa);
    if (status == SATLINE_STATUS_OK)
        status = satline_superheat_k(&SATLINE_R410A, (line_f + 459.67) * (5.0 / 9.0), pressure_pa, &superheat_k);
    if (status == SATLINE_STATUS_OK) *superheat = superheat_k * 1.8;
    return status;
}

int main(int argc, char **argv) {
    double superheat;
    int32_t status = superheat_f(argc > 1 ? atof(argv[1]) : 118.0, argc > 2 ? atof(argv[2]) : 62.0, &superheat);
    if (status == SATLINE_STATUS_OK) printf("superheat %.1f degrees Fahrenheit\n", superheat);
    else fprintf(stderr, "%s: %s\n", satline_status_name(status), satline_status_message(status));
    return status;
}
