"""One sheet or board as it is cut, on paper: what is drawn to scale, without lettering."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from rodwright.cutting.pieces import Piece
from rodwright.cutting.plans import Placed
from rodwright.cutting.steps import LotSteps, SheetSteps
from rodwright.cutting.steps.ends import ends_of
from rodwright.pictures.ink import Fill, Mark, Point, Stroke

WOOD, WASTE, KEPT = "#f6ecd9", "#c9c4bb", "#ffffff"
"""Colours of pieces, of what is thrown away and of offcuts: as greys they differ too."""
OUTLINE, EDGED, EDGE, FINE = 0.5, 0.7, 0.2, 0.13
"""Widths of lines: round a sheet, along what gets edging, round pieces, hatching."""
_DASHES = (1.6, 0.8)
_HATCH = 2.6
"""Between the lines of hatching."""


@dataclass(frozen=True, slots=True)
class Area:
    """A rectangle of the paper, y down, mm."""

    left: float
    top: float
    right: float
    bottom: float

    @property
    def middle(self) -> Point:
        """Its centre."""
        return (self.left + self.right) / 2, (self.top + self.bottom) / 2

    @property
    def size(self) -> tuple[float, float]:
        """How wide and how high it is."""
        return self.right - self.left, self.bottom - self.top

    def shrunk(self, by: float) -> Area:
        """It with as much taken off on every side."""
        return Area(self.left + by, self.top + by, self.right - by, self.bottom - by)

    def meets(self, other: Area) -> bool:
        """Whether the two overlap."""
        beside = self.right <= other.left or other.right <= self.left
        return not beside and self.top < other.bottom and other.top < self.bottom

    def corners(self) -> tuple[Point, ...]:
        """From the upper left one on."""
        return (
            (self.left, self.top), (self.right, self.top),
            (self.right, self.bottom), (self.left, self.bottom),
        )  # fmt: skip


@dataclass(frozen=True, slots=True)
class Frame:
    """Where a sheet lies on paper: its near end left, its face edge at the foot.

    ``scale`` is that of lengths and ``across`` that of widths, in mm of paper for a mm; ``deep`` is
    how high it is drawn.  Lengths that have no width (``flat``) are all as high.
    """

    left: float
    foot: float
    scale: float
    across: float
    deep: float
    flat: bool

    def point(self, x: float, y: float) -> Point:
        """A point of the sheet on paper."""
        return self.left + self.scale * x, self.foot - self.across * y

    def area(self, x: float, y: float, length: float, width: float) -> Area:
        """A rectangle of the sheet on paper."""
        low = 0.0 if self.flat else self.across * y
        high = self.deep if self.flat else self.across * (y + width)
        return Area(
            self.left + self.scale * x,
            self.foot - high,
            self.left + self.scale * (x + length),
            self.foot - low,
        )


@dataclass(frozen=True, slots=True)
class Shown:
    """A piece as it is drawn: its outline, and the rectangle in it that lettering may fill.

    ``refs`` are written on it, ``size`` is as it is cut; ``inner`` says that it is cut out of a
    larger piece, ``edged`` are the lines along which it gets edging.
    """

    refs: tuple[str, ...]
    size: tuple[float, float]
    outline: tuple[Point, ...]
    room: Area
    inner: bool = False
    edged: tuple[tuple[Point, Point], ...] = ()


def shown_pieces(steps: LotSteps, sheet: SheetSteps, frame: Frame) -> tuple[Shown, ...]:
    """All pieces of a sheet; of one that is divided, those inside it."""
    pieces = {piece.name: piece for piece in steps.lot.pieces}
    copies = _copies(sheet)
    shown: list[Shown] = []
    for placed in sheet.layout.placed:
        piece = pieces[placed.piece]
        those = copies.get((piece.name, round(placed.x, 3), round(placed.y, 3)), ())
        if piece.inner:
            shown += _inside(steps, piece, placed, those, frame)
            continue
        refs = _refs(steps, piece.name, those)
        outline, room = _outline(placed, piece, frame)
        edged = tuple(_edged(steps, piece.name, those, room, placed.turned))
        shown.append(Shown(refs, (piece.length, piece.width), outline, room, edged=edged))
    return tuple(shown)


def sheet_marks(sheet: SheetSteps, pieces: Sequence[Shown], frame: Frame) -> Iterator[Mark]:
    """What is drawn of a sheet: waste is grey, pieces pale, offcuts hatched, flaws crossed."""
    stock = sheet.stock
    whole = frame.area(0.0, 0.0, stock.length, stock.width)
    yield Fill((whole.corners(),), WASTE)
    for shown in pieces:
        yield Fill((shown.outline,), WOOD)
    dashed = [_closed(shown.outline) for shown in pieces if shown.inner]
    if dashed:
        yield Stroke(tuple(dashed), EDGE, dashes=_DASHES)
    drawn = [_closed(shown.outline) for shown in pieces if not shown.inner]
    if drawn:
        yield Stroke(tuple(drawn), EDGE)
    edged = tuple(side for shown in pieces for side in shown.edged)
    if edged:
        yield Stroke(edged, EDGED)
    for area in offcut_areas(sheet, frame):
        yield Fill((area.corners(),), KEPT)
        yield Stroke(tuple(_hatching(area)), FINE)
        yield Stroke((_closed(area.corners()),), EDGE)
    for area in flaw_areas(sheet, frame):
        a, b, c, d = area.corners()
        yield Fill(((a, b, c, d),), KEPT)
        yield Stroke((_closed((a, b, c, d)), (a, c), (b, d)), EDGE)
    yield Stroke((_closed(whole.corners()),), OUTLINE)


def offcut_areas(sheet: SheetSteps, frame: Frame) -> list[Area]:
    """Where the offcuts lie that are kept."""
    return [frame.area(each.x, each.y, each.length, each.width) for each, _ in sheet.kept]


def flaw_areas(sheet: SheetSteps, frame: Frame) -> list[Area]:
    """Where flaws are."""
    stock = sheet.stock
    return [
        frame.area(
            flaw.x,
            flaw.y,
            min(flaw.length, stock.length - flaw.x),
            min(flaw.width, stock.width - flaw.y),
        )
        for flaw in stock.flaws
    ]


def _copies(sheet: SheetSteps) -> dict[tuple[str, float, float], tuple[int, ...]]:
    """Which labels each piece gets, by where it lies."""
    results = [each for step in sheet.steps if step.line for each in step.results]
    if sheet.whole is not None:
        results.append(sheet.whole)
    found = {
        (each.name, round(each.at[0], 3), round(each.at[1], 3)): each.copies
        for each in results
        if each.at is not None
    }
    for contour in sheet.contours:
        found[contour.name, round(contour.x, 3), round(contour.y, 3)] = contour.copies
    return found


def _refs(steps: LotSteps, name: str, copies: Sequence[int]) -> tuple[str, ...]:
    labels = steps.lot.labels.get(name, ())
    refs = tuple(labels[copy].ref for copy in copies if copy < len(labels))
    return tuple(dict.fromkeys(refs)) or (name,)


def _inside(
    steps: LotSteps, piece: Piece, placed: Placed, copies: Sequence[int], frame: Frame
) -> Iterator[Shown]:
    for inner in piece.inner:
        x, y, length, width = inner.x, inner.y, inner.length, inner.width
        if placed.turned:
            x, y = piece.width - inner.y - inner.width, inner.x
            length, width = width, length
        area = frame.area(placed.x + x, placed.y + y, length, width)
        refs = _refs(steps, inner.name, copies)
        size = inner.length, inner.width
        edged = tuple(_edged(steps, inner.name, copies, area, placed.turned))
        yield Shown(refs, size, area.corners(), area, inner=True, edged=edged)


def _edged(
    steps: LotSteps, name: str, copies: Sequence[int], area: Area, turned: bool
) -> Iterator[tuple[Point, Point]]:
    """The sides on paper that get edging, if all that are cut alike get it alike."""
    labels = steps.lot.labels.get(name, ())
    alike = {labels[copy].edged for copy in copies if copy < len(labels)}
    if len(alike) != 1:
        return
    a, b, c, d = area.corners()
    sides = {"near": (d, a), "far": (b, c), "face": (c, d), "back": (a, b)}
    if turned:
        # A quarter turn to the left brings the near end to the foot.
        sides = {"near": (c, d), "far": (a, b), "face": (b, c), "back": (d, a)}
    for each in alike.pop():
        yield sides[each]


def _outline(placed: Placed, piece: Piece, frame: Frame) -> tuple[tuple[Point, ...], Area]:
    area = frame.area(placed.x, placed.y, placed.length, placed.width)
    if not any(piece.slants):
        return area.corners(), area
    near, far = (
        [frame.left + frame.scale * x for x in end] for end in ends_of(placed, piece.slants)
    )
    corners = (
        (near[1], area.top), (far[1], area.top), (far[0], area.bottom), (near[0], area.bottom),
    )  # fmt: skip
    return corners, Area(max(near), area.top, min(far), area.bottom)


def _closed(points: Sequence[Point]) -> tuple[Point, ...]:
    return (*points, points[0])


def _hatching(area: Area) -> Iterator[tuple[Point, ...]]:
    """Lines that rise to the right at 45 degrees."""
    wide, high = area.size
    offset = _HATCH
    while offset < wide + high:
        left, right = max(0.0, offset - high), min(wide, offset)
        yield (
            (area.left + left, area.top + offset - left),
            (area.left + right, area.top + offset - right),
        )
        offset += _HATCH
