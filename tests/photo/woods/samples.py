"""Parts to look at, and an eye: colours in CIELAB, worked out from the standards anew."""

from __future__ import annotations

from typing import Any, Literal

import numpy as np
from numpy.typing import NDArray

from rodwright.photo.woods import Looks, looks_of
from rodwright.trade.materials import MATERIALS
from rodwright.unit import Blank, Grain, Part, Placement, Role, Stock

Face = Literal["face", "reverse", "face edge", "near end"]
_FACES: dict[Face, tuple[int, bool]] = {
    "face": (2, True),
    "reverse": (2, False),
    "face edge": (1, False),
    "near end": (0, False),
}


def part_of(
    material: str,
    size: tuple[float, float, float] = (600.0, 120.0, 20.0),
    *,
    kind: Literal["sheet", "board"] = "board",
    sawn: Literal["flat", "quarter"] = "flat",
    grain: Grain = Grain.LENGTHWISE,
    ref: str = "P1",
    **more: Any,
) -> Part:
    """A part of a material, flat at the origin."""
    known = MATERIALS[material]
    stock = Stock(
        "s", kind, material, size[2], Grain.LENGTHWISE, 600.0, "", known.colour, sawn=sawn
    )
    placement = more.pop("placement", Placement((0, 0, 0), (1, 0, 0), (0, 1, 0)))
    return Part(ref, "Panel", Role.PACKER, "Test", Blank(*size, stock, grain), placement, **more)


def seen(
    part: Part, face: Face = "face", texel: float = 2.0, seed: int = 1, looks: Looks | None = None
) -> NDArray[np.float64]:
    """The reflectance of a surface, rows along the second of the two axes that it has."""
    axis, high = _FACES[face]
    one, other = (each for each in range(3) if each != axis)
    size = part.blank.size
    u, v = np.meshgrid(
        np.arange(texel / 2, size[one], texel), np.arange(texel / 2, size[other], texel)
    )
    points, normals = np.zeros((u.size, 3)), np.zeros((u.size, 3))
    points[:, one], points[:, other] = u.ravel(), v.ravel()
    points[:, axis] = size[axis] if high else 0.0
    normals[:, axis] = 1.0 if high else -1.0
    found = (looks or looks_of(part, seed)).reflectance(points, normals, texel)
    return found.reshape(*u.shape, 3).astype(np.float64)


def lab(reflectance: NDArray[np.float64]) -> NDArray[np.float64]:
    """L*, a*, b* of linear red, green and blue: by the chromaticities of IEC 61966-2-1 (Rec. 709
    and D65 at x 0.3127, y 0.3290) and the formulas of ISO/CIE 11664-4."""
    chromaticities = np.array([[0.64, 0.33], [0.30, 0.60], [0.15, 0.06]])
    white_x, white_y = 0.3127, 0.3290
    white = np.array([white_x / white_y, 1.0, (1 - white_x - white_y) / white_y])
    primaries = np.array([[x / y, 1.0, (1 - x - y) / y] for x, y in chromaticities]).T
    to_xyz = primaries * np.linalg.solve(primaries, white)
    ratio = (reflectance @ to_xyz.T) / white
    limit = (6 / 29) ** 3
    bent = np.where(ratio > limit, np.cbrt(ratio), ratio * (29 / 6) ** 2 / 3 + 4 / 29)
    return np.stack(
        [
            116 * bent[..., 1] - 16,
            500 * (bent[..., 0] - bent[..., 1]),
            200 * (bent[..., 1] - bent[..., 2]),
        ],
        axis=-1,
    )
