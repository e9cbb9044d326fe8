"""How far a panel that braces a carcass lets it sway: formulas, for forces in its own plane.

Lengths in mm, forces in N, moduli in N/mm2.  ``push`` is at the top of a panel ``width`` wide and
``height`` high.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import pi

from rodwright.trade.sources import Source

SHEAR_FLOW = Source("shear flow in a panel held all round: any text on light-frame diaphragms")
PLAY = Source("geometry: a panel that jams in a frame leaning by its play")
KSER = Source("EN 1995-1-1:2004, table 7.1", seen=False)
BUCKLING = Source(
    "plate buckling in shear, Timoshenko and Gere, Theory of elastic stability", False
)
LEANING = Source(
    "springs side by side, less what leans with them: EN 1993-1-1:2005, 5.2.1", seen=False
)


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


def braced_sway(
    push: float, frame: float, back: float, play: float, leaning: float
) -> float | None:
    """Sway (mm) under a push (N) of a frame and a back side by side, both in N/mm, the back only
    once the frame has swayed by its ``play`` (mm); ``leaning`` (N/mm) is what stands on it over
    its height, W/h, which leans with it and pushes on.  None where it folds:
    (F + K_b p)/(K_f + K_b - W/h), without the back as long as that doesn't bear.
    """
    alone = frame - leaning
    if alone > 0 and (not back or push / alone <= play):
        return push / alone
    together = alone + back
    return (push + back * play) / together if together > 0 else None


@dataclass(frozen=True, slots=True)
class Racking:
    """What stands against a push sideways.

    ``frame`` and ``face`` are the stiffnesses of carcass and face frame, ``back`` that of the back
    (N/mm), ``play`` what it moves before it bears (mm); ``load`` is all that stands in the unit, as
    if at its ``height`` (mm), N; ``push`` is what it is pushed with at the top, N.  ``legs`` is how
    far it sways on its legs besides, mm.
    """

    frame: float
    face: float
    back: float
    play: float
    load: float
    height: float
    push: float
    legs: float = 0.0

    @property
    def sway(self) -> float | None:
        """How far it sways, mm; None where it folds."""
        bare = self.frame + self.face
        swayed = braced_sway(self.push, bare, self.back, self.play, self.load / self.height)
        return None if swayed is None or swayed + self.legs > self.height else swayed + self.legs

    @property
    def figure(self) -> float:
        """How far it sways, mm: by all its height where it folds."""
        sway = self.sway
        return self.height if sway is None else sway
