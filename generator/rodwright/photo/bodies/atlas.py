"""Pictures of all the patches of a part on one sheet, and where each point lies in it.

All lengths in mm, part frame.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from rodwright.photo import srgb
from rodwright.photo.bodies.easing import Patch
from rodwright.photo.bodies.outlines import Array, Indices, across
from rodwright.photo.scene import Texture

Reflectance = Callable[[Array, Array, float], NDArray[np.floating]]
"""Reflectance (n, 3), linear, at points and normals (n, 3), for texels of so many mm."""

_BORDER = 1
"""Pixels round each picture that show what lies beyond it, so that no seam shows."""
_NARROW = 45.0
"""Faces narrower than this (mm) are the edges of boards: plies and end grain need texels half as
large."""
_ONE_COLOUR = 1000.0
"""Texels (mm) of small patches, which lie within one."""
_AT_ONCE = 200_000
"""Points that are asked for at once, at most twice as many."""
_STEPS = 4096
"""Steps of linear reflectance that are turned into the curve of sRGB."""


@dataclass(frozen=True, slots=True, eq=False)
class Picture:
    """What a texture has of a piece of surface: the triangles (``points`` of ``patch``), the frame
    it is seen in (columns: to the right, up, out), the lowest place there and the size in pixels
    of ``texel`` mm."""

    patch: Patch
    triangles: Indices
    frame: Array
    low: Array
    size: tuple[int, int]
    texel: float


def textured(
    patches: Sequence[tuple[Patch, float]], reflectance: Reflectance
) -> tuple[Array, Array, Indices, Array, Texture]:
    """One mesh of patches, each with the size of its texels: points, normals, triangles and places
    in the texture, and the texture."""
    pictures = [each for patch, texel in patches for each in _pictures(patch, texel)]
    corners, width, height = _packed([each.size for each in pictures])
    pixels = np.zeros((height, width, 3), np.uint8)
    _paint(pixels, pictures, corners, reflectance)
    points, normals, triangles, places = [], [], [], []
    before = 0
    for picture, (left, top) in zip(pictures, corners, strict=True):
        used, own = np.unique(picture.triangles, return_inverse=True)
        at = picture.patch.points[used]
        points.append(at)
        normals.append(picture.patch.normals[used])
        triangles.append(own.reshape(-1, 3) + before)
        before += len(used)
        within = (at @ picture.frame[:, :2] - picture.low) / picture.texel + _BORDER + 0.5
        # Rows are from the top, places from the bottom.
        corner = np.array([left, height - top - picture.size[1]])
        places.append((within + corner) / np.array([width, height]))
    return (
        np.concatenate(points),
        np.concatenate(normals),
        np.concatenate(triangles),
        np.concatenate(places),
        Texture(pixels),
    )


def _paint(
    pixels: NDArray[np.uint8],
    pictures: Sequence[Picture],
    corners: Sequence[tuple[int, int]],
    reflectance: Reflectance,
) -> None:
    """Put the pictures where they belong; few calls, since small ones are many, and none of them
    large, to keep memory low."""
    waiting: list[tuple[Array, Array]] = []
    places: list[tuple[slice, slice]] = []

    def flush(texel: float) -> None:
        spots, out = (np.concatenate(each) for each in zip(*waiting, strict=True))
        shown, done = encoded(reflectance(spots, out, texel)), 0
        for rows, columns in places:
            high, wide = rows.stop - rows.start, columns.stop - columns.start
            pixels[rows, columns] = shown[done : done + wide * high].reshape(high, wide, 3)
            done += wide * high
        waiting.clear()
        places.clear()

    for texel in sorted({each.texel for each in pictures}):
        for picture, (left, top) in zip(pictures, corners, strict=True):
            if picture.texel != texel:
                continue
            spots, out = _spots(picture)
            wide, high = picture.size
            step = max(1, _AT_ONCE // wide)
            for row in range(0, high, step):
                last = min(row + step, high)
                waiting.append((spots[row * wide : last * wide], out[row * wide : last * wide]))
                places.append((slice(top + row, top + last), slice(left, left + wide)))
                if sum(len(each) for each, _ in waiting) > _AT_ONCE:
                    flush(texel)
        if waiting:
            flush(texel)


def encoded(linear: NDArray[np.floating]) -> NDArray[np.uint8]:
    """Linear reflectance in the tone curve of sRGB (IEC 61966-2-1), 0 to 255."""
    steps = np.clip(linear, 0.0, 1.0) * (_STEPS - 1) + 0.5
    made: NDArray[np.uint8] = _curve()[steps.astype(np.int16)]
    return made


@lru_cache(maxsize=1)
def _curve() -> NDArray[np.uint8]:
    """The tone curve in even steps of linear reflectance."""
    return np.round(srgb.encoded(np.linspace(0.0, 1.0, _STEPS)) * 255).astype(np.uint8)


def _pictures(patch: Patch, texel: float) -> Iterator[Picture]:
    if patch.is_small:
        yield _picture(patch, patch.triangles, _any_way(patch), _ONE_COLOUR)
        return
    if patch.flat is not None:
        made = _picture(patch, patch.triangles, patch.flat, texel)
        narrow = min(made.size) < _NARROW / texel
        yield _picture(patch, patch.triangles, patch.flat, texel / 2) if narrow else made
        return
    corners = patch.points[patch.triangles]
    out = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
    axis = np.abs(out).argmax(axis=1)
    way = np.take_along_axis(out, axis[:, None], axis=1)[:, 0] > 0.0
    for which in range(3):
        for ahead in (False, True):
            those = (axis == which) & (way == ahead)
            if those.any():
                normal = np.zeros(3)
                normal[which] = 1.0 if ahead else -1.0
                yield _picture(patch, patch.triangles[those], normal, texel)


def _any_way(patch: Patch) -> Array:
    """The way a small patch faces; of the wall of a hole, that of one of its triangles."""
    return patch.normals[patch.triangles[0, 0]] if patch.flat is None else patch.flat


def _picture(patch: Patch, triangles: Indices, out: Array, texel: float) -> Picture:
    right, up = across(out)
    frame = np.column_stack([right, up, out])
    places = patch.points[np.unique(triangles)] @ frame[:, :2]
    low = places.min(axis=0)
    wide, high = np.ceil((places.max(axis=0) - low) / texel - 1e-9).astype(int) + 1 + 2 * _BORDER
    return Picture(patch, triangles, frame, low, (int(wide), int(high)), texel)


def _spots(picture: Picture) -> tuple[Array, Array]:
    """The point of the surface that each pixel shows, row by row from the top, and the normals."""
    wide, high = picture.size
    across_ = picture.low[0] + (np.arange(wide) - _BORDER) * picture.texel
    upwards = picture.low[1] + (np.arange(high)[::-1] - _BORDER) * picture.texel
    used = np.unique(picture.triangles)
    points = picture.patch.points[used]
    if picture.patch.flat is None:
        level = _heights(picture, across_, upwards)
        out = picture.patch.normals[used].sum(axis=0)
        out = out / np.linalg.norm(out) if np.linalg.norm(out) > 1e-6 else picture.frame[:, 2]
    else:
        # The eased edges lie lower, by less than anything that is seen in wood.
        level = np.full((high, wide), (points @ picture.frame[:, 2]).max())
        out = picture.frame[:, 2]
    right, up, ahead = picture.frame.T
    # A product of matrices would wake threads, for more time than it takes.
    grid = across_[None, :, None] * right + upwards[:, None, None] * up + level[:, :, None] * ahead
    return grid.reshape(-1, 3), np.broadcast_to(out, (wide * high, 3))


def _heights(picture: Picture, across_: Array, upwards: Array) -> Array:
    """How far out a round surface lies at each pixel: by its triangles, and by their middle
    height where none is."""
    corners = picture.patch.points[picture.triangles] @ picture.frame
    found = np.full((len(upwards), len(across_)), corners[:, :, 2].mean())
    if np.ptp(corners[:, :, 2]) < picture.texel:
        return found
    for a, b, c in corners:
        low, high = np.minimum(np.minimum(a, b), c), np.maximum(np.maximum(a, b), c)
        columns = np.flatnonzero(
            (across_ > low[0] - picture.texel) & (across_ < high[0] + picture.texel)
        )
        rows = np.flatnonzero(
            (upwards > low[1] - picture.texel) & (upwards < high[1] + picture.texel)
        )
        area = (b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1])
        x, y = across_[columns][None] - a[0], upwards[rows][:, None] - a[1]
        one = (x * (c[1] - a[1]) - (c[0] - a[0]) * y) / area
        two = ((b[0] - a[0]) * y - x * (b[1] - a[1])) / area
        slack = 1e-6 + picture.texel / max(abs(area) ** 0.5, picture.texel)
        inside = (one > -slack) & (two > -slack) & (one + two < 1.0 + slack)
        height = np.clip(
            a[2] + one * (b[2] - a[2]) + two * (c[2] - a[2]),
            low[2] - picture.texel,
            high[2] + picture.texel,
        )
        there = np.ix_(rows, columns)
        found[there] = np.where(inside, height, found[there])
    return found


def _packed(sizes: Sequence[tuple[int, int]]) -> tuple[list[tuple[int, int]], int, int]:
    """Left and top of each rectangle on a sheet, laid in rows, and the sheet's width and height."""
    width = max(wide for wide, _ in sizes)
    width = max(width, int(np.sqrt(sum(wide * high for wide, high in sizes))))
    corners = [(0, 0)] * len(sizes)
    left = top = row = 0
    for number in sorted(range(len(sizes)), key=lambda each: -sizes[each][1]):
        wide, high = sizes[number]
        if left + wide > width:
            left, top, row = 0, top + row, 0
        corners[number] = (left, top)
        left, row = left + wide, max(row, high)
    return corners, width, top + row
