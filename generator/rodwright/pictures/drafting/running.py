"""Running dimensions (ISO 129-1): from one origin, on one line, each with its arrow at its end.

Texts stand at the ends of the extension lines, moved along the side where they would meet; mm of
paper, y down.
"""

from __future__ import annotations

from collections.abc import Sequence

from rodwright.pictures.drafting.drafted import DraftedDimension, arrow, dot, outlines
from rodwright.pictures.drafting.figures import ARROW, CLEAR, OVER, SIZE
from rodwright.pictures.drafting.letters import Written
from rodwright.pictures.drafting.room import Room
from rodwright.pictures.drafting.sides import Frame, Level, Member

_MOVED = 0.1
"""Texts moved less than this stand where they belong."""
_APART = 1.0


def place_running(
    level: Level, frame: Frame, line: float, room: Room, rays: Sequence[float]
) -> list[DraftedDimension]:
    """The dimensions of a running chain whose line is at ``line`` (v); ``rays`` are where other
    lines run on outwards."""
    members = sorted(level.members, key=lambda member: _end(member))
    wanted = [(_end(member), member.text[1]) for member in members]
    middles = _off_rays(_spread(wanted), [tall for _, tall in wanted], rays)
    near = line + OVER + CLEAR
    moved = [abs(at - end) > _MOVED for at, (end, _) in zip(middles, wanted, strict=True)]
    near += ARROW if any(moved) else 0.0
    found = []
    for member, at in zip(members, middles, strict=True):
        origin, end = member.feet[0][0], _end(member)
        long, tall = member.text
        rect = frame.rect((at - tall / 2, near), (at + tall / 2, near + long))
        text = Written(member.dimension.text, rect, SIZE, not frame.upright)
        leader = (
            ()
            if abs(at - end) <= _MOVED
            else (frame.line((end, line + OVER), (at, near - CLEAR / 2)),)
        )
        own = frame.line((origin, line), (end, line))
        back = frame.page(end + (1.0 if origin > end else -1.0), line)
        ends = (arrow(frame.page(end, line), back), dot(frame.page(origin, line)))
        lines = (own, *member.extensions(frame, line), *leader)
        found.append(DraftedDimension(member.dimension, own, lines, ends, text))
        room.write(rect)
        room.draw((*lines, *outlines(ends)))
    return found


def _end(member: Member) -> float:
    """Where a running dimension's arrow is."""
    return member.feet[1][0]


def _spread(wanted: Sequence[tuple[float, float]]) -> list[float]:
    """Middles of texts of these heights in a row and apart, as near as may be to where each is
    wanted: those that would meet are gathered about the middle of what they want."""
    groups: list[tuple[list[float], list[float]]] = []
    for middle, tall in wanted:
        groups.append(([middle], [tall]))
        while len(groups) > 1:
            one, two = groups[-2:]
            if _centre(one) + _length(one) / 2 + _APART <= _centre(two) - _length(two) / 2:
                break
            groups[-2:] = [([*one[0], *two[0]], [*one[1], *two[1]])]
    middles = []
    for group in groups:
        at = _centre(group) - _length(group) / 2
        for tall in group[1]:
            middles.append(at + tall / 2)
            at += tall + _APART
    return middles


def _centre(group: tuple[list[float], list[float]]) -> float:
    return sum(group[0]) / len(group[0])


def _length(group: tuple[list[float], list[float]]) -> float:
    return sum(group[1]) + _APART * (len(group[1]) - 1)


def _off_rays(
    middles: Sequence[float], heights: Sequence[float], rays: Sequence[float]
) -> list[float]:
    """Texts moved on until none lies on a ray, still apart."""
    least, kept = -1e9, []
    for at, tall in zip(middles, heights, strict=True):
        low = max(at - tall / 2, least)
        while hit := [ray for ray in rays if low - CLEAR / 2 < ray < low + tall + CLEAR / 2]:
            low = max(hit) + CLEAR / 2 + 1e-6
        kept.append(low + tall / 2)
        least = low + tall + _APART
    return kept
