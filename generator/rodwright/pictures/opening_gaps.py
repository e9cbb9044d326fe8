"""A unit in its opening, on the right of the sheet: its gaps drawn too large, and its packers."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import Literal

from rodwright.geometry import TOUCH
from rodwright.opening.gaps import Gap, Packing, is_bent
from rodwright.opening.sheet import FitSheet
from rodwright.opening.silhouettes import Silhouette
from rodwright.pictures.ink import Fill, Lettering, Mark, Point, Stroke
from rodwright.pictures.opening_walls import edges_on, wall_marks
from rodwright.pictures.paper import HEAVY, SMALL, Map, Window
from rodwright.unit import Quadrilateral

EXAGGERATION = 10.0
"""How many times too large gaps are drawn."""
_RIGHT_PANEL = Window(246.0, 48.0, 382.0, 204.0)
_WOOD, _PACKER = "#f3e7cf", "#b5762a"
_TWO_LABELS = 36.0
"""A level top at least so long on paper (mm) has its gap written at both ends."""
_Say = Callable[[float], str]


def with_gaps(fit: FitSheet, name: str, say: _Say) -> Iterator[Mark]:
    """The unit in one plane of its opening, with its gaps and packers; ``say`` words a length."""
    width, height = fit.size
    plane = fit.shape.planes[name]
    at_unit: Quadrilateral = ((0.0, 0.0), (width, 0.0), (width, height), (0.0, height))
    by_side = {
        "bottom": (None, 0.0),
        "right": (width, None),
        "top": (None, height),
        "left": (0.0, None),
    }
    outline = fit.outline(name)

    def times(side: str) -> float:
        beside = side not in fit.open_sides and outline.run(side) is not None
        return EXAGGERATION if beside else 1.0

    def enlarged(side: str, point: Point) -> Point:
        across = up = times(side)
        if point in plane.corners:
            number = plane.corners.index(point)
            own = at_unit[number]
            across = times("left" if number in (0, 3) else "right")
            up = times("bottom" if number in (0, 1) else "top")
        else:
            x, z = by_side[side]
            own = (point[0] if x is None else x, point[1] if z is None else z)
        return own[0] + across * (point[0] - own[0]), own[1] + up * (point[1] - own[1])

    large = edges_on(plane, enlarged)
    to_paper = _RIGHT_PANEL.scale_for([point for line in large for point in line])
    yield Lettering(
        (_RIGHT_PANEL.middle, 30.0),
        f"The unit in it, GAPS DRAWN {EXAGGERATION:g} TIMES TOO LARGE (packers in brown)",
        SMALL,
    )
    yield from wall_marks(
        [[to_paper(point) for point in line] for line in large], _ceiling(outline, to_paper)
    )
    unit = tuple(to_paper(corner) for corner in outline.corners)
    yield Fill((unit,), _WOOD)
    yield Stroke(((*unit, unit[0]),), HEAVY)
    middle = to_paper((width / 2, outline.top_at(width / 2) / 2))
    yield Lettering((middle[0], middle[1] - 2.0), "unit", SMALL)
    yield Lettering((middle[0], middle[1] + 4.0), f"{say(width)} x {say(height)}", SMALL + 1.0)
    for packing in fit.packing:
        if packing.gap.plane == name and (packing.packers or packing.by != "packers"):
            yield from _packer_marks(packing, fit.size, say, to_paper)
    for gap in fit.gaps:
        if gap.plane != name:
            continue
        if gap.side == "slope":
            yield from _slope_gap_marks(gap, outline, say, to_paper)
        elif _is_end(gap, outline) or is_bent(plane, fit.size, gap):
            yield from _gap_marks(gap, outline, say, to_paper)


def _ceiling(outline: Silhouette, to_paper: Map) -> tuple[Point, Point] | None:
    """Two points of the slope on paper, its gap drawn as much too large as the others."""
    slope = outline.slope
    if slope is None:
        return None
    off = EXAGGERATION * slope.plumb
    return to_paper((0.0, slope.edge(0.0) + off)), to_paper(
        (outline.width, slope.edge(outline.width) + off)
    )


def _slope_gap_marks(gap: Gap, outline: Silhouette, say: _Say, to_paper: Map) -> Iterator[Mark]:
    """What the gap under a slope is, once: it is the same all along it."""
    slope = outline.slope
    if slope is None or abs(gap.at - outline.slope_length / 2) > TOUCH:
        return
    x, z = outline.on_slope(gap.at)
    px, py = to_paper((x, z + EXAGGERATION * slope.plumb))
    across = 0.0 if not slope.rise else -1.5 if slope.rise > 0 else 1.5
    anchor: Literal["start", "middle", "end"] = (
        "middle" if not across else "end" if across < 0 else "start"
    )
    text = f"gap {say(gap.gap)}, square"
    yield Lettering((px + across, py - 2.5), text, SMALL, anchor)


def _is_end(gap: Gap, outline: Silhouette) -> bool:
    run = outline.run(gap.side)
    return run is not None and min(abs(gap.at - end) for end in run) < TOUCH


def _from_unit(side: str, at: float, out: float, size: tuple[float, float]) -> Point:
    """The point ``out`` from the unit, ``at`` along its side."""
    if side == "left":
        return -out, at
    if side == "right":
        return size[0] + out, at
    return (at, size[1] + out) if side == "top" else (at, -out)


_OFF_FLOOR = 2.0
"""How far over the unit's underside it says what packs it there."""
_INSTEAD = {"packers": "", "batten": "batten", "foot": "foot", "nothing": "too much"}
"""What stands where there are no packers."""


def _packer_marks(
    packing: Packing, size: tuple[float, float], say: _Say, to_paper: Map
) -> Iterator[Mark]:
    """The packers as a brown block from the unit outwards, and what they are inside the unit."""
    gap = packing.gap
    near = to_paper(_from_unit(gap.side, gap.at, 0.0, size))
    far = to_paper(_from_unit(gap.side, gap.at, EXAGGERATION * gap.gap, size))
    upright = gap.side in ("left", "right")
    x, y = (0.0, 1.2) if upright else (1.2, 0.0)
    block = (
        (near[0] - x, near[1] - y), (far[0] - x, far[1] - y),
        (far[0] + x, far[1] + y), (near[0] + x, near[1] + y),
    )  # fmt: skip
    yield Fill((block,), _PACKER)
    text = " + ".join(say(each) for each in packing.packers) or _INSTEAD[packing.by]
    if upright:
        inwards = 1.0 if gap.side == "left" else -1.0
        anchor = "start" if gap.side == "left" else "end"
        # Over what stands beside the floor, in a tall opening too.
        foot = to_paper((0.0, 0.0))[1] - _OFF_FLOOR
        at = (near[0] + 2.0 * inwards, min(near[1] + 1.1, foot - SMALL))
        yield Lettering(at, text, SMALL, anchor, False, _PACKER)  # type: ignore[arg-type]
    else:
        # Out of the way of the lowest packers at the sides.
        aside = 5.0 if gap.at < 0.4 * size[0] else -5.0 if gap.at > 0.6 * size[0] else 0.0
        at = (near[0] + aside, near[1] - _OFF_FLOOR)
        yield Lettering(at, text, SMALL, "middle", False, _PACKER)


def _gap_marks(gap: Gap, outline: Silhouette, say: _Say, to_paper: Map) -> Iterator[Mark]:
    """What the gap is, outside the wall."""
    size = outline.width, outline.height
    x, y = to_paper(_from_unit(gap.side, gap.at, EXAGGERATION * gap.gap, size))
    text = f"gap {say(gap.gap)}"
    if gap.side in ("left", "right"):
        right = gap.side == "right"
        high = gap.at > 0
        if not _is_end(gap, outline):
            yield Lettering(
                (x + (7.0 if right else -7.0), y + 1.0), text, SMALL, "start" if right else "end"
            )
            return
        at = (x + (7.0 if right else -7.0), y + (4.0 if high else -2.0))
        yield Lettering(at, text, SMALL, "start" if right else "end")
    else:
        if not _is_end(gap, outline):
            aside = y + (-7.0 if gap.side == "top" else 10.0)
            yield Lettering((x, aside), text, SMALL)
            return
        run = outline.run(gap.side) or (0.0, 0.0)
        left = gap.at == run[0]
        if not left and to_paper((run[1], 0.0))[0] - to_paper((run[0], 0.0))[0] < _TWO_LABELS:
            return
        at = (x + (2.0 if left else -2.0), y + (-7.0 if gap.side == "top" else 10.0))
        yield Lettering(at, text, SMALL, "start" if left else "end")
