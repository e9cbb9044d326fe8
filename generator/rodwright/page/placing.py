"""Files by which a phone or a viewer places the unit in a room: GLB and USDZ."""

from __future__ import annotations

from dataclasses import replace
from functools import lru_cache

from rodwright.handover.dressed import Dress, Look, Pictures, Ware
from rodwright.handover.gltf import unit_glb
from rodwright.page import document as page
from rodwright.page.hardware import hardware_mesh, hardware_of
from rodwright.page.surfaces import Look as Wood
from rodwright.page.surfaces import edge_looks, edge_surfaces, lie_of, look_of, surface_of
from rodwright.page.tiles import jpeg, tiles_of
from rodwright.page.usdz import unit_usdz
from rodwright.photo.room import floor_under
from rodwright.unit import Grain, Part, Unit

GLB, USDZ = "page.glb", "page.usdz"
"""What the files are called: viewers and Android read the first, Apple's devices the second."""


def unit_files(unit: Unit) -> dict[str, bytes]:
    """The unit with its woods and its hardware, doors and drawers moving, by the files' names.

    Stocks go by what they are of and not by their workshop's names.

    Raises:
        ProblemsError: usd-core isn't installed.
        ValueError: a part has no single closed solid.
    """
    dress, ware, plain = dresses(unit), wares(unit), _for_client(unit)
    return {
        GLB: unit_glb(plain, dress, ware),
        USDZ: unit_usdz(plain, dress, ware, floor=floor_under(unit)),
    }


def dresses(unit: Unit) -> dict[str, Dress]:
    """How each part of a unit looks, by its ref."""
    return {part.ref: _dress(part) for part in unit.parts}


def wares(unit: Unit) -> tuple[Ware, ...]:
    """What is bought in, as a page draws it."""
    found = []
    for each in hardware_of(unit):
        _, surface = each.surface
        name = "metal" if surface.metal else "hardware"
        look = Look(name, surface.colour, surface.roughness, surface.metal, surface.clear)
        found.append(Ware(each.ref, f"{each.ref} {name}", hardware_mesh(each.forms), look))
    return tuple(found)


def _dress(part: Part) -> Dress:
    (_, surface), material = surface_of(part), part.blank.stock.material
    name = f"{material}, {part.finish.described}" if part.finish else material
    glued = zip(part.edged, edge_surfaces(part).items(), edge_looks(part).values(), strict=True)
    edges = {
        side: _look(edging.called, shown, look if isinstance(look, Wood) else None)
        for edging, (side, (_, shown)), look in glued
    }
    own = _look(name, surface, look_of(part))
    return Dress(own, edges, part.blank.grain is Grain.CROSSWISE, lie_of(part))


def _look(name: str, surface: page.Surface, wood: Wood | None) -> Look:
    pictures = _pictures(wood) if wood is not None else None
    return Look(name, surface.colour, surface.roughness, surface.metal, surface.clear, pictures)


@lru_cache(maxsize=32)
def _pictures(wood: Wood) -> Pictures | None:
    tiles = tiles_of(wood)
    if tiles is None:
        return None
    return Pictures(jpeg(tiles.face), jpeg(tiles.edge), jpeg(tiles.end), tiles.size)


def _for_client(unit: Unit) -> Unit:
    parts = []
    for part in unit.parts:
        stock = replace(part.blank.stock, name=part.blank.stock.material)
        parts.append(replace(part, blank=replace(part.blank, stock=stock)))
    return replace(unit, parts=tuple(parts))
