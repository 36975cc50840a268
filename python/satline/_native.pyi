"""The compiled core. Users import satline and satline.units, whose stubs hold the types of what is public."""

from typing import Any, Final, final

import numpy as np
import numpy.typing as npt

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

_Pair = tuple[float, float]
_Told = tuple[_Pair | None, tuple[str, str] | None]
_Asked = tuple[str | None, str | None, list[tuple[str, float]]]
_Chart = tuple[str, tuple[str, list[float]], tuple[str, list[float]] | None, list[float]]

@final
class FrameJudge:
    """Judges the rows of a frame; see satline.diagnose_frame."""

    def __new__(cls, told: _Asked) -> FrameJudge: ...
    @staticmethod
    def given(reading: str) -> tuple[list[str], bool]: ...
    def base(self, reading: str) -> int: ...
    def faulty_base(self, fault: str) -> int: ...
    def healthy(
        self,
        before: int,
        numbers: list[tuple[str, Floats]],
        bases: npt.NDArray[np.uintp],
        units: npt.NDArray[np.uintp],
        faults: list[tuple[int, str]],
    ) -> None: ...
    def judge(
        self,
        numbers: list[tuple[str, Floats]],
        bases: npt.NDArray[np.uintp],
        units: npt.NDArray[np.uintp],
        faults: list[tuple[int, str]],
    ) -> tuple[list[tuple[str, Any]], list[tuple[int, str]]]: ...

@final
class RigUnit:
    """A unit of the rig; see satline.rig."""

    def __new__(
        cls,
        refrigerant: Refrigerant,
        nominal_capacity_w: float,
        words: tuple[str, str, str, str, str],
        line_set: tuple[float, float],
        air_imbalance: float,
        extras: tuple[tuple[float, float], tuple[float, float, float]],
    ) -> RigUnit: ...
    @property
    def nameplate_charge_kg(self) -> float: ...
    @property
    def rated_subcooling_k(self) -> float | None: ...
    @property
    def design_airflow_m3_s(self) -> float: ...
    @property
    def design_mass_flow_kg_s(self) -> float: ...
    @property
    def line_diameters_m(self) -> tuple[float, float]: ...
    def solve(self, conditions: list[Any], faults: dict[str, Any]) -> RigState | dict[str, Any]: ...

@final
class RigState:
    """A state of a unit of the rig; see satline.rig."""

    def parts(self) -> dict[str, Any]: ...
    def reading(self, sensors: str, seed: int) -> tuple[dict[str, float], dict[str, dict[str, float | str]]]: ...

@final
class RigMotion:
    """A unit of the rig in time; see satline.rig."""

    def __new__(
        cls,
        unit: RigUnit,
        settled: bool,
        first: tuple[list[float], dict[str, float], float, bool],
        instruments: tuple[str, int],
    ) -> RigMotion: ...
    def step(self, seconds: float, given: tuple[list[float], dict[str, float], float, bool]) -> dict[str, Any]: ...
    def now(self) -> dict[str, Any]: ...
    def reading(self) -> tuple[dict[str, float], dict[str, dict[str, float | str]]]: ...
    def run(
        self,
        seconds: float,
        step: float,
        first: tuple[list[float], dict[str, float], float, bool],
        schedule: list[tuple[float, tuple[list[float], dict[str, float], float, bool]]],
        shown: bool,
    ) -> dict[str, Any]: ...

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

def air_pressure(value: Any, of_altitude: bool) -> Any: ...
def air_resistance(
    drop: _Pair, clean: _Pair, airflows: tuple[_Pair, _Pair] | None, limit: float | None
) -> tuple[_Pair, _Pair, Any, bool]: ...
def airflow_by_plenum_pressure(measured: _Pair, operating: _Pair, during: _Pair) -> _Pair: ...
def airflow_cautions() -> list[str]: ...
def approach(line: _Pair, outdoor: _Pair) -> _Pair: ...
def blower_table(
    statics: list[float], taps: list[float], cells: list[float], power: bool, at: tuple[_Pair, float] | None
) -> _Told: ...
def caution_sentences(refrigerant: Refrigerant | None, situation: str) -> list[str]: ...
def causes() -> list[str]: ...
def charge_account_parts(
    parts: tuple[_Pair, _Pair, _Pair],
    start: _Pair | None,
    weighings: list[_Pair],
    limits: tuple[float | None, float | None],
) -> dict[str, Any]: ...
def charge_fault_effect(deviation: _Pair, indoor: _Pair, outdoor: _Pair) -> tuple[_Pair, _Pair, _Pair]: ...
def charge_per_length(
    refrigerant: Refrigerant, tube: Tube, temperature_k: Number | Array, phase: str, pressure_pa: Number | Array | None
) -> float | Floats: ...
def chart_cautions() -> list[str]: ...
def check_reading(reading: str) -> str | None: ...
def circuit_capacity_parts(refrigerant: Refrigerant, given: list[bool], arguments: list[Any]) -> dict[str, Any]: ...
def coil_parts(question: str, measures: tuple[str, str | None], detail: str, arguments: list[Any]) -> dict[str, Any]: ...
def compare_refrigerants_parts(
    old: Refrigerant,
    new: Refrigerant,
    stated: tuple[float, float, float, float],
    condensing_at: str,
    options: tuple[
        float | None, float | None, float | None, float | None, float | None, float | None, float | None
    ],
) -> dict[str, Any]: ...
def copper_tube_parts(
    sizes: tuple[float, float],
    temperature_k: float,
    temper: str,
    joint: str,
    design_gauge_pressure_pa: float | None,
    tolerances: tuple[float | None, float | None],
) -> dict[str, Any]: ...
def cylinder_contents_kg(scale_kg: float, tare_kg: float) -> float: ...
def cylinder_fill_parts(
    refrigerants: list[Refrigerant],
    water_capacity_kg: float,
    masses: tuple[float | None, float | None],
    temperatures: tuple[float | None, float | None],
) -> dict[str, Any]: ...
def decay_parts(
    times_s: list[float],
    pressures_pa: list[float],
    coldest_temperature_k: float,
    limits: tuple[
        float | None, float | None, float | None, float | None, float | None, float | None, float | None
    ],
) -> dict[str, Any]: ...
def delivered(capacity: _Pair, expected: _Pair) -> _Pair: ...
def diagnose_text(
    reading: str, has_lines: bool, baseline: list[tuple[str, bool]], told: _Asked
) -> tuple[tuple[str, str, bool, bool], str, str, str]: ...
def error_table() -> list[tuple[int, str, str]]: ...
def expected_capacity(
    nominal: float, wet_bulb: _Pair, outdoor: _Pair, shape: tuple[_Pair, _Pair, float] | None
) -> _Pair: ...
def expected_charge(parts: tuple[_Pair, _Pair, _Pair]) -> _Pair: ...
def expected_nitrogen_pressure_pa(pressure_pa: Any, temperature_k: Any, later_temperature_k: Any) -> Any: ...
def fan_at_speed(
    airflow: _Pair, pressure: _Pair, power: _Pair, speed: _Pair, density: _Pair
) -> tuple[_Pair, _Pair, _Pair]: ...
def frost_point_k(pressure_pa: Any) -> Any: ...
def gain(
    before: tuple[_Pair, _Pair], after: tuple[_Pair, _Pair], shared: float
) -> tuple[_Pair, _Pair, _Pair, Any, str]: ...
def installation_height_m(installation: str) -> float: ...
def judge_heating_text(
    reading: str,
    has_lines: bool,
    extras: tuple[float | None, float | None, float | None, float | None],
    chart: tuple[_Chart, float] | None,
) -> tuple[str, str, str, list[tuple[str, str]]]: ...
def largest_charge_kg(refrigerant: Refrigerant, area_m2: Number | Array, height_m: Number | Array) -> float | Floats: ...
def leak_rate_parts(full_charge: _Pair, additions: list[tuple[float, _Pair]]) -> dict[str, Any]: ...
def line_drop_parts(
    refrigerant: Refrigerant,
    upstream_k: float,
    downstream_k: float,
    flash: str,
    difference_uncertainty_k: float | None,
) -> dict[str, Any]: ...
def line_friction_factor(reynolds: Any, relative_roughness: Any) -> Any: ...
def line_lift(refrigerant: Refrigerant, height_m: Any, temperature_k: Any, pressure_pa: Any | None) -> dict[str, Any]: ...
def line_mass_flow(refrigerant: Refrigerant, arguments: list[Any]) -> dict[str, Any]: ...
def line_set_charge_parts(
    refrigerant: Refrigerant,
    tubes: tuple[Tube, Tube, Tube | None, Tube | None],
    lengths: tuple[float, float, float | None, float, float],
    states: tuple[tuple[float, float | None], tuple[float, float | None], tuple[float | None, float | None]],
    device: tuple[str, float | None, float | None, float | None],
    extras: tuple[list[tuple[float, float]], tuple[float, float] | None, bool],
) -> dict[str, Any]: ...
def line_tube(name: str) -> tuple[float, float | None, float]: ...
def line_words() -> tuple[
    list[tuple[int, str, str]], list[tuple[int, str, str]], list[tuple[int, str, str]]
]: ...
def liquid_line_parts(
    refrigerant: Refrigerant,
    way: tuple[tuple[float, float | None, float | None], list[tuple[int, int]]],
    arguments: list[Any],
) -> dict[str, Any]: ...
def matches_parts(
    pressure_pa: float,
    temperature_k: float,
    pressure_uncertainty_pa: float | None,
    temperature_uncertainty_k: float | None,
) -> tuple[int, list[tuple[str, float, float, float, float, bool]]]: ...
def moist_air_parts(dry_bulb_k: Any, humidity: Any, pressure_pa: Any, measure: str) -> dict[str, Any]: ...
def nitrogen_density_kg_m3(pressure_pa: Any, temperature_k: Any) -> Any: ...
def performance_cautions() -> list[str]: ...
def pressure_test_parts(
    first: tuple[float, list[float]],
    last: tuple[float, list[float]],
    duration_s: float,
    low_side_design_pressure_pa: float,
    limits: tuple[float | None, float | None, float | None, float | None, float | None],
) -> dict[str, Any]: ...
VISIT_FORMAT: Final[str]

def visit_record_parts(text: str, has_lines: bool) -> tuple[bytes, bool]: ...
def refrigerant_fingerprint(refrigerant: Refrigerant) -> str: ...
def visit_steps() -> list[str]: ...
def reading_fields() -> list[tuple[str, float, float]]: ...
def recovery_level_parts(
    refrigerant: Refrigerant, charge_kg: float, ambient_pressure_pa: float
) -> dict[str, Any]: ...
def recovery_parts(
    expected: _Pair, cylinder_limit_kg: float, contents: tuple[_Pair, _Pair | None], tolerance: float | None
) -> dict[str, Any]: ...
def return_leakage(inside: _Pair, mixed: _Pair, outside: _Pair, limit: float | None) -> tuple[_Pair, Any]: ...
def room_limit_parts(
    refrigerant: Refrigerant,
    height_m: float,
    given: tuple[float | None, float | None],
    ceiling_height_m: float | None,
    ventilated: bool,
) -> dict[str, Any]: ...
def smallest_area_m2(refrigerant: Refrigerant, charge_kg: Number | Array, height_m: Number | Array) -> float | Floats: ...
def standard_airflow(
    airflow_m3_s: Any, dry_bulb_k: Any, humidity_ratio: Any, pressure_pa: Any, actual: bool
) -> dict[str, Any]: ...
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
def target_grid_at(grid: _Chart, row: _Pair, column: _Pair | None) -> _Told: ...
def target_grid_check(grid: _Chart) -> None: ...
def target_grid_compare(
    grid: _Chart, measured: _Pair, row: _Pair, column: _Pair | None, tolerance: float
) -> tuple[Any, str, _Pair | None, _Told]: ...
def target_grid_from_text(json: str) -> tuple[_Chart, tuple[str, str, bool, bool]]: ...
def vapor_line_parts(
    refrigerant: Refrigerant,
    way: tuple[tuple[float, float | None, float | None], list[tuple[int, int]]],
    duty: tuple[str, bool],
    given: tuple[bool, bool, bool],
    clearance: float,
    arguments: list[Any],
) -> dict[str, Any]: ...
def water_saturation_pressure_pa(temperature_k: Any) -> Any: ...
def watts_per_airflow(power: _Pair, air: _Pair, limit: float | None) -> tuple[_Pair, _Pair, float, Any]: ...
