"""Handover: the files that leave the workshop's computer."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path

from rodwright.checks.findings import Finding
from rodwright.handover.shop_part import PartsKind
from rodwright.parts import Unit

__all__ = ["write_build"]

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
    are as cut or finished, as ``parts`` says.  Parts' frames are as :mod:`rodwright.laid` lays
    them.  ``extras`` write into the same
    staging folder, so that what they make comes and goes with the rest.  ``progress`` is
    told each step as it begins.

    Returns:
        The files, sorted by name; the manifest, which belongs to the folder, is not one.

    Raises:
        ProblemsError: the folder can't be written, or something that isn't ours is in the
            way, or SOURCE_DATE_EPOCH is wanted and is no time; nothing is written then.
        ValueError: a part's workings leave no single solid.
    """
    # Loaded here, so that the lists can be had without a geometry kernel.
    from rodwright.handover.build import write_files
    from rodwright.handover.output import whole_or_nothing
    from rodwright.handover.stamp import time_stamp

    time_stamp(unit)  # refuse before the work rather than after it
    with whole_or_nothing(folder) as staging:
        write_files(unit, staging, parts, findings, progress or _silent)
        for extra in extras:
            extra(unit, staging)
        names = sorted(
            path.relative_to(staging).as_posix() for path in staging.rglob("*") if path.is_file()
        )
    return tuple(folder / name for name in names)


def _silent(what: str) -> None:
    """Progress that nobody watches."""
