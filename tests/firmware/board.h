/* What the firmware tests need of the board: text out, and a count of instructions. */
#ifndef BOARD_H
#define BOARD_H
#include <stdint.h>

void put_text(const char *text);
/* name=decimal, or name=sixteen hexadecimal digits, and a new line. */
void put_number(const char *name, uint32_t value);
void put_bits(const char *name, double value);

/* The test. */
int run(void);
#endif
