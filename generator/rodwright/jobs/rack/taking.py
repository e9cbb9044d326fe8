"""The rack after a plan was cut: counts go down, offcuts come in, and no plan is taken twice."""

from __future__ import annotations

import json
import os
import sys
import tempfile
from collections.abc import Iterator, Mapping
from contextlib import contextmanager, suppress
from dataclasses import dataclass, replace
from pathlib import Path
from typing import NoReturn

from rodwright.cutting.rack import Rack
from rodwright.cutting.taking import Comes, Taking, Used, taking_of
from rodwright.jobs.rack.editing import CannotEditError, Changes, edited_in_place, written_anew
from rodwright.jobs.rack.offcuts import offcut_keys
from rodwright.jobs.rack.reading import RackFile, parse_rack
from rodwright.problems import KeyPath, Problem, ProblemsError
from rodwright.wishes.reading.documents import read_text
from rodwright.wishes.reading.file_kinds import RACK

if sys.platform != "win32":
    import fcntl

KEY = "rack"
"""Where a plan's document says what it takes."""


@dataclass(frozen=True, slots=True)
class Taken:
    """A rack file that was changed: ``used`` and ``left`` are counts by the names of entries that
    were cut, ``came`` the offcuts that went in."""

    rack: Path
    plan: str
    used: Mapping[str, int]
    left: Mapping[str, int]
    came: tuple[Comes, ...]


def take_from_rack(plan: str | Path, rack: str | Path | None = None) -> Taken:
    """Takes what a plan uses out of its rack file, and puts the offcuts that it leaves in.

    ``plan`` is the `cut.json` of a plan made from a rack; ``rack`` is the rack file, where it isn't
    any more where the plan found it.  The file is written whole or not at all, and notes the
    plan, so that it is never taken twice.

    Raises:
        ProblemsError: the plan or the rack can't be read, the plan was taken already, or what it
            uses isn't there any more or was changed since; nothing is written then.
    """
    taking = _read_taking(Path(plan))
    path = Path(rack) if rack is not None else _beside(Path(plan), taking)
    if not path.exists():
        _stop(
            f"there is no rack file `{path}`, which the plan was made from",
            f"Say where it is: rodwright rack take {plan} --rack RACK.yaml",
        )
    path = path.resolve() if path.is_symlink() else path
    with _held(path):
        text = read_text(path, RACK)
        before = parse_rack(text, path)
        _refuse(before, taking, path)
        after = _changed(before.rack, taking, path)
        _write(path, after, with_mark=_has_mark(path))
    used = {each.entry: each.count for each in _together(taking)}
    counts = {each.name: each.piece.count for each in before.rack.entries}
    left = {name: counts[name] - count for name, count in used.items()}
    return Taken(path, taking.plan, used, left, taking.comes)


# --- the plan --------------------------------------------------------------------------


def _read_taking(plan: Path) -> Taking:
    try:
        document = json.loads(plan.read_bytes())
    except FileNotFoundError:
        _stop(f"there is no file `{plan}`", "Give the `cut.json` that `rodwright cut -o` wrote.")
    except OSError as error:
        _stop(f"`{plan}` can't be opened: {error.strerror}", "Give the `cut.json` of a plan.")
    except (ValueError, RecursionError):
        _stop(
            f"`{plan}` isn't a plan: it can't be read as JSON",
            "Give the `cut.json` that `rodwright cut -o` wrote.",
        )
    if not isinstance(document, dict) or KEY not in document:
        _stop(
            f"`{plan}` isn't a plan: it doesn't say what is taken from a rack",
            "Give the `cut.json` that `rodwright cut -o` wrote.",
        )
    if document[KEY] is None:
        _stop(
            f"the plan `{plan}` was made without a rack file, so there is nothing to take",
            "Plan it from your rack: rodwright cut SPEC --rack RACK.yaml -o out/",
        )
    try:
        taking = taking_of(document[KEY])
        if len({_plain(each.name) for each in taking.comes}) < len(taking.comes):
            raise ValueError("two offcuts have one name")
    except ValueError as error:
        _stop(f"`{plan}` was changed, or isn't whole: {error}", "Make the plan anew.")
    return taking


def _beside(plan: Path, taking: Taking) -> Path:
    """The rack file that a plan names, seen from its own folder."""
    return Path(os.path.normpath(plan.parent / taking.rack))


def _stop(message: str, remedy: str) -> NoReturn:
    raise ProblemsError([Problem(message, remedy)])


# --- whether it can be taken -----------------------------------------------------------

_ANEW = "Make the plan anew from the rack as it is now; nothing has been written."


def _refuse(before: RackFile, taking: Taking, path: Path) -> None:
    """Tell everything that keeps a plan from being taken."""
    rack, problems = before.rack, []

    def add(where: KeyPath, message: str, remedy: str, *, key: bool = False) -> None:
        places = before.places
        line, column = places.of_key(where) if key else places.of_value(where)
        problems.append(Problem(message, remedy, where, str(path), line, column))

    if taking.plan in rack.taken:
        add(
            ("taken", rack.taken.index(taking.plan)),
            "this plan was taken out of the rack already",
            "Nothing is to be done. If it is cut a second time, make the plan anew.",
        )
        raise ProblemsError(problems)
    for use in _together(taking):
        entry = rack.entry(use.entry)
        if entry is None:
            add(
                ("stock",), f"`{use.entry}`, which the plan cuts, isn't in the rack any more", _ANEW
            )
        elif entry.fingerprint != use.was:
            message = f"`{use.entry}` was changed since the plan was made"
            add(("stock", use.entry), message, _ANEW, key=True)
        elif entry.piece.count < use.count:
            there = entry.piece.count
            message = f"the plan cuts {use.count} of `{use.entry}`, and there {_is(there)}"
            add(("stock", use.entry, "count"), message, _ANEW)
    names = {_plain(entry.name): entry.name for entry in rack.entries}
    for come in taking.comes:
        other = names.get(_plain(come.name))
        if other is not None:
            add(
                ("stock", other),
                f"`{other}` is called as one of the plan's offcuts",
                "Call it by another name, here and on its label.",
                key=True,
            )
    if problems:
        raise ProblemsError(problems)


def _together(taking: Taking) -> list[Used]:
    """What is used of each entry in all."""
    found: dict[tuple[str, str], Used] = {}
    for use in taking.uses:
        key = (use.entry, use.was)
        so_far = found[key].count if key in found else 0
        found[key] = replace(use, count=use.count + so_far)
    return list(found.values())


def _is(count: int) -> str:
    return "is none" if not count else f"is {count}" if count == 1 else f"are {count}"


def _plain(name: str) -> str:
    return "".join(name.casefold().split())


# --- the rack afterwards ---------------------------------------------------------------


def _changed(rack: Rack, taking: Taking, path: Path) -> str:
    """The text of the rack file once a plan was taken.

    It is read again before it is written: what doesn't read as the rack that it should be isn't.
    """
    wanted = {entry.name: entry.piece.count for entry in rack.entries}
    gone = []
    counts = {}
    for use in _together(taking):
        left = wanted[use.entry] - use.count
        entry = rack.entry(use.entry)
        if left == 0 and entry is not None and entry.price is None:
            gone.append(use.entry)
            del wanted[use.entry]
        else:
            counts[use.entry] = wanted[use.entry] = left
    come = {each.name: offcut_keys(each, rack.unit) for each in taking.comes}
    wanted |= dict.fromkeys(come, 1)
    changes = Changes(counts, gone, come, taking.plan)
    for edit in (edited_in_place, written_anew):
        with suppress(CannotEditError, ProblemsError):
            text = edit(rack.text, changes)
            after = parse_rack(text, path).rack
            if _as_wanted(rack, after, wanted, taking.plan):
                return text
    _stop(
        f"`{path}` isn't laid out so that it can be changed",
        "Write every entry of `stock` out, without `&` and `*`, and with a `count` of its own.",
    )


def _as_wanted(before: Rack, after: Rack, wanted: Mapping[str, int], plan: str) -> bool:
    """Whether a rack is as it should be: the right counts, and nothing else changed."""
    same = all(
        replace(entry, piece=replace(entry.piece, count=old.piece.count)) == old
        for entry in after.entries
        if (old := before.entry(entry.name)) is not None
    )
    counts = {entry.name: entry.piece.count for entry in after.entries}
    settings = (before.unit, before.saws, before.keep, before.keep_board, before.first_cut)
    kept = settings == (after.unit, after.saws, after.keep, after.keep_board, after.first_cut)
    return same and kept and counts == wanted and after.taken == (*before.taken, plan)


# --- writing ---------------------------------------------------------------------------


@contextmanager
def _held(path: Path) -> Iterator[None]:
    """Keep a file from being changed by another process of ours meanwhile.

    Raises:
        ProblemsError: it is being changed.
    """
    if sys.platform == "win32":
        yield
        return
    try:
        file = os.open(path, os.O_RDWR)
    except OSError as error:
        _stop(f"`{path}` can't be changed: {error.strerror}", "Check who may write to it.")
    try:
        try:
            # Not lockf: its lock ends when the file is read and closed.
            fcntl.flock(file, fcntl.LOCK_EX | fcntl.LOCK_NB)
        except (BlockingIOError, PermissionError):
            _stop(f"`{path}` is being changed at this moment", "Try again once that is done.")
        if not os.path.samestat(os.fstat(file), path.stat()):
            _stop(f"`{path}` was changed at this moment", "Try again.")
        yield
    finally:
        os.close(file)


def _has_mark(path: Path) -> bool:
    with path.open("rb") as file:
        return file.read(3) == b"\xef\xbb\xbf"


def _write(path: Path, text: str, *, with_mark: bool) -> None:
    """Put a new text in the place of a file, whole or not at all."""
    content = text.encode("utf-8-sig" if with_mark else "utf-8")
    try:
        handle, name = tempfile.mkstemp(prefix=f".{path.name}-", dir=path.parent)
        try:
            with os.fdopen(handle, "wb") as file:
                file.write(content)
                file.flush()
                os.fsync(file.fileno())
            Path(name).chmod(path.stat().st_mode & 0o7777)
            Path(name).replace(path)
        except BaseException:
            with suppress(OSError):
                Path(name).unlink()
            raise
    except OSError as error:
        _stop(
            f"`{path}` can't be written: {error.strerror}",
            "Free some space, or check who may write to its folder; it is as it was.",
        )
