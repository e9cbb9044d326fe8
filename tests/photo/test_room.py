"""The room round a unit: the opening as measured, light, and a place for the camera."""

from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from shapely import Polygon, box, unary_union

from kit.specs import unit_from
from rodwright.geometry.boxes import Box
from rodwright.photo.framing import framed, side_of
from rodwright.photo.planes import cut_off, faces, sides_of
from rodwright.photo.room import floor_under, moulded, plain_room, room_round
from rodwright.photo.scene import Body, Camera, Surface
from rodwright.setout import set_out
from rodwright.unit import Block, LinePoint, OpeningPlane, Unit
from rodwright.wishes import read_spec

MODELS = sorted(Path(__file__).parents[2].glob("models/*.yaml"))
GREY = Surface((0.5, 0.5, 0.5))


def unit_of(name: str) -> Unit:
    return set_out(read_spec(next(each for each in MODELS if each.stem == name)))


def before(unit: Unit) -> Camera:
    return framed(unit.envelope, 300, 400, floor=floor_under(unit), side=side_of(unit))


def named(bodies: tuple[Body, ...], name: str) -> Body:
    return next(body for body in bodies if body.name == name)


def volume(body: Body) -> float:
    """By the divergence theorem; above nothing only where faces look outwards."""
    a, b, c = (body.points[body.triangles[:, i]] for i in range(3))
    return float(np.einsum("ij,ij->i", a, np.cross(b, c)).sum()) / 6


@pytest.mark.parametrize("path", MODELS, ids=lambda path: path.stem)
def test_every_model_stands_in_a_room_that_holds_its_camera(path: Path) -> None:
    unit = set_out(read_spec(path))
    camera = before(unit)
    room = room_round(unit, camera)
    points = np.concatenate([body.points for body in room.bodies])
    eye = np.array(camera.eye)
    assert (points.min(axis=0) < eye - 300).all()
    assert eye[0] < points[:, 0].max() - 300
    assert eye[2] < points[:, 2].max() - 300
    assert (points.max(axis=0)[1:] >= np.array(unit.envelope.high)[1:] - 0.5).all()
    for body in room.bodies:
        assert np.linalg.norm(body.normals, axis=1) == pytest.approx(1.0)
        assert body.triangles.max() < len(body.points)


@pytest.mark.parametrize("path", MODELS, ids=lambda path: path.stem)
def test_walls_look_into_the_room(path: Path) -> None:
    """What looks the other way is dark to the denoiser."""
    unit = set_out(read_spec(path))
    room = room_round(unit, before(unit))
    eye = np.array(before(unit).eye)
    walls = named(room.bodies, "walls")
    for triangle in walls.triangles:
        corners = walls.points[triangle]
        facing = np.cross(corners[1] - corners[0], corners[2] - corners[0])
        assert facing @ walls.normals[triangle[0]] > 0
    front = walls.normals[:, 1] < -0.99
    assert front.any()
    assert ((eye - walls.points)[front] * walls.normals[front]).sum(axis=1).min() > 0


def test_the_opening_is_as_it_was_measured() -> None:
    unit = unit_of("reading-alcove")
    assert unit.opening
    assert unit.opening.shape
    assert unit.opening.front is not None
    assert unit.opening.depth is not None
    walls = named(room_round(unit, before(unit)).bodies, "walls").points
    at_front = walls[np.isclose(walls[:, 1], unit.opening.front)]
    at_rear = walls[np.isclose(walls[:, 1], unit.opening.front + unit.opening.depth)]
    for x, z in unit.opening.shape.front.corners[2:]:
        for plane in (at_front, at_rear):
            assert np.linalg.norm(plane[:, [0, 2]] - (x, z), axis=1).min() < 1e-3
    (left, _), (right, _) = unit.opening.shape.front.corners[:2]
    inside = (at_front[:, 0] > left + 5) & (at_front[:, 0] < right - 5) & (at_front[:, 2] < 2000)
    assert not inside.any()


def test_skirtings_stop_at_the_opening() -> None:
    unit = unit_of("reading-alcove")
    assert unit.opening
    assert unit.opening.shape
    (left, _), (right, _) = unit.opening.shape.front.corners[:2]
    skirtings = named(room_round(unit, before(unit)).bodies, "skirtings").points
    assert not ((skirtings[:, 0] > left + 1e-6) & (skirtings[:, 0] < right - 1e-6)).any()
    assert skirtings[:, 0].min() < left - 1000
    assert skirtings[:, 0].max() > right + 1000


def test_a_sloping_ceiling_clears_the_unit_and_is_cut_to() -> None:
    unit = unit_of("hostel-eaves")
    assert unit.surroundings.ceiling is not None
    at, normal = map(np.array, unit.surroundings.ceiling)
    assert normal == pytest.approx([np.sqrt(0.5), 0.0, np.sqrt(0.5)])
    room = room_round(unit, before(unit))
    for name in ("walls", "ceiling"):
        assert ((named(room.bodies, name).points - at) @ normal).max() < 1e-6
    for part in unit.parts:
        corners = np.array([part.placement.to_unit(each) for each in [(0.0, 0.0, 0.0)]])
        assert ((corners - at) @ normal).max() < 1e-6


@pytest.mark.parametrize("pitch", [45, 47.7, 50.1, 52.9, 60.3])
def test_a_sloping_ceiling_has_no_hole(pitch: float) -> None:
    text = next(each for each in MODELS if each.stem == "hostel-eaves").read_text(encoding="utf-8")
    unit = unit_from(text.replace("pitch: 45", f"pitch: {pitch}"))
    ceiling = named(room_round(unit, before(unit)).bodies, "ceiling")
    plan = unary_union(
        [Polygon(ceiling.points[each][:, :2]).buffer(0.01) for each in ceiling.triangles]
    )
    low, high = unit.envelope.low, unit.envelope.high
    assert plan.covers(box(low[0], low[1] - 2000, high[0], low[1] - 10))


def test_what_a_plane_cuts_off() -> None:
    square = ((0.0, 0.0, 0.0), (2.0, 0.0, 0.0), (2.0, 2.0, 0.0), (0.0, 2.0, 0.0))
    left = cut_off(square, ((1.0, 0.0, 0.0), (1.0, 0.0, 0.0)))
    assert sorted(left) == [(0.0, 0.0, 0.0), (0.0, 2.0, 0.0), (1.0, 0.0, 0.0), (1.0, 2.0, 0.0)]
    assert cut_off(square, ((-1.0, 0.0, 0.0), (1.0, 0.0, 0.0))) == []
    assert cut_off(square, ((3.0, 0.0, 0.0), (1.0, 0.0, 0.0))) == list(square)


def test_closed_bodies_look_outwards() -> None:
    sides = sides_of(Box((1.0, 2.0, 3.0), (11.0, 22.0, 33.0)))
    body = faces("box", sides, GREY)
    assert body
    assert volume(body) == pytest.approx(10 * 20 * 30)
    board = faces("board", moulded(Box((0.0, 0.0, 0.0), (100.0, 16.0, 120.0))), GREY)
    assert board
    # Less the bevel's triangle, 5 by 5.
    assert volume(board) == pytest.approx(100 * (16 * 120 - 5 * 5 / 2))


def test_a_plain_room_lies_round_what_is_taken_apart() -> None:
    shown = Box((-500.0, -900.0, -700.0), (2000.0, 900.0, 2600.0))
    points = np.concatenate(
        [body.points for body in plain_room(shown, framed(shown, 300, 300)).bodies]
    )
    assert points[:, 2].min() < shown.low[2]
    assert points[:, 2].max() > shown.high[2]
    assert points[:, 1].max() > shown.high[1]
    assert np.isclose(points[:, 2], shown.low[2] - 2.0).any()


SIZE = "size: {width: 800, height: 2000, depth: 300}\n"


def test_a_hung_unit_has_its_floor_below_and_the_wall_behind() -> None:
    unit = unit_from("size: {width: 800, height: 700, depth: 300}\nhung: true\n")
    floor = floor_under(unit)
    # In reach: its underside at 1350, its top at 2050.
    assert floor == -1350.0
    room = room_round(unit, before(unit))
    points = np.concatenate([body.points for body in room.bodies])
    assert points[:, 2].min() == pytest.approx(floor - 2.0)
    assert named(room.bodies, "walls").points[:, 1].max() == pytest.approx(300.0)
    assert floor_under(unit_from("size: {width: 800, height: 2000, depth: 300}\nhung: true\n")) == (
        -300.0
    )
    assert floor_under(unit_from(SIZE)) == 0.0


def test_a_unit_keeps_off_the_wall_by_its_skirting_unless_it_is_fixed_there() -> None:
    walls = {
        wall: named(room_round(unit, before(unit)).bodies, "walls").points[:, 1].max()
        for wall in (None, "masonry")
        for unit in [unit_from(SIZE, **({"wall": wall} if wall else {}))]
    }
    assert walls[None] == pytest.approx(318.0)
    assert walls["masonry"] == pytest.approx(300.0)


def test_what_it_is_cut_round_runs_on_past_the_unit() -> None:
    wishes = [
        {"kind": "skirting", "height": 140, "depth": 18},
        {"kind": "pipe", "runs": "upright", "at": [400, 60], "diameter": 22},
    ]
    unit = unit_from(SIZE, back={"stock": "thin"}, cutouts=wishes)
    bodies = room_round(unit, before(unit)).bodies
    skirting, pipe = named(bodies, "skirting 0").points, named(bodies, "pipe 1").points
    assert skirting[:, 0].min() < -1000
    assert skirting[:, 0].max() > 1800
    assert skirting[:, 1].min() == pytest.approx(282.0)
    assert pipe[:, 2].min() == pytest.approx(0.0)
    assert pipe[:, 2].max() == pytest.approx(named(bodies, "ceiling").points[:, 2].max())
    middle = (400.0, 300.0 - 60.0)
    assert np.hypot(*(pipe[:, :2] - middle).T) == pytest.approx(11.0)
    assert not any(body.name == "skirtings" for body in bodies)


def test_an_opening_of_which_little_is_known_is_square_round_the_unit() -> None:
    unit = unit_of("niche-shelf")
    assert unit.opening
    bare = replace(unit, opening=replace(unit.opening, shape=None, front=None, depth=None))
    walls = named(room_round(bare, before(bare)).bodies, "walls").points
    low, high = bare.envelope.low, bare.envelope.high
    at_front = walls[np.isclose(walls[:, 1], low[1])]
    spare = (bare.opening.width - bare.size[0]) / 2  # type: ignore[union-attr]
    for x in (low[0] - spare, high[0] + spare):
        assert np.isclose(at_front[:, 0], x).any()
    assert walls[:, 1].max() > high[1]


def test_a_carpet_is_no_boards() -> None:
    names = [
        {body.name for body in room_round(unit, before(unit)).bodies}
        for unit in (unit_from(SIZE), unit_from(SIZE, floor="carpet"))
    ]
    assert "boards 0" in names[0]
    assert "boards 0" not in names[1]
    assert "carpet" in names[1]


def test_an_opening_that_narrows_to_the_rear_has_its_reveals_look_inwards() -> None:
    unit = unit_of("reading-alcove")
    assert unit.opening
    assert unit.opening.shape
    corners = ((-30.0, -4.0), (1190.0, 2.0), (1195.0, 2015.0), (-20.0, 2040.0))
    bellied = (LinePoint(-4.0, -30.0), LinePoint(900.0, -15.0), LinePoint(2040.0, -20.0))
    rear = replace(OpeningPlane.straight(corners), left=bellied)
    opening = replace(unit.opening, shape=replace(unit.opening.shape, rear=rear))
    walls = named(room_round(replace(unit, opening=opening), before(unit)).bodies, "walls")
    at_rear = walls.points[np.isclose(walls.points[:, 1], walls.points[:, 1].max())][:, [0, 2]]
    for corner in (*corners[2:], (-15.0, 900.0), (-30.0, 0.0), (1190.0, 0.0)):
        assert np.linalg.norm(at_rear - corner, axis=1).min() < 1e-6
    middles = walls.points[walls.triangles].mean(axis=1)
    assert unit.opening.front is not None
    reveals = middles[:, 1] > unit.opening.front + 1
    inwards = np.array([600.0, 100.0, 1000.0]) - middles[reveals]
    assert (np.einsum("ij,ij->i", inwards, walls.normals[walls.triangles[reveals, 0]]) > 0).all()


@pytest.mark.parametrize(
    "base",
    [
        "base: {kind: plinth, height: 70, levelling: 5}",
        "base: {kind: toe_board, height: 80}",
        "base: {kind: levellers, height: 100, board: {toe_space: 40}}",
        "base: {kind: legs, height: 120, stock: oak}",
        "",
    ],
)
def test_a_unit_stands_on_the_floor_whatever_it_stands_on(base: str) -> None:
    unit = unit_from(f"{SIZE}{base}\n")
    feet = [part.bounds().low[2] for part in unit.parts]
    for fitting in unit.fittings:
        part = next(each for each in unit.parts if each.ref == fitting.ref)
        for shape in fitting.shapes:
            ends = (shape.low, shape.high) if isinstance(shape, Block) else (shape.start, shape.end)
            feet += [part.placement.to_unit(end)[2] for end in ends]
    assert min(feet) == pytest.approx(floor_under(unit), abs=1e-6)


@pytest.mark.parametrize("floor", ["boards", "carpet"])
def test_the_floor_of_the_room_runs_on_under_a_unit_in_its_opening(floor: str) -> None:
    """Where a plinth stands back, it shows before that: another one there is a strip of light."""
    unit = unit_from(
        "opening: {width: 1430, height: 2350, depth: 340}\n"
        "base: {kind: plinth, height: 70, levelling: 5}\n",
        **({"floor": "carpet"} if floor == "carpet" else {}),
    )
    bodies = room_round(unit, before(unit)).bodies
    level = {
        body.name
        for body in bodies
        if body.name != "skirtings"
        for triangle in body.triangles
        if (np.abs(body.points[triangle][:, 2]) < 1e-6).all()
    }
    assert level
    assert all(name.startswith(floor) for name in level)
    walls, laid = (
        np.concatenate([body.points for body in bodies if body.name.startswith(name)])
        for name in ("walls", floor)
    )
    # The joints are half a millimetre or so from the wall.
    assert laid[:, 1].max() == pytest.approx(walls[:, 1].max(), abs=1.0)
