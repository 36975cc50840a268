/* Reads tests/data/vectors.csv (first argument) and compares every answer bit for bit. */
#include "check.h"
#include "vector.h"
#include <stdlib.h>

/* Splits a line at its commas, in place; gives the number of parts. */
static int split(char *line, char **part, int most) {
    int count = 0;
    for (part[count++] = line; *line && *line != '\n'; line++)
        if (*line == ',' && count < most) {
            *line = 0;
            part[count++] = line + 1;
        }
    *line = 0;
    return count;
}

int main(int argc, char **argv) {
    char line[400], shown[400];
    FILE *file = argc > 1 ? fopen(argv[1], "r") : 0;
    int rows = 0;
    if (!file) return 2;
    while (fgets(line, sizeof line, file)) {
        char *part[6];
        struct vector vector;
        if (line[0] == '#' || strncmp(line, "function,", 9) == 0) continue;
        strcpy(shown, line);
        rows++;
        if (split(line, part, 6) != 6) {
            CHECK(!"six columns");
            continue;
        }
        vector.function = part[0];
        vector.refrigerant = part[1];
        vector.argument[0] = strtoull(part[2], 0, 16);
        vector.argument[1] = strtoull(part[3], 0, 16);
        vector.status = (int32_t)strtol(part[4], 0, 10);
        vector.result = strtoull(part[5], 0, 16);
        if (vector_holds(&vector)) {
            checks_passed++;
        } else {
            checks_failed++;
            fprintf(stderr, "differs: %s", shown);
        }
        /* The comparison itself must notice one bit. */
        vector.result ^= 1;
        if (vector.status == SATLINE_STATUS_OK && rows % 20 == 1) CHECK(!vector_holds(&vector));
    }
    fclose(file);
    CHECK(rows >= 200);
    return checks_report("conformance");
}
