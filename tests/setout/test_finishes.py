"""What parts are finished with: the most particular of what is said."""

from __future__ import annotations

import pytest

from kit.specs import problems_of, spec_from, unit_from
from rodwright.problems import ProblemsError
from rodwright.setout import set_out_unit
from rodwright.setout.finishes import BARE, PAINT, PLACES, STAIN
from rodwright.trade.finishes import takes_finish
from rodwright.unit import Role, Unit
from rodwright.unit.finish import Finish

OIL, LACQUER = Finish("oil", sheen="matt"), Finish("lacquer")
PAINTED = Finish("paint", "#2e8b57", "gloss")
STOCK = """
stock:
  ply: {kind: sheet, material: birch plywood, thickness: 18}
  oak: {kind: board, material: european oak, thickness: 22}
  white: {kind: sheet, material: melamine faced chipboard, thickness: 18}
  back: {kind: sheet, material: mdf, thickness: 6}
"""
UNIT = (
    STOCK
    + """
size: {width: 1200, height: 1800, depth: 420}
base: {kind: plinth, height: 80}
back: {stock: back, fixing: rebated}
lipping: {stock: oak, thickness: 8, edges: [shelves]}
interior:
  rows:
    - {height: 1 share, shelves: {count: 1, stock: oak}}
    - height: 500
      doors: {kind: framed, stock: oak, count: 2, panel: {stock: back}}
    - {height: 250, drawers: {count: 2, front_stock: oak, slides: {kind: runners}}}
"""
)


def finishes(unit: Unit) -> dict[Role, Finish | None]:
    """The finish of the parts of each role, which all have the same."""
    found: dict[Role, set[Finish | None]] = {}
    for part in unit.parts:
        found.setdefault(part.role, set()).add(part.finish)
    return {role: each for role, (each,) in found.items()}


def test_every_role_is_in_a_place_or_stays_bare() -> None:
    placed = {role for roles in PLACES.values() for role in roles}
    assert placed | set(BARE) == set(Role)
    assert not placed & set(BARE)


def test_nothing_said_is_nothing() -> None:
    assert set(finishes(unit_from(UNIT)).values()) == {None}


def test_everything_but_what_runs() -> None:
    found = finishes(unit_from(UNIT + "finish: oil\n"))
    assert found.pop(Role.RUNNER) is None
    assert set(found.values()) == {OIL}


def test_the_most_particular_counts() -> None:
    """`everything`, then the stock, then the place, the narrower over the wider."""
    found = finishes(
        unit_from(
            UNIT
            + """
finish:
  everything: lacquer
  oak: oil
  carcass: {kind: paint, colour: seagreen, sheen: gloss}
  back: none
  doors: {kind: stain}
  door_panels: paint
  drawer_boxes: none
"""
        )
    )
    stained = Finish("stain", STAIN)
    assert (
        found[Role.SIDE] == found[Role.SHELF] == PAINTED
    )  # the shelves are of oak, but in a place
    assert found[Role.LIPPING] == found[Role.DRAWER_FRONT] == OIL
    assert found[Role.PLINTH] == LACQUER
    assert found[Role.BACK] is found[Role.DRAWER_SIDE] is found[Role.RUNNER] is None
    assert found[Role.DOOR_STILE] == found[Role.DOOR_RAIL] == stained
    assert found[Role.DOOR_PANEL] == Finish("paint", PAINT)


def test_a_colour_may_have_a_name() -> None:
    text = 'finish: {kind: stain, colour: {shown: seagreen, name: "sea, 12"}}'
    (found,) = set(finishes(unit_from(UNIT + text)).values()) - {None}
    assert found == Finish("stain", "#2e8b57", "satin", "sea, 12")
    assert found.described == "stain sea, 12 under lacquer, satin"


def test_a_stock_that_is_called_as_a_place_is_called_is_the_place() -> None:
    """The door panels are cut from `back` too."""
    found = finishes(unit_from(UNIT + "finish: {back: oil}\n"))
    assert found[Role.BACK] == OIL
    assert found[Role.DOOR_PANEL] is None


def test_what_takes_no_finish_has_none() -> None:
    text = UNIT + "finish: oil\ncarcass: {stock: white}\n"
    unit = unit_from(text)
    for part in unit.parts:
        melamine = "melamine" in part.blank.stock.material
        assert (part.finish is None) == (melamine or part.role is Role.RUNNER)
        assert takes_finish(part.blank.stock.material) != melamine


@pytest.mark.parametrize(
    ("finish", "expected"),
    [
        ("{wortop: oil}", "finish.wortop: `wortop` is neither a place of a unit nor a stock"),
        ("{worktop: oil}", "finish.worktop: this unit has no worktop to be finished"),
        ("{face_frame: oil}", "finish.face_frame: this unit has no face frame to be finished"),
        ("{white: oil}", "finish.white: nothing that is finished is cut from `white`"),
        ("{worktop: none}", "finish.worktop: this unit has no worktop to be finished"),
    ],
)
def test_what_isnt_there_is_told(finish: str, expected: str) -> None:
    assert problems_of(UNIT + f"finish: {finish}\n") == [expected]


def test_what_there_is_and_what_was_meant_is_told() -> None:
    with pytest.raises(ProblemsError) as error:
        set_out_unit(spec_from(UNIT + "finish: {shelfs: oil}\n"))
    (problem,) = error.value.problems
    assert problem.remedy == (
        "Did you mean `shelves`? The places are `everything`, `carcass`, `shelves`, `back`, "
        "`lipping`, `doors`, `door_panels`, `drawers`, `drawer_fronts`, `drawer_boxes`, `base`; "
        "the stocks `ply`, `oak`."
    )


def test_a_finish_for_what_takes_none_is_told() -> None:
    text = UNIT + "carcass: {stock: white}\n"
    told = "is of melamine faced chipboard, which takes no finish"
    assert problems_of(text + "finish: {base: oil, white: paint, everything: oil}\n") == [
        f"finish.base: `base` {told}",
        f"finish.white: `white` {told}",
    ]
    assert problems_of(text + "finish: {base: none, everything: oil}\n") == []
