"""Spaces: dividers and rails where they are needed, and the openings left in the front."""

from __future__ import annotations

from typing import Any

import pytest

from kit.specs import of_role, problems_of, unit_from
from rodwright.checks import check_solids
from rodwright.unit import Easing, Role

SIZE = "size: {width: 1236, height: 1036, depth: 300}\n"
"""Clear inside in 18 mm stock: 1200 x 1000."""


def _columns(*spaces: dict[str, Any], **more: Any) -> dict[str, Any]:
    return {"columns": [{"width": "1 share"} | space for space in spaces], **more}


def test_dividers_of_part_height_stand_on_the_floor_of_their_space() -> None:
    unit = unit_from(SIZE, interior=_columns({}, {}, {}, dividers={"height": 400, "setback": 30}))
    dividers = of_role(unit, Role.DIVIDER)
    assert [part.bounds().high[2] for part in dividers] == [418.0, 418.0]
    assert {part.blank.size for part in dividers} == {(400.0, 270.0, 18.0)}
    assert check_solids(unit) == ()


def test_shelves_beside_part_height_dividers_stay_below_their_tops() -> None:
    low = {"shelves": {"at": [382]}}
    assert not problems_of(
        SIZE, interior=_columns({"shelves": {"at": [381]}}, {}, dividers={"height": 400})
    )
    (problem,) = problems_of(SIZE, interior=_columns(low, {}, dividers={"height": 400}))
    assert "doesn't fit under 400" in problem


def test_dividers_may_have_stock_of_their_own() -> None:
    unit = unit_from(SIZE, interior=_columns({}, {}, dividers={"stock": "thin"}))
    (divider,) = of_role(unit, Role.DIVIDER)
    assert divider.blank.thickness == 6.0
    assert divider.bounds().low[0] == 18 + (1200 - 6) / 2


@pytest.mark.parametrize(
    ("interior", "says"),
    [
        (_columns({}, {}, dividers={"height": 1001}), "dividers 1001 mm high don't fit"),
        (_columns({}, {}, dividers={"setback": 300}), "no depth left"),
        (
            {"rows": [_columns({}, {}) | {"height": 300}, {"height": "1 share"}],
             "between": {"kind": "nothing"}},
            "nothing below that dividers could stand on",
        ),
        (
            {"rows": [{"height": 300}, {"height": "1 share"}],
             "between": {"kind": "rail", "width": 301}},
            "a rail 301 mm wide doesn't fit a depth of 300 mm",
        ),
        (
            {"rows": [{"height": 300}, {"height": 701}], "between": {"kind": "nothing"}},
            "1 mm too much",
        ),
    ],
)  # fmt: skip
def test_what_cannot_be_divided_so_is_told_once(interior: dict[str, Any], says: str) -> None:
    (problem,) = problems_of(SIZE, interior=interior)
    assert says in problem


def test_rails_between_rows_stand_at_the_front_only() -> None:
    rows = {
        "rows": [{"height": 400}, {"height": "1 share"}],
        "between": {"kind": "rail", "width": 60, "setback": 5},
    }
    unit = unit_from(SIZE, interior=rows)
    (rail,) = of_role(unit, Role.CARCASS_RAIL)
    assert rail.bounds().low == (18.0, 5.0, 1036 - 18 - 400 - 18)
    assert rail.blank.size == (1200.0, 60.0, 18.0)
    assert not of_role(unit, Role.SHELF)
    assert check_solids(unit) == ()


def test_nothing_between_rows_leaves_their_heights_to_add_up() -> None:
    rows = {
        "rows": [{"height": 400}, {"height": "1 share", "shelves": {"count": 1}}],
        "between": {"kind": "nothing"},
    }
    (shelf,) = of_role(unit_from(SIZE, interior=rows), Role.SHELF)
    assert shelf.bounds().low[2] == 18 + (600 - 18) / 2


FRAME = {"stock": "ash", "width": 50, "corners": "butted", "mid_stiles": 40, "mid_rails": 30}


def test_mid_rails_and_mid_stiles_follow_shelves_and_dividers() -> None:
    rows = {"rows": [{"height": 400} | _columns({}, {}), {"height": "1 share"}]}
    unit = unit_from(SIZE, interior=rows, face_frame=FRAME | {"eased": 4})
    rail = next(part for part in unit.parts if part.name == "Mid rail")
    stile = next(part for part in unit.parts if part.name == "Mid stile")
    (shelf,) = of_role(unit, Role.SHELF)
    # Between the stiles, its upper edge flush with the shelf; the stile from there to the top.
    assert (rail.bounds().low[0], rail.bounds().high[0]) == (50.0, 1186.0)
    assert rail.bounds().high[2] == shelf.bounds().high[2] == 618.0
    assert (stile.bounds().low[2], stile.bounds().high[2]) == (618.0, 986.0)
    assert (stile.bounds().low[0] + stile.bounds().high[0]) / 2 == 618.0
    upper = [each for each in rail.workings if isinstance(each, Easing) and each.edge.at_high]
    assert [(each.start, each.stop) for each in upper] == [(0.0, 548.0), (588.0, None)]
    assert check_solids(unit) == ()


def test_without_a_mid_rail_a_divider_of_part_height_gets_no_mid_stile() -> None:
    rows = {"rows": [{"height": 400} | _columns({}, {}), {"height": "1 share"}]}
    frame = {key: value for key, value in FRAME.items() if key != "mid_rails"}
    names = [part.name for part in unit_from(SIZE, interior=rows, face_frame=frame).parts]
    assert "Mid rail" not in names and "Mid stile" not in names


def test_lippings_keep_clear_of_mid_rails() -> None:
    rows = {"rows": [{"height": 400} | _columns({}, {}), {"height": "1 share"}]}
    lipping = {"stock": "ash", "thickness": 15}
    frame = FRAME | {"mid_rails": 12}
    (strip,) = of_role(
        unit_from(SIZE, interior=rows, face_frame=frame, lipping=lipping), Role.LIPPING
    )
    assert (strip.bounds().low[2], strip.bounds().high[2]) == (600.0, 606.0)
    unit = unit_from(SIZE, interior=rows, face_frame=FRAME, lipping=lipping)
    assert not of_role(unit, Role.LIPPING)


def test_five_levels_deep() -> None:
    space: dict[str, Any] = {"shelves": {"count": 1}}
    for level in range(5):
        key, size = (("columns", "width"), ("rows", "height"))[level % 2]
        space = {key: [{size: "1 share"} | space, {size: 150}]}
    unit = unit_from("size: {width: 1400, height: 1200, depth: 300}\n", interior=space)
    assert len(of_role(unit, Role.DIVIDER)) == 3
    assert len(of_role(unit, Role.SHELF)) == 3
    assert check_solids(unit) == ()
