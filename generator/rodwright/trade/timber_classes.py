"""Strength classes of graded timber (EN 338:2016).

N/mm2 and kg/m3.  Most were read in a public transcription of its table 1 (TeachBooks Vademecum);
those marked are from memory.
"""

from __future__ import annotations

from dataclasses import dataclass

from rodwright.trade.sources import Source

_WORK = "EN 338:2016, table 1"


@dataclass(frozen=True, slots=True)
class TimberClass:
    """Means of modulus of elasticity along and across the grain and of the shear modulus;
    characteristic strengths in bending and shear; density, mean and characteristic."""

    modulus: float
    across: float
    shear: float
    bending: float
    shear_strength: float
    density: float
    characteristic_density: float
    seen: bool = True

    @property
    def source(self) -> Source:
        """Where its figures stand."""
        return Source(_WORK, self.seen)


# fmt: off
TIMBER_CLASSES: dict[str, TimberClass] = {
    "C14": TimberClass(7000, 230, 440, 14, 3.0, 350, 290),
    "C16": TimberClass(8000, 270, 500, 16, 3.2, 370, 310),
    "C18": TimberClass(9000, 300, 560, 18, 3.4, 380, 320),
    "C20": TimberClass(9500, 320, 590, 20, 3.6, 400, 330, seen=False),
    "C22": TimberClass(10000, 330, 630, 22, 3.8, 410, 340, seen=False),
    "C24": TimberClass(11000, 370, 690, 24, 4.0, 420, 350),
    "C27": TimberClass(11500, 380, 720, 27, 4.0, 430, 360, seen=False),
    "C30": TimberClass(12000, 400, 750, 30, 4.0, 460, 380),
    "C35": TimberClass(13000, 430, 810, 35, 4.0, 470, 390, seen=False),
    "C40": TimberClass(14000, 470, 880, 40, 4.0, 480, 400),
    "C45": TimberClass(15000, 500, 940, 45, 4.0, 490, 410, seen=False),
    "C50": TimberClass(16000, 530, 1000, 50, 4.0, 520, 430, seen=False),
    "D18": TimberClass(9500, 630, 590, 18, 3.5, 570, 475),
    "D24": TimberClass(10000, 670, 630, 24, 3.7, 580, 485),
    "D27": TimberClass(10500, 700, 660, 27, 3.8, 610, 510, seen=False),
    "D30": TimberClass(11000, 730, 690, 30, 3.9, 640, 530),
    "D35": TimberClass(12000, 800, 750, 35, 4.1, 650, 540, seen=False),
    "D40": TimberClass(13000, 870, 810, 40, 4.2, 660, 550),
    "D45": TimberClass(13500, 900, 840, 45, 4.4, 700, 580, seen=False),
    "D50": TimberClass(14000, 930, 880, 50, 4.5, 740, 620),
    "D55": TimberClass(15500, 1030, 970, 55, 4.7, 790, 660, seen=False),
    "D60": TimberClass(17000, 1130, 1060, 60, 4.8, 840, 700),
    "D65": TimberClass(18500, 1230, 1160, 65, 5.0, 900, 750, seen=False),
    "D70": TimberClass(20000, 1330, 1250, 70, 5.0, 960, 800),
}
# fmt: on
"""Classes by their names: C of softwoods, D of hardwoods (EN 338:2016, table 1)."""


def bearing_strength(characteristic_density: float, *, hardwood: bool) -> float:
    """Characteristic strength in compression square to the grain, N/mm2: 0.007 of the
    characteristic density for softwoods, 0.010 for hardwoods, and 0.015 for those of 700 kg/m3 and
    more (EN 384, as EN 338 applies it; from memory)."""
    share = 0.007 if not hardwood else 0.015 if characteristic_density >= 700.0 else 0.010
    return round(share * characteristic_density, 1)
