"""Compares moist air with psychrolib, an independent general-purpose library (test only).

Reads what `cargo run -p satline-tests --bin oracle_air` prints: air by dry bulb and relative humidity over -40 to 60
degrees Celsius and 60 to 108 kPa. psychrolib computes each quantity from the same pair; its wet bulb and dew point are
solved to 0.001 K only, so ours are also put into its equations forwards, where every digit counts. Prints the worst
deviation of each quantity, and fails if one is above its bound.

Near 0 degrees Celsius some air has two wet bulbs, one over ice and one over liquid. There psychrolib's bisection ends at
either; such air is counted apart, and held to the forward equation only.
"""

import math
import subprocess
import sys

import psychrolib

# Relative, but for the wet bulb's 0.02 K.
BOUND = 1e-4
WET_BULB_BOUND_K = 0.02
ZERO = 273.15


class Worst:
    def __init__(self):
        self.rows = {}

    def see(self, quantity, deviation, bound, place):
        # A NaN deviation must not pass for a small one.
        deviation = abs(deviation) if math.isfinite(deviation) else math.inf
        known, _, _, count = self.rows.get(quantity, (-1.0, 0.0, None, 0))
        best = (deviation, bound, place) if deviation > known else self.rows[quantity][:3]
        self.rows[quantity] = (*best, count + 1)


def has_two_wet_bulbs(dry, pressure, ratio):
    """Whether that much water lies between what a wick at 0 degrees holds up with liquid on it, and with ice."""
    if dry < 0:
        return False
    saturated = psychrolib.GetSatHumRatio(0.0, pressure)
    liquid = (2501 * saturated - 1.006 * dry) / (2501 + 1.86 * dry)
    ice = (2830 * saturated - 1.006 * dry) / (2830 + 1.86 * dry)
    return liquid <= ratio <= ice


def main(rows):
    psychrolib.SetUnitSystem(psychrolib.SI)
    worst = Worst()
    apart = 0
    for row in rows:
        pressure, dry_k, share, ratio, wet_k, dew_k, enthalpy, volume, density, degree = map(float, row.split(","))
        dry, wet, dew = dry_k - ZERO, wet_k - ZERO, dew_k - ZERO
        place = (dry, pressure, share)
        theirs = psychrolib.GetHumRatioFromRelHum(dry, share, pressure)

        def relative(quantity, ours, wanted):
            worst.see(quantity, ours / wanted - 1.0, BOUND, place)

        relative("humidity ratio", ratio, theirs)
        # A difference from zero at 0 degrees Celsius: relative to the enthalpy of 1 K where it is small.
        wanted = psychrolib.GetMoistAirEnthalpy(dry, theirs)
        worst.see("enthalpy", (enthalpy - wanted) / max(abs(wanted), 1006.0), BOUND, place)
        relative("specific volume", volume, psychrolib.GetMoistAirVolume(dry, theirs, pressure))
        relative("density", density, psychrolib.GetMoistAirDensity(dry, theirs, pressure))
        relative("degree of saturation", degree, psychrolib.GetDegreeOfSaturation(dry, theirs, pressure))
        relative("dew point", dew_k, psychrolib.GetTDewPointFromRelHum(dry, share) + ZERO)
        relative("humidity ratio from our dew point", ratio, psychrolib.GetHumRatioFromTDewPoint(dew, pressure))
        relative("relative humidity from our ratio", share, psychrolib.GetRelHumFromHumRatio(dry, ratio, pressure))
        forward = psychrolib.GetHumRatioFromTWetBulb(dry, min(wet, dry), pressure)
        # Where nearly no water is left, a wet bulb's last digits are all of it: relative to the wick's own ratio.
        scale = max(ratio, 1e-3 * psychrolib.GetSatHumRatio(wet, pressure))
        worst.see("humidity ratio from our wet bulb", (forward - ratio) / scale, BOUND, place)
        if has_two_wet_bulbs(dry, pressure, ratio):
            apart += 1
        else:
            worst.see("wet bulb, K", wet - psychrolib.GetTWetBulbFromRelHum(dry, share, pressure), WET_BULB_BOUND_K, place)

    failed = 0
    print("quantity                              states  worst deviation  at degC        Pa   RH")
    for quantity, (deviation, bound, (dry, pressure, share), count) in worst.rows.items():
        good = deviation <= bound
        failed += not good
        mark = "" if good else f"  NOT within {bound:.0e}"
        print(f"{quantity:36}{count:8}  {deviation:15.1e}  {dry:7.2f}  {pressure:8.0f}  {share:.3f}{mark}")
    print(f"{apart} states with two wet bulbs are held to the forward equation only")
    # Nearly all air has one wet bulb: a comparison that leaves out more has gone wrong.
    states = worst.rows["humidity ratio"][3] if worst.rows else 0
    if not states or apart > 0.1 * states:
        failed += 1
    passed = len(worst.rows) - failed
    print(f"{passed} passed, {failed} failed")
    return 1 if failed or passed <= 0 else 0


if __name__ == "__main__":
    command = ["cargo", "run", "--quiet", "--release", "-p", "satline-tests", "--bin", "oracle_air"]
    sys.exit(main(subprocess.run(command, check=True, capture_output=True, text=True).stdout.splitlines()))
