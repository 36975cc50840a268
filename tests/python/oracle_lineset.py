"""Compares what a line holds with CoolProp, an independent general-purpose library (test only).

Densities of subcooled and saturated liquid, saturated and superheated vapour times the area of a bore computed here; and,
behind an outdoor metering device, an expansion at constant enthalpy with the slip of Zivi (1964) put together here from
CoolProp's saturated states. The device is compared for single fluids, where one pressure has one temperature, so that
nothing but the fluid's equation enters; CoolProp's flash of mixtures at an enthalpy fails too often to judge by. Blends are
compared at given temperature and pressure with the phase imposed. Fails if a deviation is above its bound.
"""

import functools
import math
import sys

import CoolProp
import CoolProp.CoolProp as CP

import satline
from oracle import PAPER_GAS_CONSTANT, name
from satline import lineset

# Computed densities differ by the convergence of both libraries' solvers; nothing here needs more.
BOUND = 1e-6
# Temperature of the liquid and of the dew point as shares of the critical temperature, subcooling and superheat in K.
STATES = [(0.80, 0.70, 5.0, 5.0), (0.88, 0.78, 10.0, 12.0), (0.84, 0.82, 20.0, 30.0)]
FLUIDS = ["R-22", "R-32", "R-134a", "R-290", "R-600a", "R-744", "R-1234yf", "R-152a", "R-125"]
BLENDS = ["R-410A", "R-407C", "R-404A", "R-454B", "R-448A", "R-452B", "R-513A", "R-32"]


def zivi(quality, liquid, vapor):
    slip = (liquid / vapor) ** (1 / 3)
    void = 1 / (1 + vapor / liquid * slip * (1 - quality) / quality)
    return void * vapor + (1 - void) * liquid


def main():
    worst = {}
    counts = {}

    def compare(kind, designation, ours, theirs):
        deviation = abs(ours / theirs - 1)
        deviation = deviation if math.isfinite(deviation) else math.inf
        counts[kind] = counts.get(kind, 0) + 1
        worst[kind] = max(worst.get(kind, (0.0, "")), (deviation, designation))

    area = math.pi / 4 * (0.311 * 0.0254) ** 2
    tube = lineset.Tube("3/8")
    for designation in FLUIDS:
        assert designation not in PAPER_GAS_CONSTANT
        refrigerant = satline.refrigerant(designation)
        holds = functools.partial(lineset.charge_per_length_kg_m, refrigerant, tube)
        state = CP.AbstractState("HEOS", name(designation))
        critical = state.T_critical()
        for warm, cold, subcooling, superheat in STATES:
            # Carbon dioxide is solid at the lowest of these shares.
            liquid, dew = warm * critical, max(cold * critical, state.Tmin() + 5.0)
            state.update(CP.QT_INPUTS, 0, liquid + subcooling)
            high = state.p()
            state.update(CP.PT_INPUTS, high, liquid)
            compare("subcooled liquid", designation, holds(liquid, pressure_pa=high), area * state.rhomass())
            enthalpy = state.hmass()
            state.update(CP.QT_INPUTS, 0, liquid)
            compare("saturated liquid", designation, holds(liquid), area * state.rhomass())
            state.update(CP.QT_INPUTS, 1, dew)
            low = state.p()
            compare("saturated vapour", designation, holds(dew, "vapor"), area * state.rhomass())
            vapor, vapor_enthalpy = state.rhomass(), state.hmass()
            state.update(CP.PT_INPUTS, low, dew + superheat)
            compare("superheated vapour", designation, holds(dew + superheat, "vapor", low), area * state.rhomass())
            state.update(CP.QT_INPUTS, 0, dew)
            quality = (enthalpy - state.hmass()) / (vapor_enthalpy - state.hmass())
            if quality <= 0:
                continue
            found = lineset.line_set_charge(
                refrigerant,
                tube,
                tube,
                10.0,
                covered_length_m=0.0,
                liquid_temperature_k=liquid,
                liquid_pressure_pa=high,
                vapor_temperature_k=dew + superheat,
                vapor_pressure_pa=low,
                metering_place="outdoor",
                downstream_temperature_k=dew,
            )
            expected = 10.0 * area * zivi(quality, state.rhomass(), vapor)
            compare("behind an outdoor device", designation, found.liquid.holds_kg, expected)
    for designation in BLENDS:
        refrigerant = satline.refrigerant(designation)
        holds = functools.partial(lineset.charge_per_length_kg_m, refrigerant, tube)
        components = refrigerant.components
        state = CP.AbstractState("HEOS", "&".join(name(component.designation) for component in components))
        if len(components) > 1:
            state.set_mass_fractions([component.mass_fraction for component in components])
        for liquid, superheated in [(290.0, 280.0), (300.0, 285.0), (308.15, 290.0)]:
            high = float(refrigerant.bubble_pressure_pa(liquid + 8.0))
            state.specify_phase(CP.iphase_liquid)
            state.update(CP.PT_INPUTS, high, liquid)
            compare("blend, liquid", designation, holds(liquid, pressure_pa=high), area * state.rhomass())
            low = float(refrigerant.dew_pressure_pa(superheated - 6.0))
            state.specify_phase(CP.iphase_gas)
            state.update(CP.PT_INPUTS, low, superheated)
            compare("blend, vapour", designation, holds(superheated, "vapor", low), area * state.rhomass())
            state.unspecify_phase()

    failed = 0
    print(f"CoolProp {CoolProp.__version__}")
    for kind, (deviation, designation) in worst.items():
        good = deviation <= BOUND and counts[kind] >= 20
        failed += not good
        print(f"{kind:26} {counts[kind]:3} states  worst {deviation:.1e} {designation}{'' if good else '  NOT GOOD'}")
    if len(worst) != 7:
        failed += 1
        print("something was not compared")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
