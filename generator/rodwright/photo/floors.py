"""What the floor of a room is made of: boards of wood, or carpet.  mm, unit frame."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
from numpy.typing import NDArray

from rodwright.photo.planes import faces, level
from rodwright.photo.scene import Body, Surface, Texture
from rodwright.photo.srgb import encoded

_WIDE, _SHORT, _LONG = 170.0, 1400.0, 2400.0
"""Width of floor boards, and between which lengths they are (common practice, no source)."""
_JOINT = 1.2
_BELOW = 2.0
"""How wide the joints between them are, and how deep one sees into them, mm (a choice)."""
_LOOKS = 7
"""How many boards look different."""
_TEXEL = 2.0
_PALE = (0.36, 0.265, 0.18)
"""Linear reflectance of the boards on average: oak that has been oiled, a little greyed (from
memory)."""
_BOARD_SURFACE = (0.38, 0.4)
"""Roughness and gloss: a satin varnish, worn."""
CARPET = Surface((0.40, 0.375, 0.335), 1.0, 0.1)
"""A plain wool carpet (a choice)."""
_DARK = Surface((0.03, 0.025, 0.02), 0.9, 0.1)


def carpet(low: tuple[float, float], high: tuple[float, float], at: float) -> Iterator[Body]:
    """A carpet between two corners (x, y) at a height."""
    body = faces("carpet", [level(low, high, at)], CARPET)
    if body is not None:
        yield body


def boards(
    low: tuple[float, float], high: tuple[float, float], at: float, seed: int
) -> Iterator[Body]:
    """Boards that run along x between two corners (x, y), their faces at a height."""
    under = faces("floor", [level(low, high, at - _BELOW)], _DARK)
    if under is not None:
        yield under
    random = np.random.default_rng([seed, 11])
    laid: list[list[tuple[float, float, float, float]]] = [[] for _ in range(_LOOKS)]
    y, last = low[1], -1
    while y < high[1]:
        x = low[0] - float(random.uniform(0, _LONG))
        while x < high[0]:
            end = x + float(random.uniform(_SHORT, _LONG))
            # No board beside one of the same look.
            look = (last + int(random.integers(1, _LOOKS))) % _LOOKS
            if end > low[0]:
                laid[look].append((x, min(end, high[0]), y, min(y + _WIDE, high[1])))
            x, last = end, look
        y += _WIDE
    for look, places in enumerate(laid):
        if places:
            yield _boards(f"boards {look}", places, low[0], at, _figure(random), random)


def _boards(
    name: str,
    places: list[tuple[float, float, float, float]],
    left: float,
    at: float,
    pixels: NDArray[np.uint8],
    random: np.random.Generator,
) -> Body:
    """Boards of one look, each cut from its own place of it."""
    points, where, triangles = [], [], []
    half = _JOINT / 2
    for number, (x, end, y, far) in enumerate(places):
        start = max(x, left)
        slip, turned = float(random.uniform(0, 1 - (end - x) / _LONG)), bool(random.integers(2))
        near, wide = slip + (start - x) / _LONG, slip + (end - x) / _LONG
        u, w = (1 - near, 1 - wide) if turned else (near, wide)
        points += [
            (start + half, y + half, at),
            (end - half, y + half, at),
            (end - half, far - half, at),
            (start + half, far - half, at),
        ]
        where += [(u, 0.01), (w, 0.01), (w, 0.99), (u, 0.99)]
        triangles += [(4 * number, 4 * number + 1, 4 * number + 2)]
        triangles += [(4 * number, 4 * number + 2, 4 * number + 3)]
    surface = Surface(Texture(pixels), *_BOARD_SURFACE)
    up = np.tile((0.0, 0.0, 1.0), (len(points), 1))
    return Body(name, np.array(points), up, np.array(triangles), surface, np.array(where))


def _figure(random: np.random.Generator) -> NDArray[np.uint8]:
    """The figure of one board, longest and full width: growth rings of a log cut a little askew,
    and fine pores along them."""
    along = np.arange(0, _LONG, _TEXEL)[None, :]
    across = np.arange(0, _WIDE, _TEXEL)[:, None]
    pith = float(random.uniform(-0.3, 1.3)) * _WIDE
    deep = float(random.uniform(25, 90))
    lean = float(random.uniform(-0.02, 0.02))
    sway = sum(
        float(random.uniform(2, 7)) * np.sin(along / float(random.uniform(150, 500)) + phase)
        for phase in random.uniform(0, 6.3, 3)
    )
    rings = np.hypot(across - pith + sway, deep + lean * along) / float(random.uniform(5, 9))
    late = (rings % 1.0) ** 3
    pores = random.normal(size=(across.shape[0], along.shape[1] // 16 + 2))
    pores = np.repeat(pores, 16, axis=1)[:, : along.shape[1]]
    tone = 1.0 + float(random.normal(0, 0.07)) - 0.10 * late + 0.018 * pores
    # Boards of one floor differ in tone; their hue hardly does.
    hue = float(random.normal())
    warm = np.array([1.0, 1.0 - 0.006 * hue, 1.0 - 0.02 * hue])
    linear = np.clip(tone[:, :, None] * np.array(_PALE) * warm, 0.0, 1.0)
    pixels: NDArray[np.uint8] = np.round(encoded(linear) * 255).astype(np.uint8)
    return pixels
