"""Distinct parts as other programs see them: what they are called, and what is said of them.

Each row of the parts list is one product, as cut or finished.  What it is called is made in
:mod:`rodwright.handover.names`, once for list, unit and part files.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import PurePosixPath

from rodwright.geometry import Vector
from rodwright.handover.lists import common_name, like_parts
from rodwright.handover.names import file_paths, row_name
from rodwright.handover.working_names import working_names
from rodwright.lengths import LengthUnit, format_length
from rodwright.unit import Grain, Part, Unit
from rodwright.unit.orientation import orientation_of
from rodwright.unit.shop_part import PartsKind, ShopPart, shop_part

Property = tuple[str, str | int]
"""Name and value."""

CUT_STATE = "cut state"
"""Name of the property that says whether a piece is as cut or finished."""

_GRAIN = {
    Grain.LENGTHWISE: "lengthwise, along x",
    Grain.CROSSWISE: "crosswise, along y",
    Grain.NONE: "none",
}


@dataclass(frozen=True, slots=True)
class Product:
    """A distinct part: a row of the parts list, one product in STEP, one file of a kind.

    ``shop`` holds its pieces, all alike; ``name`` begins with the first one's ref.
    ``workings`` are short names of its workings, in their order.  ``file`` is where its
    files go below the folder of parts, without their ending.
    """

    shop: ShopPart
    name: str
    description: str
    properties: tuple[Property, ...]
    workings: tuple[str, ...]
    file: PurePosixPath

    @property
    def part(self) -> Part:
        """The first of its pieces."""
        return self.shop.part

    @property
    def title(self) -> str:
        """Name, quantity, stock and state on one line."""
        return f"{self.name}, {self.description}"


def products(unit: Unit, kind: PartsKind) -> tuple[Product, ...]:
    """The unit's distinct parts as cut or finished, in the order of the parts list."""
    return tuple(
        _product(parts, shop_part(parts, kind, unit.display_unit), file, unit.display_unit)
        for parts, file in zip(like_parts(unit), file_paths(unit, kind), strict=True)
    )


def _product(
    parts: Sequence[Part], shop: ShopPart, file: PurePosixPath, unit: LengthUnit
) -> Product:
    stock, thickness = parts[0].blank.stock, format_length(parts[0].blank.thickness, unit)
    return Product(
        shop=shop,
        name=row_name(parts),
        description=f"{len(parts)} off, {stock.described} {thickness} {unit}, {shop.state}",
        properties=_properties(parts, shop, unit),
        workings=working_names(shop.part.workings, shop.part.blank.size, unit),
        file=file,
    )


def _properties(parts: Sequence[Part], shop: ShopPart, unit: LengthUnit) -> tuple[Property, ...]:
    part, orientation = parts[0], orientation_of(shop.pieces)
    blank = part.blank
    edging = [
        f"{orientation.name(each.surface)}: {each.called} "
        f"{format_length(each.thickness, unit)} {unit}"
        for each in shop.edged
    ]
    later = working_names(shop.later, shop.part.blank.size, unit)
    return (
        ("ref", ", ".join(each.ref for each in parts)),
        ("name", common_name([each.name for each in parts])),
        ("quantity", len(parts)),
        ("stock", blank.stock.name),
        ("material", blank.stock.described),
        ("thickness", f"{format_length(blank.thickness, unit)} {unit}"),
        ("grain direction", _GRAIN[blank.grain]),
        ("edging", "; ".join(edging) or "none"),
        ("lipping", ", ".join(part.lipped) or "none"),
        (CUT_STATE, shop.state),
        ("size as cut", _size(part.rough_size, unit)),
        ("finished size", _size(blank.size, unit)),
        ("face up", shop.up),
        ("measured", shop.reference),
        ("second side", shop.second_side or "none"),
        ("before and after", "; ".join(shop.notes) or "nothing"),
        ("worked later", "; ".join(dict.fromkeys(later)) or "nothing"),
    )


def _size(lengths: Vector, unit: LengthUnit) -> str:
    return f"{' x '.join(format_length(length, unit) for length in lengths)} {unit}"
