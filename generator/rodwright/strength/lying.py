"""Where levels lie: at their ends, on what stands below them, along an edge, on the floor.

Lengths in mm, unit frame.  Nothing here asks how much anything carries.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Literal

from rodwright.geometry import TOUCH, Box
from rodwright.geometry.spacing import spread
from rodwright.strength.held_edges import fixes, is_fixed_back
from rodwright.strength.level_parts import Level, lies_level, other_of
from rodwright.strength.seats import PULLS, Line, Lying, Seat, Standing
from rodwright.strength.turning import turning_of
from rodwright.trade.feet import FOOT, FOOT_INSET
from rodwright.unit import UPRIGHTS, Joint, Part, Role, Unit
from rodwright.unit.facts import STANDS

_BASE = (Role.PLINTH, Role.LEG)
_COVERS = 0.9
"""What holds an edge holds it over this much of the clear span."""


def lying(unit: Unit, level: Level, joints: Mapping[str, tuple[Joint, ...]]) -> Lying:
    """Where a level lies, and what stands on it."""
    ends, under, standing = _by_uprights(unit, level, joints)
    low = level.box.low[2]
    grounded = level.main.role is Role.BOTTOM and low <= STANDS and not unit.hung
    boards = [
        part
        for part in unit.parts
        if part.role in _BASE and part.ref not in {each.ref for each in level.beside}
        if _under(level, part.bounds()) and part.bounds().low[2] <= STANDS
    ]
    across = [part for part in boards if not _runs_along(level.box, part.bounds())]
    posts = [*under, *_on_base(level, across, joints), *_feet(unit, level)]
    if not ends and not posts and level.main.role is Role.BOTTOM:
        ends, standing = _hanging(level, standing, unit)
    lines = _on_boards(unit, level, [part for part in boards if part not in across], joints)
    clear = _clear(level, (*ends, *posts))
    lines += (
        []
        if any(line.edge == "back" for line in lines)
        else [*_by_back(unit, level, joints, clear)]
    )
    return Lying(
        _sorted(level, ends, posts),
        () if grounded else tuple(lines),
        tuple(sorted(standing, key=lambda each: each.at)),
        grounded,
    )


def _on_boards(
    unit: Unit, level: Level, boards: list[Part], joints: Mapping[str, tuple[Joint, ...]]
) -> list[Line]:
    """The edges that boards carry which stand on the floor and run along a level, below it or on
    its edge: the first at the front, and the first at the back."""
    strips = [part for part in level.parts if part.ref not in level.refs]
    found: dict[str, Line] = {}
    for part in (*boards, *strips):
        if part.bounds().low[2] <= STANDS and not unit.hung:
            line = _line(level, part, joints)
            found.setdefault(line.edge, line)
    return list(found.values())


def _by_uprights(
    unit: Unit, level: Level, joints: Mapping[str, tuple[Joint, ...]]
) -> tuple[list[Seat], list[Seat], list[Standing]]:
    """What sides and dividers (and a sloping top) carry, and what they bring."""
    ends: dict[str, Seat] = {}
    under: dict[str, Seat] = {}
    standing: dict[str, Standing] = {}
    box = level.box
    for panel, joint in _joints(level, joints):
        other = other_of(unit, joint, panel.ref)
        if not (other.role in UPRIGHTS or (other.role is Role.TOP and not lies_level(other))):
            continue
        its = other.bounds()
        low, high, panel_box = its.low[2], its.high[2], panel.bounds()
        if low > panel_box.low[2] + TOUCH and high > panel_box.high[2]:
            standing.setdefault(other.ref, Standing(its.centre[0], other.ref, joint))
        elif low < panel_box.low[2] and high < panel_box.high[2] - TOUCH:
            at = _face(box, other) if other.role is Role.SIDE else its.centre[0]
            seat = Seat(at, other.ref, joint, "under", joint.kind not in PULLS)
            under.setdefault(other.ref, seat)
        else:
            ends.setdefault(other.ref, _end(unit, box, other, joint))
    for ref in _through_rails(unit, level, joints):
        part = unit.part(ref)
        at = _face(box, part) if part.role is Role.SIDE else part.bounds().centre[0]
        under.setdefault(ref, Seat(at, ref, None, "under", lifts=True))
    return list(ends.values()), list(under.values()), list(standing.values())


def _end(unit: Unit, box: Box, other: Part, joint: Joint) -> Seat:
    if other.role not in UPRIGHTS:
        # What ends at a sloping top is cut to it and meets it along an edge.
        at = box.low[0] if joint.at[0] < box.centre[0] else box.high[0]
        return Seat(at, other.ref, joint, "end")
    at = min(max(_face(box, other), box.low[0]), box.high[0])
    return Seat(at, other.ref, joint, "end", stiffness=turning_of(unit, joint))


def _joints(level: Level, joints: Mapping[str, tuple[Joint, ...]]) -> Iterator[tuple[Part, Joint]]:
    for panel in level.panels:
        for joint in joints[panel.ref]:
            yield panel, joint


def _face(box: Box, other: Part) -> float:
    """The x of the face that an end of a level comes to."""
    its = other.bounds()
    return its.high[0] if its.centre[0] < box.centre[0] else its.low[0]


def _through_rails(
    unit: Unit, level: Level, joints: Mapping[str, tuple[Joint, ...]]
) -> Iterator[str]:
    """The uprights that carry a worktop by way of the rails between them."""
    if level.main.role is not Role.WORKTOP:
        return
    seen = set()
    for part in unit.parts:
        touches = abs(part.bounds().high[2] - level.box.low[2]) < TOUCH
        if part.role in UPRIGHTS and touches:
            seen.add(part.ref)
        elif part.role in (Role.CARCASS_RAIL, Role.TOP) and touches:
            others = (other_of(unit, joint, part.ref) for joint in joints[part.ref])
            seen.update(other.ref for other in others if other.role in UPRIGHTS)
    yield from sorted(seen, key=lambda ref: unit.part(ref).bounds().low[0])


def _under(level: Level, other: Box) -> bool:
    """Whether something touches a level from below, or what is glued to its edges."""
    glued = [part.bounds() for ply in level.plies for part in ply.strips]
    return any(_below(box, other) for box in (level.box, *glued))


def _below(box: Box, other: Box) -> bool:
    """Whether something touches a level from below."""
    wide, deep, _ = box.overlap(other)
    return abs(other.high[2] - box.low[2]) < TOUCH and wide > TOUCH and deep > TOUCH


def _runs_along(box: Box, other: Box) -> bool:
    """Whether a board runs along a level, from left to right."""
    return box.overlap(other)[0] > box.size[0] / 2


def _on_base(
    level: Level, boards: list[Part], joints: Mapping[str, tuple[Joint, ...]]
) -> Iterator[Seat]:
    """Cross members, ends of a plinth and legs under a level."""
    for part in boards:
        joint = next(
            (j for panel, j in _joints(level, joints) if part.ref in (j.first, j.second)), None
        )
        pulls = joint is not None and joint.kind in PULLS
        yield Seat(part.bounds().centre[0], part.ref, joint, "under", not pulls)


def _feet(unit: Unit, level: Level) -> Iterator[Seat]:
    """Adjustable feet: bought in, in rows as they are set out."""
    feet = next((each for each in unit.fixings if each.name == FOOT), None)
    if feet is None or level.main.role is not Role.BOTTOM or level.ref not in feet.on:
        return
    wide, deep, _ = level.box.size
    ratio = max(wide - 2 * FOOT_INSET, 1.0) / max(deep - 2 * FOOT_INSET, 1.0)
    rows = [n for n in range(2, feet.count // 2 + 1) if feet.count % n == 0]
    deep_rows = min(rows, key=lambda n: abs((feet.count / n - 1) / (n - 1) - ratio), default=1)
    low, high = level.box.low[0], level.box.high[0]
    for x in spread(low, high, FOOT_INSET, max(2, feet.count // deep_rows)):
        yield Seat(x, "", None, "under", lifts=True)


def _hanging(
    level: Level, standing: list[Standing], unit: Unit
) -> tuple[list[Seat], list[Standing]]:
    """A bottom under the sides with nothing below it hangs from them by its joints."""
    sides = [each for each in standing if unit.part(each.ref).role is Role.SIDE]
    seats = [_end(unit, level.box, unit.part(each.ref), each.joint) for each in sides]
    return seats, [each for each in standing if each not in sides]


def _sorted(level: Level, ends: list[Seat], posts: list[Seat]) -> tuple[Seat, ...]:
    """From left to right; of two at one place the end counts, and of what stands below the ends
    its inner face."""
    box = level.box
    found: list[Seat] = []
    for seat in sorted((*ends, *posts), key=lambda each: (each.at, each.how)):
        near = next((each for each in found if abs(each.at - seat.at) < _ONE_PLACE), None)
        if near is None:
            found.append(seat)
        elif near.how == "under" and seat.how == "end":
            found[found.index(near)] = seat
    inside = [each for each in found if box.low[0] - TOUCH <= each.at <= box.high[0] + TOUCH]
    return tuple(inside)


_ONE_PLACE = 15.0
"""Seats nearer to each other than this (mm) are one: an end, and what stands below it."""


def _clear(level: Level, seats: tuple[Seat, ...]) -> tuple[float, float]:
    """From the leftmost to the rightmost seat."""
    places = [each.at for each in seats] or [level.box.low[0], level.box.high[0]]
    return min(places), max(places)


def _line(level: Level, board: Part, joints: Mapping[str, tuple[Joint, ...]]) -> Line:
    """The edge that a board on the floor carries."""
    box = board.bounds()
    edge: Literal["front", "back"] = "front" if box.centre[1] < level.box.centre[1] else "back"
    by = tuple(j for _, j in _joints(level, joints) if board.ref in (j.first, j.second))
    inner = box.high[1] if edge == "front" else box.low[1]
    return Line(edge, inner, (board.ref,), by)


def _by_back(
    unit: Unit,
    level: Level,
    joints: Mapping[str, tuple[Joint, ...]],
    clear: tuple[float, float],
) -> Iterator[Line]:
    """The back edge, where the back is screwed or pinned to it and to uprights at either side."""
    found: dict[str, Joint] = {}
    for panel, joint in _joints(level, joints):
        back = other_of(unit, joint, panel.ref)
        if back.role is Role.BACK and fixes(joint):
            found.setdefault(back.ref, joint)
    held = [unit.part(ref) for ref in found if is_fixed_back(unit, ref, joints)]
    reach = sum(
        max(0.0, min(part.bounds().high[0], clear[1]) - max(part.bounds().low[0], clear[0]))
        for part in held
    )
    if held and reach >= _COVERS * (clear[1] - clear[0]):
        refs = tuple(part.ref for part in held)
        yield Line("back", level.box.high[1], refs, tuple(found[ref] for ref in refs))
