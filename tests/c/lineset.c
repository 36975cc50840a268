/* Tubes and the charge for a line set. Bores are those of ASTM B280; charges per length were computed apart from this
 * library. */
#include "check.h"
#include <math.h>
#include <satline.h>

#define INCH 0.0254
#define OUNCES_PER_FOOT (0.028349523125 / 0.3048)
#define LIQUID_K 308.15     /* 95 degrees Fahrenheit */
#define LIQUID_PA 2514490.0 /* 350 psi gauge */
#define VAPOR_K 285.928     /* 55 degrees Fahrenheit */
#define VAPOR_PA 917222.0   /* dew at 45 degrees Fahrenheit */

static satline_line_set set;
static satline_line_set_charge charge;

static void tubes(void) {
    satline_tube tube = {77, 77, 77, 77};
    CHECK(satline_tube_find("3/8", 0, &tube) == SATLINE_STATUS_OK && fabs(tube.inside_diameter_m / INCH - 0.311) < 1e-9);
    CHECK(fabs(tube.wall_m / INCH - 0.032) < 1e-9 && tube.inside_diameter_uncertainty_m > 0);
    CHECK(satline_tube_find("3/8", SATLINE_TEMPER_DRAWN, &tube) == SATLINE_STATUS_OK);
    CHECK(fabs(tube.inside_diameter_m / INCH - 0.315) < 1e-9);
    CHECK(satline_tube_find("10x1", 0, &tube) == SATLINE_STATUS_OK && fabs(tube.inside_diameter_m - 0.008) < 1e-12);
    CHECK(satline_tube_from_inside_diameter_m(0.0079, &tube) == SATLINE_STATUS_OK && tube.outside_diameter_m == 0);
    CHECK(satline_tube_from_outside_diameter_m(0.01, 0.001, &tube) == SATLINE_STATUS_OK);
    tube.wall_m = 77;
    CHECK(satline_tube_find("3/7", 0, &tube) == SATLINE_STATUS_UNKNOWN_CHOICE);
    CHECK(satline_tube_find("3/8", 3, &tube) == SATLINE_STATUS_UNKNOWN_CHOICE);
    CHECK(satline_tube_find("2-1/8", SATLINE_TEMPER_ANNEALED, &tube) == SATLINE_STATUS_UNKNOWN_CHOICE);
    CHECK(satline_tube_find(0, 0, &tube) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_tube_find("3/8", 0, 0) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_tube_from_outside_diameter_m(0.01, 0.005, &tube) == SATLINE_STATUS_OUT_OF_RANGE);
    CHECK(satline_tube_from_inside_diameter_m((double)NAN, &tube) == SATLINE_STATUS_NOT_FINITE);
    CHECK(tube.wall_m == 77);
}

static void per_length(void) {
    satline_tube small, large;
    double exact = 77, compact = 77;
    CHECK(satline_tube_find("3/8", 0, &small) == SATLINE_STATUS_OK && satline_tube_find("3/4", 0, &large) == SATLINE_STATUS_OK);
    CHECK(satline_charge_per_length_kg_m(&SATLINE_R454B_FULL, &small, SATLINE_LINE_PHASE_LIQUID, LIQUID_K, LIQUID_PA, &exact)
          == SATLINE_STATUS_OK);
    CHECK(fabs(exact / OUNCES_PER_FOOT - 0.498) < 0.0015);
    CHECK(satline_compact_charge_per_length_kg_m(&SATLINE_R454B_FULL, &small, SATLINE_LINE_PHASE_LIQUID, LIQUID_K, LIQUID_PA,
                                                 &compact)
          == SATLINE_STATUS_OK);
    CHECK(fabs(compact / exact - 1) < 0.01 && compact != exact);
    CHECK(satline_charge_per_length_kg_m(&SATLINE_R454B_FULL, &large, SATLINE_LINE_PHASE_VAPOR, VAPOR_K, VAPOR_PA, &exact)
          == SATLINE_STATUS_OK);
    CHECK(fabs(exact / OUNCES_PER_FOOT - 0.072) < 0.0005);
    CHECK(satline_charge_per_length_kg_m(&SATLINE_R22_FULL, &large, SATLINE_LINE_PHASE_VAPOR, 280, -1, &exact)
          == SATLINE_STATUS_OK);
    exact = 77;
    CHECK(satline_charge_per_length_kg_m(&SATLINE_R454B_FULL, &small, 3, LIQUID_K, -1, &exact)
          == SATLINE_STATUS_UNKNOWN_CHOICE);
    CHECK(satline_charge_per_length_kg_m(&SATLINE_R454B_FULL, &small, SATLINE_LINE_PHASE_LIQUID, 330, LIQUID_PA, &exact)
          == SATLINE_STATUS_OUT_OF_RANGE);
    CHECK(satline_compact_charge_per_length_kg_m(&SATLINE_R454B_FULL, &small, SATLINE_LINE_PHASE_VAPOR, 270, VAPOR_PA, &exact)
          == SATLINE_STATUS_OUT_OF_RANGE);
    CHECK(satline_charge_per_length_kg_m(&SATLINE_R454B_FULL, 0, SATLINE_LINE_PHASE_LIQUID, LIQUID_K, -1, &exact)
          == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_charge_per_length_kg_m(0, &small, SATLINE_LINE_PHASE_LIQUID, LIQUID_K, -1, &exact)
          == SATLINE_STATUS_NULL_POINTER);
    CHECK(exact == 77);
}

/* 60 ft of 3/8 and 3/4 in, 15 ft covered (demo). */
static void start(double length_m) {
    CHECK(satline_line_set_init(&set, sizeof set) == SATLINE_STATUS_OK);
    CHECK(satline_line_set_charge_init(&charge, sizeof charge) == SATLINE_STATUS_OK);
    CHECK(satline_tube_find("3/8", 0, &set.liquid.tube) == SATLINE_STATUS_OK);
    CHECK(satline_tube_find("3/4", 0, &set.vapor.tube) == SATLINE_STATUS_OK);
    set.liquid.length_m = set.vapor.length_m = length_m;
    set.liquid.temperature_k = LIQUID_K;
    set.liquid.pressure_pa = LIQUID_PA;
    set.vapor.temperature_k = VAPOR_K;
    set.vapor.pressure_pa = VAPOR_PA;
    set.covered_length_m = 4.572;
}

static void line_set(void) {
    const double drier[] = {0.05, 0.02}, uncertain[] = {0.01, 0.0};
    const satline_refrigerant_full *r = &SATLINE_R454B_FULL;
    double full;
    start(18.288);
    CHECK(satline_charge_line_set(r, &set, 0, 0, 0, &charge) == SATLINE_STATUS_OK);
    CHECK(charge.action == SATLINE_LINE_SET_ACTION_ADD && charge.advice == SATLINE_LINE_SET_ADVICE_ASK_FOR_MAKERS_FIGURE);
    CHECK(fabs(charge.mass_kg / (45 * 0.570 * 0.028349523125) - 1) < 4e-3 && charge.mass_uncertainty_kg > 0.005);
    CHECK(charge.liquid.quality == -1 && fabs(charge.liquid.holds_kg * 0.75 - charge.liquid.beyond_kg) < 1e-12);
    CHECK((charge.cautions >> SATLINE_LINE_SET_CAUTION_FLAMMABLE_REFRIGERANT & 1) == 1);
    CHECK((charge.cautions >> SATLINE_LINE_SET_CAUTION_TOXIC_REFRIGERANT & 1) == 0);
    full = charge.mass_kg;
    CHECK(satline_charge_line_set(r, &set, drier, uncertain, 2, &charge) == SATLINE_STATUS_OK);
    CHECK(fabs(charge.mass_kg - full - 0.07) < 1e-12 && fabs(charge.accessories_uncertainty_kg - 0.01) < 1e-12);
    CHECK(satline_charge_line_set(r, &set, drier, 0, 1, &charge) == SATLINE_STATUS_OK);
    CHECK(charge.accessories_kg == 0.05 && charge.accessories_uncertainty_kg == 0);
    CHECK(satline_compact_charge_line_set(r, &set, 0, 0, 0, &charge) == SATLINE_STATUS_OK);
    CHECK(fabs(charge.mass_kg - full) < charge.mass_uncertainty_kg && charge.mass_kg != full);
    set.makers_charge_per_length_kg_m = 0.25 * OUNCES_PER_FOOT;
    CHECK(satline_charge_line_set(r, &set, 0, 0, 0, &charge) == SATLINE_STATUS_OK);
    CHECK(charge.advice == SATLINE_LINE_SET_ADVICE_FIGURES_DIFFER && fabs(charge.computed_kg - full) < 1e-12);
    start(3);
    CHECK(satline_charge_line_set(r, &set, 0, 0, 0, &charge) == SATLINE_STATUS_OK);
    CHECK(charge.action == SATLINE_LINE_SET_ACTION_RECOVER && charge.mass_kg < 0);
    CHECK(strstr(satline_line_set_action_sentence(charge.action), "Never vent") != 0);
    /* With the device outdoors the small line holds about a third. */
    start(18.288);
    CHECK(satline_charge_line_set(r, &set, 0, 0, 0, &charge) == SATLINE_STATUS_OK);
    full = charge.liquid.holds_kg;
    set.metering_place = SATLINE_METERING_PLACE_OUTDOOR;
    set.downstream_temperature_k = 281.15;
    CHECK(satline_charge_line_set(r, &set, 0, 0, 0, &charge) == SATLINE_STATUS_OK);
    CHECK(charge.liquid.holds_kg / full > 0.28 && charge.liquid.holds_kg / full < 0.42);
    CHECK(charge.liquid.quality > 0.1 && charge.liquid.quality < 0.3);
}

#define REFUSED(expected, call)                                     \
    do {                                                            \
        charge.action = 77;                                         \
        CHECK((call) == (expected) && charge.action == 77);         \
    } while (0)

static void bad(void) {
    const satline_refrigerant_full *r = &SATLINE_R454B_FULL;
    const double mass[17] = {0}, negative[] = {-1};
    start(-1.5);
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_charge_line_set(r, &set, 0, 0, 0, &charge));
    start((double)NAN);
    REFUSED(SATLINE_STATUS_NOT_FINITE, satline_charge_line_set(r, &set, 0, 0, 0, &charge));
    start(18.288);
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_charge_line_set(r, &set, mass, 0, 17, &charge));
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_charge_line_set(r, &set, negative, 0, 1, &charge));
    REFUSED(SATLINE_STATUS_NULL_POINTER, satline_charge_line_set(r, &set, 0, 0, 1, &charge));
    REFUSED(SATLINE_STATUS_NULL_POINTER, satline_charge_line_set(r, 0, 0, 0, 0, &charge));
    REFUSED(SATLINE_STATUS_NULL_POINTER, satline_charge_line_set(0, &set, 0, 0, 0, &charge));
    CHECK(satline_charge_line_set(r, &set, 0, 0, 0, 0) == SATLINE_STATUS_NULL_POINTER);
    set.metering_place = SATLINE_METERING_PLACE_OUTDOOR;
    REFUSED(SATLINE_STATUS_UNKNOWN_CHOICE, satline_charge_line_set(r, &set, 0, 0, 0, &charge));
    set.downstream_pressure_pa = 9e5;
    set.downstream_temperature_k = 280;
    REFUSED(SATLINE_STATUS_UNKNOWN_CHOICE, satline_charge_line_set(r, &set, 0, 0, 0, &charge));
    set.downstream_temperature_k = -1;
    set.downstream_pressure_pa = 2.6e6;
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_charge_line_set(r, &set, 0, 0, 0, &charge));
    set.metering_place = 9;
    REFUSED(SATLINE_STATUS_UNKNOWN_CHOICE, satline_charge_line_set(r, &set, 0, 0, 0, &charge));
    start(18.288);
    set.liquid.tube.wall_m = set.liquid.tube.outside_diameter_m;
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_charge_line_set(r, &set, 0, 0, 0, &charge));
    start(18.288);
    set.liquid.temperature_uncertainty_k = -2;
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_charge_line_set(r, &set, 0, 0, 0, &charge));
    start(18.288);
    set.struct_size = 8;
    REFUSED(SATLINE_STATUS_BAD_STRUCT_SIZE, satline_charge_line_set(r, &set, 0, 0, 0, &charge));
    start(18.288);
    charge.struct_size = 8;
    REFUSED(SATLINE_STATUS_BAD_STRUCT_SIZE, satline_charge_line_set(r, &set, 0, 0, 0, &charge));
    CHECK(satline_line_set_init(&set, 12) == SATLINE_STATUS_BAD_STRUCT_SIZE);
    CHECK(satline_line_set_init(0, sizeof set) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_line_set_charge_init(&charge, 12) == SATLINE_STATUS_BAD_STRUCT_SIZE);
}

int main(void) {
    tubes();
    per_length();
    line_set();
    bad();
    return checks_report("lineset");
}
