/* The answers to good questions. Numbers come from outside the library, each with its source. */
#include "check.h"
#include <math.h>
#include <satline.h>

static double kelvin(double fahrenheit) { return (fahrenheit + 459.67) * 5.0 / 9.0; }

static double gauge(double psig) {
    double pressure = 0;
    CHECK(satline_pressure_from_gauge_pa(psig * 6894.757293168361, 101325.0, &pressure) == SATLINE_STATUS_OK);
    return pressure;
}

static void catalogue(void) {
    static const struct {
        const satline_refrigerant *handle;
        const char *designation, *loosely;
    } all[] = {
        {&SATLINE_R22, "R-22", "r22"},       {&SATLINE_R32, "R-32", "R 32"},      {&SATLINE_R125, "R-125", "r-125"},
        {&SATLINE_R134A, "R-134a", "R134A"}, {&SATLINE_R407C, "R-407C", "r407c"}, {&SATLINE_R410A, "R-410A", "r 410a"},
    };
    size_t i;
    for (i = 0; i < sizeof all / sizeof all[0]; i++) {
        const satline_refrigerant *found = 0;
        const char *designation = "";
        satline_limits limits;
        double lower = 0, back = 0, copied = 0;
        satline_refrigerant copy = *all[i].handle;
        CHECK(satline_refrigerant_find(all[i].designation, &found) == SATLINE_STATUS_OK && found == all[i].handle);
        CHECK(satline_refrigerant_find(all[i].loosely, &found) == SATLINE_STATUS_OK && found == all[i].handle);
        CHECK(satline_refrigerant_designation(found, &designation) == SATLINE_STATUS_OK);
        CHECK_TEXT(designation, all[i].designation);
        /* Within its limits a curve answers, at the limits too, and both ways agree within 20 microkelvin. */
        CHECK(satline_refrigerant_limits(found, &limits) == SATLINE_STATUS_OK);
        CHECK(satline_dew_pressure_pa(found, limits.lowest_dew_temperature_k, &lower) == SATLINE_STATUS_OK);
        CHECK(satline_dew_temperature_k(found, lower, &back) == SATLINE_STATUS_OK);
        CHECK(fabs(back - limits.lowest_dew_temperature_k) < 20e-6);
        CHECK(satline_bubble_pressure_pa(found, limits.highest_bubble_temperature_k, &lower) == SATLINE_STATUS_OK);
        CHECK(satline_bubble_temperature_k(found, limits.highest_bubble_pressure_pa, &back) == SATLINE_STATUS_OK);
        /* An exported object may be copied into the program. */
        CHECK(satline_dew_temperature_k(&copy, 3e5, &copied) == SATLINE_STATUS_OK);
        CHECK(satline_dew_temperature_k(found, 3e5, &back) == SATLINE_STATUS_OK && back == copied);
    }
}

static void r410a(void) {
    double value = 0, pressure = 0;
    /* Mixture model of Lemmon and Jacobsen (2004), computed apart from this library: R-410A bubble and dew pressure in
     * kPa at 0 and 40 degrees Celsius, printed digits. */
    CHECK(satline_bubble_pressure_pa(&SATLINE_R410A, 273.15, &value) == SATLINE_STATUS_OK && fabs(value - 800.70e3) < 10);
    CHECK(satline_dew_pressure_pa(&SATLINE_R410A, 273.15, &value) == SATLINE_STATUS_OK && fabs(value - 798.05e3) < 10);
    CHECK(satline_bubble_pressure_pa(&SATLINE_R410A, 313.15, &value) == SATLINE_STATUS_OK && fabs(value - 2425.6e3) < 100);
    CHECK(satline_dew_pressure_pa(&SATLINE_R410A, 313.15, &value) == SATLINE_STATUS_OK && fabs(value - 2418.7e3) < 100);
    /* The same model: 118 psig and 62.0 degrees Fahrenheit are 22.2 of superheat at sea level, 23.3 at 5280 ft, where
     * the standard atmosphere of ASHRAE Fundamentals 2017 chapter 1 is 83 436 Pa. */
    CHECK(satline_superheat_k(&SATLINE_R410A, kelvin(62.0), gauge(118.0), &value) == SATLINE_STATUS_OK);
    CHECK(fabs(value * 1.8 - 22.2) < 0.05);
    CHECK(satline_pressure_from_gauge_pa(118.0 * 6894.757293168361, 83436.0, &pressure) == SATLINE_STATUS_OK);
    CHECK(satline_superheat_k(&SATLINE_R410A, kelvin(62.0), pressure, &value) == SATLINE_STATUS_OK);
    CHECK(fabs(value * 1.8 - 23.3) < 0.05);
    /* Liquid present: negative, not clamped. */
    CHECK(satline_superheat_k(&SATLINE_R410A, kelvin(30.0), gauge(118.0), &value) == SATLINE_STATUS_OK && value < 0);
    CHECK(satline_subcooling_k(&SATLINE_R410A, 313.15 - 5.0, 2425.6e3, &value) == SATLINE_STATUS_OK);
    CHECK(fabs(value - 5.0) < 0.01);
}

static void targets(void) {
    double value = 0;
    /* California Title 24, appendix RA3.2, both tables from memory: 65 wet and 95 outdoors ask for 8.1 degrees
     * Fahrenheit of superheat; 78 dry and 65 wet for a split of 18.8. */
    CHECK(satline_target_superheat_k(kelvin(65.0), kelvin(95.0), &value) == SATLINE_STATUS_OK);
    CHECK(fabs(value * 1.8 - 8.1) < 1e-9);
    CHECK(satline_target_split_k(kelvin(78.0), kelvin(65.0), &value) == SATLINE_STATUS_OK);
    CHECK(fabs(value * 1.8 - 18.8) < 1e-9);
}

int main(void) {
    catalogue();
    r410a();
    targets();
    return checks_report("values");
}
