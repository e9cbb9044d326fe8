"""Workings in words: every text worked out by hand from the part's figures."""

from __future__ import annotations

import pytest

from rodwright.handover.workings import describe_lie, describe_workings
from rodwright.parts import (
    Blank,
    Easing,
    Grain,
    Groove,
    Hole,
    Housing,
    Mitre,
    Notch,
    Part,
    Placement,
    Rebate,
    Role,
    Surface,
    Working,
)
from samples import ASH, MINUS_X, MINUS_Y, X, Y, Z, bookcase, worked_part


def part(*workings: Working) -> Part:
    """A 400 x 120 x 20 piece."""
    blank = Blank(400.0, 120.0, 20.0, ASH, Grain.LENGTHWISE)
    return Part("X1", "Piece", Role.SHELF, "Sample", blank, Placement((0, 0, 0), X, Y), workings)


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
    ],
)
def test_one_working(working: Working, text: str) -> None:
    assert describe_workings(part(working), "mm") == (text,)


def test_holes_in_a_line_are_gathered_and_measured_from_one_end() -> None:
    holes = [Hole(Surface.REVERSE, (x, y), 5.0, 12.0) for y in (37.0, 83.0) for x in (132.0, 100.0)]
    assert describe_workings(part(*holes), "mm") == (
        "2 holes 5 dia., 12 deep, on the reverse, 37 from the face edge, "
        "at 100, 132 from the near end",
        "2 holes 5 dia., 12 deep, on the reverse, 83 from the face edge, "
        "at 100, 132 from the near end",
    )


def test_lengths_over_the_points_of_a_frame_mitre() -> None:
    # A 45 degree mitre over 120 mm takes 120 mm off the short side at each end.
    both = [Mitre(end, 45.0, Surface.BACK_EDGE) for end in (Surface.NEAR_END, Surface.FAR_END)]
    assert describe_workings(part(*both), "mm") == (
        "mitre 45° at both ends, long points on the back edge",
        "400 over the long points, 160 over the short points",
    )
    assert describe_workings(part(both[0]), "mm") == (
        "mitre 45° at the near end, long point on the back edge",
        "400 over the long point, 280 over the short point",
    )


def test_lengths_along_both_edges_where_the_mitres_slope_alike() -> None:
    slopes = (
        Mitre(Surface.NEAR_END, 45.0, Surface.BACK_EDGE),
        Mitre(Surface.FAR_END, 45.0, Surface.FACE_EDGE),
    )
    assert describe_workings(part(*slopes), "mm")[-1] == (
        "280 along the face edge, 280 along the back edge"
    )


def test_a_bevel_gives_its_lengths_over_face_and_reverse() -> None:
    # 20 mm thick: tan 30 degrees is 0.57735, so 11.5 mm comes off.
    bevel = Mitre(Surface.FAR_END, 30.0, Surface.FACE)
    assert describe_workings(part(bevel), "mm") == (
        "bevel 30° at the far end, long point on the face",
        "388.5 along the reverse, 400 along the face",
    )


def test_inches_are_fractions() -> None:
    housing = Housing(Surface.REVERSE, 412.75, 19.05, 6.35)
    assert describe_workings(part(housing), "in") == (
        "housing 3/4 x 1/4 deep at 16 1/4 from the near end, on the reverse",
    )


def test_no_working_is_left_out() -> None:
    texts = "\n".join(describe_workings(worked_part(), "mm"))
    for word, count in (
        ("rebate", 1), ("groove", 2), ("housing", 2), ("notch", 1), ("mitre", 1), ("bevel", 1),
        ("eased", 1), ("hole", 3),
    ):  # fmt: skip
        assert texts.count(word) == count


def test_how_a_part_lies() -> None:
    assert describe_lie(Placement((0, 0, 0), Z, Y)) == "near end bottom, face edge front, face left"
    assert (
        describe_lie(Placement((0, 0, 0), Z, MINUS_X))
        == "near end bottom, face edge right, face front"
    )
    slanted = Placement((0, 0, 0), (0.6, 0.0, 0.8), MINUS_Y)
    assert describe_lie(slanted) == "face edge back"


def test_the_show_face_of_every_side_looks_outwards() -> None:
    unit = bookcase()
    assert describe_lie(unit.part("SD1").placement).endswith("face left")
    assert describe_lie(unit.part("SD2").placement).endswith("face right")
