"""A whole unit as a CadQuery assembly, and as a trimesh scene, for those who program on."""

from __future__ import annotations

from collections.abc import Iterable

import cadquery
import numpy as np
import trimesh
from trimesh.visual.color import ColorVisuals

from rodwright.solids.meshes import mesh_of
from rodwright.solids.parts import location_of, solid_of
from rodwright.unit import Part, ShapeKey, Unit


def assembly(unit: Unit) -> cadquery.Assembly:
    """The unit as a CadQuery assembly; unit frame (x to the right, y to the back, z up), mm.

    It holds an assembly for each group, and these the parts, each named by its ref
    (``assembly(unit).objects["Carcass/SD1"]``), with its colour, and in its metadata ref, name,
    role, stock, material and group.  Equal pieces share one solid, which must not be changed.

    Raises:
        ValueError: a part's workings leave no single solid.
    """
    names = _names(unit)
    whole = cadquery.Assembly(name=names[""], metadata={"title": unit.title})
    held = {
        group: cadquery.Assembly(name=names[group], metadata={"group": group})
        for group in dict.fromkeys(part.group for part in unit.parts)
    }
    for part in unit.parts:
        held[part.group].add(
            solid_of(part.shape),
            name=part.ref,
            loc=location_of(part),
            color=cadquery.Color(*_rgb(seen_colour(part)), 1.0),
            metadata=_told(part),
        )
    for group in held.values():
        whole.add(group)
    return whole


def scene(unit: Unit) -> trimesh.Scene:
    """The unit as a trimesh scene; unit frame (x to the right, y to the back, z up), mm.

    Its graph goes from the unit by way of its groups to the parts, each a node named by its ref;
    the edge that leads there has ref, name, role, stock, material and group as its ``metadata``.
    Equal pieces of one colour share one mesh.

    Raises:
        ValueError: a part has no single closed solid.
    """
    names = _names(unit)
    made = trimesh.Scene(base_frame=names[""], metadata={"title": unit.title})
    made.units = "mm"
    meshes: dict[tuple[ShapeKey, str], str] = {}
    for part in unit.parts:
        key = (part.shape, seen_colour(part))
        if key not in meshes:
            meshes[key] = f"mesh of {part.ref}"
            mesh = mesh_of(part.shape).copy()
            mesh.units = "mm"
            mesh.visual = _coloured(mesh, key[1])
            made.geometry[meshes[key]] = mesh
        made.graph.update(names[part.group], names[""])
        made.graph.update(
            part.ref,
            names[part.group],
            matrix=np.array(part.placement.matrix()),
            geometry=meshes[key],
            metadata=_told(part),
        )
    return made


def seen_colour(part: Part) -> str:
    """The colour that is seen of a part (``#rrggbb``): that of its paint, or of its stock."""
    painted = part.finish is not None and part.finish.kind == "paint" and part.finish.colour
    return painted or part.blank.stock.colour


def _told(part: Part) -> dict[str, str]:
    return {
        "ref": part.ref,
        "name": part.name,
        "role": str(part.role),
        "group": part.group,
        "stock": part.blank.stock.name,
        "material": part.blank.stock.material,
    }


def _names(unit: Unit) -> dict[str, str]:
    """What the unit (by no name) and its groups are called: by their titles, and where two would be
    called the same or as a part is, with a number."""
    taken = {part.ref for part in unit.parts}
    names = {}
    for key, wished in _wished(unit):
        name, number = wished, 2
        while name in taken:
            name, number = f"{wished} {number}", number + 1
        taken.add(name)
        names[key] = name
    return names


def _wished(unit: Unit) -> Iterable[tuple[str, str]]:
    # In CadQuery's paths and queries a stroke, an at sign and the like have a meaning.
    yield "", _plain(unit.title)
    for group in dict.fromkeys(part.group for part in unit.parts):
        yield group, _plain(group)


def _plain(text: str) -> str:
    return "".join(each if each.isalnum() or each in " -.,()" else "-" for each in text)


def _rgb(colour: str) -> tuple[float, float, float]:
    """A ``#rrggbb`` colour as sRGB from 0 to 1, as both libraries take it."""
    red, green, blue = (int(colour[at : at + 2], 16) / 255 for at in (1, 3, 5))
    return red, green, blue


def _coloured(mesh: trimesh.Trimesh, colour: str) -> ColorVisuals:
    faces = np.tile([*(round(each * 255) for each in _rgb(colour)), 255], (len(mesh.faces), 1))
    return ColorVisuals(mesh, face_colors=faces.astype(np.uint8))
