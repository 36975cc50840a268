/* The board's text interface on a host. */
#include "board.h"
#include <stdio.h>
#include <string.h>

void put_text(const char *text) { fputs(text, stdout); }
void put_number(const char *name, uint32_t value) { printf("%s=%u\n", name, (unsigned)value); }
void put_bits(const char *name, double value) {
    uint64_t bits;
    memcpy(&bits, &value, sizeof bits);
    printf("%s=%08x%08x\n", name, (unsigned)(bits >> 32), (unsigned)(bits & 0xffffffffu));
}

int main(void) { return run(); }
