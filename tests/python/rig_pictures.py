"""Draws core/docs/rig/*.svg: `python rig_pictures.py [folder]`, with the package and matplotlib installed.

matplotlib is needed for these pictures only, so it is not among the checks' requirements; drawn with 3.11.2.
"""

import pathlib
import sys

import matplotlib
import numpy as np

matplotlib.use("svg")
from matplotlib import pyplot as plt  # noqa: E402

import satline  # noqa: E402
from satline import rig, units  # noqa: E402

# Text as outlines: the same on every screen. No date and a fixed salt: the same file from the same numbers.
plt.rcParams.update({"svg.fonttype": "path", "svg.hashsalt": "satline", "font.size": 9, "axes.grid": True})
plt.rcParams.update({"grid.color": "0.88", "axes.spines.top": False, "axes.spines.right": False})

CAPACITY_W = 10_550.0
RATED = units.kelvin_from_fahrenheit(np.array([95.0, 80.0, 67.0])).tolist()
STYLES = {
    "fixed-orifice": {"color": "black", "linestyle": "-", "label": "fixed orifice"},
    "thermostatic-valve": {"color": "0.45", "linestyle": "--", "label": "thermostatic valve"},
}


def charge_sweep() -> plt.Figure:
    """Superheat, subcooling and capacity against charge, of a unit with an orifice and of one with a valve."""
    shares = np.linspace(0.6, 1.3, 141)
    faults = {"undercharge": np.maximum(1.0 - shares, 0.0), "overcharge": np.maximum(shares - 1.0, 0.0)}
    figure, (superheat, subcooling, capacity) = plt.subplots(3, 1, sharex=True, figsize=(6.4, 7.6), layout="constrained")
    for metering, style in STYLES.items():
        states = rig.Unit("R-410A", metering, CAPACITY_W).solve(*RATED, faults=faults)
        superheat.plot(100.0 * shares, states.superheat_k, **style)
        subcooling.plot(100.0 * shares, states.subcooling_k, **style)
        capacity.plot(100.0 * shares, 1e-3 * states.capacity_w, **style)
    for axes, name in ((superheat, "superheat, vapour port"), (subcooling, "subcooling, liquid port")):
        axes.set_ylabel(f"{name} (K)")
        axes.set_ylim(-1.0, None)
        axes.secondary_yaxis("right", functions=(lambda k: 1.8 * k, lambda f: f / 1.8)).set_ylabel("(°F)")
    capacity.set_ylabel("capacity (kW)")
    to_btu = 3.412141633
    capacity.secondary_yaxis("right", functions=(lambda kw: to_btu * kw, lambda btu: btu / to_btu)).set_ylabel("(kBtu/h)")
    capacity.set_xlabel("charge (% of nameplate)")
    for axes in (superheat, subcooling, capacity):
        axes.axvline(100.0, color="0.6", linewidth=0.8)
    superheat.legend(frameon=False, loc="upper right")
    superheat.set_title("Simulated 3-ton R-410A units at 95 °F outdoors, 80/67 °F indoors", fontsize=10)
    return figure


def pressure_enthalpy() -> plt.Figure:
    """The cycle of an orifice unit, sound and undercharged, on the refrigerant's dome."""
    r410a = satline.refrigerant("R-410A")
    # Closer together towards the top, where the dome is flat.
    pressures = r410a.critical_pressure_pa * (1.0 - np.geomspace(0.96, 7e-4, 300))
    liquid, vapor = (r410a.state(pressure_pa=pressures, quality=quality) for quality in (0.0, 1.0))
    figure, axes = plt.subplots(figsize=(6.4, 5.0), layout="constrained")
    around = np.concatenate([liquid.enthalpy_j_kg, vapor.enthalpy_j_kg[::-1]])
    axes.plot(1e-3 * around, 1e-3 * np.concatenate([pressures, pressures[::-1]]), color="0.6", linewidth=1.2)
    unit = rig.Unit("R-410A", "fixed-orifice", CAPACITY_W)
    sound = unit.solve(*RATED)
    low = unit.solve(*RATED, faults={"undercharge": 0.3})
    for state, style in (
        (sound, {"color": "black", "linestyle": "-", "label": "sound", "marker": "o", "markersize": 3}),
        (low, {"color": "0.45", "linestyle": "--", "label": "30 % of the charge missing"}),
    ):
        enthalpies = [1e-3 * point.enthalpy_j_kg for point in state.cycle]
        axes.plot(enthalpies, [1e-3 * point.pressure_pa for point in state.cycle], **style)
    at = {point.place: (1e-3 * point.enthalpy_j_kg, 1e-3 * point.pressure_pa) for point in sound.cycle}
    for place, words, offset, side in (
        ("discharge", "discharge", (4, 6), "left"),
        ("liquid-port", "liquid port", (-6, 6), "right"),
        ("evaporator-inlet", "after the orifice", (-6, -12), "right"),
        ("vapor-port", "vapour port", (-4, 6), "right"),
    ):
        clear = {"facecolor": "white", "edgecolor": "none", "pad": 1.0}
        axes.annotate(words, at[place], offset, textcoords="offset points", ha=side, bbox=clear)
    axes.set_yscale("log")
    ticks = [300, 500, 700, 1000, 1500, 2000, 3000, 4000, 5000]
    axes.set_yticks(ticks, [str(tick) for tick in ticks])
    axes.minorticks_off()
    axes.set_ylim(250, 6000)
    axes.set_xlim(150, 520)
    axes.set_xlabel("specific enthalpy (kJ/kg; 200 kJ/kg in saturated liquid at 0 °C)")
    axes.set_ylabel("absolute pressure (kPa)")
    psi = 6.894757293  # kPa
    right = axes.secondary_yaxis("right", functions=(lambda kpa: kpa / psi, lambda value: value * psi))
    marks = [50, 75, 100, 150, 200, 300, 400, 600, 800]
    right.set_yticks(marks, [str(mark) for mark in marks])
    right.minorticks_off()
    right.set_ylabel("(psi, absolute)")
    axes.legend(frameon=False, loc="upper left")
    axes.set_title("Cycle of a simulated 3-ton R-410A unit with a fixed orifice, 95 °F outdoors", fontsize=10)
    return figure


def main() -> None:
    """Draws all pictures into a folder."""
    usual = pathlib.Path(__file__).parents[2] / "core" / "docs" / "rig"
    folder = pathlib.Path(sys.argv[1]) if len(sys.argv) > 1 else usual
    folder.mkdir(parents=True, exist_ok=True)
    for name, draw in (("charge_sweep", charge_sweep), ("pressure_enthalpy", pressure_enthalpy)):
        figure = draw()
        figure.savefig(folder / f"{name}.svg", metadata={"Date": None, "Creator": None})
        # For looking at while drawing; the docs take the SVG.
        if len(sys.argv) > 1:
            figure.savefig(folder / f"{name}.png", dpi=110)


if __name__ == "__main__":
    main()
