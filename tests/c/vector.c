#include "vector.h"
#include <string.h>

static double number(uint64_t bits) {
    double value;
    memcpy(&value, &bits, sizeof value);
    return value;
}

typedef int32_t one_argument(const satline_refrigerant *, double, double *);
typedef int32_t two_arguments(const satline_refrigerant *, double, double, double *);
typedef int32_t full_record(const satline_refrigerant_full *, double, double *);
typedef int32_t no_refrigerant(double, double, double *);

static const struct {
    const char *name;
    one_argument *one;
    two_arguments *two;
    no_refrigerant *none;
    full_record *full;
} functions[] = {
    {"bubble_pressure_pa", satline_bubble_pressure_pa, 0, 0, 0},
    {"dew_pressure_pa", satline_dew_pressure_pa, 0, 0, 0},
    {"bubble_temperature_k", satline_bubble_temperature_k, 0, 0, 0},
    {"dew_temperature_k", satline_dew_temperature_k, 0, 0, 0},
    {"superheat_k", 0, satline_superheat_k, 0, 0},
    {"subcooling_k", 0, satline_subcooling_k, 0, 0},
    {"pressure_from_gauge_pa", 0, 0, satline_pressure_from_gauge_pa, 0},
    {"target_superheat_k", 0, 0, satline_target_superheat_k, 0},
    {"target_split_k", 0, 0, satline_target_split_k, 0},
    {"saturated_liquid_density_kg_m3", 0, 0, 0, satline_saturated_liquid_density_kg_m3},
    {"saturated_vapor_density_kg_m3", 0, 0, 0, satline_saturated_vapor_density_kg_m3},
    {"saturated_liquid_enthalpy_j_kg", 0, 0, 0, satline_saturated_liquid_enthalpy_j_kg},
    {"saturated_vapor_enthalpy_j_kg", 0, 0, 0, satline_saturated_vapor_enthalpy_j_kg},
};

int vector_holds(const struct vector *vector) {
    /* A bit pattern that no answer has, to see that a failure does not write. */
    const uint64_t untouched = 0x7ff8123456789abcu;
    double first = number(vector->argument[0]), second = number(vector->argument[1]), out = number(untouched);
    const satline_refrigerant *refrigerant = 0;
    const satline_refrigerant_full *full = 0;
    int32_t status = SATLINE_STATUS_OK;
    uint64_t bits;
    size_t i;
    for (i = 0; i < sizeof functions / sizeof functions[0]; i++)
        if (strcmp(functions[i].name, vector->function) == 0) break;
    if (i == sizeof functions / sizeof functions[0]) return 0;
    if (functions[i].full) status = satline_full_find(vector->refrigerant, &full);
    else if (vector->refrigerant[0] != 0) status = satline_refrigerant_find(vector->refrigerant, &refrigerant);
    if (status == SATLINE_STATUS_OK) {
        if (functions[i].full) status = functions[i].full(full, first, &out);
        else if (functions[i].one) status = functions[i].one(refrigerant, first, &out);
        else if (functions[i].two) status = functions[i].two(refrigerant, first, second, &out);
        else status = functions[i].none(first, second, &out);
    }
    memcpy(&bits, &out, sizeof bits);
    return status == vector->status && bits == (status == SATLINE_STATUS_OK ? vector->result : untouched);
}
