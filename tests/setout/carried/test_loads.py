"""What a unit carries, worked out by hand for a few units and held together for random ones."""

from __future__ import annotations

from collections import defaultdict
from itertools import pairwise
from typing import Any

import pytest
from hypothesis import HealthCheck, assume, given, settings
from hypothesis import strategies as st

from kit.mirrors import mirrored
from kit.specs import problems_of, unit_from
from kit.wishes import Wish, wishes
from rodwright.geometry import TOUCH
from rodwright.problems import ProblemsError
from rodwright.unit import Load, Loading, Lump, Role, Stretch, Unit
from rodwright.unit.roles import UPRIGHTS

BOOKS = 25 * 0.45359237 / 0.3048
"""Krakower's 25 lb/ft in kg/m."""
KITCHEN = 15 * 0.45359237 / 0.3048**2
"""KCMA's 15 lb/ft2 in kg/m2."""


def near(value: float) -> Any:
    return pytest.approx(value, abs=1e-6)


def carried(
    text: str = "", size: str = "{width: 1036, height: 1000, depth: 300}", **more: Any
) -> Loading:
    """What a unit of 18 mm ply carries; its clear width is 1000 with one space."""
    return unit_from(f"unit: mm\nsize: {size}\n{text}", **more).loading


def by_ref(loading: Loading) -> dict[str, Load]:
    assert len({load.ref for load in loading.loads}) == len(loading.loads)
    return {load.ref: load for load in loading.loads}


def test_nothing_said_is_books_on_open_shelves_and_floors() -> None:
    loads = by_ref(carried("interior: {shelves: 2}"))
    assert set(loads) == {"BT1", "TP1", "SH1", "SH2"}
    for ref in ("BT1", "SH1", "SH2", "TP1"):
        assert loads[ref].said == "books"
        assert loads[ref].assumed
        assert loads[ref].source is not None
        assert loads[ref].source.seen
        assert loads[ref].stretches == (Stretch(18, 1018, near(BOOKS), near(BOOKS)),)
        assert loads[ref].mass == near(BOOKS)


def test_what_is_said_at_the_top_goes_for_shelves_and_floors_alone() -> None:
    loads = by_ref(carried("loads: 30 kg\ninterior: {shelves: 2}"))
    assert {ref: load.mass for ref, load in loads.items() if not load.assumed} == {
        "BT1": near(30),
        "SH1": near(30),
        "SH2": near(30),
    }
    assert loads["TP1"].assumed
    assert loads["SH1"].said == "30 kg"
    assert loads["SH1"].source is None


def test_inner_spaces_override_outer_ones_and_shelves_both() -> None:
    loading = carried(
        """
loads: 10 kg/m
interior:
  load: 20 kg/m
  columns:
    - {width: 1 share, shelves: 1}
    - {width: 1 share, load: 30 kg/m, shelves: 1}
    - {width: 1 share, load: 30 kg/m, shelves: {count: 1, load: 40 kg/m}}
""",
        "{width: 1072, height: 2000, depth: 300}",
    )
    assert [(load.ref, load.said) for load in loading.loads] == [
        ("BT1", "20 kg/m"),
        ("BT1", "30 kg/m"),
        ("SH1", "20 kg/m"),
        ("SH2", "30 kg/m"),
        ("SH3", "40 kg/m"),
    ]
    third = 1000 / 3
    # The middle and the right column stand on one bottom: a stretch for each.
    assert loading.on("BT1")[1].stretches == (
        Stretch(near(36 + third), near(36 + 2 * third), 30, 30),
        Stretch(near(54 + 2 * third), near(54 + 3 * third), 30, 30),
    )


def test_shelves_are_told_one_by_one_from_the_top_down() -> None:
    text = "interior: {shelves: {count: 3, load: [nothing, 10 kg, {of: 20 kg}], fixed: %s}}"
    for fixed in ("true", "false"):
        unit = unit_from("unit: mm\nsize: {width: 1036, height: 2000, depth: 300}\n" + text % fixed)
        shelves = {part.ref: part.bounds().low[2] for part in unit.parts if part.role is Role.SHELF}
        loads = {load.ref: load.mass for load in unit.loading.loads if load.ref in shelves}
        top, middle, bottom = sorted(shelves, key=lambda ref: -shelves[ref])
        assert loads == {middle: near(10), bottom: near(20)}
        assert top not in loads


def test_layers_carry_on_the_upper_one() -> None:
    loads = by_ref(carried("interior: {shelves: {count: 1, layers: 3}}"))
    assert "SH1c" in loads
    assert not {"SH1a", "SH1b"} & set(loads)


def test_a_loose_shelf_carries_over_its_own_length() -> None:
    loads = by_ref(
        carried("interior: {shelves: {count: 1, fixed: false, clearance: 2, load: 30 kg}}")
    )
    (stretch,) = loads["SH1"].stretches
    assert (stretch.start, stretch.stop) == (near(20), near(1016))
    assert loads["SH1"].mass == near(30)


def test_weights_per_area_go_by_the_clear_depth() -> None:
    """A shelf 300 deep, less an applied back of 6 mm, or a setback of 94 more."""
    loads = by_ref(
        carried(
            "back: {stock: thin}\ninterior: {load: 100 kg/m2, shelves: {count: 1, setback: 94}}"
        )
    )
    assert loads["SH1"].mass == near(100 * 0.2)
    assert loads["BT1"].mass == near(100 * 0.294)


def test_behind_doors_household_goods_are_assumed() -> None:
    """An inset door of 18 mm and the air behind it take their depth."""
    loads = by_ref(carried("interior: {shelves: 1, doors: {stock: ply, hung: overlay}}"))
    assert (loads["SH1"].said, loads["SH1"].assumed) == ("household goods", True)
    assert loads["SH1"].mass == near(KITCHEN * 0.3)
    loads = by_ref(carried("interior: {shelves: 1, doors: {stock: ply, hung: inset}}"))
    assert loads["SH1"].mass == near(KITCHEN * 0.28)
    assert loads["BT1"].mass == near(KITCHEN * 0.28)


def test_rails_and_missing_floors_carry_nothing() -> None:
    rows = "interior: {rows: [{height: 1 share}, {height: 1 share}], between: {kind: %s}}"
    for kind in ("rail", "nothing"):
        assert set(by_ref(carried(rows % kind))) == {"BT1", "TP1"}
    assert set(by_ref(carried(rows % "shelf"))) == {"BT1", "TP1", "SH1"}
    assert set(by_ref(carried("carcass: {stock: ply, bottom: none}"))) == {"TP1"}


def test_a_drawer_is_filled_with_clothes_unless_said() -> None:
    unit = unit_from(
        """
unit: mm
size: {width: 600, height: 400, depth: 500}
interior: {drawers: {count: 2, stock: ply, bottom: {stock: thin}}}
"""
    )
    loads = by_ref(unit.loading)
    parts = {part.ref: part.bounds() for part in unit.parts}
    left, right = (parts[ref] for ref in ("DRS1", "DRS2"))
    front, rear = (parts[ref] for ref in ("DRE1", "DRE2"))
    width, depth = right.low[0] - left.high[0], rear.low[1] - front.high[1]
    # Up to an eighth of an inch under the top of the carcass.
    high = 400 - 18 - 3.175 - parts["DRB1"].high[2]
    density = 8.5 * 0.45359237 / 0.3048**3
    assert set(loads) == {"DRB1", "DRB2", "TP1"}
    assert loads["DRB1"].mass == near(width * depth * high / 1e9 * density)
    # Under the upper drawer, whose sides are its lowest.
    high = left.low[2] - 3.175 - parts["DRB2"].high[2]
    assert loads["DRB2"].mass == near(width * depth * high / 1e9 * density)
    (stretch,) = loads["DRB2"].stretches
    assert (stretch.start, stretch.stop) == (left.high[0], right.low[0])
    assert loads["DRB2"].source is not None
    assert not loads["DRB2"].source.seen


def test_rows_in_a_drawer_run_the_longer_way() -> None:
    wish = "interior: {drawers: {count: 1, stock: ply, bottom: {stock: thin}, load: 40 kg/m}}"
    for width, depth in ((400, 600), (900, 500)):
        unit = unit_from(f"unit: mm\nsize: {{width: {width}, height: 400, depth: {depth}}}\n{wish}")
        parts = {part.ref: part.bounds() for part in unit.parts}
        across = parts["DRS2"].low[0] - parts["DRS1"].high[0]
        along = parts["DRE2"].low[1] - parts["DRE1"].high[1]
        assert by_ref(unit.loading)["DRB1"].mass == near(0.04 * max(across, along))


def test_drawers_take_what_is_said_of_their_own_space() -> None:
    chest = "drawers: {count: 2, stock: ply, bottom: {stock: thin}%s}"
    size = "{width: 600, height: 1000, depth: 500}"
    plain, own = chest % "", chest % ", load: [5 kg, nothing]"
    outer = f"interior: {{load: 9 kg, rows: [{{height: 1 share}}, {{height: 1 share, {plain}}}]}}"
    loads = by_ref(carried(outer, size))
    assert [loads[ref].said for ref in ("DRB1", "DRB2")] == ["folded clothes"] * 2
    loads = by_ref(carried(f"interior: {{load: 9 kg, {plain}}}", size))
    assert [loads[ref].mass for ref in ("DRB1", "DRB2")] == [near(9)] * 2
    loads = by_ref(carried(f"interior: {{load: 9 kg, {own}}}", size))
    assert loads["DRB1"].mass == near(5)
    assert "DRB2" not in loads


def test_clothes_hang_from_the_uprights_in_the_highest_opening() -> None:
    loads = by_ref(
        carried(
            "interior: {load: clothes on a rail, shelves: {at: [1600], load: 5 kg}}",
            "{width: 1036, height: 2036, depth: 500}",
        )
    )
    assert loads["SD1"].lumps == (Lump(18, near(20), near(1618 - 60)),)
    assert loads["SD2"].lumps == (Lump(1018, near(20), near(1618 - 60)),)
    assert loads["SH1"].mass == near(5)
    assert "BT1" not in loads
    loads = by_ref(
        carried(
            "interior: {load: coats 10 kg, shelves: {at: [500], load: 5 kg}}",
            "{width: 1036, height: 2036, depth: 500}",
        )
    )
    assert loads["SD1"].lumps == (Lump(18, near(5), near(2018 - 60)),)


def test_shelves_over_clothes_carry_what_is_usual() -> None:
    loads = by_ref(carried("interior: {load: clothes on a rail, shelves: 1}"))
    assert (loads["SH1"].said, loads["SH1"].assumed) == ("books", True)


@pytest.mark.parametrize(
    ("load", "said", "stretches", "lumps"),
    [
        (
            "{of: 20 kg/m, from: 100, to: 400}",
            "20 kg/m from 100 mm up to 400 mm",
            (Stretch(118, 418, 20, 20),),
            (),
        ),
        ("{of: 30 kg, to: 500}", "30 kg up to 500 mm", (Stretch(18, 518, 60, 60),), ()),
        (
            "{of: 0 kg/m, growing_to: 40 kg/m}",
            "0 kg/m growing to 40 kg/m",
            (Stretch(18, 1018, 0, 40),),
            (),
        ),
        (
            "{of: 100 kg/m2, growing_to: 50 kg/m2, from: 200}",
            "100 kg/m2 growing to 50 kg/m2 from 200 mm",
            (Stretch(218, 1018, near(30), near(15)),),
            (),
        ),
        ("television 18 kg", "television 18 kg", (), (Lump(518, 18),)),
        ("{television: 18 kg}", "television 18.0 kg", (), (Lump(518, 18),)),
        (
            "{of: 5 kg/m, points: [{weight: 7 kg, at: 250}, {weight: 9 kg, at: 1000}]}",
            "5 kg/m, 7.0 kg at 250 mm, 9.0 kg at 1000 mm",
            (Stretch(18, 1018, 5, 5),),
            (Lump(268, 7), Lump(1018, 9)),
        ),
    ],
)
def test_loads_of_every_shape(load: str, said: str, stretches: Any, lumps: Any) -> None:
    found = by_ref(carried(f"interior: {{load: {load}}}"))["BT1"]
    assert (found.said, found.stretches, found.lumps) == (said, stretches, lumps)


def test_a_worktop_carries_on_its_upper_layer_over_its_whole_length() -> None:
    text = "worktop: {stock: oak, layers: 2, overhang: {front: 0, sides: 20}%s}"
    loads = by_ref(carried(text % ""))
    assert set(loads) == {"BT1", "WT1b"}
    assert loads["WT1b"].stretches == (
        Stretch(-20, 1056, near(0.3 * 40 * 0.45359237 / 0.3048**2), near(58.589131636566)),
    )
    assert (loads["WT1b"].said, loads["WT1b"].assumed) == ("storage", True)
    assert by_ref(carried(text % ", load: 200 kg"))["WT1b"].mass == near(200)


def test_tops_in_reach_carry_books_and_higher_ones_nothing() -> None:
    size = "{width: 1036, height: %d, depth: 300}"
    assert "TP1" in by_ref(carried("", size % 1799))
    assert "TP1" not in by_ref(carried("", size % 1800))
    assert "TP1" not in by_ref(carried("hung: true"))
    said = "carcass: {stock: ply, corners: butted, top: over, top_load: 12 kg}"
    top = by_ref(carried(said, size % 2100))["TP1"]
    assert top.mass == near(12)
    assert not top.assumed
    assert (top.stretches[0].start, top.stretches[0].stop) == (0, 1036)


def test_a_ceiling_close_above_leaves_the_top_bare() -> None:
    opening = "unit: mm\nopening: {width: 1000, height: %d}\nsize: {depth: 300, height: 990}"
    assert "TP1" not in by_ref(unit_from(opening % 1139).loading)
    assert "TP1" in by_ref(unit_from(opening % 1140).loading)


def test_what_it_is_held_against() -> None:
    assert carried("") == Loading(carried("").loads)
    loading = carried(
        "loads: {limit: 300, years: 0, room: outside}\nwall: studs\n"
        "floor: {covering: carpet, falls: 5}"
    )
    assert (loading.limit, loading.years, loading.service_class) == (300, 0, 3)
    assert (loading.wall, loading.floor) == ("studs", "carpet")
    # 5 mm over 1 m, by hand.
    assert loading.lean == pytest.approx(0.28648, abs=1e-5)
    assert carried("floor: carpet\nloads: {room: unheated}").service_class == 2


def test_in_inches_a_floor_is_levelled_along_a_yard() -> None:
    unit = unit_from(
        "unit: in\nsize: {width: 40, height: 40, depth: 12}\nfloor: {falls: 3/8}\n"
        "stock:\n  ply: {kind: sheet, material: birch plywood, thickness: 3/4}\n"
    )
    # 3/8 in over 36 in, by hand.
    assert unit.loading.lean == pytest.approx(0.59679, abs=1e-4)


SIZE = "unit: mm\nsize: {width: 1036, height: 1000, depth: 300}\n"


@pytest.mark.parametrize(
    ("text", "told"),
    [
        (
            "interior: {load: {of: books, from: 1000}}",
            "interior.load.from: 1000 mm from the left is past the end: the clear width is 1000 mm",
        ),
        (
            "interior: {shelves: {count: 2, load: {of: books, to: 1001}}}",
            "interior.shelves.load.to: 1001 mm from the left is past the end: the clear width is "
            "1000 mm",
        ),
        (
            "interior: {load: {points: [{weight: 3 kg, at: 20}, {weight: 3 kg, at: 1001}]}}",
            "interior.load.points.1.at: 1001 mm from the left is past the end: the clear width is "
            "1000 mm",
        ),
        (
            "interior: {shelves: {count: 3, load: [books, files]}}",
            "interior.shelves.load: there are 3 of them, and the list says what 2 carry",
        ),
        (
            "interior: {load: 10 t}",
            "interior.load: 10000.0 kg on 1000 mm is more than a shelf carries: at most "
            "714.3 kg/m makes sense (ten times a row of large textbooks: A. Kaw, numerical "
            "methods notes, chapter 03.00C, from pages per inch)",
        ),
        (
            "interior: {load: coats, drawers: {count: 1, stock: ply, bottom: {stock: thin}}}",
            "interior.load: clothes hang on no rail in a space full of drawers",
        ),
        (
            "carcass: {stock: ply, corners: butted, top_load: books}\nworktop: {stock: oak}",
            "carcass.top_load: nothing lies on the carcass's top: a worktop lies there",
        ),
        (
            "carcass: {stock: ply, corners: butted, top: none, top_load: books}",
            "carcass.top_load: nothing lies on the carcass's top: it has no level top",
        ),
    ],
)
def test_what_cannot_lie_there_is_told(text: str, told: str) -> None:
    assert problems_of(SIZE + text) == [told]


def made(wish: Wish) -> Unit:
    try:
        return unit_from("unit: mm\n", **wish)
    except ProblemsError:
        assume(False)
        raise


@given(wish=wishes())
@settings(
    max_examples=60,
    suppress_health_check=[
        HealthCheck.too_slow,
        HealthCheck.filter_too_much,
        HealthCheck.data_too_large,
    ],
)
def test_loads_lie_within_parts_that_exist(wish: Wish) -> None:
    unit = made(wish)
    parts = {part.ref: part for part in unit.parts}
    for load in unit.loading.loads:
        part = parts[load.ref]
        box = part.bounds()
        assert load.mass > 0
        for stretch in load.stretches:
            assert part.role not in UPRIGHTS
            assert box.low[0] - TOUCH <= stretch.start < stretch.stop <= box.high[0] + TOUCH
        for lump in load.lumps:
            assert (lump.up is not None) == (part.role in UPRIGHTS)
            assert box.low[0] - TOUCH <= lump.at <= box.high[0] + TOUCH
            if lump.up is not None:
                assert box.low[2] <= lump.up <= box.high[2] + TOUCH
    for ref in parts:
        stretches = sorted(
            (stretch.start, stretch.stop)
            for load in unit.loading.on(ref)
            for stretch in load.stretches
        )
        for (_, stop), (start, _) in pairwise(stretches):
            assert stop <= start + TOUCH


@given(wish=wishes())
@settings(
    max_examples=60,
    suppress_health_check=[
        HealthCheck.too_slow,
        HealthCheck.filter_too_much,
        HealthCheck.data_too_large,
    ],
)
def test_random_units_carry_what_was_asked(wish: Wish) -> None:
    """What is said in all lies whole on each level, and what is said per metre on every metre."""
    unit = made(wish)
    drawn = {part.ref for part in unit.parts if part.role is Role.DRAWER_BOTTOM}
    for load in unit.loading.loads:
        masses = [each.mass for each in load.stretches]
        if load.said == "30 kg":
            assert masses == pytest.approx([30] * len(masses))
        if load.said == "25 kg/m" and load.ref not in drawn:
            assert {(each.at_start, each.at_stop) for each in load.stretches} == {(25, 25)}
        if load.said == "television 18 kg":
            assert (masses, {each.mass for each in load.lumps}) == ([], {18})
        if load.said == "coats 10 kg/m":
            assert all(each.up is not None for each in load.lumps)
        assert load.said != "nothing"
        assert load.assumed <= (load.source is not None)


def test_places_across_are_mirrored_with_the_unit() -> None:
    """From 100 to 400 of a clear width of 1000, and from 600 to 900."""
    one = by_ref(carried("interior: {load: {of: 5 kg/m, growing_to: 9 kg/m, from: 100, to: 400}}"))
    other = by_ref(
        carried("interior: {load: {of: 9 kg/m, growing_to: 5 kg/m, from: 600, to: 900}}")
    )
    (there,), (back,) = one["BT1"].stretches, other["BT1"].stretches
    assert (1036 - there.stop, 1036 - there.start) == (back.start, back.stop)
    assert (there.at_start, there.at_stop) == (back.at_stop, back.at_start)
    assert there.mass == pytest.approx(0.3 * 7)


@given(wish=wishes())
@settings(
    max_examples=40,
    suppress_health_check=[
        HealthCheck.too_slow,
        HealthCheck.filter_too_much,
        HealthCheck.data_too_large,
    ],
)
def test_a_mirror_image_carries_the_mirror_image(wish: Wish) -> None:
    unit, image = made(wish), made(mirrored(wish))
    width = wish["size"]["width"]

    def laid(unit: Unit, turn: bool) -> dict[Any, float]:
        heights = {part.ref: part.bounds().low[2] for part in unit.parts}
        found: dict[Any, float] = defaultdict(float)
        for load in unit.loading.loads:
            for stretch in load.stretches:
                ends = (stretch.start, stretch.stop)
                if turn:
                    ends = (width - stretch.stop, width - stretch.start)
                key = (load.said, *(round(x, 2) for x in ends), round(heights[load.ref], 2))
                found[key] += stretch.mass
            for lump in load.lumps:
                at = width - lump.at if turn else lump.at
                found[load.said, round(at, 2), lump.up and round(lump.up, 2)] += lump.mass
        return found

    assert laid(image, turn=True) == pytest.approx(laid(unit, turn=False))


asked = st.sampled_from(["7 kg", "nothing", "0.5 kg", "television 3 kg"])


@given(
    columns=st.lists(
        st.tuples(st.integers(0, 4), asked, st.booleans(), st.booleans()), min_size=2, max_size=4
    ),
    bottom=st.booleans(),
)
@settings(max_examples=40)
def test_all_that_is_asked_is_carried(
    columns: list[tuple[int, str, bool, bool]], bottom: bool
) -> None:
    """So much on each shelf and each floor that there is: added up from the wishes alone."""
    weights = {"7 kg": 7.0, "nothing": 0.0, "0.5 kg": 0.5, "television 3 kg": 3.0}
    spaces, total = [], 0.0
    for count, load, fixed, own in columns:
        shelves = {"count": count, "fixed": fixed} | ({"load": "2 kg"} if own else {})
        space = {"width": "1 share", "load": load}
        spaces.append(space | ({"shelves": shelves} if count else {}))
        total += count * (2.0 if own else weights[load]) + bottom * weights[load]
    unit = unit_from(
        "unit: mm\nsize: {width: 1600, height: 2000, depth: 300}\n",
        interior={"columns": spaces},
        carcass={"stock": "ply", "corners": "butted", "bottom": "between" if bottom else "none"},
    )
    assert sum(load.mass for load in unit.loading.loads) == pytest.approx(total)
    assert not any(load.assumed for load in unit.loading.loads)
