"""Workings in words: every text worked out by hand from the part's figures."""

from __future__ import annotations

import pytest

from rodwright.handover.workings import describe_workings
from rodwright.parts import (
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
from samples import ASH, MINUS_Y, X, Y, Z, worked_part

LEVEL = Placement((0, 0, 0), X, Y)


def part(*workings: Working, placement: Placement = LEVEL) -> Part:
    """A 400 x 120 x 20 piece."""
    blank = Blank(400.0, 120.0, 20.0, ASH, Grain.LENGTHWISE)
    return Part("X1", "Piece", Role.SHELF, "Sample", blank, placement, workings)


def own_words(*workings: Working) -> tuple[str, ...]:
    """Texts for two pieces that lie differently in every way."""
    pieces = [part(*workings), part(*workings, placement=Placement((0, 0, 0), Z, X))]
    return describe_workings(pieces, "mm")


@pytest.mark.parametrize(
    ("working", "text"),
    [
        (
            Housing(Surface.REVERSE, 150.0, 18.0, 6.0),
            "housing 18 x 6 deep at 150 from the near end, on the reverse",
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
            "rebate 10 x 8 deep along the back edge, on the reverse, "
            "stopped 100 short of the far end",
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
            "mortise 50 x 8, 30 deep, in the face edge, at 40 from the near end and 6 from the "
            "reverse, round ends",
        ),
        (
            PocketHole(Surface.REVERSE, Surface.FAR_END, 30.0, 9.0, 25.0, 9.5, 4.0),
            "pocket hole 9.5 dia. at 15° on the reverse, at 30 from the face edge, ending 25 "
            "before the far end, then 4 dia. out of it 9 below the reverse",
        ),
    ],
)
def test_one_working(working: Working, text: str) -> None:
    assert own_words(working) == (text,)


def test_holes_in_a_line_are_gathered_and_measured_from_one_end() -> None:
    holes = [Hole(Surface.REVERSE, (x, y), 5.0, 12.0) for y in (37.0, 83.0) for x in (132.0, 100.0)]
    assert own_words(*holes) == (
        "2 holes 5 dia., 12 deep, on the reverse, 37 from the face edge, "
        "at 100, 132 from the near end",
        "2 holes 5 dia., 12 deep, on the reverse, 83 from the face edge, "
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
    housing = Housing(Surface.REVERSE, 412.75, 19.05, 6.35)
    assert describe_workings([part(housing)], "in") == (
        "housing 3/4 x 1/4 deep at 16 1/4 from the left end, on the underside",
    )


def test_no_working_is_left_out() -> None:
    texts = "\n".join(describe_workings([worked_part()], "mm"))
    for word, count in (
        ("rebate", 1), ("groove", 2), ("housing", 2), ("notch", 1), ("mitre", 1), ("bevel", 1),
        ("eased", 1), ("hole", 3),
    ):  # fmt: skip
        assert texts.count(word) == count


def sides(left: tuple[Working, ...], right: tuple[Working, ...]) -> tuple[Part, Part]:
    """A left and a right side, each with its show face outwards: frames as a set-out has them."""
    return (
        part(*left, placement=Placement((20.0, 0.0, 0.0), Z, Y)),
        part(*right, placement=Placement((800.0, 120.0, 0.0), Z, MINUS_Y)),
    )


def test_a_pair_of_sides_reads_as_a_pair() -> None:
    # The right side's face edge is at the rear: 104 + 6 from the front is 10 from there.
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
    said = describe_workings([left], "mm")
    assert said == (
        "groove 6 x 8 deep at 104 from the front edge, on the right face, "
        "stopped at both ends, from 10 to 390 from the bottom end",
        "housing 18 x 6 deep at 150 from the bottom end, on the right face, "
        "stopped 16 short of the rear edge",
        "hole 5 dia., 12 deep, on the right face, 37 from the front edge, "
        "at 200 from the bottom end",
        "hole 5 dia., 12 deep, on the right face, 83 from the front edge, "
        "at 200 from the bottom end",
    )
    assert describe_workings([right], "mm") == tuple(
        text.replace("right face", "left face") for text in said
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
    assert describe_workings([part(*workings, placement=hung)], "mm") == (
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
    assert describe_workings(pair, "mm") == (
        "housing 18 x 6 deep at 150 from the bottom end, on the reverse, "
        "stopped 10 short of the back edge",
    )


def test_notches_out_of_an_end_or_within() -> None:
    assert own_words(Notch(0.0, 40.0, 30.0, 50.0)) == (
        "notch 30 along x 50 across, right through, out of the near end, at 40 from the face edge",
    )


def test_long_rows_are_told_by_their_ends_and_pitch() -> None:
    """Fewer than five in equal steps are named one by one."""
    row = (100.0, 132.0, 164.0, 196.0, 228.0)
    holes = [Hole(Surface.REVERSE, (x, 37.0), 5.0, 12.0) for x in (*row, 300.0, 310.0, 320.0)]
    assert own_words(*holes) == (
        "8 holes 5 dia., 12 deep, on the reverse, 37 from the face edge, at 300, 310, 320, and "
        "32 apart, from 100 to 228 from the near end",
    )
    assert own_words(*holes[:4]) == (
        "4 holes 5 dia., 12 deep, on the reverse, 37 from the face edge, at 100, 132, 164, 196 "
        "from the near end",
    )


def test_pockets_are_measured_as_the_piece_lies() -> None:
    """The right side's face edge is at the rear: 120 - 30 - 20 from the front."""
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
    said = describe_workings([left], "mm")
    assert said == (
        "mortise 50 x 20, 8 deep, on the right face, at 100 from the bottom end and 70 from the "
        "front edge",
        "pocket hole 9.5 dia. at 15° on the right face, at 100 from the front edge, ending 25 "
        "before the top end, then 4 dia. out of it 9 below the right face",
        "bevel 45.0° where the right face meets the front edge, 4 over the right face, "
        "4 down the front edge",
    )
    assert describe_workings([right], "mm") == tuple(
        text.replace("right face", "left face") for text in said
    )
