"""A process killed at any moment leaves the last build, the new one, or what the next one mends.

The process is ended by ``os._exit``, which like SIGKILL runs nothing any more, before every
single call that changes the file system.
"""

from __future__ import annotations

import json
import os
import re
import shutil
from collections.abc import Callable
from contextlib import suppress
from functools import partial
from pathlib import Path

import pytest

from kit.kills import killed_before, moments
from rodwright.handover import moving
from rodwright.handover.moving import PREFIX
from rodwright.handover.output import MANIFEST, whole_or_nothing
from rodwright.problems import ProblemsError

OLD = {"a.txt": "old", "b.txt": "same", "gone/c.txt": "old", "parts/d.txt": "old"}
NEW = {"a.txt": "new", "b.txt": "same", "more/deep/e.txt": "new", "parts/d.txt": "new"}
MINE = {"notes.txt": "mine", "parts/notes.txt": "mine too"}


def build(target: Path, files: dict[str, str]) -> None:
    with whole_or_nothing(target) as staging:
        write(staging, files)


def write(folder: Path, files: dict[str, str]) -> None:
    for name, text in files.items():
        (folder / name).parent.mkdir(parents=True, exist_ok=True)
        (folder / name).write_text(text)


def tree(folder: Path) -> dict[str, str]:
    """Every file below a folder that isn't hidden or a manifest, and every empty folder."""
    found = {}
    for path in sorted(folder.rglob("*")):
        name = path.relative_to(folder).as_posix()
        if any(part.startswith(PREFIX) for part in Path(name).parts) or path.name == MANIFEST:
            continue
        if path.is_file():
            found[name] = path.read_text()
        elif not any(path.iterdir()):
            found[f"{name}/"] = ""
    return found


def left_behind(folder: Path) -> list[Path]:
    return list(folder.rglob(f"{PREFIX}*"))


@pytest.fixture
def fresh(tmp_path: Path) -> Callable[[], Path]:
    """A folder with an old build and the maker's own files, made anew at each call."""
    count = iter(range(10**6))

    def make() -> Path:
        target = tmp_path / str(next(count)) / "out"
        build(target, OLD)
        write(target, MINE)
        return target

    return make


def test_a_rebuild_killed_before_any_change_is_mended_by_the_next_one(
    fresh: Callable[[], Path],
) -> None:
    seen: set[str] = set()
    for number in range(1000):
        target = fresh()
        if not killed_before(number, partial(build, target, NEW)):
            break
        _after_a_kill(target, number, seen)
    assert tree(target) == NEW | MINE
    # Every kind of end was met: the last build untouched, half of the one, and the new one.
    assert seen == {"old", "half", "new"}


def _after_a_kill(target: Path, number: int, seen: set[str]) -> None:
    state = tree(target)
    whole = {"old": OLD | MINE, "new": NEW | MINE}
    kind = next((name for name, each in whole.items() if each == state), "half")
    seen.add(kind)
    if number % 2:
        build(target, NEW)
        assert tree(target) == NEW | MINE
    else:
        # A next build that is refused puts the last one back all the same.
        with pytest.raises(RuntimeError), whole_or_nothing(target):
            raise RuntimeError
        assert tree(target) == whole["new" if kind == "new" else "old"] or (
            # Killed between the last move and the clearing up.
            kind == "half" and tree(target) == NEW | MINE
        )
    assert left_behind(target.parent) == []
    manifest = json.loads((target / MANIFEST).read_text())
    assert set(manifest["files"]) in (set(NEW), set(OLD))


def test_mending_may_be_killed_too(fresh: Callable[[], Path]) -> None:
    for number in (3, 7):
        target = fresh()
        assert killed_before(number, partial(build, target, NEW), ("replace",))
        once_killed = target.parent
        for again in range(0, 200, 2):
            copy = once_killed.with_name(f"{once_killed.name}-{again}")
            shutil.copytree(once_killed, copy, symlinks=True)
            came_so_far = killed_before(again, partial(build, copy / "out", NEW))
            if came_so_far and again % 3 == 0:
                killed_before(number, partial(build, copy / "out", OLD))
            build(copy / "out", NEW)
            assert tree(copy / "out") == NEW | MINE
            assert left_behind(copy) == []
            shutil.rmtree(copy)
            if not came_so_far:
                break


def test_a_first_build_that_is_killed_leaves_nothing_that_stays(tmp_path: Path) -> None:
    target = tmp_path / "a" / "out"
    for _ in moments(lambda: build(target, NEW)):
        assert tree(target) in ({}, NEW) if target.exists() else True
        build(tmp_path / "a" / "other", {"x.txt": "1"})  # clears up beside it as well
        assert left_behind(tmp_path) == []
        build(target, NEW)
        assert tree(target) == NEW
        shutil.rmtree(tmp_path / "a")
    assert tree(target) == NEW


def test_a_build_into_an_empty_folder_that_is_killed(tmp_path: Path) -> None:
    target = tmp_path / "out"
    target.mkdir()
    for _ in moments(lambda: build(target, NEW)):
        build(target, OLD)
        assert tree(target) == OLD
        assert left_behind(tmp_path) == []
        shutil.rmtree(target)
        target.mkdir()


@pytest.mark.parametrize("error", [KeyboardInterrupt, MemoryError])
def test_a_second_interruption_never_loses_the_backup(
    fresh: Callable[[], Path], monkeypatch: pytest.MonkeyPatch, error: type[BaseException]
) -> None:
    replace = Path.replace
    for first in range(1, 8):
        for second in range(1, 8):
            target, moves = fresh(), iter(range(1000))

            def interrupted(
                self: Path, goal: Path, at=(first, first + second), moves=moves
            ) -> Path:
                if next(moves) in at:
                    raise error
                return replace(self, goal)

            with monkeypatch.context() as patched:
                patched.setattr(Path, "replace", interrupted)
                with suppress(error):
                    build(target, NEW)
            files = {path.name for path in target.parent.rglob("*") if path.is_file()}
            assert {"c.txt", "d.txt", "notes.txt"} <= files or "e.txt" in files
            with pytest.raises(RuntimeError), whole_or_nothing(target):
                raise RuntimeError
            assert tree(target) in (OLD | MINE, NEW | MINE)
            assert left_behind(target.parent) == []


def test_the_folder_of_a_process_at_work_is_left_alone(fresh: Callable[[], Path]) -> None:
    target = fresh()
    reading, writing = os.pipe()
    child = os.fork()
    if child == 0:
        with suppress(BaseException), whole_or_nothing(target):
            os.write(writing, b"x")
            os.read(reading, 1)  # until it is killed
        os._exit(0)
    os.close(reading)
    try:
        # The child has its work folder once something can be read; it holds the other end.
        while not left_behind(target):
            pass
        while not list(target.glob(f"{PREFIX}*/new")):
            pass
        with pytest.raises(ProblemsError, match="being written to") as caught:
            build(target, NEW)
        assert "Wait" in caught.value.problems[0].remedy
        assert tree(target) == OLD | MINE
    finally:
        os.kill(child, 9)
        os.waitpid(child, 0)
        os.close(writing)
    build(target, NEW)
    assert tree(target) == NEW | MINE
    assert left_behind(target) == []


def test_what_has_come_since_a_kill_is_told_and_kept(fresh: Callable[[], Path]) -> None:
    target = fresh()
    for number in range(100):
        assert killed_before(number, lambda: build(target, NEW), ("replace",))
        if not (target / "a.txt").exists():
            break
    (target / "a.txt").write_text("written since")
    with pytest.raises(ProblemsError, match="has come since") as caught:
        build(target, NEW)
    assert "Move it away" in caught.value.problems[0].remedy
    assert (target / "a.txt").read_text() == "written since"
    (target / "a.txt").unlink()
    with pytest.raises(RuntimeError), whole_or_nothing(target):
        raise RuntimeError
    assert tree(target) == OLD | MINE


FORGED = [
    {"target": "..", "old": [], "new": {}, "made": []},
    {"target": ".", "old": ["../../outside.txt"], "new": {}, "made": []},
    {"target": ".", "old": [], "new": {"/etc/hostname": "0"}, "made": []},
    {"target": ".", "old": {}, "new": [], "made": 3},
    ["target", "old", "new", "made"],
    {"target": "other", "old": [], "new": {}, "made": ["../x"]},
]


@pytest.mark.parametrize("document", FORGED)
def test_a_forged_journal_leads_nowhere(fresh: Callable[[], Path], document: object) -> None:
    target = fresh()
    work = target / f"{PREFIX}forged"
    write(work, {"lock": "", "new/manifest.json": "{}", "old/x.txt": "x"})
    (work / "journal.json").write_text(json.dumps(document))
    build(target, NEW)
    assert tree(target) == NEW | MINE
    assert left_behind(target) == []


def test_a_forged_journal_takes_no_file_of_another_name(tmp_path: Path) -> None:
    target = tmp_path / "out"
    ours = re.compile(r".*\.step")
    with whole_or_nothing(target, ours=ours) as staging:
        write(staging, {"unit.step": "1"})
    write(target, MINE)
    work = target / f"{PREFIX}forged"
    write(work, {"lock": "", "new/manifest.json": "{}"})
    sha = moving.digest(target / "notes.txt")
    journal = {"target": ".", "old": [], "new": {"notes.txt": sha}, "made": []}
    (work / "journal.json").write_text(json.dumps(journal))
    with whole_or_nothing(target, ours=ours) as staging:
        write(staging, {"unit.step": "2"})
    assert tree(target) == {"unit.step": "2"} | MINE


def test_what_was_killed_is_mended_by_the_other_that_writes_there(tmp_path: Path) -> None:
    builds, plans = re.compile(r"[a-z]\.txt"), re.compile(r"plan(?:s/[a-z])?\.txt")

    def plan(target: Path, text: str) -> None:
        with whole_or_nothing(target, ours=plans, beside=builds) as staging:
            write(staging, dict.fromkeys(("plan.txt", "plans/a.txt"), text))

    old, new = (dict.fromkeys(("plan.txt", "plans/a.txt"), text) for text in ("old", "new"))
    target, seen = tmp_path / "out", set()
    for _ in moments(lambda: plan(target, "new")):
        if target.exists():
            with whole_or_nothing(target, ours=builds, beside=plans) as staging:
                write(staging, {"x.txt": "1"})
            state = tree(target)
            assert state in ({"x.txt": "1"} | each for each in ({}, old, new))
            seen.add(state.get("plan.txt"))
            assert left_behind(target) == []
            plan(target, "old")
            assert tree(target) == {"x.txt": "1"} | old
    assert seen >= {"old", "new"}
