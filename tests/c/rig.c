/* The rig: a unit that meets its rating, faults that move it as they should, a motion that ends where it settles. */
#include "check.h"
#include <math.h>
#include <satline.h>

static satline_rig_map map;
static satline_rig_unit orifice, valve;
static satline_rig_motion motion;
static satline_rig_rating rating;
static satline_rig_faults none, faults;
static satline_rig_state healthy, state;
/* AHRI 210/240, condition A: 95 degrees Fahrenheit outdoors, 80/67 indoors. */
static const satline_rig_conditions rated = {308.15, 299.8166667, 292.5944444, 101325.0};

static void made(void) {
    double charge = 0;
    CHECK(satline_rig_map_init(&map, sizeof map) == SATLINE_STATUS_OK);
    CHECK(satline_rig_unit_init(&orifice, sizeof orifice) == SATLINE_STATUS_OK);
    CHECK(satline_rig_unit_init(&valve, sizeof valve) == SATLINE_STATUS_OK);
    CHECK(satline_rig_motion_init(&motion, sizeof motion) == SATLINE_STATUS_OK);
    CHECK(satline_rig_rating_init(&rating, sizeof rating) == SATLINE_STATUS_OK);
    CHECK(satline_rig_faults_init(&none, sizeof none) == SATLINE_STATUS_OK);
    CHECK(satline_rig_state_init(&healthy, sizeof healthy) == SATLINE_STATUS_OK);
    CHECK(satline_rig_state_init(&state, sizeof state) == SATLINE_STATUS_OK);
    /* Nothing works before the map is made. */
    CHECK(satline_rig_unit_make(&map, &rating, &valve) == SATLINE_STATUS_BAD_STRUCT_SIZE);
    CHECK(satline_rig_map_make(&SATLINE_R410A_FULL, &map) == SATLINE_STATUS_OK);
    CHECK(satline_rig_solve(&valve, &rated, &none, &state) == SATLINE_STATUS_BAD_STRUCT_SIZE);
    CHECK(satline_rig_unit_make(&map, &rating, &valve) == SATLINE_STATUS_OK);
    rating.device = SATLINE_RIG_DEVICE_SHORT_TUBE;
    CHECK(satline_rig_unit_make(&map, &rating, &orifice) == SATLINE_STATUS_OK);
    /* Common practice: 2 to 4 lb a ton. */
    CHECK(satline_rig_unit_nameplate_charge_kg(&orifice, &charge) == SATLINE_STATUS_OK);
    CHECK(charge > 3 * 0.9 && charge < 3 * 1.8);
}

static void at_rest_in_its_course(void) {
    CHECK(satline_rig_solve(&valve, &rated, &none, &healthy) == SATLINE_STATUS_OK);
    CHECK(fabs(healthy.capacity_w / rating.nominal_capacity_w - 1) < 0.01);
    CHECK(healthy.runs == 1 && healthy.valve_lift > 0 && healthy.valve_lift < 1);
    CHECK(healthy.subcooling_k > 4 && healthy.subcooling_k < 7);
    CHECK(fabs(healthy.sensible_capacity_w / healthy.capacity_w - 0.75) < 0.1);
    faults = none;
    faults.undercharge = 0.1;
    CHECK(satline_rig_solve(&valve, &rated, &faults, &state) == SATLINE_STATUS_OK);
    CHECK(state.subcooling_k < healthy.subcooling_k - 2 && state.capacity_w < healthy.capacity_w);
    CHECK(satline_rig_solve(&orifice, &rated, &none, &healthy) == SATLINE_STATUS_OK);
    CHECK(healthy.valve_lift == -1);
    CHECK(satline_rig_solve(&orifice, &rated, &faults, &state) == SATLINE_STATUS_OK);
    CHECK(state.superheat_k > healthy.superheat_k + 3 && state.suction_pressure_pa < healthy.suction_pressure_pa);
    faults = none;
    faults.restricted_condenser_air = 0.4;
    CHECK(satline_rig_solve(&orifice, &rated, &faults, &state) == SATLINE_STATUS_OK);
    CHECK(state.liquid_pressure_pa > healthy.liquid_pressure_pa + 1e5);
    faults = none;
    faults.low_indoor_airflow = 0.3;
    CHECK(satline_rig_solve(&orifice, &rated, &faults, &state) == SATLINE_STATUS_OK);
    CHECK(state.supply_dry_bulb_k < healthy.supply_dry_bulb_k && state.suction_pressure_pa < healthy.suction_pressure_pa);
}

static void in_time(void) {
    double charge = 0;
    int i;
    CHECK(satline_rig_unit_nameplate_charge_kg(&orifice, &charge) == SATLINE_STATUS_OK);
    CHECK(satline_rig_motion_start(&orifice, &rated, &none, SATLINE_RIG_START_AT_REST, charge, &motion) == SATLINE_STATUS_OK);
    CHECK(satline_rig_motion_step(&motion, 1, 0, &rated, &none, 0, &state) == SATLINE_STATUS_OK);
    CHECK(state.runs == 0 && state.mass_flow_kg_s == 0 && fabs(state.seconds - 1) < 1e-9);
    CHECK(fabs(state.suction_pressure_pa / state.liquid_pressure_pa - 1) < 1e-6);
    for (i = 0; i < 5400; i++)
        if (satline_rig_motion_step(&motion, 1, 1, &rated, &none, 0, &state) != SATLINE_STATUS_OK) break;
    CHECK(i == 5400 && state.runs == 1 && state.trip == SATLINE_RIG_TRIP_NONE);
    /* It comes to where the unit settles, with the charge that it began with. */
    CHECK(fabs(state.suction_pressure_pa / healthy.suction_pressure_pa - 1) < 1e-4);
    CHECK(fabs(state.superheat_k - healthy.superheat_k) < 0.02 && fabs(state.charge_kg / charge - 1) < 1e-6);
    /* 100 g charged in 100 s, and time to settle: superheat falls. */
    for (i = 0; i < 1000; i++)
        if (satline_rig_motion_step(&motion, 1, 1, &rated, &none, i < 100 ? 1e-3 : 0, &state) != SATLINE_STATUS_OK) break;
    CHECK(i == 1000 && fabs(state.charge_kg - charge - 0.1) < 1e-6);
    CHECK(state.superheat_k < healthy.superheat_k - 1);
}

#define REFUSED(expected, call)                                     \
    do {                                                            \
        state.trip = 77;                                            \
        CHECK((call) == (expected) && state.trip == 77);            \
    } while (0)

static void bad(void) {
    satline_rig_conditions around = rated;
    satline_rig_state zeros;
    memset(&zeros, 0, sizeof zeros);
    CHECK(satline_rig_solve(&valve, &rated, &none, &zeros) == SATLINE_STATUS_BAD_STRUCT_SIZE);
    CHECK(satline_rig_map_init(&map, 3) == SATLINE_STATUS_BAD_STRUCT_SIZE && map.made != 0);
    CHECK(satline_rig_map_init(0, sizeof map) == SATLINE_STATUS_NULL_POINTER);
    REFUSED(SATLINE_STATUS_NULL_POINTER, satline_rig_solve(0, &rated, &none, &state));
    REFUSED(SATLINE_STATUS_NULL_POINTER, satline_rig_solve(&valve, 0, &none, &state));
    REFUSED(SATLINE_STATUS_NULL_POINTER, satline_rig_solve(&valve, &rated, 0, &state));
    CHECK(satline_rig_solve(&valve, &rated, &none, 0) == SATLINE_STATUS_NULL_POINTER);
    around.outdoor_dry_bulb_k = 95;
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_rig_solve(&valve, &around, &none, &state));
    around.outdoor_dry_bulb_k = (double)NAN;
    REFUSED(SATLINE_STATUS_NOT_FINITE, satline_rig_solve(&valve, &around, &none, &state));
    around = rated;
    around.return_wet_bulb_k = 300.5;
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_rig_solve(&valve, &around, &none, &state));
    faults = none;
    faults.undercharge = 0.9;
    REFUSED(SATLINE_STATUS_NOT_AVAILABLE, satline_rig_solve(&valve, &rated, &faults, &state));
    faults.undercharge = -0.1;
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_rig_solve(&valve, &rated, &faults, &state));
    REFUSED(SATLINE_STATUS_UNKNOWN_CHOICE, satline_rig_motion_step(&motion, 1, 7, &rated, &none, 0, &state));
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_rig_motion_step(&motion, -1, 1, &rated, &none, 0, &state));
    CHECK(satline_rig_motion_start(&valve, &rated, &none, 9, 2, &motion) == SATLINE_STATUS_UNKNOWN_CHOICE);
    rating.device = 9;
    CHECK(satline_rig_unit_make(&map, &rating, &valve) == SATLINE_STATUS_UNKNOWN_CHOICE);
    rating.device = SATLINE_RIG_DEVICE_SHORT_TUBE;
    rating.nominal_capacity_w = 3;
    CHECK(satline_rig_unit_make(&map, &rating, &valve) == SATLINE_STATUS_OUT_OF_RANGE);
    /* R-14 is a gas in every air conditioner. */
    CHECK(satline_rig_map_make(&SATLINE_R14_FULL, &map) == SATLINE_STATUS_OUT_OF_RANGE);
}

int main(void) {
    made();
    at_rest_in_its_course();
    in_time();
    bad();
    return checks_report("rig");
}
