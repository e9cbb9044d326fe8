"""Edging on sheet parts: which edges get it, and how much smaller the blanks are cut."""

from __future__ import annotations

from typing import Any

import pytest

from kit.specs import of_role, problems_of, unit_from
from rodwright.checks import check_solids
from rodwright.unit import Role, Surface

SIZE = "size: {width: 800, height: 1000, depth: 300}\n"


def edging(*edges: str, **more: Any) -> dict[str, Any]:
    return {"material": "birch veneer", "thickness": 0.6, "edges": edges} | more


def test_front_edges_of_panels() -> None:
    unit = unit_from(
        SIZE, interior={"shelves": {"count": 1}}, edging=edging("shelves", "sides", "top")
    )
    for role in (Role.SHELF, Role.SIDE, Role.TOP):
        for part in of_role(unit, role):
            (edge,) = part.edged
            # The middle of the edged edge is at the front of the carcass.
            y = part.blank.width if edge.surface is Surface.BACK_EDGE else 0.0
            assert part.placement.to_unit((0.0, y, 0.0))[1] == pytest.approx(0.0)
            assert part.blank.width == 300.0
            assert part.rough_size[1] == pytest.approx(299.4)
    assert of_role(unit, Role.BOTTOM)[0].edged == ()
    assert check_solids(unit) == ()


def test_doors_are_edged_all_round() -> None:
    unit = unit_from(SIZE, interior={"doors": {"stock": "ply"}}, edging=edging("doors"))
    (door,) = of_role(unit, Role.DOOR)
    assert len({edge.surface for edge in door.edged}) == 4
    length, width, thickness = door.blank.size
    assert door.rough_size == pytest.approx((length - 1.2, width - 1.2, thickness))


def test_solid_wood_is_not_edged() -> None:
    shelves = {"count": 1, "stock": "ash"}
    assert problems_of(SIZE, interior={"shelves": shelves}, edging=edging("shelves")) == [
        "edging.edges.0: there are no shelves of sheet material to be edged"
    ]


def test_what_cant_be_edged_is_told() -> None:
    assert problems_of(SIZE, edging=edging("top", thickness=4)) == [
        "edging.thickness: edging is 3 mm thick at the most, not 4 mm"
    ]
    assert problems_of(SIZE, edging=edging("drawers")) == [
        "edging.edges.0: there are no drawers of sheet material to be edged"
    ]
    lipped = {"stock": "ash", "thickness": 10, "edges": ["sides"]}
    assert problems_of(SIZE, edging=edging("top", "sides"), lipping=lipped) == [
        "edging.edges.1: the sides have a lipping, so there is no edge left for edging"
    ]
    frame = {"stock": "ash", "width": 45, "rails": "bottom"}
    assert problems_of(SIZE, edging=edging("top", "bottom", "sides"), face_frame=frame) == [
        "edging.edges.1: the face frame covers the front of the bottom: nothing shows to be edged",
        "edging.edges.2: the face frame covers the front of the sides: nothing shows to be edged",
    ]


def test_a_unit_refused_already_is_not_told_that_parts_to_be_edged_are_missing() -> None:
    """Too large a size leaves no shelves, and it is the size that is wrong."""
    opening = "opening: {width: 1200, height: 2000, depth: 300}\nsize: {height: 7000}\n"
    wishes = {"shelves": {"at": [7500]}}
    told = problems_of(opening, interior=wishes, edging=edging("shelves"))
    assert told
    assert [each for each in told if each.startswith("edging")] == []


@pytest.mark.parametrize("door", [None, {"stock": "ash", "hung": "inset"}])
def test_what_a_mid_rail_hides_is_not_edged(door: dict[str, Any] | None) -> None:
    """The shelf between the rows lies behind the rail, flush with it; the one in a row shows."""
    rows = [{"height": "1 share", "shelves": 1}, {"height": "1 share"}]
    if door:
        rows[1]["doors"] = door
    unit = unit_from(
        SIZE,
        face_frame={"stock": "ash", "width": 40, "mid_rails": 40, "corners": "butted"},
        interior={"rows": rows},
        edging=edging("shelves"),
    )
    (mid,) = [part for part in of_role(unit, Role.RAIL) if part.name == "Mid rail"]
    hidden, shown = [], []
    for shelf in of_role(unit, Role.SHELF):
        level = shelf.bounds().high[2] == pytest.approx(mid.bounds().high[2])
        (hidden if level else shown).append(shelf)
    assert len(hidden) == len(shown) == 1
    assert hidden[0].edged == () and hidden[0].rough_size[1] == hidden[0].blank.width
    assert len(shown[0].edged) == 1


def test_edging_asked_for_where_none_shows_is_told() -> None:
    rows = [{"height": "1 share"}, {"height": "1 share"}]
    frame = {"stock": "ash", "width": 40, "mid_rails": 40, "corners": "butted"}
    assert problems_of(
        SIZE, face_frame=frame, interior={"rows": rows}, edging=edging("shelves")
    ) == [
        "edging.edges.0: the face frame covers the front of the shelves: nothing shows to be edged"
    ]


@pytest.mark.parametrize(("setback", "strips"), [(0, 0), (2, 0), (40, 1)])
def test_what_a_mid_rail_hides_is_not_lipped(setback: float, strips: int) -> None:
    """A shelf that stands well back from the rail shows its front to who looks down on it."""
    unit = unit_from(
        SIZE,
        face_frame={"stock": "ash", "width": 40, "mid_rails": 40, "corners": "butted"},
        interior={
            "rows": [{"height": "1 share"}, {"height": "1 share"}],
            "between": {"kind": "shelf", "setback": setback},
        },
        lipping={"stock": "ash", "thickness": 1.5, "edges": ["shelves"]},
    )
    assert len(of_role(unit, Role.LIPPING)) == strips
