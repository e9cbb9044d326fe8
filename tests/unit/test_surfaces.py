"""Surfaces: two across each axis, each along the other two."""

from __future__ import annotations

import pytest

from rodwright.unit import Surface


@pytest.mark.parametrize("surface", Surface)
def test_a_surface_is_found_by_its_axis_and_end(surface: Surface) -> None:
    assert Surface.at(surface.axis, surface.at_high) is surface
    assert Surface.at(surface.axis, not surface.at_high) is surface.opposite
    assert surface.opposite.opposite is surface
    assert sorted((surface.axis, *surface.across)) == [0, 1, 2]
    assert surface.across[0] < surface.across[1]
