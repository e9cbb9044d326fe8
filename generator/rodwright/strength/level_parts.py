"""What bends as one: panels that lie flat on each other, and the strips along their edges."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from rodwright.geometry import TOUCH, Box
from rodwright.unit import FACE_FRAME, LEVELS, Joint, JointKind, Part, Role, Unit

CARRIERS = (*LEVELS, Role.WORKTOP)
"""The roles of level parts that carry something."""
_STRIPS = (Role.LIPPING, *FACE_FRAME, Role.LEG)
_GLUES = (
    JointKind.EDGE_GLUED,
    JointKind.BISCUIT,
    JointKind.TONGUE,
    JointKind.GROOVE,
    JointKind.DOWEL,
    JointKind.LOOSE_TENON,
)
"""By these a strip is glued along its whole length; biscuits and tongues are glued in."""
_SCREWS = (JointKind.SCREWED, JointKind.POCKET_SCREW, JointKind.PINNED, JointKind.BUTTONED)
"""By these a strip bends with the panel, but slides along it."""
_LYING_ON = 0.5
"""A worktop lies on a top if they share this much of its area."""


@dataclass(frozen=True, slots=True)
class Ply:
    """Panels glued face to face (from the bottom up), and the strips glued to their edges."""

    layers: tuple[Part, ...]
    strips: tuple[Part, ...] = ()

    @property
    def parts(self) -> tuple[Part, ...]:
        """All of them."""
        return (*self.layers, *self.strips)


@dataclass(frozen=True, slots=True)
class Level:
    """A shelf, top, bottom, rail or worktop.

    ``plies`` lie loose on each other, from the bottom up; within each all is glued.  ``beside``
    are strips that are screwed along an edge, so that they bend with it.
    """

    plies: tuple[Ply, ...]
    beside: tuple[Part, ...] = ()

    @property
    def panels(self) -> tuple[Part, ...]:
        """Its panels, from the bottom up."""
        return tuple(part for ply in self.plies for part in ply.layers)

    @property
    def parts(self) -> tuple[Part, ...]:
        """Its panels and its strips."""
        return (*(part for ply in self.plies for part in ply.parts), *self.beside)

    @property
    def main(self) -> Part:
        """The lowest panel: it is called by its ref."""
        return self.plies[0].layers[0]

    @property
    def ref(self) -> str:
        """The ref of its lowest panel."""
        return self.main.ref

    @property
    def refs(self) -> tuple[str, ...]:
        """The refs of its panels, from the bottom up."""
        return tuple(part.ref for part in self.panels)

    @property
    def box(self) -> Box:
        """The box round its panels, unit frame, mm."""
        return Box.of_boxes(part.bounds() for part in self.panels)


def lies_level(part: Part) -> bool:
    """Whether a part's thickness is upright."""
    return abs(part.placement.thickness[2]) > 1 - 1e-9


def joints_of(unit: Unit) -> dict[str, tuple[Joint, ...]]:
    """The joints of each part."""
    found: dict[str, list[Joint]] = {part.ref: [] for part in unit.parts}
    for joint in unit.joints:
        found[joint.first].append(joint)
        found[joint.second].append(joint)
    return {ref: tuple(joints) for ref, joints in found.items()}


def other_of(unit: Unit, joint: Joint, ref: str) -> Part:
    """The part that a joint joins to the one of this ref."""
    return unit.part(joint.second if joint.first == ref else joint.first)


def levels_of(unit: Unit, joints: Mapping[str, tuple[Joint, ...]]) -> Iterator[Level]:
    """Each level of a unit, in the order of its parts."""
    panels = [part for part in unit.parts if part.role in CARRIERS and lies_level(part)]
    stacks = [[part] for part in panels]
    for joint in unit.joints:
        if joint.kind is JointKind.FACE_GLUED:
            _merge(stacks, joint.first, joint.second)
    plies = [_ply(unit, stack, joints) for stack in stacks]
    taken: set[str] = set()
    for ply in plies:
        if ply.layers[0].ref in taken:
            continue
        over = [other for other in plies if other is not ply and _lies_on(other, ply)]
        together = (ply, *over[:1])
        if any(_lies_on(ply, other) for other in plies if other is not ply):
            continue  # told with the top that it lies on
        taken.update(each.layers[0].ref for each in together)
        yield Level(together, tuple(_beside(unit, together, joints)))


def _merge(stacks: list[list[Part]], first: str, second: str) -> None:
    """Put the stacks of two refs together, where both are in one."""
    one, other = (
        next((each for each in stacks if any(part.ref == ref for part in each)), None)
        for ref in (first, second)
    )
    if one is not None and other is not None and one is not other:
        one.extend(other)
        stacks.remove(other)


def _ply(unit: Unit, stack: list[Part], joints: Mapping[str, tuple[Joint, ...]]) -> Ply:
    layers = sorted(stack, key=lambda part: part.bounds().low[2])
    return Ply(tuple(layers), tuple(_along(unit, layers, joints, _GLUES)))


def _beside(
    unit: Unit, plies: tuple[Ply, ...], joints: Mapping[str, tuple[Joint, ...]]
) -> Iterator[Part]:
    glued = {part.ref for ply in plies for part in ply.parts}
    for ply in plies:
        for strip in _along(unit, ply.layers, joints, _SCREWS):
            if strip.ref not in glued:
                yield strip


def _along(
    unit: Unit,
    layers: list[Part] | tuple[Part, ...],
    joints: Mapping[str, tuple[Joint, ...]],
    kinds: tuple[JointKind, ...],
) -> Iterator[Part]:
    """The strips that run along some panels, left to right, and are joined to them so."""
    seen = set()
    for layer in layers:
        for joint in joints[layer.ref]:
            strip = other_of(unit, joint, layer.ref)
            if strip.role not in _STRIPS or joint.kind not in kinds or strip.ref in seen:
                continue
            across, deep, up = strip.bounds().size
            if across > max(deep, up) and abs(strip.placement.length[0]) > 1 - 1e-9:
                seen.add(strip.ref)
                yield strip


def _lies_on(upper: Ply, lower: Ply) -> bool:
    """Whether a worktop lies all over a top, so that both bend together."""
    one, other = upper.layers[0], lower.layers[-1]
    if (one.role, other.role) != (Role.WORKTOP, Role.TOP):
        return False
    above, below = one.bounds(), other.bounds()
    if abs(above.low[2] - below.high[2]) > TOUCH:
        return False
    wide, deep, _ = above.overlap(below)
    across, front_to_rear, _ = above.size
    return min(wide, deep) > 0 and wide * deep > _LYING_ON * across * front_to_rear
