"""Array work lets other threads run. The detector is first shown a call that does not, to prove that it can fail."""

import threading
import time

import numpy as np

import satline


def longest_standstill(work) -> float:
    """The longest time, in seconds, for which another thread could not run while `work` did."""
    ticks: list[float] = []
    span: list[float] = []
    started = threading.Event()

    def worker():
        started.set()
        begin = time.perf_counter()
        work()
        span.extend([begin, time.perf_counter()])

    thread = threading.Thread(target=worker)
    thread.start()
    started.wait()
    while thread.is_alive():
        ticks.append(time.perf_counter())
        time.sleep(0)
    thread.join()
    begin, end = span
    return float(np.diff([begin, *(tick for tick in ticks if begin < tick < end), end]).max())


def duration(work) -> float:
    """The shortest of three runs, in seconds."""
    times = []
    for _ in range(3):
        begin = time.perf_counter()
        work()
        times.append(time.perf_counter() - begin)
    return min(times)


def stands_still(work) -> bool:
    """Whether other threads wait for most of `work`. A busy machine can delay a thread too: the best of five counts."""
    return min(longest_standstill(work) for _ in range(5)) > duration(work) / 3


def test_the_detector_sees_a_call_that_holds_the_lock():
    numbers = np.random.default_rng(1).random(300_000).tolist()
    # Sorting a list of floats is one uninterrupted call of the interpreter.
    assert stands_still(lambda: sorted(numbers))


def test_array_functions_release_the_lock(r410a):
    pressures = np.linspace(3e5, 3e6, 12_000_000)
    assert not stands_still(lambda: r410a.superheat_k(300.0, pressures))
    assert not stands_still(lambda: r410a.subcooling_k(np.full(pressures.shape, 300.0), pressures))


def test_a_frame_releases_the_lock():
    frame = {"refrigerant": "R-410A", "metering": "fixed-orifice", "outdoor_dry_bulb_k": 308.0, "return_wet_bulb_k": 291.0,
        "suction_pressure_pa": np.linspace(8e5, 1.1e6, 131_072), "suction_line_temperature_k": 290.0}  # fmt: skip
    assert not stands_still(lambda: satline.diagnose_frame(frame))


def test_threads_get_the_right_answers(r410a):
    pressures = np.linspace(3e5, 3e6, 200_000)
    expected = r410a.dew_temperature_k(pressures)
    results: list[bool] = []

    def worker(start: int):
        for _ in range(5):
            shifted = np.roll(pressures, start)
            results.append(np.array_equal(r410a.dew_temperature_k(shifted), np.roll(expected, start)))

    threads = [threading.Thread(target=worker, args=(start,)) for start in range(4)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert results == [True] * 20


def test_a_change_of_the_input_meanwhile_does_no_harm(r410a):
    pressures = np.full(4_000_000, 9e5)
    results = []
    thread = threading.Thread(target=lambda: results.append(r410a.dew_temperature_k(pressures)))
    thread.start()
    while thread.is_alive():
        pressures[::4096] = 8e5
        pressures[::4096] = 9e5
    thread.join()
    # The copy may catch either value, never anything else.
    assert set(np.unique(results[0])) <= {r410a.dew_temperature_k(9e5), r410a.dew_temperature_k(8e5)}
