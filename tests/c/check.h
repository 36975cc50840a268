/* Counts checks; each program ends with `return checks_report(name);`. */
#ifndef CHECK_H
#define CHECK_H
#include <stdio.h>
#include <string.h>

static int checks_passed, checks_failed;

#define CHECK(condition)                                                        \
    do {                                                                        \
        if (condition) {                                                        \
            checks_passed++;                                                    \
        } else {                                                                \
            checks_failed++;                                                    \
            fprintf(stderr, "%s:%d: %s\n", __FILE__, __LINE__, #condition);     \
        }                                                                       \
    } while (0)

#define CHECK_TEXT(given, expected)                                                                     \
    do {                                                                                                \
        const char *text_ = (given);                                                                    \
        if (strcmp(text_, expected) == 0) {                                                             \
            checks_passed++;                                                                            \
        } else {                                                                                        \
            checks_failed++;                                                                            \
            fprintf(stderr, "%s:%d: \"%s\" is not \"%s\"\n", __FILE__, __LINE__, text_, expected);      \
        }                                                                                               \
    } while (0)

static int checks_report(const char *name) {
    printf("%s: %d passed, %d failed\n", name, checks_passed, checks_failed);
    return checks_failed != 0 || checks_passed == 0;
}
#endif
