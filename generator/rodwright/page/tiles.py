"""Pictures of materials that go on beyond their sides without a seam.

They are the photograph's woods, looked at square on; lengths in mm.
"""

from __future__ import annotations

import base64
import io
from collections.abc import Container
from dataclasses import dataclass
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray
from PIL import Image

from rodwright.geometry.vectors import Vector
from rodwright.page import document as page
from rodwright.page.surfaces import Look, looks_in, mean_colour, named
from rodwright.photo import srgb
from rodwright.photo.finished import finished_colour
from rodwright.photo.woods import Looks, looks_of
from rodwright.unit import Blank, Grain, Part, Placement, Role, Stock, Unit

Pixels = NDArray[np.uint8]
"""Rows from the top; red, green and blue with the tone curve of sRGB."""
LONG, WIDE = 1440.0, 480.0
"""What a face shows along and across the grain: hardly a part shows anything twice, and a pixel is
about as large as on a screen that shows a whole unit."""
BOARD = 64.0
"""What edges and ends of boards show through the thickness: hardly one is thicker."""
_COLUMNS, _ROWS, _THROUGH = 1024, 512, 64
"""Pixels along, across and through."""
_BLENDED_ALONG, _BLENDED_ACROSS, _BLENDED_THROUGH = 320.0, 60.0, 8.0
"""The stretch in which the end of a picture passes into its beginning."""
_LEAST = 1.0
"""Steps of 255 by which a material has to vary (standard deviation) to be worth a picture."""
_QUALITY = 72
"""At which no loss shows at the size that a screen shows pictures in; by eye.  WebP of the same
size wipes out the faint figure of birch and cherry."""
_SEED = 0


@dataclass(frozen=True, slots=True, eq=False)
class Tiles:
    """Pictures of a material, and the ``size`` that they show: see :class:`page.Texture`."""

    face: Pixels
    edge: Pixels
    end: Pixels
    size: Vector


@lru_cache(maxsize=32)
def tiles_of(look: Look) -> Tiles | None:
    """The pictures of a look; None where it has one colour."""
    if look.finish is not None and look.finish.kind == "paint":
        return None
    board = look.kind == "board"
    deep = _Span(BOARD, _THROUGH, _BLENDED_THROUGH) if board else _Span(look.thickness, _THROUGH)
    along = _Span(LONG, _COLUMNS, _BLENDED_ALONG)
    across = _Span(WIDE, _ROWS, _BLENDED_ACROSS)
    part = _stand_in(look, (along.sampled, across.sampled, deep.sampled))
    looks = looks_of(part, _SEED)
    if looks.even is not None:
        return None
    bare = [_seen(looks, part.blank.thickness, each) for each in _pictures(along, across, deep)]
    finished = [finished_colour(each, look.finish) for each in bare]
    to_mean = np.array(mean_colour(look)) / finished[0].mean(axis=(0, 1))
    face, edge, end = (_shown(each * to_mean) for each in finished)
    if max(each.std(axis=(0, 1)).max() for each in (face, edge, end)) < _LEAST:
        return None
    return Tiles(face, edge, end, (LONG, WIDE, deep.shown))


def textures_of(unit: Unit, known: Container[str] = ()) -> dict[str, page.Texture]:
    """The textures of a unit's surfaces, by their names, but for those that are ``known``."""
    found = {}
    for look in looks_in(unit):
        name, _ = named(look)
        if name not in known and (texture := _texture(look)) is not None:
            found[name] = texture
    return found


@lru_cache(maxsize=32)
def _texture(look: Look) -> page.Texture | None:
    tiles = tiles_of(look)
    if tiles is None:
        return None
    face, edge, end = (
        f"data:image/jpeg;base64,{base64.b64encode(jpeg(each)).decode('ascii')}"
        for each in (tiles.face, tiles.edge, tiles.end)
    )
    return page.Texture(face, edge, end, tiles.size)


def jpeg(pixels: Pixels) -> bytes:
    """A picture as a file that browsers, glTF and USDZ all read."""
    file = io.BytesIO()
    Image.fromarray(pixels).save(file, "JPEG", quality=_QUALITY, optimize=True)
    return file.getvalue()


@dataclass(frozen=True, slots=True)
class _Span:
    """How much a picture shows along one axis, in so many pixels, and how much of it is blended."""

    shown: float
    pixels: int
    blended: float = 0.0

    @property
    def pixel(self) -> float:
        return self.shown / self.pixels

    @property
    def extra(self) -> int:
        """Pixels beyond those shown, to be blended with the first."""
        return round(self.blended / self.pixel)

    @property
    def sampled(self) -> float:
        return self.shown + self.extra * self.pixel

    @property
    def places(self) -> NDArray[np.floating]:
        return (np.arange(self.pixels + self.extra) + 0.5) * self.pixel


@dataclass(frozen=True, slots=True)
class _Picture:
    """A side of a part: the axis square to it, and what goes to the right and up."""

    axis: int
    right: _Span
    up: _Span


def _pictures(along: _Span, across: _Span, deep: _Span) -> tuple[_Picture, _Picture, _Picture]:
    return _Picture(2, along, across), _Picture(1, along, deep), _Picture(0, across, deep)


def _stand_in(look: Look, size: Vector) -> Part:
    """A part of this look and size, of one board if it is of boards."""
    stock = Stock(
        "",
        look.kind,
        look.material,
        size[2],
        Grain.LENGTHWISE,
        0.0,
        "",
        look.colour,
        sawn=look.sawn,
        section=size[1],
    )
    grain = Grain.LENGTHWISE if look.grained else Grain.NONE
    placement = Placement((0.0, 0.0, 0.0), (1.0, 0.0, 0.0), (0.0, 1.0, 0.0))
    return Part("", "", Role.PACKER, "", Blank(*size, stock, grain), placement)


def _seen(looks: Looks, thickness: float, picture: _Picture) -> NDArray[np.float64]:
    """The bare reflectance of a side, rows from the top, its opposite ends alike."""
    one, other = (each for each in range(3) if each != picture.axis)
    right, up = np.meshgrid(picture.right.places, picture.up.places[::-1])
    points, normals = np.zeros((right.size, 3)), np.zeros((right.size, 3))
    points[:, one], points[:, other] = right.ravel(), up.ravel()
    points[:, picture.axis] = thickness if picture.axis == 2 else 0.0
    normals[:, picture.axis] = 1.0 if picture.axis == 2 else -1.0
    texel = min(picture.right.pixel, picture.up.pixel)
    found = looks.reflectance(points, normals, texel).reshape(*right.shape, 3).astype(np.float64)
    joined = _joined(found, 1, picture.right.extra)
    return _joined(joined, 0, picture.up.extra)


def _joined(values: NDArray[np.float64], axis: int, extra: int) -> NDArray[np.float64]:
    """A picture whose last pixels, so many, pass into its first, and are cut off.

    What two places add to the mean is weighted by sine and cosine, whose squares have a sum of 1:
    so their mix varies as much as either, and the place doesn't look pale.
    """
    if not extra:
        return values
    moved = np.moveaxis(values, axis, 0)
    mean = moved.mean(axis=(0, 1))
    turn = (np.arange(extra) + 0.5) / extra * (np.pi / 2)
    first, last = (each(turn)[:, None, None] for each in (np.sin, np.cos))
    joined = moved[:-extra].copy()
    joined[:extra] = mean + first * (moved[:extra] - mean) + last * (moved[-extra:] - mean)
    return np.moveaxis(joined, 0, axis)


def _shown(reflectance: NDArray[np.float64]) -> Pixels:
    """Reflectance as it is shown."""
    return np.round(255 * srgb.encoded(np.clip(reflectance, 0.0, 1.0))).astype(np.uint8)
