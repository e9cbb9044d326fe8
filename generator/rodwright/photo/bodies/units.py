"""A unit's parts as bodies, each with its eased edges and its own figure."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from functools import lru_cache

import numpy as np

from rodwright.geometry.vectors import Vector
from rodwright.photo.bodies.atlas import textured
from rodwright.photo.bodies.easing import eased, whole
from rodwright.photo.bodies.outlines import Array
from rodwright.photo.bodies.ware import SURFACES, gathered, ware_body
from rodwright.photo.finished import finished_colour, finished_surface
from rodwright.photo.scene import Body, Colour, Surface
from rodwright.photo.woods import Looks, looks_of
from rodwright.photo.woods.colour import linear_of
from rodwright.unit import Part, Unit, Ware
from rodwright.unit.finish import Finish

_EASED = {"board": 1.2, "sheet": 0.7}
"""How far the arrises of boards and of sheets are rounded, mm: by hand, with a block (common
practice, no source)."""


def unit_bodies(
    unit: Unit,
    moves: Mapping[str, Vector],
    *,
    texel: float,
    seed: int = 0,
    stands: Unit | None = None,
) -> tuple[Body, ...]:
    """Every part of a unit, each moved by ``moves`` (mm, by ref), and what is bought in with it.

    ``texel`` is how fine textures are, mm a pixel; equal seeds give equal figure.  ``stands`` is
    the same unit with its doors and drawers as they stand, if they are open.

    Raises:
        ValueError: a part's workings leave no single solid.
    """

    def placed(body: Body, ref: str) -> Body:
        part = (stands or unit).part(ref)
        return _placed(body, part, moves.get(ref, (0.0, 0.0, 0.0)))

    parts = [placed(_part_body(part, texel, seed), part.ref) for part in unit.parts]
    ware = [
        placed(ware_body(those, _ware_surface(unit.part(ref), of)), ref)
        for (ref, of), those in gathered(unit.fittings).items()
    ]
    return (*parts, *ware)


def _ware_surface(part: Part, ware: Ware) -> Surface:
    """What a bought-in piece is of; a wooden one has the colour and the finish of its part."""
    if ware != "wood":
        return SURFACES[ware]
    bare = np.array(linear_of(part.blank.stock.colour))
    red, green, blue = finished_colour(bare, part.finish).tolist()
    return finished_surface((red, green, blue), part.blank.stock.material, part.finish)


def _placed(body: Body, part: Part, move: Vector) -> Body:
    matrix = np.array(part.placement.matrix())
    return replace(
        body,
        points=body.points @ matrix[:3, :3].T + matrix[:3, 3] + np.array(move),
        normals=body.normals @ matrix[:3, :3].T,
    )


@lru_cache(maxsize=1024)
def _part_body(part: Part, texel: float, seed: int) -> Body:
    """A part in its own frame."""
    patches = eased(part.shape, _EASED[part.blank.stock.kind])
    looks, material = looks_of(part, seed), part.blank.stock.material
    even = _even(looks, part.finish)
    if even is not None:
        surface = replace(finished_surface(even, material, part.finish), clear=looks.clear)
        return Body(part.ref, *whole(patches), surface)

    def reflectance(points: Array, normals: Array) -> Array:
        return finished_colour(
            looks.reflectance(points, normals, texel).astype(np.float64), part.finish
        )

    points, normals, triangles, places, texture = textured(
        [(patch, texel) for patch in patches], reflectance
    )
    surface = finished_surface(texture, material, part.finish)
    return Body(part.ref, points, normals, triangles, surface, places)


def _even(looks: Looks, finish: Finish | None) -> Colour | None:
    """The one colour that a part has; None where it varies."""
    covered = finish is not None and finish.kind == "paint"
    if looks.even is None and not covered:
        return None
    red, green, blue = finished_colour(np.array(looks.even or (0.5, 0.5, 0.5)), finish).tolist()
    return red, green, blue
