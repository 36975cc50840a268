"""A reading goes in, a finding comes out; what cannot be judged is said, and what cannot be understood is refused."""

import copy
import dataclasses
import json
import math
import pickle

import numpy as np
import pytest

import satline
from satline import _native
from satline.units import kelvin_from_fahrenheit, pascal_from_psig

# Demo: an invented unit with a fixed orifice, starved of refrigerant.
ORIFICE = {
    "label": "demo, north classroom",
    "refrigerant": "R-410A",
    "metering": "fixed-orifice",
    "outdoor_dry_bulb_k": 308.15,
    "return_dry_bulb_k": 298.71,
    "return_wet_bulb_k": 291.48,
    "supply_dry_bulb_k": 288.6,
    "suction_pressure_pa": 914_906.0,
    "suction_line_temperature_k": 289.82,
    "liquid_pressure_pa": 2_376_600.0,
    "liquid_line_temperature_k": 310.4,
    "minutes_since_change": 30.0,
}
# Demo: an invented unit with a valve, at its maker's subcooling.
VALVE = {
    **ORIFICE,
    "label": "demo, south classroom",
    "metering": "thermostatic-valve",
    "suction_pressure_pa": 950_000.0,
    "suction_line_temperature_k": 284.5,
    "liquid_line_temperature_k": 308.6,
    "target_subcooling_k": 5.0,
}
CHARGES = {"low", "correct", "high", "not-judged"}


def test_a_low_charge_is_found():
    finding = satline.diagnose(ORIFICE)
    assert finding.charge == "low" and finding.reason == "judged-by-superheat"
    assert finding.label == "demo, north classroom"
    superheat = finding.values["superheat_k"]
    assert superheat.deviation == pytest.approx(superheat.value - superheat.target, abs=1e-12)
    assert superheat.deviation > superheat.deviation_uncertainty > 0.0 and superheat.standard_uncertainty > 0.0
    assert finding.protocol.action == "add"
    # The words a person reads, with what can hurt.
    words = str(finding)
    for word in ["demo, north classroom", "R-410A", "LOW", "Superheat", "target", "±", "°F", "Cautions", "licensed practice"]:
        assert word in words
    assert " K," in finding.in_words("si") and finding.in_words("ip") == words == finding.in_words()
    with pytest.raises(satline.UnknownChoiceError):
        finding.in_words("metric")


def test_the_values_are_those_of_the_property_functions():
    """Bit for bit, with numbers of every length: nothing is lost between Python and the core."""
    r410a = satline.refrigerant("R-410A")
    random = np.random.default_rng(3)
    for _ in range(200):
        suction, liquid = random.uniform(5e5, 1.3e6), random.uniform(1.9e6, 3.6e6)
        vapour_line, liquid_line = random.uniform(285.0, 295.0), random.uniform(295.0, 305.0)
        wet_bulb, outdoor = random.uniform(292.0, 297.0), random.uniform(296.0, 310.0)
        fields = {
            "refrigerant": "R-410A",
            "metering": "fixed-orifice",
            "suction_pressure_pa": suction,
            "suction_line_temperature_k": vapour_line,
            "liquid_pressure_pa": liquid,
            "liquid_line_temperature_k": liquid_line,
            "return_wet_bulb_k": wet_bulb,
            "outdoor_dry_bulb_k": outdoor,
        }
        for reading in (fields, satline.Reading(**fields), json.dumps(fields)):
            values = satline.diagnose(reading).values
            assert values["superheat_k"].value == r410a.superheat_k(vapour_line, suction)
            assert values["subcooling_k"].value == r410a.subcooling_k(liquid_line, liquid)
            assert values["dew_temperature_k"].value == r410a.dew_temperature_k(suction)
            target = satline.target_superheat_k(wet_bulb, outdoor)
            assert values["superheat_k"].target == target or target is None


@pytest.mark.parametrize("fields", [ORIFICE, VALVE, {}], ids=["orifice", "valve", "empty"])
def test_reading_mapping_and_text_agree(fields):
    findings = [
        satline.diagnose(fields),
        satline.diagnose(satline.Reading(**fields)),
        satline.diagnose(json.dumps(fields)),
        satline.diagnose(json.dumps([fields], indent=4)),
        satline.diagnose({**fields, "refrigerant": satline.refrigerant("R-410A")} if fields else {}),
        satline.diagnose({name: np.float64(v) if isinstance(v, float) else v for name, v in fields.items()}),
        satline.diagnose(reading=fields, baseline=None),
    ]
    for finding in findings[1:]:
        assert finding == findings[0]
        assert finding.to_json() == findings[0].to_json() and str(finding) == str(findings[0])


def test_json_has_the_attributes():
    for fields in (ORIFICE, VALVE, {}):
        finding = satline.diagnose(fields)
        written = json.loads(finding.to_json())
        plain = dataclasses.asdict(finding)
        for name, value in written.items():
            if name == "values":
                known = {key: {k: v for k, v in value.items() if v is not None} for key, value in plain[name].items()}
                assert known == value
            elif name == "format":
                assert value == "satline-finding/1"
            elif name in {"protocol", "amount"}:
                assert {k: v for k, v in plain[name].items() if v is not None} == value
            elif name == "preconditions":
                assert [{k: v for k, v in one.items() if v is not None} for one in plain[name]] == value
            elif name == "hypotheses":
                assert [{**one, "causes": list(one["causes"])} for one in plain[name]] == value
            else:
                assert list(plain[name]) == value if isinstance(value, list) else plain[name] == value
        beside = {"label", "note", "demo", "atmosphere_assumed", "_json", "_words"}
        absent = {"amount"} if finding.amount is None else set()
        assert set(plain) - beside - absent == set(written) - {"format"}


def test_copy_and_pickle():
    finding = satline.diagnose(ORIFICE)
    for twin in [copy.deepcopy(finding), pickle.loads(pickle.dumps(finding))]:
        assert twin == finding and str(twin) == str(finding) and twin.to_json() == finding.to_json()
    with pytest.raises(dataclasses.FrozenInstanceError):
        finding.charge = "correct"


def test_unit_strings():
    in_units = {
        "refrigerant": "R-410A",
        "suction_pressure": "118 psig",
        "suction_line_temperature": "62 degF",
        "ambient_pressure": "24.9 inHg",
    }
    finding = satline.diagnose(in_units)
    r410a = satline.refrigerant("R-410A")
    expected = r410a.superheat_k(kelvin_from_fahrenheit(62.0), pascal_from_psig(118.0, 24.9 * 3386.389))
    assert finding.values["superheat_k"].value == pytest.approx(expected, abs=1e-9)
    assert not finding.atmosphere_assumed
    del in_units["ambient_pressure"]
    assumed = satline.diagnose(in_units)
    assert assumed.atmosphere_assumed
    assert assumed.values["superheat_k"].value == r410a.superheat_k(kelvin_from_fahrenheit(62.0), pascal_from_psig(118.0))
    assert satline.diagnose({**in_units, "demo": True, "note": "invented"}).demo


@pytest.mark.parametrize(
    "fields, without",
    [
        (ORIFICE, "refrigerant"),
        (ORIFICE, "metering"),
        (ORIFICE, "suction_pressure_pa"),
        (ORIFICE, "suction_line_temperature_k"),
        (ORIFICE, "outdoor_dry_bulb_k"),
        (ORIFICE, "return_wet_bulb_k"),
        (VALVE, "refrigerant"),
        (VALVE, "liquid_pressure_pa"),
        (VALVE, "liquid_line_temperature_k"),
        (VALVE, "target_subcooling_k"),
    ],
)
def test_a_missing_field_is_named_with_what_would_help(fields, without):
    assert satline.diagnose(fields).charge != "not-judged"
    finding = satline.diagnose({name: value for name, value in fields.items() if name != without})
    assert finding.charge == "not-judged" and finding.charge_status == "provisional"
    assert finding.reason == "missing-measurement"
    assert satline.MissingField(field=without, needed_for="verdict") in finding.missing
    assert finding.advice == "do-not-charge"
    plain = without.removesuffix("_pa").removesuffix("_k").replace("_", " ")
    assert "not judged" in str(finding) and "Not measured, needed to judge the charge" in str(finding)
    assert plain in str(finding)


def test_an_empty_reading_still_gets_a_finding():
    finding = satline.diagnose({})
    assert finding.charge == "not-judged" and finding.values == {} and len(finding.missing) > 1 and finding.cautions


@pytest.mark.parametrize("subset", range(64))
def test_any_subset_of_fields_gives_a_finding(subset):
    random = np.random.default_rng(subset)
    fields = {name: value for name, value in VALVE.items() if random.random() < 0.6}
    finding = satline.diagnose(fields)
    assert finding.charge in CHARGES and finding.cautions and finding.next_check and finding.advice
    for value in finding.values.values():
        numbers = [value.value, value.standard_uncertainty, value.target, value.deviation, value.deviation_uncertainty]
        assert all(number is None or math.isfinite(number) for number in numbers)


TEXTS = [
    # text, class, line, field, words of the message
    ('{\n "refrigerant": "R-410"\n}', "UnknownRefrigerantError", 2, "refrigerant", ["R-410A"]),
    ('{\n\n "suction_presure_pa": 9e5}', "UnknownFieldError", 3, "suction_presure_pa", ["suction_pressure"]),
    ('{"mode": "cooling",\n "suction_pressure": "118 psgi"}', "UnknownUnitError", 2, "suction_pressure", ["psig"]),
    ('{\n "suction_pressure": "118 psi"\n}', "UnknownUnitError", 2, "suction_pressure", ["psig", "psia"]),
    ('{\n "suction_pressure": "118"\n}', "UnknownUnitError", 2, "suction_pressure", ["unit"]),
    ('{\n "suction_pressure": "-20 psig"\n}', "OutOfRangeError", 2, "suction_pressure", ["-20 psig", "vacuum"]),
    ('{\n "suction_pressure_pa": 9e9}', "OutOfRangeError", 2, "suction_pressure_pa", ["absolute pressure", "30000000"]),
    ('{\n "suction_pressure_pa": NaN}', "NotFiniteError", 2, "suction_pressure_pa", ["finite"]),
    ('{\n "suction_pressure_pa": 1e999}', "NotFiniteError", 2, "suction_pressure_pa", ["finite"]),
    ('{\n "mode": "coolling"}', "UnknownChoiceError", 2, "mode", ["cooling"]),
    ('{\n "outdoor_dry_bulb": "950 degF"\n}', "OutOfRangeError", 2, "outdoor_dry_bulb", ["950 degF"]),
    ('{\n "mode": "cooling"\n "stage": "low"}', "MalformedTextError", 3, None, ["JSON"]),
    ("", "MalformedTextError", 1, None, ["JSON"]),
    ("[]", "MalformedTextError", 1, None, ["no reading"]),
    ("7", "MalformedTextError", 1, None, ["reading"]),
    ("[" * 100_000, "MalformedTextError", 1, None, ["JSON"]),
]


@pytest.mark.parametrize("text, error, line, field, words", TEXTS, ids=range(len(TEXTS)))
def test_a_bad_text_names_line_and_field(text, error, line, field, words):
    with pytest.raises(satline.SatlineError) as caught:
        satline.diagnose(text)
    assert type(caught.value) is getattr(satline, error)
    assert caught.value.line == line and f"line {line}" in str(caught.value)
    if field is not None:
        assert caught.value.field == field and field in str(caught.value)
    for word in words:
        assert word in str(caught.value)


@pytest.mark.parametrize(
    "fields, error, field",
    [
        ({"suction_presure_pa": 9e5}, "UnknownFieldError", "suction_presure_pa"),
        ({"suction_pressure": "118 psgi"}, "UnknownUnitError", "suction_pressure"),
        ({"suction_pressure": 118}, "UnknownUnitError", "suction_pressure"),
        ({"suction_pressure": "-20 psig"}, "OutOfRangeError", "suction_pressure"),
        ({"mode": "cooling", "suction_pressure_pa": math.nan}, "NotFiniteError", "suction_pressure_pa"),
        ({"suction_pressure_pa": math.inf}, "NotFiniteError", "suction_pressure_pa"),
        ({"suction_pressure_pa": 9e5, "suction_pressure": "118 psig"}, "MalformedTextError", "suction_pressure"),
        ({"refrigerant": "R-410"}, "UnknownRefrigerantError", "refrigerant"),
        ({7: 9e5}, "UnknownFieldError", "7"),
    ],
)
def test_a_bad_mapping_names_the_field(fields, error, field):
    with pytest.raises(satline.SatlineError) as caught:
        satline.diagnose(fields)
    assert type(caught.value) is getattr(satline, error)
    assert caught.value.field == field and field in str(caught.value)
    assert caught.value.line is None and "line 1" not in str(caught.value)


def test_one_reading_at_a_time():
    with pytest.raises(satline.MalformedTextError, match="2 readings: give one at a time"):
        satline.diagnose("[{}, {}]")


@pytest.mark.parametrize("reading", [None, 7, b"{}", [ORIFICE], object()])
def test_what_is_not_a_reading(reading):
    with pytest.raises(TypeError, match="a Reading, a mapping or JSON text is needed"):
        satline.diagnose(reading)


def test_a_baseline_is_one_or_more_readings():
    texts = json.dumps(ORIFICE), json.dumps([ORIFICE, ORIFICE])
    one = satline.diagnose(VALVE, baseline=ORIFICE)
    for baseline in ([ORIFICE], (satline.Reading(**ORIFICE),), texts[0], iter([texts[0]]), {**ORIFICE, "label": "other"}):
        assert satline.diagnose(VALVE, baseline) == one
    assert satline.diagnose(VALVE, baseline=texts[1]) == satline.diagnose(VALVE, baseline=[ORIFICE, ORIFICE])
    assert satline.diagnose(VALVE, baseline=[]) == satline.diagnose(VALVE)
    for bad in (7, [7], [None], b"{}"):
        with pytest.raises(TypeError, match="needed, not"):
            satline.diagnose(VALVE, baseline=bad)
    with pytest.raises(satline.OutOfRangeError, match="^baseline: field suction_pressure_pa: ") as caught:
        satline.diagnose(VALVE, baseline=[ORIFICE, {"suction_pressure_pa": 9e9}])
    assert caught.value.field == "suction_pressure_pa" and caught.value.line is None
    with pytest.raises(satline.UnknownFieldError, match="^baseline: line 2, ") as caught:
        satline.diagnose(VALVE, baseline='{\n"suction_presure_pa": 9e5}')
    assert caught.value.line == 2


def test_the_weighing_is_there():
    for fields in (ORIFICE, VALVE, {}):
        finding = satline.diagnose(fields)
        names = [one.name for one in finding.preconditions]
        assert len(names) == len(set(names)) > 5
        for one in finding.preconditions:
            assert one.status in {"met", "not-met", "unknown"} and (one.reason is None or one.status == "not-met")
        for name, feature in finding.features.items():
            assert name.endswith(("_k", "_share"))
            assert feature.deviation == pytest.approx(feature.value - feature.expected, abs=1e-12)
            assert feature.standard_uncertainty >= 0.0 and feature.expected_uncertainty >= 0.0
        weights = [one.probability for one in finding.hypotheses]
        assert weights == sorted(weights, reverse=True)
        assert not weights or sum(weights) == pytest.approx(1.0, abs=1e-9)
        assert (finding.probability("healthy") is None) == (not weights)
        assert finding.conclusion == "cannot-tell" or all(name in _native.causes() for name in finding.conclusion)
        assert (finding.conclusion == "cannot-tell") == (finding.conclusion_reason != "stands")
        if finding.amount is not None:
            assert finding.amount.lowest <= finding.amount.share <= finding.amount.highest
    with pytest.raises(satline.UnknownChoiceError, match="undercharge"):
        satline.diagnose(ORIFICE).probability("low-charge")


def test_probabilities_are_sums_over_the_hypotheses():
    weighed = [
        satline.Hypothesis(causes=("undercharge",), probability=0.5),
        satline.Hypothesis(causes=("undercharge", "low-indoor-airflow"), probability=0.25),
        satline.Hypothesis(causes=(), probability=0.25),
    ]
    finding = dataclasses.replace(satline.diagnose({}), hypotheses=tuple(weighed))
    expected = {"undercharge": 0.75, "low-indoor-airflow": 0.25, "healthy": 0.25, "overcharge": 0.0}
    assert {name: finding.probability(name) for name in expected} == expected


def test_the_protocol_asked_for_is_quoted():
    default = satline.diagnose(ORIFICE).protocol
    assert (default.edition, default.role) == ("title-24-ra3.2-2013", "installer")
    other = satline.diagnose(ORIFICE, edition="title-24-ra3.2-2008", role="verifier").protocol
    assert (other.edition, other.role) == ("title-24-ra3.2-2008", "verifier")
    for words in ({"edition": "2016"}, {"role": "owner"}):
        with pytest.raises(satline.UnknownChoiceError) as caught:
            satline.diagnose(ORIFICE, **words)
        assert caught.value.field in words and caught.value.value in words.values()


def test_priors_are_checked():
    for cause in ["healthy", *_native.causes()]:
        assert satline.diagnose(ORIFICE, priors={cause: 0.3})
        for weight, error in [(0.0, satline.OutOfRangeError), (1.1, satline.OutOfRangeError), (math.nan, satline.NotFiniteError)]:
            with pytest.raises(error, match=cause):
                satline.diagnose(ORIFICE, priors={cause: weight})
    assert satline.diagnose(ORIFICE, priors={"pairs": 0.0}) and satline.diagnose(ORIFICE, priors={})
    with pytest.raises(satline.UnknownChoiceError, match="low-indoor-airflow"):
        satline.diagnose(ORIFICE, priors={"airflow": 0.1})
    with pytest.raises(TypeError, match="priors: a mapping"):
        satline.diagnose(ORIFICE, priors=[("healthy", 0.5)])


def test_random_texts_never_crash():
    random = np.random.default_rng(4)
    whole = json.dumps(ORIFICE, indent=1)
    refused = 0
    for _ in range(2_000):
        letters = list(whole)
        for place in random.integers(0, len(letters), random.integers(1, 5)):
            letters[place] = random.choice(list('{}[]",:.-eE0123456789ntf \n°\0\u2028'))
        try:
            finding = satline.diagnose("".join(letters))
        except satline.SatlineError as error:
            assert error.line >= 1 and str(error)
            refused += 1
        else:
            assert finding.charge in CHARGES
    assert 500 < refused < 2_000
