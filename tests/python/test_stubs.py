"""The typed stubs say what the module does."""

import os
import pathlib
import subprocess
import sys

import satline

PROGRAM = '''
import numpy as np
import satline
from satline import units

r = satline.refrigerant("R-410A")
reveal_type(r.dew_temperature_k(9e5))
reveal_type(r.dew_temperature_k(np.float32(9e5)))
reveal_type(r.dew_temperature_k(900_000))
reveal_type(r.dew_temperature_k([9e5, 8e5]))
reveal_type(r.dew_temperature_k(np.array([9e5])))
reveal_type(r.superheat_k(285.0, 9e5))
reveal_type(r.superheat_k(285.0, np.array([9e5])))
reveal_type(r.superheat_k([285.0], 9e5))
reveal_type(satline.target_superheat_k(290.0, 308.0))
reveal_type(units.pascal_from_psig(np.array([118.0]), 9e4))
reveal_type(r.state(300.0, 5e5))
reveal_type(r.state(300.0, quality=np.array([0.5])))
reveal_type(r.saturated_vapor([280.0], reference="NBP").specific_heat_j_kg_k)
r.dew_temperature_k("9e5")
r.designation = "R-22"
'''

FLOAT = "float"
MASKED = "numpy.ma.core.MaskedArray[Any, numpy.dtype[numpy.float64]]"
ARRAY = "numpy.ndarray[tuple[Any, ...], numpy.dtype[numpy.float64]]"


def run(*arguments, **options):
    # Nothing of the source tree may stand in for what is installed.
    environment = {key: value for key, value in os.environ.items() if key not in {"MYPYPATH", "PYTHONPATH"}}
    return subprocess.run(
        [sys.executable, *arguments], capture_output=True, text=True, env=environment, check=False, timeout=600, **options
    )


def test_the_package_says_it_is_typed():
    folder = pathlib.Path(satline.__file__).parent
    assert (folder / "py.typed").is_file()
    assert (folder / "__init__.pyi").is_file() and (folder / "units.pyi").is_file()


def test_stubs_agree_with_the_module(tmp_path):
    result = run("-m", "mypy.stubtest", "satline", cwd=tmp_path)
    assert result.returncode == 0, result.stdout + result.stderr


def test_the_package_itself_is_well_typed(tmp_path):
    result = run("-m", "mypy", "--strict", "-p", "satline", cwd=tmp_path)
    assert result.returncode == 0, result.stdout + result.stderr


def test_stubtest_would_notice(tmp_path):
    """Shown a stub with one wrong argument name, the same check fails."""
    folder = pathlib.Path(satline.__file__).parent
    stubs = tmp_path / "stubs" / "satline"
    stubs.mkdir(parents=True)
    for source in folder.iterdir():
        if source.suffix in {".py", ".pyi"}:
            text = source.read_text()
            if source.name == "__init__.pyi":
                assert "def refrigerant(name: str)" in text
                text = text.replace("def refrigerant(name: str)", "def refrigerant(title: str)")
            (stubs / source.name).write_text(text)
    environment = {**os.environ, "MYPYPATH": str(stubs.parent)}
    result = subprocess.run(
        [sys.executable, "-m", "mypy.stubtest", "satline"],
        capture_output=True,
        text=True,
        env=environment,
        cwd=tmp_path,
        check=False,
        timeout=600,
    )
    assert result.returncode != 0 and "satline.refrigerant" in result.stdout, result.stdout + result.stderr


def test_a_type_checker_sees_numbers_and_arrays(tmp_path):
    (tmp_path / "program.py").write_text(PROGRAM)
    result = run("-m", "mypy", "--strict", "program.py", cwd=tmp_path)
    revealed = [line.split('"')[1] for line in result.stdout.splitlines() if "Revealed type" in line]
    assert [text.replace("builtins.", "") for text in revealed] == [
        FLOAT, FLOAT, FLOAT, ARRAY, ARRAY, FLOAT, ARRAY, ARRAY, "float | None", ARRAY,
        "satline._state.State", "satline._state.States", MASKED,
    ], result.stdout  # fmt: skip
    errors = [line for line in result.stdout.splitlines() if ": error:" in line]
    assert len(errors) == 2, result.stdout
    assert "dew_temperature_k" in errors[0] and "read-only" in errors[1], result.stdout
