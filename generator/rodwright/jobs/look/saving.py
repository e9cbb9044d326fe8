"""A file's content replaced, whole or not at all, with all else of the file kept."""

from __future__ import annotations

import os
import shutil
import stat
import tempfile
from contextlib import suppress
from io import RawIOBase
from pathlib import Path

from rodwright.problems import Problem, ProblemsError


def replace_content(path: Path, content: bytes) -> None:
    """Put new content into a file that is there; a link stays a link, and what it leads to is
    changed.

    Its mode, owner and attributes stay.  The new file is written beside it and moved into its
    place; where that would lose something (other names of the same file, an owner that can't be
    given, a folder that can't be written to) it is written over.

    Raises:
        ProblemsError: it isn't a file any more, it may not be written, or the disk is full.
    """
    try:
        target = path.resolve(strict=True)
        now = target.stat()
        if not stat.S_ISREG(now.st_mode):
            raise _unwritable(path, "it isn't a file")
        if not now.st_mode & 0o222 or not os.access(target, os.W_OK):
            raise _unwritable(path, "it is write-protected")
        if now.st_nlink > 1 or not _moved_in(target, content, now):
            _write_over(target, content)
    except OSError as error:
        raise _unwritable(path, error.strerror or str(error)) from error


def _moved_in(target: Path, content: bytes, now: os.stat_result) -> bool:
    """Whether a new file, in all else like the old one, now stands in its place."""
    try:
        handle, name = tempfile.mkstemp(prefix=f".{target.name}-", dir=target.parent)
    except PermissionError:
        return False
    new = Path(name)
    try:
        with os.fdopen(handle, "wb") as file:
            file.write(content)
            file.flush()
            os.fsync(file.fileno())
        shutil.copystat(target, new)
        os.utime(new)
        if not _owned_alike(new, now):
            new.unlink()
            return False
        new.replace(target)
    except BaseException:
        with suppress(OSError):
            new.unlink()
        raise
    return True


def _write_over(target: Path, content: bytes) -> None:
    """Write into the file that is there; where that fails it holds again what it held."""
    with target.open("r+b", buffering=0) as file:
        before = file.read()
        try:
            _put(file, content)
        except OSError:
            # It has the room that it had: nothing was cut off yet.
            _put(file, before)
            raise


def _put(file: RawIOBase, content: bytes) -> None:
    file.seek(0)
    rest = memoryview(content)
    while rest:
        rest = rest[file.write(rest) :]
    file.truncate()
    os.fsync(file.fileno())


def _owned_alike(new: Path, old: os.stat_result) -> bool:
    own = new.stat()
    if (own.st_uid, own.st_gid) == (old.st_uid, old.st_gid):
        return True
    try:
        os.chown(new, old.st_uid, old.st_gid)
        # Changing the owner takes away the bits that run a file as its owner.
        new.chmod(stat.S_IMODE(old.st_mode))
    except (PermissionError, AttributeError):
        return False
    return True


def _unwritable(path: Path, why: str) -> ProblemsError:
    return ProblemsError(
        [
            Problem(
                f"`{path}` can't be written: {why}",
                "Check who may write to it, and that the disk has room; it is as it was.",
            )
        ]
    )
