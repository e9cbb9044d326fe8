"""Lettering on a sheet that is cut: what its pieces and offcuts are.

Nothing overlaps a line or other lettering: what finds no room is told below the sheet.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, field
from string import ascii_lowercase

from rodwright.cutting.flaws import clear_of, flaws_said, flaws_within
from rodwright.cutting.steps import SheetSteps
from rodwright.pictures.cutting_rooms import Segment, around, crosses, lies_in, sheet_lines
from rodwright.pictures.cutting_sheet import (
    EDGE,
    KEPT,
    Area,
    Frame,
    Shown,
)
from rodwright.pictures.glyphs import text_width
from rodwright.pictures.ink import Fill, Lettering, Mark, Point, Stroke

SIZES = (3.6, 3.0, 2.5, 2.1)
"""Sizes of type on pieces, the largest that fits being taken."""
FINE_SIZES = (2.5, 2.1, 1.8, 1.5)
"""And of single letters, where nothing else fits."""
_LEADING = 1.25
_CLEAR = 0.5
"""Between lettering and lines."""
_ARROW = 1.0
_BESIDE = 2.4
"""Size of type of a letter beside what it stands for."""
_AWAY = (1.0, 2.0, 3.5, 6.0, 9.0)
SHARES = (0.5, 0.3, 0.7, 0.15, 0.85, 0.4, 0.6, 0.22, 0.78, 0.07, 0.93)
"""Where along a line lettering is tried."""
Say = Callable[[float], str]


@dataclass
class Labels:
    """Lettering as it finds room: its ``marks``, the areas ``taken``, and what is ``told`` below
    the sheet instead; ``small`` is what isn't marked at all; ``leaders`` point at what has its
    letter beside it."""

    marks: list[Mark] = field(default_factory=list)
    taken: list[Area] = field(default_factory=list)
    told: list[str] = field(default_factory=list)
    small: list[str] = field(default_factory=list)
    leaders: list[tuple[Point, Point]] = field(default_factory=list)
    _marked: int = 0

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

    def mark(self, room: Area, what: str) -> bool:
        """The next letter in some room, told below the sheet with ``what`` it stands for."""
        text = _letter(self._marked)
        if not self.letter(room, [text], FINE_SIZES):
            return False
        self._marked += 1
        self.told.append(f"{text}: {what}")
        return True

    def point(self, room: Area, lines: Sequence[Segment], within: Area, what: str) -> bool:
        """The next letter beside what has no room for it, with a leader."""
        text = _letter(self._marked)
        half = text_width(text, _BESIDE) / 2 + _CLEAR, 0.5 * _BESIDE + 0.2
        for start, end in _leaders(room, half[1]):
            x, y = start
            towards = (end[0], end[1] + (half[1] if end[1] < y else -half[1]))
            box = around(end, half)
            path = Area(x - 0.1, min(y, towards[1]), x + 0.1, max(y, towards[1]))
            free = not any(box.meets(each) or path.meets(each) for each in self.taken)
            if (
                free
                and lies_in(box, within)
                and not any(crosses(box, each, None) for each in lines)
            ):
                self._marked += 1
                self.told.append(f"{text}: {what}")
                self.taken += (box, path)
                self.leaders.append((start, towards))
                corners = box.corners()
                self.marks += [
                    Stroke(((start, towards),), EDGE),
                    Fill((corners,), KEPT),
                    Stroke(((*corners, corners[0]),), EDGE),
                    Lettering((end[0], end[1] + 0.35 * _BESIDE), text, _BESIDE),
                ]
                return True
        return False

    def notes(self) -> str:
        """What is told below the sheet."""
        small = [f"too small to mark: {'; '.join(self.small)}"] if self.small else []
        return ";  ".join((*self.told, *small))

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


def label_pieces(
    labels: Labels, pieces: Sequence[Shown], say: Say, grained: bool
) -> list[tuple[Area, str]]:
    """Refs and sizes on pieces, and how the grain runs where there is room for it; what finds no
    room, with what there is to say of it."""
    small: list[tuple[Area, str]] = []
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
        if not labels.mark(shown.room, f"{refs}, {size}"):
            small.append((shown.room, f"{refs}, {size}"))
    return small


def label_offcuts(labels: Labels, sheet: SheetSteps, frame: Frame, say: Say) -> None:
    """Names, sizes and flaws of offcuts, on a white ground in their hatching, clear of the flaws
    that are in them."""
    for offcut, names in sheet.kept:
        flaws = flaws_within(sheet.stock.flaws, offcut.x, offcut.y, offcut.length, offcut.width)
        rooms = sorted(
            (
                frame.area(offcut.x + each.x, offcut.y + each.y, each.length, each.width)
                for each in clear_of(flaws, offcut.length, offcut.width)
            ),
            key=lambda room: -room.size[0] * room.size[1],
        )
        size = " x ".join(say(side) for side in (offcut.length, offcut.width) if side)
        before = len(labels.marks)
        if _offcut_lettered(labels, rooms, _listed(names), size, flaws_said(flaws)):
            labels.marks.insert(before, Fill((labels.taken[-1].corners(),), KEPT))


def _offcut_lettered(
    labels: Labels, rooms: Sequence[Area], name: str, size: str, flawed: str
) -> bool:
    """Whether there is room to say, or mark with a letter, what an offcut is."""
    wordings = [[name, size, flawed]] if flawed else []
    for texts in (*wordings, [name, size], [f"{name}  {size}"]):
        if any(labels.letter(room, texts, SIZES) for room in rooms):
            if flawed and flawed not in texts:
                labels.told.append(f"{name}: {flawed}")
            return True
    what = ", ".join(text for text in (f"offcut {name}", size, flawed) if text)
    if any(labels.mark(room, what) for room in rooms):
        return True
    labels.small.append(what)
    return False


def point_at(
    labels: Labels,
    small: Sequence[tuple[Area, str]],
    sheet: SheetSteps,
    pieces: Sequence[Shown],
    frame: Frame,
    within: Area,
) -> None:
    """Letters beside what is too small for more, where there is room for them."""
    lines = sheet_lines(sheet, pieces, frame)
    for room, what in small:
        if not labels.point(room, lines, within, what):
            labels.small.append(what)


def _leaders(room: Area, half: float) -> Iterator[Segment]:
    """From the middle of what is small, up or down, to where its letter may stand."""
    wide, y = room.size[0], room.middle[1]
    for away in _AWAY:
        for share in SHARES:
            x = room.left + share * wide
            yield (x, y), (x, room.top - away - half)
            yield (x, y), (x, room.bottom + away + half)


def _grain(room: Area, label: Area) -> Iterator[Mark]:
    """A double arrow along the grain below a label, where there is room for it."""
    y, half = label.bottom + 1.6, min(7.0, 0.3 * room.size[0])
    if y + _ARROW > room.bottom - _CLEAR or half < 2.0:
        return
    x = room.middle[0]
    heads = tuple(
        (
            (x + side * half - side * _ARROW, y - 0.5),
            (x + side * half, y),
            (x + side * half - side * _ARROW, y + 0.5),
        )
        for side in (-1.0, 1.0)
    )
    yield Stroke((((x - half, y), (x + half, y)), *heads), EDGE)


def _letter(number: int) -> str:
    """``a`` to ``z``, then ``aa`` and so on: cuts have the numbers."""
    first, last = divmod(number, 26)
    return (_letter(first - 1) if first else "") + ascii_lowercase[last]


def _listed(names: Sequence[str]) -> str:
    return ", ".join(names)


def _written(labels: Labels) -> str:
    return " ".join(mark.text for mark in labels.marks if isinstance(mark, Lettering))
