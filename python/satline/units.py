"""Conversions between SI and the units on instruments.

Each name says both units, the new one first. One number gives a float, arrays give float64 arrays; a value outside
the accepted range of its quantity raises satline.OutOfRangeError. A temperature difference is not a temperature: the
functions for differences have the word in their name.
"""

from ._native import (
    ambient_pascal_from_inch_of_mercury,
    btu_h_from_watt,
    celsius_from_kelvin,
    cfm_from_m3_s,
    cfm_per_ton_from_m3_s_w,
    fahrenheit_difference_from_kelvin,
    fahrenheit_from_kelvin,
    kelvin_difference_from_fahrenheit,
    kelvin_from_celsius,
    kelvin_from_fahrenheit,
    kilogram_from_pound,
    m3_s_from_cfm,
    m3_s_w_from_cfm_per_ton,
    pascal_from_psia,
    pascal_from_psig,
    pound_from_kilogram,
    pressure_from_gauge_pa,
    psia_from_pascal,
    psig_from_pascal,
    ton_from_watt,
    watt_from_btu_h,
    watt_from_ton,
)

__all__ = [
    "ambient_pascal_from_inch_of_mercury",
    "btu_h_from_watt",
    "celsius_from_kelvin",
    "cfm_from_m3_s",
    "cfm_per_ton_from_m3_s_w",
    "fahrenheit_difference_from_kelvin",
    "fahrenheit_from_kelvin",
    "kelvin_difference_from_fahrenheit",
    "kelvin_from_celsius",
    "kelvin_from_fahrenheit",
    "kilogram_from_pound",
    "m3_s_from_cfm",
    "m3_s_w_from_cfm_per_ton",
    "pascal_from_psia",
    "pascal_from_psig",
    "pound_from_kilogram",
    "pressure_from_gauge_pa",
    "psia_from_pascal",
    "psig_from_pascal",
    "ton_from_watt",
    "watt_from_btu_h",
    "watt_from_ton",
]
