"""Stiffness and strength of OSB, chipboard, MDF and hardboard, by class and thickness.

N/mm2.  Load-bearing classes: characteristic strengths and mean moduli of EN 12369-1:2001 (OSB read
in an open-source transcription, the others from memory).  Boards for furniture have none: for
those, what their product standards ask for, which nineteen boards in twenty reach (EN 312 and
EN 622), so that a good board sags less than is worked out.
"""

from __future__ import annotations

from dataclasses import dataclass

from rodwright.trade.mechanics.figures import Family, Mechanics, maybe, stress
from rodwright.trade.mechanics.plywood import sheet_gravity
from rodwright.trade.sources import Source

_CLASSES = "EN 12369-1:2001"


@dataclass(frozen=True, slots=True)
class _Row:
    """Up to which thickness in mm; mean modulus of elasticity and shear modulus in its own plane;
    characteristic bending strength, and where they are known shear strength of the plane that
    shears lying flat, and modulus and bending strength square to the sheet's length."""

    thickness: float
    modulus: float
    panel_shear: float | None
    bending: float
    shear_strength: float | None = None
    across: float | None = None
    bending_across: float | None = None


@dataclass(frozen=True, slots=True)
class _Board:
    """Rows by thickness, the last for all that is thicker; the line of EN 1995-1-1's tables, what
    it is where that has none for it; whether moduli, and strengths, were seen; the shear modulus of
    the plane that shears lying flat."""

    family: Family
    work: str
    rows: tuple[_Row, ...]
    table: str
    unlisted: str = ""
    modulus_seen: bool = False
    bending_seen: bool = False
    shear: float | None = None


# fmt: off
_OSB3 = (
    _Row(10, 4930, 1080, 18.0, 1.0, 1980, 9.0),
    _Row(18, 4930, 1080, 16.4, 1.0, 1980, 8.2),
    _Row(25, 4930, 1080, 14.8, 1.0, 1980, 7.4),
)
_OSB4 = (
    _Row(10, 6780, 1090, 24.5, 1.1, 2680, 13.0),
    _Row(18, 6780, 1090, 23.0, 1.1, 2680, 12.2),
    _Row(25, 6780, 1090, 21.0, 1.1, 2680, 11.4),
)
_P2 = (
    _Row(4, 1800, None, 13.0),
    _Row(6, 1950, None, 12.0),
    _Row(13, 1800, None, 11.0),
    _Row(20, 1600, None, 11.0),
    _Row(25, 1500, None, 10.5),
    _Row(32, 1350, None, 9.5),
    _Row(40, 1200, None, 8.5),
    _Row(99, 1050, None, 7.0),
)
_P4 = (
    _Row(13, 3200, 860, 14.2, 1.8),
    _Row(20, 2900, 830, 12.5, 1.6),
    _Row(25, 2700, 770, 10.8, 1.4),
    _Row(32, 2400, 680, 9.2, 1.2),
    _Row(40, 2100, 600, 7.5, 1.1),
)
_P5 = (
    _Row(13, 3500, 960, 15.0, 1.9),
    _Row(20, 3300, 930, 13.3, 1.7),
    _Row(25, 3000, 860, 11.7, 1.5),
    _Row(32, 2600, 750, 10.0, 1.3),
    _Row(40, 2400, 690, 8.3, 1.2),
)
_P6 = (
    _Row(13, 4400, None, 16.5),
    _Row(20, 4100, None, 15.0),
    _Row(25, 3500, None, 13.3),
    _Row(32, 3300, None, 12.5),
    _Row(40, 3100, None, 11.7),
)
_P7 = (
    _Row(13, 4600, None, 18.3),
    _Row(20, 4200, None, 16.7),
    _Row(25, 4000, None, 15.4),
    _Row(32, 3900, None, 14.2),
    _Row(40, 3500, None, 13.3),
)
_MDF_LA = (
    _Row(12, 3700, 800, 21.0),
    _Row(19, 3000, 800, 21.0),
    _Row(30, 2900, 800, 21.0),
    _Row(99, 2700, 600, 19.0),
)
_MDF_HLS = (
    _Row(12, 3700, 1000, 22.0),
    _Row(19, 3200, 1000, 22.0),
    _Row(30, 3100, 1000, 21.0),
    _Row(99, 2800, 800, 18.0),
)
_MDF = (
    _Row(9, 2700, None, 23.0),
    _Row(12, 2500, None, 22.0),
    _Row(19, 2200, None, 20.0),
    _Row(30, 2100, None, 18.0),
    _Row(45, 1900, None, 17.0),
    _Row(99, 1700, None, 15.0),
)
_HB = (
    _Row(5.5, 3100, None, 30.0),
    _Row(99, 3100, None, 25.0),
)
_HB_LA = (
    _Row(3.5, 2700, None, 33.0),
    _Row(5.5, 2500, None, 32.0),
    _Row(99, 2300, None, 30.0),
)
_HB_HLA2 = (
    _Row(3.5, 5000, 2100, 37.0, 3.0),
    _Row(5.5, 4800, 2000, 35.0, 3.0),
    _Row(99, 4600, 1900, 32.0, 2.5),
)
_HDF = (_Row(99, 3450, None, 34.5),)
_DRY_MDF = "general purpose MDF"
_BOARDS: dict[str, _Board] = {
    "osb/2": _Board(Family.OSB, f"{_CLASSES}, OSB/2", _OSB3, "OSB/2", shear=50.0),
    "osb/3": _Board(Family.OSB, f"{_CLASSES}, OSB/3", _OSB3, "OSB/3", "", True, True, 50.0),
    "osb/4": _Board(Family.OSB, f"{_CLASSES}, OSB/4", _OSB4, "OSB/3", "", True, True, 60.0),
    "p2 chipboard": _Board(Family.CHIPBOARD, "EN 312, P2", _P2, "P4", "P2", True, True),
    "p4 chipboard": _Board(Family.CHIPBOARD, f"{_CLASSES}, P4", _P4, "P4"),
    "p5 chipboard": _Board(Family.CHIPBOARD, f"{_CLASSES}, P5", _P5, "P5"),
    "p6 chipboard": _Board(Family.CHIPBOARD, f"{_CLASSES}, P6", _P6, "P6"),
    "p7 chipboard": _Board(Family.CHIPBOARD, f"{_CLASSES}, P7", _P7, "P7"),
    "mdf.la": _Board(Family.MDF, f"{_CLASSES}, MDF.LA", _MDF_LA, "MDF.LA"),
    "mdf.hls": _Board(Family.MDF, f"{_CLASSES}, MDF.HLS", _MDF_HLS, "MDF.HLS"),
    "mdf": _Board(Family.MDF, f"EN 622-5:2009, {_DRY_MDF}", _MDF, "MDF.LA", _DRY_MDF),
    "hdf": _Board(Family.MDF, "ANSI A208.2-2002, grade 160", _HDF, "MDF.LA", "HDF"),
    "hardboard": _Board(Family.HARDBOARD, "EN 622-2:2004, HB", _HB, "HB.LA", "HB hardboard"),
    "hb.la": _Board(Family.HARDBOARD, "EN 622-2:2004, HB.LA", _HB_LA, "HB.LA"),
    "hb.hla2": _Board(Family.HARDBOARD, f"{_CLASSES}, HB.HLA2", _HB_HLA2, "HB.HLA2"),
}
# fmt: on
_SEEN_P2 = (6.0, 32.0)
"""Thicknesses between which moduli of P2 were seen (EN 312:2003, an inspection agency's table)."""
_SHELF_MDF = (12.0, 30.0, 2500.0)
"""Thicknesses from and to which MDF shelves are taken to have the last figure (European MDF
industry guide, shelves and storage units, whose charts go by it: https://mdf-info.eu;
the thicknesses are common practice, no source)."""
_GUIDE = Source("European MDF industry guide, shelves and storage units, section 11")
_HARDBOARD = Source("Wood Handbook FPL-GTR-190 (2010), table 12-1, least of the range", seen=False)
_SHEAR_OF_FAMILY = {Family.CHIPBOARD: ("P4", 0.286), Family.MDF: ("MDF.LA", 0.267)}
"""Shear modulus in its own plane as a share of the modulus of elasticity, where a furniture board
has none of its own: that of the load-bearing class, 830/2900 and 800/3000 (EN 12369-1, from
memory)."""
_ISOTROPIC = 1.0 / 2.6
"""The same of a sheet that is alike in all directions: 1/(2 (1 + 0.3)) (common practice, no
source)."""


def board(name: str, thickness: float, density: float) -> Mechanics | None:
    """What is known of a board (its name as in ``MATERIALS``) ``thickness`` mm thick; None where it
    is none of these."""
    of = _BOARDS.get(name)
    if of is None:
        return None
    row = next((row for row in of.rows if thickness <= row.thickness), of.rows[-1])
    modulus = stress(row.modulus, Source(of.work, of.modulus_seen))
    bending = Source(of.work, of.bending_seen)
    if name == "p2 chipboard" and not _SEEN_P2[0] < thickness <= _SEEN_P2[1]:
        modulus = stress(row.modulus, Source(of.work, seen=False))
        bending = Source(of.work, of.bending_seen and _SEEN_P2[0] < thickness <= 40.0)
    if name == "mdf" and _SHELF_MDF[0] < thickness <= _SHELF_MDF[1]:
        modulus = stress(_SHELF_MDF[2], _GUIDE)
    if name == "hardboard":
        modulus = stress(row.modulus, _HARDBOARD)
    sheared = maybe(row.panel_shear, Source(of.work, of.modulus_seen))
    if sheared is None:
        said, share = _SHEAR_OF_FAMILY.get(
            of.family, ("a sheet alike in all directions", _ISOTROPIC)
        )
        source = Source(f"{modulus.source.work}, G/E of {said}", seen=False)
        sheared = stress(modulus.value * share, source)
    strength = Source(of.work, of.bending_seen)
    return Mechanics(
        of.family,
        modulus,
        modulus if row.across is None else stress(row.across, modulus.source),
        maybe(of.shear, modulus.source),
        sheared,
        stress(row.bending, bending),
        stress(row.bending if row.bending_across is None else row.bending_across, bending),
        maybe(row.shear_strength, strength),
        characteristic=name != "hdf",
        gravity=sheet_gravity(density),
        table=of.table,
        unlisted=of.unlisted,
    )


def glass() -> Mechanics:
    """Soda lime glass: E and the characteristic bending strength of EN 572-1, annealed; toughened
    glass is stronger and no stiffer.  G by a Poisson's ratio of 0.22 (EN 572-1)."""
    source = Source("EN 572-1, soda lime glass", seen=False)
    shear = stress(70000.0 / (2.0 * 1.22), source)
    return Mechanics(
        Family.GLASS,
        stress(70000.0, source),
        stress(70000.0, source),
        shear,
        shear,
        stress(45.0, source),
        stress(45.0, source),
        table="glass",
    )
