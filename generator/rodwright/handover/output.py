"""Writing whole or not at all.

A build is made in a staging folder and moved into place at the end.  A `manifest.json` in
the target lists what was written with its SHA-256; only files that are listed there and
unchanged since are ever replaced or removed.
"""

from __future__ import annotations

import errno
import hashlib
import json
import shutil
import tempfile
from collections.abc import Iterator, Mapping
from contextlib import contextmanager, suppress
from pathlib import Path, PurePosixPath

from rodwright.problems import Problem, ProblemsError

MANIFEST = "manifest.json"
_MAKER = "Rodwright"
_FULL = (errno.ENOSPC, errno.EDQUOT)


@contextmanager
def whole_or_nothing(target: Path) -> Iterator[Path]:
    """A fresh folder whose files are moved into ``target`` when the block ends well.

    When the block raises, or the files can't all be put in place, the target is left as it
    was.  Files in the target that an earlier build listed in its manifest, unchanged since,
    are replaced, or removed where there is no new one; all others are left alone.

    Raises:
        ProblemsError: a file that isn't ours (or was changed since) is in the way, or the
            files can't be written.
    """
    target = target.absolute()
    made = _missing_folders(target.parent)
    try:
        target.parent.mkdir(parents=True, exist_ok=True)
        # Inside a target that is there already: it may be a mounted disk, which nothing can
        # be moved onto from beside it, or the only folder the user may write to.
        place = target if target.is_dir() else target.parent
        work = Path(tempfile.mkdtemp(prefix=f".{target.name}-", dir=place))
    except OSError as error:
        raise _unwritable(target, error) from error
    done = False
    try:
        staging = work / "new"
        staging.mkdir()
        _old_files(target)  # refuse before the work rather than after it
        yield staging
        _put_in_place(staging, target, work / "old")
        done = True
    except OSError as error:
        if _within(work, error) or _within(target, error) or error.errno in _FULL:
            raise _unwritable(target, error) from error
        raise
    finally:
        shutil.rmtree(work, ignore_errors=True)
        if not done:
            for folder in made:
                with suppress(OSError):  # something else may have moved in meanwhile
                    folder.rmdir()


def _missing_folders(folder: Path) -> list[Path]:
    """The folders that would have to be made, the innermost first."""
    missing = []
    while not folder.exists() and folder != folder.parent:
        missing.append(folder)
        folder = folder.parent
    return missing


def _within(folder: Path, error: OSError) -> bool:
    return isinstance(error.filename, str | Path) and Path(error.filename).is_relative_to(folder)


def _unwritable(target: Path, error: OSError) -> ProblemsError:
    reason = error.strerror or str(error)
    if error.errno in _FULL:
        remedy = "Free some space on the disk, or give a folder on another one."
    else:
        remedy = "Give a folder that you may write to."
    return ProblemsError([Problem(f"`{target}` can't be written: {reason}", remedy)])


def _old_files(target: Path) -> dict[str, str]:
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
    return files


def _read_manifest(manifest: Path) -> dict[str, str] | None:
    """The files of a manifest of ours; None if it is something else."""
    if manifest.is_symlink() or not manifest.is_file():
        return None
    try:
        document = json.loads(manifest.read_bytes())
    except ValueError:
        return None
    if not isinstance(document, dict) or document.get("made_by") != _MAKER:
        return None
    files = document.get("files")
    if not isinstance(files, dict):
        return None
    for name, digest in files.items():
        path = PurePosixPath(name)
        if path.is_absolute() or ".." in path.parts or not isinstance(digest, str):
            return None
    return files


def _put_in_place(staging: Path, target: Path, backup: Path) -> None:
    new = {
        path.relative_to(staging).as_posix(): _digest(path)
        for path in sorted(staging.rglob("*"))
        if path.is_file()
    }
    document = {"made_by": _MAKER, "files": new}
    (staging / MANIFEST).write_text(json.dumps(document, indent=1) + "\n", encoding="utf-8")
    old = _old_files(target)
    if not target.exists():
        staging.rename(target)
        return
    leaving = _leaving(target, old, new)
    moved: list[tuple[Path, Path]] = []
    made: list[Path] = []
    try:
        # The manifest goes first and comes last: without it, nothing left half done is
        # taken for the whole.
        for name in leaving:
            _move(target / name, backup / name, moved, made)
        for name in (*new, MANIFEST):
            _move(staging / name, target / name, moved, made)
    except BaseException:
        for source, goal in reversed(moved):
            goal.replace(source)
        for folder in made:
            if folder.is_relative_to(target):
                folder.rmdir()
        raise
    for folder in sorted({(target / name).parent for name in leaving}, reverse=True):
        if folder != target and not any(folder.iterdir()):
            folder.rmdir()


def _move(source: Path, goal: Path, moved: list[tuple[Path, Path]], made: list[Path]) -> None:
    folders = _missing_folders(goal.parent)
    goal.parent.mkdir(parents=True, exist_ok=True)
    made[:0] = folders
    source.replace(goal)
    moved.append((source, goal))


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
    return path.is_file() and not path.is_symlink() and _digest(path) in (old, new)


def _in_the_way(path: Path) -> Problem:
    return Problem(
        f"`{path}` is in the way: it isn't as the last build left it",
        "Move it away or give another folder; nothing has been written.",
    )


def _digest(path: Path) -> str:
    with path.open("rb") as file:
        return hashlib.file_digest(file, "sha256").hexdigest()
