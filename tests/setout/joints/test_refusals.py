"""What the material can't take is refused, at its place and with its figures: just inside each
limit a joint is made, just outside it isn't.  Limits are common practice, no source."""

from __future__ import annotations

from typing import Any

import pytest

from kit.joint_pairs import Pair, wish_of
from kit.specs import problems_of, unit_from
from rodwright.problems import ProblemsError


def refusal(joint: str, figures: dict[str, Any] | None = None, **sizes: Any) -> str:
    """What is said against a joint; empty if it is made."""
    pair = Pair(wish_of(joint, **(figures or {})), **sizes)
    said = pair.said()
    assert len(said) <= 1
    if said:
        assert pair.bench.joints == ()
        assert pair.workings("SD1") == pair.workings("SH1") == ()
        return said[0]
    assert len(pair.bench.joints) == 1
    return ""


@pytest.mark.parametrize(
    ("joint", "inside", "outside", "message"),
    [
        ("housed", {"figures": {"depth": 9}}, {"figures": {"depth": 9.1}},
         "carcass.corners.depth: a housing 9.1 mm deep is more than half of 18 mm"),
        ("rebated", {"figures": {"depth": 12}, "z": "end"},
         {"figures": {"depth": 12.1}, "z": "end"},
         "carcass.corners.depth: a rebate 12.1 mm deep is more than two thirds of 18 mm"),
        ("rebated", {"z": "end"}, {"z": 300.0},
         "carcass.corners: a rebated joint is one for corners, and these parts don't meet at one"),
        ("tongued", {"figures": {"thickness": 15}}, {"figures": {"thickness": 15.1}},
         "carcass.corners.thickness: a tongue 15.1 mm thick doesn't suit a part 18 mm thick"),
        ("housed", {"figures": {"shoulder": 15}}, {"figures": {"shoulder": 15.1}},
         "carcass.corners.shoulder: a shoulder of 15.1 mm leaves a tongue of 2.9 mm on a part "
         "18 mm thick"),
        ("dowelled", {"figures": {"diameter": 9}}, {"figures": {"diameter": 9.1}},
         "carcass.corners.diameter: dowels of 9.1 mm are more than half of an edge 18 mm thick"),
        # Two 8 mm dowels: 12 mm from either end, 24 apart.
        ("dowelled", {"depth": 48.0}, {"depth": 47.9},
         "carcass.corners: a meeting 47.9 mm long is too short for 2 dowels, which need 48 mm"),
        ("screwed", {"second": 12.0}, {"second": 11.9},
         "carcass.corners: 3 mm screws in the middle of an edge 11.9 mm thick are nearer to its "
         "faces than 2 diameters"),
        ("screwed", {"figures": {"diameter": 4.5}}, {"figures": {"diameter": 4.6}},
         "carcass.corners.diameter: 4.6 mm screws in the middle of an edge 18 mm thick are nearer "
         "to its faces than 2 diameters"),
        ("screwed", {"figures": {"edge": 20}}, {"figures": {"edge": 19.9}},
         "carcass.corners.edge: screws 19.9 mm from the end of a meeting are too near to it"),
        ("screwed", {"figures": {"edge": 24}, "material": "mdf"},
         {"figures": {"edge": 23.9}, "material": "mdf"},
         "carcass.corners.edge: screws 23.9 mm from the end of a meeting are too near to it"),
        ("screwed", {"figures": {"length": 34}}, {"figures": {"length": 33.9}},
         "carcass.corners.length: screws 33.9 mm long through 18 mm go 15.9 mm into 500 mm"),
        ("biscuited", {"second": 12.0}, {"second": 11.9},
         "carcass.corners: slots for biscuits of size 20, 4 mm wide and 12.5 mm deep, don't suit "
         "an edge 11.9 mm thick on 18 mm"),
        ("biscuited", {"first": 11.5}, {"first": 11.4},
         "carcass.corners: slots for biscuits of size 0, 4 mm wide and 8.5 mm deep, don't suit an "
         "edge 18 mm thick on 11.4 mm"),
        ("loose-tenoned", {"figures": {"thickness": 9}}, {"figures": {"thickness": 9.1}},
         "carcass.corners.thickness: tenons 9.1 mm thick are more than half of an edge 18 mm "
         "thick"),
        ("loose-tenoned", {"depth": 28.0}, {"depth": 27.9},
         "carcass.corners: a meeting 27.9 mm long is too short for a loose tenon"),
        # Half the thickness and 4.5 mm, with 1.5 mm left under it.
        ("knock-down", {"second": 12.0}, {"second": 11.8},
         "carcass.corners: a boring 10.4 mm deep for a cam goes through a part 11.8 mm thick, "
         "or nearly"),
        ("knock-down", {"first": 13.5}, {"first": 13.4},
         "carcass.corners: a bolt 12 mm deep goes through a part 13.4 mm thick, or nearly"),
        ("mitred", {"z": "end"}, {"z": "end", "second": 18.1},
         "carcass.corners: a corner can't be mitred at 45 degrees where 18 mm meets 18.1 mm"),
        ("mitred", {"z": "end"}, {"z": "end", "front": 1.0},
         "carcass.corners: mitred corners need parts that are equally deep"),
        ("mitred", {"z": "end"}, {"z": 581.0},
         "carcass.corners: only a corner can be mitred, and one of these parts runs past the "
         "other"),
    ],
)  # fmt: skip
def test_just_inside_and_just_outside(
    joint: str, inside: dict[str, Any], outside: dict[str, Any], message: str
) -> None:
    assert refusal(joint, **inside) == ""
    assert refusal(joint, **outside) == message


def test_pocket_screws_need_15_mm() -> None:
    assert refusal("pocket-screwed", second=15.0, first=15.0) == ""
    assert "no pocket screw out of a part 14 mm thick" in refusal(
        "pocket-screwed", second=14.0, first=14.0
    )


def test_screws_cant_be_driven_where_a_neighbour_stands() -> None:
    pair = Pair(wish_of("screwed"))
    pair.neighbour(wish_of("screwed"), 200.0)
    assert pair.said() == [
        "carcass.corners: screws through left side SD1 into SH2 would go in where SH1 stands on "
        "its other side"
    ]
    higher = Pair(wish_of("screwed"))
    higher.neighbour(wish_of("screwed"), 230.0)
    assert higher.said() == []


def test_a_problem_that_every_corner_has_is_told_once() -> None:
    assert problems_of(
        "size: {width: 600, height: 800, depth: 300}\n"
        "carcass: {stock: ply, corners: {joint: dowelled, diameter: 10}}\n"
    ) == ["carcass.corners.diameter: dowels of 10 mm are more than half of an edge 18 mm thick"]


@pytest.mark.parametrize(
    ("interior", "place"),
    [
        ("{shelves: {count: 1, ends: mitred}}", "interior.shelves.ends"),
        (
            "{columns: [{width: 1 share}, {width: 1 share}], dividers: {ends: rebated}}",
            "interior.dividers.ends",
        ),
        (
            "{rows: [{height: 1 share}, {height: 1 share}], between: {ends: mitred}}",
            "interior.between.ends",
        ),
    ],
)
def test_corner_joints_away_from_corners_are_refused_where_they_are_wished(
    interior: str, place: str
) -> None:
    said = problems_of(f"size: {{width: 600, height: 800, depth: 300}}\ninterior: {interior}\n")
    assert said
    assert all(each.startswith(f"{place}: ") for each in said)


def test_a_bottom_off_the_floor_is_no_corner() -> None:
    (said,) = problems_of(
        "size: {width: 600, height: 800, depth: 300}\n"
        "carcass: {stock: ply, corners: mitred, bottom_height: 60}\n"
    )
    assert said.startswith("carcass.corners: only a corner can be mitred")


@pytest.mark.parametrize(
    ("unit_name", "thickness", "remedy"),
    [
        ("mm", 18, "Use dowels of 6 mm or 8 mm, or thicker stock."),
        ("mm", 11, "Use an edge 12 mm thick at least, for dowels of 6 mm, or another joint."),
        ("in", "3/4", "Use dowels of 1/4 in or 5/16 in or 3/8 in, or thicker stock."),
        (
            "in",
            "15/32",
            "Use an edge 1/2 in thick at least, for dowels of 1/4 in, or another joint.",
        ),
    ],
)
def test_only_dowels_that_are_sold_are_named(
    unit_name: str, thickness: int | str, remedy: str
) -> None:
    text = f"""unit: {unit_name}
size: {{width: 600 mm, height: 600 mm, depth: 300 mm}}
stock:
  ply: {{kind: sheet, material: birch plywood, thickness: {thickness}}}
"""
    corners = {"joint": "dowelled", "diameter": "14 mm"}
    with pytest.raises(ProblemsError) as raised:
        unit_from(text, carcass={"stock": "ply", "corners": corners})
    assert remedy in {problem.remedy for problem in raised.value.problems}


@pytest.mark.parametrize("joint", ["housed", "tongued"])
def test_what_is_thicker_than_deep_has_no_stopped_end(joint: str) -> None:
    """Its notch would take all that goes in."""
    assert Pair(wish_of(joint, stopped=10), 18.0, 40.0, 40.5, 200.0).said() == []
    (said,) = Pair(wish_of(joint, stopped=10), 18.0, 40.5, 40.0, 200.0).said()
    assert "nothing would be left of it behind a stopped housing" in said
