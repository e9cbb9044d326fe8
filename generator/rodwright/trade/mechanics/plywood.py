"""Stiffness and strength of plywood and blockboard, by thickness.

N/mm2, of the whole thickness.  Birch: Handbook of Finnish Plywood (Finnish Forest Industries
Federation, 2002), sanded, veneers of 1.4 mm (from memory).  Softwood: Swedish spruce or pine P30 in
Porteous and Kermani, Structural Timber Design to Eurocode 5 (read as data).  A decorative plywood
on a core that isn't said: what the Architectural Woodwork Standards (2009), section 10, take for
shelves of Douglas-fir veneer core; and for one called hardwood plywood, of veneers with hardwood on
both faces.

Blockboard: what IS 1659:2004 asks of every board at least (read in a maker's data sheet), along its
core; no European standard has a figure (EN 13353 and EN 636 don't cover it).

Plywoods of which no table was found are worked out from the means of their wood and the veneers
that run along, all of one thickness (as EN 14272 does; a stated estimate).  Shear moduli in their
own plane: APA, Plywood Design Specification (1997), table 3, 90000 psi for group 1, of which beech
and Douglas fir are, and 50000 psi, the least there, for others (from memory).
"""

from __future__ import annotations

from dataclasses import dataclass

from rodwright.trade.mechanics.figures import Family, Mechanics, maybe, stress
from rodwright.trade.mechanics.solid_wood import wood_means
from rodwright.trade.sources import Figure, Source

_FINNISH = "Handbook of Finnish Plywood (2002), birch, sanded"
_SWEDISH = "Porteous and Kermani, Structural Timber Design to Eurocode 5, Swedish plywood P30"
_SHELVES = "Architectural Woodwork Standards (2009), section 10, Douglas-fir veneer core"


@dataclass(frozen=True, slots=True)
class _Ply:
    """Nominal thickness in mm; moduli and bending strengths along and across the face grain."""

    thickness: float
    along: float
    across: float
    bending: float
    bending_across: float


# fmt: off
_BIRCH = (
    _Ply(4.0, 16471, 1029, 65.9, 10.6),
    _Ply(6.5, 12737, 4763, 50.9, 29.0),
    _Ply(9.0, 11395, 6105, 45.6, 32.1),
    _Ply(12.0, 10719, 6781, 42.9, 33.2),
    _Ply(15.0, 10316, 7184, 41.3, 33.8),
    _Ply(18.0, 10048, 7452, 40.2, 34.1),
    _Ply(21.0, 9858, 7642, 39.4, 34.3),
    _Ply(24.0, 9717, 7783, 38.9, 34.4),
    _Ply(27.0, 9607, 7893, 38.4, 34.5),
    _Ply(30.0, 9519, 7981, 38.1, 34.6),
)
_SOFTWOOD = (
    _Ply(12.0, 9200, 4600, 23.0, 11.4),
    _Ply(24.0, 8700, 5000, 21.6, 12.4),
)
# fmt: on
_BIRCH_SHEAR = (169.0, 206.0, 8.0)
"""Rolling shear modulus below and from the thickness that comes last (Handbook of Finnish
Plywood, from memory)."""
_BIRCH_SHEAR_STRENGTH = 2.6
"""Least of the rolling shear strengths, which change little with thickness (Handbook of Finnish
Plywood, from memory)."""
_PANEL_SHEAR = {"birch plywood": (620.0, False), "softwood plywood": (500.0, True)}
_HARDWOOD = (
    "Architectural Woodwork Standards (2009), section 10, veneer core, hardwood on both faces"
)
_SHELF_MODULI = {"hardwood plywood": (12410.0, _HARDWOOD)}
"""Moduli for shelves by name, 1800000 lb/in2; else 950000 lb/in2, as of a Douglas-fir core."""
_SHELF_MODULUS = (6550.0, _SHELVES)
_OF_FIR = {
    "douglas fir plywood": "",
    "hardwood plywood": "a Douglas-fir core with hardwood on both faces, a high figure for plywood",
}
"""Plywoods of a Douglas-fir core by name, and what is borrowed from it."""
_SHELF_RUPTURE = Figure(
    33.7,
    "N/mm2",
    Source("Wood Handbook FPL-GTR-190 (2010), table 12-1, plywood, least of range", seen=False),
)
_SHELF_PLIES = 7
"""Veneers of a decorative plywood of 18 mm (common practice, no source)."""
_APA = Source("APA, Plywood Design Specification (1997), table 3", seen=False)
_APA_SHEAR, _APA_LEAST_SHEAR = 620.0, 345.0
_BLOCKBOARD = (5000.0, 50.0)
"""Modulus of elasticity and of rupture (IS 1659:2004)."""
_VENEER = 1.4
"""What a veneer of a plywood without a table is taken to measure, mm: as in birch plywood (Handbook
of Finnish Plywood, from memory)."""
_LAYERED = {
    "beech plywood": "european beech",
    "okoume plywood": "okoume",
    "poplar plywood": "poplar",
}
_OKOUME = Source("Wood Handbook FPL-GTR-190 (2010), table 5-5a, okoume", seen=False)
_ASPEN = "Wood Handbook FPL-GTR-190 (2010), table 5-3a, quaking aspen"
_VENEER_WOODS = {
    "okoume": (stress(7900.0, _OKOUME), stress(51.0, _OKOUME)),
    # European plywood poplar is a Populus as the aspens are; tulipwood, US yellow-poplar, is none.
    "poplar": (stress(8100.0, Source(_ASPEN)), stress(58.0, Source(_ASPEN, seen=False))),
}


def plywood(name: str, thickness: float, density: float) -> Mechanics:
    """What is known of a plywood (its name as in ``MATERIALS``) ``thickness`` mm thick."""
    if name == "birch plywood":
        return _tabled(name, _BIRCH, Source(_FINNISH, seen=False), thickness, density)
    if name == "softwood plywood":
        return _tabled(name, _SOFTWOOD, Source(_SWEDISH), thickness, density)
    if name in _LAYERED:
        return _layered(_LAYERED[name], thickness, density)
    share = share_along(_SHELF_PLIES)
    modulus, work = _SHELF_MODULI.get(name, _SHELF_MODULUS)
    across = Source(f"{work}, in {_SHELF_PLIES} equal veneers (stated estimate)", seen=False)
    return Mechanics(
        Family.PLYWOOD,
        stress(modulus, Source(work)),
        stress(modulus * (1.0 - share) / share, across),
        panel_shear=stress(_APA_SHEAR if name in _OF_FIR else _APA_LEAST_SHEAR, _APA),
        bending=_SHELF_RUPTURE,
        characteristic=False,
        gravity=sheet_gravity(density),
        table="plywood",
        borrowed=_OF_FIR.get(name, "plywood on a Douglas-fir core, for the core isn't said"),
    )


def blockboard(density: float) -> Mechanics:
    """What is known of blockboard, of any thickness: least figures, taken as means."""
    source = Source("IS 1659:2004, least that is asked of blockboard")
    return Mechanics(
        Family.BLOCKBOARD,
        stress(_BLOCKBOARD[0], source),
        bending=stress(_BLOCKBOARD[1], source),
        characteristic=False,
        gravity=sheet_gravity(density),
        table="plywood",
        unlisted="blockboard",
    )


def sheet_gravity(density: float) -> Figure:
    """Oven-dry mass on volume of a sheet of ``density`` kg/m3, of which 8 % is water (a
    stated estimate; sheets are sold at 4 to 13 %: EN 312, EN 622, from memory)."""
    said = Source("density less 8 % of moisture (stated estimate)", seen=False)
    return Figure(density / 1080.0, "", said)


def veneers(thickness: float) -> int:
    """How many veneers a sheet has: an odd number, of about 1.4 mm, and three at least."""
    return max(3, 2 * round((thickness / _VENEER - 1.0) / 2.0) + 1)


def share_along(plies: int) -> float:
    """The share of a sheet's second moment of area that veneers along its face grain have, of an
    odd number of them equally thick, the outer ones along the grain."""
    cubes = sum((2 * at + 2 - plies) ** 3 - (2 * at - plies) ** 3 for at in range(0, plies, 2))
    return cubes / (2 * plies**3)


def _layered(wood: str, thickness: float, density: float) -> Mechanics:
    modulus, rupture = _VENEER_WOODS.get(wood) or wood_means(wood)
    plies = veneers(thickness)
    share = share_along(plies)
    said = Source(
        f"{modulus.source.work}, in {plies} equal veneers (stated estimate, as EN 14272)",
        seen=False,
    )
    # Across, the outermost veneers at work are those below the faces.
    inner = (1.0 - share) * plies / (plies - 2)
    return Mechanics(
        Family.PLYWOOD,
        stress(modulus.value * share, said),
        stress(modulus.value * (1.0 - share), said),
        panel_shear=stress(_APA_SHEAR if wood == "european beech" else _APA_LEAST_SHEAR, _APA),
        bending=stress(rupture.value * share, said),
        bending_across=stress(rupture.value * inner, said),
        characteristic=False,
        gravity=sheet_gravity(density),
        table="plywood",
        borrowed=f"worked out of {plies} equal veneers",
    )


def _tabled(
    name: str, rows: tuple[_Ply, ...], source: Source, thickness: float, density: float
) -> Mechanics:
    row = _at(rows, thickness)
    birch = name == "birch plywood"
    shear = _BIRCH_SHEAR[thickness >= _BIRCH_SHEAR[2]] if birch else None
    panel_shear, seen = _PANEL_SHEAR[name]
    return Mechanics(
        Family.PLYWOOD,
        stress(row.along, source),
        stress(row.across, source),
        maybe(shear, source),
        stress(panel_shear, Source(source.work, seen)),
        stress(row.bending, source),
        stress(row.bending_across, source),
        maybe(_BIRCH_SHEAR_STRENGTH if birch else None, source),
        gravity=sheet_gravity(density),
        table="plywood",
    )


def _at(rows: tuple[_Ply, ...], thickness: float) -> _Ply:
    """The line of a thickness: between two in proportion, beyond either end the last there is."""
    below = [row for row in rows if row.thickness <= thickness]
    above = [row for row in rows if row.thickness >= thickness]
    if not below or not above:
        return rows[0] if not below else rows[-1]
    low, high = below[-1], above[0]
    if high.thickness == low.thickness:
        return low
    share = (thickness - low.thickness) / (high.thickness - low.thickness)

    def mid(one: float, other: float) -> float:
        return one + share * (other - one)

    return _Ply(
        thickness,
        mid(low.along, high.along),
        mid(low.across, high.across),
        mid(low.bending, high.bending),
        mid(low.bending_across, high.bending_across),
    )
