"""What is weighed at each step, and how many lift it."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

import rodwright
from kit.blocks import block, unit_of_blocks
from kit.specs import unit_from
from rodwright.jobs.new import model_path
from rodwright.strength.lifting import lifting
from rodwright.strength.pieces import STRIPPED, WHOLE, pieces
from rodwright.strength.results import Result
from rodwright.unit import Stock, Unit

TEXT = """
size: {width: 900, height: 1800, depth: 400}
carcass: {stock: ply, corners: housed}
base: {kind: plinth, height: 80}
interior:
  rows:
    - {height: 300, drawers: {count: 1, stock: ply, bottom: {stock: thin}}}
    - {height: 1 share, shelves: {count: 2, fixed: false}, doors: {kind: slab, stock: ply}}
back: {stock: thin}
face_frame: {stock: ash, width: 45, mid_rails: 30, rails: both}
"""


def by_subject(unit: Unit) -> dict[str, Result]:
    return {each.subject: each for each in lifting(unit)}


def weight(unit: Unit, *roles: str) -> float:
    return math.fsum(rodwright.weight(part) for part in unit.parts if part.role in roles)


def test_every_step_is_weighed() -> None:
    unit = unit_from(TEXT)
    found = by_subject(unit)
    carcass = weight(unit, "side", "top", "bottom", "divider", "carcass rail", "packer", "runner")
    fixed = math.fsum(
        rodwright.weight(part)
        for part in unit.parts
        if part.role == "shelf"
        and not any(j.second == part.ref and j.kind == "resting on pins" for j in unit.joints)
    )
    assert found["the carcass without its back"].figure == pytest.approx(carcass + fixed)
    back = weight(unit, "back")
    assert found["the carcass with its back"].figure == pytest.approx(carcass + fixed + back)
    frame, base = weight(unit, "stile", "rail"), weight(unit, "plinth")
    assert found["the face frame"].figure == pytest.approx(frame)
    assert found["the base"].figure == pytest.approx(base)
    assert found[STRIPPED].figure == pytest.approx(carcass + fixed + back + frame + base)
    assert found[WHOLE].figure == pytest.approx(rodwright.unit_weight(unit))
    drawer = weight(unit, "drawer front", "drawer side", "drawer end", "drawer bottom")
    assert [each.figure for name, each in found.items() if name.startswith("drawer")] == [
        pytest.approx(drawer)
    ]
    doors = [each for name, each in found.items() if name.startswith("door ")]
    assert math.fsum(each.figure or 0 for each in doors for _ in each.parts) == pytest.approx(
        weight(unit, "door")
    )


def test_a_sheet_weighs_its_size_times_its_density() -> None:
    """2440 x 1220 x 18 mm of birch plywood at 680 kg/m3: 36.4 kg."""
    unit = unit_from(TEXT)
    density = next(p.blank.stock.density for p in unit.parts if p.blank.stock.name == "ply")
    sheet = by_subject(unit)["a sheet of birch plywood as bought, 2440 x 1220 x 18 mm"]
    assert sheet.figure == pytest.approx(2.44 * 1.22 * 0.018 * density)
    assert any("so long a piece" in note for note in sheet.notes)


@pytest.mark.parametrize("name", ["reading-alcove", "pottery-dresser"])
def test_the_whole_and_its_centre_are_those_of_the_meshes(name: str) -> None:
    unit = rodwright.set_out(rodwright.read_spec(model_path(name)))
    masses, centres = [], []
    for part in unit.parts:
        mesh = rodwright.placed_mesh(part)
        masses.append(mesh.volume * part.blank.stock.density * 1e-9)
        centres.append(mesh.center_mass)
    whole = by_subject(unit)[WHOLE]
    assert whole.figure == pytest.approx(math.fsum(masses), rel=1e-4)
    low = unit.envelope.low
    given = {each.symbol: each.value for each in whole.inputs}
    for axis, symbol in enumerate("xyz"):
        mean = math.fsum(m * c[axis] for m, c in zip(masses, centres, strict=True)) / sum(masses)
        assert given[symbol] == pytest.approx(mean - low[axis], abs=0.5)


def test_people_by_hand() -> None:
    """A block of 40 kg, 400 deep: alone, H = 200 + 400 / 2 = 400 mm, from 250 to 750 mm, a poor
    grip: 23 x 0.63 x 0.85 x 0.91 x 0.90 = 10.09 kg.  At its ends, H = 300: 0.83 in place of 0.63,
    13.29 kg, so 40 kg take four (3.01).  Men lift 20 kg each there, together half: four as well;
    women 13: seven (6.15)."""
    unit = unit_of_blocks(block("SD1", (0, 0, 0), (1000, 400, 100)))
    whole = by_subject(unit)[WHOLE]
    assert whole.figure == pytest.approx(40.0)
    assert whole.limit == pytest.approx(23 * 0.63 * 0.85 * 0.91 * 0.9)
    assert whole.notes[0] == "NIOSH: 4 people; HSE filter: 4 men or 7 women"
    (shared,) = whole.remedies
    assert (shared.figure, shared.holds) == (pytest.approx(10.0), True)
    assert "who may lift 13.3 kg each" in shared.what


def test_no_more_lift_it_than_can_take_hold_of_it() -> None:
    """A block of 80 kg as above: 80 / 13.29 is seven, of whom four find a hold: 20 kg each."""
    unit = unit_of_blocks(block("SD1", (0, 0, 0), (2000, 400, 100)))
    whole = by_subject(unit)[WHOLE]
    assert whole.notes[0].startswith("NIOSH: 7 people, more than can take hold of it; HSE")
    (shared,) = whole.remedies
    assert shared.what.startswith("4 people at its ends (no more can take hold of it)")
    assert (shared.figure, shared.holds) == (pytest.approx(20.0), False)


def test_one_person_is_no_people() -> None:
    light = by_subject(unit_of_blocks(block("SD1", (0, 0, 0), (500, 100, 100))))[WHOLE]
    (count,) = (each for each in light.inputs if each.symbol == "n")
    assert (count.value, count.measure) == (1.0, "")


@pytest.mark.parametrize(("length", "least"), [(2400.0, 1), (2400.1, 2)])
def test_what_is_long_takes_two(length: float, least: int) -> None:
    unit = unit_of_blocks(block("SD1", (0, 0, 0), (length, 50, 50)))
    given = {each.symbol: each.value for each in by_subject(unit)[WHOLE].inputs}
    assert given["n"] == least


@pytest.mark.parametrize(("thickness", "least"), [(9.9, 1), (10.1, 2)])
def test_heavy_glass_takes_two(thickness: float, least: int) -> None:
    """A pane of 1000 x 1000 at 1000 kg/m3 (as water): 9.9 and 10.1 kg."""
    pane = block("DO1", (0, 0, 0), (1000, 1000, thickness))
    glass = replace(pane.blank.stock, material="glass")
    pane = replace(pane, blank=replace(pane.blank, stock=glass))
    unit = unit_of_blocks(pane)
    found = by_subject(unit)["Block (DO1)"]
    assert next(each.value for each in found.inputs if each.symbol == "n") == least
    assert any(note.startswith("glass: gloves") for note in found.notes)


def test_the_heaviest_board_at_hand_is_bought_as_it_is() -> None:
    from rodwright.unit import Piece

    side = block("SD1", (0, 0, 0), (1000, 400, 100))
    boards: Stock = replace(
        side.blank.stock, kind="board", pieces=(Piece(2000, 200, 3), Piece(3000, 100, 1))
    )
    unit = unit_of_blocks(replace(side, blank=replace(side.blank, stock=boards)))
    first = next(iter(pieces(unit)))
    assert first.subject == "a board of blocks as bought, 2000 x 200 x 100 mm"
    assert first.lot.mass == pytest.approx(40.0)


def test_what_goes_higher_than_hands_do_is_lifted_from_a_platform() -> None:
    """No hands lift above 1750 mm; from a platform as high as is lacking they do."""
    unit = unit_from(TEXT.replace("height: 1800", "height: 2300"))
    found = next(each for name, each in by_subject(unit).items() if name.startswith("drawer"))
    assert not found.holds and found.limit == 0
    given = {each.symbol: each.value for each in found.inputs}
    (platform,) = found.remedies
    high = int(platform.what.split(" mm high")[0].split()[-1])
    assert 0 <= given["V2"] - high - 1750 + 1 <= 1
    assert platform.holds
    assert 0 < platform.figure <= (found.figure or 0)
