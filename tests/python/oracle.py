"""Compares the equations of state with CoolProp, an independent general-purpose library (test only).

Reads the points that `cargo run -p satline-tests --bin oracle_points` prints and asks CoolProp for the same states.
Prints the worst deviation of each refrigerant, and fails if one is above its bound. CoolProp is asked for pure
saturation by its own solver; for blends only for pressure and fugacities at the temperature, densities and
compositions found here, because its mixture flash carries 1e-7 and fails at some points.
"""

import csv
import math
import pathlib
import subprocess
import sys
from collections import defaultdict

import CoolProp
import CoolProp.CoolProp as CP

# The oracle's names of the pure fluids that are not simply "R" and the number.
NAMES = {
    "R-152a": "R152A",
    "R-170": "Ethane",
    "R-227ea": "R227EA",
    "R-236fa": "R236FA",
    "R-290": "n-Propane",
    "R-600": "n-Butane",
    "R-600a": "IsoButane",
    "R-601": "n-Pentane",
    "R-601a": "Isopentane",
    "R-717": "Ammonia",
    "R-744": "CarbonDioxide",
    "R-1224yd(Z)": "R1224YDZ",
    "R-1270": "Propylene",
    "R-C318": "RC318",
    "R-E170": "DimethylEther",
}


# Pure fluids whose gas constant the oracle states otherwise than the paper; with the oracle's, the papers' check values
# are missed by 1e-6 and 3e-7. Their pressures are compared after division by the gas constant.
PAPER_GAS_CONSTANT = {"R-1234ze(E)": 8.3144621, "R-717": 8.314462618}

RECORD = pathlib.Path(__file__).parent.parent / "data" / "oracle_deviations.csv"


def name(designation):
    return NAMES.get(designation, designation.replace("-", ""))

# Worst accepted relative deviation of each quantity; of ln f the absolute one.
BOUNDS = {
    "saturation pressure": 1e-7,
    "saturated liquid density": 1e-8,
    "saturated vapour density": 1e-8,
    "density": 1e-8,
    "vapour pressure at the solution": 1e-9,
    "liquid pressure at the solution": 1e-9,
    "liquid density for that pressure": 1e-12,
    "ln fugacity at the solution": 1e-9,
}


def main(points, write):
    states = {}
    worst = defaultdict(lambda: (0.0, 0.0))
    counts = defaultdict(int)

    def compare(designation, quantity, deviation, temperature):
        # A NaN deviation must not pass for a small one.
        deviation = abs(deviation) if math.isfinite(deviation) else math.inf
        counts[designation, quantity] += 1
        worst[designation, quantity] = max(worst[designation, quantity], (deviation, temperature))

    for row in csv.reader(points):
        kind, designation = row[:2]
        if kind == "components":
            states[designation] = CP.AbstractState("HEOS", "&".join(name(component) for component in row[2:]))
            continue
        numbers = [float(cell) for cell in row[2:]]
        state = states[designation]
        temperature = numbers[0]
        constant = state.gas_constant()
        scale = constant / PAPER_GAS_CONSTANT.get(designation, constant)
        if kind == "density":
            _, pressure, density = numbers
            state.unspecify_phase()
            compare(designation, "density", density / oracle_density(state, temperature, pressure * scale, density) - 1, temperature)
            continue
        liquid, vapor, liquid_pressure, vapor_pressure = numbers[1:5]
        components = [numbers[start : start + 4] for start in range(5, len(numbers), 4)]
        if len(components) == 1:
            # Once as bubble point and once as dew point: both must agree with the oracle's one saturation line.
            state.update(CP.QT_INPUTS, 0, temperature)
            densities = [state.saturated_liquid_keyed_output(CP.iDmolar), state.saturated_vapor_keyed_output(CP.iDmolar)]
            compare(designation, "saturated liquid density", liquid / densities[0] - 1, temperature)
            compare(designation, "saturated vapour density", vapor / densities[1] - 1, temperature)
            # The oracle's pressure at its own vapour density: what it reports for a quality of zero is, far below the
            # boiling point, a difference of large numbers in the liquid (R-22 at 116 K: off by 1.3e-7 of 0.4 Pa).
            state.specify_phase(CP.iphase_gas)
            state.update(CP.DmolarT_INPUTS, densities[1], temperature)
            compare(designation, "saturation pressure", vapor_pressure * scale / state.p() - 1, temperature)
            state.unspecify_phase()
            continue
        for which, (density, pressure) in enumerate([(liquid, liquid_pressure), (vapor, vapor_pressure)]):
            state.set_mole_fractions([component[which] for component in components])
            state.specify_phase(CP.iphase_gas if which else CP.iphase_liquid)
            state.update(CP.DmolarT_INPUTS, density, temperature)
            if which:
                compare(designation, "vapour pressure at the solution", pressure / state.p() - 1, temperature)
            else:
                # The pressure of a cold liquid is a small difference of large terms, and rounding is all that is left of
                # it: there the deviation is counted as the change of density that it is worth. Above the normal boiling
                # point it is counted as it is.
                if pressure > 101325:
                    compare(designation, "liquid pressure at the solution", pressure / state.p() - 1, temperature)
                else:
                    stiffness = density * state.first_partial_deriv(CP.iP, CP.iDmolar, CP.iT)
                    compare(designation, "liquid density for that pressure", (pressure - state.p()) / stiffness, temperature)
            for index, component in enumerate(components):
                deviation = component[2 + which] - math.log(state.fugacity(index))
                compare(designation, "ln fugacity at the solution", deviation, temperature)

    failed = 0
    print(f"CoolProp {CoolProp.__version__}")
    print("refrigerant  quantity                      points  worst deviation  at K")
    for (designation, quantity), (deviation, temperature) in sorted(worst.items()):
        bound = BOUNDS[quantity]
        good = deviation <= bound
        failed += not good
        count = counts[designation, quantity]
        mark = "" if good else f"  NOT within {bound:.0e}"
        print(f"{designation:12} {quantity:32}{count:6}  {deviation:15.1e}  {temperature:.3f}{mark}")
    failed += record(worst, write)
    passed = len(worst) - failed
    print(f"{len(states)} refrigerants")
    print(f"{passed} passed, {failed} failed")
    return 1 if failed or not passed else 0


def record(worst, write):
    """Keeps the worst deviation of each refrigerant, rounded up to a power of ten, for the documentation.

    Digits that only rounding decides differ between machines, so powers of ten below 1e-12 are not told apart."""
    lines = ["# Worst deviation from CoolProp 8.0.0, rounded up to a power of ten: `python tests/python/oracle.py --write`."]
    lines.append("designation,quantity,worst")
    for (designation, quantity), (deviation, _) in sorted(worst.items()):
        power = max(-12, math.ceil(math.log10(deviation))) if deviation > 0 else -12
        lines.append(f"{designation},{quantity},1e{power}")
    text = "\n".join(lines) + "\n"
    if write:
        RECORD.write_text(text, encoding="utf-8")
        return 0
    known = dict(line.rsplit(",", 1) for line in RECORD.read_text(encoding="utf-8").splitlines()[2:])
    grown = 0
    for line in lines[2:]:
        key, value = line.rsplit(",", 1)
        if key not in known or float(value) > 10 * float(known[key]):
            print(f"{key}: {value}, recorded {known.get(key)}: run with --write if that is meant")
            grown += 1
    return grown


def oracle_density(state, temperature, pressure, near):
    """The oracle's density at temperature and pressure.

    Newton's method on the oracle's own pressure, from the density found here, so that a state that its flash refuses
    (beyond its melting line) is still compared; a wrong start far from a root does not come back near."""
    density = near
    state.specify_phase(CP.iphase_gas)
    for _ in range(4):
        state.update(CP.DmolarT_INPUTS, density, temperature)
        density -= (state.p() - pressure) / state.first_partial_deriv(CP.iP, CP.iDmolar, CP.iT)
    try:
        state.unspecify_phase()
        state.update(CP.PT_INPUTS, pressure, temperature)
        found = state.rhomolar()
    except ValueError:
        return density
    # The flash itself stops at 1e-9 or so; its root must be the same one.
    return density if abs(found / density - 1) < 1e-6 else found


if __name__ == "__main__":
    command = ["cargo", "run", "--quiet", "--release", "-p", "satline-tests", "--bin", "oracle_points"]
    lines = subprocess.run(command, check=True, capture_output=True, text=True).stdout.splitlines()
    sys.exit(main(lines, "--write" in sys.argv[1:]))
