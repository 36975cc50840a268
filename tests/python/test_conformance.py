"""The same bits as in every other language: tests/data/vectors.csv, through numbers and through arrays."""

import collections
import csv
import pathlib
import struct

import numpy as np
import pytest

import satline
from satline import _native

VECTORS = pathlib.Path(__file__).parents[1] / "data" / "vectors.csv"
NO_VALID_TEST = next(code for code, name, _ in _native.error_table() if name == "no-valid-test")


def number(text: str) -> float:
    return struct.unpack(">d", bytes.fromhex(text))[0]


def bits(value: float) -> str:
    return struct.pack(">d", value).hex()


def rows():
    with VECTORS.open(newline="", encoding="ascii") as file:
        return list(csv.DictReader(line for line in file if not line.startswith("#")))


ROWS = rows()


def function(row):
    if row["refrigerant"]:
        return getattr(satline.refrigerant(row["refrigerant"]), row["function"])
    return getattr(satline, row["function"], None) or getattr(satline.units, row["function"])


def arguments(row):
    return [number(row[name]) for name in ("argument_1", "argument_2") if row[name]]


def test_the_file_covers_what_it_should():
    found = collections.Counter(row["function"] for row in ROWS)
    assert set(found) >= {
        "bubble_pressure_pa",
        "dew_pressure_pa",
        "bubble_temperature_k",
        "dew_temperature_k",
        "superheat_k",
        "subcooling_k",
        "saturated_liquid_density_kg_m3",
        "saturated_vapor_density_kg_m3",
        "saturated_liquid_enthalpy_j_kg",
        "saturated_vapor_enthalpy_j_kg",
        "target_superheat_k",
        "target_split_k",
        "pressure_from_gauge_pa",
    }
    answered = {row["refrigerant"] for row in ROWS if int(row["status"]) == 0}
    assert answered - {""} == {r.designation for r in satline.refrigerants()}
    assert {int(row["status"]) for row in ROWS} >= {0, 1, 2, satline.UnknownRefrigerantError.code, NO_VALID_TEST}


@pytest.mark.parametrize("name", sorted({row["function"] for row in ROWS}))
def test_numbers(name):
    for row in ROWS:
        if row["function"] != name:
            continue
        status = int(row["status"])
        if status == 0:
            assert bits(function(row)(*arguments(row))) == row["result"], row
        elif status == NO_VALID_TEST:
            assert function(row)(*arguments(row)) is None, row
        else:
            with pytest.raises(satline.SatlineError) as caught:
                function(row)(*arguments(row))
            assert caught.value.code == status, row


@pytest.mark.parametrize("name", sorted({row["function"] for row in ROWS}))
def test_arrays(name):
    groups = collections.defaultdict(list)
    for row in ROWS:
        # An unknown refrigerant has no function to give arrays to.
        if row["function"] == name and int(row["status"]) != satline.UnknownRefrigerantError.code:
            groups[row["refrigerant"]].append(row)
    for group in groups.values():
        good = [row for row in group if int(row["status"]) in (0, NO_VALID_TEST)]
        columns = [np.array(column) for column in zip(*map(arguments, good), strict=True)]
        result = function(group[0])(*columns)
        blank = np.ma.getmaskarray(result).tolist()
        assert blank == [int(row["status"]) == NO_VALID_TEST for row in good]
        for row, value, hidden in zip(good, np.ma.getdata(result), blank, strict=True):
            assert hidden or bits(value) == row["result"], row
        # Every bad row alone among good ones: the error of that row, and its place.
        for row in (row for row in group if row not in good):
            bad = [np.append(column, argument) for column, argument in zip(columns, arguments(row), strict=True)]
            with pytest.raises(satline.SatlineError) as caught:
                function(row)(*bad)
            assert caught.value.code == int(row["status"]) and caught.value.index == (len(good),), row
