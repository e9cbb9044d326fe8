"""What a maker says of how stiff and strong a stock is: read with its unit, or refused."""

from __future__ import annotations

import pytest

from rodwright.problems import ProblemsError
from rodwright.wishes.reading.files import parse_spec
from rodwright.wishes.strength import StrengthSpec

SPEC = """\
title: Test
size: {{width: 800, height: 900, depth: 300}}
stock: {{case: {{kind: sheet, material: bamboo ply, thickness: 20, density: 700, strength: {}}}}}
carcass: {{stock: case}}
"""


def read(strength: str) -> StrengthSpec:
    found = parse_spec(SPEC.format(strength), "test.yaml").spec.stock["case"].strength
    assert found is not None
    return found


@pytest.mark.parametrize(
    ("written", "stress"),
    [
        ("9300 N/mm2", 9300),
        ("9300 MPa", 9300),
        ("9.3 GPa", 9300),
        ("9.3e3 N/mm2", 9300),
        ("1350000 psi", 9307.92),
        ("1.35e6 psi", 9307.92),
    ],
)
def test_a_modulus_is_read_in_its_own_unit(written: str, stress: float) -> None:
    """1 psi is 0.00689476 N/mm2 (NIST Special Publication 811, appendix B.8)."""
    assert read(f"{{stiffness: {written}}}").stiffness == pytest.approx(stress, rel=1e-5)


def _dense(written: str) -> float | None:
    text = SPEC.format("{stiffness: 9 GPa}").replace("density: 700", f"density: {written}")
    return parse_spec(text, "test.yaml").spec.stock["case"].density


@pytest.mark.parametrize(
    ("written", "kg"),
    [("700", 700), ("'700'", 700), ("700 kg/m3", 700), ("37 lb/ft3", 592.68), ("37 pcf", 592.68)],
)
def test_a_density_is_read_with_its_unit_or_as_kg_per_cubic_metre(written: str, kg: float) -> None:
    """1 lb/ft3 is 16.01846 kg/m3 (NIST Special Publication 811, appendix B.8)."""
    assert _dense(written) == pytest.approx(kg, rel=1e-5)


@pytest.mark.parametrize(
    ("written", "told"),
    [("37 lb", "is a weight, where a density is wanted"), ("500 lb/ft3", "at most 3000")],
)
def test_what_is_no_density_is_refused(written: str, told: str) -> None:
    with pytest.raises(ProblemsError, match=told):
        _dense(written)


def test_figures_by_their_keys() -> None:
    said = read("{stiffness: 9 GPa, shear_strength: 3 MPa, creep: 1.2, source: my own test}")
    assert said.figures() == {"stiffness": pytest.approx(9000), "shear_strength": pytest.approx(3)}
    assert (said.creep, said.source, said.strengths) == (1.2, "my own test", "mean")


@pytest.mark.parametrize(
    "written",
    [
        "{stiffness: 100 MPa}",
        "{stiffness: 100 N/mm2}",
        "{stiffness: 0.1 GPa}",
        "{stiffness: 250 GPa}",
        "{stiffness: 9 GPa, shear_stiffness: 1 MPa}",
        "{stiffness: 9 GPa, shear_stiffness: 100 GPa}",
        "{bending_strength: 0.1 MPa}",
        "{bending_strength: 1 GPa}",
    ],
)
def test_the_least_and_the_most_are_taken(written: str) -> None:
    """Whatever unit they are written in, and however that rounds."""
    assert read(written) is not None


@pytest.mark.parametrize(
    ("written", "where", "says"),
    [
        ("{stiffness: 9300}", "stiffness", "`9300` has no unit"),
        ("{stiffness: -9300 MPa}", "stiffness", "`-9300 MPa` is less than zero"),
        ("{stiffness: 251 GPa}", "stiffness", "`251 GPa` can't be; boards have 100 N/mm2 at least"),
        ("{stiffness: 99 MPa}", "stiffness", "`99 MPa` can't be; boards have 100 N/mm2 at least"),
        ("{stiffness: 0 MPa}", "stiffness", "`0 MPa` can't be"),
        ("{stiffness: 30 kg}", "stiffness", "`30 kg` is a weight"),
        ("{stiffness: stiff}", "stiffness", "can't be read"),
        ("{stiffness: true}", "stiffness", "takes text; `true` is written here"),
        ("{shear_stiffness: 0.5 MPa}", "shear_stiffness", "`0.5 MPa` can't be"),
        ("{bending_strength: 5 GPa}", "bending_strength", "`5 GPa` can't be"),
        ("{creep: -1}", "creep", "has to be at least 0"),
        ("{creep: 11}", "creep", "has to be at most 10"),
        ("{moe: 9 GPa}", "moe", "it is called `stiffness:` here"),
        ("{MOR: 9 MPa}", "MOR", "it is called `bending_strength:` here"),
        ("{}", None, "no figure is given"),
        ("{source: the web}", None, "no figure is given"),
    ],
)
def test_what_is_no_figure_is_refused_where_it_stands(
    written: str, where: str | None, says: str
) -> None:
    with pytest.raises(ProblemsError) as told:
        read(written)
    (problem,) = told.value.problems
    assert says in problem.message
    assert problem.where == ("stock", "case", "strength", *([where] if where else []))
    assert problem.line == 3 and problem.remedy
