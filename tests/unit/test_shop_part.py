"""Parts as a shop gets them: sizes and places worked out by hand."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit.samples import ASH, MINUS_X, X, Y, Z
from kit.specs import unit_from
from rodwright.geometry import Box
from rodwright.handover.workings import describe_workings
from rodwright.unit import (
    Bevel,
    Blank,
    Easing,
    Edging,
    Grain,
    Groove,
    Hole,
    Housing,
    Mitre,
    Mortise,
    Notch,
    Part,
    Placement,
    PocketHole,
    Rebate,
    Role,
    Surface,
    Working,
)
from rodwright.unit.shop_part import ShopPart, shop_part

LEVEL = Placement((0.0, 0.0, 0.0), X, Y)
ALL_ROUND = (Surface.FACE_EDGE, Surface.BACK_EDGE, Surface.NEAR_END, Surface.FAR_END)


def piece(
    *workings: Working,
    edged: tuple[Surface, ...] = (),
    thick: float = 2.0,
    trim: tuple[float, float] = (0.0, 0.0),
    trim_at: tuple[Surface, ...] = (),
    placement: Placement = LEVEL,
    role: Role = Role.SHELF,
) -> Part:
    """A 400 x 120 x 20 piece, its edging 2 mm."""
    blank = Blank(
        400.0,
        120.0,
        20.0,
        ASH,
        Grain.LENGTHWISE,
        trim_length=trim[0],
        trim_width=trim[1],
        trim_at=trim_at,
    )
    edging = tuple(Edging(surface, "birch veneer", thick) for surface in edged)
    return Part("X1", "Piece", role, "Sample", blank, placement, workings, edged=edging)


def cut(*workings: Working, edged: tuple[Surface, ...] = (), **more: object) -> ShopPart:
    return shop_part([piece(*workings, edged=edged, **more)])  # type: ignore[arg-type]


DOORS = """
size: {width: 700, height: 602, depth: 400}
stock:
  ply: {kind: sheet, material: birch plywood, thickness: 18, size: [2440, 1220]}
interior: {doors: {hung: overlay, count: 1}}
edging: {material: abs, thickness: 1, edges: [doors]}
"""


def test_a_door_with_edging_has_the_rough_size_of_the_list() -> None:
    unit = unit_from(DOORS)
    (door,) = (part for part in unit.parts if part.role is Role.DOOR)
    shop = shop_part([door])
    assert shop.part.blank.size == pytest.approx(door.rough_size)
    assert shop.part.blank.size[0] == pytest.approx(door.blank.length - 2)
    length, width, thickness = door.blank.size
    assert shop.finished.low == pytest.approx((-1, -1, 0))
    assert shop.finished.high == pytest.approx((length - 1, width - 1, thickness))
    assert shop.state == "as cut"
    cups = [each for each in shop.part.workings if isinstance(each, Hole) and each.depth]
    assert cups
    assert all(each.surface is Surface.FACE for each in cups)  # hinges are in the rear face
    assert shop.up == "rear face"
    whole = shop_part([door], "finished")
    assert whole.part.blank.size == door.blank.size
    assert whole.finished == Box((0.0, 0.0, 0.0), door.blank.size)
    assert whole.state == "finished"
    for before, after in zip(whole.part.workings, shop.part.workings, strict=True):
        assert isinstance(before, Hole)
        assert isinstance(after, Hole)
        assert after.position == pytest.approx([at - 1 for at in before.position])


# --- edging: the blank is cut smaller ---------------------------------------------------

FACE = Surface.FACE


@pytest.mark.parametrize(
    ("edged", "size", "low"),
    [
        ((), (400.0, 120.0), (0.0, 0.0)),
        ((Surface.FACE_EDGE,), (400.0, 118.0), (0.0, -2.0)),
        ((Surface.BACK_EDGE,), (400.0, 118.0), (0.0, 0.0)),
        ((Surface.FACE_EDGE, Surface.NEAR_END), (398.0, 118.0), (-2.0, -2.0)),
        (ALL_ROUND, (396.0, 116.0), (-2.0, -2.0)),
    ],
)
def test_the_blank_is_smaller_and_the_outline_reaches_past_it(
    edged: tuple[Surface, ...], size: tuple[float, float], low: tuple[float, float]
) -> None:
    shop = cut(edged=edged)
    assert shop.part.blank.size == (*size, 20.0)
    assert shop.finished == Box((*low, 0.0), (low[0] + 400.0, low[1] + 120.0, 20.0))
    assert shop.part.edged == ()
    assert {each.surface for each in shop.edged} == set(edged)
    assert shop.part.rough_size == shop.part.blank.size


@pytest.mark.parametrize(
    ("working", "expected"),
    [
        # What runs out at an edge runs out at the edge as cut; what stops short stays.
        (Housing(FACE, 100.0, 18.0, 6.0), Housing(FACE, 98.0, 18.0, 6.0)),
        (Housing(FACE, 100.0, 18.0, 6.0, 0.0, 120.0), Housing(FACE, 98.0, 18.0, 6.0)),
        (Housing(FACE, 100.0, 18.0, 6.0, 15.0), Housing(FACE, 98.0, 18.0, 6.0, 13.0)),
        (Housing(FACE, 100.0, 18.0, 6.0, 0.0, 110.0), Housing(FACE, 98.0, 18.0, 6.0, 0.0, 108.0)),
        (Groove(FACE, 30.0, 6.0, 7.0, 10.0, 390.0), Groove(FACE, 28.0, 6.0, 7.0, 8.0, 388.0)),
        (Groove(Surface.FACE_EDGE, 7.0, 5.0, 6.0), Groove(Surface.FACE_EDGE, 7.0, 5.0, 4.0)),
        (Rebate(FACE, Surface.BACK_EDGE, 10.0, 8.0), Rebate(FACE, Surface.BACK_EDGE, 8.0, 8.0)),
        (
            Rebate(FACE, Surface.FAR_END, 10.0, 8.0, 20.0),
            Rebate(FACE, Surface.FAR_END, 8.0, 8.0, 18.0),
        ),
        (Hole(FACE, (60.0, 40.0), 5.0, 9.0), Hole(FACE, (58.0, 38.0), 5.0, 9.0)),
        (Hole(FACE, (60.0, 40.0), 5.0), Hole(FACE, (58.0, 38.0), 5.0)),
        (  # as deep in the finished edge
            Hole(Surface.FAR_END, (60.0, 10.0), 8.0, 25.0),
            Hole(Surface.FAR_END, (58.0, 10.0), 8.0, 23.0),
        ),
        (Notch(0.0, 90.0, 30.0, 30.0), Notch(0.0, 88.0, 28.0, 28.0)),
        (Notch(100.0, 40.0, 50.0, 30.0), Notch(98.0, 38.0, 50.0, 30.0)),
        (
            Mortise(FACE, (100.0, 40.0), (50.0, 8.0), 6.0),
            Mortise(FACE, (98.0, 38.0), (50.0, 8.0), 6.0),
        ),
        (
            Mortise(Surface.NEAR_END, (40.0, 6.0), (50.0, 8.0), 30.0),
            Mortise(Surface.NEAR_END, (38.0, 6.0), (50.0, 8.0), 28.0),
        ),
        # A mitre goes with its end.
        (
            Mitre(Surface.FAR_END, 45.0, Surface.REVERSE),
            Mitre(Surface.FAR_END, 45.0, Surface.REVERSE),
        ),
    ],
)
def test_places_are_measured_from_the_edges_as_cut(working: Working, expected: Working) -> None:
    """2 mm of edging on all four: every place is 2 nearer to the edge."""
    assert cut(working, edged=ALL_ROUND).part.workings == (expected,)


def test_nothing_changes_across_an_edge_without_edging() -> None:
    housing = Housing(FACE, 100.0, 18.0, 6.0, 0.0, 110.0)
    front = cut(housing, edged=(Surface.FACE_EDGE,)).part.workings
    assert front == (replace(housing, stop=108.0),)
    assert cut(housing, edged=(Surface.BACK_EDGE,)).part.workings == (housing,)


def test_a_pocket_screw_still_leaves_the_finished_end_where_it_should() -> None:
    """Its axis falls by tan 15 degrees, 0.26795, on each mm; 2 mm less of it is cut."""
    pocket = PocketHole(FACE, Surface.FAR_END, 60.0, 10.0, 25.0, 9.5, 4.0, 15.0)
    (moved,) = cut(pocket, edged=ALL_ROUND).part.workings
    assert isinstance(moved, PocketHole)
    assert moved.position == 58.0
    assert moved.exit == pytest.approx(10.0 - 2 * 0.267949, abs=1e-5)
    assert moved.stop == pytest.approx(25.0 - 2 / 0.965926, abs=1e-5)  # cos 15 degrees


def test_an_arris_of_edging_is_rounded_once_it_is_there() -> None:
    """The other arrises are rounded in the blank."""
    easings = [Easing(FACE, edge, 3.0) for edge in (Surface.FACE_EDGE, Surface.BACK_EDGE)]
    shop = cut(*easings, edged=(Surface.FACE_EDGE,))
    assert shop.part.workings == (easings[1],)
    assert shop.later == (easings[0],)
    assert describe_workings(shop, "mm") == (
        "eased 3 radius where the upper face meets the rear edge",
        "once edged: eased 3 radius where the upper face meets the front edge",
    )
    assert shop_part([piece(*easings, edged=(Surface.FACE_EDGE,))], "finished").later == ()


def test_a_corner_cut_off_stays_where_it_is() -> None:
    """60 off the end and 30 off the edge of the finished piece, on a line of slope 2."""
    corner = Bevel(Surface.FAR_END, Surface.BACK_EDGE, 30.0, 60.0)
    (moved,) = cut(corner, edged=(Surface.FAR_END,)).part.workings
    # The end as cut is 2 nearer: 1 less along it, 2 less along the edge.
    assert moved == Bevel(Surface.FAR_END, Surface.BACK_EDGE, 29.0, 58.0)


def test_a_frame_mitre_keeps_its_long_point_when_the_edge_is_cut_smaller() -> None:
    """45 degrees: 2 mm off the long edge take 2 mm off the length along the edge as cut."""
    shop = cut(Mitre(Surface.FAR_END, 45.0, Surface.BACK_EDGE), edged=(Surface.BACK_EDGE,))
    (bevel,) = shop.part.workings
    assert isinstance(bevel, Bevel)
    ((point, normal),) = bevel.planes(shop.part.blank.size)
    ((before, facing),) = Mitre(Surface.FAR_END, 45.0, Surface.BACK_EDGE).planes(
        (400.0, 120.0, 20.0)
    )
    assert normal == pytest.approx(facing)
    offset = sum((a - b) * n for a, b, n in zip(point, before, normal, strict=True))
    assert offset == pytest.approx(0.0, abs=1e-9)


# --- trimming: the blank is cut larger --------------------------------------------------


def test_layers_are_cut_over_all_round() -> None:
    """6 in all: 3 at each end and edge; what stops short stops as far from the finished edge."""
    shop = cut(
        Housing(FACE, 100.0, 18.0, 6.0),
        Housing(FACE, 200.0, 18.0, 6.0, 15.0),
        trim=(6.0, 6.0),
    )
    assert shop.part.blank.size == (406.0, 126.0, 20.0)
    assert shop.finished == Box((3.0, 3.0, 0.0), (403.0, 123.0, 20.0))
    assert shop.part.workings == (
        Housing(FACE, 103.0, 18.0, 6.0),
        Housing(FACE, 203.0, 18.0, 6.0, 18.0),
    )
    assert shop.notes == (
        "cut 3 over at both ends and both edges",
        "glue the layers up first, then trim them together to 400 x 120",
    )


def test_a_lipping_is_trimmed_flush_once_it_is_glued_on() -> None:
    assert cut(trim=(6.0, 2.0), role=Role.LIPPING).notes == (
        "cut 3 over at both ends",
        "cut 1 over at both edges",
        "glue it on first, then trim it flush to 400 x 120",
    )


def test_a_front_whose_grain_runs_on_says_so_as_it_is_cut() -> None:
    front = replace(piece(), grain_run="1")
    assert shop_part([front]).notes == (
        "its grain runs on through its neighbours (run 1): they are cut in their order from one "
        "piece",
    )
    assert shop_part([front], "finished").notes == ()


def test_layers_with_edging_are_trimmed_before_it() -> None:
    shop = cut(trim=(6.0, 6.0), edged=(Surface.FACE_EDGE,))
    assert shop.part.blank.size == (406.0, 124.0, 20.0)
    assert shop.finished.low == (3.0, 1.0, 0.0)  # 3 over, less 2 that edging makes up
    assert shop.notes == (
        "cut 3 over at both ends and both edges",
        "glue the layers up first, then trim them together to 400 x 118, before edging",
        "cut 2 under at the front edge, which its edging (birch veneer) makes up",
    )


def test_a_mitred_member_is_cut_long_at_both_mitres() -> None:
    mitres = [Mitre(end, 45.0, Surface.BACK_EDGE) for end in (Surface.NEAR_END, Surface.FAR_END)]
    easing = Easing(FACE, Surface.FACE_EDGE, 4.0)
    shop = cut(*mitres, easing, trim=(4.0, 0.0))
    assert shop.part.blank.size == (404.0, 120.0, 20.0)
    assert shop.part.workings == (*mitres, easing)
    assert shop.finished.low == (2.0, 0.0, 0.0)
    assert shop.notes == ("cut 2 over at both ends", "trim it to 400 long when it is fitted")
    assert describe_workings(shop, "mm")[1] == (
        "404 over the long points, 164 over the short points"
    )


def test_one_mitre_is_cut_long_and_the_square_end_is_true() -> None:
    shop = cut(Mitre(Surface.NEAR_END, 45.0, Surface.BACK_EDGE), trim=(4.0, 0.0))
    assert shop.finished.low == (4.0, 0.0, 0.0)
    assert shop.notes[0] == "cut 4 over at the left end"
    square = cut(Mortise(Surface.FACE_EDGE, (100.0, 6.0), (50.0, 8.0), 30.0), trim=(4.0, 0.0))
    assert square.finished.low == (0.0, 0.0, 0.0)  # places run from the end that is true
    assert square.part.workings[0] == Mortise(Surface.FACE_EDGE, (100.0, 6.0), (50.0, 8.0), 30.0)
    assert square.notes[0] == "cut 4 over at the right end"


def test_bores_in_an_end_that_is_trimmed_come_out_as_deep_as_they_should() -> None:
    shop = cut(Hole(Surface.FAR_END, (60.0, 10.0), 8.0, 25.0), trim=(4.0, 0.0))
    assert shop.part.workings == (Hole(Surface.FAR_END, (60.0, 10.0), 8.0, 29.0),)
    assert shop.notes[-1] == (
        "bores in the right end are 4 deeper here, which trimming takes off; better made after it"
    )


SCRIBED = """
opening: {width: 1200, height: 2000, depth: 400}
fit: {sides: 20}
interior: {shelves: {count: 2}}
scribes: {stock: ash}
"""


def test_a_scribe_has_its_allowance_at_the_wall() -> None:
    unit = unit_from(SCRIBED)
    scribes = [part for part in unit.parts if part.role is Role.SCRIBE]
    assert [(part.name, *shop_part([part]).notes) for part in scribes] == [
        ("Left scribe", "cut 6 over at the left edge", "scribe it to the wall there"),
        ("Right scribe", "cut 6 over at the right edge", "scribe it to the wall there"),
    ]


def test_a_finished_part_says_so() -> None:
    part = piece(trim=(6.0, 6.0), edged=ALL_ROUND)
    assert shop_part([part], "finished").notes == (
        "sizes and places as they are once it is glued up, trimmed and edged",
    )
    assert shop_part([piece()], "finished").notes == ()


# --- how it lies ------------------------------------------------------------------------


def test_the_second_side_and_how_the_piece_is_turned_over_for_it() -> None:
    both = (Housing(FACE, 100.0, 18.0, 6.0), Hole(Surface.REVERSE, (60.0, 40.0), 5.0, 9.0))
    shop = cut(*both, Housing(FACE, 200.0, 18.0, 6.0))
    assert shop.up == "upper face"
    assert shop.reference == "x from the left end, y from the front edge"
    assert shop.second_side == (
        "underside: turn it over about its length; x still from the left end, y from the rear "
        "edge (120 less y as listed)"
    )
    assert cut(both[0]).second_side is None
    assert cut(Hole(Surface.REVERSE, (60.0, 40.0), 5.0)).second_side is None  # right through


def test_all_pieces_of_a_row_lie_alike() -> None:
    """Turned end for end in the unit, so that each has its own near end."""
    pair = [
        replace(piece(Housing(Surface.REVERSE, 100.0, 18.0, 6.0), placement=placement), ref=ref)
        for ref, placement in (
            ("ST1", Placement((0, 0, 0), Z, MINUS_X)),
            ("ST2", Placement((0, 0, 400.0), (0.0, 0.0, -1.0), X)),
        )
    ]
    shop = shop_part(pair)
    assert [each.ref for each in shop.pieces] == ["ST1", "ST2"]
    assert len({each.shape for each in shop.pieces}) == 1
    assert shop.reference == "x from the near end, y from the face edge"
    assert [each.placement.length for each in shop.pieces] == [Z, (0.0, 0.0, -1.0)]
