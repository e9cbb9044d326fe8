"""What stands in a unit: clear of its parts, no heavier than it is said to carry."""

from functools import cache
from itertools import combinations
from pathlib import Path

import numpy as np
import pytest

from kit.specs import unit_from
from rodwright.geometry.boxes import Box
from rodwright.photo.contents import Thing, bodies_of, things_in
from rodwright.photo.contents.arranging import ON_TOP
from rodwright.photo.contents.free import FreeRoom
from rodwright.photo.contents.kinds import kind_of
from rodwright.photo.contents.shapes import book, folded, leant_size, loft
from rodwright.photo.scene import Body, Surface
from rodwright.pictures.opened import opened
from rodwright.setout import set_out
from rodwright.trade.loads import USES
from rodwright.unit import Role, Unit
from rodwright.wishes import read_spec

MODELS = sorted(Path(__file__).parents[2].glob("models/*.yaml"))
STEMS = [path.stem for path in MODELS]
GREY = Surface((0.5, 0.5, 0.5))


@cache
def unit_of(stem: str) -> Unit:
    return set_out(read_spec(next(each for each in MODELS if each.stem == stem)))


@cache
def things_of(stem: str) -> tuple[Thing, ...]:
    return things_in(unit_of(stem), 0)


def span(bodies: tuple[Body, ...]) -> tuple[np.ndarray, np.ndarray]:
    points = np.concatenate([body.points for body in bodies])
    return points.min(axis=0), points.max(axis=0)


@pytest.mark.parametrize("stem", STEMS)
def test_things_keep_within_the_room_that_they_are_given(stem: str) -> None:
    for thing in things_of(stem):
        low, high = span(thing.bodies)
        assert (low >= np.array(thing.box.low) - 0.5).all(), thing
        assert (high <= np.array(thing.box.high) + 0.5).all(), thing


@pytest.mark.parametrize("stem", STEMS)
def test_nothing_stands_in_a_part_that_is_square(stem: str) -> None:
    """By boxes alone: bounds of parts that nothing was cut off are the parts."""
    boxes = [
        part.bounds()
        for part in unit_of(stem).parts
        if not any(each.planes(part.blank.size) for each in part.workings)
    ]
    low, high = (np.array([getattr(box, end) for box in boxes]) for end in ("low", "high"))
    for thing in things_of(stem):
        depth = np.minimum(high, thing.box.high) - np.maximum(low, thing.box.low)
        assert depth.min(axis=1).max() < 0.2, thing


@pytest.mark.parametrize("stem", ["reading-alcove", "pottery-dresser", "hostel-eaves"])
def test_things_keep_clear_of_each_other(stem: str) -> None:
    for one, other in combinations(things_of(stem), 2):
        assert one.box.penetration(other.box) < 0.2 or 0.0 in (one.mass, other.mass)


def test_nothing_reaches_through_a_sloping_ceiling() -> None:
    unit = unit_of("hostel-eaves")
    assert unit.surroundings.ceiling is not None
    at, normal = map(np.array, unit.surroundings.ceiling)
    for thing in things_of("hostel-eaves"):
        for body in thing.bodies:
            assert ((body.points - at) @ normal).max() < 0


@pytest.mark.parametrize("stem", STEMS)
def test_no_part_carries_more_than_is_said(stem: str) -> None:
    unit = unit_of(stem)
    shown: dict[str, float] = {}
    for thing in things_of(stem):
        shown[thing.on] = shown.get(thing.on, 0.0) + thing.mass
    hung = {load.ref for load in unit.loading.loads if any(each.up for each in load.lumps)}
    for ref, mass in shown.items():
        carried = sum(load.mass for load in unit.loading.on(ref))
        # Half of what hangs on a rail hangs on its other end.
        assert mass <= carried * (2 if ref in hung else 1) + 1e-6
    assert sum(shown.values()) > 0


@pytest.mark.parametrize(
    ("stem", "least"), [("reading-alcove", 0.5), ("library-wall", 0.5), ("record-cabinet", 0.8)]
)
def test_open_shelves_carry_much_of_what_is_said(stem: str, least: float) -> None:
    """A row of books is taken as 37 kg/m (they weigh less, mostly), of records as 67 kg/m."""
    unit = unit_of(stem)
    said = {
        load.ref: load.mass for load in unit.loading.loads if unit.part(load.ref).role is Role.SHELF
    }
    shown = {ref: sum(thing.mass for thing in things_of(stem) if thing.on == ref) for ref in said}
    assert sum(shown.values()) > least * sum(said.values())
    assert all(shown[ref] > 0.3 * mass for ref, mass in said.items())


def test_what_stands_on_top_is_little() -> None:
    unit = unit_of("pottery-dresser")
    (top,) = (load for load in unit.loading.loads if unit.part(load.ref).role is Role.WORKTOP)
    masses = [thing.mass for thing in things_of("pottery-dresser") if thing.on == top.ref]
    assert sum(masses[:-1]) < ON_TOP * top.mass
    assert masses


def test_one_thing_on_top_may_be_all_of_its_load() -> None:
    (deck,) = (thing for thing in things_of("record-cabinet") if thing.on == "TP1")
    assert deck.mass == 12.0


def test_things_in_drawers_come_out_with_them() -> None:
    unit = unit_of("tape-drawers")
    stands = opened(unit)
    drawers = {ref for motion in unit.motions for ref in motion.refs}
    found = [thing for thing in things_in(stands, 0) if thing.on in drawers]
    assert found
    for thing in found:
        bottom = stands.part(thing.on).bounds()
        assert bottom.low[1] <= thing.box.low[1]
        assert thing.box.high[1] <= bottom.high[1]
        assert thing.box.low[2] == pytest.approx(bottom.high[2])


def test_coats_hang_from_their_rail_between_its_uprights() -> None:
    found = [thing for thing in things_of("boot-room") if thing.on == "SD1"]
    rail = next(thing for thing in found if not thing.mass)
    assert rail.box.low[0] == pytest.approx(18.0)
    assert rail.box.high[0] == pytest.approx(491.0)
    coats = [thing for thing in found if thing.mass]
    assert len(coats) >= 3
    for coat in coats:
        assert rail.box.low[0] < coat.box.low[0] < coat.box.high[0] < rail.box.high[0]
        assert coat.box.high[2] < rail.box.low[2]


def test_equal_seeds_give_equal_things_and_others_others() -> None:
    unit = unit_of("niche-shelf")
    one, again, other = (bodies_of(things_in(unit, seed)) for seed in (3, 3, 4))
    assert len(one) == len(again)
    for body, same in zip(one, again, strict=True):
        assert np.array_equal(body.points, same.points)
    points = [np.concatenate([body.points for body in bodies]) for bodies in (one, other)]
    assert points[0].shape != points[1].shape or not np.array_equal(*points)


def test_a_box_is_clear_of_a_bevelled_part_past_its_bevel() -> None:
    unit = unit_of("hostel-eaves")
    free = FreeRoom.of(unit)
    right = unit.envelope.high[0]
    # Under the slope at the right, where only the ceiling is higher than 1250 mm.
    assert not free.is_clear(Box((right - 60, 100, 1500), (right - 50, 120, 1510)))
    assert free.is_clear(Box((300, 100, 1000), (320, 120, 1020)))


def test_how_high_it_is_free() -> None:
    unit = unit_from(
        "size: {width: 800, height: 1000, depth: 300}\ninterior: {shelves: {count: 1}}\n"
    )
    (shelf,) = (part.bounds() for part in unit.parts if part.role is Role.SHELF)
    over = Box((200.0, 50.0, shelf.high[2]), (300.0, 150.0, shelf.high[2] + 1))
    top = min(part.bounds().low[2] for part in unit.parts if part.role is Role.TOP)
    high = FreeRoom.of(unit).height_over(over, 900.0)
    assert high == pytest.approx(top - shelf.high[2], abs=1.1)


@pytest.mark.parametrize("lean", [0.0, 5.0, 9.0])
def test_a_book_fills_its_box(lean: float) -> None:
    size = (30.0, 160.0, 240.0)
    # By hand at 90 degrees less: a leaning slab is wide by its thickness and by its height.
    around = leant_size(size, lean)
    turn = np.radians(lean)
    assert around[0] == pytest.approx(30 * np.cos(turn) + 240 * np.sin(turn))
    low, high = span(book(Box.of_size(around), GREY, None, lean))
    assert low == pytest.approx(np.zeros(3), abs=1e-9)
    assert high == pytest.approx(np.array(around), abs=1e-9)


def test_cloth_is_closed_and_looks_outwards() -> None:
    body = folded(Box((0.0, 0.0, 0.0), (300.0, 300.0, 40.0)), GREY)
    edges: dict[tuple[int, int], int] = {}
    for a, b, c in body.triangles.tolist():
        for edge in ((a, b), (b, c), (c, a)):
            edges[edge] = edges.get(edge, 0) + 1
    assert all(edges.get((b, a)) == count == 1 for (a, b), count in edges.items())
    a, b, c = (body.points[body.triangles[:, i]] for i in range(3))
    volume = np.einsum("ij,ij->i", a, np.cross(b, c)).sum() / 6
    assert 0.8 < volume / (300 * 300 * 40) < 1.0


def test_a_loft_of_equal_circles_is_a_cylinder() -> None:
    rings = [((0.0, 0.0, z), 50.0, 50.0) for z in (0.0, 100.0)]
    body = loft("bar", rings, GREY)
    a, b, c = (body.points[body.triangles[:, i]] for i in range(3))
    volume = np.einsum("ij,ij->i", a, np.cross(b, c)).sum() / 6
    # A prism over a polygon of 24 sides.
    assert volume == pytest.approx(100 * 24 / 2 * 50**2 * np.sin(2 * np.pi / 24))


@pytest.mark.parametrize(
    "use", [use for use in USES if use.manner != "hangs"], ids=lambda u: u.name
)
@pytest.mark.parametrize(("deep", "high"), [(150.0, 120.0), (450.0, 400.0), (280.0, 60.0)])
def test_every_use_has_things_that_fit(use, deep: float, high: float) -> None:
    candidates = kind_of(use.name)(np.random.default_rng(5), deep, high)
    for _, each in zip(range(40), candidates, strict=False):
        assert min(each.size) > 0
        assert each.size[1] <= deep + 1e-6
        assert each.size[2] <= high + 1e-6
        assert 0 < each.mass < 40
        low, high_point = span(each.bodies(Box.of_size(each.size)))
        assert (low >= -0.5).all()
        assert (high_point <= np.array(each.size) + 0.5).all()


def test_what_the_unit_is_cut_out_round_is_in_no_ones_way() -> None:
    wish = {"kind": "pipe", "runs": "upright", "at": [400, 150], "diameter": 60}
    unit = unit_from(
        "size: {width: 800, height: 1000, depth: 300}\nloads: books\n"
        "interior: {shelves: {count: 2}}\n",
        cutouts=[wish],
    )
    (pipe,) = unit.surroundings.obstacles
    things = things_in(unit, 0)
    assert any(thing.box.high[0] < pipe.box.low[0] for thing in things)
    assert any(thing.box.low[0] > pipe.box.high[0] for thing in things)
    assert not any(thing.box.intersects(pipe.box) for thing in things)


def test_books_on_top_lie() -> None:
    found = [thing for thing in things_of("hallway-bookcase") if thing.on == "TP1"]
    assert found
    for thing in found:
        assert thing.box.size[0] > thing.box.size[2]
