"""What nails, screws and bolts bear: drawn out, and pressed aside.

Millimetres, newtons, N/mm2; common practice, no source, unless said.  ``ultimate`` is what tests
break at on average, ``allowed`` what a fixing may carry for years: of wood screws and nails in wood
as the American code has it, of all else the ultimate load over :data:`SAFETY`.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from math import sqrt
from typing import Literal

from rodwright.lengths import from_inches
from rodwright.trade.mechanics import Family
from rodwright.trade.sources import Source
from rodwright.trade.yield_equations import YIELD, reduction, yield_loads

_INCH = from_inches("1")
_POUND = 4.4482216
_PSI = _POUND / _INCH**2

SAFETY = 5.0
"""Ultimate over allowed: what the allowed withdrawal of nails leaves (Engineering ToolBox, Nails
and spikes: 1380 of 6900 lb in the old form; of wood screws it is 5.5, 2850 of the Wood Handbook's
15700)."""

Entered = Literal["face", "edge", "end"]
"""What a fixing goes into: a face, the long edge, or the end of a part."""

_HANDBOOK = "Forest Products Laboratory, Wood Handbook (FPL-GTR-190), 2010"
_SCREW_IN_WOOD = Source(
    "NDS withdrawal 2850 G^2 D lb an inch of thread (Engineering ToolBox, Wood screws; Hicks, "
    "Civil Engineering Formulas, eq. 6.37)"
)
END_GRAIN_SCREW = Source(f"{_HANDBOOK}, ch. 8, quoted at second hand: 75% in end grain, unsplit")
"""Where what end grain leaves of a screw comes from (Wood Handbook, ch. 8)."""
_SCREW_IN_PLYWOOD = Source(
    "as wood of its gravity, less a quarter: tests of plywood fell short of the formula (Ahn, Pang "
    "and Oh, J. Korean Wood Sci. Technol. 49, 2021, abstract); how much is a stated estimate",
    seen=False,
)
_SCREW_IN_BOARD = Source(
    f"{_HANDBOOK}, eq. 8-11, particleboard: 41.1 D^0.5 (L - D/3)^1.25 G^2 from the face", seen=False
)
_SCREW_IN_MDF = Source(
    "1050 N from the face and 850 N from the edge (a fibreboard maker's specification, 2020), by "
    "the screw of EN 320, 4.2 mm and 15 mm deep (from memory)",
    seen=False,
)
_NAIL_IN_WOOD = Source(
    "NDS withdrawal 1380 G^2.5 D lb an inch (Engineering ToolBox, Nails and spikes)"
)
_END_GRAIN_NAIL = Source(f"{_HANDBOOK}, ch. 8: 50 to 75% in end grain; 50 is taken", seen=False)
_BEARING_OF_WOOD = Source("NDS 2018, 12.3.3: 16600 G^1.84 lb/in2 under 1/4 in", seen=False)
_BEARING_OF_BOARDS = Source(
    "EN 1995-1-1, eq. 8.22, particleboard and OSB: 65 t^0.1 / d^0.7 N/mm2; MDF is taken as these",
    seen=False,
)
_STEEL = Source("NDS 2018, table I1: bending yield by diameter", seen=False)
_END_GRAIN_ASIDE = Source("Hicks, Civil Engineering Formulas: two thirds in end grain")

_PULL_ALLOWED, _PULL_ULTIMATE = 2850 * _POUND / _INCH**2, 108.25
"""Of wood screws, times G^2 D L (Engineering ToolBox; Wood Handbook, eq. 8-9)."""
_NAILS_ALLOWED, _NAILS_ULTIMATE = 1380 * _POUND / _INCH**2, 54.12
"""Of nails, times G^2.5 D L (Engineering ToolBox; Wood Handbook, eq. 8-1)."""
END_GRAIN_PULL, END_GRAIN_NAILED, END_GRAIN_LATERAL = 0.75, 0.5, 2 / 3
"""Shares left in end grain: of a screw drawn out, a nail drawn out, and either pressed aside (Wood
Handbook, ch. 8, quoted; from memory; Hicks)."""
PLYWOOD_PULL = 0.75
"""Share of the formula for wood that plywood is given (a stated estimate, no source)."""
EDGE_PULL = 0.75
"""Share left in the edge of plywood and blockboard: of panels it is 75 to 80 % (McNatt,
Screw-holding of composite board products, abstract, FPL; no Wood Handbook figure)."""
_FROM_FACE, _FROM_EDGE = 41.1, 31.8
"""Of particleboard, times D^0.5 (L - D/3)^1.25 G^2 (Wood Handbook, eq. 8-11, from memory)."""
_MDF_PULL: dict[bool, float] = {False: 1050 / (4.2 * 15), True: 850 / (4.2 * 15)}
_MDF_GRAVITY = 0.69
"""N/mm2 of diameter and depth, from face and edge, of MDF of 740 to 800 kg/m3, which is lowered by
the square of its gravity where it is lighter (EN 320's screw, from memory)."""
TAPPING = 1.1
"""Tapping screws hold a tenth more than wood screws of their size (Wood Handbook, ch. 8)."""
WET = 0.7
"""Share of what it holds dry that a fixing is given outside (NDS 2018, table 11.3.3, from
memory)."""
ROOT = 2 / 3
"""Root diameter of a screw over its own (Wood Handbook, ch. 8)."""
_YIELD_OF_STEEL = ((0.142, 100_000.0), (0.177, 90_000.0), (0.236, 80_000.0), (0.273, 70_000.0))
_SOFTEST_STEEL = 45_000.0
"""Bending yield strength, lb/in2, of nails and screws up to so many inches, and of thicker ones
(NDS 2018, table I1, from memory)."""
SHEET_STEEL = 1.2
"""Thickness of the sheet steel of slides and brackets, mm (common practice, no source)."""
_STEEL_BEARS = 61_850.0
"""What sheet steel bears under the side of a screw, lb/in2 (NDS 2018, table 12.3.3, from
memory)."""
LEAST_INTO = 6.0
"""How far a screw goes in for the full lateral load, in diameters, point and all (NDS 2018,
12.1.5.6; no EN 1995 figure)."""


@dataclass(frozen=True, slots=True)
class Into:
    """What a fixing is in: the kind of board, its specific gravity (oven-dry), how thick it is, and
    what it is entered by."""

    family: Family
    gravity: float
    thickness: float
    entered: Entered

    @property
    def end_grain(self) -> bool:
        """Whether the fixing lies along the grain of solid wood."""
        return self.family is Family.SOLID_WOOD and self.entered == "end"

    @property
    def panel_edge(self) -> bool:
        """Whether it is in the edge of a sheet."""
        return self.family is not Family.SOLID_WOOD and self.entered != "face"


@dataclass(frozen=True, slots=True)
class Bears:
    """What one fixing bears, N, the formula that says so, and where that comes from."""

    ultimate: float
    allowed: float
    formula: str
    source: Source

    def times(self, share: float, why: Source) -> Bears:
        """A share of it, for another reason."""
        return replace(
            self,
            ultimate=self.ultimate * share,
            allowed=self.allowed * share,
            formula=f"{self.formula} x {share:.3g}",
            source=Source(f"{self.source.work}; {why.work}", self.source.seen and why.seen),
        )


def screw_drawn(into: Into, diameter: float, depth: float) -> Bears:
    """A wood screw drawn straight out, ``depth`` mm of its thread being in it.

    In wood ``19.65 G^2 D L`` is allowed.  Glass and hardboard hold none.

    Raises:
        ValueError: diameter or depth isn't above 0.
    """
    _sound(diameter, depth)
    family, gravity = into.family, into.gravity
    if family in (Family.GLASS, Family.HARDBOARD):
        return Bears(0.0, 0.0, "none", Source("it holds no screw"))
    if family is Family.MDF:
        held = _MDF_PULL[into.panel_edge] * min(1.0, (gravity / _MDF_GRAVITY) ** 2)
        pull = held * diameter * depth
        return Bears(pull, pull / SAFETY, f"{held:.3g} D L / {SAFETY:g}", _SCREW_IN_MDF)
    if family in (Family.CHIPBOARD, Family.OSB):
        held = _FROM_EDGE if into.panel_edge else _FROM_FACE
        deep = max(depth - diameter / 3, 0.0)
        pull = held * sqrt(diameter) * deep**1.25 * gravity**2
        formula = f"{held:g} D^0.5 (L - D/3)^1.25 G^2 / {SAFETY:g}"
        return Bears(pull, pull / SAFETY, formula, _SCREW_IN_BOARD)
    size = gravity**2 * diameter * depth
    bears = Bears(
        _PULL_ULTIMATE * size, _PULL_ALLOWED * size, f"{_PULL_ALLOWED:.4g} G^2 D L", _SCREW_IN_WOOD
    )
    if into.end_grain:
        return bears.times(END_GRAIN_PULL, END_GRAIN_SCREW)
    if family is Family.PLYWOOD:
        bears = bears.times(PLYWOOD_PULL, _SCREW_IN_PLYWOOD)
    if into.panel_edge:
        bears = bears.times(EDGE_PULL, Source("75% in the edge of a panel (McNatt, FPL, abstract)"))
    return bears


def nail_drawn(into: Into, diameter: float, depth: float) -> Bears:
    """A smooth nail or panel pin drawn straight out, ``depth`` mm of it being in it.

    ``9.515 G^2.5 D L`` is allowed; in end grain, and in the edges of sheets, half of it.

    Raises:
        ValueError: diameter or depth isn't above 0.
    """
    _sound(diameter, depth)
    if into.family is Family.GLASS:
        return Bears(0.0, 0.0, "none", Source("it holds no nail"))
    size = into.gravity**2.5 * diameter * depth
    bears = Bears(
        _NAILS_ULTIMATE * size,
        _NAILS_ALLOWED * size,
        f"{_NAILS_ALLOWED:.4g} G^2.5 D L",
        _NAIL_IN_WOOD,
    )
    if into.end_grain or into.panel_edge:
        return bears.times(END_GRAIN_NAILED, _END_GRAIN_NAIL)
    return bears


def bearing_strength(into: Into, diameter: float) -> tuple[float, Source]:
    """What wood or board bears under the side of a nail, screw or bolt, N/mm2 of its diameter and
    length.

    Raises:
        ValueError: the diameter isn't above 0.
    """
    _sound(diameter, 1.0)
    if into.family in (Family.CHIPBOARD, Family.OSB, Family.MDF):
        return 65 * into.thickness**0.1 / diameter**0.7, _BEARING_OF_BOARDS
    return 16600 * _PSI * into.gravity**1.84, _BEARING_OF_WOOD


def bending_yield(diameter: float) -> float:
    """Bending yield strength of the steel of nails and screws, N/mm2, by diameter in mm."""
    fits = (strength for most, strength in _YIELD_OF_STEEL if diameter <= most * _INCH + 1e-9)
    return next(fits, _SOFTEST_STEEL) * _PSI


def pressed_aside(
    diameter: float, shank: float, main: tuple[Into, float], side: tuple[Into, float]
) -> Bears:
    """A nail, screw or bolt pressed aside, where two parts meet: allowed by the yield equations.

    ``shank`` is the diameter that bends, ``main`` what holds it and how deep it is in that, mm,
    ``side`` the part under its head.  In end grain, and in the edges of sheets, two thirds.
    """
    bears = [bearing_strength(into, diameter) for into, _ in (main, side)]
    ways = yield_loads(
        shank, bending_yield(diameter), (bears[0][0], main[1]), (bears[1][0], side[1])
    )
    way = min(ways, key=lambda each: ways[each])
    load = ways[way]
    sources: Sequence[Source] = (YIELD, bears[0][1], bears[1][1], _STEEL)
    found = Bears(
        load,
        load / reduction(diameter),
        f"yield mode {way} / {reduction(diameter):.3g}",
        Source("; ".join(dict.fromkeys(each.work for each in sources)), seen=False),
    )
    weak = any(into.end_grain or into.panel_edge for into, _ in (main, side))
    return found.times(END_GRAIN_LATERAL, _END_GRAIN_ASIDE) if weak else found


def pressed_on_steel(diameter: float, shank: float, main: tuple[Into, float]) -> Bears:
    """The same of a screw under whose head lies the sheet steel of a slide or a bracket."""
    bears, source = bearing_strength(main[0], diameter)
    ways = yield_loads(
        shank, bending_yield(diameter), (bears, main[1]), (_STEEL_BEARS * _PSI, SHEET_STEEL)
    )
    way = min(ways, key=lambda each: ways[each])
    found = Bears(
        ways[way],
        ways[way] / reduction(diameter),
        f"yield mode {way} / {reduction(diameter):.3g}",
        Source(f"{YIELD.work}; {source.work}; {_STEEL.work}", seen=False),
    )
    weak = main[0].end_grain or main[0].panel_edge
    return found.times(END_GRAIN_LATERAL, _END_GRAIN_ASIDE) if weak else found


def screw_aside(diameter: float, main: tuple[Into, float], side: tuple[Into, float]) -> Bears:
    """A wood screw pressed aside: its root bends.  See :func:`pressed_aside`."""
    return pressed_aside(diameter, ROOT * diameter, main, side)


def _sound(diameter: float, depth: float) -> None:
    if diameter <= 0 or depth <= 0:
        raise ValueError("a fixing needs a diameter and a depth")
