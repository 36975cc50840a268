"""The examples in the READMEs run, on what is installed."""

import contextlib
import io
import pathlib
import re

import pytest

ROOT = pathlib.Path(__file__).parents[2]
BLOCKS = [
    pytest.param(block, id=f"{name} {number}")
    for name in ("README.md", "python/README.md")
    if (ROOT / name).is_file()
    for number, block in enumerate(re.findall(r"```python\n(.*?)```", (ROOT / name).read_text(encoding="utf-8"), re.DOTALL))
]


def test_there_are_examples():
    assert BLOCKS


@pytest.mark.parametrize("block", BLOCKS)
def test_it_runs_and_says_something(block):
    printed = io.StringIO()
    with contextlib.redirect_stdout(printed):
        exec(compile(block, "README example", "exec"), {})
    assert printed.getvalue().strip() and "nan" not in printed.getvalue().lower().split()


def test_the_package_example_shows_the_superheat():
    """118 psig of R-410A at 62.0 degF: 22.2 degF of superheat (computed independently, see test_refrigerant.py)."""
    block = next(param.values[0] for param in BLOCKS if param.id == "python/README.md 0")
    printed = io.StringIO()
    with contextlib.redirect_stdout(printed):
        exec(compile(block, "README example", "exec"), {})
    assert "22.2" in printed.getvalue().splitlines()[0]
    assert "Charge: LOW" in printed.getvalue()
