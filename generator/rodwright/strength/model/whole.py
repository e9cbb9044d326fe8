"""A unit as a model: its mesh, what it carries, what holds it, and how it moves.

N, mm and radians, unit frame.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace

from rodwright.geometry import Vector
from rodwright.mass import unit_weight
from rodwright.strength.bearings import Bearing, bearings
from rodwright.strength.level_states import creep_of
from rodwright.strength.load_factors import PSI2
from rodwright.strength.model.cut_out import weakened
from rodwright.strength.model.lines import Fineness, lines_of
from rodwright.strength.model.loads import Forces, forces_of
from rodwright.strength.model.mesh import Mesh
from rodwright.strength.model.pieces import Board, Softening, Stick, boards_of, rise_of, sticks_of
from rodwright.strength.model.solving import FEATHER, Moved, Support, solve
from rodwright.strength.model.supports import supports_of
from rodwright.strength.model.ties import STIFF, ties_of
from rodwright.trade.feet import FOOT_INSET
from rodwright.unit import Part, Role, Unit


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
        """How it moves under other forces alone, as if nothing could lift and no floor gave way.

        Raises:
            UnsolvedError: something moves freely.
        """
        firm = [replace(each, moves=_firm(each.moves)) for each in self.supports]
        return solve(self.mesh, firm, forces, loose=False)

    def without(self, role: Role) -> Model:
        """The same with parts of a role joined to nothing but by feathers."""
        refs = {part.ref for part in self.unit.parts if part.role is role}
        ties = []
        for tie in self.mesh.ties:
            joint = self.unit.joints[tie.joint]
            loose = joint.first in refs or joint.second in refs
            x, y, z = (FEATHER if loose else each for each in tie.moves)
            ties.append(replace(tie, moves=(x, y, z)))
        return replace(self, mesh=replace(self.mesh, ties=ties))


def _firm(moves: Vector) -> Vector:
    x, y, z = (STIFF if each else 0.0 for each in moves)
    return (x, y, z)


def at_once(_: Part) -> float:
    """Nothing has gone softer."""
    return 0.0


def after_years(unit: Unit, lasting: Mapping[str, float]) -> Softening:
    """By how much parts have gone softer after years: by kdef times the share of their load that
    lasts; ``lasting`` gives it for levels, all others have that of the whole unit (EN 1995-1-1,
    2.2.3)."""
    own = unit_weight(unit)
    stored = sum(load.mass for load in unit.loading.loads)
    share = (own + PSI2 * stored) / (own + stored)

    def softening(part: Part) -> float:
        return lasting.get(part.ref, share) * creep_of(part)

    return softening


def model_of(
    unit: Unit,
    softening: Softening = at_once,
    tight: bool = False,
    fineness: Fineness | None = None,
) -> Model:
    """A unit as a model, with what its parts have gone softer by (:func:`after_years`); ``tight``
    where a back bears in its grooves and isn't loose in them.

    Raises:
        ValueError: how stiff one of its parts is isn't known.
    """
    borne = bearings(unit)
    boards, sticks = boards_of(unit, softening), sticks_of(unit, softening)
    lines = lines_of(boards, sticks, _places(unit, borne), fineness or Fineness())
    cut = {ref: each for bearing in borne.values() for ref, each in weakened(bearing.level)}
    mesh = Mesh()
    pieces: tuple[Board | Stick, ...] = (*boards, *sticks)
    for piece in pieces:
        mesh.lay(piece, lines, cut.get(piece.refs[0], ()))
    mesh.ties += ties_of(unit, mesh, borne, softening, tight)
    held = supports_of(unit, mesh, borne)
    left = tuple(part.ref for part in unit.parts if part.ref not in mesh.grids)
    return Model(
        unit,
        borne,
        mesh,
        forces_of(unit, mesh),
        tuple(ref for ref, _ in held),
        tuple(each for _, each in held),
        left,
    )


def _places(unit: Unit, borne: dict[str, Bearing]) -> Iterator[Vector]:
    """Where there are to be nodes beside those that pieces ask for: over feet, at a slope."""
    for bearing in borne.values():
        box = bearing.level.box
        inset = min(FOOT_INSET, box.size[1] / 4)
        for seat in bearing.seats:
            if not seat.on:
                for y in (box.low[1] + inset, box.high[1] - inset):
                    yield (seat.at, y, box.centre[2])
    for joint in unit.joints:
        if any(rise_of(unit.part(ref)) is not None for ref in (joint.first, joint.second)):
            yield joint.at
