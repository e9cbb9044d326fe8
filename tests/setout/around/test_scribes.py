"""Scribes against the gaps that plane geometry gives.

How a strip is made and fixed is common practice, no source.
"""

from __future__ import annotations

from typing import Any

import pytest

from kit.specs import STOCK, of_role, problems_of, unit_from
from rodwright.checks import check_parts, check_solids
from rodwright.checks.rules import Rule
from rodwright.mass import mass_of
from rodwright.solids import solid_of
from rodwright.unit import Bevel, Part, Role, Surface, Unit

SIZE = "size: {width: 800, height: 2000, depth: 400}\n"
ALCOVE = "opening: {width: 840, height: 2100, depth: 420}\nfit: {sides: 20, top: 15}\n"
LEANING = """
opening:
  width: {bottom: 860, top: 848}
  height: {left: 2100, right: 2109}
  depth: 420
fit: {sides: 20, top: 15}
"""
SCRIBES: dict[str, Any] = {"stock": "ash", "edges": ["left", "right", "top"]}


def _named(unit: Unit, name: str) -> Part:
    (part,) = [part for part in unit.parts if part.name == name]
    return part


def test_strips_fill_an_even_gap() -> None:
    """840 less 800 leaves 20 at each side; 2100 less 2085 leaves 15 over the top."""
    unit = unit_from(ALCOVE, scribes=SCRIBES)
    left, top = _named(unit, "Left scribe"), _named(unit, "Top scribe")
    assert left.blank.size == pytest.approx((2100.0, 20.0, 22.0))
    assert left.blank.rough_size == pytest.approx((2100.0, 26.0, 22.0))  # 6 to be scribed
    assert left.bounds().low == pytest.approx((-20.0, 0.0, 0.0))
    assert top.blank.size == pytest.approx((800.0, 15.0, 22.0))
    assert top.bounds().low == pytest.approx((0.0, 0.0, 2085.0))
    assert left.shape == _named(unit, "Right scribe").shape
    assert check_solids(unit) == ()
    assert {Rule.OPEN_GAP, Rule.UNUSUAL_GAP, Rule.LARGER_THAN_OPENING}.isdisjoint(
        finding.rule for finding in check_parts(unit)
    )


def test_strips_taper_with_the_walls() -> None:
    """Their wall edges lie on the opening's sides, worked out from its corners."""
    unit = unit_from(LEANING, scribes=SCRIBES)
    assert unit.opening is not None and unit.opening.shape is not None
    corners = unit.opening.shape.front.corners
    for name, (low, high), side in (
        ("Left scribe", (corners[0], corners[3]), -1.0),
        ("Right scribe", (corners[1], corners[2]), 1.0),
    ):
        strip = _named(unit, name)
        (cut,) = strip.workings
        assert isinstance(cut, Bevel)
        box = strip.bounds()
        slope = (high[0] - low[0]) / (high[1] - low[1])
        at_foot, at_top = (low[0] + slope * (z - low[1]) for z in (box.low[2], box.high[2]))
        inner = box.high[0] if side < 0 else box.low[0]
        # Taken off the carcass: the strip's width at its foot and at its top.
        wide = strip.blank.width
        narrow = wide - cut.depth
        foot, top = (wide, narrow) if (at_foot - at_top) * side > 0 else (narrow, wide)
        assert side * (at_foot - inner) == pytest.approx(foot, abs=0.01)
        # The strip's own length is a little more than the carcass's height, where it is cut.
        assert side * (at_top - inner) == pytest.approx(top, abs=0.2)
        area = (wide + narrow) / 2 * strip.blank.length
        assert mass_of(strip.shape).volume == pytest.approx(area * 22.0)
        assert solid_of(strip.shape).Volume() == pytest.approx(area * 22.0)
    assert check_solids(unit) == ()


def test_a_strip_starts_where_the_face_frame_ends() -> None:
    frame = {"stock": "ash", "width": 45, "corners": "butted", "overhang": {"sides": 5, "top": 4}}
    unit = unit_from(ALCOVE, scribes=SCRIBES, face_frame=frame)
    left, top = _named(unit, "Left scribe"), _named(unit, "Top scribe")
    assert left.blank.width == pytest.approx(15.0)
    assert left.bounds().low[:2] == pytest.approx((-20.0, -22.0))
    assert top.blank.width == pytest.approx(11.0)
    assert top.blank.length == pytest.approx(810.0)
    assert check_solids(unit) == ()


def test_set_back_behind_the_frame_it_lies_against_the_carcass() -> None:
    frame = {"stock": "ash", "width": 45, "corners": "butted", "overhang": {"sides": 5}}
    wish = {"stock": "ash", "edges": ["left"], "setback": 22}
    unit = unit_from(ALCOVE, scribes=wish, face_frame=frame)
    assert _named(unit, "Left scribe").blank.width == pytest.approx(20.0)
    assert _named(unit, "Left scribe").bounds().low[1] == pytest.approx(0.0)
    assert check_solids(unit) == ()


def test_a_filler_beside_a_freestanding_unit() -> None:
    wish = {"stock": "ply", "edges": ["right"], "width": 60, "allowance": 10}
    unit = unit_from(SIZE, scribes=wish, base={"kind": "plinth", "height": 100})
    (filler,) = of_role(unit, Role.SCRIBE)
    assert filler.blank.rough_size == (1900.0, 70.0, 18.0)
    assert filler.bounds().low == (800.0, 0.0, 100.0)
    (joint,) = [joint for joint in unit.joints if joint.second == filler.ref]
    assert joint.fixings[0].size == "4 x 45 mm"  # two and a half times 18
    assert joint.fixings[0].count == 7  # 1800 between the outer ones, 300 apart


def test_strips_end_under_a_cornice_return() -> None:
    cornice = {"stock": "ash", "height": 80, "returns": "left"}
    unit = unit_from(
        ALCOVE.replace("sides: 20", "sides: 25"),
        scribes={"stock": "ash"},
        cornice=cornice,
    )
    assert _named(unit, "Left scribe").bounds().high[2] == pytest.approx(2085.0 - 80.0)
    assert _named(unit, "Right scribe").bounds().high[2] == pytest.approx(2085.0)
    assert check_solids(unit) == ()


def test_the_narrow_end_is_marked_at_the_right_end() -> None:
    unit = unit_from(LEANING, scribes={"stock": "ash"})
    left, right = _named(unit, "Left scribe"), _named(unit, "Right scribe")
    assert unit.opening is not None and unit.opening.shape is not None
    (_, _, top_right, top_left) = unit.opening.shape.front.corners
    # The opening is narrower at its top: the strips are planed there.
    assert top_right[0] - top_left[0] == pytest.approx(848.0, abs=1.0)
    for strip in (left, right):
        (cut,) = strip.workings
        assert isinstance(cut, Bevel)
        assert cut.surface is Surface.BACK_EDGE
        top_end = Surface.FAR_END if strip.placement.length[2] > 0 else Surface.NEAR_END
        assert cut.edge is top_end


@pytest.mark.parametrize(
    ("text", "scribes", "more", "where"),
    [
        (SIZE, {}, {}, "scribes"),
        (ALCOVE, {"width": 20}, {}, "scribes.width"),
        (ALCOVE, {"stock": "elm"}, {}, "scribes.stock"),
        (ALCOVE, {"thickness": 25}, {}, "scribes.thickness"),
        (ALCOVE, {"setback": 400}, {}, "scribes.setback"),
        (ALCOVE, {"edges": ["left", "top"]}, {"worktop": {"stock": "ash"}}, "scribes.edges.1"),
        (ALCOVE + "size: {width: 836}\n", {}, {}, "scribes.edges.0"),
        (
            ALCOVE,
            {},
            {"face_frame": {"stock": "ash", "width": 45, "overhang": {"sides": 18}}},
            "scribes.edges.0",
        ),
    ],
)  # fmt: skip
def test_what_nobody_can_make(
    text: str, scribes: dict[str, Any], more: dict[str, Any], where: str
) -> None:
    wish = {"stock": "ash"} | scribes
    found = problems_of(text + STOCK, scribes=wish, **more)
    assert [each.split(":")[0] for each in found] == [where]


@pytest.mark.parametrize("top", ["between", "over"])
def test_no_screw_goes_along_a_panel_into_a_strip(top: str) -> None:
    """Screws come through the thickness of a side or the top, from inside; ends are glued."""
    unit = unit_from(ALCOVE, scribes=SCRIBES, carcass={"stock": "ply", "top": top})
    for joint in unit.joints:
        if unit.part(joint.second).role is not Role.SCRIBE or not joint.fixings:
            continue
        through, strip = unit.part(joint.first), unit.part(joint.second)
        apart = [
            min(through.bounds().high[i], strip.bounds().high[i])
            - max(through.bounds().low[i], strip.bounds().low[i])
            for i in range(3)
        ]
        axis = apart.index(min(apart))
        assert abs(through.placement.thickness[axis]) == pytest.approx(1.0)
        assert (through.role is Role.TOP) == (strip.name == "Top scribe")
    assert check_solids(unit) == ()


def test_a_strip_is_wide_enough_where_the_wall_bellies_away() -> None:
    """Widths of 900, 912 and 900: half of 12 more in the middle than from end to end."""
    text = (
        "opening: {width: {bottom: 900, middle: 912, top: 900}, height: 2100, depth: 400}\n"
        "fit: {sides: 20}\n"
    )
    strip = _named(unit_from(text, scribes={"stock": "ash", "edges": ["left"]}), "Left scribe")
    assert strip.blank.width == pytest.approx(26.0, abs=0.3)


def test_a_strip_bellied_into_is_as_wide_as_at_its_ends() -> None:
    text = (
        "opening: {width: {bottom: 912, middle: 900, top: 912}, height: 2100, depth: 400}\n"
        "fit: {sides: 20}\n"
    )
    strip = _named(unit_from(text, scribes={"stock": "ash", "edges": ["left"]}), "Left scribe")
    assert strip.blank.width == pytest.approx(26.0, abs=0.3)
