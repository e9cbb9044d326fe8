"""The keys of an offcut as they are written into a rack file."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from rodwright.cutting.taking import Comes
from rodwright.lengths import LengthUnit, at_least, at_most, format_length
from rodwright.trade.materials import material_called


def offcut_keys(come: Comes, unit: LengthUnit) -> dict[str, Any]:
    """An offcut's keys as they are written into the rack file; sizes down to what a rule shows."""

    keys: dict[str, Any] = {"kind": come.kind, "material": come.material}
    known = material_called(come.material)
    if known is None:
        keys["density"] = round(come.density, 1)
    keys["thickness"] = _exact(come.thickness, unit)
    if come.kind == "sheet":
        keys["size"] = [_size(come.length, unit), _size(come.width, unit)]
        if come.grained != (known is None or known.grained):
            keys["grain"] = "lengthwise" if come.grained else "none"
        if come.show_faces != 2:
            keys["show_faces"] = come.show_faces
    elif come.kind == "board":
        if come.sawn_thickness is not None:
            keys["sawn_thickness"] = _exact(come.sawn_thickness, unit)
            # Its edges were ripped straight: nothing more comes off its width.
            keys["planing"] = 0
        keys |= {"length": _size(come.length, unit), "width": _size(come.width, unit)}
    else:
        keys |= {"section": _exact(come.section, unit), "length": _size(come.length, unit)}
    keys["count"] = 1
    if flaws := list(_flaws_written(come, unit)):
        keys["flaws"] = flaws
    if come.cut_from:
        keys["note"] = f"left of {come.cut_from}"
    return keys


def _flaws_written(come: Comes, unit: LengthUnit) -> Iterator[dict[str, Any]]:
    """Flaws as they are written: no smaller than they are, and within the size that is written."""
    for flaw in come.flaws:
        x, stop = _span(flaw.x, flaw.length, come.length, unit)
        y, side = _span(flaw.y, flaw.width, come.width, unit)
        if stop <= x or (come.width and side <= y):
            continue  # in what the size is rounded off by
        keys = {"x": _size(x, unit), "length": _size(stop - x, unit)}
        if y:
            keys["y"] = _size(y, unit)
        if side < at_most(come.width, unit) - _HAIR:
            keys["width"] = _size(side - y, unit)
        yield keys | ({"why": flaw.why} if flaw.why else {})


def _span(begin: float, size: float, whole: float, unit: LengthUnit) -> tuple[float, float]:
    """From where to where a flaw reaches, mm, as it is shown."""
    return at_most(begin, unit), min(at_least(begin + size, unit), at_most(whole, unit))


def _size(length: float, unit: LengthUnit) -> int | float | str:
    """A length as it is written, down to what a rule shows."""
    text = format_length(at_most(length, unit), unit)
    if text.isdecimal():
        return int(text)
    return float(text) if unit == "mm" else text


def _exact(length: float, unit: LengthUnit) -> int | float | str:
    """A thickness as it is written: in mm, where it is no 64th of an inch."""
    if unit == "in" and abs(length - at_most(length, unit)) < _HAIR:
        return _size(length, unit)
    shown = round(length, 3)
    number = int(shown) if shown == int(shown) else shown
    return number if unit == "mm" else f"{number} mm"


_HAIR = 1e-4
"""mm."""
