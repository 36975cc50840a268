/* Lines: lift by hand, Moody's chart, a liquid and a suction line of R-454B, and refusals. */
#include "check.h"
#include <math.h>
#include <satline.h>

static satline_liquid_line liquid;
static satline_liquid_line_result of_liquid;
static satline_vapor_line vapor;
static satline_vapor_line_result of_vapor;

static satline_uncertain known(double value, double standard_uncertainty) {
    satline_uncertain made;
    made.value = value;
    made.standard_uncertainty = standard_uncertainty;
    return made;
}

static void run(satline_line_run *way, double inside_in, double outside_in, double rise_ft) {
    way->inside_diameter_m = inside_in * 0.0254;
    way->outside_diameter_m = outside_in * 0.0254;
    way->length_m = known(60 * 0.3048, 0.3);
    way->rise_m = known(rise_ft * 0.3048, 0.1);
    way->fittings[SATLINE_FITTING_LONG_ELBOW] = 4;
}

static void start(void) {
    CHECK(satline_liquid_line_init(&liquid, sizeof liquid) == SATLINE_STATUS_OK);
    CHECK(satline_liquid_line_result_init(&of_liquid, sizeof of_liquid) == SATLINE_STATUS_OK);
    CHECK(satline_vapor_line_init(&vapor, sizeof vapor) == SATLINE_STATUS_OK);
    CHECK(satline_vapor_line_result_init(&of_vapor, sizeof of_vapor) == SATLINE_STATUS_OK);
    /* R-454B, 60 ft of 3/8 and 3/4 in: liquid at 95 degrees Fahrenheit and 350 psig, 45 degrees dew and 10 more. */
    run(&liquid.run, 0.311, 0.375, 20);
    liquid.mass_flow_kg_s = known(0.0503, 0.0024);
    liquid.pressure_pa = known(2514490, 14e3);
    liquid.temperature_k = known(308.15, 0.5);
    run(&vapor.run, 0.680, 0.750, -20);
    vapor.mass_flow_kg_s = known(0.0503, 0.0024);
    vapor.pressure_pa = known(917222, 10e3);
    vapor.temperature_k = known(285.93, 0.5);
}

static void small_ones(void) {
    double value = 0;
    satline_uncertain flow = {0, 0}, capacity = known(10550, 500), t1 = known(308.15, 0), p1 = known(2514490, 0);
    satline_uncertain t2 = known(285.93, 0), p2 = known(917222, 0);
    CHECK(satline_friction_factor(500, 0, &value) == SATLINE_STATUS_OK && fabs(value - 64.0 / 500) < 1e-6);
    CHECK(satline_friction_factor(1e5, 0, &value) == SATLINE_STATUS_OK && fabs(value - 0.018) < 2e-4);
    CHECK(satline_friction_factor(0, 0, &value) == SATLINE_STATUS_OUT_OF_RANGE);
    CHECK(satline_friction_factor((double)NAN, 0, &value) == SATLINE_STATUS_NOT_FINITE);
    CHECK(satline_friction_factor(1e5, 0, 0) == SATLINE_STATUS_NULL_POINTER);
    /* 20 ft of that liquid weigh 8.2 psi. */
    CHECK(satline_lift_pressure_pa(&SATLINE_R454B_FULL, 6.096, 308.15, 2514490, &value) == SATLINE_STATUS_OK);
    CHECK(fabs(value / 6894.757 - 8.2) < 0.05);
    /* R-134a at 30 degrees Celsius, saturated: 1187.5 kg/m3 (ASHRAE Handbook Fundamentals, from memory). */
    CHECK(satline_lift_pressure_pa(&SATLINE_R134A_FULL, -2, 303.15, -1, &value) == SATLINE_STATUS_OK);
    CHECK(fabs(value / (-2 * 9.80665 * 1187.5) - 1) < 1e-4);
    CHECK(satline_lift_pressure_pa(&SATLINE_R134A_FULL, 999, 303.15, -1, &value) == SATLINE_STATUS_OUT_OF_RANGE);
    CHECK(satline_lift_pressure_pa(0, 1, 303.15, -1, &value) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_line_mass_flow_kg_s(&SATLINE_R454B_FULL, &capacity, &t1, &p1, &t2, &p2, &flow) == SATLINE_STATUS_OK);
    CHECK(fabs(flow.value - 0.0503) < 0.0005 && fabs(flow.standard_uncertainty / flow.value - 500.0 / 10550) < 1e-6);
    CHECK(satline_line_mass_flow_kg_s(&SATLINE_R454B_FULL, &capacity, &t2, &p2, &t1, &p1, &flow) == SATLINE_STATUS_OUT_OF_RANGE);
    CHECK(satline_line_mass_flow_kg_s(&SATLINE_R454B_FULL, 0, &t1, &p1, &t2, &p2, &flow) == SATLINE_STATUS_NULL_POINTER);
}

static void good(void) {
    start();
    CHECK(satline_liquid_line_follow(&SATLINE_R454B_FULL, &liquid, &of_liquid) == SATLINE_STATUS_OK);
    CHECK(of_liquid.given == 0 && fabs(of_liquid.lift_pa.value / 6894.757 - 8.2) < 0.05);
    CHECK(of_liquid.subcooling_left_k.value < of_liquid.subcooling_k.value && of_liquid.friction_pa.value > 0);
    CHECK((of_liquid.advice >> SATLINE_LINE_ADVICE_NOTHING & 1) == 1);
    CHECK((of_liquid.cautions >> SATLINE_LINE_CAUTION_FLAMMABLE_REFRIGERANT & 1) == 1);
    CHECK(fabs(of_liquid.drop_pa.value - of_liquid.friction_pa.value - of_liquid.lift_pa.value) < 10);
    liquid.temperature_k = known(316, 0.5);
    CHECK(satline_liquid_line_follow(&SATLINE_R454B_FULL, &liquid, &of_liquid) == SATLINE_STATUS_OK);
    CHECK(of_liquid.given == (SATLINE_LINE_GIVEN_FLASH | SATLINE_LINE_GIVEN_FLASH_SHARE));
    CHECK(of_liquid.flash_begins_m > 0 && of_liquid.flash_begins_m < 60 * 0.3048 && of_liquid.subcooling_left_k.value < 0);
    CHECK((of_liquid.advice >> SATLINE_LINE_ADVICE_FLASH_GAS_EXPECTED & 1) == 1);
    CHECK(strstr(satline_line_advice_sentence(SATLINE_LINE_ADVICE_FLASH_GAS_EXPECTED), "starves the coil") != 0);
    CHECK(strstr(satline_line_caution_sentence(SATLINE_LINE_CAUTION_OPEN_CIRCUIT), "recover the refrigerant") != 0);

    CHECK(satline_vapor_line_follow(&SATLINE_R454B_FULL, &vapor, &of_vapor) == SATLINE_STATUS_OK);
    CHECK(of_vapor.given == (SATLINE_LINE_GIVEN_DEW | SATLINE_LINE_GIVEN_CAPACITY) && of_vapor.lift_pa.value < 0);
    CHECK(of_vapor.dew_loss_k.value > 0.2 && of_vapor.capacity_loss.value > 0 && of_vapor.heat_w.value == 0);
    vapor.run.rise_m = known(6.096, 0.1);
    vapor.from_air = 1;
    vapor.ambient_k = known(308.15, 1);
    vapor.dew_point_k = 297;
    vapor.insulation_thickness_m = 0.0127;
    CHECK(satline_vapor_line_follow(&SATLINE_R454B_FULL, &vapor, &of_vapor) == SATLINE_STATUS_OK);
    CHECK((of_vapor.given & SATLINE_LINE_GIVEN_RISER) && (of_vapor.given & SATLINE_LINE_GIVEN_SURFACE));
    CHECK(!(of_vapor.given & SATLINE_LINE_GIVEN_SWEATS) && of_vapor.flow_over_least.value > 2);
    CHECK(of_vapor.heat_w.value > 50 && of_vapor.heat_w.value < 150);
    CHECK(fabs(of_vapor.outlet_superheat_k.value - of_vapor.inlet_superheat_k.value - of_vapor.superheat_rise_k.value) < 1e-9);
    {
        /* From the port back to the coil. */
        const double superheat = of_vapor.inlet_superheat_k.value;
        vapor.known_at = SATLINE_LINE_END_OUTLET;
        vapor.pressure_pa = of_vapor.outlet_pressure_pa;
        vapor.temperature_k = of_vapor.outlet_temperature_k;
        CHECK(satline_vapor_line_follow(&SATLINE_R454B_FULL, &vapor, &of_vapor) == SATLINE_STATUS_OK);
        CHECK(fabs(of_vapor.inlet_superheat_k.value - superheat) < 1e-3);
    }
}

#define REFUSED(expected)                                                                                            \
    do {                                                                                                             \
        of_liquid.reynolds = 77;                                                                                     \
        CHECK(satline_liquid_line_follow(&SATLINE_R454B_FULL, &liquid, &of_liquid) == (expected));                   \
        CHECK(of_liquid.reynolds == 77);                                                                             \
        start();                                                                                                     \
    } while (0)
#define VAPOR_REFUSED(expected)                                                                                      \
    do {                                                                                                             \
        of_vapor.reynolds = 77;                                                                                      \
        CHECK(satline_vapor_line_follow(&SATLINE_R454B_FULL, &vapor, &of_vapor) == (expected));                      \
        CHECK(of_vapor.reynolds == 77);                                                                              \
        start();                                                                                                     \
    } while (0)

static void bad(void) {
    start();
    liquid.run.rise_m = known(19, 0);
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE);
    liquid.temperature_k = known(330, 0);
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE);
    liquid.mass_flow_kg_s = known(0, 0);
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE);
    liquid.run.length_m = known(-1, 0);
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE);
    liquid.pressure_pa.standard_uncertainty = -1;
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE);
    liquid.run.fittings[15] = 1;
    REFUSED(SATLINE_STATUS_UNKNOWN_CHOICE);
    liquid.run.fittings[0] = 1;
    REFUSED(SATLINE_STATUS_UNKNOWN_CHOICE);
    liquid.run.outside_diameter_m = liquid.run.inside_diameter_m;
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE);
    liquid.heat_gain_w = known((double)INFINITY, 0);
    REFUSED(SATLINE_STATUS_NOT_FINITE);
    liquid.struct_size = 8;
    REFUSED(SATLINE_STATUS_BAD_STRUCT_SIZE);
    vapor.temperature_k = known(275, 0);
    VAPOR_REFUSED(SATLINE_STATUS_OUT_OF_RANGE);
    vapor.duty = 9;
    VAPOR_REFUSED(SATLINE_STATUS_UNKNOWN_CHOICE);
    vapor.known_at = 0;
    VAPOR_REFUSED(SATLINE_STATUS_UNKNOWN_CHOICE);
    vapor.from_air = 2;
    VAPOR_REFUSED(SATLINE_STATUS_UNKNOWN_CHOICE);
    vapor.from_air = 1;
    vapor.ambient_k = known(308.15, 1);
    vapor.run.outside_diameter_m = 0;
    VAPOR_REFUSED(SATLINE_STATUS_NOT_AVAILABLE);
    CHECK(satline_liquid_line_follow(0, &liquid, &of_liquid) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_liquid_line_follow(&SATLINE_R454B_FULL, 0, &of_liquid) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_liquid_line_follow(&SATLINE_R454B_FULL, &liquid, 0) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_vapor_line_follow(&SATLINE_R454B_FULL, &vapor, 0) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_vapor_line_init(&vapor, 4) == SATLINE_STATUS_BAD_STRUCT_SIZE);
    CHECK(satline_vapor_line_result_init(0, sizeof of_vapor) == SATLINE_STATUS_NULL_POINTER);
}

int main(void) {
    small_ones();
    good();
    bad();
    return checks_report("line_pressure");
}
