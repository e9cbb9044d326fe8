"""What is so of a unit, worked out from its parts: sizes, reaches, and what it stands on.

Lengths in mm, unit frame.
"""

from __future__ import annotations

from rodwright.geometry import TOUCH, Box, Vector
from rodwright.unit.joints import JointKind
from rodwright.unit.opening import Opening
from rodwright.unit.parts import Part
from rodwright.unit.roles import FACE_FRAME, STANDS_OUT, Role
from rodwright.unit.whole import Unit

STANDS = 1.0
"""Parts that come this near (mm) to the floor stand on it."""


def carcass_size(unit: Unit) -> tuple[float, float]:
    """Width of the carcass, and its height with its base and what lies on it, without the face
    frame, mm."""
    boxes = [(part, part.bounds()) for part in unit.parts if part.role not in FACE_FRAME]
    return (
        max(box.high[0] for part, box in boxes if part.role not in STANDS_OUT),
        max(box.high[2] for part, box in boxes if part.role is not Role.SCRIBE),
    )


def through_dividers(unit: Unit) -> tuple[str, ...]:
    """Refs of the dividers that go from the carcass's bottom to its top."""
    boxes = {part.ref: part.bounds() for part in unit.parts}

    def of(role: Role) -> list[Box]:
        return [boxes[part.ref] for part in unit.parts if part.role is role]

    sides = of(Role.SIDE)
    low = max(
        (box.high[2] for box in of(Role.BOTTOM)),
        default=min((box.low[2] for box in sides), default=0.0),
    )
    high = min(
        (box.low[2] for box in of(Role.TOP)),
        default=max((box.high[2] for box in sides), default=0.0),
    )
    return tuple(
        part.ref
        for part in unit.parts
        if part.role is Role.DIVIDER
        and boxes[part.ref].low[2] <= low + TOUCH
        and boxes[part.ref].high[2] >= high - TOUCH
    )


def frame_reach(unit: Unit) -> dict[str, float]:
    """How far (mm) the face frame reaches past the carcass at the left, the right and the top;
    empty where there is none."""
    boxes = [part.bounds() for part in unit.parts if part.role in FACE_FRAME]
    if not boxes:
        return {}
    width, height = carcass_size(unit)
    return {
        "left": -min(box.low[0] for box in boxes),
        "right": max(box.high[0] for box in boxes) - width,
        # Under a worktop or a cornice it ends below the top of the whole.
        "top": max(0.0, max(box.high[2] for box in boxes) - height),
    }


def fitted_size(unit: Unit) -> Vector:
    """Width, height and depth of what is set into the opening, face frame included; what is
    fitted to the walls or stands out from the unit is left off, mm."""
    boxes = [part.bounds() for part in unit.parts if part.role not in STANDS_OUT]
    if len(boxes) == len(unit.parts):
        return unit.size
    around = Box.of_boxes(boxes)
    width, depth, _ = around.size
    return width, max(carcass_size(unit)[1], around.high[2]), depth


def is_scribed(unit: Unit) -> bool:
    """Whether the face frame is to be scribed to the walls, so that it may be too large."""
    shape = unit.opening.shape if unit.opening is not None else None
    framed = any(part.role in FACE_FRAME for part in unit.parts)
    return shape is not None and shape.overlap > 0 and framed


def size_going_in(unit: Unit) -> Vector:
    """Width, height and depth of what has to go into the opening as it is: where the face frame
    is scribed to the walls, the carcass's width and height; mm."""
    width, height, depth = fitted_size(unit)
    return (*carcass_size(unit), depth) if is_scribed(unit) else (width, height, depth)


def box_as_fitted(unit: Unit) -> Box:
    """The envelope as the unit stands in its opening: what of a scribed face frame, or of strips
    beside it, is too large for the opening as read at its tightest is cut off; mm.

    Of what is too wide both sides lose by as much as each stands past the rest; a carcass that is
    too large stays so.
    """
    strips, framed = scribes(unit), is_scribed(unit)
    if unit.opening is None or not (framed or strips):
        return unit.envelope
    cut = (Role.SCRIBE, *(FACE_FRAME if framed else ()))
    rest = Box.of_boxes(part.bounds() for part in unit.parts if part.role not in cut)
    width, height = unit.opening.as_read[:2]
    (left, front, foot), (right, rear, head) = unit.envelope.low, unit.envelope.high
    beside = (max(0.0, rest.low[0] - left), max(0.0, right - rest.high[0]))
    over = min(max(0.0, right - left - width), sum(beside))
    if over > 0:
        left, right = left + over * beside[0] / sum(beside), right - over * beside[1] / sum(beside)
    head = min(head, max(foot + height, rest.high[2]))
    return Box((left, front, foot), (right, rear, head))


def size_as_fitted(unit: Unit) -> Vector:
    """Width, height and depth of the unit as it stands, a scribed face frame and strips cut to
    the walls: what a client gets; mm."""
    width, depth, height = box_as_fitted(unit).size
    return width, height, depth


def scribes(unit: Unit) -> dict[str, Part]:
    """The strips that close the gaps at the ``left``, the ``right`` and the ``top``, by side."""
    middle = carcass_size(unit)[0] / 2
    found = {}
    for part in unit.parts:
        if part.role is Role.SCRIBE:
            across, _, up = part.bounds().size
            beside = "left" if part.bounds().centre[0] < middle else "right"
            found["top" if across > up else beside] = part
    return found


def left_over(unit: Unit, opening: Opening) -> tuple[float, ...]:
    """What an opening leaves of its width, its height and, where it is known, its depth beside
    what has to go into it, mm; less than 0 where that is too large."""
    sizes = (opening.width, opening.height, opening.depth)
    pairs = zip(sizes, size_going_in(unit), strict=True)
    return tuple(measured - size for measured, size in pairs if measured is not None)


def plinth_boards(unit: Unit) -> tuple[Part, ...]:
    """The boards of a plinth that the carcass stands on: none of a toe board or of a board
    clipped to feet."""
    boards = tuple(part for part in unit.parts if part.role is Role.PLINTH)
    return boards if len(boards) > 1 else ()


def is_on_feet(unit: Unit) -> bool:
    """Whether the unit stands on adjustable feet: these are bought in and no parts, so that
    nothing else reaches the floor but what is clipped to them."""
    clipped = {joint.second for joint in unit.joints if joint.kind is JointKind.CLIPPED}
    lowest = min(part.bounds().low[2] for part in unit.parts if part.ref not in clipped)
    return not unit.hung and lowest > STANDS
