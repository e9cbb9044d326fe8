"""The lines of the room, against what was read of the opening."""

from __future__ import annotations

import pytest

from kit.specs import ready_unit, unit_from
from rodwright.jobs.new import model_names
from rodwright.page.room import room_lines

_BOX = "size: {width: 800, height: 1000, depth: 300}\n"


def test_a_unit_that_stands_free_has_no_room() -> None:
    assert room_lines(unit_from(_BOX)) == ()


def test_an_opening_is_drawn_as_wide_as_it_was_read() -> None:
    """By hand: 900 wide at the foot and 888 at the top, both walls leaning in alike."""
    opening = {"width": {"bottom": 900, "top": 888}, "height": 1200, "depth": 320}
    lines = room_lines(unit_from("fit: {sides: 4, top: 6}\n", opening=opening))
    front = next(line for line in lines if len({y for _, y, _ in line}) == 1)
    foot = [x for x, _, z in front if abs(z) < 0.01]
    top = [x for x, _, z in front if abs(z - 1200) < 0.6]
    assert max(foot) - min(foot) == pytest.approx(900, abs=0.6)
    assert max(top) - min(top) == pytest.approx(888, abs=0.6)
    depths = {y for line in lines for _, y, _ in line}
    assert max(depths) - min(depths) == pytest.approx(320)


@pytest.mark.parametrize("name", model_names())
def test_nothing_of_the_room_is_above_a_sloping_ceiling(name: str) -> None:
    unit = ready_unit(name)
    lines, slope = room_lines(unit), unit.surroundings.ceiling
    assert bool(lines) is (unit.opening is not None)
    if slope is None:
        return
    at, normal = slope
    beyond = [
        sum(n * (a - b) for n, a, b in zip(normal, point, at, strict=True))
        for line in lines
        for point in line
    ]
    assert max(beyond) < 0.01
    # The ceiling's own outline lies in it.
    assert sum(abs(each) < 0.01 for each in beyond) >= 5


def test_what_a_unit_is_cut_out_round_is_drawn() -> None:
    unit = unit_from(_BOX + "cutouts: [{kind: skirting, height: 100, depth: 15}]\n")
    (obstacle,) = unit.surroundings.obstacles
    points = {point for line in room_lines(unit) for point in line}
    assert {tuple(round(each, 3) for each in corner) for corner in obstacle.box.corners()} <= points
