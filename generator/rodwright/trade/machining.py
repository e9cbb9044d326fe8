"""What is asked of a machined part: tolerances in mm, and the tool that sheets are cut with."""

from __future__ import annotations

TOLERANCES = (
    ("length and width", "± 0.2 mm"),
    ("places of holes and channels, from the datum corner", "± 0.1 mm"),
    ("width of housings, grooves and rebates", "+ 0.2 / - 0 mm, tried with the board that goes in"),
    ("depth", "± 0.2 mm; blind holes never deeper than said by more than 0.5 mm"),
    ("holes", "the drill's own size"),
    ("squareness", "diagonals within 0.5 mm"),
)
"""General tolerances for carcass parts (common practice, no source)."""
LEAST_TOOL, MOST_TOOL = 1.0, 25.0
"""Diameters of cutters that sheets are cut with, mm (common practice, no source)."""
