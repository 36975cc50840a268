"""The published JSON Schemas accept what the library reads and writes, and refuse what it refuses."""

import copy
import json
import pathlib

import jsonschema
import pytest

import satline

ROOT = pathlib.Path(__file__).parents[2]
SCHEMAS = {
    name: json.loads((ROOT / f"core/docs/schema/{name}.schema.json").read_text(encoding="utf-8"))
    for name in ("reading", "finding", "visit")
}
DEMO = json.loads((ROOT / "core/examples/demo_school.json").read_text(encoding="utf-8"))
VISIT = json.loads((ROOT / "core/examples/demo_visit.json").read_text(encoding="utf-8"))


def accepts(name, value):
    return jsonschema.Draft202012Validator(SCHEMAS[name]).is_valid(value)


def reads(reading):
    try:
        satline.diagnose(json.dumps(reading))
    except satline.SatlineError:
        return False
    return True


@pytest.mark.parametrize("name", SCHEMAS)
def test_they_are_schemas(name):
    jsonschema.Draft202012Validator.check_schema(SCHEMAS[name])
    assert SCHEMAS[name]["$schema"] == "https://json-schema.org/draft/2020-12/schema"


def test_the_demo_readings_and_their_findings():
    assert accepts("reading", DEMO)
    findings = []
    for reading in [*DEMO, {}]:
        assert accepts("reading", reading)
        finding = json.loads(satline.diagnose(reading).to_json())
        jsonschema.validate(finding, SCHEMAS["finding"], cls=jsonschema.Draft202012Validator)
        findings.append(finding)
    assert accepts("finding", findings)
    assert not accepts("reading", []) and not accepts("finding", []) and not accepts("reading", "R-410A")


def test_every_field_has_its_range():
    fields = SCHEMAS["reading"]["$defs"]["reading"]["properties"]
    for name, lowest, highest in satline._native.reading_fields():
        number = next(one for one in fields[name]["anyOf"] if one.get("type") == "number")
        assert (number["minimum"], number["maximum"]) == (lowest, highest)
        for value in (lowest, highest):
            assert accepts("reading", {name: value}) and reads({name: value})
        for value in (lowest - 1e-3 * max(1.0, abs(lowest)), highest * 1.001):
            assert not accepts("reading", {name: value}) and not reads({name: value})


# Readings on which schema and reader must agree: (reading, whether both take it).
READINGS = [
    ({"suction_pressure": "118 psig"}, True),
    ({"suction_pressure": " 118psig "}, True),
    ({"suction_pressure": "1.18e2 PSIG"}, True),
    ({"suction_pressure": "900 kPa abs"}, True),
    ({"suction_pressure": "10 inHg vacuum"}, True),
    ({"suction_pressure": "118 psi"}, False),
    ({"suction_pressure": "118 psgi"}, False),
    ({"suction_pressure": "psig"}, False),
    ({"suction_pressure": 118}, False),
    ({"suction_pressure_pa": "118 psig"}, False),
    ({"suction_pressure_pa": None, "suction_pressure": "118 psig"}, True),
    ({"suction_pressure_pa": 900_000, "suction_pressure": "118 psig"}, False),
    ({"outdoor_dry_bulb": "95 degF"}, True),
    ({"outdoor_dry_bulb": "95 °F"}, True),
    ({"outdoor_dry_bulb": "95"}, False),
    ({"outdoor_dry_bulb": "95 psig"}, False),
    ({"target_subcooling": "9 degF"}, True),
    ({"expected_charge": "6 lb 4 oz"}, True),
    ({"expected_charge": "6 lb 20 oz"}, False),
    ({"expected_charge": "6 lb 4 oz 1 g"}, False),
    ({"airflow": "1200 cfm"}, True),
    ({"airflow": "0.5 m3/s"}, True),
    ({"airflow": "1,200 cfm"}, False),
    ({"minutes_since_change": 20}, True),
    ({"minutes_since_change": "1.5 h"}, True),
    ({"minutes_since_change": True}, False),
    ({"refrigerant": "R-410A"}, True),
    ({"refrigerant": "r410a"}, True),
    ({"refrigerant": "r 410_A"}, True),
    ({"refrigerant": "R-410"}, False),
    ({"metering": "fixed-orifice"}, True),
    ({"metering": "Fixed-Orifice"}, False),
    ({"operation": "pull-down", "refrigerant_condition": "mixed"}, True),
    ({"stage": "medium"}, False),
    ({"altitude": "5280 ft"}, True),
    ({"altitude_m": 1609.344}, True),
    ({"altitude_m": 1e6}, False),
    ({"altitude": "5280 ft", "ambient_pressure_pa": 90_000}, False),
    ({"altitude": "5280 ft", "altitude_m": 1600}, False),
    ({"label": "demo", "note": "", "demo": True}, True),
    ({"demo": 1}, False),
    ({"label": 1}, False),
    ({"suction_presure_pa": 900_000}, False),
    ({"uncertainty": {"suction_pressure": {"absolute": "1 psi", "of_reading": 0.005, "resolution": 500}}}, True),
    ({"uncertainty": {"suction_pressure": {"of_full_scale": 0.005, "full_scale": "800 psi", "group": "manifold"}}}, True),
    ({"uncertainty": {"suction_pressure": {"of_full_scale": 0.005}}}, False),
    ({"uncertainty": {"suction_pressure": {"absolute": -1}}}, False),
    ({"uncertainty": {"suction_pressure": {"of_reading": 1.5}}}, False),
    ({"uncertainty": {"suction_pressure": {"absolute": "1 degF"}}}, False),
    ({"uncertainty": {"suction_line_temperature_k": {"absolute": "1 degF"}}}, True),
    ({"uncertainty": {"suction_pressure": {}, "suction_pressure_pa": {}}}, False),
    ({"uncertainty": {"suction": {}}}, False),
    ({"uncertainty": {"suction_pressure": {"group": " "}}}, False),
    ({"uncertainty": {"suction_pressure": 1}}, False),
]


@pytest.mark.parametrize(("reading", "good"), READINGS, ids=range(len(READINGS)))
def test_schema_and_reader_agree(reading, good):
    assert reads(reading) is good
    assert accepts("reading", reading) is good


def test_every_unit_of_the_schema_is_read():
    """The units listed for people are those that the pattern and the reader take."""
    definitions = SCHEMAS["reading"]["$defs"]
    middle = {
        "pressure": ("suction_pressure", {"Pa": 9e5, "kPag": 800, "inHg vacuum": 10, "inHg gauge": 200, "inHg abs": 250}, 5),
        "ambient_pressure": ("ambient_pressure", {"psia": 14, "psi": 14, "inHg": 29, "Pa": 1e5, "kPa": 100, "bar": 1}, 1000),
        "temperature": ("outdoor_dry_bulb", {"K": 300}, 40),
        "temperature_difference": ("target_subcooling", {}, 5),
        "airflow": ("airflow", {"cfm": 1200, "m3/s": 0.5}, 900),
        "power": ("nominal_capacity", {"ton": 3, "tons": 3, "kW": 10}, 30_000),
        "mass": ("expected_charge", {"g": 3000, "oz": 100}, 3),
        "minutes": ("minutes_since_change", {}, 20),
        "altitude": ("altitude", {}, 600),
    }
    for name, (field, values, otherwise) in middle.items():
        units = definitions[name]["description"].split(": ")[1].split(".")[0].split(", ")
        assert len(units) > 1
        for unit in units:
            value = values.get(unit, 1 if unit.startswith(("MPa", "psi")) and name == "pressure" and "M" in unit else otherwise)
            reading = {field: f"{value} {unit}"}
            assert accepts("reading", reading), reading
            assert reads(reading), reading


def weighed():
    """A finding with everything in it that a finding can have, invented."""
    finding = json.loads(satline.diagnose(DEMO[1]).to_json())
    finding["features"]["subcooling_k"] = {
        "value": 1.2,
        "standard_uncertainty": 0.6,
        "expected": 5.4,
        "expected_uncertainty": 0.8,
        "deviation": -4.2,
        "source": "baseline",
    }
    finding["hypotheses"] = [
        {"causes": ["undercharge"], "probability": 0.9},
        {"causes": [], "probability": 0.1},
    ]
    finding["conclusion"], finding["conclusion_reason"] = ["undercharge"], "stands"
    finding["amount"] = {
        "share": 0.12,
        "standard_uncertainty": 0.03,
        "lowest": 0.07,
        "highest": 0.17,
        "mass_kg": 0.31,
        "bound": "exact",
    }
    return finding


def changed(value, path, to):
    value = copy.deepcopy(value)
    inner = value
    for step in path[:-1]:
        inner = inner[step]
    if to is None:
        del inner[path[-1]]
    else:
        inner[path[-1]] = to
    return value


@pytest.mark.parametrize(
    ("path", "to"),
    [
        (["format"], "satline-finding/2"),
        (["format"], None),
        (["charge"], "lowish"),
        (["charge"], None),
        (["reason"], "because"),
        (["protocol", "action"], "stop"),
        (["protocol", "role"], None),
        (["values", "superheat_k", "standard_uncertainty"], -0.1),
        (["values", "superheat_k", "bound"], None),
        (["values", "superheat_f"], {"value": 1, "standard_uncertainty": 1, "bound": "exact"}),
        (["cautions"], ["pressure", "pressure"]),
        (["preconditions"], []),
        (["preconditions", 0, "status"], "perhaps"),
        (["features", "subcooling_k", "source"], "hearsay"),
        (["features", "subcooling_k", "expected"], None),
        (["hypotheses", 0, "probability"], 1.1),
        (["hypotheses", 0, "causes"], ["gremlins"]),
        (["conclusion"], "undercharge"),
        (["conclusion_reason"], "because"),
        (["fits"], "yes"),
        (["amount", "bound"], None),
        (["amount", "mass_kg"], "0.31 kg"),
        (["another"], 1),
    ],
)
def test_wrong_findings_are_refused(path, to):
    assert accepts("finding", weighed())
    assert not accepts("finding", changed(weighed(), path, to))


def test_a_finding_that_cannot_tell():
    assert accepts("finding", changed(weighed(), ["conclusion"], "cannot-tell"))
    assert accepts("finding", changed(weighed(), ["amount"], None))
    assert accepts("finding", changed(weighed(), ["amount", "mass_kg"], None))


@pytest.mark.parametrize(
    ("path", "to"),
    [
        (["format"], "satline-visit/2"),
        (["started"], "2026-07-14 15:02"),
        (["started"], None),
        (["ended"], "2026-07-14T25:02:00Z"),
        (["library_version"], ""),
        (["tables", "fingerprint"], None),
        (["before", "reading", "suction_pressure"], "119 psi"),
        (["before", "finding", "charge"], "lowish"),
        (["before", "finding", "format"], "satline-finding/2"),
        (["before", "time"], None),
        (["probes", 0, "fields"], []),
        (["probes", 0, "fields"], ["suction_pressure"]),
        (["probes", 0, "calibrated"], "1 March"),
        (["probes", 0, "accuracy", "of_reading"], 2),
        (["steps", 0, "step"], "coffee"),
        (["amounts", 0, "mass_kg"], 0),
        (["amounts", 0, "direction"], "up"),
        (["another"], 1),
    ],
)
def test_wrong_records_are_refused(path, to):
    assert accepts("visit", VISIT)
    wrong = changed(VISIT, path, to)
    assert not accepts("visit", wrong)
    # Words within a finding are for its own schema; the reader of records asks for its version only.
    if path[-2:] != ["finding", "charge"]:
        with pytest.raises(satline.SatlineError):
            satline.VisitRecord.from_json(json.dumps(wrong))
