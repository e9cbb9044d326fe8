"""Published tables of how far shelves span and sag, row by row."""

from __future__ import annotations

from math import floor

import pytest

from rodwright.amounts import GRAVITY, Kind, parse_amount
from rodwright.lengths import from_inches
from rodwright.strength.span import Carried, Plank, greatest_span, trial

_SPANS = {
    "Douglas fir veneer core, 3/4 in, 40 lb/ft2": ("950000 psi", "3/4", "40 lb/ft2", 40),
    "Douglas fir veneer core, 3/4 in, 50 lb/ft2": ("950000 psi", "3/4", "50 lb/ft2", 37),
    "Douglas fir veneer core, 1 in, 40 lb/ft2": ("950000 psi", "1", "40 lb/ft2", 53),
    "Douglas fir veneer core, 1 in, 50 lb/ft2": ("950000 psi", "1", "50 lb/ft2", 49),
    "hardwood faces, 3/4 in, 40 lb/ft2": ("1800000 psi", "3/4", "40 lb/ft2", 49),
    "hardwood faces, 3/4 in, 50 lb/ft2": ("1800000 psi", "3/4", "50 lb/ft2", 46),
}
"""Modulus, thickness (in), load, and the greatest length (in) as printed.

Architectural Woodwork Standards, 1st ed. (2009), section 10, page 279, 4.4.14.10: plywood shelves
on two supports, limit L/144, at once, own weight not counted; those of its rows that were read."""

_AS_PRINTED = 0.05
"""in.  Lengths are printed rounded down, but what is this near the next (45.98) goes up."""


@pytest.mark.parametrize("name", _SPANS)
def test_spans_of_the_architectural_woodwork_standards(name: str) -> None:
    modulus, thickness, load, printed = _SPANS[name]
    plank = Plank(
        depth=from_inches("12"),
        thickness=from_inches(thickness),
        modulus=parse_amount(modulus, [Kind.STRESS]).value,
    )
    pressure = parse_amount(load, [Kind.AREA_WEIGHT]).value * GRAVITY / 1e6
    span = greatest_span(plank, Carried(spread=pressure), 144)
    assert span is not None
    assert floor(span / 25.4 + _AS_PRINTED) == printed


@pytest.mark.parametrize(("length", "sag"), [(600, 1.51), (800, 3.59), (1000, 7.01)])
def test_the_european_mdf_guides_formula(length: float, sag: float) -> None:
    """``5 W g L^3 / (32 E b t^3)``, E 2500 N/mm2, 300 mm deep, 18 mm thick, 20 kg, g 9.81 (European
    MDF industry guide, shelves and storage units, section 11)."""
    found = trial(Plank(300.0, 18.0, 2500.0), Carried(whole=20 * 9.81), length, 200)
    assert round(found.sag, 2) == sag
