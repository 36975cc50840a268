/* Safety answers of demo questions, every number to the bit: compared between board and host. */
#include "board.h"
#include <satline.h>

static satline_room room;
static satline_room_limit limit;
static satline_recovery_level level;

int run(void) {
    int32_t cautions[SATLINE_CAUTIONS];
    uint32_t count, i;
    int32_t failed = satline_room_init(&room, sizeof room) | satline_room_limit_init(&limit, sizeof limit) |
                     satline_recovery_level_init(&level, sizeof level);
    room.installation = SATLINE_INSTALLATION_WALL;
    room.area_m2 = 9;
    room.charge_kg = 3;
    failed |= satline_room_check(&SATLINE_R454B, &room, &limit);
    failed |= satline_recovery_level_of(&SATLINE_R454B, 3, 84e3, &level);
    failed |= satline_cautions_for(&SATLINE_R454B, SATLINE_SITUATION_CHARGING, cautions, SATLINE_CAUTIONS, &count);
    if (failed) return 1;
    put_text(satline_room_outcome_sentence(limit.outcome));
    put_text("\n");
    put_number("room_reason", (uint32_t)limit.reason);
    put_number("within_limit", (uint32_t)limit.within_limit);
    put_number("assumptions", limit.assumptions);
    put_bits("largest_charge_kg", limit.largest_charge_kg);
    put_bits("smallest_area_m2", limit.smallest_area_m2);
    put_bits("share_of_limit", limit.share_of_limit);
    put_number("appliance_class", (uint32_t)level.appliance_class);
    put_bits("gauge_pa", level.gauge_pa);
    put_bits("pressure_at_104_f_pa", level.pressure_at_104_f_pa);
    for (i = 0; i < count; i++) put_number("caution", (uint32_t)cautions[i]);
    return 0;
}
