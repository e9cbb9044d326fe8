"""Why a model's sag is another than that of the formula: force by force.

Whatever carries or loads a level, in the model as in the formula, bends the level's own beam.
What each force adds to the sag at one place follows from the beam on two supports alone, since
such sags add up; so the difference between model and formula comes apart into what each part
does otherwise, what is counted by one and not by the other, and what is left: the level bends
from front to back too, which no beam does.

N and mm, unit frame; forces on the level are positive upwards, sag downwards.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass, replace
from enum import StrEnum
from functools import cached_property

from rodwright.strength.beams import Point, Support, bend
from rodwright.strength.bearings import Bearing
from rodwright.strength.model.sagging import Curve, curve, spans_of
from rodwright.strength.model.solving import Moved, tie_forces
from rodwright.strength.model.whole import Model

Deflection = Callable[[float], float]
COUPLE = 1.0
"""A moment is two forces this far apart, mm."""


class Does(StrEnum):
    """What a part does otherwise than in the formula, to a level, to the floor (``BRINGS``),
    or against a push (``STIFFENS``: forces are stiffnesses then, N/mm)."""

    CARRIES = "carries"
    TURNS = "turns"
    LOADS = "loads"
    WARPS = "warps"
    BRINGS = "brings"
    STIFFENS = "stiffens"


@dataclass(frozen=True, slots=True)
class Cause:
    """One reason for a difference: what ``ref`` (empty: what hangs on it, or the level itself)
    does, by how much it changes the sag (``effect``, mm), its force in the formula and in the model
    (N, up), and how far it gives way (mm, down; None where that says nothing).  ``instead`` is what
    carries most of that part itself, with what force (N, up).  What ``warps`` has the sag of its
    front and back edges (mm) in place of forces."""

    does: Does
    ref: str
    effect: float
    formula: float = 0.0
    model: float = 0.0
    gives_way: float | None = None
    instead: str = ""
    instead_force: float = 0.0


@dataclass(frozen=True, slots=True)
class Push:
    """A force (N, up) and a moment (N mm, about y) on a level at ``at`` (x, mm)."""

    at: float
    up: float
    turn: float = 0.0


class Comparing:
    """One level's sag by the model, beside the formula's beam, where both are greatest."""

    def __init__(self, model: Model, bearing: Bearing, moved: Moved) -> None:
        if bearing.bent is None:
            raise ValueError(f"{bearing.level.ref} doesn't bend from seat to seat")
        self._model, self._bearing, self._moved = model, bearing, moved
        self._bent, self._beam = bearing.bent, bearing.bent.beam
        self._low = bearing.level.box.low[0]
        self._held = [each.at for each in self._beam.supports]

    @cached_property
    def _line(self) -> Curve:
        return curve(self._model.mesh.grids[self._bearing.level.ref], self._moved)

    @cached_property
    def span(self) -> tuple[float, float]:
        """The span that sags most in the model."""
        return max(spans_of(self._bearing), key=lambda span: abs(self._line.sag(*span)))

    @property
    def place(self) -> float:
        """Where it sags most."""
        return self._line.lowest(*self.span)

    @property
    def model(self) -> float:
        """The sag in the model, mm."""
        return self._line.sag(*self.span)

    @property
    def formula(self) -> float:
        """The sag by the formula at the same place, mm."""
        return self._off_line(self._bent.deflection)

    def causes(self) -> tuple[Cause, ...]:
        """What makes the difference, the greatest first."""
        ours, theirs = self._in_model(), self._in_formula()
        found = []
        for ref in dict.fromkeys((*ours, *theirs)):
            mine, its = ours.get(ref, []), theirs.get(ref, [])
            effect = self._effect(mine) - self._effect(its)
            forces = sum(each.up for each in its), sum(each.up for each in mine)
            ends = any(each.at in (self._held[0], self._held[-1]) for each in its)
            does = Does.TURNS if ends else Does.CARRIES
            instead = self._carrying(ref) if does is Does.CARRIES else ("", 0.0)
            found.append(Cause(does, ref, effect, *forces, self._settled(its), *instead))
        hung = self._hung()
        told = self.formula - sum(self._effect(each) for each in theirs.values())
        loads = self._effect(hung) - told
        more = -sum(each.up for each in hung) - self._bearing.weight - self._bearing.contents
        found.append(Cause(Does.LOADS, "", loads, 0.0, -more))
        all_told = self._effect(hung) + sum(self._effect(each) for each in ours.values())
        found.append(Cause(Does.WARPS, "", self.model - all_told, self._edge(0), self._edge(-1)))
        return tuple(sorted(found, key=lambda each: -abs(each.effect)))

    def _in_model(self) -> dict[str, list[Push]]:
        """What other parts do to the level, by ref."""
        own = {part.ref for part in self._bearing.level.parts}
        middle = self._model.mesh.grids[self._bearing.level.ref].middle[2]
        found: dict[str, list[Push]] = {}
        for number, tie in enumerate(self._model.mesh.ties):
            joint = self._model.unit.joints[tie.joint]
            if (joint.first in own) is (joint.second in own) or number in self._moved.off_ties:
                continue
            force = tie_forces(self._model.mesh, tie, self._moved.moves)
            way = 1.0 if joint.second in own else -1.0
            turn = float(force[4] + (tie.at[2] - middle) * force[0])
            other = joint.first if joint.second in own else joint.second
            push = Push(self._along(tie.at[0]), way * float(force[2]), way * turn)
            found.setdefault(other, []).append(push)
        for ref, support, reaction in zip(
            self._model.holders, self._model.supports, self._moved.reactions, strict=True
        ):
            if ref in own:
                at = self._model.mesh.nodes[support.node][0]
                found.setdefault("", []).append(Push(self._along(at), reaction[2]))
        return found

    def _edge(self, row: int) -> float:
        """How far its front (0) or back (-1) edge sags at the place."""
        line = curve(self._model.mesh.grids[self._bearing.level.ref], self._moved, row)
        return line.off(self.place, *self.span)

    def _carrying(self, ref: str) -> tuple[str, float]:
        """What else carries a part, and with what force: the most."""
        own = {part.ref for part in self._bearing.level.parts}
        found: dict[str, float] = {}
        for number, tie in enumerate(self._model.mesh.ties):
            joint = self._model.unit.joints[tie.joint]
            if ref not in {joint.first, joint.second} or number in self._moved.off_ties:
                continue
            other = joint.first if joint.second == ref else joint.second
            if other not in own:
                up = float(tie_forces(self._model.mesh, tie, self._moved.moves)[2])
                found[other] = found.get(other, 0.0) + (up if joint.second == ref else -up)
        return max(found.items(), key=lambda each: each[1], default=("", 0.0))

    def _in_formula(self) -> dict[str, list[Push]]:
        found: dict[str, list[Push]] = {}
        for seat in self._bearing.seats:
            push = Push(self._along(seat.at), seat.reaction, -seat.turning)
            found.setdefault(seat.on, []).append(push)
        for each in self._bearing.standing:
            found.setdefault(each.ref, []).append(Push(self._along(each.at), -each.force))
        return found

    def _hung(self) -> list[Push]:
        """What the model puts on the level's nodes."""
        grids = [
            self._model.mesh.grids[part.ref]
            for part in self._bearing.level.parts
            if part.ref in self._model.mesh.grids
        ]
        nodes = {node for grid in grids for node in grid.numbers.values()}
        return [
            Push(self._along(self._model.mesh.nodes[node][0]), values[2], values[4])
            for node, values in self._model.forces.items()
            if node in nodes
        ]

    def _along(self, x: float) -> float:
        return min(max(round(x - self._low, 6), 0.0), self._beam.length)

    def _effect(self, pushes: Iterable[Push]) -> float:
        """What forces add to the sag, the level lying on its outer seats alone."""
        points = []
        for each in pushes:
            points.append(Point(each.at, -each.up))
            if each.turn:
                left = min(max(each.at - COUPLE / 2, 0.0), self._beam.length - COUPLE)
                force = each.turn / COUPLE
                points += (Point(left, -force), Point(left + COUPLE, force))
        ends = (Support(self._held[0]), Support(self._held[-1]))
        bare = replace(self._beam, supports=ends, stretches=(), points=tuple(points))
        return self._off_line(bend(bare).deflection)

    def _off_line(self, deflection: Deflection) -> float:
        start, stop = (self._along(each) for each in self.span)
        x = self._along(self.place)
        left, right = deflection(start), deflection(stop)
        return deflection(x) - left - (right - left) * (x - start) / (stop - start)

    def _settled(self, pushes: list[Push]) -> float | None:
        """How far what carries the level has gone down, from the line between its outer seats."""
        first, last = self._low + self._held[0], self._low + self._held[-1]
        if not pushes or last <= first:
            return None
        x = self._low + pushes[0].at
        left, right = self._line.at(first), self._line.at(last)
        return self._line.at(x) - left - (right - left) * (x - first) / (last - first)
