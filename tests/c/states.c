/* States of full refrigerants: good questions with values from outside the library, and bad ones. */
#include "check.h"
#include <math.h>
#include <satline.h>

static satline_state state;

static int32_t fresh(void) { return satline_state_init(&state, (uint32_t)sizeof state); }

static void handles(void) {
    const satline_refrigerant_full *found = 0;
    const char *designation = "";
    CHECK(satline_full_find("r410a", &found) == SATLINE_STATUS_OK && found == &SATLINE_R410A_FULL);
    CHECK(satline_full_find("R-1234ze(E)", &found) == SATLINE_STATUS_OK && found == &SATLINE_R1234ZEE_FULL);
    CHECK(satline_full_designation(found, &designation) == SATLINE_STATUS_OK);
    CHECK_TEXT(designation, "R-1234ze(E)");
    CHECK(satline_full_find("R-410", &found) == SATLINE_STATUS_UNKNOWN_REFRIGERANT && found == &SATLINE_R1234ZEE_FULL);
    CHECK(satline_full_find(0, &found) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_full_find("R-22", 0) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_full_designation(0, &designation) == SATLINE_STATUS_NULL_POINTER);
    CHECK(sizeof(satline_refrigerant_full) == sizeof(satline_refrigerant));
}

static void published(void) {
    /* ASHRAE Fundamentals, R-134a at 0 degrees Celsius (from memory): 200.00 and 398.60 kJ/kg, 1.7271 kJ/(kg K),
     * 292.80 kPa, 1294.8 kg/m3; half of the last digit. */
    const satline_refrigerant_full *r = &SATLINE_R134A_FULL;
    CHECK(fresh() == SATLINE_STATUS_OK && state.phase == 0);
    CHECK(satline_state_tq(r, 273.15, 0.0, SATLINE_REFERENCE_IIR, &state) == SATLINE_STATUS_OK);
    CHECK(fabs(state.enthalpy_j_kg - 200e3) < 1e-6 && fabs(state.entropy_j_kg_k - 1e3) < 1e-9);
    CHECK(fabs(state.density_kg_m3 - 1294.8) < 0.06 && fabs(state.pressure_pa - 292.80e3) < 6.0);
    CHECK(state.phase == SATLINE_PHASE_LIQUID && state.quality == 0.0);
    CHECK(state.defined == (SATLINE_DEFINED_HEAT_CAPACITIES | SATLINE_DEFINED_QUALITY));
    CHECK(satline_state_tq(r, 273.15, 1.0, SATLINE_REFERENCE_IIR, &state) == SATLINE_STATUS_OK);
    CHECK(fabs(state.enthalpy_j_kg - 398.60e3) < 11.0 && fabs(state.entropy_j_kg_k - 1727.1) < 0.11);
    /* The same state by ASHRAE's reference: the liquid at -40 degrees Celsius counts from zero. */
    CHECK(satline_state_tq(r, 233.15, 0.0, SATLINE_REFERENCE_ASHRAE, &state) == SATLINE_STATUS_OK);
    CHECK(fabs(state.enthalpy_j_kg) < 1e-6);
    CHECK(satline_state_pq(r, 101325.0, 0.0, SATLINE_REFERENCE_NBP, &state) == SATLINE_STATUS_OK);
    CHECK(fabs(state.enthalpy_j_kg) < 1e-6);
    /* R-134a boils at 247.076 K (Tillner-Roth and Baehr 1994, from memory). */
    CHECK(fabs(state.temperature_k - 247.076) < 7e-4);
}

/* A state found from two of its properties, and the same from two others. */
static void round_trips(const satline_refrigerant_full *r, double pressure_pa, double quality) {
    satline_state back;
    int32_t phase;
    CHECK(satline_state_init(&back, (uint32_t)sizeof back) == SATLINE_STATUS_OK && fresh() == SATLINE_STATUS_OK);
    CHECK(satline_state_pq(r, pressure_pa, quality, SATLINE_REFERENCE_IIR, &state) == SATLINE_STATUS_OK);
    phase = quality == 0.0 ? SATLINE_PHASE_LIQUID : quality == 1.0 ? SATLINE_PHASE_VAPOR : SATLINE_PHASE_TWO_PHASE;
    CHECK(state.phase == phase && state.defined & SATLINE_DEFINED_QUALITY);
    CHECK(satline_state_ph(r, pressure_pa, state.enthalpy_j_kg, SATLINE_REFERENCE_IIR, &back) == SATLINE_STATUS_OK);
    CHECK(fabs(back.temperature_k - state.temperature_k) < 1e-6 && fabs(back.density_kg_m3 / state.density_kg_m3 - 1) < 1e-7);
    CHECK(satline_state_ps(r, pressure_pa, state.entropy_j_kg_k, SATLINE_REFERENCE_IIR, &back) == SATLINE_STATUS_OK);
    CHECK(fabs(back.temperature_k - state.temperature_k) < 1e-6 && fabs(back.density_kg_m3 / state.density_kg_m3 - 1) < 1e-7);
}

static void two_phases(void) {
    const satline_refrigerant_full *r = &SATLINE_R448A_FULL;
    const double overall[] = {0.26, 0.26, 0.2, 0.21, 0.07}; /* ASHRAE 34 */
    double sum = 0;
    size_t i;
    round_trips(&SATLINE_R134A_FULL, 4e5, 0.4);
    round_trips(&SATLINE_R410A_FULL, 9e5, 0.2);
    round_trips(r, 9e5, 0.0);
    round_trips(r, 9e5, 1.0);
    round_trips(r, 9e5, 0.3);
    CHECK(state.component_count == 5 && state.quality == 0.3);
    CHECK(!(state.defined & SATLINE_DEFINED_HEAT_CAPACITIES) && state.specific_heat_j_kg_k == 0.0 && state.speed_of_sound_m_s == 0.0);
    for (i = 0; i < 5; i++) {
        CHECK(fabs(0.7 * state.liquid_mass_fraction[i] + 0.3 * state.vapor_mass_fraction[i] - overall[i]) < 1e-9);
        sum += state.vapor_mass_fraction[i];
    }
    CHECK(fabs(sum - 1) < 1e-12 && state.vapor_mass_fraction[0] > state.liquid_mass_fraction[0]);
    CHECK(state.vapor_mass_fraction[5] == 0.0);
    CHECK(satline_state_tp(r, 300.0, 5e5, SATLINE_REFERENCE_IIR, &state) == SATLINE_STATUS_OK);
    CHECK(state.phase == SATLINE_PHASE_VAPOR && state.defined == SATLINE_DEFINED_HEAT_CAPACITIES && state.quality == 0.0);
    CHECK(satline_state_tp(&SATLINE_R744_FULL, 320.0, 9e6, SATLINE_REFERENCE_IIR, &state) == SATLINE_STATUS_OK);
    CHECK(state.phase == SATLINE_PHASE_SUPERCRITICAL);
}

/* The status is the expected one and the state is untouched. */
#define REFUSED(expected, call)                                      \
    do {                                                             \
        satline_state before = state;                                \
        CHECK((call) == (expected));                                 \
        CHECK(memcmp(&before, &state, sizeof before) == 0);          \
    } while (0)

static void bad(void) {
    const satline_refrigerant_full *r = &SATLINE_R448A_FULL;
    const satline_refrigerant_full zeroed = {0, 0};
    satline_refrigerant_full other = SATLINE_R448A_FULL;
    double bubble, dew;
    CHECK(satline_state_init(&state, 8) == SATLINE_STATUS_BAD_STRUCT_SIZE);
    CHECK(satline_state_init(0, (uint32_t)sizeof state) == SATLINE_STATUS_NULL_POINTER);
    CHECK(fresh() == SATLINE_STATUS_OK);
    CHECK(satline_state_tq(r, 280.0, 0.0, SATLINE_REFERENCE_IIR, &state) == SATLINE_STATUS_OK);
    bubble = state.pressure_pa;
    CHECK(satline_state_tq(r, 280.0, 1.0, SATLINE_REFERENCE_IIR, &state) == SATLINE_STATUS_OK);
    dew = state.pressure_pa;
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_state_tp(r, 280.0, 0.5 * (bubble + dew), SATLINE_REFERENCE_IIR, &state));
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_state_tp(r, 100.0, 1e5, SATLINE_REFERENCE_IIR, &state));
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_state_tq(r, 280.0, 1.1, SATLINE_REFERENCE_IIR, &state));
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_state_pq(r, 1e8, 0.5, SATLINE_REFERENCE_IIR, &state));
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_state_ph(r, 1e6, 4e6, SATLINE_REFERENCE_IIR, &state));
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_state_ps(r, 1e6, -4e4, SATLINE_REFERENCE_IIR, &state));
    REFUSED(SATLINE_STATUS_NOT_FINITE, satline_state_ph(r, 1e6, (double)NAN, SATLINE_REFERENCE_IIR, &state));
    REFUSED(SATLINE_STATUS_NOT_FINITE, satline_state_tp(r, (double)INFINITY, 1e5, SATLINE_REFERENCE_IIR, &state));
    REFUSED(SATLINE_STATUS_UNKNOWN_CHOICE, satline_state_tp(r, 300.0, 1e5, 3, &state));
    REFUSED(SATLINE_STATUS_UNKNOWN_CHOICE, satline_state_tp(r, 300.0, 1e5, -1, &state));
    /* R-14 is above its critical temperature at 0 degrees Celsius; carbon dioxide is frozen at one atmosphere. */
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_state_tp(&SATLINE_R14_FULL, 300.0, 1e5, SATLINE_REFERENCE_IIR, &state));
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_state_tp(&SATLINE_R744_FULL, 300.0, 1e5, SATLINE_REFERENCE_NBP, &state));
    REFUSED(SATLINE_STATUS_NULL_POINTER, satline_state_tp(0, 300.0, 1e5, SATLINE_REFERENCE_IIR, &state));
    CHECK(satline_state_tp(r, 300.0, 1e5, SATLINE_REFERENCE_IIR, 0) == SATLINE_STATUS_NULL_POINTER);
    REFUSED(SATLINE_STATUS_VERSION_MISMATCH, satline_state_tp(&zeroed, 300.0, 1e5, SATLINE_REFERENCE_IIR, &state));
    other.core = 0;
    REFUSED(SATLINE_STATUS_NULL_POINTER, satline_state_tp(&other, 300.0, 1e5, SATLINE_REFERENCE_IIR, &state));
    other = SATLINE_R448A_FULL;
    CHECK(satline_state_tp(&other, 300.0, 1e5, SATLINE_REFERENCE_IIR, &state) == SATLINE_STATUS_OK);
    state.struct_size = 16;
    REFUSED(SATLINE_STATUS_BAD_STRUCT_SIZE, satline_state_tp(r, 300.0, 1e5, SATLINE_REFERENCE_IIR, &state));
}

int main(void) {
    handles();
    published();
    two_phases();
    bad();
    return checks_report("states");
}
