"""The set-out against sizes worked out by hand."""

from __future__ import annotations

import pytest

from kit.specs import of_role, problems_of, unit_from
from rodwright.checks import check_solids
from rodwright.unit import Easing, Groove, Hole, Housing, JointKind, Mitre, Notch, Rebate, Role

SIZE = "size: {width: 800, height: 1000, depth: 300}\n"


@pytest.mark.parametrize(
    ("corners", "top", "bottom", "side", "level"),
    [
        ("butted", "between", "between", 1000.0, 764.0),
        ("housed", "between", "between", 1000.0, 776.0),  # 6 mm into each side
        ("butted", "over", "over", 964.0, 800.0),
        ("housed", "over", "over", 976.0, 800.0),
        ("butted", "over", "between", 982.0, None),
    ],
)
def test_corners(corners: str, top: str, bottom: str, side: float, level: float | None) -> None:
    carcass = {"stock": "ply", "corners": corners, "top": top, "bottom": bottom}
    unit = unit_from(SIZE, carcass=carcass)
    assert [part.blank.length for part in of_role(unit, Role.SIDE)] == [side, side]
    assert unit.size == pytest.approx((800, 1000, 300))
    if level is not None:
        ends = of_role(unit, Role.TOP) + of_role(unit, Role.BOTTOM)
        assert [part.blank.length for part in ends] == [level, level]


@pytest.mark.parametrize(
    ("back", "frame", "side", "shelf"),
    [
        (None, False, 300.0, 300.0),
        ("applied", False, 294.0, 294.0),
        ("rebated", False, 300.0, 294.0),
        ("grooved", False, 300.0, 284.0),  # 10 behind the groove and 6 of back
        ("applied", True, 272.0, 272.0),
        ("rebated", True, 278.0, 272.0),
    ],
)
def test_depth_of_sides_and_shelves(
    back: str | None, frame: bool, side: float, shelf: float
) -> None:
    """Common practice, no source: finished depth less back less face frame, by how it's let in."""
    more: dict[str, object] = {"interior": {"shelves": {"count": 1}}}
    if back:
        more["back"] = {"stock": "thin", "fixing": back}
    if frame:
        more["face_frame"] = {"stock": "ash", "width": 45}
    unit = unit_from(SIZE, **more)
    assert {part.blank.width for part in of_role(unit, Role.SIDE)} == {side}
    assert {part.blank.width for part in of_role(unit, Role.SHELF)} == {shelf}
    assert unit.size[2] == pytest.approx(300.0)


def test_fitted_size_leaves_the_usual_gaps() -> None:
    """Common practice, no source: an opening is underfilled by 6-8 mm."""
    unit = unit_from("opening: {width: {bottom: 812, top: 806}, height: 2000, depth: 300}\n")
    assert 806 - unit.size[0] == pytest.approx(7.0)
    assert 2000 - unit.size[1] == pytest.approx(7.0)


def test_back_in_a_groove() -> None:
    unit = unit_from(SIZE, back={"stock": "thin", "fixing": "grooved", "depth": 8, "clearance": 1})
    (back,) = of_role(unit, Role.BACK)
    assert back.blank.size == pytest.approx((1000 - 36 + 16 - 2, 800 - 36 + 16 - 2, 6))
    left = of_role(unit, Role.SIDE)[0]
    assert left.workings == (Groove(left.workings[0].surface, 284.0, 6.0, 8.0, 10.0, 990.0),)


def test_loose_shelf_rests_on_four_pins() -> None:
    shelves = {"at": [400], "fixed": False, "clearance": 2, "holes": {"near": 0}}
    unit = unit_from(SIZE, interior={"shelves": shelves})
    (shelf,) = of_role(unit, Role.SHELF)
    assert shelf.blank.length == 760.0
    holes = [
        part.placement.to_unit((*hole.position, 0.0))
        for part in of_role(unit, Role.SIDE)
        for hole in part.workings
        if isinstance(hole, Hole)
    ]
    assert sorted(round(hole[1], 3) for hole in holes) == [37.0, 37.0, 263.0, 263.0]
    assert {round(hole[2] + 2.5, 6) for hole in holes} == {shelf.bounds().low[2]}
    pins = [fixing for joint in unit.joints for fixing in joint.fixings]
    assert sum(fixing.count for fixing in pins) == 4
    assert {clearance.least for clearance in unit.clearances} == {2.0}


@pytest.mark.parametrize(
    ("fixing", "widths", "seam"),
    [("applied", [309.0, 491.0], 0.0), ("rebated", [309 - 18 + 9 - 1.5, 491 - 18 + 9 - 1.5], 1.0)],
)
def test_a_split_back_meets_behind_the_divider(
    fixing: str, widths: list[float], seam: float
) -> None:
    # The divider's middle is at 18 + 282 + 9 = 309.
    interior = {"columns": [{"width": 282}, {"width": "1 share", "shelves": {"count": 1}}]}
    back = {"stock": "thin", "fixing": fixing, "split": True}
    unit = unit_from(SIZE, interior=interior, back=back)
    left, right = of_role(unit, Role.BACK)
    assert [left.blank.width, right.blank.width] == widths
    assert right.bounds().low[0] - left.bounds().high[0] == pytest.approx(seam)
    assert check_solids(unit) == ()


def test_stopped_housing_and_its_notch() -> None:
    shelves = {"count": 1, "ends": "housed", "stopped": 12}
    unit = unit_from(SIZE, interior={"shelves": shelves})
    (shelf,) = of_role(unit, Role.SHELF)
    left, right = of_role(unit, Role.SIDE)
    assert shelf.workings == (Notch(0.0, 0.0, 6.0, 12.0), Notch(770.0, 0.0, 6.0, 12.0))
    runs = [
        (working.start, working.stop)
        for side in (left, right)
        for working in side.workings
        if isinstance(working, Housing)
    ]
    assert runs == [(12.0, None), (0.0, 288.0)]  # the right side is measured from its rear


def test_layers_share_one_housing_and_are_trimmed_after_glue_up() -> None:
    shelves = {"count": 1, "layers": 2, "ends": "housed"}
    unit = unit_from(SIZE, interior={"shelves": shelves})
    lower, upper = of_role(unit, Role.SHELF)
    assert (lower.ref, upper.ref) == ("SH1a", "SH1b")
    assert lower.blank.rough_size == (782.0, 306.0, 18.0)
    housings = [w for w in of_role(unit, Role.SIDE)[0].workings if isinstance(w, Housing)]
    assert [housing.width for housing in housings] == [36.0]
    assert [joint.kind for joint in unit.joints].count(JointKind.FACE_GLUED) == 1


def test_columns_and_rows() -> None:
    interior = {
        "columns": [
            {"width": 300, "rows": [{"height": 200}, {"height": "1 share"}]},
            {"width": "1 share"},
        ]
    }
    unit = unit_from(SIZE, interior=interior)
    (divider,) = of_role(unit, Role.DIVIDER)
    (shelf,) = of_role(unit, Role.SHELF)
    assert divider.bounds().low[0] == 318.0
    assert (shelf.blank.length, shelf.bounds().high[2]) == (300.0, 1000 - 18 - 200)


@pytest.mark.parametrize("corners", ["mitred", "butted"])
def test_face_frame(corners: str) -> None:
    frame = {"stock": "ash", "width": 50, "thickness": 20, "corners": corners, "eased": 3}
    unit = unit_from(SIZE, face_frame=frame)
    stiles, rails = of_role(unit, Role.STILE), of_role(unit, Role.RAIL)
    assert [part.blank.length for part in stiles] == [1000.0, 1000.0]
    assert [part.blank.length for part in rails] == [800.0 if corners == "mitred" else 700.0] * 2
    assert stiles[0].shape == stiles[1].shape and rails[0].shape == rails[1].shape
    mitres = [w for part in (*stiles, *rails) for w in part.workings if isinstance(w, Mitre)]
    assert len(mitres) == (8 if corners == "mitred" else 0)
    eased = [w for part in stiles for w in part.workings if isinstance(w, Easing)]
    assert {(w.start, w.stop) for w in eased} == (
        {(0.0, None)} if corners == "mitred" else {(50.0, 950.0)}
    )


def test_frame_overhang_covers_the_gaps() -> None:
    frame = {"stock": "ash", "width": 50, "overhang": {"sides": 3, "top": 5}}
    unit = unit_from(SIZE, face_frame=frame)
    assert unit.size == pytest.approx((806, 1005, 300))


def test_lipping_inside_a_face_frame() -> None:
    more = {
        "interior": {"shelves": {"count": 1}},
        "face_frame": {"stock": "ash", "width": 45, "thickness": 22},
        "lipping": {"stock": "ash", "thickness": 18},
    }
    unit = unit_from(SIZE, **more)
    (strip,) = of_role(unit, Role.LIPPING)
    assert strip.blank.size == (710.0, 18.0, 18.0)
    assert strip.bounds().low[1] == -18.0
    assert of_role(unit, Role.SHELF)[0].lipped == ("front",)


def test_lippings_without_a_frame_end_flush() -> None:
    lipping = {"stock": "ash", "thickness": 10, "edges": ["shelves", "sides"]}
    unit = unit_from(SIZE, interior={"shelves": {"count": 1}}, lipping=lipping)
    strips = of_role(unit, Role.LIPPING)
    assert {strip.bounds().low[1] for strip in strips} == {0.0}
    assert {part.blank.width for part in of_role(unit, Role.SHELF)} == {290.0}
    assert unit.size[2] == 300.0


def test_rebate_at_the_corner_of_a_housed_carcass() -> None:
    unit = unit_from(SIZE, carcass={"stock": "ply", "corners": "housed"})
    left = of_role(unit, Role.SIDE)[0]
    assert {type(working) for working in left.workings} == {Rebate}
    assert {joint.kind for joint in unit.joints} == {JointKind.REBATE}


@pytest.mark.parametrize(
    ("more", "where"),
    [
        ({"carcass": {"stock": "plyy"}}, "carcass.stock"),
        ({"size": {"width": 30, "height": 1000, "depth": 300}}, "size.width"),
        ({"size": {"width": 800, "height": 30, "depth": 300}}, "size.height"),
        ({"size": {"width": 800, "height": 900}}, "size"),
        ({"size": {"height": 800, "depth": 300}}, "size"),
        ({"size": {"width": 800, "depth": 300}}, "size"),
        ({"size": {"width": 800, "height": 900, "depth": 5}, "back": {"stock": "thin"}},
         "size.depth"),
        ({"carcass": {"stock": "ply", "housing_depth": 12}}, "carcass.housing_depth"),
        ({"carcass": {"stock": "ply", "bottom": "over", "bottom_height": 50}},
         "carcass.bottom_height"),
        ({"interior": {"columns": [{"width": 300}, {"width": 300}]}}, "interior.columns"),
        ({"interior": {"shelves": {"count": 60}}}, "interior.shelves.count"),
        ({"interior": {"shelves": {"count": 1, "stock": "elm"}}}, "interior.shelves.stock"),
        ({"interior": {"shelves": {"count": 1, "setback": 400}}}, "interior.shelves.setback"),
        ({"interior": {"shelves": {"count": 1}, "columns": [{"width": 1}, {"width": 1}]}},
         "interior.shelves"),
        ({"back": {"stock": "thin", "fixing": "rebated", "depth": 16}}, "back.depth"),
        ({"back": {"stock": "thin", "fixing": "grooved", "clearance": 7}}, "back.clearance"),
        ({"face_frame": {"stock": "ash", "width": 45, "thickness": 30}}, "face_frame.thickness"),
        ({"face_frame": {"stock": "ash", "width": 450}}, "face_frame.width"),
        ({"face_frame": {"stock": "ash", "width": 45, "rail_width": 60}},
         "face_frame.rail_width"),
        ({"face_frame": {"stock": "ash", "width": 45, "eased": 25}}, "face_frame.eased"),
        ({"face_frame": {"stock": "ash", "width": 45, "setback": 5}}, "face_frame.setback"),
        ({"face_frame": {"stock": "ash", "width": 45},
          "lipping": {"stock": "ash", "thickness": 18, "edges": ["sides"]}}, "lipping.edges.0"),
        ({"interior": {"shelves": {"count": 1, "layers": 2}},
          "lipping": {"stock": "ash", "thickness": 30}}, "lipping.thickness"),
    ],
)  # fmt: skip
def test_wishes_that_make_no_unit(more: dict[str, object], where: str) -> None:
    said = problems_of("size: {width: 800, height: 1000, depth: 300}\n", **more)
    assert [problem.split(":")[0] for problem in said] == [where]


def test_problems_are_reported_together() -> None:
    said = problems_of(
        SIZE,
        interior={"columns": [{"width": 300}, {"width": 300, "shelves": {"count": 99}}]},
        back={"stock": "nought", "fixing": "applied"},
        face_frame={"stock": "ash", "width": 45, "eased": 30},
        lipping={"stock": "nil", "thickness": 5},
    )
    assert [problem.split(":")[0] for problem in said] == [
        "back.stock",
        "lipping.stock",
        "face_frame.eased",
        "interior.columns",
    ]


@pytest.mark.parametrize("width", [13, 16, 18, 24, 45])
@pytest.mark.parametrize("corners", ["butted", "housed"])
def test_a_narrow_frame_claims_no_joint_where_the_sides_are_housed_out(
    width: int, corners: str
) -> None:
    frame = {"stock": "ash", "width": width, "corners": "butted"}
    unit = unit_from(SIZE, carcass={"stock": "ply", "corners": corners}, face_frame=frame)
    assert check_solids(unit) == ()
    met = {(joint.first, joint.second) for joint in unit.joints}
    assert {("SD1", "ST1"), ("SD2", "ST2"), ("ST1", "RL1"), ("ST2", "RL2")} <= met
