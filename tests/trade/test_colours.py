"""Colour words against a table that isn't ours."""

from __future__ import annotations

from PIL import ImageColor

from rodwright.trade.colours import COLOUR_WORDS


def test_words_are_those_of_the_standard() -> None:
    assert dict(COLOUR_WORDS) == ImageColor.colormap
    assert len(COLOUR_WORDS) == 148
