"""What a unit encloses, and whether the published test is meant for it, just in and just out."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit.blocks import block, unit_of_blocks
from kit.specs import unit_from
from rodwright.strength.storage import (
    Scope,
    clothing,
    enclosed_volume,
    scope_of,
    scope_result,
)
from rodwright.unit import Load, Opening, Role, Slide, Swing, Unit

HEIGHT, MASS, VOLUME = 27 * 25.4, 30 * 0.45359237, 3.2 * 28.316846592
"""27 in, 30 lb and 3.2 ft3, as ASTM F2057-23 has them."""


@pytest.mark.parametrize("off", [0, 1, 2])
@pytest.mark.parametrize("out", [False, True])
def test_just_in_and_just_out(off: int, out: bool) -> None:
    figures = [HEIGHT, MASS, VOLUME]
    figures[off] *= 1 - 1e-6 if out else 1 + 1e-6
    rounded = [figure * (1 + 1e-9) for figure in figures]
    assert Scope(*rounded, free=True).within is not out
    assert not Scope(*rounded, free=False).within


def test_what_is_said_of_it() -> None:
    assert Scope(HEIGHT + 1, MASS + 1, VOLUME + 1, True).said.startswith("within the scope")
    assert "a bookcase" in Scope(2000, 60, 0.0, True).said
    assert "built in" in Scope(2000, 60, 500, False).said
    low = Scope(HEIGHT - 1, MASS + 1, VOLUME - 1, True).said
    assert low == "outside the scope of ASTM F2057-23 by its height and enclosed volume"


def drawer() -> Unit:
    """A drawer 400 x 300 inside, its bottom's face 60 below the rail over it, in a block of a
    cabinet: 400 x 300 x (60 - 3.175) = 6.819 dm3."""
    parts = (
        block("DRS1", (0, 20, 0), (10, 300, 50), Role.DRAWER_SIDE, "Drawer 1"),
        block("DRS2", (410, 20, 0), (10, 300, 50), Role.DRAWER_SIDE, "Drawer 1"),
        block("DRE1", (0, 10, 0), (420, 10, 50), Role.DRAWER_END, "Drawer 1"),
        block("DRE2", (0, 320, 0), (420, 10, 50), Role.DRAWER_END, "Drawer 1"),
        block("DRB1", (0, 10, 0), (420, 320, 10), Role.DRAWER_BOTTOM, "Drawer 1"),
        block("CR1", (0, 0, 70), (420, 50, 20), Role.CARCASS_RAIL, "Carcass"),
    )
    refs = tuple(part.ref for part in parts[:-1])
    return unit_of_blocks(*parts, motions=(Slide(refs, (0.0, -300.0, 0.0)),))


def test_a_drawer_counts_up_to_an_eighth_below_what_is_over_it() -> None:
    unit = drawer()
    volume = 0.4 * 0.3 * (0.06 - 0.003175) * 1000
    assert enclosed_volume(unit) == pytest.approx(volume)
    (load,) = clothing(unit)
    assert load.ref == "DRB1"
    assert load.assumed
    # 8.5 lb a cubic foot, from memory of ASTM F2057-23, 9.2.1.
    assert load.mass == pytest.approx(volume / 28.316846592 * 8.5 * 0.45359237)


def test_half_counts_of_what_stands_still_behind_doors() -> None:
    """A door 500 x 800 before a cabinet 300 deep inside: 120 dm3, of which half."""
    parts = (
        block("SD1", (0, 0, 0), (18, 300, 800), Role.SIDE),
        block("SD2", (482, 0, 0), (18, 300, 800), Role.SIDE),
        block("BK1", (0, 300, 0), (500, 6, 800), Role.BACK),
        block("DO1", (0, -20, 0), (500, 20, 800), Role.DOOR, "Door 1"),
    )
    unit = unit_of_blocks(*parts, motions=(Swing(("DO1",), (0.0, 0.0), -110.0),))
    assert enclosed_volume(unit) == pytest.approx(60.0)


def test_the_result_says_height_mass_and_volume() -> None:
    unit = unit_from(
        "size: {width: 900, height: 800, depth: 500}\n", interior={"drawers": {"count": 3}}
    )
    scope = scope_of(unit)
    assert scope.within
    result = scope_result(unit)
    assert result.figure == pytest.approx(scope.volume)
    assert result.limit is None
    assert result.notes[0].startswith("within the scope of ASTM F2057-23")
    # Its inside is 864 x 500 x 764 = 330 dm3: drawers fill most of it.
    assert 150 < scope.volume < 330
    assert not scope_of(replace(unit, opening=Opening(910, 810, 500))).within


def test_a_load_said_of_a_drawer_comes_before_clothing() -> None:
    from rodwright.strength.tipping import PULLED, tipping
    from rodwright.unit import Loading, Lump

    unit = drawer()
    said = Load("DRB1", "tools", (), (Lump(210.0, 40.0),))
    loaded = replace(unit, loading=Loading((said,)))
    (pulled,) = (each for each in tipping(loaded) if each.what == PULLED)
    assert not any("clothing" in note for note in pulled.notes)
    (assumed,) = (each for each in tipping(unit) if each.what == PULLED)
    assert any("clothing" in note for note in assumed.notes)
