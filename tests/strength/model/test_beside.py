"""Formulas and model beside each other, on the ready models and on units made for a cause."""

from __future__ import annotations

from dataclasses import replace
from functools import cache

import pytest

import rodwright
from kit.carcasses import between_sides, books, carcass, level, upright
from kit.specs import unit_from
from rodwright.amounts import GRAVITY
from rodwright.handover.model_list import cause_text, model_rows
from rodwright.jobs.new import model_names, model_path
from rodwright.strength.bearings import bearings
from rodwright.strength.model.beside import (
    LEGS,
    SAGS,
    SWAYS,
    Beside,
    Row,
    UnknownStiffnessError,
    beside,
)
from rodwright.strength.model.causes import Cause, Does
from rodwright.strength.model.solving import UnsolvedError
from rodwright.strength.paths import paths
from rodwright.strength.racking import measured
from rodwright.unit import JointKind, Role, Unit

SLOW = {"archive-wall", "library-wall"}
"""They take too long for each run: ``rodwright strength --model`` solves them too."""
SOLVED = [
    pytest.param(name, marks=pytest.mark.xdist_group(f"model of {name}"))
    for name in model_names()
    if name not in SLOW
]
PLAIN = 0.02
"""A shelf from upright to upright, with nothing else to it, sags as its formula has it."""


@cache
def _model(name: str) -> tuple[Unit, Beside]:
    unit = rodwright.set_out(rodwright.read_spec(model_path(name)))
    return unit, beside(unit)


def _plain(unit: Unit) -> set[str]:
    """Shelves that nothing but two uprights carries, and on which nothing stands."""
    return {
        ref
        for ref, each in bearings(unit).items()
        if each.level.main.role is Role.SHELF
        and not (each.lines or each.standing or each.level.beside or len(each.seats) != 2)
        and all(part.role in (Role.SHELF, Role.LIPPING) for part in each.level.parts)
    }


@pytest.mark.parametrize("name", SOLVED)
def test_what_a_ready_model_weighs_and_carries_comes_down(name: str) -> None:
    unit, found = _model(name)
    expected = rodwright.unit_weight(unit) + sum(load.mass for load in unit.loading.loads)
    assert found.weight == pytest.approx(expected * GRAVITY, rel=1e-6)
    assert found.reaction == pytest.approx(found.weight, rel=1e-6)


@pytest.mark.parametrize("name", SOLVED)
def test_plain_shelves_of_a_ready_model_sag_as_their_formulas_have_it(name: str) -> None:
    unit, found = _model(name)
    plain = _plain(unit)
    for row in found.rows:
        if row.what.startswith("sag") and row.parts[0] in plain:
            assert row.model == pytest.approx(row.formula, rel=PLAIN, abs=0.005), row


@pytest.mark.parametrize("name", SOLVED)
def test_figures_of_a_ready_model_agree_or_say_why(name: str) -> None:
    _, found = _model(name)
    assert found.rows
    for row in found.rows:
        if row.agrees:
            continue
        assert row.causes, row
        assert model_rows([row], "mm")[0].why
        if row.what.startswith("sag"):
            # Together the causes that are told make most of the difference.
            told_of = sum(cause.effect for cause in row.causes)
            assert told_of / (row.model - row.formula) > 0.6, row


def _row(found: Beside, what: str, ref: str) -> Row:
    return next(row for row in found.rows if row.what == what and row.parts[0] == ref)


def test_a_back_that_carries_part_of_a_shelf_is_said_to() -> None:
    unit = unit_from(
        "size: {width: 1000, height: 900, depth: 300}\n"
        "carcass: {stock: ply, corners: housed}\n"
        "back: {stock: thin, fixing: applied}\n"
        "interior: {shelves: {count: 1, fixed: true}}\nloads: books\n"
    )
    found = beside(unit)
    row = _row(found, SAGS, "SH1")
    assert not row.agrees
    assert row.model < row.formula
    cause = row.causes[0]
    assert (cause.does, cause.ref, cause.formula) == (Does.CARRIES, "BK1", 0.0)
    assert 0.7 < cause.effect / (row.model - row.formula) < 1.3
    why = model_rows([row], "mm")[0].why[0]
    assert why.startswith(f"BK1 carries {cause.model / GRAVITY:.3g} kg of it")


def test_a_divider_that_gives_way_is_the_cause_of_a_greater_sag() -> None:
    """A shelf on a divider that stands on a bottom over nothing, and another that hangs."""
    bottom, shelf = level("BT1", (12, 1028), 100, Role.BOTTOM), level("SH1", (12, 1028), 520)
    parts, joints = between_sides(1000, bottom, shelf, kind=JointKind.HOUSING)
    parts.append(upright("DV1", 510, (120, 520)))
    joints += [("BT1", "DV1", JointKind.HOUSING), ("SH1", "DV1", JointKind.HOUSING)]
    found = beside(carcass(parts, joints, books("SH1", (20, 1020), 30), years=0))
    # Formula and model both know that the divider goes down with the bottom.
    row = _row(found, SAGS, "SH1")
    assert row.agrees
    assert row.model == pytest.approx(row.formula, rel=0.03)
    assert _row(found, SAGS, "BT1").agrees


def test_a_bare_carcass_sways_as_the_formula_has_it() -> None:
    _, found = _model("niche-shelf")
    row = next(row for row in found.rows if row.what == SWAYS)
    assert row.agrees
    assert row.formula > 50


@pytest.mark.parametrize("frame", [0.0, 1e-6])
def test_a_formula_that_folds_agrees_with_no_model_that_stands(
    monkeypatch: pytest.MonkeyPatch, frame: float
) -> None:
    unit = unit_from(
        "size: {width: 600, height: 900, depth: 300}\ncarcass: {stock: ply, corners: dowelled}\n"
    )
    bare = replace(measured(unit, paths(unit)), frame=frame, face=0.0, back=0.0)
    # By its globals: another test may have had the room loaded anew.
    monkeypatch.setitem(beside.__globals__, "measured", lambda *_: bare)
    row = next(row for row in beside(unit).rows if row.what == SWAYS)
    assert row.formula == bare.height
    assert row.model < row.formula
    assert not row.agrees
    assert row.causes


def test_a_unit_of_unknown_stiffness_has_no_model() -> None:
    text = (
        "size: {width: 600, height: 900, depth: 300}\ncarcass: {stock: odd}\n"
        "stock:\n  odd: {kind: sheet, material: straw, thickness: 18, density: 400}\n"
    )
    with pytest.raises(UnknownStiffnessError, match="straw"):
        beside(unit_from(text))


LEGS_ON_BLOCKS = """
size: {width: 900, height: 1100, depth: 350}
interior: {shelves: {count: 1}}
back: {stock: thin, fixing: rebated}
base: {kind: legs, height: 150, stock: oak, held_by: blocks}
"""


def test_legs_are_stiffer_by_the_bottom_that_their_heads_press_on() -> None:
    """The formula counts what holds a leg's head by its screws alone; without the bottom over the
    heads the model has about twice as much, and joints are good for a factor of two."""
    unit = unit_from(LEGS_ON_BLOCKS)
    apart = tuple(joint for joint in unit.joints if joint.kind is not JointKind.STANDING)

    def legs(of: Unit) -> Cause:
        (row,) = (each for each in beside(of).rows if each.what == SWAYS)
        return next(each for each in row.causes if each.ref == LEGS)

    pressed, free = legs(unit), legs(replace(unit, joints=apart))
    assert free.formula == pytest.approx(pressed.formula)
    assert 0.5 < free.model / free.formula < 2.5
    assert pressed.model > 3 * free.model
    assert "keeps their heads pressed" in cause_text(pressed, "mm", "mm")


SHORT_BACK = """
size: {width: 800, height: 900, depth: 300}
interior: {shelves: {count: 1}}
back: {stock: thin, fixing: applied}
cutouts: [{kind: skirting, height: 96, depth: 15}]
"""


def test_a_back_that_the_formula_does_not_count_is_the_cause() -> None:
    """It ends above the skirting, so that nothing holds its lower edge."""
    (row,) = (each for each in beside(unit_from(SHORT_BACK)).rows if each.what == SWAYS)
    back = next(each for each in row.causes if each.ref == "back")
    assert not row.agrees
    assert back.formula == 0 and back.model > 10
    assert "all four edges" in cause_text(back, "mm", "mm")


def test_what_has_nothing_to_hang_by_has_no_model() -> None:
    text = "size: {width: 800, height: 900, depth: 300}\nhung: true\n"
    carcass = {"stock": "ply", "top": "none", "bottom": "none"}
    unit = unit_from(text, carcass=carcass, face_frame={"stock": "ash", "width": 40})
    with pytest.raises(UnsolvedError, match="to hang by"):
        beside(unit)
