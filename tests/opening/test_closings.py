"""What closes a gap, in figures and in words."""

from __future__ import annotations

import pytest

from kit.planes import BELLIED, STRAIGHT
from rodwright.opening.closings import closing_text, closings, strip_text
from rodwright.trade.gaps import CAULK_LIMIT
from rodwright.unit import OpeningPlane, OpeningShape

SIZE = (1193.0, 1993.0)
SHAPE = OpeningShape(STRAIGHT, None, 1190.0, 1990.0)


def test_what_closes_a_gap() -> None:
    """Common practice, no source: caulk up to 6 mm, a scribe or a cover strip beyond."""
    left, right, top = closings(SHAPE, SIZE, {})
    assert left.remedy == "scribe"
    assert left.strip == pytest.approx(8.994, abs=1e-3)
    assert left.cut == pytest.approx(5.970, abs=1e-3)
    assert (right.remedy, top.remedy) == ("caulk", "scribe")
    assert right.rest <= CAULK_LIMIT < top.rest
    left, right, _ = closings(SHAPE, SIZE, {"left": 12.0, "right": 3.0})
    assert left.remedy == "frame"
    assert left.overlap == pytest.approx(12.0 - left.strip)
    assert left.trim == pytest.approx(12.0 - (left.strip - left.cut))
    assert right.rest == pytest.approx(right.strip - 3.0)


def test_what_closes_a_bellied_gap() -> None:
    """The most is the likeliest and its error; the widest may lie between the ends."""
    bellied = OpeningShape(BELLIED, None, 1190.0, 1990.0)
    left, right, _ = closings(bellied, SIZE, {})
    assert [round(each.at) for each in left.gaps] == [0, 500, 1500, 1993]
    assert left.rest == pytest.approx(9.0, abs=0.05)  # at the foot
    assert left.strip == pytest.approx(10.0)  # 8, and 2 of error, at 1500
    assert left.narrowest == pytest.approx(1.0)  # 2, less 1 of error, at 500
    assert left.cut == pytest.approx(left.strip - left.narrowest)
    assert left.most == left.strip
    assert right.narrowest == pytest.approx(2.0)
    (framed, _, _) = closings(bellied, SIZE, {"left": 9.5})
    assert (framed.remedy, framed.worst_remedy) == ("frame", "frame")
    assert framed.most == pytest.approx(0.5)
    (framed, _, _) = closings(bellied, SIZE, {"left": 9.1})
    assert (framed.remedy, framed.worst_remedy) == ("frame", "caulk")


def _say(length: float) -> str:
    return f"{length:.1f} mm"


@pytest.mark.parametrize(
    ("side", "reach", "text"),
    [
        ("left", 12.0, "covered by the face frame, which may need 9.0 mm scribed off"),
        (
            "right", 0.0,
            "up to 6.0 mm stays open, likely 6.0 mm at its widest: a bead of caulk",
        ),
        (
            "left", 0.0,
            "up to 9.0 mm stays open, likely 9.0 mm at its widest: a cover strip, or a scribe "
            "ripped to 9.0 mm and planed to the wall, by up to 6.0 mm",
        ),
        (
            "top", 0.0,
            "up to 10.0 mm stays open, likely 10.0 mm at its widest: a cover strip, or a scribe "
            "ripped to 10.0 mm and planed to what is over it, by up to 2.0 mm",
        ),
    ],
)  # fmt: skip
def test_in_words(side: str, reach: float, text: str) -> None:
    found = {each.side: each for each in closings(SHAPE, SIZE, {side: reach})}
    assert closing_text(found[side], _say) == text


def test_in_words_where_the_readings_leave_it_open() -> None:
    """The likeliest gap is caulked; the most it may be is not."""
    bellied = OpeningShape(BELLIED, None, 1190.0, 1990.0)
    left, _, _ = closings(bellied, SIZE, {"left": 3.5})
    assert (left.remedy, left.worst_remedy) == ("caulk", "scribe")
    assert closing_text(left, _say) == (
        "up to 6.5 mm stays open, likely 5.5 mm at its widest: a bead of caulk if it proves no "
        "more, else a cover strip, or a scribe ripped to 10.0 mm and planed to the wall, by up to "
        "9.0 mm"
    )


def test_a_strip_of_even_width_is_not_planed() -> None:
    even = OpeningPlane.straight(((-8.0, 0.0), (1197.0, 0.0), (1197.0, 2003.0), (-8.0, 2003.0)))
    left, _, _ = closings(OpeningShape(even, None, 1190.0, 1990.0), SIZE, {})
    assert strip_text(left, _say) == "a strip 8.0 mm wide"
