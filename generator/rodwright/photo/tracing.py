"""Scenes path traced by Mitsuba and denoised by Open Image Denoise.

The only module that imports either.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from importlib.util import find_spec
from typing import Any

import numpy as np
from numpy.typing import NDArray

from rodwright.photo.scene import Body, Camera, Colour, Lamp, Scene, Surface, Texture
from rodwright.problems import Problem, ProblemsError

Radiance = NDArray[np.float32]
"""Rows from the top, of pixels: red, green, blue; linear, primaries of sRGB."""


@dataclass(frozen=True, slots=True)
class Quality:
    """How many paths a pixel has, in passes of ``each``, and how often a path is reflected."""

    samples: int
    each: int = 8
    bounces: int = 8


def refuse_without_mitsuba() -> None:
    """Refuse before the work what needs Mitsuba and Open Image Denoise where either is missing.

    Raises:
        ProblemsError: one isn't installed.
    """
    missing = [each for each in ("mitsuba", "pyoidn") if find_spec(each) is None]
    if missing:
        words = " and ".join(missing)
        raise ProblemsError(
            [
                Problem(
                    f"{words}, which photographs are made with, isn't installed",
                    f"Install it: `pip install {' '.join(missing)}`.",
                )
            ]
        )


def trace(
    scene: Scene,
    quality: Quality,
    *,
    seed: int = 0,
    progress: Callable[[float], object] = lambda _: None,
) -> Radiance:
    """The light that reaches each pixel of the camera, denoised; equal calls give equal pixels on
    one machine.

    ``progress`` is told the share that is done, after each pass.

    Raises:
        ProblemsError: Mitsuba or Open Image Denoise isn't installed.
    """
    refuse_without_mitsuba()
    import mitsuba

    mitsuba.set_variant("scalar_rgb")
    loaded: Any = mitsuba.load_dict(_scene(scene, quality))
    passes = max(1, quality.samples // quality.each)
    total: NDArray[np.float64] | None = None
    for number in range(passes):
        # Each pass is short, so that Ctrl-C is heard between two.
        made = np.array(mitsuba.render(loaded, spp=quality.each, seed=seed * 65_537 + number))
        total = made.astype(np.float64) if total is None else total + made
        progress((number + 1) / passes)
    assert total is not None
    colour = (total / passes).astype(np.float32)
    return _denoised(colour, _shown(scene, _albedo), 2 * _shown(scene, _direction) - 1)


def _scene(scene: Scene, quality: Quality) -> dict[str, Any]:
    made: dict[str, Any] = {
        "type": "scene",
        "integrator": {"type": "path", "max_depth": quality.bounces},
        "sensor": _sensor(scene.camera),
    }
    if any(scene.sky):
        made["sky"] = {"type": "constant", "radiance": _rgb(scene.sky)}
    for number, lamp in enumerate(scene.lamps):
        made[f"lamp{number}"] = _lamp(lamp)
    for number, body in enumerate(scene.bodies):
        made[f"body{number}"] = _mesh(body, {"bsdf": _bsdf(body.surface)})
    return made


_GUIDE_SAMPLES = 16
"""Paths a pixel of what guides the denoiser: they end where they begin, so they cost next to
nothing."""


def _shown(scene: Scene, shown: Callable[[Body], dict[str, Any]]) -> NDArray[np.float32]:
    """What each pixel sees of a property of the bodies, told as light that they give off.

    Mitsuba's own integrator for that takes a hundred times as long in its scalar variants.
    """
    import mitsuba

    made: dict[str, Any] = {
        "type": "scene",
        "integrator": {"type": "path", "max_depth": 1},
        "sensor": _sensor(scene.camera),
    }
    black = {"type": "diffuse", "reflectance": _rgb((0.0, 0.0, 0.0))}
    for number, body in enumerate(scene.bodies):
        if not body.surface.clear:
            made[f"body{number}"] = _mesh(
                body, {"bsdf": black, "emitter": {"type": "area", "radiance": shown(body)}}
            )
    return np.array(mitsuba.render(mitsuba.load_dict(made), spp=_GUIDE_SAMPLES, seed=0))


def _albedo(body: Body) -> dict[str, Any]:
    return _colour(body.surface.colour)


def _direction(_: Body) -> dict[str, Any]:
    return {"type": "mesh_attribute", "name": _DIRECTIONS}


def _sensor(camera: Camera) -> dict[str, Any]:
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
        "principal_point_offset_x": -camera.shift[0],
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


def _lamp(lamp: Lamp) -> dict[str, Any]:
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
        "emitter": {"type": "area", "radiance": _rgb(lamp.radiance)},
    }


_DIRECTIONS = "vertex_directions"
"""The attribute of meshes that holds normals, each number from -1..1 to 0..1."""


def _mesh(body: Body, properties: dict[str, dict[str, Any]]) -> Any:
    import mitsuba

    given = mitsuba.Properties()
    for name, description in properties.items():
        given[name] = mitsuba.load_dict(description)
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
        parameters["vertex_texcoords"] = np.float32(body.places).ravel()
    parameters.update()
    return mesh


def _rgb(colour: Colour) -> dict[str, Any]:
    return {"type": "rgb", "value": list(colour)}


def _colour(colour: Colour | Texture) -> dict[str, Any]:
    import mitsuba

    if isinstance(colour, Texture):
        bitmap = mitsuba.Bitmap(colour.pixels, mitsuba.Bitmap.PixelFormat.RGB)
        return {"type": "bitmap", "bitmap": bitmap, "wrap_mode": "clamp"}
    return _rgb(colour)


def _bsdf(surface: Surface) -> dict[str, Any]:
    if surface.clear:
        return {"type": "thindielectric", "int_ior": 1.5}
    inside = {
        "type": "principled",
        "base_color": _colour(surface.colour),
        "roughness": surface.roughness,
        "specular": surface.gloss,
        "metallic": 1.0 if surface.metal else 0.0,
        "clearcoat": surface.coat,
        "clearcoat_gloss": 1.0 - surface.coat_roughness,
    }
    return {"type": "twosided", "bsdf": inside}


def _denoised(
    colour: NDArray[np.float32], albedo: NDArray[np.float32], normal: NDArray[np.float32]
) -> Radiance:
    import pyoidn

    made: Radiance = pyoidn.denoise(colour, albedo, normal, hdr=True, clean_aux=True)
    return made
