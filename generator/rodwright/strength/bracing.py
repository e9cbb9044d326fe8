"""How far a panel that braces a carcass lets it sway: formulas, for forces in its own plane.

Lengths in mm, forces in N, moduli in N/mm2.  ``push`` is at the top of a panel ``width`` wide and
``height`` high.
"""

from __future__ import annotations

from math import pi

from rodwright.trade.sources import Source

SHEAR_FLOW = Source("shear flow in a panel held all round: any text on light-frame diaphragms")
PLAY = Source("geometry: a panel that jams in a frame leaning by its play")
KSER = Source("EN 1995-1-1:2004, table 7.1", seen=False)
BUCKLING = Source(
    "plate buckling in shear, Timoshenko and Gere, Theory of elastic stability", False
)
SWAY = Source("EN 1993-1-1:2005, 5.2.1: sway with the load standing on it", seen=False)


def shear_sway(push: float, width: float, height: float, thickness: float, modulus: float) -> float:
    """Sway (mm) by the panel's own shear: F H / (G t B)."""
    return push * height / (modulus * thickness * width)


def slip_sway(push: float, width: float, height: float, spacing: float, slip: float) -> float:
    """Sway (mm) by the slip of fasteners ``spacing`` apart all round, each giving way by a mm
    for every ``slip`` N: 2 e (1 + H/B), e = (F/B) s/k."""
    return 2 * push / width * spacing / slip * (1 + height / width)


def play_sway(width: float, height: float, play: float) -> float:
    """Sway (mm) before a panel loose in its grooves jams, with ``play`` mm on every side:
    2 c (1 + H/B)."""
    return 2 * play * (1 + height / width)


def slip_modulus(diameter: float, density: float, drilled: bool) -> float:
    """How stiff a nail or screw is across itself, N/mm, by its diameter (mm) and the mean
    density (kg/m3; of two woods the root of their product): rho^1.5 d/23 drilled, else
    rho^1.5 d^0.8/30 (EN 1995-1-1, table 7.1, from memory)."""
    return float(density**1.5 * (diameter / 23 if drilled else diameter**0.8 / 30))


def buckling_stress(
    width: float, height: float, thickness: float, modulus: float, poisson: float = 0.3
) -> float:
    """Shear stress (N/mm2) at which a panel held at its edges buckles:
    (5.34 + 4 (b/a)^2) pi^2 E/(12 (1 - nu^2)) (t/b)^2, b its shorter side."""
    short, long = sorted((width, height))
    factor = 5.34 + 4 * (short / long) ** 2
    return factor * pi**2 * modulus / (12 * (1 - poisson**2)) * (thickness / short) ** 2


def with_load(sway: float, push: float, load: float, height: float) -> float | None:
    """Sway (mm) with ``load`` (N) standing at ``height``, which leans with it; None where it
    folds: d/(1 - W d/(F h))."""
    leaning = load * sway / (push * height)
    return None if leaning >= 1 else sway / (1 - leaning)
