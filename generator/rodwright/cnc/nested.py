"""Sheets as they are nested: every part at its place, with what is cut into it from above."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from rodwright.cnc.layers import EDGING, GRAIN, OFFCUT, OUTLINE, SHEET, TEXT, USABLE
from rodwright.cnc.part_shapes import PartShapes
from rodwright.cnc.shapes import Move, Path, Shape, Text
from rodwright.cutting.steps import LotSteps, SheetSteps
from rodwright.cutting.steps.cuts import Contour
from rodwright.cutting.work import Lot
from rodwright.unit import Grain

_HEIGHT = 14.0
"""Of text on a sheet, mm."""
_NEAR = 0.6
"""mm: sizes are planned as they are read, so nearer than this they are the same."""


@dataclass(frozen=True, slots=True)
class NestedSheet:
    """One sheet: its lot and number, how large it is (mm), its shapes and what lies on it.

    ``refs`` are the parts in the order in which they are cut; ``turn_over`` those that are worked
    on their lower face too, each by its own second drawing; ``bare`` those of which only the
    outline is here, since they lie the other way up than they are worked.
    """

    lot: Lot
    number: int
    length: float
    width: float
    shapes: tuple[Shape, ...]
    refs: tuple[str, ...]
    turn_over: tuple[str, ...]
    bare: tuple[str, ...]


def nested_sheets(
    steps: Sequence[LotSteps], drawn: Mapping[str, PartShapes]
) -> tuple[NestedSheet, ...]:
    """Every sheet of a plan for a router; ``drawn`` has the drawings of parts by their refs.

    Boards and lengths are sawn and have no drawing.  Strips of what is glued up have their outline
    alone: they are worked once they are a part.
    """
    return tuple(
        sheet for each in steps if each.lot.kind == "sheet" for sheet in _of_lot(each, drawn)
    )


def _of_lot(steps: LotSteps, drawn: Mapping[str, PartShapes]) -> Iterator[NestedSheet]:
    found = [
        _sheet(steps.lot, sheet, copy, number, drawn)
        for sheet in steps.sheets
        for copy, number in enumerate(sheet.numbers)
    ]
    yield from sorted(found, key=lambda each: each.number)


def _sheet(
    lot: Lot, sheet: SheetSteps, copy: int, number: int, drawn: Mapping[str, PartShapes]
) -> NestedSheet:
    stock = sheet.stock
    length, width, trim = stock.length, stock.width, stock.trim
    shapes: list[Shape] = [_rectangle(SHEET, 0.0, 0.0, length, width)]
    if any((trim.near, trim.far, trim.face, trim.back)):
        shapes.append(
            _rectangle(
                USABLE,
                trim.near,
                trim.face,
                length - trim.near - trim.far,
                width - trim.face - trim.back,
            )
        )
    refs: list[str] = []
    turn_over: list[str] = []
    bare: list[str] = []
    for contour in sheet.contours:
        ref = _ref(lot, contour, copy)
        refs.append(ref)
        part = drawn.get(ref)
        if part is None or contour.inner:
            bare.append(ref)
            shapes += _outline(contour, ref)
            continue
        shapes += _placed(contour, ref, part)
        if part.reverse:
            turn_over.append(ref)
    for offcut, names in sheet.kept:
        shapes.append(_rectangle(OFFCUT, offcut.x, offcut.y, offcut.length, offcut.width))
        middle = (offcut.x + offcut.length / 2, offcut.y + offcut.width / 2)
        shapes.append(Text(TEXT, middle, f"offcut {names[copy]}", _HEIGHT))
    return NestedSheet(
        lot, number, length, width, tuple(shapes), tuple(refs), tuple(turn_over), tuple(bare)
    )


def _ref(lot: Lot, contour: Contour, copy: int) -> str:
    return lot.labels[contour.name][contour.copies[copy]].ref


def _outline(contour: Contour, ref: str) -> Iterator[Shape]:
    yield _rectangle(OUTLINE, contour.x, contour.y, contour.length, contour.width)
    yield _named(ref, contour)


def _named(ref: str, contour: Contour) -> Shape:
    middle = (contour.x + contour.length / 2, contour.y + contour.width / 2)
    upright = contour.width > contour.length
    room = max(contour.length, contour.width) / (len(ref) + 2)
    height = min(_HEIGHT, room, 0.5 * min(contour.length, contour.width))
    return Text(TEXT, middle, ref, height, upright)


def _placed(contour: Contour, ref: str, drawn: PartShapes) -> Iterator[Shape]:
    """A part's drawing where its piece lies.

    A piece runs along the sheet's grain: of a part whose grain runs across it that is a quarter
    turn (see :mod:`rodwright.cutting.demand.parts`), and on the sheet it may be turned by another.
    """
    part = drawn.product.part
    length, width, _ = part.blank.size
    crosswise = part.blank.grain is Grain.CROSSWISE and part.blank.stock.grain is not Grain.NONE
    along = (width, length) if crosswise else (length, width)
    turned = abs(along[0] - contour.length) > _NEAR or abs(along[1] - contour.width) > _NEAR
    move = Move(contour.x, contour.y, length, width, 3 * crosswise + turned)
    yield from map(move.shape, drawn.cut)
    told = (each for each in drawn.texts if each.layer in (GRAIN, EDGING))
    yield from map(move.shape, told)
    yield _named(f"{ref}, turn over" if drawn.reverse else ref, contour)


def _rectangle(layer: str, x: float, y: float, length: float, width: float) -> Shape:
    far, back = x + length, y + width
    return Path(layer, ((x, y), (far, y), (far, back), (x, back)))
