"""Distinct parts as other programs see them: what they are called, and what is said of them.

Each row of the parts list is one product, as cut or finished.  What it is called is made in
:mod:`rodwright.handover.names`, once for list, unit and part files.
"""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import PurePosixPath

from rodwright.handover.lists import PartsRow, like_parts, parts_list
from rodwright.handover.names import file_paths, row_name
from rodwright.handover.shop_part import PartsKind, ShopPart, shop_part
from rodwright.handover.working_names import working_names
from rodwright.lengths import LengthUnit, format_length
from rodwright.parts import Grain, Part, Unit, Vector

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
    shown = unit.display_unit
    made = []
    rows, files = parts_list(unit, kind), file_paths(unit, kind)
    for parts, row, file in zip(like_parts(unit), rows, files, strict=True):
        shop = shop_part(parts, kind, shown)
        stock = f"{row.material} {format_length(row.thickness, shown)} {shown}"
        made.append(
            Product(
                shop=shop,
                name=row_name(row),
                description=f"{row.quantity} off, {stock}, {shop.state}",
                properties=_properties(row, parts[0], shop, shown),
                workings=working_names(shop.part.workings, shown),
                file=file,
            )
        )
    return tuple(made)


def _properties(
    row: PartsRow, part: Part, shop: ShopPart, unit: LengthUnit
) -> tuple[Property, ...]:
    edging = [
        f"{where}: {each.called} {format_length(each.thickness, unit)} {unit}"
        for where, each in zip(row.edged, shop.edged, strict=True)
    ]
    return (
        ("ref", ", ".join(row.refs)),
        ("name", row.name),
        ("quantity", row.quantity),
        ("stock", row.stock),
        ("material", row.material),
        ("thickness", f"{format_length(row.thickness, unit)} {unit}"),
        ("grain direction", _GRAIN[row.grain]),
        ("edging", "; ".join(edging) or "none"),
        ("lipping", ", ".join(row.lipped) or "none"),
        (CUT_STATE, shop.state),
        ("size as cut", _size(part.rough_size, unit)),
        ("finished size", _size(part.blank.size, unit)),
        ("face up", row.up),
        ("measured", row.reference),
        ("second side", row.second_side or "none"),
        ("before and after", "; ".join(row.notes) or "nothing"),
        ("worked later", "; ".join(dict.fromkeys(working_names(shop.later, unit))) or "nothing"),
    )


def _size(lengths: Vector, unit: LengthUnit) -> str:
    return f"{' x '.join(format_length(length, unit) for length in lengths)} {unit}"
