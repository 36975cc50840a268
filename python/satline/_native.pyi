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

def caution_sentences(refrigerant: Refrigerant | None, situation: str) -> list[str]: ...
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
def cylinder_contents_kg(scale_kg: float, tare_kg: float) -> float: ...
def cylinder_fill_parts(
    refrigerants: list[Refrigerant],
    water_capacity_kg: float,
    masses: tuple[float | None, float | None],
    temperatures: tuple[float | None, float | None],
def compare_refrigerants_parts(
    old: Refrigerant,
    new: Refrigerant,
    stated: tuple[float, float, float, float],
    condensing_at: str,
    options: tuple[
        float | None, float | None, float | None, float | None, float | None, float | None, float | None
    ],
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
def starting_charge_kg(
    old_charge_kg: float, old_charge_uncertainty_kg: float, charge_ratio: float, share: float | None
) -> tuple[float, float]: ...
def reading_fields() -> list[tuple[str, float, float]]: ...

_Pair = tuple[float, float]
_Told = tuple[_Pair | None, tuple[str, str] | None]
_Chart = tuple[str, tuple[str, list[float]], tuple[str, list[float]] | None, list[float]]

def air_resistance(
    drop: _Pair, clean: _Pair, airflows: tuple[_Pair, _Pair] | None, limit: float | None
) -> tuple[_Pair, _Pair, Any, bool]: ...
def airflow_by_plenum_pressure(measured: _Pair, operating: _Pair, during: _Pair) -> _Pair: ...
def airflow_cautions() -> list[str]: ...
def chart_cautions() -> list[str]: ...
def performance_cautions() -> list[str]: ...
def approach(line: _Pair, outdoor: _Pair) -> _Pair: ...
def blower_table(
    statics: list[float], taps: list[float], cells: list[float], power: bool, at: tuple[_Pair, float] | None
) -> _Told: ...
def charge_fault_effect(deviation: _Pair, indoor: _Pair, outdoor: _Pair) -> tuple[_Pair, _Pair, _Pair]: ...
def delivered(capacity: _Pair, expected: _Pair) -> _Pair: ...
def expected_capacity(
    nominal: float, wet_bulb: _Pair, outdoor: _Pair, shape: tuple[_Pair, _Pair, float] | None
) -> _Pair: ...
def fan_at_speed(
    airflow: _Pair, pressure: _Pair, power: _Pair, speed: _Pair, density: _Pair
) -> tuple[_Pair, _Pair, _Pair]: ...
def gain(
    before: tuple[_Pair, _Pair], after: tuple[_Pair, _Pair], shared: float
) -> tuple[_Pair, _Pair, _Pair, Any, str]: ...
def return_leakage(inside: _Pair, mixed: _Pair, outside: _Pair, limit: float | None) -> tuple[_Pair, Any]: ...
def target_grid_at(grid: _Chart, row: _Pair, column: _Pair | None) -> _Told: ...
def target_grid_check(grid: _Chart) -> None: ...
def target_grid_compare(
    grid: _Chart, measured: _Pair, row: _Pair, column: _Pair | None, tolerance: float
) -> tuple[Any, str, _Pair | None, _Told]: ...
def target_grid_from_text(json: str) -> tuple[_Chart, tuple[str, str, bool, bool]]: ...
def watts_per_airflow(power: _Pair, air: _Pair, limit: float | None) -> tuple[_Pair, _Pair, float, Any]: ...
