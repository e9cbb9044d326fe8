"""Clear spaces on a page: from wood to wood, and nothing between, as the boards' meshes say."""

from __future__ import annotations

import numpy as np
import pytest
from numpy.typing import NDArray

from kit.specs import ready_unit, unit_from
from rodwright.jobs.new import model_names
from rodwright.lengths import format_length
from rodwright.page.telling.clear import Clear, clear_spaces
from rodwright.page.telling.dimensions import dimensions_of
from rodwright.solids.meshes import placed_mesh
from rodwright.unit import LEVELS, UPRIGHTS, Unit

_UNDER_SLOPES = """
size: {width: 1000, height: 2000, depth: 400}
slope: {falls: FALLS, low: LOW, pitch: 45, clearance: 0}
interior: {columns: [{width: 1 share, shelves: 2}, {width: 1 share, shelves: 3}]}
"""


def _sloping(falls: str, low: int) -> Unit:
    return unit_from(_UNDER_SLOPES.replace("FALLS", falls).replace("LOW", str(low)))


def _faces(unit: Unit) -> NDArray[np.float64]:
    """The triangles of all boards that stand and lie."""
    boards = [part for part in unit.parts if part.role in (*UPRIGHTS, *LEVELS)]
    return np.concatenate([placed_mesh(part).triangles for part in boards])


def _crossings(faces: NDArray[np.float64], clear: Clear) -> NDArray[np.float64]:
    """Where the line that a clear space lies on goes through faces (barycentric coordinates)."""
    axis = int(np.argmax(np.abs(np.subtract(clear.end, clear.start))))
    others = [each for each in range(3) if each != axis]
    # Off the edges that triangles share.
    point = np.array(clear.start)[others] + (0.0137, 0.0071)
    a, b, c = (faces[:, corner][:, others] for corner in range(3))
    twice = _cross(b - a, c - a)
    facing = np.abs(twice) > 1e-9
    a, b, c, twice, faces = a[facing], b[facing], c[facing], twice[facing], faces[facing]
    shares = np.stack(
        [_cross(c - b, point - b), _cross(a - c, point - c), _cross(b - a, point - a)]
    )
    shares /= twice
    met = (shares >= 0).all(axis=0)
    return np.asarray((shares[:, met].T * faces[met][:, :, axis]).sum(axis=1))


def _cross(one: NDArray[np.float64], two: NDArray[np.float64]) -> NDArray[np.float64]:
    return np.asarray(one[..., 0] * two[..., 1] - one[..., 1] * two[..., 0])


def _is_clear(unit: Unit) -> int:
    """How many clear spaces there are, all of which the meshes say are so."""
    faces, told = _faces(unit), list(clear_spaces(unit))
    for each in told:
        axis = int(np.argmax(np.abs(np.subtract(each.end, each.start))))
        low, high = each.start[axis], each.end[axis]
        met = _crossings(faces, each)
        assert np.abs(met - low).min() < 0.05 and np.abs(met - high).min() < 0.05, each
        assert not ((met > low + 0.05) & (met < high - 0.05)).any(), each
        # An odd number of faces below: the line would be in wood.
        assert (met < (low + high) / 2).sum() % 2 == 0, each
    return len(told)


@pytest.mark.parametrize("name", model_names())
def test_ends_lie_on_boards_and_the_space_between_is_empty(name: str) -> None:
    unit = ready_unit(name)
    assert _is_clear(unit) > 2


@pytest.mark.parametrize(
    ("falls", "low"), [("right", 1200), ("left", 1500), ("rear", 1750), ("front", 1750)]
)
def test_under_a_slope_too(falls: str, low: int) -> None:
    assert _is_clear(_sloping(falls, low)) > 4


def test_what_a_slope_cuts_off_is_left_out() -> None:
    """By hand: the outside of the slope is at 2200 - x, its board 18 thick, 25.456 upright; of the
    477.5 above the third shelf on the right, at 1504.5, there is left what lies below that."""
    *_, last = clear_spaces(_sloping("right", 1200))
    x, _, z = last.end
    assert last.start[2] == pytest.approx(1504.5)
    assert x > 509 and z == pytest.approx(2200 - x - 18 * 2**0.5, abs=0.01)
    assert last.text == format_length(z - 1504.5, "mm") != "477.5"


def test_where_a_slope_falls_to_the_front_height_is_that_at_the_front() -> None:
    """By hand: 1750 at the front, and 45 degrees; measured 1 mm behind it."""
    high = max(each.end[2] for each in clear_spaces(_sloping("front", 1750)))
    assert high == pytest.approx(1750 + 1 - 18 * 2**0.5, abs=0.01)


def test_a_dimension_on_the_page_is_of_what_is_clear() -> None:
    """Under the eaves of this model 453 was told up to the height of a top that isn't there."""
    unit = ready_unit("hostel-eaves")
    told = dimensions_of(unit)
    assert "453" not in {each.text for each in told}
    high = [each for each in told if each.start[0] > 709 and each.start[2] > 1300]
    assert all(each.offset[0] == 0 or each.start[0] == 1401 for each in high)
