"""The files of single parts: one for each row of the parts list, in a folder for each stock."""

from __future__ import annotations

from pathlib import Path

from rodwright.handover.products import Product, products
from rodwright.handover.step import write_step_part
from rodwright.handover.stl import part_stl, titled
from rodwright.unit import Unit
from rodwright.unit.shop_part import PartsKind


def write_parts_step(unit: Unit, kind: PartsKind, folder: Path) -> None:
    """Write each distinct part as STEP, as cut or as finished.

    Raises:
        OSError: a file can't be written.
        ProblemsError: SOURCE_DATE_EPOCH is set, and is no time.
        RuntimeError: Open CASCADE can't write a piece.
        ValueError: a part's workings leave no single solid.
    """
    for product in products(unit, kind):
        write_step_part(unit, product, _path(folder, product, "step"))


def write_parts_stl(unit: Unit, kind: PartsKind, folder: Path) -> None:
    """Write each distinct part as STL, as cut or as finished.

    Raises:
        OSError: a file can't be written.
        ValueError: a part has no single closed solid.
    """
    for product in products(unit, kind):
        content = titled(part_stl(product.shop.part.shape), product.title)
        _path(folder, product, "stl").write_bytes(content)


def _path(folder: Path, product: Product, suffix: str) -> Path:
    """A part's file, in a folder that is made for it."""
    place = folder / product.file
    place.parent.mkdir(parents=True, exist_ok=True)
    # A thickness may have a point, so that these names have no suffix to replace.
    return place.with_name(f"{place.name}.{suffix}")
