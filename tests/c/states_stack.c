/* How deep a stack the functions of full refrigerants need: prints the deepest of all refrigerants, by painting. */
#define _POSIX_C_SOURCE 200809L
#include <pthread.h>
#include <satline.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { SIZE = 1 << 20, PAINT = 0xA5 };

static satline_uncertain known(double value) {
    satline_uncertain made;
    made.value = value;
    made.standard_uncertainty = 0.001 * value;
    return made;
}

/* Lines, a liquid that boils on its way too; the questions lie in static memory, as a caller's would not be ours. */
static void lines(const satline_refrigerant_full *r, int *answered) {
    static satline_liquid_line liquid;
    static satline_liquid_line_result of_liquid;
    static satline_vapor_line vapor;
    static satline_vapor_line_result of_vapor;
    double kelvin = 0;
    satline_state bubble, dew;
    satline_state_init(&bubble, (uint32_t)sizeof bubble);
    satline_state_init(&dew, (uint32_t)sizeof dew);
    if (satline_state_tq(r, 300.0, 0.0, SATLINE_REFERENCE_IIR, &bubble) != SATLINE_STATUS_OK) return;
    if (satline_state_tq(r, 280.0, 1.0, SATLINE_REFERENCE_IIR, &dew) != SATLINE_STATUS_OK) return;
    satline_liquid_line_init(&liquid, (uint32_t)sizeof liquid);
    satline_liquid_line_result_init(&of_liquid, (uint32_t)sizeof of_liquid);
    satline_vapor_line_init(&vapor, (uint32_t)sizeof vapor);
    satline_vapor_line_result_init(&of_vapor, (uint32_t)sizeof of_vapor);
    liquid.run.inside_diameter_m = vapor.run.inside_diameter_m = 0.0173;
    liquid.run.outside_diameter_m = vapor.run.outside_diameter_m = 0.0191;
    liquid.run.length_m = vapor.run.length_m = known(15);
    liquid.run.rise_m = vapor.run.rise_m = known(10);
    liquid.mass_flow_kg_s = vapor.mass_flow_kg_s = known(0.02);
    liquid.pressure_pa = known(bubble.pressure_pa);
    vapor.pressure_pa = known(dew.pressure_pa);
    vapor.temperature_k = known(290);
    vapor.from_air = 1;
    vapor.ambient_k = known(310);
    vapor.discharge_pressure_pa = 1.5 * bubble.pressure_pa;
    for (kelvin = 299.5; kelvin > 290; kelvin -= 4) {
        liquid.temperature_k = known(kelvin);
        liquid.temperature_k.standard_uncertainty = 0;
        liquid.pressure_pa.standard_uncertainty = 0;
        *answered += satline_liquid_line_follow(r, &liquid, &of_liquid) == SATLINE_STATUS_OK;
    }
    *answered += satline_vapor_line_follow(r, &vapor, &of_vapor) == SATLINE_STATUS_OK;
}

static void *work(void *argument) {
    /* All kinds of state, far from the critical point, close to it and above; of the pure and of six components. */
    const char *names[] = {"R-134a", "R-744", "R-410A", "R-448A", "R-470A"};
    const double pressures[] = {2e5, 9e5, 3e6, 5.2e6, 9e6};
    satline_state state;
    satline_circuit circuit;
    satline_circuit_capacity capacity;
    int *answered = argument;
    size_t i, k;
    satline_retrofit conditions;
    satline_retrofit_comparison comparison;
    const satline_refrigerant_full *old = 0;
    satline_state_init(&state, (uint32_t)sizeof state);
    satline_retrofit_init(&conditions, (uint32_t)sizeof conditions);
    satline_retrofit_comparison_init(&comparison, (uint32_t)sizeof comparison);
    satline_full_find("R-22", &old);
    conditions.condensing_at = SATLINE_RETROFIT_CONDENSING_AT_MEAN;
    conditions.evaporating_k = 265;
    conditions.condensing_k = 300;
    conditions.superheat_k = conditions.subcooling_k = 5;
    satline_circuit_init(&circuit, (uint32_t)sizeof circuit);
    satline_circuit_capacity_init(&capacity, (uint32_t)sizeof capacity);
    circuit.given = SATLINE_CIRCUIT_GIVEN_DISCHARGE | SATLINE_CIRCUIT_GIVEN_MASS_FLOW;
    circuit.mass_flow_kg_s = 0.05;
    circuit.suction_temperature_k = 300;
    circuit.discharge_temperature_k = 380;
    circuit.liquid_temperature_k = 285;
    circuit.suction_pressure_pa_uncertainty = 1e3;
    circuit.discharge_temperature_k_uncertainty = 0.1;
    for (i = 0; i < sizeof names / sizeof names[0]; i++) {
        const satline_refrigerant_full *r = 0;
        satline_full_find(names[i], &r);
        *answered += satline_compare_refrigerants(old, r, &conditions, &comparison) == SATLINE_STATUS_OK;
        lines(r, answered);
        for (k = 0; k < sizeof pressures / sizeof pressures[0]; k++) {
            *answered += satline_state_tp(r, 300.0, pressures[k], SATLINE_REFERENCE_IIR, &state) == SATLINE_STATUS_OK;
            *answered += satline_state_tp(r, 360.0, pressures[k], SATLINE_REFERENCE_IIR, &state) == SATLINE_STATUS_OK;
            *answered += satline_state_ph(r, pressures[k], 300e3, SATLINE_REFERENCE_IIR, &state) == SATLINE_STATUS_OK;
            *answered += satline_state_ps(r, pressures[k], 1.7e3, SATLINE_REFERENCE_IIR, &state) == SATLINE_STATUS_OK;
            circuit.suction_pressure_pa = pressures[k] / 3;
            circuit.discharge_pressure_pa = circuit.liquid_pressure_pa = pressures[k];
            *answered += satline_circuit_capacity_of(r, &circuit, &capacity) == SATLINE_STATUS_OK;
            *answered += satline_state_pq(r, pressures[k], 0.4, SATLINE_REFERENCE_IIR, &state) == SATLINE_STATUS_OK;
        }
    }
    return 0;
}

int main(void) {
    void *stack = 0;
    unsigned char *bytes;
    pthread_attr_t attributes;
    pthread_t thread;
    size_t untouched = 0;
    int answered = 0;
    if (posix_memalign(&stack, 4096, SIZE) != 0) return 1;
    bytes = stack;
    memset(bytes, PAINT, SIZE);
    if (pthread_attr_init(&attributes) != 0 || pthread_attr_setstack(&attributes, stack, SIZE) != 0) return 1;
    if (pthread_create(&thread, &attributes, work, &answered) != 0 || pthread_join(thread, 0) != 0) return 1;
    while (untouched < SIZE && bytes[untouched] == PAINT) untouched++;
    printf("%lu bytes of stack, %d answered\n", (unsigned long)(SIZE - untouched), answered);
    return answered < 60;
}
