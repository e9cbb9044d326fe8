"""Equal pieces gathered, each with the labels of all that are made of it."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace

from rodwright.cutting.pieces import Piece
from rodwright.cutting.work import Label

_EQUAL = 6
"""Decimals of a millimetre in which equal pieces agree."""


@dataclass(frozen=True, slots=True)
class Cut:
    """One piece to cut, what its label says, and the ref of the part it is ``of``; ``within`` are
    the labels of its ``inner`` ones, in their order.  ``faces`` are how many good ones it needs,
    where that matters."""

    piece: Piece
    label: Label
    of: str
    within: tuple[Label, ...] = ()
    faces: int = 0


def gathered(
    cuts: Iterable[Cut],
) -> tuple[tuple[Piece, ...], dict[str, tuple[Label, ...]], dict[str, int]]:
    """Pieces, each as often as it is wanted and called by the first of them, in the order in which
    they first come; the labels of all of them and of what is within, by their names; and so the
    good faces of those that need any.

    Mirror images are the same piece turned over.
    """
    alike: dict[tuple[object, ...], list[Cut]] = {}
    for cut in cuts:
        alike.setdefault((cut.faces, *_what(cut.piece)), []).append(cut)
    labels = {each[0].piece.name: tuple(cut.label for cut in each) for each in alike.values()}
    for each in alike.values():
        first = each[0]
        labels |= {
            inner.name: (label,)
            for inner, label in zip(first.piece.inner, first.within, strict=True)
        }
    pieces = tuple(replace(each[0].piece, count=len(each)) for each in alike.values())
    faces = {each[0].piece.name: each[0].faces for each in alike.values() if each[0].faces}
    return pieces, labels, faces


def _what(piece: Piece) -> tuple[object, ...]:
    """What equal pieces have in common; what others are cut from is like no other."""
    figures = (piece.length, piece.width, piece.section, *sorted(piece.slants))
    return (*(round(each, _EQUAL) for each in figures), piece.turning, piece.inner)
