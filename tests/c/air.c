/* Moist air, the air side of the coil and capacity from the refrigerant's side. Figures of the ASHRAE Handbook
 * Fundamentals 2017, chapter 1; the coil's examples from memory. */
#include "check.h"
#include <math.h>
#include <satline.h>

static satline_moist_air air;

static void moist_air(void) {
    double pressure = 0, flow = 0, actual = 0;
    CHECK(satline_standard_pressure_pa(1000, &pressure) == SATLINE_STATUS_OK && fabs(pressure - 89875) < 2);
    CHECK(satline_standard_pressure_pa(9000, &pressure) == SATLINE_STATUS_OUT_OF_RANGE && fabs(pressure - 89875) < 2);
    CHECK(satline_moist_air_init(&air, sizeof air) == SATLINE_STATUS_OK);
    /* 40 degrees Celsius dry, 20 wet bulb, sea level: a chart reading of the book. */
    CHECK(satline_moist_air_from_wet_bulb(313.15, 293.15, 101325, &air) == SATLINE_STATUS_OK);
    CHECK(fabs(air.humidity_ratio - 0.0065) < 1e-4 && fabs(air.enthalpy_j_kg - 56.7e3) < 300);
    CHECK(fabs(air.specific_volume_m3_kg - 0.896) < 5e-4 && fabs(air.relative_humidity - 0.14) < 5e-3);
    CHECK(air.defined == SATLINE_DEFINED_DEW_POINT && fabs(air.dew_point_k - 280.15) < 0.5);
    CHECK(air.wet_bulb_k == 293.15 && air.dry_bulb_k == 313.15 && air.pressure_pa == 101325);
    /* The other three measures give the same air. */
    {
        satline_moist_air again = air, by_dew = air, by_ratio = air;
        CHECK(satline_moist_air_from_relative_humidity(313.15, air.relative_humidity, 101325, &again) == SATLINE_STATUS_OK);
        CHECK(satline_moist_air_from_dew_point(313.15, air.dew_point_k, 101325, &by_dew) == SATLINE_STATUS_OK);
        CHECK(satline_moist_air_from_humidity_ratio(313.15, air.humidity_ratio, 101325, &by_ratio) == SATLINE_STATUS_OK);
        CHECK(fabs(again.wet_bulb_k - 293.15) < 1e-9 && fabs(by_dew.wet_bulb_k - 293.15) < 1e-9);
        CHECK(fabs(by_ratio.wet_bulb_k - 293.15) < 1e-9 && fabs(again.density_kg_m3 - air.density_kg_m3) < 1e-12);
    }
    CHECK(satline_standard_airflow_m3_s(0.5, &air, &flow) == SATLINE_STATUS_OK && flow < 0.5 && flow > 0.4);
    CHECK(satline_actual_airflow_m3_s(flow, &air, &actual) == SATLINE_STATUS_OK && fabs(actual - 0.5) < 1e-12);
    CHECK(satline_standard_airflow_m3_s(50, &air, &flow) == SATLINE_STATUS_OUT_OF_RANGE);
    CHECK(satline_standard_airflow_m3_s(0.5, 0, &flow) == SATLINE_STATUS_NULL_POINTER);
    /* Air without water has no dew point. */
    CHECK(satline_moist_air_from_humidity_ratio(300, 0, 101325, &air) == SATLINE_STATUS_OK);
    CHECK(air.defined == 0 && air.dew_point_k == 0 && air.wet_bulb_k > 280 && air.wet_bulb_k < 284);
}

#define REFUSED(expected, call)                                     \
    do {                                                            \
        air.dry_bulb_k = 77;                                        \
        CHECK((call) == (expected) && air.dry_bulb_k == 77);        \
    } while (0)

static void bad_air(void) {
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_moist_air_from_wet_bulb(300, 301, 101325, &air));
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_moist_air_from_wet_bulb(300, 275, 101325, &air));
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_moist_air_from_relative_humidity(300, 1.01, 101325, &air));
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_moist_air_from_relative_humidity(300, -0.01, 101325, &air));
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_moist_air_from_relative_humidity(300, 0.5, 14.7, &air));
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_moist_air_from_dew_point(300, 300.1, 101325, &air));
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_moist_air_from_humidity_ratio(300, 0.1, 101325, &air));
    REFUSED(SATLINE_STATUS_NOT_FINITE, satline_moist_air_from_humidity_ratio((double)NAN, 0.01, 101325, &air));
    CHECK(satline_moist_air_from_humidity_ratio(300, 0.01, 101325, 0) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_moist_air_init(&air, 8) == SATLINE_STATUS_BAD_STRUCT_SIZE);
    air.struct_size = 8;
    REFUSED(SATLINE_STATUS_BAD_STRUCT_SIZE, satline_moist_air_from_humidity_ratio(300, 0.01, 101325, &air));
}

static satline_coil_air coil;
static satline_coil_capacity capacity;
static satline_coil_airflow airflow;
static satline_apparatus_dew_point surface;
static satline_split split;

/* 30 degrees Celsius and 50 % enter, saturated air of 10 leaves. */
static void start(void) {
    CHECK(satline_coil_air_init(&coil, sizeof coil) == SATLINE_STATUS_OK);
    CHECK(satline_coil_capacity_init(&capacity, sizeof capacity) == SATLINE_STATUS_OK);
    CHECK(satline_coil_airflow_init(&airflow, sizeof airflow) == SATLINE_STATUS_OK);
    CHECK(satline_apparatus_dew_point_init(&surface, sizeof surface) == SATLINE_STATUS_OK);
    CHECK(satline_split_init(&split, sizeof split) == SATLINE_STATUS_OK);
    coil.entering_measure = coil.leaving_measure = SATLINE_HUMIDITY_RELATIVE;
    coil.entering_dry_bulb_k = 303.15;
    coil.entering_humidity = 0.5;
    coil.leaving_dry_bulb_k = 283.15;
    coil.leaving_humidity = 1;
}

static void the_coil(void) {
    start();
    /* The handbook's cooling coil: 5 m3/s, 5.70 kg/s, 197 kW with the condensate taken off. */
    CHECK(satline_coil_capacity_at(&coil, 5, 0.1, SATLINE_AIRFLOW_ENTERING, &capacity) == SATLINE_STATUS_OK);
    CHECK(fabs(capacity.dry_air_kg_s - 5.70) < 0.01 && fabs(capacity.coil_w - 197e3) < 1e3);
    CHECK(capacity.total_w == capacity.sensible_w + capacity.latent_w);
    /* Only the airflow is uncertain: everything by its 2 %, but not the ratio of heats. */
    CHECK(fabs(capacity.total_w_uncertainty / capacity.total_w - 0.02) < 1e-9);
    CHECK(capacity.defined == SATLINE_DEFINED_SENSIBLE_HEAT_RATIO && capacity.sensible_heat_ratio_uncertainty < 1e-9);
    CHECK(fabs(capacity.sensible_heat_ratio - capacity.sensible_w / capacity.total_w) < 1e-12);
    CHECK(satline_coil_airflow_from(&coil, SATLINE_HEAT_REFRIGERANT, capacity.coil_w + 500, 0, 500, 0, &airflow) == SATLINE_STATUS_OK);
    CHECK(fabs(airflow.entering_m3_s - 5) < 1e-9);
    CHECK(satline_coil_airflow_from(&coil, SATLINE_HEAT_SENSIBLE, capacity.sensible_w, 0, 0, 0, &airflow) == SATLINE_STATUS_OK);
    CHECK(fabs(airflow.dry_air_kg_s - capacity.dry_air_kg_s) < 1e-9);
    CHECK(satline_coil_airflow_from(&coil, SATLINE_HEAT_TOTAL, capacity.total_w, 0, 0, 0, &airflow) == SATLINE_STATUS_OK);
    CHECK(satline_coil_capacity_at(&coil, airflow.standard_m3_s, 0, SATLINE_AIRFLOW_STANDARD, &capacity) == SATLINE_STATUS_OK);
    CHECK(fabs(capacity.dry_air_kg_s - airflow.dry_air_kg_s) < 1e-9);
    CHECK(satline_coil_apparatus_dew_point(&coil, &surface) == SATLINE_STATUS_OK);
    CHECK(fabs(surface.temperature_k - 283.15) < 1e-9 && fabs(surface.bypass_factor) < 1e-9);
    /* Return 78 degrees Fahrenheit dry and 65 wet bulb asks for a split of 18.8 (from memory). */
    coil.entering_measure = SATLINE_HUMIDITY_WET_BULB;
    coil.entering_dry_bulb_k = 298.70555555555556;
    coil.entering_humidity = 291.48333333333335;
    coil.leaving_dry_bulb_k = 287.59444444444443;
    CHECK(satline_coil_split(&coil, &split) == SATLINE_STATUS_OK && split.defined == SATLINE_DEFINED_SPLIT_TARGET);
    CHECK(fabs(split.split_k - 20 / 1.8) < 1e-9 && fabs(split.target_k - 18.8 / 1.8) < 0.02);
    CHECK(fabs(split.deviation_k - (split.split_k - split.target_k)) < 1e-12);
    /* Strips: 10 kW from 20 to 40 degrees Celsius. By hand 10000 / (1.006 + 1.86 * .0058) / 20 = 0.4918 kg/s. */
    coil.entering_measure = SATLINE_HUMIDITY_RATIO;
    coil.entering_humidity = 0.0058;
    coil.entering_dry_bulb_k = 293.15;
    coil.leaving_dry_bulb_k = 313.15;
    CHECK(satline_coil_airflow_from(&coil, SATLINE_HEAT_HEATING, 9600, 100, 400, 0, &airflow) == SATLINE_STATUS_OK);
    CHECK(fabs(airflow.dry_air_kg_s - 0.4918) < 1e-4);
    CHECK(fabs(airflow.dry_air_kg_s_uncertainty / airflow.dry_air_kg_s - 0.01) < 1e-6);
}

static void bad_coil(void) {
    start();
    capacity.total_w = 77;
    CHECK(satline_coil_capacity_at(&coil, 50, 0, SATLINE_AIRFLOW_ENTERING, &capacity) == SATLINE_STATUS_OUT_OF_RANGE);
    CHECK(satline_coil_capacity_at(&coil, 1, -1, SATLINE_AIRFLOW_ENTERING, &capacity) == SATLINE_STATUS_OUT_OF_RANGE);
    CHECK(satline_coil_capacity_at(&coil, 1, 0, 9, &capacity) == SATLINE_STATUS_UNKNOWN_CHOICE);
    CHECK(satline_coil_capacity_at(0, 1, 0, SATLINE_AIRFLOW_ENTERING, &capacity) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_coil_capacity_at(&coil, 1, 0, SATLINE_AIRFLOW_ENTERING, 0) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_coil_airflow_from(&coil, 9, 5e3, 0, 0, 0, &airflow) == SATLINE_STATUS_UNKNOWN_CHOICE);
    CHECK(satline_coil_airflow_from(&coil, SATLINE_HEAT_HEATING, 5e3, 0, 0, 0, &airflow) == SATLINE_STATUS_NOT_AVAILABLE);
    coil.leaving_measure = SATLINE_HUMIDITY_NONE;
    CHECK(satline_coil_capacity_at(&coil, 1, 0, SATLINE_AIRFLOW_ENTERING, &capacity) == SATLINE_STATUS_NOT_AVAILABLE);
    coil.leaving_dry_bulb_k = 295.15;
    CHECK(satline_coil_apparatus_dew_point(&coil, &surface) == SATLINE_STATUS_NOT_AVAILABLE);
    coil.entering_measure = SATLINE_HUMIDITY_NONE;
    CHECK(satline_coil_split(&coil, &split) == SATLINE_STATUS_UNKNOWN_CHOICE);
    coil.entering_measure = 9;
    CHECK(satline_coil_split(&coil, &split) == SATLINE_STATUS_UNKNOWN_CHOICE);
    start();
    capacity.total_w = 77;
    capacity.struct_size = 8;
    CHECK(satline_coil_capacity_at(&coil, 1, 0, SATLINE_AIRFLOW_ENTERING, &capacity) == SATLINE_STATUS_BAD_STRUCT_SIZE);
    coil.struct_size = 8;
    CHECK(satline_coil_split(&coil, &split) == SATLINE_STATUS_BAD_STRUCT_SIZE);
    CHECK(capacity.total_w == 77);
}

/* NISTIR 7350, appendix D, test 2: 378.63 lb/h of R-410A; CoolProp gives 191.19 kJ/kg from liquid port to coil outlet. */
static void circuit(void) {
    satline_circuit c;
    satline_circuit_capacity found;
    const satline_refrigerant_full *r = &SATLINE_R410A_FULL;
    const double psi = 6894.757293168361;
    CHECK(satline_circuit_init(&c, sizeof c) == SATLINE_STATUS_OK && c.work_share == 0.9);
    CHECK(satline_circuit_capacity_init(&found, sizeof found) == SATLINE_STATUS_OK);
    c.suction_pressure_pa = 134.17 * psi;
    c.suction_temperature_k = (59.01 + 459.67) / 1.8;
    c.discharge_pressure_pa = 282.75 * psi;
    c.discharge_temperature_k = (133.51 + 459.67) / 1.8;
    c.liquid_pressure_pa = 273.34 * psi;
    c.liquid_temperature_k = (77.86 + 459.67) / 1.8;
    c.coil_outlet_pressure_pa = 136.44 * psi;
    c.coil_outlet_temperature_k = (55.54 + 459.67) / 1.8;
    c.mass_flow_kg_s = 378.63 * 0.45359237 / 3600;
    c.compressor_power_w = 1467.1;
    found.evaporator_w = 77;
    CHECK(satline_circuit_capacity_of(r, &c, &found) == SATLINE_STATUS_NOT_AVAILABLE && found.evaporator_w == 77);
    c.given = SATLINE_CIRCUIT_GIVEN_DISCHARGE | SATLINE_CIRCUIT_GIVEN_COIL_OUTLET | SATLINE_CIRCUIT_GIVEN_MASS_FLOW;
    CHECK(satline_circuit_capacity_of(r, &c, &found) == SATLINE_STATUS_OK);
    CHECK(fabs(found.evaporator_w / (c.mass_flow_kg_s * 191.19e3) - 1) < 0.003);
    CHECK((found.defined & SATLINE_CIRCUIT_DEFINED_COP) == 0 && found.cop == 0);
    CHECK((found.defined & SATLINE_CIRCUIT_DEFINED_CONDENSER_W) != 0);
    CHECK(fabs(found.condenser_w - found.evaporator_w - found.line_gain_w - found.gas_work_w) < 1e-6);
    c.given |= SATLINE_CIRCUIT_GIVEN_COMPRESSOR_POWER;
    CHECK(satline_circuit_capacity_of(r, &c, &found) == SATLINE_STATUS_OK);
    CHECK((found.defined & SATLINE_CIRCUIT_DEFINED_WORK_SHARE) != 0 && fabs(found.work_share - 0.822) < 0.005);
    CHECK(fabs(found.cop - found.evaporator_w / 1467.1) < 1e-9);
    c.mass_flow_kg_s_uncertainty = 0.01 * c.mass_flow_kg_s;
    CHECK(satline_circuit_capacity_of(r, &c, &found) == SATLINE_STATUS_OK);
    CHECK(fabs(found.evaporator_w_uncertainty / found.evaporator_w - 0.01) < 1e-6);
    found.evaporator_w = 77;
    c.liquid_temperature_k = 320;
    CHECK(satline_circuit_capacity_of(r, &c, &found) == SATLINE_STATUS_OUT_OF_RANGE);
    c.liquid_temperature_k = 298;
    c.suction_temperature_k = 275;
    CHECK(satline_circuit_capacity_of(r, &c, &found) == SATLINE_STATUS_NOT_AVAILABLE);
    CHECK(satline_circuit_capacity_of(0, &c, &found) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_circuit_capacity_of(r, 0, &found) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_circuit_capacity_of(r, &c, 0) == SATLINE_STATUS_NULL_POINTER);
    c.given = 16;
    CHECK(satline_circuit_capacity_of(r, &c, &found) == SATLINE_STATUS_UNKNOWN_CHOICE);
    c.struct_size = 8;
    CHECK(satline_circuit_capacity_of(r, &c, &found) == SATLINE_STATUS_BAD_STRUCT_SIZE && found.evaporator_w == 77);
}

int main(void) {
    moist_air();
    bad_air();
    the_coil();
    bad_coil();
    circuit();
    return checks_report("air");
}
