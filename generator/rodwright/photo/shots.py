"""Photographs as files: a unit in each of its shots."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from rodwright.photo.developing import developed, jpeg
from rodwright.photo.tracing import Quality, trace
from rodwright.photo.views import SHOTS
from rodwright.unit import Unit

Progress = Callable[[str, float], object]
"""Is told what is being made, and the share of it that is done."""


def _nothing(_what: str, _share: float) -> None:
    return


def photographs(
    unit: Unit,
    shots: Sequence[str],
    quality: Quality,
    *,
    seed: int = 0,
    contents: bool = False,
    comment: str = "",
    progress: Progress = _nothing,
) -> dict[str, bytes]:
    """JPEG files of a unit, by the names of the shots (of :func:`views.shots_of`).

    ``comment`` is put into each file.

    Raises:
        ProblemsError: Mitsuba or Open Image Denoise isn't installed.
        ValueError: a part's workings leave no single solid.
    """
    made = {}
    for name in shots:

        def told(share: float, name: str = name) -> None:
            progress(name, share)

        told(0.0)
        scene = SHOTS[name](unit, quality.size, seed=seed, contents=contents)
        traced = trace(scene, quality, seed=seed, progress=told)
        made[name] = jpeg(developed(traced, scene.exposure), comment)
    return made
