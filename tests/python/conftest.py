"""What the checks share."""

import pytest

import satline


@pytest.fixture(scope="session")
def r410a() -> satline.Refrigerant:
    return satline.refrigerant("R-410A")


@pytest.fixture(params=[r.designation for r in satline.refrigerants()])
def each_refrigerant(request: pytest.FixtureRequest) -> satline.Refrigerant:
    """Every refrigerant of the catalogue in turn."""
    return satline.refrigerant(request.param)
