"""The pack: every file for the shop in one zip, the same bytes for the same unit."""

from __future__ import annotations

import hashlib
import io
from collections.abc import Mapping
from datetime import datetime
from pathlib import Path
from tempfile import TemporaryDirectory
from zipfile import ZIP_DEFLATED, ZipFile, ZipInfo

from rodwright.cnc.dxf import shapes_dxf
from rodwright.cnc.nested import NestedSheet
from rodwright.cnc.part_shapes import PartShapes
from rodwright.cnc.shop_page import Contents, page_data, parts_csv
from rodwright.handover.json_text import json_text
from rodwright.handover.names import slug
from rodwright.handover.step import write_step_part
from rodwright.paper.book.whole import usual_paper
from rodwright.paper.typesetting import typeset
from rodwright.unit import Unit

MANIFEST = "manifest.json"
PAGE = "read-me-first.pdf"
_OLDEST = (1980, 1, 1, 0, 0, 0)
"""The earliest time that a zip file can bear (PKWARE's APPNOTE, 4.4.6, MS-DOS format)."""
_PLAIN_FILE = 0o100644 << 16
_LONGEST = 40


def pack_files(contents: Contents, when: datetime) -> dict[str, bytes]:
    """Every file of a pack but its manifest, by its name; ``when`` is the date of its page.

    Raises:
        ProblemsError: Typst isn't installed, or SOURCE_DATE_EPOCH is set and is no time.
        ValueError: a part's workings leave no single solid.
    """
    files: dict[str, bytes] = {}
    for each in contents.drawn:
        files |= _part(contents.unit, each)
    names = _sheet_names(contents.sheets)
    for sheet, name in zip(contents.sheets, names, strict=True):
        files[name] = shapes_dxf(sheet.shapes)
    data = page_data(contents, names, usual_paper(contents.unit))
    (files[PAGE],) = typeset("shop-page", data, {}, when=when)
    files["parts.csv"] = parts_csv(contents)
    return files


def manifest(unit: Unit, files: Mapping[str, bytes]) -> bytes:
    """What is in a pack: each file with its size and SHA-256, and which design it is of."""
    return json_text(
        {
            "title": unit.title,
            "number": unit.number,
            "revision": unit.revision,
            "date": unit.date,
            "lengths": "mm",
            "files": {
                name: {"bytes": len(files[name]), "sha256": hashlib.sha256(files[name]).hexdigest()}
                for name in sorted(files)
            },
        }
    )


def zipped(files: Mapping[str, bytes], when: datetime) -> bytes:
    """Files as one zip, in the order of their names; the same bytes for the same files."""
    stamp = max((when.year, when.month, when.day, 0, 0, 0), _OLDEST)
    made = io.BytesIO()
    with ZipFile(made, "w", ZIP_DEFLATED) as archive:
        for name in sorted(files):
            info = ZipInfo(name, stamp)
            info.compress_type = ZIP_DEFLATED
            info.external_attr = _PLAIN_FILE
            info.create_system = 3  # Unix, wherever it is made
            archive.writestr(info, files[name])
    return made.getvalue()


def _part(unit: Unit, drawn: PartShapes) -> dict[str, bytes]:
    """A part's files: DXF of each side that is worked, and STEP."""
    name = f"parts/{drawn.product.file}"
    files = {f"{name}.dxf": shapes_dxf((*drawn.cut, *drawn.texts))}
    if drawn.reverse:
        files[f"{name}-second-side.dxf"] = shapes_dxf(drawn.reverse)
    with TemporaryDirectory() as place:
        path = Path(place) / "part.step"
        write_step_part(unit, drawn.product, path)
        files[f"{name}.step"] = path.read_bytes()
    return files


def _sheet_names(sheets: tuple[NestedSheet, ...]) -> tuple[str, ...]:
    """A name for each sheet's file: its lot's number and name, and its own number."""
    lots = list(dict.fromkeys(sheet.lot.name for sheet in sheets))
    return tuple(
        f"sheets/{lots.index(sheet.lot.name) + 1}-"
        f"{slug(sheet.lot.name, _LONGEST).lower() or 'stock'}-sheet-{sheet.number}.dxf"
        for sheet in sheets
    )
