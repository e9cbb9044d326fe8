"""Lists on a narrow terminal."""

from __future__ import annotations

import pytest

from rodwright_cli.show_list import ShownList

OPTIONS = ("Bookcase in the study alcove", "Oak and white", "Oak and white, framed oak doors")


def test_headings_over_figures_wrap_before_words_are_broken(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    """The options of a quote, side by side in 80 columns."""
    monkeypatch.setenv("COLUMNS", "80")
    shown = ShownList()
    shown.texts("")
    shown.figures(*OPTIONS)
    shown.row("price before tax", "4,030.00", "4,110.25", "4,801.50")
    shown.row("you have for an hour", "57.31", "57.44", "59.02")
    shown.show()
    lines = capsys.readouterr().out.splitlines()
    assert all(len(line) <= 80 for line in lines)
    assert any(line.startswith("price before tax ") for line in lines)
    assert any(line.startswith("you have for an hour ") for line in lines)
    words = " ".join(lines).split()
    assert all(word in words for heading in OPTIONS for word in heading.split())


def test_headings_stand_in_one_line_where_there_is_room(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("COLUMNS", "120")
    shown = ShownList()
    shown.texts("")
    shown.figures(*OPTIONS)
    shown.row("total", "1", "2", "3")
    shown.show()
    assert "   ".join(OPTIONS).replace("   ", "  ") in capsys.readouterr().out
