"""The opening on one sheet: the readings in it, and the unit with its gaps ten times too large.

A3 lying (ISO 5457), made smaller on Letter for a maker in inches; lengths of the paper in mm.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from pathlib import Path

from rodwright.geometry import TOUCH
from rodwright.lengths import format_length
from rodwright.opening.adjustment import Plane
from rodwright.opening.closings import closing_text
from rodwright.opening.frames import fit_frame
from rodwright.opening.gaps import Gap, Packing, is_bent, side_length
from rodwright.opening.readings import FLOOR_ASSUMED, PLUMB_ASSUMED, TAPE_ERROR, Reading
from rodwright.opening.sheet import FitSheet, SurveySheet
from rodwright.pictures.files import write_drawing
from rodwright.pictures.ink import Drawing, Fill, Lettering, Mark, Point, Stroke
from rodwright.pictures.paper import (
    HEAVY,
    SMALL,
    THIN,
    Block,
    Map,
    Window,
    note_marks,
    on_paper,
    tag_marks,
)
from rodwright.unit import OpeningPlane, Quadrilateral

EXAGGERATION = 10.0
"""How many times too large gaps are drawn."""
WIDTH, HEIGHT = 420.0, 297.0
LETTER = (279.4, 215.9)
"""A sheet of Letter (ASME Y14.1, size A, from memory), lying."""
_PIXELS_PER_MM = 7.0
_WALL, _WOOD, _PACKER, _READING = "#e4e0d8", "#f3e7cf", "#b5762a", "#2b5f8a"
_LEFT_PANEL = Window(34.0, 48.0, 190.0, 204.0)
_RIGHT_PANEL = Window(246.0, 48.0, 382.0, 204.0)
_FOOT = 231.0
_COLUMNS = ((14.0, 124.0), (148.0, 124.0), (282.0, 123.0))
_UNITS = {"mm": "mm", "in": "inches"}
_BAND = 5.0
"""How thick walls are drawn."""


def write_opening(sheet: SurveySheet, folder: Path) -> tuple[Path, ...]:
    """Write ``opening.svg`` and ``.png``, and ``opening-rear`` where the rear was read too.

    Equal sheets give equal SVG files, byte for byte.

    Raises:
        ValueError: the sheet has no fit to draw.
        OSError: the folder can't be written.
    """
    written: list[Path] = []
    for plane in sheet.planes:
        name = "opening" if plane.name == "front" else f"opening-{plane.name}"
        drawing = draw_opening(sheet, plane)
        written += write_drawing(drawing, folder, name, per_unit=_PIXELS_PER_MM)
    return tuple(written)


def draw_opening(sheet: SurveySheet, plane: Plane) -> Drawing:
    """The sheet of one plane of the opening.

    Raises:
        ValueError: the sheet has no fit to draw.
    """
    fit = sheet.fit
    if fit is None:
        raise ValueError("readings that can't be right leave nothing to draw")
    say = _Lengths(sheet)
    whose = "" if len(sheet.planes) == 1 else f", {plane.name} plane"
    marks = [
        Lettering((14.0, 18.0), f"{sheet.title}: the opening{whose}", 7.0, "start"),
        Lettering((WIDTH - 14.0, 18.0), f"Lengths in {_UNITS[sheet.unit]}", SMALL, "end"),
        *_as_measured(plane, fit.shape.planes[plane.name], say),
        *_with_gaps(fit, plane.name, say),
        Stroke((((14.0, _FOOT - 8.0), (WIDTH - 14.0, _FOOT - 8.0)),), THIN),
        *_notes(sheet, fit, plane, say),
    ]
    drawing = Drawing(
        WIDTH,
        HEIGHT,
        f"{sheet.title}: the opening{whose}",
        f"Left, the readings with what each differs from the drawn shape. Right, a unit of "
        f"{say(fit.size[0])} x {say(fit.size[1])} {sheet.unit} in it, gaps drawn "
        f"{EXAGGERATION:g} times too large.",
        tuple(marks),
        "mm",
    )
    return on_paper(drawing, *LETTER) if sheet.unit == "in" else drawing


class _Lengths:
    """Says lengths in the sheet's unit: to a tenth of a millimetre, or in fractions."""

    def __init__(self, sheet: SurveySheet) -> None:
        self._unit = sheet.unit

    def __call__(self, length: float) -> str:
        return format_length(length, self._unit)

    def signed(self, length: float) -> str:
        """A difference, with its sign."""
        text = self(length)
        return text if text.startswith("-") or text == "0" else f"+{text}"


# --- the readings ------------------------------------------------------------------------


def _as_measured(plane: Plane, shape: OpeningPlane, say: _Lengths) -> Iterator[Mark]:
    to_paper = _LEFT_PANEL.scale_for(plane.corners)
    # The shape is in the unit's frame, the readings are in the plane's own.
    (x, z), (u, w) = plane.corners[0], shape.corners[0]
    yield Lettering(
        (_LEFT_PANEL.middle, 30.0),
        "As measured; in brackets, by how much the tape says more than between straight edges",
        SMALL,
    )
    yield from _walls(_edges(shape, lambda _, at: to_paper((at[0] + x - u, at[1] + z - w))))
    pairs = zip(plane.readings, plane.residuals, strict=True)
    read = [(reading, residual) for reading, residual in pairs if not reading.is_assumption]
    tags: list[Mark] = []
    for reading, residual in read:
        # A slope the other way is read as so much that way: more of it is a larger reading.
        more = residual if reading.value >= 0 else -residual
        text = f"{say(abs(reading.value))} ({say.signed(more)})"
        if reading.kind == "distance":
            line, at, upwards = _reading_line(plane.corners, reading)
            yield Stroke((tuple(to_paper(point) for point in line),), THIN, _READING)
            tags += tag_marks(to_paper(at), text, upwards, _READING)
        else:
            tags += _slope_marks(plane, reading, text, say, to_paper)
    yield from tags
    for corner, angle, (x, y) in zip(
        plane.corners, _angles(plane.corners), ((-1, 1), (1, 1), (1, -1), (-1, -1)), strict=True
    ):
        px, py = to_paper(corner)
        anchor = "end" if x < 0 else "start"
        at = (px + 2.0 * x, py + (10.0 if y > 0 else -7.0))
        yield Lettering(at, f"{angle:.2f}°", SMALL, anchor)  # type: ignore[arg-type]


def _reading_line(
    corners: Quadrilateral, reading: Reading
) -> tuple[tuple[Point, Point], Point, bool]:
    """A reading's line, a little inside where it runs along an edge; its label's place, and
    whether that reads upwards."""
    ends = []
    for a, b, share in (reading.first, reading.second):
        inside = 0.06 + 0.88 * share if a != b else share
        ends.append(_between(corners[a], corners[b], inside))
    (ax, az), (bx, bz) = ends
    upright = abs(bz - az) > abs(bx - ax)
    across = reading.first[0] != reading.first[1]
    if across:
        return (ends[0], ends[1]), _between(ends[0], ends[1], 0.62 if upright else 0.7), upright
    return (ends[0], ends[1]), _between(ends[0], ends[1], 0.24), False


def _between(start: Point, end: Point, share: float) -> Point:
    return start[0] + share * (end[0] - start[0]), start[1] + share * (end[1] - start[1])


def _slope_marks(
    plane: Plane, reading: Reading, text: str, say: _Lengths, to_paper: Map
) -> Iterator[Mark]:
    """A plumb or level reading, outside the edge it was taken of."""
    a, b = reading.first[:2]
    x, y = to_paper(_between(plane.corners[a], plane.corners[b], 0.5))
    if reading.kind == "plumb":
        right = a == 1
        leans = "in" if (reading.value < 0) == right else "out"
        label = f"plumb: {leans} {text} over {say(reading.over)}"
        yield Lettering((x + (13.0 if right else -9.0), y), label, SMALL, "middle", True, _READING)
    else:
        side = "right" if reading.value >= 0 else "left"
        label = f"level: rises {text} to the {side} over {say(reading.over)}"
        above = a == 3
        yield Lettering((x, y + (-8.0 if above else 12.0)), label, SMALL, "middle", False, _READING)


def _angles(corners: Quadrilateral) -> list[float]:
    return list(fit_frame(corners, 1.0, 1.0, True, 0.0).angles.values())


_SIDES = ("bottom", "right", "top", "left")
"""The sides in the order that goes round against the clock."""


def _edges(plane: OpeningPlane, to_paper: Callable[[str, Point], Point]) -> list[list[Point]]:
    """The lines of floor, right wall, top and left wall on paper, each from where the one before
    it ends; ``to_paper`` is told the side."""
    found = []
    for side in _SIDES:
        upright = side in ("left", "right")
        line = [
            (point.across, point.along) if upright else (point.along, point.across)
            for point in plane.line(side)
        ]
        if side in ("top", "left"):
            line.reverse()
        found.append([to_paper(side, point) for point in line])
    return found


def _walls(edges: Sequence[Sequence[Point]]) -> Iterator[Mark]:
    """Floor, walls and top as bands round their lines on paper (in the order of `_edges`)."""
    outwards = ((0.0, _BAND), (_BAND, 0.0), (0.0, -_BAND), (-_BAND, 0.0))
    outer: list[Point] = []
    for number, (line, (x, y)) in enumerate(zip(edges, outwards, strict=True)):
        before = outwards[number - 1]
        outer.append((line[0][0] + x + before[0], line[0][1] + y + before[1]))
        outer += [(u + x, w + y) for u, w in line[1:-1]]
    inner = tuple(point for line in edges for point in line[:-1])
    yield Fill((tuple(outer), inner), _WALL, 0.999)
    yield Stroke(((*inner, inner[0]),), HEAVY)


# --- the gaps ----------------------------------------------------------------------------


def _with_gaps(fit: FitSheet, name: str, say: _Lengths) -> Iterator[Mark]:
    width, height = fit.size
    plane = fit.shape.planes[name]
    at_unit: Quadrilateral = ((0.0, 0.0), (width, 0.0), (width, height), (0.0, height))
    by_side = {
        "bottom": (None, 0.0),
        "right": (width, None),
        "top": (None, height),
        "left": (0.0, None),
    }

    def enlarged(side: str, point: Point) -> Point:
        if point in plane.corners:
            own = at_unit[plane.corners.index(point)]
        else:
            x, z = by_side[side]
            own = (point[0] if x is None else x, point[1] if z is None else z)
        return (
            own[0] + EXAGGERATION * (point[0] - own[0]),
            own[1] + EXAGGERATION * (point[1] - own[1]),
        )

    large = _edges(plane, enlarged)
    to_paper = _RIGHT_PANEL.scale_for([point for line in large for point in line])
    yield Lettering(
        (_RIGHT_PANEL.middle, 30.0),
        f"The unit in it, GAPS DRAWN {EXAGGERATION:g} TIMES TOO LARGE (packers in brown)",
        SMALL,
    )
    yield from _walls([[to_paper(point) for point in line] for line in large])
    unit = tuple(to_paper(corner) for corner in at_unit)
    yield Fill((unit,), _WOOD)
    yield Stroke(((*unit, unit[0]),), HEAVY)
    middle = _between(unit[0], unit[2], 0.5)
    yield Lettering((middle[0], middle[1] - 2.0), "unit", SMALL)
    yield Lettering((middle[0], middle[1] + 4.0), f"{say(width)} x {say(height)}", SMALL + 1.0)
    for packing in fit.packing:
        if packing.gap.plane == name and (packing.packers or packing.by != "packers"):
            yield from _packer_marks(packing, fit.size, say, to_paper)
    for gap in fit.gaps:
        if gap.plane == name and (_is_end(gap, fit.size) or is_bent(plane, fit.size, gap)):
            yield from _gap_marks(gap, fit.size, say, to_paper)


def _is_end(gap: Gap, size: tuple[float, float]) -> bool:
    return min(gap.at, side_length(gap.side, size) - gap.at) < TOUCH


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
    packing: Packing, size: tuple[float, float], say: _Lengths, to_paper: Map
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


def _gap_marks(gap: Gap, size: tuple[float, float], say: _Lengths, to_paper: Map) -> Iterator[Mark]:
    """What the gap is, outside the wall."""
    x, y = to_paper(_from_unit(gap.side, gap.at, EXAGGERATION * gap.gap, size))
    text = f"gap {say(gap.gap)}"
    if gap.side in ("left", "right"):
        right = gap.side == "right"
        high = gap.at > 0
        if not _is_end(gap, size):
            yield Lettering(
                (x + (7.0 if right else -7.0), y + 1.0), text, SMALL, "start" if right else "end"
            )
            return
        at = (x + (7.0 if right else -7.0), y + (4.0 if high else -2.0))
        yield Lettering(at, text, SMALL, "start" if right else "end")
    else:
        if not _is_end(gap, size):
            aside = y + (-7.0 if gap.side == "top" else 10.0)
            yield Lettering((x, aside), text, SMALL)
            return
        left = gap.at == 0
        at = (x + (2.0 if left else -2.0), y + (-7.0 if gap.side == "top" else 10.0))
        yield Lettering(at, text, SMALL, "start" if left else "end")


# --- the notes ---------------------------------------------------------------------------


def _floor_text(fit: FitSheet, say: _Lengths) -> str:
    fall = fit.fall
    text = (
        f"Stands on the floor's high spot; under it the floor falls by {say(fall.gap)} (up to "
        f"{say(fall.most)})"
    )
    if fit.stands.levelling is not None:
        turned = "turned out" if fit.stands.feet else "packed up"
        text += f", and it may be {turned} {say(fit.stands.levelling)}"
    return f"{text}."


def _contradiction_texts(fit: FitSheet, plane: Plane) -> Iterator[str]:
    names = [each.reading for each in fit.survey.read.contradictions if each.plane == plane.name]
    if names:
        yield f"Readings contradict each other; measure again: {', or '.join(names)}."


def _notes(sheet: SurveySheet, fit: FitSheet, plane: Plane, say: _Lengths) -> Iterator[Mark]:
    survey, spare = fit.survey, fit.spare
    likely = survey.rectangle
    errors = max(max(each) for each in plane.corner_errors)
    fits = Block(
        "What goes in",
        (
            f"Largest level and plumb rectangle: {say(likely.width)} x {say(likely.height)}.",
            f"Goes in even if the readings err as assumed: {say(survey.least[0])} wide, "
            f"{say(survey.least[1])} high.",
            f"To spare in width: {say(spare.width)} (tight: {spare.tight_width}).",
            f"To spare in height: {say(spare.height)} (tight: {spare.tight_height}).",
            _floor_text(fit, say),
            *_contradiction_texts(fit, plane),
            f"Corners are known to within {say(errors)}. Assumed: tape right to "
            f"{say(TAPE_ERROR)}, walls plumb to {PLUMB_ASSUMED:g} and floor level to "
            f"{FLOOR_ASSUMED:g} in a thousand where not read.",
        ),
    )
    closing = Block(
        "What closes the gaps at the front",
        (
            *(f"{each.side.capitalize()}: {closing_text(each, say)}." for each in fit.closings),
            *_frame_texts(fit, say),
            *([f"Not shown: {sheet.not_shown}"] if sheet.not_shown else []),
        ),
    )
    cautions = Block(
        "Mind",
        tuple(f"{each.danger.capitalize()}. {each.remedy}" for each in sheet.cautions),
    )
    for block, (left, width) in zip((fits, closing, cautions), _COLUMNS, strict=True):
        yield from note_marks(block, (left, _FOOT), width)


def _frame_texts(fit: FitSheet, say: _Lengths) -> Iterator[str]:
    if fit.frame is None:
        return
    members = "; ".join(
        f"{each.name.lower()} {say(each.long_points)} / {say(each.short_points)}, "
        f"{each.start_cut:z.1f}° and {each.end_cut:z.1f}°"
        for each in fit.frame.members
    )
    yield f"A frame scribed to the opening (long / short points, saw off square): {members}."
