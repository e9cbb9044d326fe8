"""How stiff and strong materials are: every name has figures, and they are those published.

Rows are held to the works they name by hand, one by one, so that none is copied wrong; relations
between figures (EN 338, plies of plywood) to what the standards say of them.
"""

from __future__ import annotations

import re
from dataclasses import fields

import pytest

from rodwright.trade.creep import TABLES
from rodwright.trade.materials import MATERIALS, name_of
from rodwright.trade.mechanics import Family, Mechanics, mechanics_of
from rodwright.trade.mechanics.plywood import share_along, veneers
from rodwright.trade.sources import Figure
from rodwright.trade.timber_classes import TIMBER_CLASSES


def known(name: str, thickness: float = 18.0) -> Mechanics:
    found = mechanics_of(name, thickness)
    assert found is not None
    return found


def figures(of: Mechanics) -> dict[str, Figure]:
    values = {field.name: getattr(of, field.name) for field in fields(of)}
    return {name: value for name, value in values.items() if isinstance(value, Figure)}


@pytest.mark.parametrize("name", MATERIALS)
def test_every_material_is_as_stiff_as_its_source_says(name: str) -> None:
    of = known(name)
    assert of.table in TABLES
    for said, figure in figures(of).items():
        assert len(figure.source.work) > 8, said
        assert figure.value > 0 or (name == "glass" and said == "creep")
        assert figure.measure == ("" if said in {"gravity", "creep"} else "N/mm2")


@pytest.mark.parametrize("name", MATERIALS)
def test_the_figures_of_a_material_are_of_one_size(name: str) -> None:
    """No wood or board is softer than 1 or stiffer than 21 kN/mm2, or holds 0.1 of what another
    holds: a digit too few or too many shows."""
    of = known(name)
    if of.family is Family.GLASS:
        return
    assert 1000 <= of.along.value <= 21000
    assert of.across is None or of.along.value / 35 <= of.across.value <= of.along.value
    assert of.shear is None or 40 <= of.shear.value <= of.along.value / 6
    assert of.panel_shear is None or of.along.value / 25 <= of.panel_shear.value
    assert of.bending is None or of.along.value / 550 <= of.bending.value <= of.along.value / 60


@pytest.mark.parametrize("name", [name for name in MATERIALS if "veneered" in name])
def test_a_veneered_board_has_the_figures_of_its_core_and_says_so(name: str) -> None:
    of = known(name)
    assert of.borrowed.startswith("its core, ")
    assert of.along == known(of.borrowed.removeprefix("its core, ")).along


def test_shop_plywoods_are_as_stiff_as_the_shelves_of_the_woodwork_standards() -> None:
    """Architectural Woodwork Standards (2009), section 10: 950000 lb/in2 for a Douglas-fir core,
    1800000 with hardwood on both faces; 1 lb/in2 is 0.0068947573 N/mm2."""
    psi = 0.0068947573
    hardwood, fir, red_oak = map(known, ("hardwood plywood", "fir plywood", "red oak plywood"))
    assert hardwood.along.value == pytest.approx(1_800_000 * psi, rel=1e-3)
    assert fir.along.value == red_oak.along.value == pytest.approx(950_000 * psi, rel=1e-3)
    assert hardwood.along.source.seen and "hardwood on both faces" in hardwood.along.source.work
    assert "a high figure for plywood" in hardwood.borrowed and not fir.borrowed
    assert "the core isn't said" in red_oak.borrowed
    assert known("baltic birch") == known("birch plywood")


def test_what_is_not_known_is_not_guessed() -> None:
    assert mechanics_of("unobtainium", 18.0) is None


@pytest.mark.parametrize("name", TIMBER_CLASSES)
def test_strength_classes_keep_the_relations_of_the_standard(name: str) -> None:
    """EN 338:2016: G = E/16, E90 = E/30 (softwoods) or E/15 (hardwoods), each rounded."""
    each = TIMBER_CLASSES[name]
    assert each.shear == pytest.approx(each.modulus / 16, abs=8)
    assert each.across == pytest.approx(each.modulus / (30 if name[0] == "C" else 15), abs=5)
    assert each.bending == float(name[1:])


@pytest.mark.parametrize(
    ("name", "shear", "across"), [("C16", 500, 270), ("C24", 690, 370), ("C30", 750, 400)]
)
def test_strength_classes_as_published(name: str, shear: float, across: float) -> None:
    """EN 338:2016, C16, C24 and C30, in TeachBooks Vademecum."""
    of = known(name)
    assert of.shear and of.shear.value == shear and of.shear.source.seen
    assert of.across and of.across.value == across


@pytest.mark.parametrize("plies", [3, 5, 13])
def test_veneers_share_what_stiffness_there_is(plies: int) -> None:
    """All of it between them; by hand: of three, the middle one has 1/27."""
    assert share_along(plies) > 0.5
    assert share_along(3) == pytest.approx(26 / 27)


def test_equal_veneers_give_the_published_shares_of_birch_plywood() -> None:
    """Handbook of Finnish Plywood: E along and across add up to 17500 in every row; 13 plies have
    10048 along.  Sanding makes the outer veneers thinner, so equal ones have a little more."""
    for thickness in (9.0, 12.0, 18.0, 24.0, 30.0):
        of = known("birch plywood", thickness)
        assert of.across
        assert of.along.value + of.across.value == pytest.approx(17500)
        share = of.along.value / 17500
        assert veneers(thickness) == {9: 7, 12: 9, 18: 13, 24: 17, 30: 21}[thickness]
        assert share < share_along(veneers(thickness)) < 1.1 * share


SPOT_ROWS = [
    ("alder", 18, "along", 9500, True),
    ("alder", 18, "bending", 68, False),
    ("ash", 18, "along", 12000, True),
    ("ash", 18, "shear_strength", 13.2, True),
    ("birch", 18, "bending", 114, True),
    ("cherry", 18, "along", 10300, True),
    ("douglas fir", 18, "along", 13400, True),
    ("hickory", 18, "along", 14900, True),
    ("maple", 18, "along", 12600, True),
    ("oak", 18, "along", 12300, True),
    ("red oak", 18, "along", 12500, False),
    ("pine", 18, "along", 8900, True),
    ("poplar", 18, "along", 10900, True),
    ("walnut", 18, "bending", 101, True),
    ("meranti", 18, "along", 12200, True),
    ("sapele", 18, "along", 12500, False),
    ("teak", 18, "bending", 100.7, True),
    ("aspen", 18, "along", 8100, True),
    ("robinia", 18, "bending", 134, False),
    ("african mahogany", 18, "bending", 74, True),
    ("light red meranti", 18, "along", 8500, True),
    ("radiata pine", 18, "along", 10200, False),
    ("southern pine", 18, "along", 12300, False),
    ("european ash", 18, "along", 11900, False),
    ("european oak", 18, "along", 10100, False),
    ("norway spruce", 18, "along", 8500, False),
    ("scots pine", 18, "bending", 89, False),
    ("C16", 18, "along", 8000, True),
    ("C24", 18, "shear_strength", 4.0, True),
    ("D40", 18, "along", 13000, True),
    ("D70", 18, "shear", 1250, True),
    ("birch plywood", 6.5, "along", 12737, False),
    ("birch plywood", 18, "across", 7452, False),
    ("birch plywood", 24, "bending", 38.9, False),
    ("softwood plywood", 12, "along", 9200, True),
    ("softwood plywood", 24, "bending_across", 12.4, True),
    ("oak plywood", 18, "along", 6550, True),
    ("blockboard", 18, "along", 5000, True),
    ("OSB/3", 9, "bending", 18.0, True),
    ("OSB/3", 18, "along", 4930, True),
    ("OSB/3", 18, "shear", 50, True),
    ("OSB/3", 22, "bending_across", 7.4, True),
    ("OSB/4", 12, "panel_shear", 1090, True),
    ("P2", 16, "along", 1600, True),
    ("P2", 22, "bending", 10.5, True),
    ("P2", 38, "along", 1200, False),
    ("P5", 18, "along", 3300, False),
    ("mdf", 18, "along", 2500, True),
    ("mdf", 6, "along", 2700, False),
    ("mdf", 18, "bending", 20, False),
    ("MDF.LA", 16, "along", 3000, False),
    ("hb.hla2", 3.2, "panel_shear", 2100, False),
    ("glass", 6, "along", 70000, False),
]
"""Material, thickness in mm, figure, value, whether it was seen: read against the works again."""


@pytest.mark.parametrize(("name", "thickness", "figure", "value", "seen"), SPOT_ROWS)
def test_figures_are_those_of_the_works_that_they_name(
    name: str, thickness: float, figure: str, value: float, seen: bool
) -> None:
    found = getattr(known(name, thickness), figure)
    assert (found.value, found.source.seen) == (value, seen)


@pytest.mark.parametrize("name", MATERIALS)
@pytest.mark.parametrize("thickness", [3.0, 12.0, 27.0, 45.0])
def test_every_source_names_a_published_work_or_says_that_it_is_an_estimate(
    name: str, thickness: float
) -> None:
    work = re.compile(
        r"Wood Handbook FPL-GTR-190|Forest Products Laboratory, technology transfer|"
        r"EN \d{3,}|Lavers, The strength|Handbook of Finnish Plywood|"
        r"Porteous and Kermani|IS 1659|Architectural Woodwork Standards|ANSI A208|"
        r"European MDF industry|APA, Plywood Design|stated estimate|catalogue|glass does not creep"
    )
    for figure in figures(known(name, thickness)).values():
        assert work.search(figure.source.work), figure


def test_shear_flat_in_osb_is_a_hundredth_of_its_stiffness_and_in_timber_a_sixteenth() -> None:
    """So a short thick OSB shelf sags a quarter more by shear: E/G is 98.6 by EN 12369-1."""
    osb, timber = known("OSB/3"), known("C24")
    assert osb.shear and osb.along.value / osb.shear.value == pytest.approx(98.6)
    assert timber.shear and timber.along.value / timber.shear.value == pytest.approx(16, abs=0.1)


@pytest.mark.parametrize("thickness", [7.5, 10.0, 16.5, 19.0, 25.0])
def test_between_two_thicknesses_of_a_table_the_figures_lie_between(thickness: float) -> None:
    steps = [4.0, 6.5, 9.0, 12.0, 15.0, 18.0, 21.0, 24.0, 27.0, 30.0]
    low = max(step for step in steps if step < thickness)
    high = min(step for step in steps if step > thickness)
    thin, mid, thick = (known("birch plywood", each) for each in (low, thickness, high))
    assert thin.along.value > mid.along.value > thick.along.value


@pytest.mark.parametrize(("thin", "end"), [(1.0, 4.0), (50.0, 30.0)])
def test_beyond_a_table_its_last_line_stands(thin: float, end: float) -> None:
    assert known("birch plywood", thin).along == known("birch plywood", end).along


@pytest.mark.parametrize(
    ("written", "means"),
    [
        ("OSB3", "osb/3"),
        ("osb 3", "osb/3"),
        ("chipboard P5", "p5 chipboard"),
        ("P2", "p2 chipboard"),
        ("c24", "c24"),
        ("MDF.LA", "mdf.la"),
    ],
)
def test_classes_as_makers_write_them(written: str, means: str) -> None:
    assert name_of(written) == means


def test_what_counts_as_a_class_says_so() -> None:
    assert known("osb").borrowed == "the class most sold, osb/3"
    assert known("chipboard").borrowed == "the class sold for furniture, p2 chipboard"
    assert known("OSB/3").borrowed == ""


def test_plywood_without_a_table_is_worked_out_of_its_veneers_by_hand() -> None:
    """Three veneers of okoume, 4 mm: 26/27 of 7900 along and 1/27 across; rupture 51 along, and
    across 1/27 of it at a third of the depth."""
    of = known("okoume plywood", 4.0)
    assert of.along.value == pytest.approx(7900 * 26 / 27)
    assert of.across and of.across.value == pytest.approx(7900 / 27)
    assert of.bending and of.bending.value == pytest.approx(51 * 26 / 27)
    assert of.bending_across and of.bending_across.value == pytest.approx(51 / 27 * 3)
    assert not of.along.source.seen and not of.characteristic


def test_decorative_plywood_is_as_stiff_as_shelf_tables_take_its_core() -> None:
    """Architectural Woodwork Standards (2009), section 10: 950000 psi."""
    of = known("maple plywood")
    assert of.along.value == pytest.approx(950_000 * 0.006894757, abs=1)
    assert of.across and of.across.value == pytest.approx(6550 * 198 / 488)
