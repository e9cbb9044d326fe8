"""Photographs of a unit: closed, open, taken apart."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from rodwright.handover.output import look_before, whole_or_nothing
from rodwright.setout import set_out
from rodwright.unit import Unit
from rodwright.unit.laid import laid_unit
from rodwright.wishes import SpecFile

__all__ = ["Rendered", "render"]


@dataclass(frozen=True, slots=True)
class Rendered:
    """What was made: the unit, the folder, and the files in it (relative, sorted)."""

    unit: Unit
    folder: Path
    files: tuple[str, ...]


def render(
    spec: SpecFile,
    folder: Path | str,
    *,
    draft: bool = False,
    seed: int = 0,
    progress: Callable[[str], object] = lambda _: None,
) -> Rendered:
    """Photograph a unit in a room: ``photographs/closed.jpg``, ``open.jpg`` where doors or drawers
    open, ``apart.jpg``.  Whole or not at all.

    Raises:
        ProblemsError: the spec makes no unit, Mitsuba or Open Image Denoise isn't installed, the
            folder can't be written, or something of the user's is in the way; nothing is written
            then.
        ValueError: the workings of a part leave no single solid.
    """
    from rodwright.handover.families import PHOTOGRAPHS, beside
    from rodwright.photo import views
    from rodwright.photo.developing import developed, jpeg
    from rodwright.photo.tracing import Quality, refuse_without_mitsuba, trace

    target, others = Path(folder), beside(PHOTOGRAPHS)
    refuse_without_mitsuba()
    unit = laid_unit(set_out(spec))
    look_before(target, ours=PHOTOGRAPHS, beside=others, again=PHOTOGRAPHS.fullmatch)
    width, height, quality = (360, 480, Quality(8)) if draft else (960, 1280, Quality(64))
    shots = {"closed": views.closed, "apart": views.apart}
    if unit.motions:
        shots["open"] = views.open_view
    pictures = {}
    for name, shot in shots.items():
        progress(f"photographing it {name}")
        scene = shot(unit, width, height)
        pictures[name] = jpeg(
            developed(
                trace(
                    scene,
                    quality,
                    seed=seed,
                    progress=lambda share, name=name: progress(  # type: ignore[misc]
                        f"photographing it {name}: {share:.0%}"
                    ),
                ),
                scene.exposure,
            )
        )
    with whole_or_nothing(
        target, ours=PHOTOGRAPHS, beside=others, again=PHOTOGRAPHS.fullmatch
    ) as staging:
        (staging / "photographs").mkdir()
        for name, data in pictures.items():
            (staging / "photographs" / f"{name}.jpg").write_bytes(data)
    return Rendered(unit, target, tuple(sorted(f"photographs/{name}.jpg" for name in pictures)))
