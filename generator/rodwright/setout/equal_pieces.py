"""Pieces that are the same compare equal: figures are rounded, workings come in a fixed order."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import fields, replace
from typing import Any, TypeVar

from rodwright.unit import Blank, Part, Working

Data = TypeVar("Data", Blank, Working)


def comparable(part: Part, workings: Iterable[Working]) -> Part:
    """A part with its workings, lengths to a millionth of a millimetre."""
    cut = tuple(sorted(map(_rounded, workings), key=_sorting))
    return replace(part, blank=_rounded(part.blank), workings=cut)


def _even(value: float) -> float:
    """A length rounded to 1e-6 mm.  Halves, which parts of inches often are, all go up: else the
    float's own error would say which of two equal pieces is the larger."""
    return round(value + 1e-9, 6)


def _rounded(data: Data) -> Data:
    """The same blank or working with its lengths rounded to 1e-6 mm."""
    changes: dict[str, Any] = {
        each.name: _even(value)
        for each in fields(data)
        if isinstance(value := getattr(data, each.name), float)
    }
    for each in ("position", "extent"):
        if isinstance(pair := getattr(data, each, None), tuple):
            changes[each] = tuple(map(_even, pair))
    return replace(data, **changes)


def _sorting(working: Working) -> tuple[str, ...]:
    """By kind, then by its figures in the order in which they are declared."""
    values = (getattr(working, each.name) for each in fields(working) if each.init)
    return (
        working.kind,
        *(f"{value:015.6f}" if isinstance(value, float) else str(value) for value in values),
    )
