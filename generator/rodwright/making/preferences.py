"""What a maker would sooner do first, among all that is possible: common practice, no source.

The carcass before its back, that before the face frame, what is fitted round it and what moves,
loose shelves last; the base under all.  What is short before what is long in a frame that is
mitred; pieces joined to what stands; few turnings of the work; equal pieces one after the other,
from the bottom up.
"""

from __future__ import annotations

from collections.abc import Sequence, Set

from rodwright.geometry import Box, Vector
from rodwright.making.graphs import holding_together
from rodwright.making.hindrances import LONG_SLIDE
from rodwright.making.sub_assemblies import Piece
from rodwright.making.taking_apart import Leaving, Standing
from rodwright.unit import TRAITS, Joint, JointKind, Part, Role, Slide, Unit
from rodwright.unit.roles import Assembly

BASE, CARCASS, APPLIED, BACK, UNDER, FRAME, FRONT, SURROUND, DRAWERS, DOORS, LOOSE = range(11)
"""The stages of a unit, from the first to the last."""


def stage(unit: Unit, piece: Piece, others: Set[str]) -> int:
    """When a piece goes on to ``others`` (refs), as a number from :data:`BASE` to :data:`LOOSE`."""
    parts = [unit.part(ref) for ref in piece.refs]
    own = set(piece.refs)
    joints = [each for each in unit.joints if each.second in own and each.first in others - own]
    for motion in unit.motions:
        if own >= set(motion.refs):
            return DRAWERS if isinstance(motion, Slide) else DOORS
    if any(joint.kind is JointKind.RESTING for joint in joints):
        return LOOSE
    bases = [part.ref for part in unit.parts if TRAITS[part.role].of is Assembly.BASE]
    if len(parts) > 1 and own == set(bases):
        return BASE
    if any(joint.kind is JointKind.CLIPPED for joint in joints):
        return FRONT
    return min(_stage(part) for part in parts)


def _stage(part: Part) -> int:
    traits = TRAITS[part.role]
    if traits.of is Assembly.SURROUND:
        return SURROUND
    if part.role in (Role.BACK, Role.DRAWER_BOTTOM):
        return BACK
    if part.role in (Role.LIPPING, Role.RUNNER, Role.PACKER):
        return APPLIED
    if traits.of is Assembly.BASE:
        return UNDER
    if traits.of is Assembly.FACE_FRAME:
        return FRAME
    if part.role is Role.DRAWER_FRONT:
        return FRONT
    return CARCASS


class Taste:
    """Chooses what leaves first of all that can: what a maker would sooner put on last.

    ``pieces`` are all that are put together; ``hand`` is 1, or -1 where a unit is looked at in a
    mirror.
    """

    def __init__(self, unit: Unit, hand: int, pieces: Sequence[Piece]) -> None:
        self._unit = unit
        self._refs = {ref for piece in pieces for ref in piece.refs}
        self._hand = hand
        self._stages: dict[Piece, int] = {}
        self._way: Vector | None = None
        self._now = 0
        self._kind: tuple[object, ...] = ()

    def __call__(self, standing: Standing, found: Sequence[Leaving]) -> Leaving:
        """The one that leaves first."""
        holding = holding_together(standing.beside())
        ways = {way: number for number, way in enumerate(standing.ways)}
        chosen: dict[tuple[Piece, ...], tuple[tuple[float, ...], Leaving]] = {}
        for each in found:
            ease = (*self._ease(standing, each), ways[each.away])
            if each.pieces not in chosen or ease < chosen[each.pieces][0]:
                chosen[each.pieces] = (ease, each)
        leaving = min(
            (each for _, each in chosen.values()),
            key=lambda each: (
                len(each.pieces),
                len(each.blocked),
                *self._when(each),
                any(piece in holding for piece in each.pieces),
                chosen[each.pieces][0][0],
                each.away != self._way,
                *self._sorted(standing, each),
            ),
        )
        self._way, self._now = leaving.away, self._when(leaving)[1]
        self._kind = self._like(leaving.pieces)
        return leaving

    def _when(self, leaving: Leaving) -> tuple[bool, int]:
        """The latest stage first; but the carcass once stripped, a stage that is begun is ended."""
        at = -min(self._stage(piece) for piece in leaving.pieces)
        return (self._now <= -FRAME and at != self._now, at)

    def _ease(self, standing: Standing, leaving: Leaving) -> tuple[float, ...]:
        """How hard a way is: not in or along another piece for long, and not far."""
        own = {ref for piece in leaving.pieces for ref in piece.refs}
        others = [ref for piece in standing.pieces for ref in piece.refs if ref not in own]
        lengths = (standing.hindrances.slide(one, leaving.away) for one in _closed(standing, own))
        slide = max(lengths, default=0.0)
        travel = standing.hindrances.sweeps.travel(own, others, leaving.away)
        return (slide > LONG_SLIDE, round(slide), round(travel), leaving.away != self._way)

    def _stage(self, piece: Piece) -> int:
        if piece not in self._stages:
            self._stages[piece] = stage(self._unit, piece, self._refs)
        return self._stages[piece]

    def _sorted(self, standing: Standing, leaving: Leaving) -> tuple[object, ...]:
        """Among those that are as good: in a frame by length, else by what it leaves and closes;
        then equal ones after each other, the highest first."""
        box = Box.of_boxes(
            self._unit.part(ref).bounds() for piece in leaving.pieces for ref in piece.refs
        )
        first = leaving.pieces[0]
        in_frame = self._stage(first) == FRAME
        long = round(-max(box.size), 3) if in_frame and not first.members else 0.0
        own = {ref for piece in leaving.pieces for ref in piece.refs}
        closed = [] if in_frame else _closed(standing, own)
        across, deep, up = box.centre
        return (
            bool(first.members) if in_frame else False,
            long,
            any(_leaves_hanging(standing, joint, own) for joint in closed),
            -len(closed),
            self._like(leaving.pieces) != self._kind,
            round(-up, 3),
            round(-across * self._hand, 3),
            round(deep, 3),
        )

    def _like(self, pieces: Sequence[Piece]) -> tuple[object, ...]:
        parts = [self._unit.part(ref) for piece in pieces for ref in piece.refs]
        return tuple(
            (part.role, tuple(round(each, 3) for each in part.blank.size)) for part in parts
        )


def _closed(standing: Standing, own: Set[str]) -> list[Joint]:
    """The joints between some parts and the others that stand."""
    others = {ref for piece in standing.pieces for ref in piece.refs} - own
    return [
        joint
        for ref in own
        for joint in standing.hindrances.joints[ref]
        if (joint.second if joint.first == ref else joint.first) in others
    ]


def _leaves_hanging(standing: Standing, joint: Joint, own: Set[str]) -> bool:
    """Whether a board that lies over others (a top over its sides) is left lying on one alone."""
    if joint.second not in own:
        return False
    carrier = standing.piece_of(joint.first)
    lies_on = {
        each.second for each in _closed(standing, set(carrier.refs)) if each.first in carrier.refs
    }
    return len(lies_on) == 2 == len(_closed(standing, set(carrier.refs)))


def hand_of(unit: Unit) -> int:
    """1, or -1 for a unit whose mirror image has 1: so that both are put together alike.

    What stands at the left and at the right is told apart by places and sizes.
    """
    middle = Box.of_boxes(part.bounds() for part in unit.parts).centre[0]

    def seen(hand: int) -> list[tuple[object, ...]]:
        rows = []
        for part in unit.parts:
            box = part.bounds()
            (x, y, z), size = box.centre, box.size
            rows.append(
                (
                    str(part.role),
                    *(round(each, 2) + 0.0 for each in ((x - middle) * hand, y, z, *size)),
                )
            )
        return sorted(rows)

    return 1 if seen(1) <= seen(-1) else -1
