"""How strongly each part of a wood's figure shows: judged by eye against real boards."""

from __future__ import annotations

from dataclasses import dataclass, replace

from rodwright.trade.materials import name_of
from rodwright.trade.wood_anatomy import ANATOMIES, Anatomy


@dataclass(frozen=True, slots=True)
class Figure:
    """Depths of the figure as natural logarithms of reflectance: 0.1 is about 10 % darker.

    ``rings`` is from earlywood to latewood, ``pores`` in an open pore, ``rays`` in a ray, ``bands``
    the slow bands of pigment that follow the rings, ``fibre`` the fine streaks along the grain,
    ``boards`` from board to board.  ``knots`` is how many a metre of log the eye may meet.
    """

    anatomy: Anatomy
    rings: float
    pores: float = 0.0
    rays: float = 0.0
    bands: float = 0.03
    fibre: float = 0.02
    boards: float = 0.035
    knots: float = 0.0


_BY_WOOD: dict[str, Figure] = {
    "oak": Figure(ANATOMIES["oak"], 0.1, 0.42, 0.15, 0.035, 0.025),
    "red oak": Figure(ANATOMIES["red oak"], 0.12, 0.42, 0.11, 0.03, 0.025),
    "ash": Figure(ANATOMIES["ash"], 0.13, 0.36, bands=0.035, fibre=0.02),
    "elm": Figure(ANATOMIES["elm"], 0.16, 0.36, bands=0.06, fibre=0.03),
    "chestnut": Figure(ANATOMIES["chestnut"], 0.14, 0.4, bands=0.04),
    "hickory": Figure(ANATOMIES["hickory"], 0.11, 0.35, bands=0.06),
    "robinia": Figure(ANATOMIES["robinia"], 0.16, 0.35, bands=0.04),
    "teak": Figure(ANATOMIES["teak"], 0.13, 0.35, bands=0.08, fibre=0.03),
    "beech": Figure(ANATOMIES["beech"], 0.04, 0.06, 0.14, 0.03, 0.022, 0.025),
    "maple": Figure(ANATOMIES["maple"], 0.05, 0.04, 0.05, 0.015, 0.012, 0.025),
    "sycamore": Figure(ANATOMIES["sycamore"], 0.035, 0.04, 0.08, 0.012, 0.01, 0.02),
    "birch": Figure(ANATOMIES["birch"], 0.05, 0.07, 0.0, 0.018, 0.014, 0.025),
    "alder": Figure(ANATOMIES["alder"], 0.05, 0.06, 0.0, 0.02, 0.015, 0.03),
    "cherry": Figure(ANATOMIES["cherry"], 0.085, 0.05, 0.08, 0.045, 0.03, 0.04),
    "walnut": Figure(ANATOMIES["walnut"], 0.13, 0.34, 0.0, 0.12, 0.05, 0.06),
    "butternut": Figure(ANATOMIES["butternut"], 0.12, 0.25, 0.0, 0.06, 0.03, 0.04),
    "poplar": Figure(ANATOMIES["poplar"], 0.06, 0.04, 0.0, 0.05, 0.015, 0.05),
    "aspen": Figure(ANATOMIES["aspen"], 0.03, 0.03, 0.0, 0.015, 0.012, 0.02),
    "mahogany": Figure(ANATOMIES["mahogany"], 0.05, 0.28, 0.0, 0.07, 0.035, 0.05),
    "sapele": Figure(ANATOMIES["sapele"], 0.04, 0.25, 0.0, 0.09, 0.035, 0.05),
    "iroko": Figure(ANATOMIES["iroko"], 0.05, 0.3, 0.0, 0.07, 0.035, 0.06),
    "obeche": Figure(ANATOMIES["obeche"], 0.03, 0.12, 0.0, 0.02, 0.02, 0.03),
    "pine": Figure(ANATOMIES["pine"], 0.24, bands=0.03, fibre=0.012, knots=1.2),
    "eastern white pine": Figure(ANATOMIES["eastern white pine"], 0.14, fibre=0.012, knots=1.2),
    "parana pine": Figure(ANATOMIES["parana pine"], 0.1, bands=0.05, fibre=0.012),
    "southern pine": Figure(ANATOMIES["southern pine"], 0.34, fibre=0.012, knots=0.6),
    "radiata pine": Figure(ANATOMIES["radiata pine"], 0.2, fibre=0.012, knots=0.8),
    "spruce": Figure(ANATOMIES["spruce"], 0.16, bands=0.02, fibre=0.012, knots=1.2),
    "hemlock": Figure(ANATOMIES["hemlock"], 0.15, bands=0.02, fibre=0.012),
    "douglas fir": Figure(ANATOMIES["douglas fir"], 0.33, bands=0.03, fibre=0.012),
    "larch": Figure(ANATOMIES["larch"], 0.33, bands=0.03, fibre=0.012, knots=0.8),
    "western red cedar": Figure(ANATOMIES["western red cedar"], 0.2, bands=0.09, fibre=0.015),
}
_LIKE = {
    "european oak": "oak",
    "white oak": "oak",
    "european ash": "ash",
    "european beech": "beech",
    "soft maple": "maple",
    "basswood": "aspen",
    "tulipwood": "poplar",
    "sweetgum": "cherry",
    "ramin": "obeche",
    "african mahogany": "mahogany",
    "meranti": "mahogany",
    "light red meranti": "mahogany",
    "spanish cedar": "mahogany",
    "afrormosia": "teak",
    "scots pine": "pine",
    "norway spruce": "spruce",
    "white fir": "spruce",
    "cypress": "pine",
}
_OTHER = "birch"
_SOFT = ("pine", "fir", "spruce", "larch", "cedar", "deal", "softwood")


def figure_of(wood: str) -> Figure:
    """The figure of a wood by its name in ``MATERIALS``; of one that isn't known, that of a plain
    wood, soft or hard as its name or its strength class says."""
    known = name_of(wood) or wood.lower()
    if known in _BY_WOOD:
        return _BY_WOOD[known]
    if known in _LIKE:
        like, anatomy = _BY_WOOD[_LIKE[known]], ANATOMIES[known]
        return replace(like, anatomy=anatomy, rays=like.rays if any(anatomy.ray) else 0.0)
    soft = any(each in known for each in _SOFT) or (known[:1] == "c" and known[1:].isdigit())
    return _BY_WOOD["pine" if soft else _OTHER]
