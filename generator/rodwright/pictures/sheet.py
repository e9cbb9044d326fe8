"""Front, side and plan on one sheet, with hidden lines and overall dimensions.

A unit in millimetres is drawn in first-angle projection (ISO 5456-2): the view from the left
stands to the right of the front view, the view from above below it.  One in inches is drawn in
third-angle projection (ISO 5456-2, ASME Y14.3): the view from the left stands to the left, the
view from above on top.  Scales are those of ISO 5455, sheets A4 and A3 of ISO 5457, or Letter
(size A of ASME Y14.1) with the scales of inch rules; visible edges are wide
lines, hidden ones narrow and dashed, dimension lines narrow (ISO 128-2, line types 01.2, 02.1 and
01.1; dashes 12 and gaps 3 line widths).  Numbers from the standards are given from memory.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

import numpy as np

from rodwright.lengths import LengthUnit, format_length
from rodwright.pictures.bodies import Body, bodies_of, foremost, placed_facets
from rodwright.pictures.camera import FROM_LEFT, FRONT, PLAN, Array, Camera
from rodwright.pictures.facets import Facets
from rodwright.pictures.glyphs import text_width
from rodwright.pictures.hidden import LEAST_LENGTH, lines
from rodwright.pictures.ink import Drawing, Fill, Lettering, Mark, Point, Stroke
from rodwright.pictures.linework import Line, tidy
from rodwright.pictures.pens import thinned
from rodwright.pictures.sagged import after, drawn, exaggeration
from rodwright.pictures.visible import mouth_lines
from rodwright.strength.sag_lines import SagLine
from rodwright.unit import Unit

SCALES: dict[LengthUnit, tuple[int, ...]] = {
    "mm": (1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000),
    "in": (1, 2, 4, 8, 12, 16, 24, 32, 48, 96, 192, 480, 960, 1920, 4800),
}
"""What one mm of paper stands for; of inch rules, down to 1/8 in to the foot (common practice, no
source) and what is even beyond."""
PAPERS: dict[LengthUnit, tuple[tuple[str, float, float], ...]] = {
    "mm": (("A4", 210.0, 297.0), ("A3", 297.0, 420.0)),
    "in": (("Letter", 215.9, 279.4),),
}
"""Sheets from the smallest up: name, and sides in mm."""
BORDER, FILING = 10.0, 20.0
"""From the sheet's edges to the frame, mm; the left edge is the filing edge."""
TITLE_HEIGHT = 24.0
GAP = 26.0
"""Between views, mm on paper: room for a dimension."""
WIDE, NARROW = 0.5, 0.25
FINEST = 0.13
"""The finest pen (ISO 128-2), mm, for lines closer beside each other than lines should be."""
DASHES = (12 * NARROW, 3 * NARROW)
LONG_DASHES = (6.0, 1.0)
"""Of lines that levels sag to, mm."""
DEEPEST = 4.0
"""No sag is drawn deeper, mm on paper."""
TEXT = 3.5
"""Height of capitals and figures, mm (ISO 3098)."""
LETTER = TEXT / 0.72
"""Size of type whose capitals are that high."""
LEAST_HIDDEN = 0.8
"""Shorter hidden stretches (mm on paper), such as the facets of a small hole, are left out."""


@dataclass(frozen=True, slots=True)
class _Sheet:
    """A sheet of paper, mm."""

    name: str
    width: float
    height: float


@dataclass(frozen=True, slots=True)
class _View:
    """A camera, the view's size in mm, and its lower left corner on the screen and on paper."""

    name: str
    camera: Camera
    size: tuple[float, float]
    corner: tuple[float, float]
    at: Point


_MEASURES = {"mm": "mm", "in": "inches"}
_PROJECTIONS: dict[LengthUnit, str] = {"mm": "first", "in": "third"}
"""Angle of projection: what readers of each unit are used to."""


def draw_views(unit: Unit, sagging: Sequence[SagLine] = ()) -> Drawing:
    """The sheet of a unit, in mm of paper, with the lines of levels that sag in its front view."""
    sheet, scale = _sheet_and_scale(unit)
    views = _laid_out(unit, sheet, scale)
    bodies = bodies_of(unit, {})
    facets = placed_facets(bodies)
    marks: list[Mark] = []
    for view in views:
        marks += _view_marks(bodies, facets, view, scale)
        x = view.at[0] + view.size[0] / scale / 2
        y = view.at[1] - view.size[1] / scale - 3.0
        marks.append(Lettering((x, y), view.name, 0.8 * LETTER))
    times = exaggeration(sagging, DEEPEST * scale)
    marks += _sag_marks(sagging, views[0], scale, times)
    marks += _dimensions(unit, views, scale)
    marks += _title(unit, sheet, scale)
    if sagging:
        marks.append(_sag_told(unit, sheet, times))
    figures = " x ".join(format_length(length, unit.display_unit) for length in unit.size)
    return Drawing(
        sheet.width,
        sheet.height,
        f"{unit.title}, front, side and plan",
        f"{unit.title} in three views at 1:{scale}, {_projection(unit)}. Overall {figures} "
        f"{unit.display_unit} (width x height x depth). Dashed lines are hidden.",
        tuple(marks),
        "mm",
    )


def _sheet_and_scale(unit: Unit) -> tuple[_Sheet, int]:
    """The largest scale that fits the larger paper, and the smallest sheet for it."""
    width, height, depth = unit.size
    for scale in SCALES[unit.display_unit]:
        across = (width + depth) / scale + 2 * GAP + BORDER + FILING
        down = (height + depth) / scale + 2 * GAP + TITLE_HEIGHT + 2 * BORDER
        for name, short, long in PAPERS[unit.display_unit]:
            for sheet in (_Sheet(name, long, short), _Sheet(name, short, long)):
                if across <= sheet.width and down <= sheet.height:
                    return sheet, scale
    raise ValueError(f"no scale brings {width:g} x {height:g} x {depth:g} mm on a sheet")


def _projection(unit: Unit) -> str:
    return f"{_PROJECTIONS[unit.display_unit]}-angle projection"


def _laid_out(unit: Unit, sheet: _Sheet, scale: int) -> tuple[_View, _View, _View]:
    (low_x, low_y, low_z), high_y = unit.envelope.low, unit.envelope.high[1]
    width, height, depth = unit.size
    across, down = (width + depth) / scale + GAP, (height + depth) / scale + GAP
    left = (FILING + sheet.width - BORDER - across) / 2 + GAP / 4
    top = (BORDER + sheet.height - BORDER - TITLE_HEIGHT - down) / 2
    # Lower left corners on paper: a view stands where it is seen from (third angle) or across.
    front, beside = (left, top + height / scale), left + width / scale + GAP
    above = (left, top + down)
    if _PROJECTIONS[unit.display_unit] == "third":
        front, beside = (left + depth / scale + GAP, top + down), left
        above = (front[0], top + depth / scale)
    return (
        _View("Front", FRONT, (width, height), (low_x, low_z), front),
        _View("From the left", FROM_LEFT, (depth, height), (-high_y, low_z), (beside, front[1])),
        _View("From above", PLAN, (width, depth), (low_x, low_y), above),
    )


def _view_marks(bodies: Sequence[Body], facets: Facets, view: _View, scale: int) -> list[Mark]:
    visible, hidden = lines(
        [body.placed_solid() for body in foremost(bodies, view.camera)], view.camera
    )
    visible = np.concatenate([visible, mouth_lines(facets, view.camera)])
    solid, dashed = tidy(_as_lines(visible), _as_lines(hidden), LEAST_LENGTH)

    def on_paper(line: Line) -> tuple[Point, Point]:
        (ax, ay), (bx, by) = (
            (
                view.at[0] + (x - view.corner[0]) / scale,
                view.at[1] - (y - view.corner[1]) / scale,
            )
            for x, y in line
        )
        return (ax, ay), (bx, by)

    shown = np.array([on_paper(line) for line in solid]).reshape(-1, 2, 2)
    covered = np.array([on_paper(line) for line in dashed]).reshape(-1, 2, 2)
    marks: list[Mark] = []
    for pen, pieces in thinned(covered, NARROW, FINEST, shown).items():
        lengths = np.linalg.norm(pieces[:, 1] - pieces[:, 0], axis=1)
        ends = pieces[lengths >= LEAST_HIDDEN]
        marks.append(Stroke(tuple(_as_lines(ends)), pen, dashes=DASHES))
    marks += [
        Stroke(tuple(_as_lines(pieces)), pen)
        for pen, pieces in thinned(shown, WIDE, FINEST).items()
    ]
    return [mark for mark in marks if isinstance(mark, Stroke) and mark.lines]


def _sag_marks(sagging: Sequence[SagLine], view: _View, scale: int, times: float) -> Iterator[Mark]:
    """The upper faces of levels as they sag, in long dashes."""
    for line in sagging:
        points = [(x, line.box.high[2] - down * times) for x, down in line.line]
        deepest = max(abs(down) for _, down in line.line) * times / scale
        if deepest >= LEAST_HIDDEN / 2:
            (left, foot), (low_x, low_z) = view.at, view.corner
            bent = tuple(
                (left + (x - low_x) / scale, foot - (z - low_z) / scale) for x, z in points
            )
            yield Stroke((bent,), NARROW, dashes=LONG_DASHES)


def _sag_told(unit: Unit, sheet: _Sheet, times: float) -> Mark:
    """What the long dashes are, as fully as there is room for beside the scale."""
    size = 0.85 * LETTER
    right = sheet.width - BORDER - 34.0 - 4.0
    room = right - (FILING + 6.0 + text_width("Scale 1:5000 on Letter.", size) + 4.0)
    wordings = (
        f"Long dashes: sag {after(unit.loading.years)}, drawn {drawn(times)}.",
        f"Long dashes: sag, drawn {drawn(times)}.",
        f"Sag: {drawn(times)}.",
    )
    text = next((each for each in wordings if text_width(each, size) <= room), wordings[-1])
    foot = sheet.height - BORDER
    return Lettering((right, foot - TITLE_HEIGHT + 21.0), text, size, "end")


def _as_lines(ends: Array) -> list[Line]:
    return [((ax, ay), (bx, by)) for (ax, ay), (bx, by) in ends.tolist()]


def _length(line: Line) -> float:
    (ax, ay), (bx, by) = line
    return float(np.hypot(bx - ax, by - ay))


def _dimensions(unit: Unit, views: tuple[_View, _View, _View], scale: int) -> list[Mark]:
    """Overall width below the front view, height to its left, depth below the side view."""
    front, side, _ = views
    width, height, depth = unit.size
    (left, foot), (side_left, _) = front.at, side.at
    top, away = foot - height / scale, 10.0
    shown = [format_length(length, unit.display_unit) for length in (width, height, depth)]
    return [
        *_dimension((left, foot), (left + width / scale, foot), away, shown[0]),
        *_dimension((left, top), (left, foot), away, shown[1]),
        *_dimension((side_left, foot), (side_left + depth / scale, foot), away, shown[2]),
    ]


def _dimension(start: Point, end: Point, away: float, text: str) -> list[Mark]:
    """A dimension below a level distance, or left of an upright one (ISO 129-1)."""
    upright = start[0] == end[0]
    shift = (-away, 0.0) if upright else (0.0, away)
    a, b = ((x + shift[0], y + shift[1]) for x, y in (start, end))
    sign = (-1.0, 0.0) if upright else (0.0, 1.0)
    extensions = tuple(
        (
            (x + 1.0 * sign[0], y + 1.0 * sign[1]),
            (x + (away + 2.0) * sign[0], y + (away + 2.0) * sign[1]),
        )
        for x, y in (start, end)
    )
    middle = ((a[0] + b[0]) / 2, (a[1] + b[1]) / 2)
    at = (middle[0] - 1.2, middle[1]) if upright else (middle[0], middle[1] - 1.2)
    room = _length((a, b))
    lines: list[Mark] = [Stroke((*extensions, (a, b)), NARROW)]
    # Short dimensions have their arrows outside and pointing in.
    inside = room > 2.5 * TEXT + text_width(text, LETTER) * (not upright)
    for tip, other in ((a, b), (b, a)):
        lines += _arrow(tip, other, inside)
    lines.append(Lettering(at, text, LETTER, upwards=upright))
    return lines


def _arrow(tip: Point, other: Point, inside: bool) -> list[Mark]:
    """A filled arrowhead 3 mm long; outside ones have a tail."""
    x, y = (other[0] - tip[0], other[1] - tip[1])
    length = float(np.hypot(x, y)) * (1.0 if inside else -1.0)
    x, y = x / length, y / length
    base = (tip[0] + 3.0 * x, tip[1] + 3.0 * y)
    head = (tip, (base[0] - 0.5 * y, base[1] + 0.5 * x), (base[0] + 0.5 * y, base[1] - 0.5 * x))
    marks: list[Mark] = [Fill((head,), "#33302c")]
    if not inside:
        marks.append(Stroke(((tip, (tip[0] + 6.0 * x, tip[1] + 6.0 * y)),), NARROW))
    return marks


def _title(unit: Unit, sheet: _Sheet, scale: int) -> list[Mark]:
    left, right = FILING, sheet.width - BORDER
    top, foot = BORDER, sheet.height - BORDER
    line = foot - TITLE_HEIGHT
    frame = ((left, top), (right, top), (right, foot), (left, foot), (left, top))
    symbol = right - 34.0
    width, height, depth = (format_length(v, unit.display_unit) for v in unit.size)
    size = f"{width} wide, {height} high, {depth} deep; lengths in {_MEASURES[unit.display_unit]}"
    return [
        Stroke((frame,), WIDE),
        Stroke((((left, line), (right, line)), ((symbol, line), (symbol, foot))), NARROW),
        Lettering((left + 6.0, line + 9.0), unit.title, 1.4 * LETTER, "start"),
        Lettering((left + 6.0, line + 15.0), f"{size}.", 0.85 * LETTER, "start"),
        Lettering(
            (left + 6.0, line + 21.0), f"Scale 1:{scale} on {sheet.name}.", 0.85 * LETTER, "start"
        ),
        *_symbol((symbol + 17.0, line + 9.5), _PROJECTIONS[unit.display_unit]),
        Lettering((symbol + 17.0, foot - 3.0), f"{_projection(unit)}", 0.65 * LETTER),
    ]


def _symbol(centre: Point, angle: str) -> list[Mark]:
    """The symbol of the projection: a frustum from its side and from its small end (ISO 5456-2).

    Its small end points left: seen from there it stands to the right in first-angle projection
    and to the left in third-angle projection.
    """
    # Middle of the end view, and the left and right of the side view.
    ends = {"first": (7.0, -11.0, -1.0), "third": (-7.0, 1.0, 11.0)}
    ring, small, large = (centre[0] + each for each in ends[angle])
    y = centre[1]
    side = ((small, y - 2.5), (large, y - 5), (large, y + 5), (small, y + 2.5), (small, y - 2.5))
    turns = np.linspace(0.0, 2 * np.pi, 49)
    rings = tuple(
        tuple((float(ring + r * np.cos(t)), float(y + r * np.sin(t))) for t in turns)
        for r in (2.5, 5.0)
    )
    axes = (
        ((small - 2, y), (large + 2, y)),
        ((ring - 5.5, y), (ring + 5.5, y)),
        ((ring, y - 5.5), (ring, y + 5.5)),
    )
    return [Stroke((side, *rings), 0.35), Stroke(axes, 0.18, dashes=(2.0, 0.6))]
