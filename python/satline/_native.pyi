"""The compiled core. Users import satline and satline.units, whose stubs hold the types of what is public."""

from typing import Final

from . import (
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
def reading_fields() -> list[tuple[str, float, float]]: ...
