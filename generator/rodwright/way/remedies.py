"""The whole way for a unit, and what would help where it doesn't go: each remedy is tried."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace

from rodwright.lengths import LengthUnit
from rodwright.unit import DOORS, DRAWERS, FACE_FRAME, Part, Role, Unit
from rodwright.unit.way import WayIn
from rodwright.way.body import Body, Niche, body_of, niche_of, straight_in
from rodwright.way.carry import Load, Step, carry, said

IntoOpening = Callable[[Body, Niche, LengthUnit], Step]
"""How putting a body into its opening is judged."""
_MOST_SECTIONS = 3
"""More boxes than this are no remedy: carrying the parts in is less trouble (common practice, no
source)."""
_LEAST_FRAME = 4
"""Boards that a plinth's frame has at least."""


@dataclass(frozen=True, slots=True)
class Remedy:
    """Something that was tried, and the steps on the way that still don't go (none: it does)."""

    what: str
    still: tuple[Step, ...]

    @property
    def works(self) -> bool:
        """Whether every step goes."""
        return not self.still


def steps_for(unit: Unit, way: WayIn, into_opening: IntoOpening = straight_in) -> tuple[Step, ...]:
    """Every step on the way of the whole unit, in order."""
    body = body_of(unit)
    steps = carry(body.load("the whole unit"), way, unit.display_unit)
    return steps + _placed(unit, way, body, into_opening)


def _placed(unit: Unit, way: WayIn, body: Body, into_opening: IntoOpening) -> tuple[Step, ...]:
    if unit.opening is None:
        return ()
    return (into_opening(body, niche_of(unit.opening, way, body), unit.display_unit),)


def remedies(unit: Unit, way: WayIn, into_opening: IntoOpening = straight_in) -> tuple[Remedy, ...]:
    """What could be done, each tried on the whole way; the least trouble first.

    Of the sections only the fewest that go are listed, or the most tried where none do.
    """
    found = _tried(unit, way, into_opening)
    if way.skirting is not None and unit.opening is not None:
        bare = replace(way, skirting=None)
        off = "take the skirting off where it stands"
        found.append(_remedy(off, steps_for(unit, bare, into_opening)))
        if not any(remedy.works for remedy in found):
            found += [
                replace(remedy, what=f"{off}, and {remedy.what}")
                for remedy in _tried(unit, bare, into_opening)
            ]
    return tuple(found)


def _tried(unit: Unit, way: WayIn, into_opening: IntoOpening) -> list[Remedy]:
    """Everything that is done to the unit itself, but for what is more than one that works."""
    found = []
    enough: list[frozenset[Role]] = []
    for what, roles, plinth in _left_off(unit):
        if any(less < roles for less in enough):
            continue
        body = body_of(unit, roles)
        steps = carry(body.load(what), way, unit.display_unit)
        if plinth is not None:
            # It is carried in flat and never stood up.
            lying = replace(way, ceiling=None)
            steps += carry(plinth.load("the plinth"), lying, unit.display_unit)
            steps += _onto(plinth.height, unit, way, body, into_opening)
        else:
            steps += _placed(unit, way, body, into_opening)
        found.append(_remedy(what, steps))
        if found[-1].works:
            enough.append(roles)
    found += [_sections(unit, way, into_opening, across) for across in (True, False)]
    found.append(_in_place(unit, way))
    return found


def _remedy(what: str, steps: tuple[Step, ...]) -> Remedy:
    return Remedy(what, tuple(step for step in steps if not step.passes))


def _left_off(unit: Unit) -> Iterator[tuple[str, frozenset[Role], Body | None]]:
    """Roles to be left off until the unit stands in its place, where that makes it smaller;
    and the plinth that waits for it there, if that is what is left off.  More comes after less.

    Doors and drawers in a face frame come off with it.
    """
    whole = body_of(unit)
    roles = {part.role for part in unit.parts}
    fronts, frames, base = map(frozenset, ((*DOORS, *DRAWERS), FACE_FRAME, (Role.PLINTH,)))
    bare = body_of(unit, fronts) != whole
    if bare:
        yield _off(roles), fronts, None
    plinth = _plinth(unit)
    if plinth is not None:
        yield _PLINTH, base, plinth
        if bare:
            yield f"{_off(roles)}, and {_PLINTH}", base | fronts, plinth
    if framed := bool(roles & frames):
        frame = "bring the face frame separately and fit it in place"
        yield frame, frames | fronts, None
        if plinth is not None:
            yield f"{frame}, and {_PLINTH}", base | frames | fronts, plinth
    if Role.TOP in roles:
        topless = frames | {Role.TOP} | (fronts if framed else frozenset())
        if body_of(unit, topless).height < whole.height:
            frame = " and the face frame" if framed else ""
            yield f"fit the top{frame} last, in place", topless, None


_PLINTH = "bring the plinth separately, and stand the unit on it in place"


def _off(roles: set[Role]) -> str:
    """Taking off what comes off without a tool or with a screwdriver, in words."""
    off = []
    if roles & set(DOORS):
        off.append("the doors off their hinges")
    if roles & set(DRAWERS):
        off.append("the drawers out")
    return f"take {' and '.join(off)}"


def _plinth(unit: Unit) -> Body | None:
    """The plinth as a body of its own, where the carcass stands on one whole."""
    boards = [part for part in unit.parts if part.role is Role.PLINTH]
    # A toe board between the sides, or one clipped to feet, is no frame to stand on.
    if len(boards) < _LEAST_FRAME:
        return None
    return body_of(unit, {part.role for part in unit.parts} - {Role.PLINTH})


def _onto(
    height: float, unit: Unit, way: WayIn, body: Body, into_opening: IntoOpening
) -> tuple[Step, ...]:
    """Putting a body into the opening over a plinth of this height that stands there: as if the
    floor, before the opening too, were so much higher."""
    if unit.opening is None:
        return ()
    skirting, mouth = way.skirting, way.mouth
    raised = replace(
        way,
        ceiling=None if way.ceiling is None else way.ceiling - height,
        skirting=(
            replace(skirting, height=skirting.height - height)
            if skirting is not None and skirting.height > height
            else None
        ),
        mouth=(
            replace(mouth, height=mouth.height - height)
            if mouth is not None and mouth.height is not None
            else mouth
        ),
    )
    opening = replace(unit.opening, height=unit.opening.height - height)
    niche = niche_of(opening, raised, body)
    return (into_opening(body, niche, unit.display_unit),)


def _sections(unit: Unit, way: WayIn, into_opening: IntoOpening, across: bool) -> Remedy:
    """Equal boxes side by side or one on the other, the face frame fitted in place.

    The bottom one of a stack goes into the opening like the whole; so does what stands on it.
    """
    body = body_of(unit, FACE_FRAME)
    how = "side by side" if across else "one on the other"
    framed = any(part.role in FACE_FRAME for part in unit.parts)
    last = ", and fit the face frame in place" if framed else ""
    remedy: Remedy | None = None
    for count in range(2, _MOST_SECTIONS + 1):
        part = (
            replace(body, width=body.width / count)
            if across
            else replace(body, height=body.height / count)
        )
        steps = carry(part.load("a section"), way, unit.display_unit)
        if across:
            steps += _placed(unit, way, part, into_opening) + _standing(unit, way, body)
        else:
            steps += _placed(unit, way, body, into_opening)
        size = said(part.width if across else part.height, unit.display_unit)
        remedy = _remedy(
            f"make it as {count} boxes {how}, each {size} {'wide' if across else 'high'}{last}",
            steps,
        )
        if remedy.works:
            break
    assert remedy is not None
    return remedy


def _standing(unit: Unit, way: WayIn, body: Body) -> tuple[Step, ...]:
    """Whether the body has room where it is to stand, however it gets there."""
    return _placed(unit, replace(way, mouth=None, front=None), body, straight_in)


def _in_place(unit: Unit, way: WayIn) -> Remedy:
    """Carry the parts in one by one; the worst of them decides."""
    loose = replace(way, ceiling=None)
    steps = [
        step
        for shape in unit.shapes.values()
        for step in carry(_part_load(shape[0]), loose, unit.display_unit)
    ]
    steps += _standing(unit, way, body_of(unit))
    still = sorted((step for step in steps if not step.passes), key=lambda step: step.spare)
    return Remedy("carry the parts in and build it in place", tuple(still[:1]))


def _part_load(part: Part) -> Load:
    length, width, thickness = part.blank.size
    return Load(f"{part.name} ({part.ref})", width, length, thickness)
