"""Weights, areas, volumes and runs, in the words of makers in millimetres or in inches.

Inside they are kilograms, square and cubic metres, and metres; this is the edge where they turn
into pounds, square feet, board feet and feet for a spec in inches.
"""

from __future__ import annotations

from dataclasses import dataclass

from rodwright.lengths import LengthUnit


@dataclass(frozen=True, slots=True)
class Measure:
    """A unit of measure: its symbol, what one of it is inside, and the decimals it is shown to."""

    symbol: str
    one: float
    decimals: int

    def of(self, amount: float) -> float:
        """An amount (kg, m2, m3, m) in this measure."""
        return amount / self.one

    def said(self, amount: float, decimals: int | None = None) -> str:
        """An amount (kg, m2, m3, m) as text with the symbol."""
        return (
            f"{self.of(amount):.{self.decimals if decimals is None else decimals}f} {self.symbol}"
        )


# By definition: the pound is 0.45359237 kg, the foot 0.3048 m (NIST Special Publication 811,
# appendix B.8); a board foot is a foot square and an inch thick (NIST Handbook 130, from memory).
_FOOT = 0.3048
WEIGHTS: dict[LengthUnit, Measure] = {
    "mm": Measure("kg", 1.0, 1),
    "in": Measure("lb", 0.45359237, 1),
}
AREAS: dict[LengthUnit, Measure] = {
    "mm": Measure("m2", 1.0, 2),
    "in": Measure("sq ft", _FOOT**2, 1),
}
VOLUMES: dict[LengthUnit, Measure] = {
    "mm": Measure("m3", 1.0, 4),
    "in": Measure("board ft", _FOOT**3 / 12, 1),
}
RUNS: dict[LengthUnit, Measure] = {
    "mm": Measure("m", 1.0, 1),
    "in": Measure("ft", _FOOT, 1),
}


def format_weight(kg: float, unit: LengthUnit, decimals: int | None = None) -> str:
    """A weight with its unit: kilograms for a maker in mm, pounds for one in inches."""
    return WEIGHTS[unit].said(kg, decimals)
