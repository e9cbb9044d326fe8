"""The unit from the front under its loads: levels bent as they sag, many times too large, with what
each carries, how far it sags and how far it may.

A3 lying (ISO 5457), made smaller on Letter for a maker in inches; lengths of the paper in mm.
Doors, drawers, face frame and back are left off.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path

from rodwright.lengths import LengthUnit
from rodwright.pictures.files import write_drawing
from rodwright.pictures.ink import DARK, Drawing, Fill, Lettering, Mark, Point, Stroke
from rodwright.pictures.loaded_labels import ARROW, is_assumed, labels_of, sag_and_limit
from rodwright.pictures.paper import HEAVY, SMALL, THIN, Block, Map, Window, note_marks, on_paper
from rodwright.pictures.sagged import after, drawn, drop_at, exaggeration, is_shown, outline
from rodwright.strength.sag_lines import SagLine
from rodwright.unit import Unit
from rodwright.unit.facts import STANDS

WIDTH, HEIGHT = 420.0, 297.0
LETTER = (279.4, 215.9)
"""A sheet of Letter (ASME Y14.1, size A, from memory), lying."""
_PIXELS_PER_MM = 5.5
_ROOM = Window(22.0, 47.0, 300.0, 278.0)
"""Where the unit is drawn."""
_NOTES = (312.0, 44.0, 96.0)
"""Left, top and width of the notes."""
_MOST_NOTES = 10
"""More of what fails, or has no room beside its level, isn't told one by one."""
_DEEPEST = 7.0
"""No sag is drawn deeper than this, mm of paper."""
_APART, _HEAD = 6.0, 0.7
"""How far apart a load's arrows stand, and half the width of their heads."""
_GROUND = "#f2efe9"
"""The colour of what holds."""


def write_loaded(unit: Unit, lines: Sequence[SagLine], folder: Path) -> tuple[Path, ...]:
    """Write ``loaded.png`` and ``loaded.svg``; nothing where nothing is to be carried.

    Equal units give equal SVG files, byte for byte.

    Raises:
        OSError: the folder can't be written.
    """
    if not lines:
        return ()
    return write_drawing(draw_loaded(unit, lines), folder, "loaded", per_unit=_PIXELS_PER_MM)


def draw_loaded(unit: Unit, lines: Sequence[SagLine]) -> Drawing:
    """The sheet of a unit and the lines of its levels."""
    page = _Page.of(unit, lines)
    labels, left_out = labels_of(unit, lines, page.to_paper, page.times)
    marks: list[Mark] = [
        Lettering((14.0, 18.0), f"{unit.title}: under its loads", 7.0, "start"),
        Lettering((14.0, 27.0), _told(unit, page.times), SMALL, "start"),
        *page.parts(),
        *page.levels(),
        *(mark for label in labels for mark in label.marks()),
        *page.loads(),
        *_notes(unit, lines, left_out),
    ]
    failing = [each.ref for each in lines if not each.holds]
    said = f"past their limits: {', '.join(failing)}" if failing else "all within their limits"
    drawing = Drawing(
        WIDTH,
        HEIGHT,
        f"{unit.title}: under its loads",
        f"{unit.title} from the front, its shelves bent as they sag, drawn {drawn(page.times)}; "
        f"{said}.",
        tuple(marks),
        "mm",
    )
    return on_paper(drawing, *LETTER) if unit.display_unit == "in" else drawing


@dataclass(frozen=True, slots=True)
class _Page:
    """A unit, its levels' lines, and where they go on paper."""

    unit: Unit
    lines: Sequence[SagLine]
    to_paper: Map
    scale: float
    times: float

    @classmethod
    def of(cls, unit: Unit, lines: Sequence[SagLine]) -> _Page:
        shown = [part.bounds() for part in unit.parts if is_shown(part)]
        corners = [(x, z) for box in shown for x, _, z in (box.low, box.high)]
        to_paper = _ROOM.scale_for(corners)
        scale = to_paper((1.0, 0.0))[0] - to_paper((0.0, 0.0))[0]
        return cls(unit, lines, to_paper, scale, exaggeration(lines, _DEEPEST / scale))

    def parts(self) -> Iterator[Mark]:
        """What carries the levels, from the rear to the front."""
        bent = {ref for line in self.lines for ref in line.refs}
        parts = [part for part in self.unit.parts if is_shown(part) and part.ref not in bent]
        for part in sorted(parts, key=lambda part: -part.bounds().low[1]):
            ring = tuple(self.to_paper(self._taken_along(each)) for each in outline(part))
            yield Fill((ring,), "#ffffff")
            yield Stroke(((*ring, ring[0]),), THIN)

    def levels(self) -> Iterator[Mark]:
        """The levels as they sag: pale where they hold, black where they don't, and dashed where it
        isn't known."""
        for line in self.lines:
            ring = self._strip(line)
            yield Fill((ring,), _GROUND if line.holds else DARK)
            dashes = (2.0, 1.2) if line.sag is None else None
            yield Stroke(((*ring, ring[0]),), HEAVY if not line.holds else 1.5 * THIN, DARK, dashes)
            straight = (line.box.low[0], line.box.high[0])
            ends = tuple(self.to_paper((x, line.box.low[2])) for x in straight)
            if line.sag:
                yield Stroke((ends,), THIN / 2, DARK, (1.6, 0.8))

    def loads(self) -> Iterator[Mark]:
        """Arrows on each level: a row under a line where it is loaded all along, as high as it is
        heavy, and one alone for what stands on one spot."""
        for line in self.lines:
            yield from self._arrows(line)

    def _arrows(self, line: SagLine) -> Iterator[Mark]:
        stretches = [each for load in line.loads for each in load.stretches]
        most = max((max(each.at_start, each.at_stop) for each in stretches), default=0.0)
        for each in stretches:
            if most <= 0:
                continue
            (left, right) = (self.to_paper((x, 0.0))[0] for x in (each.start, each.stop))
            count = max(2, round((right - left) / _APART) + 1)
            heads = []
            for number in range(count):
                share = number / (count - 1)
                tall = ARROW * (each.at_start + share * (each.at_stop - each.at_start)) / most
                x = min(max(left + share * (right - left), left + _HEAD), right - _HEAD)
                foot = self._top(line, each.start + share * (each.stop - each.start))
                heads.append((x, foot - tall))
                if tall > 2 * _HEAD:
                    yield from _arrow((x, foot), tall, THIN)
            yield Stroke((tuple(heads),), THIN)
        for lump in (each for load in line.loads for each in load.lumps):
            x = self.to_paper((lump.at, 0.0))[0]
            yield from _arrow((x, self._top(line, lump.at)), ARROW, HEAVY)

    def _top(self, line: SagLine, x: float) -> float:
        """The height on paper of a level's face at a place, as drawn."""
        return self.to_paper((x, line.box.high[2] - drop_at(line, x) * self.times))[1]

    def _taken_along(self, point: Point) -> Point:
        """A point (x, z) of what carries levels, as far down as the level that it ends at."""
        x, z = point
        for line in self.lines:
            (left, _, low), (right, _, high) = line.box.low, line.box.high
            if left <= x <= right and low - STANDS <= z <= high + STANDS:
                return x, z - drop_at(line, x) * self.times
        return point

    def _strip(self, line: SagLine) -> tuple[Point, ...]:
        upper = [(x, line.box.high[2] - down * self.times) for x, down in line.line]
        lower = [(x, line.box.low[2] - down * self.times) for x, down in line.line]
        return tuple(self.to_paper(point) for point in (*upper, *reversed(lower)))


def _arrow(foot: Point, tall: float, width: float) -> Iterator[Mark]:
    x, y = foot
    yield Stroke((((x, y - tall), (x, y - 2 * _HEAD)),), width)
    yield Fill((((x, y), (x - _HEAD, y - 2 * _HEAD), (x + _HEAD, y - 2 * _HEAD)),), DARK)


def _told(unit: Unit, times: float) -> str:
    when = after(unit.loading.years)
    return (
        f"From the front; doors, drawers, face frame and back are left off. Sag {when}, drawn "
        f"{drawn(times)}."
    )


def _notes(unit: Unit, lines: Sequence[SagLine], left_out: Sequence[str]) -> Iterator[Mark]:
    """What the signs mean, what fails, and the figures that found no room beside their level."""
    at, say = unit.loading, unit.display_unit
    left, top, width = _NOTES
    notes = [
        "Arrows: what lies on it; its weight is lettered.",
        f"Limit: the span over {at.limit:g}. Pale: within it. Black: past it. Dashed: not known.",
        *(["* is assumed: the spec says nothing of it."] if any(map(is_assumed, lines)) else []),
        *_shortened(_failing(lines, say)),
        "Formulas, sources, what would help: rodwright strength.",
        "It is no structural engineer's work.",
    ]
    legend = list(note_marks(Block("What is drawn", tuple(notes)), (left, top), width))
    yield from legend
    if left_out:
        down = max(mark.at[1] for mark in legend if isinstance(mark, Lettering)) + 12.0
        figures = tuple(_shortened([f"{each}." for each in left_out]))
        yield from note_marks(Block("Not beside their level", figures), (left, down), width)


def _failing(lines: Sequence[SagLine], unit: LengthUnit) -> list[str]:
    """What is past its limit, equal figures once."""
    found: dict[str, list[str]] = {}
    for line in lines:
        if not line.holds and line.sag is not None and line.limit is not None:
            sag, limit = sag_and_limit(line.sag, line.limit, unit)
            figures = f"{sag} of {limit} {unit}"
            found.setdefault(figures, []).append(line.ref)
    return [f"Past its limit: {', '.join(refs)}, {figures}." for figures, refs in found.items()]


def _shortened(notes: Sequence[str]) -> list[str]:
    """As many notes as there is room for."""
    more = len(notes) - _MOST_NOTES
    said = [f"And {more} more: rodwright strength."] if more > 0 else []
    return [*notes[:_MOST_NOTES], *said]
