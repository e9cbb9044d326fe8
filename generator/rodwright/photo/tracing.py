"""Scenes path traced by Mitsuba and denoised by Open Image Denoise.

Beside `describing.py` and `reflecting.py` the only module that imports either.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, fields
from importlib.util import find_spec
from typing import Any

import numpy as np
from numpy.typing import NDArray

from rodwright.photo.describing import colour_of, direction_of, lamp_of, mesh_of, rgb, sensor_of
from rodwright.photo.reflecting import described
from rodwright.photo.scene import Body, Camera, Scene, Surface
from rodwright.problems import Problem, ProblemsError, missing_library

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
        ProblemsError: one isn't installed, or a library of the system that it loads.
    """
    missing = [each for each in ("mitsuba", "pyoidn") if find_spec(each) is None]
    if missing:
        words = " and ".join(missing)
        lacking, them = ("aren't", "them") if len(missing) > 1 else ("isn't", "it")
        raise ProblemsError(
            [
                Problem(
                    f"{words}, which photographs are made with, {lacking} installed",
                    f"Install {them}: `pip install {' '.join(missing)}`.",
                )
            ]
        )
    try:
        import mitsuba  # noqa: F401
        import pyoidn  # noqa: F401
    except Exception as error:
        if problem := missing_library(error):
            raise ProblemsError([problem]) from error
        raise


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
        ProblemsError: Mitsuba or Open Image Denoise can't be loaded.
    """
    return Tracer().trace(scene, quality, seed=seed, progress=progress)


class Tracer:
    """Traces one scene after the other, and prepares surfaces that they share once.

    Raises:
        ProblemsError: Mitsuba or Open Image Denoise can't be loaded.
    """

    def __init__(self) -> None:
        refuse_without_mitsuba()
        import mitsuba

        mitsuba.set_variant("scalar_rgb")
        # It warns of Ctrl-C, which is told elsewhere.
        mitsuba.set_log_level(mitsuba.LogLevel.Error)
        self._surfaces: dict[object, Any] = {}
        self._reflectances: dict[object, Any] = {}

    def trace(
        self,
        scene: Scene,
        quality: Quality,
        *,
        seed: int = 0,
        progress: Callable[[float], object] = lambda _: None,
    ) -> Traced:
        """As :func:`trace`."""
        (made,) = self.trace_from(scene, [scene.camera], quality, seed=seed, progress=progress)
        return made

    def trace_from(
        self,
        scene: Scene,
        cameras: Sequence[Camera],
        quality: Quality,
        *,
        seed: int = 0,
        progress: Callable[[float], object] = lambda _: None,
    ) -> Iterator[Traced]:
        """The same from one camera after the other; ``progress`` is told the share of them all."""
        import mitsuba

        lit = mitsuba.load_dict(self._lit(scene, quality))
        reflectances = mitsuba.load_dict(self._shown(scene, self._reflectance))
        directions = mitsuba.load_dict(self._shown(scene, direction_of))
        for number, camera in enumerate(cameras):
            sensor = mitsuba.load_dict(sensor_of(camera))

            def told(share: float, before: int = number) -> None:
                progress((before + share) / len(cameras))

            colour = _passes(lit, sensor, quality, seed, told)
            guides = [
                np.array(mitsuba.render(each, sensor=sensor, spp=_GUIDING, seed=0))
                for each in (reflectances, directions)
            ]
            yield Traced(_denoised(colour, guides[0], 2 * guides[1] - 1), guides[0])

    def _lit(self, scene: Scene, quality: Quality) -> dict[str, Any]:
        made: dict[str, Any] = {
            "type": "scene",
            "integrator": {"type": "path", "max_depth": quality.bounces},
        }
        if any(scene.sky):
            made["sky"] = {"type": "constant", "radiance": rgb(scene.sky)}
        for number, lamp in enumerate(scene.lamps):
            made[f"lamp{number}"] = lamp_of(lamp)
        for number, body in enumerate(scene.bodies):
            made[f"body{number}"] = mesh_of(body, {"bsdf": self._surface(body.surface)})
        return made

    def _surface(self, surface: Surface) -> Any:
        import mitsuba

        same = _alike(surface)
        if same not in self._surfaces:
            self._surfaces[same] = mitsuba.load_dict(described(surface, colour_of))
        return self._surfaces[same]

    def _shown(self, scene: Scene, shown: Callable[[Body], Any]) -> dict[str, Any]:
        """A scene that gives off a property of the bodies as light.

        Mitsuba's own integrator for that takes fifteen times as long in its scalar variants.
        """
        import mitsuba

        made: dict[str, Any] = {"type": "scene", "integrator": {"type": "path", "max_depth": 1}}
        black = mitsuba.load_dict({"type": "diffuse", "reflectance": rgb((0.0, 0.0, 0.0))})
        for number, body in enumerate(scene.bodies):
            if not body.surface.clear:
                light = mitsuba.load_dict({"type": "area", "radiance": shown(body)})
                made[f"body{number}"] = mesh_of(body, {"bsdf": black, "emitter": light})
        return made

    def _reflectance(self, body: Body) -> Any:
        colour = body.surface.colour
        if colour not in self._reflectances:
            self._reflectances[colour] = colour_of(colour)
        return self._reflectances[colour]


def _alike(surface: Surface) -> object:
    """What surfaces that are the same to Mitsuba have in common; textures are told apart by being
    others."""
    return tuple(getattr(surface, each.name) for each in fields(surface))


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


_GUIDING = 16
"""Paths a pixel of what guides the denoiser.  They end where they begin, so they cost little; with
fewer, edges come out ragged."""


def _denoised(
    colour: NDArray[np.float32], albedo: NDArray[np.float32], normal: NDArray[np.float32]
) -> Radiance:
    import pyoidn

    made: Radiance = pyoidn.denoise(colour, albedo, normal, hdr=True, clean_aux=True)
    return made
