"""A unit as the model a page draws."""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.handover.told_tables import size_said
from rodwright.page import document as page
from rodwright.page.hardware import hardware_of, hardware_shape
from rodwright.page.room import room_lines
from rodwright.page.shapes import shape_of
from rodwright.page.surfaces import edge_surfaces, lie_of, surface_of
from rodwright.unit import Grain, JointKind, Motion, Swing, Unit
from rodwright.unit.facts import size_as_fitted
from rodwright.unit.roles import TRAITS, Assembly, Role

_LAYERS: dict[Assembly, page.Layer] = {
    Assembly.CARCASS: "carcass",
    Assembly.FACE_FRAME: "frame",
    Assembly.DOOR: "doors",
    Assembly.DRAWER: "drawers",
    Assembly.BASE: "base",
    Assembly.SURROUND: "surround",
}
_OWN_LAYERS: dict[Role, page.Layer] = {Role.BACK: "back", Role.SHELF: "shelves"}
_GRAINS: dict[Grain, page.GrainAlong] = {
    Grain.LENGTHWISE: "length",
    Grain.CROSSWISE: "width",
    Grain.NONE: "none",
}
_DIGITS = 6
"""Decimals of the numbers of a matrix: a millionth of a millimetre."""


def model_of(unit: Unit) -> page.Model:
    """What is needed to draw a unit.

    Raises:
        ValueError: a part's workings leave no single solid.
    """
    shapes: dict[str, page.Shape] = {}
    surfaces: dict[str, page.Surface] = {}
    layers = layers_of(unit)
    parts = []
    for part in unit.parts:
        shape, shapes[shape] = shape_of(part.shape)
        own, edges = surface_of(part), edge_surfaces(part)
        surfaces.update((own, *edges.values()))
        parts.append(
            page.Part(
                part.ref,
                part.name,
                layers[part.ref],
                shape,
                own[0],
                _GRAINS[part.blank.grain],
                tuple(
                    round(each, _DIGITS) + 0.0 for row in part.placement.matrix() for each in row
                ),
                size_said(part.blank.size, unit.display_unit),
                part.blank.stock.name,
                part.blank.stock.kind,
                lie_of(part),
                {side: each[0] for side, each in edges.items()},
            )
        )
    fittings = []
    for each in hardware_of(unit):
        shape, shapes[shape] = hardware_shape(each.forms)
        surface, surfaces[surface] = each.surface
        fittings.append(page.Fitting(each.ref, shape, surface, each.inner))
    return page.Model(
        unit.title,
        unit.display_unit,
        f"{size_said(size_as_fitted(unit), unit.display_unit)} {unit.display_unit}",
        unit.envelope.low,
        unit.envelope.high,
        shapes,
        surfaces,
        tuple(parts),
        tuple(fittings),
        tuple(_motions(unit)),
        room_lines(unit),
    )


def layers_of(unit: Unit) -> dict[str, page.Layer]:
    """The layer that each part (ref) is shown or hidden with; a lipping goes with what it lips."""
    lipped = {
        joint.second: joint.first for joint in unit.joints if joint.kind is JointKind.EDGE_GLUED
    }
    found: dict[str, page.Layer] = {}
    for part in unit.parts:
        on = unit.part(lipped.get(part.ref, part.ref)) if part.role is Role.LIPPING else part
        found[part.ref] = _OWN_LAYERS.get(on.role) or _LAYERS[TRAITS[on.role].of]
    return found


def _motions(unit: Unit) -> Iterator[page.Motion]:
    """Doors and drawers, each with a label that no other has."""
    taken: dict[str, int] = {}
    for motion in unit.motions:
        label = _label(unit, motion)
        taken[label] = taken.get(label, 0) + 1
        if taken[label] > 1:
            label = f"{label} ({taken[label]})"
        if isinstance(motion, Swing):
            yield page.Motion(label, motion.refs, motion.hinge, motion.angle)
        else:
            yield page.Motion(label, motion.refs, (), 0.0, motion.travel)


def _label(unit: Unit, motion: Motion) -> str:
    """What a door or drawer is called; a door with the side that it hangs at."""
    group = unit.part(motion.refs[0]).group
    if not isinstance(motion, Swing):
        return group
    boxes = [unit.part(ref).bounds() for ref in motion.refs]
    middle = (min(box.low[0] for box in boxes) + max(box.high[0] for box in boxes)) / 2
    return f"{group}, hinged {'left' if motion.hinge[0] < middle else 'right'}"
