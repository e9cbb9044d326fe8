"""Equal pieces gathered, each with the labels of all that are made of it."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from rodwright.cutting.pieces import Inner, Piece
from rodwright.cutting.work import Label

_EQUAL = 6
"""Decimals of a millimetre in which equal pieces agree."""


@dataclass(frozen=True, slots=True)
class Cut:
    """One piece to cut: what it is called, its size along and across the grain as cut (mm), how it
    may lie, and what its label says.  ``within`` are the pieces that are cut from it later, with
    their labels."""

    name: str
    length: float
    width: float
    turning: bool
    label: Label
    slants: tuple[float, float] = (0.0, 0.0)
    within: tuple[tuple[Inner, Label], ...] = ()


def gathered(
    cuts: Iterable[Cut],
) -> tuple[tuple[Piece, ...], dict[str, tuple[Label, ...]]]:
    """Pieces, each as often as it is wanted and called by the first of them, in the order in which
    they first come; and the labels of all of them and of what is within, by their names."""
    alike: dict[tuple[object, ...], list[Cut]] = {}
    for cut in cuts:
        size = (round(cut.length, _EQUAL), round(cut.width, _EQUAL))
        slants = tuple(round(each, _EQUAL) for each in sorted(cut.slants))
        # What others are cut from is like no other: each has its own within.
        own = cut.name if cut.within else ""
        alike.setdefault((size, cut.turning, slants, own), []).append(cut)
    labels = {each[0].name: tuple(cut.label for cut in each) for each in alike.values()}
    for each in alike.values():
        labels |= {inner.name: (label,) for inner, label in each[0].within}
    return tuple(map(_piece, alike.values())), labels


def _piece(cuts: Sequence[Cut]) -> Piece:
    first = cuts[0]
    return Piece(
        first.name,
        first.length,
        first.width,
        len(cuts),
        first.turning,
        first.slants,
        tuple(inner for inner, _ in first.within),
    )
