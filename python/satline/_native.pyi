"""The compiled core. Users import satline and satline.units, whose stubs hold the types of what is public."""

from typing import Any, Final

from . import (
    AfterLeak as AfterLeak,
    Refrigerant as Refrigerant,
    refrigerant as refrigerant,
    refrigerants as refrigerants,
    target_split_k as target_split_k,
    target_superheat_k as target_superheat_k,
)
from .units import *

__version__: Final[str]

def check_reading(reading: str) -> str | None: ...
def diagnose_text(reading: str, has_lines: bool) -> tuple[tuple[str, str, bool, bool], str, str, str]: ...
def error_table() -> list[tuple[int, str, str]]: ...
def matches_parts(
    pressure_pa: float,
    temperature_k: float,
    pressure_uncertainty_pa: float | None,
    temperature_uncertainty_k: float | None,
) -> tuple[int, list[tuple[str, float, float, float, float, bool]]]: ...
def copper_tube_parts(
    sizes: tuple[float, float],
    temperature_k: float,
    temper: str,
    joint: str,
    design_gauge_pressure_pa: float | None,
    tolerances: tuple[float | None, float | None],
) -> dict[str, Any]: ...
def decay_parts(
    times_s: list[float],
    pressures_pa: list[float],
    coldest_temperature_k: float,
    limits: tuple[
        float | None, float | None, float | None, float | None, float | None, float | None, float | None
    ],
) -> dict[str, Any]: ...
def expected_nitrogen_pressure_pa(pressure_pa: Any, temperature_k: Any, later_temperature_k: Any) -> Any: ...
def frost_point_k(pressure_pa: Any) -> Any: ...
def line_drop_parts(
    refrigerant: Refrigerant,
    upstream_k: float,
    downstream_k: float,
    flash: str,
    difference_uncertainty_k: float | None,
) -> dict[str, Any]: ...
def nitrogen_density_kg_m3(pressure_pa: Any, temperature_k: Any) -> Any: ...
def pressure_test_parts(
    first: tuple[float, list[float]],
    last: tuple[float, list[float]],
    duration_s: float,
    low_side_design_pressure_pa: float,
    limits: tuple[float | None, float | None, float | None, float | None, float | None],
) -> dict[str, Any]: ...
def water_saturation_pressure_pa(temperature_k: Any) -> Any: ...
def standing_check_parts(
    refrigerant: Refrigerant,
    pressure_pa: float,
    temperatures_k: list[float],
    liquid: str,
    limits: tuple[float | None, float | None, float | None],
) -> dict[str, Any]: ...
def reading_fields() -> list[tuple[str, float, float]]: ...
