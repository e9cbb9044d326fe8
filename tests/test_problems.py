"""What problems answer about themselves while they are gathered."""

from __future__ import annotations

import ctypes
from pathlib import Path

import pytest

import rodwright
from rodwright.jobs.new import model_path
from rodwright.problems import Problem, Problems, ProblemsError, missing_library


def test_problems_say_whether_any_was_noted_since_a_mark() -> None:
    problems = Problems()
    assert not problems.noted_since()
    problems.add(("size",), "too wide", "Make it narrower.")
    mark = problems.mark()
    assert problems.noted_since()
    assert not problems.noted_since(mark)
    problems.add(("size",), "too high", "Make it lower.")
    assert problems.noted_since(mark)


def test_the_same_problem_is_noted_once() -> None:
    problems = Problems()
    for place in ("size", "size", "base"):
        problems.add_once((place,), "too wide", "Make it narrower.")
    assert [each.where for each in problems.error().problems] == [("size",), ("base",)]


def test_problems_say_whether_any_was_noted_at_a_place() -> None:
    problems = Problems()
    problems.add(("size", "width"), "too wide", "Make it narrower.")
    assert problems.noted_at(("size", "width"))
    assert not problems.noted_at(("size",))


def test_what_is_said_in_the_same_words_of_the_same_place_is_told_once() -> None:
    def problem(column: int, part: int, message: str = "too wide") -> Problem:
        return Problem(message, "Mend it.", ("columns", part), "a.yaml", 3, column)

    one, again = problem(5, 1), problem(5, 2)
    other_place, other_words = problem(9, 3), problem(5, 4, "too high")
    error = ProblemsError([one, other_words, again, other_place, again])
    assert error.problems == (one, other_words, other_place)
    assert str(error).count("too wide") == 2
    # Of what has no line yet nobody knows whether its place is the same.
    unplaced = [Problem("too wide", "Mend it.", ("columns", part)) for part in (1, 2)]
    assert ProblemsError([*unplaced, *unplaced]).problems == tuple(unplaced)


def test_a_mistake_in_what_is_used_by_its_name_is_told_once(tmp_path: Path) -> None:
    head, doors, rest = model_path("pottery-dresser").read_text().partition("doors: &door")
    spec = tmp_path / "spec.yaml"
    spec.write_text(head + doors + rest.replace("stock: oak", "stock: oaken", 1))
    with pytest.raises(rodwright.ProblemsError) as raised:
        rodwright.set_out(rodwright.read_spec(spec))
    told = [(each.line, each.column, each.message) for each in raised.value.problems]
    assert "no stock is called `oaken`" in {message for _, _, message in told}
    assert len(told) == len(set(told))


def test_a_missing_library_of_the_system_is_told_with_its_package() -> None:
    told = []
    for name in ("libatomic.so.1", "libGL.so.1", "libunheardof.so.7"):
        with pytest.raises(OSError, match=name) as found:
            ctypes.CDLL(f"{name}.that-nobody-has")
        # A package may stumble over what it couldn't load, and say only that.
        said = str(found.value).replace(".that-nobody-has", "")
        stumbled = NameError("name '_ext' is not defined")
        stumbled.__context__ = ImportError(said)
        problem = missing_library(stumbled)
        assert problem == missing_library(ImportError(said))
        assert problem is not None
        told.append((problem.message.rsplit(" ", 1)[1], problem.remedy))
    assert told == [
        ("libatomic.so.1", "On Debian or Ubuntu: `apt-get install libatomic1`."),
        ("libGL.so.1", "On Debian or Ubuntu: `apt-get install libgl1`."),
        ("libunheardof.so.7", "Find out which of your system's packages has it, and install that."),
    ]


@pytest.mark.parametrize(
    "error",
    [NameError("libGL.so.1"), ImportError("No module named 'so'"), ImportError("x.so: bad")],
)
def test_what_has_another_cause_isnt_told_as_a_missing_library(error: Exception) -> None:
    assert missing_library(error) is None
