"""Names that other programs can take: safe file stems and the names shown in trees."""

from __future__ import annotations

import re
import unicodedata
from collections import Counter
from collections.abc import Iterable
from pathlib import PurePosixPath

from rodwright.handover.lists import PartsRow, parts_list
from rodwright.handover.shop_part import PartsKind
from rodwright.lengths import LengthUnit, to_inches
from rodwright.parts import Part, Stock, Unit

_LONGEST_STEM = 60
# Letters that don't fall apart into a plain one and a mark.
_LETTERS = str.maketrans({"ß": "ss", "ø": "o", "Ø": "O", "æ": "ae", "Æ": "AE", "ł": "l", "Ł": "L"})


def slug(text: str) -> str:
    """Text as a safe part of a file name: ASCII letters, digits and hyphens; may be empty."""
    decomposed = unicodedata.normalize("NFKD", text.translate(_LETTERS))
    plain = decomposed.encode("ascii", "ignore").decode()
    return re.sub(r"[^A-Za-z0-9]+", "-", plain).strip("-")[:_LONGEST_STEM].rstrip("-")


def row_name(row: PartsRow) -> str:
    """What the pieces of a row are called wherever they are named: first ref and name."""
    return f"{row.refs[0]} {row.name}".rstrip()


def file_paths(unit: Unit, kind: PartsKind) -> tuple[PurePosixPath, ...]:
    """Where the files of each row of the parts list go, without their ending.

    A folder for each stock and thickness, and in it ref, name, quantity and whether it is as
    cut or finished: ``birch-plywood-18/SD1-side-2x-cut``.  Plain letters only, and no two that
    differ by case alone, so that any file system takes them.
    """
    rows, folders = parts_list(unit), _folders(unit)
    stems = (
        "-".join(filter(None, (slug(row.refs[0]), slug(row.name).lower()))) or "part"
        for row in rows
    )
    names = _all_different(
        f"{stem}-{row.quantity}x-{kind}" for stem, row in zip(stems, rows, strict=True)
    )
    return tuple(
        PurePosixPath(folders[row.stock], name) for row, name in zip(rows, names, strict=True)
    )


def _folders(unit: Unit) -> dict[str, str]:
    """A folder for each stock, by the stock's name: what it is, and how thick.

    Stocks that are the same in both are told apart by their names.
    """
    stocks = {part.blank.stock.name: part.blank.stock for part in unit.parts}
    plain = {name: _folder(stock, unit.display_unit) for name, stock in stocks.items()}
    shared = Counter(folder.casefold() for folder in plain.values())
    full = [
        folder if shared[folder.casefold()] == 1 else "-".join(filter(None, (folder, slug(name))))
        for name, folder in plain.items()
    ]
    return dict(zip(plain, _all_different(full), strict=True))


def _folder(stock: Stock, unit: LengthUnit) -> str:
    what = slug(stock.described).lower() or slug(stock.name).lower() or "stock"
    if unit == "in":
        return f"{what}-{float(to_inches(stock.thickness)):.4g}in"
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
