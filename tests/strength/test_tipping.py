"""How a unit tips, worked out by hand, from its meshes, and in general.

Cases by hand are of blocks of water, a kilogram a litre.
"""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

import rodwright
from kit.blocks import block, unit_of_blocks
from kit.specs import unit_from
from rodwright.jobs.new import model_path
from rodwright.strength.restraint import IN_MASONRY, IN_STUDS, IN_UNIT
from rodwright.strength.results import Result
from rodwright.strength.tipping import (
    ALONE,
    BY_ITSELF,
    CLIMBED,
    CLIMBED_SHELVES,
    DOORS_OPEN,
    PULLED,
    tipping,
)
from rodwright.unit import Load, Loading, Lump, Opening, Role, Slide, Stretch, Swing, Unit

CHILD = 60 * 0.45359237
"""60 lb in kg."""


def results(unit: Unit) -> dict[str, Result]:
    """Results by subject and what they say, joined by a comma."""
    return {f"{each.subject}, {each.what}": each for each in tipping(unit)}


def of_unit(unit: Unit, what: str) -> Result:
    """The only result of the whole unit that begins so."""
    (found,) = (each for each in tipping(unit) if each.what.startswith(what))
    return found


def bookcase() -> Unit:
    """A block 800 wide, 300 deep and 1800 high: 432 kg, its centre at 400, 150, 900."""
    return unit_of_blocks(block("SD1", (0, 0, 0), (800, 300, 1800)))


def chest(travel: float = 300.0) -> Unit:
    """40 kg, 400 deep and 100 high, under a drawer of 10 kg, 500 x 200 x 100, that is flush with
    its front."""
    return unit_of_blocks(
        block("SD1", (0, 0, 0), (1000, 400, 100)),
        block("FR1", (0, 0, 100), (500, 200, 100), Role.DRAWER_FRONT, "Drawer 1"),
        motions=(Slide(("FR1",), (0.0, -travel, 0.0)),),
    )


def cupboard() -> Unit:
    """A block 600 wide, 300 deep and 1000 high (180 kg) before which a door of 12 kg hangs, 600 x
    20 x 1000, hinged at its left on the line x = 0, y = 0."""
    return unit_of_blocks(
        block("SD1", (0, 0, 0), (600, 300, 1000)),
        block("DO1", (0, -20, 0), (600, 20, 1000), Role.DOOR, "Door 1"),
        motions=(Swing(("DO1",), (0.0, 0.0), -110.0),),
    )


def test_a_bookcase_by_hand() -> None:
    """Turned forward it falls past atan(150 / 900) = 9.462 degrees, sideways past atan(400 / 900) =
    23.963.  A pull of P at 56 in (1422.4 mm) turns it with 1422.4 P against 432 x 150 = 64,800:
    P = 45.557 kg."""
    found = results(bookcase())
    forward = found["the unit, turned over forward, empty"]
    assert forward.figure == pytest.approx(9.4623, abs=1e-4)
    assert forward.figure == found["the unit, turned over backward, empty"].figure
    sideways = found["the unit, turned over sideways, empty"]
    assert sideways.figure == pytest.approx(23.9625, abs=1e-4)
    pulled = found[f"the unit, {PULLED}"]
    assert pulled.figure == pytest.approx(64_800 / 1422.4)
    assert pulled.limit == pytest.approx(4.5359237)
    assert pulled.holds


def test_a_chest_with_its_drawer_out_by_hand() -> None:
    """The drawer's centre stands at 100 - 300 = -200: 40 x 200 - 10 x 200 = 6000 kg mm keep 50 kg
    up, x = 120; z = (40 x 50 + 10 x 150) / 50 = 70; atan(120 / 70) = 59.744 degrees.  On its front
    at -300, 6000 / 300 = 20 kg tip it.

    On a carpet its rear stands 10.922 mm higher over 400 mm: 1.5641 degrees.  Then
    40 (200 cos - 50 sin) - 10 (200 cos + 150 sin) = 6000 cos - 3500 sin = 5902.23 keep it, and the
    front, 200 high, stands out by 300 cos + 200 sin = 305.35: 19.329 kg tip it, less than a
    child.  Held at 50 mm, which is 50 mm below the top of its carcass,
    the wall has to hold (27.2155 x 305.35 - 5902.23) / 50 = 48.16 kg = 472.3 N."""
    unit = chest()
    out = of_unit(unit, BY_ITSELF)
    assert out.figure == pytest.approx(math.degrees(math.atan(120 / 70)))
    (alone,) = (each for each in tipping(unit) if each.what.startswith(ALONE))
    assert alone.subject == "drawer 1 (FR1)"
    assert alone.figure == pytest.approx(20.0)
    assert alone.limit == pytest.approx(75 / 9.80665)
    climbed = of_unit(unit, CLIMBED)
    assert climbed.figure == pytest.approx(19.329, abs=1e-3)
    assert not climbed.holds
    fixing = of_unit(unit, "what a fixing")
    assert fixing.inputs[0].value == 50.0
    assert fixing.figure == pytest.approx((CHILD * 305.346 - 5902.23) / 50 * 9.80665, rel=1e-4)


def test_a_cupboard_with_its_door_open_by_hand() -> None:
    """At 90 degrees the door stands forward from the line x = 0, its centre at (-10, -300, 500):
    turned clockwise seen from above, what was before the hinges is at their left.
    x = (180 x 150 - 12 x 300) / 192 = 121.875, z = 500: atan = 13.6990 degrees.  On its edge, at
    y = -600, (180 x 150 - 12 x 300) / 600 = 39 kg tip it forward.  It stands 10 mm past the left
    side, where its weight and the load tip it less: (180 x 300 + 12 x -10) / 10 = 5388 kg."""
    unit = cupboard()
    doors = of_unit(unit, DOORS_OPEN)
    assert doors.figure == pytest.approx(math.degrees(math.atan(121.875 / 500)))
    (alone,) = (each for each in tipping(unit) if each.what.startswith(ALONE))
    assert alone.figure == pytest.approx(39.0)
    assert (alone.subject, alone.parts) == ("door 1 (DO1)", ("DO1",))


def test_a_drawer_loaded_is_drawn_out_with_what_lies_in_it() -> None:
    """30 kg in the middle of the drawer, 50 mm over its upper face, go out with it: at y = -200.
    40 x 200 - 40 x 200 = 0: it just stands."""
    load = Load("FR1", "30 kg", (Stretch(0.0, 500.0, 60.0, 60.0),))
    unit = replace(chest(), loading=Loading((load,)))
    found = {each.what: each for each in tipping(unit)}
    assert found[f"{BY_ITSELF}, as loaded"].figure == pytest.approx(0.0, abs=1e-9)
    assert found[f"{BY_ITSELF}, empty"].figure == pytest.approx(59.744, abs=1e-3)


def _on_its_rear(base: Unit) -> Unit:
    """The same with 100 kg at its rear that are only assumed, on a shelf with a lid over it."""
    shelf = block("SH1", (0, 390, 100), (1000, 10, 10), Role.SHELF)
    lid = block("SD2", (0, 390, 310), (1000, 10, 10))
    load = Load("SH1", "books", (Stretch(0.0, 1000.0, 100.0, 100.0),), assumed=True)
    return replace(
        base,
        parts=(*base.parts, shelf, lid),
        loading=Loading((*base.loading.loads, load)),
    )


@pytest.mark.parametrize("what", [PULLED, CLIMBED, f"{BY_ITSELF}, as loaded", "what a fixing"])
def test_what_is_only_assumed_never_helps(what: str) -> None:
    """With a drawer of 30 kg out, books at the rear would keep it standing, if they were there."""
    assumed = _on_its_rear(replace(chest(), loading=Loading((_IN_DRAWER,))))
    bare = replace(assumed, loading=Loading((_IN_DRAWER,)))
    assert of_unit(assumed, what).figure == of_unit(bare, what).figure


def test_what_is_assumed_still_hurts() -> None:
    """30 kg in the drawer that is out, whether they are said or assumed."""
    load = Load("FR1", "30 kg", (Stretch(0.0, 500.0, 60.0, 60.0),), assumed=True)
    unit = replace(chest(), loading=Loading((load,)))
    found = {each.what: each for each in tipping(unit)}
    assert found[f"{BY_ITSELF}, as loaded"].figure == pytest.approx(0.0, abs=1e-9)


def test_assumed_contents_of_shut_drawers_keep_none_standing() -> None:
    """Of two drawers that hold 30 kg each by assumption, one is out: the other counts as empty."""
    base = chest()
    second = block("FR2", (500, 0, 100), (500, 200, 100), Role.DRAWER_FRONT, "Drawer 2")
    loads = [
        Load(ref, "30 kg", (Stretch(at, at + 500.0, 60.0, 60.0),), assumed=True)
        for ref, at in (("FR1", 0.0), ("FR2", 500.0))
    ]

    def alone(loads: list[Load]) -> float | None:
        unit = replace(
            base,
            parts=(*base.parts, second),
            motions=(*base.motions, Slide(("FR2",), (0.0, -300.0, 0.0))),
            loading=Loading(tuple(loads)),
        )
        return next(
            each.figure
            for each in tipping(unit)
            if each.what.startswith(ALONE) and each.parts == ("FR1",)
        )

    assert alone(loads) == pytest.approx(alone(loads[:1]))
    said = [replace(each, assumed=False) for each in loads]
    assert alone(said) > alone(loads)  # type: ignore[operator]


def test_what_is_said_to_lie_on_its_top_is_tried_off() -> None:
    """Said to lie on a shelf it helps while the drawer is out; on the top it may be taken off."""
    on_top = of_unit(_on_the_top(), f"{BY_ITSELF}, as loaded")
    off = replace(_on_the_top(), loading=Loading((_IN_DRAWER,)))
    assert on_top.figure == of_unit(off, f"{BY_ITSELF}, as loaded").figure


_IN_DRAWER = Load("FR1", "30 kg", (Stretch(0.0, 500.0, 60.0, 60.0),))


def _on_the_top() -> Unit:
    base = chest()
    rear = block("TP1", (0, 390, 100), (1000, 10, 10), Role.TOP)
    load = Load("TP1", "books", (Stretch(0.0, 1000.0, 100.0, 100.0),))
    return replace(base, parts=(*base.parts, rear), loading=Loading((_IN_DRAWER, load)))


def test_a_low_fixing_holds_no_less_than_a_restraint_is_tried_with() -> None:
    fixing = of_unit(bookcase(), "what a fixing")
    assert fixing.figure == pytest.approx(50 * 0.45359237 * 9.80665)
    worst = next(each.value for each in fixing.inputs if each.symbol == "T1")
    assert worst < fixing.figure  # type: ignore[operator]


def test_a_child_on_a_shelf_by_hand() -> None:
    """A block of 400 x 400 x 500 (80 kg), a shelf without weight to speak of that stands out by 1 m
    at 400: on a carpet (1.5641 degrees) 80 (200 cos - 250 sin) = 15,448 keep it; the edge stands
    out by 1000 cos + 400 sin = 1010.5: 15.29 kg."""
    case = block("SD1", (0, 0, 0), (400, 400, 500))
    shelf = block("SH1", (0, -1000, 399.999), (400, 1000, 0.001), Role.SHELF, "Shelf")
    found = of_unit(unit_of_blocks(case, shelf), CLIMBED_SHELVES)
    assert found.figure == pytest.approx(15.288, abs=0.01)
    assert not found.holds


def test_a_bench_without_a_top_is_held_by_its_worktop() -> None:
    unit = unit_from(
        "size: {width: 900, height: 900, depth: 500}\n",
        carcass={"stock": "ply", "top": "none", "corners": "dowelled"},
        worktop={"stock": "oak"},
    )
    held = next(each for each in tipping(unit) if each.what == IN_UNIT)
    assert held.subject == "worktop WT1"


def test_an_interlock_of_what_is_empty_is_not_that_of_what_is_full() -> None:
    """One of two drawers out, empty: 40 x 200 - 10 x 900 + 10 x 100 = 0; full of 30 kg each, as
    they are said to be: 40 x 200 - 40 x 900 + 40 x 100 is less."""
    base = chest(1000.0)
    second = block("FR2", (500, 0, 100), (500, 200, 100), Role.DRAWER_FRONT, "Drawer 2")
    unit = replace(
        base,
        parts=(*base.parts, second),
        motions=(*base.motions, Slide(("FR2",), (0.0, -1000.0, 0.0))),
        loading=Loading(
            tuple(
                Load(ref, "30 kg", (Stretch(at, at + 500.0, 60.0, 60.0),))
                for ref, at in (("FR1", 0.0), ("FR2", 500.0))
            )
        ),
    )
    empty, full = (
        next(each.figure for each in of_unit(unit, what).remedies if "interlock" in each.what)
        for what in (f"{BY_ITSELF}, empty", f"{BY_ITSELF}, as loaded")
    )
    assert empty == pytest.approx(0.0, abs=1e-9)
    assert full < -1.0


def test_a_floor_that_leans_is_the_limit() -> None:
    leaning = replace(bookcase(), loading=Loading(lean=9.4))
    assert of_unit(leaning, "turned over forward").holds
    steeper = replace(bookcase(), loading=Loading(lean=9.5))
    found = of_unit(steeper, "turned over forward")
    assert not found.holds
    assert found.limit == 9.5
    assert of_unit(steeper, PULLED).figure == 0


def test_what_falls_by_itself_takes_no_load_and_leans_back() -> None:
    """With 60 kg in the drawer, 40 x 200 - 70 x 200 = -6000 kg mm: it falls, whatever is put on
    it; z = (40 x 50 + 10 x 150 + 60 x 150) / 110 and x = -6000 / 110."""
    load = Load("FR1", "60 kg", (Stretch(0.0, 500.0, 120.0, 120.0),))
    unit = replace(chest(), loading=Loading((load,)))
    found = {each.what: each for each in tipping(unit)}
    turned = found[f"{BY_ITSELF}, as loaded"]
    assert turned.figure is not None and turned.figure < 0 and not turned.holds
    assert any("falls by itself" in note for note in turned.notes)
    for what in (PULLED, CLIMBED):
        assert found[what].figure == 0 and not found[what].holds
        assert found[what].spare == 0
        assert "it falls over by itself, without any load" in found[what].notes
        assert all(each.figure >= 0 for each in found[what].remedies)


def test_on_a_carpet_the_rear_stands_higher() -> None:
    on_it = replace(bookcase(), loading=Loading(floor="carpet"))
    lean = math.degrees(math.atan(0.43 * 25.4 / 300))
    assert of_unit(on_it, "turned over forward").limit == pytest.approx(lean)


def test_each_remedy_is_worked_out() -> None:
    """The chest under a child, as above, on a carpet."""
    climbed = of_unit(chest(), CLIMBED)
    fixed, deeper, weight = climbed.remedies
    assert "it has to hold 48.2 kg" in fixed.what
    keeps = 22.6796 * 50
    assert fixed.figure == pytest.approx((5902.23 + keeps) / 305.346, rel=1e-4)
    assert not fixed.holds
    # Every lever of 50 kg grows, and that of the load shrinks by as much:
    # (27.2155 x 305.346 - 5902.23) / (50 + 27.2155) = 31.18 mm, in steps of 5 mm.
    assert "a base 35 mm deeper" in deeper.what
    turn = math.atan(10.922 / 400)
    grown = 35 * math.cos(turn)
    assert deeper.figure == pytest.approx((5902.23 + 50 * grown) / (305.346 - grown), rel=1e-4)
    assert deeper.holds
    assert weight.what.startswith("13.0 kg of weight")
    more = 13 * 200 * math.cos(turn)
    assert weight.figure == pytest.approx((5902.23 + more) / 305.346, rel=1e-4)
    assert weight.holds


def test_screws_and_plugs_of_a_fixing_by_hand() -> None:
    """A pull of 472.3 N (as above): two plugs of 300 N.  A 6 x 80 mm screw through 1.2 mm of steel
    and 12.5 mm of plasterboard is 66.3 mm in a stud of 0.40: 19.65 x 0.16 x 6 x 66.3 = 1251 N,
    so two at least.  Blocks of water take no screws that are known."""
    found = {each.what: each for each in tipping(chest())}
    assert found[IN_MASONRY].figure == 2
    stud = found[IN_STUDS]
    assert stud.inputs[1].value == pytest.approx(19.65 * 0.4**2 * 6 * 66.3, rel=1e-3)
    assert stud.figure == 2
    assert IN_UNIT not in found
    alone = {each.what for each in tipping(replace(chest(), loading=Loading(wall="masonry")))}
    assert IN_MASONRY in alone and IN_STUDS not in alone
    farther = {each.what: each for each in tipping(chest(1000.0))}
    pull = farther["what a fixing to the wall has to hold"].figure
    assert pull is not None
    assert farther[IN_MASONRY].figure == math.ceil(pull / 300)


def test_brackets_are_screwed_to_the_top() -> None:
    unit = unit_from("size: {width: 600, height: 1500, depth: 250}\nloads: books\n")
    held = next(each for each in tipping(unit) if each.what == IN_UNIT)
    assert held.subject == "top TP1"
    assert held.figure == 2


def test_plasterboard_alone_holds_nothing() -> None:
    unit = replace(chest(), loading=Loading(wall="plasterboard"))
    fixing = of_unit(unit, "what a fixing")
    assert "plasterboard alone doesn't hold it" in fixing.notes[0]
    assert IN_MASONRY not in {each.what for each in tipping(unit)}


def test_an_interlock_lets_one_drawer_out() -> None:
    """Each of two drawers out alone: 40 x 200 - 10 x 900 + 10 x 100 = 0 keeps 60 kg."""
    second = block("FR2", (500, 0, 100), (500, 200, 100), Role.DRAWER_FRONT, "Drawer 2")
    base = chest(1000.0)
    unit = replace(
        base,
        parts=(*base.parts, second),
        motions=(*base.motions, Slide(("FR2",), (0.0, -1000.0, 0.0))),
    )
    out = of_unit(unit, BY_ITSELF)
    (lock,) = (each for each in out.remedies if each.what.startswith("an interlock"))
    assert "13.6 kg" in lock.what
    assert lock.figure == pytest.approx(0.0, abs=1e-9)
    assert lock.holds


def test_what_is_built_in_is_tried_until_it_is_fixed() -> None:
    unit = replace(chest(), opening=Opening(1000, 600, 500))
    found = list(tipping(unit))
    assert {each.subject for each in found} == {
        "the unit, until it is fixed",
        "drawer 1 (FR1)",
    }
    assert not any(
        each.what in {CLIMBED, "what a fixing to the wall has to hold"} for each in found
    )
    assert list(tipping(replace(unit, hung=True))) == []


@pytest.mark.parametrize("name", ["tape-drawers", "market-shelves", "record-cabinet"])
def test_angles_are_those_of_the_meshes(name: str) -> None:
    """Centres of the meshes, by trimesh, and what of them is on the floor; no arithmetic of ours
    but each drawer's travel."""
    unit = rodwright.set_out(rodwright.read_spec(model_path(name)))
    travel = {
        ref: np.array(each.travel)
        for each in unit.motions
        if isinstance(each, Slide)
        for ref in each.refs
    }
    moment, whole, feet = np.zeros(3), 0.0, math.inf
    shut = np.zeros(3)
    for part in unit.parts:
        mesh = rodwright.placed_mesh(part)
        mass = mesh.volume * part.blank.stock.density * 1e-9
        moment += mass * (mesh.center_mass + travel.get(part.ref, np.zeros(3)))
        shut += mass * mesh.center_mass
        whole += mass
        on_floor = mesh.vertices[mesh.vertices[:, 2] < 1.0]
        feet = min(feet, on_floor[:, 1].min(initial=math.inf))
    for what, sum_of in (("turned over forward, empty", shut), (f"{BY_ITSELF}, empty", moment)):
        if what.startswith(BY_ITSELF) and not travel:
            continue
        _, y, z = sum_of / whole
        (found,) = (each for each in tipping(unit) if each.what == what)
        assert found.figure == pytest.approx(math.degrees(math.atan2(y - feet, z)), abs=0.01)


@given(st.floats(0, 100), st.floats(0, 100))
def test_more_in_a_drawer_that_is_out_tips_it_sooner(one: float, other: float) -> None:
    less, more = (
        of_unit(
            replace(chest(), loading=Loading((Load("FR1", "", (), (Lump(250, mass),)),))), CLIMBED
        )
        for mass in sorted((one, other))
    )
    assert less.figure is not None and more.figure is not None
    assert more.figure <= less.figure + 1e-9


@given(st.floats(0, 100), st.floats(0, 100))
def test_more_at_the_bottom_is_pulled_over_later_or_as_soon_empty(one: float, other: float) -> None:
    """A level that lies low: what stands on it keeps the whole from tipping."""
    bottom = block("BT1", (0, 0, 0), (800, 300, 20))
    unit = unit_of_blocks(bottom, block("SD1", (0, 0, 20), (800, 300, 1800)))
    low, high = (
        next(
            each.figure
            for each in tipping(
                replace(unit, loading=Loading((Load("BT1", "", (), (Lump(400, mass),)),)))
            )
            if each.what == f"turned over forward, {'loaded' if mass else 'empty'}"
        )
        for mass in sorted((one, other))
    )
    assert low is not None and high is not None
    assert high >= low - 1e-9


@pytest.mark.parametrize(
    ("base", "feet"),
    [
        (None, (0.0, 500.0)),
        ({"kind": "plinth", "height": 80, "toe_space": 40}, (40.0, 500.0)),
        ({"kind": "plinth", "height": 80, "toe_space": 40, "rear": 30}, (40.0, 470.0)),
        ({"kind": "toe_board", "height": 80, "toe_space": 50}, (50.0, 500.0)),
        ({"kind": "levellers", "height": 100, "board": {"toe_space": 45}}, (60.0, 440.0)),
    ],
)
def test_what_it_stands_on(base: dict[str, object] | None, feet: tuple[float, float]) -> None:
    from rodwright.strength.footing import footing

    more = {"base": base} if base else {}
    unit = unit_from(
        "size: {width: 600, height: 700, depth: 500}\n", interior={"drawers": {"count": 2}}, **more
    )
    ys = [line.start[1] for line in footing(unit).lines]
    assert (min(ys), max(ys)) == pytest.approx(feet)
