"""What a load is, by the words of its maker."""

from __future__ import annotations

import re

from rodwright.photo.contents.candidates import Kind
from rodwright.photo.contents.cloths import boots, linen
from rodwright.photo.contents.devices import television, turntable
from rodwright.photo.contents.papers import books, boxes, cartons, files, piles, reams, records
from rodwright.photo.contents.pots import CLAY, GLAZE, pots

_KINDS: tuple[tuple[str, Kind], ...] = (
    (r"turntables?|record players?", turntable),
    (r"tvs?|televisions?", television),
    (r"records?|vinyl|lps?", records),
    (r"files?|binders?", files),
    (r"archive|cartons?", cartons),
    (r"papers?|reams?", reams),
    (r"paperbacks?|novels?", books((13.0, 34.0), (176.0, 200.0))),
    (
        r"(?:large|art|oversize) books|atlas(?:es)?|dictionaries|textbooks",
        books((18.0, 50.0), (270.0, 330.0)),
    ),
    (r"books?|hardbacks?", books((14.0, 46.0), (185.0, 275.0))),
    (r"boots?|shoes?|trainers", boots),
    (r"pots? and pans?", pots(GLAZE, ("bowl", "jar"))),
    (r"pots?|pottery|clay", pots(CLAY, ("bowl", "vase", "jar", "beaker"))),
    (
        r"crockery|china|dish(?:es)?|plates?|pans|kitchenware|bowls?|mugs?|cups?|glass(?:es)?",
        pots(GLAZE, ("bowl", "vase", "jar", "beaker", "plates")),
    ),
    (r"jars?|tins|groceries|spices?|bottles?|preserves", pots(GLAZE, ("jar",))),
    (r"linen|towels?|bedding|clothes|blankets?|sheets|jumpers", linen),
)
"""The first whose words are among a load's."""


_BOOKS = re.compile(r"\b(?:books?|hardbacks?|paperbacks?|novels?|textbooks)\b")


def kind_of(said: str, *, on_top: bool = False) -> Kind:
    """What a load is, by its maker's words; boxes where they say nothing that is known.

    Books that stand ``on_top`` would have nothing to hold them: there they lie.
    """
    plain = said.casefold()
    if on_top and _BOOKS.search(plain):
        return piles((18.0, 46.0), (200.0, 290.0))
    return next((kind for words, kind in _KINDS if re.search(rf"\b(?:{words})\b", plain)), boxes)
