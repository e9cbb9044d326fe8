"""Dimensions within a view, and notes: each text where it meets nothing; mm of paper, y down.

A text stands on none of another's lines and on no other text.  It keeps off the view's lines too
where it can; where it can't they are broken round it, as they may be (ISO 128-2, from memory).
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

from rodwright.pictures.drafting.drafted import (
    DraftedDimension,
    DraftedNote,
    Ring,
    arrow,
    dot,
    outlines,
)
from rodwright.pictures.drafting.figures import ARROW, CLEAR, GAP, OVER, SIZE
from rodwright.pictures.drafting.letters import Rect, Written, extent, written
from rodwright.pictures.drafting.room import Room, broken
from rodwright.pictures.drafting.sides import SHORT, Frame, Member, ends_of
from rodwright.pictures.drafting.views import Dimension, Line, Note, Point

_SOFT = 12.0
"""A text on one of the view's lines costs as much as being so far (mm) from where it belongs: a
leader near by is the better."""
_LEADER = 4.0
"""So does a text that needs a leader."""
_THROUGH = 40.0
"""So does a leader that runs through another text."""
_KEPT = 12.0
"""So does a text where another's leader would end."""
_DIRECTIONS = tuple(math.tau * step / 16 for step in range(16))
_STEPS = tuple((0.4 * x, 0.4 * y) for x in range(-12, 13) for y in range(-12, 13))
"""From where a note belongs."""

Ends = tuple[Dimension, Point, Point]
"""A dimension and its points on the page."""
Option = tuple[float, Written, tuple[Line, ...]]
"""A place for a text, with its cost and its leader."""


def lay_inside(dimensions: Sequence[Ends], room: Room) -> list[Bare]:
    """Lines and arrowheads of dimensions within the view, each on the line of its points."""
    bare = _bare(dimensions)
    for _, lines, arrows in bare:
        room.draw((*lines, *outlines(arrows)))
    return bare


def draft_inside(bare: Sequence[Bare], room: Room) -> list[DraftedDimension]:
    """Dimensions within the view, their lines being laid already."""
    found = []
    for (each, (start, end)), lines, arrows in bare:
        text, leader = _dimension_text(each, start, end, room)
        found.append(DraftedDimension(each, (start, end), (*lines, *leader), arrows, text))
    return found


Bare = tuple[tuple[Dimension, Line], tuple[Line, ...], tuple[Ring, ...]]


def _bare(dimensions: Sequence[Ends]) -> list[Bare]:
    """Lines and arrowheads: those of a chain on one line know their neighbours."""
    found: list[Bare] = []
    rows: dict[tuple[str, str, float], list[Member]] = {}
    for each, start, end in dimensions:
        if each.along == "line":
            found.append(_straight(each, start, end))
            continue
        frame = _frame(each)
        feet = (frame.own(start), frame.own(end))
        low, high = sorted((feet[0][0], feet[1][0]))
        member = Member(each, low, high, feet, extent(each.text, SIZE))
        rows.setdefault((each.chain, each.along, round(feet[0][1], 3)), []).append(member)
    for members in rows.values():
        members.sort(key=lambda member: (member.low, member.high))
        for number, member in enumerate(members):
            found.append(_level(members, number, member))
    return found


def _frame(dimension: Dimension) -> Frame:
    return Frame("right" if dimension.along == "y" else "below")


def _level(members: Sequence[Member], number: int, member: Member) -> Bare:
    """A level or upright one: its line passes its first point, an extension line reaches the
    other."""
    frame, at = _frame(member.dimension), member.feet[0][1]
    lines, arrows = ends_of(members, number, frame, at)
    u, v = member.feet[1]
    if abs(v - at) > GAP + OVER:
        way = math.copysign(1.0, at - v)
        lines = (*lines, frame.line((u, v + way * GAP), (u, at + way * OVER)))
    line = frame.line((member.low, at), (member.high, at))
    return (member.dimension, line), lines, arrows


def _straight(dimension: Dimension, start: Point, end: Point) -> Bare:
    """One from point to point, its arrows between them or, if it is short, pointing in."""
    inside = math.dist(start, end) >= SHORT
    if math.dist(start, end) < 1e-6:
        return (dimension, (start, end)), (), (dot(start),)
    tails = [(start, _past(end, start)), (end, _past(start, end))]
    arrows = tuple(
        arrow(tip, other if inside else past)
        for tip, other, (_, past) in zip((start, end), (end, start), tails, strict=True)
    )
    return (dimension, (start, end)), ((start, end), *(() if inside else tails)), arrows


def _past(start: Point, end: Point) -> Point:
    """A point past the end of the way from start to end."""
    length = math.dist(start, end)
    share = (length + 2 * ARROW) / length
    return start[0] + share * (end[0] - start[0]), start[1] + share * (end[1] - start[1])


def _dimension_text(
    dimension: Dimension, start: Point, end: Point, room: Room
) -> tuple[Written, tuple[Line, ...]]:
    """Above the line, or below it, as near its middle as it can, or else beside with a leader."""
    middle = ((start[0] + end[0]) / 2, (start[1] + end[1]) / 2)
    upright = dimension.along == "y"
    long, tall = extent(dimension.text, SIZE)
    options: list[Option] = []
    play = math.dist(start, end) / 2 - long / 2 - CLEAR
    if dimension.along != "line" and play >= 0 and math.dist(start, end) >= SHORT:
        for step in range(int(2 * play) + 1):
            for side in (-1, 1):
                for way in (1, -1) if step else (1,):
                    along, off = way * step / 2, side * (tall / 2 + CLEAR)
                    x, y = (off, along) if upright else (along, off)
                    at = (middle[0] + x, middle[1] + y)
                    cost = 0.15 * step + (0.5 if side > 0 else 0.0)
                    text = written(dimension.text, at, SIZE, upright)
                    options.append((cost, text, ()))
    return _cheapest(options, _beside(dimension.text, middle, upright), room)


def draft_notes(notes: Sequence[tuple[Note, Point]], room: Room) -> list[DraftedNote]:
    """Notes at their points on the page, or beside them with a leader."""
    found = []
    waiting = [at for _, at in notes]
    for note, at in notes:
        waiting.remove(at)
        options: list[Option] = []
        if not note.leader:
            options = [
                (math.hypot(x, y) + 0.01 * up, text, ())
                for up in (False, True)
                for x, y in _STEPS
                if _is_on(text := written(note.text, (at[0] + x, at[1] + y), SIZE, up), at)
            ]
        text, leader = _cheapest(options, _beside(note.text, at, False), room, waiting)
        found.append(DraftedNote(text, leader, _leader_end(at, room) if leader else ()))
    return found


def _leader_end(at: Point, room: Room) -> tuple[Ring, ...]:
    """The dot at a leader's end, unless a text lies there."""
    ring = dot(at)
    if room.texts_met(outlines((ring,))):
        return ()
    (left, top), (right, bottom) = (tuple(map(end, zip(*ring, strict=True))) for end in (min, max))
    room.write(Rect(left, top, right, bottom))
    return (ring,)


def _is_on(text: Written, at: Point) -> bool:
    """Whether a text covers a point."""
    left, top, right, bottom = text.rect
    return left <= at[0] <= right and top <= at[1] <= bottom


def _beside(text: str, at: Point, upwards: bool) -> Iterator[list[Option]]:
    """Places round a point with a leader to it, ring by ring."""
    long, tall = extent(text, SIZE)
    half = (tall / 2, long / 2) if upwards else (long / 2, tall / 2)
    for step in range(400):
        radius = 3.0 + 1.5 * step
        ring: list[Option] = []
        for turn in _DIRECTIONS:
            x, y = math.cos(turn), math.sin(turn)
            # The leader ends at the rectangle's edge, which is so far from its middle.
            share = min(
                (side + CLEAR / 2) / max(abs(part), 1e-9)
                for side, part in zip(half, (x, y), strict=True)
            )
            end = (at[0] + radius * x, at[1] + radius * y)
            centre = (end[0] + share * x, end[1] + share * y)
            place = written(text, centre, SIZE, upwards)
            # Slanting leaders are told from the lines of the view.
            square = 0.5 if min(abs(x), abs(y)) < 1e-6 else 0.0
            ring.append((_LEADER + radius + share + square, place, ((at, end),)))
        yield ring


def _cheapest(
    near: Sequence[Option],
    rings: Iterator[list[Option]],
    room: Room,
    kept: Sequence[Point] = (),
) -> tuple[Written, tuple[Line, ...]]:
    """The cheapest place of those where a text meets no other and no line of a dimension.

    A leader that can't but run through another text is broken round it; points that are ``kept``
    are where others would lead to.
    """
    best: Option | None = None

    def consider(options: Sequence[Option]) -> None:
        nonlocal best
        for cost, text, leader in sorted(options, key=lambda each: each[0]):
            if best is not None and cost >= best[0]:
                return
            rect = text.rect.grown(CLEAR / 2)
            if not room.is_free(rect):
                continue
            cost += _SOFT * room.softly_met(rect) + _THROUGH * room.texts_met(leader)
            cost += _KEPT * sum(_is_on(text, point) for point in kept)
            if best is None or cost < best[0]:
                best = (cost, text, leader)

    consider(near)
    for ring in rings:
        if best is not None and best[0] <= min(cost for cost, *_ in ring):
            break
        consider(ring)
    if best is None:
        raise ValueError("no room for a text of a view")
    _, text, leader = best
    leader = tuple(broken(leader, [each.grown(CLEAR / 2) for each in room.texts]))
    room.write(text.rect)
    room.draw(leader)
    return text, leader
