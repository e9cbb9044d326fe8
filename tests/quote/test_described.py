"""A unit in a client's words."""

from __future__ import annotations

import pytest

from kit.specs import unit_from
from rodwright.lengths import format_length
from rodwright.quote.described import facts_of

STOCK = """
stock:
  ply: {kind: sheet, material: birch plywood, thickness: 18, size: [2440, 1220]}
  thin: {kind: sheet, material: mdf, thickness: 6, size: [2440, 1220]}
  oak: {kind: board, material: european oak, thickness: 22}
"""
PLAIN = f"size: {{width: 800, height: 900, depth: 300}}\n{STOCK}"


def _told(spec: str) -> dict[str, list[str]]:
    return {fact.word: [line.said for line in fact.lines] for fact in facts_of(unit_from(spec))}


def test_what_it_is_in_words() -> None:
    told = _told(
        f"""{PLAIN}
back: {{stock: thin}}
face_frame: {{stock: oak, width: 40, mid_rails: 30, corners: butted}}
loads: books
interior:
  rows:
    - {{height: 1 share, shelves: {{count: 2, fixed: false}}}}
    - {{height: 300, doors: 2}}
finish: {{carcass: {{kind: paint, colour: seagreen}}, back: none, face_frame: oil}}
"""
    )
    assert told["Size"] == ["800\u00a0mm wide, 900\u00a0mm high, 300\u00a0mm deep"]
    assert told["Made of"] == [
        "Carcass, shelves and doors: birch plywood, 18\u00a0mm",
        "Back: MDF, 6\u00a0mm",
        "Face frame: European oak, 22\u00a0mm",
    ]
    assert told["Finish"] == [
        "Carcass and shelves: painted seagreen (#2e8b57), satin",
        "Face frame: oiled, matt",
    ]
    assert told["It has"] == ["2 doors, 1 fixed shelf and 2 adjustable shelves"]


FRAMED = f"""{STOCK}
opening: {{width: {{bottom: 1434, middle: 1430, top: 1427}}, height: 2350, depth: 340}}
fit: {{overlap: 5}}
face_frame: {{stock: oak, width: 45, corners: butted, overhang: {{sides: 13, top: 13}}}}
"""


def test_what_is_cut_to_the_walls_is_not_sold_as_larger_than_the_opening() -> None:
    """By hand: 1427 and 2350 from wall to wall and up to the top; the frame is 13 wider all round
    but below than a carcass that leaves gaps of 7."""
    told = _told(FRAMED)["Size"]
    assert told[0].startswith("1427\u00a0mm wide, 2350\u00a0mm high")
    assert "1427\u00a0mm wide and 2350\u00a0mm high" in told[1]
    assert "face frame" in told[2]
    assert told[3] == (
        "Before it is cut, it is 1446\u00a0mm wide and 2356\u00a0mm high over the face frame"
    )
    assert len(told) == 4


@pytest.mark.parametrize(
    ("falls", "where"),
    [("left", "at the left"), ("right", "at the right"), ("front", "in front")],
)
def test_a_client_reads_how_low_it_is_under_a_slope(falls: str, where: str) -> None:
    """By hand: at 45 degrees the ceiling is as much higher over the unit's edge as that is off the
    wall, and 6 square to it are 6 times the root of 2 straight down."""
    spec = f"""{STOCK}
opening: {{width: {{bottom: 1400, middle: 1400, top: 1400}}, height: 2000, depth: 400}}
fit: {{sides: 5, top: 6, back: 3}}
slope: {{falls: {falls}, low: 1500, pitch: 45, clearance: 6}}
"""
    unit = unit_from(spec)
    told = {fact.word: [line.said for line in fact.lines] for fact in facts_of(unit)}["Size"][-1]
    off = 0.0 if falls == "front" else (1400 - unit.size[0]) / 2
    height = 1500 + off - 6 * 2**0.5
    assert told == f"Cut to the sloping ceiling: {format_length(height, 'mm')}\u00a0mm high {where}"


def test_fixed_and_adjustable_shelves_are_told_apart_where_they_are_not_alike() -> None:
    spec = f"""{PLAIN}
interior:
  rows:
    - {{height: 1 share, shelves: {{count: 2, fixed: false, stock: oak}}}}
    - {{height: 300, shelves: 1}}
finish: {{kind: paint, colour: seagreen}}
"""
    told = _told(spec)
    assert told["Made of"] == [
        "Carcass and fixed shelves: birch plywood, 18\u00a0mm",
        "Adjustable shelves: European oak, 22\u00a0mm",
    ]
    assert told["Finish"] == ["Painted seagreen (#2e8b57), satin"]


def test_edges_have_their_own_thickness() -> None:
    told = _told(
        f"{PLAIN}lipping: {{stock: oak, thickness: 6, edges: [shelves]}}\ninterior: {{shelves: 1}}"
    )
    assert "Front edges: European oak, 6\u00a0mm" in told["Made of"]


def test_what_handles_are_of_is_told() -> None:
    """As the spec says it, and not again where their name does."""
    handle = "{{name: {name}, material: brass}}"
    for name, said in (("knob", "Knob, brass: 2"), ("brass knob", "Brass knob: 2")):
        doors = f"interior: {{doors: {{count: 2, handle: {handle.format(name=name)}}}}}"
        assert _told(f"{PLAIN}{doors}")["Hardware"][0] == said


def test_hardware_is_told_in_a_clients_words() -> None:
    told = _told(f"{PLAIN}interior: {{doors: {{count: 2, handle: {{name: turned knob}}}}}}")
    assert told["Hardware"] == ["Turned knob: 2", "Doors on concealed hinges"]
    assert "Hardware" not in _told(PLAIN)


def test_colours_are_shown_beside_their_line() -> None:
    spec = f'{PLAIN}finish: {{kind: paint, colour: "#a1b2c3", sheen: gloss}}'
    (fact,) = [fact for fact in facts_of(unit_from(spec)) if fact.word == "Finish"]
    assert [(each.said, each.colour) for each in fact.lines] == [
        ("Painted #a1b2c3, gloss", "#a1b2c3")
    ]


def test_a_colour_has_the_name_that_it_is_bought_by() -> None:
    spec = f'{PLAIN}finish: {{kind: paint, colour: {{shown: "#a1b2c3", name: "sage, tin 12"}}}}'
    (fact,) = [fact for fact in facts_of(unit_from(spec)) if fact.word == "Finish"]
    assert [(each.said, each.colour) for each in fact.lines] == [
        ("Painted sage, tin 12, satin", "#a1b2c3")
    ]


def test_bare_wood_is_said() -> None:
    assert _told(PLAIN)["Finish"] == ["None: the wood is left bare"]


def test_a_stain_is_lacquered() -> None:
    told = _told(f'{PLAIN}finish: {{kind: stain, colour: "#5f4026"}}')
    assert told["Finish"] == ["Stained #5f4026 and lacquered, satin"]


def test_layers_of_a_shelf_are_one_shelf() -> None:
    told = _told(f"{PLAIN}interior: {{shelves: {{count: 3, layers: 2}}}}")
    assert told["It has"] == ["3 fixed shelves"]


def test_what_it_carries_in_all() -> None:
    """One shelf and the bottom, 12 kg each; nothing lies on top."""
    told = _told(
        f"""{PLAIN}
carcass: {{stock: ply, corners: butted, top_load: 0 kg}}
loads: 12 kg
interior: {{shelves: 1}}
"""
    )
    assert "12 kg, 24 kg in all" in told["To carry"]


def test_what_nobody_said_it_carries_isnt_told() -> None:
    assert "To carry" not in _told(f"{PLAIN}interior: {{shelves: 1}}")


def test_weight_and_size_in_inches() -> None:
    told = _told(
        """
unit: in
size: {width: 36, height: 48, depth: 12}
stock:
  ply: {kind: sheet, material: birch plywood, thickness: 3/4, size: [96, 48]}
"""
    )
    assert told["Size"] == ["36\u00a0in wide, 48\u00a0in high, 12\u00a0in deep"]
    assert told["Weight"][0].endswith("lb")
