"""Sagging lines as they are drawn: how many times too large, and what stands round them."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from shapely import MultiPoint, Polygon, clip_by_rect

from rodwright.geometry import Box
from rodwright.geometry.halfspaces import box_planes, vertices
from rodwright.strength.sag_lines import SagLine
from rodwright.unit import FACE_FRAME, TRAITS, Assembly, Part, Role

_TIMES = (0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100)
"""Round figures that a sag is drawn larger by, or smaller where it is huge."""

_SLICES = 12
"""What slopes is taken in so many slices."""
_WHOLE = 0.98
"""What fills this share of its box doesn't slope."""
_ASIDE = (*FACE_FRAME, Role.BACK, Role.LIPPING, Role.RUNNER, Role.PACKER, Role.SCRIBE, Role.CORNICE)


def is_shown(part: Part) -> bool:
    """Whether a part is drawn with the sagging levels: what carries something, or stands below."""
    return TRAITS[part.role].of not in (Assembly.DOOR, Assembly.DRAWER) and part.role not in _ASIDE


def exaggeration(lines: Sequence[SagLine], deepest: float) -> float:
    """The greatest round figure by which no sag is drawn deeper than ``deepest`` mm of the unit."""
    most = max((down for line in lines for _, down in line.line), default=0.0)
    return float(max((each for each in _TIMES if each * most <= deepest), default=_TIMES[0]))


def drop_at(line: SagLine, x: float) -> float:
    """How far a level has gone down at a place (mm); past its ends, as far as at them."""
    (first, _), (last, _) = line.line[0], line.line[-1]
    step = (last - first) / (len(line.line) - 1)
    number = min(max(int((x - first) / step), 0), len(line.line) - 2)
    (start, down), (_, next_down) = line.line[number], line.line[number + 1]
    share = min(max((x - start) / step, 0.0), 1.0)
    return down + share * (next_down - down)


def outline(part: Part) -> tuple[tuple[float, float], ...]:
    """The outline of a part from the front (x, z), of what bevels leave of its blank."""
    size = part.blank.size
    cuts = [plane for each in part.workings for plane in each.planes(size)]
    points = map(part.placement.to_unit, vertices([*box_planes(Box.of_size(size)), *cuts]))
    hull = MultiPoint([(x, z) for x, _, z in points]).convex_hull
    return tuple((x, z) for x, z in hull.exterior.coords[:-1])


def slices(part: Part) -> Iterator[Box]:
    """Boxes that hold all of a part, of which only x and z count: one, or slices of what slopes."""
    box = part.bounds()
    ring = Polygon(outline(part))
    low, high = box.low[0], box.high[0]
    if ring.area > _WHOLE * (high - low) * (box.high[2] - box.low[2]):
        yield box
        return
    for number in range(_SLICES):
        start, stop = (low + (high - low) * (number + more) / _SLICES for more in (0, 1))
        _, foot, _, top = clip_by_rect(ring, start, box.low[2] - 1, stop, box.high[2] + 1).bounds
        yield Box((start, box.low[1], foot), (stop, box.high[1], top))


def drawn(times: float) -> str:
    """How large sags are drawn, in words."""
    if times == 1:
        return "as large as it is"
    return f"{times:g} times too large" if times > 1 else f"{1 / times:g} times too small"


def after(years: float) -> str:
    """When sags are as they are drawn."""
    return f"after {years:g} year{'' if years == 1 else 's'}" if years > 0 else "at once"
