"""Dimension lines at the sides of a view, from the nearest to the outermost; mm of paper, y down.

Dimension lines lie outside the view, texts above them, to be read from below or from the right
(ISO 129-1); lengths along a side (u) and away from the view (v) are those of its frame.  A level
is what stands on one line.  Levels are placed from the inside out, each past all of the one before
it; extension lines of the outer ones run on through the inner ones, and texts keep off them.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from rodwright.pictures.drafting.drafted import DraftedDimension, outlines
from rodwright.pictures.drafting.figures import (
    ARROW,
    CLEAR,
    FIRST,
    OVER,
    SIZE,
    SPACING,
)
from rodwright.pictures.drafting.letters import Written
from rodwright.pictures.drafting.room import Room
from rodwright.pictures.drafting.running import place_running
from rodwright.pictures.drafting.sides import Frame, Level, Member, ends_of
from rodwright.pictures.drafting.views import Line, Point

Placed = tuple[Written, tuple[Line, ...]]
"""A text in its place, and what leads to it."""


class Levels:
    """The levels of one side of a view as they are placed in a room."""

    def __init__(self, frame: Frame, edge: float, room: Room, rays: Sequence[float] = ()) -> None:
        """``edge`` is where the view ends (v); ``rays`` are where lines run off it (u)."""
        self.frame, self.room = frame, room
        self._edge = self._reach = edge
        self._line = edge + FIRST - SPACING
        self._rays = list(rays)

    def place(self, levels: Sequence[Level]) -> Iterator[DraftedDimension]:
        """All levels, from the nearest to the outermost."""
        for number, level in enumerate(levels):
            outer = [
                foot[0]
                for other in levels[number + 1 :]
                for member in other.members
                for foot in member.feet
            ]
            rays = sorted({round(ray, 3) for ray in (*outer, *self._rays)})
            tall = max(member.text[1] for member in level.members)
            inward = self.frame.inward and not level.running
            need = tall + 2 * CLEAR if inward else 2 * CLEAR
            self._line = max(self._line + SPACING, self._reach + need)
            while not level.running and self._crosses_texts(level):
                self._line += 1.0
            placed = (
                place_running(level, self.frame, self._line, self.room, rays)
                if level.running
                else _chain(self, level, rays)
            )
            covers = [self.frame.own(corner) for each in placed for corner in _corners(each)]
            self._reach = max(v for _, v in covers)
            yield from placed

    def _crosses_texts(self, level: Level) -> bool:
        """Whether the level's line or a tail of it would run through a text of another side."""
        members = level.members
        ends = (ends_of(members, at, self.frame, self._line) for at in range(len(members)))
        return any(self.room.texts_met((*lines, *outlines(rings))) for lines, rings in ends)

    @property
    def line(self) -> float:
        """Where the level's line is (v)."""
        return self._line


def _corners(each: DraftedDimension) -> list[Point]:
    return [corner for r in each.rects() for corner in ((r.left, r.top), (r.right, r.bottom))]


def _chain(side: Levels, level: Level, rays: Sequence[float]) -> list[DraftedDimension]:
    members, frame = level.members, side.frame
    bare = [ends_of(members, number, frame, side.line) for number in range(len(members))]
    for member, (lines, arrows) in zip(members, bare, strict=True):
        side.room.draw((*member.extensions(frame, side.line), *lines, *outlines(arrows)))
    texts: dict[int, tuple[Written, tuple[Line, ...]]] = {}
    for number, member in enumerate(members):
        found = _above(side, member, rays)
        if found is not None:
            texts[number] = (found, ())
    waiting = [number for number in range(len(members)) if number not in texts]
    for number in list(waiting):
        waiting.remove(number)
        exits = [members[other].middle for other in waiting]
        texts[number] = _beyond(side, members, number, rays) or _outside(
            side, members[number], rays, exits
        )
    return [
        DraftedDimension(
            member.dimension,
            frame.line((member.low, side.line), (member.high, side.line)),
            (*lines, *member.extensions(frame, side.line), *texts[number][1]),
            arrows,
            texts[number][0],
        )
        for number, (member, (lines, arrows)) in enumerate(zip(members, bare, strict=True))
    ]


def _text(side: Levels, member: Member, middle: float, low: float) -> Written:
    """A text along the side whose middle and lower edge are these."""
    long, tall = member.text
    rect = side.frame.rect((middle - long / 2, low), (middle + long / 2, low + tall))
    return Written(member.dimension.text, rect, SIZE, side.frame.upright)


def _is_free(side: Levels, text: Written, rays: Sequence[float]) -> bool:
    rect = text.rect.grown(CLEAR / 2)
    low, high = (rect.top, rect.bottom) if side.frame.upright else (rect.left, rect.right)
    return not any(low < ray < high for ray in rays) and side.room.is_free(rect)


def _base(side: Levels, tall: float) -> float:
    """Where a text's inner edge is that stands above its line."""
    return side.line - CLEAR - tall if side.frame.inward else side.line + CLEAR


def _above(side: Levels, member: Member, rays: Sequence[float]) -> Written | None:
    """The text above its line, as near its middle as it is free."""
    long, tall = member.text
    play = (member.high - member.low - long) / 2 - CLEAR
    if play < 0 or member.is_short:
        return None
    for step in range(int(play) + 1):
        for way in (1, -1) if step else (1,):
            text = _text(side, member, member.middle + way * step, _base(side, tall))
            if _is_free(side, text, rays):
                side.room.write(text.rect)
                return text
    return None


def _beyond(
    side: Levels, members: Sequence[Member], number: int, rays: Sequence[float]
) -> Placed | None:
    """The text of a chain's first or last above the line drawn on past its end."""
    member = members[number]
    long, tall = member.text
    run = CLEAR + ARROW + long
    for end, way, last in ((member.low, -1, 0), (member.high, 1, len(members) - 1)):
        if number != last or not member.is_short:
            continue
        text = _text(side, member, end + way * (ARROW + CLEAR / 2 + long / 2), _base(side, tall))
        line = side.frame.line((end, side.line), (end + way * run, side.line))
        if _is_free(side, text, rays) and not side.room.texts_met((line,)):
            side.room.write(text.rect)
            side.room.draw((line,))
            return text, (line,)
    return None


def _outside(side: Levels, member: Member, rays: Sequence[float], exits: Sequence[float]) -> Placed:
    """The text farther out than its line, with a leader to its middle: the cheapest free place.

    ``exits`` are where the leaders of those come out that have no place yet: they are kept open, so
    that there always is a way.  Beyond the ends of the side there is room without end.
    """
    for lanes, steps in ((5, 14), (60, 300)):
        best: tuple[float, Written, tuple[Line, ...]] | None = None
        for cost, text, leader in _places(side, member, lanes, steps):
            if best and cost >= best[0]:
                break
            rect = text.rect.grown(CLEAR / 2)
            low, high = (rect.top, rect.bottom) if side.frame.upright else (rect.left, rect.right)
            if any(low < each < high for each in exits) or not _is_free(side, text, rays):
                continue
            if side.room.texts_met(leader):
                continue
            cost += 2.0 * side.room.lines_met(leader[1:])
            if best is None or cost < best[0]:
                best = (cost, text, leader)
        if best:
            side.room.write(best[1].rect)
            side.room.draw(best[2])
            return best[1], best[2]
    raise ValueError(f"no room for the dimension {member.dimension.text!r}")


def _places(
    side: Levels, member: Member, lanes: int, steps: int
) -> list[tuple[float, Written, tuple[Line, ...]]]:
    """Places farther out than the line, the cheapest first."""
    long, tall = member.text
    frame, middle = side.frame, member.middle
    start = side.line + max(OVER + CLEAR, 0.0 if frame.inward else tall + 2 * CLEAR)
    found: list[tuple[float, Written, tuple[Line, ...]]] = []
    for lane in range(lanes):
        low = start + lane * (tall + 1.0)
        centre = low + tall / 2
        straight = (frame.line((middle, side.line), (middle, low - CLEAR / 2)),)
        found.append((3.0 * lane, _text(side, member, middle, low), straight))
        for step in range(steps):
            for way in (1, -1):
                near = middle + way * (1.2 + 1.5 * step)
                leader = (
                    frame.line((middle, side.line), (middle, centre)),
                    frame.line((middle, centre), (near - way * CLEAR / 2, centre)),
                )
                text = _text(side, member, near + way * long / 2, low)
                found.append((3.0 * lane + 2.0 + 1.0 * step, text, leader))
    return sorted(found, key=lambda each: each[0])
