/* For the check that a program carries only the refrigerants it names. */
#include <satline.h>

int main(void) {
    double out = 0;
    int32_t status = satline_dew_temperature_k(&SATLINE_R410A, 8e5, &out);
    return status == SATLINE_STATUS_OK ? satline_bubble_temperature_k(&SATLINE_R22, 8e5, &out) : status;
}
