"""Shapes on layers as DXF, R2000: what the oldest programs in use still read (common practice, no
source); circles, closed polylines and texts, nothing else."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from rodwright.cnc.layers import OUTLINE
from rodwright.cnc.shapes import Circle, Path, Shape, Text
from rodwright.handover.dxf import document_bytes, new_document, plain_text

_COLOURS = {"FACE": 5, "REVERSE": 3, "THROUGH": 1, "NEAR": 6, "FAR": 6, "BACK": 6}
"""Colour numbers by what a layer's name begins with; the name tells it all without."""
_DARK, _GREY = 7, 8


def shapes_dxf(shapes: Sequence[Shape]) -> bytes:
    """A DXF file of shapes in mm, full size; the same bytes for the same shapes."""
    document = new_document()
    for name in sorted({each.layer for each in shapes}):
        document.layers.add(name, color=_colour(name))
    space = document.modelspace()
    for each in shapes:
        _add(space, each)
    return document_bytes(document)


def _colour(layer: str) -> int:
    if layer == OUTLINE:
        return _DARK
    if layer.startswith("FACE_EDGE"):
        return _COLOURS["BACK"]
    return _COLOURS.get(layer.split("_")[0], _GREY)


def _add(space: Any, shape: Shape) -> None:
    from ezdxf.enums import TextEntityAlignment

    attributes = {"layer": shape.layer}
    match shape:
        case Circle():
            space.add_circle(shape.centre, shape.diameter / 2, dxfattribs=attributes)
        case Path():
            bulges = shape.bulges or (0.0,) * len(shape.points)
            points = [(x, y, bulge) for (x, y), bulge in zip(shape.points, bulges, strict=True)]
            space.add_lwpolyline(points, format="xyb", close=shape.closed, dxfattribs=attributes)
        case Text():
            attributes["rotation"] = 90.0 if shape.upright else 0.0  # type: ignore[assignment]
            text = space.add_text(
                plain_text(shape.text), height=shape.height, dxfattribs=attributes
            )
            text.set_placement(shape.at, align=TextEntityAlignment.MIDDLE_CENTER)
