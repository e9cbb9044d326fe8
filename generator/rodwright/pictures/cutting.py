"""Plans to cut by, on paper: every sheet and board of a lot, A4 or for a maker in inches Letter."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from functools import partial
from math import ceil

from rodwright.cutting.steps import LotSteps, SheetSteps
from rodwright.cutting.steps.words import hand_name
from rodwright.lengths import LengthUnit, format_length
from rodwright.pictures.cutting_labels import (
    Labels,
    label_offcuts,
    label_pieces,
    point_at,
)
from rodwright.pictures.cutting_numbers import number_cuts
from rodwright.pictures.cutting_sheet import Area, Frame, Shown, sheet_marks, shown_pieces
from rodwright.pictures.glyphs import text_width
from rodwright.pictures.ink import Drawing, Lettering, Mark, Stroke
from rodwright.pictures.paint import to_png
from rodwright.pictures.paper import SMALL, THIN, wrapped
from rodwright.pictures.svg import to_svg

PAGES: dict[LengthUnit, tuple[float, float]] = {"mm": (297.0, 210.0), "in": (279.4, 215.9)}
"""A4 (ISO 216) and Letter (ASME Y14.1, size A, from memory), lying, mm."""
SCALES = (1, 2, 5, 8, 10, 12, 15, 20, 25, 30, 50, 100, 200)
"""What one mm of paper stands for: those of ISO 5455 (from memory), and some between."""
_BORDER = 10.0
_SIDE = 8.0
"""Beside a sheet, for the numbers of cuts."""
_HEAD, _TITLE, _FOOT = 13.0, 10.0, 7.0
_NOTE = 2.8
_LEADING = 1.3
_LEAST_DEEP = 6.0
"""No board or strip of one is drawn narrower, if that leaves it lower than ``_DEEPEST``."""
_DEEPEST = 64.0
_PIXELS_PER_MM = 8.0
_MEASURES = {"mm": "mm", "in": "inches"}


@dataclass(frozen=True, slots=True)
class _Item:
    """A sheet with its lettering, as high as it is on paper."""

    sheet: SheetSteps
    frame: Frame
    pieces: tuple[Shown, ...]
    labels: Labels
    notes: tuple[str, ...]
    height: float


def cutting_pictures(steps: LotSteps, unit: LengthUnit, name: str) -> dict[str, bytes]:
    """The pages of a lot as files, ``name-1.svg`` and ``name-1.png`` and so on, and what is in
    them; equal steps give equal SVG, byte for byte."""
    files: dict[str, bytes] = {}
    for number, page in enumerate(cutting_pages(steps, unit), 1):
        files[f"{name}-{number}.svg"] = to_svg(page).encode()
        files[f"{name}-{number}.png"] = to_png(page, _PIXELS_PER_MM)
    return files


def cutting_pages(
    steps: LotSteps, unit: LengthUnit, page: tuple[float, float] | None = None
) -> tuple[Drawing, ...]:
    """Every sheet or board once, equal ones together, as many as go on a ``page`` (width and
    height, mm; that of :data:`PAGES` unless said)."""
    say = partial(format_length, unit=unit)
    paper = page or PAGES[unit]
    width, height = paper
    room = height - 2 * _BORDER - _HEAD - _FOOT
    scale = _scale(steps, width - 2 * _BORDER - 2 * _SIDE, room)
    pages: list[list[SheetSteps]] = []
    left = 0.0
    for sheet in steps.sheets:
        needed = _item(steps, sheet, scale, 0.0, unit, width).height
        if not pages or needed > left:
            pages.append([])
            left = room
        pages[-1].append(sheet)
        left -= needed
    return tuple(
        _page(steps, sheets, scale, (number, len(pages)), unit, say, paper)
        for number, sheets in enumerate(pages, 1)
    )


def _scale(steps: LotSteps, wide: float, high: float) -> int:
    """The largest scale at which the longest and the widest go on a page."""
    length = max(sheet.stock.length for sheet in steps.sheets)
    width = max(sheet.stock.width for sheet in steps.sheets)
    return next(
        (each for each in SCALES if length / each <= wide and width / each <= 0.78 * high),
        SCALES[-1],
    )


def _page(
    steps: LotSteps,
    sheets: Sequence[SheetSteps],
    scale: int,
    number: tuple[int, int],
    unit: LengthUnit,
    say: Callable[[float], str],
    paper: tuple[float, float],
) -> Drawing:
    width, height = paper
    lot = steps.lot
    title = f"{lot.material}, {say(lot.thickness)} {unit}"
    marks: list[Mark] = [
        Lettering((_BORDER, _BORDER + 5.0), title, 5.6, "start"),
        Lettering(
            (width - _BORDER, _BORDER + 5.0), f"page {number[0]} of {number[1]}", SMALL, "end"
        ),
        *_legend(steps, scale, unit, say, paper),
    ]
    top = _BORDER + _HEAD
    for sheet in sheets:
        item = _item(steps, sheet, scale, top, unit, width)
        marks += _item_marks(steps, item, top, say, width)
        top += item.height
    names = ", ".join(hand_name(steps, sheet, str(sheet.numbers[0])) for sheet in sheets)
    about = (
        f"{names} of {title}, to cut: pieces with their refs and sizes, offcuts hatched, waste "
        "grey, cuts numbered in their order."
    )
    return Drawing(width, height, f"{title}: {names}", about, tuple(marks), "mm")


def _item(
    steps: LotSteps, sheet: SheetSteps, scale: int, top: float, unit: LengthUnit, width: float
) -> _Item:
    """A sheet laid out below ``top`` on a page so wide."""
    say = partial(format_length, unit=unit)
    stock = sheet.stock
    times = _widened(steps, sheet, scale)
    deep = times * stock.width / scale if stock.width else _LEAST_DEEP
    foot = top + _TITLE + deep
    frame = Frame(_BORDER + _SIDE, foot, 1 / scale, times / scale, deep, not stock.width)
    pieces = shown_pieces(steps, sheet, frame)
    labels = Labels()
    small = label_pieces(labels, pieces, say, _grained(steps))
    label_offcuts(labels, sheet, frame, say)
    right = frame.left + stock.length / scale
    within = Area(frame.left - _SIDE, top + _TITLE - 4.0, right + _SIDE, foot + 5.0)
    point_at(labels, small, sheet, pieces, frame, within)
    number_cuts(labels, sheet, pieces, frame, within)
    notes = tuple(wrapped(labels.notes(), width - 2 * _BORDER, _NOTE))
    height = _TITLE + deep + 6.0 + _NOTE * _LEADING * len(notes)
    return _Item(sheet, frame, pieces, labels, notes, height)


def _widened(steps: LotSteps, sheet: SheetSteps, scale: int) -> int:
    """How many times too wide a board is drawn, so that its strips can be told apart."""
    width = sheet.stock.width
    if steps.lot.kind == "sheet" or not width:
        return 1
    narrowest = min((each.width for each in sheet.layout.placed), default=width) / scale
    return max(1, min(ceil(_LEAST_DEEP / narrowest), int(_DEEPEST * scale / width)))


def _item_marks(
    steps: LotSteps,
    item: _Item,
    top: float,
    say: Callable[[float], str],
    width: float,
) -> Iterator[Mark]:
    stock = item.sheet.stock
    size = " x ".join(say(side) for side in (stock.length, stock.width) if side)
    name = hand_name(steps, item.sheet, str(item.sheet.numbers[0]))
    alike = f", {len(item.sheet.numbers)} cut alike" if len(item.sheet.numbers) > 1 else ""
    y = top + 4.2
    yield Lettering((_BORDER, y), f"{name.capitalize()}{alike}", 4.2, "start")
    begins = _BORDER + text_width(f"{name.capitalize()}{alike}", 4.2) + 4.0
    times = round(item.frame.across / item.frame.scale)
    about = stock.name if stock.name.endswith(size) else f"{stock.name}, {size}"
    about += f"; drawn {times} times as wide" if times > 1 else ""
    yield Lettering((begins, y), about, SMALL, "start")
    yield Lettering((width - _BORDER, y), _use(item.sheet, steps), SMALL, "end")
    yield from sheet_marks(item.sheet, item.pieces, item.frame)
    yield from item.labels.marks
    y = item.frame.foot + 5.0
    for line in item.notes:
        y += _NOTE * _LEADING
        yield Lettering((_BORDER, y), line, _NOTE, "start")


def _use(sheet: SheetSteps, steps: LotSteps) -> str:
    """What share of a sheet is thrown away, kerf and trims with it."""
    stock, pieces = sheet.stock, {piece.name: piece for piece in steps.lot.pieces}
    whole = stock.length * (stock.width or 1.0)
    used = sum(each.length * (each.width or 1.0) for each in sheet.layout.placed)
    for placed in sheet.layout.placed:
        piece = pieces[placed.piece]
        used -= sum(piece.slants) / 2 * (piece.width or 0.0)
    kept = sum(offcut.length * (offcut.width or 1.0) for offcut, _ in sheet.kept)
    return f"thrown away {100 * (1 - (used + kept) / whole):.0f} %"


def _grained(steps: LotSteps) -> bool:
    """Whether how the grain runs is shown."""
    offers = steps.lot.offers
    if offers:
        return any(offer.grained for offer in offers)
    return any(piece.turning is False for piece in steps.lot.pieces)


def _legend(
    steps: LotSteps,
    scale: int,
    unit: LengthUnit,
    say: Callable[[float], str],
    paper: tuple[float, float],
) -> Iterator[Mark]:
    width, height = paper
    y = height - _BORDER
    yield Stroke((((_BORDER, y - 5.0), (width - _BORDER, y - 5.0)),), THIN)
    grain = ", grain as the arrows" if _grained(steps) else ""
    labels = (label for those in steps.lot.labels.values() for label in those)
    edging = " Thick: gets edging." if any(label.edged for label in labels) else ""
    flaws = " Crossed: a flaw." if any(sheet.stock.flaws for sheet in steps.sheets) else ""
    cuts = " In rings: cuts in their order." if any(sheet.steps for sheet in steps.sheets) else ""
    text = (
        f"Near end left, face edge at the foot{grain}. Hatched: kept. Grey: thrown away."
        f"{edging}{flaws}{cuts}"
    )
    yield Lettering((_BORDER, y), text, _NOTE, "start")
    facts = f"Lengths in {_MEASURES[unit]}, kerf {say(steps.kerf)}, scale 1:{scale}"
    yield Lettering((width - _BORDER, y), facts, _NOTE, "end")
