"""Colours of bare woods and panels as they are measured: CIELAB, daylight D65.

Planed or sanded, unfinished, heartwood where it differs, before years of light.  Trees differ: a
standard deviation of 2 to 4 in L* and of 1 to 2 in a* and b* is usual (as in the sources seen).
Rows without a work of their own are from memory.
``materials.py`` has colours too, those of drawings: they are stronger, so that parts are told
apart on paper.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import hypot

from rodwright.trade.sources import Source


@dataclass(frozen=True, slots=True)
class WoodColour:
    """Mean L*, a* and b* (CIE 1976, illuminant D65), and where they are from."""

    lightness: float
    red: float
    yellow: float
    source: Source

    def difference(self, lightness: float, red: float, yellow: float) -> float:
        """The colour difference of CIE 1976, dE*ab, to another colour."""
        return hypot(self.lightness - lightness, self.red - red, self.yellow - yellow)


_USUAL = Source("usual readings with a colorimeter", seen=False)
_BIRCH = Source(
    "Dudiak and Dzurenda, native birch before 48 months of daylight, Acta Facultatis Xylologiae "
    "Zvolen, https://ojs.tuzvo.sk/index.php/AFXZ/article/view/50 (illuminant taken to be D65)"
)
_SOFTWOODS = Source(
    "spruce (Picea abies) and fir (Abies alba) before heat and UV, Wood Research, abstract at "
    "http://www.woodresearch.sk/cms/tag/colour-change/ (illuminant taken to be D65)"
)


def _usual(lightness: float, red: float, yellow: float) -> WoodColour:
    return WoodColour(lightness, red, yellow, _USUAL)


_SPRUCE = WoodColour(80.1, 7.6, 21.6, _SOFTWOODS)
_MDF = _usual(67.0, 7.0, 19.5)
_CHIPS = _usual(68.0, 6.5, 21.0)
_STRANDS = _usual(68.0, 8.5, 27.0)
_MELAMINE = _usual(93.0, 0.0, 2.5)
_HARDBOARD = _usual(45.0, 10.0, 19.0)
_GREEN_MDF = _usual(66.0, -2.0, 20.0)

WOOD_COLOURS: dict[str, WoodColour] = {
    "birch": WoodColour(81.1, 7.2, 20.0, _BIRCH),
    "spruce": _SPRUCE,
    "norway spruce": _SPRUCE,
    "white fir": WoodColour(80.5, 6.8, 18.9, _SOFTWOODS),
    "alder": _usual(69.0, 10.5, 22.0),
    "ash": _usual(77.0, 5.5, 19.5),
    "european ash": _usual(78.5, 5.0, 19.0),
    "aspen": _usual(83.0, 3.5, 17.0),
    "basswood": _usual(78.0, 5.0, 20.0),
    "beech": _usual(71.5, 8.5, 19.0),
    "european beech": _usual(71.5, 8.5, 19.0),
    "butternut": _usual(61.0, 7.0, 20.0),
    "cherry": _usual(61.0, 12.0, 22.5),
    "chestnut": _usual(66.0, 6.5, 21.0),
    "cypress": _usual(73.0, 7.5, 25.0),
    "douglas fir": _usual(69.5, 10.5, 25.0),
    "eastern white pine": _usual(79.5, 6.0, 23.5),
    "elm": _usual(60.0, 8.5, 21.0),
    "hemlock": _usual(74.0, 6.0, 19.5),
    "hickory": _usual(69.0, 8.0, 20.0),
    "larch": _usual(67.5, 12.0, 26.0),
    "maple": _usual(80.5, 5.0, 18.0),
    "oak": _usual(67.5, 6.5, 20.5),
    "european oak": _usual(68.5, 6.5, 21.0),
    "white oak": _usual(66.0, 6.0, 19.5),
    "red oak": _usual(66.5, 8.5, 19.5),
    "pine": _usual(79.5, 5.5, 24.0),
    "scots pine": _usual(78.5, 6.0, 24.5),
    "southern pine": _usual(75.0, 8.5, 27.0),
    "radiata pine": _usual(79.0, 5.5, 23.5),
    "poplar": _usual(72.0, 2.5, 20.5),
    "tulipwood": _usual(72.0, 2.5, 20.5),
    "robinia": _usual(62.0, 5.0, 29.0),
    "soft maple": _usual(77.0, 6.0, 18.0),
    "sweetgum": _usual(57.0, 10.0, 18.5),
    "sycamore": _usual(82.0, 4.0, 17.5),
    "walnut": _usual(45.0, 7.0, 16.5),
    "western red cedar": _usual(55.0, 12.0, 22.0),
    "african mahogany": _usual(53.0, 14.5, 22.0),
    "afrormosia": _usual(55.0, 10.0, 26.0),
    "iroko": _usual(55.5, 10.5, 27.0),
    "light red meranti": _usual(61.0, 11.5, 19.5),
    "mahogany": _usual(48.5, 15.0, 21.0),
    "meranti": _usual(53.0, 14.0, 20.5),
    "obeche": _usual(79.0, 3.5, 21.0),
    "parana pine": _usual(71.0, 9.0, 22.0),
    "ramin": _usual(79.0, 3.5, 20.0),
    "sapele": _usual(46.5, 14.5, 19.5),
    "spanish cedar": _usual(56.0, 14.0, 23.0),
    "teak": _usual(56.5, 10.0, 26.0),
    "birch plywood": _usual(81.0, 4.5, 19.5),
    "softwood plywood": _usual(77.5, 6.0, 23.5),
    "hardwood plywood": _usual(72.0, 7.5, 20.5),
    "okoume plywood": _usual(64.0, 11.0, 19.0),
    "blockboard": _usual(74.0, 7.5, 21.0),
    "mdf": _MDF,
    "mdf.la": _MDF,
    "mr mdf": _GREEN_MDF,
    "mdf.hls": _GREEN_MDF,
    "hdf": _usual(58.0, 8.5, 20.0),
    "melamine-faced mdf": _MELAMINE,
    "melamine-faced chipboard": _MELAMINE,
    "chipboard": _CHIPS,
    "hardboard": _HARDBOARD,
    "hb.la": _HARDBOARD,
    "hb.hla2": _HARDBOARD,
    "osb": _STRANDS,
    "glass": _usual(88.0, -4.0, -1.0),
}
"""By the name that ``MATERIALS`` has; other plywoods and veneers of a wood go by the wood,
the classes of chipboard and strand board by the board.  Each row has its source."""
