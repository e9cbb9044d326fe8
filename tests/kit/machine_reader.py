"""Drawings for a machine read back as a shop reads them: by layer names and shapes alone."""

from __future__ import annotations

import io
import math
import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import Any

import ezdxf
from ezdxf import recover
from ezdxf.path import make_path
from shapely.geometry import Point, Polygon
from shapely.ops import unary_union

_DEPTH = re.compile(r"_DEEP_([0-9p]+)")


@dataclass(frozen=True, slots=True)
class Pocket:
    """An area that is cut, its layer, and its depth (infinite right through)."""

    layer: str
    area: Polygon
    depth: float


def read(data: bytes) -> Any:
    """A document, which has to be without faults."""
    document, auditor = recover.read(io.BytesIO(data))
    assert not auditor.has_errors, [each.message for each in auditor.errors]
    assert not auditor.fixes, [each.message for each in auditor.fixes]
    assert document.dxfversion >= "AC1015"  # R2000
    assert document.units == ezdxf.units.MM
    return document


def areas(document: Any, layer: str) -> list[Polygon]:
    """The closed shapes of a layer."""
    found = []
    for each in document.modelspace().query(f'*[layer=="{layer}"]'):
        if each.dxftype() == "CIRCLE":
            # As large as the circle in area, whatever the number of its corners.
            many = 720
            share = math.sqrt(2 * math.pi / many / math.sin(2 * math.pi / many))
            centre = Point(each.dxf.center.x, each.dxf.center.y)
            found.append(centre.buffer(each.dxf.radius * share, quad_segs=many // 4))
        elif each.dxftype() == "LWPOLYLINE" and each.closed:
            found.append(Polygon([(p.x, p.y) for p in make_path(each).flattening(0.0005)]))
    return found


def outline(document: Any) -> Polygon:
    """The one outline of a part."""
    (first, *others) = sorted(areas(document, "OUTLINE"), key=lambda it: -it.area)
    for hole in others:
        first = first.difference(hole)
    return first


def pockets(document: Any, side: str) -> Iterator[Pocket]:
    """What is cut from a side (``FACE``, ``REVERSE`` or ``THROUGH``)."""
    for layer in document.layers:
        name = layer.dxf.name
        if not name.startswith(f"{side}_") or name.startswith("FACE_EDGE"):
            continue
        deep = _DEPTH.search(name)
        depth = float(deep[1].replace("p", ".")) if deep else math.inf
        if side == "THROUGH" or deep:
            for each in areas(document, name):
                yield Pocket(name, each, depth)


def removed(cut: Sequence[Pocket], within: Polygon, thickness: float) -> float:
    """What some pockets of one side take (mm3): layer by layer, each place once."""
    levels = sorted({0.0, *(min(each.depth, thickness) for each in cut)})
    total = 0.0
    for low, high in pairwise(levels):
        deeper = [each.area for each in cut if min(each.depth, thickness) > low]
        total += (high - low) * unary_union(deeper).intersection(within).area
    return total


def from_edges(document: Any) -> float:
    """What is cut from ends and edges (mm3): bored, or as high as the layer says it is wide."""
    total = 0.0
    for layer in document.layers:
        name = layer.dxf.name
        found = re.match("(?:NEAR_END|FAR_END|FACE_EDGE|BACK_EDGE)_([A-Z_]+)_([0-9p]+)_", name)
        if found is None:
            continue
        size = float(found[2].replace("p", "."))
        for each in areas(document, name):
            # Of a bore the drawing shows diameter by depth.
            total += each.area * size * (math.pi / 4 if found[1] == "HOLE" else 1.0)
    return total
