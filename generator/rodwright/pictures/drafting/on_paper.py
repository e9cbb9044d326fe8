"""One view at a scale, with all that is told of it in its place; mm of paper, y down.

The page's origin is that of the view: views that share an axis of the unit line up where their
origins do.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from functools import lru_cache
from itertools import pairwise

from rodwright.pictures.drafting.drafted import (
    DraftedDimension,
    DraftedNote,
    Ring,
    arrow,
    covered,
    moved_line,
)
from rodwright.pictures.drafting.figures import CLEAR, LETTER
from rodwright.pictures.drafting.inside import draft_inside, draft_notes, lay_inside
from rodwright.pictures.drafting.letters import Rect, Written, around, written
from rodwright.pictures.drafting.levels import Levels
from rodwright.pictures.drafting.room import Room
from rodwright.pictures.drafting.sides import Frame, levels_of
from rodwright.pictures.drafting.views import Line, Point, Side, View

SIDES: tuple[Side, ...] = ("left", "right", "above", "below")
_PLANE = 5.0
"""Of a cutting plane's wide ends, and its arrows' way from them (ISO 128-44, from memory)."""
_CAPTION = 0.8 * LETTER


@dataclass(frozen=True, slots=True)
class PlaneEnd:
    """An end of a cutting plane: its wide line, its arrow that shows which way is looked, and its
    letter."""

    line: Line
    shaft: Line
    head: Ring
    letter: Written

    def moved(self, x: float, y: float) -> PlaneEnd:
        """The end moved to the right and down."""
        return PlaneEnd(
            moved_line(self.line, x, y),
            moved_line(self.shaft, x, y),
            tuple((a + x, b + y) for a, b in self.head),
            self.letter.moved(x, y),
        )


@dataclass(frozen=True, slots=True)
class DraftedView:
    """A view on paper: ``at`` is where its origin is, ``box`` what its own lines cover and
    ``extent`` what all of it covers."""

    view: View
    scale: int
    at: Point
    box: Rect
    extent: Rect
    caption: Written | None
    dimensions: tuple[DraftedDimension, ...]
    notes: tuple[DraftedNote, ...]
    plane_lines: tuple[Line, ...] = ()
    plane_ends: tuple[PlaneEnd, ...] = ()

    def moved(self, x: float, y: float) -> DraftedView:
        """The view moved to the right and down."""
        return replace(
            self,
            at=(self.at[0] + x, self.at[1] + y),
            box=self.box.moved(x, y),
            extent=self.extent.moved(x, y),
            caption=self.caption and self.caption.moved(x, y),
            dimensions=tuple(each.moved(x, y) for each in self.dimensions),
            notes=tuple(each.moved(x, y) for each in self.notes),
            plane_lines=tuple(moved_line(line, x, y) for line in self.plane_lines),
            plane_ends=tuple(each.moved(x, y) for each in self.plane_ends),
        )

    def page(self, point: Point) -> Point:
        """A point of the view, mm, on paper."""
        return self.at[0] + point[0] / self.scale, self.at[1] - point[1] / self.scale

    def line(self, line: Line) -> Line:
        """A line of the view on paper."""
        return self.page(line[0]), self.page(line[1])

    def lines(self) -> list[Line]:
        """All of the view's own lines on paper."""
        return [self.line(line) for line in _own_lines(self.view)]

    def texts(self) -> Iterator[Written]:
        """All texts that belong to it."""
        yield from (each.text for each in self.dimensions)
        yield from (each.text for each in self.notes)
        for end in self.plane_ends:
            yield end.letter
        if self.caption:
            yield self.caption


@lru_cache(maxsize=256)
def draft_view(view: View, scale: int) -> DraftedView:
    """A view with its dimensions and notes where they have room, its origin at the page's."""
    bare = DraftedView(view, scale, (0.0, 0.0), Rect(0, 0, 0, 0), Rect(0, 0, 0, 0), None, (), ())
    lines = bare.lines()
    ends = {each: (bare.page(each.start), bare.page(each.end)) for each in view.dimensions}
    points = [bare.page(view.low), bare.page(view.high)]
    points += [point for line in lines for point in line]
    points += [point for each in ends.values() for point in each]
    box = Rect(*map(min, zip(*points, strict=True)), *map(max, zip(*points, strict=True)))
    room = Room(lines)
    planes = [(letter, bare.line(line)) for letter, line in view.planes]
    room.draw(line for _, line in planes)
    inside = [(each, *ends[each]) for each in view.dimensions if each.side == "inside"]
    laid = lay_inside(inside, room)
    dimensions: list[DraftedDimension] = []
    edges = {"left": -box.left, "right": box.right, "above": -box.top, "below": box.bottom}
    for side in SIDES:
        frame = Frame(side)
        there = [(each, *ends[each]) for each in view.dimensions if each.side == side]
        rays = [frame.own(end)[0] for _, line in planes if _crosses(line, frame) for end in line]
        dimensions += Levels(frame, edges[side], room, rays).place(levels_of(there, frame))
    dimensions += draft_inside(laid, room)
    notes = draft_notes([(note, bare.page(note.at)) for note in view.notes], room)
    lines_drawn, plane_ends = _planes(planes, box, room)
    found = [box, *(each for each in (covered(dimensions), covered(notes)) if each)]
    found += [rect for end in plane_ends for rect in _end_rects(end)]
    extent = around(found)
    caption = None
    if view.name:
        x = (box.left + box.right) / 2
        caption = written(view.name, (x, 0.0), _CAPTION)
        caption = caption.moved(0.0, extent.top - 2.0 - caption.rect.bottom)
        extent = around([extent, caption.rect])
    return replace(
        bare,
        box=box,
        extent=extent,
        caption=caption,
        dimensions=tuple(dimensions),
        notes=tuple(notes),
        plane_lines=tuple(lines_drawn),
        plane_ends=tuple(plane_ends),
    )


def _own_lines(view: View) -> Iterator[Line]:
    yield from (*view.visible, *view.hidden, *view.outline)
    for polyline in (*view.moved, *((*r, r[0]) for cut in view.cuts for r in cut.rings if r)):
        yield from pairwise(polyline)


def _crosses(line: Line, frame: Frame) -> bool:
    """Whether a cutting plane's line runs out at a side."""
    (a, _), (b, _) = (frame.own(end) for end in line)
    return abs(a - b) < 1e-6


def _planes(
    planes: list[tuple[str, Line]], box: Rect, room: Room
) -> tuple[list[Line], list[PlaneEnd]]:
    """Where cutting planes run past the view, and their ends where there is room for them."""
    lines, ends = [], []
    for letter, line in planes:
        upright = abs(line[0][0] - line[1][0]) < abs(line[0][1] - line[1][1])
        at = line[0][0] if upright else line[0][1]
        tips = []
        for side in ("above", "below") if upright else ("left", "right"):
            end = _plane_end(letter, Frame(side), at, box, room)
            ends.append(end)
            tips.append(end.line[0])
        lines.append((tips[0], tips[1]))
    return lines, ends


def _plane_end(letter: str, frame: Frame, at: float, box: Rect, room: Room) -> PlaneEnd:
    """The first free place outwards; sections are looked at as the views are, from the left or
    from above: arrows point right or down."""
    edge = {"left": -box.left, "right": box.right, "above": -box.top, "below": box.bottom}
    for step in range(2, 2000):
        v = edge[frame.side] + step
        line = frame.line((at, v), (at, v + _PLANE))
        shaft = frame.line((at, v + _PLANE / 2), (at + _PLANE, v + _PLANE / 2))
        head = arrow(shaft[1], shaft[0])
        text = written(letter, (0.0, 0.0), LETTER)
        left, top, right, bottom = text.rect
        away = (bottom - top if not frame.upright else right - left) / 2 + CLEAR
        x, y = frame.page(at, v + _PLANE + away)
        text = text.moved(x, y)
        around_it = around([text.rect, *(Rect(*_box(each)) for each in (line, shaft))])
        if room.is_free(around_it.grown(CLEAR / 2)):
            room.write(around_it)
            return PlaneEnd(line, shaft, head, text)
    raise ValueError("no room for the letter of a cutting plane")


def _box(line: Line) -> tuple[float, float, float, float]:
    (ax, ay), (bx, by) = line
    return min(ax, bx), min(ay, by), max(ax, bx), max(ay, by)


def _end_rects(end: PlaneEnd) -> list[Rect]:
    return [end.letter.rect, Rect(*_box(end.line)), Rect(*_box(end.shaft))]
