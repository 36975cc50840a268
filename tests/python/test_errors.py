"""The exception classes are those of the shared error table."""

import copy
import pickle

import pytest

import satline
from satline import _native

# Pointers and structures exist at the C boundary only.
C_ONLY = {"null-pointer", "bad-struct-size", "version-mismatch"}


def all_classes(base=satline.SatlineError):
    for derived in base.__subclasses__():
        yield derived
        yield from all_classes(derived)


CLASSES = list(all_classes())


def test_every_error_of_the_table_has_its_class_and_no_class_is_alone():
    # No-valid-test is an answer, not a failure: Python says None.
    errors = {code: name for code, name, _ in _native.error_table() if code > 0 and name != "no-valid-test"}
    expected = {code: name for code, name in errors.items() if name not in C_ONLY}
    assert {cls.code: cls.name for cls in CLASSES if cls.code is not None} == expected
    assert len(expected) == sum(cls.code is not None for cls in CLASSES)
    for cls in CLASSES:
        if cls.name is not None:
            assert cls.__name__ == "".join(word.capitalize() for word in cls.name.split("-")) + "Error"


@pytest.mark.parametrize("row", _native.error_table(), ids=lambda row: row[1])
def test_rows_are_complete(row):
    code, name, message = row
    assert isinstance(code, int) and name == name.lower() and message


def test_the_promised_bases():
    assert issubclass(satline.SatlineError, Exception)
    assert issubclass(satline.OutOfRangeError, (satline.SatlineError)) and issubclass(satline.OutOfRangeError, ValueError)
    assert issubclass(satline.NotFiniteError, satline.OutOfRangeError)
    assert issubclass(satline.UnknownRefrigerantError, LookupError)
    assert issubclass(satline.NotConvergedError, ArithmeticError)
    assert issubclass(satline.NotAvailableError, NotImplementedError)
    for cls in CLASSES:
        assert issubclass(cls, satline.SatlineError)
        assert cls.__module__ == "satline" and getattr(satline, cls.__name__) is cls and cls.__name__ in satline.__all__


def test_an_error_survives_copy_and_pickle(r410a):
    with pytest.raises(satline.OutOfRangeError) as caught:
        r410a.dew_temperature_k([[9e5], [1.0]])
    for twin in [copy.copy(caught.value), pickle.loads(pickle.dumps(caught.value))]:
        assert type(twin) is satline.OutOfRangeError and str(twin) == str(caught.value)
        assert (twin.index, twin.value, twin.upper, twin.code) == ((1, 0), 1.0, caught.value.upper, 1)
