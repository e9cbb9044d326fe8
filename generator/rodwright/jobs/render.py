"""Photographs of a unit: closed, open, taken apart."""

from __future__ import annotations

import time
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from rodwright.handover.output import look_before, whole_or_nothing
from rodwright.setout import set_out
from rodwright.unit import Unit
from rodwright.unit.laid import laid_unit
from rodwright.wishes import SpecFile

if TYPE_CHECKING:
    from rodwright.photo.grades import Grade

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
    grade: Grade = "usual",
    shots: Sequence[str] = (),
    contents: bool = False,
    size: int | None = None,
    seed: int = 0,
    progress: Callable[[str], object] = lambda _: None,
) -> Rendered:
    """Photograph a unit in a room: ``photographs/closed.jpg``, ``open.jpg`` where doors or drawers
    open, ``apart.jpg``; or those of them that ``shots`` names.  Whole or not at all.

    ``size`` is the longer side in pixels, if not the grade's own; another ``seed`` cuts the boards
    from other logs.  ``progress`` is told what is under way, its share and the time left.

    Raises:
        ProblemsError: the spec makes no unit, Mitsuba or Open Image Denoise isn't installed, the
            folder can't be written, or something of the user's is in the way; nothing is written
            then.
        ValueError: the workings of a part leave no single solid.
    """
    from dataclasses import replace

    from rodwright.handover.families import PHOTOGRAPHS, beside
    from rodwright.photo.grades import QUALITIES
    from rodwright.photo.shots import photographs
    from rodwright.photo.tracing import refuse_without_mitsuba
    from rodwright.photo.views import shots_of

    target, others = Path(folder), beside(PHOTOGRAPHS)
    refuse_without_mitsuba()
    unit = laid_unit(set_out(spec))
    look_before(target, ours=PHOTOGRAPHS, beside=others, again=PHOTOGRAPHS.fullmatch)
    quality = QUALITIES[grade]
    if size is not None:
        quality = replace(quality, size=size)
    wanted = [name for name in shots_of(unit) if not shots or name in shots]
    made = photographs(
        unit, wanted, quality, seed=seed, contents=contents, progress=_Clock(progress).told
    )
    pictures = {f"photographs/{name}.jpg": data for name, data in made.items()}
    with whole_or_nothing(
        target, ours=PHOTOGRAPHS, beside=others, again=PHOTOGRAPHS.fullmatch
    ) as staging:
        (staging / "photographs").mkdir()
        for name, data in pictures.items():
            (staging / name).write_bytes(data)
    return Rendered(unit, target, tuple(sorted(pictures)))


class _Clock:
    """Tells what is under way with its share and the time that is left of it."""

    def __init__(self, tell: Callable[[str], object]) -> None:
        self._tell = tell
        self._what = ""
        self._begun = 0.0

    def told(self, what: str, share: float) -> None:
        now = time.monotonic()
        if what != self._what:
            self._what, self._begun = what, now
        if not 0 < share < 1:
            self._tell(f"photographing it {what}")
            return
        left = (now - self._begun) * (1 - share) / share
        self._tell(f"photographing it {what}: {share:.0%}, {_said(left)} left")


def _said(seconds: float) -> str:
    if seconds < 90:
        return f"{max(1, round(seconds))} s"
    return f"{round(seconds / 60)} min"
