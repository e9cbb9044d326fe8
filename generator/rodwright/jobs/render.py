"""Photographs of a unit: closed, open, taken apart; its options; moving pictures."""

from __future__ import annotations

import re
import time
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from pathlib import Path
from typing import TYPE_CHECKING, Literal, get_args

from rodwright.checks import check_parts
from rodwright.checks.findings import Finding
from rodwright.handover.families import PHOTOGRAPHS, beside
from rodwright.handover.names import slug
from rodwright.handover.output import look_before, whole_or_nothing
from rodwright.problems import Problem, ProblemsError
from rodwright.setout import set_out
from rodwright.unit import Unit
from rodwright.unit.laid import laid_unit
from rodwright.wishes import SpecFile
from rodwright.wishes.reading.options import option_specs

if TYPE_CHECKING:
    from rodwright.photo.grades import Grade
    from rodwright.photo.tracing import Quality

__all__ = ["PICTURES", "Picture", "Rendered", "render"]

Picture = Literal["closed", "open", "apart", "options", "turntable", "build-up"]
"""What there is to photograph."""
PICTURES: tuple[Picture, ...] = get_args(Picture)


@dataclass(frozen=True, slots=True)
class Rendered:
    """What was made: the unit, the folder, the files in it (relative, sorted), and what the parts
    are found to want."""

    unit: Unit
    folder: Path
    files: tuple[str, ...]
    findings: tuple[Finding, ...]


def render(
    spec: SpecFile,
    folder: Path | str,
    *,
    pictures: Sequence[Picture] = (),
    grade: Grade = "usual",
    contents: bool = False,
    size: int | None = None,
    seed: int = 0,
    progress: Callable[[str], object] = lambda _: None,
) -> Rendered:
    """Photograph a unit in a room, into ``photographs/`` in a folder.  Whole or not at all.

    ``pictures`` says which; if none, ``closed.jpg``, ``open.jpg`` where doors or drawers open, and
    ``apart.jpg``.  ``options`` are ``options.jpg``, all side by side, and ``option-1-...jpg`` on,
    each alone; ``turntable`` and ``build-up`` are ``.webp`` files.  Photographs that an earlier
    call made of the same unit stay beside those made now; those of another go.

    ``size`` is the longer side in pixels, if not the grade's own; another ``seed`` cuts the boards
    from other logs.  ``progress`` is told what is under way, its share and the time left.

    Raises:
        ProblemsError: the spec makes no unit, or has no options or nothing that opens where these
            are asked for; Mitsuba or Open Image Denoise isn't installed, the folder can't be
            written, or something of the user's is in the way; nothing is written then.
        ValueError: the workings of a part leave no single solid.
    """
    from rodwright.photo.grades import FILMS, QUALITIES
    from rodwright.photo.tracing import refuse_without_mitsuba

    refuse_without_mitsuba()
    units = [(name, laid_unit(set_out(each))) for name, each in option_specs(spec)]
    wanted = _wanted(pictures, units)
    target = Path(folder)
    ours = _ours(target, [unit for _, unit in units], _names(wanted, units))
    others = re.compile(f"{beside(PHOTOGRAPHS).pattern}|(?!{ours.pattern}){PHOTOGRAPHS.pattern}")
    look_before(target, ours=ours, beside=others, again=ours.fullmatch)
    quality, film = QUALITIES[grade], FILMS[grade]
    if size is not None:
        quality, film = replace(quality, size=size), replace(film, size=size)
    work = _Work(units, seed, contents, _Clock(progress).told)
    made = work.stills([each for each in wanted if each in _STILLS], quality)
    for picture in wanted:
        if picture not in _STILLS:
            made |= work.made(picture, quality, film)
    with whole_or_nothing(target, ours=ours, beside=others, again=ours.fullmatch) as staging:
        (staging / "photographs").mkdir()
        for name, data in made.items():
            (staging / "photographs" / name).write_bytes(data)
    unit = units[0][1]
    files = tuple(sorted(f"photographs/{name}" for name in made))
    return Rendered(unit, target, files, tuple(check_parts(unit)))


_STILLS: tuple[Picture, ...] = ("closed", "open", "apart")
_Units = Sequence[tuple[str, Unit]]
"""Options with their names, the spec itself first; laid as their files are."""


def _wanted(pictures: Sequence[Picture], units: _Units) -> tuple[Picture, ...]:
    """What is photographed, in the order of :data:`PICTURES`."""
    opens = bool(units[0][1].motions)
    problems = []
    if "options" in pictures and len(units) == 1:
        problems.append(
            Problem("the spec has no options to show side by side", "Give it some: `options:`.")
        )
    if "open" in pictures and not opens:
        problems.append(
            Problem("nothing of the unit opens", "Ask for `closed` or `apart`, or give it doors.")
        )
    if problems:
        raise ProblemsError(problems)
    if pictures:
        return tuple(each for each in PICTURES if each in pictures)
    return tuple(each for each in _STILLS if each != "open" or opens)


def _names(wanted: Sequence[Picture], units: _Units) -> list[str]:
    """The names of the files that will be written."""
    names = []
    for picture in wanted:
        names.append(f"{picture}.{'webp' if picture in ('turntable', 'build-up') else 'jpg'}")
        if picture == "options":
            names += _option_names(units)
    return names


def _option_names(units: _Units) -> list[str]:
    return [
        "-".join(filter(None, ("option", str(number), slug(name).lower()))) + ".jpg"
        for number, (name, _) in enumerate(units, 1)
    ]


def _ours(target: Path, units: Sequence[Unit], written: Sequence[str]) -> re.Pattern[str]:
    """Which photographs in a folder are replaced or removed: all but those of the same unit that
    aren't made again."""
    from rodwright.photo.stamp import shows_only

    folder = target / "photographs"
    names = sorted(path.name for path in folder.glob("*")) if folder.is_dir() else []
    stay = [
        name
        for name in names
        if name not in written
        and PHOTOGRAPHS.fullmatch(f"photographs/{name}")
        and shows_only((folder / name).read_bytes(), units)
    ]
    kept = "".join(f"(?!photographs/{re.escape(name)}$)" for name in stay)
    return re.compile(f"{kept}(?:{PHOTOGRAPHS.pattern})")


@dataclass(frozen=True, slots=True)
class _Work:
    """What the pictures of one call share."""

    units: _Units
    seed: int
    contents: bool
    told: Callable[[str, float], object]

    def stills(self, pictures: Sequence[Picture], quality: Quality) -> dict[str, bytes]:
        """The files of single photographs, by their names."""
        from rodwright.photo.shots import photographs

        shots = photographs(
            self.units[0][1],
            pictures,
            quality,
            seed=self.seed,
            contents=self.contents,
            progress=self.told,
        )
        return {f"{name}.jpg": data for name, data in shots.items()}

    def made(self, picture: Picture, quality: Quality, film: Quality) -> dict[str, bytes]:
        """The files of a film or of options, by their names."""
        from rodwright.photo import films
        from rodwright.photo.abreast import side_by_side

        unit = self.units[0][1]
        if picture == "turntable":
            made = films.turntable(unit, film, seed=self.seed, progress=self.told)
            return {"turntable.webp": made}
        if picture == "build-up":
            made = films.build_up(unit, film, seed=self.seed, progress=self.told)
            return {"build-up.webp": made}
        sides = side_by_side(
            self.units, quality, seed=self.seed, contents=self.contents, progress=self.told
        )
        alone = zip(_option_names(self.units), sides.alone, strict=True)
        return {"options.jpg": sides.picture, **dict(alone)}


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
        if share == 0:
            self._tell(f"photographing: {what}")
        if not 0 < share < 1:
            return
        left = (now - self._begun) * (1 - share) / share
        self._tell(f"photographing: {what}, {share:.0%}, about {_said(left)} left")


def _said(seconds: float) -> str:
    if seconds < 90:
        return f"{max(1, round(seconds))} s"
    return f"{round(seconds / 60)} min"
