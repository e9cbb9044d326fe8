"""Arrises along which glued parts lie flush."""

from __future__ import annotations

import numpy as np

from kit.specs import unit_from
from rodwright.geometry.vectors import Vector
from rodwright.photo.bodies.flush import flush_in
from rodwright.unit import Unit

SIZE = "size: {width: 900, height: 1200, depth: 300}\n"
FRAME = "face_frame: {stock: ash, width: 45, corners: butted}\n"


def lines(unit: Unit, name: str) -> list[tuple[Vector, Vector]]:
    """The stretches of the first part of a name, in the unit frame."""
    part = next(each for each in unit.parts if each.name == name)
    return [
        (part.placement.to_unit(a), part.placement.to_unit(b))
        for a, b in flush_in(unit).get(part.ref, ())
    ]


def upright_at(found: list[tuple[Vector, Vector]], x: float, y: float) -> list[list[float]]:
    """From where to where (z) the upright stretches at a place reach."""
    return sorted(
        sorted((a[2], b[2]))
        for a, b in found
        if np.allclose([a[0], a[1], b[0], b[1]], [x, y, x, y], atol=1e-3)
    )


def test_a_stile_is_flush_where_its_rails_meet_it() -> None:
    unit = unit_from(SIZE + FRAME)
    stile, rail = (
        next(part for part in unit.parts if part.name == name).bounds()
        for name in ("Left stile", "Bottom rail")
    )
    inner = upright_at(lines(unit, "Left stile"), stile.high[0], stile.low[1])
    assert len(inner) == 2  # the bottom rail's width and the top rail's, none between
    assert np.allclose(inner[0], [rail.low[2], rail.high[2]], atol=0.1)
    # The end of the rail is sharp all over its front.
    end = upright_at(lines(unit, "Bottom rail"), rail.low[0], rail.low[1])
    assert np.allclose(end, [[rail.low[2], rail.high[2]]], atol=0.1)


def test_what_stands_proud_or_is_screwed_is_eased() -> None:
    """A plinth that is set back, its boards screwed to each other, has no arris that is flush."""
    unit = unit_from(SIZE + "base: {kind: plinth, height: 70}\n")
    assert lines(unit, "Plinth front") == []
    assert lines(unit, "Plinth end") == []
