"""Stiffness and strength of solid wood, by species and by strength class.

N/mm2 at 12 % moisture.  North American woods: Wood Handbook FPL-GTR-190 (2010), table 5-3a;
imported ones its table 5-5a; European ones Lavers, The strength properties of timber (1983), of
small clear pieces.  All are means.  A modulus from a bending test (span 14 times the depth) already
has that test's shear in it: the handbook adds a tenth for the true one, which is not done here.

How stiff wood is across its grain and in shear: the handbook's table 5-1 where it lists the wood,
or else the relations of EN 338:2016, E90 = E/30 for softwoods and E/15 for hardwoods, G = E/16.
Boards are taken as flat-sawn: rings along the width, so that E across is tangential, and what
shears lying flat is the plane along the grain and through the rings.
"""

from __future__ import annotations

from dataclasses import dataclass

from rodwright.trade.mechanics.figures import Family, Mechanics, maybe, stress
from rodwright.trade.sources import Figure, Source
from rodwright.trade.timber_classes import TIMBER_CLASSES, TimberClass, bearing_strength

_AT_HOME = "Wood Handbook FPL-GTR-190 (2010), table 5-3a"
_IMPORTED = "Wood Handbook FPL-GTR-190 (2010), table 5-5a"
_SHEETS = "Forest Products Laboratory, technology transfer sheets of tropical timbers"
_LAVERS = "Lavers, The strength properties of timber (1983), UK grown at 12 %"
_RATIOS = "Wood Handbook FPL-GTR-190 (2010), table 5-1"
_RELATIONS = "EN 338:2016"
_GIVEN = Source("density at 12 % of moisture, as Wood Handbook chapter 4 has it", seen=False)


@dataclass(frozen=True, slots=True)
class _Wood:
    """Means of one species; ``remembered`` has a letter for each figure that wasn't seen: ``e``
    modulus of elasticity, ``r`` of rupture, ``s`` shear strength, ``g`` specific gravity.
    ``bearing`` is compression square to the grain, of which none was seen."""

    species: str
    modulus: float
    rupture: float
    shear_strength: float
    bearing: float | None
    remembered: str = ""
    work: str = _AT_HOME
    soft: bool = False
    ratios: str = ""

    def source(self, letter: str) -> Source:
        return Source(f"{self.work}, {self.species}", letter not in self.remembered)


@dataclass(frozen=True, slots=True)
class _Ratios:
    """Of the modulus along the grain: E tangential, G along the grain and through the rings, G
    along the grain and the rings."""

    across: float
    through: float
    along: float | None


# fmt: off
_ELASTIC: dict[str, _Ratios] = {
    "ash": _Ratios(0.080, 0.109, 0.077),
    "birch": _Ratios(0.050, 0.074, 0.068),
    "cherry": _Ratios(0.086, 0.147, 0.097),
    "maple": _Ratios(0.065, 0.111, 0.063),
    "red oak": _Ratios(0.082, 0.089, 0.081),
    "white oak": _Ratios(0.072, 0.086, None),
    "walnut": _Ratios(0.056, 0.085, 0.062),
    "tulipwood": _Ratios(0.043, 0.075, 0.069),
    "douglas fir": _Ratios(0.050, 0.064, 0.078),
    "spruce": _Ratios(0.043, 0.064, 0.061),
}
_WOODS: dict[str, _Wood] = {
    "alder": _Wood("red alder", 9500, 68, 7.4, 3.0, "r"),
    "ash": _Wood("white ash", 12000, 103, 13.2, 8.0, ratios="ash"),
    "basswood": _Wood("American basswood", 10100, 60, 6.8, 2.6, "r"),
    "beech": _Wood("American beech", 11900, 103, 13.9, 7.0),
    "birch": _Wood("yellow birch", 13900, 114, 13.0, 6.7, ratios="birch"),
    "cherry": _Wood("black cherry", 10300, 85, 11.7, 4.8, ratios="cherry"),
    "chestnut": _Wood("American chestnut", 8500, 59, 7.4, 4.3, "r"),
    "douglas fir": _Wood(
        "coast Douglas-fir", 13400, 85, 7.8, 5.5, "s", soft=True, ratios="douglas fir"
    ),
    "elm": _Wood("American elm", 9200, 81, 10.4, 4.8, "r"),
    "hemlock": _Wood("western hemlock", 11300, 78, 8.6, 3.8, "s", soft=True),
    "hickory": _Wood("shagbark hickory", 14900, 139, 16.8, 12.1, "r"),
    "larch": _Wood("western larch", 12900, 90, 9.4, 6.4, "s", soft=True),
    "maple": _Wood("sugar maple", 12600, 109, 16.1, 10.1, "s", ratios="maple"),
    "pine": _Wood("ponderosa pine", 8900, 65, 7.8, 4.0, soft=True),
    "red oak": _Wood("northern red oak", 12500, 99, 12.3, 7.0, "es", ratios="red oak"),
    "soft maple": _Wood("red maple", 11300, 92, 12.8, 6.9, "rs"),
    "spruce": _Wood("Sitka spruce", 10800, 70, 7.9, 4.0, "ersg", soft=True, ratios="spruce"),
    "tulipwood": _Wood("yellow-poplar", 10900, 70, 8.2, 3.4, "s", ratios="tulipwood"),
    "walnut": _Wood("black walnut", 11600, 101, 9.4, 7.0, "s", ratios="walnut"),
    "western red cedar": _Wood("western redcedar", 7700, 51.7, 6.8, 3.2, "ersg", soft=True),
    "white oak": _Wood("white oak", 12300, 105, 13.8, 7.4, "s", ratios="white oak"),
    "aspen": _Wood("quaking aspen", 8100, 58, 5.9, 2.6, "r"),
    "butternut": _Wood("butternut", 8100, 56, 8.1, 3.2, "r"),
    "cypress": _Wood("baldcypress", 9900, 73, 6.9, 5.0, "ersg", soft=True),
    "eastern white pine": _Wood("eastern white pine", 8500, 59, 6.2, 3.0, "ersg", soft=True),
    "robinia": _Wood("black locust", 14100, 134, 17.1, 12.6, "r"),
    "southern pine": _Wood("loblolly pine", 12300, 88, 9.6, 5.4, "ersg", soft=True),
    "sweetgum": _Wood("sweetgum", 11300, 86, 11.0, 4.3, "ersg"),
    "white fir": _Wood("white fir", 10300, 68, 7.6, 3.7, "ersg", soft=True),
    "african mahogany": _Wood("Khaya ivorensis", 9600, 74, 10.4, None, "", _SHEETS),
    "afrormosia": _Wood("afrormosia", 13400, 126.9, 14.4, None, "ersg", _IMPORTED),
    "light red meranti": _Wood("light red meranti", 8500, 65.5, 6.7, None, "", _IMPORTED),
    "obeche": _Wood("obeche", 5900, 51, 6.8, None, "ersg", _IMPORTED),
    "parana pine": _Wood("Parana pine", 11100, 93.1, 11.9, None, "ersg", _IMPORTED, soft=True),
    "radiata pine": _Wood("radiata pine", 10200, 80.7, 11.0, None, "ersg", _IMPORTED, soft=True),
    "ramin": _Wood("ramin", 15000, 127.6, 10.5, None, "ersg", _IMPORTED),
    "spanish cedar": _Wood("Spanish-cedar", 9900, 79.3, 7.6, None, "", _IMPORTED),
    "iroko": _Wood("iroko", 10100, 85.5, 12.4, None, "ersg", _IMPORTED),
    "mahogany": _Wood("true mahogany", 10300, 79.3, 8.5, None, "ersg", _IMPORTED),
    "meranti": _Wood("dark red meranti", 12200, 87.6, 10.0, None, "", _IMPORTED),
    "sapele": _Wood("sapele", 12500, 105.5, 15.6, None, "ersg", _IMPORTED),
    "teak": _Wood("teak", 10700, 100.7, 13.0, None, "", _IMPORTED),
    "european ash": _Wood("ash", 11900, 116, 16.6, None, "ersg", _LAVERS),
    "european beech": _Wood("beech", 12600, 118, 17.2, None, "ersg", _LAVERS),
    "european oak": _Wood("oak", 10100, 97, 13.7, None, "ersg", _LAVERS),
    "norway spruce": _Wood("Norway spruce", 8500, 72, 9.8, None, "ersg", _LAVERS, soft=True),
    "scots pine": _Wood("Scots pine", 10000, 89, 12.7, None, "ersg", _LAVERS, soft=True),
    "sycamore": _Wood("sycamore", 9400, 99, 17.1, None, "ersg", _LAVERS),
}
_SAME = {"oak": "white oak", "poplar": "tulipwood"}
# fmt: on


def wood_means(name: str) -> tuple[Figure, Figure]:
    """The modulus of elasticity of a wood along its grain, and of rupture, N/mm2.

    Raises:
        KeyError: no figures of such a wood are here.
    """
    wood = _WOODS[_SAME.get(name, name)]
    return stress(wood.modulus, wood.source("e")), stress(wood.rupture, wood.source("r"))


def solid_wood(name: str, density: float) -> Mechanics | None:
    """The means of a wood (its name as in ``MATERIALS``), whose density is ``density`` kg/m3 at
    12 % moisture, or the characteristic values of a strength class; None where neither is known."""
    graded = TIMBER_CLASSES.get(name.upper())
    if graded is not None:
        return _graded(name.upper(), graded, density)
    wood = _WOODS.get(_SAME.get(name, name))
    return None if wood is None else _species(wood, density)


def _species(wood: _Wood, density: float) -> Mechanics:
    ratios = _ELASTIC.get(wood.ratios)
    listed = Source(f"{_RATIOS}, {wood.ratios}", seen=False)
    sixteenth = Figure(wood.modulus / 16, "N/mm2", Source(f"{_RELATIONS}, G = E/16"))
    part = 30 if wood.soft else 15
    across = stress(wood.modulus / part, Source(f"{_RELATIONS}, E90 = E/{part}"))
    shear: Figure | None = sixteenth
    panel_shear: Figure | None = sixteenth
    if ratios is not None:
        across = stress(wood.modulus * ratios.across, listed)
        shear = stress(wood.modulus * ratios.through, listed)
        if ratios.along is not None:
            panel_shear = stress(wood.modulus * ratios.along, listed)
    return Mechanics(
        Family.SOLID_WOOD,
        stress(wood.modulus, wood.source("e")),
        across,
        shear,
        panel_shear,
        stress(wood.rupture, wood.source("r")),
        None,
        stress(wood.shear_strength, wood.source("s")),
        maybe(wood.bearing, Source(f"{wood.work}, {wood.species}", seen=False)),
        characteristic=False,
        gravity=wood_gravity(density, wood.source("g")),
        table="solid timber",
    )


def _graded(name: str, graded: TimberClass, density: float) -> Mechanics:
    source = Source(f"{graded.source.work}, {name}", graded.seen)
    bearing = bearing_strength(graded.characteristic_density, hardwood=name.startswith("D"))
    return Mechanics(
        Family.SOLID_WOOD,
        stress(graded.modulus, source),
        stress(graded.across, source),
        stress(graded.shear, source),
        stress(graded.shear, source),
        stress(graded.bending, source),
        None,
        stress(graded.shear_strength, source),
        stress(bearing, Source("EN 384: a share of the characteristic density", seen=False)),
        gravity=wood_gravity(density, source),
        table="solid timber",
    )


def wood_gravity(density: float, source: Source = _GIVEN) -> Figure:
    """Oven-dry mass on the volume at 12 %, of a density in kg/m3 at 12 % (Wood Handbook, chapter
    4)."""
    return Figure(density / 1120.0, "", source)
