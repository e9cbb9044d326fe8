"""What tips a freestanding unit with its drawers drawn out: moments worked out by hand."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from kit.specs import problems_of, unit_from
from rodwright.checks import check_parts
from rodwright.checks.findings import Finding, Severity
from rodwright.checks.rules import Rule
from rodwright.checks.tipping import stability, tipping
from rodwright.geometry import Box
from rodwright.mass import unit_weight
from rodwright.unit import Blank, Grain, Opening, Part, Placement, Role, Slide, Stock, Unit

WATER = Stock("block", "sheet", "blocks", 100, Grain.NONE, 1000.0, "test", "#ffffff")


def _block(ref: str, low: tuple[float, float, float], size: tuple[float, float, float]) -> Part:
    blank = Blank(*size, WATER, Grain.NONE)
    return Part(ref, "Block", Role.SIDE, "Test", blank, Placement(low, (1, 0, 0), (0, 1, 0)))


def _unit(height: float = 500.0) -> Unit:
    """A block of 40 kg, 400 mm deep, over one of 10 kg that slides 300 mm forward.

    Drawn out, the moment about the front edge is 40 x 200 - 10 x 200 (its centre stands at
    -200), and the drawer's front stands 300 mm before that edge.
    """
    carcass = _block("SD1", (0, 0, 0), (1000, 400, 100))
    drawer = _block("FR1", (0, 0, 100), (500, 200, 100))
    return Unit(
        "Test",
        Box((0, 0, 0), (1000, 400, height)),
        (carcass, drawer),
        motions=(Slide(("FR1",), (0.0, -300.0, 0.0)),),
    )


def _only(unit: Unit) -> Finding:
    (found,) = tipping(unit)
    return found


def test_moments_about_the_front_feet() -> None:
    balance = stability(_unit())
    assert balance is not None
    assert balance.weight == pytest.approx(50.0)
    assert (balance.feet, balance.edge) == (0.0, -300.0)
    assert balance.load == pytest.approx((40 * 200 - 10 * 200) / 300)
    found = _only(_unit())
    assert found.figure == pytest.approx(20.0)
    assert found.limit == 22.7
    assert "20.0 kg on the front of one tips it over" in found.message
    assert "local rules" in found.remedy


def test_by_its_own_weight() -> None:
    """Drawn out by 1000 mm, 10 kg at -900 outweigh 40 kg at 200."""
    unit = replace(_unit(), motions=(Slide(("FR1",), (0.0, -1000.0, 0.0)),))
    found = _only(unit)
    assert found.figure == pytest.approx((40 * 200 - 10 * 900) / 1000)
    assert "by its own weight" in found.message


def test_without_drawers_height_alone_counts() -> None:
    still = replace(_unit(600.0), motions=())
    assert list(tipping(still)) == []
    higher = replace(still, envelope=Box((0, 0, 0), (1000, 400, 600.1)))
    assert _only(higher).limit == 600.0


def test_a_unit_in_an_opening_stands_fast() -> None:
    assert list(tipping(replace(_unit(), opening=Opening(1000, 600, 500)))) == []


@pytest.mark.parametrize(
    ("base", "feet"),
    [
        (None, 0.0),
        ({"kind": "plinth", "height": 80, "toe_space": 40}, 40.0),
        ({"kind": "plinth", "height": 80, "toe_space": 40, "levelling": 10}, 40.0),
        ({"kind": "toe_board", "height": 80, "toe_space": 50}, 50.0),
        ({"kind": "levellers", "height": 100, "board": {"toe_space": 45}}, 60.0),
    ],
)
def test_where_the_front_feet_stand(base: dict[str, Any] | None, feet: float) -> None:
    more = {"base": base} if base else {}
    unit = unit_from(
        "size: {width: 600, height: 700, depth: 500}\n", interior={"drawers": {"count": 2}}, **more
    )
    balance = stability(unit)
    assert balance is not None
    assert balance.feet == pytest.approx(feet)


WALL_CABINET = "size: {width: 600, height: 720, depth: 320}\ncarcass: {stock: ply}\n"


def test_a_wall_cabinet_hangs_and_does_not_tip() -> None:
    """It weighs 12 kg or so; what it is hung by is a back 9 mm thick (common practice)."""
    rules = {each.rule: each for each in check_parts(unit_from(WALL_CABINET))}
    assert "`hung: true`" in rules[Rule.TALL_AND_FREESTANDING].remedy
    assert Rule.HANGING not in rules
    hung = unit_from(WALL_CABINET + "hung: true\n")
    rules = {each.rule: each for each in check_parts(hung)}
    assert Rule.TALL_AND_FREESTANDING not in rules
    assert rules[Rule.HANGING].severity is Severity.CAUTION
    assert rules[Rule.HANGING].figure == pytest.approx(unit_weight(hung))
    assert "local codes" in rules[Rule.HANGING].remedy
    assert rules[Rule.NOTHING_TO_HANG_BY].figure == 0.0


@pytest.mark.parametrize(("thickness", "told"), [(9, False), (8.9, True)])
def test_a_wall_cabinet_hangs_by_its_back(thickness: float, told: bool) -> None:
    text = f"""{WALL_CABINET}hung: true
back: {{stock: rear}}
stock:
  ply: {{kind: sheet, material: birch plywood, thickness: 18}}
  rear: {{kind: sheet, material: birch plywood, thickness: {thickness}}}
"""
    found = [each for each in check_parts(unit_from(text)) if each.rule is Rule.NOTHING_TO_HANG_BY]
    assert len(found) == told
    for each in found:
        assert (each.figure, each.limit) == (thickness, 9.0)


def test_what_hangs_stands_on_no_base() -> None:
    text = WALL_CABINET + "hung: true\nbase: {kind: plinth, height: 80}\n"
    assert problems_of(text) == ["hung: a unit that hangs on the wall stands on no base"]
