"""Colour words against a table that isn't ours."""

from __future__ import annotations

from PIL import ImageColor

from rodwright.trade.colours import COLOUR_WORDS


def test_words_are_those_of_the_standard() -> None:
    # What Pillow was asked for before, it keeps as numbers.
    theirs = {word: ImageColor.getrgb(word) for word in ImageColor.colormap}
    ours = {word: ImageColor.getrgb(colour) for word, colour in COLOUR_WORDS.items()}
    assert ours == theirs
    assert len(COLOUR_WORDS) == 148
