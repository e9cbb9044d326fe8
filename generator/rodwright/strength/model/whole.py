"""A unit as a model: its mesh, what it carries, what holds it, and how it moves.

N, mm and radians, unit frame.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from rodwright.geometry import Vector
from rodwright.strength.bearings import Bearing, bearings
from rodwright.strength.model.cut_out import weakened
from rodwright.strength.model.lines import NEAR, Fineness, lines_of
from rodwright.strength.model.loads import Forces, forces_of
from rodwright.strength.model.mesh import Mesh
from rodwright.strength.model.pieces import Board, Stick, boards_of, rise_of, sticks_of
from rodwright.strength.model.solving import Moved, Support, solve
from rodwright.strength.model.supports import supports_of
from rodwright.strength.model.ties import ties_of
from rodwright.trade.feet import FOOT_INSET
from rodwright.unit import Unit

WEAK = 0.8
"""A level that has less than this share of its stiffness left is divided there."""


@dataclass(frozen=True, slots=True)
class Model:
    """A unit ready to be solved: ``holders`` are the parts that ``supports`` hold, one each."""

    unit: Unit
    bearings: dict[str, Bearing]
    mesh: Mesh
    forces: Forces
    holders: tuple[str, ...]
    supports: tuple[Support, ...]
    left_out: tuple[str, ...]

    def moved(self) -> Moved:
        """How it moves under its own weight and what it carries.

        Raises:
            UnsolvedError: something moves freely.
        """
        return solve(self.mesh, self.supports, self.forces)

    def pushed(self, forces: Forces) -> Moved:
        """How it moves under other forces alone, as if nothing could lift.

        Raises:
            UnsolvedError: something moves freely.
        """
        return solve(self.mesh, self.supports, forces, loose=False)


def model_of(
    unit: Unit, softer: float = 0.0, tight: bool = False, fineness: Fineness | None = None
) -> Model:
    """A unit as a model, at once, or after years (``softer`` 1); ``tight`` where a back bears in
    its grooves and isn't loose in them.

    Raises:
        ValueError: how stiff one of its parts is isn't known.
    """
    borne = bearings(unit)
    boards, sticks = boards_of(unit, softer), sticks_of(unit, softer)
    lines = lines_of(boards, sticks, _places(unit, borne), fineness or Fineness())
    cut = {ref: each for bearing in borne.values() for ref, each in weakened(bearing.level)}
    mesh = Mesh()
    pieces: tuple[Board | Stick, ...] = (*boards, *sticks)
    for piece in pieces:
        mesh.lay(piece, lines, cut.get(piece.refs[0], ()))
    mesh.ties += ties_of(unit, mesh, borne, softer, tight)
    held = supports_of(unit, mesh, borne)
    left = tuple(part.ref for part in unit.parts if part.ref not in mesh.grids)
    return Model(
        unit, borne, mesh, forces_of(unit, mesh),
        tuple(ref for ref, _ in held), tuple(each for _, each in held), left,
    )  # fmt: skip


def _places(unit: Unit, borne: dict[str, Bearing]) -> Iterator[Vector]:
    """Where there are to be nodes beside those that pieces ask for: over feet, at a slope."""
    for bearing in borne.values():
        box = bearing.level.box
        inset = min(FOOT_INSET, box.size[1] / 4)
        for seat in bearing.seats:
            if not seat.on:
                for y in (box.low[1] + inset, box.high[1] - inset):
                    yield (seat.at, y, box.centre[2])
        for _, left in weakened(bearing.level):
            for each in left:
                if each.share < WEAK and box.low[0] + NEAR < each.start < box.high[0] - NEAR:
                    middle = (each.start + each.stop) / 2
                    for x in (middle, middle - NEAR, middle + NEAR):
                        yield (x, box.centre[1], box.centre[2])
    for joint in unit.joints:
        if any(rise_of(unit.part(ref)) is not None for ref in (joint.first, joint.second)):
            yield joint.at
