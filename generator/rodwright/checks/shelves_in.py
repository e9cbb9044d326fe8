"""Do adjustable shelves go in past the face frame that hides their ends?"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from math import acos, asin, atan2, cos, hypot, pi, sin

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.phrases import length_in, named
from rodwright.checks.rules import Rule
from rodwright.geometry import TOUCH, Box
from rodwright.unit import FACE_FRAME, LEVELS, JointKind, Part, Role, Unit

_SOURCE = "plane geometry"


@dataclass(frozen=True, slots=True)
class Room:
    """What is free for a shelf, mm: between uprights, levels, and frame and back; and the opening
    of the frame, its thickness, and the least that it hides at one side."""

    width: float
    height: float
    depth: float
    clear: float
    rise: float
    thick: float
    hidden: float


def shelves_in(unit: Unit) -> Iterator[Finding]:
    """Adjustable shelves longer than the opening of the face frame that they go in by.

    Three ways are tried, by plane geometry: with one end raised, seen from the front; flat, and
    on edge, with one end first behind a stile, seen from above. In each the shelf goes in at a
    slant, and is then turned between the uprights.
    """
    resting = [joint for joint in unit.joints if joint.kind is JointKind.RESTING]
    loose = dict.fromkeys(joint.second for joint in resting)
    # The layers of a shelf, one glued on the other, go in together.
    above = {
        joint.first: joint.second for joint in unit.joints if joint.kind is JointKind.FACE_GLUED
    }
    stacks = {ref: _stack(ref, above) for ref in loose}
    taken_out = {each for stack in stacks.values() for each in stack}
    for ref in loose:
        shelf = unit.part(ref)
        uprights = [unit.part(joint.first) for joint in resting if joint.second == ref]
        box = shelf.bounds()
        highest = unit.part(stacks[ref][-1]).bounds().high[2]
        box = box.spanning(2, high=highest)
        room = _room(unit, box, uprights, taken_out)
        if room is not None and box.size[0] > room.clear + TOUCH:
            yield _finding(unit, shelf, box, room)


def _stack(ref: str, above: dict[str, str]) -> list[str]:
    """A shelf and all that is glued on it, from the bottom up."""
    stack = [ref]
    while stack[-1] in above:
        stack.append(above[stack[-1]])
    return stack


def _finding(unit: Unit, shelf: Part, box: Box, room: Room) -> Finding:
    long, wide, thick = box.size

    def say(length: float) -> str:
        return length_in(unit, length)

    behind = f"{named(shelf)}, {say(long)} long, goes in past a face frame {say(room.clear)} clear"
    tilt = _raised(long, thick, room)
    turns = hypot(long, thick) <= room.width + TOUCH
    way = ""
    if tilt is not None and turns:
        way = f"with one end raised, {say(_across(long, thick, tilt))} high at that slant"
    elif thick <= room.rise and goes_one_end_first(long, wide, room):
        way = "flat, one end first behind a stile"
    elif (
        wide <= min(room.rise, room.height)
        and hypot(wide, thick) <= room.depth + TOUCH
        and goes_one_end_first(long, thick, room)
    ):
        way = "on edge, one end first behind a stile, and is laid flat inside"
    if way:
        return Finding(
            Severity.NOTE,
            Rule.SHELF_AT_SLANT,
            f"{behind}: {way}; the opening is {say(room.rise)} high and {say(room.depth)} deep",
            "Try one before the shelves are finished.",
            (shelf.ref,),
            long,
            room.clear,
            source=_SOURCE,
            case=(way, room.rise, room.depth),
        )
    return Finding(
        Severity.WARNING,
        Rule.SHELF_CANNOT_GO_IN,
        f"{named(shelf)}, {say(long)} long, can't be tilted in past a face frame {say(room.clear)} "
        f"clear and {say(room.rise)} high, with {say(room.depth)} behind it and {say(room.width)} "
        "between the uprights",
        "Give the shelf more `clearance`, make `face_frame.width` smaller, or write `fixed: true`.",
        (shelf.ref,),
        long,
        room.clear,
        source=_SOURCE,
        case=(room.rise, room.depth, room.width),
    )


def _across(long: float, broad: float, slant: float) -> float:
    """How much a rectangle takes up square to a line that it stands at a slant (rad) to."""
    return long * sin(slant) + broad * cos(slant)


def least_slant(long: float, broad: float, clear: float) -> float | None:
    """The least slant (rad) at which a rectangle longer than ``clear`` goes between two points
    so far apart; None where none is enough."""
    if broad > clear:
        return None
    # Beyond its diagonal's slant, long * cos + broad * sin falls with the slant.
    return acos(min(1.0, clear / hypot(long, broad))) + atan2(broad, long)


def _raised(long: float, thick: float, room: Room) -> float | None:
    """The slant (rad), seen from the front, at which a shelf goes into the opening."""
    slant = least_slant(long, thick, room.clear)
    if slant is None:
        return None
    high = min(room.rise, room.height) + TOUCH
    if _across(long, thick, slant) <= high:
        return slant
    return pi / 2 if long <= high else None


def goes_one_end_first(long: float, broad: float, room: Room) -> bool:
    """Whether a rectangle goes in, seen from above: one end behind a stile and against the upright
    there, at a slant at which the other passes the other stile, and then turned."""
    slant = least_slant(long, broad, room.width - room.hidden)
    if slant is None or hypot(long, broad) > room.width + TOUCH:
        return False
    gap = hypot(room.clear, room.thick)
    if broad > gap:
        return False
    slant = max(slant, asin(broad / gap) + atan2(room.thick, room.clear))
    return slant <= pi / 2 and _across(long, broad, slant) <= room.depth + TOUCH


def _room(unit: Unit, box: Box, uprights: list[Part], taken_out: set[str]) -> Room | None:
    """What is free round a shelf; None where no face frame stands before it."""
    x, _, z = box.centre
    inner = [part.bounds() for part in uprights]
    left = max((each.high[0] for each in inner if each.centre[0] < x), default=box.low[0])
    right = min((each.low[0] for each in inner if each.centre[0] > x), default=box.high[0])
    frame = [part.bounds() for part in unit.parts if part.role in FACE_FRAME]
    if not frame:
        return None
    beside = [each for each in frame if each.low[2] < z < each.high[2]]
    one = max([left, *(each.high[0] for each in beside if each.high[0] < x)])
    other = min([right, *(each.low[0] for each in beside if each.low[0] > x)])
    levels = [
        part.bounds() for part in unit.parts if part.role in LEVELS and part.ref not in taken_out
    ]
    bars = [each for each in (*frame, *levels) if each.low[0] < x < each.high[0]]
    floors = [each for each in levels if each.low[0] < x < each.high[0]]
    low, high = _between(bars, box)
    bottom, top = _between(floors, box)
    backs = [part.bounds().low[1] for part in unit.parts if part.role is Role.BACK]
    rear = min(backs, default=max(each.high[1] for each in inner))
    front = max(each.high[1] for each in frame)
    return Room(
        right - left,
        top - bottom,
        rear - front,
        other - one,
        high - low,
        max(each.size[1] for each in frame),
        min(one - left, right - other),
    )


def _between(bars: list[Box], box: Box) -> tuple[float, float]:
    """The nearest heights (z) that bars below and above a shelf leave free."""
    below = max((each.high[2] for each in bars if each.high[2] <= box.low[2]), default=0.0)
    return below, min(
        (each.low[2] for each in bars if each.low[2] >= box.high[2]), default=box.high[2] + 1e4
    )
