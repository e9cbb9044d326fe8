"""An entry of a part sheet as the cells of its table."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from rodwright.paper.part_sheets.datum import AXES
from rodwright.paper.part_sheets.figures import Entry, Figure, Point, Row, Stretch

_SIZES = {
    "diameter": "{} dia.",
    "radius": "{} radius",
    "cutter": "core-box bit {} dia.",
    "angle": "{}",
}
"""How sizes that have a word of their own are told."""


def cells(entry: Entry) -> dict[str, Any]:
    """What a row of the table says: ``what``, ``into``, ``x``, ``y``, ``z``, ``depth``, ``purpose``
    as texts; ``where`` in place of x, y and z for sloping cuts."""
    figures = entry.figures
    told: dict[str, Any] = {
        "number": str(entry.number),
        "what": _what(entry),
        "into": " / ".join(entry.into),
        "depth": _depth(figures),
        "purpose": entry.purpose,
    }
    if "from" in figures or "over" in figures:
        return told | {"where": _slant(entry)}
    return told | {axis: _places(figures.get(axis)) for axis in AXES}


def _what(entry: Entry) -> str:
    figures, said = entry.figures, [entry.kind]
    if entry.count > 1:
        plural = "es" if entry.kind.endswith("s") else "s"
        said = [f"{entry.count} {entry.kind}{plural}"]
    said += [text.format(figures[key]) for key, text in _SIZES.items() if key in figures]
    if "long" in figures:
        said.append(
            f"{figures['long']} long along {figures['runs along']}, {figures['wide']} wide, "
            "round ends, by its middle"
        )
    elif "length" in figures:
        said.append(f"{figures['length']} x {figures['width']}")
    elif "width" in figures:
        said.append(f"{figures['width']} wide")
    if "leaves" in figures:
        said.append(f"ending {figures['stops']} before the {entry.into[1]}")
        out = f"{figures['leaves']} below the {entry.into[0]}"
        said.append(f"then {figures['screw']} dia. out of that {out}")
    return f"{said[0]} {', '.join(map(str, said[1:]))}".strip()


def _depth(figures: Mapping[str, Figure]) -> str:
    return str(figures.get("depth", ""))


def _slant(entry: Entry) -> str:
    figures = entry.figures
    first, second = entry.into
    if "over" in figures:
        return f"{figures['over']} over the {second}, {figures['down']} down the {first}"
    ends = " to ".join(
        f"{end.axis} {end.at} on the {end.on}"
        for end in (figures["from"], figures["to"])
        if isinstance(end, Point)
    )
    return f"straight from {ends}; the corner of {first} and {second} falls off"


def _places(figure: Figure | None) -> str:
    """Places along an axis, or a stretch from one to another."""
    if figure is None:
        return ""
    if isinstance(figure, Stretch):
        return f"{figure.start} to {figure.stop}"
    return ", ".join(map(_place, figure)) if isinstance(figure, tuple) else str(figure)


def _place(place: str | Row | Stretch) -> str:
    match place:
        case Row(first, pitch, count, last):
            return f"{count} at {pitch} from {first} to {last}"
        case Stretch(start, stop):
            return f"{start} to {stop}"
    return place
