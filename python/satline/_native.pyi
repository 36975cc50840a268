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
from ._typing import Array, Floats, Number
from .units import *

__version__: Final[str]

def caution_sentences(refrigerant: Refrigerant | None, situation: str) -> list[str]: ...
def moist_air_parts(dry_bulb_k: Any, humidity: Any, pressure_pa: Any, measure: str) -> dict[str, Any]: ...
def circuit_capacity_parts(refrigerant: Refrigerant, given: list[bool], arguments: list[Any]) -> dict[str, Any]: ...
def coil_parts(question: str, measures: tuple[str, str | None], detail: str, arguments: list[Any]) -> dict[str, Any]: ...
def standard_airflow(
    airflow_m3_s: Any, dry_bulb_k: Any, humidity_ratio: Any, pressure_pa: Any, actual: bool
) -> dict[str, Any]: ...
def air_pressure(value: Any, of_altitude: bool) -> Any: ...
def check_reading(reading: str) -> str | None: ...
def cylinder_contents_kg(scale_kg: float, tare_kg: float) -> float: ...
def cylinder_fill_parts(
    refrigerants: list[Refrigerant],
    water_capacity_kg: float,
    masses: tuple[float | None, float | None],
    temperatures: tuple[float | None, float | None],
) -> dict[str, Any]: ...
def diagnose_text(reading: str, has_lines: bool) -> tuple[tuple[str, str, bool, bool], str, str, str]: ...
def error_table() -> list[tuple[int, str, str]]: ...
def installation_height_m(installation: str) -> float: ...
def largest_charge_kg(refrigerant: Refrigerant, area_m2: Number | Array, height_m: Number | Array) -> float | Floats: ...
def matches_parts(
    pressure_pa: float,
    temperature_k: float,
    pressure_uncertainty_pa: float | None,
    temperature_uncertainty_k: float | None,
) -> tuple[int, list[tuple[str, float, float, float, float, bool]]]: ...
def recovery_level_parts(
    refrigerant: Refrigerant, charge_kg: float, ambient_pressure_pa: float
) -> dict[str, Any]: ...
def room_limit_parts(
    refrigerant: Refrigerant,
    height_m: float,
    given: tuple[float | None, float | None],
    ceiling_height_m: float | None,
    ventilated: bool,
) -> dict[str, Any]: ...
def smallest_area_m2(refrigerant: Refrigerant, charge_kg: Number | Array, height_m: Number | Array) -> float | Floats: ...
def copper_tube_parts(
    sizes: tuple[float, float],
    temperature_k: float,
    temper: str,
    joint: str,
    design_gauge_pressure_pa: float | None,
    tolerances: tuple[float | None, float | None],
def decay_parts(
    times_s: list[float],
    pressures_pa: list[float],
    coldest_temperature_k: float,
    limits: tuple[
        float | None, float | None, float | None, float | None, float | None, float | None, float | None
    ],
def expected_nitrogen_pressure_pa(pressure_pa: Any, temperature_k: Any, later_temperature_k: Any) -> Any: ...
def frost_point_k(pressure_pa: Any) -> Any: ...
def line_drop_parts(
    upstream_k: float,
    downstream_k: float,
    flash: str,
    difference_uncertainty_k: float | None,
def nitrogen_density_kg_m3(pressure_pa: Any, temperature_k: Any) -> Any: ...
def pressure_test_parts(
    first: tuple[float, list[float]],
    last: tuple[float, list[float]],
    duration_s: float,
    low_side_design_pressure_pa: float,
    limits: tuple[float | None, float | None, float | None, float | None, float | None],
def water_saturation_pressure_pa(temperature_k: Any) -> Any: ...
def standing_check_parts(
    refrigerant: Refrigerant,
    pressure_pa: float,
    temperatures_k: list[float],
    liquid: str,
    limits: tuple[float | None, float | None, float | None],
) -> dict[str, Any]: ...
def reading_fields() -> list[tuple[str, float, float]]: ...
