"""Cameras, lamps, meshes and colours as Mitsuba takes them."""

from __future__ import annotations

from typing import Any

import numpy as np

from rodwright.photo.scene import Body, Camera, Colour, Lamp, Texture


def sensor_of(camera: Camera) -> dict[str, Any]:
    """A camera with its film."""
    import mitsuba

    turn = np.radians(camera.turn)
    eye = np.array(camera.eye)
    target = eye + np.array([np.sin(turn), np.cos(turn), 0.0])
    to_world = mitsuba.ScalarTransform4f().look_at(list(eye), list(target), [0, 0, 1])
    return {
        "type": "perspective",
        "to_world": to_world,
        "fov": float(np.degrees(2 * np.arctan(0.5 / camera.focal))),
        "fov_axis": "x",
        "near_clip": 10.0,
        "far_clip": 100_000.0,
        "principal_point_offset_x": camera.shift[0],
        "principal_point_offset_y": -camera.shift[1],
        "film": {
            "type": "hdrfilm",
            "width": camera.width,
            "height": camera.height,
            # Wider filters reach over the borders of blocks, whose order is the threads' own.
            "rfilter": {"type": "box"},
            "component_format": "float32",
            "pixel_format": "rgb",
        },
        "sampler": {"type": "independent"},
    }


def lamp_of(lamp: Lamp) -> dict[str, Any]:
    """A lamp, which gives off light on its front alone."""
    import mitsuba

    corner, (one, other) = np.array(lamp.corner), map(np.array, lamp.edges)
    out = np.cross(one, other)
    out /= np.linalg.norm(out)
    matrix = np.eye(4, dtype=np.float32)
    matrix[:3, 0], matrix[:3, 1], matrix[:3, 2] = one / 2, other / 2, out
    matrix[:3, 3] = corner + one / 2 + other / 2
    return {
        "type": "rectangle",
        "to_world": mitsuba.ScalarTransform4f(matrix),
        "emitter": {"type": "area", "radiance": rgb(lamp.radiance)},
    }


_DIRECTIONS = "vertex_directions"
"""The attribute of meshes that holds normals, each number from -1..1 to 0..1."""


def mesh_of(body: Body, properties: dict[str, Any]) -> Any:
    """A body with what it is made of; one that is an emitter carries its directions."""
    import mitsuba

    given = mitsuba.Properties()
    for name, made in properties.items():
        given[name] = made
    mesh: Any = mitsuba.Mesh(
        body.name,
        len(body.points),
        len(body.triangles),
        given,
        has_vertex_normals=True,
        has_vertex_texcoords=body.places is not None,
    )
    if "emitter" in properties:
        mesh.add_attribute(_DIRECTIONS, 3, np.float32(body.normals * 0.5 + 0.5).ravel())
    parameters = mitsuba.traverse(mesh)
    parameters["vertex_positions"] = np.float32(body.points).ravel()
    parameters["vertex_normals"] = np.float32(body.normals).ravel()
    parameters["faces"] = np.uint32(body.triangles).ravel()
    if body.places is not None:
        # Mitsuba's places begin at the top of a bitmap.
        from_top = body.places * (1.0, -1.0) + (0.0, 1.0)
        parameters["vertex_texcoords"] = np.float32(from_top).ravel()
    parameters.update()
    return mesh


def rgb(colour: Colour) -> dict[str, Any]:
    """A colour's description."""
    return {"type": "rgb", "value": list(colour)}


def colour_of(colour: Colour | Texture) -> Any:
    """A colour, or a texture."""
    import mitsuba

    if isinstance(colour, Texture):
        bitmap = mitsuba.Bitmap(colour.pixels, mitsuba.Bitmap.PixelFormat.RGB)
        return mitsuba.load_dict({"type": "bitmap", "bitmap": bitmap, "wrap_mode": "clamp"})
    return mitsuba.load_dict(rgb(colour))


def direction_of(_: Body) -> Any:
    """What makes a mesh shine in its directions."""
    import mitsuba

    return mitsuba.load_dict({"type": "mesh_attribute", "name": _DIRECTIONS})
