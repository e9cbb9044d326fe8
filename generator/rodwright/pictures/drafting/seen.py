"""Parts of a unit as rectangles of a view: uprights, levels, doors, drawer fronts; mm."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Literal

from rodwright.geometry import TOUCH, Box, Vector
from rodwright.pictures.drafting.bands import Interval, Rectangle, is_square, rectangle
from rodwright.unit import CASE, FRONTS, LEVELS, UPRIGHTS, Part, Role, Unit
from rodwright.unit.directions import FORWARD, X, Y, Z
from rodwright.unit.facts import box_as_fitted

ViewName = Literal["front", "side", "plan"]
AXES: dict[ViewName, tuple[Vector, Vector]] = {
    "front": (X, Z),
    "side": (FORWARD, Z),
    "plan": (X, Y),
}
"""Across and up of each view, as its camera has them."""


def whole(unit: Unit, view: ViewName) -> Rectangle:
    """What the whole unit covers of a view."""
    return rectangle(unit.envelope, *AXES[view])


def fitted(unit: Unit, view: ViewName) -> Rectangle:
    """What it covers of a view once what is scribed is cut to the walls."""
    return rectangle(box_as_fitted(unit), *AXES[view])


def parts_of(unit: Unit, roles: Iterable[Role]) -> list[Part]:
    """The unit's parts of some roles."""
    wanted = set(roles)
    return [part for part in unit.parts if part.role in wanted]


def rectangles(unit: Unit, roles: Iterable[Role], view: ViewName) -> list[Rectangle]:
    """What parts of some roles cover of a view, of those that lie along the axes."""
    return [
        rectangle(part.bounds(), *AXES[view]) for part in parts_of(unit, roles) if is_square(part)
    ]


def case(unit: Unit) -> Box | None:
    """The box round sides, top and bottom; None where there are none."""
    boxes = [part.bounds() for part in parts_of(unit, CASE)]
    return Box.of_boxes(boxes) if boxes else None


def leaves(unit: Unit) -> list[Box]:
    """Doors and drawer fronts, each whole: what moves together at the front."""
    found, moved = [], set()
    for motion in unit.motions:
        boxes = [
            part.bounds()
            for part in (unit.part(ref) for ref in motion.refs)
            if part.role in FRONTS and part.ref not in moved
        ]
        if boxes:
            found.append(Box.of_boxes(boxes))
        moved |= set(motion.refs)
    fixed = [part.bounds() for part in parts_of(unit, FRONTS) if part.ref not in moved]
    return [*found, *fixed]


def levels(unit: Unit) -> list[Rectangle]:
    """Top, bottom, shelves and rails from the front, the layers of one shelf as one."""
    found: list[tuple[Role, Rectangle]] = []
    flat = [part for part in parts_of(unit, LEVELS) if is_square(part)]
    for part in sorted(flat, key=lambda each: each.bounds().low[2]):
        across, up = rectangle(part.bounds(), X, Z)
        for number, (role, (its, (foot, head))) in enumerate(found):
            if role is part.role and its == across and abs(head - up[0]) <= TOUCH:
                found[number] = (role, (across, (foot, up[1])))
                break
        else:
            found.append((part.role, (across, up)))
    return [each for _, each in found]


def between_columns(unit: Unit) -> list[Interval]:
    """Where uprights stand, across the front: columns lie between."""
    return [across for across, _ in rectangles(unit, UPRIGHTS, "front")]


def runs_up(part: Part) -> bool:
    """Whether a part runs up rather than across."""
    return abs(part.placement.length[2]) > abs(part.placement.length[0])


def is_inside(each: Interval, around: Interval) -> bool:
    """Whether one stretch lies within another."""
    return around[0] - TOUCH <= each[0] and each[1] <= around[1] + TOUCH
