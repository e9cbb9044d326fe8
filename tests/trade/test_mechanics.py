"""How stiff and strong materials are: every name has figures, and they are those published.

Rows are held to the works they name by hand, one by one, so that none is copied wrong; relations
between figures (EN 338, plies of plywood) to what the standards say of them.
"""

from __future__ import annotations

from dataclasses import fields

import pytest

from rodwright.trade.creep import TABLES
from rodwright.trade.materials import MATERIALS
from rodwright.trade.mechanics import Family, Mechanics, mechanics_of
from rodwright.trade.mechanics.plywood import share_along, veneers
from rodwright.trade.sources import Figure
from rodwright.trade.timber_classes import TIMBER_CLASSES

NOT_KNOWN = {"blockboard"}
"""Materials of whose stiffness nothing was found published (EN 13353 and EN 636 cover none)."""


def known(name: str, thickness: float = 18.0) -> Mechanics:
    found = mechanics_of(name, thickness)
    assert found is not None
    return found


def figures(of: Mechanics) -> dict[str, Figure]:
    values = {field.name: getattr(of, field.name) for field in fields(of)}
    return {name: value for name, value in values.items() if isinstance(value, Figure)}


@pytest.mark.parametrize("name", sorted(set(MATERIALS) - NOT_KNOWN))
def test_every_material_is_as_stiff_as_its_source_says(name: str) -> None:
    of = known(name)
    assert of.table in TABLES
    for said, figure in figures(of).items():
        assert len(figure.source.work) > 8, said
        assert figure.value > 0 or (name == "glass" and said == "creep")
        assert figure.measure == ("" if said in {"gravity", "creep"} else "N/mm2")


@pytest.mark.parametrize("name", sorted(set(MATERIALS) - NOT_KNOWN))
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


@pytest.mark.parametrize("name", ["unobtainium", *NOT_KNOWN])
def test_what_is_not_known_is_not_guessed(name: str) -> None:
    assert mechanics_of(name, 18.0) is None


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
