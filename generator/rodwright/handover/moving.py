"""Putting new files in the place of old ones, so that no moment is a bad one to be killed at.

All is done in a hidden work folder: ``new`` holds what comes, ``old`` what went.  A journal,
written before the first move, says what is moved where; the new manifest is moved last.  While
it hasn't been, everything is taken back; once it has been, only the work folder is left to clear.
Whoever finds the work folder of a process that is no more does the one or the other.
"""

from __future__ import annotations

import hashlib
import json
import os
import shutil
import sys
import tempfile
from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path, PurePosixPath

if sys.platform != "win32":
    import fcntl

MANIFEST = "manifest.json"
NEW, OLD = "new", "old"
PREFIX = ".rodwright-"
"""Names of work folders begin like this."""
_JOURNAL, _DRAFT, _LOCK = "journal.json", "journal.new", "lock"
_MINE: dict[Path, int] = {}
"""Work folders of this process, with the open file that locks each."""


@dataclass(frozen=True, slots=True)
class Journal:
    """What is moved: names relative to the target.

    ``old`` leave the target, ``new`` come into it, with their SHA-256; ``made`` are the
    folders in it that have to be made.  ``target`` is seen from the work folder's place.
    """

    target: str
    old: tuple[str, ...]
    new: Mapping[str, str]
    made: tuple[str, ...]


class StuckError(Exception):
    """Raised where the last build can't be put back: something else has come in its way."""

    def __init__(self, path: Path, kept: Path) -> None:
        self.path, self.kept = path, kept
        super().__init__(f"{path} is where {kept} belongs")


def digest(path: Path) -> str:
    """A file's SHA-256."""
    with path.open("rb") as file:
        return hashlib.file_digest(file, "sha256").hexdigest()


def is_plain(name: str) -> bool:
    """Whether a name can only mean something inside the folder it is relative to."""
    path = PurePosixPath(name)
    return bool(path.parts) and not path.is_absolute() and ".." not in path.parts


# --- work folders ----------------------------------------------------------------------


def make_work_folder(place: Path) -> Path:
    """A fresh work folder, which is this process's until it is settled or the process ends."""
    while True:
        work = Path(tempfile.mkdtemp(prefix=PREFIX, dir=place))
        # Somebody who clears up may take it for left behind until it is locked.
        with suppress(FileNotFoundError):
            lock = os.open(work / _LOCK, os.O_CREAT | os.O_RDWR, 0o600)
            if _locked(lock) and (work / _LOCK).exists():
                _MINE[work] = lock
                return work
            os.close(lock)


def clear_left_behind(place: Path, may: Callable[[str], bool]) -> bool:
    """Settle every work folder in ``place`` whose process is no more; whether others are left.

    ``may`` says whether a name is one that may be taken out of a target.

    Raises:
        StuckError: the last build can't be put back.
    """
    alive = False
    for work in sorted(place.glob(f"{PREFIX}*")):
        if work.is_symlink() or not work.is_dir():
            continue
        if work in _MINE:
            alive = True
            continue
        try:
            lock = os.open(work / _LOCK, os.O_RDWR)
        except OSError:
            with suppress(OSError):  # one that never got its lock is empty
                work.rmdir()
            continue
        try:
            if _locked(lock):
                _settle(work, may)
            else:
                alive = True
        finally:
            os.close(lock)
    return alive


def settle(work: Path, may: Callable[[str], bool]) -> None:
    """Take back what wasn't moved to its end, and clear a work folder of this process away.

    Raises:
        StuckError: the last build can't be put back.
    """
    try:
        _settle(work, may)
    finally:
        os.close(_MINE.pop(work))


def _locked(lock: int) -> bool:
    """Lock an open file for this process alone, if nobody has; the lock ends with the process.

    Where there are no such locks, a work folder is taken for left behind.
    """
    if sys.platform == "win32":
        return True
    try:
        fcntl.lockf(lock, fcntl.LOCK_EX | fcntl.LOCK_NB)
    except (BlockingIOError, PermissionError):
        return False
    except OSError:
        return True
    return True


# --- moves -----------------------------------------------------------------------------


def move_all(work: Path, target: Path, old: Sequence[str], new: Mapping[str, str]) -> None:
    """Move ``old`` out of the target and ``new``, then the manifest, into it.

    What is raised leaves things as they are; settling the work folder takes them back.
    """
    if not target.exists():
        (work / NEW).replace(target)
        return
    made = dict.fromkeys(
        folder.relative_to(target).as_posix()
        for name in new
        for folder in (target / name).parents
        if folder != target and folder.is_relative_to(target) and not folder.exists()
    )
    place = work.parent
    _write_journal(
        work,
        Journal("." if place == target else target.name, tuple(old), dict(new), tuple(made)),
    )
    for name in old:
        _move(target / name, work / OLD / name)
    for name in (*new, MANIFEST):
        _move(work / NEW / name, target / name)


def _move(source: Path, goal: Path) -> None:
    goal.parent.mkdir(parents=True, exist_ok=True)
    source.replace(goal)


def _settle(work: Path, may: Callable[[str], bool]) -> None:
    journal = _read_journal(work)
    if journal is not None:
        target = work.parent / journal.target
        if (work / NEW / MANIFEST).exists():
            _take_back(journal, work, target, may)
        _prune(target, journal)
    # Without a journal nothing more is taken back; the lock goes last.
    for name in (_JOURNAL, _DRAFT):
        (work / name).unlink(missing_ok=True)
    for name in (NEW, OLD):
        shutil.rmtree(work / name, ignore_errors=True)
    with suppress(OSError):
        (work / _LOCK).unlink(missing_ok=True)
        work.rmdir()


def _take_back(journal: Journal, work: Path, target: Path, may: Callable[[str], bool]) -> None:
    """Put the target back as it was; may be broken off anywhere and done again.

    Whether a file came in or went out is seen from what is still in the work folder, so what
    has been put back already is left alone.
    """
    for name, sha in journal.new.items():
        came = not (work / NEW / name).exists()
        back = name not in journal.old or (work / OLD / name).exists()
        path = target / name
        if came and back and may(name) and _is(path, sha):
            path.unlink()
    for name in journal.old:
        kept, path = work / OLD / name, target / name
        if not kept.exists():
            continue
        if path.is_symlink() or path.exists():
            raise StuckError(path, kept)
        _move(kept, path)


def _is(path: Path, sha: str) -> bool:
    return path.is_file() and not path.is_symlink() and digest(path) == sha


def _prune(target: Path, journal: Journal) -> None:
    """Remove the folders that are empty now, if files of ours were in them."""
    names = [*journal.made, *(PurePosixPath(name).parent.as_posix() for name in journal.old)]
    folders = {
        folder
        for name in names
        for folder in (target / name, *(target / name).parents)
        if folder != target and folder.is_relative_to(target)
    }
    for folder in sorted(folders, key=lambda each: len(each.parts), reverse=True):
        with suppress(OSError):  # not empty, or gone
            folder.rmdir()


# --- the journal -----------------------------------------------------------------------


def _write_journal(work: Path, journal: Journal) -> None:
    document = {
        "target": journal.target,
        "old": list(journal.old),
        "new": dict(journal.new),
        "made": list(journal.made),
    }
    draft = work / _DRAFT
    with draft.open("w", encoding="utf-8") as file:
        json.dump(document, file)
        file.flush()
        os.fsync(file.fileno())
    draft.replace(work / _JOURNAL)


def _read_journal(work: Path) -> Journal | None:
    """The journal of a work folder; None where there is none, or it could lead elsewhere."""
    try:
        document = json.loads((work / _JOURNAL).read_bytes())
        target, old, new, made = (document[key] for key in ("target", "old", "new", "made"))
        names = [*old, *new, *made]
        shas = list(new.values())
    except (OSError, ValueError, LookupError, TypeError, AttributeError):
        return None
    if not all(isinstance(each, str) for each in (target, *names, *shas)):
        return None
    if target not in (".", *(PurePosixPath(target).name,)) or not all(map(is_plain, names)):
        return None
    return Journal(target, tuple(old), new, tuple(made))


def files_in(folder: Path) -> Iterator[str]:
    """Names of the files below a folder, sorted."""
    for path in sorted(folder.rglob("*")):
        if path.is_file():
            yield path.relative_to(folder).as_posix()
