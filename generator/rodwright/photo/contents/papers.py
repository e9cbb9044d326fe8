"""Books, records, files and boxes.  Lengths in mm.

Sizes and densities are from memory; colours are a choice: quiet ones, that leave the picture to
the unit.
"""

from __future__ import annotations

import numpy as np

from rodwright.geometry.boxes import Box
from rodwright.photo.contents.candidates import (
    LABEL,
    Candidate,
    Candidates,
    Kind,
    any_of,
    boxed,
    labelled,
    mass_of,
    surfaces,
)
from rodwright.photo.contents.shapes import book, chamfered, leant_size
from rodwright.photo.planes import faces
from rodwright.photo.scene import Body

_CLOTH = surfaces(
    "#5b6670 #7a3b35 #8d8268 #c8bda6 #3f4a45 #a5764c #d9d2c3 #6f7b6a #4a4f63 #b39a7a #8a4f45 "
    "#2f3338 #94a09a #c2ad8c",
    0.75,
    0.3,
)
_BANDS = surfaces("#d8c9a3 #e6e0d2 #2e2c2a #b9a26c", 0.6, 0.4)
_SLEEVES = surfaces(
    "#e4dfd3 #c9c2b2 #6d747a #3a3d40 #8f5b4c #b0a484 #59656b #d7cdb6 #7d8a83 #2a2b2c #a9835a",
    0.5,
    0.4,
)
_FILES = surfaces("#4d5358 #7d8487 #a8a59c #5a6470", 0.55, 0.4)
_CARD = surfaces("#a58d6c #b29a79 #9b8362", 0.9, 0.15)
_BASKET = surfaces("#b79b72 #8c8f8a #c9bfa9 #6e6a62", 0.9, 0.15)
_BOOK_DENSITY, _RECORD_DENSITY, _FILE_DENSITY = 700.0, 640.0, 480.0
_CARTON_DENSITY, _REAM_DENSITY, _BOX_DENSITY = 560.0, 790.0, 170.0
"""kg/m3 of the boxes round them."""


def books(thick: tuple[float, float], tall: tuple[float, float]) -> Kind:
    """Books of two ranges of sizes: runs of one series among single ones, some leaning, now and
    then a few that lie."""

    def candidates(random: np.random.Generator, deep: float, high: float) -> Candidates:
        most = min(tall[1], high - 12.0)
        least = min(tall[0], most)
        while True:
            series = int(random.integers(3, 7)) if random.random() < 0.22 else 1
            height, wide = float(random.uniform(least, most)), float(random.uniform(*thick))
            cover = any_of(random, _CLOTH)
            band = any_of(random, _BANDS) if random.random() < 0.55 else None
            if random.random() < 0.03:
                yield from _lying(random, deep, high, thick, height)
                continue
            lean = float(random.uniform(4, 9)) if series == 1 and random.random() < 0.06 else 0.0
            for _ in range(series):
                size = (wide, min(height * 0.7, deep), height)
                yield Candidate(
                    leant_size(size, lean) if lean else size,
                    mass_of(size, _BOOK_DENSITY),
                    0.6 if not lean else 6.0,
                    lambda box, cover=cover, band=band, lean=lean: book(box, cover, band, lean),  # type: ignore[misc]
                )

    return candidates


def piles(thick: tuple[float, float], tall: tuple[float, float]) -> Kind:
    """Books of two ranges of sizes that lie upon each other, a few in a pile."""

    def candidates(random: np.random.Generator, deep: float, high: float) -> Candidates:
        while True:
            yield from _lying(random, deep, high, thick, float(random.uniform(*tall)))

    return candidates


def _lying(
    random: np.random.Generator, deep: float, high: float, thick: tuple[float, float], long: float
) -> Candidates:
    """A few books that lie upon each other, their spines to the front."""
    count = int(random.integers(2, 4))
    layers = [float(random.uniform(*thick)) for _ in range(count)]
    while layers and sum(layers) > high - 20.0:
        layers.pop()
    if not layers:
        return
    size = (long, min(long * 0.7, deep), sum(layers))
    colours = [any_of(random, _CLOTH) for _ in layers]

    def pile(box: Box) -> tuple[Body, ...]:
        made: list[Body] = []
        foot = box.low[2]
        for number, (layer, cover) in enumerate(zip(layers, colours, strict=True)):
            lies = box.spanning(2, foot, foot + layer - 0.3).spanning(
                0, box.low[0], box.high[0] - 6.0 * number
            )
            body = faces("book", chamfered(lies, 1.5), cover)
            if body is not None:
                made.append(body)
            foot += layer
        return tuple(made)

    yield Candidate(size, mass_of(size, _BOOK_DENSITY), 14.0, pile)


def records(random: np.random.Generator, deep: float, high: float) -> Candidates:
    """Records in their sleeves: 12 in."""
    side = min(315.0, high - 6.0, deep)
    while True:
        size = (float(random.uniform(3.2, 5.2)), side - float(random.uniform(0, 4)), side)
        surface = any_of(random, _SLEEVES)
        yield Candidate(size, mass_of(size, _RECORD_DENSITY), 0.15, boxed(surface, 0.0))


def files(random: np.random.Generator, deep: float, high: float) -> Candidates:
    """Lever-arch files with their labels."""
    surface = any_of(random, _FILES)
    while True:
        if random.random() < 0.3:
            surface = any_of(random, _FILES)
        size = (75.0 if random.random() < 0.7 else 50.0, min(285.0, deep), min(318.0, high - 8.0))
        yield Candidate(size, mass_of(size, _FILE_DENSITY), 1.0, labelled(surface, 0.5, 0.45, 0.62))


def cartons(random: np.random.Generator, deep: float, high: float) -> Candidates:
    """Archive boxes, upright files among them."""
    while True:
        size = (
            float(random.choice([105.0, 105.0, 310.0])),
            min(390.0, deep),
            min(262.0, high - 10.0),
        )
        surface = any_of(random, _CARD)
        wide = 0.6 if size[0] < 200 else 0.35
        yield Candidate(
            size, mass_of(size, _CARTON_DENSITY), 3.0, labelled(surface, wide, 0.3, 0.5)
        )


def reams(random: np.random.Generator, deep: float, high: float) -> Candidates:
    """Piles of reams of paper."""
    while True:
        count = min(int(random.integers(1, 5)), int((high - 15.0) // 52.0))
        size = (215.0, min(300.0, deep), 52.0 * max(count, 1))
        yield Candidate(size, mass_of(size, _REAM_DENSITY), 12.0, boxed(LABEL, 1.0))


def boxes(random: np.random.Generator, deep: float, high: float) -> Candidates:
    """Baskets and boxes with a label, as high as suits the room."""
    most = min(high * 0.78, 260.0)
    while True:
        wide = float(random.uniform(0.9, 1.6)) * max(most, 60.0)
        size = (min(wide, 380.0), min(deep, 340.0), most * float(random.uniform(0.75, 1.0)))
        surface = any_of(random, _BASKET)
        for _ in range(int(random.integers(1, 4))):
            yield Candidate(
                size, mass_of(size, _BOX_DENSITY), 16.0, labelled(surface, 0.3, 0.55, 0.72)
            )
