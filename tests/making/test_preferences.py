"""What a maker would sooner do first."""

from __future__ import annotations

from kit.blocks import block, unit_of_blocks
from kit.specs import unit_from
from rodwright.making.preferences import BACK, CARCASS, DOORS, LOOSE, hand_of, stage
from rodwright.making.sub_assemblies import pieces_of


def test_stages_of_what_a_unit_is_made_of() -> None:
    unit = unit_from("""
size: {width: 800, height: 900, depth: 300}
carcass: {stock: ply, corners: housed}
interior: {shelves: {count: 1, fixed: false}, doors: {count: 1}}
back: {stock: thin}
""")
    refs = {part.ref for part in unit.parts}
    stages = {piece.refs[0]: stage(unit, piece, refs) for piece in pieces_of(unit)}
    assert stages == {
        "SD1": CARCASS,
        "SD2": CARCASS,
        "BT1": CARCASS,
        "TP1": CARCASS,
        "BK1": BACK,
        "DO1": DOORS,
        "SH1": LOOSE,
    }
    assert CARCASS < BACK < DOORS < LOOSE


def test_a_unit_and_its_mirror_image_have_opposite_hands_if_they_differ() -> None:
    wide, narrow = (100, 100, 100), (50, 100, 100)
    left = unit_of_blocks(block("SD1", (0, 0, 0), wide), block("SD2", (200, 0, 0), narrow))
    right = unit_of_blocks(block("SD1", (0, 0, 0), narrow), block("SD2", (150, 0, 0), wide))
    even = unit_of_blocks(block("SD1", (0, 0, 0), wide), block("SD2", (200, 0, 0), wide))
    assert hand_of(left) == -hand_of(right)
    assert hand_of(even) == 1
