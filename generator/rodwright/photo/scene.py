"""A scene to be photographed, as plain data; mm, unit frame."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from rodwright.geometry.vectors import Vector

Colour = tuple[float, float, float]
"""Reflectance in red, green and blue, 0 to 1: linear, with the primaries of sRGB."""


@dataclass(frozen=True, slots=True, eq=False)
class Texture:
    """Reflectance over a surface: ``pixels`` are rows from the top, red, green and blue in 0 to 255
    with the tone curve of sRGB (IEC 61966-2-1)."""

    pixels: NDArray[np.uint8]


@dataclass(frozen=True, slots=True, eq=False)
class Surface:
    """How light meets a surface.

    ``roughness`` is 0 (a mirror) to 1 (dull), of the highlight of a surface that isn't metal;
    ``gloss`` how strong that highlight is, 0 to 1 (0.5: glass and varnish, index 1.5); ``coat`` how
    much there is of a clear layer upon it, 0 to 1, of ``coat_roughness``.  ``clear`` is what light
    passes through straight, as a pane does.
    """

    colour: Colour | Texture
    roughness: float = 0.6
    gloss: float = 0.5
    metal: bool = False
    coat: float = 0.0
    coat_roughness: float = 0.2
    clear: bool = False


@dataclass(frozen=True, slots=True, eq=False)
class Body:
    """Triangles of one surface.

    ``points`` and ``normals`` are (n, 3), ``triangles`` (m, 3) count points from 0, anticlockwise
    seen from outside; ``places`` (n, 2) are where each point lies in the texture, (0, 0) at the
    bottom left of it (None: the surface has one colour).
    """

    name: str
    points: NDArray[np.float64]
    normals: NDArray[np.float64]
    triangles: NDArray[np.int64]
    surface: Surface
    places: NDArray[np.float64] | None = None


@dataclass(frozen=True, slots=True)
class Lamp:
    """A parallelogram that shines from its front: ``corner`` and two ``edges`` from there; it
    shines towards the vector product of the edges, with ``radiance`` in red, green and blue."""

    corner: Vector
    edges: tuple[Vector, Vector]
    radiance: Colour


@dataclass(frozen=True, slots=True)
class Camera:
    """A camera that looks level, so that verticals stay vertical.

    ``eye`` is where it stands, ``turn`` where it looks: degrees from the y axis (into the wall),
    positive to the right.  ``width`` and ``height`` are in pixels; ``focal`` is the focal length as
    a multiple of the picture's width, and ``shift`` by how much of the picture's width and height
    its middle lies right of and above the horizon's (as a shift lens does).
    """

    eye: Vector
    turn: float
    width: int
    height: int
    focal: float
    shift: tuple[float, float] = (0.0, 0.0)


@dataclass(frozen=True, slots=True, eq=False)
class Scene:
    """What is photographed.  ``sky`` is the radiance that comes from where nothing stands."""

    bodies: tuple[Body, ...]
    lamps: tuple[Lamp, ...]
    camera: Camera
    sky: Colour = (0.0, 0.0, 0.0)
