"""A frame of readings goes in, a frame of findings comes out: each row what satline.diagnose says of it, in its place."""

import json
import math
import pathlib

import numpy as np
import pandas
import pytest

import satline
from satline import _native

FIELDS = {name: (lower, upper) for name, lower, upper in _native.reading_fields()}
WORDS = {
    "refrigerant": ["R-410A", "R-22", "R-32"],
    "metering": ["fixed-orifice", "thermostatic-valve", "electronic-valve"],
    "metering_place": ["indoor", "outdoor"],
    "mode": ["cooling", "cooling", "cooling", "heating"],
    "compressor": ["single-speed", "two-stage", "variable"],
    "stage": ["low", "high", "maker-charging-mode"],
    "operation": ["steady", "steady", "pull-down", "defrost"],
    "refrigerant_condition": ["as-labelled", "as-labelled", "mixed"],
}
# Where an invented unit in cooling may stand; fields not named here lie anywhere in their range.
USUAL = {
    "outdoor_dry_bulb_k": (285.0, 318.0),
    "condenser_leaving_dry_bulb_k": (300.0, 325.0),
    "return_dry_bulb_k": (294.0, 303.0),
    "return_wet_bulb_k": (285.0, 297.0),
    "supply_dry_bulb_k": (281.0, 292.0),
    "supply_wet_bulb_k": (280.0, 290.0),
    "ambient_pressure_pa": (8e4, 1.02e5),
    "suction_pressure_pa": (5e5, 1.3e6),
    "suction_line_temperature_k": (275.0, 300.0),
    "liquid_pressure_pa": (1.5e6, 3.5e6),
    "liquid_line_temperature_k": (295.0, 318.0),
    "discharge_pressure_pa": (1.6e6, 3.7e6),
    "discharge_line_temperature_k": (325.0, 375.0),
    "minutes_since_change": (5.0, 60.0),
    "target_superheat_k": (3.0, 12.0),
    "target_subcooling_k": (3.0, 9.0),
}


def random_frame(rows: int, seed: int) -> dict[str, list]:
    """Readings in which every cell may be missing, some of them beyond what is accepted."""
    random = np.random.default_rng(seed)
    frame: dict[str, list] = {}
    for name, choices in WORDS.items():
        frame[name] = [str(random.choice(choices)) if random.random() < 0.7 else None for _ in range(rows)]
    for name, limits in FIELDS.items():
        lower, upper = USUAL.get(name, limits)
        frame[name] = [float(random.uniform(lower, upper)) if random.random() < 0.7 else math.nan for _ in range(rows)]
        if random.random() < 0.3:
            frame[name][int(random.integers(rows))] = 2.0 * limits[1] + 1.0
    return frame


def row(frame, index: int) -> dict:
    """One row as a mapping, without what was not measured."""
    cells = {name: column if isinstance(column, str) else column[index] for name, column in frame.items()}
    return {name: cell for name, cell in cells.items() if cell not in (None, "") and cell == cell}


def check_row(found, index: int, finding: satline.Finding) -> None:
    """Every column of a row against the finding, bit for bit."""
    answered = {name: column[index] for name, column in found.items()}

    def take(name, expected):
        cell = answered.pop(name)
        same = math.isnan(cell) if isinstance(expected, float) and math.isnan(expected) else cell == expected
        assert same, f"{name}: {cell} is not {expected}"

    def known(value):
        return math.nan if value is None else value

    take("error", "")
    for name in ("charge", "charge_status", "reason", "conclusion_reason", "next_check", "advice", "fits"):
        take(name, getattr(finding, name))
    causes = finding.conclusion
    take("conclusion", causes if isinstance(causes, str) else "+".join(causes) or "healthy")
    take("preconditions_not_met", "+".join(one.name for one in finding.preconditions if one.status == "not-met"))
    take("cautions", "+".join(finding.cautions))
    take("protocol_action", finding.protocol.action)
    take("protocol_reason", finding.protocol.reason or "")
    take("protocol_split", finding.protocol.split)
    for cause in ["healthy", *_native.causes()]:
        take(f"p_{cause.replace('-', '_')}", known(finding.probability(cause)))
    amount = finding.amount
    take("amount_share", amount.share if amount else math.nan)
    take("amount_share_uncertainty", amount.standard_uncertainty if amount else math.nan)
    take("amount_lowest_share", amount.lowest if amount else math.nan)
    take("amount_highest_share", amount.highest if amount else math.nan)
    take("amount_mass_kg", known(amount.mass_kg) if amount else math.nan)
    take("amount_bound", amount.bound if amount else "")
    for name in ("superheat", "subcooling"):
        value = finding.values.get(f"{name}_k")
        take(f"{name}_bound", value.bound if value else "")
    for name in [name for name in answered if "_uncertainty" not in name]:
        unit = next(unit for unit in ("_m3_s_w", "_k") if name.endswith(unit))
        value = finding.values.get(name)
        take(name, value.value if value else math.nan)
        take(f"{name.removesuffix(unit)}_uncertainty{unit}", value.standard_uncertainty if value else math.nan)
    assert answered == {} and set(finding.values) <= set(found)


def check_fault(found, index: int) -> None:
    """A row that is no reading says why, and nothing else."""
    assert found["error"][index]
    for name, column in found.items():
        if name == "fits":
            assert not column[index]
        elif name != "error":
            assert column[index] == "" or math.isnan(column[index]), name


@pytest.mark.parametrize("seed", range(6))
def test_every_row_is_what_diagnose_says(seed):
    frame = random_frame(60, seed)
    found = satline.diagnose_frame(frame)
    outcomes = set()
    for index in range(60):
        try:
            finding = satline.diagnose(row(frame, index))
        except satline.SatlineError:
            check_fault(found, index)
            outcomes.add("error")
        else:
            check_row(found, index, finding)
            outcomes.add(finding.charge)
    assert len(outcomes) >= 2 and "error" in outcomes


def demo() -> list[dict]:
    path = pathlib.Path(__file__).parents[2] / "core" / "examples" / "demo_school.json"
    return json.loads(path.read_text(encoding="utf-8"))


def in_si(reading: dict) -> dict:
    """A reading with strings as one in SI, by satline.units."""
    si = {name: value for name, value in reading.items() if name in WORDS}
    ambient = 101_325.0
    if "altitude" in reading:
        si["altitude_m"] = float(reading["altitude"].split()[0]) * 0.3048
        ambient *= (1.0 - 2.25577e-5 * si["altitude_m"]) ** 5.2559  # the standard atmosphere, as in satline.air
    convert = {
        "degF": satline.units.kelvin_from_fahrenheit,
        "psig": lambda value: satline.units.pascal_from_psig(value, ambient),
        "cfm": satline.units.m3_s_from_cfm,
        "ton": satline.units.watt_from_ton,
        "min": float,
    }
    for name in reading.keys() - {"label", "note", "demo", "altitude", *WORDS}:
        value, unit = reading[name].split()
        field = next(field for field in FIELDS if field in (name, *(name + unit for unit in ("_k", "_pa", "_m3_s", "_w"))))
        difference = field.startswith("target_")
        si[field] = satline.units.kelvin_difference_from_fahrenheit(float(value)) if difference else convert[unit](float(value))
    return si


def test_the_demo_school_as_a_frame():
    readings = demo()
    rows = [in_si(reading) for reading in readings]
    names = sorted({name for one in rows for name in one})
    frame = {name: [one.get(name) for one in rows] for name in names}
    frame["label"] = [reading["label"] for reading in readings]
    found = satline.diagnose_frame(frame)
    assert found["label"].tolist() == frame.pop("label")
    del found["label"]
    for index, (reading, one) in enumerate(zip(readings, rows, strict=True)):
        check_row(found, index, satline.diagnose(one))
        assert found["charge"][index] == satline.diagnose(reading).charge
    assert len(set(found["charge"])) >= 3


def test_bad_rows_keep_their_place_and_name_field_value_and_limits():
    rows = 70_003  # more than are judged at a time
    pressures = np.full(rows, 9e5)
    wet_bulbs = np.full(rows, 290.0)
    modes = np.full(rows, "cooling", dtype=object)
    pressures[[0, 65_535, 65_536]] = [-1.0, 9e9, math.inf]
    wet_bulbs[70_002] = 29.0
    modes[65_537] = "warming"
    frame = {"refrigerant": "R-410A", "suction_pressure_pa": pressures, "return_wet_bulb_k": wet_bulbs, "mode": modes}
    found = satline.diagnose_frame(frame)
    assert all(len(column) == rows for column in found.values())
    bad = np.flatnonzero(found["error"] != "").tolist()
    assert bad == [0, 65_535, 65_536, 65_537, 70_002]
    for index, words in zip(
        bad,
        [
            ["suction_pressure_pa", "-1 Pa", "30000000"],
            ["suction_pressure_pa", "9000000000 Pa", "30000000"],
            ["suction_pressure_pa", "not a finite number"],
            ["mode", "warming", "cooling"],
            ["return_wet_bulb_k", "29 K"],
        ],
        strict=True,
    ):
        check_fault(found, index)
        for word in words:
            assert word in found["error"][index]
    for index in (0, 65_535, 65_537, 70_002):
        with pytest.raises(satline.SatlineError) as caught:
            satline.diagnose({name: column if isinstance(column, str) else column[index] for name, column in frame.items()})
        assert str(caught.value) == found["error"][index]
    good = np.delete(np.arange(rows), bad)
    assert len(set(found["dew_temperature_k"][good])) == 1 and not np.isnan(found["dew_temperature_k"][good]).any()


def test_cells_that_are_no_numbers_or_words():
    cells = [9e5, "118 psig", True, None, "", 10**400, [1], 900_000, np.float32(9e5), math.nan]
    found = satline.diagnose_frame({"refrigerant": "R-410A", "suction_pressure_pa": cells})
    assert [bool(error) for error in found["error"]] == [False, True, True, False, False, True, True, False, False, False]
    assert "suction_pressure_pa" in found["error"][1] and "'118 psig'" in found["error"][1] and "SI" in found["error"][1]
    dew = found["dew_temperature_k"]
    assert dew[0] == dew[7] == dew[8] and np.isnan(dew[[1, 2, 3, 4, 5, 6, 9]]).all()
    words = ["R-410A", 410, ["R-410A"], None, "", math.nan, satline.refrigerant("R-410A"), "r410a", "R-410", np.str_("R-410A")]
    found = satline.diagnose_frame({"refrigerant": words, "suction_pressure_pa": 9e5})
    assert [bool(error) for error in found["error"]] == [False, True, True, False, False, False, False, False, True, False]
    assert "410" in found["error"][1] and "refrigerant" in found["error"][1]
    assert "R-410A" in found["error"][8], "the nearest"
    assert np.isnan(found["dew_temperature_k"]).tolist() == [False, True, True, True, True, True, False, False, True, False]


class Fake:
    """The least that counts as a data frame."""

    def __init__(self, columns):
        self.columns = list(columns)
        self._columns = columns

    def __getitem__(self, name):
        return self._columns[name]


def same(left, right):
    assert list(left) == list(right)
    for name in left:
        assert np.array_equal(left[name], right[name], equal_nan=left[name].dtype.kind == "f"), name


@pytest.mark.parametrize(
    "form",
    {
        "arrays": lambda f: {name: np.array(column) for name, column in f.items()},
        "tuples": lambda f: {name: tuple(column) for name, column in f.items()},
        "objects": lambda f: {name: np.array(column, dtype=object) for name, column in f.items()},
        "series": lambda f: {name: pandas.Series(column) for name, column in f.items()},
        "strided": lambda f: {name: np.repeat(np.array(column, dtype=object), 2)[::2] for name, column in f.items()},
        "masked": lambda f: {
            name: np.ma.masked_array(
                [-1.0 if cell != cell else cell for cell in column], [cell != cell for cell in column]
            ) if name in FIELDS else column
            for name, column in f.items()
        },
        "least frame": Fake,
    }.items(),
    ids=lambda form: form[0],
)  # fmt: skip
def test_every_form_of_a_frame_says_the_same(form):
    frame = random_frame(40, 11)
    before = json.dumps(frame)
    same(satline.diagnose_frame(form[1](frame)), satline.diagnose_frame(frame))
    assert json.dumps(frame) == before, "the input was changed"


@pytest.mark.parametrize("nullable", [False, True])
def test_a_dataframe_gives_a_dataframe_with_its_index(nullable):
    plain = random_frame(40, 12)
    frame = pandas.DataFrame(plain, index=pandas.Index(range(100, 140), name="visit"))
    if nullable:
        frame = frame.convert_dtypes()
        frame["mode"] = frame["mode"].astype("category")
    found = satline.diagnose_frame(frame)
    assert isinstance(found, pandas.DataFrame) and found.index.equals(frame.index) and found.index.name == "visit"
    expected = satline.diagnose_frame(plain)
    assert list(found.columns) == list(expected)
    same({name: found[name].to_numpy(dtype=column.dtype) for name, column in expected.items()}, expected)


def test_one_value_holds_for_all_rows():
    r410a = satline.refrigerant("R-410A")
    columns = {"suction_pressure_pa": [9e5, 9.5e5], "refrigerant": ["R-410A"] * 2, "outdoor_dry_bulb_k": [308.0] * 2}
    expected = satline.diagnose_frame(columns)
    for refrigerant in ("R-410A", r410a, np.str_("R-410A")):
        for outdoor in (308, 308.0, np.float64(308.0), np.array(308.0)):
            same(satline.diagnose_frame({**columns, "refrigerant": refrigerant, "outdoor_dry_bulb_k": outdoor}), expected)
    one = satline.diagnose_frame({"refrigerant": "R-410A", "suction_pressure_pa": 9e5, "mode": None})
    assert len(one["charge"]) == 1 and one["dew_temperature_k"][0] == expected["dew_temperature_k"][0]
    bad = satline.diagnose_frame({**columns, "outdoor_dry_bulb_k": "hot"})
    assert all("outdoor_dry_bulb_k" in error and "'hot'" in error for error in bad["error"])


def test_what_holds_for_every_row_may_be_a_partial_reading():
    columns = {"suction_pressure_pa": [9e5, 9.5e5], "suction_line_temperature_k": [288.0, 290.0]}
    common = {"refrigerant": "R-410A", "outdoor_dry_bulb": "95 degF", "uncertainty": {"suction_pressure_pa": {"absolute": 500.0}}}
    found = satline.diagnose_frame(columns, common=common)
    for index in range(2):
        check_row(found, index, satline.diagnose({**common, **row(columns, index)}))
    same(satline.diagnose_frame(columns, common=satline.Reading(refrigerant="R-410A")),
         satline.diagnose_frame({**columns, "refrigerant": "R-410A"}))  # fmt: skip
    for bad, words in [
        ({"suction_pressure": "118 psig"}, "suction_pressure_pa"),
        ({"suction_pressure_pa": 9e5}, "suction_pressure_pa"),
        ({"refrigerant": "R-410"}, "common: field refrigerant"),
        ({"outdoor_dry_bulb_k": 9e5}, "common: field outdoor_dry_bulb_k"),
    ]:
        with pytest.raises(satline.SatlineError, match=words):
            satline.diagnose_frame(columns, common=bad)
    with pytest.raises(satline.MalformedTextError, match="mode: given in a column and in common"):
        satline.diagnose_frame({**columns, "mode": "cooling"}, common={"mode": "cooling"})
    with pytest.raises(satline.MalformedTextError, match="altitude_m"):
        satline.diagnose_frame({**columns, "altitude_m": 100.0}, common={"altitude": "600 ft"})
    with pytest.raises(satline.MalformedTextError, match="gauge pressure"):
        satline.diagnose_frame({**columns, "altitude_m": 100.0}, common={"liquid_pressure": "300 psig"})
    with pytest.raises(satline.MalformedTextError, match="keep one"):
        satline.diagnose_frame({**columns, "altitude_m": 100.0, "ambient_pressure_pa": 1e5})
    with pytest.raises(TypeError, match="common"):
        satline.diagnose_frame(columns, common="R-410A")


def test_altitude_stands_in_for_the_ambient_pressure():
    limits = {"suction_pressure_pa": {"of_reading": 0.01}}
    columns = {"refrigerant": "R-410A", "suction_pressure_pa": [9e5, 9e5, 9e5], "altitude_m": [0.0, 1600.0, 1e6]}
    found = satline.diagnose_frame(columns, common={"uncertainty": limits})
    for index in range(2):
        check_row(found, index, satline.diagnose({**row(columns, index), "uncertainty": limits}))
    assert found["dew_temperature_uncertainty_k"][0] < found["dew_temperature_uncertainty_k"][1]
    assert "altitude_m" in found["error"][2]


def test_unknown_columns_are_refused_with_the_nearest():
    good = {"suction_pressure_pa": [9e5]}
    for name, nearest in [
        ("suction_presure_pa", "suction_pressure_pa"),
        ("liquid_pressure", "liquid_pressure_pa"),
        ("refrigrant", "refrigerant"),
        ("units", "unit"),
        (7, None),
    ]:
        with pytest.raises(satline.UnknownFieldError) as caught:
            satline.diagnose_frame({**good, name: [1.0]})
        assert caught.value.field == str(name) and "keep" in str(caught.value)
        assert nearest is None or (caught.value.nearest == nearest and nearest in str(caught.value))
    found = satline.diagnose_frame(
        {**good, "site": ["demo"], "suction_line_temperature_k": 290.0, "note": ["x"]}, keep=["site", "suction_line_temperature_k"]
    )
    assert list(found)[:3] == ["note", "site", "suction_line_temperature_k"]
    assert found["site"].tolist() == ["demo"] and found["suction_line_temperature_k"].tolist() == [290.0]
    with pytest.raises(satline.UnknownFieldError, match="sites"):
        satline.diagnose_frame({**good, "site": ["demo"]}, keep=["sites", "site"])
    with pytest.raises(satline.MalformedTextError, match="name of an answer"):
        satline.diagnose_frame({**good, "superheat_k": [3.0]}, keep=["superheat_k"])


def test_an_empty_frame_has_the_same_columns():
    full = satline.diagnose_frame({"refrigerant": ["R-410A"], "suction_pressure_pa": [9e5]})
    for empty in ({"refrigerant": [], "suction_pressure_pa": []}, {"suction_pressure_pa": np.zeros(0)}, {}):
        found = satline.diagnose_frame(empty)
        assert list(found) == list(full)
        for name, column in found.items():
            assert column.shape == (0,) and column.dtype == full[name].dtype
    frame = pandas.DataFrame({"refrigerant": ["R-410A"], "suction_pressure_pa": [9e5]})
    assert satline.diagnose_frame(frame.iloc[:0]).shape == (0, len(full))


def test_what_is_not_a_frame():
    for bad in (None, 7, "text", [{}], object()):
        with pytest.raises(TypeError, match="frame: a mapping of columns or a data frame is needed"):
            satline.diagnose_frame(bad)
    with pytest.raises(ValueError, match="liquid_pressure_pa has 3 rows and suction_pressure_pa has 2"):
        satline.diagnose_frame({"suction_pressure_pa": [9e5, 9e5], "liquid_pressure_pa": [2e6] * 3})
    with pytest.raises(ValueError, match="suction_pressure_pa: one cell a row is needed, not 2 axes"):
        satline.diagnose_frame({"suction_pressure_pa": np.zeros((2, 2))})
    with pytest.raises(TypeError, match="suction_pressure_pa: an array, a list or one value"):
        satline.diagnose_frame({"suction_pressure_pa": iter([9e5])})
    twice = pandas.DataFrame([[9e5, 9e5]], columns=["suction_pressure_pa"] * 2)
    with pytest.raises(satline.MalformedTextError, match="stands twice"):
        satline.diagnose_frame(twice)


def test_a_baseline_belongs_to_its_unit():
    frame, healthy = random_frame(30, 21), random_frame(20, 22)
    frame["unit"] = [["north", "south", "new", None][index % 4] for index in range(30)]
    healthy["unit"] = [["south", "north", "north", "away"][index % 4] for index in range(20)]
    found = satline.diagnose_frame(frame, healthy)
    assert found.pop("unit").tolist() == frame["unit"]
    own = {unit: [i for i in range(20) if healthy["unit"][i] == unit] for unit in ("north", "south")}
    without = {name: column for name, column in frame.items() if name != "unit"}
    base = {name: column for name, column in healthy.items() if name != "unit"}
    outcomes = set()
    for index, unit in enumerate(frame["unit"]):
        try:
            finding = satline.diagnose(row(without, index), baseline=[row(base, i) for i in own.get(unit, ())])
        except satline.SatlineError as error:
            check_fault(found, index)
            outcomes.add(str(error).startswith("baseline"))
            if str(error).startswith("baseline"):
                assert "baseline row" in found["error"][index]
        else:
            check_row(found, index, finding)
            outcomes.add(None)
    assert outcomes >= {None, True}


def test_a_baseline_of_one_unit_needs_no_unit():
    healthy = {"refrigerant": "R-410A", "suction_pressure_pa": [9e5, 9.2e5]}
    frame = {"refrigerant": "R-410A", "suction_pressure_pa": [8e5, 9e5, 1e6]}
    found = satline.diagnose_frame(frame, healthy)
    for index in range(3):
        check_row(found, index, satline.diagnose(row(frame, index), [row(healthy, 0), row(healthy, 1)]))
    for one, other, without in [({**frame, "unit": "a"}, healthy, "baseline"), (frame, {**healthy, "unit": "a"}, "frame")]:
        with pytest.raises(satline.UnknownFieldError, match=f"the {without} has no column unit"):
            satline.diagnose_frame(one, other)
    with pytest.raises(satline.MalformedTextError, match="baseline row 1, column unit"):
        satline.diagnose_frame({**frame, "unit": "a"}, {**healthy, "unit": ["a", None]})
    with pytest.raises(satline.UnknownFieldError, match="baseline: 'pressure'"):
        satline.diagnose_frame(frame, {**healthy, "pressure": 1.0})
    healthy["suction_pressure_pa"] = [9e5, 9e9]
    found = satline.diagnose_frame(frame, healthy)
    for index in range(3):
        check_fault(found, index)
        assert found["error"][index].startswith("baseline row 1: field suction_pressure_pa: ")


def test_protocol_and_priors():
    frame = random_frame(30, 31)
    options = {"edition": "title-24-ra3.2-2008", "role": "verifier", "priors": {"overcharge": 0.4, "pairs": 3.0}}
    found = satline.diagnose_frame(frame, **options)
    for index in range(30):
        if not found["error"][index]:
            check_row(found, index, satline.diagnose(row(frame, index), **options))
    with pytest.raises(satline.UnknownChoiceError, match="overcharged"):
        satline.diagnose_frame(frame, priors={"overcharged": 0.4})
