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
def standing_check_parts(
    refrigerant: Refrigerant,
    pressure_pa: float,
    temperatures_k: list[float],
    liquid: str,
    limits: tuple[float | None, float | None, float | None],
) -> dict[str, Any]: ...
def reading_fields() -> list[tuple[str, float, float]]: ...
