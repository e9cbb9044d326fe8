"""A unit as the model a page draws."""

from __future__ import annotations

from rodwright.lengths import format_length
from rodwright.page import document as page
from rodwright.page.shapes import shape_of
from rodwright.page.surfaces import edge_surfaces, lie_of, surface_of
from rodwright.unit import Grain, Part, Swing, Unit
from rodwright.unit.roles import TRAITS, Assembly, Role

_LAYERS: dict[Assembly, page.Layer] = {
    Assembly.CARCASS: "carcass",
    Assembly.FACE_FRAME: "frame",
    Assembly.DOOR: "doors",
    Assembly.DRAWER: "drawers",
    Assembly.BASE: "base",
    Assembly.SURROUND: "surround",
}
_GRAINS: dict[Grain, page.GrainAlong] = {
    Grain.LENGTHWISE: "length",
    Grain.CROSSWISE: "width",
    Grain.NONE: "none",
}


def model_of(unit: Unit) -> page.Model:
    """What is needed to draw a unit.

    Raises:
        ValueError: a part's workings leave no single solid.
    """
    shapes: dict[str, page.Shape] = {}
    surfaces: dict[str, page.Surface] = {}
    parts = []
    for part in unit.parts:
        name, shape = shape_of(part.shape)
        shapes[name] = shape
        own, edges = surface_of(part), edge_surfaces(part)
        surfaces.update((own, *edges.values()))
        parts.append(
            page.Part(
                part.ref,
                part.name,
                _layer(part),
                name,
                own[0],
                _GRAINS[part.blank.grain],
                tuple(each for row in part.placement.matrix() for each in row),
                " × ".join(format_length(each, unit.display_unit) for each in part.blank.size),
                part.blank.stock.name,
                part.blank.stock.kind,
                lie_of(part),
                {side: each[0] for side, each in edges.items()},
            )
        )
    width, height, depth = (format_length(each, unit.display_unit) for each in unit.size)
    return page.Model(
        unit.title,
        unit.display_unit,
        f"{width} × {height} × {depth} {unit.display_unit}",
        unit.envelope.low,
        unit.envelope.high,
        shapes,
        surfaces,
        tuple(parts),
        (),
        tuple(_motion(unit, number) for number in range(len(unit.motions))),
    )


def _layer(part: Part) -> page.Layer:
    if part.role is Role.BACK:
        return "back"
    if part.role in (Role.SHELF, Role.LIPPING):
        return "shelves"
    return _LAYERS[TRAITS[part.role].of]


def _motion(unit: Unit, number: int) -> page.Motion:
    motion = unit.motions[number]
    label = unit.part(motion.refs[0]).group
    if isinstance(motion, Swing):
        return page.Motion(label, motion.refs, motion.hinge, motion.angle)
    return page.Motion(label, motion.refs, (), 0.0, motion.travel)
