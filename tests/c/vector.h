/* One conformance vector, as on a line of tests/data/vectors.csv; shared by the host's reader and the firmware. */
#ifndef VECTOR_H
#define VECTOR_H
#include <satline.h>

struct vector {
    const char *function;
    const char *refrigerant;
    uint64_t argument[2];
    int32_t status;
    uint64_t result;
};

/* 1 when the library gives the vector's status and, bit for bit, its result; 0 when not. A failure must also leave the
 * output as it was. */
int vector_holds(const struct vector *vector);
#endif
