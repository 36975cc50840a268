/* Saturated densities and enthalpies of full refrigerants: good questions with values from outside the library, bad ones,
 * and the curves of a full handle. The bits are compared in conformance.c. */
#include "check.h"
#include <math.h>
#include <satline.h>

static double out;

static void published(void) {
    /* ASHRAE Handbook Fundamentals, R-134a at 0 degrees Celsius (from memory): 1294.8 kg/m3, 0.0693 m3/kg, 200.00 and
     * 398.60 kJ/kg; half of the last digit, and 2 J/kg for the curve. */
    const satline_refrigerant_full *r = &SATLINE_R134A_FULL;
    CHECK(satline_saturated_liquid_density_kg_m3(r, 273.15, &out) == SATLINE_STATUS_OK && fabs(out - 1294.8) < 0.06);
    CHECK(satline_saturated_vapor_density_kg_m3(r, 273.15, &out) == SATLINE_STATUS_OK && fabs(1 / out - 0.0693) < 5e-5);
    CHECK(satline_saturated_liquid_enthalpy_j_kg(r, 273.15, &out) == SATLINE_STATUS_OK && fabs(out - 200e3) < 2);
    CHECK(satline_saturated_vapor_enthalpy_j_kg(r, 273.15, &out) == SATLINE_STATUS_OK && fabs(out - 398.60e3) < 7);
}

/* Clapeyron's equation, which no equation of state escapes: the latent heat of a pure fluid is T (v" - v') dp/dT. The
 * pressures come from other curves. */
static void clapeyron(const satline_refrigerant_full *r, double temperature_k) {
    satline_refrigerant curves;
    double liquid, vapor, of_liquid, of_vapor, above, below, latent;
    CHECK(satline_full_curves(r, &curves) == SATLINE_STATUS_OK);
    CHECK(satline_saturated_liquid_density_kg_m3(r, temperature_k, &liquid) == SATLINE_STATUS_OK);
    CHECK(satline_saturated_vapor_density_kg_m3(r, temperature_k, &vapor) == SATLINE_STATUS_OK);
    CHECK(satline_saturated_liquid_enthalpy_j_kg(r, temperature_k, &of_liquid) == SATLINE_STATUS_OK);
    CHECK(satline_saturated_vapor_enthalpy_j_kg(r, temperature_k, &of_vapor) == SATLINE_STATUS_OK);
    CHECK(satline_bubble_pressure_pa(&curves, temperature_k + 0.1, &above) == SATLINE_STATUS_OK);
    CHECK(satline_bubble_pressure_pa(&curves, temperature_k - 0.1, &below) == SATLINE_STATUS_OK);
    latent = temperature_k * (1 / vapor - 1 / liquid) * (above - below) / 0.2;
    CHECK(fabs(latent / (of_vapor - of_liquid) - 1) < 5e-5);
}

static void curves(void) {
    satline_refrigerant own = {0, 0};
    double from_full, from_object;
    CHECK(satline_full_curves(&SATLINE_R410A_FULL, &own) == SATLINE_STATUS_OK);
    CHECK(own.version == SATLINE_R410A.version && own.core == SATLINE_R410A.core);
    CHECK(satline_dew_temperature_k(&own, 914906.4, &from_full) == SATLINE_STATUS_OK);
    CHECK(satline_dew_temperature_k(&SATLINE_R410A, 914906.4, &from_object) == SATLINE_STATUS_OK);
    CHECK(from_full == from_object);
    own.core = 0;
    CHECK(satline_full_curves(0, &own) == SATLINE_STATUS_NULL_POINTER && own.core == 0);
    CHECK(satline_full_curves(&SATLINE_R410A_FULL, 0) == SATLINE_STATUS_NULL_POINTER);
}

/* The status is the expected one and nothing was written. */
#define REFUSED(expected, call)          \
    do {                                 \
        out = -7.0;                      \
        CHECK((call) == (expected));     \
        CHECK(out == -7.0);              \
    } while (0)

static void bad(int32_t (*function)(const satline_refrigerant_full *, double, double *)) {
    const satline_refrigerant_full zeroed = {0, 0};
    satline_refrigerant_full other = SATLINE_R448A_FULL;
    double lowest, highest, here;
    CHECK(satline_saturated_limits(&SATLINE_R448A_FULL, &lowest, &highest) == SATLINE_STATUS_OK);
    CHECK(lowest == 213.15 && highest > 340 && highest < 360);
    CHECK(function(&SATLINE_R448A_FULL, lowest, &here) == SATLINE_STATUS_OK);
    CHECK(function(&SATLINE_R448A_FULL, highest, &here) == SATLINE_STATUS_OK);
    CHECK(function(&other, highest, &out) == SATLINE_STATUS_OK && out == here);
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, function(&SATLINE_R448A_FULL, lowest - 1e-9, &out));
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, function(&SATLINE_R448A_FULL, highest + 1e-9, &out));
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, function(&SATLINE_R448A_FULL, -300.0, &out));
    REFUSED(SATLINE_STATUS_NOT_FINITE, function(&SATLINE_R448A_FULL, (double)NAN, &out));
    REFUSED(SATLINE_STATUS_NOT_FINITE, function(&SATLINE_R448A_FULL, (double)INFINITY, &out));
    REFUSED(SATLINE_STATUS_NULL_POINTER, function(0, 280.0, &out));
    REFUSED(SATLINE_STATUS_VERSION_MISMATCH, function(&zeroed, 280.0, &out));
    other.core = 0;
    REFUSED(SATLINE_STATUS_NULL_POINTER, function(&other, 280.0, &out));
    CHECK(function(&SATLINE_R448A_FULL, 280.0, 0) == SATLINE_STATUS_NULL_POINTER);
    lowest = highest = -7.0;
    CHECK(satline_saturated_limits(&zeroed, &lowest, &highest) == SATLINE_STATUS_VERSION_MISMATCH);
    CHECK(satline_saturated_limits(&SATLINE_R22_FULL, 0, &highest) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_saturated_limits(&SATLINE_R22_FULL, &lowest, 0) == SATLINE_STATUS_NULL_POINTER);
    CHECK(lowest == -7.0 && highest == -7.0);
}

int main(void) {
    published();
    clapeyron(&SATLINE_R134A_FULL, 280.0);
    clapeyron(&SATLINE_R22_FULL, 310.0);
    clapeyron(&SATLINE_R744_FULL, 270.0);
    clapeyron(&SATLINE_R717_FULL, 250.0);
    curves();
    bad(satline_saturated_liquid_density_kg_m3);
    bad(satline_saturated_vapor_density_kg_m3);
    bad(satline_saturated_liquid_enthalpy_j_kg);
    bad(satline_saturated_vapor_enthalpy_j_kg);
    return checks_report("saturated");
}
