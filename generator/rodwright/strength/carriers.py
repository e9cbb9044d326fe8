"""What carries each part of a unit, and where: the floor, its base, the wall, or other parts."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from enum import StrEnum

from rodwright.geometry import Box, Vector
from rodwright.unit import DOORS, DRAWERS, LEVELS, UPRIGHTS, Joint, JointKind, Part, Role, Unit
from rodwright.unit.facts import STANDS, is_on_feet, plinth_boards


class Ground(StrEnum):
    """What carries a unit in the end."""

    FLOOR = "floor"
    BASE = "base"
    WALL = "wall"


GROUNDS = frozenset[str](Ground)
_LET_IN = 15.0
"""How far a part reaches at most into one that it stands on or lies on, mm."""
_STEP = 1.0
"""A part lies on another that begins so much lower at least, mm."""
_STIFFEST: tuple[tuple[Role, ...], ...] = (
    UPRIGHTS, LEVELS, (Role.STILE,), (Role.RAIL,), (Role.WORKTOP,), (Role.BACK,),
)  # fmt: skip
"""What is fitted to the carcass hangs on the first of these that it is joined to."""


@dataclass(frozen=True, slots=True)
class Hold:
    """Where a part is carried: ``on`` a ground or another part's ref, ``at`` a place of the unit
    frame; ``spread`` where it lies on it all along; ``joint`` the joint that carries, if it is
    one."""

    on: str
    at: Vector
    spread: bool = False
    joint: Joint | None = None


def carriers(unit: Unit) -> dict[str, tuple[Hold, ...]]:
    """What carries each part, by ref: one hold at least for each, and never in a ring.

    A part on the floor or the base needs no other.  Levels are carried by uprights that they are
    joined to or lie on, uprights by what they stand on, and what is fitted to these by the
    stiffest that it is joined to.  A door or a drawer goes as one.
    """
    carrying = _Carrying(unit)
    found: dict[str, tuple[Hold, ...]] = {}
    rest: list[Part] = []
    for part in unit.parts:
        holds = tuple(carrying.of_carcass(part))
        if holds:
            found[part.ref] = holds
        else:
            rest.append(part)
    while rest:
        # In rounds, each on what was settled before it, so that no ring closes.
        settled = {part.ref: holds for part in rest if (holds := carrying.beside(part, found))}
        if not settled:
            settled = {part.ref: (carrying.below(part),) for part in rest}
        found |= settled
        rest = [part for part in rest if part.ref not in settled]
    return {part.ref: found[part.ref] for part in unit.parts}


class _Carrying:
    """The joints of a unit, by what carries what."""

    def __init__(self, unit: Unit) -> None:
        self._unit = unit
        self._boxes = {part.ref: part.bounds() for part in unit.parts}
        self._floor = min(box.low[2] for box in self._boxes.values())
        self._base = {part.ref for part in plinth_boards(unit)} | {
            part.ref for part in unit.parts if part.role is Role.LEG
        }
        self._on_feet = is_on_feet(unit)
        self._joints: dict[str, list[tuple[Part, Joint]]] = {part.ref: [] for part in unit.parts}
        for joint in unit.joints:
            self._joints[joint.first].append((unit.part(joint.second), joint))
            self._joints[joint.second].append((unit.part(joint.first), joint))
        self._groups: dict[str, list[str]] = {}
        for part in unit.parts:
            if part.role in (*DOORS, *DRAWERS):
                self._groups.setdefault(part.group, []).append(part.ref)

    def of_carcass(self, part: Part) -> Iterable[Hold]:
        """What carries a part by itself, or as a part of the carcass; nothing of what is fitted
        to it."""
        if part.role in (*DOORS, *DRAWERS):
            return ()
        grounded = tuple(self._grounded(part))
        if grounded:
            return grounded
        if part.role in UPRIGHTS:
            return tuple(self._upright(part))
        return tuple(self._level(part)) if part.role in LEVELS else ()

    def beside(self, part: Part, settled: dict[str, tuple[Hold, ...]]) -> tuple[Hold, ...]:
        """The stiffest of what was settled that a part, or its door or drawer, is joined to."""
        group = self._groups.get(part.group, [part.ref])
        refs = group if part.ref in group else [part.ref]
        found = [
            (other, joint)
            for ref in refs
            for other, joint in self._joints[ref]
            if other.ref in settled and other.ref not in refs
        ]
        glued = [each for each in found if each[1].kind is JointKind.EDGE_GLUED]
        firm = [each for each in found if each[1].fixings or each[1].kind is not JointKind.BUTT]
        for roles in _STIFFEST:
            stiffest = [each for each in glued or firm or found if each[0].role in roles]
            if stiffest:
                return tuple(self._lain(part, other, joint) for other, joint in stiffest)
        return tuple(Hold(other.ref, joint.at, joint=joint) for other, joint in found)

    def below(self, part: Part) -> Hold:
        """The ground straight below, or behind, what nothing carries."""
        box = self._boxes[part.ref]
        x, y, _ = box.centre
        if self._unit.hung:
            return Hold(Ground.WALL, box.centre, spread=True)
        return Hold(Ground.FLOOR, (x, y, self._floor), spread=True)

    def _grounded(self, part: Part) -> Iterator[Hold]:
        """The floor or the base under a part, or the wall behind a hung back."""
        box = self._boxes[part.ref]
        low = (box.centre[0], box.centre[1], box.low[2])
        if self._unit.hung:
            if part.role is Role.BACK:
                yield Hold(Ground.WALL, box.centre, spread=True)
        elif part.ref in self._base or (self._on_feet and part.role is Role.BOTTOM):
            yield Hold(Ground.BASE, low, spread=True)
        elif not self._on_feet and box.low[2] < self._floor + STANDS:
            yield Hold(Ground.FLOOR, low, spread=True)
        else:
            under = [
                joint
                for other, joint in self._joints[part.ref]
                if other.ref in self._base and self._lies_on(part, other, joint)
            ]
            if under:
                at = under[0].at if part.role in UPRIGHTS else low
                yield Hold(Ground.BASE, at, part.role not in UPRIGHTS, under[0])

    def _upright(self, part: Part) -> Iterator[Hold]:
        """What an upright stands on, or what holds it at its foot, or what it hangs by."""
        if self._unit.hung and part.role is Role.SIDE:
            yield from self._hung(part)
            return
        levels = [each for each in self._joints[part.ref] if each[0].role in LEVELS]
        under = [each for each in levels if self._lies_on(part, *each)]
        foot = self._boxes[part.ref].low[2]
        at_foot = under or [
            (other, joint)
            for other, joint in levels
            if abs(joint.at[2] - foot) < _LET_IN and other.ref in self._on_base()
        ]
        for other, joint in at_foot[:1]:
            yield Hold(other.ref, joint.at, joint=joint)

    def _hung(self, part: Part) -> Iterator[Hold]:
        """The backs that a side is joined to, or the wall."""
        backs = [each for each in self._joints[part.ref] if each[0].role is Role.BACK]
        for other, joint in backs:
            yield Hold(other.ref, joint.at, joint=joint)
        if not backs:
            yield Hold(Ground.WALL, self._boxes[part.ref].centre, spread=True)

    def _on_base(self) -> set[str]:
        """The bottoms that feet, legs or a plinth carry."""
        return {
            part.ref
            for part in self._unit.parts
            if part.role is Role.BOTTOM
            and any(hold.on == Ground.BASE for hold in self._grounded(part))
        }

    def _level(self, part: Part) -> Iterator[Hold]:
        """The uprights that carry a level part, and what carries it where one end has none."""
        ends = list(self._uprights_of(part))
        yield from ends
        if len(ends) < 2:
            for other, joint in self._joints[part.ref]:
                if other.role in LEVELS and len(list(self._uprights_of(other))) > 1:
                    yield self._lain(part, other, joint)

    def _uprights_of(self, part: Part) -> Iterator[Hold]:
        for other, joint in self._joints[part.ref]:
            hangs = self._unit.hung and other.role is Role.SIDE
            carries = hangs or not self._lies_on(other, part, joint)
            if other.role in UPRIGHTS and carries and self._stands(other):
                yield Hold(other.ref, joint.at, joint=joint)

    def _stands(self, part: Part) -> bool:
        """Whether something carries an upright, so that it doesn't hang by what lies on it."""
        return any(self._grounded(part)) or any(self._upright(part))

    def _lain(self, part: Part, other: Part, joint: Joint) -> Hold:
        """A hold on a part that one lies on all along, or is joined to."""
        faced = joint.kind in (JointKind.FACE_GLUED, JointKind.EDGE_GLUED)
        lies = faced or (part.role is Role.WORKTOP and other.role in LEVELS)
        return Hold(other.ref, joint.at, lies and other.role in LEVELS, joint)

    def _lies_on(self, part: Part, other: Part, joint: Joint) -> bool:
        """Whether a part lies or stands on another where a joint is."""
        box, under = self._boxes[part.ref], self._boxes[other.ref]
        return under.low[2] < box.low[2] - _STEP and _meets(box, under, joint.at[2])


def _meets(box: Box, under: Box, height: float) -> bool:
    return abs(height - box.low[2]) < _LET_IN and abs(height - under.high[2]) < _LET_IN
