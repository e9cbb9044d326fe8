"""The four sides of a view, and what stands on one line at one of them; mm of paper, y down.

Each side has a frame of its own: ``u`` along the view's edge and ``v`` away from it, so that one
set of rules serves all four.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from rodwright.pictures.drafting.drafted import Ring, arrow, dot
from rodwright.pictures.drafting.figures import ARROW, CLEAR, GAP, OVER, SIZE, TAIL
from rodwright.pictures.drafting.letters import Rect, extent
from rodwright.pictures.drafting.views import Dimension, Line, Point, Side

SHORT = 2 * ARROW + 0.6
"""Dimensions shorter than this on paper have their arrows outside."""
SAME = 0.01
"""Ends nearer than this are one."""


@dataclass(frozen=True, slots=True)
class Frame:
    """The frame of a side: ``u`` along it (rightwards or down), ``v`` outwards."""

    side: Side

    @property
    def upright(self) -> bool:
        """Whether ``u`` runs down the page; texts then read upwards."""
        return self.side in ("left", "right")

    @property
    def inward(self) -> bool:
        """Whether texts above their line stand on its side towards the view."""
        return self.side in ("below", "right")

    def page(self, u: float, v: float) -> Point:
        """A point of the page."""
        v = -v if self.side in ("left", "above") else v
        return (v, u) if self.upright else (u, v)

    def own(self, point: Point) -> Point:
        """A point of the page in this frame."""
        x, y = point
        u, v = (y, x) if self.upright else (x, y)
        return u, -v if self.side in ("left", "above") else v

    def rect(self, low: Point, high: Point) -> Rect:
        """A rectangle of this frame on the page."""
        (ax, ay), (bx, by) = self.page(*low), self.page(*high)
        return Rect(min(ax, bx), min(ay, by), max(ax, bx), max(ay, by))

    def line(self, start: Point, end: Point) -> Line:
        """A line of this frame on the page."""
        return self.page(*start), self.page(*end)


@dataclass(frozen=True, slots=True)
class Member:
    """A dimension of a level, in the side's frame: from ``low`` to ``high`` along it, the points
    that its extension lines come from, and how long and tall its text is."""

    dimension: Dimension
    low: float
    high: float
    feet: tuple[Point, Point]
    text: tuple[float, float]

    @property
    def middle(self) -> float:
        """The middle of its dimension line."""
        return (self.low + self.high) / 2

    @property
    def is_short(self) -> bool:
        """Whether there is no room for its arrows between its ends."""
        return self.high - self.low < SHORT

    def extensions(self, frame: Frame, line: float) -> tuple[Line, ...]:
        """Its extension lines, as far as there is any way from the view to the line (v)."""
        return tuple(
            frame.line((u, v + GAP), (u, line + OVER)) for u, v in self.feet if line - v > GAP
        )


@dataclass(frozen=True, slots=True)
class Level:
    """What stands on one line."""

    members: tuple[Member, ...]
    running: bool


def levels_of(dimensions: Sequence[tuple[Dimension, Point, Point]], frame: Frame) -> list[Level]:
    """Levels from the nearest to the outermost: chains in their ranks, what overlaps on lines of
    its own, running ones outermost.  Each dimension comes with its points on the page."""
    chains: dict[tuple[bool, int, str], list[Member]] = {}
    for each, start, end in dimensions:
        feet = (frame.own(start), frame.own(end))
        low, high = sorted((feet[0][0], feet[1][0]))
        member = Member(each, low, high, feet, extent(each.text, SIZE))
        chains.setdefault((each.running, each.rank, each.chain), []).append(member)
    levels = []
    for key in sorted(chains):
        members = sorted(chains[key], key=lambda member: (member.low, member.high))
        if key[0]:
            levels.append(Level(tuple(members), True))
            continue
        lines: list[list[Member]] = []
        for member in members:
            for line in lines:
                if line[-1].high <= member.low + SAME:
                    line.append(member)
                    break
            else:
                lines.append([member])
        levels += [Level(tuple(line), False) for line in lines]
    return levels


def ends_of(
    members: Sequence[Member], number: int, frame: Frame, at: float
) -> tuple[tuple[Line, ...], tuple[Ring, ...]]:
    """The dimension line of a chain's member at ``at`` (v) with its tails, and its arrowheads.

    Arrows of short ones point in from outside; in a chain the neighbour's arrow does that, and
    between two short ones stands a dot (ISO 129-1).
    """
    member = members[number]
    lines = [frame.line((member.low, at), (member.high, at))]
    ends: list[Ring] = []
    for end, away, step in ((member.low, -1.0, -1), (member.high, 1.0, 1)):
        beside = members[number + step] if 0 <= number + step < len(members) else None
        room = abs((beside.high if step < 0 else beside.low) - end) if beside else 2 * TAIL
        tip = frame.page(end, at)
        if not member.is_short:
            ends.append(arrow(tip, frame.page(end - away, at)))
        elif beside and room <= SAME:
            ends += [dot(tip)] if beside.is_short else []
        elif room < TAIL + CLEAR:
            ends.append(dot(tip))
        else:
            ends.append(arrow(tip, frame.page(end + away, at)))
            lines.append(frame.line((end, at), (end + away * TAIL, at)))
    return tuple(lines), tuple(ends)
