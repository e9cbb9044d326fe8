"""Writing whole or not at all."""

from __future__ import annotations

import errno
import hashlib
import json
import re
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from rodwright.handover.output import MANIFEST, look_before, whole_or_nothing
from rodwright.problems import ProblemsError


def build(target: Path, files: dict[str, str]) -> None:
    with whole_or_nothing(target) as staging:
        for name, text in files.items():
            path = staging / name
            path.parent.mkdir(parents=True, exist_ok=True)
            path.write_text(text, encoding="utf-8")


def tree(folder: Path) -> dict[str, str]:
    """Every file below a folder, hidden ones too, with its text."""
    return {
        path.relative_to(folder).as_posix(): path.read_text(encoding="utf-8")
        for path in sorted(folder.rglob("*"))
        if path.is_file()
    }


def files_of(target: Path) -> dict[str, str]:
    return {name: text for name, text in tree(target).items() if name != MANIFEST}


def test_a_new_folder_is_made_with_its_parents(tmp_path: Path) -> None:
    target = tmp_path / "a" / "b"
    build(target, {"x.txt": "1", "parts/y.txt": "2"})
    assert files_of(target) == {"x.txt": "1", "parts/y.txt": "2"}
    assert [path.name for path in target.parent.iterdir()] == ["b"]


def test_a_new_folder_can_be_read_by_others_as_usual(tmp_path: Path) -> None:
    plain = tmp_path / "plain"
    plain.mkdir()
    build(tmp_path / "out", {"x.txt": "1"})
    assert (tmp_path / "out").stat().st_mode == plain.stat().st_mode


def test_the_manifest_lists_files_with_their_digest(tmp_path: Path) -> None:
    build(tmp_path / "out", {"x.txt": "abc"})
    manifest = json.loads((tmp_path / "out" / MANIFEST).read_text(encoding="utf-8"))
    # SHA-256 of "abc": FIPS 180-4's own example (appendix B.1 of FIPS 180-2).
    assert manifest["files"] == {
        "x.txt": "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"
    }


def test_a_folder_that_is_there_needs_no_room_beside_it(tmp_path: Path) -> None:
    """A mounted disk can't take files moved from beside it (EXDEV, rename(2))."""
    target = tmp_path / "out"
    target.mkdir()
    with whole_or_nothing(target) as staging:
        assert staging.is_relative_to(target)
        assert [path.name for path in tmp_path.iterdir()] == ["out"]
        (staging / "x.txt").write_text("1")
    assert files_of(target) == {"x.txt": "1"}
    assert sorted(path.name for path in target.iterdir()) == [MANIFEST, "x.txt"]


def test_a_rebuild_replaces_and_removes_what_the_last_one_wrote(tmp_path: Path) -> None:
    target = tmp_path / "out"
    build(target, {"x.txt": "1", "parts/y.txt": "2", "parts/z.txt": "3", "old/w.txt": "4"})
    build(target, {"x.txt": "new", "parts/z.txt": "3", "more/v.txt": "5"})
    assert files_of(target) == {"x.txt": "new", "parts/z.txt": "3", "more/v.txt": "5"}
    assert not (target / "old").exists()


def test_other_files_are_left_alone(tmp_path: Path) -> None:
    target = tmp_path / "out"
    build(target, {"x.txt": "1", "parts/y.txt": "2"})
    (target / "notes.txt").write_text("mine")
    (target / "parts" / "notes.txt").write_text("mine too")
    build(target, {"x.txt": "2"})
    assert files_of(target) == {
        "x.txt": "2",
        "notes.txt": "mine",
        "parts/notes.txt": "mine too",
    }


def test_a_removed_file_is_simply_written_again(tmp_path: Path) -> None:
    target = tmp_path / "out"
    build(target, {"x.txt": "1"})
    (target / "x.txt").unlink()
    build(target, {"x.txt": "1"})
    assert files_of(target) == {"x.txt": "1"}


def test_a_file_that_was_changed_stops_the_build(tmp_path: Path) -> None:
    target = tmp_path / "out"
    build(target, {"x.txt": "1", "y.txt": "1"})
    (target / "x.txt").write_text("edited")
    before = tree(tmp_path)
    with pytest.raises(ProblemsError, match=r"x\.txt` is in the way") as caught:
        build(target, {"x.txt": "2", "y.txt": "2"})
    assert "Move it away" in caught.value.problems[0].remedy
    assert tree(tmp_path) == before


def test_a_changed_file_with_no_successor_is_kept(tmp_path: Path) -> None:
    target = tmp_path / "out"
    build(target, {"x.txt": "1", "y.txt": "1"})
    (target / "x.txt").write_text("edited")
    build(target, {"y.txt": "2"})
    assert files_of(target) == {"x.txt": "edited", "y.txt": "2"}


def test_a_foreign_file_with_the_same_content_is_in_no_ones_way(tmp_path: Path) -> None:
    target = tmp_path / "out"
    target.mkdir()
    (target / "x.txt").write_text("1")
    build(target, {"x.txt": "1"})
    assert files_of(target) == {"x.txt": "1"}


@pytest.mark.parametrize("name", ["x.txt", "parts/y.txt"])
def test_a_foreign_file_stops_the_build(tmp_path: Path, name: str) -> None:
    target = tmp_path / "out"
    (target / name).parent.mkdir(parents=True)
    (target / name).write_text("mine")
    before = tree(tmp_path)
    with pytest.raises(ProblemsError, match="in the way"):
        build(target, {"x.txt": "1", "parts/y.txt": "2"})
    assert tree(tmp_path) == before


def test_everything_in_the_way_is_told_at_once(tmp_path: Path) -> None:
    target = tmp_path / "out"
    target.mkdir()
    for name in ("x.txt", "y.txt"):
        (target / name).write_text("mine")
    with pytest.raises(ProblemsError) as caught:
        build(target, {"x.txt": "1", "y.txt": "2"})
    assert len(caught.value.problems) == 2


@pytest.mark.parametrize(
    "text",
    [
        '{"name": "a web page"}',
        "not JSON",
        '{"made_by": "Rodwright", "files": {"../outside.txt": "00"}}',
        '{"made_by": "Rodwright", "files": {"/etc/outside": "00"}}',
        '{"made_by": "Rodwright", "files": ["x.txt"]}',
    ],
)
def test_a_foreign_manifest_stops_the_build_before_it_begins(tmp_path: Path, text: str) -> None:
    target = tmp_path / "out"
    target.mkdir()
    (target / MANIFEST).write_text(text)
    begun = False
    with (
        pytest.raises(ProblemsError, match=r"manifest\.json` is in the way"),
        whole_or_nothing(target),
    ):
        begun = True
    assert not begun
    assert tree(tmp_path) == {f"out/{MANIFEST}": text}


def test_a_file_or_link_where_a_folder_has_to_be_stops_the_build(tmp_path: Path) -> None:
    target, elsewhere = tmp_path / "out", tmp_path / "elsewhere"
    target.mkdir()
    elsewhere.mkdir()
    (target / "parts").symlink_to(elsewhere)
    with pytest.raises(ProblemsError, match="parts` is in the way"):
        build(target, {"parts/x.txt": "1"})
    (target / "parts").unlink()
    (target / "parts").write_text("mine")
    with pytest.raises(ProblemsError, match="parts` is in the way"):
        build(target, {"parts/x.txt": "1"})
    assert not list(elsewhere.iterdir())


def test_the_target_is_a_file(tmp_path: Path) -> None:
    (tmp_path / "out").write_text("mine")
    with pytest.raises(ProblemsError, match="is a file, not a folder"):
        build(tmp_path / "out", {"x.txt": "1"})
    assert tree(tmp_path) == {"out": "mine"}


@pytest.mark.parametrize("kind", [RuntimeError, KeyboardInterrupt])
def test_a_build_that_breaks_off_leaves_nothing(tmp_path: Path, kind: type[BaseException]) -> None:
    with pytest.raises(kind), whole_or_nothing(tmp_path / "a" / "b" / "out") as staging:
        (staging / "x.txt").write_text("half")
        raise kind
    assert list(tmp_path.iterdir()) == []


def test_a_rebuild_that_breaks_off_leaves_the_last_build(tmp_path: Path) -> None:
    target = tmp_path / "out"
    build(target, {"x.txt": "1"})
    before = tree(tmp_path)
    with pytest.raises(RuntimeError), whole_or_nothing(target) as staging:
        (staging / "x.txt").write_text("half")
        raise RuntimeError
    assert tree(tmp_path) == before


def test_a_failure_while_moving_into_place_puts_everything_back(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    target = tmp_path / "out"
    build(target, {"a.txt": "1", "b.txt": "1", "old/c.txt": "1"})
    before = tree(tmp_path)
    replace = Path.replace

    def failing(self: Path, goal: Path) -> Path:
        if goal == target / "new" / "d.txt":
            raise OSError(errno.EIO, "Input/output error", str(goal))
        return replace(self, goal)

    monkeypatch.setattr(Path, "replace", failing)
    with pytest.raises(ProblemsError, match="can't be written: Input/output error"):
        build(target, {"a.txt": "2", "b.txt": "2", "new/d.txt": "2"})
    assert tree(tmp_path) == before
    assert not (target / "new").exists()


def test_a_full_disk_is_told_with_its_remedy(tmp_path: Path) -> None:
    with pytest.raises(ProblemsError) as caught, whole_or_nothing(tmp_path / "out"):
        raise OSError(errno.ENOSPC, "No space left on device")
    assert "Free some space" in caught.value.problems[0].remedy
    assert list(tmp_path.iterdir()) == []


def test_an_error_from_elsewhere_is_not_taken_for_ours(tmp_path: Path) -> None:
    with pytest.raises(FileNotFoundError), whole_or_nothing(tmp_path / "out"):
        (tmp_path / "elsewhere.txt").read_text(encoding="utf-8")


def test_a_folder_that_cant_be_made(tmp_path: Path) -> None:
    (tmp_path / "file").write_text("mine")
    with pytest.raises(ProblemsError, match="can't be written") as caught:
        build(tmp_path / "file" / "out", {"x.txt": "1"})
    assert "may write to" in caught.value.problems[0].remedy
    # /proc takes no new folders from anyone, root or not (proc(5)).
    with pytest.raises(ProblemsError, match="can't be written"):
        build(Path("/proc/rodwright/out"), {"x.txt": "1"})


OURS = re.compile(r"unit\.step|parts/[A-Z]{2}[0-9]+\.step")


def forge(target: Path, files: dict[str, str]) -> None:
    """Files, and a manifest that gives the true digest of each."""
    for name, text in files.items():
        (target / name).parent.mkdir(parents=True, exist_ok=True)
        (target / name).write_text(text)
    sha = {name: hashlib.sha256(text.encode()).hexdigest() for name, text in files.items()}
    manifest = json.dumps({"made_by": "Rodwright", "files": sha})
    (target / MANIFEST).write_text(manifest)


def test_a_forged_manifest_takes_no_file_of_another_name(tmp_path: Path) -> None:
    target = tmp_path / "out"
    mine = {
        "notes.txt": "mine",
        "parts/own.step": "mine",
        ".git/config": "mine",
        "a/unit.step": "x",
    }
    forge(target, mine)
    with whole_or_nothing(target, ours=OURS) as staging:
        (staging / "unit.step").write_text("1")
    assert files_of(target) == mine | {"unit.step": "1"}
    assert list(json.loads((target / MANIFEST).read_text())["files"]) == ["unit.step"]


BESIDE = re.compile(r"plan\.json|plans/[a-z]+\.txt")


def test_two_that_write_into_one_folder_leave_each_others_files_alone(tmp_path: Path) -> None:
    target = tmp_path / "out"

    def write(text: str, *names: str, ours: re.Pattern[str], beside: re.Pattern[str]) -> None:
        with whole_or_nothing(target, ours=ours, beside=beside) as staging:
            for name in names:
                (staging / name).parent.mkdir(exist_ok=True)
                (staging / name).write_text(text)

    write("1", "unit.step", "parts/SD1.step", ours=OURS, beside=BESIDE)
    write("1", "plan.json", "plans/a.txt", "plans/b.txt", ours=BESIDE, beside=OURS)
    both = {"unit.step": "1", "parts/SD1.step": "1"}
    plans = {"plan.json": "1", "plans/a.txt": "1", "plans/b.txt": "1"}
    assert files_of(target) == both | plans
    # Each still knows its own: it replaces them, and removes what it no longer makes.
    write("2", "unit.step", ours=OURS, beside=BESIDE)
    write("2", "plan.json", "plans/a.txt", ours=BESIDE, beside=OURS)
    assert files_of(target) == {"unit.step": "2", "plan.json": "2", "plans/a.txt": "2"}
    (target / "unit.step").write_text("mine")
    write("3", "plan.json", ours=BESIDE, beside=OURS)
    with pytest.raises(ProblemsError, match=r"unit\.step` is in the way"):
        write("3", "unit.step", ours=OURS, beside=BESIDE)
    assert files_of(target) == {"unit.step": "mine", "plan.json": "3"}


def test_what_is_beside_is_listed_by_nobody_elses_word(tmp_path: Path) -> None:
    target = tmp_path / "out"
    forge(target, {"notes.txt": "mine", "plan.json": "1"})
    with whole_or_nothing(target, ours=OURS, beside=BESIDE) as staging:
        (staging / "unit.step").write_text("1")
    assert sorted(json.loads((target / MANIFEST).read_text())["files"]) == [
        "plan.json",
        "unit.step",
    ]


def test_a_forged_digest_protects_nothing_of_anothers(tmp_path: Path) -> None:
    target = tmp_path / "out"
    forge(target, {"notes.txt": "mine"})
    with (
        pytest.raises(ProblemsError, match="in the way"),
        whole_or_nothing(target, ours=OURS) as staging,
    ):
        (staging / "notes.txt").write_text("1")
    assert files_of(target) == {"notes.txt": "mine"}


@pytest.mark.parametrize("ask", [whole_or_nothing, look_before])
def test_a_changed_file_that_will_be_written_again_stops_the_build_before_it_begins(
    tmp_path: Path, ask: Callable[..., Any]
) -> None:
    target = tmp_path / "out"
    build(target, {"x.txt": "1", "y.txt": "1", "z.txt": "1"})
    for name in "xz":
        (target / f"{name}.txt").write_text("edited")
    before = tree(tmp_path)
    begun = False
    with pytest.raises(ProblemsError) as caught:
        found = ask(target, again={"x.txt", "y.txt"}.__contains__)
        if found is not None:
            with found:
                begun = True
    assert not begun
    assert ["x.txt` is in the way" in str(each) for each in caught.value.problems] == [True]
    assert tree(tmp_path) == before


def test_a_folder_with_a_name_that_is_too_long(tmp_path: Path) -> None:
    for target in (
        tmp_path / ("x" * 300),
        tmp_path / ("x" * 300) / "out",
        tmp_path / "a" / ("y" * 300),
    ):
        with pytest.raises(ProblemsError, match="File name too long") as caught:
            build(target, {"x.txt": "1"})
        assert "shorter name" in caught.value.problems[0].remedy
        assert list(tmp_path.iterdir()) == []
    build(tmp_path / ("x" * 250), {"x.txt": "1"})


def test_a_folder_that_may_not_be_entered(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Root may enter everywhere, so the system's answer is put in by hand."""
    target = tmp_path / "shut" / "out"

    def refuse(path: Path, **_: object) -> None:
        raise PermissionError(errno.EACCES, "Permission denied", str(path))

    monkeypatch.setattr(Path, "stat", refuse)
    with pytest.raises(ProblemsError, match="can't be written: Permission denied"):
        build(target, {"x.txt": "1"})
    with pytest.raises(ProblemsError, match="can't be written: Permission denied"):
        look_before(target)
