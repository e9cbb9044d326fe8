"""The corners of parts as they are cut; mm, unit frame."""

from __future__ import annotations

from rodwright.geometry import Vector
from rodwright.geometry.boxes import Box
from rodwright.geometry.halfspaces import box_planes, vertices
from rodwright.unit.parts import Part


def part_corners(part: Part) -> list[Vector]:
    """The corners of what flat cuts leave of a part's blank, unit frame."""
    size = part.blank.size
    cuts = [plane for each in part.workings for plane in each.planes(size)]
    box = Box.of_size(size)
    points = vertices([*box_planes(box), *cuts]) if cuts else list(box.corners())
    return [part.placement.to_unit(point) for point in points]
