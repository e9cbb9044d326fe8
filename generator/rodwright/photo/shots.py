"""Photographs as files: a unit in each of its shots."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace

from rodwright.photo.developing import Meter, developed, jpeg, metered
from rodwright.photo.scene import Scene
from rodwright.photo.stamp import Shot, stamp_of
from rodwright.photo.tracing import Quality, Tracer
from rodwright.photo.views import SHOTS, closed
from rodwright.unit import Unit

Progress = Callable[[str, float], object]
"""Is told what is being made, and the share of it that is done."""


def untold(_what: str, _share: float) -> None:
    """Nobody is told."""


def photographs(
    unit: Unit,
    shots: Sequence[Shot],
    quality: Quality,
    *,
    seed: int = 0,
    contents: bool = False,
    progress: Progress = untold,
) -> dict[Shot, bytes]:
    """JPEG files of a unit, by the names of the shots (of :func:`views.shots_of`).

    Each bears the stamp of the unit and the shot, so the unit should be laid as its files are.

    Raises:
        ProblemsError: Mitsuba or Open Image Denoise isn't installed.
        ValueError: a part's workings leave no single solid.
    """
    made: dict[Shot, bytes] = {}
    tracer = Tracer()  # the shots share their surfaces
    in_room: Meter | None = None
    for name in shots:

        def told(share: float, name: str = name) -> None:
            progress(name, share)

        told(0.0)
        scene = SHOTS[name](unit, quality.size, seed=seed, contents=contents)
        if name == "apart":
            meter = meter_of(scene, tracer)
        else:
            empty = name == "closed" and not contents
            in_room = in_room or meter_of(
                scene if empty else closed(unit, quality.size, seed=seed), tracer
            )
            meter = in_room
        traced = tracer.trace(scene, quality, seed=seed, progress=told)
        made[name] = jpeg(developed(traced, meter), stamp_of(unit, name))
    return made


_METERED = Quality(96, 32)
"""Of the picture that the light is metered on."""


def meter_of(scene: Scene, tracer: Tracer) -> Meter:
    """What the photographs of a unit are exposed by: a small one of it closed and empty, so that
    they are as light as each other at any size, open or closed, with contents or without."""
    camera, share = scene.camera, _METERED.size / max(scene.camera.width, scene.camera.height)
    small = replace(camera, width=round(camera.width * share), height=round(camera.height * share))
    return metered(tracer.trace(replace(scene, camera=small), _METERED))
