"""What of a sheet is clear of flaws: fields that edge-to-edge cuts part from each other."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from itertools import pairwise
from random import Random

from rodwright.cutting.sheet_problem import FirstCut, Rules, Sheet, Spot
from rodwright.cutting.sheets.fields import Field
from rodwright.cutting.sheets.filling import Filling
from rodwright.cutting.sheets.separating import other

Rect = tuple[int, int, int, int]
"""From x0, y0 to x1, y1."""


def opened(place: int, sheet: Sheet, rules: Rules, rng: Random, least: int) -> Filling:
    """A sheet with nothing on it yet; one with flaws is divided round them by chance.

    ``least`` is the area of the smallest piece.
    """
    whole = (0, 0, sheet.length, sheet.width)
    if not sheet.spots:
        fields = [_field(whole, rules, least)]
    elif rules.free:
        fields = [_field(rect, rules, least) for rect in _divided(whole, sheet.spots, rng)]
    else:
        axis: FirstCut = rules.first_cut or ("along" if rng.random() < 0.5 else "across")
        fields = [
            _field(rect, its_rules, least)
            for rect, its_rules in _banded(whole, sheet.spots, replace(rules, first_cut=axis), axis)
        ]
    area = sum(field.length * field.width for field in fields)
    return Filling(place, fields, area)


def _field(rect: Rect, rules: Rules, least: int) -> Field:
    x0, y0, x1, y1 = rect
    return Field(x0, y0, x1 - x0, y1 - y0, rules, least)


def _divided(rect: Rect, spots: Sequence[Spot], rng: Random) -> Iterator[Rect]:
    """Rectangles clear of spots: beside one of them a side is cut off, and so on with both."""
    touching = [spot for spot in spots if _on(spot, rect)]
    if not touching:
        yield rect
        return
    sides = list(_beside(rect, rng.choice(touching)))
    if not sides:
        return
    areas = [((x1 - x0) * (y1 - y0)) ** 2 for (x0, y0, x1, y1), _ in sides]
    ((side, rest),) = rng.choices(sides, areas)
    yield from _divided(side, touching, rng)
    yield from _divided(rest, touching, rng)


def _on(spot: Spot, rect: Rect) -> bool:
    x0, y0, x1, y1 = rect
    return spot.under(x0, y0, x1 - x0, y1 - y0)


def _beside(rect: Rect, spot: Spot) -> Iterator[tuple[Rect, Rect]]:
    """What may be cut off beside a spot on each of its sides, and what the rest is then."""
    x0, y0, x1, y1 = rect
    near, far = spot.x0, max(spot.x0, spot.x1)
    face, back = spot.y0, max(spot.y0, spot.y1)
    if x0 < near < x1:
        yield (x0, y0, near, y1), (near, y0, x1, y1)
    if x0 < far < x1:
        yield (far, y0, x1, y1), (x0, y0, far, y1)
    if y0 < face < y1:
        yield (x0, y0, x1, face), (x0, face, x1, y1)
    if y0 < back < y1:
        yield (x0, back, x1, y1), (x0, y0, x1, back)


def _banded(
    rect: Rect, spots: Sequence[Spot], rules: Rules, axis: FirstCut
) -> Iterator[tuple[Rect, Rules]]:
    """Bands by cuts of one direction only; those with spots are cut the other way in turn."""
    inside = None if rules.stages is None else rules.stages - 1
    turned = replace(rules, first_cut=other(axis), stages=inside, head_cuts=False)
    for band in _bands(rect, spots, axis):
        touching = [spot for spot in spots if _on(spot, band)]
        if not touching:
            yield band, replace(rules, head_cuts=False)
        elif inside:
            for part in _bands(band, touching, other(axis)):
                if not any(_on(spot, part) for spot in touching):
                    yield part, turned


def _bands(rect: Rect, spots: Sequence[Spot], axis: FirstCut) -> Iterator[Rect]:
    x0, y0, x1, y1 = rect
    across = axis == "across"
    low, high = (x0, x1) if across else (y0, y1)
    ends = {low, high}
    for spot in spots:
        start, end = (spot.x0, spot.x1) if across else (spot.y0, spot.y1)
        ends |= {at for at in (start, max(start, end)) if low < at < high}
    cuts = sorted(ends)
    for start, end in pairwise(cuts):
        yield (start, y0, end, y1) if across else (x0, start, x1, end)
