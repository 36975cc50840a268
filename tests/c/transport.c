/* Viscosity, thermal conductivity and surface tension of full refrigerants. */
#include "check.h"
#include "satline.h"
#include <math.h>

static double value;

/* Saturated liquid (quality 0) or vapour (1): its density. */
static double density_kg_m3(const satline_refrigerant_full *r, double temperature_k, double quality) {
    satline_state state;
    CHECK(satline_state_init(&state, (uint32_t)sizeof state) == SATLINE_STATUS_OK);
    CHECK(satline_state_tq(r, temperature_k, quality, SATLINE_REFERENCE_IIR, &state) == SATLINE_STATUS_OK);
    return state.density_kg_m3;
}

/* Values of tests/data, with their sources: viscosity.csv, thermal_conductivity.csv, surface_tension.csv. */
static void published(void) {
    const satline_refrigerant_full *r = &SATLINE_R134A_FULL;
    CHECK(satline_viscosity_pa_s(r, 303.07, density_kg_m3(r, 303.07, 0.0), &value) == SATLINE_STATUS_OK);
    CHECK(fabs(value / 183.31e-6 - 1) < 0.15);
    CHECK(satline_viscosity_pa_s(r, 303.07, density_kg_m3(r, 303.07, 1.0), &value) == SATLINE_STATUS_OK);
    CHECK(fabs(value / 11.903e-6 - 1) < 0.15);
    CHECK(satline_thermal_conductivity_w_m_k(r, 293.15, density_kg_m3(r, 293.15, 0.0), &value) == SATLINE_STATUS_OK);
    CHECK(fabs(value / 83.3e-3 - 1) < 0.03);
    CHECK(satline_thermal_conductivity_w_m_k(r, 293.15, density_kg_m3(r, 293.15, 1.0), &value) == SATLINE_STATUS_OK);
    CHECK(fabs(value / 13.3e-3 - 1) < 0.05);
    CHECK(satline_thermal_conductivity_w_m_k(&SATLINE_R744_FULL, 250.0, 0.0, &value) == SATLINE_STATUS_OK);
    CHECK(fabs(value / 12.99e-3 - 1) < 4e-4);
    CHECK(satline_surface_tension_n_m(r, 298.15, &value) == SATLINE_STATUS_OK);
    CHECK(fabs(value - 8.1e-3) < 0.3e-3);
    CHECK(satline_surface_tension_n_m(r, 374.21, &value) == SATLINE_STATUS_OK);
    CHECK(value == 0.0);
}

static void errors_stated(void) {
    CHECK(satline_viscosity_error(&SATLINE_R454B_FULL, &value) == SATLINE_STATUS_OK);
    CHECK(value > 0.0 && value <= 0.3);
    CHECK(satline_thermal_conductivity_error(&SATLINE_R290_FULL, &value) == SATLINE_STATUS_OK);
    CHECK(value > 0.0 && value <= 0.1);
    CHECK(satline_surface_tension_error(&SATLINE_R32_FULL, &value) == SATLINE_STATUS_OK);
    CHECK(value > 0.0 && value <= 0.25);
}

/* The status is the expected one and the result is untouched. */
#define REFUSED(expected, call)      \
    do {                             \
        value = -7.0;                \
        CHECK((call) == (expected)); \
        CHECK(value == -7.0);        \
    } while (0)

static void refused(void) {
    const satline_refrigerant_full *pure = &SATLINE_R134A_FULL, *blend = &SATLINE_R454B_FULL;
    const satline_refrigerant_full zeroed = {0, 0};
    REFUSED(SATLINE_STATUS_NOT_AVAILABLE, satline_thermal_conductivity_w_m_k(blend, 300.0, 30.0, &value));
    REFUSED(SATLINE_STATUS_NOT_AVAILABLE, satline_thermal_conductivity_error(blend, &value));
    REFUSED(SATLINE_STATUS_NOT_AVAILABLE, satline_surface_tension_n_m(blend, 300.0, &value));
    REFUSED(SATLINE_STATUS_NOT_AVAILABLE, satline_surface_tension_error(blend, &value));
    REFUSED(SATLINE_STATUS_NOT_AVAILABLE, satline_thermal_conductivity_w_m_k(&SATLINE_R32_FULL, 300.0, 30.0, &value));
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_surface_tension_n_m(pure, 375.0, &value));
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_viscosity_pa_s(pure, 100.0, 1.0, &value));
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_viscosity_pa_s(pure, 300.0, -1.0, &value));
    /* Liquid and vapour together. */
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_viscosity_pa_s(pure, 300.0, 500.0, &value));
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_viscosity_pa_s(&SATLINE_R410A_FULL, 300.0, 400.0, &value));
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_thermal_conductivity_w_m_k(pure, 300.0, 500.0, &value));
    REFUSED(SATLINE_STATUS_NOT_FINITE, satline_viscosity_pa_s(pure, (double)NAN, 1.0, &value));
    REFUSED(SATLINE_STATUS_NOT_FINITE, satline_viscosity_pa_s(pure, 300.0, (double)INFINITY, &value));
    REFUSED(SATLINE_STATUS_NOT_FINITE, satline_thermal_conductivity_w_m_k(pure, 300.0, (double)NAN, &value));
    REFUSED(SATLINE_STATUS_NOT_FINITE, satline_surface_tension_n_m(pure, (double)NAN, &value));
    REFUSED(SATLINE_STATUS_NULL_POINTER, satline_viscosity_pa_s(0, 300.0, 1.0, &value));
    REFUSED(SATLINE_STATUS_NULL_POINTER, satline_surface_tension_error(0, &value));
    CHECK(satline_viscosity_pa_s(pure, 300.0, 1.0, 0) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_thermal_conductivity_w_m_k(pure, 300.0, 1.0, 0) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_surface_tension_n_m(pure, 300.0, 0) == SATLINE_STATUS_NULL_POINTER);
    REFUSED(SATLINE_STATUS_VERSION_MISMATCH, satline_viscosity_error(&zeroed, &value));
    REFUSED(SATLINE_STATUS_VERSION_MISMATCH, satline_thermal_conductivity_error(&zeroed, &value));
}

int main(void) {
    published();
    errors_stated();
    refused();
    return checks_report("transport");
}
