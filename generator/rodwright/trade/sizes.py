"""The sizes in which screws, dowels and drills are sold, and the round figures makers work to.

A maker in inches buys screws by their gauge and drills by the 64th; what is drilled has the size
that the list says, so the set-out picks both from here.  All lengths in mm.  Common practice, no
source, unless said.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import ceil, floor

from rodwright.geometry import TOUCH
from rodwright.lengths import LengthUnit, format_length, from_inches
from rodwright.trade.screws import DIAMETERS, GAUGES, LENGTHS, PILOTS, Grip, gauge_diameter

_INCH = from_inches("1")


def _inches(*sizes: str) -> tuple[float, ...]:
    return tuple(map(from_inches, sizes))


@dataclass(frozen=True, slots=True)
class TradeSizes:
    """What is sold to makers in one unit.

    ``screw_lengths`` and ``screw_diameters`` are those of wood screws, from the least up;
    ``of_edge`` is the thickest of an edge that a screw into it may be.  ``screw`` is the one for
    whatever isn't worked out, ``small_screw`` that of butt hinges.  ``dowels`` are lengths by
    diameter, the usual one first.  ``step`` is what depths and lengths of our own choosing are
    rounded to, ``drill`` the step between drills.
    """

    unit: LengthUnit
    screw_diameters: tuple[float, ...]
    screw_lengths: tuple[float, ...]
    of_edge: float
    screw: float
    small_screw: float
    handle_thread: str
    handle_lengths: tuple[float, ...]
    dowels: dict[float, float]
    step: float
    drill: float

    def say(self, length: float) -> str:
        """A length with its unit."""
        return f"{format_length(length, self.unit)} {self.unit}"

    def ware(self, length: float) -> str:
        """A size of something that is sold in mm everywhere: with its inches, for who works in
        them."""
        metric = f"{length:g} mm"
        return metric if self.unit == "mm" else f"{metric} ({self.say(length)})"

    def by(self, *lengths: float) -> str:
        """Several lengths, with their unit once: ``8 x 40 mm``."""
        return f"{' x '.join(format_length(each, self.unit) for each in lengths)} {self.unit}"

    def screw_name(self, diameter: float) -> str:
        """What a screw of this diameter is called: by its gauge, if it has one."""
        gauge = next((GAUGES[d] for d in GAUGES if abs(d - diameter) < 0.05), None)
        return self.say(diameter) if self.unit == "mm" or gauge is None else f"no. {gauge}"

    def screw_size(self, diameter: float, length: float) -> str:
        """What a screw is bought by: ``4 x 40 mm``, ``no. 8 x 1 1/2 in``."""
        name = self.screw_name(diameter)
        if name.startswith("no."):
            return f"{name} x {self.say(length)}"
        return self.by(diameter, length)

    def clearance(self, diameter: float) -> float:
        """Drill for a hole that a screw goes through freely: half a millimetre wider, or the next
        64th over its gauge."""
        if self.unit == "mm":
            return diameter + 0.5
        return ceil(diameter / self.drill - TOUCH) * self.drill

    def pilot(self, diameter: float, grip: Grip) -> float:
        """Drill for a screw's pilot hole, by what the screw goes into.

        Its root, two thirds of its diameter, times 0.7 in softwood and 0.9 in hardwood (Wood
        Handbook, ch. 8, from memory), there the next larger drill, as a tight screw breaks off;
        0.9 in sheets, and three quarters of the diameter where edges split (common practice, no
        source).
        """
        drills = PILOTS[grip] * diameter / self.drill
        return (ceil(drills - TOUCH) if grip == "hardwood" else round(drills)) * self.drill

    def holes(self, diameter: float, grip: Grip = "sheet") -> str:
        """What is drilled for a screw, in words."""
        clear, pilot = self.clearance(diameter), self.pilot(diameter, grip)
        return f"clearance {self.say(clear)}, pilot {self.say(pilot)}"

    def pilot_hole(self, diameter: float, grip: Grip) -> str:
        """What is drilled for a screw that goes through what has holes of its own, in words."""
        return f"pilot {self.say(self.pilot(diameter, grip))}"

    def pin_size(self, diameter: float, length: float) -> str:
        """What a panel pin is bought by: diameter and length, or its length alone in inches."""
        return f"{diameter:g} x {length:g} mm" if self.unit == "mm" else self.say(length)

    def pin_hole(self, diameter: float) -> str:
        """Drill for a panel pin's hole, in words: 0.8 of its diameter (Wood Handbook, ch. 8, gives
        75 to 90 % for nails)."""
        drill = round(0.8 * diameter, 1)
        if self.unit == "in":
            drill = max(1, floor(0.8 * diameter / self.drill + TOUCH)) * self.drill
        return self.say(drill)

    def longest_screw(self, most: float) -> float:
        """The longest screw that isn't longer than this, or the shortest there is."""
        fit = [each for each in self.screw_lengths if each <= most + TOUCH]
        return max(fit, default=self.screw_lengths[0])

    def round_down(self, length: float) -> float:
        """A length down to what is easily set."""
        return floor(length / self.step + TOUCH) * self.step

    def round_up(self, length: float) -> float:
        """A length up to what is easily set."""
        return ceil(length / self.step - TOUCH) * self.step

    def usual(self, length: float) -> float:
        """A figure of our own choosing, given in mm; for a maker in inches the round one near
        it: in 32nds, 16ths, eighths, quarters, halves or whole inches, as it is small or large."""
        if self.unit == "mm":
            return length
        parts = next(parts for most, parts in _PARTS if length < most)
        return max(1, round(length / _INCH * parts)) * _INCH / parts


_PARTS = ((2.0, 32), (20.0, 16), (50.0, 8), (100.0, 4), (300.0, 2), (float("inf"), 1))
"""Lengths under so many mm are rounded to such a part of an inch."""

SHEET_THICKNESSES: dict[LengthUnit, tuple[float, ...]] = {
    "mm": (3.0, 4.0, 6.0, 9.0, 12.0, 15.0, 18.0, 21.0, 24.0, 27.0, 30.0, 35.0, 40.0),
    "in": _inches("1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "1", "1 1/4", "1 1/2"),
}
"""Thicknesses in which sheets are sold, from the least up."""
PRESSED_THICKNESSES: dict[LengthUnit, tuple[float, ...]] = {
    "mm": (3.0, 4.0, 6.0, 9.0, 12.0, 15.0, 16.0, 18.0, 19.0, 22.0, 25.0, 30.0, 38.0),
    "in": _inches("1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "1", "1 1/8", "1 1/4"),
}
"""The same of MDF and chipboard."""
BOARD_THICKNESSES: dict[LengthUnit, tuple[float, ...]] = {
    "mm": (18.0, 20.0, 22.0, 25.0, 27.0, 30.0, 33.0, 38.0, 40.0, 45.0, 50.0, 60.0),
    "in": _inches("3/4", "1", "1 1/4", "1 1/2", "1 3/4", "2", "2 1/2"),
}
"""Thicknesses to which boards are sold planed, from the least up."""
METRIC = TradeSizes(
    unit="mm",
    screw_diameters=DIAMETERS["mm"],
    screw_lengths=LENGTHS["mm"],
    of_edge=4 / 18,
    screw=4.0,
    small_screw=3.0,
    handle_thread="M4",
    handle_lengths=(16, 18, 20, 22, 25, 28, 30, 35, 40, 45, 50, 60, 70),
    dowels={8.0: 40.0, 6.0: 30.0, 10.0: 50.0, 12.0: 60.0},
    step=1.0,
    drill=0.5,
)
"""What is sold to makers in mm."""
INCH = TradeSizes(
    unit="in",
    screw_diameters=DIAMETERS["in"],
    screw_lengths=LENGTHS["in"],
    of_edge=0.164 / (45 / 64),
    screw=gauge_diameter(8),
    small_screw=gauge_diameter(4),
    handle_thread="8-32",
    handle_lengths=_inches(
        "5/8", "3/4", "7/8", "1", "1 1/8", "1 1/4", "1 1/2", "1 3/4", "2", "2 1/2", "3"
    ),
    dowels=dict(
        zip(
            _inches("3/8", "5/16", "1/4", "1/2"),
            _inches("2", "1 1/2", "1 1/4", "2 1/2"),
            strict=True,
        )
    ),
    step=_INCH / 16,
    drill=_INCH / 64,
)
"""What is sold to makers in inches."""


def trade_sizes(unit: LengthUnit) -> TradeSizes:
    """What is sold to makers who work in this unit."""
    return INCH if unit == "in" else METRIC
