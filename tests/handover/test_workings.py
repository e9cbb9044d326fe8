"""Workings in words: every text worked out by hand from the part's figures."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

import pytest

from kit.samples import ASH, MINUS_Y, X, Y, Z, worked_part
from rodwright.handover.workings import describe_workings
from rodwright.lengths import LengthUnit
from rodwright.unit import (
    Bevel,
    Blank,
    Easing,
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
from rodwright.unit.shop_part import shop_part

LEVEL = Placement((0, 0, 0), X, Y)


def part(*workings: Working, placement: Placement = LEVEL) -> Part:
    """A 400 x 120 x 20 piece."""
    blank = Blank(400.0, 120.0, 20.0, ASH, Grain.LENGTHWISE)
    return Part("X1", "Piece", Role.SHELF, "Sample", blank, placement, workings)


def told(pieces: Sequence[Part], unit: LengthUnit = "mm") -> tuple[str, ...]:
    return describe_workings(shop_part(pieces, "cut", unit), unit)


def own_words(*workings: Working) -> tuple[str, ...]:
    """Texts for two pieces that lie differently in every way."""
    return told([part(*workings), part(*workings, placement=Placement((0, 0, 0), Z, X))])


@pytest.mark.parametrize(
    ("working", "text"),
    [
        (
            Housing(Surface.REVERSE, 150.0, 18.0, 6.0),
            "housing 18 x 6 deep at 150 from the near end, on the face",  # turned over for it
        ),
        (
            Housing(Surface.FACE, 150.0, 18.0, 6.0, 0.0, 110.0),
            "housing 18 x 6 deep at 150 from the near end, on the face, "
            "stopped 10 short of the back edge",
        ),
        (
            Housing(Surface.FACE, 150.0, 18.0, 6.0, 15.0),
            "housing 18 x 6 deep at 150 from the near end, on the face, "
            "stopped 15 short of the face edge",
        ),
        (
            Groove(Surface.FACE_EDGE, 7.0, 5.0, 6.0, 100.0, 220.0),
            "groove 5 x 6 deep at 7 from the reverse, in the face edge, "
            "stopped at both ends, from 100 to 220 from the near end",
        ),
        (
            Rebate(Surface.REVERSE, Surface.BACK_EDGE, 10.0, 8.0, 0.0, 300.0),
            "rebate 10 x 8 deep along the face edge, on the face, stopped 100 short of the far end",
        ),
        (
            Notch(370.0, 90.0, 30.0, 30.0),
            "notch 30 along x 30 across, right through, "
            "at the corner of the far end and the back edge",
        ),
        (
            Notch(100.0, 0.0, 50.0, 30.0),
            "notch 50 along x 30 across, right through, "
            "out of the face edge, at 100 from the near end",
        ),
        (
            Notch(100.0, 40.0, 50.0, 30.0),
            "notch 50 along x 30 across, right through, "
            "at 100 from the near end and 40 from the face edge",
        ),
        (
            Easing(Surface.FACE, Surface.FACE_EDGE, 4.0),
            "eased 4 radius where the face meets the face edge",
        ),
        (
            Hole(Surface.FACE, (320.0, 60.0), 8.0),
            "hole 8 dia., right through, on the face, 60 from the face edge, "
            "at 320 from the near end",
        ),
        (
            Hole(Surface.FAR_END, (60.0, 8.0), 6.0, 25.0),
            "hole 6 dia., 25 deep, in the far end, 8 from the reverse, at 60 from the face edge",
        ),
        (
            # tan 26.565 degrees is a half.
            Bevel(Surface.FACE, Surface.BACK_EDGE, 5.0, 10.0),
            "bevel 26.6° where the face meets the back edge, 5 over the face, "
            "10 down the back edge",
        ),
        (
            Mortise(Surface.FACE_EDGE, (40.0, 6.0), (50.0, 8.0), 30.0, round_ends=True),
            "mortise 50 long along the length, 8 wide, round ends, 30 deep, in the face edge, "
            "centre at 65 from the near end and 10 from the reverse",
        ),
        (
            # 20 thick, so that it comes out.
            Mortise(Surface.FACE, (40.0, 50.0), (5.0, 16.0), 20.0, True, use="screw"),
            "slot 16 long across the width, 5 wide, round ends, right through, on the face, "
            "centre at 42.5 from the near end and 58 from the face edge",
        ),
        (
            PocketHole(Surface.REVERSE, Surface.FAR_END, 30.0, 9.0, 25.0, 9.5, 4.0),
            "pocket hole 9.5 dia. at 15° on the face, at 90 from the face edge, ending 25 "
            "before the far end, then 4 dia. out of it 9 below the face",
        ),
    ],
)
def test_one_working(working: Working, text: str) -> None:
    assert own_words(working) == (text,)


def test_holes_in_a_line_are_gathered_and_measured_from_one_end() -> None:
    holes = [Hole(Surface.FACE, (x, y), 5.0, 12.0) for y in (37.0, 83.0) for x in (132.0, 100.0)]
    assert own_words(*holes) == (
        "2 holes 5 dia., 12 deep, on the face, 37 from the face edge, "
        "at 100, 132 from the near end",
        "2 holes 5 dia., 12 deep, on the face, 83 from the face edge, "
        "at 100, 132 from the near end",
    )


def test_lengths_over_the_points_of_a_frame_mitre() -> None:
    # A 45 degree mitre over 120 mm takes 120 mm off the short side at each end.
    both = [Mitre(end, 45.0, Surface.BACK_EDGE) for end in (Surface.NEAR_END, Surface.FAR_END)]
    assert own_words(*both) == (
        "mitre 45° at both ends, long points on the back edge",
        "400 over the long points, 160 over the short points",
    )
    assert own_words(both[0]) == (
        "mitre 45° at the near end, long point on the back edge",
        "400 over the long point, 280 over the short point",
    )


def test_lengths_along_both_edges_where_the_mitres_slope_alike() -> None:
    slopes = (
        Mitre(Surface.NEAR_END, 45.0, Surface.BACK_EDGE),
        Mitre(Surface.FAR_END, 45.0, Surface.FACE_EDGE),
    )
    assert own_words(*slopes)[-1] == ("280 along the face edge, 280 along the back edge")


def test_a_bevel_gives_its_lengths_over_face_and_reverse() -> None:
    # 20 mm thick: tan 30 degrees is 0.57735, so 11.5 mm comes off.
    bevel = Mitre(Surface.FAR_END, 30.0, Surface.FACE)
    assert own_words(bevel) == (
        "bevel 30° at the far end, long point on the face",
        "388.5 along the reverse, 400 along the face",
    )


def test_inches_are_fractions() -> None:
    housing = Housing(Surface.REVERSE, 311.15, 19.05, 6.35)
    assert told([part(housing)], "in") == (
        "housing 3/4 x 1/4 deep at 12 1/4 from the left end, on the underside",
    )


def test_no_working_is_left_out() -> None:
    texts = "\n".join(told([worked_part()]))
    for word, count in (
        ("rebate", 1),
        ("groove", 2),
        ("housing", 2),
        ("notch", 1),
        ("mitre", 1),
        ("bevel", 2),
        ("eased", 1),
        ("hole", 4),
        ("mortise", 2),
    ):
        assert texts.count(word) == count


def sides(left: tuple[Working, ...], right: tuple[Working, ...]) -> tuple[Part, Part]:
    """A left and a right side, each with its show face outwards: frames as a set-out has them."""
    return (
        part(*left, placement=Placement((20.0, 0.0, 0.0), Z, Y)),
        part(*right, placement=Placement((800.0, 120.0, 0.0), Z, MINUS_Y)),
    )


def test_a_pair_of_sides_reads_as_a_pair() -> None:
    """Both measured from the bottom, each with its inner face up: so one from the rear edge.

    104 + 6 from the front is 10 from there.
    """
    left, right = sides(
        (
            Groove(Surface.REVERSE, 104.0, 6.0, 8.0, 10.0, 390.0),
            Housing(Surface.REVERSE, 150.0, 18.0, 6.0, 0.0, 104.0),
            Hole(Surface.REVERSE, (200.0, 37.0), 5.0, 12.0),
            Hole(Surface.REVERSE, (200.0, 83.0), 5.0, 12.0),
        ),
        (
            Groove(Surface.REVERSE, 10.0, 6.0, 8.0, 10.0, 390.0),
            Housing(Surface.REVERSE, 150.0, 18.0, 6.0, 16.0),
            Hole(Surface.REVERSE, (200.0, 83.0), 5.0, 12.0),
            Hole(Surface.REVERSE, (200.0, 37.0), 5.0, 12.0),
        ),
    )
    assert told([left]) == (
        "groove 6 x 8 deep at 10 from the rear edge, on the right face, "
        "stopped at both ends, from 10 to 390 from the bottom end",
        "housing 18 x 6 deep at 150 from the bottom end, on the right face, "
        "stopped 16 short of the rear edge",
        "2 holes 5 dia., 12 deep, on the right face, 200 from the bottom end, "
        "at 37, 83 from the rear edge",
    )
    assert told([right]) == (
        "groove 6 x 8 deep at 104 from the front edge, on the left face, "
        "stopped at both ends, from 10 to 390 from the bottom end",
        "housing 18 x 6 deep at 150 from the bottom end, on the left face, "
        "stopped 16 short of the rear edge",
        "2 holes 5 dia., 12 deep, on the left face, 200 from the bottom end, "
        "at 37, 83 from the front edge",
    )


def test_a_piece_hung_upside_down_is_measured_from_its_bottom() -> None:
    hung = Placement((0.0, 0.0, 400.0), (0.0, 0.0, -1.0), X)
    workings = (
        Housing(Surface.FACE, 150.0, 18.0, 6.0),  # 400 - 150 - 18 from the bottom
        Notch(0.0, 90.0, 30.0, 30.0),
        Notch(100.0, 0.0, 50.0, 30.0),
        Rebate(Surface.REVERSE, Surface.BACK_EDGE, 10.0, 8.0, 0.0, 300.0),
        Easing(Surface.FACE, Surface.FACE_EDGE, 4.0),
        Mitre(Surface.NEAR_END, 45.0, Surface.BACK_EDGE),
    )
    assert told([part(*workings, placement=hung)]) == (
        "mitre 45° at the top end, long point on the right edge",
        "400 over the long point, 280 over the short point",
        "housing 18 x 6 deep at 232 from the bottom end, on the front face",
        "notch 30 along x 30 across, right through, "
        "at the corner of the top end and the right edge",
        "notch 50 along x 30 across, right through, out of the left edge, "
        "at 250 from the bottom end",
        "rebate 10 x 8 deep along the right edge, on the rear face, "
        "stopped 100 short of the bottom end",
        "eased 4 radius where the front face meets the left edge",
    )


def test_pieces_that_agree_in_some_ways_share_those_words() -> None:
    """Two equal sides stand on the same end and are turned about it."""
    pair = sides(*(((Housing(Surface.REVERSE, 150.0, 18.0, 6.0, 0.0, 110.0),),) * 2))
    assert told(pair) == (
        "housing 18 x 6 deep at 150 from the bottom end, on the face, "
        "stopped 10 short of the face edge",
    )


def test_notches_out_of_an_end_or_within() -> None:
    assert own_words(Notch(0.0, 40.0, 30.0, 50.0)) == (
        "notch 30 along x 50 across, right through, out of the near end, at 40 from the face edge",
    )


def test_long_rows_are_told_by_their_ends_and_pitch() -> None:
    """Fewer than five in equal steps are named one by one."""
    row = (100.0, 132.0, 164.0, 196.0, 228.0)
    holes = [Hole(Surface.FACE, (x, 37.0), 5.0, 12.0) for x in (*row, 300.0, 310.0, 320.0)]
    assert own_words(*holes) == (
        "3 holes 5 dia., 12 deep, on the face, 37 from the face edge, at 300, 310, 320 "
        "from the near end",
        "row of 5 holes 5 dia., 12 deep, on the face, 37 from the face edge, 32 apart, "
        "first at 100 from the near end, last at 228",
    )
    twice = [replace(hole, position=(hole.position[0], y)) for hole in holes[:5] for y in (37, 83)]
    assert own_words(*twice) == (
        "2 rows of 5 holes 5 dia., 12 deep, on the face, 37, 83 from the face edge, 32 apart, "
        "first at 100 from the near end, last at 228",
    )
    across = [Hole(Surface.FACE, (100.0, y), 5.0, 12.0) for y in (10.0, 30.0, 60.0)]
    assert own_words(*across) == (
        "3 holes 5 dia., 12 deep, on the face, 100 from the near end, "
        "at 10, 30, 60 from the face edge",
    )
    assert own_words(*holes[:4]) == (
        "4 holes 5 dia., 12 deep, on the face, 37 from the face edge, at 100, 132, 164, 196 "
        "from the near end",
    )


def test_a_pitch_that_errors_would_add_up_on_is_not_told() -> None:
    """22.2222 is told as 22.2: over nine steps that is 0.2 out."""
    holes = [Hole(Surface.FACE, (100.0 + 200 / 9 * step, 37.0), 5.0, 12.0) for step in range(10)]
    assert own_words(*holes) == (
        "10 holes 5 dia., 12 deep, on the face, 37 from the face edge, at 100, 122.2, 144.4, "
        "166.7, 188.9, 211.1, 233.3, 255.6, 277.8, 300 from the near end",
    )
    # 32 mm is 1.26 in, told as 1 17/64 in or 32.15 mm; 1 1/4 in is told as it is.
    metric = [Hole(Surface.FACE, (100.0 + 32 * step, 37.0), 5.0, 12.0) for step in range(6)]
    assert told([part(*metric)], "in")[0].startswith("6 holes")
    inches = [Hole(Surface.FACE, (101.6 + 31.75 * step, 37.0), 5.0, 12.0) for step in range(6)]
    assert told([part(*inches)], "in")[0].startswith("row of 6 holes")


def test_rebates_of_both_faces_say_what_tongue_they_leave() -> None:
    """20 mm less 6.6 off either face: 6.8 mm are 17 64ths to the nearest."""
    board = part(
        *(Rebate(face, Surface.FAR_END, 12.7, 6.6) for face in (Surface.FACE, Surface.REVERSE))
    )
    assert [text.split(", ")[-1] for text in told([board], "in")] == [
        "leaving a tongue 17/64 thick"
    ] * 2
    assert "tongue" not in told([part(Rebate(Surface.FACE, Surface.FAR_END, 12.7, 6.6))])[0]


def test_metric_ware_keeps_its_millimetres_in_inches() -> None:
    cups = [Hole(Surface.FACE, (x, 25.4), 35.0, 12.7) for x in (101.6, 304.7)]
    assert told([part(*cups)], "in") == (
        "2 holes 35 mm (1 3/8) dia., 1/2 deep, on the upper face, 1 from the front edge, at 4, 12 "
        "from the left end",
    )
    plates = [Hole(Surface.FACE, (x + y, 25.4), 5.0, 12.7) for x in (85.6, 288.8) for y in (0, 32)]
    assert told([part(*plates)], "in") == (
        "4 holes 5 mm (13/64) dia., 1/2 deep, on the upper face, 1 from the front edge, at "
        "3 3/8, 4 5/8, 11 3/8, 12 5/8 from the left end, in pairs 32 mm (1 17/64) apart",
    )
    assert "pairs" not in told([part(*plates)], "mm")[0]
    # An inch drill keeps to inches: 6.35 mm are 1/4.
    assert told([part(Hole(Surface.FACE, (50.8, 25.4), 6.35))], "in")[0].startswith("hole 1/4 dia")


def test_pockets_are_measured_as_the_piece_lies() -> None:
    """120 - 70 - 20 and 120 - 100 from the rear edge, from which the left side is measured."""
    left, right = sides(
        (
            Mortise(Surface.REVERSE, (100.0, 70.0), (50.0, 20.0), 8.0),
            PocketHole(Surface.REVERSE, Surface.FAR_END, 100.0, 9.0, 25.0, 9.5, 4.0),
            Bevel(Surface.REVERSE, Surface.FACE_EDGE, 4.0, 4.0),
        ),
        (
            Mortise(Surface.REVERSE, (100.0, 30.0), (50.0, 20.0), 8.0),
            PocketHole(Surface.REVERSE, Surface.FAR_END, 20.0, 9.0, 25.0, 9.5, 4.0),
            Bevel(Surface.REVERSE, Surface.BACK_EDGE, 4.0, 4.0),
        ),
    )
    assert told([left]) == (
        "bevel 45° where the right face meets the front edge, 4 over the right face, "
        "4 down the front edge",
        "mortise 50 x 20, 8 deep, on the right face, nearest corner at 100 from the bottom end and "
        "30 from the rear edge",
        "pocket hole 9.5 dia. at 15° on the right face, at 20 from the rear edge, ending 25 "
        "before the top end, then 4 dia. out of it 9 below the right face",
    )
    assert told([right]) == (
        "bevel 45° where the left face meets the front edge, 4 over the left face, "
        "4 down the front edge",
        "mortise 50 x 20, 8 deep, on the left face, nearest corner at 100 from the bottom end and "
        "70 from the front edge",
        "pocket hole 9.5 dia. at 15° on the left face, at 100 from the front edge, ending 25 "
        "before the top end, then 4 dia. out of it 9 below the left face",
    )


def test_bevels_over_a_whole_end_give_the_lengths_over_their_points() -> None:
    # 40 off the back edge; the cut would run on to 240 across, so that at 120, the face edge,
    # half of it is off.
    sloped = Bevel(Surface.FAR_END, Surface.BACK_EDGE, 240.0, 40.0)
    assert own_words(sloped) == (
        "mitre 9.5° at the far end, long point on the face edge",  # tan 9.46 degrees: 40 / 240
        "380 over the long point, 360 over the short point",
    )
    # Named the other way round it is the same cut.
    assert own_words(Bevel(Surface.BACK_EDGE, Surface.FAR_END, 40.0, 240.0)) == own_words(sloped)
    square = Mitre(Surface.NEAR_END, 45.0, Surface.FACE_EDGE)
    assert own_words(sloped, square) == (
        "mitre 9.5° at the far end, long point on the face edge",
        "mitre 45° at the near end, long point on the face edge",
        "380 over the long points, 240 over the short points",
    )


def test_a_bevel_along_an_edge_gives_what_it_leaves() -> None:
    # 20 mm thick, 10 off the face and all of the edge's 20: tan 26.57 degrees is a half.
    assert own_words(Bevel(Surface.FACE, Surface.BACK_EDGE, 10.0, 20.0)) == (
        "bevel 26.6° along the whole back edge, 110 wide on the face, 120 wide on the reverse",
    )
    # A taper from end to end: 30 off the far end's 120, nothing at the near end.
    assert own_words(Bevel(Surface.BACK_EDGE, Surface.FAR_END, 400.0, 30.0)) == (
        "taper 4.3° along the whole back edge, 90 wide at the far end, 120 wide at the near end",
    )


def test_a_corner_cut_off_gives_both_legs() -> None:
    assert own_words(Bevel(Surface.BACK_EDGE, Surface.FAR_END, 200.0, 60.0)) == (
        "corner of the far end and the back edge cut off, 200 along the back edge x 60 along the "
        "far end, 73.3° off the far end",  # tan 73.3 degrees: 200 / 60
    )


def test_equal_mortises_and_pocket_holes_are_gathered() -> None:
    mortises = [Mortise(Surface.FACE, (x, 40.0), (30.0, 8.0), 12.0, True) for x in (200.0, 50.0)]
    pockets = [
        PocketHole(Surface.FACE, Surface.NEAR_END, y, 9.0, 25.0, 9.5, 4.0) for y in (30.0, 90.0)
    ]
    assert own_words(*mortises, *pockets) == (
        "2 mortises 30 long along the length, 8 wide, round ends, 12 deep, on the face, centres "
        "at 65, 215 from the near end and 44 from the face edge",
        "2 pocket holes 9.5 dia. at 15° on the face, at 30, 90 from the face edge, ending 25 "
        "before the near end, then 4 dia. out of it 9 below the face",
    )
