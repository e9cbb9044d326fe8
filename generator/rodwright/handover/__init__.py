"""Handover: the files that leave the workshop's computer."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from pathlib import Path
from typing import get_args

from rodwright.checks.findings import Finding
from rodwright.handover.shop_part import PartsKind
from rodwright.unit import Unit

__all__ = ["look_before", "write_build"]

_OF_A_PIECE = re.compile("[A-Z]+[0-9]+")
BUILD_FILES = re.compile(
    r"(?:parts-list|hardware|edges)\.(?:csv|xlsx|json)|(?:unit|findings)\.(?:json|step|stl|glb)"
    r"|(?:assembled|exploded|opened|views)[a-z0-9-]*\.(?:png|svg)"
    rf"|parts/(?:[^/]+/)?{_OF_A_PIECE.pattern}[^/]*\.(?:step|stl)"
)
"""The names that files of a build have: nothing of another name is ever taken for one."""

Extra = Callable[[Unit, Path], object]
"""Something else that writes files of a unit into a folder."""


def write_build(
    unit: Unit,
    folder: Path,
    *,
    parts: PartsKind = "cut",
    findings: Sequence[Finding] = (),
    extras: Sequence[Extra] = (),
    progress: Callable[[str], None] | None = None,
) -> tuple[Path, ...]:
    """Write every file of a unit into ``folder``, whole or not at all.

    Lists, the whole model, the findings, then STEP, GLB and STL of the unit, and STEP and
    STL of each row of the parts list under ``parts/``, by stock; these and the list's workings
    are as cut or finished, as ``parts`` says.  Parts' frames are as :mod:`rodwright.unit.laid` lays
    them.  ``extras`` write into the same staging folder, so that what they make comes and goes
    with the rest.  ``progress`` is told each step as it begins.

    Returns:
        The files, sorted by name; the manifest, which belongs to the folder, is not one.

    Raises:
        ProblemsError: the folder can't be written, or something that isn't ours is in the
            way, or SOURCE_DATE_EPOCH is set and is no time; nothing is written then.
        ValueError: a part's workings leave no single solid, or ``parts`` is neither kind.
    """
    if parts not in get_args(PartsKind):
        raise ValueError(f"parts are 'cut' or 'finished', not {parts!r}")
    # Loaded here, so that the lists can be had without a geometry kernel.
    from rodwright.handover.build import write_files
    from rodwright.handover.output import whole_or_nothing
    from rodwright.handover.stamp import time_stamp

    time_stamp(unit)  # refuse before the work rather than after it
    with whole_or_nothing(folder, ours=BUILD_FILES, again=_written_for(unit)) as staging:
        write_files(unit, staging, parts, findings, progress or _silent)
        for extra in extras:
            extra(unit, staging)
        names = sorted(
            path.relative_to(staging).as_posix() for path in staging.rglob("*") if path.is_file()
        )
    return tuple(folder / name for name in names)


def look_before(unit: Unit, folder: Path) -> None:
    """Refuse, before any work is done, a folder that the build can't be put into as it is.

    What a killed build left there is put right first.

    Raises:
        ProblemsError: a file of the last build was changed, the folder can't be used, or
            SOURCE_DATE_EPOCH is set and is no time.
    """
    from rodwright.handover import output
    from rodwright.handover.stamp import time_stamp

    time_stamp(unit)
    output.look_before(folder, ours=BUILD_FILES, again=_written_for(unit))


def _written_for(unit: Unit) -> Callable[[str], bool]:
    """Whether a file of the last build will most likely be written for this unit too."""
    refs = {part.ref for part in unit.parts}

    def again(name: str) -> bool:
        piece = _OF_A_PIECE.match(name.rsplit("/", 1)[-1])
        return "/" not in name or (piece is not None and piece[0] in refs)

    return again


def _silent(what: str) -> None:
    """Progress that nobody watches."""
