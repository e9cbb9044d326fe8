"""How stiffly a back keeps a carcass square: its shear, its fixings' slip and its play.

Millimetres, newtons.  A panel held all round is in even shear, F/B along every edge; an edge of
length L whose fixings, s apart, give way by a mm for every k N adds (F/B^2) (s/k) L to the sway,
and one that lies loose in a groove with play c adds c L/B before it bears (virtual work; of four
equal edges the formulas of ``bracing``).
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal

from rodwright.geometry import Box, Vector
from rodwright.strength.bracing import slip_modulus
from rodwright.trade.screws import WOOD_SCREW
from rodwright.unit import Groove, Joint, JointKind, Part, Role, Unit

Side = Literal["left", "right", "bottom", "top"]
_AT_EDGE = 45.0
"""What meets a panel so near its edge meets it there, mm."""


@dataclass(frozen=True, slots=True)
class Edge:
    """How one edge of a panel is held: ``length`` mm, fixings ``spacing`` mm apart that give way
    by a mm for every ``slip`` N (0: none, it lies in a groove), with ``play`` mm before it
    bears; ``at`` is the middle of its joint, unit frame."""

    side: Side
    length: float
    spacing: float
    slip: float
    play: float
    at: Vector


@dataclass(frozen=True, slots=True)
class Panel:
    """A back, or one of its panels, with the edges that are held; ``modulus`` is its shear modulus
    in its own plane (N/mm2; None: not known)."""

    part: Part
    width: float
    height: float
    thickness: float
    modulus: float | None
    edges: tuple[Edge, ...]

    @property
    def held(self) -> bool:
        """Whether it is held at all four edges, so that it can brace."""
        return len({edge.side for edge in self.edges}) == 4

    @property
    def give(self) -> float:
        """Sway for each N of push, mm/N: shear and slip."""
        if self.modulus is None:
            return float("inf")
        shear = self.height / (self.modulus * self.thickness * self.width)
        slip = sum(
            edge.spacing / edge.slip * edge.length / self.width**2
            for edge in self.edges
            if edge.slip
        )
        return shear + slip

    @property
    def play(self) -> float:
        """Sway before it bears, mm."""
        return sum(edge.play * edge.length / self.width for edge in self.edges)

    @property
    def loose(self) -> bool:
        """Whether it lies in a groove somewhere, so that glue would take play out."""
        return any(edge.play for edge in self.edges)


def panels(unit: Unit) -> tuple[Panel, ...]:
    """The panels of a unit's back."""
    return tuple(_panel(unit, part) for part in unit.parts if part.role is Role.BACK)


def _panel(unit: Unit, part: Part) -> Panel:
    box = part.bounds()
    width, _, height = box.size
    mechanics = part.blank.stock.mechanics
    shear = mechanics.panel_shear if mechanics is not None else None
    edges = tuple(
        edge
        for joint in unit.joints
        if joint.second == part.ref and (edge := _edge(unit, part, box, joint)) is not None
    )
    modulus = shear.value if shear is not None else None
    return Panel(part, width, height, part.blank.thickness, modulus, edges)


def _edge(unit: Unit, part: Part, box: Box, joint: Joint) -> Edge | None:
    """The edge at which a joint holds a panel; None where it doesn't, or meets its middle."""
    first = unit.part(joint.first)
    side = _side(box, first.bounds(), joint)
    if side is None:
        return None
    length = box.size[2] if side in {"left", "right"} else box.size[0]
    if joint.kind in {JointKind.GROOVE, JointKind.FLOATING} and not joint.fixings:
        glued = unit.hung and part.blank.stock.kind == "sheet" and joint.kind is JointKind.GROOVE
        return Edge(side, length, 0.0, 0.0, 0.0 if glued else _play(first, box, side), joint.at)
    density = (part.blank.stock.density * first.blank.stock.density) ** 0.5
    for fixing in joint.fixings:
        if fixing.diameter and joint.kind is not JointKind.BUTTONED:
            drilled = fixing.name == WOOD_SCREW
            slip = slip_modulus(fixing.diameter, density, drilled)
            return Edge(side, length, length / fixing.count, slip, 0.0, joint.at)
    return None


def _side(box: Box, other: Box, joint: Joint) -> Side | None:
    """At which edge of a panel a part meets it: along it, and near."""
    x, _, z = joint.at
    upright = other.size[2] > other.size[0]
    if upright and abs(x - box.low[0]) < _AT_EDGE:
        return "left"
    if upright and abs(x - box.high[0]) < _AT_EDGE:
        return "right"
    if not upright and abs(z - box.low[2]) < _AT_EDGE:
        return "bottom"
    return "top" if not upright and abs(z - box.high[2]) < _AT_EDGE else None


def _play(first: Part, box: Box, side: Side) -> float:
    """How far the edge of a panel lies from the bottom of its groove, mm."""
    axis = 0 if side in {"left", "right"} else 2
    return max((_gaps(first, box, axis, side)), default=0.0)


def _gaps(first: Part, box: Box, axis: int, side: Side) -> Iterator[float]:
    for working in first.workings:
        if not isinstance(working, Groove):
            continue
        cut = first.placement.box_to_unit(working.bounds(first.blank.size))
        if cut.intersects(box):
            outward = side in {"right", "top"}
            gap = cut.high[axis] - box.high[axis] if outward else box.low[axis] - cut.low[axis]
            yield max(0.0, gap)
