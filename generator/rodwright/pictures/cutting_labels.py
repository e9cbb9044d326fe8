"""Lettering on a sheet that is cut: what pieces and offcuts are, and the numbers of the cuts.

Nothing overlaps a line or other lettering: what finds no room is told below the sheet.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, field

from rodwright.cutting.steps import SheetSteps, Step
from rodwright.cutting.steps.cuts import Line
from rodwright.pictures.cutting_sheet import (
    EDGE,
    KEPT,
    Area,
    Frame,
    Shown,
    flaw_areas,
    offcut_areas,
)
from rodwright.pictures.glyphs import text_width
from rodwright.pictures.ink import Fill, Lettering, Mark, Point, Stroke, rounded

SIZES = (3.6, 3.0, 2.5, 2.1)
"""Sizes of type on pieces, the largest that fits being taken."""
FINE_SIZES = (2.5, 2.1, 1.8, 1.5)
"""And of numbers, where nothing else fits."""
_LEADING = 1.25
_CLEAR = 0.5
"""Between lettering and lines."""
_CUT_SIZES = (2.4, 2.0, 1.6)
_OUTSIDE = (2.6, 6.0)
"""How far outside a sheet a cut's number stands."""
_ARROW = 1.0
Say = Callable[[float], str]


@dataclass
class Labels:
    """Lettering as it finds room: its ``marks``, the areas ``taken``, and what is ``told`` below
    the sheet instead; ``small`` is what isn't marked at all."""

    marks: list[Mark] = field(default_factory=list)
    taken: list[Area] = field(default_factory=list)
    told: list[str] = field(default_factory=list)
    small: list[str] = field(default_factory=list)
    _numbered: int = 0

    def letter(self, room: Area, texts: Sequence[str], sizes: Sequence[float]) -> bool:
        """Lines of text in the middle of some room, if they go in one way or the other."""
        inside = room.shrunk(_CLEAR)
        for size in sizes:
            wide = max(text_width(text, size) for text in texts)
            high = size * (0.75 + _LEADING * (len(texts) - 1))
            for upwards in (False, True):
                across, down = (high, wide) if upwards else (wide, high)
                if across <= inside.size[0] and down <= inside.size[1]:
                    self._put(inside.middle, texts, size, (across, down), upwards)
                    return True
        return False

    def number(self, room: Area, what: str) -> bool:
        """The next number in some room, told below the sheet with ``what`` it stands for."""
        text = str(self._numbered + 1)
        if not self.letter(room, [text], FINE_SIZES):
            return False
        self._numbered += 1
        self.told.append(f"{text}: {what}")
        return True

    def notes(self) -> str:
        """What is told below the sheet."""
        small = [f"too small to mark: {'; '.join(self.small)}"] if self.small else []
        return ".  ".join((*self.told, *small))

    def _put(
        self,
        middle: Point,
        texts: Sequence[str],
        size: float,
        extent: tuple[float, float],
        upwards: bool,
    ) -> None:
        (x, y), (across, down) = middle, extent
        self.taken.append(
            Area(x - across / 2, y - down / 2, x + across / 2, y + down / 2).shrunk(-_CLEAR / 2)
        )
        for row, text in enumerate(texts):
            # Capitals are about 0.7 of the size high, and stand on the baseline.
            base = size * (0.72 + _LEADING * row) - (across if upwards else down) / 2
            at = (x + base, y) if upwards else (x, y + base)
            self.marks.append(Lettering(at, text, size, "middle", upwards))


def label_pieces(labels: Labels, pieces: Sequence[Shown], say: Say, grained: bool) -> None:
    """Refs and sizes on pieces, and how the grain runs where there is room for it."""
    for shown in sorted(pieces, key=lambda each: -each.room.size[0] * each.room.size[1]):
        size = " x ".join(say(side) for side in shown.size if side)
        refs = _listed(shown.refs)
        short = shown.refs[0] if len(shown.refs) == 1 else f"{shown.refs[0]} +{len(shown.refs) - 1}"
        wordings = ([refs, size], [f"{refs}  {size}"], [short, size], [f"{short}  {size}"])
        if any(labels.letter(shown.room, texts, SIZES) for texts in wordings):
            if len(shown.refs) > 1 and refs not in _written(labels):
                labels.told.append(f"{short}: {refs}")
            if grained:
                labels.marks += _grain(shown.room, labels.taken[-1])
            continue
        if not labels.number(shown.room, f"{refs}, {size}"):
            labels.small.append(f"{refs}, {size}")


def label_offcuts(labels: Labels, sheet: SheetSteps, frame: Frame, say: Say) -> None:
    """Names and sizes of offcuts, on a white ground in their hatching."""
    for area, (offcut, names) in zip(offcut_areas(sheet, frame), sheet.kept, strict=True):
        name = _listed(names)
        size = " x ".join(say(side) for side in (offcut.length, offcut.width) if side)
        before = len(labels.marks)
        for texts in ([name, size], [f"{name}  {size}"]):
            if labels.letter(area, texts, SIZES):
                break
        else:
            if not labels.number(area, f"offcut {name}, {size}"):
                labels.small.append(f"offcut {name}, {size}")
                continue
        labels.marks.insert(before, Fill((labels.taken[-1].corners(),), KEPT))


def number_cuts(
    labels: Labels, sheet: SheetSteps, pieces: Sequence[Shown], frame: Frame, within: Area
) -> None:
    """The numbers of cuts: outside the sheet where a cut ends at its edge, else on the cut."""
    lines = _lines(sheet, pieces, frame)
    missing = []
    for step in sheet.steps:
        if step.line is None:
            continue
        spot = _spot(labels, step, step.line, lines, frame, within)
        if spot is None:
            missing.append(str(step.number))
            continue
        middle, size, half = spot
        box = Area(
            middle[0] - half[0], middle[1] - half[1], middle[0] + half[0], middle[1] + half[1]
        )
        labels.taken.append(box)
        ring = rounded((box.left, box.top), (box.right, box.bottom), 0.95 * half[1])
        labels.marks += [
            Fill((ring,), KEPT),
            Stroke((ring,), EDGE),
            Lettering((middle[0], middle[1] + 0.35 * size), str(step.number), size),
        ]
    if missing:
        labels.told.append(f"cuts without room for their number: {', '.join(missing)}")


def _spot(
    labels: Labels,
    step: Step,
    line: Line,
    lines: Sequence[tuple[Point, Point]],
    frame: Frame,
    within: Area,
) -> tuple[Point, float, tuple[float, float]] | None:
    """Where a cut's number stands, in which size, and half its extent."""
    ends = _on_paper(line, frame)
    for size in _CUT_SIZES:
        half = (max(text_width(str(step.number), size) / 2 + 0.5, 0.65 * size), 0.65 * size)
        for middle, outside in _candidates(ends, frame, within):
            box = _round(middle, half)
            free = not any(box.meets(each) for each in labels.taken)
            if not free or not _inside(box, within):
                continue
            own = None if outside else ends
            if not any(_crosses(box, each, own) for each in lines):
                return middle, size, half
    return None


def _candidates(
    ends: tuple[Point, Point], frame: Frame, within: Area
) -> Iterator[tuple[Point, bool]]:
    (x0, y0), (x1, y1) = ends
    right, top = within.right - _MARGIN, frame.foot - frame.deep
    for away in _OUTSIDE:
        if abs(y0 - y1) < 1e-6:
            if abs(x0 - frame.left) < 0.01:
                yield (x0 - away, y0), True
            if abs(x1 - right) < 0.01:
                yield (x1 + away, y1), True
        elif abs(y0 - frame.foot) < 0.01:
            yield (x0, y0 + away), True
        elif abs(y1 - top) < 0.01:
            yield (x1, y1 - away), True
    for share in _SHARES:
        yield (x0 + share * (x1 - x0), y0 + share * (y1 - y0)), False
    yield from _beside_edge(ends, frame, right)


def _beside_edge(
    ends: tuple[Point, Point], frame: Frame, right: float
) -> Iterator[tuple[Point, bool]]:
    """Outside the sheet, right beside a cut that runs close along its edge."""
    (x0, y0), (x1, y1) = ends
    middle, top = ((x0 + x1) / 2, (y0 + y1) / 2), frame.foot - frame.deep
    if abs(y0 - y1) < 1e-6:
        if y0 - top < _NEAR:
            yield (middle[0], top - _OUTSIDE[0]), True
    elif right - x0 < _NEAR:
        yield (right + _OUTSIDE[0], middle[1]), True


_NEAR = 3.0
_SHARES = (0.5, 0.3, 0.7, 0.15, 0.85, 0.4, 0.6, 0.22, 0.78, 0.07, 0.93)
_MARGIN = 8.0
"""Beside a sheet, for numbers."""


def _on_paper(line: Line, frame: Frame) -> tuple[Point, Point]:
    (x0, y0), (x1, y1) = line
    if frame.flat:
        return (frame.point(x0, 0.0), (frame.point(x1, 0.0)[0], frame.foot - frame.deep))
    return frame.point(x0, y0), frame.point(x1, y1)


def _lines(sheet: SheetSteps, pieces: Sequence[Shown], frame: Frame) -> list[tuple[Point, Point]]:
    """Every line that a number might stand on."""
    stock = sheet.stock
    outlines = [shown.outline for shown in pieces]
    areas = [*offcut_areas(sheet, frame), *flaw_areas(sheet, frame)]
    areas.append(frame.area(0.0, 0.0, stock.length, stock.width))
    outlines += [area.corners() for area in areas]
    return [
        (one, other)
        for outline in outlines
        for one, other in zip(outline, (*outline[1:], outline[0]), strict=True)
    ]


def _crosses(box: Area, line: tuple[Point, Point], own: tuple[Point, Point] | None) -> bool:
    """Whether a line runs under a number, other than beside its own cut."""
    (x0, y0), (x1, y1) = line
    low, high = 0.0, 1.0
    for start, stop, near, far in (
        (x0, x1, box.left, box.right), (y0, y1, box.top, box.bottom),
    ):  # fmt: skip
        along = stop - start
        if abs(along) < 1e-9:
            if not near < start < far:
                return False
            continue
        a, b = sorted(((near - start) / along, (far - start) / along))
        low, high = max(low, a), min(high, b)
    if low >= high:
        return False
    return own is None or not _beside(line, own)


def _beside(line: tuple[Point, Point], own: tuple[Point, Point]) -> bool:
    """Whether a line runs along a cut, no farther from it than half a wide kerf."""
    (ax, ay), (bx, by) = own
    length = ((bx - ax) ** 2 + (by - ay) ** 2) ** 0.5
    return all(abs((x - ax) * (by - ay) - (y - ay) * (bx - ax)) < 0.45 * length for x, y in line)


def _round(middle: Point, half: tuple[float, float]) -> Area:
    (x, y), (across, down) = middle, half
    return Area(x - across, y - down, x + across, y + down)


def _inside(box: Area, within: Area) -> bool:
    return (
        within.left <= box.left and box.right <= within.right
        and within.top <= box.top and box.bottom <= within.bottom
    )  # fmt: skip


def _grain(room: Area, label: Area) -> Iterator[Mark]:
    """A double arrow along the grain below a label, where there is room for it."""
    y, half = label.bottom + 1.6, min(7.0, 0.3 * room.size[0])
    if y + _ARROW > room.bottom - _CLEAR or half < 2.0:
        return
    x = room.middle[0]
    heads = tuple(
        ((x + side * half - side * _ARROW, y - 0.5), (x + side * half, y),
         (x + side * half - side * _ARROW, y + 0.5))
        for side in (-1.0, 1.0)
    )  # fmt: skip
    yield Stroke((((x - half, y), (x + half, y)), *heads), EDGE)


def _listed(names: Sequence[str]) -> str:
    return ", ".join(names)


def _written(labels: Labels) -> str:
    return " ".join(mark.text for mark in labels.marks if isinstance(mark, Lettering))
