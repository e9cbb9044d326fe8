"""What would help a level: its figures are those of the unit that is made so."""

from __future__ import annotations

import re

import pytest

from kit.carcasses import BOARD, between_sides, books, carcass, level, strip
from kit.specs import unit_from
from rodwright.strength.levels import levels
from rodwright.strength.results import Remedy, Result
from rodwright.unit import JointKind, Load, Lump, Unit

SPEC = """
size: {{width: {width}, height: 900, depth: 300}}
stock:
  ply: {{kind: sheet, material: birch plywood, thickness: 18, size: [2440, 1220], price: 74}}
  other: {{kind: sheet, material: {material}, thickness: {thick}, size: [2440, 1220], price: 96}}
  ash: {{kind: board, material: european ash, thickness: 22}}
interior: {{shelves: {{count: 1, fixed: {fixed}, stock: {stock}{more}}}}}
loads: {loads}
"""


def _unit(**more: object) -> Unit:
    wish = {
        "width": 1236,
        "material": "birch plywood",
        "thick": 24,
        "fixed": "false",
        "stock": "ply",
        "more": "",
        "loads": "30 kg/m",
    }
    return unit_from(SPEC.format(**(wish | more)))


def _sag(unit: Unit) -> Result:
    return next(
        each for each in levels(unit) if each.parts[0][:3] == "SH1" and "after" in each.what
    )


def _remedy(unit: Unit, told: str) -> Remedy:
    found = [each for each in _sag(unit).remedies if re.fullmatch(told, each.what)]
    assert len(found) == 1, [each.what for each in _sag(unit).remedies]
    return found[0]


@pytest.mark.parametrize("fixed", ["true", "false"])
@pytest.mark.parametrize(
    ("told", "made"),
    [
        ("24 mm thick", {"stock": "other"}),
        ("27 mm thick", {"stock": "other", "thick": 27}),
        ("two layers of birch plywood, glued", {"more": ", layers: 2"}),
    ],
)
def test_a_unit_made_so_sags_as_the_remedy_says(
    fixed: str, told: str, made: dict[str, object]
) -> None:
    remedy = _remedy(_unit(fixed=fixed), told)
    again = _sag(_unit(fixed=fixed, **made))
    assert again.figure == pytest.approx(remedy.figure, rel=0.01)
    assert again.holds is remedy.holds


def test_another_board_of_the_spec_is_tried_with_its_price() -> None:
    """A back of it makes it one of the unit's stocks."""
    text = "\nback: {stock: other, fixing: applied}"
    unit = _unit(material="beech plywood", loads="30 kg/m" + text)
    remedy = _remedy(unit, "beech plywood 24 mm thick")
    again = _sag(_unit(material="beech plywood", stock="other", loads="30 kg/m" + text))
    assert again.figure == pytest.approx(remedy.figure, rel=0.01)
    # 24 of back and 1 mm of play behind it.
    share = 1198 * 275 / (2440 * 1220)
    assert remedy.cost == pytest.approx(share * (96 - 74))


def test_the_span_that_would_do_does() -> None:
    unit = _unit()
    remedy = next(each for each in _sag(unit).remedies if "from end to end" in each.what)
    span = float(re.search(r"(\d+) mm from end", remedy.what).group(1))  # type: ignore[union-attr]
    # Sides of 18, and 1 mm of play at either end.
    holds, fails = (_sag(_unit(width=span + 38 + more)) for more in (0, 10))
    assert holds.figure == pytest.approx(remedy.figure, rel=0.01)
    assert holds.holds
    assert not fails.holds


def test_the_load_that_would_do_does() -> None:
    remedy = next(each for each in _sag(_unit()).remedies if "kg/m on it" in each.what)
    most = int(re.search(r"(\d+) kg/m", remedy.what).group(1))  # type: ignore[union-attr]
    assert _sag(_unit(loads=f"{most} kg/m")).figure == pytest.approx(remedy.figure, rel=1e-6)
    assert _sag(_unit(loads=f"{most} kg/m")).holds
    assert not _sag(_unit(loads=f"{most + 1} kg/m")).holds


def test_a_lipping_that_is_put_on_sags_as_one_that_is_there() -> None:
    """Of the shelf's own board, 20 wide and 40 high, as no other is in the unit."""
    shelf = level("SH1", (20, 1220), 500)
    parts, joints = between_sides(1200, shelf)
    load = books("SH1", (20, 1220), 30)
    remedy = _remedy(carcass(parts, joints, load), "a lipping 40 mm high of .*")
    lipping = strip("LP1", (20, 1220), 480, 520, stock=BOARD)
    there = carcass([*parts, lipping], [*joints, ("SH1", "LP1", JointKind.EDGE_GLUED)], load)
    assert _sag(there).figure == pytest.approx(remedy.figure, rel=1e-6)


def test_a_lipping_is_told_without_an_article_that_some_materials_do_not_take() -> None:
    whats = [each.what for each in _sag(_unit(loads="60 kg/m")).remedies]
    (told, *_) = (what for what in whats if "lipping" in what)
    assert re.fullmatch(r"a lipping \d+ mm high of \w[\w ]+, glued along its front", told)


def test_deeper_lippings_and_thicker_boards_help_more() -> None:
    remedies = _sag(_unit()).remedies
    for told in (r"a lipping (\d+) mm high of .*", r"(\d+) mm thick"):
        found = sorted(
            (float(match.group(1)), each.figure)
            for each in remedies
            if (match := re.fullmatch(told, each.what))
        )
        assert len(found) > 1
        assert [figure for _, figure in found] == sorted((f for _, f in found), reverse=True)


def test_what_holds_comes_first_and_of_that_what_costs_least() -> None:
    remedies = _sag(_unit(loads="30 kg/m\nback: {stock: other, fixing: applied}")).remedies
    holds = [each.holds for each in remedies]
    assert holds == sorted(holds, reverse=True)
    costs = [each.cost for each in remedies if each.holds]
    priced = [each for each in costs if each is not None]
    assert len(priced) > 1
    assert costs[: len(priced)] == sorted(priced)


def test_what_holds_has_no_remedies() -> None:
    assert _sag(_unit(width=636)).remedies == ()


def test_a_shelf_that_may_break_is_told_what_stresses_it_less() -> None:
    unit = _unit(loads="400 kg/m")
    bending = next(
        each for each in levels(unit) if each.parts == ("SH1",) and each.what == "bending stress"
    )
    assert not bending.holds
    two = next(each for each in bending.remedies if each.what.startswith("two layers"))
    again = next(
        each
        for each in levels(_unit(loads="400 kg/m", more=", layers: 2"))
        if each.parts[0] == "SH1a" and each.what == "bending stress"
    )
    assert again.figure == pytest.approx(two.figure, rel=0.01)


HELD = """
size: {{width: 936, height: 900, depth: {depth}}}
interior: {{shelves: {{count: 1, fixed: true, ends: butted}}}}
back: {{stock: ply, fixing: applied}}
loads: {load}
"""


def _held(load: str, depth: int = 368) -> Result:
    return _sag(unit_from(HELD.format(load=load, depth=depth)))


@pytest.mark.parametrize("load", ["300 kg/m2", "archive boxes"])
def test_less_depth_helps_a_shelf_that_is_held_along_its_back(load: str) -> None:
    """It carries less on it then, by its area; made so, it sags as the remedy says."""
    found = _held(load)
    (less,) = (each for each in found.remedies if re.fullmatch(r"\d+ mm deep", each.what))
    deep = int(less.what.split()[0])
    again = _held(load, deep + 18)
    assert less.holds and again.holds
    assert again.figure == pytest.approx(less.figure, rel=1e-3)
    assert not _held(load, deep + 18 + 10).holds


def test_less_depth_is_no_help_where_as_much_lies_on_less() -> None:
    """By the metre, or with nothing that holds its back."""
    for told in (_held("60 kg/m"), _sag(_unit(loads="60 kg/m")), _sag(_unit(loads="200 kg/m2"))):
        assert not told.holds
        assert not any(re.fullmatch(r"\d+ mm deep", each.what) for each in told.remedies)


def test_a_back_that_holds_a_deep_shelf_too_far_from_its_front_is_said_to() -> None:
    assert any("too far back" in note for note in _held("25 kg/m", 518).notes)
    assert any("as a plate" in note for note in _held("25 kg/m", 218).notes)


LONG = """
size: {{width: 1420, height: 1200, depth: 300}}
stock:
  board: {{kind: sheet, material: mdf, thickness: {thick}, size: [2440, 1220]}}
  thin: {{kind: sheet, material: birch plywood, thickness: 6, size: [2440, 1220]}}
  oak: {{kind: board, material: european oak, thickness: 22}}
carcass: {{stock: board}}
back: {{stock: thin, fixing: rebated}}
{more}
interior: {interior}
"""
ONE = "{{load: {load}, shelves: {{count: 2, fixed: {fixed}}}}}"
TWO = "{{columns: [{{width: 1 share, {cell}}}, {{width: 1 share, {cell}}}]}}"
LIPPED = "face_frame: {stock: oak, width: 45}\nlipping: {stock: oak, thickness: 22}"


@pytest.mark.parametrize(
    ("fixed", "load", "thick", "more"),
    [
        ("true", "large books", 25, ""),
        ("false", "large books", 25, ""),
        ("true", "paperbacks", 18, ""),
        ("false", "paperbacks", 22, LIPPED),
    ],
)
def test_a_divider_half_way_sags_as_the_remedy_says(
    fixed: str, load: str, thick: int, more: str
) -> None:
    """Set out with it there are two shelves, on pins or housed as the one was, and each is held to
    its own span."""
    one = ONE.format(load=load, fixed=fixed)
    whole = unit_from(LONG.format(interior=one, thick=thick, more=more))
    remedy = _remedy(whole, "a divider half-way .* two shelves")
    cell = one[1:-1]
    again = _sag(unit_from(LONG.format(interior=TWO.format(cell=cell), thick=thick, more=more)))
    assert again.figure == pytest.approx(remedy.figure, rel=0.03)
    assert again.limit == pytest.approx(remedy.limit, rel=0.01)
    assert again.holds is remedy.holds


def _lump(at: float) -> Load:
    return Load("SH1", "a press", (), (Lump(at, 80.0),))


def test_of_a_load_on_one_spot_the_half_that_carries_it_counts() -> None:
    """Each half of 590 mm; that with 80 kg in its middle sags as a shelf so long would."""
    shelf = level("SH1", (20, 1220), 500)
    parts, joints = between_sides(1200, shelf)
    load = _lump(20 + 1200 * 0.75 + 5)
    remedy = _remedy(carcass(parts, joints, load), "a divider half-way .*")
    short = level("SH1", (20, 20 + 590), 500)
    parts, joints = between_sides(590, short)
    again = _sag(carcass(parts, joints, _lump(20 + 295)))
    assert again.figure == pytest.approx(remedy.figure, rel=0.02)


def test_what_would_do_for_its_strength_does_for_its_sag_too() -> None:
    """A shelf that may break, and sags ten times too far."""
    one = ONE.format(load="large books", fixed="true")
    unit = unit_from(LONG.format(interior=one, thick=22, more=""))
    bending = next(
        each
        for each in levels(unit)
        if each.parts[0] == "SH1" and each.what == "bending stress" and not each.holds
    )
    would = {each.what for each in _sag(unit).remedies if each.holds}
    does = {each.what for each in bending.remedies if each.holds}
    assert does and does <= would
    layers = next(each for each in bending.remedies if each.what.startswith("two layers"))
    (sags,) = layers.beyond
    assert layers.figure < (bending.limit or 0.0) and not layers.holds
    assert (sags.what, sags.measure) == ("sag", "mm")
    assert sags.figure == pytest.approx(_remedy(unit, "two layers.*").figure)


def test_sheets_are_tried_as_thick_as_they_are_sold() -> None:
    one = ONE.format(load="large books", fixed="true")
    unit = unit_from(LONG.format(interior=one, thick=25, more=""))
    tried = {each.what for each in _sag(unit).remedies if each.what.endswith("thick")}
    assert {"30 mm thick", "birch plywood 24 mm thick", "birch plywood 27 mm thick"} <= tried
    assert not tried & {"27 mm thick", "birch plywood 25 mm thick"}


def test_next_to_nothing_on_it_is_no_remedy() -> None:
    """What is left for it is under a tenth of what was asked."""
    one = ONE.format(load="200 kg/m", fixed="true")
    unit = unit_from(LONG.format(interior=one, thick=18, more=""))
    assert not any("on it" in each.what for each in _sag(unit).remedies)
