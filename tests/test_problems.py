"""What problems answer about themselves while they are gathered."""

from __future__ import annotations

from rodwright.problems import Problems


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
