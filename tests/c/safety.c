/* Room limits, cylinders, recovery levels and cautions. Expected values by hand or from published rules, as named. */
#include "check.h"
#include <math.h>
#include <satline.h>

#define NEAR(value, expected, relative) CHECK(fabs((value) / (expected)-1.0) < (relative))

static satline_room room;
static satline_room_limit limit;

static void start(void) {
    CHECK(satline_room_init(&room, sizeof room) == SATLINE_STATUS_OK);
    CHECK(satline_room_limit_init(&limit, sizeof limit) == SATLINE_STATUS_OK);
}

static void rooms(void) {
    double charge = 77, area = 77;
    /* By hand: 2.5 times 0.307^1.25 = 0.22852, times 2.2 m and the root of 20 square metres. */
    CHECK(satline_largest_charge_kg(&SATLINE_R32, 20, 2.2, &charge) == SATLINE_STATUS_OK);
    NEAR(charge, 2.5 * 0.22852 * 2.2 * 4.472136, 2e-5);
    CHECK(satline_smallest_area_m2(&SATLINE_R32, charge, 2.2, &area) == SATLINE_STATUS_OK);
    NEAR(area, 20, 1e-12);
    start();
    room.installation = SATLINE_INSTALLATION_CEILING;
    room.area_m2 = 20;
    CHECK(satline_room_check(&SATLINE_R32, &room, &limit) == SATLINE_STATUS_OK);
    CHECK(limit.outcome == SATLINE_ROOM_OUTCOME_ROOM_LIMIT && limit.clause == SATLINE_ROOM_CLAUSE_UNVENTILATED_ROOM);
    CHECK(limit.largest_charge_kg == charge && limit.height_m == 2.2);
    CHECK(limit.given == (SATLINE_ROOM_GIVEN_FLAMMABILITY_LIMIT | SATLINE_ROOM_GIVEN_BANDS |
                          SATLINE_ROOM_GIVEN_LARGEST_CHARGE));
    CHECK((limit.assumptions >> SATLINE_ROOM_ASSUMPTION_EDITIONS_DIFFER & 1) == 1);
    CHECK(strstr(satline_room_assumption_sentence(SATLINE_ROOM_ASSUMPTION_EDITIONS_DIFFER), "local code") != 0);
    CHECK(strstr(satline_room_clause_sentence(limit.clause), "IEC 60335-2-40") != 0);
    /* Widely quoted, from memory: m1 of R-32 is 1.84 kg. */
    NEAR(limit.m1_kg, 1.84, 2e-3);
    room.charge_kg = 6;
    CHECK(satline_room_check(&SATLINE_R32, &room, &limit) == SATLINE_STATUS_OK);
    CHECK((limit.given & SATLINE_ROOM_GIVEN_WITHIN_LIMIT) != 0 && limit.within_limit == 0);
    CHECK((limit.given & SATLINE_ROOM_GIVEN_CONCENTRATION) != 0 && limit.exceeds_quarter == 1);
    NEAR(limit.concentration_kg_m3, 6 / 44.0, 1e-12);
    CHECK(limit.ceiling_height_m == 2.2 && limit.smallest_area_m2 > 20);
    room.charge_kg = 5;
    CHECK(satline_room_check(&SATLINE_R32, &room, &limit) == SATLINE_STATUS_OK && limit.within_limit == 1);
    room.charge_kg = 1;
    CHECK(satline_room_check(&SATLINE_R32, &room, &limit) == SATLINE_STATUS_OK);
    CHECK(limit.outcome == SATLINE_ROOM_OUTCOME_NO_ROOM_LIMIT && limit.smallest_area_m2 == 0);
    CHECK(satline_room_check(&SATLINE_R410A, &room, &limit) == SATLINE_STATUS_OK);
    CHECK(limit.outcome == SATLINE_ROOM_OUTCOME_NOT_APPLICABLE && limit.given == 0);
    CHECK(limit.reason == SATLINE_ROOM_REASON_DOES_NOT_BURN && limit.clause == SATLINE_ROOM_CLAUSE_NONE);
    room.ventilated = 1;
    CHECK(satline_room_check(&SATLINE_R290, &room, &limit) == SATLINE_STATUS_OK);
    CHECK(limit.reason == SATLINE_ROOM_REASON_VENTILATED);
}

#define REFUSED(expected, call)                                     \
    do {                                                            \
        limit.outcome = 77;                                         \
        CHECK((call) == (expected) && limit.outcome == 77);         \
    } while (0)

static void bad_rooms(void) {
    double value = 77;
    start();
    room.height_m = 1.8;
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_room_check(&SATLINE_R32, &room, &limit));
    room.area_m2 = 20;
    room.height_m = 0;
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_room_check(&SATLINE_R32, &room, &limit));
    room.height_m = 2.6;
    room.ceiling_height_m = 2.4;
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_room_check(&SATLINE_R32, &room, &limit));
    room.ceiling_height_m = -1;
    room.charge_kg = -2;
    REFUSED(SATLINE_STATUS_OUT_OF_RANGE, satline_room_check(&SATLINE_R32, &room, &limit));
    room.charge_kg = (double)NAN;
    REFUSED(SATLINE_STATUS_NOT_FINITE, satline_room_check(&SATLINE_R32, &room, &limit));
    room.charge_kg = -1;
    room.installation = 9;
    REFUSED(SATLINE_STATUS_UNKNOWN_CHOICE, satline_room_check(&SATLINE_R32, &room, &limit));
    room.installation = 0;
    room.ventilated = 2;
    REFUSED(SATLINE_STATUS_UNKNOWN_CHOICE, satline_room_check(&SATLINE_R32, &room, &limit));
    room.ventilated = 0;
    REFUSED(SATLINE_STATUS_NULL_POINTER, satline_room_check(0, &room, &limit));
    REFUSED(SATLINE_STATUS_NULL_POINTER, satline_room_check(&SATLINE_R32, 0, &limit));
    CHECK(satline_room_check(&SATLINE_R32, &room, 0) == SATLINE_STATUS_NULL_POINTER);
    room.struct_size = 8;
    REFUSED(SATLINE_STATUS_BAD_STRUCT_SIZE, satline_room_check(&SATLINE_R32, &room, &limit));
    CHECK(satline_room_init(&room, 12) == SATLINE_STATUS_BAD_STRUCT_SIZE);
    CHECK(satline_room_limit_init(&limit, 12) == SATLINE_STATUS_BAD_STRUCT_SIZE);
    CHECK(satline_room_init(0, sizeof room) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_largest_charge_kg(&SATLINE_R410A, 20, 2.2, &value) == SATLINE_STATUS_NOT_AVAILABLE);
    CHECK(satline_largest_charge_kg(&SATLINE_R32, 0, 2.2, &value) == SATLINE_STATUS_OUT_OF_RANGE);
    CHECK(satline_largest_charge_kg(&SATLINE_R32, 20, (double)INFINITY, &value) == SATLINE_STATUS_NOT_FINITE);
    CHECK(satline_smallest_area_m2(&SATLINE_R32, 1, 2.2, &value) == SATLINE_STATUS_NOT_AVAILABLE);
    CHECK(satline_smallest_area_m2(&SATLINE_R32, -3, 2.2, &value) == SATLINE_STATUS_OUT_OF_RANGE);
    CHECK(satline_smallest_area_m2(0, 3, 2.2, &value) == SATLINE_STATUS_NULL_POINTER && value == 77);
    CHECK(satline_smallest_area_m2(&SATLINE_R32, 3, 2.2, 0) == SATLINE_STATUS_NULL_POINTER);
}

static satline_cylinder cylinder;
static satline_cylinder_fill fill;

static void cylinders(void) {
    const satline_refrigerant_full *one[] = {&SATLINE_R32_FULL}, *two[] = {&SATLINE_R22_FULL, &SATLINE_R290_FULL};
    const satline_refrigerant_full *gas[] = {&SATLINE_R744_FULL}, *hole[] = {&SATLINE_R22_FULL, 0};
    const satline_refrigerant_full *many[17];
    double contents = 77, r32;
    size_t i;
    for (i = 0; i < 17; i++) many[i] = &SATLINE_R32_FULL;
    CHECK(satline_cylinder_init(&cylinder, sizeof cylinder) == SATLINE_STATUS_OK);
    CHECK(satline_cylinder_fill_init(&fill, sizeof fill) == SATLINE_STATUS_OK);
    cylinder.water_capacity_kg = 20;
    CHECK(satline_cylinder_check(one, 1, &cylinder, &fill) == SATLINE_STATUS_OK);
    /* R-32 at 77 degrees Fahrenheit: 961.0 kg/m3; full at 141.07 degrees Fahrenheit (computed apart, CoolProp). */
    NEAR(fill.limit_kg, 0.8 * 961.0 * 20 / 999.02, 1e-4);
    CHECK(fabs(fill.full_at_limit_k - (141.07 + 459.67) / 1.8) < 0.03 && fill.full_at_limit_at_least == 0);
    CHECK(fabs(fill.margin_at_limit_k - 11.07 / 1.8) < 0.03 && fill.rule == SATLINE_FILL_RULE_EIGHTY_PERCENT);
    CHECK(fill.verdict == 0 && fill.scale_limit_kg == 0 && fill.has_margin_now == 0);
    r32 = fill.limit_kg;
    CHECK(satline_cylinder_contents_kg(22.0, 12.0, &contents) == SATLINE_STATUS_OK && contents == 10);
    cylinder.tare_kg = 12;
    cylinder.contents_kg = contents;
    cylinder.temperature_k = 308.15;
    CHECK(satline_cylinder_check(one, 1, &cylinder, &fill) == SATLINE_STATUS_OK);
    CHECK(fill.verdict == SATLINE_FILL_VERDICT_ROOM_LEFT && fill.has_margin_now == 1 && fill.margin_now_k > 20);
    NEAR(fill.room_left_kg, r32 - 10, 1e-12);
    NEAR(fill.scale_limit_kg, r32 + 12, 1e-12);
    cylinder.contents_kg = 18.5;
    CHECK(satline_cylinder_check(one, 1, &cylinder, &fill) == SATLINE_STATUS_OK);
    CHECK(fill.verdict == SATLINE_FILL_VERDICT_FULL_OF_LIQUID && fill.margin_now_k < 0);
    CHECK(strstr(satline_fill_verdict_sentence(fill.verdict), "Keep people away") != 0);
    cylinder.temperature_k = 290;
    CHECK(satline_cylinder_check(one, 1, &cylinder, &fill) == SATLINE_STATUS_OK);
    CHECK(fill.verdict == SATLINE_FILL_VERDICT_OVERFILLED && fill.room_left_kg < 0 && fill.margin_k < 0);
    cylinder.contents_kg = -1;
    cylinder.temperature_k = -1;
    CHECK(satline_cylinder_check(two, 2, &cylinder, &fill) == SATLINE_STATUS_OK);
    /* Propane, about half as dense as R-22, decides: 492.4 kg/m3 (CoolProp). */
    NEAR(fill.limit_kg, 0.8 * 492.4 * 20 / 999.02, 1e-3);
    fill.rule = 77;
    CHECK(satline_cylinder_check(gas, 1, &cylinder, &fill) == SATLINE_STATUS_NOT_AVAILABLE);
    CHECK(satline_cylinder_check(hole, 2, &cylinder, &fill) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_cylinder_check(many, 17, &cylinder, &fill) == SATLINE_STATUS_OUT_OF_RANGE);
    CHECK(satline_cylinder_check(many, 0, &cylinder, &fill) == SATLINE_STATUS_OUT_OF_RANGE);
    CHECK(satline_cylinder_check(0, 1, &cylinder, &fill) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_cylinder_check(one, 1, 0, &fill) == SATLINE_STATUS_NULL_POINTER);
    cylinder.contents_kg = 40;
    CHECK(satline_cylinder_check(one, 1, &cylinder, &fill) == SATLINE_STATUS_OUT_OF_RANGE);
    cylinder.contents_kg = -1;
    cylinder.temperature_k = 150;
    CHECK(satline_cylinder_check(one, 1, &cylinder, &fill) == SATLINE_STATUS_OUT_OF_RANGE);
    cylinder.temperature_k = -1;
    cylinder.water_capacity_kg = (double)NAN;
    CHECK(satline_cylinder_check(one, 1, &cylinder, &fill) == SATLINE_STATUS_NOT_FINITE);
    cylinder.struct_size = 4;
    CHECK(satline_cylinder_check(one, 1, &cylinder, &fill) == SATLINE_STATUS_BAD_STRUCT_SIZE && fill.rule == 77);
    CHECK(satline_cylinder_check(many, 16, &cylinder, 0) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_cylinder_init(&cylinder, 4) == SATLINE_STATUS_BAD_STRUCT_SIZE);
    CHECK(satline_cylinder_fill_init(&fill, 4) == SATLINE_STATUS_BAD_STRUCT_SIZE);
    CHECK(satline_cylinder_contents_kg(11, 12, &contents) == SATLINE_STATUS_OUT_OF_RANGE && contents == 10);
}

static void recovery(void) {
    satline_recovery_level level;
    CHECK(satline_recovery_level_init(&level, sizeof level) == SATLINE_STATUS_OK);
    /* 40 CFR 82.156, table 1. */
    CHECK(satline_recovery_level_of(&SATLINE_R134A, 3, 101325, &level) == SATLINE_STATUS_OK);
    CHECK(level.appliance_class == SATLINE_APPLIANCE_CLASS_MEDIUM_PRESSURE && level.is_vacuum == 1);
    CHECK(level.vacuum_in_hg == 10 && level.is_large == 0 && fabs(level.pressure_pa - 67461) < 1);
    CHECK(level.gauge_pa == level.pressure_pa - 101325 && level.has_pressure_at_104_f == 1);
    CHECK((level.notes >> SATLINE_RECOVERY_NOTE_READ_THE_RULE & 1) == 1);
    CHECK(satline_recovery_level_of(&SATLINE_R123, 300, 101325, &level) == SATLINE_STATUS_OK);
    CHECK(level.appliance_class == SATLINE_APPLIANCE_CLASS_LOW_PRESSURE && level.is_vacuum == 0);
    CHECK(fabs(level.pressure_pa - 3333) < 1 && level.is_large == 1 && level.vacuum_in_hg == 0);
    level.notes = 77;
    CHECK(satline_recovery_level_of(&SATLINE_R22, -1, 101325, &level) == SATLINE_STATUS_OUT_OF_RANGE);
    CHECK(satline_recovery_level_of(&SATLINE_R22, 3, 0, &level) == SATLINE_STATUS_OUT_OF_RANGE);
    CHECK(satline_recovery_level_of(&SATLINE_R22, (double)NAN, 101325, &level) == SATLINE_STATUS_NOT_FINITE);
    CHECK(satline_recovery_level_of(0, 3, 101325, &level) == SATLINE_STATUS_NULL_POINTER);
    CHECK(satline_recovery_level_of(&SATLINE_R22, 3, 101325, 0) == SATLINE_STATUS_NULL_POINTER);
    level.struct_size = 1;
    CHECK(satline_recovery_level_of(&SATLINE_R22, 3, 101325, &level) == SATLINE_STATUS_BAD_STRUCT_SIZE);
    CHECK(level.notes == 77 && satline_recovery_level_init(&level, 1) == SATLINE_STATUS_BAD_STRUCT_SIZE);
}

static void cautions(void) {
    int32_t list[SATLINE_CAUTIONS], i;
    uint32_t count = 0, few = 0;
    int seen = 0;
    CHECK(satline_cautions_for(&SATLINE_R454B, SATLINE_SITUATION_CHARGING, list, SATLINE_CAUTIONS, &count) == SATLINE_STATUS_OK);
    CHECK(count > 4 && list[0] == SATLINE_SAFETY_CAUTION_MILDLY_FLAMMABLE);
    CHECK(list[count - 1] == SATLINE_SAFETY_CAUTION_LICENSED_PRACTICE);
    for (i = 0; i < (int32_t)count; i++) {
        seen |= list[i] == SATLINE_SAFETY_CAUTION_LIQUID_FROM_CYLINDER;
        CHECK(strlen(satline_safety_caution_sentence(list[i])) > 20);
    }
    CHECK(seen);
    CHECK(satline_cautions_for(0, SATLINE_SITUATION_CYLINDER, list, 1, &few) == SATLINE_STATUS_OK);
    CHECK(few == 1 && list[0] == SATLINE_SAFETY_CAUTION_UNCLASSIFIED);
    few = 77;
    CHECK(satline_cautions_for(&SATLINE_R32, 0, list, 24, &few) == SATLINE_STATUS_UNKNOWN_CHOICE);
    CHECK(satline_cautions_for(&SATLINE_R32, 1, 0, 24, &few) == SATLINE_STATUS_NULL_POINTER && few == 77);
    CHECK(satline_cautions_for(&SATLINE_R32, 1, list, 24, 0) == SATLINE_STATUS_NULL_POINTER);
}

int main(void) {
    rooms();
    bad_rooms();
    cylinders();
    recovery();
    cautions();
    return checks_report("safety");
}
