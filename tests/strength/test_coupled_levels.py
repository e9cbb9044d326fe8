"""Levels and the dividers between them against anastruct, a library for frames."""

from __future__ import annotations

from itertools import pairwise

import pytest
from anastruct import SystemElements
from hypothesis import given, settings
from hypothesis import strategies as st

from kit.carcasses import between_sides, books, carcass, level, upright
from rodwright.amounts import GRAVITY
from rodwright.strength.bearings import bearings
from rodwright.unit import JointKind, Role

EI = 10_000 * 300 * 20**3 / 12
STIFF = 1e12
"""Axial stiffness, N, of levels and dividers in the frame: they don't give."""


def _frame(places: list[float], upper: float, lower: float) -> dict[str, list[float]]:
    """How far two beams 1000 long, 400 apart, that posts tie at ``places``, go down at these, and
    the force in each post, under so many N/mm on the upper and on the lower."""
    frame = SystemElements(EA=STIFF, EI=EI, mesh=10)
    ends = [0.0, *places, 1000.0]
    beams: dict[float, list[int]] = {0.0: [], 400.0: []}
    for height, load in ((0.0, lower), (400.0, upper)):
        for start, stop in pairwise(ends):
            number = frame.add_element([[start, height], [stop, height]])
            frame.q_load(q=-load, element_id=number)
            beams[height].append(number)
    posts = [frame.add_truss_element([[x, 0.0], [x, 400.0]], EA=STIFF) for x in places]
    for height in (0.0, 400.0):
        frame.add_support_hinged(frame.find_node_id([0.0, height]))
        frame.add_support_roll(frame.find_node_id([1000.0, height]))
    frame.solve()
    down = [-frame.get_node_displacements(frame.find_node_id([x, 400.0]))["uy"] for x in places]
    forces = [-frame.get_element_results(number)["Nmin"] for number in posts]
    return {"down": down, "forces": forces}


@pytest.mark.filterwarnings("ignore:Polyfit")
@settings(max_examples=25)
@given(
    places=st.lists(
        st.sampled_from([150.0, 300.0, 450.0, 600.0, 750.0, 900.0]),
        min_size=1,
        max_size=3,
        unique=True,
    ),
    upper=st.integers(1, 80),
    lower=st.integers(1, 80),
)
def test_levels_that_dividers_tie_go_down_as_a_frame_does(
    places: list[float], upper: int, lower: int
) -> None:
    places = sorted(places)
    bottom, shelf = level("BT1", (20, 1020), 100, Role.BOTTOM), level("SH1", (20, 1020), 520)
    parts, joints = between_sides(1000, bottom, shelf)
    for number, x in enumerate(places):
        divider = upright(f"DV{number}", 20 + x - 10, (120, 520))
        parts.append(divider)
        joints += [(ref, divider.ref, JointKind.DOWEL) for ref in ("BT1", "SH1")]
    loads = books("SH1", (20, 1020), upper), books("BT1", (20, 1020), lower)
    found = bearings(carcass(parts, joints, *loads))
    frame = _frame(places, upper * GRAVITY / 1000, lower * GRAVITY / 1000)
    bent = found["SH1"].bent
    assert bent is not None
    assert [bent.deflection(x) for x in places] == pytest.approx(frame["down"], rel=0.005)
    scale = max(abs(force) for force in frame["forces"])
    forces = [each.force for each in found["BT1"].standing]
    assert forces == pytest.approx(frame["forces"], abs=max(0.005 * scale, 0.01))
