"""Names that other programs can take: safe file stems and the names shown in trees."""

from __future__ import annotations

import re
import unicodedata
from collections import Counter
from collections.abc import Iterable, Sequence
from pathlib import PurePosixPath

from rodwright.handover.lists import common_name, like_parts
from rodwright.lengths import LengthUnit, format_length
from rodwright.unit import Part, Stock, Unit
from rodwright.unit.shop_part import PartsKind

_LONGEST = 60
_LONGEST_REF, _LONGEST_NAME, _LONGEST_STOCK = 20, 40, 40
"""Letters of each in a file's name: with its folder, well within the 260 of a path on Windows."""
# Letters that don't fall apart into a plain one and a mark.
_LETTERS = str.maketrans({"ß": "ss", "ø": "o", "Ø": "O", "æ": "ae", "Æ": "AE", "ł": "l", "Ł": "L"})


def slug(text: str, longest: int = _LONGEST) -> str:
    """Text as a safe part of a file name: ASCII letters, digits and hyphens; may be empty."""
    decomposed = unicodedata.normalize("NFKD", text.translate(_LETTERS))
    plain = decomposed.encode("ascii", "ignore").decode()
    return re.sub(r"[^A-Za-z0-9]+", "-", plain).strip("-")[:longest].rstrip("-")


def row_name(parts: Sequence[Part]) -> str:
    """What the pieces of a row are called wherever they are named: first ref and name."""
    return f"{parts[0].ref} {common_name([part.name for part in parts])}".rstrip()


def file_paths(unit: Unit, kind: PartsKind) -> tuple[PurePosixPath, ...]:
    """Where the files of each row of the parts list go, without their ending.

    A folder for each stock and thickness, and in it ref, name, quantity, stock and whether it is
    as cut or finished, so that a file sent on alone still says it all:
    ``birch-plywood-18/SD1-side-2x-birch-plywood-18-cut``.  Plain letters only, and no two that
    differ by case alone, so that any file system takes them.
    """
    rows, by_stock = like_parts(unit), _folders(unit)
    folders = [by_stock[parts[0].blank.stock.name] for parts in rows]
    names = _all_different(
        f"{_stem(parts)}-{len(parts)}x-{folder}-{kind}"
        for parts, folder in zip(rows, folders, strict=True)
    )
    return tuple(map(PurePosixPath, folders, names))


def _stem(parts: Sequence[Part]) -> str:
    name = common_name([part.name for part in parts])
    return (
        "-".join(
            filter(None, (slug(parts[0].ref, _LONGEST_REF), slug(name, _LONGEST_NAME).lower()))
        )
        or "part"
    )


def _folders(unit: Unit) -> dict[str, str]:
    """A folder for each stock, by the stock's name: what it is, and how thick.

    Stocks that are the same in both are told apart by their names.
    """
    stocks = {part.blank.stock.name: part.blank.stock for part in unit.parts}
    plain = {name: _folder(stock, unit.display_unit) for name, stock in stocks.items()}
    shared = Counter(folder.casefold() for folder in plain.values())
    full = [
        folder
        if shared[folder.casefold()] == 1
        else "-".join(filter(None, (folder, slug(name, _LONGEST_STOCK))))
        for name, folder in plain.items()
    ]
    return dict(zip(plain, _all_different(full), strict=True))


def _folder(stock: Stock, unit: LengthUnit) -> str:
    what = (
        slug(stock.described, _LONGEST_STOCK).lower()
        or slug(stock.name, _LONGEST_STOCK).lower()
        or "stock"
    )
    if unit == "in":
        inches = format_length(stock.thickness, unit)
        return f"{what}-{inches.replace(' ', '-').replace('/', '-')}in"
    return f"{what}-{round(stock.thickness, 2):g}"


def _all_different(names: Iterable[str]) -> tuple[str, ...]:
    """Names that stay apart where capital and small letters are the same."""
    found: list[str] = []
    taken: set[str] = set()
    for plain in names:
        name, number = plain, 1
        while name.casefold() in taken:
            number += 1
            name = f"{plain}-{number}"
        taken.add(name.casefold())
        found.append(name)
    return tuple(found)


def shown_name(part: Part) -> str:
    """Ref and name, as a tree of parts shows them."""
    return f"{part.ref} {part.name}"


def groups(unit: Unit) -> dict[str, tuple[Part, ...]]:
    """The unit's parts by group, in the order in which groups first occur."""
    gathered: dict[str, list[Part]] = {}
    for part in unit.parts:
        gathered.setdefault(part.group, []).append(part)
    return {name: tuple(parts) for name, parts in gathered.items()}
