"""A unit's parts as bodies, each with its eased edges and its own figure."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from functools import lru_cache

import numpy as np

from rodwright.geometry.vectors import Vector
from rodwright.photo.bodies.atlas import textured
from rodwright.photo.bodies.easing import eased, whole
from rodwright.photo.bodies.flush import flush_in
from rodwright.photo.bodies.outlines import Array
from rodwright.photo.bodies.seen import Standing, seen
from rodwright.photo.bodies.stretches import Stretch
from rodwright.photo.bodies.ware import ware_body
from rodwright.photo.finished import finished_colour, finished_surface
from rodwright.photo.scene import Body, Colour
from rodwright.photo.wares import ware_surface
from rodwright.photo.woods import Looks, looks_of
from rodwright.unit import Part, Unit
from rodwright.unit.finish import Finish
from rodwright.unit.fittings import shapes_by

_EASED = {"board": 1.2, "sheet": 0.7}
"""How far the arrises of boards and of sheets are rounded, mm: by hand, with a block (common
practice, no source)."""
_UNSEEN, _COARSE = 6.0, 8.0
"""Texels of what is seen at most in reflections: so many times as large, and at least so many
mm."""


def unit_bodies(
    unit: Unit,
    moves: Mapping[str, Vector],
    *,
    texel: float,
    seed: int = 0,
    stands: Unit | None = None,
    eye: Vector | None = None,
    flush: Mapping[str, tuple[Stretch, ...]] | None = None,
) -> tuple[Body, ...]:
    """Every part of a unit, each moved by ``moves`` (mm, by ref), and what is bought in with it.

    ``texel`` is how fine textures are, mm a pixel; equal seeds give equal figure.  ``stands`` is
    the same unit with its doors and drawers as they stand, if they are open.  What an ``eye`` there
    doesn't see has coarse textures; where many pictures are taken from many places, leave it out:
    textures are kept, and made anew only for what wasn't seen before.  ``flush`` is of
    :func:`flush_in`, where some of the unit's parts aren't there yet.

    Raises:
        ValueError: a part's workings leave no single solid.
    """
    matrices = {
        part.ref: _matrix(part, moves.get(part.ref, (0.0, 0.0, 0.0)))
        for part in (stands or unit).parts
    }
    flush = flush_in(unit) if flush is None else flush
    sharp = [flush.get(part.ref, ()) for part in unit.parts]
    patches = [
        eased(part.shape, _EASED[part.blank.stock.kind], lines)
        for part, lines in zip(unit.parts, sharp, strict=True)
    ]
    shown: list[tuple[bool, ...]] = [(True,) * len(each) for each in patches]
    if eye is not None:
        standing = [
            Standing(each, part.blank.size, matrices[part.ref], looks_of(part, seed).clear)
            for part, each in zip(unit.parts, patches, strict=True)
        ]
        shown = seen(eye, standing)
    parts = [
        _placed(_part_body(part, lines, fine, texel, seed), matrices[part.ref])
        for part, lines, fine in zip(unit.parts, sharp, shown, strict=True)
    ]
    ware = [
        _placed(
            ware_body(f"{ref} {of}", shapes, ware_surface(of, unit.part(ref).finish)),
            matrices[ref],
        )
        for (ref, of), shapes in shapes_by(
            unit.fittings, key=lambda each: (each.ref, each.ware)
        ).items()
    ]
    return (*parts, *ware)


def _matrix(part: Part, move: Vector) -> Array:
    matrix = np.array(part.placement.matrix())
    matrix[:3, 3] += move
    return matrix


def _placed(body: Body, matrix: Array) -> Body:
    return replace(
        body,
        points=body.points @ matrix[:3, :3].T + matrix[:3, 3],
        normals=body.normals @ matrix[:3, :3].T,
    )


@lru_cache(maxsize=1024)
def _part_body(
    part: Part, flush: tuple[Stretch, ...], shown: tuple[bool, ...], texel: float, seed: int
) -> Body:
    """A part in its own frame, the patches that are seen in texels so fine."""
    patches = eased(part.shape, _EASED[part.blank.stock.kind], flush)
    looks, material = looks_of(part, seed), part.blank.stock.material
    even = _even(looks, part.finish)
    if even is not None:
        surface = replace(finished_surface(even, material, part.finish), clear=looks.clear)
        return Body(part.ref, *whole(patches), surface)

    def reflectance(points: Array, normals: Array, fine: float) -> Array:
        bare = looks.reflectance(points, normals, fine)
        return finished_colour(bare.astype(np.float64), part.finish)

    coarse = max(_UNSEEN * texel, _COARSE)
    texels = [texel if fine else coarse for fine in shown]
    points, normals, triangles, places, texture = textured(
        list(zip(patches, texels, strict=True)), reflectance
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
