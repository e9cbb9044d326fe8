"""The order in which a unit goes together."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import groupby

import numpy as np

from rodwright.geometry import Box, Vector, times, vector
from rodwright.making.bodies import unlike
from rodwright.making.hindrances import Hindrances
from rodwright.making.preferences import Taste, hand_of, stage
from rodwright.making.steps import Order, Step, Where
from rodwright.making.sub_assemblies import Piece, pieces_of
from rodwright.making.taking_apart import Leaving, Standing, taken_apart
from rodwright.unit import Unit
from rodwright.unit.directions import DOWN, FORWARD, LEFT, NOWHERE, X, Y, Z


def order_of(unit: Unit, hindrances: Hindrances | None = None) -> Order:
    """How a unit is put together: step by step, what is made apart before what it goes into.

    Equal units give equal orders, and the mirror image of a unit its order in a mirror.
    ``hindrances`` are the unit's, where somebody has them.
    """
    if not unit.parts:
        return Order(())
    maker = _Maker(unit, hindrances or Hindrances(unit))
    return Order(tuple(maker.steps(pieces_of(unit))))


class _Maker:
    """One unit, and what is the same for all that is made for it."""

    def __init__(self, unit: Unit, hindrances: Hindrances) -> None:
        self.unit = unit
        self.hindrances = hindrances
        self.hand = hand_of(unit)
        self.fitted = unit.opening is not None

    def steps(self, pieces: Sequence[Piece], within: str = "") -> Iterator[Step]:
        """The steps that put pieces together, and first those that make them."""
        where: Where = "site" if self.fitted and not within else "bench"
        run = self._run(pieces, where)
        refs = {ref for piece in pieces for ref in piece.refs}
        stages = [max(stage(self.unit, one, refs) for one in each.pieces) for each in run]
        numbered = list(zip(stages, run, strict=True))
        together = (
            [run]
            if where == "site"
            else [
                [each for _, each in group] for _, group in groupby(numbered, lambda each: each[0])
            ]
        )
        standing: list[str] = []
        for leavings in together:
            for each in leavings:
                made = each.pieces if each.moves else (_as_one(each.pieces),)
                for piece in made:
                    if piece.members:
                        yield from self.steps(piece.members, piece.name)
            for each in leavings:
                yield self._step(each, standing, within, where)
                standing += _as_one(each.pieces).refs

    def _run(self, pieces: Sequence[Piece], where: Where) -> list[Leaving]:
        """What comes, one after the other; the first of it from nowhere."""
        standing = Standing(self.hindrances, pieces, self._ways(pieces, where))
        leaving = list(taken_apart(standing, Taste(self.unit, self.hand, pieces)))
        first = [Leaving((piece,), NOWHERE) for piece in standing.pieces]
        return [*first, *reversed(leaving)]

    def _ways(self, pieces: Sequence[Piece], where: Where) -> list[Vector]:
        """The directions in which pieces may leave: on site only out into the room or up."""
        if where == "site":
            return [FORWARD, Z]
        aside = [X, LEFT] if self.hand > 0 else [LEFT, X]
        square = [FORWARD, Y, Z, *aside, DOWN]
        slanting = [
            axis
            for piece in pieces
            for ref in piece.refs
            for axis in self.unit.part(ref).placement.axes
        ]
        found = unlike(np.array([*slanting, *self.hindrances.axes]).reshape(-1, 3))
        askew = [vector(each) for each in found.tolist() if max(map(abs, each)) < 1 - 1e-9]
        both = [way for each in askew for way in (each, times(each, -1.0))]
        return [*square, *sorted(both, key=self._seen)]

    def _seen(self, way: Vector) -> tuple[float, ...]:
        """A direction as it is sorted by: alike in a unit and in its mirror image."""
        across, deep, up = (round(each, 6) + 0.0 for each in way)
        return (deep, -up, across * self.hand)

    def _step(self, leaving: Leaving, standing: Sequence[str], within: str, where: Where) -> Step:
        whole = _as_one(leaving.pieces)
        refs = whole.refs
        towards = vector(0.0 - each for each in leaving.away)
        travel = self.hindrances.sweeps.travel(refs, standing, leaving.away)
        if where == "site" and not standing:
            towards = Y
            travel = Box.of_boxes(self.unit.part(ref).bounds() for ref in refs).size[1]
        moves = {
            ref: times(move, -1.0)
            for piece, move in zip(leaving.pieces, leaving.moves, strict=False)
            for ref in piece.refs
        }
        apart = [piece.refs for piece in leaving.pieces] if moves else [refs]
        apart.append(tuple(standing))
        joints = tuple(
            joint
            for joint in self.unit.joints
            if {joint.first, joint.second} <= {*refs, *standing}
            and not any(joint.first in group and joint.second in group for group in apart)
        )
        return Step(
            refs=refs,
            standing=tuple(standing),
            towards=towards,
            travel=max(0.0, round(travel, 6)),
            joints=joints,
            within=within,
            where=where,
            free=not leaving.blocked,
            brings="" if moves else whole.name,
            drawn=tuple(moves[ref] for ref in refs) if moves else (),
            opened=tuple(self.hindrances.opened(refs, standing, leaving.away)),
            why=self._why(refs, standing, where) if leaving.blocked else "",
        )

    def _why(self, refs: Sequence[str], standing: Sequence[str], where: Where) -> str:
        """What is in the way, from each side from which it might come."""
        order = list(standing)
        sides = [
            f"{_FROM[way]} {_and(sorted(found, key=order.index))}"
            for way in self._ways((), where)
            if way in _FROM and (found := self.hindrances.of(refs, standing, way))
        ]
        return f"no straight way in: {'; '.join(sides)}"


_FROM = {
    FORWARD: "from the front",
    Y: "from behind",
    Z: "from above",
    LEFT: "from the left",
    X: "from the right",
    DOWN: "from below",
}


def _and(words: Sequence[str]) -> str:
    return " and ".join(filter(None, (", ".join(words[:-1]), words[-1])))


def _as_one(pieces: Sequence[Piece]) -> Piece:
    """Pieces that come together as the sub-assembly that they are made into first."""
    if len(pieces) == 1:
        return pieces[0]
    refs = tuple(ref for piece in pieces for ref in piece.refs)
    return Piece(refs, _and([piece.name or piece.refs[0] for piece in pieces]), tuple(pieces))
