"""Scenes path traced by Mitsuba and denoised by Open Image Denoise.

Beside `reflecting.py` the only module that imports either.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from importlib.util import find_spec
from typing import Any

import numpy as np
from numpy.typing import NDArray

from rodwright.photo.reflecting import described
from rodwright.photo.scene import Body, Camera, Colour, Lamp, Scene, Texture
from rodwright.problems import Problem, ProblemsError

Radiance = NDArray[np.float32]
"""Rows from the top, of pixels: red, green, blue; linear, primaries of sRGB."""


@dataclass(frozen=True, slots=True)
class Quality:
    """How large a picture is (pixels along its longer side), how many paths of light a pixel has,
    and how often a path is reflected at most."""

    size: int
    samples: int
    bounces: int = 12


@dataclass(frozen=True, slots=True, eq=False)
class Traced:
    """The light that reaches each pixel, denoised, and the reflectance of what it shows (0 where
    that is a lamp, or nothing)."""

    radiance: Radiance
    reflectance: Radiance


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
) -> Traced:
    """The light that reaches each pixel of the camera; equal calls give equal pixels on one
    machine.

    ``progress`` is told the share that is done, after each pass.

    Raises:
        ProblemsError: Mitsuba or Open Image Denoise isn't installed.
    """
    (made,) = trace_from(scene, [scene.camera], quality, seed=seed, progress=progress)
    return made


def trace_from(
    scene: Scene,
    cameras: Sequence[Camera],
    quality: Quality,
    *,
    seed: int = 0,
    progress: Callable[[float], object] = lambda _: None,
) -> Iterator[Traced]:
    """The same from one camera after the other; ``progress`` is told the share of them all.

    Raises:
        ProblemsError: as :func:`trace`.
    """
    refuse_without_mitsuba()
    import mitsuba

    mitsuba.set_variant("scalar_rgb")
    mitsuba.set_log_level(mitsuba.LogLevel.Error)  # it warns of Ctrl-C, which we tell ourselves
    lit = mitsuba.load_dict(_scene(scene, quality))
    reflectances = mitsuba.load_dict(_shown(scene, _reflectance))
    directions = mitsuba.load_dict(_shown(scene, _direction))
    for number, camera in enumerate(cameras):
        sensor = mitsuba.load_dict(_sensor(camera))

        def told(share: float, before: int = number) -> None:
            progress((before + share) / len(cameras))

        colour = _passes(lit, sensor, quality, seed, told)
        reflectance = np.array(_guide(reflectances, sensor))
        direction = 2 * np.array(_guide(directions, sensor)) - 1
        yield Traced(_denoised(colour, reflectance, direction), reflectance)


_PATHS_A_PASS = 1_500_000
"""About a second's work, so that progress is seen and Ctrl-C heard where Mitsuba doesn't hear it
itself (it does on Linux and macOS)."""
_FIREFLY = 4.0
"""A pass's pixel is held to this many times what nine tenths of the pixels keep below: such specks
are single paths that met a lamp by a rare way, and the denoiser would spread them.  A pixel as
bright as that is white in the picture anyway."""


def _passes(
    lit: Any, sensor: Any, quality: Quality, seed: int, progress: Callable[[float], object]
) -> NDArray[np.float32]:
    import mitsuba

    width, height = sensor.film().size()
    each = min(quality.samples, max(1, round(_PATHS_A_PASS / (width * height))))
    passes = -(-quality.samples // each)
    total = np.zeros((height, width, 3))
    most = np.inf
    for number in range(passes):
        own = (seed * 65_537 + number) % 2**32
        made = np.array(mitsuba.render(lit, sensor=sensor, spp=each, seed=own))
        if number == 0:
            most = _FIREFLY * float(np.quantile(made.max(axis=2), 0.9))
        total += np.minimum(made, most)
        progress((number + 1) / passes)
    mean: NDArray[np.float32] = (total / passes).astype(np.float32)
    return mean


def _scene(scene: Scene, quality: Quality) -> dict[str, Any]:
    made: dict[str, Any] = {
        "type": "scene",
        "integrator": {"type": "path", "max_depth": quality.bounces},
    }
    if any(scene.sky):
        made["sky"] = {"type": "constant", "radiance": _rgb(scene.sky)}
    for number, lamp in enumerate(scene.lamps):
        made[f"lamp{number}"] = _lamp(lamp)
    for number, body in enumerate(scene.bodies):
        made[f"body{number}"] = _mesh(body, {"bsdf": described(body.surface, _colour)})
    return made


_GUIDE_SAMPLES = 16
"""Paths a pixel of what guides the denoiser: they end where they begin, so they cost next to
nothing."""


def _guide(shown: Any, sensor: Any) -> Any:
    import mitsuba

    return mitsuba.render(shown, sensor=sensor, spp=_GUIDE_SAMPLES, seed=0)


def _shown(scene: Scene, shown: Callable[[Body], dict[str, Any]]) -> dict[str, Any]:
    """A scene that gives off a property of the bodies as light.

    Mitsuba's own integrator for that takes fifteen times as long in its scalar variants.
    """
    made: dict[str, Any] = {"type": "scene", "integrator": {"type": "path", "max_depth": 1}}
    black = {"type": "diffuse", "reflectance": _rgb((0.0, 0.0, 0.0))}
    for number, body in enumerate(scene.bodies):
        if not body.surface.clear:
            made[f"body{number}"] = _mesh(
                body, {"bsdf": black, "emitter": {"type": "area", "radiance": shown(body)}}
            )
    return made


def _reflectance(body: Body) -> dict[str, Any]:
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
        # Mitsuba counts the rows of a picture from the top.
        upside = body.places * [1.0, -1.0] + [0.0, 1.0]
        parameters["vertex_texcoords"] = np.float32(upside).ravel()
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


def _denoised(
    colour: NDArray[np.float32], albedo: NDArray[np.float32], normal: NDArray[np.float32]
) -> Radiance:
    import pyoidn

    made: Radiance = pyoidn.denoise(colour, albedo, normal, hdr=True, clean_aux=True)
    return made
