"""What stands in a unit, for a picture: books, pots, boxes at the load that the spec states."""

from __future__ import annotations

from rodwright.photo.contents.arranging import things_in
from rodwright.photo.contents.shapes import joined
from rodwright.photo.scene import Body
from rodwright.unit import Unit

__all__ = ["contents_of"]


def contents_of(unit: Unit, seed: int) -> tuple[Body, ...]:
    """Things on the shelves of a unit, at most as heavy as what it is said to carry; equal seeds
    give equal things.  A unit that stands open has them where its parts are then."""
    return joined(body for thing in things_in(unit, seed) for body in thing.bodies)
