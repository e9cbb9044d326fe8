"""Common materials: their densities, with sources, and colours of our own.

Densities are in kg/m3 at the moisture content of a heated room.  Solid wood follows the
USDA Forest Products Laboratory's Wood Handbook (FPL-GTR-282, 2021, chapter 5): specific
gravity at 12 % moisture (oven-dry mass, volume at 12 %) times 1120.  The specific
gravities are quoted from memory, and so are the panel densities, which are usual
catalogue figures: weigh a sheet where it matters, and give ``density`` in the spec.
"""

from __future__ import annotations

from dataclasses import dataclass

WOOD_HANDBOOK = "Wood Handbook FPL-GTR-282 ch. 5, specific gravity at 12 % x 1120 (from memory)"
USUAL_FIGURE = "usual catalogue figure (from memory)"


@dataclass(frozen=True, slots=True)
class Material:
    """Density in kg/m3 and its source, colour as #rrggbb, and whether the face has grain."""

    density: float
    source: str
    colour: str
    grained: bool = True


def _wood(specific_gravity: float, colour: str) -> Material:
    return Material(round(specific_gravity * 1120.0), WOOD_HANDBOOK, colour)


MATERIALS: dict[str, Material] = {
    "ash": _wood(0.60, "#dcc7a1"),
    "beech": _wood(0.64, "#d8b48c"),
    "birch": _wood(0.62, "#e2cda4"),
    "cherry": _wood(0.50, "#b9794f"),
    "douglas fir": _wood(0.48, "#cf9f6c"),
    "maple": _wood(0.63, "#e6d3b1"),
    "oak": _wood(0.68, "#c8a271"),
    "pine": _wood(0.40, "#e4c48e"),
    "poplar": _wood(0.42, "#cfc49a"),
    "walnut": _wood(0.55, "#7a5840"),
    "european ash": Material(700.0, USUAL_FIGURE, "#dcc7a1"),
    "european oak": Material(720.0, USUAL_FIGURE, "#c8a271"),
    "scots pine": Material(520.0, USUAL_FIGURE, "#e4c48e"),
    "birch plywood": Material(680.0, USUAL_FIGURE, "#e5cfa3"),
    "oak plywood": Material(650.0, USUAL_FIGURE, "#cba878"),
    "poplar plywood": Material(450.0, USUAL_FIGURE, "#e6d9b8"),
    "softwood plywood": Material(550.0, USUAL_FIGURE, "#d9b982"),
    "oak-veneered mdf": Material(750.0, USUAL_FIGURE, "#cba878"),
    "mdf": Material(750.0, USUAL_FIGURE, "#b79a78", grained=False),
    "chipboard": Material(660.0, USUAL_FIGURE, "#c2a57c", grained=False),
    "melamine-faced chipboard": Material(680.0, USUAL_FIGURE, "#efece6", grained=False),
    "hardboard": Material(950.0, USUAL_FIGURE, "#8a6544", grained=False),
}
"""Materials by the name a spec calls them, in lower case."""
