"""The examples in the docstrings of every module run and give what they say."""

import doctest
import importlib
import pathlib

import pytest

import satline

MODULES = sorted(path.stem for path in pathlib.Path(satline.__file__).parent.glob("*.py") if path.stem != "__init__")


@pytest.mark.parametrize("name", MODULES)
def test_examples(name):
    results = doctest.testmod(importlib.import_module(f"satline.{name}"))
    assert results.failed == 0


def test_there_are_examples_and_a_wrong_one_would_fail():
    found = [test for test in doctest.DocTestFinder().find(satline.visit) if test.examples]
    assert len(found) >= 2
    wrong = doctest.DocTestParser().get_doctest(">>> 1 + 1\n3\n", {}, "wrong", None, None)
    assert doctest.DocTestRunner().run(wrong, out=lambda _: None).failed == 1
