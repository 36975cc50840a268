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

def moist_air_parts(dry_bulb_k: Any, humidity: Any, pressure_pa: Any, measure: str) -> dict[str, Any]: ...
def circuit_capacity_parts(refrigerant: Refrigerant, given: list[bool], arguments: list[Any]) -> dict[str, Any]: ...
def coil_parts(question: str, measures: tuple[str, str | None], detail: str, arguments: list[Any]) -> dict[str, Any]: ...
def standard_airflow(
    airflow_m3_s: Any, dry_bulb_k: Any, humidity_ratio: Any, pressure_pa: Any, actual: bool
) -> dict[str, Any]: ...
def air_pressure(value: Any, of_altitude: bool) -> Any: ...
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
def line_friction_factor(reynolds: Any, relative_roughness: Any) -> Any: ...
def line_lift(refrigerant: Refrigerant, height_m: Any, temperature_k: Any, pressure_pa: Any | None) -> dict[str, Any]: ...
def line_mass_flow(refrigerant: Refrigerant, arguments: list[Any]) -> dict[str, Any]: ...
def line_tube(name: str) -> tuple[float, float | None, float]: ...
def line_words() -> tuple[
    list[tuple[int, str, str]], list[tuple[int, str, str]], list[tuple[int, str, str]]
]: ...
def liquid_line_parts(
    refrigerant: Refrigerant,
    way: tuple[tuple[float, float | None, float | None], list[tuple[int, int]]],
    arguments: list[Any],
) -> dict[str, Any]: ...
def vapor_line_parts(
    refrigerant: Refrigerant,
    way: tuple[tuple[float, float | None, float | None], list[tuple[int, int]]],
    duty: tuple[str, bool],
    given: tuple[bool, bool, bool],
    clearance: float,
    arguments: list[Any],
) -> dict[str, Any]: ...
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
