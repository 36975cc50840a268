/* For the check that a full refrigerant carries no other. */
#include <satline.h>

int main(void) {
    satline_state state;
    int32_t status = satline_state_init(&state, (uint32_t)sizeof state);
    return status == SATLINE_STATUS_OK ? satline_state_tp(&SATLINE_R410A_FULL, 300.0, 8e5, SATLINE_REFERENCE_IIR, &state) : status;
}
