"""Vectors: the same as numpy's."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from rodwright.geometry import Vector, along, cross, dot, minus, plus, times, vector

COORDINATE = st.floats(-5000, 5000)
VECTOR = st.tuples(COORDINATE, COORDINATE, COORDINATE)


@given(VECTOR, VECTOR, COORDINATE)
def test_they_are_added_and_multiplied_as_numpy_does_it(a: Vector, b: Vector, by: float) -> None:
    one, other = np.array(a), np.array(b)
    assert plus(a, b) == vector(one + other)
    assert minus(a, b) == vector(one - other)
    assert times(a, by) == vector(by * one)
    assert dot(a, b) == pytest.approx(one @ other, abs=1e-6)
    assert cross(a, b) == pytest.approx(np.cross(one, other), abs=1e-6)


@given(st.integers(0, 2), COORDINATE, VECTOR)
def test_a_length_along_an_axis_has_no_other_part(axis: int, length: float, a: Vector) -> None:
    assert dot(along(axis, length), a) == length * a[axis]
    assert along(axis, length)[axis] == length


def test_a_vector_has_three_numbers() -> None:
    assert vector(np.arange(3)) == (0.0, 1.0, 2.0)
    with pytest.raises(ValueError):
        vector([1.0, 2.0])
