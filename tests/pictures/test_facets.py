"""How finely rounds are faceted, and solids held to arithmetic."""

from __future__ import annotations

import math
from itertools import pairwise

import numpy as np
import pytest

from rodwright.mass import Mass
from rodwright.solids import parts as solids
from rodwright.solids import solid_of
from rodwright.solids.meshes import ANGULAR_TOLERANCE, LINEAR_TOLERANCE, mesh_of
from rodwright.unit import Easing, Hole, Mitre, Notch, Surface

S = Surface


def _assert_fine(turns: list[float], radius: float) -> None:
    """The sagitta of an arc between two points of a circle is r (1 - cos(half the turn))."""
    widest = max(b - a for a, b in pairwise(sorted(turns)))
    assert widest <= ANGULAR_TOLERANCE + 1e-6
    assert radius * (1 - math.cos(widest / 2)) <= LINEAR_TOLERANCE


@pytest.mark.parametrize("diameter", [3.0, 10.0, 35.0, 120.0])
def test_holes_of_any_size_keep_to_both_tolerances(diameter: float) -> None:
    hole = Hole(S.FACE, (150.0, 100.0), diameter, 13.0)
    x, y, _ = (mesh_of(((300.0, 200.0, 18.0), (hole,))).vertices - (150.0, 100.0, 0.0)).T
    wall = np.isclose(np.hypot(x, y), diameter / 2, atol=1e-6)
    turns = np.arctan2(y[wall], x[wall]).tolist()
    _assert_fine([*turns, min(turns) + 2 * math.pi], diameter / 2)


@pytest.mark.parametrize("radius", [1.0, 4.0, 15.0])
def test_easings_of_any_size_keep_to_both_tolerances(radius: float) -> None:
    easing = Easing(S.FACE, S.FACE_EDGE, radius)
    vertices = mesh_of(((100.0, 60.0, 22.0), (easing,))).vertices
    y, z = radius - vertices[:, 1], vertices[:, 2] - (22.0 - radius)
    arc = np.isclose(np.hypot(y, z), radius, atol=1e-6) & (y > -1e-6) & (z > -1e-6)
    turns = np.arctan2(z[arc], y[arc]).tolist()
    assert (min(turns), max(turns)) == pytest.approx((0.0, math.pi / 2), abs=1e-6)
    _assert_fine(turns, radius)


@pytest.mark.parametrize("long", [S.FACE_EDGE, S.BACK_EDGE])
def test_both_mitred_ends_of_an_eased_member_have_the_same_facets(long: Surface) -> None:
    """Members that meet at a mitre then share vertices, and close when they are united."""
    inner = S.BACK_EDGE if long is S.FACE_EDGE else S.FACE_EDGE
    mitres = (Mitre(S.NEAR_END, 45.0, long), Mitre(S.FAR_END, 45.0, long))
    size = (900.0, 41.7, 21.3)
    vertices = mesh_of((size, (*mitres, Easing(S.FACE, inner, 3.0)))).vertices
    near = vertices[vertices[:, 0] < 450.0]
    far = (size[0], 0.0, 0.0) + vertices[vertices[:, 0] > 450.0] * (-1.0, 1.0, 1.0)
    near, far = (end[np.lexsort(np.round(end, 6).T)] for end in (near, far))
    np.testing.assert_allclose(near, far, atol=1e-6)


def test_boxes_side_by_side_leave_no_sliver_between_them() -> None:
    """0.1 + 0.2 is a little more than 0.3: a film of 4e-17 mm would stay between the two."""
    size = (100.0, 60.0, 18.0)
    apart = solid_of((size, (Notch(0.1, 0.0, 0.2, 5.0), Notch(0.1 + 0.2, 0.0, 10.0, 5.0))))
    one = solid_of((size, (Notch(0.1, 0.0, 10.2, 5.0),)))
    assert len(apart.Faces()) == len(one.Faces())
    assert apart.isValid()
    assert apart.Volume() == pytest.approx(one.Volume(), rel=1e-9)


def test_a_notch_inside_the_outline_leaves_an_opening() -> None:
    solid = solid_of(((100.0, 60.0, 18.0), (Notch(40.0, 20.0, 10.0, 5.0),)))
    assert solid.isValid()
    assert len(solid.Faces()) == 10
    assert solid.Volume() == pytest.approx((100 * 60 - 10 * 5) * 18)


def test_a_solid_that_arithmetic_contradicts_is_refused(monkeypatch: pytest.MonkeyPatch) -> None:
    shape = ((101.5, 60.0, 18.0), (Notch(0.0, 0.0, 10.0, 5.0),))
    monkeypatch.setattr(solids, "mass_of", lambda _: Mass(1000.0, (0.0, 0.0, 0.0)))
    with pytest.raises(ValueError, match=r"101\.5 x 60 x 18 blank came out at 108720\.000 mm3"):
        solid_of(shape)
