"""What fails has something that would help, and that is worked out as it would be made."""

from __future__ import annotations

import re
from typing import Any

import pytest

from kit.specs import unit_from
from rodwright.strength import strength_of
from rodwright.strength.ground import ON_FLOOR, ground
from rodwright.strength.hanging import CARRIES, RAIL_BENDS, hanging
from rodwright.strength.levels import levels
from rodwright.strength.pin_results import HOLES
from rodwright.strength.racking import FRONT_TO_BACK, racking
from rodwright.strength.results import Remedy, Result
from rodwright.unit import Role, Unit

SHELVES = """
size: {{width: 1236, height: 900, depth: 300}}
interior: {{shelves: {{count: 1, fixed: false}}}}
loads: {}
"""


def _pins(load: str) -> Result:
    unit = unit_from(SHELVES.format(load))
    shelf = next(part for part in unit.parts if part.role is Role.SHELF)
    return next(each for each in levels(unit) if shelf.ref in each.parts and each.what == HOLES)


def _told(result: Result, told: str) -> Remedy:
    (found,) = (each for each in result.remedies if re.search(told, each.what))
    return found


def test_pins_that_crush_their_holes() -> None:
    """Twice as many carry half each; what they bear at most is what then holds."""
    result = _pins("150 kg/m")
    assert not result.holds and result.figure is not None
    assert _told(result, "4 pins").figure == pytest.approx(result.figure / 2)
    less = _told(result, "no more than")
    assert less.holds
    most = int(re.findall(r"\d+", less.what)[0])
    assert _pins(f"{most} kg/m").figure == pytest.approx(less.figure, rel=1e-6)
    assert _pins(f"{most} kg/m").holds and not _pins(f"{most + 1} kg/m").holds


def test_pins_in_deeper_holes_by_hand() -> None:
    """F/(d l), l = sqrt((2 e + h)^2 + h^2) - 2 e - h, with h to 4 mm of an 18 mm side's back."""
    result = _pins("150 kg/m")
    given = {each.symbol: each.value for each in result.inputs}
    out = 2 * given["e"] + 14
    by_hand = given["F"] / (given["d"] * ((out**2 + 14**2) ** 0.5 - out))
    assert _told(result, "14 mm deep").figure == pytest.approx(by_hand)


HEAVY = "size: {width: 900, height: 2000, depth: 400}\nloads: 90 kg/m\n"
MANY = {"shelves": {"count": 6, "fixed": True}}


def test_a_floor_that_carries_too_much() -> None:
    """W/(B (D + A)): with as much less in it as the remedy says, or as much free before it."""
    (result,) = (each for each in ground(unit_from(HEAVY, interior=MANY)) if each.what == ON_FLOOR)
    assert not result.holds
    given = {each.symbol: each.value for each in result.inputs}
    less, free = result.remedies
    assert less.holds and 149 < less.figure <= 150
    before = int(re.findall(r"\d+", free.what)[0])
    area = given["B"] * (given["D"] + before) / 1e6
    assert free.figure == pytest.approx(given["W"] / area)
    assert free.holds


HUNG = "size: {width: 1200, height: 600, depth: 350}\nhung: true\nwall: masonry\n"


def _hung(what: str, load: str, **more: Any) -> Result:
    shelves = {"shelves": {"count": 3, "fixed": True}}
    unit = unit_from(HUNG + f"loads: {load}", interior=shelves, **more)
    return next(each for each in hanging(unit) if each.what == what)


def test_a_rail_to_hang_by_that_is_too_thin() -> None:
    result = _hung(RAIL_BENDS, "130 kg/m")
    assert not result.holds and result.figure is not None
    thicker, *higher = result.remedies
    thick = int(re.findall(r"x (\d+) mm", thicker.what)[0])
    assert thicker.figure == pytest.approx(result.figure * (22 / thick) ** 2)
    assert thicker.holds
    assert [each.figure for each in higher] == [
        pytest.approx(result.figure / 1.5),
        pytest.approx(result.figure / 2),
    ]


def test_a_cabinet_heavier_than_what_is_tried() -> None:
    result = _hung(CARRIES, "130 kg/m")
    assert not result.holds and result.figure is not None and result.limit is not None
    less, two = result.remedies
    assert result.limit - 1 < less.figure <= result.limit
    assert two.figure == pytest.approx(result.figure / 2)


def test_plasterboard_alone_tells_what_studs_take() -> None:
    unit = unit_from(HUNG.replace("masonry", "plasterboard") + "loads: 20 kg/m")
    result = next(each for each in hanging(unit) if "plasterboard" in each.what)
    assert not result.holds
    assert re.fullmatch(
        r"\d+ screws 6 x 80 mm into studs, or a batten across them", result.remedies[0].what
    )


def test_legs_that_sway_too_far_to_the_front() -> None:
    """Shorter ones are found so that they just do, and made so they do."""
    size = "size: {width: 900, height: 1100, depth: 350}\nloads: 60 kg/m\n"

    def sway(high: float) -> Result:
        base = {"kind": "legs", "height": high, "stock": "oak"}
        return next(
            each for each in racking(unit_from(size, base=base)) if each.what == FRONT_TO_BACK
        )

    found = next(each for each in map(sway, (300, 400, 500)) if not each.holds)
    shorter, wall = found.remedies
    assert wall.figure == 0 and shorter.holds
    assert shorter.figure <= found.limit  # type: ignore[operator]


GLAZED = """
size: {width: 1236, height: 900, depth: 300}
stock:
  ply: {kind: sheet, material: birch plywood, thickness: 18, size: [2440, 1220]}
  ash: {kind: board, material: european ash, thickness: 22}
  pane: {kind: sheet, material: glass, thickness: 6, size: [2440, 1220]}
back: {stock: ply, fixing: applied}
interior: {shelves: {count: 1, fixed: false, stock: pane}}
loads: 30 kg/m
"""


def test_nothing_is_glued_to_glass() -> None:
    fails = [
        each
        for each in levels(unit_from(GLAZED))
        if not each.holds and each.parts[0].startswith("SH")
    ]
    told = [remedy.what for each in fails for remedy in each.remedies]
    assert told
    assert not [each for each in told if "glued" in each or "screwed" in each]


def test_a_television_is_told_by_its_weight_and_not_by_the_metre() -> None:
    def sag(load: str) -> Result:
        return next(
            each
            for each in levels(unit_from(SHELVES.format(load)))
            if each.parts[0].startswith("SH") and "after" in each.what
        )

    (less,) = (each for each in sag("television 90 kg").remedies if "on it" in each.what)
    most = int(re.findall(r"no more than (\d+) kg on it", less.what)[0])
    assert sag(f"television {most} kg").figure == pytest.approx(less.figure)
    assert not sag(f"television {most + 1} kg").holds


METRIC = re.compile(r"\d ?(?:mm|kg|N|N/mm2|kg/m2)\b(?!3)")


@pytest.mark.parametrize("hung", [True, False])
@pytest.mark.parametrize("wall", ["masonry", "studs", "plasterboard"])
def test_a_maker_in_inches_is_told_in_inches(hung: bool, wall: str) -> None:
    """No note, no remedy and no input tells a length in mm or a weight in kg."""
    text = f"unit: in\nsize: {{width: 40, height: 30, depth: 14}}\nhung: {hung}\nwall: {wall}\n"
    shelves = {"shelves": {"count": 2, "fixed": True}}
    unit: Unit = unit_from(
        text.lower() + "loads: 90 lb/ft",
        interior=shelves,
        stock=INCHES,
        carcass={"stock": "ply", "corners": "butted"},
    )
    for result in strength_of(unit):
        told = [*result.notes, *(each.what for each in (*result.inputs, *result.remedies))]
        assert not [each for each in told if METRIC.search(each)], result.what


INCHES = {
    "ply": {"kind": "sheet", "material": "birch plywood", "thickness": 0.75, "size": [96, 48]},
}
