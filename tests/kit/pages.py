"""Pages of PDF files as Poppler's pdftotext sees them: words with their boxes."""

from __future__ import annotations

import re
import shutil
import subprocess
from collections.abc import Iterator
from dataclasses import dataclass
from html import unescape
from pathlib import Path
from typing import Literal

from kit.needed import need

_PAGE = re.compile(r'<page width="([\d.]+)" height="([\d.]+)">(.*?)</page>', re.DOTALL)
_WORD = re.compile(
    r'<word xMin="([-\d.]+)" yMin="([-\d.]+)" xMax="([-\d.]+)" yMax="([-\d.]+)">(.*?)</word>',
    re.DOTALL,
)
_LINE = 0.75
"""What of a word's box, which is as high as a line of its font, its letters take at most."""
_TOUCH = 0.6
"""Boxes that share less than this (points) both ways don't run into each other."""


@dataclass(frozen=True, slots=True)
class Word:
    """A word and its box, points from the page's upper left corner."""

    text: str
    left: float
    top: float
    right: float
    bottom: float


@dataclass(frozen=True, slots=True)
class Page:
    """A page's size in points, and its words."""

    width: float
    height: float
    words: tuple[Word, ...]

    @property
    def text(self) -> str:
        """All words in a line."""
        return " ".join(word.text for word in self.words)

    def outside(self, margin: float) -> list[str]:
        """Words nearer to the paper's edges than a margin (points), or beyond them."""
        return [
            each.text
            for each in self.words
            if each.left < margin
            or each.top < margin
            or each.right > self.width - margin
            or each.bottom > self.height - margin
        ]

    def overlapping(self) -> list[tuple[str, str]]:
        """Pairs of words whose letters run into each other."""
        boxes = sorted((_letters(each) for each in self.words), key=lambda word: word.left)
        found = []
        for at, one in enumerate(boxes):
            for other in boxes[at + 1 :]:
                if other.left > one.right - _TOUCH:
                    break
                if min(one.bottom, other.bottom) - max(one.top, other.top) > _TOUCH:
                    found.append((one.text, other.text))
        return found


def pages_of(pdf: Path) -> tuple[Page, ...]:
    """The pages of a file."""
    return tuple(_pages(text_of(pdf, "bbox")))


def text_of(pdf: Path, way: Literal["bbox", "layout", "raw"]) -> str:
    """The text of a file: in boxes, as it is laid out, or in the order of its content."""
    need(shutil.which("pdftotext"), "pdftotext (poppler-utils)")
    done = subprocess.run(["pdftotext", f"-{way}", str(pdf), "-"], capture_output=True, check=True)
    return done.stdout.decode()


def _pages(document: str) -> Iterator[Page]:
    for width, height, words in _PAGE.findall(document):
        found = (Word(unescape(text), *map(float, box)) for *box, text in _WORD.findall(words))
        yield Page(float(width), float(height), tuple(found))


def _letters(word: Word) -> Word:
    """A word's box shrunk to its letters: of one that stands upright, from side to side."""
    wide, high = word.right - word.left, word.bottom - word.top
    if high > wide and len(word.text) > 2:
        less = wide * (1 - _LINE) / 2
        return Word(word.text, word.left + less, word.top, word.right - less, word.bottom)
    less = high * (1 - _LINE) / 2
    return Word(word.text, word.left, word.top + less, word.right, word.bottom - less)
