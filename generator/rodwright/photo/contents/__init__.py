"""What stands in a unit, for a picture: books, pots, boxes at the load that the spec states."""

from __future__ import annotations

from collections.abc import Iterable

from rodwright.photo.contents.arranging import things_in
from rodwright.photo.contents.shapes import joined
from rodwright.photo.contents.things import Thing
from rodwright.photo.scene import Body

__all__ = ["Thing", "bodies_of", "things_in"]


def bodies_of(things: Iterable[Thing]) -> tuple[Body, ...]:
    """Things as bodies of a scene, those of one surface in one."""
    return joined(body for thing in things for body in thing.bodies)
