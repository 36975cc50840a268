"""The same calls here and in CoolProp, timed in one run: read the ratios, not the times.

Run `python benches/side_by_side.py` with CoolProp installed. The outside library is called from Python through its
low-level interface, whose overhead (some tenths of a microsecond a call) is in its times.
"""

import statistics
import subprocess
import time

import CoolProp
import CoolProp.CoolProp as CP

CALLS, BLOCKS = 200, 21


def median(call):
    times = []
    for _ in range(BLOCKS):
        start = time.perf_counter()
        for index in range(CALLS):
            call(250.0 + 0.25 * index)
        times.append((time.perf_counter() - start) / CALLS * 1e9)
    return statistics.median(times)


def blend(*components):
    state = CP.AbstractState("HEOS", "&".join(name for name, _ in components))
    state.set_mass_fractions([fraction for _, fraction in components])
    return state


def bubble(state):
    def call(temperature):
        try:
            state.update(CP.QT_INPUTS, 0, temperature)
        except ValueError:
            pass  # its flash fails at some points; the time is spent all the same

    return call


def main():
    command = ["cargo", "run", "--quiet", "--release", "-p", "satline-benches", "--bin", "speed"]
    lines = subprocess.run(command, check=True, capture_output=True, text=True).stdout.splitlines()
    ours = dict(line.rsplit(",", 1) for line in lines)
    pure, dioxide = CP.AbstractState("HEOS", "R134a"), CP.AbstractState("HEOS", "CO2")
    theirs = [
        bubble(blend(("R32", 0.15), ("R125", 0.25), ("R143a", 0.10), ("R134a", 0.50))),
        bubble(blend(("R32", 0.5), ("R125", 0.5))),
        bubble(pure),
        bubble(dioxide),
        lambda temperature: pure.update(CP.PT_INPUTS, 3e6, temperature),
        lambda temperature: dioxide.update(CP.PT_INPUTS, 8e6, temperature),
        lambda temperature: dioxide.update(CP.PT_INPUTS, 1e6, temperature),
    ]
    print(f"CoolProp {CoolProp.__version__}; microseconds a call\n")
    print(f"{'call':44}{'here':>8}{'there':>9}{'ratio':>8}")
    for (name, here), call in zip(ours.items(), theirs, strict=True):
        there = median(call)
        print(f"{name:44}{float(here) / 1e3:8.2f}{there / 1e3:9.2f}{there / float(here):8.1f}")


if __name__ == "__main__":
    main()
