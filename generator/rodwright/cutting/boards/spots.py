"""Where a strip can be ripped beside flaws that don't span a board, and what is sound of it."""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.cutting.boards.problem import Blank


def beside(blank: Blank) -> Iterator[int]:
    """Where strips may begin across a blank: at its face edge and behind each flaw."""
    yield 0
    for back in sorted({spot.back for spot in blank.spots}):
        if back < blank.width:
            yield back


def stretches(blank: Blank, y: int, width: int, kerf: int) -> list[tuple[int, int]]:
    """The sound stretches of a strip that begins at y and is so wide, without the kerf: where each
    begins along the blank, and its length with the kerf.

    A flaw that is narrower than the cut costs good wood on its far side.
    """
    sound = []
    x = 0
    for spot in sorted(blank.spots, key=lambda each: each.x):
        if spot.y < y + width and spot.back > y:
            if spot.x > x:
                sound.append((x, min(spot.x + kerf, blank.length) - x))
            x = max(x, spot.far, spot.x + kerf if spot.x > x else spot.far)
    if x < blank.length - kerf:
        sound.append((x, blank.length - x))
    return sound
