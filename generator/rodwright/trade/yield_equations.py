"""How a nail, screw or bolt across two parts gives (Johansen's theory, as NDS 2018 has it).

Millimetres, newtons, N/mm2.
"""

from __future__ import annotations

from math import sqrt

from rodwright.lengths import from_inches
from rodwright.trade.sources import Source

YIELD = Source(
    "NDS 2018, ch. 12, yield limit equations of single shear, read in the open-source program XC"
)
_INCH = from_inches("1")


def yield_loads(
    diameter: float, strength: float, main: tuple[float, float], side: tuple[float, float]
) -> dict[str, float]:
    """Loads at which a fixing across two parts gives, N, by the way it does.

    ``diameter`` is that of the shank that bends, mm, ``strength`` its bending yield strength,
    N/mm2; ``main`` and ``side`` are what the part that holds it and the one under its head bear
    (N/mm2) and how long it lies in them (mm).  The modes are those of NDS 2018, table 12.3.1A
    (Johansen's theory), before reduction: Im and Is, either part crushed; II, both, the fixing
    turned; IIIm, IIIs, it bends in one; IV, in both.

    Raises:
        ValueError: a figure isn't above 0.
    """
    (bears_main, in_main), (bears_side, in_side) = main, side
    if min(diameter, strength, *main, *side) <= 0:
        raise ValueError("a fixing needs its size, and wood on both sides")
    e, t = bears_main / bears_side, in_main / in_side
    k1 = (sqrt(e + 2 * e**2 * (1 + t + t**2) + t**2 * e**3) - e * (1 + t)) / (1 + e)
    slim = 2 * strength * diameter**2 / (3 * bears_main)
    k2 = -1 + sqrt(2 * (1 + e) + slim * (1 + 2 * e) / in_main**2)
    k3 = -1 + sqrt(2 * (1 + e) / e + slim * (2 + e) / in_side**2)
    return {
        "Im": diameter * in_main * bears_main,
        "Is": diameter * in_side * bears_side,
        "II": k1 * diameter * in_side * bears_side,
        "IIIm": k2 * diameter * in_main * bears_main / (1 + 2 * e),
        "IIIs": k3 * diameter * in_side * bears_main / (2 + e),
        "IV": diameter**2 * sqrt(2 * bears_main * strength / (3 * (1 + e))),
    }


def reduction(diameter: float) -> float:
    """What yield loads are divided by for loads of normal duration, by the diameter in mm: 2.2 up
    to 0.17 in, then 10 D + 0.5 (D in inches) below 1/4 in (NDS 2018, table 12.3.1B), and 3.2 times
    1.25 at most above (any angle to the grain)."""
    inches = diameter / _INCH
    if inches <= 0.17:
        return 2.2
    return 10 * inches + 0.5 if inches < 0.25 else 4.0 * 1.25
