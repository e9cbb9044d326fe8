"""Moving pictures: parts come in in their order, and the camera goes once round."""

from __future__ import annotations

from functools import lru_cache
from itertools import pairwise

import numpy as np
import pytest

from kit.specs import unit_from
from rodwright.geometry import Box
from rodwright.jobs.new import model_path
from rodwright.making.order import order_of
from rodwright.photo.films import flights_of, frames_of, lifted
from rodwright.photo.framing import on_picture
from rodwright.photo.studio import round_it, studio_round
from rodwright.setout import set_out
from rodwright.unit import Unit
from rodwright.unit.laid import laid_unit
from rodwright.wishes import read_spec

_BOX = Box((0.0, -20.0, 100.0), (1200.0, 300.0, 2100.0))


@lru_cache(maxsize=4)
def _unit(name: str) -> Unit:
    return laid_unit(set_out(read_spec(model_path(name))))


@pytest.mark.parametrize("name", ["reading-alcove", "record-cabinet"])
def test_every_part_comes_once_and_after_what_it_stands_on(name: str) -> None:
    unit = _unit(name)
    flights = flights_of(unit)
    came = [ref for flight in flights for ref in flight.off]
    assert sorted(came) == sorted(part.ref for part in unit.parts)
    place = {ref: number for number, flight in enumerate(flights) for ref in flight.off}
    for step in order_of(unit).steps:
        if not step.within:
            for before in step.standing:
                assert place[before] <= min(place[ref] for ref in step.refs)


@pytest.mark.parametrize("name", ["drying-rack", "boot-room", "tape-drawers", "hostel-eaves"])
def test_a_build_up_ends_with_the_whole_unit_in_its_place(name: str) -> None:
    unit = _unit(name)
    frames = frames_of(flights_of(unit))
    assert len(frames) <= 120
    assert set(frames[-1]) == {part.ref for part in unit.parts}
    assert all(move == pytest.approx((0, 0, 0)) for move in frames[-1].values())
    for before, after in pairwise(frames):
        assert before.keys() <= after.keys()
        for ref, move in before.items():
            assert np.linalg.norm(after[ref]) <= np.linalg.norm(move) + 1e-9


@pytest.mark.parametrize("name", ["boot-room", "reading-alcove", "tape-drawers"])
def test_a_unit_is_lifted_for_what_comes_from_below_and_set_down_again(name: str) -> None:
    unit = _unit(name)
    frames = frames_of(flights_of(unit))
    shown = lifted(unit, frames)
    first = next(iter(frames[0]))
    ups = [moves[first][2] for moves in shown]
    assert shown[-1] == frames[-1]
    low = {part.ref: part.bounds().low[2] for part in unit.parts}
    for moves in shown:
        assert min(low[ref] + move[2] for ref, move in moves.items()) > unit.envelope.low[2] - 1e-6
    # In no picture by more than a fair share of the way.
    assert max(abs(b - a) for a, b in pairwise(ups)) <= max(ups) * 0.45
    comes_from_below = any(
        low[ref] + off[2] < unit.envelope.low[2] - 1
        for flight in flights_of(unit)
        for ref, off in flight.off.items()
    )
    assert (max(ups) > 1) == comes_from_below


def test_one_part_alone_stands_there() -> None:
    unit = unit_from("size: {width: 800, height: 900, depth: 300}")
    first = flights_of(unit)[0]
    assert all(move == (0.0, 0.0, 0.0) for move in first.off.values())


def test_from_all_round_the_unit_is_in_the_picture() -> None:
    corners = [
        (x, y, z)
        for x in (_BOX.low[0], _BOX.high[0])
        for y in (_BOX.low[1], _BOX.high[1])
        for z in (_BOX.low[2], _BOX.high[2])
    ]
    cameras = round_it(_BOX, range(0, 360, 15), 480, floor=100.0)
    seen = np.array([on_picture(camera, corners) for camera in cameras])
    assert seen.min() >= 0.03 and seen.max() <= 0.97
    assert seen.max() - seen.min() > 0.85  # and it fills it
    assert len({(camera.width, camera.height, camera.focal) for camera in cameras}) == 1
    assert all(camera.eye[2] == 1600.0 for camera in cameras)


def test_the_camera_stays_within_the_studio() -> None:
    (cove,) = studio_round(_BOX, 100.0).bodies
    out = np.hypot(*(cove.points[:, :2] - np.array(_BOX.centre[:2])).T)
    for camera in round_it(_BOX, [0.0, 90.0], 480, 100.0):
        away = np.hypot(*(np.array(camera.eye[:2]) - np.array(_BOX.centre[:2])))
        flat = out[np.isclose(cove.points[:, 2], 100.0)].max()
        assert away < flat + 1.0
    assert np.linalg.norm(cove.normals, axis=1) == pytest.approx(1.0)
    tri = cove.points[cove.triangles]
    own = np.cross(tri[:, 1] - tri[:, 0], tri[:, 2] - tri[:, 0])
    told = cove.normals[cove.triangles].mean(axis=1)
    assert ((own * told).sum(axis=1) > 0).all()
