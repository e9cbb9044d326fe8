"""What the table of keys says of defaults and places is what the set-out does.

Each figure is read out of the table, so that neither can change without the other.
"""

from __future__ import annotations

import re
from typing import Any

import pytest

from kit.specs import of_role, unit_from
from rodwright.geometry import Box
from rodwright.lengths import from_inches
from rodwright.trade.sizes import INCH
from rodwright.unit import Hole, Role, Swing, Unit
from rodwright.wishes.models import UnitSpec
from rodwright.wishes.reading.reference import reference_table

SIZE = "size: {width: 800, height: 900, depth: 400}\n"


def _rows(key: str) -> list[list[str]]:
    rows = [line.strip("| ").split(" | ") for line in reference_table(UnitSpec).splitlines()]
    return [row for row in rows if row[0] == f"`{key}`"]


def _row(key: str, kind: str) -> list[str]:
    """The row of a key that goes with one kind, or that goes with all."""
    rows = _rows(key)
    named = [row for row in rows if re.match(rf"With `kind: [^`]*\b{kind}\b", row[3])]
    (row,) = named or rows
    return row


def _mm(cell: str) -> float:
    found = re.search(r"([\d.]+) mm", cell)
    assert found, cell
    return float(found[1])


CUTOUTS: dict[str, dict[str, Any]] = {
    "socket": {"kind": "socket", "at": [300, 500], "width": 146, "height": 86},
    "pipe": {"kind": "pipe", "runs": "back", "at": [300, 500], "diameter": 60},
    "skirting": {"kind": "skirting", "height": 120, "depth": 18},
}


def _cut_in_back(kind: str) -> Box:
    """What a cut-out takes from the back, unit frame."""
    unit = unit_from(SIZE, back={"stock": "thin"}, cutouts=[CUTOUTS[kind]])
    plain = unit_from(SIZE, back={"stock": "thin"})
    (back,), (before,) = of_role(unit, Role.BACK), of_role(plain, Role.BACK)
    if kind == "skirting":  # it takes the foot of the back off
        return Box((0, 0, before.bounds().low[2]), (0, 0, back.bounds().low[2]))
    (cut,) = set(back.workings) - set(before.workings)
    if kind == "pipe":
        centre = back.placement.to_unit((*cut.position, 0.0))
        r = cut.diameter / 2
        return Box((centre[0] - r, 0, centre[2] - r), (centre[0] + r, 0, centre[2] + r))
    box = cut.bounds(back.blank.size)
    one, other = (back.placement.to_unit(corner) for corner in (box.low, box.high))
    return Box(
        (min(one[0], other[0]), 0, min(one[2], other[2])),
        (max(one[0], other[0]), 0, max(one[2], other[2])),
    )


@pytest.mark.parametrize("kind", ["socket", "pipe"])
def test_where_a_cutout_is_measured_and_its_clearance(kind: str) -> None:
    """A pipe's place is its middle, a socket's its lower left corner."""
    wish = CUTOUTS[kind]
    gap = _mm(_row("cutouts[].clearance", kind)[2])
    meaning = _row("cutouts[].at", kind)[3]
    box = _cut_in_back(kind)
    x, z = wish["at"]
    if kind == "pipe":
        assert "Its middle" in meaning
        assert (box.centre[0], box.centre[2]) == pytest.approx((x, z))
        assert box.size[0] == pytest.approx(wish["diameter"] + 2 * gap)
    else:
        assert "Its lower left corner" in meaning
        assert (box.low[0], box.low[2]) == pytest.approx((x - gap, z - gap))
        assert box.size[0] == pytest.approx(wish["width"] + 2 * gap)
        assert box.size[2] == pytest.approx(wish["height"] + 2 * gap)


def test_the_clearance_of_a_skirting() -> None:
    gap = _mm(_row("cutouts[].clearance", "skirting")[2])
    assert _cut_in_back("skirting").high[2] == pytest.approx(120 + gap)


@pytest.mark.parametrize("kind", ["cup", "butt"])
def test_how_far_hinges_open(kind: str) -> None:
    (row,) = _rows("interior.doors.hinge.opens")
    said = re.search(rf"(\d+) with {kind}s", row[3])
    assert said
    unit = unit_from(f"{SIZE}interior: {{doors: {{hinge: {{kind: {kind}, count: 2}}}}}}\n")
    (swing,) = (motion for motion in unit.motions if isinstance(motion, Swing))
    assert abs(swing.angle) == float(said[1])


def _front(unit: Unit) -> float:
    return of_role(unit, Role.SHELF)[0].bounds().low[1]


@pytest.mark.parametrize("setback", [0, 30])
def test_where_the_setback_of_shelves_is_measured_from(setback: int) -> None:
    """Without a door from the carcass's front; with one from the air behind it."""
    (row,) = _rows("interior.shelves.setback")
    shelves = f"shelves: {{count: 2, setback: {setback}}}"
    assert "behind the carcass's front" in row[3]
    assert _front(unit_from(f"{SIZE}interior: {{{shelves}}}\n")) == setback
    unit = unit_from(f"{SIZE}interior: {{doors: {{count: 2}}, {shelves}}}\n")
    rear = of_role(unit, Role.DOOR)[0].bounds().high[1]
    assert _front(unit) == pytest.approx(rear + _mm(row[3]) + setback)


def test_the_stock_of_legs() -> None:
    """A board carcass lends its stock to its legs, as the table says."""
    assert "the carcass's unless said" in _row("base.stock", "legs")[3]
    unit = unit_from(
        "size: {width: 800, height: 900, depth: 300}\n",
        carcass={"stock": "oak"},
        base={"kind": "legs", "height": 120},
    )
    assert {leg.blank.stock.name for leg in of_role(unit, Role.LEG)} == {"oak"}


def test_the_rows_of_a_key_differ() -> None:
    """Where a key has several rows, each is for other kinds and says something else."""
    rows = [line.strip("| ").split(" | ") for line in reference_table(UnitSpec).splitlines()[2:]]
    for key in {row[0] for row in rows}:
        several = [row for row in rows if row[0] == key]
        if len(several) > 1:
            assert all(row[3].startswith("With `") for row in several)
            assert len({tuple(row[1:]) for row in several}) == len(several)


def test_round_inches_beside_millimetres_are_those_of_the_set_out() -> None:
    """Where the table says `40 mm (1 5/8 in)`, that is what the set-out makes of 40 mm; only what
    goes by what is sold, as sleeves do and the rows that hinge plates share, has its own."""
    said = re.findall(r"(.{20})\b([\d.]+) mm \(([\d /]+) in\)", reference_table(UnitSpec))
    assert len(said) > 10
    for before, metric, inches in said:
        if not any(ware in before for ware in ("sleeves", "to the rows")):
            assert INCH.usual(float(metric)) == pytest.approx(from_inches(inches)), before


@pytest.mark.parametrize("unit_name", ["mm", "in"])
def test_how_far_a_handle_is_from_the_edge_of_a_door(unit_name: str) -> None:
    (row,) = _rows("interior.doors.handle.edge")
    found = re.search(r"([\d.]+) mm \(([\d /]+) in\)", row[3])
    assert found
    usual = float(found[1]) if unit_name == "mm" else from_inches(found[2])
    text = f"unit: {unit_name}\nsize: {{width: 500 mm, height: 900 mm, depth: 400 mm}}\n"
    stock = """stock:
  ply: {kind: sheet, material: birch plywood, thickness: 18 mm}
"""
    doors = {"hung": "overlay", "handle": {"name": "knob"}}
    unit = unit_from(text + stock, interior={"doors": doors})
    (door,) = of_role(unit, Role.DOOR)
    (hole,) = (each for each in door.workings if isinstance(each, Hole) and each.use == "handle")
    at = min(hole.position[1], door.blank.width - hole.position[1])
    assert at == pytest.approx(usual)


@pytest.mark.parametrize("key", ["back.fixing", "JOINT.stopped"])
def test_round_ends_that_a_router_leaves_are_spoken_of(key: str) -> None:
    """They are square in the model."""
    rows = [row for row in _rows_ending(key) if "router" in row[3]]
    assert rows
    assert all("chisel" in row[3] and "corner" in row[3] for row in rows)


def _rows_ending(key: str) -> list[list[str]]:
    last = key.removeprefix("JOINT")
    rows = [line.strip("| ").split(" | ") for line in reference_table(UnitSpec).splitlines()]
    return [row for row in rows if row[0].strip("`").endswith(last)]
