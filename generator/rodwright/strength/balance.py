"""What it takes to turn a unit over: moments about the lines that it stands on.

Masses and forces in kg, lengths in mm, moments in kg mm, angles in degrees.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from rodwright.geometry import Vector
from rodwright.strength.footing import Footing, Line, Way
from rodwright.strength.lots import NOTHING, Lot, together


@dataclass(frozen=True, slots=True)
class Stand:
    """How a unit stands: on what, on a floor that falls away to the front by ``lean``, with
    ``ballast`` in it, and held by its wall with ``held`` kg at ``height``."""

    feet: Footing
    lean: float = 0.0
    ballast: Lot = NOTHING
    held: float = 0.0
    height: float = 0.0

    def steadying(self, line: Line, lot: Lot) -> float:
        """The moment about a line that keeps a lot from falling over it; below nought it falls."""
        wall = self.held * self.height * max(-line.outward[1], 0.0)
        return lot.mass * line.arm(lot.centre, self.lean) + wall


@dataclass(frozen=True, slots=True)
class Tips:
    """The line that gives way first, the lot that falls over it, and the figure at which it
    does."""

    figure: float
    line: Line
    lot: Lot


@dataclass(frozen=True, slots=True)
class Held:
    """The whole of a unit in one state, and whether anything is in it."""

    whole: Lot
    loaded: bool = False

    def lot(self, stand: Stand) -> Lot:
        """With what ballast it stands with."""
        return together((self.whole, stand.ballast))


@dataclass(frozen=True, slots=True)
class Turned:
    """By how many degrees it is turned until it falls."""

    state: Held
    ways: tuple[Way, ...] = ("forward",)

    def tips(self, stand: Stand) -> Tips:
        """Where W (x cos a - z sin a) and what holds it come to nothing: a = atan(x / z) where
        nothing does."""
        lot = self.state.lot(stand)
        level = Stand(stand.feet, 0.0, held=stand.held, height=stand.height)

        def angle(line: Line) -> float:
            wall = level.steadying(line, lot) - lot.mass * line.inside(lot.centre)
            reach = lot.mass * math.hypot(line.inside(lot.centre), lot.centre[2])
            phase = math.atan2(lot.centre[2], line.inside(lot.centre))
            return math.degrees(math.acos(max(-wall / reach, -1.0)) - phase)

        return min((Tips(angle(line), line, lot) for line in self._lines(stand)), key=_figure)

    def asks(self, stand: Stand, limit: float) -> float:
        """The moment that is lacking for it to stand at an angle; nought or less where none is."""
        leaning = Stand(stand.feet, limit)
        lot = self.state.lot(stand)
        return max(-leaning.steadying(line, lot) for line in self._lines(stand))

    def _lines(self, stand: Stand) -> tuple[Line, ...]:
        return stand.feet.towards(*self.ways)


@dataclass(frozen=True, slots=True)
class Pressed:
    """The load, straight down on the edge of something that is open, under which it falls."""

    state: Held
    edges: tuple[Vector, ...]

    def tips(self, stand: Stand) -> Tips:
        """F = W x / f, x and f the arms of the weight and of the load; without end where the load
        stands behind every line."""
        lot = self.state.lot(stand)
        found = []
        for line, arm in self._arms(stand):
            keeps = stand.steadying(line, lot)
            # Where it falls by itself, no load is needed, wherever that would stand.
            load = keeps / arm if arm > 0 else (math.inf if keeps >= 0 else -math.inf)
            found.append(Tips(load, line, lot))
        return min(found, key=_figure)

    def asks(self, stand: Stand, limit: float) -> float:
        """The moment that is lacking for it to bear a load; nought or less where none is."""
        lot = self.state.lot(stand)
        return max(limit * arm - stand.steadying(line, lot) for line, arm in self._arms(stand))

    def _arms(self, stand: Stand) -> list[tuple[Line, float]]:
        return [
            (line, max(-line.arm(edge, stand.lean) for edge in self.edges))
            for line in stand.feet.lines
        ]


@dataclass(frozen=True, slots=True)
class Pulled:
    """The pull to the front, level and at a height, under which it falls."""

    state: Held
    height: float

    def tips(self, stand: Stand) -> Tips:
        """P = W x / H."""
        lot = self.state.lot(stand)
        return min(
            (Tips(stand.steadying(line, lot) / arm, line, lot) for line, arm in self._arms(stand)),
            key=_figure,
        )

    def asks(self, stand: Stand, limit: float) -> float:
        """The moment that is lacking for it to bear a pull; nought or less where none is."""
        lot = self.state.lot(stand)
        return max(limit * arm - stand.steadying(line, lot) for line, arm in self._arms(stand))

    def _arms(self, stand: Stand) -> list[tuple[Line, float]]:
        return [(line, self.height * -line.outward[1]) for line in stand.feet.towards("forward")]


Trial = Turned | Pressed | Pulled
"""What a unit is tried by; ``tips`` says at what figure it falls, ``asks`` what moment is lacking
for it to stand a figure."""


@dataclass(frozen=True, slots=True)
class Asked:
    """Trials, all of which a unit has to stand up to ``limit``, and how it stands in them."""

    trials: tuple[Trial, ...]
    stand: Stand
    limit: float

    def worst(self) -> Tips:
        """How it falls in the trial that it stands worst."""
        return min((each.tips(self.stand) for each in self.trials), key=_figure)

    def told(self, tips: Tips) -> tuple[float | None, tuple[str, ...]]:
        """The figure as it is told, and what goes with it: None where no load tips it; no load is
        less than none, but an angle is, to the other side."""
        if math.isinf(tips.figure) and tips.figure > 0:
            return None, ("what presses on it stands behind its feet",)
        if tips.figure >= 0:
            return tips.figure, ()
        if any(isinstance(each, Turned) for each in self.trials):
            return tips.figure, ("below nought: it falls by itself unless it is leant back so far",)
        return 0.0, ("it falls over by itself, without any load",)

    @property
    def stands(self) -> bool:
        """Whether it reaches the limit."""
        return self.worst().figure >= self.limit

    def lacking(self) -> float:
        """The moment, kg mm, that is lacking in the worst of them; nought where none is."""
        return max(0.0, *(each.asks(self.stand, self.limit) for each in self.trials))


def _figure(tips: Tips) -> float:
    return tips.figure
