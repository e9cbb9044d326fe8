"""Letters that no font has are told, with what to install."""

from __future__ import annotations

import pytest

from rodwright.paper.book.letters import letters_said
from rodwright.paper.typesetting import without_font
from rodwright.pictures.glyphs import lacking


@pytest.mark.parametrize(
    "text", ["Шкаф", "βιβλιοθήκη", "ארון ספרים", "خزانة كتب", "étagère 3/4 in, 45°\n\t\u200b\u200e"]
)
def test_our_own_fonts_have_these(text: str) -> None:
    assert not lacking(text)
    assert not without_font(text)


def test_what_ours_lack_is_looked_for_on_the_machine() -> None:
    """A letter that no standard gives has no font anywhere."""
    assert lacking("本棚 shelf") == {"本", "棚"}
    assert without_font("shelf \ue8ff") == {"\ue8ff"}


@pytest.mark.parametrize(
    ("letters", "package"),
    [("本", "fonts-noto-cjk"), ("책", "fonts-noto-cjk"), ("🪵", "color-emoji"), ("क", "noto-core")],
)
def test_the_package_that_has_it_is_named(letters: str, package: str) -> None:
    said = letters_said(letters)
    assert package in said and f"U+{ord(letters):04X}" in said


def test_nothing_is_said_of_nothing_and_many_are_counted() -> None:
    assert letters_said("") == ""
    assert "and 4 more" in letters_said("一二三四五六七八九十")
