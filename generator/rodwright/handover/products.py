"""Distinct parts as other programs see them: what they are called, and what is said of them.

Each row of the parts list is one product.  Its name is made here once, for the unit's STEP
file, the part's own files and their names; :mod:`rodwright.handover.names` makes the same
name for the list.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import PurePosixPath

from rodwright.handover.lists import PartsRow, like_parts, parts_list
from rodwright.handover.names import file_paths, row_name
from rodwright.handover.working_names import working_names
from rodwright.lengths import LengthUnit, format_length
from rodwright.parts import Grain, Part, Unit

Property = tuple[str, str | int]
"""Name and value."""

FINISHED = "finished size"
"""The cut state of a piece that is drawn as it will be when all is done."""

_GRAIN = {
    Grain.LENGTHWISE: "lengthwise, along x",
    Grain.CROSSWISE: "crosswise, along y",
    Grain.NONE: "none",
}


@dataclass(frozen=True, slots=True)
class Product:
    """A distinct part: a row of the parts list, one product in STEP, one file of a kind.

    ``parts`` are its pieces, all alike; ``name`` begins with the first one's ref.
    ``workings`` are short names of its workings, in their order.  ``file`` is where its
    files go below the folder of parts, without their ending.
    """

    parts: tuple[Part, ...]
    ref: str
    name: str
    description: str
    properties: tuple[Property, ...]
    workings: tuple[str, ...]
    file: PurePosixPath


def products(unit: Unit) -> tuple[Product, ...]:
    """The unit's distinct parts, in the order of the parts list."""
    shown = unit.display_unit
    return tuple(
        Product(
            parts=parts,
            ref=row.refs[0],
            name=row_name(row),
            description=_description(row, shown),
            properties=_properties(row, parts[0], shown),
            workings=working_names(parts[0].workings, shown),
            file=file,
        )
        for parts, row, file in zip(
            like_parts(unit), parts_list(unit), file_paths(unit), strict=True
        )
    )


def _description(row: PartsRow, unit: LengthUnit) -> str:
    return f"{row.quantity} off, {row.material} {format_length(row.thickness, unit)} {unit}"


def _properties(row: PartsRow, part: Part, unit: LengthUnit) -> tuple[Property, ...]:
    edging = [
        f"{where}: {each.called} {format_length(each.thickness, unit)} {unit}"
        for where, each in zip(row.edged, part.edged, strict=True)
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
        ("finished size", _size((row.length, row.width, row.thickness), unit)),
        ("cut state", FINISHED),
    )


def _size(lengths: Sequence[float], unit: LengthUnit) -> str:
    return f"{' x '.join(format_length(length, unit) for length in lengths)} {unit}"
