"""Mass by arithmetic against closed forms, and against every other way of measuring a piece."""

from __future__ import annotations

import io
import math
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from scipy.integrate import quad
from stl.mesh import Mesh

from kit.closed_forms import CROSSING, SINGLE, Case
from kit.points import cut_away
from kit.samples import ASH, PLYWOOD, bookcase, worked_part
from kit.strategies import shapes
from rodwright.handover.stl import part_stl
from rodwright.mass import centre_of_mass, lines, mass_of, unit_weight, weight
from rodwright.solids import solid_of
from rodwright.solids.meshes import LINEAR_TOLERANCE, mesh_of
from rodwright.unit import (
    Easing,
    FingerPull,
    Hole,
    Mortise,
    Notch,
    Part,
    PocketHole,
    ShapeKey,
    Stock,
    Surface,
)


def test_gausss_rule_is_numpys() -> None:
    places, shares = np.polynomial.legendre.leggauss(12)
    np.testing.assert_array_equal(lines.EVEN, places)
    np.testing.assert_array_equal(lines.SHARES, shares)


@pytest.mark.parametrize("case", SINGLE, ids=lambda case: case.name)
def test_one_working(case: Case) -> None:
    mass = mass_of(case.shape)
    assert mass.volume == pytest.approx(case.volume, rel=1e-9)
    assert mass.centroid == pytest.approx(case.centroid, abs=1e-6)


@pytest.mark.parametrize("case", CROSSING, ids=lambda case: case.name)
def test_workings_that_cross(case: Case) -> None:
    mass = mass_of(case.shape)
    assert mass.volume == pytest.approx(case.volume, rel=2e-6)
    assert mass.centroid == pytest.approx(case.centroid, abs=1e-3)


def test_a_pocket_hole_is_two_cylinders_cut_off_aslant() -> None:
    """A cylinder of height h at its axis, cut off at a slope k from square, has its centre at
    k r^2 / 4h aside and h / 2 + k^2 r^2 / 8h up (truncated right cylinder, from memory)."""
    size, r, screw, leaves, stop = (400.0, 120.0, 20.0), 4.75, 2.0, 12.0, 25.0
    slope = math.radians(15.0)
    pocket = PocketHole(Surface.FACE, Surface.NEAR_END, 60.0, leaves, stop, 2 * r, 2 * screw)
    along = np.array([math.cos(slope), 0.0, math.sin(slope)])
    up = np.array([-math.sin(slope), 0.0, math.cos(slope)])
    exit_at = np.array([0.0, 60.0, 20.0 - leaves])
    taken, moment = 0.0, np.zeros(3)
    # From the floor to the face, where low is longer; from the floor to the end, where high is.
    for radius, height, k, way in (
        (r, leaves / math.sin(slope) - stop, -1 / math.tan(slope), 1),
        (screw, stop, -math.tan(slope), -1),
    ):
        volume = math.pi * radius**2 * height
        over = height / 2 + k**2 * radius**2 / (8 * height)
        aside = k * radius**2 / (4 * height)
        moment += volume * (exit_at + (stop + way * over) * along + aside * up)
        taken += volume
    mass, whole = mass_of((size, (pocket,))), math.prod(size)
    assert mass.volume == pytest.approx(whole - taken, rel=1e-12)
    centre = (whole * np.array(size) / 2 - moment) / (whole - taken)
    assert mass.centroid == pytest.approx(centre, abs=1e-9)


@pytest.mark.parametrize("first", [0, 1])
def test_a_bolt_hole_that_ends_in_the_middle_of_a_boring(first: int) -> None:
    """What two square cylinders share has the width ``2 sqrt(r^2 - y^2)`` of the thinner and half
    the width ``sqrt(R^2 - y^2)`` of the other; integrated over y by SciPy's adaptive quadrature."""
    r, wide = 4.0, 7.5
    hole = Hole(Surface.NEAR_END, (25.0, 9.0), 2 * r, 34.0)
    boring = Hole(Surface.REVERSE, (34.0, 25.0), 2 * wide, 13.5)
    workings = (hole, boring) if first == 0 else (boring, hole)
    shared, _ = quad(lambda y: 2 * math.sqrt((r**2 - y**2) * (wide**2 - y**2)), -r, r, epsabs=1e-9)
    taken = math.pi * (r**2 * 34.0 + wide**2 * 13.5) - shared
    volume = mass_of(((64.0, 50.0, 18.0), workings)).volume
    assert volume == pytest.approx(64 * 50 * 18 - taken, rel=1e-8)


def test_many_holes_are_taken_one_by_one() -> None:
    holes = [Hole(Surface.FACE, (20.0 + 32 * i, y), 5.0, 12.0) for i in range(60) for y in (37, 83)]
    size = (2000.0, 120.0, 18.0)
    taken = 120 * math.pi * 2.5**2 * 12
    assert mass_of((size, tuple(holes))).volume == pytest.approx(math.prod(size) - taken, rel=1e-12)


def test_a_hole_over_the_edge_takes_only_wood() -> None:
    half = mass_of(((100.0, 50.0, 20.0), (Hole(Surface.FACE, (40.0, 0.0), 10.0),)))
    assert half.volume == pytest.approx(100 * 50 * 20 - math.pi * 25 / 2 * 20, rel=1e-6)


def test_a_hole_deeper_than_the_piece_goes_just_through() -> None:
    size, hole = (100.0, 50.0, 20.0), Hole(Surface.REVERSE, (40.0, 25.0), 10.0, 30.0)
    through = replace(hole, depth=None)
    assert mass_of((size, (hole,))).volume == pytest.approx(mass_of((size, (through,))).volume)


def test_nothing_left() -> None:
    with pytest.raises(ValueError, match="leave nothing"):
        mass_of(((100.0, 50.0, 20.0), (Notch(0.0, 0.0, 100.0, 50.0),)))


def _curved_area(shape: ShapeKey) -> float:
    """At least the area of a shape's round surfaces, over which facets may stand off."""
    size, workings = shape
    area = 0.0
    for working in workings:
        if isinstance(working, Hole):
            area += math.pi * working.diameter * size[working.surface.axis]
        elif isinstance(working, Mortise) and working.round_ends:
            area += math.pi * min(working.extent) * working.depth
        elif isinstance(working, PocketHole):
            # Both holes together are no longer than a slanting line from face to reverse.
            area += math.pi * working.diameter * size[2] / math.sin(math.radians(working.angle))
        elif isinstance(working, FingerPull):
            area += math.pi * working.radius * (size[working.run] + 2 * working.radius)
        elif isinstance(working, Easing):
            run = 3 - working.surface.axis - working.edge.axis
            area += math.pi / 2 * working.radius * size[run]
    return area


def _assert_measures_agree(shape: ShapeKey) -> None:
    """Arithmetic, CadQuery, trimesh, and numpy-stl from the file; later ones by facets."""
    size, mass, solid = shape[0], mass_of(shape), solid_of(shape)
    reach = math.hypot(*size)
    # To rounding, but where curved workings cross each other (see mass_of).
    curved = sum(isinstance(working, Easing | FingerPull | Hole | Mortise) for working in shape[1])
    slanting = any(isinstance(working, PocketHole) for working in shape[1])
    exact = 1e-8 if curved < 2 and not slanting else 5e-5
    assert solid.Volume() == pytest.approx(mass.volume, rel=exact)
    assert solid.Center().toTuple() == pytest.approx(mass.centroid, abs=exact * reach)
    mesh = mesh_of(shape)
    facets = LINEAR_TOLERANCE * _curved_area(shape) + 2e-5 * mass.volume
    astray = facets / mass.volume * reach + 1e-4 * reach
    assert mesh.volume == pytest.approx(mass.volume, abs=facets)
    assert mesh.center_mass == pytest.approx(np.array(mass.centroid), abs=astray)
    volume, centre, _ = Mesh.from_file(
        "part.stl", fh=io.BytesIO(part_stl(shape))
    ).get_mass_properties()
    # STL's single precision: half of 2^-14 mm at up to 1024 mm, over the whole surface.
    surfaces = 2 * (size[0] * size[1] + size[1] * size[2] + size[2] * size[0])
    assert float(volume) == pytest.approx(mass.volume, abs=facets + 2**-15 * surfaces)
    assert centre == pytest.approx(np.array(mass.centroid), abs=astray + 1e-3)


@settings(
    max_examples=80,
    suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large],
)
@given(shapes())
def test_random_shapes_measure_alike(shape: ShapeKey) -> None:
    _assert_measures_agree(shape)


@settings(
    max_examples=100, suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large]
)
@given(shapes(most=6), st.integers(0, 2**32 - 1))
def test_random_shapes_hold_their_share_of_points(shape: ShapeKey, seed: int) -> None:
    """Monte Carlo, straight from what each working means: within six standard errors."""
    size, mass, count = np.array(shape[0]), mass_of(shape), 100_000
    points = np.random.default_rng(seed).random((count, 3)) * size
    left = points[
        ~np.logical_or.reduce(
            [np.zeros(count, bool)] + [cut_away(points, size, working) for working in shape[1]]
        )
    ]
    share = mass.volume / size.prod()
    spread = math.sqrt(max(0.0, share * (1 - share)) / count)
    assert abs(len(left) / count - share) <= 6 * spread + 1e-9
    assert left.mean(axis=0) == pytest.approx(
        np.array(mass.centroid), abs=6 * float(size.max()) / 2 / math.sqrt(len(left))
    )


@pytest.mark.parametrize("part", [*bookcase().parts, worked_part()], ids=lambda part: part.ref)
def test_sample_parts_measure_alike(part: Part) -> None:
    _assert_measures_agree(part.shape)


@settings(max_examples=60)
@given(st.data())
def test_the_order_of_workings_does_not_matter(data: st.DataObject) -> None:
    size, workings = data.draw(shapes())
    turned = (size, tuple(data.draw(st.permutations(workings))))
    first, second = mass_of((size, workings)), mass_of(turned)
    assert second.volume == pytest.approx(first.volume, rel=5e-5)
    assert second.centroid == pytest.approx(first.centroid, abs=5e-5 * math.hypot(*size))


def test_weight_is_volume_times_density() -> None:
    shelf = bookcase().part("SH1")  # 776 x 300 x 18 at 680 kg/m3
    assert weight(shelf) == pytest.approx(0.776 * 0.3 * 0.018 * 680)
    denser: Stock = replace(PLYWOOD, density=2 * PLYWOOD.density)
    heavy = replace(shelf, blank=replace(shelf.blank, stock=denser))
    assert weight(heavy) == pytest.approx(2 * weight(shelf))


def test_the_parts_weights_add_up_to_the_units() -> None:
    unit = bookcase()
    assert unit_weight(unit) == pytest.approx(sum(weight(part) for part in unit.parts), rel=1e-12)
    by_solids = sum(
        solid_of(part.shape).Volume() * part.blank.stock.density * 1e-9 for part in unit.parts
    )
    assert unit_weight(unit) == pytest.approx(by_solids, rel=1e-6)


def test_the_bookcase_balances_on_its_middle_plane() -> None:
    unit = bookcase()
    x, y, z = centre_of_mass(unit)
    assert x == pytest.approx(400.0)
    # All is even about mid-height too, but for the middle shelf, 9 mm below it: what it adds
    # is its length between the sides, for its ends fill the housings.
    shelf = weight(unit.part("SH1")) * 764.0 / 776.0
    assert z == pytest.approx(500.0 - shelf * 9.0 / unit_weight(unit))
    assert 0.0 < y < 300.0


def test_the_centre_of_mass_follows_the_weights() -> None:
    """Two equal cubes, one of twice the density: the centre is two thirds of the way over."""
    unit = bookcase()
    cube = replace(unit.part("SH1").blank, length=10.0, width=10.0, thickness=10.0)
    light, heavy = (
        replace(
            unit.part("SH1"),
            ref=ref,
            blank=replace(cube, stock=replace(ASH, density=density)),
            placement=replace(unit.part("SH1").placement, origin=(x, 0.0, 0.0)),
        )
        for ref, density, x in (("A", 500.0, 0.0), ("B", 1000.0, 30.0))
    )
    pair = replace(unit, parts=(light, heavy), joints=())
    assert centre_of_mass(pair) == pytest.approx((25.0, 5.0, 5.0))
