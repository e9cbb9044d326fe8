"""A whole build: checks, then every file, written whole or not at all."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import partial
from pathlib import Path

from rodwright.checks import check_parts, check_solids
from rodwright.checks.findings import Finding
from rodwright.handover.shop_part import PartsKind
from rodwright.unit import Unit
from rodwright.unit.laid import laid_unit

_KINDS = {
    "solids for the CNC shop": ("*.step",),
    "meshes": ("*.stl", "*.glb"),
    "lists": ("parts-list.*", "hardware.*", "edges.*"),
    "the whole model": ("unit.json", "findings.json"),
    "pictures": ("*.png", "*.svg"),
}
_SHOWN_AT_ONCE = 6


@dataclass(frozen=True, slots=True)
class Build:
    """What a build made: the folder, the files in it (relative, sorted), and the findings."""

    folder: Path
    files: tuple[str, ...]
    findings: tuple[Finding, ...]

    def by_kind(self) -> dict[str, tuple[str, ...]]:
        """File names by what they are for; the many files of single parts as one entry."""
        gathered: dict[str, tuple[str, ...]] = {}
        for kind, patterns in _KINDS.items():
            names = [
                name for name in self.files if any(Path(name).match(each) for each in patterns)
            ]
            plain = [name for name in names if "/" not in name]
            single = [name for name in names if "/" in name]
            if len(single) > _SHOWN_AT_ONCE:
                folder = single[0].split("/")[0]
                single = [f"{folder}/ ({len(single)} files)"]
            if plain or single:
                gathered[kind] = (*plain, *single)
        return gathered


def build(
    unit: Unit,
    folder: Path | str,
    *,
    pictures: bool = True,
    parts: PartsKind = "cut",
    progress: Callable[[str], None] | None = None,
) -> Build:
    """Check a unit and write every file of it into a folder.

    ``parts`` says whether the files of single parts, and the workings in the lists, are as
    ``cut`` (what a machine gets: less edging, with what is trimmed later) or ``finished``.
    Findings stop nothing: they are written beside the files and returned.  Files of an
    earlier build that haven't been changed since are replaced; anything else is left alone.

    Raises:
        ProblemsError: the folder can't be written, or something of the user's is in the way;
            nothing is written then.
        ValueError: the workings of a part leave no single solid, or ``parts`` is neither kind.
    """
    from rodwright.handover import look_before, write_build

    step, target = progress or _silent, Path(folder)
    look_before(unit, target)
    laid = laid_unit(unit)  # so that each solid is made once: files have parts as they are laid
    step(f"building {len(laid.shapes)} solids and looking for collisions")
    findings = (*check_parts(unit), *check_solids(laid))
    extras = [partial(_pictures, step)] if pictures else []
    files = write_build(laid, target, parts=parts, findings=findings, extras=extras, progress=step)
    names = sorted(path.relative_to(target).as_posix() for path in files)
    return Build(target, tuple(names), findings)


def _pictures(step: Callable[[str], None], unit: Unit, folder: Path) -> None:
    from rodwright.pictures import write_pictures

    write_pictures(unit, folder, step)


def _silent(what: str) -> None:
    """Progress that nobody watches."""
