"""Bores in one piece: floors, pocket holes, and what they meet, just inside and outside limits."""

from __future__ import annotations

import math

import pytest

from kit.panels import panel, unit_of
from rodwright.checks.findings import Finding
from rodwright.checks.rules import Rule
from rodwright.checks.workings import workings
from rodwright.unit import Groove, Hole, Housing, Mortise, PocketHole, Rebate, Surface, Working

F, R, E, N = Surface.FACE, Surface.REVERSE, Surface.FACE_EDGE, Surface.NEAR_END


def found(*cut: Working) -> list[Finding]:
    """What is found in a 400 x 120 x 18 piece."""
    return list(workings(unit_of(panel(*cut))))


def rules(*cut: Working) -> list[tuple[str, str]]:
    return [(finding.rule, str(finding.severity)) for finding in found(*cut)]


MEET, THIN = [(Rule.BORES_MEET, "error")], [(Rule.THIN_WOOD_BETWEEN_BORES, "warning")]
INTO = [(Rule.BORE_RUNS_INTO_CUT, "warning")]


@pytest.mark.parametrize(
    ("cut", "expected"),
    [
        # 18 thick: 8 and 8.5 leave 1.5, 8 and 8.6 leave 1.4, 9 and 9 nothing.
        ((Hole(F, (100.0, 50.0), 5.0, 8.0), Hole(R, (102.0, 50.0), 5.0, 8.5)), []),
        ((Hole(F, (100.0, 50.0), 5.0, 8.0), Hole(R, (102.0, 50.0), 5.0, 8.6)), THIN),
        ((Hole(F, (100.0, 50.0), 5.0, 9.0), Hole(R, (102.0, 50.0), 5.0, 9.0)), MEET),
        ((Hole(F, (100.0, 50.0), 5.0, 12.0), Hole(R, (104.9, 50.0), 5.0, 12.0)), MEET),
        ((Hole(F, (100.0, 50.0), 5.0, 12.0), Hole(R, (105.1, 50.0), 5.0, 12.0)), []),
        # Their bounds overlap, but on the diagonal the discs are clear of each other.
        ((Hole(F, (100.0, 50.0), 5.0, 12.0), Hole(R, (104.0, 54.0), 5.0, 12.0)), []),
        ((Hole(F, (100.0, 50.0), 5.0), Hole(R, (100.0, 50.0), 15.0, 6.0)), []),
        ((Hole(F, (100.0, 50.0), 5.0, 12.0), Housing(R, 90.0, 18.0, 6.0)), MEET),
        ((Hole(F, (100.0, 50.0), 5.0, 10.5), Housing(R, 90.0, 18.0, 6.0)), []),
        ((Hole(F, (87.0, 50.0), 5.0, 12.0), Housing(R, 90.0, 18.0, 6.0)), []),
        ((Mortise(F, (90.0, 40.0), (40.0, 8.0), 10.0), Mortise(R, (80.0, 45.0), (40.0, 8.0), 9.0)),
         MEET),
        ((Mortise(F, (90.0, 40.0), (40.0, 8.0), 10.0), Hole(R, (100.0, 44.0), 5.0, 7.0)), THIN),
    ],
)  # fmt: skip
def test_bores_from_opposite_surfaces(cut: tuple[Working, ...], expected: object) -> None:
    assert rules(*cut) == expected
    assert rules(*cut[::-1]) == expected


@pytest.mark.parametrize(
    ("cut", "expected"),
    [
        ((Hole(F, (99.0, 50.0), 8.0, 12.0), Housing(F, 90.0, 18.0, 6.0)), []),  # its middle line
        ((Hole(F, (94.0, 50.0), 8.0, 12.0), Housing(F, 90.0, 18.0, 6.0)), []),  # in its floor
        ((Hole(F, (93.0, 50.0), 8.0, 12.0), Housing(F, 90.0, 18.0, 6.0)), INTO),  # over its side
        ((Hole(F, (85.0, 50.0), 8.0, 12.0), Housing(F, 90.0, 18.0, 6.0)), []),
        ((Hole(F, (99.0, 50.0), 20.0, 12.0), Housing(F, 90.0, 18.0, 6.0)), []),
        # From the near end, across a housing at 30, 9 up from the reverse: 6 deep from there.
        ((Hole(N, (60.0, 9.0), 8.0, 35.0), Housing(R, 30.0, 18.0, 6.0)), INTO),
        ((Hole(N, (60.0, 9.0), 8.0, 29.0), Housing(R, 30.0, 18.0, 6.0)), []),
        ((Hole(N, (60.0, 13.0), 6.0, 35.0), Housing(R, 30.0, 18.0, 6.0)), []),
        # In the shoulder of a rebate.
        ((Hole(E, (60.0, 3.0), 4.0, 30.0), Rebate(R, E, 9.0, 9.0)), []),
        ((Hole(E, (60.0, 9.0), 4.0, 30.0), Rebate(R, E, 9.0, 9.0)), INTO),
        # A bolt from the edge into the middle of its nut's boring, and past it.
        ((Hole(E, (60.0, 9.0), 7.0, 34.0), Hole(R, (60.0, 34.0), 15.0, 13.0)), []),
        ((Hole(E, (66.0, 9.0), 7.0, 34.0), Hole(R, (60.0, 34.0), 15.0, 13.0)), INTO),
        # Two screws beside a cup, clear of it and not; and a stepped hole.
        ((Hole(R, (60.0, 34.0), 35.0, 13.0), Hole(R, (82.0, 40.0), 3.0, 10.0)), []),
        ((Hole(R, (60.0, 34.0), 35.0, 13.0), Hole(R, (78.0, 34.0), 3.0, 10.0)), INTO),
        ((Hole(R, (60.0, 34.0), 10.0, 6.0), Hole(R, (60.0, 34.0), 5.0, 12.0)), []),
        ((Hole(F, (60.0, 36.0), 8.0, 12.0), Groove(F, 33.0, 6.0, 6.0)), []),
    ],
)
def test_bores_that_run_into_other_cuts(cut: tuple[Working, ...], expected: object) -> None:
    assert rules(*cut) == expected
    assert rules(*cut[::-1]) == expected


def test_a_row_of_meetings_is_one_finding_at_its_worst() -> None:
    row = [Hole(F, (100.0 + 32 * i, 50.0), 5.0, 8.0 + i / 10) for i in range(10)]
    other = [Hole(R, (100.0 + 32 * i, 50.0), 5.0, 8.6) for i in range(10)]
    (finding,) = found(*row, *other)
    assert finding.figure == pytest.approx(18 - 8.9 - 8.6)
    assert "in 10 places" in finding.message


@pytest.mark.parametrize(
    ("mortise", "expected"),
    [
        (Mortise(F, (90.0, 40.0), (40.0, 8.0), 16.5), []),
        (Mortise(F, (90.0, 40.0), (40.0, 8.0), 16.6), [(Rule.NEARLY_THROUGH, "warning")]),
        (Mortise(F, (90.0, 40.0), (40.0, 8.0), 18.0), []),
        (Mortise(E, (90.0, 3.0), (40.0, 8.0), 30.0), []),
        (Mortise(E, (90.0, 2.9), (40.0, 8.0), 30.0), [(Rule.THIN_TONGUE, "warning")]),
        (Mortise(E, (90.0, -1.0), (40.0, 8.0), 30.0), [(Rule.OUTSIDE_BLANK, "error")]),
    ],
)
def test_mortises(mortise: Mortise, expected: object) -> None:
    assert rules(mortise) == expected


def pocket(exit_at: float = 9.0, stop: float = 20.0, position: float = 60.0) -> PocketHole:
    return PocketHole(R, N, position, exit_at, stop, 9.5, 4.0)


# At 15 degrees the floor's middle is stop x sin 15 higher than the screw comes out, and its edge
# 4.75 x cos 15 lower again: from 14 deep, this stop leaves just 1.5 of 18.
STOP = (14.0 + 4.75 * math.cos(math.radians(15)) - 16.5) / math.sin(math.radians(15))


@pytest.mark.parametrize(
    ("cut", "expected"),
    [
        (pocket(), []),
        (pocket(14.0, STOP + 0.01), []),
        (pocket(14.0, STOP - 0.01), [(Rule.NEARLY_THROUGH, "warning")]),
        (pocket(14.0, STOP - 5.9), [(Rule.POCKET_HOLE_BREAKS_OUT, "error")]),
        (pocket(position=4.7), [(Rule.POCKET_HOLE_BREAKS_OUT, "error")]),
        (pocket(stop=40.0), [(Rule.POCKET_HOLE_BREAKS_OUT, "error")]),
        (pocket(stop=1.2), [(Rule.POCKET_HOLE_BREAKS_OUT, "error")]),
    ],
)
def test_pocket_holes(cut: PocketHole, expected: object) -> None:
    assert rules(cut) == expected


# From 9 deep at the end the lower line along this pocket comes up by 0.268 mm a mm: 27.5 from the
# end it lies 9 + 4.75 / cos 15 - 27.5 tan 15 = 6.549 deep, and 51.94 from it it reaches the face.
# Its floor ends 20 cos 15 - 4.75 sin 15 = 18.1 from the end; before that there is but the screw,
# whose upper line lies 9 - 2 / cos 15 - 12.5 tan 15 = 3.58 deep 12.5 from the end.
@pytest.mark.parametrize(
    ("cut", "expected"),
    [
        (Hole(F, (30.0, 60.0), 5.0, 9.9), []),
        (Hole(F, (30.0, 60.0), 5.0, 10.0), THIN),
        (Hole(F, (30.0, 60.0), 5.0, 12.0), MEET),
        (Hole(F, (45.0, 60.0), 5.0, 12.0), []),  # where the pocket is shallow
        (Hole(F, (54.5, 60.0), 5.0, 16.0), []),  # past its mouth
        (Hole(F, (30.0, 67.3), 5.0, 12.0), []),  # beside it
        (Hole(F, (30.0, 60.0), 5.0), INTO),
        (Hole(R, (30.0, 60.0), 5.0, 5.0), INTO),
        (Hole(R, (10.0, 60.0), 5.0, 3.5), []),  # above the screw
        (Hole(R, (10.0, 60.0), 5.0, 3.6), INTO),
        (Hole(R, (10.0, 64.6), 5.0, 5.0), []),  # beside the screw
        (Hole(N, (60.0, 9.0), 8.0, 30.0), INTO),
        (Housing(F, 20.0, 10.0, 9.0), []),
        (Mortise(F, (25.0, 50.0), (40.0, 20.0), 12.0), MEET),
    ],
)
def test_what_a_pocket_hole_meets(cut: Working, expected: object) -> None:
    assert rules(pocket(), cut) == expected
    assert rules(cut, pocket()) == expected
