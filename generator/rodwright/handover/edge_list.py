"""The edge list: lippings to rip and edging to buy."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from math import ceil
from typing import Literal

from rodwright.amounts import RUNS, Measure
from rodwright.unit import Edging, JointKind, Part, Role, Surface, Unit

ALLOWANCE = 0.1
"""Part of the length that is got in addition, for trimming and mistakes (common practice, no
source)."""


@dataclass(frozen=True, slots=True)
class EdgeRow:
    """Strips of one section.

    ``width`` is across the edge that is covered; ``thickness`` and ``width`` in mm, ``net``
    in metres.  ``stock`` is what lippings come out of, empty for edging.  ``refs`` are the
    lippings, or the parts that the edging goes on.
    """

    kind: Literal["lipping", "edging"]
    material: str
    stock: str
    thickness: float
    width: float
    strips: int
    net: float
    refs: tuple[str, ...]

    @property
    def to_get(self) -> float:
        """Metres to get: a tenth more, rounded up to 0.1 m."""
        return self.run_to_get(RUNS["mm"])

    def run_to_get(self, run: Measure) -> float:
        """How much to get in metres or feet: a tenth more, rounded up to a tenth of one."""
        return ceil(round(run.of(self.net) * (1 + ALLOWANCE) * 10, 6)) / 10


_Section = tuple[Literal["lipping", "edging"], str, str, float, float]


def edge_list(unit: Unit) -> tuple[EdgeRow, ...]:
    """Lippings by stock and section, then edging by material and section.

    Both as long as what they cover: what lippings are first cut longer is within the tenth.
    Layers that are glued face to face share one strip.
    """
    gathered: dict[_Section, list[tuple[str, float]]] = {}
    for section, ref, length in (*_lippings(unit), *_edgings(unit)):
        gathered.setdefault(section, []).append((ref, length))
    return tuple(
        EdgeRow(
            *section,
            strips=len(strips),
            net=sum(length for _, length in strips) / 1000,
            refs=tuple(dict.fromkeys(ref for ref, _ in strips)),
        )
        for section, strips in gathered.items()
    )


def _lippings(unit: Unit) -> Iterator[tuple[_Section, str, float]]:
    for part in unit.parts:
        if part.role is Role.LIPPING:
            blank = part.blank
            stock = blank.stock
            section: _Section = (
                "lipping", stock.material, stock.name, blank.thickness, blank.width,
            )  # fmt: skip
            yield section, part.ref, part.blank.length


def _edgings(unit: Unit) -> Iterator[tuple[_Section, str, float]]:
    below = {
        joint.second: joint.first for joint in unit.joints if joint.kind is JointKind.FACE_GLUED
    }
    layers: dict[str, list[Part]] = {}
    for part in unit.parts:
        ref = part.ref
        while ref in below:
            ref = below[ref]
        layers.setdefault(ref, []).append(part)
    for ref, glued in layers.items():
        for edging in glued[0].edged:
            width = sum(part.blank.thickness for part in glued if edging in part.edged)
            section: _Section = ("edging", edging.called, "", edging.thickness, width)
            yield section, ref, _length(glued[0], edging)


def _length(part: Part, edging: Edging) -> float:
    """Length (mm) of the edge that edging covers."""
    ends = (Surface.NEAR_END, Surface.FAR_END)
    return part.blank.width if edging.surface in ends else part.blank.length
