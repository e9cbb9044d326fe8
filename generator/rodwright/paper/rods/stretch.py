"""A stretch of a rod as it is drawn: its tracks with their lines, the scale beside them, the texts.

Lengths in mm.  On the page the rod runs upwards: its low end is at the foot.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from rodwright.lengths import LengthUnit, format_length
from rodwright.paper.rods.labels import Wanted, placed
from rodwright.paper.rods.marks import KINDS, Kind
from rodwright.paper.rods.pieces import Piece
from rodwright.paper.rods.rods import Line, Rod, Track
from rodwright.pictures.glyphs import text_width
from rodwright.pictures.ink import Lettering, Mark, Point, Stroke

TYPE = 2.83
"""Size of type: 8 points of 0.3528 mm."""
LEADING = 3.3
"""From one line of text to the next."""
_APART = 0.5
"""Between the texts of two lines."""
BASE = 0.35
"""How far below the middle of a line of text its baseline lies, in sizes of type."""
HEAVY, MIDDLE, THIN = 0.35, 0.25, 0.13
"""Widths of lines, of the series of ISO 128-2 (from memory)."""


@dataclass(frozen=True, slots=True)
class Look:
    """How wide things are: the scale, and of each track the pieces' names, the board, the leaders
    and the texts.  ``texts`` is whether more than figures is told, ``reading`` how far apart
    figures of the scale are at least."""

    scale: float
    names: float
    board: float
    leader: float
    text: float
    texts: bool
    reading: float

    @property
    def track(self) -> float:
        """Width of a whole track; a millimetre keeps it from the next."""
        return self.names + self.board + self.leader + self.text + 1.0


FULL = Look(14.0, 4.5, 9.0, 3.5, 38.0, texts=True, reading=0.0)
"""On a rod full size."""
REDUCED = Look(14.0, 4.5, 4.0, 3.0, 10.5, texts=False, reading=8.0)
"""On one page of a book."""
_HATCH = 2.5
"""From one line of a hatching to the next."""
_DASHES: dict[Kind, tuple[float, float] | None] = {
    "end": None,
    "board": None,
    "edge": None,
    "cut": (1.6, 0.8),
    "hole": None,
    "ware": (3.0, 1.0),
}
_WIDTHS: dict[Kind, float] = {
    "end": HEAVY,
    "board": HEAVY,
    "edge": MIDDLE,
    "cut": MIDDLE,
    "hole": THIN,
    "ware": MIDDLE,
}
_TICKS: dict[LengthUnit, tuple[tuple[float, int, int], ...]] = {
    "mm": ((10.0, 5, 10), (20.0, 5, 10), (50.0, 2, 10), (100.0, 5, 10), (500.0, 2, 4)),
    "in": ((25.4 / 4, 4, 4), (25.4, 3, 6), (50.8, 3, 6), (152.4, 2, 4), (304.8, 2, 10)),
}
"""Of the scale, the finest first: from tick to tick, and how many to a longer one and to a
figure."""
_NAME_EVERY = 300.0
"""How far apart a piece's name stands beside it again."""


@dataclass(frozen=True, slots=True)
class Stretch:
    """What of a rod is drawn, and where: tracks between two places of it, ``start`` being at
    ``foot`` on the page and ``left`` where the scale begins.

    Lines from ``start`` to ``told`` have texts; what lies past that is drawn without.  ``scale`` is
    the size on the page of a millimetre of the rod.
    """

    rod: Rod
    tracks: tuple[Track, ...]
    start: float
    stop: float
    told: float
    left: float
    foot: float
    unit: LengthUnit
    look: Look = FULL
    scale: float = 1.0

    def y(self, at: float) -> float:
        """Where a place of the rod lies on the page."""
        return self.foot - (at - self.start) * self.scale

    def holds(self, at: float) -> bool:
        """Whether a place of the rod is on it."""
        return self.start - 1e-6 <= at <= self.stop + 1e-6

    def tells(self, at: float) -> bool:
        """Whether the texts of a place of the rod are on it: each place's are on one stretch."""
        last = self.told >= self.rod.length
        return self.start - 1e-6 <= at and (at < self.told - 1e-6 or last)


def stretch_marks(stretch: Stretch) -> Iterator[Mark]:
    """All that is drawn of a stretch."""
    look = stretch.look
    yield from _scale(stretch)
    for number, track in enumerate(stretch.tracks):
        left = stretch.left + look.scale + number * look.track
        yield from _pieces(stretch, track, left)
        yield from _lines(stretch, track, left + look.names)
        yield from _texts(stretch, track, left + look.names + look.board)


def _scale(stretch: Stretch) -> Iterator[Mark]:
    """A scale from the rod's end, as on a rule."""
    look, all_ticks = stretch.look, _TICKS[stretch.unit]
    step, longer, figure = next(
        (each for each in all_ticks if each[0] * each[2] * stretch.scale >= look.reading),
        all_ticks[-1],
    )
    right = stretch.left + look.scale - 3.0
    stop = min(stretch.stop, stretch.rod.length)
    yield Stroke((((right, stretch.foot), (right, stretch.y(stop))),), THIN)
    ticks: list[tuple[Point, Point]] = []
    apart = 2.0 / stretch.scale
    for number in range(int(stretch.start / step), int(stop / step) + 1):
        at = number * step
        if not stretch.holds(at):
            continue
        y = stretch.y(at)
        long = 3.0 if number % figure == 0 else 2.2 if number % longer == 0 else 1.4
        ticks.append(((right - long, y), (right, y)))
        inside = stretch.start + apart < at < min(stretch.told, stop) - apart
        if number % figure == 0 and inside:
            text = format_length(at, stretch.unit)
            yield Lettering((right - 3.6, y + BASE * TYPE), text, TYPE, "end")
    if ticks:
        yield Stroke(tuple(ticks), THIN)


def _pieces(stretch: Stretch, track: Track, left: float) -> Iterator[Mark]:
    """The sides of a track's pieces, the boards that meet them, and their names beside them."""
    board, width = left + stretch.look.names, stretch.look.board
    hatched: list[tuple[Point, Point]] = []
    for piece in track.pieces:
        low, high = max(piece.low, stretch.start), min(piece.high, stretch.stop)
        if high - low <= 0:
            continue
        y, top = stretch.y(low), stretch.y(high)
        sides = (((board, y), (board, top)), ((board + width, y), (board + width, top)))
        yield Stroke(sides, HEAVY)
        yield from _names(piece, left + 3.2, y, max(top, stretch.y(stretch.told)))
        for start, end in dict.fromkeys(piece.meeting("board").values()):
            upper = stretch.y(min(end, high))
            lower = stretch.y(max(start, low))
            if lower > upper:
                hatched += hatching(board, upper, width, lower - upper)
    if hatched:
        yield Stroke(tuple(hatched), THIN)


def _names(piece: Piece, base: float, low: float, high: float) -> Iterator[Mark]:
    """A piece's name along it, again and again, as far as it has room."""
    if text_width(piece.on, TYPE) <= low - high - 2.0:
        count = max(1, int((low - high) / _NAME_EVERY))
        for number in range(count):
            middle = low - (low - high) * (number + 0.5) / count
            yield Lettering((base, middle), piece.on, TYPE, "middle", upwards=True)


def hatching(left: float, top: float, width: float, height: float) -> list[tuple[Point, Point]]:
    """Lines at 45 degrees over a rectangle, y down."""
    lines = []
    count = int((width + height) / _HATCH) + 1
    for number in range(1, count + 1):
        reach = number * _HATCH
        start = (left + max(0.0, reach - height), top + min(reach, height))
        end = (left + min(reach, width), top + max(0.0, reach - width))
        if end[0] - start[0] > 1e-6:
            lines.append((start, end))
    return lines


def _lines(stretch: Stretch, track: Track, left: float) -> Iterator[Mark]:
    """The lines across a track."""
    width = stretch.look.board
    kinds: dict[Kind, list[tuple[Point, Point]]] = {}
    for line in track.lines:
        if stretch.holds(line.at):
            y, kind = stretch.y(line.at), line.kind
            kinds.setdefault(kind, []).append(((left, y), (left + width, y)))
            if kind == "hole":
                middle = left + width / 2
                kinds[kind].append(((middle, y - 1.0), (middle, y + 1.0)))
    for kind, lines in kinds.items():
        yield Stroke(tuple(lines), _WIDTHS[kind], dashes=_DASHES[kind])


def _texts(stretch: Stretch, track: Track, left: float) -> Iterator[Mark]:
    """The figures and texts of the lines, each with its leader."""
    lines = [line for line in track.lines if stretch.holds(line.at) and stretch.tells(line.at)]
    told = [_told(line, stretch) for line in lines]
    wanted = [
        # The figure, which is in the first of its lines, is to stand beside the line.
        Wanted(
            (line.at - stretch.start) * stretch.scale - LEADING * (len(text) - 1) / 2,
            LEADING * len(text) + _APART,
            _rank(line, stretch.look),
        )
        for line, text in zip(lines, told, strict=True)
    ]
    # At the rod's own ends no line runs across the page that a text could lie on.
    room = (LEADING + _APART) / 2
    low = -room if stretch.start == 0 else 0.0
    top = (stretch.told - stretch.start) * stretch.scale
    top += room if stretch.told >= stretch.rod.length else 0.0
    for line, text, at in zip(lines, told, placed(wanted, low, top), strict=True):
        if at is not None:
            first = stretch.foot - at - LEADING * (len(text) - 1) / 2
            yield Stroke((_leader(left, stretch.y(line.at), first, stretch.look.leader),), THIN)
            for number, each in enumerate(text):
                where = (left + stretch.look.leader + 0.5, first + BASE * TYPE + number * LEADING)
                yield Lettering(where, each, TYPE, "start")


def _leader(left: float, y: float, at: float, long: float) -> tuple[Point, ...]:
    """From a line's end to its text, straight where that is level with it."""
    return ((left, y), (left + 0.8, y), (left + long - 0.6, at), (left + long, at))


def _rank(line: Line, look: Look) -> int:
    """How soon a line goes without its text: minor ones first, and where only figures are told
    those of the parts' ends last."""
    if look.texts:
        return int(line.minor)
    return len(KINDS) + 1 if line.minor else 1 + KINDS.index(line.kind)


def _told(line: Line, stretch: Stretch) -> list[str]:
    figure = format_length(line.at, stretch.unit)
    if line.minor or not stretch.look.texts:
        return [figure]
    return wrapped(f"{figure}  {line.label}", stretch.look.text, TYPE)


def wrapped(text: str, width: float, size: float) -> list[str]:
    """A text in lines of at most this width, broken between words; a word that is wider is broken
    too."""
    fits: Callable[[str], bool] = lambda each: text_width(each, size) <= width  # noqa: E731
    lines = [""]
    for word in text.split(" "):
        longer = f"{lines[-1]} {word}" if lines[-1] else word
        if fits(longer):
            lines[-1] = longer
            continue
        if lines[-1]:
            lines.append("")
        while not fits(word):
            head = next(at for at in range(len(word) - 1, 0, -1) if at == 1 or fits(word[:at]))
            lines[-1], word = word[:head], word[head:]
            lines.append("")
        lines[-1] = word
    return [each.rstrip() for each in lines]


def shortened(text: str, width: float, size: float) -> str:
    """A text, or as much of its beginning as fits, with three dots."""
    if text_width(text, size) <= width:
        return text
    end = next(at for at in range(len(text), -1, -1) if text_width(f"{text[:at]}…", size) <= width)
    return f"{text[:end]}…"
