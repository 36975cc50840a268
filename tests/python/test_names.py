"""The names that users rely on are there, and nothing is there that does nothing."""

import inspect

import pytest

import satline

FIXED = {
    "refrigerant": ["name"],
    "refrigerants": [],
    "target_superheat_k": ["return_wet_bulb_k", "outdoor_dry_bulb_k"],
    "target_split_k": ["return_dry_bulb_k", "return_wet_bulb_k"],
    "diagnose": ["reading", "baseline", "edition", "role", "priors"],
    "diagnose_frame": ["frame", "baseline", "common", "keep", "edition", "role", "priors"],
}
METHODS = {
    "bubble_pressure_pa": ["temperature_k"],
    "dew_pressure_pa": ["temperature_k"],
    "bubble_temperature_k": ["pressure_pa"],
    "dew_temperature_k": ["pressure_pa"],
    "superheat_k": ["temperature_k", "pressure_pa"],
    "subcooling_k": ["temperature_k", "pressure_pa"],
    "state": ["temperature_k", "pressure_pa", "enthalpy_j_kg", "entropy_j_kg_k", "quality", "reference"],
    "saturated_liquid": ["temperature_k", "reference"],
    "saturated_vapor": ["temperature_k", "reference"],
}
ATTRIBUTES = [
    "designation",
    "components",
    "safety_class",
    "lower_flammability_limit_kg_m3",
    "confidence",
    "name",
    "saturation_uncertainty_k",
    "global_warming_potential",
    "global_warming_potential_source",
    "normal_bubble_temperature_k",
    "normal_dew_temperature_k",
    "critical_temperature_k",
    "critical_pressure_pa",
    "sources",
    "temperature_range_k",
]
CLASSES = ["Refrigerant", "Reading", "Finding", "SatlineError", "OutOfRangeError", "UnknownRefrigerantError", "NotConvergedError"]


@pytest.mark.parametrize("name", FIXED)
def test_functions(name):
    assert list(inspect.signature(getattr(satline, name)).parameters) == FIXED[name]
    assert name in satline.__all__


@pytest.mark.parametrize("name", METHODS)
def test_methods(name):
    method = getattr(satline.refrigerant("R-410A"), name)
    assert list(inspect.signature(method).parameters) == METHODS[name]


@pytest.mark.parametrize("name", ATTRIBUTES)
def test_attributes(name):
    assert hasattr(satline.refrigerant("R-410A"), name)
    assert inspect.getdoc(getattr(satline.Refrigerant, name))


@pytest.mark.parametrize("name", CLASSES)
def test_classes(name):
    assert inspect.isclass(getattr(satline, name))


@pytest.mark.parametrize("name", satline.__all__)
def test_everything_exported_is_documented_and_at_home(name):
    thing = getattr(satline, name)
    if inspect.isclass(thing) or callable(thing):
        assert inspect.getdoc(thing), name
    if inspect.isclass(thing):
        assert thing.__module__ == "satline"


@pytest.mark.parametrize("name", satline.units.__all__)
def test_units_are_documented(name):
    assert inspect.getdoc(getattr(satline.units, name))


def test_all_is_what_is_public():
    public = {name for name, thing in vars(satline).items() if not name.startswith("_")}
    assert public == set(satline.__all__) - {"__version__"}


def test_version_is_that_of_the_package():
    import importlib.metadata

    assert satline.__version__ == importlib.metadata.version("satline")
