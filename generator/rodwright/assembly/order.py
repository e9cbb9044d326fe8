"""The order in which a unit goes together."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import groupby

import numpy as np

from rodwright.assembly.bodies import unlike
from rodwright.assembly.hindrances import Hindrances
from rodwright.assembly.preferences import Taste, hand_of, stage
from rodwright.assembly.steps import Order, Step, Where
from rodwright.assembly.sub_assemblies import Piece, pieces_of
from rodwright.assembly.taking_apart import Leaving, Standing, taken_apart
from rodwright.geometry import Box, Vector, times, vector
from rodwright.unit import Unit
from rodwright.unit.directions import DOWN, FORWARD, LEFT, NOWHERE, X, Y, Z


def order_of(unit: Unit) -> Order:
    """How a unit is put together: step by step, what is made apart before what it goes into.

    Equal units give equal orders, and the mirror image of a unit its order in a mirror.
    """
    if not unit.parts:
        return Order(())
    return Order(tuple(_Maker(unit).steps(pieces_of(unit))))


class _Maker:
    """One unit, and what is the same for all that is made for it."""

    def __init__(self, unit: Unit) -> None:
        self.unit = unit
        self.hindrances = Hindrances(unit)
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
                whole = _as_one(each.pieces)
                if whole.members:
                    yield from self.steps(whole.members, whole.name)
            for each in leavings:
                yield self._step(each, standing, within, where)
                standing += _as_one(each.pieces).refs

    def _run(self, pieces: Sequence[Piece], where: Where) -> list[Leaving]:
        """What comes, one after the other; the first of it from nowhere."""
        standing = Standing(self.hindrances, pieces, self._ways(pieces, where))
        leaving = list(taken_apart(standing, Taste(self.unit, self.hand, pieces)))
        (last,) = standing.pieces
        return [Leaving((last,), NOWHERE), *reversed(leaving)]

    def _ways(self, pieces: Sequence[Piece], where: Where) -> list[Vector]:
        """The directions in which pieces may leave: on site only out into the room or up."""
        if where == "site":
            return [FORWARD, Z]
        aside = [X, LEFT] if self.hand > 0 else [LEFT, X]
        square = [FORWARD, Y, Z, *aside, DOWN]
        refs = {ref for piece in pieces for ref in piece.refs}
        slanting = [axis for ref in sorted(refs) for axis in self.unit.part(ref).placement.axes]
        found = unlike(np.array([*slanting, *self.hindrances.axes]))
        askew = [vector(each.tolist()) for each in found if np.abs(each).max() < 1 - 1e-9]
        return [*square, *(way for each in askew for way in (each, times(each, -1.0)))]

    def _step(self, leaving: Leaving, standing: Sequence[str], within: str, where: Where) -> Step:
        whole = _as_one(leaving.pieces)
        refs, there = whole.refs, set(standing)
        towards = times(leaving.away, -1.0)
        travel = max(0.0, self.hindrances.sweeps.travel(refs, standing, leaving.away))
        if where == "site" and not standing:
            towards = Y
            travel = Box.of_boxes(self.unit.part(ref).bounds() for ref in refs).size[1]
        joints = tuple(
            joint
            for joint in self.unit.joints
            if (joint.first in refs and joint.second in there)
            or (joint.second in refs and joint.first in there)
        )
        blocked = [ref for piece in leaving.blocked for ref in piece.refs]
        return Step(
            refs=refs,
            standing=tuple(standing),
            towards=towards,
            travel=travel,
            joints=joints,
            within=within,
            where=where,
            free=not blocked,
            brings=whole.name,
            why=f"{', '.join(blocked)} in the way" if blocked else "",
        )


def _as_one(pieces: Sequence[Piece]) -> Piece:
    """Pieces that come together as the sub-assembly that they are made into first."""
    if len(pieces) == 1:
        return pieces[0]
    refs = tuple(ref for piece in pieces for ref in piece.refs)
    firsts = [piece.name or piece.refs[0] for piece in pieces]
    name = f"{', '.join(firsts[:-1])} and {firsts[-1]}"
    return Piece(refs, name, tuple(pieces))
