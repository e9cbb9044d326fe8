"""A spec file changed from its page: what is written, what is refused, and what is taken back."""

from __future__ import annotations

import os
import stat
from pathlib import Path

import pytest

from rodwright.jobs.look.nudging import Back, Nudging, digest_of
from rodwright.problems import ProblemsError
from rodwright.setout import set_out
from rodwright.wishes.reading.files import read_spec

MODELS = Path(__file__).parents[3] / "models"
ALCOVE = (MODELS / "reading-alcove.yaml").read_bytes()
WIDTH, SHELVES = "interior/columns/1/width", "interior/columns/0/shelves/count"


@pytest.fixture
def path(tmp_path):
    made = tmp_path / "alcove.yaml"
    made.write_bytes(ALCOVE)
    return made


def seen(path):
    return digest_of(path.read_bytes())


def refusal(call, *args, **named):
    with pytest.raises(ProblemsError) as caught:
        call(*args, **named)
    return str(caught.value)


def test_a_figure_is_written_and_nothing_else(path):
    Nudging(path).nudge(WIDTH, "405", seen(path))
    assert path.read_bytes() == ALCOVE.replace(b"- width: 420\n", b"- width: 405\n")
    assert set_out(read_spec(path)).title == "Reading alcove"


def test_undo_and_redo_over_several_steps(path):
    nudging, held = Nudging(path), [ALCOVE]
    for key, value in ((WIDTH, "400"), (SHELVES, "5"), ("fit/sides", "4")):
        nudging.nudge(key, value, seen(path))
        held.append(path.read_bytes())
    assert len(set(held)) == 4
    for content in held[-2::-1]:
        nudging.undo()
        assert path.read_bytes() == content
    assert nudging.can(seen(path)) == Back(False, True, overtaken=False)
    assert "there is nothing to undo" in refusal(nudging.undo)
    for content in held[1:]:
        nudging.redo()
        assert path.read_bytes() == content
    assert nudging.can(seen(path)) == Back(True, False, overtaken=False)
    assert "there is nothing to redo" in refusal(nudging.redo)


def test_a_drag_is_one_step(path):
    nudging, first = Nudging(path), seen(path)
    for width in range(419, 399, -1):
        nudging.nudge(WIDTH, str(width), first, "a")
    nudging.nudge(WIDTH, "390", first, "b")
    assert b"- width: 390\n" in path.read_bytes()
    nudging.undo()
    assert b"- width: 400\n" in path.read_bytes()
    nudging.undo()
    assert path.read_bytes() == ALCOVE
    assert nudging.can(seen(path)) == Back(False, True, overtaken=False)


def test_a_drag_that_ends_where_it_began_leaves_no_step(path):
    nudging = Nudging(path)
    nudging.nudge(WIDTH, "410", seen(path), "a")
    nudging.nudge(WIDTH, "420", seen(path), "a")
    assert nudging.can(seen(path)) == Back(False, False, overtaken=False)


def test_a_nudge_after_an_undo_leaves_nothing_to_redo(path):
    nudging = Nudging(path)
    nudging.nudge(WIDTH, "410", seen(path))
    nudging.undo()
    nudging.nudge(SHELVES, "3", seen(path))
    assert nudging.can(seen(path)) == Back(True, False, overtaken=False)


def test_pages_that_lag_behind_may_nudge_but_not_over_an_editor(path):
    nudging, first = Nudging(path), seen(path)
    nudging.nudge(WIDTH, "410", first)
    nudging.nudge(SHELVES, "3", first)  # another page, which hasn't heard of it yet
    assert not nudging.can(first).overtaken
    edited = path.read_bytes().replace(b"title: Reading alcove", b"title: Alcove")
    path.write_bytes(edited)
    assert "`alcove.yaml` was changed by someone else" in refusal(
        nudging.nudge, WIDTH, "400", first
    )
    assert path.read_bytes() == edited
    nudging.nudge(WIDTH, "400", seen(path))
    assert b"title: Alcove" in path.read_bytes()
    assert "changed by someone else" in refusal(nudging.nudge, WIDTH, "399", first)


def test_undo_never_writes_over_what_someone_else_wrote(path):
    nudging = Nudging(path)
    nudging.nudge(WIDTH, "410", seen(path))
    left = path.read_bytes()
    path.write_bytes(left + b"# Ask about the socket.\n")
    assert nudging.can(seen(path)) == Back(False, False, overtaken=True)
    assert "changed by someone else" in refusal(nudging.undo)
    assert path.read_bytes() == left + b"# Ask about the socket.\n"
    path.write_bytes(left)
    assert nudging.can(seen(path)) == Back(True, False, overtaken=False)
    path.write_bytes(left)  # they took it back
    nudging.undo()
    assert path.read_bytes() == ALCOVE


def test_what_was_nudged_after_an_editors_change_is_taken_back_to_it_and_no_farther(path):
    nudging = Nudging(path)
    nudging.nudge(WIDTH, "410", seen(path))
    edited = path.read_bytes() + b"# Mind the skirting.\n"
    path.write_bytes(edited)
    nudging.nudge(SHELVES, "3", seen(path))
    nudging.undo()
    assert path.read_bytes() == edited
    assert "changed by someone else" in refusal(nudging.undo)


def test_in_a_file_that_is_no_spec_by_now_no_figure_is_set(path):
    nudging, first = Nudging(path), seen(path)
    broken = ALCOVE.replace(b"width: 420", b"wdith: 420")
    for content in (broken, b"\xff", b"title: [\n"):
        path.write_bytes(content)
        for of in (first, seen(path)):
            told = refusal(nudging.nudge, WIDTH, "400", of)
            assert told.startswith("`alcove.yaml` is no spec as it stands, so no figure can be set")
            assert "Mend it in your editor first" in told
        assert path.read_bytes() == content


@pytest.mark.parametrize(
    ("key", "value", "said"),
    [
        (WIDTH, "wide", "`wide` can't be read as a length"),
        (WIDTH, "0", "must be more than 0"),
        (WIDTH, "-3", "is less than zero"),
        (WIDTH, "", "can't be read as a length"),
        (WIDTH, "18\nhung: true", "can't be read as a length"),
        (SHELVES, "2.5", "whole number"),
        (SHELVES, "0", "at least 1"),
        (SHELVES, "5000", "at most 200"),
        ("stock/case/thickness", "0.2", "too small"),
        ("title", "Another", "there is no such figure"),
        ("opening/width/bottom", "1300", "there is no such figure"),
        ("nowhere/at/all", "3", "there is no such figure"),
        ("interior/columns/7/width", "3", "there is no such figure"),
    ],
)
def test_what_makes_no_spec_is_refused_and_the_file_left_alone(path, key, value, said):
    nudging = Nudging(path)
    assert said.lower() in refusal(nudging.nudge, key, value, seen(path)).lower()
    assert path.read_bytes() == ALCOVE
    assert nudging.can(seen(path)) == Back(False, False, overtaken=False)


@pytest.mark.parametrize(
    "value", ["\ud800", "\x00", "18\x00", "\ufeff18", "*bay", "&a 18", "9" * 9999]
)
@pytest.mark.parametrize("key", [WIDTH, "interior/columns/" + "9" * 5000, "\ud800", "", "/", "~"])
def test_whatever_a_page_wishes_is_refused_in_words_that_can_be_sent(path, key, value):
    with pytest.raises(ProblemsError) as caught:
        Nudging(path).nudge(key, value, seen(path))
    assert all(len(each.message.encode()) < 2000 for each in caught.value.problems)
    assert path.read_bytes() == ALCOVE


def test_what_makes_a_spec_but_no_unit_is_written_and_can_be_taken_back(path):
    nudging = Nudging(path)
    nudging.nudge(WIDTH, "1400", seen(path))
    with pytest.raises(ProblemsError):
        set_out(read_spec(path))
    nudging.undo()
    assert path.read_bytes() == ALCOVE


@pytest.mark.parametrize(
    ("unit", "stands", "value", "written"),
    [
        ("mm", b"23 5/8 in", "22 1/2", b"22 1/2 in"),
        ("mm", b"23 5/8 in", "500 mm", b"500 mm"),
        ("in", b"18 mm", "20", b"20 mm"),
        ("in", b"18", "19 3/4", b"19 3/4"),
        ("mm", b'"420"', "400", b'"400"'),
        ("mm", b"1 share", "2", b"2 shares"),
        ("mm", b"2 shares", "1", b"1 share"),
        ("mm", b"1 share", "400 mm", b"400 mm"),
        ("mm", b"'31\"'", "30 1/4", b"'30 1/4\"'"),
        ("mm", b"1.2 m", "1.25", b"1.25 m"),
    ],
)
def test_a_bare_figure_is_in_the_unit_that_stands_there(tmp_path, unit, stands, value, written):
    size = (
        b"size: {width: 1200, height: 800, depth: 300}"
        if unit == "mm"
        else b"size: {width: 48, height: 32, depth: 12}"
    )
    text = (
        b"title: A\nunit: %b\n%b\nstock: {case: {kind: sheet, material: mdf, thickness: 18 mm}}\n"
        b"carcass: {stock: case}\ninterior:\n  columns:\n  - width: 1 share\n  - width: %b # this\n"
    )
    path = tmp_path / "a.yaml"
    path.write_bytes(text % (unit.encode(), size, stands))
    Nudging(path).nudge(WIDTH, value, seen(path))
    assert path.read_bytes() == text % (unit.encode(), size, written)


def test_line_ends_and_the_mark_of_the_encoding_stay(path):
    content = b"\xef\xbb\xbf" + ALCOVE.replace(b"\n", b"\r\n").rstrip()
    path.write_bytes(content)
    nudging = Nudging(path)
    nudging.nudge(WIDTH, "405", seen(path))
    assert path.read_bytes() == content.replace(b"width: 420", b"width: 405")
    nudging.undo()
    assert path.read_bytes() == content


def test_mode_and_attributes_of_the_file_stay_and_a_link_stays_a_link(path, tmp_path):
    path.chmod(0o640)
    linked = tmp_path / "linked.yaml"
    linked.symlink_to(path)
    Nudging(linked).nudge(WIDTH, "405", seen(path))
    assert linked.is_symlink()
    assert stat.S_IMODE(path.stat().st_mode) == 0o640
    assert b"width: 405" in path.read_bytes()
    assert sorted(each.name for each in tmp_path.iterdir()) == ["alcove.yaml", "linked.yaml"]


def test_all_names_of_the_same_file_see_the_change(path, tmp_path):
    other = tmp_path / "other.yaml"
    os.link(path, other)
    Nudging(path).nudge(WIDTH, "405", seen(path))
    assert b"width: 405" in other.read_bytes()


def test_the_owner_stays(path):
    if os.geteuid() != 0:
        pytest.skip("only root gives files away")
    os.chown(path, 1234, 1235)
    Nudging(path).nudge(WIDTH, "405", seen(path))
    assert (path.stat().st_uid, path.stat().st_gid) == (1234, 1235)


def test_a_write_protected_file_is_left_alone(path):
    path.chmod(0o444)
    assert "it is write-protected" in refusal(Nudging(path).nudge, WIDTH, "405", seen(path))
    assert path.read_bytes() == ALCOVE


def test_a_file_that_is_gone_or_no_file_is_told(path):
    nudging = Nudging(path)
    nudging.nudge(WIDTH, "405", seen(path))
    path.unlink()
    assert "there is no file" in refusal(nudging.nudge, WIDTH, "400", "")
    assert "there is no file" in refusal(nudging.undo)
    path.mkdir()
    assert "is a folder" in refusal(nudging.undo)


def test_a_broken_spec_is_not_nudged(path):
    path.write_bytes(ALCOVE + b"more: [\n")
    assert refusal(Nudging(path).nudge, WIDTH, "400", seen(path))
    assert path.read_bytes() == ALCOVE + b"more: [\n"


def test_steps_are_not_kept_without_end(tmp_path):
    path = tmp_path / "shelf.yaml"
    path.write_text(
        "title: Shelf\nsize: {width: 800, height: 900, depth: 300}\ncarcass: {stock: ply}\n"
        "stock: {ply: {kind: sheet, material: mdf, thickness: 18}}\n"
    )
    nudging = Nudging(path)
    for number in range(205):
        nudging.nudge("size/width", str(800 + number % 7 + 1), seen(path))
    taken = 0
    while nudging.can(seen(path)).undo:
        nudging.undo()
        taken += 1
    assert taken == 200
