"""A whole build: checks, then every file, written whole or not at all."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from itertools import groupby
from pathlib import Path
from typing import get_args

from rodwright.checks import check_parts, check_solids
from rodwright.checks.findings import Finding
from rodwright.handover.exports import EXPORTS, Content, Export, Kind
from rodwright.handover.families import BUILD_FILES, beside
from rodwright.handover.output import look_before, whole_or_nothing
from rodwright.handover.stamp import time_stamp
from rodwright.unit import Unit
from rodwright.unit.laid import laid_unit
from rodwright.unit.shop_part import PartsKind

_SHOWN_AT_ONCE = 6
_REF = re.compile("[A-Z]+[0-9]+")


@dataclass(frozen=True, slots=True)
class Build:
    """What a build made: the folder, the files in it (relative, sorted), and the findings."""

    folder: Path
    files: tuple[str, ...]
    findings: tuple[Finding, ...]

    def by_kind(self) -> dict[Kind, tuple[str, ...]]:
        """File names by what they are for; the many files of single parts as one entry."""
        gathered: dict[Kind, tuple[str, ...]] = {}
        for kind, exports in groupby(EXPORTS, key=lambda export: export.kind):
            names = re.compile("|".join(export.names for export in exports))
            found = [name for name in self.files if names.fullmatch(name)]
            plain = [name for name in found if "/" not in name]
            single = [name for name in found if "/" in name]
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
    progress: Callable[[str], None] = lambda _: None,
) -> Build:
    """Check a unit and write every file of it into a folder.

    ``parts`` says whether the files of single parts, and the workings in the lists, are as
    ``cut`` (what a machine gets: less edging, with what is trimmed later) or ``finished``.
    Findings stop nothing: they are written beside the files and returned.  Files of an
    earlier build that haven't been changed since are replaced; anything else is left alone.
    ``progress`` is told each step as it begins.

    Raises:
        ProblemsError: the folder can't be written, or something of the user's is in the way,
            or SOURCE_DATE_EPOCH is set and is no time; nothing is written then.
        ValueError: the workings of a part leave no single solid, or ``parts`` is neither kind.
    """
    if parts not in get_args(PartsKind):
        raise ValueError(f"parts are 'cut' or 'finished', not {parts!r}")
    target = Path(folder)
    # Refuse before the work rather than after it.
    time_stamp(unit)
    look_before(target, ours=BUILD_FILES, beside=beside(BUILD_FILES), again=_written_for(unit))
    laid = laid_unit(unit)  # so that each solid is made once: files have parts as they are laid
    progress(f"building {len(laid.shapes)} solids and looking for collisions")
    findings = (*check_parts(unit), *check_solids(laid))
    wanted = [export for export in EXPORTS if pictures or export.kind is not Kind.PICTURES]
    files = write_exports(wanted, Content(laid, parts, findings, progress), target)
    return Build(target, files, findings)


def write_exports(exports: Sequence[Export], content: Content, folder: Path) -> tuple[str, ...]:
    """Write exports into a folder, all of them or none, in the place of an earlier build.

    Returns:
        The names of the files, sorted; the manifest, which belongs to the folder, is not one.

    Raises:
        ProblemsError: the folder can't be written, or something that isn't ours is in the way.
        ValueError: a part's workings leave no single solid.
    """
    again = _written_for(content.unit)
    with whole_or_nothing(
        folder, ours=BUILD_FILES, beside=beside(BUILD_FILES), again=again
    ) as staging:
        for kind, rows in groupby(exports, key=lambda export: export.kind):
            content.progress(f"writing {kind}")
            for export in rows:
                export.write(content, staging)
        names = (path.relative_to(staging) for path in staging.rglob("*") if path.is_file())
        return tuple(sorted(name.as_posix() for name in names))


def _written_for(unit: Unit) -> Callable[[str], bool]:
    """Whether a file of the last build will most likely be written for this unit too."""
    refs = {part.ref for part in unit.parts}

    def again(name: str) -> bool:
        piece = _REF.match(name.rsplit("/", 1)[-1])
        return "/" not in name or (piece is not None and piece[0] in refs)

    return again
