"""A record of a visit: canonical bytes that read back, and errors that name the place."""

import copy
import hashlib
import json
import pathlib
import pickle
import random
import re
import struct

import pytest

import satline

ROOT = pathlib.Path(__file__).parents[2]
# Demo: an invented reading.
READING = {
    "label": "demo",
    "demo": True,
    "refrigerant": "R-410A",
    "metering": "fixed-orifice",
    "altitude": "600 ft",
    "suction_pressure": "118 psig",
    "suction_line_temperature": "62 degF",
}


def record(**changes):
    given = {
        "label": "demo, roof unit 1",
        "demo": True,
        "started": "2026-07-14T15:02:00Z",
        "ended": "2026-07-14T16:40:00Z",
        "refrigerant": "R-410A",
        "before": ("2026-07-14T15:20:00Z", READING, satline.diagnose(READING)),
        "probes": [{"fields": ["suction_pressure_pa"], "name": "gauge 7", "calibrated": "2026-03-01"}],
        "steps": [{"time": "2026-07-14T15:04:00Z", "step": "hoses-connected", "note": "cap loose, 30 °"}],
        "amounts": [{"time": "2026-07-14T15:50:00Z", "direction": "added", "mass_kg": 0.1}],
    }
    return satline.VisitRecord(**(given | changes))


def test_the_bytes_are_canonical_and_read_back():
    made = record()
    data = made.to_canonical_bytes()
    parts = json.loads(data)
    assert parts["format"] == "satline-visit/1" and parts["library_version"] == satline.__version__
    # The reading as it was given, and the finding bit for bit.
    assert parts["before"]["reading"] == READING
    assert parts["before"]["finding"] == json.loads(satline.diagnose(READING).to_json())
    assert made.tables_are_these and parts["tables"]["refrigerant"] == "R-410A"
    # All names are ASCII, so the order of code points is that of the standard; numbers are compared below.
    for text in (data, data.decode(), json.dumps(parts, indent=3), json.dumps(dict(reversed(parts.items())))):
        again = satline.VisitRecord.from_json(text)
        assert again.to_canonical_bytes() == data and again == made and hash(again) == hash(made)
    assert [*parts] == sorted(parts) and b"\n" not in data and b": " not in data and "°".encode() in data
    for twin in (copy.deepcopy(made), pickle.loads(pickle.dumps(made)), eval(repr(made), {"satline": satline})):
        assert twin == made and twin.to_canonical_bytes() == data
    with pytest.raises(AttributeError):
        made.label = "another"
    assert made.to_mapping()["steps"][0]["step"] in satline.VisitRecord.step_words()
    assert satline.VisitRecord(started="2026-07-14T15:02:00Z").to_mapping()["amounts"] == []


def test_numbers_are_written_as_ecmascript_does():
    """Against the rule of ECMA-262 (Number::toString) applied to Python's own shortest digits, which break ties to even."""

    def ecmascript(value):
        sign, digits, exponent = decimal_parts(value)
        point, count = exponent + 1, len(digits)
        if count <= point <= 21:
            text = digits + "0" * (point - count)
        elif 0 < point <= 21:
            text = f"{digits[:point]}.{digits[point:]}"
        elif -6 < point <= 0:
            text = "0." + "0" * -point + digits
        else:
            text = digits[0] + ("." + digits[1:] if count > 1 else "") + f"e{exponent:+d}"
        return sign + text

    def decimal_parts(value):
        mantissa, _, exponent = repr(abs(value)).partition("e")
        whole, _, fraction = mantissa.partition(".")
        digits = (whole + fraction).lstrip("0")
        leading = len(whole.lstrip("0")) if whole.strip("0") else -(len(fraction) - len(fraction.lstrip("0")))
        return "-" if value < 0 else "", digits.rstrip("0"), int(exponent or 0) + leading - 1

    numbers = [0.1, 1.0, 100.0, 1e21, 1e-7, 123456789.125, 1424953923781206.2, 5e-324, 333333333.3333332]
    source = random.Random(8785)
    while len(numbers) < 3000:
        (value,) = struct.unpack("<d", source.randbytes(8))
        if value == value and abs(value) not in (0.0, float("inf")):
            numbers.append(value)
    # Nothing says what stands in a finding but its format, so that any number can be put there.
    finding = {"format": "satline-finding/1", "values": numbers}
    parts = json.loads(record().to_canonical_bytes())
    parts["before"]["finding"] = finding
    data = satline.VisitRecord.from_json(json.dumps(parts)).to_canonical_bytes().decode()
    written = re.search(r'"values":\[([^]]*)\]', data)[1].split(",")
    assert written == [ecmascript(value) for value in numbers]


@pytest.mark.parametrize(
    ("changes", "error", "says"),
    [
        ({"started": "yesterday"}, satline.MalformedTextError, "ISO 8601"),
        ({"ended": "2026-07-14T14:40:00Z"}, satline.MalformedTextError, "before the time"),
        ({"steps": [{"time": "2026-07-14T15:04:00Z", "step": "coffee"}]}, satline.UnknownChoiceError, r"steps\[0\].step"),
        ({"amounts": [{"time": "2026-07-14T15:04:00Z", "direction": "added", "mass_kg": -1}]}, satline.OutOfRangeError, "kg"),
        ({"probes": [{"fields": ["suction"]}]}, satline.UnknownFieldError, "nearest"),
        ({"refrigerant": "R-410"}, satline.UnknownRefrigerantError, "R-410A"),
    ],
)
def test_what_is_wrong_is_named(changes, error, says):
    with pytest.raises(error, match=says):
        record(**changes)


def test_unknown_versions_are_refused():
    text = record().to_canonical_bytes().decode()
    with pytest.raises(satline.MalformedTextError, match="satline-visit/1"):
        satline.VisitRecord.from_json(text.replace("satline-visit/1", "satline-visit/2"))
    with pytest.raises(satline.MalformedTextError, match="satline-finding/1"):
        satline.VisitRecord.from_json(text.replace("satline-finding/1", "satline-finding/2"))
    with pytest.raises(satline.MalformedTextError, match="line 3"):
        satline.VisitRecord.from_json('{"format": "satline-visit/1",\n"started": "2026-07-14T15:02:00Z",\n"library_version": 1}')


def test_the_page_and_the_demo():
    """The page's record, its canonical line and its SHA-256 belong together; the demo record is canonical."""
    page = (ROOT / "core/docs/record.md").read_text(encoding="utf-8")
    written, canonical = re.findall(r"```json\n(.*?)\n```", page, re.DOTALL)[:2]
    data = satline.VisitRecord.from_json(written).to_canonical_bytes()
    assert data.decode() == canonical
    assert hashlib.sha256(data).hexdigest() in page
    example = re.findall(r"```python\n(.*?)\n```", page, re.DOTALL)
    assert len(example) == 1
    exec(compile(example[0], "example of the page", "exec"), {})
    demo = (ROOT / "core/examples/demo_visit.json").read_bytes()
    again = satline.VisitRecord.from_json(demo)
    assert again.to_canonical_bytes() == demo and again.tables_are_these and again.to_mapping()["demo"] is True
