"""Finishes: coats, spreading rates, grits, and what is dangerous about them.

Ranges are those that makers of such finishes usually print, from memory; the tin comes first.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from math import floor
from types import MappingProxyType

from rodwright.lengths import LengthUnit
from rodwright.trade.materials import is_glass


@dataclass(frozen=True, slots=True)
class Coat:
    """So many coats of one thing: what a litre covers (m2, least and most) in one, and what is done
    before the next."""

    what: str
    coats: int
    covers: tuple[float, float]
    between: str

    def litres(self, area: float) -> tuple[float, float]:
        """The least and the most that an area (m2) takes, all coats, litres."""
        least, most = self.covers
        return self.coats * area / most, self.coats * area / least


@dataclass(frozen=True, slots=True)
class Finish:
    """A kind of finish: the last grit that bare wood is sanded with, and its coats."""

    name: str
    last_grit: int
    coats: tuple[Coat, ...]
    notes: tuple[str, ...] = ()


_LACQUER = Coat(
    "lacquer",
    3,
    (8.0, 12.0),
    "2 to 4 hours; 320 by hand after the first coat, which raises the grain",
)
FINISHES = (
    Finish(
        "Water-based lacquer",
        180,
        (_LACQUER,),
        ("Stir it, don't shake; above 15 C; no steel wool: what stays in rusts.",),
    ),
    Finish(
        "Hardwax oil",
        150,
        (
            Coat(
                "oil",
                2,
                (20.0, 30.0),
                "8 to 12 hours; thin, and all that isn't soaked up wiped off within 15 minutes",
            ),
        ),
        ("Its rags catch fire by themselves.", "Keep it off surfaces that are to be glued."),
    ),
    Finish(
        "Primer and paint",
        150,
        (
            Coat(
                "primer",
                1,
                (8.0, 12.0),
                "as the tin says; 240 by hand; fill holes now; cut edges of MDF twice",
            ),
            Coat("paint", 2, (10.0, 14.0), "4 to 6 hours; 320 by hand"),
        ),
        ("Knots in softwood are sealed first, or they bleed through.",),
    ),
)
"""Usual kinds for furniture indoors; from memory."""
_STAINED = Finish(
    "Stain under water-based lacquer",
    180,
    (
        Coat("stain", 1, (10.0, 15.0), "as the tin says; wiped even, dry before it is lacquered"),
        _LACQUER,
    ),
    (
        "What glue is left on the wood takes no stain: scrape it off first. End grain drinks more: "
        "damp it before.",
    ),
)
"""Wood that is coloured and shows its grain; from memory."""
OF_KIND: Mapping[str, Finish] = MappingProxyType(
    dict(zip(("lacquer", "oil", "paint"), FINISHES, strict=True)) | {"stain": _STAINED}
)
"""What each kind of finish that a spec may ask for is done with."""

GRITS = (120, 150, 180)
"""Abrasives in their order for planed wood, along the grain; veneered sheets begin at 150, for
their face is soon through. Common practice, no source."""


@dataclass(frozen=True, slots=True)
class Tins:
    """How finishes are sold: the measure, what one of it is in litres, and the tins."""

    symbol: str
    litre: float
    sizes: tuple[float, ...]

    def buy(self, litres: float) -> float:
        """The smallest tin that holds so much, after as many of the largest as it fills, in this
        measure."""
        amount, largest = litres / self.litre, self.sizes[-1]
        full = floor(amount / largest + 1e-9)
        rest = amount - full * largest
        if full and rest < 1e-9:
            return full * largest
        return full * largest + next(each for each in self.sizes if rest <= each + 1e-9)


TINS: dict[LengthUnit, Tins] = {
    "mm": Tins("l", 1.0, (0.25, 0.5, 0.75, 1.0, 2.5, 5.0)),
    "in": Tins("qt", 0.946352946, (0.25, 0.5, 1.0, 4.0)),
}
"""Tins that are usual (common practice, no source); the US quart is 0.946352946 l (NIST Special
Publication 811, appendix B.8, from memory)."""


def takes_finish(material: str) -> bool:
    """Whether a material is finished at all: not glass, nor what is faced with melamine."""
    return not is_glass(material) and "melamine" not in material.casefold()


CAUTIONS = (
    "Rags, pads and paper with oil or oil-based finish on them heat up and catch fire by "
    "themselves. Spread them flat outdoors until they are hard and dry, or put them under water in "
    "a lidded metal tin. Never leave them in a heap, a bin or a pocket.",
    "Solvent vapours burn and make you dizzy, sick, or worse. Open two windows; no flames, "
    "cigarettes, heaters or sparks; the mask that the tin asks for (organic vapour, not a dust "
    "mask).",
    "Sanding dust of wood and of old finish harms lungs: extraction and a mask of class FFP2/N95 "
    "or better. Empty the bag outdoors: fine dust burns.",
    "Gloves. The tin's own sheet and local rules come first; left-overs go to where they are taken "
    "back, not down a drain.",
)
"""Common practice, no source."""
