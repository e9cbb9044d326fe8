"""Parts as a shop gets them: sizes and places worked out by hand."""

from __future__ import annotations

import pytest

from rodwright.handover.shop_part import ShopPart, shop_part
from rodwright.parts import (
    Blank,
    Box,
    Edging,
    Grain,
    Hole,
    Part,
    Placement,
    Role,
    Surface,
    Working,
)
from samples import ASH, X, Y
from specs import unit_from

LEVEL = Placement((0.0, 0.0, 0.0), X, Y)
ALL_ROUND = (Surface.FACE_EDGE, Surface.BACK_EDGE, Surface.NEAR_END, Surface.FAR_END)


def piece(
    *workings: Working,
    edged: tuple[Surface, ...] = (),
    thick: float = 2.0,
    trim: tuple[float, float] = (0.0, 0.0),
    trim_at: tuple[Surface, ...] = (),
    placement: Placement = LEVEL,
    role: Role = Role.SHELF,
) -> Part:
    """A 400 x 120 x 20 piece, its edging 2 mm."""
    blank = Blank(
        400.0, 120.0, 20.0, ASH, Grain.LENGTHWISE,
        trim_length=trim[0], trim_width=trim[1], trim_at=trim_at,
    )  # fmt: skip
    edging = tuple(Edging(surface, "birch veneer", thick) for surface in edged)
    return Part("X1", "Piece", role, "Sample", blank, placement, workings, edged=edging)


def cut(*workings: Working, edged: tuple[Surface, ...] = (), **more: object) -> ShopPart:
    return shop_part([piece(*workings, edged=edged, **more)])  # type: ignore[arg-type]


DOORS = """
size: {width: 700, height: 602, depth: 400}
stock:
  ply: {kind: sheet, material: birch plywood, thickness: 18, size: [2440, 1220]}
interior: {doors: {hung: overlay, count: 1}}
edging: {material: abs, thickness: 1, edges: [doors]}
"""


def test_a_door_with_edging_has_the_rough_size_of_the_list() -> None:
    unit = unit_from(DOORS)
    (door,) = (part for part in unit.parts if part.role is Role.DOOR)
    shop = shop_part([door])
    assert shop.part.blank.size == pytest.approx(door.rough_size)
    assert shop.part.blank.size[0] == pytest.approx(door.blank.length - 2)
    length, width, thickness = door.blank.size
    assert shop.finished.low == pytest.approx((-1, -1, 0))
    assert shop.finished.high == pytest.approx((length - 1, width - 1, thickness))
    assert shop.state == "as cut"
    cups = [each for each in shop.part.workings if isinstance(each, Hole) and each.depth]
    assert cups
    assert all(each.surface is Surface.FACE for each in cups)  # hinges are in the rear face
    assert shop.up == "rear face"
    whole = shop_part([door], "finished")
    assert whole.part.blank.size == door.blank.size
    assert whole.finished == Box((0.0, 0.0, 0.0), door.blank.size)
    assert whole.state == "finished"
    for before, after in zip(whole.part.workings, shop.part.workings, strict=True):
        assert isinstance(before, Hole)
        assert isinstance(after, Hole)
        assert after.position == pytest.approx([at - 1 for at in before.position])
