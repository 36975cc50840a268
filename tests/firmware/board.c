/* Start-up and semihosting (Arm's documented interface: an operation in r0, its argument in r1, a breakpoint). */
#include "board.h"
#include <string.h>

extern uint32_t data_start, data_end, data_load, bss_start, bss_end, stack_top;
void reset(void);

static uint32_t semihost(uint32_t operation, const void *argument) {
    register uint32_t r0 __asm__("r0") = operation;
    register const void *r1 __asm__("r1") = argument;
    __asm__ volatile("bkpt 0xab" : "+r"(r0) : "r"(r1) : "memory");
    return r0;
}

static void leave(int failed) {
    /* 0x18: exit; 0x20026: the application ended; anything else: it failed. */
    semihost(0x18, (const void *)(uintptr_t)(failed ? 0x20023u : 0x20026u));
    for (;;) {
    }
}

static void fault(void) {
    put_text("fault\n");
    leave(1);
}

__attribute__((section(".vectors"), used)) static const void *const vectors[16] = {
    &stack_top,          (const void *)reset, (const void *)fault, (const void *)fault,
    (const void *)fault, (const void *)fault, (const void *)fault,
};

void reset(void) {
    /* Full access to the floating-point unit; the library is built for the hard-float calling convention. */
    *(volatile uint32_t *)0xE000ED88u |= 0xFu << 20;
    __asm__ volatile("dsb\n isb");
    memcpy(&data_start, &data_load, (size_t)((char *)&data_end - (char *)&data_start));
    memset(&bss_start, 0, (size_t)((char *)&bss_end - (char *)&bss_start));
    leave(run());
}

void put_text(const char *text) { semihost(4, text); }

void put_number(const char *name, uint32_t value) {
    char digits[12];
    char *at = digits + sizeof digits - 1;
    *at = 0;
    do {
        *--at = (char)('0' + value % 10);
        value /= 10;
    } while (value != 0);
    put_text(name);
    put_text("=");
    put_text(at);
    put_text("\n");
}

void put_bits(const char *name, double value) {
    char digits[17];
    uint64_t bits;
    int i;
    memcpy(&bits, &value, sizeof bits);
    for (i = 15; i >= 0; i--, bits >>= 4) digits[i] = "0123456789abcdef"[bits & 15];
    digits[16] = 0;
    put_text(name);
    put_text("=");
    put_text(digits);
    put_text("\n");
}
