"""What stays round the unit: as the spec has it, where the tape found it."""

from typing import Any

import pytest

from kit.specs import unit_from
from rodwright.geometry import Box
from rodwright.unit import Surroundings

SIZE = "size: {width: 800, height: 2000, depth: 300}\n"


@pytest.mark.parametrize(
    ("wish", "box", "runs"),
    [
        # The unit's rear is at y = 300, and without an opening that is the wall.
        (
            {"kind": "skirting", "height": 100, "depth": 18},
            Box((0.0, 282.0, 0.0), (800.0, 300.0, 100.0)),
            0,
        ),
        (
            {"kind": "socket", "at": [300, 500], "width": 146, "height": 86},
            Box((300.0, 291.0, 500.0), (446.0, 300.0, 586.0)),
            None,
        ),
        (
            {"kind": "pipe", "runs": "upright", "at": [400, 60], "diameter": 22},
            Box((389.0, 229.0, 0.0), (411.0, 251.0, 2000.0)),
            2,
        ),
    ],
)
def test_what_the_unit_is_cut_round_is_where_it_was_measured(
    wish: dict[str, Any], box: Box, runs: int | None
) -> None:
    unit = unit_from(SIZE, back={"stock": "thin"}, cutouts=[wish])
    (obstacle,) = unit.surroundings.obstacles
    assert obstacle.kind == wish["kind"]
    assert obstacle.runs == runs
    assert obstacle.box.low == pytest.approx(box.low)
    assert obstacle.box.high == pytest.approx(box.high)


def test_no_part_runs_into_what_it_is_cut_round() -> None:
    """A skirting's box meets bounds of sides, which are notched: it lies in their notches."""
    wish = {"kind": "socket", "at": [300, 500], "width": 146, "height": 86}
    unit = unit_from(SIZE, back={"stock": "thin", "fixing": "rebated"}, cutouts=[wish])
    (obstacle,) = unit.surroundings.obstacles
    hit = [part for part in unit.parts if part.bounds().intersects(obstacle.box)]
    for part in hit:
        inside = part.placement.box_to_part(obstacle.box)
        size = part.blank.size
        assert any(
            working.bounds(size).grown(1e-6).contains(inside.intersection(Box.of_size(size)))
            for working in part.workings
        )


def test_a_slope_is_as_it_was_measured() -> None:
    unit = unit_from(SIZE, slope={"falls": "left", "low": 1500, "pitch": 45})
    assert unit.surroundings.ceiling is not None
    at, normal = unit.surroundings.ceiling
    assert at == pytest.approx((0.0, 0.0, 1500.0))
    assert normal == pytest.approx((-(0.5**0.5), 0.0, 0.5**0.5))


def test_nothing_stays_round_a_plain_unit() -> None:
    assert unit_from(SIZE).surroundings == Surroundings()
