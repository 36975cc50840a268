/* What an instrument weighs a line set's charge and a capacity with: saturated densities and enthalpies of one
 * refrigerant, by its full handle, in a library without equations of state. Compiled for the host too, to compare the
 * bits. */
#include "board.h"
#include <satline.h>

typedef int32_t function(const satline_refrigerant_full *, double, double *);

static int sweep(const char *name, function *of) {
    double lowest, highest, value;
    int i;
    if (satline_saturated_limits(&SATLINE_R410A_FULL, &lowest, &highest) != SATLINE_STATUS_OK) return 1;
    for (i = 0; i <= 16; i++) {
        if (of(&SATLINE_R410A_FULL, i == 16 ? highest : lowest + i * (highest - lowest) / 16, &value) != SATLINE_STATUS_OK) return 1;
        put_bits(name, value);
    }
    return of(&SATLINE_R410A_FULL, highest + 1e-9, &value) != SATLINE_STATUS_OUT_OF_RANGE;
}

int run(void) {
    return sweep("liquid_density_bits", satline_saturated_liquid_density_kg_m3) ||
           sweep("vapor_density_bits", satline_saturated_vapor_density_kg_m3) ||
           sweep("liquid_enthalpy_bits", satline_saturated_liquid_enthalpy_j_kg) ||
           sweep("vapor_enthalpy_bits", satline_saturated_vapor_enthalpy_j_kg);
}
