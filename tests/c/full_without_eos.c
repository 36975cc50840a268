/* For the check that full handles work in a library without equations of state: prints bits to compare with one that has
 * them. */
#include <satline.h>
#include <stdio.h>
#include <string.h>

typedef int32_t function(const satline_refrigerant_full *, double, double *);

int main(void) {
    function *const functions[] = {satline_saturated_liquid_density_kg_m3, satline_saturated_vapor_density_kg_m3,
                                   satline_saturated_liquid_enthalpy_j_kg, satline_saturated_vapor_enthalpy_j_kg};
    const satline_refrigerant_full *const handles[] = {&SATLINE_R410A_FULL, &SATLINE_R22_FULL};
    satline_refrigerant curves;
    const char *name;
    size_t i, k;
    for (i = 0; i < 2; i++) {
        if (satline_full_designation(handles[i], &name) != SATLINE_STATUS_OK) return 1;
        if (satline_full_curves(handles[i], &curves) != SATLINE_STATUS_OK) return 1;
        printf("%s", name);
        for (k = 0; k < 4; k++) {
            double value;
            unsigned char bytes[sizeof value];
            size_t b;
            if (functions[k](handles[i], 281.3, &value) != SATLINE_STATUS_OK) return 1;
            memcpy(bytes, &value, sizeof value);
            printf(" ");
            for (b = 0; b < sizeof bytes; b++) printf("%02x", (unsigned)bytes[b]);
        }
        printf("\n");
    }
    return 0;
}
