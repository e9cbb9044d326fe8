"""Stock as stiff and strong as its maker says, over what is known of its material."""

from __future__ import annotations

from typing import Any

import pytest

from kit.specs import unit_from
from rodwright.checks import check_parts
from rodwright.handover.lists import parts_list
from rodwright.problems import Problem, ProblemsError
from rodwright.strength.lacking import lacking
from rodwright.trade.mechanics import Family, mechanics_of
from rodwright.unit import Stock

SIZE = "size: {width: 800, height: 500, depth: 300}\n"


def stock_of(material: str, kind: str = "sheet", **more: Any) -> Stock:
    stock = {"x": {"kind": kind, "material": material, "thickness": 18, **more}}
    return unit_from(SIZE, stock=stock, carcass={"stock": "x"}).parts[0].blank.stock


def problem_of(material: str, kind: str = "sheet", **more: Any) -> Problem:
    with pytest.raises(ProblemsError) as told:
        stock_of(material, kind, **more)
    (problem,) = told.value.problems
    return problem


def test_stock_is_as_stiff_as_its_material() -> None:
    assert stock_of("birch ply").mechanics == mechanics_of("birch plywood", 18.0)
    assert lacking(stock_of("birch ply")) == ""


def test_what_the_maker_gives_goes_first_and_is_named_so() -> None:
    strength = {"stiffness": "11 GPa", "source": "mill's sheet"}
    known, given = mechanics_of("birch plywood", 18.0), stock_of("birch ply", strength=strength)
    assert known is not None and given.mechanics is not None
    assert given.mechanics.along.value == pytest.approx(11000)
    assert given.mechanics.along.source.work == "given in the spec: mill's sheet"
    assert given.mechanics.along.source.seen
    assert given.mechanics.across == known.across and given.mechanics.creep == known.creep


def test_a_given_density_is_what_screws_hold_in() -> None:
    known = stock_of("oak", "board", density=600).mechanics
    assert known is not None and known.gravity is not None
    assert known.gravity.value == pytest.approx(600 / 1120)


def test_a_mean_strength_beside_characteristic_ones_becomes_one_by_hand() -> None:
    """Birch plywood's are characteristic: 50 less 1.645 x 16 % of it."""
    of = stock_of("birch ply", strength={"bending_strength": "50 MPa"}).mechanics
    assert of is not None and of.bending is not None and of.characteristic
    assert of.bending.value == pytest.approx(50 * (1 - 1.645 * 0.16))
    assert of.bending.source.work.startswith("given in the spec")


def test_characteristic_strengths_beside_means_make_those_so_too() -> None:
    """Ash: shear strength 13.2 on the mean, 14 % coefficient of variation."""
    strength = {"bending_strength": "60 MPa", "strengths": "characteristic"}
    of = stock_of("ash", "board", strength=strength).mechanics
    assert of is not None and of.bending and of.shear_strength
    assert of.characteristic and of.bending.value == pytest.approx(60)
    assert of.shear_strength.value == pytest.approx(13.2 * (1 - 1.645 * 0.14))


def test_an_unknown_wood_with_a_modulus_counts_as_solid_wood() -> None:
    strength = {"stiffness": "14 GPa", "source": "a data sheet"}
    of = stock_of("padauk", "board", density=750, strength=strength).mechanics
    assert of is not None
    assert (of.family, of.table) == (Family.SOLID_WOOD, "solid timber")
    assert of.creep is not None and of.creep.value == 0.6
    assert "for want of padauk" in of.creep.source.work and not of.creep.source.seen
    assert of.gravity is not None and of.gravity.value == pytest.approx(750 / 1120)


def test_an_unknown_sheet_counts_as_what_its_name_says() -> None:
    of = stock_of("bamboo ply", density=700, strength={"stiffness": "9 GPa"}).mechanics
    assert of is not None and of.family is Family.PLYWOOD and of.bending is None


def test_an_unknown_sheet_takes_what_it_is_like() -> None:
    of = stock_of("bamboo", density=700, strength={"stiffness": "9 GPa", "like": "OSB/3"}).mechanics
    osb = mechanics_of("OSB/3", 18.0)
    assert of is not None and osb is not None
    assert of.along.value == pytest.approx(9000) and of.shear == osb.shear
    assert of.borrowed == "OSB/3, which the spec says it is like"
    assert of.gravity is not None and of.gravity.value == pytest.approx(700 / 1080)


def test_an_unknown_sheet_that_is_like_nothing_is_asked_what() -> None:
    problem = problem_of("bamboo", density=700, strength={"stiffness": "9 GPa"})
    assert problem.where == ("stock", "x", "strength")
    assert "`bamboo`" in problem.message and "`like:`" in problem.remedy


def test_what_a_stock_is_like_has_to_be_known() -> None:
    problem = problem_of("padauk", "board", density=750, strength={"like": "oaak"})
    assert problem.where == ("stock", "x", "strength", "like")
    assert "Did you mean `oak`" in problem.remedy


def test_stock_of_unknown_stiffness_is_listed_and_checked_as_ever() -> None:
    stock = {"x": {"kind": "sheet", "material": "bamboo", "thickness": 18, "density": 640}}
    unit = unit_from(SIZE, stock=stock, carcass={"stock": "x"})
    assert len(parts_list(unit)) > 1
    check_parts(unit)
    of = unit.parts[0].blank.stock
    assert of.mechanics is None
    says = lacking(of)
    assert "nothing is known of how stiff `bamboo` is" in says
    assert "640 kg/m3" in says and "in the stock `x`" in says
    assert "`strength: {stiffness: 9300 N/mm2, source: its maker}`" in says
    assert "`strength: {like: birch plywood}`" in says


def test_a_stock_of_unknown_density_is_asked_for_its_stiffness_too() -> None:
    told = problem_of("fir")
    assert "Did you mean `douglas fir` or" in told.remedy and "`density: `" in told.remedy
    assert "`strength: {stiffness: " in told.remedy and "`strength: {like: " in told.remedy


def test_a_single_figure_that_lacks_is_named_with_its_key() -> None:
    of = stock_of("oak ply")
    assert lacking(of) == lacking(of, "along", "bending") == ""
    says = lacking(of, "along", "shear_strength")
    assert says.startswith("it isn't known how strong in shear `oak ply` is")
    assert "`shear_strength: " in says and "6550 N/mm2" in says


@pytest.mark.parametrize(
    ("room", "material", "creep"),
    [
        ("heated", "birch ply", 0.8),
        ("unheated", "birch ply", 1.0),
        ("outside", "birch ply", 2.5),
        ("unheated", "OSB/3", 2.25),
        ("unheated", "mdf", None),
    ],
)
def test_creep_goes_by_the_room(room: str, material: str, creep: float | None) -> None:
    """EN 1995-1-1, table 3.2, service classes 1 to 3; MDF.LA is for the first alone."""
    stock = {"x": {"kind": "sheet", "material": material, "thickness": 18}}
    unit = unit_from(f"{SIZE}loads: {{room: {room}}}\n", stock=stock, carcass={"stock": "x"})
    of = unit.parts[0].blank.stock
    assert of.mechanics is not None
    assert (of.mechanics.creep and of.mechanics.creep.value) == creep
    assert bool(lacking(of)) == (creep is None)
    assert creep is not None or "give `creep:` under `strength:` of the stock `x`" in lacking(of)
