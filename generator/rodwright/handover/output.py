"""Writing whole or not at all.

A build is made in a staging folder and moved into place at the end.  A `manifest.json` in
the target lists what was written with its SHA-256; only files that are listed there and
unchanged since are ever replaced or removed.
"""

from __future__ import annotations

import errno
import json
import re
from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager, suppress
from pathlib import Path, PurePosixPath

from rodwright.handover.moving import (
    MANIFEST,
    NEW,
    StuckError,
    clear_left_behind,
    digest,
    files_in,
    is_plain,
    make_work_folder,
    move_all,
    settle,
)
from rodwright.problems import Problem, ProblemsError

__all__ = ["MANIFEST", "look_before", "whole_or_nothing"]

_MAKER = "Rodwright"
_FULL = (errno.ENOSPC, errno.EDQUOT)
_ANYTHING = re.compile(".*", re.DOTALL)
_NOTHING = re.compile("(?!)")


@contextmanager
def whole_or_nothing(
    target: Path,
    *,
    ours: re.Pattern[str] = _ANYTHING,
    beside: re.Pattern[str] = _NOTHING,
    again: Callable[[str], object] | None = None,
) -> Iterator[Path]:
    """A fresh folder whose files are moved into ``target`` when the block ends well.

    When the block raises, or the files can't all be put in place, the target is left as it
    was.  Files in the target that an earlier build listed in its manifest, unchanged since,
    are replaced, or removed where there is no new one; all others are left alone.  A process
    that is killed leaves the last build, the new one, or something that the next call mends.

    A manifest may have been made by anyone, so it is believed only where a whole name matches
    ``ours``: nothing else is touched, whatever it says.  Names that match ``beside`` are of
    something else that writes into the same folder whole or not at all: they stay listed as they
    are.  ``again`` tells which names of the last build will be written again, as far as that is
    known before the work: one of these that was changed is refused before the block begins.

    Raises:
        ProblemsError: a file that isn't ours (or was changed since) is in the way, another
            process writes to the target, or the files can't be written.
    """
    target = target.absolute()
    may, mends = _matching(ours), _matching(ours, beside)
    made: list[Path] = []
    try:
        made = _missing_folders(target.parent)
        target.parent.mkdir(parents=True, exist_ok=True)
        _clear(target, mends)
        # Inside a target that is there already: it may be a mounted disk, which nothing can
        # be moved onto from beside it, or the only folder the user may write to.
        work = make_work_folder(target if target.is_dir() else target.parent)
    except OSError as error:
        _unmake(made)
        raise _unwritable(target, error) from error
    done = False
    try:
        staging = work / NEW
        staging.mkdir()
        # Refuse before the work rather than after it.
        _refuse_changed(target, _old_files(target, may), again)
        yield staging
        _put_in_place(work, target, may, _matching(beside))
        done = True
    except OSError as error:
        if _within(work, error) or _within(target, error) or error.errno in _FULL:
            raise _unwritable(target, error) from error
        raise
    finally:
        _settle(work, target, mends)
        if not done:
            _unmake(made)


def look_before(
    target: Path,
    *,
    ours: re.Pattern[str] = _ANYTHING,
    beside: re.Pattern[str] = _NOTHING,
    again: Callable[[str], object] | None = None,
) -> None:
    """Mend and refuse what :func:`whole_or_nothing` would, for work that is done before it.

    Raises:
        ProblemsError: as there, as far as it is known before anything is written.
    """
    target, may = target.absolute(), _matching(ours)
    try:
        _clear(target, _matching(ours, beside))
        _refuse_changed(target, _old_files(target, may), again)
    except OSError as error:
        raise _unwritable(target, error) from error


def _matching(*patterns: re.Pattern[str]) -> Callable[[str], bool]:
    return lambda name: name == MANIFEST or any(each.fullmatch(name) for each in patterns)


def _clear(target: Path, may: Callable[[str], bool]) -> None:
    """Mend what a killed process left in the target or beside it."""
    try:
        clear_left_behind(target.parent, may)
        busy = target.is_dir() and clear_left_behind(target, may)
    except StuckError as error:
        raise ProblemsError([_stuck(error)]) from None
    if busy:
        raise ProblemsError(
            [
                Problem(
                    f"something else is being written to `{target}` at this moment",
                    "Wait until it is done, or give another folder.",
                )
            ]
        )


def _settle(work: Path, target: Path, may: Callable[[str], bool]) -> None:
    try:
        settle(work, may)
    except StuckError as error:
        raise ProblemsError([_stuck(error)]) from None
    except OSError as error:
        raise _unwritable(target, error) from error


def _stuck(error: StuckError) -> Problem:
    return Problem(
        f"a build was broken off, and `{error.path}`, which has come since, is in the way of the "
        f"one before it",
        f"Move it away; the file that belongs there is `{error.kept}`, and the next build puts it "
        "back.",
    )


def _missing_folders(folder: Path) -> list[Path]:
    """The folders that would have to be made, the innermost first."""
    missing = []
    while not folder.exists() and folder != folder.parent:
        missing.append(folder)
        folder = folder.parent
    return missing


def _unmake(folders: list[Path]) -> None:
    for folder in folders:
        with suppress(OSError):  # something else may have moved in meanwhile
            folder.rmdir()


def _within(folder: Path, error: OSError) -> bool:
    return isinstance(error.filename, str | Path) and Path(error.filename).is_relative_to(folder)


def _unwritable(target: Path, error: OSError) -> ProblemsError:
    reason = error.strerror or str(error)
    if error.errno in _FULL:
        remedy = "Free some space on the disk, or give a folder on another one."
    elif error.errno == errno.ENAMETOOLONG:
        remedy = "Give a shorter name."
    else:
        remedy = "Give a folder that you may write to."
    return ProblemsError([Problem(f"`{target}` can't be written: {reason}", remedy)])


def _old_files(target: Path, may: Callable[[str], bool]) -> dict[str, str]:
    """What the last build wrote: names relative to the target, with their SHA-256."""
    if target.exists() and not target.is_dir():
        raise ProblemsError(
            [Problem(f"`{target}` is a file, not a folder", "Give another name for the folder.")]
        )
    manifest = target / MANIFEST
    if not manifest.is_symlink() and not manifest.exists():
        return {}
    files = _read_manifest(manifest)
    if files is None:
        raise ProblemsError([_in_the_way(manifest)])
    return {name: sha for name, sha in files.items() if may(name)}


def _read_manifest(manifest: Path) -> dict[str, str] | None:
    """The files of a manifest of ours; None if it is something else."""
    if manifest.is_symlink() or not manifest.is_file():
        return None
    try:
        document = json.loads(manifest.read_bytes())
    except (ValueError, RecursionError):
        return None
    if not isinstance(document, dict) or document.get("made_by") != _MAKER:
        return None
    files = document.get("files")
    if not isinstance(files, dict):
        return None
    if not all(is_plain(name) and isinstance(sha, str) for name, sha in files.items()):
        return None
    return files


def _refuse_changed(
    target: Path, old: Mapping[str, str], again: Callable[[str], object] | None
) -> None:
    """Tell of the files of the last build that were changed and would be written again."""
    changed = [
        target / name
        for name, sha in old.items()
        if again is not None and again(name)
        if (target / name).exists() and not _is_ours(target / name, sha, None)
    ]
    if changed:
        raise ProblemsError([_in_the_way(path) for path in changed])


def _put_in_place(
    work: Path, target: Path, may: Callable[[str], bool], stays: Callable[[str], bool]
) -> None:
    staging = work / NEW
    new = {name: digest(staging / name) for name in files_in(staging)}
    document = {"made_by": _MAKER, "files": _old_files(target, stays) | new}
    (staging / MANIFEST).write_text(json.dumps(document, indent=1) + "\n", encoding="utf-8")
    # The manifest goes first and comes last: without it, nothing left half done is taken for
    # the whole.
    leaving = _leaving(target, _old_files(target, may), new)
    move_all(work, target, leaving, new)


def _leaving(target: Path, old: Mapping[str, str], new: Mapping[str, str]) -> list[str]:
    """The files that make room, manifest first.

    Raises:
        ProblemsError: something else is where a new file or its folder has to go.
    """
    in_the_way: dict[Path, None] = {}
    leaving = [MANIFEST] if (target / MANIFEST).exists() else []
    for name in sorted({*old, *new}):
        path = target / name
        blocked = _blocked_folder(target, name)
        if blocked is not None:
            if name in new:
                in_the_way[blocked] = None
        elif path.is_symlink() or path.exists():
            if _is_ours(path, old.get(name), new.get(name)):
                leaving.append(name)
            elif name in new:
                in_the_way[path] = None
    if in_the_way:
        raise ProblemsError([_in_the_way(path) for path in in_the_way])
    return leaving


def _blocked_folder(target: Path, name: str) -> Path | None:
    """The first thing on the way from the target to a file that isn't a plain folder."""
    folder = target
    for part in PurePosixPath(name).parts[:-1]:
        folder = folder / part
        if folder.is_symlink() or (folder.exists() and not folder.is_dir()):
            return folder
    return None


def _is_ours(path: Path, old: str | None, new: str | None) -> bool:
    """Whether a file may go: as the last build left it, or the same as the new one."""
    return path.is_file() and not path.is_symlink() and digest(path) in (old, new)


def _in_the_way(path: Path) -> Problem:
    return Problem(
        f"`{path}` is in the way: it isn't as the last build left it",
        "Move it away or give another folder; nothing has been written.",
    )
