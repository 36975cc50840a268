"""A frame of a million readings, judged from Python: seconds of one core, and how much memory it took.

Run `python benches/frame.py [ROWS]` with the package installed. The readings are invented; every thousandth row is no reading
and must come back with its error. The seconds are those of the processor, all threads together, so that a busy machine says
the same as an idle one; the aim is 30 s for a million rows.
"""

import resource
import sys
import time

import numpy as np

import satline

ROWS = int(sys.argv[1]) if len(sys.argv) > 1 else 1_000_000
UNITS = 1_000


def readings(rows, seed):
    random = np.random.default_rng(seed)
    frame = {
        "unit": random.integers(0, UNITS, rows),
        "refrigerant": "R-410A",
        "metering": np.where(random.random(rows) < 0.5, "fixed-orifice", "thermostatic-valve"),
        "outdoor_dry_bulb_k": random.uniform(290.0, 315.0, rows),
        "return_dry_bulb_k": random.uniform(295.0, 302.0, rows),
        "return_wet_bulb_k": random.uniform(288.0, 294.0, rows),
        "supply_dry_bulb_k": random.uniform(283.0, 290.0, rows),
        "suction_pressure_pa": random.uniform(8e5, 1.1e6, rows),
        "suction_line_temperature_k": random.uniform(280.0, 292.0, rows),
        "liquid_pressure_pa": random.uniform(2.2e6, 3.2e6, rows),
        "liquid_line_temperature_k": random.uniform(300.0, 312.0, rows),
        "discharge_line_temperature_k": random.uniform(335.0, 365.0, rows),
        "minutes_since_change": np.full(rows, 30.0),
        "target_subcooling_k": np.where(random.random(rows) < 0.5, 5.0, np.nan),
    }
    return frame


def memory_mb():
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024


def timed(name, frame, *arguments):
    before, start = memory_mb(), time.process_time()
    found = satline.diagnose_frame(frame, *arguments)
    seconds = time.process_time() - start
    bad = int(np.count_nonzero(found["error"] != ""))
    assert len(found["error"]) == ROWS and bad == -(-ROWS // 1_000)
    answers = sum(column.nbytes for column in found.values()) / 1024**2
    print(
        f"{name}: {ROWS} rows in {seconds:.1f} s ({seconds / ROWS * 1e6:.1f} µs a row), {bad} of them no readings; "
        f"peak memory {before:.0f} to {memory_mb():.0f} MB, of which answers {answers:.0f} MB"
    )


frame = readings(ROWS, 1)
frame["liquid_pressure_pa"][::1_000] = 9e9
timed("without a baseline", frame)
timed("three healthy readings a unit", frame, {**readings(3 * UNITS, 2), "unit": np.arange(3 * UNITS) % UNITS})
