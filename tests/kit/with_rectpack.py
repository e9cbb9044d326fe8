"""How few sheets rectpack needs, an open library for packing rectangles that isn't ours."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import product
from typing import Any

import rectpack

from rodwright.cutting import Piece, Supply

PACKERS = (
    rectpack.GuillotineBssfSas,
    rectpack.GuillotineBafLas,
    rectpack.GuillotineBlsfMinas,
    rectpack.MaxRectsBl,
    rectpack.MaxRectsBssf,
    rectpack.MaxRectsBaf,
    rectpack.MaxRectsBlsf,
    rectpack.SkylineBl,
    rectpack.SkylineBlWm,
    rectpack.SkylineMwf,
    rectpack.SkylineMwfl,
    rectpack.SkylineMwfWm,
)
SORTS = (rectpack.SORT_AREA, rectpack.SORT_LSIDE, rectpack.SORT_SSIDE, rectpack.SORT_PERI)
CHOICES = (rectpack.PackingBin.BBF, rectpack.PackingBin.BFF)
FINEST = 10_000
"""It reckons in whole numbers: parts of a millimetre."""


def fewest_sheets(
    pieces: Sequence[Piece], sheet: Supply, *, kerf: float = 0.0, turning: bool = False
) -> int | None:
    """The least number of equal sheets by any of its ways; None if it places not all.

    It knows no kerf, so pieces and what is left of a trimmed sheet are larger by one; and it
    turns all pieces or none, so it may turn them only where all may be turned.
    """
    assert not sheet.flaws
    turns = all(turning if piece.turning is None else piece.turning for piece in pieces)
    trim = sheet.trim
    room = (
        _whole(sheet.length - trim.near - trim.far + kerf),
        _whole(sheet.width - trim.face - trim.back + kerf),
    )
    sizes = [
        (_whole(piece.length + kerf), _whole(piece.width + kerf))
        for piece in pieces
        for _ in range(piece.count)
    ]
    found = (
        _sheets(sizes, room, pack_algo=packer, sort_algo=sort, bin_algo=choice, rotation=turns)
        for packer, sort, choice in product(PACKERS, SORTS, CHOICES)
    )
    return min((many for many in found if many is not None), default=None)


def _whole(length: float) -> int:
    return round(length * FINEST)


def _sheets(sizes: Sequence[tuple[int, int]], room: tuple[int, int], **rules: Any) -> int | None:
    packer = rectpack.newPacker(**rules)
    for size in sizes:
        packer.add_rect(*size)
    packer.add_bin(*room, count=len(sizes))
    packer.pack()
    return len(packer) if len(packer.rect_list()) == len(sizes) else None
