"""Letters that no font has: which, and what to install."""

from __future__ import annotations

import unicodedata
from collections.abc import Collection

_SHOWN = 6
_PACKAGES = (
    (("CJK", "HIRAGANA", "KATAKANA", "HANGUL", "BOPOMOFO", "KANGXI"), "fonts-noto-cjk"),
    (("EMOJI", "FACE", "HEART", "REGIONAL INDICATOR"), "fonts-noto-color-emoji"),
)
"""Debian's packages by words in the Unicode names of the letters that they have."""
_MOST = "fonts-noto-core"
_SYMBOLS = "So"
"""The category of pictures, which an emoji font has."""


def letters_said(lacking: Collection[str]) -> str:
    """What is printed as boxes and what would help; empty where nothing is."""
    if not lacking:
        return ""
    letters = sorted(lacking)
    shown = " ".join(f"{each} (U+{ord(each):04X})" for each in letters[:_SHOWN])
    more = len(letters) - _SHOWN
    others = f" and {more} more" if more > 0 else ""
    packages = " ".join(sorted({_package(each) for each in letters}))
    return (
        f"No font on this machine has {shown}{others}: printed as boxes. Install a font that has "
        f"them (on Debian or Ubuntu: apt-get install {packages}), and make the book again."
    )


def _package(letter: str) -> str:
    name = unicodedata.name(letter, "")
    for words, package in _PACKAGES:
        if any(word in name for word in words):
            return package
    return "fonts-noto-color-emoji" if unicodedata.category(letter) == _SYMBOLS else _MOST
