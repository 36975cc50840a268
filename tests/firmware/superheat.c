/* The smallest program: the C example's superheat on the board. Compiled for the host too, to compare the bits. */
#include "board.h"
#include <satline.h>

int32_t superheat_f(double psig, double line_f, double *superheat);

int run(void) {
    double superheat = 0;
    if (satline_check_abi(SATLINE_ABI_VERSION) != SATLINE_STATUS_OK) return 1;
    if (superheat_f(118.0, 62.0, &superheat) != SATLINE_STATUS_OK) return 1;
    put_bits("superheat_f_bits", superheat);
    return 0;
}
