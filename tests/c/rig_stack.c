/* How deep a stack the rig needs: prints the deepest of mapping a refrigerant and the rest, by painting. */
#define _POSIX_C_SOURCE 200809L
#include <pthread.h>
#include <satline.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { SIZE = 1 << 22, PAINT = 0xA5 };
static satline_rig_map map;
static satline_rig_unit unit;
static satline_rig_motion motion;
static int done;

static void *mapping(void *argument) {
    (void)argument;
    satline_rig_map_init(&map, sizeof map);
    done += satline_rig_map_make(&SATLINE_R454B_FULL, &map) == SATLINE_STATUS_OK;
    return 0;
}

static void *working(void *argument) {
    static const satline_rig_conditions around = {308.15, 299.8, 292.6, 101325.0};
    static satline_rig_rating rating;
    static satline_rig_faults faults;
    static satline_rig_state state;
    (void)argument;
    satline_rig_unit_init(&unit, sizeof unit);
    satline_rig_motion_init(&motion, sizeof motion);
    satline_rig_rating_init(&rating, sizeof rating);
    satline_rig_faults_init(&faults, sizeof faults);
    satline_rig_state_init(&state, sizeof state);
    done += satline_rig_unit_make(&map, &rating, &unit) == SATLINE_STATUS_OK;
    done += satline_rig_solve(&unit, &around, &faults, &state) == SATLINE_STATUS_OK;
    done += satline_rig_motion_start(&unit, &around, &faults, SATLINE_RIG_START_SETTLED, 0, &motion) == SATLINE_STATUS_OK;
    faults.overcharge = 0.3;
    done += satline_rig_motion_step(&motion, 1, 1, &around, &faults, 1e-3, &state) == SATLINE_STATUS_OK;
    return 0;
}

static unsigned long depth(void *(*work)(void *)) {
    void *stack = 0;
    unsigned char *bytes;
    pthread_attr_t attributes;
    pthread_t thread;
    size_t untouched = 0;
    if (posix_memalign(&stack, 4096, SIZE) != 0) exit(1);
    bytes = stack;
    memset(bytes, PAINT, SIZE);
    if (pthread_attr_init(&attributes) != 0 || pthread_attr_setstack(&attributes, stack, SIZE) != 0) exit(1);
    if (pthread_create(&thread, &attributes, work, 0) != 0 || pthread_join(thread, 0) != 0) exit(1);
    while (untouched < SIZE && bytes[untouched] == PAINT) untouched++;
    return (unsigned long)(SIZE - untouched);
}

int main(void) {
    const unsigned long of_map = depth(mapping), of_rest = depth(working);
    printf("rig: %lu bytes of stack for a map, %lu for the rest\n", of_map, of_rest);
    return !(done == 5 && of_map < 524288 && of_rest < 32768);
}
