"""The whole way for a unit, and what would help where it doesn't go: each remedy is tried."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace

from rodwright.lengths import LengthUnit
from rodwright.parts import Part, Role, Unit
from rodwright.site.way_body import FACE_FRAME, Body, Niche, body_of, niche_of, straight_in
from rodwright.site.way_carry import Load, Step, carry, said
from rodwright.ways import WayIn

IntoOpening = Callable[[Body, Niche, LengthUnit], Step]
"""How putting a body into its opening is judged."""
_MOST_SECTIONS = 4


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
    """Everything that is done to the unit itself."""
    found = []
    for what, body in _left_off(unit):
        steps = carry(body.load(what), way, unit.display_unit)
        found.append(_remedy(what, steps + _placed(unit, way, body, into_opening)))
    found += [_sections(unit, way, into_opening, across) for across in (True, False)]
    found.append(_in_place(unit, way))
    return found


def _remedy(what: str, steps: tuple[Step, ...]) -> Remedy:
    return Remedy(what, tuple(step for step in steps if not step.passes))


def _left_off(unit: Unit) -> Iterator[tuple[str, Body]]:
    """Bodies with something left off until it stands in its place, where that makes it smaller."""
    whole = body_of(unit)
    roles = {part.role for part in unit.parts}
    framed = bool(roles & set(FACE_FRAME))
    if framed:
        yield "bring the face frame separately and fit it in place", body_of(unit, FACE_FRAME)
    if Role.TOP in roles:
        topless = body_of(unit, (Role.TOP, *FACE_FRAME))
        if topless.height < whole.height:
            frame = " and the face frame" if framed else ""
            yield f"fit the top{frame} last, in place", topless


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
