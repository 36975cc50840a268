"""The compiled core. Users import satline and satline.units, whose stubs hold the types of what is public."""

from typing import Any, Final, final

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

@final
class Tube:
    """A tube of a line set; see satline.lineset."""

    def __new__(
        cls,
        name: str | None = None,
        /,
        *,
        temper: str | None = None,
        inside_diameter_m: float | None = None,
        outside_diameter_m: float | None = None,
        wall_m: float | None = None,
        inside_diameter_uncertainty_m: float | None = None,
    ) -> Tube: ...
    @property
    def name(self) -> str: ...
    @property
    def inside_diameter_m(self) -> float: ...
    @property
    def inside_diameter_uncertainty_m(self) -> float: ...
    @property
    def outside_diameter_m(self) -> float | None: ...
    @property
    def wall_m(self) -> float | None: ...
    @property
    def bore_area_m2(self) -> float: ...
    @property
    def roughness_m(self) -> float: ...

def charge_per_length(
    refrigerant: Refrigerant, tube: Tube, temperature_k: Number | Array, phase: str, pressure_pa: Number | Array | None
) -> float | Floats: ...
def line_set_charge_parts(
    refrigerant: Refrigerant,
    tubes: tuple[Tube, Tube, Tube | None, Tube | None],
    lengths: tuple[float, float, float | None, float, float],
    states: tuple[tuple[float, float | None], tuple[float, float | None], tuple[float | None, float | None]],
    device: tuple[str, float | None, float | None, float | None],
    extras: tuple[list[tuple[float, float]], tuple[float, float] | None, bool],
) -> dict[str, Any]: ...

def check_reading(reading: str) -> str | None: ...
def diagnose_text(reading: str, has_lines: bool) -> tuple[tuple[str, str, bool, bool], str, str, str]: ...
def error_table() -> list[tuple[int, str, str]]: ...
def matches_parts(
    pressure_pa: float,
    temperature_k: float,
    pressure_uncertainty_pa: float | None,
    temperature_uncertainty_k: float | None,
) -> tuple[int, list[tuple[str, float, float, float, float, bool]]]: ...
def standing_check_parts(
    refrigerant: Refrigerant,
    pressure_pa: float,
    temperatures_k: list[float],
    liquid: str,
    limits: tuple[float | None, float | None, float | None],
) -> dict[str, Any]: ...
def reading_fields() -> list[tuple[str, float, float]]: ...
