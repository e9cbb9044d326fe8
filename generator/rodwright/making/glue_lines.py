"""Which joints are glued, how long their glue lines are, and how they are clamped; mm.

What isn't glued: what rests, slides, swings, is clipped, screwed, pinned or knocked down, what has
to move with the seasons, and backs, drawer bottoms and panels, which strength counts as loose in
their grooves too (a sheet back of a unit that hangs is glued in).
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from rodwright.geometry import TOUCH, Box
from rodwright.making.steps import Step
from rodwright.trade.gluing import (
    AREA_SPACING,
    PAD,
    ROW_SPACING,
    SPACING,
    GlueTime,
    clamps_along,
)
from rodwright.unit import Joint, JointKind, Role, Unit

_GLUED = (
    JointKind.HOUSING,
    JointKind.REBATE,
    JointKind.GROOVE,
    JointKind.MITRE,
    JointKind.FACE_GLUED,
    JointKind.EDGE_GLUED,
    JointKind.TONGUE,
    JointKind.DOWEL,
    JointKind.BISCUIT,
    JointKind.LOOSE_TENON,
)
_PANELS = (Role.BACK, Role.DRAWER_BOTTOM, Role.DOOR_PANEL)
_WHOLE = 1.0
"""Two clamps whose lines lie as near (mm) across the clamp are one that presses both."""


@dataclass(frozen=True, slots=True)
class GlueLine:
    """Where a glued joint meets: the box round it, its ``length`` and the ``axis`` along which it
    is pressed (0 to 2 of the unit frame; None where it lies askew: a mitre)."""

    joint: Joint
    box: Box
    length: float
    axis: int | None


@dataclass(frozen=True, slots=True)
class Clamps:
    """``count`` clamps that press along ``axis`` (None: round the corners of a mitred frame) and
    open at least ``opening`` mm, pads included.  None are counted on site, where few find a
    hold."""

    count: int
    axis: int | None
    opening: float


@dataclass(frozen=True, slots=True)
class GlueUp:
    """What is glued in one go: its lines, the clamps, and how long it takes."""

    lines: tuple[GlueLine, ...]
    clamps: tuple[Clamps, ...]

    @property
    def metres(self) -> float:
        """Length of all glue lines, m."""
        return sum(line.length for line in self.lines) / 1000

    @property
    def time(self) -> GlueTime:
        """How long one person takes."""
        return GlueTime.of(len(self.lines), self.metres, sum(each.count for each in self.clamps))


def is_glued(unit: Unit, joint: Joint) -> bool:
    """Whether a joint is glued."""
    if joint.kind not in _GLUED:
        return False
    panel = unit.part(joint.second)
    if panel.role not in _PANELS:
        return True
    grooved = joint.kind in (JointKind.GROOVE, JointKind.REBATE)
    return grooved and unit.hung and panel.role is Role.BACK and panel.blank.stock.kind == "sheet"


def glue_up(unit: Unit, steps: Sequence[Step]) -> GlueUp | None:
    """What some steps glue together; None where they glue nothing."""
    lines = tuple(
        line
        for step in steps
        for joint in step.joints
        if is_glued(unit, joint) and (line := _line(unit, joint, step))
    )
    if not lines:
        return None
    refs = {ref for step in steps for ref in (*step.refs, *step.standing)}
    around = Box.of_boxes(unit.part(ref).bounds() for ref in refs)
    on_site = steps[0].where == "site"
    return GlueUp(lines, () if on_site else tuple(_clamps(lines, around)))


def _line(unit: Unit, joint: Joint, step: Step) -> GlueLine | None:
    boxes = [unit.part(ref).bounds() for ref in (joint.first, joint.second)]
    shared = boxes[0].grown(TOUCH).intersection(boxes[1].grown(TOUCH))
    size = shared.size
    if min(size) < 0:
        return None
    length = max(size)
    if joint.kind is JointKind.MITRE:
        return GlueLine(joint, shared, length, None)
    across = [axis for axis in range(3) if axis != size.index(length)]
    thinnest = min(across, key=lambda axis: size[axis])
    came = next((axis for axis in across if abs(step.towards[axis]) > 1 - 1e-6), thinnest)
    fits_in = joint.kind in (JointKind.REBATE, JointKind.HOUSING, JointKind.GROOVE)
    return GlueLine(joint, shared, length, came if fits_in else thinnest)


def _clamps(lines: Sequence[GlueLine], around: Box) -> Iterator[Clamps]:
    """A clamp presses all lines that lie behind each other along it."""
    for axis in range(3):
        rows: dict[tuple[int, ...], int] = {}
        for line in lines:
            if line.axis == axis:
                key = tuple(round(line.box.centre[i] / _WHOLE) for i in range(3) if i != axis)
                rows[key] = max(rows.get(key, 0), _needed(line))
        if rows:
            yield Clamps(sum(rows.values()), axis, around.size[axis] + 2 * PAD)
    corners = sum(line.axis is None for line in lines)
    if corners:
        yield Clamps(corners, None, max(around.size) + 2 * PAD)


def _needed(line: GlueLine) -> int:
    if line.joint.kind is JointKind.FACE_GLUED:
        wide, long = sorted(line.box.size)[1:]
        return clamps_along(long, AREA_SPACING) * clamps_along(wide, AREA_SPACING)
    spacing = SPACING if line.joint.kind is JointKind.EDGE_GLUED else ROW_SPACING
    return clamps_along(line.length, spacing)
