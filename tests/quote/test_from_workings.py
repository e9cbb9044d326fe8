"""Operations at the machines, counted by hand on single parts."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit.panels import panel, unit_of
from rodwright.quote.from_workings import machined
from rodwright.unit import (
    Bevel,
    Easing,
    FingerPull,
    Groove,
    Hole,
    Housing,
    Mitre,
    Mortise,
    Notch,
    PocketHole,
    Rebate,
    Surface,
    Working,
)
from rodwright.unit.stock import Edging

FACE, END = Surface.FACE, Surface.FAR_END
EDGE, BACK = Surface.FACE_EDGE, Surface.BACK_EDGE


@pytest.mark.parametrize(
    ("working", "key", "count"),
    [
        # The panel is 400 x 120 x 18: what runs along it is in metres.
        (Rebate(FACE, EDGE, 9.0, 6.0), "rebate", 0.4),
        (Rebate(FACE, END, 9.0, 6.0), "rebate", 0.12),
        (Rebate(FACE, EDGE, 9.0, 6.0, 50.0, 350.0), "rebate", 0.3),
        (Groove(FACE, 20.0, 6.0, 6.0), "groove", 0.4),
        (Groove(FACE, 20.0, 6.0, 6.0, 100.0), "groove", 0.3),
        (Groove(EDGE, 6.0, 6.0, 6.0), "groove", 0.4),
        (Easing(FACE, EDGE, 3.0), "easing", 0.4),
        (Easing(FACE, END, 3.0), "easing", 0.12),
        (Easing(EDGE, END, 3.0), "easing", 0.018),
        # A chamfer along an arris is eased, a cut that takes a whole end off is sawn.
        (Bevel(FACE, EDGE, 4.0, 4.0), "easing", 0.4),
        (Bevel(FACE, END, 18.0, 18.0), "bevel", 1),
        (Mitre(END, 45.0, EDGE), "mitre", 1),
        (Mitre(END, 45.0, FACE), "bevel", 1),
        (Housing(FACE, 100.0, 18.0, 6.0), "housing", 1),
        (Notch(0.0, 0.0, 50.0, 30.0), "notch", 1),
        (Hole(FACE, (50.0, 50.0), 5.0, 10.0, "adjustable shelves"), "shelf_hole", 1),
        (Hole(FACE, (50.0, 50.0), 35.0, 12.0, "hinge cup"), "hinge_cup", 1),
        (Hole(FACE, (50.0, 50.0), 5.0, None, "handle"), "hole", 1),
        (Mortise(FACE, (50.0, 50.0), (9.0, 5.0), 18.0, use="screw"), "mortise", 1),
        (Hole(FACE, (50.0, 50.0), 5.0, None), "hole", 1),
        (Mortise(FACE, (50.0, 50.0), (60.0, 15.0), 2.0, use="hinge leaf"), "mortise", 1),
        (PocketHole(FACE, END, 60.0, 9.0, 20.0, 9.5, 4.0), "pocket_hole", 1),
        (FingerPull(FACE, EDGE, 12.0, 8.0, 6.0), "finger_pull", 1),
    ],
)
def test_each_kind_of_working(working: Working, key: str, count: float) -> None:
    assert [*machined(unit_of(panel(working)))] == [(key, pytest.approx(count))]


@pytest.mark.parametrize(
    "working",
    [
        Hole(END, (50.0, 9.0), 8.0, 21.0, "dowel"),
        Mortise(END, (30.0, 7.0), (60.0, 4.0), 12.5, use="biscuit"),
        Mortise(END, (30.0, 6.0), (40.0, 7.0), 26.0, round_ends=True, use="loose tenon"),
        # Bored as their screws are driven.
        Hole(FACE, (50.0, 50.0), 5.0, None, "screw"),
        Hole(FACE, (50.0, 50.0), 5.0, 12.0, "hinge plate"),
    ],
)
def test_what_is_let_in_is_counted_by_its_pieces(working: Working) -> None:
    assert [*machined(unit_of(panel(working)))] == []


def test_edging_goes_by_its_length() -> None:
    """Along the front, 400 mm, and round one end, 120 mm."""
    edged = (Edging(EDGE, "birch veneer", 0.6), Edging(END, "birch veneer", 0.6))
    unit = unit_of(replace(panel(), edged=edged))
    assert [*machined(unit)] == [("edging", pytest.approx(0.52))]
