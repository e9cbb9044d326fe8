"""Room for a driver behind screws from inside the carcass; common practice, no source."""

from __future__ import annotations

from typing import Any

import pytest

from kit.specs import of_role, unit_from
from rodwright.checks.driving import driving
from rodwright.checks.rules import Rule
from rodwright.unit import JointKind, Role, Unit

SIZE = "size: {width: 900, height: 900, depth: 330}\n"
PLINTH = {"kind": "plinth", "height": 80}
CORNICE = {"stock": "ash", "height": 60, "rise": 10}


def _unit(text: str = SIZE, **more: Any) -> Unit:
    return unit_from(text, **({"carcass": {"stock": "ply"}} | more))


def _rows(*heights: object) -> dict[str, Any]:
    return {"rows": [{"height": height} for height in heights]}


@pytest.mark.parametrize(("height", "told"), [(40, True), (99, True), (100, False), (300, False)])
def test_down_through_the_bottom_under_a_low_shelf(height: int, told: bool) -> None:
    """The lowest opening is what lies between the bottom, which is screwed down, and a shelf."""
    found = list(driving(_unit(base=PLINTH, interior=_rows("1 share", height))))
    lower = list(driving(_unit(base=PLINTH, interior=_rows(height, "1 share"))))
    assert [len(found), len(lower)].count(1) == told
    for each in (*found, *lower):
        assert each.figure == pytest.approx(height)
        assert each.parts[0] == "BT1"
        assert each.rule is Rule.NO_ROOM_FOR_DRIVER
        assert "drive them before SH1 goes in" in each.remedy


def test_shelves_that_are_laid_in_come_out() -> None:
    shelves = {"at": [40], "fixed": False}
    assert not list(driving(_unit(base=PLINTH, interior={"shelves": shelves})))


@pytest.mark.parametrize(("width", "told"), [(50, True), (99, True), (100, False), (200, False)])
@pytest.mark.parametrize("side", ["left", "right"])
def test_through_a_side_from_a_narrow_column(width: int, told: bool, side: str) -> None:
    columns: list[dict[str, object]] = [{"width": width}, {"width": "1 share"}]
    unit = _unit(
        cornice=CORNICE, interior={"columns": columns if side == "left" else columns[::-1]}
    )
    found = list(driving(unit))
    assert [each.figure for each in found] == ([pytest.approx(width)] if told else [])
    for each in found:
        assert each.parts[0] == ("SD1" if side == "left" else "SD2")
        assert each.parts[-1] == "DV1"


def test_no_screw_goes_down_where_a_divider_stands() -> None:
    """The cross member in the middle is under the divider: plinth front and back hold it."""
    half = [{"width": "1 share"}, {"width": "1 share"}]
    unit = _unit(base=PLINTH, interior={"columns": half})
    assert not list(driving(unit))
    (cross,) = (each for each in of_role(unit, Role.PLINTH) if "cross" in each.name)
    (divider,) = of_role(unit, Role.DIVIDER)
    assert cross.bounds().low[0] == divider.bounds().low[0]
    kinds = {joint.first: joint.kind for joint in unit.joints if joint.second == cross.ref}
    assert kinds == {"PL1": JointKind.SCREWED, "PL2": JointKind.SCREWED, "BT1": JointKind.STANDING}
    third = [{"width": "1 share"}, {"width": "2 shares"}]
    unit = _unit(base=PLINTH, interior={"columns": third})
    (cross,) = (each for each in of_role(unit, Role.PLINTH) if "cross" in each.name)
    kinds = {joint.first: joint.kind for joint in unit.joints if joint.second == cross.ref}
    assert kinds["BT1"] is JointKind.SCREWED
